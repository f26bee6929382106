/** The sentences people read about facts of the planner. Children are named by the caller, who knows whether the reader may know. */
import { allergenGroups } from "../../shared/codes.js";
import type { CrossContactOrder } from "../domain/kitchen/cross-contact.js";
import type { DisruptionRow } from "../database/disruption.js";
import type { BlockRow } from "../database/week.js";
import type { HoldingModel } from "../../shared/holding-model.js";
import type { Caution, HoldingForecast, HoldingMend, Reason, SpareUse } from "../domain/week.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
import type { MissingFact } from "../domain/catalogue/what-is-missing.js";
import type { ExclusionCause } from "../domain/planner/candidates.js";
import type { Conflict, WayOut } from "../domain/planner/conflicts.js";
import type { PriceOfChange, WhyNotOffered } from "../domain/planner/price.js";
import type { Requirement } from "../domain/planner/requirements.js";
import type { Change } from "../domain/planner/ways-out.js";
import type { RuleSetDocument } from "../../shared/rule-set.js";
import type { DocumentIssue } from "./document-text.js";

export interface Names {
  readonly index: CatalogueIndex;
  child(id: string): string;
}

const dishName = (names: Names, key: string) => names.index.dish(key)?.name ?? key;
const baseName = (names: Names, key: string) => names.index.base(key)?.name ?? key;
const foodName = (names: Names, key: string) => names.index.food(key)?.name ?? key;
const list = (words: readonly string[], joined = "and") =>
  words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} ${joined} ${words.at(-1)!}`;
/** Allergens as people say them: a whole family by its name, the rest one by one. */
export function sayAllergens(codes: readonly string[], joined: "and" | "or" = "and"): string {
  const left = new Set(codes);
  const words: string[] = [];
  for (const [family, members] of Object.entries(allergenGroups)) {
    if (!members.every((member) => left.has(member))) continue;
    words.push(plain(family));
    for (const member of members) left.delete(member);
  }
  return list([...[...left].map(plain), ...words], joined);
}
/** TREE_NUTS -> tree nuts. */
export const plain = (code: string) => code.toLowerCase().replaceAll("_", " ");
/** What a cook does about cross-contact at one task. */
export function sayCrossContact(order: CrossContactOrder, avoided: readonly string[]): string {
  const what = sayAllergens(avoided);
  switch (order) {
    case "SAFE_FIRST":
      return `Before ${what} comes out.`;
    case "CLEAN_FIRST":
      return `Wash boards, knives and hands first: ${what} was on the worktop.`;
    case "APART":
      return `Contains ${what}: on a board and with knives of its own, then wash up and wash hands.`;
  }
}
/** "morning-2027-01-11" -> "the morning of 2027-01-11". */
const sessionName = (key: string) => {
  const [kind, ...date] = key.split("-");
  return kind === "weekend" ? `the weekend session on ${date.join("-")}` : `the ${kind} of ${date.join("-")}`;
};

const nutrientNames: Readonly<Record<string, string>> = {
  ENERC_KCAL: "energy",
  PROCNT: "protein",
  FASAT: "saturated fat",
  NA: "sodium",
  FIBTG: "fibre",
  CA: "calcium",
  FE: "iron",
  ZN: "zinc",
  VITC: "vitamin C",
  VITA_RAE: "vitamin A",
  FREE_SUGAR: "free sugars",
  ADDED_SUGAR: "added sugars",
};
const figureNames: Readonly<Record<string, string>> = {
  FAT: "fat",
  CHOCDF: "total carbohydrate (a European label's carbohydrate leaves fibre out)",
  SUGAR: "sugars",
  MG: "magnesium",
  P: "phosphorus",
  K: "potassium",
  VITB12: "vitamin B12",
  FOLDFE: "folate",
  VITD: "vitamin D",
};

export function sayCaution(caution: Caution, names: Names): string {
  switch (caution.kind) {
    case "READ_LABEL":
      return `Read the label of ${foodName(names, caution.food)} before it goes into ${names.child(caution.childId)}'s box: no ${sayAllergens(caution.allergens, "or")}, not even as "may contain".`;
    case "CUT_FOR_AGE":
      return `${dishName(names, caution.dish)}: ${caution.cut}.`.replace("..", ".");
    case "KEEP_COLD":
      return `Insulated bag with ${caution.coldSources} frozen cold sources; the box stays in the refrigerator until it leaves.`;
    case "PREHEAT_FLASK":
      return `${dishName(names, caution.dish)} travels hot: fill the flask with boiling water, let it stand, empty it, fill it with food heated to 74 °C or more.`;
    case "REHEAT_THROUGH":
      return `${dishName(names, caution.dish)} is carried cold and heated at school until it steams all through.`;
    case "CLEAN_BETWEEN":
      return `${sessionName(caution.session)}: what has no ${sayAllergens(caution.allergens, "or")} first, then clean boards, knives and hands.`.replace(
        /^t/,
        "T",
      );
    case "COOL_QUICKLY":
      return `${baseName(names, caution.base)}: cool it below 21 °C within two hours and to 5 °C within six in all. In a refrigerator alone a layer of 1 cm does that (model); stand deeper food in cold water and stir, then into the refrigerator.`;
    case "ADVICE_NOT_MET":
      return `The school advises otherwise (${caution.ruleSet}, ${caution.rule}).`;
    case "RULE_RESTS":
      return `On a clinician's note a rule rests for ${names.child(caution.childId)} on ${list(caution.dates)} (${caution.ruleSet}, ${caution.rule}). The school should know of it.`;
    case "READY_UNUSED":
      return caution.from === "LEFTOVER"
        ? `${baseName(names, caution.base)}: ${caution.grams} g of the leftover is in no box; eat it by ${caution.lastDate}, after that it is thrown away.`
        : `${baseName(names, caution.base)}: ${caution.grams} g in the freezer is in no box and is best by ${caution.lastDate}.`;
    case "FIGURE_MISSING":
      return `The composition table has no figure for ${nutrientNames[caution.nutrient] ?? caution.nutrient} in ${foodName(names, caution.food)}; the real amount is higher than shown.`;
    case "GENERAL":
      return {
        LABELS:
          "Allergens are derived from the ingredients entered here. Recipes of bought food change: read every label.",
        CHOKING: "Cutting advice supports an adult who watches; it does not replace one.",
        HOLDING:
          "Holding times assume food at 5 °C or colder when it leaves, a closed insulated bag and frozen cold sources. The local food authority decides.",
        NUTRITION:
          "Nutrient figures are estimates for planning, not dietetic or medical advice. Where a school, a local code or a clinician says otherwise, they are right.",
      }[caution.about];
  }
}

