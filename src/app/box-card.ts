/** Everything one box needs on one card: what goes where, when it is packed, what to watch. For the home that packs it. */
import type { HouseholdRow } from "../database/household.js";
import type { BoxItemRow, BoxRow, PlanRow } from "../database/week.js";
import type { Caution } from "../domain/week.js";
import { enrolmentOn } from "./assemble-brief.js";

/** What lies together: a compartment of the box, or the flask. */
export interface BoxPart {
  /** From 1, as the compartments stand on record; null: the flask. */
  readonly compartment: number | null;
  /** Null: the flask, or a box that is not on record any more. */
  readonly ml: number | null;
  readonly leakProof: boolean;
  /** Those for the earlier break first. */
  readonly items: readonly BoxItemRow[];
}

export interface BoxCard {
  readonly box: BoxRow & { readonly packing: NonNullable<BoxRow["packing"]> };
  /** When it is packed and by which pair of hands, from 1; null once there is nothing left to pack. */
  readonly pack: {
    readonly session: string;
    readonly startsAt: string;
    readonly endsAt: string;
    readonly carer: number;
  } | null;
  readonly parts: readonly BoxPart[];
  readonly energyKcal: number;
  /** Of the whole box; null when an item's is not known. */
  readonly carbohydrateGrams: number | null;
  /** Keys of foods, each once. */
  readonly labels: readonly string[];
  /** Of this box and no other; labels and cuts stand with their foods. */
  readonly cautions: readonly Caution[];
  /** Start of a break by its key, where the child's class is known. */
  readonly clockOf: (breakKey: string) => string | null;
}

/** @returns null for a box that this household does not pack */
export function boxCard(box: BoxRow, plan: PlanRow, household: HouseholdRow): BoxCard | null {
  const { packing } = box;
  if (packing === null) return null;
  const child = household.children.find(({ id }) => id === box.childId);
  const classId = child === undefined ? undefined : enrolmentOn(child, box.date)?.schoolClassId;
  const breaks = household.schools.flatMap(({ classes }) => classes).find(({ id }) => id === classId)?.breaks ?? [];
  const clockOf = (key: string): string | null => breaks.find((row) => row.key === key)?.startsAt ?? null;
  const kit = child?.boxKit?.compartments ?? [];
  const byBreak = [...box.items].sort((a, b) => {
    const [first, second] = [clockOf(a.breakKey) ?? a.breakKey, clockOf(b.breakKey) ?? b.breakKey];
    return first < second ? -1 : first > second ? 1 : 0;
  });
  const numbers = [...new Set(box.items.map(({ note }) => note?.compartment ?? 0))].sort((a, b) => a - b);
  const parts = numbers.map((number): BoxPart => {
    const items = byBreak.filter(({ note }) => (note?.compartment ?? 0) === number);
    if (number < 0) return { compartment: null, ml: null, leakProof: true, items };
    return { compartment: number + 1, ml: kit[number]?.ml ?? null, leakProof: kit[number]?.leakProof ?? false, items };
  });
  const task = plan.tasks.find(
    ({ kind, childIds, forDates, kept }) =>
      kind === "PACK" && !kept && childIds.includes(box.childId) && forDates.includes(box.date),
  );
  const pack = box.state === "PACKED" || box.state === "EATEN" ? undefined : task;
  return {
    box: { ...box, packing },
    pack:
      pack === undefined
        ? null
        : { session: pack.session, startsAt: pack.startsAt, endsAt: pack.endsAt, carer: pack.carer + 1 },
    parts: [
      ...parts.filter(({ compartment }) => compartment !== null),
      ...parts.filter(({ compartment }) => compartment === null),
    ],
    energyKcal: box.items.reduce((sum, item) => sum + item.energyKcal, 0),
    carbohydrateGrams: sumOrNull(box.items.map((item) => item.carbohydrateGrams)),
    labels: [...new Set(box.items.flatMap(({ note }) => note?.labelsToRead ?? []))].sort(),
    cautions: plan.cautions.filter(
      (caution) =>
        (caution.kind === "RULE_RESTS" && caution.childId === box.childId && caution.dates.includes(box.date)) ||
        ((caution.kind === "KEEP_COLD" ||
          caution.kind === "PREHEAT_FLASK" ||
          caution.kind === "REHEAT_THROUGH" ||
          caution.kind === "ADVICE_NOT_MET") &&
          caution.childId === box.childId &&
          caution.date === box.date),
    ),
    clockOf,
  };
}

/** Missing is missing: one gap and the sum is not known. Tenths, as the figures are. */
const sumOrNull = (figures: readonly (number | null)[]): number | null =>
  figures.includes(null) ? null : Math.round(figures.reduce<number>((sum, figure) => sum + (figure ?? 0), 0) * 10) / 10;
