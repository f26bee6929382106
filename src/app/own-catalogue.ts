/** A household's own foods and dishes: entered, changed, taken off the list; and what is not known about them. */
import { createHash } from "node:crypto";
import type { Food } from "../../shared/catalogue.js";
import { plainText } from "../../shared/inputs.js";
import { isOwnKey, OWN_PREFIX, ownDishInput, ownFoodInput, type OwnFoodInput } from "../../shared/own-catalogue.js";
import type { RuleSetDocument } from "../../shared/rule-set.js";
import type { Tx } from "../database/database.js";
import type { Prisma } from "../database/generated/client.js";
import type { HouseholdRow } from "../database/household.js";
import { readOwnCatalogueIn } from "../database/own-catalogue.js";
import type { RuleSetRow } from "../database/school.js";
import type { CatalogueBrief } from "../domain/brief.js";
import { isCalendarDate } from "../domain/calendar/dates.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
import { dishFromInput, type OwnDishFault } from "../domain/catalogue/own-dish.js";
import { allergensOfKind, foodFromInput } from "../domain/catalogue/own-food.js";
import { withOwnRows } from "../domain/catalogue/own-rows.js";
import { whatIsMissing, type MissingFact } from "../domain/catalogue/what-is-missing.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { ruleSetsFor, weekStartOf } from "./assemble-brief.js";
import { changeHousehold, type HouseholdChangeFailure } from "./change-household.js";
import type { KitchenChange } from "./change-kitchen.js";
import { checkInput, invalid } from "./check-input.js";
import type { FailureOf, InputIssue } from "./failures.js";
import { fromDate, toDate, todayIn } from "./local-day.js";
import { nearest } from "../domain/nearest.js";
import { rowsToPlanWith } from "./own-rows.js";
import { queueRecheck, recheckNow, touching } from "./recheck.js";

export interface SaveOwnFood extends KitchenChange {
  /** Null or absent for a new one. */
  readonly key?: string | null | undefined;
  readonly food: unknown;
}
export interface SaveOwnDish extends KitchenChange {
  readonly key?: string | null | undefined;
  readonly dish: unknown;
}
export interface RemoveOwn extends KitchenChange {
  readonly key: string;
}
type Saved = Promise<Result<{ householdId: string; key: string }, HouseholdChangeFailure>>;
type Removed = Promise<Result<{ householdId: string }, HouseholdChangeFailure | FailureOf<"StillInUse">>>;
type Refusal = FailureOf<"InvalidInput">;

const DAY_MS = 86_400_000;

const json = (value: unknown) => JSON.parse(JSON.stringify(value)) as Prisma.InputJsonValue;
const digest = (text: string) => createHash("sha256").update(text).digest("hex").slice(0, 8);

/**
 * "own-", the name's letters, and eight that stand for the household: no two households ever use the same key, so that a key
 * in a box of a child with two homes names one dish.
 */
export function ownKey(name: string, householdId: string): string {
  const words = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 50)
    .replace(/-+$/, "");
  // A name in another script has letters of its own.
  return `${OWN_PREFIX}${words === "" ? digest(name) : words}-${digest(householdId)}`;
}

/** One way for all four: role and revision, the change, and every box it may touch looked at again. */
async function changeOwn<T extends object, E>(
  app: App,
  personId: string,
  action: string,
  input: KitchenChange & { readonly key?: string | null | undefined },
  work: (tx: Tx, householdId: string) => Promise<Result<T, E>>,
): Promise<Result<T & { householdId: string }, E | HouseholdChangeFailure>> {
  if (!plainText.test(input.key ?? ""))
    return fail(invalid("key", "holds a control character", "Send a key of the list, or none for a new one."));
  const { idempotencyKey: key, householdId, seenRevision } = input;
  const changed = await changeHousehold<T, E>(
    app,
    { personId, action, key, input, householdId, seenRevision, verb: "changeOwnCatalogue" },
    async (tx, id) => {
      const done = await work(tx, id);
      if (done.ok) await queueRecheck(app, tx, touching({ householdIds: [id] }));
      return done;
    },
  );
  if (changed.ok) await recheckNow(app, touching({ householdIds: [changed.value.householdId] }));
  return changed;
}

