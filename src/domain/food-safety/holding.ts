/**
 * Holding from the moment the box leaves the refrigerator at home to the end of the break: time rules first, then the model of
 * heat and growth, which may only shorten what the rules allow.
 */
import type { Dish } from "../../../shared/catalogue.js";
import type { FacilityCode } from "../../../shared/codes.js";
import type { ChildBrief, HoldingLimits } from "../brief.js";
import { minutesOf } from "../calendar/dates.js";
import type { DerivedDish } from "../catalogue/derive.js";
import { fail, ok, type Result } from "../result.js";
import type { HoldingForecast, HoldingMend, HoldingPlan } from "../week.js";
import { forecastHolding, traitsOf, worstCorner } from "./forecast.js";

export type HoldingFault = {
  readonly kind: "TooLongWithoutCold" | "NeedsFlask" | "NeedsReheating" | "GoodForTooShort" | "HotWhenPacked";
  readonly minutes: number;
  readonly limitMinutes: number;
  /** What would make it pass, each enough on its own. */
  readonly mend: HoldingMend[];
  /** Cold sources with which it would pass, where `mend` names them. */
  readonly coldSourcesNeeded?: number;
  /** What the model expects of the way whose limit this is; absent without a model. */
  readonly forecast?: HoldingForecast;
};

export type HoldingVerdict = Result<HoldingPlan & { readonly served: "COLD" | "WARM" }, HoldingFault>;

export interface HoldingInput {
  readonly dish: Dish;
  readonly derived: DerivedDish;
  /** Served grams of the item; the reference portion when absent. */
  readonly grams?: number;
  readonly leaveAt: string;
  readonly breakStartsAt: string;
  readonly breakMinutes: number;
  readonly facility: FacilityCode;
  readonly reheatingAllowed: boolean;
  readonly box: ChildBrief["box"];
  readonly limits: HoldingLimits;
  /** Whether the dish can be at 5 C or less when it leaves: nothing in it comes hot out of the pan that morning. */
  readonly coldByMorning: boolean;
  /** Minutes before leaving in which food cooked that morning may have left the heat; 0 when absent. */
  readonly cookedMinutesBefore?: number;
  /** A day above `limits.hotDayAboveC`. */
  readonly hotDay?: boolean;
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
  const { waterActivity, ph } = worstCorner(derived);
  return isControlled(waterActivity, ph, false);
}

/** An input with its minutes counted. */
interface Timed extends HoldingInput {
  readonly minutes: number;
  readonly goodForMinutes: number;
}

/** How long one way of carrying holds. */
interface Way {
  readonly limitMinutes: number;
  readonly forecast?: HoldingForecast;
}

/** The rule's minutes, or fewer where the model reaches its limit sooner. */
function holdFor(input: Timed, start: HoldingForecast["start"], ruleMinutes: number, coldSources = 0): Way {
  const { model } = input.limits;
  const minutesBefore = start === "WARM" ? (input.cookedMinutesBefore ?? 0) : 0;
  const allowed = Math.max(0, ruleMinutes - minutesBefore);
  if (model === undefined) return { limitMinutes: allowed };
  const answer = forecastHolding(model, {
    start,
    coldSources,
    hotDay: input.hotDay ?? false,
    grams: input.grams ?? input.derived.grams,
    traits: traitsOf(model, input.derived),
    minutes: input.minutes,
    minutesBefore,
  });
  const tightened = answer.limitMinutes < allowed;
  return {
    limitMinutes: Math.min(allowed, answer.limitMinutes),
    forecast: { ...answer.forecast, limitedBy: tightened ? answer.limitedBy : "RULE", mend: [] },
  };
}

/** Most cold sources that are tried to mend a box. */
const MOST_COLD_SOURCES = 6;

const hasColdSources = ({ box, limits }: HoldingInput): boolean =>
  box.insulated && box.coldSources >= limits.coldSources;

/**
 * At 5 C or less when it leaves, in an insulated bag, with as few of the box's cold sources as hold it to the end of the
 * break, or with all of them. Null when it cannot travel chilled at all.
 */
function chilledWay(input: Timed): Way | null {
  if (!input.coldByMorning || !hasColdSources(input)) return null;
  const { chilledMinutes, coldSources } = input.limits;
  for (let count = coldSources; ; count += 1) {
    const way = holdFor(input, "CHILLED", chilledMinutes, count);
    if (input.minutes <= way.limitMinutes || count >= input.box.coldSources || way.forecast === undefined) return way;
  }
}

const ambientWay = (input: Timed): Way =>
  holdFor(
    input,
    input.coldByMorning ? "COLD" : "WARM",
    input.hotDay === true ? input.limits.hotDayAmbientMinutes : input.limits.ambientMinutes,
  );

const flaskWay = (input: Timed): Way => holdFor(input, "FLASK", input.limits.flaskMinutes);

type Carried = HoldingPlan & { readonly served: "COLD" | "WARM" };

