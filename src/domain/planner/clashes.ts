/**
 * Why a week cannot be planned: a set of requirements that cannot all be met, none of which could be left out of it. Method:
 * deletion filter for irreducible infeasible subsystems, Chinneck and Dravnieks, ORSA Journal on Computing 3 (1991) 157-168
 * (from memory), by groups first. A week that is found proves that what was kept can be met; that nothing can be found is
 * certain only where a row is out of reach or every choice was tried, and otherwise the word of a search of a fixed length.
 */
import { boxKey } from "../box-key.js";
import type { WeekBrief } from "../brief.js";
import type { CatalogueIndex } from "../catalogue/derive.js";
import { findCandidates, type Candidates } from "./candidates.js";
import { judgePlannability, type Plannability, type Proof } from "./feasibility.js";
import { noTightening, type Tightening } from "./formulate.js";
import { createRequirementModel, isFixed, keyOf, type Requirement, type RequirementModel } from "./requirements.js";
import { replan } from "./replan.js";

export interface ClashSet {
  /** In the order of children and days; each is needed: without it a week was found that meets all the others. */
  readonly members: readonly Requirement[];
  /** How sure it is that the members cannot all be met. */
  readonly proof: Proof;
  /** False only where the search for a smaller set was stopped or ran out of tries. */
  readonly isIrreducible: boolean;
}

export interface ClashOptions {
  /** Unsigned 32-bit. */
  readonly seed: number;
  /** Moves of one search at most; there are as many searches as requirements have to be tried. */
  readonly steps: number;
  readonly shouldStop?: () => boolean;
}

/** Sets of requirements tried at most. */
const MOST_TRIES = 240;
/** The set that is left is searched this much longer before it is believed. */
const LAST_LOOK = 4;

/** Left out first to last: what nobody can change is kept only where nothing else explains the clash. */
const order: readonly Requirement["kind"][] = [
  "REFRIGERATOR",
  "EQUIPMENT_TIME",
  "EQUIPMENT",
  "BOX_REPEATS",
  "NUTRIENT",
  "ALLERGY",
  "KEPT_OUT",
  "DIET",
  "CHOKING",
  "HOLDING",
  "RULE",
  "BOX_SPACE",
  "ENERGY",
  "OUT_OF",
  "HOUSE_RULE",
  "SESSION",
  "BOX",
  "PIN",
];
const rank = ({ kind }: Requirement): number => order.indexOf(kind);

/**
 * A set of clashing requirements of a week that was not planned, as small as leaving out one by one makes it; null when a week
 * was found after all, or the search was stopped before it knew. Deterministic for a seed and a number of steps. Throws
 * RangeError on a brief that contradicts itself.
 */
export function findClashes(brief: WeekBrief, index: CatalogueIndex, options: ClashOptions): ClashSet | null {
  if (options.shouldStop?.() === true) return null;
  const candidates = findCandidates(brief, index, options.shouldStop);
  // Where no box is asked for nothing can clash.
  if (candidates.places.length === 0) return null;
  const week: Week = { brief, index, candidates };
  const first = findIn(week, options, noTightening);
  if (first.kind !== "PLANNABLE") return first.kind === "CLASH" ? first.clash : null;
  // The problem can be met, so it is the clock or the compartments that cannot: what they turned out to hold counts instead.
  const { seed, steps, shouldStop } = options;
  const { picks: start } = first;
  const fitted = replan(brief, index, candidates, {
    seed,
    steps,
    start,
    ...(shouldStop === undefined ? {} : { shouldStop }),
  });
  if (fitted.ok || fitted.error.minutes.size + fitted.error.boxMl.size + fitted.error.apart.size === 0) return null;
  const second = findIn(week, options, fitted.error);
  // Tightened by guess, nothing about it is certain.
  return second.kind === "CLASH" ? { ...second.clash, proof: "SEARCHED" } : null;
}

interface Week {
  readonly brief: WeekBrief;
  readonly index: CatalogueIndex;
  readonly candidates: Candidates;
}