/** Where to write: the row to change, a row once removed that comes back, or a new key. */
async function placeFor(
  rows: { findUnique(key: string): Promise<{ id: string; householdId: string; removed: boolean } | null> },
  what: "food" | "dish",
  householdId: string,
  asked: string | null | undefined,
  name: string,
): Promise<Result<{ key: string; id: string | null }, Refusal>> {
  const key = asked ?? ownKey(name, householdId);
  const found = await rows.findUnique(key);
  const mine = found?.householdId === householdId ? found : null;
  if (asked != null)
    return mine && !mine.removed
      ? ok({ key, id: mine.id })
      : fail(
          invalid(
            "key",
            `"${asked}" is no ${what} on this household's list`,
            "Send a key of the list, or none for a new one.",
          ),
        );
  if (mine && !mine.removed)
    return fail(
      invalid(
        `${what}.name`,
        `"${name}" is on the list already`,
        `Send key: "${key}" to change it, or another name for a new one.`,
      ),
    );
  return ok({ key, id: mine?.id ?? null });
}

function checkFoodFacts(app: App, { label, productSince, kind }: OwnFoodInput, sameKind: readonly Food[]) {
  const dates = [
    ["food.productSince", productSince],
    ["food.label.readOn", label?.readOn],
  ] as const;
  for (const [field, date] of dates)
    if (date != null && !isCalendarDate(date))
      return invalid(field, `${date} is no day of the calendar`, "Send a real date as YYYY-MM-DD.");
  if (label == null) return null;
  if (toDate(label.readOn).getTime() > app.now().getTime() + DAY_MS)
    return invalid("food.label.readOn", `${label.readOn} has not come yet`, "Send the day the label was read.");
  const absent = allergensOfKind(sameKind).filter((allergen) => !label.contains.includes(allergen));
  return absent.length === 0
    ? null
    : invalid(
        "food.label.contains",
        `every ${kind} of the catalogue has ${absent.join(", ")}, and this label does not`,
        `Add ${absent.join(", ")}, or send the kind this food really is.`,
      );
}

/** Answers with the key of the food. */
export async function saveOwnFood(app: App, personId: string, input: SaveOwnFood): Saved {
  const checked = checkInput(ownFoodInput, input.food, "food");
  if (!checked.ok) return checked;
  const entered = checked.value;
  const sameKind = app.reference.catalogue.foods.filter(({ kind }) => kind === entered.kind);
  const refused = checkFoodFacts(app, entered, sameKind);
  if (refused) return fail(refused);
  return changeOwn<{ key: string }, Refusal>(app, personId, "saveOwnFood", input, async (tx, householdId) => {
    const place = await placeFor(
      { findUnique: (key) => tx.ownFood.findUnique({ where: { key } }) },
      "food",
      householdId,
      input.key,
      entered.name,
    );
    if (!place.ok) return place;
    const { key } = place.value;
    const { key: _key, pack, shopSection, ...body } = foodFromInput(key, entered, sameKind);
    const { id } =
      place.value.id === null
        ? await tx.ownFood.create({ data: { householdId, key, body: json(body) }, select: { id: true } })
        : await tx.ownFood.update({
            where: { id: place.value.id },
            data: { body: json(body), removed: false },
            select: { id: true },
          });
    const shelf = {
      packGrams: pack.grams,
      priceMinor: pack.priceMinor,
      shopSection,
      productSince: entered.productSince == null ? null : toDate(entered.productSince),
    };
    const shelved = await tx.ownFoodShelf.updateMany({ where: { ownFoodId: id }, data: shelf });
    if (shelved.count === 0) await tx.ownFoodShelf.create({ data: { ownFoodId: id, householdId, ...shelf } });
    // Entered anew without a label, the product is unread, whatever was read on the one before.
    await tx.ownFoodLabel.deleteMany({ where: { ownFoodId: id } });
    if (entered.label != null)
      await tx.ownFoodLabel.create({
        data: {
          ownFoodId: id,
          householdId,
          contains: [...entered.label.contains],
          mayContain: [...entered.label.mayContain],
          kinds: json(entered.label.kinds),
          readOn: toDate(entered.label.readOn),
          readById: personId,
        },
        select: { id: true },
      });
    return ok({ key });
  });
}

/** What the household's dishes may be made of. */
async function catalogueIn(app: App, tx: Tx, householdId: string): Promise<CatalogueBrief> {
  const { catalogue } = app.reference;
  const own = rowsToPlanWith(app, await readOwnCatalogueIn(tx), householdId, []);
  return own === null ? catalogue : withOwnRows(catalogue, own);
}

