/**
 * A week's hard requirements by name, each of which can be left out in thought: the problem with any subset of them. Leaving one
 * out never shuts out a week, so that sets of clashing requirements can be made smaller one by one. What is left out here is left
 * out to explain a clash, never to plan by.
 */
import type { Dish } from "../../../shared/catalogue.js";
import type { DietCode, EquipmentKind } from "../../../shared/codes.js";
import type { Rule } from "../../../shared/rule-set.js";
import { boxKey } from "../box-key.js";
import type { HouseRule, PinBrief, SessionBrief, WeekBrief } from "../brief.js";
import type { CatalogueIndex } from "../catalogue/derive.js";
import { packMinutesPerBox } from "../kitchen/work.js";
import { rulesInForce } from "../rules/in-force.js";
import { canShutOutItem } from "../rules/judge-item.js";
import {
  findCandidates,
  isAt,
  type CandidateDish,
  type Candidates,
  type ExclusionCause,
  type PlaceCandidates,
} from "./candidates.js";
import { formulate, NO_LIMIT, type FormulationKey, type RowMeaning, type Tightening } from "./formulate.js";
import { outOfReach } from "./feasibility.js";
import type { Candidate, Position, Problem, ProblemDish } from "./problem.js";

/** Who asks for it is in the kind; child, date and session where it has one. */
export type Requirement =
  /** A box with a dish at every place. */
  | { readonly kind: "BOX"; readonly childId: string; readonly date: string }
  | ({ readonly kind: "PIN" } & PinBrief)
  | {
      readonly kind: "ENERGY" | "BOX_SPACE" | "BOX_REPEATS" | "HOLDING";
      readonly childId: string;
      readonly date: string;
    }
  | { readonly kind: "NUTRIENT"; readonly childId: string; readonly date: string; readonly nutrient: string }
  | {
      readonly kind: "RULE";
      readonly childId: string;
      /** Null: over the week. */
      readonly date: string | null;
      readonly ruleSet: string;
      readonly rule: string;
    }
  | { readonly kind: "HOUSE_RULE"; readonly rule: HouseRule; readonly date: string }
  /** The minutes of a session. */
  | { readonly kind: "SESSION"; readonly session: string }
  /** How long the units owned are free in a session. */
  | { readonly kind: "EQUIPMENT_TIME"; readonly equipment: EquipmentKind; readonly session: string }
  | { readonly kind: "EQUIPMENT"; readonly equipment: EquipmentKind }
  | { readonly kind: "REFRIGERATOR" }
  | { readonly kind: "OUT_OF"; readonly foodKind: string }
  | { readonly kind: "KEPT_OUT"; readonly allergen: string }
  | { readonly kind: "ALLERGY"; readonly childId: string; readonly allergen: string }
  | { readonly kind: "DIET"; readonly childId: string; readonly diet: DietCode }
  | { readonly kind: "CHOKING"; readonly childId: string };

/** Safety, a child's diet and growth, and the rules of school and family: named where they clash, never offered to give way. */
export const isFixed = ({ kind }: Requirement): boolean => fixedKinds.has(kind);
const fixedKinds: ReadonlySet<Requirement["kind"]> = new Set([
  "ALLERGY",
  "KEPT_OUT",
  "DIET",
  "CHOKING",
  "HOLDING",
  "RULE",
  "ENERGY",
  "NUTRIENT",
  "BOX_REPEATS",
]);

/** A name that is equal for equal requirements. */
export const keyOf = (requirement: Requirement): string =>
  JSON.stringify(Object.entries(requirement).sort(([a], [b]) => (a < b ? -1 : 1)));

export interface Stage {
  readonly problem: Problem;
  readonly layout: FormulationKey;
  /** Certain before the problem is looked at: a morning without time to pack, a rule that cannot be judged. */
  readonly isImpossible: boolean;
}

export interface RequirementModel {
  /** By `keyOf`. */
  readonly requirements: ReadonlyMap<string, Requirement>;
  /** Keys of requirements that decide which dishes may stand at a place. */
  readonly filters: ReadonlySet<string>;
  /** The school day a requirement belongs to, by key; for reading together what belongs together. */
  readonly dayOf: ReadonlyMap<string, string>;
  /** IDs of the children, in the order of the problem. */
  readonly children: readonly string[];
  /** Sets that may be certain not to be met, looked at one row at a time: places without a dish, sums and counts out of reach. */
  certain(): ReadonlySet<string>[];
  /** The week with these requirements and no other. */
  build(kept: ReadonlySet<string>): Stage;
}

