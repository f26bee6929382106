import fc from "fast-check";
import { fourWeeksBefore, shareOut } from "../../src/domain/rota/fairness.js";
import { proposeRota, type CarerToAsk, type SessionToStaff } from "../../src/domain/rota/propose.js";

const always = () => Number.POSITIVE_INFINITY;
const carer = (id: string, minutes = 0, mostMinutes: CarerToAsk["mostMinutes"] = always) => ({
  id,
  minutes,
  mostMinutes,
});
const oneEach = (minutes: readonly number[]): SessionToStaff[] =>
  minutes.map((hands, at) => ({ session: `evening-2027-01-${11 + at}`, hands: [hands] }));
const machines = (count: number) => Array.from({ length: count }, (_, at) => carer(`carer ${at}`));
const longest = (minutes: Iterable<number>) => Math.max(...minutes);

/** List scheduling, the longest job first, each on the machine that is free first. */
function listSchedule(jobs: readonly number[], count: number): number[] {
  const loads = Array.from({ length: count }, () => 0);
  for (const job of [...jobs].sort((a, b) => b - a)) loads[loads.indexOf(Math.min(...loads))]! += job;
  return loads;
}

describe("a rota of single pairs of hands is a schedule of independent jobs", () => {
  // Graham, "Bounds on multiprocessing timing anomalies", SIAM Journal on Applied Mathematics 17 (1969), from memory: on m machines the
  // 2m + 1 jobs 2m-1, 2m-1, 2m-2, 2m-2, ..., m+1, m+1, m, m, m take 3m at best and 4m - 1 by list scheduling, longest first.
  it.each([2, 3, 4])("finds the best schedule of Graham's worst case for %i machines", (m) => {
    const jobs = [m, ...Array.from({ length: m }, (_, at) => [2 * m - 1 - at, 2 * m - 1 - at]).flat()];
    expect(jobs).toHaveLength(2 * m + 1);
    expect(longest(listSchedule(jobs, m))).toBe(4 * m - 1);
    const rota = proposeRota(oneEach(jobs), machines(m));
    expect(longest(rota.minutes.values())).toBe(3 * m);
    expect(rota.isFairest).toBe(true);
  });

  it("is no less even than the list schedule, however few steps there are", () => {
    const jobs = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(jobs, fc.integer({ min: 2, max: 6 }), (minutes, m) => {
        const sumOfSquares = (loads: Iterable<number>) => [...loads].reduce((sum, load) => sum + load * load, 0);
        const { minutes: now } = proposeRota(oneEach(minutes), machines(m), 0);
        expect(sumOfSquares(now.values())).toBeLessThanOrEqual(sumOfSquares(listSchedule(minutes, m)));
      }),
    );
  });
});

/** Every way to give every pair of hands to somebody or nobody: the fewest open, then fewest open minutes, then least sum of squares. */
function everyRota(
  sessions: readonly SessionToStaff[],
  carers: readonly CarerToAsk[],
): readonly [number, number, number] {
  const jobs = sessions.flatMap(({ session, hands }) => hands.map((minutes) => ({ session, minutes })));
  let best: readonly [number, number, number] = [Infinity, Infinity, Infinity];
  const given: number[] = [];
  const visit = (): void => {
    const job = jobs[given.length];
    if (job === undefined) {
      const loads = carers.map(({ minutes }) => minutes);
      given.forEach((c, j) => c >= 0 && (loads[c]! += jobs[j]!.minutes));
      const open = jobs.filter((_, j) => given[j] === -1);
      const value = [
        open.length,
        open.reduce((sum, { minutes }) => sum + minutes, 0),
        loads.reduce((sum, load) => sum + load * load, 0),
      ] as const;
      const at = value.findIndex((part, n) => part !== best[n]);
      if (at >= 0 && value[at]! < best[at]!) best = value;
      return;
    }
    for (let c = -1; c < carers.length; c += 1) {
      const isThere = jobs.some(({ session }, j) => j < given.length && session === job.session && given[j] === c);
      if (c >= 0 && (isThere || carers[c]!.mostMinutes(job.session) < job.minutes)) continue;
      given.push(c);
      visit();
      given.pop();
    }
  };
  visit();
  return best;
}

