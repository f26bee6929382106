import type { RuleSetDocument } from "../../shared/rule-set.js";
import { assembleBrief, nextSchoolDay, weekStartOf, type BriefParts } from "../../src/app/assemble-brief.js";
import type { ChildDisruptionRow, KitchenDisruptionRow } from "../../src/database/disruption.js";
import type { ChildRow, HouseholdRow, SchoolDayRow, SchoolRow } from "../../src/database/household.js";
import type { PlanningFacts } from "../../src/database/planning.js";
import type { Reference } from "../../src/database/reference.js";
import type { RuleSetRow } from "../../src/database/school.js";
import type { BatchRow, BoxRow, WeekRow } from "../../src/database/week.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { readCredits, readHoldingModel, readMealShares } from "../domain/reference-rows.js";

/** A week of an invented household, Monday 11 to Sunday 17 January 2027; the planner's rows themselves play no part here. */
const monday = "2027-01-11";
const [tuesday, wednesday, thursday, friday] = ["2027-01-12", "2027-01-13", "2027-01-14", "2027-01-15"] as const;
const HERE = "home-here";
const THERE = "home-there";

const reference: Reference = {
  catalogue: { version: "none", foods: [], bases: [], dishes: [], retention: [] },
  choking: [],
  mealShares: readMealShares(),
  credits: readCredits(),
  labelLaws: [],
  holding: {
    chilledMinutes: 240,
    coldSources: 2,
    flaskMinutes: 240,
    ambientMinutes: 120,
    hotDayAmbientMinutes: 60,
    hotDayAboveC: 32,
    source: "own figures of this test",
    model: readHoldingModel(),
  },
  dishIds: new Map(),
};

const school = (days: readonly SchoolDayRow[] = []): SchoolRow => ({
  id: "school",
  name: "Elder Lane",
  timeZone: "Europe/London",
  jurisdiction: "England",
  revision: 1,
  classes: ["owls", "larks"].map((id) => ({
    id,
    schoolId: "school",
    name: id,
    facility: "REHEATING",
    breaks: [
      { key: "early-snack", name: "Early snack", startsAt: "08:00", minutes: 10, slots: ["FRUIT"], energyShare: 0.05 },
      { key: "morning", name: "Morning", startsAt: "10:00", minutes: 15, slots: ["FRUIT"], energyShare: 0.08 },
      { key: "lunch", name: "Lunch", startsAt: "11:30", minutes: 25, slots: ["MAIN", "FRUIT"], energyShare: 0.3 },
    ],
  })),
  terms: [
    { name: "Autumn", firstDay: "2026-09-01", lastDay: "2026-12-18" },
    { name: "Spring", firstDay: "2027-01-05", lastDay: "2027-03-25" },
  ],
  days,
});

const child = (change: Partial<ChildRow> = {}): ChildRow => ({
  id: "ari",
  name: "Ari",
  dateOfBirth: "2018-03-01",
  diets: [],
  dislikes: [],
  appetite: 1,
  provisions: [],
  exemptions: [],
  activity: "LOW_ACTIVE",
  minutesToEat: 20,
  revision: 1,
  allergies: [],
  enrolments: [{ schoolId: "school", schoolClassId: "owls", fromDate: "2026-09-01", untilDate: null }],
  schoolMealDays: [],
  body: null,
  boxKit: null,
  leaveTimes: (["MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY"] as const).map((weekday) => ({
    weekday,
    leaveAt: "08:15",
  })),
  ...change,
});

const household = (change: Partial<HouseholdRow> = {}): HouseholdRow => ({
  id: HERE,
  name: "Test kitchen",
  timeZone: "Europe/London",
  weekStart: "MONDAY",
  unitSystem: "METRIC",
  energyMethod: "NASEM_2023",
  currency: "GBP",
  keepsOut: [],
  refrigeratorMl: 20_000,
  freezerMl: 20_000,
  revision: 1,
  myRole: "COOK",
  carers: [],
  children: [child()],
  equipment: [
    { kind: "OVEN", units: 1 },
    { kind: "STEAMER", units: 0 },
  ],
  hotDays: [],
  prepTimes: [
    {
      kind: "WEEKEND",
      weekday: "SUNDAY",
      startsAt: "16:00",
      handsOnMinutes: 60,
      elapsedMinutes: 90,
      carers: 1,
      effort: 4,
    },
    {
      kind: "EVENING",
      weekday: "TUESDAY",
      startsAt: "19:30",
      handsOnMinutes: 20,
      elapsedMinutes: 40,
      carers: 1,
      effort: 6,
    },
    {
      kind: "MORNING",
      weekday: "WEDNESDAY",
      startsAt: "06:50",
      handsOnMinutes: 25,
      elapsedMinutes: 50,
      carers: 1,
      effort: 9,
    },
  ],
  prepTimeExceptions: [],
  stock: [],
  leftovers: [],
  freezerStock: [],
  labelChecks: [],
  schools: [school()],
  ...change,
});