const keptIn = { CUPBOARD: "in the cupboard", REFRIGERATOR: "in the refrigerator", FREEZER: "in the freezer" } as const;

/** What the spare of a pack is good for, as half a sentence. */
export function saySpareUse(use: SpareUse, names: Names): string {
  switch (use.kind) {
    case "KEEPS_FOR_NEXT_WEEK":
      return `keeps ${keptIn[use.where]}${use.untilDate === null ? "" : ` until ${use.untilDate}`}, for next week`;
    case "EAT_BY":
      return `eat it by ${use.untilDate}`;
    case "KEEPING_UNKNOWN":
      return "how long it keeps once opened stands on the pack";
    case "FREEZES":
      return `or freeze it, up to ${use.days} days`;
    case "DISHES":
      return `good for ${list(
        use.dishes.map(
          ({ dish, childIds }) => `${dishName(names, dish)} (${list(childIds.map((id) => names.child(id)))})`,
        ),
        "or",
      )}`;
  }
}

export function sayReason(reason: Reason, names: Names): string {
  switch (reason.kind) {
    case "SHARES_BASE": {
      const others = reason.withChildren.map((id) => names.child(id));
      const dates = reason.dates.length > 1 ? `, for ${reason.dates.length} days` : "";
      return `uses ${baseName(names, reason.base)}${others.length > 0 ? ` made once with ${list(others)}` : " made once"}${dates}`;
    }
    case "FILLS_NEED":
      return reason.percentOfTarget >= 100
        ? `alone brings what the day's boxes should of ${nutrientNames[reason.nutrient] ?? plain(reason.nutrient)}`
        : `brings ${reason.percentOfTarget} % of what the day's boxes should of ${nutrientNames[reason.nutrient] ?? plain(reason.nutrient)}`;
    case "SAVES_MINUTES": {
      const others = reason.withChildren.map((id) => names.child(id));
      return `saves ${reason.minutes} min of hands-on work against cooking it on its own${others.length > 0 ? `, together with ${list(others)}` : ""}`;
    }
    case "USES_READY":
      return `eats up ${baseName(names, reason.base)} that ${reason.from === "FREEZER" ? "waits in the freezer" : reason.from === "LEFTOVER" ? "is left over" : "is cooked already"}`;
    case "DONE_EVENING_BEFORE":
      return `keeps ${reason.minutes} min out of the morning: done the evening before`;
    case "AVOIDS":
      return `free of ${sayAllergens(reason.allergens)}; ${reason.dishes} other ${reason.dishes === 1 ? "dish" : "dishes"} for such a place ${reason.dishes === 1 ? "is" : "are"} not`;
    case "AVOIDS_DISLIKED":
      return `has nothing disliked in it; ${reason.dishes} other ${reason.dishes === 1 ? "dish" : "dishes"} to be had here ${reason.dishes === 1 ? "has" : "have"}`;
    case "LIKED":
      return "has been eaten before";
    case "NEW_TASTE":
      return "a new taste beside known things";
    case "PINNED":
      return "pinned by a carer";
    case "ONLY_CHOICE":
      return "the only dish that passes every rule here";
  }
}

