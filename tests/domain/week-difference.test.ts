import type { BatchPlan, BoxPlan, ItemPlan, ShoppingLinePlan, TaskPlan, WeekDraft } from "../../src/domain/week.js";
import { differenceBetween } from "../../src/domain/week-difference.js";

const item = (dish: string, change: Partial<ItemPlan> = {}): ItemPlan => ({
  breakKey: "lunch",
  slot: "MAIN",
  position: 0,
  dish,
  grams: 200,
  pieces: null,
  served: "COLD",
  energyKcal: 300,
  carbohydrateGrams: 30,
  compartment: 0,
  cuts: [],
  holding: { case: "CHILLED", minutes: 200, limitMinutes: 240 },
  labelsToRead: [],
  pinned: false,
  why: [],
  ...change,
});
const box = (childId: string, date: string, items: readonly ItemPlan[]): BoxPlan => ({
  childId,
  date,
  leaveAt: "08:10",
  coldSources: 2,
  flask: false,
  cutlery: [],
  items,
});
const batch = (base: string, change: Partial<BatchPlan> = {}): BatchPlan => ({
  base,
  session: "evening-2027-01-11",
  batches: 1,
  grams: 400,
  feeds: [],
  spareGrams: 0,
  made: false,
  ...change,
});
const task = (key: string, change: Partial<TaskPlan> = {}): TaskPlan => ({
  key,
  session: "morning-2027-01-12",
  kind: "FINISH",
  base: null,
  dish: "rice",
  text: "Shape.",
  childIds: ["ari"],
  forDates: ["2027-01-12"],
  handsOnMinutes: 4,
  passiveMinutes: 0,
  equipment: [],
  startsAt: "07:00",
  handsFreeAt: "07:04",
  endsAt: "07:04",
  latestStartsAt: "07:00",
  carer: 0,
  after: [],
  handles: [],
  ...change,
});
const line = (food: string, packs: number): ShoppingLinePlan => ({
  food,
  section: "PRODUCE",
  neededGrams: 100,
  fromStockGrams: 0,
  packs,
  packGrams: 250,
  spareGrams: 0,
  costMinor: packs * 120,
  readLabel: false,
});
const draft = (change: Partial<WeekDraft>): WeekDraft => ({
  boxes: [],
  batches: [],
  readyUses: [],
  tasks: [],
  sessions: [],
  shopping: [],
  cautions: [],
  wishes: {
    handsOnMinutes: 100.3,
    costMinor: 900,
    spareBaseGrams: 0,
    nutrientShortfallPercent: 3,
    refusalPoints: 5,
    monotonyPoints: 0,
    objectivePoints: 300,
  },
  ...change,
});
const nothingSettled = () => false;
const between = (before: Partial<WeekDraft>, after: Partial<WeekDraft>, isSettled = nothingSettled as Settled) =>
  differenceBetween(draft(before), draft(after), isSettled);
type Settled = Parameters<typeof differenceBetween>[2];