const facts = (change: Partial<PlanningFacts> = {}): PlanningFacts => ({
  residencePatterns: [],
  residenceExceptions: [],
  residences: [{ childId: "ari", householdId: HERE }],
  childDisruptions: [],
  kitchenDisruptions: [],
  pins: [],
  relaxations: [],
  elsewhere: [],
  history: [],
  ...change,
});

const ofChild = (kind: ChildDisruptionRow["kind"], date: string, change: Partial<ChildDisruptionRow> = {}) => ({
  id: `${kind}-${date}`,
  kind,
  childId: "ari",
  date,
  until: date,
  endsAt: null,
  reason: "",
  ...change,
});
const absent = (date: string) => ofChild("ABSENT", date);
const ofKitchen = (kind: KitchenDisruptionRow["kind"], date: string, change: Partial<KitchenDisruptionRow> = {}) => ({
  id: `${kind}-${date}`,
  kind,
  date,
  until: date,
  foodKind: null,
  appliance: null,
  units: null,
  minutes: null,
  ...change,
});

const document = (change: Partial<RuleSetDocument> = {}): RuleSetDocument => ({
  format: "noonpail-rule-set/1",
  key: "house-food",
  title: "Food from home",
  layer: "SCHOOL",
  coversFoodFromHome: true,
  language: "en",
  version: 1,
  inForceFrom: "2026-09-01",
  rules: [],
  ...change,
});
const ruleSet = (change: Partial<RuleSetRow> = {}): RuleSetRow => ({
  id: "set",
  confirmed: true,
  schoolId: "school",
  schoolClassId: null,
  childId: null,
  copyOfId: null,
  adoptedBy: [],
  jurisdiction: null,
  document: document(),
  ...change,
});

const box = (date: string, state: BoxRow["state"], dish: string): BoxRow => ({
  id: `box-${date}`,
  childId: "ari",
  date,
  state,
  packedAt: null,
  packing: null,
  blocks: [],
  items: [
    {
      id: `item-${date}`,
      boxId: `box-${date}`,
      childId: "ari",
      date,
      breakKey: "lunch",
      slot: "MAIN",
      place: 0,
      dish,
      grams: 200,
      pieces: null,
      served: "COLD",
      energyKcal: 400,
      carbohydrateGrams: null,
      allergens: [],
      cuts: [],
      holdingCase: "CHILLED",
      pinned: false,
      cameBack: null,
      note: null,
      planId: "plan",
    },
  ],
});
const batch = (session: string, state: BatchRow["state"]): BatchRow => ({
  id: `batch-${session}`,
  base: "rice-cooked",
  session,
  batches: 1,
  grams: 600,
  feeds: [],
  spareGrams: 0,
  state,
});
const week = (boxes: readonly BoxRow[], batches: readonly BatchRow[] = []): WeekRow => ({
  id: "week",
  householdId: HERE,
  weekStart: monday,
  revision: 1,
  children: [{ id: "ari", name: "Ari" }],
  plan: {
    id: "plan",
    number: 1,
    state: "DRAFT",
    seed: "1",
    steps: 1,
    problemHash: "",
    catalogueVersion: "none",
    ruleSetVersions: [],
    wishes: {
      handsOnMinutes: 0,
      costMinor: 0,
      spareBaseGrams: 0,
      nutrientShortfallPercent: 0,
      refusalPoints: 0,
      monotonyPoints: 0,
      objectivePoints: 0,
    },
    cautions: [],
    readyUses: [],
    sessions: [],
    comparison: null,
    certificate: null,
    createdAt: "2027-01-09T12:00:00Z",
    agreedAt: null,
    boxes,
    batches,
    tasks: [],
    shopping: [],
  },
});

