import { madeWith, type WorkDone } from "../../src/domain/kitchen/later-work.js";
import { hasBegun, takeOver, type TaskBefore } from "../../src/domain/kitchen/kept-tasks.js";
import type { TaskPlan } from "../../src/domain/week.js";

const task = (change: Partial<TaskPlan> & Pick<TaskPlan, "key">): TaskPlan => ({
  session: "morning-2027-01-12",
  kind: "FINISH",
  base: null,
  dish: "rice-salad",
  text: "Stir.",
  childIds: ["pia"],
  forDates: ["2027-01-12"],
  handsOnMinutes: 4,
  passiveMinutes: 0,
  equipment: [],
  startsAt: "06:50",
  handsFreeAt: "06:54",
  endsAt: "06:54",
  latestStartsAt: "07:10",
  carer: 0,
  after: [],
  handles: [],
  ...change,
});
const before = (
  change: Partial<TaskBefore> & Pick<TaskBefore, "key">,
  state: TaskBefore["state"] = "DONE",
): TaskBefore => ({ ...task(change), kept: false, ...change, state });
const nowhere = () => false;
const taken = (was: readonly TaskBefore[], is: readonly TaskPlan[], made = nowhere, begun = nowhere) => {
  const { goOn, kept } = takeOver(was, is, made, begun);
  return { goOn: [...goOn].map(([key, { state }]) => `${key} ${state}`), kept: kept.map(({ key }) => key) };
};

describe("a new plan takes over", () => {
  it("who holds a task, though it asks for more now", () => {
    const was = [before({ key: "finish:a" }, "TAKEN")];
    const is = [task({ key: "finish:a", childIds: ["pia", "theo"], handsOnMinutes: 9 })];
    expect(taken(was, is)).toEqual({ goOn: ["finish:a TAKEN"], kept: [] });
  });

  it("what is done, when it asks for no more than was made", () => {
    const was = [before({ key: "finish:a", childIds: ["pia", "theo"] })];
    expect(taken(was, [task({ key: "finish:a", handsOnMinutes: 3 })])).toEqual({ goOn: ["finish:a DONE"], kept: [] });
  });

  it("and leaves open what asks for another child's portion, with what was done beside it", () => {
    const more = task({ key: "finish:a", childIds: ["pia", "theo"], handsOnMinutes: 5 });
    expect(taken([before({ key: "finish:a" })], [more])).toEqual({ goOn: [], kept: ["finish:a~1"] });
  });

  it("and leaves a box to be packed again when other dishes go into it", () => {
    const was = [before({ key: "pack:pia", kind: "PACK", dish: null, text: "Pack the box of Pia: Rice." })];
    const same = task({ key: "pack:pia", kind: "PACK", dish: null, text: "Pack the box of Pia: Rice." });
    const other = task({ key: "pack:pia", kind: "PACK", dish: null, text: "Pack the box of Pia: Millet." });
    expect(taken(was, [same])).toEqual({ goOn: ["pack:pia DONE"], kept: [] });
    expect(taken(was, [other])).toEqual({ goOn: [], kept: ["pack:pia~1"] });
  });

  it("never another batch of a base as cooked because one was", () => {
    const base = { key: "base:rice@evening-2027-01-11", kind: "BASE", base: "rice", dish: null } as const;
    expect(taken([before(base)], [task(base)])).toEqual({ goOn: [], kept: [`${base.key}~1`] });
  });

  it("what is done and asked for no more, from plan to plan, each under a key of its own", () => {
    expect(taken([before({ key: "finish:a" })], [])).toEqual({ goOn: [], kept: ["finish:a"] });
    const twice = [before({ key: "finish:a~1", kept: true }), before({ key: "finish:a" })];
    const more = task({ key: "finish:a", childIds: ["pia", "theo"] });
    expect(taken(twice, [more])).toEqual({ goOn: [], kept: ["finish:a~1", "finish:a~2"] });
  });

  it("no state of a task that stayed on record: what is asked for again is made again", () => {
    const was = [before({ key: "finish:a", kept: true })];
    expect(taken(was, [task({ key: "finish:a" })])).toEqual({ goOn: [], kept: ["finish:a~1"] });
  });

  it("what is held and has begun, and a base that counts as cooked, and nothing else that nobody needs", () => {
    const base = { key: "base:rice", kind: "BASE", base: "rice", dish: null } as const;
    const was = [before({ key: "finish:a" }, "TAKEN"), before({ key: "finish:b" }, "OPEN"), before(base, "OPEN")];
    expect(taken(was, [])).toEqual({ goOn: [], kept: [] });
    const yes = () => true;
    expect(taken(was, [], nowhere, yes)).toEqual({ goOn: [], kept: ["finish:a"] });
    expect(taken(was, [], yes, yes)).toEqual({ goOn: [], kept: ["finish:a", "base:rice"] });
  });
});

it("a session has begun with its first task", () => {
  const tasks = [task({ key: "a", startsAt: "07:00" }), task({ key: "b", startsAt: "06:50" })];
  const at = (date: string, time: string) => hasBegun(tasks, { date, time })("morning-2027-01-12");
  expect([at("2027-01-11", "23:59"), at("2027-01-12", "06:49")]).toEqual([false, false]);
  expect([at("2027-01-12", "06:50"), at("2027-01-13", "00:00")]).toEqual([true, true]);
});

describe("what was made with a task's work", () => {
  const done = (change: Partial<WorkDone> & Pick<WorkDone, "key">): WorkDone => ({ ...task(change), ...change });
  const basesOf = (dish: string) => (dish === "rice-salad" ? ["rice"] : []);
  const base = task({ key: "base:rice", kind: "BASE", base: "rice", dish: null, session: "evening-2027-01-11" });
  const box = (change: object = {}) => ({
    childId: "pia",
    date: "2027-01-12",
    isPacked: true,
    dishes: ["apple", "rice-salad"],
    ...change,
  });

  it("is every done task that names it as coming first", () => {
    const later = [done({ key: "finish:a#2", after: ["finish:a#1"] }), done({ key: "finish:b#1", dish: "toast" })];
    const used = madeWith(task({ key: "finish:a#1" }), later, [], basesOf);
    expect(used.tasks.map(({ key }) => key)).toEqual(["finish:a#2"]);
  });

  it("of a base is every dish of it finished for its children and days, in a later session too", () => {
    const later = [
      done({ key: "mine" }),
      done({ key: "another day's", forDates: ["2027-01-13"] }),
      done({ key: "another child's", childIds: ["theo"] }),
      done({ key: "of no rice", dish: "toast" }),
    ];
    expect(madeWith(base, later, [], basesOf).tasks.map(({ key }) => key)).toEqual(["mine"]);
  });

  it("is every packed box that holds it", () => {
    const boxes = [box(), box({ isPacked: false }), box({ childId: "theo" }), box({ dishes: ["apple"] })];
    for (const one of [base, task({ key: "finish:a#1" })])
      expect(madeWith(one, [], boxes, basesOf).boxes).toEqual([boxes[0]]);
    const pack = task({ key: "pack:pia", kind: "PACK", dish: null });
    expect(madeWith(pack, [], boxes, basesOf).boxes).toEqual([boxes[0], boxes[3]]);
  });
});
