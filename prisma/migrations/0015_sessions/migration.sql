-- How long each prep session takes, and how late sessions and tasks can begin.
ALTER TABLE "week_plan" ADD COLUMN "sessions" JSONB NOT NULL DEFAULT '[]';
ALTER TABLE "task" ADD COLUMN "latest_starts_at" TEXT;
-- A plan from before says no more than its own clock.
UPDATE "task" SET "latest_starts_at" = "starts_at";
ALTER TABLE "task" ALTER COLUMN "latest_starts_at" SET NOT NULL;