/** Where any dish may be left out: not a dish of the catalogue, and a different one at each place, so that none comes twice. */
const nothing: ProblemDish = {
  main: false,
  repeatMax: 1,
  starch: -1,
  morning: { fixed: 0, perPortion: 0, equipment: [], portionsPerGo: 0 },
  split: null,
};

interface PlaceOptions {
  readonly row: PlaceCandidates;
  readonly options: readonly Option[];
}
interface Option {
  readonly dish: CandidateDish;
  /** It is shut out while every requirement of any of these groups is kept. */
  readonly shutOutBy: readonly (readonly string[])[];
}

/**
 * @param scope boxes (`boxKey`) whose filters (allergies, diets, rules of single items, what the kitchen lacks) are requirements
 *   of their own too; every other box is left out. Null: every box, and what is shut out stays so.
 */
export function createRequirementModel(
  brief: WeekBrief,
  index: CatalogueIndex,
  tightening: Tightening,
  scope: ReadonlySet<string> | null,
  known: Candidates | null = null,
): RequirementModel {
  const candidates = known ?? findCandidates(brief, index);
  const inScope = (childId: string, date: string): boolean => scope === null || scope.has(boxKey({ childId, date }));
  const tags = scope === null ? null : tagOptions(brief, index, inScope);
  const places = candidates.places.map((row): PlaceOptions => {
    const { childId, date } = row.place;
    if (!inScope(childId, date)) return { row: { ...row, pin: null, dishes: [] }, options: [] };
    const own = row.dishes.map((dish): Option => ({ dish, shutOutBy: [] }));
    const more = tags?.optionsAt(row.place, new Set(row.dishes.map(({ derived }) => derived.dish.key))) ?? [];
    return { row, options: [...own, ...more] };
  });

  const requirements = new Map<string, Requirement>();
  const dayOf = new Map<string, string>();
  const add = (requirement: Requirement, day: string | null): void => {
    const key = keyOf(requirement);
    requirements.set(key, requirement);
    if (day !== null) dayOf.set(key, day);
  };
  for (const { row } of places) {
    const { childId, date } = row.place;
    if (!inScope(childId, date)) continue;
    add({ kind: "BOX", childId, date }, date);
    if (row.pin !== null) add(pinOf(row.place, row.pin), date);
  }
  const whole = formulated(brief, index, places, () => true, tightening);
  for (const meaning of whole.layout.meanings.values()) {
    if (meaning.date === null || inScope(meaning.childId, meaning.date)) add(ofMeaning(meaning), meaning.date);
  }
  for (const { ruleSet, rule, childId } of whole.layout.unjudged)
    if (rule.level === "FORBID") add({ kind: "RULE", childId, date: null, ruleSet, rule: rule.id }, null);
  const { dates, sessions } = whole.layout;
  for (const date of dates) {
    for (const rule of ["SIBLINGS_DIFFER", "DISH_REPEATS", "STARCH_CHANGES"] as const) {
      const rests = brief.relaxations.some((row) => row.rule === rule && row.date === date);
      if (!rests) add({ kind: "HOUSE_RULE", rule, date }, date);
    }
  }
  whole.problem.windows.forEach((window, w) => {
    const session = sessions[w] ?? "";
    const day = window.kind === "WEEKEND" ? null : (dates[window.day] ?? null);
    add({ kind: "SESSION", session }, day);
    for (const equipment of whole.layout.equipment) add({ kind: "EQUIPMENT_TIME", equipment, session }, day);
  });
  add({ kind: "REFRIGERATOR" }, null);
  for (const { requirement, date } of tags?.requirements ?? []) add(requirement, date);

  /** Requirements that decide what may stand at a place, and so have the week formulated anew. */
  const filters = new Set(tags?.requirements.map(({ requirement }) => keyOf(requirement)) ?? []);
  const formulations = new Map<string, ReturnType<typeof formulate>>();
  const build = (kept: ReadonlySet<string>): Stage => {
    const dropped = [...filters].filter((key) => !kept.has(key)).sort();
    const name = dropped.join();
    const { problem, layout } =
      formulations.get(name) ??
      formulated(
        withoutMeans(
          brief,
          dropped.flatMap((key) => requirements.get(key) ?? []),
        ),
        index,
        places,
        (option) => !option.shutOutBy.some((group) => group.every((key) => kept.has(key))),
        tightening,
      );
    formulations.set(name, { problem, layout });
    return leaveOut({ brief, places, problem, layout, tightening }, (requirement) => kept.has(keyOf(requirement)));
  };
  const children = brief.children.map(({ id }) => id);
  const certain = (): ReadonlySet<string>[] => {
    const { problem, layout } = build(new Set(requirements.keys()));
    const boxesOf = (over: readonly number[]): Requirement[] =>
      over.map((p) => ({ kind: "BOX", childId: places[p]!.row.place.childId, date: places[p]!.row.place.date }));
    const rowsOutOfReach = outOfReach(problem).flatMap(({ name, positions }) => {
      const meaning = layout.meanings.get(name);
      return meaning === undefined ? [] : [[ofMeaning(meaning), ...boxesOf(positions)]];
    });
    const empty = problem.positions.flatMap(({ candidates: here }, p) => {
      const { place, pin } = places[p]!.row;
      if (here.length > 0) return [];
      return [pin === null ? boxesOf([p]) : [pinOf(place, pin)]];
    });
    const mornings = brief.sessions
      .filter(({ kind }) => kind === "MORNING")
      .map(({ key, date }): Requirement[] => [
        { kind: "SESSION", session: key },
        ...brief.children.flatMap(({ id, days }): Requirement[] =>
          days.some((day) => day.date === date) ? [{ kind: "BOX", childId: id, date }] : [],
        ),
      ])
      .filter((group) => build(new Set(group.map(keyOf))).isImpossible);
    const unjudged = layout.unjudged.map(({ ruleSet, rule, childId }): Requirement[] => [
      { kind: "RULE", childId, date: null, ruleSet, rule: rule.id },
    ]);
    return [...empty, ...mornings, ...unjudged, ...rowsOutOfReach].map(
      (group) => new Set(group.map(keyOf).filter((key) => requirements.has(key))),
    );
  };
  return { requirements, dayOf, filters, children, certain, build };
}