describe("what changes from one plan of a week to the next", () => {
  it("is nothing between a plan and itself", () => {
    const week = {
      boxes: [box("ari", "2027-01-12", [item("rice")])],
      batches: [batch("rice-cooked")],
      tasks: [task("a")],
      shopping: [line("apple", 2)],
    };
    const { more, ...rest } = between(week, week);
    expect(rest).toEqual({ boxes: [], batches: [], sessions: [], toBuy: [], notNeeded: [] });
    expect(new Set(Object.values(more))).toEqual(new Set([0]));
  });

  it("is a box with another dish or other grams, one more and one less, but not one whose items lie elsewhere in it", () => {
    const date = "2027-01-12";
    const was = [
      box("ari", date, [item("rice"), item("apple", { slot: "FRUIT", position: 1 })]),
      box("bo", date, [item("rice")]),
      box("cy", date, [item("rice")]),
      box("di", date, [item("rice")]),
    ];
    const is = [
      box("ari", date, [item("apple", { slot: "FRUIT", position: 1 }), item("rice", { compartment: 3 })]),
      box("bo", date, [item("noodles")]),
      box("cy", date, [item("rice", { grams: 180 })]),
      box("eve", date, [item("rice")]),
    ];
    const { boxes } = between({ boxes: was }, { boxes: is });
    expect(boxes.map(({ childId, before, after }) => [childId, before.length, after.length])).toEqual([
      ["bo", 1, 1],
      ["cy", 1, 1],
      ["di", 1, 0],
      ["eve", 0, 1],
    ]);
  });

  it("is a batch no longer made, newly made or of another size", () => {
    const was = [batch("dough"), batch("sauce"), batch("rice-cooked")];
    const is = [batch("dough"), batch("sauce", { batches: 2, grams: 800 }), batch("filling")];
    expect(between({ batches: was }, { batches: is }).batches).toEqual([
      { base: "filling", session: "evening-2027-01-11", before: null, after: { batches: 1, grams: 400 } },
      { base: "rice-cooked", session: "evening-2027-01-11", before: { batches: 1, grams: 400 }, after: null },
      {
        base: "sauce",
        session: "evening-2027-01-11",
        before: { batches: 1, grams: 400 },
        after: { batches: 2, grams: 800 },
      },
    ]);
  });

  it("is work that goes, comes, moves to another session or takes longer, not work that only begins later", () => {
    const was = [task("goes"), task("moves"), task("longer"), task("later")];
    const is = [
      task("moves", { session: "evening-2027-01-11" }),
      task("longer", { handsOnMinutes: 6.5 }),
      task("later", { startsAt: "07:20", endsAt: "07:24", carer: 1 }),
      task("comes", { handsOnMinutes: 1 }),
    ];
    const { sessions } = between({ tasks: was }, { tasks: is });
    const keys = (tasks: readonly TaskPlan[]) => tasks.map(({ key }) => key);
    expect(
      sessions.map(({ session, goes, comes, changes, handsOnMinutesMore }) => [
        session,
        keys(goes),
        keys(comes),
        keys(changes.map(({ after }) => after)),
        handsOnMinutesMore,
      ]),
    ).toEqual([
      ["evening-2027-01-11", [], ["moves"], [], 4],
      ["morning-2027-01-12", ["goes", "moves"], ["comes"], ["longer"], -4.5],
    ]);
  });

  it("is not that the work of packed boxes and cooked batches is done and no longer listed", () => {
    const was = [
      task("pack", { kind: "PACK" }),
      task("dough", { kind: "BASE", base: "dough", session: "evening-2027-01-11", forDates: ["2027-01-13"] }),
      task("sauce", { kind: "BASE", base: "sauce", session: "evening-2027-01-11", forDates: ["2027-01-13"] }),
    ];
    const packed: Settled = ({ childId, date }) => childId === "ari" && date === "2027-01-12";
    const { sessions } = between({ tasks: was }, { batches: [batch("dough", { made: true })] }, packed);
    expect(sessions.flatMap(({ goes }) => goes.map(({ key }) => key))).toEqual(["sauce"]);
    expect(between({ tasks: was }, {}).sessions.flatMap(({ goes }) => goes)).toHaveLength(3);
  });

  it("is packs to buy besides and packs bought in vain, with their cost", () => {
    const was = [line("apple", 2), line("beetroot", 1), line("carrot", 1)];
    const is = [line("apple", 3), line("carrot", 1), line("dill", 1)];
    expect(between({ shopping: was }, { shopping: is })).toMatchObject({
      toBuy: [
        { food: "apple", packs: 1, packGrams: 250, costMinor: 120 },
        { food: "dill", packs: 1, packGrams: 250, costMinor: 120 },
      ],
      notNeeded: [{ food: "beetroot", packs: 1, packGrams: 250, costMinor: 120 }],
    });
  });

  it("is each wish more or less in its own unit", () => {
    const { wishes } = draft({});
    const { more } = between(
      {},
      { wishes: { ...wishes, handsOnMinutes: 98.1, costMinor: 950, objectivePoints: 310.04 } },
    );
    expect(more).toMatchObject({ handsOnMinutes: -2.2, costMinor: 50, spareBaseGrams: 0, objectivePoints: 10 });
  });
});
