import { allergenGroups } from "../../../shared/codes.js";
import { kindFamilies, mixtures } from "../../../shared/food-kinds.js";
import type { AllergenCode, AllergenGroupCode, DietCode, OriginCode, ServedForm } from "../../../shared/codes.js";
import type { AllergyBrief, ChokingRule, SessionBrief } from "../brief.js";
import { completedYears } from "./clock.js";
import type { Fault } from "./fault.js";
import { place, purchaseChain } from "./week-read.js";
import type { ItemRead, Part, WeekRead } from "./week-read.js";

/** One allergen, or the members of a family. */
export function membersOf(allergen: AllergenCode | AllergenGroupCode): readonly AllergenCode[] {
  return Object.hasOwn(allergenGroups, allergen)
    ? allergenGroups[allergen as AllergenGroupCode]
    : [allergen as AllergenCode];
}

/** Codes and food kinds that one entry of a child's list stands for. */
export function avoidedNames({ allergen, foodKind }: AllergyBrief): { codes: AllergenCode[]; kinds: string[] } {
  if (allergen !== null) return { codes: [...membersOf(allergen)], kinds: [] };
  if (foodKind === null) return { codes: [], kinds: [] };
  const kinds = [foodKind];
  const codes: AllergenCode[] = [];
  for (const member of mixtures[foodKind]?.of ?? []) kinds.push(member);
  for (const kind of [...kinds]) {
    for (const family of kindFamilies) {
      if (!family.kinds.includes(kind)) continue;
      kinds.push(...family.kinds);
      if (family.allergen !== null) codes.push(family.allergen);
    }
  }
  const within = Object.entries(mixtures).filter(([, { of }]) => kinds.some((kind) => of.includes(kind)));
  return { codes, kinds: [...kinds, ...within.map(([mixture]) => mixture)] };
}

const land: readonly OriginCode[] = ["MEAT", "PORK", "BEEF", "POULTRY", "GELATINE"];
/**
 * Origins each diet shuts out. Gelatine comes from an animal the row does not name, so every diet that shuts out an
 * animal shuts it out. Meat for a HALAL child is taken to be what the household buys for that diet.
 */
const shutOut: Readonly<Record<DietCode, readonly OriginCode[]>> = {
  VEGETARIAN: [...land, "FISH", "SEAFOOD"],
  VEGAN: [...land, "FISH", "SEAFOOD", "EGG", "DAIRY", "HONEY"],
  PESCATARIAN: land,
  HALAL: ["PORK", "ALCOHOL", "GELATINE"],
  NO_PORK: ["PORK", "GELATINE"],
  NO_BEEF: ["BEEF", "GELATINE"],
};

/** Allergens a part brings: what its row and the row it is bought as always have, and what labels on record declare. */
function declared(week: WeekRead, part: Part): { has: Set<AllergenCode>; may: Set<AllergenCode> } {
  const has = new Set<AllergenCode>();
  const may = new Set<AllergenCode>();
  for (const food of purchaseChain(part.food, week.foods)) {
    for (const allergen of food.allergens) has.add(allergen);
    for (const label of week.labels.get(food.key) ?? []) {
      for (const allergen of label.contains) has.add(allergen);
      for (const allergen of label.mayContain) may.add(allergen);
    }
  }
  return { has, may };
}

/** Packaged foods without a label on record, which a child who avoids traces may eat only once the label is read. */
export function labelsNeeded(week: WeekRead, read: ItemRead): string[] {
  if (!read.child.allergies.some((allergy) => allergy.avoid === "TRACES")) return [];
  const unread = read.parts.filter(
    ({ food }) => food.packaged && !purchaseChain(food, week.foods).some((row) => week.labels.has(row.key)),
  );
  return [...new Set(unread.map(({ food }) => food.key))];
}

function checkAllergy(week: WeekRead, read: ItemRead, allergy: AllergyBrief): Fault[] {
  const avoided = avoidedNames(allergy);
  return read.parts.flatMap((part): Fault[] => {
    const at = { ...place(read), food: part.food.key };
    const rows = purchaseChain(part.food, week.foods);
    const { has, may } = declared(week, part);
    const searched = rows
      .flatMap((row) => week.labels.get(row.key) ?? [])
      .flatMap((label) => label.kinds ?? [])
      .filter(({ kind }) => avoided.kinds.includes(kind));
    if (
      allergy.foodKind !== null &&
      (rows.some((row) => avoided.kinds.includes(row.kind)) || searched.some(({ says }) => says === "CONTAINS"))
    )
      return [{ kind: "ALLERGEN", ...at, allergen: allergy.foodKind }];
    const traces = allergy.avoid === "TRACES";
    const faults = avoided.codes.flatMap((allergen): Fault[] => {
      if (has.has(allergen)) return [{ kind: "ALLERGEN", ...at, allergen }];
      return traces && may.has(allergen) ? [{ kind: "MAY_CONTAIN", ...at, allergen }] : [];
    });
    const mayHold = traces && searched.some(({ says }) => says === "MAY_CONTAIN");
    return faults.length === 0 && mayHold && allergy.foodKind !== null
      ? [{ kind: "MAY_CONTAIN", ...at, allergen: allergy.foodKind }]
      : faults;
  });
}