/** Why a dish or food may not stand at a place. */
export function sayExclusion(cause: ExclusionCause, names: Names): string {
  switch (cause.kind) {
    case "ALLERGEN":
      return `Contains ${plain(cause.allergen)} (${foodName(names, cause.food)}), which this child avoids.`;
    case "MAY_CONTAIN":
      return `The label of ${foodName(names, cause.food)} says it may contain ${plain(cause.allergen)}, and this child avoids traces.`;
    case "KEPT_OUT":
      return `Contains ${plain(cause.allergen)} (${foodName(names, cause.food)}), which this kitchen keeps out.`;
    case "DIET":
      return `Against the child's diet (${plain(cause.diet)}): it contains ${list(cause.origins.map(plain))}.`;
    case "CHOKING":
      return `${foodName(names, cause.food)} is a choking hazard under ${cause.underAgeYears} years that no cut makes safe.`;
    case "HOLDING":
    case "FACILITY":
      return {
        TooLongWithoutCold: `It would be ${cause.minutes} minutes without enough cold; the limit is ${cause.limitMinutes}.`,
        NeedsFlask: "It is eaten warm and there is no flask and nothing to heat it with.",
        NeedsReheating: `It is eaten warm, would be ${cause.minutes} minutes in the flask (limit ${cause.limitMinutes}), and nothing there heats it.`,
        GoodForTooShort: `It stays good for ${cause.limitMinutes} minutes and is eaten after ${cause.minutes}.`,
        HotWhenPacked:
          "It is cooked too late to be cold when the box is closed, and hot food is not closed into a chilled box.",
      }[cause.fault];
    case "RULE":
      return `A rule of the school or the family shuts it out (${cause.ruleSet}, ${cause.rule}).`;
    case "OUT_OF":
      return `The household is out of ${plain(cause.foodKind)}.`;
    case "EQUIPMENT":
      return `It needs ${cause.neededUnits} x ${plain(cause.equipment)}; the kitchen has ${cause.haveUnits}.`;
    case "NO_SESSION":
      return `No session of this week can make ${baseName(names, cause.base)}.`;
    case "MORNING_TOO_SHORT":
      return `Its morning takes ${Math.ceil(cause.neededMinutes)} minutes; there are ${Math.floor(cause.haveMinutes)}.`;
    case "VOLUME":
      return `It takes ${Math.ceil(cause.ml)} ml; the largest compartment holds ${cause.compartmentMl}.`;
  }
}

const factWords: Readonly<Record<string, string>> = {
  ALLERGEN: "contain an allergen",
  MAY_CONTAIN: "may contain an allergen",
  KEPT_OUT: "contain what this kitchen keeps out",
  DIET: "are against the diet",
  CHOKING: "are a choking hazard at this age",
  HOLDING: "would not keep until the break",
  FACILITY: "need what the school does not have",
  RULE: "are against a school rule",
  OUT_OF: "need food that is out",
  EQUIPMENT: "need equipment that is not there",
  NO_SESSION: "have no session to be made in",
  MORNING_TOO_SHORT: "take longer than the morning",
  VOLUME: "do not fit the box",
};

