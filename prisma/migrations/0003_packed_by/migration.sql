-- AlterTable
ALTER TABLE "box_packing" ADD COLUMN     "packed_by_id" UUID;

-- CreateIndex
CREATE INDEX "box_packing_packed_by_id_idx" ON "box_packing"("packed_by_id");

-- AddForeignKey
ALTER TABLE "box_packing" ADD CONSTRAINT "box_packing_packed_by_id_fkey" FOREIGN KEY ("packed_by_id") REFERENCES "person"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- Whoever packs may be recorded later, when the box is packed; the rest of the row never changes.
create policy box_packing_change on box_packing for update using (household_id in (select app_writable_household_ids()))
  with check (household_id in (select app_writable_household_ids()));
grant update (packed_by_id) on box_packing to noonpail_app;