const brief = (change: Partial<BriefParts> = {}) =>
  assembleBrief({
    household: household(),
    facts: facts(),
    ruleSets: [],
    reference,
    own: null,
    index: indexCatalogue(reference.catalogue),
    weekStart: monday,
    before: null,
    now: { date: "2027-01-09", time: "12:00" },
    stayClose: false,
    ...change,
  });
const datesOf = (change: Partial<BriefParts> = {}) => brief(change).children[0]?.days.map(({ date }) => date) ?? [];
const dayOf = (date: string, change: Partial<BriefParts>) =>
  brief(change).children[0]?.days.find((day) => day.date === date);
const withDay = (day: SchoolDayRow) => ({ household: household({ schools: [school([day])] }) });
const special = (change: Partial<SchoolDayRow>): SchoolDayRow => ({
  date: wednesday,
  kind: "HOLIDAY",
  title: "Special",
  endsAt: null,
  schoolClassId: null,
  ...change,
});

describe("which boxes a household packs", () => {
  it("packs every school day of a child who lives here alone", () => {
    expect(datesOf()).toEqual([monday, tuesday, wednesday, thursday, friday]);
  });

  it("packs for a child of two homes on the days that were agreed, and in the oldest home where nothing was", () => {
    const shared = facts({
      residences: [
        { childId: "ari", householdId: HERE },
        { childId: "ari", householdId: THERE },
      ],
      residenceExceptions: [
        { childId: "ari", date: wednesday, householdId: THERE, state: "ACCEPTED" },
        { childId: "ari", date: thursday, householdId: HERE, state: "ACCEPTED" },
        // Another child's day says nothing about this one.
        { childId: "bo", date: friday, householdId: THERE, state: "ACCEPTED" },
      ],
    });
    expect(datesOf({ facts: shared })).toEqual([monday, tuesday, thursday, friday]);
    const oldestThere = facts({
      residences: [
        { childId: "ari", householdId: THERE },
        { childId: "ari", householdId: HERE },
      ],
      residenceExceptions: [{ childId: "ari", date: tuesday, householdId: HERE, state: "ACCEPTED" }],
    });
    expect(datesOf({ facts: oldestThere })).toEqual([tuesday]);
  });

  it("packs its days of a cycle", () => {
    const inTurn = facts({
      residences: [
        { childId: "ari", householdId: HERE },
        { childId: "ari", householdId: THERE },
      ],
      residencePatterns: [
        {
          childId: "ari",
          kind: "OWN_CYCLE",
          starts: monday,
          ends: null,
          cycle: [HERE, THERE, THERE],
          state: "ACCEPTED",
        },
      ],
    });
    expect(datesOf({ facts: inTurn })).toEqual([monday, thursday]);
  });

  it("packs nothing on a day for which a home that is none any more has left a packed box", () => {
    const left = facts({ elsewhere: [{ childId: "ari", date: tuesday, slot: "MAIN", dish: "dal" }] });
    expect(datesOf({ facts: left })).toEqual([monday, wednesday, thursday, friday]);
  });

  it("packs nothing on a holiday, and only the class that is free stays home", () => {
    expect(datesOf(withDay(special({})))).toEqual([monday, tuesday, thursday, friday]);
    expect(datesOf(withDay(special({ schoolClassId: "owls" })))).toEqual([monday, tuesday, thursday, friday]);
    expect(datesOf(withDay(special({ schoolClassId: "larks" })))).toHaveLength(5);
  });

  it("packs nothing outside a term, at a weekend, on a school-meal day or for a child who is ill", () => {
    expect(datesOf({ weekStart: "2026-12-28" })).toEqual([]);
    // The spring term begins on Tuesday 5 January.
    expect(datesOf({ weekStart: "2027-01-04" })).toEqual(["2027-01-05", "2027-01-06", "2027-01-07", "2027-01-08"]);
    expect(datesOf({ household: household({ children: [child({ schoolMealDays: ["TUESDAY", "FRIDAY"] })] }) })).toEqual(
      [monday, wednesday, thursday],
    );
    expect(datesOf({ facts: facts({ childDisruptions: [absent(monday)] }) })).toEqual([
      tuesday,
      wednesday,
      thursday,
      friday,
    ]);
  });

  it("packs nothing before a child starts at the school, and follows a change of class from its day on", () => {
    const enrolments = [
      { schoolId: "school", schoolClassId: "owls", fromDate: tuesday, untilDate: wednesday },
      { schoolId: "school", schoolClassId: "larks", fromDate: thursday, untilDate: null },
    ];
    const moving = { household: household({ children: [child({ enrolments })] }) };
    expect(datesOf(moving)).toEqual([tuesday, wednesday, thursday, friday]);
    const trip = special({ date: thursday, kind: "TRIP", schoolClassId: "larks" });
    const away = { household: household({ children: [child({ enrolments })], schools: [school([trip])] }) };
    expect(dayOf(wednesday, away)?.facility).toBe("REHEATING");
    expect(dayOf(thursday, away)?.facility).toBe("NEITHER");
  });
});

