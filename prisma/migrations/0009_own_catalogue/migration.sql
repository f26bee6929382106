-- Foods and dishes that a household enters itself. What is eaten lies in own_food and own_dish, because the other home of a
-- child may see what stands in that child's boxes; prices, stock, labels and work lie in tables of their own.

-- CreateTable
CREATE TABLE "own_food" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "body" JSONB NOT NULL,
    "removed" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "own_food_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "own_food_shelf" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "own_food_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "pack_grams" DOUBLE PRECISION NOT NULL,
    "price_minor" INTEGER NOT NULL,
    "shop_section" TEXT NOT NULL,
    "stock_grams" INTEGER NOT NULL DEFAULT 0,
    "product_since" DATE,

    CONSTRAINT "own_food_shelf_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "own_food_label" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "own_food_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "contains" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "may_contain" TEXT[] DEFAULT ARRAY[]::TEXT[],
    "kinds" JSONB NOT NULL DEFAULT '[]',
    "read_on" DATE NOT NULL,
    "read_by_id" UUID,

    CONSTRAINT "own_food_label_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "own_dish" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "household_id" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "body" JSONB NOT NULL,
    "removed" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "own_dish_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "own_dish_work" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "own_dish_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,
    "steps" JSONB NOT NULL,

    CONSTRAINT "own_dish_work_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "own_dish_food" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "own_dish_id" UUID NOT NULL,
    "own_food_id" UUID NOT NULL,
    "household_id" UUID NOT NULL,

    CONSTRAINT "own_dish_food_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "own_food_key_key" ON "own_food"("key");

-- CreateIndex
CREATE INDEX "own_food_household_id_idx" ON "own_food"("household_id");

-- CreateIndex
CREATE UNIQUE INDEX "own_food_shelf_own_food_id_key" ON "own_food_shelf"("own_food_id");

-- CreateIndex
CREATE INDEX "own_food_shelf_household_id_idx" ON "own_food_shelf"("household_id");

-- CreateIndex
CREATE UNIQUE INDEX "own_food_label_own_food_id_key" ON "own_food_label"("own_food_id");

-- CreateIndex
CREATE INDEX "own_food_label_household_id_idx" ON "own_food_label"("household_id");

-- CreateIndex
CREATE UNIQUE INDEX "own_dish_key_key" ON "own_dish"("key");

-- CreateIndex
CREATE INDEX "own_dish_household_id_idx" ON "own_dish"("household_id");

-- CreateIndex
CREATE UNIQUE INDEX "own_dish_work_own_dish_id_key" ON "own_dish_work"("own_dish_id");

-- CreateIndex
CREATE INDEX "own_dish_work_household_id_idx" ON "own_dish_work"("household_id");

-- CreateIndex
CREATE INDEX "own_dish_food_own_food_id_idx" ON "own_dish_food"("own_food_id");

-- CreateIndex
CREATE INDEX "own_dish_food_household_id_idx" ON "own_dish_food"("household_id");

-- CreateIndex
CREATE UNIQUE INDEX "own_dish_food_own_dish_id_own_food_id_key" ON "own_dish_food"("own_dish_id", "own_food_id");

-- AddForeignKey
ALTER TABLE "own_food" ADD CONSTRAINT "own_food_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "own_food_shelf" ADD CONSTRAINT "own_food_shelf_own_food_id_fkey" FOREIGN KEY ("own_food_id") REFERENCES "own_food"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "own_food_shelf" ADD CONSTRAINT "own_food_shelf_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "own_food_label" ADD CONSTRAINT "own_food_label_own_food_id_fkey" FOREIGN KEY ("own_food_id") REFERENCES "own_food"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "own_food_label" ADD CONSTRAINT "own_food_label_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "own_dish" ADD CONSTRAINT "own_dish_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "own_dish_work" ADD CONSTRAINT "own_dish_work_own_dish_id_fkey" FOREIGN KEY ("own_dish_id") REFERENCES "own_dish"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "own_dish_work" ADD CONSTRAINT "own_dish_work_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "own_dish_food" ADD CONSTRAINT "own_dish_food_own_dish_id_fkey" FOREIGN KEY ("own_dish_id") REFERENCES "own_dish"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "own_dish_food" ADD CONSTRAINT "own_dish_food_own_food_id_fkey" FOREIGN KEY ("own_food_id") REFERENCES "own_food"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "own_dish_food" ADD CONSTRAINT "own_dish_food_household_id_fkey" FOREIGN KEY ("household_id") REFERENCES "household"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- Few items are a household's own: the policy below finds them without reading all.
create index box_item_own_dish on box_item (dish_key) where dish_key like 'own-%';

