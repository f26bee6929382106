/** A plan's tasks by session, by carer and by appliance: who does what, and what stands where, one thing after the other. */
import type { EquipmentKind } from "../../../shared/codes.js";
import { minutesOf, timeOf } from "../calendar/dates.js";
import type { SessionPlan, TaskPlan } from "../week.js";
import { giveUnits } from "./units.js";

export interface ListedSession<T extends TaskPlan> {
  readonly key: string;
  /** "HH:MM" of the first start and the last end. */
  readonly startsAt: string;
  readonly endsAt: string;
  readonly handsOnMinutes: number;
  /** Null for a plan from before sessions were timed. */
  readonly timing: SessionPlan | null;
  readonly tasks: readonly T[];
  /** Pairs of hands that have something to do, from 0. */
  readonly carers: readonly { readonly carer: number; readonly tasks: readonly T[] }[];
  readonly appliances: readonly ListedAppliance<T>[];
}

export interface ListedAppliance<T extends TaskPlan> {
  readonly kind: EquipmentKind;
  /** Which of its kind, from 0. */
  readonly unit: number;
  readonly uses: readonly { readonly task: T; readonly from: string; readonly until: string }[];
}

const MINUTES_PER_DAY = 24 * 60;

/** Sessions in the order of their tasks, which is kept; appliances by kind and unit. */
export function listSessions<T extends TaskPlan>(
  tasks: readonly T[],
  timings: readonly SessionPlan[],
): ListedSession<T>[] {
  return [...new Set(tasks.map((task) => task.session))].map((key) => {
    const here = tasks.filter((task) => task.session === key);
    const startsAt = here.reduce((first, task) => (task.startsAt < first ? task.startsAt : first), "23:59");
    // A session may run past midnight.
    const minute = (time: string): number =>
      minutesOf(time) + (time < startsAt ? MINUTES_PER_DAY : 0) - minutesOf(startsAt);
    const clock = (at: number): string => timeOf((minutesOf(startsAt) + at) % MINUTES_PER_DAY);
    const carers = [...new Set(here.filter((task) => task.handsOnMinutes > 0).map((task) => task.carer))].sort(
      (a, b) => a - b,
    );
    return {
      key,
      startsAt,
      endsAt: clock(Math.max(...here.map((task) => minute(task.endsAt)))),
      handsOnMinutes: here.reduce((sum, task) => sum + task.handsOnMinutes, 0),
      timing: timings.find((timing) => timing.session === key) ?? null,
      tasks: here,
      carers: carers.map((carer) => ({
        carer,
        tasks: here
          .filter((task) => task.carer === carer && task.handsOnMinutes > 0)
          // What is done within one minute of the clock comes before what takes longer from then on.
          .sort((a, b) => minute(a.startsAt) - minute(b.startsAt) || minute(a.handsFreeAt) - minute(b.handsFreeAt)),
      })),
      appliances: [...new Set(here.flatMap((task) => task.equipment.map((use) => use.kind)))].sort().flatMap((kind) => {
        const holds = here.flatMap((task) =>
          task.equipment
            .filter((use) => use.kind === kind && use.minutes > 0)
            .map(({ minutes, units }) => {
              const from = minute(task.startsAt);
              return { task, from, to: from + minutes, units };
            }),
        );
        const given = giveUnits(holds);
        return [...new Set(given.flat())]
          .sort((a, b) => a - b)
          .map((unit) => ({
            kind,
            unit,
            uses: holds
              .filter((_, h) => given[h]?.includes(unit))
              .sort((a, b) => a.from - b.from || a.to - b.to)
              .map(({ task, from, to }) => ({ task, from: clock(from), until: clock(to) })),
          }));
      }),
    };
  });
}