function formulated(
  brief: WeekBrief,
  index: CatalogueIndex,
  places: readonly PlaceOptions[],
  isOffered: (option: Option) => boolean,
  tightening: Tightening,
): ReturnType<typeof formulate> {
  const rows = places.map(({ row, options }) => ({
    ...row,
    pin: null,
    dishes: options.filter(isOffered).map(({ dish }) => dish),
  }));
  return formulate({ ...brief, stayCloseTo: [] }, index, { places: rows, exclusions: [] }, tightening);
}

function ofMeaning(meaning: RowMeaning): Requirement {
  const { kind, childId } = meaning;
  if (kind === "RULE") return { kind, childId, date: meaning.date, ruleSet: meaning.ruleSet, rule: meaning.rule };
  if (kind === "NUTRIENT") return { kind, childId, date: meaning.date, nutrient: meaning.nutrient };
  return { kind, childId, date: meaning.date };
}

interface LeaveOutInput {
  readonly brief: WeekBrief;
  readonly places: readonly PlaceOptions[];
  readonly problem: Problem;
  readonly layout: FormulationKey;
  readonly tightening: Tightening;
}

/** The problem with the rows of the kept requirements only; where no box is asked for, its places may stay empty. */
function leaveOut(
  { brief, places, problem, layout, tightening }: LeaveOutInput,
  keeps: (requirement: Requirement) => boolean,
): Stage {
  const asksBox = (childId: string, date: string): boolean => keeps({ kind: "BOX", childId, date });
  const holds = (name: string): boolean => {
    const meaning = layout.meanings.get(name);
    if (meaning === undefined) return true;
    const ofBox = meaning.kind !== "RULE";
    return keeps(ofMeaning(meaning)) && !(ofBox && !asksBox(meaning.childId, meaning.date));
  };
  const bands = problem.bands.filter(({ name }) => holds(name));
  const distinct = problem.distinct.map((rule) => (holds(rule.name) ? rule : { ...rule, atLeast: 0, atMost: -1 }));
  // A dish in a box nobody asks for can only help where something has to be reached.
  const wanted = new Set([
    ...bands.flatMap(({ lo, positions }) => (lo === null ? [] : positions)),
    ...distinct.flatMap(({ atLeast, positions }) => (atLeast > 0 ? positions : [])),
  ]);
  const dishes = [...problem.dishes];
  const empty = { ...nothing, morning: { ...nothing.morning, equipment: layout.equipment.map(() => 0) } };
  const q = new Array<number>(problem.measures).fill(0);
  const kinds = problem.distinct.map(() => -1);
  const filled = problem.positions.map((position, p): Position | null => {
    const { place, pin } = places[p]!.row;
    const { candidates } = position;
    const isPinned = pin !== null && keeps(pinOf(place, pin));
    if (isPinned) {
      const key = layout.dishes.indexOf(pin.dish);
      return settled(
        position,
        candidates.filter(({ dish }) => dish === key),
      );
    }
    if (asksBox(place.childId, place.date)) return settled(position, candidates);
    if (!wanted.has(p)) return null;
    dishes.push(empty);
    const left: Candidate = { dish: dishes.length - 1, cost: 0, q, bases: [], kinds };
    return settled(position, [left, ...candidates]);
  });
  // A place that stays empty whatever comes is no place: the fewer there are, the faster the rest is tried.
  const numbers = new Map<number, number>();
  filled.forEach((position, p) => position !== null && numbers.set(p, numbers.size));
  const renumbered = (over: readonly number[]): number[] => over.flatMap((p) => numbers.get(p) ?? []);
  const positions = filled.filter((position) => position !== null);

  let isImpossible = layout.unjudged.some(
    ({ ruleSet, rule, childId }) =>
      rule.level === "FORBID" && keeps({ kind: "RULE", childId, date: null, ruleSet, rule: rule.id }),
  );
  const windows = problem.windows.map((window, w) => {
    const session = layout.sessions[w] ?? "";
    const minutes = (): number => {
      if (!keeps({ kind: "SESSION", session })) return NO_LIMIT;
      const row = brief.sessions.find((one) => one.key === session);
      if (window.kind !== "MORNING" || window.minutes === NO_LIMIT || row === undefined) return window.minutes;
      const left = morningTenths(brief, row, asksBox, tightening);
      if (left < 0) isImpossible = true;
      return Math.max(0, left);
    };
    return {
      ...window,
      minutes: minutes(),
      equipment: window.equipment.map((budget, e) => {
        const equipment = layout.equipment[e];
        return equipment !== undefined && keeps({ kind: "EQUIPMENT_TIME", equipment, session }) ? budget : NO_LIMIT;
      }),
    };
  });
  const restingOn = (rule: HouseRule, already: readonly number[]): number[] =>
    layout.dates.flatMap((date, day) =>
      already.includes(day) || !keeps({ kind: "HOUSE_RULE", rule, date }) ? [day] : [],
    );
  // Bases no dish is left for are only carried along.
  const used = problem.bases.flatMap((_, base) =>
    positions.some(({ candidates }) => candidates.some(({ bases }) => bases.some((use) => use.base === base)))
      ? [base]
      : [],
  );
  const baseNumber = new Map(used.map((base, number) => [base, number]));
  const numbered = <T extends { readonly base: number }>(rows: readonly T[]): T[] =>
    rows.flatMap((row) => {
      const base = baseNumber.get(row.base);
      return base === undefined ? [] : [{ ...row, base }];
    });
  return {
    isImpossible,
    layout,
    problem: {
      ...problem,
      dishes,
      bases: used.map((base) => problem.bases[base]!),
      ready: numbered(problem.ready),
      positions: positions.map((position) => ({
        ...position,
        candidates: position.candidates.map((candidate) => ({ ...candidate, bases: numbered(candidate.bases) })),
      })),
      bands: bands.map((row) => ({ ...row, positions: renumbered(row.positions) })),
      distinct: distinct.map((row) => ({ ...row, positions: renumbered(row.positions) })),
      targets: [],
      together: problem.together
        .filter(({ name }) => holds(name))
        .map((row) => ({
          ...row,
          boxes: row.boxes.filter((box) => positions.some((position) => position.box === box)),
        })),
      windows,
      relaxed: {
        siblings: restingOn("SIBLINGS_DIFFER", problem.relaxed.siblings),
        repeats: restingOn("DISH_REPEATS", problem.relaxed.repeats),
        starch: restingOn("STARCH_CHANGES", problem.relaxed.starch),
      },
      refrigeratorMl: keeps({ kind: "REFRIGERATOR" }) ? problem.refrigeratorMl : NO_LIMIT,
      stayClose: null,
    },
  };
}

