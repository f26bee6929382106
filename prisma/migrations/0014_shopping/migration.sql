-- What a pack leaves over and what that is good for; what the cupboard held when the week was planned, null in older plans.
ALTER TABLE "shopping_line" ADD COLUMN     "spare_uses" JSONB NOT NULL DEFAULT '[]',
ADD COLUMN     "stock_grams" INTEGER;

alter table shopping_line add constraint shopping_line_stock_check check (stock_grams >= 0);
