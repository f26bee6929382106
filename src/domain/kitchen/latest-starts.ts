/** How long each task can wait when the order of the timetable stays as it is. */
import { at, TENTHS, type Job } from "./jobs.js";
import type { Placed } from "./place-jobs.js";
import { giveUnits } from "./units.js";

/**
 * Whole minutes by which each job may begin later, when all others may too: every box still leaves in time, the session still ends
 * by `closes` (tenths), carers and each single appliance do their tasks in the same order. Whole minutes, so that the clock on paper
 * is the clock inside.
 */
export function latestShifts(jobs: readonly Job[], placed: Placed, closes: number): number[] {
  const { starts, carers } = placed;
  /** Job `then` begins at least `length` tenths after job `first`. */
  const orders: { readonly first: number; readonly then: number; readonly length: number }[] = [];
  jobs.forEach((job, then) => {
    for (const first of job.before) orders.push({ first, then, length: at(jobs, first).length });
  });
  /** One thing after the other: on one pair of hands, on one unit of an appliance. */
  const chain = (row: readonly { readonly job: number; readonly length: number }[]): void => {
    const inOrder = row.filter(({ length }) => length > 0).sort((a, b) => at(starts, a.job) - at(starts, b.job));
    inOrder.slice(1).forEach(({ job }, i) => {
      const { job: first, length } = at(inOrder, i);
      orders.push({ first, then: job, length });
    });
  };
  for (const carer of new Set(carers))
    chain(jobs.flatMap((job, j) => (at(carers, j) === carer ? [{ job: j, length: job.hands }] : [])));
  const kinds = new Set(jobs.flatMap((job) => job.holds.map((hold) => hold.kind)));
  for (const kind of kinds) {
    const holds = jobs.flatMap((job, j) =>
      job.holds.filter((hold) => hold.kind === kind).map((hold) => ({ job: j, ...hold })),
    );
    const given = giveUnits(
      holds.map(({ job, length, units }) => ({ from: at(starts, job), to: at(starts, job) + length, units })),
    );
    for (const unit of new Set(given.flat())) chain(holds.filter((_, h) => at(given, h).includes(unit)));
  }

  const shifts: number[] = jobs.map(() => 0);
  // What has to come later stands later in this order, so its shift is known.
  const fromTheEnd = jobs.map((_, j) => j).sort((a, b) => at(starts, b) - at(starts, a) || b - a);
  for (const j of fromTheEnd) {
    const job = at(jobs, j);
    let spare = Math.min(job.due, closes) - at(starts, j) - job.length;
    for (const { first, then, length } of orders)
      if (first === j) spare = Math.min(spare, at(starts, then) + at(shifts, then) * TENTHS - length - at(starts, j));
    shifts[j] = Math.max(0, Math.floor(spare / TENTHS));
  }
  return shifts;
}
