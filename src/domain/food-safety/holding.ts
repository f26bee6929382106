/** Holding by time rules alone: from the moment the box leaves the refrigerator at home to the end of the break. */
import type { Dish } from "../../../shared/catalogue.js";
import type { FacilityCode } from "../../../shared/codes.js";
import type { ChildBrief, HoldingLimits } from "../brief.js";
import { minutesOf } from "../calendar/dates.js";
import type { DerivedDish } from "../catalogue/derive.js";
import { fail, ok, type Result } from "../result.js";
import type { HoldingPlan } from "../week.js";

type Mend = "COLD_SOURCES" | "FLASK" | "OTHER_DISH" | "LESS_TIME";

export type HoldingFault = {
  readonly kind: "TooLongWithoutCold" | "NeedsFlask" | "NeedsReheating" | "GoodForTooShort" | "HotWhenPacked";
  readonly minutes: number;
  readonly limitMinutes: number;
  /** What would make it pass, each enough on its own. */
  readonly mend: Mend[];
};

export type HoldingVerdict = Result<HoldingPlan & { readonly served: "COLD" | "WARM" }, HoldingFault>;

export interface HoldingInput {
  readonly dish: Dish;
  readonly derived: DerivedDish;
  readonly leaveAt: string;
  readonly breakStartsAt: string;
  readonly breakMinutes: number;
  readonly facility: FacilityCode;
  readonly reheatingAllowed: boolean;
  readonly box: ChildBrief["box"];
  readonly limits: HoldingLimits;
  /** Whether the dish can be at 5 C or less when it leaves: nothing in it comes hot out of the pan that morning. */
  readonly coldByMorning: boolean;
}

/**
 * Whether a food needs time or temperature control: Food Code 1-201.10, Table A (heat-treated and packaged afterwards) or
 * Table B (everything else). A cell that asks for a product assessment counts as controlled, and so does a figure that is
 * not known. Water activity 0 to 1, pH 0 to 14.
 */
export function isControlled(
  waterActivity: number | null,
  ph: number | null,
  heatTreatedAndPackaged: boolean,
): boolean {
  const aw = waterActivity ?? 1;
  const acidity = ph ?? 14;
  if (heatTreatedAndPackaged) {
    if (aw <= 0.92) return false;
    return aw <= 0.95 ? acidity > 5.6 : acidity > 4.6;
  }
  if (aw < 0.88) return false;
  if (aw <= 0.9) return acidity > 5.0;
  return aw <= 0.92 ? acidity > 4.6 : acidity >= 4.2;
}

/**
 * A mixture is judged at its worst corner, the highest water activity with the highest pH of its parts: a dry biscuit beside
 * an acid fruit may meet in a film that is neither. Packed at home, so Table B.
 */
function isDishControlled(derived: DerivedDish): boolean {
  const aw = Math.max(...derived.ingredients.map(({ food }) => food.waterActivity?.value ?? 1));
  const ph = Math.max(...derived.ingredients.map(({ food }) => food.ph?.value ?? 14));
  return isControlled(aw, ph, false);
}

/** At 5 C or less when it leaves, in an insulated bag with enough cold sources, within the hours that allows. */
function travelsChilled(input: HoldingInput, minutes: number): boolean {
  return input.coldByMorning && hasColdSources(input) && minutes <= input.limits.chilledMinutes;
}

function hasColdSources({ box, limits }: HoldingInput): boolean {
  return box.insulated && box.coldSources >= limits.coldSources;
}

/** The way a cold item may go, or null. With cold sources it travels chilled even where the ambient rule would do. */
function carryCold(input: HoldingInput, minutes: number, goodForMinutes: number): HoldingPlan | null {
  const { chilledMinutes, ambientMinutes } = input.limits;
  if (!isDishControlled(input.derived)) return { case: "NOT_CONTROLLED", minutes, limitMinutes: goodForMinutes };
  if (travelsChilled(input, minutes)) return { case: "CHILLED", minutes, limitMinutes: chilledMinutes };
  if (minutes <= ambientMinutes) return { case: "AMBIENT", minutes, limitMinutes: ambientMinutes };
  return null;
}