type Found =
  | { readonly kind: "CLASH"; readonly clash: ClashSet }
  | { readonly kind: "PLANNABLE"; readonly picks: readonly number[] }
  | { readonly kind: "UNKNOWN" };

function findIn({ brief, index, candidates }: Week, options: ClashOptions, tightening: Tightening): Found {
  const rough = createRequirementModel(brief, index, tightening, null, candidates);
  for (const factor of [1, LAST_LOOK]) {
    const filter = createFilter(options, factor);
    const seed = findSeed(rough, filter);
    if ("kind" in seed) return filter.isCut() ? { kind: "UNKNOWN" } : seed;
    const kept = filter.reduce(rough, seed);
    if (options.shouldStop?.() === true) return { kind: "UNKNOWN" };
    const fine = createRequirementModel(brief, index, tightening, scopeOf(rough, kept, candidates), candidates);
    const start = new Set([...kept, ...fine.filters].filter((key) => fine.requirements.has(key)));
    // Should the week be formulated a little wider behind the filters and be met there, the rough set stands.
    const isFine = filter.judge(fine, start).kind === "UNPLANNABLE";
    const model = isFine ? fine : rough;
    const confirmed = filter.confirm(model, isFine ? filter.reduce(fine, start) : kept);
    if (confirmed === null) continue;
    const members = [...confirmed.members].flatMap((key) => model.requirements.get(key) ?? []);
    return {
      kind: "CLASH",
      clash: {
        members: members.sort((a, b) => Number(isFixed(a)) - Number(isFixed(b)) || rank(b) - rank(a)),
        proof: confirmed.proof,
        isIrreducible: !filter.isCut(),
      },
    };
  }
  return { kind: "UNKNOWN" };
}

/**
 * A set to begin with that cannot be met, as small as can be had without much work: what is certain on its face, then what
 * belongs to a day or a child the nearest miss breaks something of, then everything. Or a week that meets everything.
 */
function findSeed(
  model: RequirementModel,
  filter: Filter,
): ReadonlySet<string> | Extract<Plannability, { kind: "PLANNABLE" }> {
  const all = new Set(model.requirements.keys());
  for (const group of model.certain()) {
    if (filter.judge(model, group).kind === "UNPLANNABLE") return group;
  }
  const verdict = filter.judge(model, all);
  if (verdict.kind === "PLANNABLE") return verdict;
  const { layout } = model.build(all);
  const days = new Set(verdict.clashes.flatMap(({ day }) => layout.dates[day] ?? []));
  const children = new Set(verdict.clashes.flatMap(({ child }) => model.children[child] ?? []));
  const seeds = [
    ...[...days].map((day) => [...all].filter((key) => model.dayOf.get(key) === day)),
    ...[...children].map((id) => [...all].filter((key) => childOf(model.requirements.get(key)!) === id)),
    ...[...days].map((day) => [...all].filter((key) => (model.dayOf.get(key) ?? day) === day)),
  ].map((keys) => new Set(keys));
  return seeds.find((group) => filter.judge(model, group).kind === "UNPLANNABLE") ?? all;
}

const childOf = (requirement: Requirement): string | null => ("childId" in requirement ? requirement.childId : null);

/**
 * Whether a week was found in which this set, as far as it can be named in the brief, is met; everything that shuts dishes out
 * holds besides. For a change of the brief that is meant to mend the set.
 */
export function isMet(brief: WeekBrief, index: CatalogueIndex, { members }: ClashSet, options: ClashOptions): boolean {
  const model = createRequirementModel(brief, index, noTightening, null);
  const kept = new Set(members.map(keyOf).filter((key) => model.requirements.has(key)));
  return createFilter(options).judge(model, kept, LAST_LOOK).kind === "PLANNABLE";
}

/** Boxes that the set speaks of; a rule over the week speaks of all of its child's. */
function scopeOf(model: RequirementModel, kept: ReadonlySet<string>, { places }: Candidates): ReadonlySet<string> {
  const scope = new Set<string>();
  for (const key of kept) {
    const requirement = model.requirements.get(key);
    if (requirement === undefined || !("childId" in requirement)) continue;
    const date = "date" in requirement ? requirement.date : null;
    for (const { place } of places) {
      if (place.childId === requirement.childId && (date === null || date === place.date)) scope.add(boxKey(place));
    }
  }
  return scope;
}

