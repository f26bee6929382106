-- AlterTable
ALTER TABLE "base" ADD COLUMN     "rest_minutes" INTEGER;

-- Two days at most: what stands longer is no weekday's work.
alter table base add constraint base_rest_minutes_check check (rest_minutes between 1 and 2880);