/** A fault of a dish as the line it is on, what is wrong there and what to send instead. */
function issueOf(fault: OwnDishFault, { foods, bases, retention }: CatalogueBrief): InputIssue {
  const field = ["dish", ...fault.at].join(".");
  const near = (word: string, keys: readonly string[]) => `Did you mean ${nearest(word, keys).join(", ")}?`;
  const keysOf = (rows: readonly { readonly key: string }[]) => rows.map(({ key }) => key);
  const grams = (amount: number) => Math.round(amount * 10) / 10;
  switch (fault.kind) {
    case "UnknownFood":
      return {
        field,
        problem: `"${fault.food}" is no food of the catalogue or of this household's list`,
        fix: near(fault.food, keysOf(foods)),
      };
    case "UnknownBase":
      return { field, problem: `"${fault.base}" is no base of the catalogue`, fix: near(fault.base, keysOf(bases)) };
    case "UnknownRetention":
      return {
        field,
        problem: `"${fault.retention}" is no code of the retention table`,
        fix: near(
          fault.retention,
          retention.map(({ code }) => code),
        ),
      };
    case "CookedTwice":
      return {
        field,
        problem: `${fault.food} is the cooked food already`,
        fix: "Leave retention out, or name the raw food.",
      };
    case "NoDensity":
      return {
        field,
        problem: `${fault.ml} ml of ${fault.food} cannot be weighed: its density is not known`,
        fix: isOwnKey(fault.food) ? "Send grams, or give the food a density (saveOwnFood)." : "Send grams.",
      };
    case "TooMuch":
      return {
        field,
        problem: `it weighs ${grams(fault.grams)} g, more than a portion can hold`,
        fix: `Send at most ${fault.mostGrams} g of one thing.`,
      };
    case "Empty":
      return { field, problem: "nothing goes into the dish", fix: "Send its ingredients or bases." };
    case "MassBalance":
      return {
        field,
        problem: `${grams(fault.inGrams)} g go in and ${grams(fault.outGrams)} g come out`,
        fix: `From what goes in, the portion weighs ${grams(fault.leastGrams)} to ${grams(fault.mostGrams)} g: mend the portion or the ingredients (water is one).`,
      };
    case "PiecesOffStep":
      return {
        field,
        problem: `${fault.pieces} pieces are no whole number of steps of ${fault.stepPieces}`,
        fix: "Send pieces that stepPieces divides.",
      };
  }
}

/** Answers with the key of the dish. */
export async function saveOwnDish(app: App, personId: string, input: SaveOwnDish): Saved {
  const checked = checkInput(ownDishInput, input.dish, "dish");
  if (!checked.ok) return checked;
  return changeOwn<{ key: string }, Refusal>(app, personId, "saveOwnDish", input, async (tx, householdId) => {
    const place = await placeFor(
      { findUnique: (key) => tx.ownDish.findUnique({ where: { key } }) },
      "dish",
      householdId,
      input.key,
      checked.value.name,
    );
    if (!place.ok) return place;
    const { key } = place.value;
    const catalogue = await catalogueIn(app, tx, householdId);
    const made = dishFromInput(key, checked.value, catalogue);
    if (!made.ok) return fail({ kind: "InvalidInput", issues: made.error.map((fault) => issueOf(fault, catalogue)) });
    const { key: _key, steps, ...body } = made.value;
    const { id } =
      place.value.id === null
        ? await tx.ownDish.create({ data: { householdId, key, body: json(body) }, select: { id: true } })
        : await tx.ownDish.update({
            where: { id: place.value.id },
            data: { body: json(body), removed: false },
            select: { id: true },
          });
    const worked = await tx.ownDishWork.updateMany({ where: { ownDishId: id }, data: { steps: json(steps) } });
    if (worked.count === 0)
      await tx.ownDishWork.create({ data: { ownDishId: id, householdId, steps: json(steps) }, select: { id: true } });
    const keys = [...new Set(made.value.ingredients.map(({ food }) => food).filter(isOwnKey))];
    const foods = await tx.ownFood.findMany({ where: { key: { in: keys } }, select: { id: true } });
    await tx.ownDishFood.deleteMany({ where: { ownDishId: id } });
    await tx.ownDishFood.createMany({
      data: foods.map((food) => ({ ownDishId: id, ownFoodId: food.id, householdId })),
    });
    return ok({ key });
  });
}

