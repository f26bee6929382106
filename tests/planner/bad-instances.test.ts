/** Instances that nobody should plan: the planner and the benchmark's reader name the place instead of guessing. */
import { solve } from "../../src/domain/planner/anneal.js";
import { checkProblem } from "../../src/domain/planner/check-problem.js";
import type { Problem } from "../../src/domain/planner/problem.js";
import { drawProblem } from "../support/random-problem.js";
import { readPlannerInstance } from "../support/read-planner-instance.js";

/** A week of one child, two days and two places a day, by hand: small, valid, and with every field of the format. */
const dish = (type: string, kcal: number) => ({
  type,
  nut: [kcal, 50, 5, 80, 20, 60, 30, 20, 40, 30, 5],
  bases: type === "main" ? [{ b: 0, amt: 90 }] : [],
  finFixed: 20,
  finPer: 5,
  eq: [10, 0],
  starch: type === "main" ? 1 : -1,
  legume: 0,
  fried: 0,
  oily: 0,
  treat: 0,
});
const valid = {
  format: "noonpail-planner-instance/1",
  name: "hand-made",
  instance: {
    D: 2,
    slots: [{ name: "main" }, { name: "fruit" }],
    nLunch: 2,
    dishes: [dish("main", 300), { ...dish("main", 320), starch: 2 }, dish("fruit", 80), dish("fruit", 90)],
    bases: [
      {
        keep: 2,
        fixed: 60,
        perBatch: 10,
        batch: 200,
        maxBatches: 2,
        eqPerBatch: [50, 0],
        windows: [0, 1],
        wasteP: 3,
      },
    ],
    children: [
      {
        scale: 100,
        dayLo: [300, 60, 0, 0],
        dayHi: [600, 1_000_000, 1_000_000, 1_000_000],
        weekHardLo: [0, 0, 0, 0, 0, 0, 0, 0],
        weekHardHi: [1_000_000, 1000, 1000, 1000, 1000, 1000, 1000, 1000],
        weekTarget: [400, 60, 200, 100, 80, 150, 100, 30],
        weekDir: [-1, 1, 1, 1, 1, 1, 1, -1],
        weekW: [2, 1, 1, 1, 1, 1, 1, 2],
        rules: [{ kind: "treat", min: 0, max: 1 }],
        cand: [
          [0, 1],
          [2, 3],
        ],
        coef: [
          [30, 20],
          [10, 12],
        ],
      },
    ],
    budget: [600, 200, 200, 300, 300],
    effort: [1, 2, 2, 4, 4],
    eqBudget: [250, 200],
  },
  reference: { bestObjective: 300, lowerBound: 200 },
};

type Path = readonly (string | number)[];
const nameOf = (path: Path): string =>
  path.reduce<string>(
    (at, step) => (typeof step === "number" ? `${at}[${step}]` : at === "" ? step : `${at}.${step}`),
    "",
  );
/** Every place of a document: numbers, texts, lists and objects, the document itself left out. */
function* everyPlace(value: unknown, path: Path = []): Generator<{ path: Path; value: unknown }> {
  if (path.length > 0) yield { path, value };
  if (typeof value !== "object" || value === null) return;
  for (const [key, inner] of Object.entries(value))
    yield* everyPlace(inner, [...path, Array.isArray(value) ? Number(key) : key]);
}
/** A copy with one place replaced, or left out where `put` is undefined. */
function changed<T>(document: T, path: Path, put: unknown): T {
  const copy = structuredClone(document);
  let at = copy as unknown as Record<string | number, unknown>;
  for (const step of path.slice(0, -1)) at = at[step] as typeof at;
  const last = path.at(-1)!;
  if (put !== undefined) at[last] = put;
  else if (Array.isArray(at)) at.splice(Number(last), 1);
  else delete at[last];
  return copy;
}
/** As written in a file: JSON has no NaN, but 1e999 is read as infinite. */
const written = (document: unknown): string => JSON.stringify(document).replaceAll('"INFINITE"', "1e999");
const faultsOf = (document: unknown) => {
  const read = readPlannerInstance(written(document));
  return read.ok ? [] : read.error;
};
const places = [...everyPlace(valid)].filter(({ path }) => path[0] !== "format");
const numbers = places.filter(({ value, path }) => typeof value === "number" && path[0] === "instance");

