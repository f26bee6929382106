/** Why no week was found: which requirements clash, for whom and when, and the smallest things that could give way. */
import type { WeekBrief } from "../brief.js";
import type { CatalogueIndex } from "../catalogue/derive.js";
import { packMinutesPerBox } from "../kitchen/work.js";
import type { Candidates, Exclusion, ExclusionCause } from "./candidates.js";
import type { FormulationKey, RowMeaning } from "./formulate.js";
import type { LayOutFault } from "./lay-out.js";
import type { Clash, Problem } from "./problem.js";
import { reachOf } from "./reach.js";

export type WayOut =
  | "ADD_DISHES"
  | "ADD_MINUTES"
  | "ADD_EQUIPMENT"
  | "BIGGER_BOX"
  | "CHANGE_PIN"
  | "CHANGE_RULE"
  | "COLD_SOURCES"
  | "FEWER_BOXES"
  | "FLASK"
  | "LEAVE_LATER"
  | "MAKE_REFRIGERATOR_ROOM"
  | "RELAX_HOUSE_RULE"
  | "WRITE_RULE_IN_GRAMS";

export type ConflictKind =
  | "NO_DISH_LEFT"
  | "PIN_NOT_ALLOWED"
  | "ENERGY_OUT_OF_REACH"
  | "NUTRIENT_OUT_OF_REACH"
  | "RULE_OUT_OF_REACH"
  | "RULE_NOT_JUDGED"
  | "BOX_TOO_SMALL"
  | "SESSION_TOO_SHORT"
  | "EQUIPMENT_TOO_BUSY"
  | "REFRIGERATOR_FULL"
  | "BASE_NOT_MADE"
  | "SIBLINGS_DIFFER"
  | "DISH_REPEATS"
  | "STARCH_CHANGES"
  | "NOTHING_TO_PACK";

export interface Conflict {
  readonly kind: ConflictKind;
  readonly childId: string | null;
  readonly date: string | null;
  readonly session: string | null;
  /** In the unit their name says. */
  readonly facts: Readonly<Record<string, string | number>>;
  readonly wayOut: readonly WayOut[];
}

type At = Partial<Pick<Conflict, "childId" | "date" | "session">>;
const conflict = (kind: ConflictKind, at: At, facts: Conflict["facts"], wayOut: readonly WayOut[]): Conflict => ({
  kind,
  childId: at.childId ?? null,
  date: at.date ?? null,
  session: at.session ?? null,
  facts,
  wayOut,
});

const mendOf: Readonly<Record<ExclusionCause["kind"], WayOut>> = {
  ALLERGEN: "ADD_DISHES",
  MAY_CONTAIN: "ADD_DISHES",
  KEPT_OUT: "ADD_DISHES",
  DIET: "ADD_DISHES",
  CHOKING: "ADD_DISHES",
  HOLDING: "COLD_SOURCES",
  FACILITY: "FLASK",
  RULE: "CHANGE_RULE",
  OUT_OF: "ADD_DISHES",
  EQUIPMENT: "ADD_EQUIPMENT",
  NO_SESSION: "ADD_MINUTES",
  MORNING_TOO_SHORT: "ADD_MINUTES",
  VOLUME: "BIGGER_BOX",
};