/**
 * Softest forms, safe for every class that some cut can make safe. A class no cut makes safe goes by its own list alone:
 * a whole nut mixed into a dough is still a whole nut.
 */
const alwaysSoft: readonly ServedForm[] = ["MIXED_IN", "GROUND", "MASHED"];

function isUnsafeForm(rule: ChokingRule, form: ServedForm): boolean {
  return !rule.safeForms.includes(form) && (rule.never || !alwaysSoft.includes(form));
}

/** Choking rules an item falls under at the child's age on the day. */
export function chokingRisks(week: WeekRead, read: ItemRead): { part: Part; rule: ChokingRule }[] {
  const age = completedYears(read.child.dateOfBirth, read.box.date);
  return read.parts.flatMap((part) =>
    week.brief.choking
      .filter(
        (rule) =>
          age < rule.underAgeYears && part.food.chokingClasses.includes(rule.class) && isUnsafeForm(rule, part.form),
      )
      .map((rule) => ({ part, rule })),
  );
}

function checkChoking(week: WeekRead, read: ItemRead): Fault[] {
  return chokingRisks(week, read).flatMap(({ part, rule }): Fault[] => {
    const at = { ...place(read), food: part.food.key };
    if (rule.never) return [{ kind: "CHOKING", ...at, limit: rule.underAgeYears }];
    const printed = read.item.cuts.some((cut) => cut.food === part.food.key && cut.cut === rule.cut);
    return printed ? [] : [{ kind: "CUT_NOT_PRINTED", ...at, limit: rule.underAgeYears }];
  });
}

function checkHouseholdFoods(week: WeekRead): Fault[] {
  const keptOut = week.brief.household.keepsOut.flatMap(membersOf);
  const { outOf } = week.brief;
  const faults: Fault[] = [];
  const keepOut = (part: Part, at: Omit<Fault, "kind">): void => {
    const { has } = declared(week, part);
    for (const allergen of keptOut)
      if (has.has(allergen)) faults.push({ kind: "KEPT_OUT", ...at, food: part.food.key, allergen });
  };
  const isOut = (part: Part, sessions: readonly (SessionBrief | undefined)[]): boolean =>
    purchaseChain(part.food, week.foods).some(
      ({ kind }) =>
        outOf.includes(kind) || sessions.some((session) => session?.without?.foodKinds.includes(kind) === true),
    );
  /** Where an item is made: in the sessions of its tasks, in its morning where none of them lies in an evening. */
  const madeIn = (read: ItemRead): (SessionBrief | undefined)[] => {
    const sessions = week.draft.tasks
      .filter(
        (task) =>
          task.kind === "FINISH" &&
          task.dish === read.item.dish &&
          task.forDates.includes(read.box.date) &&
          task.childIds.includes(read.box.childId),
      )
      .map((task) => week.sessions.get(task.session));
    if (sessions.some((session) => session?.kind === "EVENING")) return sessions;
    return [...sessions, week.brief.sessions.find(({ kind, date }) => kind === "MORNING" && date === read.box.date)];
  };
  for (const read of week.items) {
    for (const part of read.parts) {
      keepOut(part, place(read));
      // Inside a base it may come from a leftover or a batch cooked before; the batch answers for it below.
      if (part.base === null && !read.packed && isOut(part, madeIn(read)))
        faults.push({ kind: "OUT_OF", ...place(read), food: part.food.key });
    }
  }
  for (const batch of week.draft.batches) {
    for (const { food: key, grams, form, retention } of week.bases.get(batch.base)?.ingredients ?? []) {
      const food = week.foods.get(key);
      if (!food) continue;
      const part: Part = { food, grams, form, base: batch.base, cooked: retention ?? null };
      keepOut(part, { base: batch.base, session: batch.session });
      if (!batch.made && isOut(part, [week.sessions.get(batch.session)]))
        faults.push({ kind: "OUT_OF", base: batch.base, session: batch.session, food: key });
    }
  }
  return faults;
}

/** Allergies, labels, diets, choking and what the household keeps out or is out of. Holding has a check of its own. */
export function checkSafety(week: WeekRead): Fault[] {
  const perItem = week.items.flatMap((read): Fault[] => [
    ...read.child.allergies.flatMap((allergy) => checkAllergy(week, read, allergy)),
    ...labelsNeeded(week, read)
      .filter((food) => !read.item.labelsToRead.includes(food))
      .map((food): Fault => ({ kind: "LABEL_NOT_LISTED", ...place(read), food })),
    ...read.child.diets.flatMap((diet) =>
      read.parts
        .filter(({ food }) => food.origins.some((origin) => shutOut[diet].includes(origin)))
        .map(({ food }): Fault => ({ kind: "DIET", ...place(read), food: food.key, diet })),
    ),
    ...checkChoking(week, read),
  ]);
  return [...perItem, ...checkHouseholdFoods(week)];
}