/** A place with one choice is no choice: it needs no morning to be finished in before the search looks at it. */
const settled = (position: Position, candidates: readonly Candidate[]): Position => ({
  ...position,
  candidates,
  fixed: candidates.length === 1 ? 0 : -1,
});

const pinOf = (
  { childId, date, breakKey, slot, position }: PlaceCandidates["place"],
  { dish, because }: PinBrief,
): Requirement => ({ kind: "PIN", childId, date, breakKey, slot, position, dish, because });

const TENTHS = 10;

/** Tenths of a minute a morning has besides packing the boxes asked for; negative when packing alone takes longer. */
function morningTenths(
  brief: WeekBrief,
  session: SessionBrief,
  asksBox: (childId: string, date: string) => boolean,
  tightening: Tightening,
): number {
  const isPacked = (childId: string): boolean =>
    brief.pins.some((pin) => pin.because === "PACKED" && pin.childId === childId && pin.date === session.date);
  const minutesOf = (counts: (childId: string) => boolean): number =>
    brief.children
      .filter(({ id }) => counts(id) && !isPacked(id))
      .flatMap(({ days }) => days.filter(({ date }) => date === session.date))
      .reduce((sum, { breaks }) => sum + packMinutesPerBox(breaks.reduce((n, { slots }) => n + slots.length, 0)), 0);
  const hands = Math.min(session.handsOnMinutes, session.elapsedMinutes * session.carers);
  const left = Math.floor((hands - minutesOf((id) => asksBox(id, session.date))) * TENTHS + 1e-6);
  const tightened = tightening.minutes.get(session.key);
  if (tightened === undefined) return left;
  const spared = minutesOf((id) => !asksBox(id, session.date));
  return Math.min(left, tightened + Math.floor(spared * TENTHS));
}