describe("what a day at school asks for", () => {
  const breaksOf = (change: Partial<BriefParts>) => dayOf(wednesday, change)?.breaks.map(({ key }) => key);

  it("is hot on the days the household expects to be hot, and on no other", () => {
    const hot = brief({ household: household({ hotDays: [tuesday, "2027-06-28"] }) }).children[0]?.days;
    expect(hot?.filter((day) => day.hotDay).map(({ date }) => date)).toEqual([tuesday]);
  });

  it("has the breaks after the child has left home", () => {
    expect(breaksOf({})).toEqual(["morning", "lunch"]);
  });

  it("ends early without the breaks that begin at the early end or later", () => {
    const early = (endsAt: string) => withDay(special({ kind: "EARLY_FINISH", endsAt }));
    expect(breaksOf(early("11:29"))).toEqual(["morning"]);
    expect(breaksOf(early("11:30"))).toEqual(["morning"]);
    expect(breaksOf(early("11:31"))).toEqual(["morning", "lunch"]);
    expect(breaksOf(withDay(special({ kind: "EARLY_FINISH", endsAt: "11:00", schoolClassId: "larks" })))).toEqual([
      "morning",
      "lunch",
    ]);
    // Nothing is left to eat: no box at all.
    expect(datesOf(early("10:00"))).toEqual([monday, tuesday, thursday, friday]);
  });

  it("waits for its breaks by the household's clock, where the school's shows another time", () => {
    const startsOf = (home: string, there: string) =>
      dayOf(wednesday, {
        household: household({ timeZone: home, schools: [{ ...school(), timeZone: there }] }),
      })
        ?.breaks.filter(({ key }) => key === "morning" || key === "lunch")
        .map(({ startsAt }) => startsAt);
    const [morning, lunch] = startsOf("Europe/London", "Europe/London")!;
    const later = (time: string) => `${String(Number(time.slice(0, 2)) + 1).padStart(2, "0")}${time.slice(2)}`;
    // Madrid is an hour ahead of Lisbon and London all year (time-zone database): food for a break there waits an hour longer.
    expect(startsOf("Europe/Madrid", "Europe/Lisbon")).toEqual([later(morning!), later(lunch!)]);
    expect(startsOf("Europe/Lisbon", "Europe/Lisbon")).toEqual([morning, lunch]);
    const early = (endsAt: string) =>
      dayOf(wednesday, {
        household: household({
          timeZone: "Europe/Madrid",
          schools: [{ ...school([special({ kind: "EARLY_FINISH", endsAt })]), timeZone: "Europe/Lisbon" }],
        }),
      })
        ?.breaks.map(({ key }) => key)
        .filter((key) => key === "morning" || key === "lunch");
    // What the school says of its end is on its own clock.
    expect([early("11:30"), early("11:31")]).toEqual([["morning"], ["morning", "lunch"]]);
  });

  it("has no refrigerator and no heating on a trip", () => {
    const trip = withDay(special({ kind: "TRIP" }));
    expect(dayOf(wednesday, trip)?.facility).toBe("NEITHER");
    expect(dayOf(thursday, trip)?.facility).toBe("REHEATING");
  });

  it("obeys on each day the version of the rules that is in force on it", () => {
    const rules = brief({
      ruleSets: [
        ruleSet({ document: document({ version: 1 }) }),
        ruleSet({ document: document({ version: 2, inForceFrom: wednesday }) }),
        ruleSet({ document: document({ version: 3, inForceFrom: "2027-02-01" }) }),
        ruleSet({ id: "over", document: document({ key: "over", inForceUntil: monday }) }),
      ],
    });
    const inForce = rules.children[0]!.days.map((day) =>
      day.ruleSets.map((at) => `${rules.ruleSets[at]!.key}@${rules.ruleSets[at]!.version}`),
    );
    expect(inForce).toEqual([
      ["house-food@1", "over@1"],
      ["house-food@1"],
      ["house-food@2"],
      ["house-food@2"],
      ["house-food@2"],
    ]);
  });

  it("obeys its own class's, its own school's and its own family's rules, and a jurisdiction's only where they hold", () => {
    const england = { schoolId: null, jurisdiction: "England" };
    const { children, ruleSets } = brief({
      ruleSets: [
        ruleSet({ id: "1", document: document({ key: "school" }) }),
        ruleSet({ id: "2", schoolId: "another", document: document({ key: "another-school" }) }),
        ruleSet({ id: "3", schoolClassId: "owls", document: document({ key: "owls" }) }),
        ruleSet({ id: "4", schoolClassId: "larks", document: document({ key: "larks" }) }),
        ruleSet({ id: "5", schoolId: null, childId: "ari", document: document({ key: "ari" }) }),
        ruleSet({ id: "6", schoolId: null, childId: "bo", document: document({ key: "bo" }) }),
        ruleSet({ id: "7", ...england, document: document({ key: "england" }) }),
        ruleSet({ id: "8", ...england, document: document({ key: "england-meals", coversFoodFromHome: false }) }),
        ruleSet({
          id: "9",
          ...england,
          adoptedBy: ["school"],
          document: document({ key: "england-adopted", coversFoodFromHome: false }),
        }),
        ruleSet({ id: "10", schoolId: null, jurisdiction: "Wales", document: document({ key: "wales" }) }),
        ruleSet({
          id: "11",
          ...england,
          adoptedBy: ["another"],
          document: document({ key: "england-adopted-elsewhere", coversFoodFromHome: false }),
        }),
      ],
    });
    expect(children[0]!.days[0]!.ruleSets.map((at) => ruleSets[at]!.key)).toEqual([
      "school",
      "owls",
      "ari",
      "england",
      "england-adopted",
    ]);
    expect(ruleSets.every((set) => set.coversFoodFromHome)).toBe(true);
  });

  it("is bound by no document about the school's own meals, nor by one that only another school took over", () => {
    const meals = document({ coversFoodFromHome: false });
    const { children, ruleSets } = brief({
      ruleSets: [
        ruleSet({ id: "1", document: { ...meals, key: "school-meals" } }),
        ruleSet({ id: "2", schoolId: null, schoolClassId: "owls", document: { ...meals, key: "class-meals" } }),
        ruleSet({
          id: "3",
          schoolId: null,
          jurisdiction: "England",
          adoptedBy: ["another"],
          document: { ...meals, key: "adopted-elsewhere" },
        }),
        ruleSet({ id: "4", schoolId: null, childId: "ari", document: { ...meals, key: "own" } }),
        // A newer version that no longer speaks of boxes takes the place of one that did.
        ruleSet({ id: "5", document: document({ key: "was-about-boxes" }) }),
        ruleSet({ id: "5", document: { ...meals, key: "was-about-boxes", version: 2, inForceFrom: wednesday } }),
      ],
    });
    const keysOn = (at: number) => children[0]!.days[at]!.ruleSets.map((set) => ruleSets[set]!.key);
    expect(keysOn(0)).toEqual(["own", "was-about-boxes"]);
    expect(keysOn(2)).toEqual(["own"]);
  });

  it("lets a rule rest on the days of a clinician's note, by the rule set it stands in", () => {
    const note = { id: "x", ruleSetId: "2", rule: "no-crisps", from: tuesday, until: wednesday, note: null };
    const exemptions = [note, { ...note, id: "y", ruleSetId: "gone" }, { ...note, id: "z", rule: "no-nuts" }];
    const rule = {
      id: "no-crisps",
      kind: "EXCLUDE",
      says: "No crisps.",
      level: "FORBID",
      source: "own rule of this test",
      shortWeek: "PRORATE",
      matches: { anyOf: [{ kinds: ["crisps"] }] },
    } as const;
    // The school has made it a rule about an allergen since the note was recorded: it holds.
    const nuts = { ...rule, id: "no-nuts", matches: { anyOf: [{ allergens: ["TREE_NUTS" as const] }] } };
    const rules = [rule, nuts].map((row) => structuredClone(row)) as RuleSetDocument["rules"];
    const { children, ruleSets } = brief({
      household: household({ children: [child({ exemptions })] }),
      ruleSets: [
        ruleSet({ id: "1", document: document({ key: "one", rules }) }),
        ruleSet({ id: "2", document: document({ key: "two", rules }) }),
      ],
    });
    const rests = children[0]!.days.map(({ exempt }) =>
      exempt?.map((row) => `${ruleSets[row.ruleSet]!.key}/${row.rule}`),
    );
    expect(rests).toEqual([undefined, ["two/no-crisps"], ["two/no-crisps"], undefined, undefined]);
  });
});

