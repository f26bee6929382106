-- AlterTable
ALTER TABLE "food" ADD COLUMN     "added_sugar_grams" DOUBLE PRECISION NOT NULL DEFAULT 0,
ADD COLUMN     "keeps_frozen_days" JSONB,
ADD COLUMN     "seasons" JSONB NOT NULL DEFAULT '[]',
ADD COLUMN     "sugar_rule" TEXT NOT NULL DEFAULT 'ALL_FREE';

-- Rows of before say ALL_FREE, the strictest rule, until the reference data is loaded again.
alter table food add constraint food_sugar_rule_check
  check (sugar_rule in ('INTACT', 'MILK_SUGAR', 'JUICE', 'ALL_FREE', 'ADDED_PART'));
alter table food add constraint food_added_sugar_grams_check check (added_sugar_grams between 0 and 100);
alter table food add constraint food_seasons_check check (jsonb_typeof(seasons) = 'array');