/** @returns what clashes; who and when stand in the conflict's own fields */
export function sayConflict(conflict: Conflict, names: Names): string {
  const { facts } = conflict;
  const fact = (key: string) => facts[key] ?? "?";
  switch (conflict.kind) {
    case "NO_DISH_LEFT": {
      const causes = Object.entries(facts)
        .filter(([key]) => key in factWords)
        .map(([key, count]) => `${count} ${factWords[key]}`);
      return `No dish is left for ${plain(String(fact("slot")))} at ${fact("breakKey")}${causes.length > 0 ? `: ${list(causes)}` : ""}.`;
    }
    case "PIN_NOT_ALLOWED":
      return `${dishName(names, String(fact("dish")))} may not stand there: such dishes ${factWords[String(fact("reason"))] ?? "are for another slot"}.`;
    case "ENERGY_OUT_OF_REACH":
      return "No choice of the dishes that are left reaches the energy this box should have.";
    case "NUTRIENT_OUT_OF_REACH":
      return `No choice of the dishes that are left keeps ${nutrientNames[String(fact("nutrient"))] ?? plain(String(fact("nutrient")))} within its limit.`;
    case "RULE_OUT_OF_REACH":
      return `A rule cannot be met with the dishes that are left (${fact("ruleSet")}, ${fact("rule")}).`;
    case "RULE_NOT_JUDGED":
      return `A rule cannot be judged yet, so nothing is planned against it (${fact("ruleSet")}, ${fact("rule")}).`;
    case "BOX_TOO_SMALL":
      return "The food does not fit the compartments of the box.";
    case "SESSION_TOO_SHORT":
      return `${conflict.session ? sessionName(conflict.session) : "A session"} needs ${fact("neededMinutes")} minutes and has ${fact("haveMinutes")}.`.replace(
        /^t/,
        "T",
      );
    case "EQUIPMENT_TOO_BUSY":
      return `The ${plain(String(fact("equipment")))} is ${fact("excessMinutes")} minutes short${conflict.session ? ` in ${sessionName(conflict.session)}` : ""}.`;
    case "REFRIGERATOR_FULL":
      return `The refrigerator is ${fact("excessMl")} ml too small that night.`;
    case "BASE_NOT_MADE":
      return `${baseName(names, String(fact("base")))} cannot be made in time.`;
    case "SIBLINGS_DIFFER":
      return "The children's boxes cannot differ enough that day.";
    case "DISH_REPEATS":
      return "dish" in facts
        ? `${dishName(names, String(fact("dish")))} would come too often in the week.`
        : "One dish would come twice in one box.";
    case "STARCH_CHANGES":
      return "The same starch would come two days running.";
    case "NOTHING_TO_PACK":
      return "No box is to be packed in this week.";
  }
}

/** Why a box is blocked; what only the packing kitchen knows is said where the row carries it. */
export function sayBlock(block: BlockRow, childId: string, names: Names): string {
  const { kind, dish, allergen } = block.note ?? block;
  const child = names.child(childId);
  const it = dish === null ? "Something in it" : dishName(names, dish);
  const inFood = block.note?.food == null ? "" : ` (${foodName(names, block.note.food)})`;
  const what = allergen === null ? "what is avoided" : plain(allergen);
  switch (kind) {
    case "ALLERGEN":
      return `${it} contains ${what}${inFood}, which ${child} avoids.`;
    case "MAY_CONTAIN":
      return `${it} may contain ${what}${inFood}, and ${child} avoids traces.`;
    case "LABEL_UNREAD":
      return `${it} is packed, and the label of ${block.note?.food == null ? "a food in it" : foodName(names, block.note.food)} has not been read for what ${child} avoids now.`;
    case "KEPT_OUT":
      return `${it} contains ${what}${inFood}, which this kitchen keeps out.`;
    case "DIET":
      return `${it} is against ${child}'s diet${block.diet === null ? "" : ` (${plain(block.diet)})`}.`;
    case "CHOKING":
      return `${it} is a choking hazard at ${child}'s age as it is prepared${inFood}.`;
    case "HOLDING":
      return `${it} would not keep until the break with this box on this day.`;
    case "NO_REHEATING":
      return `${it} was to be heated at school, and nothing there heats it on this day.`;
    case "RULE":
      return `Against a rule of the school or the family: ${block.says ?? `${block.ruleSet ?? "?"}, ${block.rule ?? "?"}`}`;
    case "RULE_NOT_JUDGED":
      return `A rule cannot be judged with what is known, so nothing is let through: ${block.says ?? `${block.ruleSet ?? "?"}, ${block.rule ?? "?"}`}`;
    case "NO_SCHOOL":
      return `${child} has no school on this day.`;
    case "NOT_DUE":
      return `No box is due for ${child} from this home on this day.`;
    case "BREAKS_CHANGED":
      return "The breaks of this day are not those the box was planned for.";
    case "DISH_UNKNOWN":
      return `${it} can no longer be checked: it or something in it has left the catalogue.`;
    case "FOOD_MISSING":
      return `${it} needs something that is not to be had${inFood}.`;
    case "APPLIANCE_BROKEN":
      return "Something in it is made with an appliance that cannot be used.";
    case "SHORT_MORNING":
      return "The morning is too short for what was planned in it.";
    case "KITCHEN":
      return "The home that packs it has to settle something in its kitchen first.";
  }
}