describe("an instance file", () => {
  test("that is whole is read as it stands, and planned", () => {
    const read = readPlannerInstance(written(valid));
    expect(read).toMatchObject({ ok: true, value: { source: { name: "hand-made" } } });
    if (read.ok) expect(solve(read.value.problem, { seed: 1, steps: 2000 }).feasible).toBe(true);
    expect(faultsOf({ ...valid, reference: undefined })).toEqual([]);
  });

  test("with any field left out says which", () => {
    for (const { path } of places) {
      const isEntry = typeof path.at(-1) === "number";
      // Best known values are for comparing; a list's entry that is missing is a list too short, or another list.
      if (path.length === 1 && path[0] === "reference") continue;
      const faults = faultsOf(changed(valid, path, undefined));
      if (!isEntry) expect(faults).toContainEqual({ kind: "MISSING", place: nameOf(path) });
    }
  });

  test("with anything but a whole number where one belongs says where", () => {
    for (const { path } of numbers) {
      const place = nameOf(path);
      for (const put of [null, "7", true, [], {}])
        expect(faultsOf(changed(valid, path, put)).map((fault) => fault.place)).toContain(place);
      for (const put of [0.5, -0.5, "INFINITE", 1e15, -1e15])
        expect(faultsOf(changed(valid, path, put)).map((fault) => fault.place)).toContain(place);
    }
  });

  test("with a negative amount says where, and cuts nothing to fit", () => {
    const maySink = /\.(coef|weekDir)\[|\.starch$/;
    for (const { path } of numbers) {
      const faults = faultsOf(changed(valid, path, -2));
      if (!maySink.test(nameOf(path))) expect(faults.map((fault) => fault.place)).toContain(nameOf(path));
    }
    expect(faultsOf(changed(valid, ["instance", "children", 0, "weekDir", 0], 0))).toEqual([
      { kind: "OUT_OF_RANGE", place: "instance.children[0].weekDir[0]" },
    ]);
  });

  test.each<[string, Path, unknown, string, string]>([
    ["no children", ["instance", "children"], [], "EMPTY", "instance.children"],
    ["no days", ["instance", "D"], 0, "OUT_OF_RANGE", "instance.D"],
    ["no dishes", ["instance", "dishes"], [], "EMPTY", "instance.dishes"],
    [
      "a place with nothing to choose",
      ["instance", "children", 0, "cand", 1],
      [],
      "EMPTY",
      "instance.children[0].cand[1]",
    ],
    [
      "a dish nobody knows",
      ["instance", "children", 0, "cand", 0, 1],
      4,
      "OUT_OF_RANGE",
      "instance.children[0].cand[0][1]",
    ],
    [
      "a base nobody knows",
      ["instance", "dishes", 0, "bases", 0, "b"],
      1,
      "OUT_OF_RANGE",
      "instance.dishes[0].bases[0].b",
    ],
    [
      "fewer prices than dishes",
      ["instance", "children", 0, "coef", 0],
      [30],
      "WRONG_LENGTH",
      "instance.children[0].coef[0]",
    ],
    ["a window too many", ["instance", "budget"], [1, 1, 1, 1, 1, 1], "WRONG_LENGTH", "instance.budget"],
    [
      "a rule of no kind",
      ["instance", "children", 0, "rules", 0, "kind"],
      "sweet",
      "OUT_OF_RANGE",
      "instance.children[0].rules[0].kind",
    ],
  ])("with %s says so", (_, path, put, kind, place) => {
    expect(faultsOf(changed(valid, path, put))).toContainEqual({ kind, place });
  });

  test("whose numbers are each in range but overflow together is refused all the same", () => {
    const faults = faultsOf(changed(valid, ["instance", "dishes", 0, "nut", 4], 2_000_000_000));
    expect(faults.map(({ kind }) => kind)).toContain("TOO_LARGE");
  });

  test.each(["", "{", "null", "[]", "3", '"week"', '{"name":"x"}', '{"name":"x","instance":[]}'])(
    "that is no instance at all is refused (%s)",
    (text) => {
      const read = readPlannerInstance(text);
      expect(read.ok ? [] : read.error).not.toEqual([]);
    },
  );
});

describe("a planner's problem", () => {
  const problem: Problem = {
    ...drawProblem(3, { children: 2, days: 2, slots: 2, choices: 2, bases: 2, everything: true, tightness: 90 }),
    stayClose: { dishAt: [-1, -1, -1, -1, -1, -1, -1, -1], pointsPerBox: 5, pointsPerItem: 1 },
  };
  const all = [...everyPlace(problem)];
  const refusedAt = (wrong: Problem): string[] => {
    const checked = checkProblem(wrong);
    return checked.ok ? [] : checked.error.map(({ place }) => place);
  };

  test("is sound before anything is broken", () => expect(checkProblem(problem).ok).toBe(true));

  test("with a number that is none, infinite, a fraction or far too large names the place, and is never searched", () => {
    for (const { path, value } of all) {
      if (typeof value !== "number") continue;
      for (const put of [Number.NaN, Infinity, -Infinity, value + 0.5, 1e300]) {
        const wrong = changed(problem, path, put);
        expect(refusedAt(wrong)).toContain(nameOf(path));
        expect(() => solve(wrong, { seed: 1, steps: 10 })).toThrow(RangeError);
      }
    }
  });

  test("with a list or a part left out names the place", () => {
    for (const { path } of all) {
      // A name is for people; without kinds a candidate counts for no rule over kinds.
      if (typeof path.at(-1) === "number" || path.at(-1) === "name" || path.at(-1) === "kinds") continue;
      expect(refusedAt(changed(problem, path, undefined))).toContain(nameOf(path));
    }
  });

  test("without children, days or places is refused; with a place that nothing fits it is an answer, not an error", () => {
    expect(refusedAt({ ...problem, children: 0 })).toContain("children");
    expect(refusedAt({ ...problem, days: 0 })).toContain("days");
    expect(refusedAt({ ...problem, positions: [] })).toContain("positions");
    const bare = changed(problem, ["positions", 1, "candidates"], []);
    const found = solve(bare, { seed: 1, steps: 10 });
    expect(found.feasible).toBe(false);
    expect(found.clashes).toContainEqual(expect.objectContaining({ kind: "EMPTY", day: problem.positions[1]!.day }));
  });
});