/** Cooked too late to be cold: only a flask, or another dish, would do. */
function refuseHot(input: HoldingInput, minutes: number): HoldingFault {
  const flask = input.dish.served !== "COLD" && !input.box.flask && minutes <= input.limits.flaskMinutes;
  return {
    kind: "HotWhenPacked",
    minutes,
    limitMinutes: input.limits.ambientMinutes,
    mend: flask ? ["FLASK", "OTHER_DISH"] : ["OTHER_DISH"],
  };
}

function refuseCold(input: HoldingInput, minutes: number): HoldingFault {
  if (!input.coldByMorning) return refuseHot(input, minutes);
  const { chilledMinutes, ambientMinutes, flaskMinutes } = input.limits;
  const equipped = hasColdSources(input);
  const mend: Mend[] = [];
  if (!equipped && minutes <= chilledMinutes) mend.push("COLD_SOURCES");
  if (input.dish.served === "EITHER" && !input.box.flask && minutes <= flaskMinutes) mend.push("FLASK");
  mend.push("OTHER_DISH", "LESS_TIME");
  const limitMinutes = equipped ? Math.max(chilledMinutes, ambientMinutes) : ambientMinutes;
  return { kind: "TooLongWithoutCold", minutes, limitMinutes, mend };
}

/** Food to be reheated has to come chilled, so without cold sources no time is short enough: the limit is 0. */
function refuseReheating(input: HoldingInput, minutes: number): HoldingFault {
  if (!input.coldByMorning) return refuseHot(input, minutes);
  const { chilledMinutes, flaskMinutes } = input.limits;
  const equipped = hasColdSources(input);
  const mend: Mend[] = [];
  if (!equipped && minutes <= chilledMinutes) mend.push("COLD_SOURCES");
  if (!input.box.flask && minutes <= flaskMinutes) mend.push("FLASK");
  mend.push("OTHER_DISH");
  if (equipped) mend.push("LESS_TIME");
  return { kind: "TooLongWithoutCold", minutes, limitMinutes: equipped ? chilledMinutes : 0, mend };
}

/** No place to reheat: a flask is the only way, and it has its own hours. */
function refuseWithoutReheating(input: HoldingInput, minutes: number): HoldingFault {
  const limitMinutes = input.limits.flaskMinutes;
  if (input.box.flask) return { kind: "NeedsReheating", minutes, limitMinutes, mend: ["OTHER_DISH", "LESS_TIME"] };
  const mend: Mend[] = minutes <= limitMinutes ? ["FLASK", "OTHER_DISH"] : ["OTHER_DISH"];
  return { kind: "NeedsFlask", minutes, limitMinutes, mend };
}

/**
 * How an item may be carried to its break, or why not. Minutes run from `leaveAt` to the end of the break. A dish for cold or
 * either goes cold if it can; a warm one goes into the preheated flask, else it is carried chilled to a place that reheats and
 * allows it. A refrigerator at school is not counted: when the box gets there is not known. Throws RangeError when the break
 * is over by the time the child leaves.
 */
export function judgeHolding(input: HoldingInput): HoldingVerdict {
  const minutes = minutesOf(input.breakStartsAt) + input.breakMinutes - minutesOf(input.leaveAt);
  if (minutes <= 0)
    throw new RangeError(`the break at ${input.breakStartsAt} is over when leaving at ${input.leaveAt}`);
  const { dish, limits } = input;
  const goodForMinutes = Math.floor(dish.goodForHours * 60);
  if (minutes > goodForMinutes) {
    return fail({ kind: "GoodForTooShort", minutes, limitMinutes: goodForMinutes, mend: ["OTHER_DISH", "LESS_TIME"] });
  }
  if (dish.served !== "WARM") {
    const cold = carryCold(input, minutes, goodForMinutes);
    if (cold !== null) return ok({ ...cold, served: "COLD" });
    if (dish.served === "COLD") return fail(refuseCold(input, minutes));
  }
  if (input.box.flask && minutes <= limits.flaskMinutes) {
    return ok({ case: "FLASK", minutes, limitMinutes: limits.flaskMinutes, served: "WARM" });
  }
  const canReheat = input.facility === "REHEATING" && input.reheatingAllowed;
  if (canReheat && travelsChilled(input, minutes)) {
    return ok({ case: "REHEATED_AT_SCHOOL", minutes, limitMinutes: limits.chilledMinutes, served: "WARM" });
  }
  if (dish.served === "EITHER") return fail(refuseCold(input, minutes));
  return fail(canReheat ? refuseReheating(input, minutes) : refuseWithoutReheating(input, minutes));
}