/** What was reported, for both homes where it is about a child. */
export function sayDisruption(row: DisruptionRow, names: Names): string {
  const when = row.date === row.until ? `on ${row.date}` : `from ${row.date} to ${row.until}`;
  const who = "childId" in row ? names.child(row.childId) : "";
  switch (row.kind) {
    case "ABSENT":
      return `${who} stays home ${when}${row.reason === "" ? "" : ` (${row.reason})`}.`;
    case "SCHOOL_CLOSED":
      return `${who}'s school is closed ${when}.`;
    case "EARLY_FINISH":
      return `${who}'s school ends at ${row.endsAt ?? "?"} ${when}.`;
    case "TRIP":
      return `${who} is on a school trip ${when}.`;
    case "FOOD_MISSING":
      return `There is no ${plain(row.foodKind ?? "")} ${when}.`;
    case "APPLIANCE_BROKEN":
      return `${row.units ?? 1} x ${plain(row.appliance ?? "")} cannot be used ${when}.`;
    case "SHORT_MORNING":
      return `The morning is ${row.minutes ?? 0} minutes ${when}.`;
  }
}

export function sayWayOut(way: WayOut): string {
  return {
    ADD_DISHES: "Add dishes that pass, or look at the rule that shuts them out.",
    ADD_MINUTES: "Give the session more minutes or another carer.",
    ADD_EQUIPMENT: "Add equipment, or choose other dishes.",
    BIGGER_BOX: "Use a bigger box.",
    CHANGE_PIN: "Take the pin away or choose another dish.",
    CHANGE_RULE: "Ask whoever set the rule.",
    COLD_SOURCES: "Add cold sources and an insulated bag.",
    FEWER_BOXES: "Take school meals for a child on that day.",
    FLASK: "Add a flask.",
    LEAVE_LATER: "Begin the morning earlier or leave later.",
    MAKE_REFRIGERATOR_ROOM: "Make room in the refrigerator.",
    RELAX_HOUSE_RULE: "Let the house rule rest for that day (relaxHouseRule).",
    WRITE_RULE_IN_GRAMS: "Write the rule in grams.",
  }[way];
}

/** Why a dish is not offered at a place, and where that is laid down. */
export function sayNotOffered(why: WhyNotOffered, names: Names): { readonly text: string; readonly source: string } {
  if (why.kind === "OTHER_SLOT")
    return { text: `It is a dish for ${list(why.slots.map(plain), "or")}.`, source: "The dish's own entry." };
  if (why.kind === "BOX_CLOSED")
    return { text: "The box is packed, eaten or of a day gone by, and does not move.", source: "The week's plan." };
  return { text: sayExclusion(why, names), source: sourceOf(why) };
}