/** Dishes shut out of a place, counted by cause, the most frequent first. */
function countCauses(exclusions: readonly Exclusion[]): [ExclusionCause["kind"], number][] {
  const counts = new Map<ExclusionCause["kind"], number>();
  for (const { why } of exclusions) counts.set(why.kind, (counts.get(why.kind) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
}

/** What is certain before any search: empty places, pins that are not allowed, mornings without time to pack. */
export function findPlaceConflicts(brief: WeekBrief, index: CatalogueIndex, candidates: Candidates): Conflict[] {
  const conflicts: Conflict[] = [];
  if (candidates.places.length === 0) conflicts.push(conflict("NOTHING_TO_PACK", {}, {}, []));
  for (const { place, dishes, pin } of candidates.places) {
    const { childId, date, breakKey, slot } = place;
    const shutOut = candidates.exclusions.filter(
      (row) => row.childId === childId && row.date === date && row.breakKey === breakKey && row.slot === slot,
    );
    if (dishes.length === 0) {
      const causes = countCauses(shutOut);
      const wayOut = [...new Set(causes.map(([kind]) => mendOf[kind]))];
      const facts = { breakKey, slot, ...Object.fromEntries(causes) };
      conflicts.push(conflict("NO_DISH_LEFT", { childId, date }, facts, wayOut.length > 0 ? wayOut : ["ADD_DISHES"]));
      continue;
    }
    if (pin === null || dishes.some(({ derived }) => derived.dish.key === pin.dish)) continue;
    const why = shutOut.find((row) => row.dish === pin.dish)?.why.kind;
    const reason = why ?? (index.dish(pin.dish) === undefined ? "UNKNOWN_DISH" : "OTHER_SLOT");
    conflicts.push(
      conflict("PIN_NOT_ALLOWED", { childId, date }, { breakKey, slot, dish: pin.dish, reason }, ["CHANGE_PIN"]),
    );
  }
  for (const session of brief.sessions) {
    if (session.kind !== "MORNING") continue;
    const isPacked = (childId: string): boolean =>
      brief.pins.some((pin) => pin.because === "PACKED" && pin.childId === childId && pin.date === session.date);
    const boxes = brief.children.flatMap((child) =>
      isPacked(child.id) ? [] : child.days.filter((day) => day.date === session.date),
    );
    const needed = boxes.reduce(
      (sum, day) => sum + packMinutesPerBox(day.breaks.reduce((items, pause) => items + pause.slots.length, 0)),
      0,
    );
    const have = Math.min(session.handsOnMinutes, session.elapsedMinutes * session.carers);
    if (boxes.length === 0 || needed <= have) continue;
    const facts = { neededMinutes: Math.ceil(needed), haveMinutes: have };
    conflicts.push(
      conflict("SESSION_TOO_SHORT", { date: session.date, session: session.key }, facts, [
        "ADD_MINUTES",
        "FEWER_BOXES",
      ]),
    );
  }
  return conflicts;
}

function meaningConflict(meaning: RowMeaning, facts: Conflict["facts"]): Conflict {
  const at = { childId: meaning.childId, date: meaning.date };
  switch (meaning.kind) {
    case "ENERGY":
      return conflict("ENERGY_OUT_OF_REACH", at, facts, ["ADD_DISHES", "BIGGER_BOX"]);
    case "NUTRIENT":
      return conflict("NUTRIENT_OUT_OF_REACH", at, { nutrient: meaning.nutrient, ...facts }, ["ADD_DISHES"]);
    case "BOX_SPACE":
      return conflict("BOX_TOO_SMALL", at, facts, ["BIGGER_BOX"]);
    case "BOX_REPEATS":
      return conflict("DISH_REPEATS", at, facts, ["ADD_DISHES"]);
    case "RULE":
      return conflict("RULE_OUT_OF_REACH", at, { ruleSet: meaning.ruleSet, rule: meaning.rule, ...facts }, [
        "ADD_DISHES",
        "CHANGE_RULE",
      ]);
  }
}

/** What no choice among the candidates can meet, row by row, and rules that cannot be judged at all. */
export function findReachConflicts(problem: Problem, layout: FormulationKey): Conflict[] {
  const conflicts: Conflict[] = layout.unjudged
    .filter(({ rule }) => rule.level === "FORBID")
    .map(({ ruleSet, rule, childId }) =>
      conflict("RULE_NOT_JUDGED", { childId }, { ruleSet, rule: rule.id }, ["WRITE_RULE_IN_GRAMS", "CHANGE_RULE"]),
    );
  for (const { name, measure, positions, lo, hi } of problem.bands) {
    const meaning = layout.meanings.get(name);
    if (meaning === undefined) continue;
    const { least, most } = reachOf(problem, measure, positions);
    if (lo !== null && most < lo) conflicts.push(meaningConflict(meaning, { atLeast: lo, reachable: most }));
    if (hi !== null && least > hi) conflicts.push(meaningConflict(meaning, { atMost: hi, reachable: least }));
  }
  return distinctConflicts(conflicts);
}

/** What the best week met still breaks: where the search could not go, not a proof that nothing can. */
export function explainClashes(brief: WeekBrief, layout: FormulationKey, clashes: readonly Clash[]): Conflict[] {
  const conflicts = clashes.map((clash): Conflict => {
    const meaning = layout.meanings.get(clash.name);
    const childId = brief.children[clash.child]?.id ?? null;
    const date = layout.dates[clash.day] ?? null;
    const session = layout.sessions[clash.window] ?? null;
    const have = brief.sessions.find((row) => row.key === session)?.handsOnMinutes ?? 0;
    switch (clash.kind) {
      case "BAND":
      case "DISTINCT":
      case "TOGETHER":
        return meaning === undefined
          ? conflict("RULE_OUT_OF_REACH", { childId, date }, { excess: clash.excess }, ["CHANGE_RULE"])
          : meaningConflict(meaning, { excess: clash.excess });
      case "REPEATS":
        return conflict("DISH_REPEATS", { childId, date }, { dish: layout.dishes[Number(clash.name)] ?? clash.name }, [
          "RELAX_HOUSE_RULE",
          "ADD_DISHES",
        ]);
      case "STARCH":
        return conflict("STARCH_CHANGES", { childId, date }, {}, ["RELAX_HOUSE_RULE", "ADD_DISHES"]);
      case "SIBLINGS":
        return conflict(
          "SIBLINGS_DIFFER",
          { childId, date },
          { otherChildId: brief.children[Number(clash.name)]?.id ?? "" },
          ["RELAX_HOUSE_RULE", "ADD_DISHES"],
        );
      case "MINUTES": {
        const needed = have + Math.ceil(clash.excess / 10);
        return conflict("SESSION_TOO_SHORT", { date, session }, { neededMinutes: needed, haveMinutes: have }, [
          "ADD_MINUTES",
          "FEWER_BOXES",
        ]);
      }
      case "EQUIPMENT":
        return conflict(
          "EQUIPMENT_TOO_BUSY",
          { date, session },
          {
            equipment: layout.equipment[Number(clash.name)] ?? clash.name,
            excessMinutes: Math.ceil(clash.excess / 10),
          },
          ["ADD_EQUIPMENT", "ADD_MINUTES"],
        );
      case "STORAGE":
        return conflict("REFRIGERATOR_FULL", { date }, { excessMl: clash.excess }, ["MAKE_REFRIGERATOR_ROOM"]);
      case "SUPPLY":
        return conflict("BASE_NOT_MADE", { date }, { base: layout.bases[Number(clash.name)] ?? clash.name }, [
          "ADD_MINUTES",
          "ADD_DISHES",
        ]);
      case "EMPTY":
        return conflict("NO_DISH_LEFT", { childId, date }, {}, ["ADD_DISHES"]);
    }
  });
  return distinctConflicts(conflicts);
}

/** What the clock or the compartments did not hold, after the search was tightened as often as it may be. */
export function explainLayOut(faults: readonly LayOutFault[]): Conflict[] {
  return distinctConflicts(
    faults.map((fault): Conflict => {
      if (fault.kind === "BoxDoesNotClose") {
        return conflict("BOX_TOO_SMALL", { childId: fault.childId, date: fault.date }, { ml: fault.ml }, [
          "BIGGER_BOX",
        ]);
      }
      const { session, limit, neededMinutes, haveMinutes } = fault;
      const wayOut: WayOut[] = limit === "LEAVE_TIME" ? ["ADD_MINUTES", "LEAVE_LATER"] : ["ADD_MINUTES", "FEWER_BOXES"];
      return conflict("SESSION_TOO_SHORT", { session }, { limit, neededMinutes, haveMinutes }, wayOut);
    }),
  );
}

/** One row per conflict, in the order found. */
function distinctConflicts(conflicts: readonly Conflict[]): Conflict[] {
  return [...new Map(conflicts.map((row) => [JSON.stringify(row), row])).values()];
}