/** More than any kitchen owns, and more minutes than any session has. */
const PLENTY_OF_UNITS = 99;
const PLENTY_OF_MINUTES = 600;
const LONG_BEFORE_LEAVING = "04:00";

const widened = (session: SessionBrief): SessionBrief => ({
  ...session,
  ...(session.kind === "MORNING" ? { startsAt: LONG_BEFORE_LEAVING } : {}),
  handsOnMinutes: PLENTY_OF_MINUTES,
  elapsedMinutes: PLENTY_OF_MINUTES,
});

const morningKey = (brief: WeekBrief, date: string): string =>
  brief.sessions.find((row) => row.kind === "MORNING" && row.date === date)?.key ?? `morning-${date}`;

/** Mornings on which a box leaves and nobody has any time. */
function missingMornings(brief: WeekBrief): SessionBrief[] {
  const dates = new Set(brief.children.flatMap(({ days }) => days.map(({ date }) => date)));
  return [...dates]
    .filter((date) => !brief.sessions.some((row) => row.kind === "MORNING" && row.date === date))
    .map((date) => ({
      key: morningKey(brief, date),
      kind: "MORNING",
      date,
      startsAt: LONG_BEFORE_LEAVING,
      handsOnMinutes: 0,
      elapsedMinutes: 0,
      carers: 1,
      effort: 1,
    }));
}

/** Sessions by when they begin. */
export const inTimeOrder = (a: SessionBrief, b: SessionBrief): number =>
  `${a.date}T${a.startsAt}` < `${b.date}T${b.startsAt}` ? -1 : 1;

/** The brief with means enough where a requirement of the kitchen is left out. */
function withoutMeans(brief: WeekBrief, dropped: readonly Requirement[]): WeekBrief {
  const sessions = new Set(dropped.flatMap((row) => (row.kind === "SESSION" ? [row.session] : [])));
  const kinds = dropped.flatMap((row) => (row.kind === "EQUIPMENT" ? [row.equipment] : []));
  const foods = new Set(dropped.flatMap((row) => (row.kind === "OUT_OF" ? [row.foodKind] : [])));
  return {
    ...brief,
    household: {
      ...brief.household,
      equipment: [...brief.household.equipment, ...kinds.map((kind) => ({ kind, units: PLENTY_OF_UNITS }))],
    },
    sessions: [...brief.sessions, ...missingMornings(brief)]
      .flatMap((session) => {
        const isMissing = !brief.sessions.includes(session);
        return sessions.has(session.key) ? [widened(session)] : isMissing ? [] : [session];
      })
      .map((session) => withMeans(session, new Set(kinds), foods))
      .sort(inTimeOrder),
    outOf: brief.outOf.filter((kind) => !foods.has(kind)),
  };
}

