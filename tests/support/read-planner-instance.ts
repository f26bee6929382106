/** Reads an instance file of the planner's benchmark: everything that is wrong with it by place, or the instance and its problem. */
import { checkProblem, type ProblemFault } from "../../src/domain/planner/check-problem.js";
import type { Problem } from "../../src/domain/planner/problem.js";
import { fail, ok, type Result } from "../../src/domain/result.js";
import { problemFromInstance, type PlannerInstance } from "./planner-instance.js";

/** `place` is a path in the file, such as `instance.children[0].cand[2]`. */
interface InstanceFault {
  readonly kind:
    | "NOT_JSON"
    | "MISSING"
    | "NOT_AN_OBJECT"
    | "NOT_A_LIST"
    | "NOT_TEXT"
    | "NOT_A_NUMBER"
    | "NOT_WHOLE"
    | "NEGATIVE"
    | "OUT_OF_RANGE"
    | "TOO_LARGE"
    | "EMPTY"
    | "WRONG_LENGTH";
  readonly place: string;
}

const LARGEST = 2147483647;
const NUTRIENTS = 11;
const DAILY = 4;
const WEEKLY = 8;
const CLASSES = ["legume", "fried", "oily", "treat"] as const;
/** More days than any week has, and the windows that go with them, would be a mistake. */
const MOST_DAYS = 14;

type Row = Readonly<Record<string, unknown>>;

/**
 * The instance in a file's text. Nothing is corrected: a number out of range is a fault, never cut to fit. The faults of the
 * finished problem (sums that overflow) carry the problem's own places.
 */
export function readPlannerInstance(
  text: string,
): Result<{ source: PlannerInstance; problem: Problem }, (InstanceFault | ProblemFault)[]> {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return fail([{ kind: "NOT_JSON", place: "" }]);
  }
  const faults = listFaults(json);
  if (faults.length > 0) return fail(faults);
  const source = json as PlannerInstance;
  const problem = problemFromInstance(source);
  const checked = checkProblem(problem);
  return checked.ok ? ok({ source, problem }) : fail(checked.error);
}