describe("what stays when a week is planned again", () => {
  const before = week(
    [box(monday, "PACKED", "packed-dish"), box(tuesday, "PLANNED", "past-dish"), box(thursday, "PLANNED", "open-dish")],
    [batch("weekend-2027-01-10", "OPEN"), batch("evening-2027-01-12", "DONE"), batch("morning-2027-01-13", "OPEN")],
  );
  const now = { date: wednesday, time: "06:40" };

  it("keeps packed boxes and boxes of days gone by, and leaves the others free", () => {
    const { pins } = brief({ before, now });
    expect(pins.map(({ date, dish, because }) => [date, dish, because])).toEqual([
      [monday, "packed-dish", "PACKED"],
      [tuesday, "past-dish", "PACKED"],
    ]);
  });

  it("keeps a carer's pin on an open box, and lets what was packed win over a pin", () => {
    const pin = { childId: "ari", breakKey: "lunch", slot: "MAIN" as const, place: 0, dish: "pinned-dish" };
    const pins = [
      { ...pin, date: monday },
      { ...pin, date: friday },
    ];
    const again = brief({ before, now, facts: facts({ pins }) });
    expect(again.pins.filter(({ because }) => because === "PINNED").map(({ date }) => date)).toEqual([friday]);
    expect(again.pins.filter(({ date }) => date === monday).map(({ dish }) => dish)).toEqual(["packed-dish"]);
    // Nobody is at school then, so there is nothing to pin.
    const ill = brief({ facts: facts({ pins, childDisruptions: [absent(friday)] }) });
    expect(ill.pins.map(({ date }) => date)).toEqual([monday]);
  });

  it("keeps batches that are cooked or whose session has begun", () => {
    const sessionsKept = (time: string) =>
      brief({ before, now: { date: wednesday, time } }).made.map(({ session }) => session);
    expect(sessionsKept("06:40")).toEqual(["weekend-2027-01-10", "evening-2027-01-12"]);
    expect(sessionsKept("06:50")).toEqual(["weekend-2027-01-10", "evening-2027-01-12", "morning-2027-01-13"]);
  });

  it("stays close to the week before only when asked", () => {
    expect(brief({ before, now }).stayCloseTo).toEqual([]);
    expect(brief({ before, now, stayClose: true }).stayCloseTo.map(({ dish }) => dish)).toEqual([
      "packed-dish",
      "past-dish",
      "open-dish",
    ]);
  });
});