const notListed = (what: "food" | "dish", key: string): Refusal =>
  invalid("key", `"${key}" is no ${what} on this household's list`, "Send a key of the list.");

export async function removeOwnFood(app: App, personId: string, input: RemoveOwn): Removed {
  return changeOwn<object, Refusal | FailureOf<"StillInUse">>(
    app,
    personId,
    "removeOwnFood",
    input,
    async (tx, householdId) => {
      const food = await tx.ownFood.findFirst({
        where: { key: input.key, householdId, removed: false },
        select: { id: true },
      });
      if (!food) return fail(notListed("food", input.key));
      const uses = await tx.ownDishFood.findMany({
        where: { ownFoodId: food.id, dish: { removed: false } },
        select: { dish: { select: { key: true } } },
        orderBy: { dish: { key: "asc" } },
      });
      if (uses.length > 0) return fail({ kind: "StillInUse", dishes: uses.map(({ dish }) => dish.key), boxes: [] });
      await tx.ownFood.update({ where: { id: food.id }, data: { removed: true }, select: { id: true } });
      await tx.ownFoodShelf.updateMany({ where: { ownFoodId: food.id }, data: { stockGrams: 0 } });
      return ok({});
    },
  );
}

export async function removeOwnDish(app: App, personId: string, input: RemoveOwn): Removed {
  return changeOwn<object, Refusal | FailureOf<"StillInUse">>(
    app,
    personId,
    "removeOwnDish",
    input,
    async (tx, householdId) => {
      const dish = await tx.ownDish.findFirst({
        where: { key: input.key, householdId, removed: false },
        select: { id: true },
      });
      if (!dish) return fail(notListed("dish", input.key));
      const { timeZone, weekStart } = await tx.household.findUniqueOrThrow({
        where: { id: householdId },
        select: { timeZone: true, weekStart: true },
      });
      // The whole week at hand: its eaten boxes are part of every plan still to be made for it.
      const from = weekStartOf(todayIn(timeZone, app.now()), weekStart);
      const boxes = await tx.lunchBox.findMany({
        where: { current: true, date: { gte: toDate(from) }, items: { some: { dishKey: input.key } } },
        select: { childId: true, date: true },
        orderBy: [{ date: "asc" }, { childId: "asc" }],
      });
      if (boxes.length > 0) {
        const places = boxes.map(({ childId, date }) => ({ childId, date: fromDate(date), householdId }));
        return fail({ kind: "StillInUse", dishes: [], boxes: places });
      }
      await tx.ownDish.update({ where: { id: dish.id }, data: { removed: true }, select: { id: true } });
      await tx.pin.deleteMany({ where: { householdId, dishKey: input.key, date: { gte: toDate(from) } } });
      return ok({});
    },
  );
}

/** Every rule set in force, today or from an enrolment to come, for a child of the household; each once. */
function documentsInForce(household: HouseholdRow, ruleSets: readonly RuleSetRow[], today: string): RuleSetDocument[] {
  const documents = household.children.flatMap((child) =>
    child.enrolments
      .filter(({ untilDate }) => untilDate === null || untilDate >= today)
      .flatMap(({ schoolId, schoolClassId, fromDate: from }) => {
        const school = household.schools.find(({ id }) => id === schoolId);
        const date = from > today ? from : today;
        return school ? ruleSetsFor(ruleSets, child, school, schoolClassId, date).map(({ document }) => document) : [];
      }),
  );
  return [...new Set(documents)];
}

/** What is not known about a food or dish of the index, and which rules of the household's children ask for it. */
export function missingIn(
  app: App,
  household: HouseholdRow,
  ruleSets: readonly RuleSetRow[],
  index: CatalogueIndex,
  of: { readonly food: string } | { readonly dish: string },
): MissingFact[] {
  const documents = documentsInForce(household, ruleSets, todayIn(household.timeZone, app.now()));
  if ("dish" in of) return whatIsMissing(index.derived(of.dish).ingredients, household.labelChecks, documents);
  const food = index.food(of.food);
  return food ? whatIsMissing([{ food, bought: food }], household.labelChecks, documents) : [];
}