-- One's own, and what stands in a current box of a child who lives in one of one's homes. The boxes are read with the
-- reader's own rights, so this opens nothing that the box itself does not show.
alter table own_dish enable row level security; alter table own_dish force row level security;
create policy own_dish_read on own_dish for select using (household_id in (select app_household_ids())
  or key in (select i.dish_key from box_item i join lunch_box l on l.id = i.lunch_box_id where i.dish_key like 'own-%' and l.current));
create policy own_dish_add on own_dish for insert with check (household_id in (select app_writable_household_ids()));
create policy own_dish_change on own_dish for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
grant select, insert, update (body, removed) on own_dish to noonpail_app;

-- What goes into a dish is seen with the dish. Whose a food is, is asked of its shelf: own_food's policy reads this table.
alter table own_dish_food enable row level security; alter table own_dish_food force row level security;
create policy own_dish_food_read on own_dish_food for select using (household_id in (select app_household_ids())
  or own_dish_id in (select d.id from own_dish d));
create policy own_dish_food_add on own_dish_food for insert with check (household_id in (select app_writable_household_ids())
  and exists (select from own_dish d where d.id = own_dish_food.own_dish_id and d.household_id = own_dish_food.household_id)
  and exists (select from own_food_shelf s where s.own_food_id = own_dish_food.own_food_id and s.household_id = own_dish_food.household_id));
create policy own_dish_food_remove on own_dish_food for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, delete on own_dish_food to noonpail_app;

alter table own_food enable row level security; alter table own_food force row level security;
create policy own_food_read on own_food for select using (household_id in (select app_household_ids())
  or id in (select x.own_food_id from own_dish_food x));
create policy own_food_add on own_food for insert with check (household_id in (select app_writable_household_ids()));
create policy own_food_change on own_food for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
grant select, insert, update (body, removed) on own_food to noonpail_app;

-- The kitchen's own.
alter table own_food_shelf enable row level security; alter table own_food_shelf force row level security;
create policy own_food_shelf_read on own_food_shelf for select using (household_id in (select app_household_ids()));
create policy own_food_shelf_add on own_food_shelf for insert with check (household_id in (select app_writable_household_ids())
  and exists (select from own_food f where f.id = own_food_shelf.own_food_id and f.household_id = own_food_shelf.household_id));
create policy own_food_shelf_change on own_food_shelf for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
grant select, insert, update (pack_grams, price_minor, shop_section, stock_grams, product_since) on own_food_shelf to noonpail_app;

alter table own_food_label enable row level security; alter table own_food_label force row level security;
create policy own_food_label_read on own_food_label for select using (household_id in (select app_household_ids()));
create policy own_food_label_add on own_food_label for insert with check (household_id in (select app_writable_household_ids())
  and exists (select from own_food f where f.id = own_food_label.own_food_id and f.household_id = own_food_label.household_id));
create policy own_food_label_change on own_food_label for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
create policy own_food_label_remove on own_food_label for delete using (household_id in (select app_writable_household_ids()));
grant select, insert, update (contains, may_contain, kinds, read_on, read_by_id), delete on own_food_label to noonpail_app;

alter table own_dish_work enable row level security; alter table own_dish_work force row level security;
create policy own_dish_work_read on own_dish_work for select using (household_id in (select app_household_ids()));
create policy own_dish_work_add on own_dish_work for insert with check (household_id in (select app_writable_household_ids())
  and exists (select from own_dish d where d.id = own_dish_work.own_dish_id and d.household_id = own_dish_work.household_id));
create policy own_dish_work_change on own_dish_work for update using (household_id in (select app_writable_household_ids())) with check (household_id in (select app_writable_household_ids()));
grant select, insert, update (steps) on own_dish_work to noonpail_app;

-- The prefix keeps them apart from the reference catalogue for good.
alter table own_food add constraint own_food_key_prefix check (key ~ '^own-[a-z0-9]+(-[a-z0-9]+)*$');
alter table own_dish add constraint own_dish_key_prefix check (key ~ '^own-[a-z0-9]+(-[a-z0-9]+)*$');
alter table own_food_shelf add constraint own_food_shelf_ranges check (pack_grams > 0 and pack_grams <= 20000 and price_minor between 0 and 1000000 and stock_grams between 0 and 100000);
