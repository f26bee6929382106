/** The kitchen's own facts: stock, leftovers, prep times, equipment, the energy equation, hot days, labels, what it keeps out, a house rule at rest. */
import type { z } from "zod";
import {
  energyMethod,
  equipmentEntries,
  hotDayEntries,
  keepsOutInput,
  labelInput,
  leftoverEntries,
  prepTimeEntries,
  stockEntries,
} from "../../shared/inputs.js";
import { isOwnKey } from "../../shared/own-catalogue.js";
import type { Tx } from "../database/database.js";
import { addDays, isCalendarDate } from "../domain/calendar/dates.js";
import type { HouseRule } from "../domain/brief.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { changeHousehold, type HouseholdChangeFailure } from "./change-household.js";
import { checkInput, invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { fromDate, toDate } from "./local-day.js";
import { nearest } from "../domain/nearest.js";
import { queueRecheck, recheckNow, touching } from "./recheck.js";

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

const unlistedFood = (field: string, key: string) =>
  invalid(field, `"${key}" is no food on this household's list`, "Send a key of the list, or of the catalogue.");

/** Row IDs of the foods on the household's own list among these keys. */
async function ownFoodsOf(tx: Tx, householdId: string, keys: readonly string[]): Promise<ReadonlyMap<string, string>> {
  const own = keys.filter(isOwnKey);
  if (own.length === 0) return new Map();
  const rows = await tx.ownFood.findMany({
    where: { householdId, removed: false, key: { in: own } },
    select: { id: true, key: true },
  });
  return new Map(rows.map(({ id, key }) => [key, id]));
}

export async function setStock(
  app: App,
  personId: string,
  input: KitchenChange & { readonly entries: readonly { readonly food: string; readonly grams: number }[] },
): Changed {
  const checked = checkInput(stockEntries, input.entries, "entries");
  if (!checked.ok) return checked;
  const stranger = checked.value.findIndex(({ food }) => !isOwnKey(food) && !app.index.food(food));
  if (stranger >= 0) return fail(unknownFood(app, `entries.${stranger}.food`, checked.value[stranger]!.food));
  return changeHousehold<object, FailureOf<"InvalidInput">>(
    app,
    { ...attempt(personId, "setStock", input), verb: "changeStock" },
    async (tx, householdId) => {
      const keys = checked.value.map((entry) => entry.food);
      const grams = checked.value.map((entry) => entry.grams);
      const owned = await ownFoodsOf(tx, householdId, keys);
      const unlisted = keys.findIndex((key) => isOwnKey(key) && !owned.has(key));
      if (unlisted >= 0) return fail(unlistedFood(`entries.${unlisted}.food`, keys[unlisted]!));
      await tx.$executeRaw`insert into stock (household_id, food_id, grams)
      select ${householdId}::uuid, f.id, e.grams from unnest(${keys}::text[], ${grams}::int[]) as e(key, grams) join food f on f.key = e.key
      on conflict (household_id, food_id) do update set grams = excluded.grams`;
      await tx.stock.deleteMany({ where: { householdId, grams: 0 } });
      for (const entry of checked.value) {
        const ownFoodId = owned.get(entry.food);
        if (ownFoodId !== undefined)
          await tx.ownFoodShelf.updateMany({ where: { ownFoodId }, data: { stockGrams: entry.grams } });
      }
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

export async function setEnergyMethod(
  app: App,
  personId: string,
  input: KitchenChange & { readonly method: string },
): Changed {
  const checked = checkInput(energyMethod, input.method, "method");
  if (!checked.ok) return checked;
  return changeHousehold(
    app,
    { ...attempt(personId, "setEnergyMethod", input), verb: "changeChildren" },
    async (tx, householdId) => {
      await tx.household.update({
        where: { id: householdId },
        data: { energyMethod: checked.value },
        select: { id: true },
      });
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

interface LabelFacts {
  readonly contains: string[];
  readonly mayContain: string[];
  readonly kinds: z.infer<typeof labelInput>["kinds"];
  readonly readOn: Date;
  readonly readById: string;
}
type LabelRecorded = Promise<Result<object, FailureOf<"InvalidInput">>>;

/** A label read before the one on record is another pack's. */
const olderLabel = (readOn: Date, onRecord: Date) =>
  invalid(
    "readOn",
    `${fromDate(readOn)} is older than the label on record, read on ${fromDate(onRecord)}`,
    "Read the label of the pack that is there now and send that day.",
  );

async function recordReferenceLabel(tx: Tx, householdId: string, key: string, facts: LabelFacts): LabelRecorded {
  const food = await tx.food.findUniqueOrThrow({ where: { key }, select: { id: true } });
  const where = { householdId_foodId: { householdId, foodId: food.id } };
  const before = await tx.labelCheck.findUnique({ where, select: { readOn: true } });
  if (before && before.readOn > facts.readOn) return fail(olderLabel(facts.readOn, before.readOn));
  await tx.labelCheck.upsert({
    where,
    create: { householdId, foodId: food.id, ...facts },
    update: facts,
    select: { id: true },
  });
  return ok({});
}

async function recordOwnLabel(tx: Tx, householdId: string, key: string, facts: LabelFacts): LabelRecorded {
  const food = await tx.ownFood.findFirst({
    where: { householdId, key, removed: false },
    select: { id: true, shelf: { select: { productSince: true } }, label: { select: { readOn: true } } },
  });
  if (!food) return fail(unlistedFood("food", key));
  const since = food.shelf?.productSince;
  if (since && since > facts.readOn)
    return fail(
      invalid(
        "readOn",
        `${fromDate(facts.readOn)} is older than the product, which is so since ${fromDate(since)}`,
        "Read the label the product has now and send that day.",
      ),
    );
  if (food.label && food.label.readOn > facts.readOn) return fail(olderLabel(facts.readOn, food.label.readOn));
  await tx.ownFoodLabel.upsert({
    where: { ownFoodId: food.id },
    create: { ownFoodId: food.id, householdId, ...facts },
    update: facts,
    select: { id: true },
  });
  return ok({});
}

export async function recordLabel(app: App, personId: string, input: RecordLabel): Changed {
  const checked = checkInput(labelInput, input);
  if (!checked.ok) return checked;
  if (!isOwnKey(input.food) && !app.index.food(input.food)) return fail(unknownFood(app, "food", input.food));
  if (!isCalendarDate(input.readOn) || toDate(input.readOn).getTime() > app.now().getTime() + 86_400_000) {
    return fail(
      invalid(
        "readOn",
        `${input.readOn} has not come yet or is no day of the calendar`,
        "Send the day the label was read.",
      ),
    );
  }
  const recorded = await changeHousehold<object, FailureOf<"InvalidInput">>(
    app,
    { ...attempt(personId, "recordLabel", input), verb: "recordLabel" },
    async (tx, householdId) => {
      const facts = {
        contains: [...checked.value.contains],
        mayContain: [...checked.value.mayContain],
        kinds: checked.value.kinds,
        readOn: toDate(input.readOn),
        readById: personId,
      };
      const read = isOwnKey(input.food)
        ? await recordOwnLabel(tx, householdId, input.food, facts)
        : await recordReferenceLabel(tx, householdId, input.food, facts);
      if (!read.ok) return read;
      await queueRecheck(app, tx, touching({ householdIds: [householdId] }));
      return ok({});
    },
  );
  if (recorded.ok) await recheckNow(app, touching({ householdIds: [recorded.value.householdId] }));
  return recorded;
}

/** What this kitchen shuts out for everybody in it; replaces the list. */
export async function setKeepsOut(
  app: App,
  personId: string,
  input: KitchenChange & { readonly allergens: readonly string[] },
): Changed {
  const checked = checkInput(keepsOutInput, input.allergens, "allergens");
  if (!checked.ok) return checked;
  const set = await changeHousehold<object, never>(
    app,
    { ...attempt(personId, "setKeepsOut", input), verb: "setKeepsOut" },
    async (tx, householdId) => {
      await tx.household.update({
        where: { id: householdId },
        data: { keepsOut: [...checked.value].sort() },
        select: { id: true },
      });
      await queueRecheck(app, tx, touching({ householdIds: [householdId] }));
      return ok({});
    },
  );
  if (set.ok) await recheckNow(app, touching({ householdIds: [set.value.householdId] }));
  return set;
}

/** On which days the household expects more than the limits' hot-day temperature; replaces the list. */
export async function setHotDays(
  app: App,
  personId: string,
  input: KitchenChange & { readonly dates: readonly string[] },
): Changed {
  const checked = checkInput(hotDayEntries, input.dates, "dates");
  if (!checked.ok) return checked;
  const bad = checked.value.findIndex((date) => !isCalendarDate(date));
  if (bad >= 0)
    return fail(
      invalid(`dates.${bad}`, `${checked.value[bad]} is no day of the calendar`, "Send a real date as YYYY-MM-DD."),
    );
  const set = await changeHousehold<object, never>(
    app,
    { ...attempt(personId, "setHotDays", input), verb: "changeKitchen" },
    async (tx, householdId) => {
      await tx.hotDay.deleteMany({ where: { householdId } });
      await tx.hotDay.createMany({
        data: [...new Set(checked.value)].map((date) => ({ householdId, date: toDate(date) })),
      });
      await queueRecheck(app, tx, touching({ householdIds: [householdId] }));
      return ok({});
    },
  );
  if (set.ok) await recheckNow(app, touching({ householdIds: [set.value.householdId] }));
  return set;
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
