/** The kitchen's own facts: stock, leftovers, prep times, equipment, labels, a house rule at rest. */
import { equipmentEntries, labelInput, leftoverEntries, prepTimeEntries, stockEntries } from "../../shared/inputs.js";
import { addDays, isCalendarDate } from "../domain/calendar/dates.js";
import type { HouseRule } from "../domain/brief.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { changeHousehold, type HouseholdChangeFailure } from "./change-household.js";
import { checkInput, invalid } from "./check-input.js";
import { toDate } from "./local-day.js";
import { nearest } from "./nearest.js";

export interface KitchenChange {
  readonly idempotencyKey: string;
  readonly householdId: string | null;
  readonly seenRevision: number;
}
type Changed = Promise<Result<{ householdId: string }, HouseholdChangeFailure>>;

const attempt = (personId: string, action: string, input: KitchenChange) => ({
  personId,
  action,
  key: input.idempotencyKey,
  input,
  householdId: input.householdId,
  seenRevision: input.seenRevision,
});

const unknownFood = (app: App, field: string, key: string) =>
  invalid(
    field,
    `"${key}" is no food of the catalogue`,
    `Did you mean ${nearest(
      key,
      app.reference.catalogue.foods.map((food) => food.key),
    ).join(", ")}?`,
  );

export async function setStock(
  app: App,
  personId: string,
  input: KitchenChange & { readonly entries: readonly { readonly food: string; readonly grams: number }[] },
): Changed {
  const checked = checkInput(stockEntries, input.entries, "entries");
  if (!checked.ok) return checked;
  const stranger = checked.value.findIndex((entry) => !app.index.food(entry.food));
  if (stranger >= 0) return fail(unknownFood(app, `entries.${stranger}.food`, checked.value[stranger]!.food));
  return changeHousehold(
    app,
    { ...attempt(personId, "setStock", input), verb: "changeStock" },
    async (tx, householdId) => {
      const keys = checked.value.map((entry) => entry.food);
      const grams = checked.value.map((entry) => entry.grams);
      await tx.$executeRaw`insert into stock (household_id, food_id, grams)
      select ${householdId}::uuid, f.id, e.grams from unnest(${keys}::text[], ${grams}::int[]) as e(key, grams) join food f on f.key = e.key
      on conflict (household_id, food_id) do update set grams = excluded.grams`;
      await tx.stock.deleteMany({ where: { householdId, grams: 0 } });
      return ok({});
    },
  );
}

export async function setLeftovers(
  app: App,
  personId: string,
  input: KitchenChange & {
    readonly leftovers: readonly { readonly base: string; readonly grams: number; readonly cookedOn: string }[];
  },
): Changed {
  const checked = checkInput(leftoverEntries, input.leftovers, "leftovers");
  if (!checked.ok) return checked;
  for (const [at, entry] of checked.value.entries()) {
    if (!app.index.base(entry.base)) {
      return fail(
        invalid(
          `leftovers.${at}.base`,
          `"${entry.base}" is no base of the catalogue`,
          `Did you mean ${nearest(
            entry.base,
            app.reference.catalogue.bases.map((base) => base.key),
          ).join(", ")}?`,
        ),
      );
    }
    if (!isCalendarDate(entry.cookedOn))
      return fail(
        invalid(
          `leftovers.${at}.cookedOn`,
          `${entry.cookedOn} is no day of the calendar`,
          "Send a real date as YYYY-MM-DD.",
        ),
      );
  }
  return changeHousehold(
    app,
    { ...attempt(personId, "setLeftovers", input), verb: "changeStock" },
    async (tx, householdId) => {
      const bases = await tx.base.findMany({
        where: { key: { in: checked.value.map((entry) => entry.base) } },
        select: { id: true, key: true, keepsChilledDays: true },
      });
      await tx.leftover.deleteMany({ where: { householdId } });
      await tx.leftover.createMany({
        data: checked.value.map((entry) => {
          const base = bases.find((row) => row.key === entry.base)!;
          return {
            householdId,
            baseId: base.id,
            grams: entry.grams,
            cookedOn: toDate(entry.cookedOn),
            lastSafeDay: toDate(addDays(entry.cookedOn, base.keepsChilledDays - 1)),
          };
        }),
      });
      return ok({});
    },
  );
}

export interface PrepTimeEntry {
  readonly kind: "WEEKEND" | "EVENING" | "MORNING";
  readonly weekday?: string | null;
  readonly date?: string | null;
  readonly startsAt: string;
  readonly handsOnMinutes: number;
  readonly elapsedMinutes: number;
  readonly carers: number;
  readonly effort?: number | null;
}

const USUAL_EFFORT = { WEEKEND: 4, EVENING: 6, MORNING: 10 } as const;

