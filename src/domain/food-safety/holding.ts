/** Holding by time rules alone: from the moment the box leaves the refrigerator at home to the end of the break. */
import type { Dish } from "../../../shared/catalogue.js";
import type { FacilityCode } from "../../../shared/codes.js";
import type { ChildBrief, HoldingLimits } from "../brief.js";
import { minutesOf } from "../calendar/dates.js";
import type { DerivedDish } from "../catalogue/derive.js";
import { fail, ok, type Result } from "../result.js";
import type { HoldingCase, HoldingPlan } from "../week.js";

type Mend = "COLD_SOURCES" | "FLASK" | "OTHER_DISH" | "LESS_TIME";

export type HoldingFault = {
  readonly kind: "TooLongWithoutCold" | "NeedsFlask" | "NeedsReheating" | "GoodForTooShort";
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

interface Times {
  readonly minutes: number;
  readonly goodForMinutes: number;
}

/** The cold way to carry it, or null. With cold sources it travels chilled even where the ambient rule would do. */
function carryCold(input: HoldingInput, times: Times): HoldingPlan | null {
  const { limits } = input;
  const plan = (holdingCase: HoldingCase, limitMinutes: number): HoldingPlan => ({
    case: holdingCase,
    minutes: times.minutes,
    limitMinutes,
  });
  if (!isDishControlled(input.derived)) return plan("NOT_CONTROLLED", times.goodForMinutes);
  if (hasColdSources(input) && times.minutes <= limits.chilledMinutes) return plan("CHILLED", limits.chilledMinutes);
  if (times.minutes <= limits.ambientMinutes) return plan("AMBIENT", limits.ambientMinutes);
  return null;
}

function hasColdSources({ box, limits }: HoldingInput): boolean {
  return box.insulated && box.coldSources >= limits.coldSources;
}

function refuseCold(input: HoldingInput, minutes: number): HoldingFault {
  const { limits } = input;
  const equipped = hasColdSources(input);
  const mend: Mend[] = [];
  if (!equipped && minutes <= limits.chilledMinutes) mend.push("COLD_SOURCES");
  if (input.dish.served === "EITHER" && !input.box.flask && minutes <= limits.flaskMinutes) mend.push("FLASK");
  mend.push("OTHER_DISH", "LESS_TIME");
  return {
    kind: "TooLongWithoutCold",
    minutes,
    limitMinutes: equipped ? Math.max(limits.chilledMinutes, limits.ambientMinutes) : limits.ambientMinutes,
    mend,
  };
}

/**
 * How an item may be carried to its break, or why not. Minutes run from `leaveAt` to the end of the break. A dish for cold or
 * either goes cold if it can; a warm one goes into the preheated flask, else it is carried as cold food to a place that
 * reheats and allows it. A refrigerator at school is not counted: when the box gets there is not known. Throws RangeError
 * when the break ends before the child leaves.
 */
export function judgeHolding(input: HoldingInput): HoldingVerdict {
  const minutes = minutesOf(input.breakStartsAt) + input.breakMinutes - minutesOf(input.leaveAt);
  if (minutes < 0) throw new RangeError(`the break at ${input.breakStartsAt} ends before leaving at ${input.leaveAt}`);
  const { dish, limits } = input;
  const goodForMinutes = Math.floor(dish.goodForHours * 60);
  if (minutes > goodForMinutes) {
    return fail({ kind: "GoodForTooShort", minutes, limitMinutes: goodForMinutes, mend: ["OTHER_DISH", "LESS_TIME"] });
  }
  const cold = carryCold(input, { minutes, goodForMinutes });
  if (dish.served !== "WARM" && cold !== null) return ok({ ...cold, served: "COLD" });
  if (dish.served === "COLD") return fail(refuseCold(input, minutes));
  if (input.box.flask && minutes <= limits.flaskMinutes) {
    return ok({ case: "FLASK", minutes, limitMinutes: limits.flaskMinutes, served: "WARM" });
  }
  const canReheat = input.facility === "REHEATING" && input.reheatingAllowed;
  if (canReheat && cold !== null) {
    return ok({ case: "REHEATED_AT_SCHOOL", minutes, limitMinutes: cold.limitMinutes, served: "WARM" });
  }
  if (canReheat || dish.served === "EITHER") return fail(refuseCold(input, minutes));
  if (input.box.flask) {
    return fail({
      kind: "NeedsReheating",
      minutes,
      limitMinutes: limits.flaskMinutes,
      mend: ["OTHER_DISH", "LESS_TIME"],
    });
  }
  const mend: Mend[] = minutes <= limits.flaskMinutes ? ["FLASK", "OTHER_DISH"] : ["OTHER_DISH", "LESS_TIME"];
  return fail({ kind: "NeedsFlask", minutes, limitMinutes: limits.flaskMinutes, mend });
}