/** The way an item goes, or null: cold where it can, else the flask, else chilled to a place that reheats. */
function findWay(input: Timed): Carried | null {
  const { dish, minutes } = input;
  const carry = (plan: Pick<Carried, "case" | "served">, way: Way | null): Carried | null =>
    way !== null && minutes <= way.limitMinutes ? { ...plan, minutes, ...way } : null;
  if (dish.served !== "WARM") {
    if (!isDishControlled(input.derived))
      return { case: "NOT_CONTROLLED", minutes, limitMinutes: input.goodForMinutes, served: "COLD" };
    // With cold sources it travels chilled even where the ambient rule would do.
    const cold =
      carry({ case: "CHILLED", served: "COLD" }, chilledWay(input)) ??
      carry({ case: "AMBIENT", served: "COLD" }, ambientWay(input));
    if (cold !== null || dish.served === "COLD") return cold;
  }
  const flask = input.box.flask ? carry({ case: "FLASK", served: "WARM" }, flaskWay(input)) : null;
  if (flask !== null || !canReheat(input)) return flask;
  return carry({ case: "REHEATED_AT_SCHOOL", served: "WARM" }, chilledWay(input));
}

const canReheat = ({ facility, reheatingAllowed }: HoldingInput): boolean =>
  facility === "REHEATING" && reheatingAllowed;

/** As few cold sources as would let the item pass, more than it has; null when none would. */
function coldSourcesThatMend(input: Timed, enough: (changed: Timed) => boolean): number | null {
  if (!input.coldByMorning) return null;
  const { box, limits } = input;
  const first = hasColdSources(input) ? box.coldSources + 1 : Math.max(limits.coldSources, box.coldSources);
  for (let count = first; count <= Math.max(first, MOST_COLD_SOURCES); count += 1) {
    if (enough({ ...input, box: { ...box, insulated: true, coldSources: count } })) return count;
    if (limits.model === undefined) return null;
  }
  return null;
}

const passes = (input: Timed): boolean => findWay(input) !== null;

/** Refused for want of cold: what would help, and whether less time would. */
function refuse(input: Timed, kind: HoldingFault["kind"], way: Way, lessTime: boolean): HoldingFault {
  const mend: HoldingMend[] = [];
  const needed = coldSourcesThatMend(input, passes);
  if (needed !== null) mend.push("COLD_SOURCES");
  if (!input.box.flask && passes({ ...input, box: { ...input.box, flask: true } })) mend.push("FLASK");
  mend.push("OTHER_DISH");
  if (lessTime) mend.push("LESS_TIME");
  return {
    kind,
    minutes: input.minutes,
    ...way,
    mend,
    ...(needed === null ? {} : { coldSourcesNeeded: needed }),
  };
}

/** Why an item that found no way is refused, with the longest limit that any way it has would give. */
function explainRefusal(input: Timed): HoldingFault {
  const { dish } = input;
  const reheats = dish.served === "WARM" && canReheat(input);
  if (dish.served === "WARM" && !reheats)
    return refuse(input, input.box.flask ? "NeedsReheating" : "NeedsFlask", flaskWay(input), input.box.flask);
  // Cooked too late to be cold: only a flask that holds long enough, or another dish, would do.
  if (!input.coldByMorning) {
    const hasFlask = dish.served !== "COLD" && input.box.flask;
    return refuse(input, "HotWhenPacked", hasFlask ? flaskWay(input) : ambientWay(input), hasFlask);
  }
  const chilled = chilledWay(input);
  // Food to be reheated has to come chilled, so without cold sources no time is short enough.
  if (reheats) return refuse(input, "TooLongWithoutCold", chilled ?? { limitMinutes: 0 }, chilled !== null);
  const ambient = ambientWay(input);
  const longest = chilled !== null && chilled.limitMinutes >= ambient.limitMinutes ? chilled : ambient;
  return refuse(input, "TooLongWithoutCold", longest, true);
}

/** Names what would give back the time that the model took away. */
function withMend(input: Timed, carried: Carried): Carried {
  const { forecast } = carried;
  if (forecast === undefined || forecast.limitedBy === "RULE") return carried;
  const isLonger = (changed: Timed): boolean => {
    const way = findWay({ ...changed, minutes: carried.limitMinutes + 1 });
    return way !== null;
  };
  const mend: HoldingMend[] = [];
  if (coldSourcesThatMend(input, isLonger) !== null) mend.push("COLD_SOURCES");
  if (!input.box.flask && isLonger({ ...input, box: { ...input.box, flask: true } })) mend.push("FLASK");
  mend.push("OTHER_DISH");
  return { ...carried, forecast: { ...forecast, mend } };
}

/**
 * How an item may be carried to its break, or why not. Minutes run from `leaveAt` to the end of the break. A dish for cold or
 * either goes cold if it can; a warm one goes into the preheated flask, else it is carried chilled to a place that reheats and
 * allows it. A refrigerator at school is not counted: when the box gets there is not known. Where the limits carry a model,
 * the limit is the minute at which the model's is reached, never later than the time rule. Throws RangeError when the break
 * is over by the time the child leaves.
 */
export function judgeHolding(input: HoldingInput): HoldingVerdict {
  const minutes = minutesOf(input.breakStartsAt) + input.breakMinutes - minutesOf(input.leaveAt);
  if (minutes <= 0)
    throw new RangeError(`the break at ${input.breakStartsAt} is over when leaving at ${input.leaveAt}`);
  const goodForMinutes = Math.floor(input.dish.goodForHours * 60);
  if (minutes > goodForMinutes) {
    return fail({ kind: "GoodForTooShort", minutes, limitMinutes: goodForMinutes, mend: ["OTHER_DISH", "LESS_TIME"] });
  }
  const timed: Timed = { ...input, minutes, goodForMinutes };
  const carried = findWay(timed);
  return carried === null ? fail(explainRefusal(timed)) : ok(withMend(timed, carried));
}