describe("the kitchen's part of a brief", () => {
  it("has the sessions around school days, with the minutes of a single date before the usual ones", () => {
    const prepTimeExceptions = [
      { kind: "EVENING" as const, date: tuesday, startsAt: "20:00", handsOnMinutes: 5, elapsedMinutes: 10, carers: 2 },
      { kind: "MORNING" as const, date: thursday, startsAt: "06:00", handsOnMinutes: 9, elapsedMinutes: 10, carers: 1 },
    ];
    const { sessions } = brief({ household: household({ prepTimeExceptions }) });
    expect(sessions.map(({ key, handsOnMinutes, effort }) => [key, handsOnMinutes, effort])).toEqual([
      ["weekend-2027-01-10", 60, 4],
      ["evening-2027-01-12", 5, 6],
      ["morning-2027-01-13", 25, 9],
      // A morning that is not usual has no usual effort.
      ["morning-2027-01-14", 9, 1],
    ]);
  });

  it("cooks nothing for days on which nobody here has a box", () => {
    const only = facts({ childDisruptions: [tuesday, wednesday].map((date) => absent(date)) });
    expect(brief({ facts: only }).sessions.map(({ key }) => key)).toEqual(["weekend-2027-01-10"]);
    const none = facts({ residences: [{ childId: "ari", householdId: THERE }] });
    expect(brief({ facts: none })).toMatchObject({ children: [], sessions: [] });
  });

  it("offers leftovers from the day after they were cooked until their last safe day, and no equipment that is not there", () => {
    const leftovers = [
      { id: "rest", base: "tomato-sauce", grams: 300, cookedOn: "2027-01-10", lastSafeDay: wednesday },
    ];
    const freezerStock = [
      { id: "ice", base: "bread-roll-dough", grams: 700, frozenOn: "2026-12-28", useBy: "2027-03-28" },
    ];
    const { ready, household: kitchen } = brief({ household: household({ leftovers, freezerStock }) });
    expect(ready).toEqual([
      { id: "rest", base: "tomato-sauce", grams: 300, from: "LEFTOVER", firstDate: monday, lastDate: wednesday },
      {
        id: "ice",
        base: "bread-roll-dough",
        grams: 700,
        from: "FREEZER",
        firstDate: "2026-12-29",
        lastDate: "2027-03-28",
      },
    ]);
    expect(kitchen.equipment).toEqual([{ kind: "OVEN", units: 1 }]);
  });
});

