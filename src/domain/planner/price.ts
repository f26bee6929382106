/** What a dish at a place would cost the week: the week planned again with it there, beside the week planned again as it is. */
import type { Dish } from "../../../shared/catalogue.js";
import type { SlotCode } from "../../../shared/codes.js";
import { boxKey } from "../box-key.js";
import type { PlaceBrief, WeekBrief } from "../brief.js";
import type { CatalogueIndex } from "../catalogue/derive.js";
import type { WeekDraft, WishTotals } from "../week.js";
import { alternativesFor } from "./alternatives.js";
import { findCandidates, isAt, type Candidates, type ExclusionCause } from "./candidates.js";
import { findClashes, type ClashSet } from "./clashes.js";
import { replan, type Replanned } from "./replan.js";
import { POINT } from "./problem-tables.js";

/** What a change adds to the week, each wish in its own unit; negative where the week gains. */
export interface PriceOfChange extends WishTotals {
  /** Items of the week that are another dish then, the asked one among them. */
  readonly changedItems: number;
  readonly changedBoxes: readonly { readonly childId: string; readonly date: string }[];
}

export interface PricedDish {
  /** Key of the dish. */
  readonly dish: string;
  readonly grams: number;
  /** Null for a dish that is weighed. */
  readonly pieces: number | null;
  readonly price: PriceOfChange;
}

export type WhyNotOffered =
  | ExclusionCause
  | { readonly kind: "OTHER_SLOT"; readonly slots: readonly SlotCode[] }
  /** The box is packed, eaten or of a day gone by. */
  | { readonly kind: "BOX_CLOSED" };

export type DishPrice =
  | { readonly kind: "PRICED"; readonly priced: PricedDish }
  | {
      readonly kind: "NOT_OFFERED";
      readonly why: WhyNotOffered;
      /** The sentence of the rule where a rule shuts it out, as its document has it. */
      readonly rule: string | null;
    }
  /** It may stand there, and no week with it was found. */
  | { readonly kind: "NO_WEEK"; readonly clashes: ClashSet | null }
  | { readonly kind: "NO_PLACE" };

export interface PriceOptions {
  readonly shouldStop?: () => boolean;
}

export const MOST_ALTERNATIVES = 5;
const SEED = 1;
/** The week is known but for what the dish moves, so a tenth of an ordinary search is enough. */
const STEPS = 6_000;
const CLASH_STEPS = 6_000;
/** Dishes tried for one alternative that only a week with more changes allows. */
const TRIES_FOR_ONE = 2;

type Priced = { readonly today: Replanned; readonly near: WeekBrief; readonly candidates: Candidates };

/** The week as it is, planned again: what every change is compared with. Null when it can no longer be planned. */
function planToday(
  brief: WeekBrief,
  draft: WeekDraft,
  index: CatalogueIndex,
  candidates: Candidates,
  options: PriceOptions,
): Priced | null {
  const near = { ...brief, stayCloseTo: itemsOf(draft) };
  const today = replan(near, index, candidates, { seed: SEED, steps: STEPS, ...options });
  return today.ok ? { today: today.value, near, candidates } : null;
}

/**
 * The best dishes (at most `first`, at most five) for a place of a planned week, each with what it costs by planning the week again
 * with it there, near the week as it is: as few boxes change as can, then the wishes decide. Cheapest first. Empty when the place
 * is packed, or when no week can be planned any more.
 */
export function priceAlternatives(
  brief: WeekBrief,
  draft: WeekDraft,
  place: PlaceBrief,
  first: number,
  index: CatalogueIndex,
  options: PriceOptions = {},
): PricedDish[] {
  if (isClosed(brief, place)) return [];
  const open = withoutPin(brief, place);
  const candidates = findCandidates(open, index, options.shouldStop);
  const today = planToday(open, draft, index, candidates, options);
  const here = candidates.places.find((row) => isAt(row.place, place));
  if (today === null || here === undefined) return [];
  const most = Math.min(first, MOST_ALTERNATIVES);
  const ranked = alternativesFor(open, draft, place, index, options).map(({ dish }) => dish);
  const current = dishAt(draft, place);
  const others = here.dishes
    .map(({ derived }) => derived.dish.key)
    .filter((key) => key !== current && !ranked.includes(key));
  const missing = Math.max(0, most - ranked.length);
  const asked = [...ranked.slice(0, most), ...others.slice(0, missing * TRIES_FOR_ONE)];
  return asked
    .flatMap((dish) =>
      options.shouldStop?.() === true ? [] : (priceAt(today, draft, place, dish, index, options) ?? []),
    )
    .sort((a, b) => a.price.objectivePoints - b.price.objectivePoints || (a.dish < b.dish ? -1 : 1))
    .slice(0, most);
}

/** A slot of a break of a child's day; `nth` counts slots of the same kind in the break, from 0. */
export interface SlotOfDay {
  readonly childId: string;
  readonly date: string;
  readonly breakKey: string;
  readonly slot: SlotCode;
  readonly nth: number;
}