function listFaults(json: unknown): InstanceFault[] {
  const faults: InstanceFault[] = [];
  const report = (kind: InstanceFault["kind"], place: string): void => void faults.push({ kind, place });
  const object = (value: unknown, place: string): Row => {
    if (typeof value === "object" && value !== null && !Array.isArray(value)) return value as Row;
    report(value === undefined ? "MISSING" : "NOT_AN_OBJECT", place);
    return {};
  };
  /** @param count the length it must have; null: at least one, "ANY": as many as there are */
  const list = (value: unknown, place: string, count: number | null | "ANY"): readonly unknown[] => {
    if (!Array.isArray(value)) {
      report(value === undefined ? "MISSING" : "NOT_A_LIST", place);
      return [];
    }
    if (count === null && value.length === 0) report("EMPTY", place);
    if (typeof count === "number" && value.length !== count) report("WRONG_LENGTH", place);
    return value;
  };
  const text = (value: unknown, place: string): void => {
    if (typeof value !== "string") report(value === undefined ? "MISSING" : "NOT_TEXT", place);
  };
  const whole = (value: unknown, place: string, least = 0, most = LARGEST): number => {
    if (value === undefined) report("MISSING", place);
    else if (typeof value !== "number" || Number.isNaN(value)) report("NOT_A_NUMBER", place);
    else if (value > most) report(most === LARGEST ? "TOO_LARGE" : "OUT_OF_RANGE", place);
    else if (value < least) report(least === 0 ? "NEGATIVE" : "OUT_OF_RANGE", place);
    else if (!Number.isInteger(value)) report("NOT_WHOLE", place);
    else return value;
    return 0;
  };
  const wholes = (value: unknown, place: string, count: number | null, least = 0, most = LARGEST): void =>
    list(value, place, count).forEach((entry, i) => void whole(entry, `${place}[${i}]`, least, most));

  const file = object(json, "");
  text(file["name"], "name");
  if (file["reference"] !== undefined) {
    const reference = object(file["reference"], "reference");
    for (const key of ["bestObjective", "lowerBound"]) {
      const value = reference[key];
      if (typeof value !== "number" || !Number.isFinite(value))
        report(value === undefined ? "MISSING" : "NOT_A_NUMBER", `reference.${key}`);
    }
  }
  const instance = object(file["instance"], "instance");
  if (faults.length > 0) return faults;

  const days = whole(instance["D"], "instance.D", 1, MOST_DAYS);
  const windows = 2 * days + 1;
  const slots = list(instance["slots"], "instance.slots", null);
  slots.forEach((slot, s) => {
    const place = `instance.slots[${s}]`;
    text(object(slot, place)["name"], `${place}.name`);
  });
  whole(instance["nLunch"], "instance.nLunch", 0, slots.length);
  const perAppliance = list(instance["eqBudget"], "instance.eqBudget", "ANY");
  const appliances = perAppliance.length;
  perAppliance.forEach((minutes, e) => void whole(minutes, `instance.eqBudget[${e}]`));
  wholes(instance["budget"], "instance.budget", windows);
  wholes(instance["effort"], "instance.effort", windows);
  const dishes = list(instance["dishes"], "instance.dishes", null);
  const bases = list(instance["bases"], "instance.bases", "ANY");
  dishes.forEach((entry, v) => {
    const place = `instance.dishes[${v}]`;
    const dish = object(entry, place);
    text(dish["type"], `${place}.type`);
    wholes(dish["nut"], `${place}.nut`, NUTRIENTS);
    list(dish["bases"], `${place}.bases`, "ANY").forEach((use, i) => {
      const at = `${place}.bases[${i}]`;
      const { b, amt } = object(use, at);
      whole(b, `${at}.b`, 0, bases.length - 1);
      whole(amt, `${at}.amt`);
    });
    for (const key of ["finFixed", "finPer"]) whole(dish[key], `${place}.${key}`);
    wholes(dish["eq"], `${place}.eq`, appliances);
    whole(dish["starch"], `${place}.starch`, -1);
    for (const key of CLASSES) whole(dish[key], `${place}.${key}`, 0, 1);
  });
  bases.forEach((entry, b) => {
    const place = `instance.bases[${b}]`;
    const base = object(entry, place);
    for (const key of ["keep", "batch"]) whole(base[key], `${place}.${key}`, 1);
    for (const key of ["fixed", "perBatch", "maxBatches", "wasteP"]) whole(base[key], `${place}.${key}`);
    wholes(base["eqPerBatch"], `${place}.eqPerBatch`, appliances);
    list(base["windows"], `${place}.windows`, "ANY").forEach(
      (window, i) => void whole(window, `${place}.windows[${i}]`, 0, windows - 1),
    );
  });
  list(instance["children"], "instance.children", null).forEach((entry, c) => {
    const place = `instance.children[${c}]`;
    const child = object(entry, place);
    whole(child["scale"], `${place}.scale`, 1);
    for (const key of ["dayLo", "dayHi"]) wholes(child[key], `${place}.${key}`, DAILY);
    for (const key of ["weekHardLo", "weekHardHi", "weekW"]) wholes(child[key], `${place}.${key}`, WEEKLY);
    wholes(child["weekTarget"], `${place}.weekTarget`, WEEKLY, 1);
    list(child["weekDir"], `${place}.weekDir`, WEEKLY).forEach((way, i) => {
      if (way !== 1 && way !== -1) report("OUT_OF_RANGE", `${place}.weekDir[${i}]`);
    });
    list(child["rules"], `${place}.rules`, "ANY").forEach((rule, i) => {
      const at = `${place}.rules[${i}]`;
      const { kind, min, max } = object(rule, at);
      if (!CLASSES.some((known) => known === kind))
        report(kind === undefined ? "MISSING" : "OUT_OF_RANGE", `${at}.kind`);
      whole(min, `${at}.min`);
      whole(max, `${at}.max`);
    });
    const offered = list(child["cand"], `${place}.cand`, slots.length);
    offered.forEach((row, s) => wholes(row, `${place}.cand[${s}]`, null, 0, dishes.length - 1));
    list(child["coef"], `${place}.coef`, slots.length).forEach((row, s) => {
      const parallel = offered[s];
      wholes(row, `${place}.coef[${s}]`, Array.isArray(parallel) ? parallel.length : null, -LARGEST);
    });
  });
  return faults;
}