function sourceOf(cause: ExclusionCause): string {
  switch (cause.kind) {
    case "CHOKING":
    case "HOLDING":
    case "FACILITY":
    case "RULE":
      return cause.source;
    case "ALLERGEN":
      return "The child's allergies on record, and what the food always contains or its label says.";
    case "MAY_CONTAIN":
      return "The child's allergies on record, and the label.";
    case "KEPT_OUT":
      return "What the household keeps out of its kitchen.";
    case "DIET":
      return "The child's diet on record.";
    case "OUT_OF":
      return "What the household is out of this week.";
    case "EQUIPMENT":
      return "The kitchen's equipment on record.";
    case "NO_SESSION":
    case "MORNING_TOO_SHORT":
      return "The household's times for cooking on record.";
    case "VOLUME":
      return "The child's box on record.";
  }
}

const signed = (figure: number, unit: string) => `${Math.abs(figure)} ${unit} ${figure > 0 ? "more" : "less"}`;

/** What a week with another dish would have more or less of than the week as it is. */
export function sayPrice(price: PriceOfChange): string {
  const parts = [
    price.handsOnMinutes === 0 ? null : `${signed(price.handsOnMinutes, "min")} of hands-on work`,
    price.costMinor === 0
      ? null
      : `${(Math.abs(price.costMinor) / 100).toFixed(2)} ${price.costMinor > 0 ? "more" : "less"} to buy`,
    price.spareBaseGrams === 0 ? null : `${signed(price.spareBaseGrams, "g")} left over`,
    price.nutrientShortfallPercent === 0
      ? null
      : `${signed(price.nutrientShortfallPercent, "%")} missed of the week's targets`,
    price.refusalPoints === 0 ? null : price.refusalPoints > 0 ? "likelier to come back" : "likelier to be eaten",
    price.monotonyPoints === 0 ? null : price.monotonyPoints > 0 ? "more of the same" : "less of the same",
  ].filter((part) => part !== null);
  const items = price.changedItems - 1;
  const moved = items > 0 ? ` ${items === 1 ? "One other item changes" : `${items} other items change`} with it.` : "";
  return `${parts.length > 0 ? `The week would have ${list(parts)}.`.replace("have likelier", "be likelier") : "The week would be as it is."}${moved}`;
}

const houseRules: Readonly<Record<Extract<Requirement, { kind: "HOUSE_RULE" }>["rule"], string>> = {
  SIBLINGS_DIFFER: "The children's boxes differ",
  DISH_REPEATS: "No main comes twice in the week, and no other dish three times",
  STARCH_CHANGES: "The starch of the main changes from day to day",
};

/** One requirement of a set that clashes; `ruleSets` are those obeyed, to quote a rule from. */
export function sayRequirement(requirement: Requirement, ruleSets: readonly RuleSetDocument[], names: Names): string {
  const who = "childId" in requirement ? names.child(requirement.childId) : "";
  switch (requirement.kind) {
    case "BOX":
      return `${who} takes a whole box on ${requirement.date}.`;
    case "PIN":
      return requirement.because === "PACKED"
        ? `${dishName(names, requirement.dish)} is in ${who}'s box of ${requirement.date} already.`
        : `${dishName(names, requirement.dish)} is to stand in ${who}'s box on ${requirement.date}.`;
    case "ENERGY":
      return `${who}'s box on ${requirement.date} keeps near its share of the day's energy.`;
    case "NUTRIENT":
      return `${who}'s box on ${requirement.date} keeps ${nutrientNames[requirement.nutrient] ?? plain(requirement.nutrient)} within its limit.`;
    case "BOX_SPACE":
      return `What ${who} eats on ${requirement.date} fits the compartments of the box.`;
    case "BOX_REPEATS":
      return `Nothing comes twice in ${who}'s box on ${requirement.date}.`;
    case "HOLDING":
      return `What ${who} takes on ${requirement.date} keeps until the break with the box's cold and flask.`;
    case "RULE": {
      const rule = ruleSets
        .find(({ key }) => key === requirement.ruleSet)
        ?.rules.find(({ id }) => id === requirement.rule);
      const when = requirement.date === null ? "" : ` on ${requirement.date}`;
      return `${who}${when}, by ${requirement.ruleSet}: ${rule?.says ?? requirement.rule}`;
    }
    case "HOUSE_RULE":
      return `${houseRules[requirement.rule]}, ${requirement.date} included.`;
    case "SESSION":
      return `${sessionName(requirement.session)} has no more minutes than it has.`.replace(/^t/, "T");
    case "EQUIPMENT_TIME":
      return `${sessionName(requirement.session)}: the ${plain(requirement.equipment)} is not free for longer.`.replace(
        /^t/,
        "T",
      );
    case "EQUIPMENT":
      return `The kitchen has no more ${plain(requirement.equipment)} than it has.`;
    case "REFRIGERATOR":
      return "The refrigerator has no more room than it has.";
    case "OUT_OF":
      return `The household is out of ${plain(requirement.foodKind)}.`;
    case "KEPT_OUT":
      return `The kitchen keeps out ${plain(requirement.allergen)}.`;
    case "ALLERGY":
      return `${who} avoids ${plain(requirement.allergen)}.`;
    case "DIET":
      return `${who}'s diet is ${plain(requirement.diet)}.`;
    case "CHOKING":
      return `${who} is too young for some forms of food.`;
  }
}

