/** What part of the day a break is for, and what part of a break a slot is for: seeds/reference/meal-shares.json. */
import { z } from "zod";
import { slotCode, type SlotCode } from "./codes.js";

const share = z.number().min(0).max(1);
const source = z.string().min(10);

const slotShareSchema = z.strictObject({
  slot: slotCode,
  /** Part of a break's energy, before the slots of the break are made to sum to one. */
  energyWeight: z.number().positive().max(1),
  /** How far a portion may leave the reference one. */
  leastScale: z.number().positive().max(1),
  mostScale: z.number().min(1).max(4),
  source,
});
export type SlotShare = z.infer<typeof slotShareSchema>;

export const mealSharesSchema = z.strictObject({
  /** Where a school gives no share of its own. A break with a main is a lunch. */
  usual: z.strictObject({
    lunch: z.strictObject({ energyShare: share, source }),
    snack: z.strictObject({ energyShare: share, source }),
  }),
  /** What standards ask of a lunch, to hold our usual share against. */
  published: z.array(z.strictObject({ about: z.string().min(5), energyShare: share, source })),
  slots: z
    .array(slotShareSchema)
    .refine(
      (rows) => rows.length === slotCode.options.length && new Set(rows.map(({ slot }) => slot)).size === rows.length,
      "every slot once",
    ),
});
export type MealShares = z.infer<typeof mealSharesSchema>;

/** The row of a slot. Throws on a table that was not checked. */
export function slotShareOf(rows: readonly SlotShare[], slot: SlotCode): SlotShare {
  const row = rows.find((candidate) => candidate.slot === slot);
  if (row === undefined) throw new Error(`no share of a break's energy is known for ${slot}`);
  return row;
}
