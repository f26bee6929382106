/** How the work of four weeks is spread over the carers. */
import { addDays } from "../calendar/dates.js";

const DAYS = 28;

/** The first of the 28 days that end with this one. */
export const fourWeeksBefore = (asOf: string): string => addDays(asOf, 1 - DAYS);

export interface MinutesOf {
  /** Null: somebody who was erased. */
  readonly personId: string | null;
  readonly done: number;
  /** Of tasks taken and not done. */
  readonly ahead: number;
}
export interface CarerShare {
  readonly personId: string;
  readonly minutesDone: number;
  /** Of the minutes of all, those of people who have left included; 0 where nobody did any. */
  readonly sharePercent: number;
  readonly minutesAhead: number;
}

/** Minutes and percent to a tenth. */
export function shareOut(
  carers: readonly string[],
  minutes: readonly MinutesOf[],
): { readonly carers: readonly CarerShare[]; readonly othersMinutes: number } {
  const all = minutes.reduce((sum, { done }) => sum + done, 0);
  const of = (personId: string) => minutes.filter((row) => row.personId === personId);
  const others = minutes.filter(({ personId }) => personId === null || !carers.includes(personId));
  return {
    carers: carers.map((personId) => {
      const done = of(personId).reduce((sum, row) => sum + row.done, 0);
      return {
        personId,
        minutesDone: tenth(done),
        sharePercent: all === 0 ? 0 : tenth((100 * done) / all),
        minutesAhead: tenth(of(personId).reduce((sum, row) => sum + row.ahead, 0)),
      };
    }),
    othersMinutes: tenth(others.reduce((sum, { done }) => sum + done, 0)),
  };
}

const tenth = (value: number): number => Math.round(value * 10) / 10;