describe("the calendar of a household", () => {
  it("starts its weeks on the household's own first day", () => {
    expect(weekStartOf(monday, "MONDAY")).toBe(monday);
    expect(weekStartOf("2027-01-17", "MONDAY")).toBe(monday);
    expect(weekStartOf("2027-01-17", "SUNDAY")).toBe("2027-01-17");
    expect(weekStartOf(monday, "SUNDAY")).toBe("2027-01-10");
  });

  it("names the next school day of any of its children, over weekends, holidays and the time between terms", () => {
    expect(nextSchoolDay(household(), "2026-12-19")).toBe("2027-01-05");
    expect(nextSchoolDay(household(), "2027-01-16")).toBe("2027-01-18");
    const closed = household({ schools: [school([special({ date: "2027-01-18" })])] });
    expect(nextSchoolDay(closed, "2027-01-16")).toBe("2027-01-19");
    expect(nextSchoolDay(household(), "2027-03-26")).toBeNull();
    expect(nextSchoolDay(household({ children: [child({ enrolments: [] })] }), monday)).toBeNull();
  });
});

describe("what was reported", () => {
  const days = (rows: readonly ChildDisruptionRow[]) =>
    brief({ facts: facts({ childDisruptions: rows }) }).children[0]!.days;
  const usual = days([]);
  const dayOf = (rows: readonly ChildDisruptionRow[], date: string) => days(rows).find((day) => day.date === date)!;

  it("takes the child's boxes off every day of an absence or a closed school", () => {
    for (const kind of ["ABSENT", "SCHOOL_CLOSED"] as const) {
      const off = days([ofChild(kind, tuesday, { until: thursday })]).map(({ date }) => date);
      expect(off).toEqual(usual.map(({ date }) => date).filter((date) => date < tuesday || date > thursday));
    }
    expect(days([ofChild("ABSENT", tuesday, { childId: "somebody-else" })])).toEqual(usual);
  });

  it("drops the breaks at or after an early finish, as the school's calendar does, the earlier of two counting", () => {
    const ends = (endsAt: string) => ofChild("EARLY_FINISH", friday, { endsAt });
    const calendar = [
      { date: friday, kind: "EARLY_FINISH" as const, title: "x", endsAt: "11:30", schoolClassId: null },
    ];
    const byCalendar = brief({ household: household({ schools: [school(calendar)] }) });
    expect(days([ends("11:30")])).toEqual(byCalendar.children[0]!.days);
    expect(dayOf([ends("11:30")], friday).breaks.map(({ key }) => key)).not.toContain("lunch");
    expect(dayOf([ends("11:31")], friday).breaks.map(({ key }) => key)).toContain("lunch");
    const both = brief({
      household: household({ schools: [school(calendar)] }),
      facts: facts({ childDisruptions: [ends("14:00")] }),
    });
    expect(both.children[0]!.days).toEqual(byCalendar.children[0]!.days);
    expect(days([ends("08:30")]).map(({ date }) => date)).not.toContain(friday);
  });

  it("lets go of a pin in a break that fell away, and of nothing else", () => {
    const pin = { childId: "ari", date: friday, slot: "FRUIT" as const, place: 0, dish: "pinned-dish" };
    const pins = ["morning", "lunch"].map((breakKey) => ({ ...pin, breakKey }));
    const early = facts({ pins, childDisruptions: [ofChild("EARLY_FINISH", friday, { endsAt: "11:30" })] });
    expect(brief({ facts: early }).pins.map(({ breakKey }) => breakKey)).toEqual(["morning"]);
  });

  it("leaves nothing to cool or heat on a trip day", () => {
    expect(dayOf([ofChild("TRIP", wednesday)], wednesday).facility).toBe("NEITHER");
    expect(dayOf([ofChild("TRIP", wednesday)], thursday).facility).toBe("REHEATING");
  });

  describe("a food or an appliance that is missing", () => {
    const eggs = (date: string, until: string) => ofKitchen("FOOD_MISSING", date, { until, foodKind: "egg" });
    const oven = (date: string, until: string, units = 1) =>
      ofKitchen("APPLIANCE_BROKEN", date, { until, appliance: "OVEN", units });
    const lacking = (kitchenDisruptions: PlanningFacts["kitchenDisruptions"], now = monday, owned = 1) => {
      const {
        outOf,
        sessions,
        household: kitchen,
      } = brief({
        now: { date: now, time: "12:00" },
        facts: facts({ kitchenDisruptions }),
        household: household({ prepTimes, equipment: [{ kind: "OVEN", units: owned }] }),
      });
      const without = sessions.flatMap((row) => (row.without === undefined ? [] : [[row.key, row.without] as const]));
      return { outOf, equipment: kitchen.equipment, without: Object.fromEntries(without) };
    };
    const prepTimes = (["SUNDAY", "MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY"] as const).flatMap((weekday) =>
      (["EVENING", "MORNING"] as const).map((kind) => ({
        kind,
        weekday,
        startsAt: kind === "EVENING" ? "19:00" : "07:00",
        handsOnMinutes: 30,
        elapsedMinutes: 60,
        carers: 1,
        effort: 4,
      })),
    );
    const whole = [{ kind: "OVEN", units: 1 }];

    it("is missing in the sessions of those days and in no other", () => {
      const both = { equipment: ["OVEN"], foodKinds: ["egg"] };
      expect(lacking([eggs(tuesday, wednesday), oven(tuesday, wednesday)])).toEqual({
        outOf: [],
        equipment: whole,
        without: {
          "morning-2027-01-12": both,
          "evening-2027-01-12": both,
          "morning-2027-01-13": both,
          "evening-2027-01-13": both,
        },
      });
    });

    it("is missing all week where no session to come has it, and no more once its last day is over", () => {
      expect(lacking([eggs("2027-01-08", friday), oven(monday, friday)])).toEqual({
        outOf: ["egg"],
        equipment: [],
        without: {},
      });
      const until = [eggs(monday, wednesday), oven(monday, wednesday)];
      expect(lacking(until, thursday)).toEqual({ outOf: [], equipment: whole, without: {} });
      expect(lacking([eggs("2027-01-18", "2027-01-20")]).without).toEqual({});
    });

    it("is missing in what is cooked for the week before its first school day, when it is missing then", () => {
      const sunday = "2027-01-10";
      expect(lacking([eggs(monday, friday), oven(monday, friday)], sunday)).toEqual({
        outOf: ["egg"],
        equipment: [],
        without: {},
      });
      expect(Object.keys(lacking([eggs(monday, monday)], sunday).without)).toEqual([
        "evening-2027-01-10",
        "morning-2027-01-11",
        "evening-2027-01-11",
      ]);
    });

    it("counts all week with the units that are left where some are, and adds up two reports of one day", () => {
      expect(lacking([oven(tuesday, tuesday)], monday, 3)).toEqual({
        outOf: [],
        equipment: [{ kind: "OVEN", units: 2 }],
        without: {},
      });
      const twice = lacking([oven(tuesday, tuesday), oven(monday, wednesday, 2)], monday, 3);
      expect(twice.equipment).toEqual([{ kind: "OVEN", units: 1 }]);
      expect(Object.keys(twice.without)).toEqual(["morning-2027-01-12", "evening-2027-01-12"]);
    });
  });

  it("leaves the last minutes of a short morning, and never more than there were", () => {
    const morning = (minutes: number) =>
      brief({
        facts: facts({ kitchenDisruptions: [ofKitchen("SHORT_MORNING", wednesday, { minutes })] }),
      }).sessions.find(({ key }) => key === "morning-2027-01-13")!;
    // 50 minutes from 06:50, 25 of them hands-on; the child leaves at 08:15.
    expect(morning(10)).toMatchObject({ startsAt: "07:30", elapsedMinutes: 10, handsOnMinutes: 10 });
    expect(morning(0)).toMatchObject({ startsAt: "07:40", elapsedMinutes: 0, handsOnMinutes: 0 });
    expect(morning(600)).toMatchObject({ startsAt: "06:50", elapsedMinutes: 50, handsOnMinutes: 25 });
  });
});
