import { dueReminders, type TaskToRemind } from "../../src/domain/rota/reminders.js";
import { instantAt } from "../../src/app/local-day.js";

const london = (date: string, time: string) => instantAt("Europe/London", date, time);
const at = (instant: string) => Date.parse(instant);
const task = (change: Partial<TaskToRemind> & Pick<TaskToRemind, "key">): TaskToRemind => ({
  session: "morning-2027-01-11",
  startsAt: "06:50",
  latestStartsAt: "07:05",
  handsOnMinutes: 4,
  state: "OPEN",
  takenById: null,
  ...change,
});
const said = (tasks: readonly TaskToRemind[], since: string, until: string, onDuty: [string, string[]][] = []) =>
  dueReminders(tasks, new Map(onDuty), london, at(since), at(until)).map(({ kind, taskKey, personId, dueAt }) =>
    [new Date(dueAt).toISOString().slice(0, 16), kind, taskKey ?? "-", personId ?? "all"].join(" "),
  );
const day = (date: string) => [`${date}T00:00:00Z`, `${date}T23:59:59Z`] as const;

describe("reminders", () => {
  const tasks = [
    task({ key: "free" }),
    task({ key: "mine", state: "TAKEN", takenById: "tom", startsAt: "07:00" }),
    task({ key: "done", state: "DONE", takenById: "iris" }),
    task({ key: "cooling", handsOnMinutes: 0 }),
  ];
  const onDuty: [string, string[]][] = [["morning-2027-01-11", ["iris", "tom"]]];

  it("come before a session and a task, and when a task nobody holds can begin no later", () => {
    expect(said(tasks, ...day("2027-01-11"), onDuty)).toEqual([
      "2027-01-11T06:35 SESSION_BEGINS - iris",
      "2027-01-11T06:35 SESSION_BEGINS - tom",
      "2027-01-11T06:50 TASK_BEGINS mine tom",
      "2027-01-11T07:05 TASK_GETS_LATE free all",
    ]);
  });

  it("are due at their minute and not before, and once between any two looks", () => {
    const looks = ["06:34:59", "06:35:00", "06:50:00", "07:04:59", "07:05:00", "07:06:00"];
    const each = looks
      .slice(1)
      .map((until, n) => said(tasks, `2027-01-11T${looks[n]}Z`, `2027-01-11T${until}Z`, onDuty));
    expect(each.map((row) => row.length)).toEqual([2, 1, 0, 1, 0]);
    expect(each.flat()).toEqual(said(tasks, ...day("2027-01-11"), onDuty));
  });

  it("are not sent for a session in which nothing is left to do", () => {
    const over = tasks.map((row) => ({ ...row, state: "DONE" as const }));
    expect(said(over, ...day("2027-01-11"), onDuty)).toEqual([]);
  });

  it("of a session that runs past midnight are of the next day from then on", () => {
    const late = [
      task({ key: "before", session: "evening-2027-01-11", startsAt: "23:30", latestStartsAt: "23:50" }),
      task({ key: "after", session: "evening-2027-01-11", startsAt: "00:20", latestStartsAt: "00:40" }),
    ];
    expect(said(late, "2027-01-11T00:00:00Z", "2027-01-13T00:00:00Z", [["evening-2027-01-11", ["ana"]]])).toEqual([
      "2027-01-11T23:15 SESSION_BEGINS - ana",
      "2027-01-11T23:50 TASK_GETS_LATE before all",
      "2027-01-12T00:40 TASK_GETS_LATE after all",
    ]);
  });
});

// Summer Time Order 2002 (S.I. 2002 No. 262), from memory: it begins at 01:00 GMT on the last Sunday of March and ends at 01:00 GMT on
// the last Sunday of October; in 2027 those are the 28th and the 31st.
describe("on the days on which the clocks change in London", () => {
  const before = (date: string, change: Partial<TaskToRemind> = {}) => [
    task({ key: "free", session: `morning-${date}`, ...change }),
  ];

  it("are at the time on the clock: an hour earlier by the sun from the 28th of March on", () => {
    for (const [date, hour] of [
      ["2027-03-27", "07"],
      ["2027-03-28", "06"],
      ["2027-10-30", "06"],
      ["2027-10-31", "07"],
    ] as const)
      expect(said(before(date), ...day(date))).toEqual([`${date}T${hour}:05 TASK_GETS_LATE free all`]);
  });

  it("are a quarter of an hour before a session, across the jump too", () => {
    const session = "morning-2027-03-28";
    // 02:05 is an hour and five minutes after 00:59:59; the quarter before it begins at 00:50 GMT.
    const early = before("2027-03-28", { startsAt: "02:05", latestStartsAt: "02:10" });
    expect(said(early, ...day("2027-03-28"), [[session, ["ana"]]])).toEqual([
      "2027-03-28T00:50 SESSION_BEGINS - ana",
      "2027-03-28T01:10 TASK_GETS_LATE free all",
    ]);
  });

  it("take a time that is left out as the hour later, and of one that comes twice the first", () => {
    expect(new Date(london("2027-03-28", "01:30")).toISOString()).toBe("2027-03-28T01:30:00.000Z");
    expect(new Date(london("2027-10-31", "01:30")).toISOString()).toBe("2027-10-31T00:30:00.000Z");
    const twice = before("2027-10-31", { startsAt: "01:20", latestStartsAt: "01:30" });
    expect(said(twice, ...day("2027-10-31"))).toEqual(["2027-10-31T00:30 TASK_GETS_LATE free all"]);
  });

  it("agree with what a clock shows, on every quarter of an hour of both days", () => {
    const clock = new Intl.DateTimeFormat("sv-SE", {
      timeZone: "Europe/London",
      dateStyle: "short",
      timeStyle: "short",
    });
    for (const date of ["2027-03-28", "2027-10-31"])
      for (let minute = 0; minute < 24 * 60; minute += 15) {
        const time = `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
        const leftOut = date === "2027-03-28" && time >= "01:00" && time < "02:00";
        const shown = leftOut ? time.replace("01:", "02:") : time;
        expect(clock.format(london(date, time))).toBe(`${date} ${shown}`);
      }
  });
});