/** One change that was tried and made the week possible. */
export function sayChange(change: Change, names: Names): string {
  const who = "childId" in change ? names.child(change.childId) : "";
  switch (change.kind) {
    case "UNPIN":
      return `Take the pin off ${dishName(names, change.dish)} in ${who}'s box of ${change.date}.`;
    case "RELAX_HOUSE_RULE":
      return `Let a house rule rest on ${change.date} (relaxHouseRule): ${houseRules[change.rule].replace(/^./, (letter) => letter.toLowerCase())}.`;
    case "GET_FOOD":
      return `Get ${plain(change.foodKind)}.`;
    case "COLD_SOURCES":
      return `${who}'s box in an insulated bag with ${change.coldSources} cold sources.`;
    case "FLASK":
      return `A flask for ${who}.`;
    case "MORE_MINUTES":
      return change.session.startsWith("morning") || change.session.endsWith("morning")
        ? `Begin ${sessionName(change.session)} ${change.minutes} minutes earlier.`
        : `Give ${sessionName(change.session)} ${change.minutes} minutes more.`;
    case "EXTRA_SESSION":
      return `Cook for ${change.minutes} minutes on the ${plain(change.window)} of ${change.date}, from ${change.startsAt}.`;
    case "BIGGER_BOX":
      return `A box for ${who} whose largest compartment holds ${change.moreMl} ml more.`;
    case "MORE_EQUIPMENT":
      return `One more ${plain(change.equipment)}.`;
    case "REFRIGERATOR_ROOM":
      return `${change.moreMl / 1000} litres more room in the refrigerator.`;
    case "SCHOOL_MEAL":
      return `A school meal for ${who} on ${change.date} instead of a box.`;
  }
}

/** What is not known, and what that keeps from happening. */
export function sayMissing(fact: MissingFact, names: Pick<Names, "index">): string {
  const of = list(fact.foods.map((key) => names.index.food(key)?.name ?? key));
  switch (fact.kind) {
    case "LABEL":
      return `No label on record for ${of}: unread for everybody who avoids anything, and such a box cannot be packed before it is read (recordLabel).`;
    case "NUTRIENT": {
      const refusing = fact.rules.filter(({ refuses }) => refuses);
      const counting = fact.rules.filter(({ refuses }) => !refuses);
      const figure = nutrientNames[fact.nutrient] ?? figureNames[fact.nutrient] ?? plain(fact.nutrient);
      return [
        `No figure for ${figure} in ${of}.`,
        ...refusing.map(
          ({ rule, ruleSet, level }) =>
            `${level === "FORBID" ? "Kept out by" : "Goes against advice of"} ${ruleSet}, which has a limit on it: ${rule}`,
        ),
        ...counting.map(({ rule, ruleSet }) => `Counts as none towards ${ruleSet}: ${rule}`),
        fact.nutrient === "CHOCDF"
          ? "The carbohydrate of an item with it is not shown."
          : fact.nutrient === "ENERC_KCAL"
            ? "A portion keeps its size, whoever eats it."
            : "Minima count it as none; sums are at least what they show.",
      ].join(" ");
    }
    case "HOLDING":
      return `No water activity or pH for ${of}: counts as needing cold.`;
    case "FREE_SUGAR":
      return `No added sugars for ${of}: all sugars count as free.`;
    case "DENSITY":
      return `No density for ${of}: recipes take it in grams only.`;
  }
}

