/** Counting in the database against the engine that judges box by box, on random rules over random agreed weeks. */
import { randomUUID } from "node:crypto";
import { ruleSetDocument, type RuleSetDocument } from "../../shared/rule-set.js";
import { slotCode } from "../../shared/codes.js";
import { boundsOf } from "../../src/app/count-rules.js";
import { countBoxes, type RuleCounts } from "../../src/database/count-rules.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { compileRuleSets } from "../../src/domain/rules/compile.js";
import { countTables } from "../../src/domain/rules/count-tables.js";
import { rulesOverWeek } from "../../src/domain/rules/in-force.js";
import { judgeWeek } from "../../src/domain/rules/judge-week.js";
import { writeAgreedWeeks, writeSchool, type AgreedWeek, type CountedSchool } from "../support/agreed-weeks.js";
import { useDatabase } from "../support/database.js";
import { threeChildren } from "../support/demo-brief.js";
import { drawHousehold } from "../support/random-household.js";
import { drawBoxes, drawRuleSet, underRuleSets } from "../support/random-rules.js";

const database = useDatabase();
const { catalogue } = threeChildren();
const index = indexCatalogue(catalogue);
const RULES = 60;
const FROM = "2026-09-01";
const UNTIL = "2027-07-31";
const BREAKS = [
  { key: "morning-break", startsAt: "10:00" },
  { key: "lunch", startsAt: "12:00" },
];

interface Expected {
  boxes: Set<string>;
  children: Set<string>;
}
const nobody = (): Expected => ({ boxes: new Set(), children: new Set() });

/** What the engine says of each rule, week by week. A limit over a week counts all the boxes it was held over. */
function judgeAll(document: RuleSetDocument, seeds: readonly number[]) {
  const expected = new Map<string, Expected>();
  const weeks = seeds.map((seed): AgreedWeek => {
    const drawn = underRuleSets(drawHousehold(seed), [document], seed + 1);
    // The database has one class with two breaks for everybody.
    const brief = {
      ...drawn,
      labels: [],
      history: [],
      children: drawn.children.map((child) => ({
        ...child,
        id: `${child.id}/${seed}`,
        days: child.days.map((day) => ({
          ...day,
          breaks: BREAKS.map((pause) => ({ ...day.breaks[0]!, ...pause, name: pause.key, slots: slotCode.options })),
        })),
      })),
    };
    const { boxes } = drawBoxes(brief, index, seed + 2);
    const over = new Map(
      brief.children.map((child) => [
        child.id,
        new Map(
          rulesOverWeek([document], child).map(({ rule, days }) => [rule.id, days.map((at) => child.days[at]!.date)]),
        ),
      ]),
    );
    const isWeekly = (rule: RuleSetDocument["rules"][number]) =>
      rule.kind === "SHARE" || ("per" in rule && (rule.per === "WEEK" || rule.per === "WEEK_MEAN"));
    for (const judged of judgeWeek(brief, compileRuleSets([document], index, [], brief.credits), boxes)) {
      if (judged.state !== "NOT_MET") continue;
      const { rule, childId, date } = judged;
      const dates = isWeekly(rule) || date === null ? over.get(childId)!.get(rule.id)! : [date];
      const found = expected.get(rule.id) ?? nobody();
      expected.set(rule.id, found);
      found.children.add(childId);
      for (const day of dates) found.boxes.add(`${childId}@${day}`);
    }
    return {
      weekStart: brief.weekStart,
      children: brief.children,
      boxes,
      exempt: brief.children.flatMap((child) =>
        child.days.flatMap(({ date, exempt }) => (exempt ?? []).map(({ rule }) => ({ childId: child.id, date, rule }))),
      ),
    };
  });
  return { expected, weeks };
}

async function administratorOf(school: CountedSchool): Promise<string> {
  const person = await database.newPerson("Clerk");
  await database.owner`insert into appointment (person_id, school_id) values (${person}, ${school.schoolId})`;
  return person;
}

async function count(person: string, school: CountedSchool, document: RuleSetDocument, ruleSetId: string | null) {
  const tables = countTables(document, index, threeChildren().credits);
  const session = database.db.openRead(person);
  try {
    return await session.read((tx) =>
      countBoxes(tx, {
        schoolIds: [school.schoolId],
        schoolClassId: null,
        from: FROM,
        until: UNTIL,
        ruleSetId,
        rules: boundsOf(document, tables),
        addends: tables.addends,
        dishes: index.dishes.map(({ key }) => key),
      }),
    );
  } finally {
    await session.close();
  }
}

const few = (size: number) => (size < 5 ? null : size);