export async function setPrepTimes(
  app: App,
  personId: string,
  input: KitchenChange & { readonly prepTimes: readonly PrepTimeEntry[] },
): Changed {
  const checked = checkInput(prepTimeEntries, input.prepTimes, "prepTimes");
  if (!checked.ok) return checked;
  const badDate = input.prepTimes.findIndex((entry) => entry.date != null && !isCalendarDate(entry.date));
  if (badDate >= 0)
    return fail(
      invalid(
        `prepTimes.${badDate}.date`,
        `${input.prepTimes[badDate]!.date} is no day of the calendar`,
        "Send a real date as YYYY-MM-DD.",
      ),
    );
  return changeHousehold(
    app,
    { ...attempt(personId, "setPrepTimes", input), verb: "changeKitchen" },
    async (tx, householdId) => {
      const weekly = input.prepTimes.filter((entry) => entry.weekday != null);
      const dated = input.prepTimes.filter((entry) => entry.date != null);
      await tx.$executeRaw`insert into prep_time (household_id, kind, weekday, starts_at, hands_on_minutes, elapsed_minutes, carers, effort)
      select ${householdId}::uuid, e.kind, e.weekday, e.starts_at, e.hands_on, e.elapsed, e.carers, coalesce(e.effort, e.usual)
      from unnest(${weekly.map((e) => e.kind)}::text[], ${weekly.map((e) => e.weekday!)}::text[], ${weekly.map((e) => e.startsAt)}::text[], ${weekly.map((e) => e.handsOnMinutes)}::int[],
        ${weekly.map((e) => e.elapsedMinutes)}::int[], ${weekly.map((e) => e.carers)}::int[], ${weekly.map((e) => e.effort ?? null)}::int[], ${weekly.map((e) => USUAL_EFFORT[e.kind])}::int[])
        as e(kind, weekday, starts_at, hands_on, elapsed, carers, effort, usual)
      on conflict (household_id, kind, weekday) do update set starts_at = excluded.starts_at, hands_on_minutes = excluded.hands_on_minutes,
        elapsed_minutes = excluded.elapsed_minutes, carers = excluded.carers, effort = excluded.effort`;
      await tx.$executeRaw`insert into prep_time_exception (household_id, kind, date, starts_at, hands_on_minutes, elapsed_minutes, carers)
      select ${householdId}::uuid, e.kind, e.date, e.starts_at, e.hands_on, e.elapsed, e.carers
      from unnest(${dated.map((e) => e.kind)}::text[], ${dated.map((e) => toDate(e.date!))}::date[], ${dated.map((e) => e.startsAt)}::text[], ${dated.map((e) => e.handsOnMinutes)}::int[],
        ${dated.map((e) => e.elapsedMinutes)}::int[], ${dated.map((e) => e.carers)}::int[]) as e(kind, date, starts_at, hands_on, elapsed, carers)
      on conflict (household_id, kind, date) do update set starts_at = excluded.starts_at, hands_on_minutes = excluded.hands_on_minutes,
        elapsed_minutes = excluded.elapsed_minutes, carers = excluded.carers`;
      return ok({});
    },
  );
}

export async function setEquipment(
  app: App,
  personId: string,
  input: KitchenChange & { readonly equipment: readonly { readonly kind: string; readonly units: number }[] },
): Changed {
  const checked = checkInput(equipmentEntries, input.equipment, "equipment");
  if (!checked.ok) return checked;
  return changeHousehold(
    app,
    { ...attempt(personId, "setEquipment", input), verb: "changeKitchen" },
    async (tx, householdId) => {
      const kinds = checked.value.map((entry) => entry.kind);
      const units = checked.value.map((entry) => entry.units);
      await tx.$executeRaw`insert into equipment (household_id, kind, units) select ${householdId}::uuid, e.kind, e.units
      from unnest(${kinds}::text[], ${units}::int[]) as e(kind, units) on conflict (household_id, kind) do update set units = excluded.units`;
      return ok({});
    },
  );
}

export interface RecordLabel extends KitchenChange {
  readonly food: string;
  readonly contains: readonly string[];
  readonly mayContain: readonly string[];
  readonly kinds: readonly { readonly kind: string; readonly says: "CLEAR" | "MAY_CONTAIN" | "CONTAINS" }[];
  readonly readOn: string;
}

export async function recordLabel(app: App, personId: string, input: RecordLabel): Changed {
  const checked = checkInput(labelInput, input);
  if (!checked.ok) return checked;
  if (!app.index.food(input.food)) return fail(unknownFood(app, "food", input.food));
  if (!isCalendarDate(input.readOn) || toDate(input.readOn).getTime() > app.now().getTime() + 86_400_000) {
    return fail(
      invalid(
        "readOn",
        `${input.readOn} has not come yet or is no day of the calendar`,
        "Send the day the label was read.",
      ),
    );
  }
  return changeHousehold(
    app,
    { ...attempt(personId, "recordLabel", input), verb: "recordLabel" },
    async (tx, householdId) => {
      const food = await tx.food.findUniqueOrThrow({ where: { key: input.food }, select: { id: true } });
      const facts = {
        contains: [...checked.value.contains],
        mayContain: [...checked.value.mayContain],
        kinds: checked.value.kinds,
        readOn: toDate(input.readOn),
        readById: personId,
      };
      await tx.labelCheck.upsert({
        where: { householdId_foodId: { householdId, foodId: food.id } },
        create: { householdId, foodId: food.id, ...facts },
        update: facts,
        select: { id: true },
      });
      return ok({});
    },
  );
}

export async function relaxHouseRule(
  app: App,
  personId: string,
  input: KitchenChange & { readonly rule: HouseRule; readonly date: string },
): Changed {
  if (!isCalendarDate(input.date))
    return fail(invalid("date", `${input.date} is no day of the calendar`, "Send a real date as YYYY-MM-DD."));
  return changeHousehold(
    app,
    { ...attempt(personId, "relaxHouseRule", input), verb: "relaxHouseRule" },
    async (tx, householdId) => {
      await tx.relaxation.createMany({
        data: [{ householdId, rule: input.rule, date: toDate(input.date) }],
        skipDuplicates: true,
      });
      return ok({});
    },
  );
}