/** What any dish of the catalogue would cost at a place of a planned week, or why it cannot be had there. */
export function priceDish(
  brief: WeekBrief,
  draft: WeekDraft,
  at: SlotOfDay,
  dish: Dish,
  index: CatalogueIndex,
  options: PriceOptions = {},
): DishPrice {
  const place = placeAt(brief, at);
  if (place === null) return { kind: "NO_PLACE" };
  const refused = (why: WhyNotOffered): DishPrice => ({ kind: "NOT_OFFERED", why, rule: sentenceOf(brief, why) });
  if (isClosed(brief, place)) return refused({ kind: "BOX_CLOSED" });
  if (!dish.slots.includes(at.slot)) return refused({ kind: "OTHER_SLOT", slots: dish.slots });
  const open = withoutPin(brief, place);
  const candidates = findCandidates(open, index, options.shouldStop);
  const isOffered = candidates.places.some(
    (row) => isAt(row.place, place) && row.dishes.some(({ derived }) => derived.dish.key === dish.key),
  );
  if (!isOffered) {
    const why = candidates.exclusions.find(
      (row) =>
        row.childId === at.childId &&
        row.date === at.date &&
        row.breakKey === at.breakKey &&
        row.slot === at.slot &&
        row.dish === dish.key,
    )?.why;
    if (why === undefined) throw new RangeError(`no dish ${dish.key} in the brief's catalogue`);
    return refused(why);
  }
  const today = planToday(open, draft, index, candidates, options);
  const priced = today === null ? null : priceAt(today, draft, place, dish.key, index, options);
  if (priced !== null) return { kind: "PRICED", priced };
  const asked: WeekBrief = { ...open, pins: [...open.pins, { ...place, dish: dish.key, because: "PINNED" }] };
  return { kind: "NO_WEEK", clashes: findClashes(asked, index, { seed: SEED, steps: CLASH_STEPS, ...options }) };
}

function priceAt(
  { today, near, candidates }: Priced,
  draft: WeekDraft,
  place: PlaceBrief,
  dish: string,
  index: CatalogueIndex,
  options: PriceOptions,
): PricedDish | null {
  const then = replan(near, index, candidates, { seed: SEED, steps: STEPS, fixed: { place, dish }, ...options });
  if (!then.ok) return null;
  const box = then.value.draft.boxes.find((row) => row.childId === place.childId && row.date === place.date);
  const item = box?.items.find((row) => row.breakKey === place.breakKey && row.position === place.position);
  if (item === undefined) return null;
  return { dish, grams: item.grams, pieces: item.pieces, price: differenceOf(today, then.value, draft) };
}

function differenceOf(today: Replanned, then: Replanned, draft: WeekDraft): PriceOfChange {
  const [before, after] = [today.draft.wishes, then.draft.wishes];
  const was = new Map(itemsOf(draft).map((item) => [placeName(item), item.dish]));
  const changed = itemsOf(then.draft).filter((item) => was.get(placeName(item)) !== item.dish);
  const boxes = new Map(changed.map(({ childId, date }) => [boxKey({ childId, date }), { childId, date }]));
  return {
    handsOnMinutes: tenth(after.handsOnMinutes - before.handsOnMinutes),
    costMinor: after.costMinor - before.costMinor,
    spareBaseGrams: after.spareBaseGrams - before.spareBaseGrams,
    nutrientShortfallPercent: tenth(after.nutrientShortfallPercent - before.nutrientShortfallPercent),
    refusalPoints: after.refusalPoints - before.refusalPoints,
    monotonyPoints: after.monotonyPoints - before.monotonyPoints,
    objectivePoints: Math.round((then.wishPoints - today.wishPoints) * POINT) / POINT,
    changedItems: changed.length,
    changedBoxes: [...boxes.values()],
  };
}

/** Differences of binary fractions would show their tails. */
const tenth = (figure: number): number => Math.round(figure * 10) / 10;

const itemsOf = (draft: WeekDraft): (PlaceBrief & { readonly dish: string })[] =>
  draft.boxes.flatMap(({ childId, date, items }) =>
    items.map(({ breakKey, slot, position, dish }) => ({ childId, date, breakKey, slot, position, dish })),
  );
const placeName = ({ childId, date, breakKey, position }: PlaceBrief): string =>
  `${childId}/${date}/${breakKey}/${position}`;
const dishAt = (draft: WeekDraft, place: PlaceBrief): string | undefined =>
  itemsOf(draft).find((item) => isAt(item, place))?.dish;

const isClosed = ({ pins }: WeekBrief, place: PlaceBrief): boolean =>
  pins.some((pin) => pin.because === "PACKED" && isAt(pin, place));

/** The place itself is asked about: what a carer pinned there does not hold it. */
const withoutPin = (brief: WeekBrief, place: PlaceBrief): WeekBrief => ({
  ...brief,
  pins: brief.pins.filter((pin) => !isAt(pin, place)),
});

function placeAt({ children }: WeekBrief, { childId, date, breakKey, slot, nth }: SlotOfDay): PlaceBrief | null {
  const day = children.find(({ id }) => id === childId)?.days.find((row) => row.date === date);
  const slots = day?.breaks.find(({ key }) => key === breakKey)?.slots ?? [];
  const position = slots.flatMap((one, at) => (one === slot ? [at] : []))[nth];
  return position === undefined ? null : { childId, date, breakKey, slot, position };
}

const sentenceOf = ({ ruleSets }: WeekBrief, why: WhyNotOffered): string | null =>
  why.kind === "RULE"
    ? (ruleSets.find(({ key }) => key === why.ruleSet)?.rules.find(({ id }) => id === why.rule)?.says ?? null)
    : null;