interface Filter {
  /** Whether a week was found that meets these requirements. A set that can no longer be tried counts as one that can be met. */
  judge(model: RequirementModel, kept: ReadonlySet<string>, factor?: number): Plannability;
  reduce(model: RequirementModel, from: ReadonlySet<string>): ReadonlySet<string>;
  /** Null when a longer search meets the set after all. */
  confirm(
    model: RequirementModel,
    members: ReadonlySet<string>,
  ): { readonly members: ReadonlySet<string>; readonly proof: Proof } | null;
  isCut(): boolean;
}

/** @param longer how many times longer than usual every look is */
function createFilter({ seed, steps, shouldStop }: ClashOptions, longer = 1): Filter {
  let tries = 0;
  let isCut = false;
  const judge: Filter["judge"] = (model, kept, factor = 1) => {
    tries += 1;
    if (tries > MOST_TRIES || shouldStop?.() === true) isCut = true;
    if (isCut) return { kind: "PLANNABLE", picks: [] };
    const { problem, isImpossible } = model.build(kept);
    if (isImpossible) return { kind: "UNPLANNABLE", proof: "CERTAIN", clashes: [] };
    return judgePlannability(problem, {
      seed: (seed + factor) >>> 0,
      steps: steps * factor * longer,
      patience: factor * factor * longer,
      ...(shouldStop === undefined ? {} : { shouldStop }),
    });
  };
  const without = (kept: ReadonlySet<string>, dropped: readonly string[]): Set<string> => {
    const left = new Set(kept);
    for (const key of dropped) left.delete(key);
    return left;
  };
  const reduce: Filter["reduce"] = (model, from) => {
    let kept = from;
    const leaveOut = (group: readonly string[]): void => {
      const inside = group.filter((key) => kept.has(key));
      if (inside.length === 0) return;
      const rest = without(kept, inside);
      if (judge(model, rest).kind === "UNPLANNABLE") kept = rest;
    };
    const grouped = (nameOf: (requirement: Requirement, key: string) => string | null): readonly string[][] => {
      const groups = new Map<string, string[]>();
      for (const [key, requirement] of model.requirements) {
        const name = nameOf(requirement, key);
        if (name !== null) groups.set(name, [...(groups.get(name) ?? []), key]);
      }
      return [...groups.values()];
    };
    const groupings = [
      grouped((_, key) => model.dayOf.get(key) ?? null),
      grouped(childOf),
      grouped(({ kind }) => String(order.indexOf(kind)).padStart(2, "0")).toSorted(byFirst(model)),
      grouped((requirement) => `${childOf(requirement) ?? ""}/${requirement.kind}`).toSorted(byFirst(model)),
    ];
    for (const groups of groupings) for (const group of groups) leaveOut(group);
    for (const key of [...kept].sort(byRank(model))) leaveOut([key]);
    return kept;
  };
  const confirm: Filter["confirm"] = (model, from) => {
    let members = from;
    for (let isSmaller = true; isSmaller;) {
      isSmaller = false;
      for (const key of members) {
        const rest = without(members, [key]);
        if (judge(model, rest, LAST_LOOK).kind === "PLANNABLE") continue;
        members = rest;
        isSmaller = true;
        break;
      }
    }
    const verdict = judge(model, members, LAST_LOOK);
    return verdict.kind === "UNPLANNABLE"
      ? { members, proof: verdict.proof }
      : isCut
        ? { members, proof: "SEARCHED" }
        : null;
  };
  return { judge, reduce, confirm, isCut: () => isCut };
}

const byRank =
  (model: RequirementModel) =>
  (a: string, b: string): number =>
    rank(model.requirements.get(a)!) - rank(model.requirements.get(b)!);
const byFirst =
  (model: RequirementModel) =>
  ([a = ""]: readonly string[], [b = ""]: readonly string[]): number =>
    byRank(model)(a, b);