/** A session that has these after all. */
export function withMeans(
  session: SessionBrief,
  kinds: ReadonlySet<EquipmentKind>,
  foodKinds: ReadonlySet<string>,
): SessionBrief {
  const { without, ...rest } = session;
  if (without === undefined) return session;
  const left = {
    equipment: without.equipment.filter((kind) => !kinds.has(kind)),
    foodKinds: without.foodKinds.filter((kind) => !foodKinds.has(kind)),
  };
  return left.equipment.length + left.foodKinds.length === 0 ? rest : { ...rest, without: left };
}

interface OptionTags {
  readonly requirements: readonly { readonly requirement: Requirement; readonly date: string | null }[];
  /** Dishes besides those offered, with what shuts each out. */
  optionsAt(place: PlaceCandidates["place"], offered: ReadonlySet<string>): Option[];
}

const HOLDS_FOR_EVER = 10_000;

/** Everything that may stand in these boxes if nothing shut it out, and all that does: each requirement is asked alone. */
function tagOptions(
  brief: WeekBrief,
  index: CatalogueIndex,
  inScope: (childId: string, date: string) => boolean,
): OptionTags {
  const children = brief.children
    .map((child) => ({ ...child, days: child.days.filter(({ date }) => inScope(child.id, date)) }))
    .filter(({ days }) => days.length > 0);
  const scoped: WeekBrief = { ...brief, children, stayCloseTo: [] };
  const usesOf = (dish: Dish): readonly { readonly kind: EquipmentKind; readonly units: number }[] => [
    ...dish.steps.flatMap(({ equipment }) => equipment),
    ...dish.bases.flatMap(({ base }) => index.base(base)?.equipment ?? []),
  ];
  const owned = (kind: EquipmentKind): number =>
    brief.household.equipment.reduce((sum, row) => sum + (row.kind === kind ? row.units : 0), 0);
  const uses = index.dishes.flatMap(usesOf);
  const lacking = [...new Set(uses.filter(({ kind, units }) => units > owned(kind)).map(({ kind }) => kind))];
  const { model: _model, ...limits } = brief.holding;
  const advice = brief.ruleSets.map((set) => ({ ...set, rules: set.rules.filter(({ level }) => level !== "FORBID") }));
  const free: WeekBrief = {
    ...scoped,
    household: {
      ...brief.household,
      keepsOut: [],
      equipment: [...brief.household.equipment, ...lacking.map((kind) => ({ kind, units: PLENTY_OF_UNITS }))],
    },
    outOf: [],
    choking: [],
    ruleSets: advice,
    sessions: [...brief.sessions, ...missingMornings(brief)].map(({ without: _without, ...row }) => widened(row)),
    holding: {
      ...limits,
      chilledMinutes: HOLDS_FOR_EVER,
      flaskMinutes: HOLDS_FOR_EVER,
      ambientMinutes: HOLDS_FOR_EVER,
      hotDayAmbientMinutes: HOLDS_FOR_EVER,
    },
    children: children.map((child) => ({
      ...child,
      allergies: [],
      diets: [],
      box: {
        compartments: [{ ml: 1_000_000, leakProof: true }],
        coldSources: Math.max(child.box.coldSources, limits.coldSources),
        insulated: true,
        flask: true,
      },
    })),
  };
  const all = findCandidates(free, index);
  const nameOf = (
    { childId, date, breakKey, slot }: Omit<PlaceCandidates["place"], "position">,
    dish: string,
  ): string => `${childId}/${date}/${breakKey}/${slot}/${dish}`;

  const groups = new Map<string, string[][]>();
  const listed = new Map<string, { readonly requirement: Requirement; readonly date: string | null }>();
  const tag = (at: string, members: readonly { requirement: Requirement; date: string | null }[]): void => {
    for (const member of members) listed.set(keyOf(member.requirement), member);
    groups.set(at, [...(groups.get(at) ?? []), members.map(({ requirement }) => keyOf(requirement))]);
  };
  type Named = { readonly requirement: Requirement; readonly date: string | null };
  type Shut = { readonly childId: string; readonly date: string; readonly why: ExclusionCause };
  /** Asks one part of the brief alone; `name` says which requirements shut a dish out together, or null where none of them does. */
  const ask = (change: Partial<WeekBrief>, name: (shut: Shut) => readonly Named[] | null): void => {
    for (const row of findCandidates({ ...free, ...change }, index).exclusions) {
      const members = name(row);
      if (members !== null) tag(nameOf(row, row.dish), members);
    }
  };
  const freeChildren = free.children;
  const withOwn = (change: (child: WeekBrief["children"][number]) => Partial<WeekBrief["children"][number]>) =>
    freeChildren.map((child, c) => ({ ...child, ...change(children[c]!) }));
  const most = (of: (child: WeekBrief["children"][number]) => number): number => Math.max(0, ...children.map(of));
  const alone = (requirement: Requirement, date: string | null = null): Named[] => [{ requirement, date }];

  for (const allergen of brief.household.keepsOut)
    ask({ household: { ...free.household, keepsOut: [allergen] } }, ({ why }) =>
      why.kind === "KEPT_OUT" ? alone({ kind: "KEPT_OUT", allergen }) : null,
    );
  for (let nth = 0; nth < most(({ allergies }) => allergies.length); nth += 1)
    ask(
      { children: withOwn(({ allergies }) => ({ allergies: allergies.slice(nth, nth + 1) })) },
      ({ childId, why }) => {
        const allergy = children.find(({ id }) => id === childId)?.allergies[nth];
        const allergen = allergy?.allergen ?? allergy?.foodKind;
        return (why.kind === "ALLERGEN" || why.kind === "MAY_CONTAIN") && allergen != null
          ? alone({ kind: "ALLERGY", childId, allergen })
          : null;
      },
    );
  for (let nth = 0; nth < most(({ diets }) => diets.length); nth += 1)
    ask({ children: withOwn(({ diets }) => ({ diets: diets.slice(nth, nth + 1) })) }, ({ childId, why }) =>
      why.kind === "DIET" ? alone({ kind: "DIET", childId, diet: why.diet }) : null,
    );
  ask({ choking: brief.choking }, ({ childId, why }) =>
    why.kind === "CHOKING" ? alone({ kind: "CHOKING", childId }) : null,
  );
  /** The sessions of the free brief, lacking what `lacks` leaves of it. */
  const lackingIn = (
    lacks: (without: NonNullable<SessionBrief["without"]>) => NonNullable<SessionBrief["without"]>,
  ): SessionBrief[] => {
    const known = new Map(brief.sessions.map(({ key, without }) => [key, without]));
    return free.sessions.map((row) => {
      const without = known.get(row.key);
      return without === undefined ? row : { ...row, without: lacks(without) };
    });
  };
  const only = <T>(list: readonly T[], one: T): T[] => list.filter((entry) => entry === one);
  for (const foodKind of new Set([
    ...brief.outOf,
    ...brief.sessions.flatMap(({ without }) => without?.foodKinds ?? []),
  ]))
    ask(
      {
        outOf: only(brief.outOf, foodKind),
        sessions: lackingIn(({ foodKinds }) => ({ equipment: [], foodKinds: only(foodKinds, foodKind) })),
      },
      ({ why }) => (why.kind === "OUT_OF" ? alone({ kind: "OUT_OF", foodKind }) : null),
    );
  for (const equipment of new Set(brief.sessions.flatMap(({ without }) => without?.equipment ?? [])))
    ask(
      { sessions: lackingIn((without) => ({ equipment: only(without.equipment, equipment), foodKinds: [] })) },
      ({ why }) => (why.kind === "EQUIPMENT" ? alone({ kind: "EQUIPMENT", equipment: why.equipment }) : null),
    );
  for (const equipment of lacking)
    ask(
      {
        household: {
          ...free.household,
          equipment: free.household.equipment.filter(
            ({ kind, units }) => kind !== equipment || units < PLENTY_OF_UNITS,
          ),
        },
      },
      ({ why }) => (why.kind === "EQUIPMENT" ? alone({ kind: "EQUIPMENT", equipment: why.equipment }) : null),
    );
  const session = (key: string, date: string | null): Named => ({
    requirement: { kind: "SESSION", session: key },
    date,
  });
  ask({ sessions: brief.sessions.map(({ without: _without, ...row }) => row) }, ({ date, why }) => {
    if (why.kind === "MORNING_TOO_SHORT") return [session(morningKey(brief, date), date)];
    if (why.kind !== "NO_SESSION") return null;
    const windows = index.base(why.base)?.windows ?? [];
    return brief.sessions.filter(({ kind }) => windows.includes(kind)).map(({ key }) => session(key, null));
  });
  ask(
    { children: withOwn(({ box }) => ({ box: { ...box, coldSources: 9, insulated: true, flask: true } })) },
    (shut) =>
      shut.why.kind === "VOLUME"
        ? alone({ kind: "BOX_SPACE", childId: shut.childId, date: shut.date }, shut.date)
        : null,
  );

  // Holding looks at the sessions as they are: what is cooked when, and how long before the box leaves.
  const asKept: Partial<WeekBrief> = {
    holding: brief.holding,
    sessions: [...brief.sessions, ...missingMornings(brief)].map((row) =>
      row.kind === "MORNING" ? { ...row, handsOnMinutes: PLENTY_OF_MINUTES, elapsedMinutes: PLENTY_OF_MINUTES } : row,
    ),
    children: withOwn(({ box }) => ({ box: { ...box, compartments: free.children[0]?.box.compartments ?? [] } })),
  };
  const isHolding = ({ kind }: ExclusionCause): boolean => kind === "HOLDING" || kind === "FACILITY";
  const heldOut = new Set<string>();
  for (const row of findCandidates({ ...free, ...asKept }, index).exclusions) {
    if (!isHolding(row.why)) continue;
    heldOut.add(nameOf(row, row.dish));
    tag(nameOf(row, row.dish), alone({ kind: "HOLDING", childId: row.childId, date: row.date }, row.date));
  }
  for (const { set, rule } of rulesThatShutOut(scoped)) {
    const document = brief.ruleSets[set]!;
    const ruleSets = advice.map((row, i) => (i === set ? { ...row, rules: [...row.rules, rule] } : row));
    const overWeek = isOverWeek(rule);
    const named = ({ childId, date }: Shut): Named => ({
      requirement: { kind: "RULE", childId, date: overWeek ? null : date, ruleSet: document.key, rule: rule.id },
      date: overWeek ? null : date,
    });
    ask({ ruleSets }, (shut) => (shut.why.kind === "RULE" ? [named(shut)] : null));
    if (rule.kind !== "SERVING") continue;
    for (const row of findCandidates({ ...free, ...asKept, ruleSets }, index).exclusions) {
      if (!isHolding(row.why) || heldOut.has(nameOf(row, row.dish))) continue;
      const holding = alone({ kind: "HOLDING", childId: row.childId, date: row.date }, row.date);
      tag(nameOf(row, row.dish), [...holding, named(row)]);
    }
  }
  return {
    requirements: [...listed.values()],
    optionsAt(place, offered) {
      const row = all.places.find((one) => isAt(one.place, place));
      return (
        (row?.dishes ?? [])
          .filter(({ derived }) => !offered.has(derived.dish.key))
          .map((dish) => ({ dish, shutOutBy: groups.get(nameOf(place, dish.derived.dish.key)) ?? [] }))
          // Without a name for what shuts it out it stays out.
          .filter(({ shutOutBy }) => shutOutBy.length > 0)
      );
    },
  };
}

/** Whether a rule's limit is held over the week, so that its requirement has no date. */
function isOverWeek(rule: Rule): boolean {
  switch (rule.kind) {
    case "NUTRIENT":
      return rule.per === "WEEK_MEAN";
    case "AMOUNT":
      return rule.per === "WEEK";
    case "SHARE":
      return true;
    case "EXCLUDE":
    case "ONLY":
    case "FREQUENCY":
    case "TOGETHER":
    case "SERVING":
      return false;
  }
}

/** Rules that can shut out a single item, in force for any of these children, each once. */
function rulesThatShutOut(brief: WeekBrief) {
  const found = new Map<
    string,
    { readonly set: number; readonly rule: WeekBrief["ruleSets"][number]["rules"][number] }
  >();
  for (const child of brief.children) {
    for (const day of child.days) {
      for (const { ruleSet: set, rule } of rulesInForce(brief, child, day)) {
        if (rule.level === "FORBID" && canShutOutItem(rule)) found.set(`${set}/${rule.id}`, { set, rule });
      }
    }
  }
  return [...found.values()];
}
