-- AlterTable
ALTER TABLE "base_ingredient" ADD COLUMN     "retention" TEXT;

-- AlterTable
ALTER TABLE "dish_ingredient" ADD COLUMN     "retention" TEXT;

-- Codes of the retention table, four digits; which codes there are is checked when the rows are loaded.
alter table base_ingredient add constraint base_ingredient_retention_check check (retention ~ '^[0-9]{4}$');
alter table dish_ingredient add constraint dish_ingredient_retention_check check (retention ~ '^[0-9]{4}$');