test("the database counts what the engine finds, rule by rule, and never says a number below five", async () => {
  const document = drawRuleSet(77, "counted", RULES);
  const { expected, weeks } = judgeAll(
    document,
    Array.from({ length: 45 }, (_, at) => 900 + 10 * at),
  );
  const school = await writeSchool(database.owner, "Counted School", BREAKS);
  const ruleSetId = randomUUID();
  await database.owner`insert into rule_set (id, key, layer, school_id) values (${ruleSetId}, 'counted', 'SCHOOL', ${school.schoolId})`;
  await writeAgreedWeeks(database.owner, school, ruleSetId, weeks);
  const rows = await count(await administratorOf(school), school, document, ruleSetId);

  const { notCounted } = countTables(document, index, threeChildren().credits);
  const counted = document.rules.filter((_, at) => !notCounted.includes(at));
  const byRule = new Map(rows.map((row) => [row.rule === null ? null : document.rules[row.rule]!.id, row]));
  const told = counted.map(({ id }) => {
    const { boxes = null, children = null } = (byRule.get(id) ?? {}) as Partial<RuleCounts>;
    return { id, boxes, children };
  });
  expect(told).toEqual(
    counted.map(({ id }) => {
      const { boxes, children } = expected.get(id) ?? nobody();
      return { id, boxes: children.size < 5 ? null : few(boxes.size), children: few(children.size) };
    }),
  );
  const all = nobody();
  for (const { id } of counted) {
    const { boxes, children } = expected.get(id) ?? nobody();
    for (const box of boxes) all.boxes.add(box);
    for (const child of children) all.children.add(child);
  }
  expect(byRule.get(null)).toMatchObject({ boxes: few(all.boxes.size), children: few(all.children.size) });
  // Rules that break in many weeks and rules that break in few were both among them.
  expect(told.filter(({ boxes }) => boxes !== null).length).toBeGreaterThan(20);
  expect(told.filter(({ boxes }) => boxes === null).length).toBeGreaterThan(3);
  for (const { held, boxes, children, weeks: of } of rows)
    for (const number of [held, boxes, children, of]) expect(number === null || number >= 5).toBe(true);
});

const noMains = ruleSetDocument.parse({
  format: "noonpail-rule-set/1",
  key: "no-mains",
  title: "No mains",
  layer: "SCHOOL",
  coversFoodFromHome: true,
  language: "en",
  version: 1,
  inForceFrom: FROM,
  rules: [
    {
      id: "no-mains",
      kind: "EXCLUDE",
      level: "FORBID",
      says: "No mains at all.",
      source: "invented for this test",
      matches: { anyOf: [{ slots: ["MAIN"] }] },
    },
  ],
});

test("boxes of four children say nothing, of five they are counted; another's school is refused", async () => {
  const school = await writeSchool(database.owner, "Small School", BREAKS);
  const { weeks } = judgeAll(noMains, [4001, 4002, 4003, 4004, 4005, 4006, 4007]);
  // One child a household.
  const single = weeks.map((week): AgreedWeek => {
    const [child] = week.children;
    return {
      ...week,
      children: [child!],
      boxes: week.boxes.filter(({ childId }) => childId === child!.id),
      exempt: [],
    };
  });
  const packed = single.filter(({ boxes }) => boxes.length > 0);
  const clerk = await administratorOf(school);
  await writeAgreedWeeks(database.owner, school, null, packed.slice(0, 4));
  const four = await count(clerk, school, noMains, null);
  expect(four[0]).toMatchObject({ boxes: null, children: null, weeks: null });
  expect(packed.slice(0, 4).flatMap(({ boxes }) => boxes).length).toBeGreaterThan(4);
  await writeAgreedWeeks(database.owner, school, null, packed.slice(4, 5));
  const [five] = await count(clerk, school, noMains, null);
  expect(five).toMatchObject({ children: 5, boxes: packed.slice(0, 5).flatMap(({ boxes }) => boxes).length });
  const stranger = await database.newPerson("Stranger");
  await expect(count(stranger, school, noMains, null)).rejects.toThrow(/not a school that this person administers/);
});

test("the setting that opens the count opens nothing for the server's own role", async () => {
  const school = await writeSchool(database.owner, "Closed School", BREAKS);
  const clerk = await administratorOf(school);
  const { weeks } = judgeAll(noMains, [5001, 5002]);
  await writeAgreedWeeks(database.owner, school, null, weeks);
  const seen = await database.db.asPerson(clerk, async (tx) => {
    await tx.$executeRaw`select set_config('app.counting', 'on', true)`;
    return tx.$queryRaw<
      { n: bigint }[]
    >`select (select count(*) from lunch_box) + (select count(*) from child) + (select count(*) from box_item) as n`;
  });
  expect(Number(seen[0]!.n)).toBe(0);
});

test("a box with a dish of a family's own is not judged and counted apart", async () => {
  const school = await writeSchool(database.owner, "Own School", BREAKS);
  const clerk = await administratorOf(school);
  const { weeks } = judgeAll(
    noMains,
    Array.from({ length: 12 }, (_, at) => 6001 + at),
  );
  const own = weeks.map((week, at) => ({
    ...week,
    exempt: [],
    boxes:
      at < 6
        ? week.boxes.map((box) => ({ ...box, items: box.items.map((item) => ({ ...item, dish: "own-dish" })) }))
        : week.boxes,
  }));
  await writeAgreedWeeks(database.owner, school, null, own);
  const [all] = await count(clerk, school, noMains, null);
  const boxes = (list: readonly AgreedWeek[]) => list.flatMap((week) => week.boxes).length;
  expect(all).toMatchObject({ boxes: boxes(own.slice(6)), notCounted: boxes(own.slice(0, 6)) });
});