const organismNames: Readonly<Record<NonNullable<HoldingForecast["organism"]>, string>> = {
  BACILLUS_CEREUS: "Bacillus cereus",
  STAPHYLOCOCCUS_AUREUS: "Staphylococcus aureus",
  SALMONELLA: "Salmonella",
  LISTERIA_MONOCYTOGENES: "Listeria monocytogenes",
  ESCHERICHIA_COLI: "Escherichia coli",
};
export const sayOrganism = (code: HoldingForecast["organism"]): string | null =>
  code === null ? null : organismNames[code];

/** What has to be true for a forecast's figures, with the model's own numbers; empty without one. */
export function sayHoldingAssumptions(forecast: HoldingForecast | null, model: HoldingModel): string[] {
  if (forecast === null) return [];
  const p = model.parameters;
  const room = forecast.hotDay ? p.hotDayCelsius : p.ambientCelsius;
  const inTheRoom = `The bag stands in ${room} °C all the time.`;
  const alone = "The item is reckoned as if alone in the bag: nothing beside it keeps it cold.";
  const always = "Nothing else grows faster than the organisms looked for, and the food was clean and cooked through.";
  switch (forecast.start) {
    case "CHILLED":
      return [
        `It is at ${p.chilledStartCelsius} °C or colder when it leaves the refrigerator and the bag is closed.`,
        `The bag is insulated and holds ${forecast.coldSources} cold sources of at least ${p.coldSourceGrams} g, frozen hard.`,
        inTheRoom,
        `${alone} ${p.neighbourGrams} g of other food come in at ${p.kitchenCelsius} °C and melt ice.`,
        always,
      ];
    case "COLD":
      return [
        `It is at ${p.chilledStartCelsius} °C or colder when it leaves the refrigerator; no cold source goes with it.`,
        inTheRoom,
        alone,
        always,
      ];
    case "WARM":
      return [
        `It was cooked that morning, up to ${forecast.minutesBefore} min before leaving, and has been below ${p.warmStartCelsius} °C since.`,
        `A whole box of warm food cools in ${p.ambientCelsius} °C.`,
        always,
      ];
    case "FLASK":
      return [
        `The flask was heated with boiling water, and the food goes in at ${p.flaskStartCelsius} °C or more with a clean spoon.`,
        `The flask loses ${p.flaskWattsPerKelvin} W per degree and stands in ${p.coolRoomCelsius} °C; it holds this portion only.`,
        `From the moment it is below ${p.exposureBelowCelsius} °C it has ${p.exposureMinutes} min.`,
        always,
      ];
  }
}

export function sayHoldingMend(mend: HoldingMend): string {
  return {
    COLD_SOURCES: "Put in more cold sources, in an insulated bag.",
    FLASK: "Carry it in a preheated flask.",
    OTHER_DISH: "Choose another dish.",
    LESS_TIME: "Leave later or eat it at an earlier break.",
  }[mend];
}

/** One line about the item of a box that comes nearest to its limit; null when nothing in the box needs control. */
export function sayBoxHolding(
  items: readonly {
    readonly minutes: number;
    readonly limitMinutes: number;
    readonly case: string;
    readonly forecast: HoldingForecast | null;
  }[],
): string | null {
  const controlled = items.filter((item) => item.case !== "NOT_CONTROLLED");
  const [nearest] = [...controlled].sort(
    (a, b) =>
      a.limitMinutes - a.minutes - (b.limitMinutes - b.minutes) ||
      (b.forecast?.growthLog10 ?? 0) - (a.forecast?.growthLog10 ?? 0),
  );
  if (nearest === undefined) return null;
  const { forecast } = nearest;
  const time = `eaten ${nearest.minutes} min after leaving, at most ${nearest.limitMinutes}`;
  if (forecast === null) return `${time} (${plain(nearest.case)})`;
  const heat =
    forecast.start === "FLASK" ? `${forecast.endCelsius} °C when eaten` : `warms to ${forecast.mostCelsius} °C`;
  return `${time} (${plain(nearest.case)}, ${heat} by our model)`;
}

/** One issue of a document on one line, as the command prints it too. */
export function sayIssue({ path, line, problem, expected, nearest }: DocumentIssue): string {
  const at = path === "" ? `Line ${line}:` : `Line ${line}, ${path}`;
  const near = nearest.length > 0 ? ` Did you mean ${nearest.join(", ")}?` : "";
  return `${at} ${problem}; expected: ${expected}.${near}`;
}