describe("a rota", () => {
  const household = fc.record({
    sessions: fc.array(fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 3 }), {
      minLength: 1,
      maxLength: 4,
    }),
    carers: fc.array(
      fc.record({
        minutes: fc.integer({ min: 0, max: 90 }),
        most: fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 4, maxLength: 4 }),
      }),
      {
        minLength: 1,
        maxLength: 3,
      },
    ),
  });
  const read = ({ sessions, carers }: { sessions: number[][]; carers: { minutes: number; most: number[] }[] }) => ({
    sessions: sessions.map((hands, at): SessionToStaff => ({ session: `s${at}`, hands })),
    carers: carers.map(({ minutes, most }, at) => carer(`c${at}`, minutes, (session) => most[Number(session[1])]!)),
  });

  it("is as good as the best of all, tried one by one", () => {
    fc.assert(
      fc.property(household, (drawn) => {
        const { sessions, carers } = read(drawn);
        const rota = proposeRota(sessions, carers);
        const open = rota.sessions.flatMap((row, s) =>
          row.carers.flatMap((id, h) => (id === null ? [sessions[s]!.hands[h]!] : [])),
        );
        const squares = [...rota.minutes.values()].reduce((sum, minutes) => sum + minutes * minutes, 0);
        const value = [open.length, open.reduce((sum, minutes) => sum + minutes, 0), squares];
        expect(rota.isFairest).toBe(true);
        expect(value).toEqual([...everyRota(sessions, carers)]);
      }),
      { numRuns: 300 },
    );
  });

  it("asks nobody for more than they can give, nor for two pairs of hands at once, and counts what it gives", () => {
    fc.assert(
      fc.property(household, fc.integer({ min: 0, max: 40 }), (drawn, steps) => {
        const { sessions, carers } = read(drawn);
        const rota = proposeRota(sessions, carers, steps);
        const minutes = new Map(carers.map((row) => [row.id, row.minutes]));
        rota.sessions.forEach(({ session, carers: given }, s) => {
          const named = given.filter((id) => id !== null);
          expect(new Set(named).size).toBe(named.length);
          given.forEach((id, hand) => {
            if (id === null) return;
            const asked = sessions[s]!.hands[hand]!;
            expect(carers.find((row) => row.id === id)!.mostMinutes(session)).toBeGreaterThanOrEqual(asked);
            minutes.set(id, minutes.get(id)! + asked);
          });
        });
        expect(rota.minutes).toEqual(minutes);
        expect(proposeRota(sessions, carers, steps)).toEqual(rota);
      }),
    );
  });

  it("gives the work to whoever has done least so far, and nobody's is needless", () => {
    const rota = proposeRota(oneEach([30, 30, 30]), [carer("ana", 200), carer("tom", 120), carer("iris", 110)]);
    expect([...rota.minutes.values()]).toEqual([200, 150, 170]);
    // 0 minutes are no work: nobody need come.
    expect(proposeRota([{ session: "s", hands: [0, 12] }], [carer("ana")]).sessions).toEqual([
      { session: "s", carers: [null, "ana"] },
    ]);
    expect(proposeRota(oneEach([10]), []).sessions[0]!.carers).toEqual([null]);
  });

  it("counts tenths of minutes", () => {
    const rota = proposeRota(oneEach([0.1, 0.2, 0.3]), machines(2));
    expect([...rota.minutes.values()]).toEqual([0.3, 0.3]);
  });

  it("of four weeks of a household is made without end in sight", () => {
    const minutes = Array.from({ length: 44 }, (_, at) => 11.3 + ((at * 7) % 23));
    const rota = proposeRota(oneEach(minutes), [carer("ana", 210.4), carer("tom", 180), carer("iris", 95.5)]);
    const spread = longest(rota.minutes.values()) - Math.min(...rota.minutes.values());
    // Among that many, of which the shortest take 11.3 minutes, there is nothing left to exchange for more than a minute.
    expect(spread).toBeLessThan(1);
  });
});

describe("fairness", () => {
  it("looks at 28 days, the last included", () => {
    expect(fourWeeksBefore("2027-01-28")).toBe("2027-01-01");
  });
  it("gives shares of all that was done, also by those who have left", () => {
    const minutes = [
      { personId: "ana", done: 30, ahead: 12.5 },
      { personId: "gone", done: 15, ahead: 0 },
      { personId: null, done: 15, ahead: 4 },
    ];
    expect(shareOut(["ana", "tom"], minutes)).toEqual({
      carers: [
        { personId: "ana", minutesDone: 30, sharePercent: 50, minutesAhead: 12.5 },
        { personId: "tom", minutesDone: 0, sharePercent: 0, minutesAhead: 0 },
      ],
      othersMinutes: 30,
    });
    expect(shareOut(["ana"], []).carers[0]!.sharePercent).toBe(0);
  });
});
