/**
 * npm run bench:district: a folder of 500 rule sets checked and loaded by the command, once and again; and what a changed document
 * would break in 10,000 households' agreed weeks, counted in the database, beside judging the same boxes one by one in this process
 * once they are read. `-- --schools N --households N`.
 */
import { execFile } from "node:child_process";
import { randomUUID } from "node:crypto";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs, promisify } from "node:util";
import postgres from "postgres";
import { ruleSetDocument, type RuleSetDocument } from "../../shared/rule-set.js";
import { boundsOf } from "../../src/app/count-rules.js";
import { countBoxes } from "../../src/database/count-rules.js";
import { makeScratchDirectory } from "../../src/database/embedded.js";
import { openDatabase } from "../../src/database/start.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { compileRuleSets } from "../../src/domain/rules/compile.js";
import { countTables } from "../../src/domain/rules/count-tables.js";
import { judgeWeek } from "../../src/domain/rules/judge-week.js";
import { prepareDatabase } from "../../src/prepare-database.js";
import { writeAgreedWeeks, writeSchool, type AgreedWeek } from "../support/agreed-weeks.js";
import { threeChildren } from "../support/demo-brief.js";
import { drawBoxes } from "../support/random-rules.js";
import { loadNow, median, printHold, printMachine } from "./machine.js";

const { values: options } = parseArgs({
  options: { schools: { type: "string", default: "500" }, households: { type: "string", default: "10000" } },
});
const schools = Number(options.schools);
const households = Number(options.households);
const ROUNDS = 3;
const JURISDICTION = "Bench district";
const CLERK = "bench:clerk";
const BREAKS = [
  { key: "morning-break", startsAt: "10:00" },
  { key: "lunch", startsAt: "12:00" },
];
const run = promisify(execFile);
const say = (line: string) => process.stderr.write(`${line}\n`);

const seed = (name: string): RuleSetDocument =>
  ruleSetDocument.parse(JSON.parse(readFileSync(`seeds/reference/rule-sets/${name}.json`, "utf8")));
const primary = seed("quillbrook-primary");

printMachine();
const directory = makeScratchDirectory();
const opened = await openDatabase({ dataDirectory: directory });
const owner = postgres(opened.ownerUrl!, { max: 2, onnotice: () => undefined });
try {
  await prepareDatabase(opened.ownerUrl!);
  const clerk = await opened.db.signIn(CLERK, "Clerk");
  await owner`insert into appointment (person_id, jurisdiction) values (${clerk}, ${JURISDICTION})`;

  const folder = join(directory, "district");
  mkdirSync(folder);
  for (let at = 0; at < schools; at += 1) {
    const name = `Bench School ${at}`;
    const { schoolId } = await writeSchool(owner, name, BREAKS);
    await owner`update school set jurisdiction = ${JURISDICTION} where id = ${schoolId}`;
    const document = { ...primary, school: name, key: `bench-school-${at}`, title: `Boxes at ${name}` };
    writeFileSync(join(folder, `${at}.json`), JSON.stringify(document, null, 2));
  }
  say(`${schools} schools and documents of ${primary.rules.length} rules are written; load ${loadNow()}`);
  const seconds: number[] = [];
  for (const round of ["first", "again"]) {
    const began = performance.now();
    const { stdout } = await run("npm", ["run", "-s", "rules", "--", "load", folder, "--as", CLERK], {
      env: { ...process.env, DATA_DIR: directory },
      maxBuffer: 2 ** 24,
    });
    seconds.push((performance.now() - began) / 1000);
    console.log(
      `${round}: ${stdout.trim().split("\n").at(-1)} ${seconds.at(-1)!.toFixed(1)} s, the start of the command included`,
    );
  }
  printHold("a folder checked and loaded", seconds[0]!, { atMost: 60 }, " s");

  // Three children of three ages a household, lunches drawn without regard to any rule.
  const asSchools = (document: RuleSetDocument) => ({
    ...document,
    inForceFrom: "2026-09-01",
    layer: "SCHOOL" as const,
  });
  const brief = threeChildren();
  const index = indexCatalogue(brief.catalogue);
  const births = ["2018-05-20", "2014-05-20", "2010-05-20"];
  const children = brief.children.map((child, at) => ({
    ...child,
    dateOfBirth: births[at]!,
    days: child.days.map((day) => ({ ...day, ruleSets: [0] })),
  }));
  const week = { ...brief, children, history: [], labels: [] };
  const school = await writeSchool(owner, "Bench Academy", BREAKS);
  await owner`update school set jurisdiction = ${JURISDICTION} where id = ${school.schoolId}`;
  const weeks = Array.from({ length: households }, (_, at): AgreedWeek => ({
    weekStart: brief.weekStart,
    children,
    boxes: drawBoxes(week, index, at + 1).boxes,
    exempt: [],
  }));
  for (let at = 0; at < weeks.length; at += 500) await writeAgreedWeeks(owner, school, null, weeks.slice(at, at + 500));
  await owner`analyze`;
  say(`${households} households with agreed weeks are written; load ${loadNow()}`);

  for (const [name, document] of [
    ["a school's own rules", asSchools(primary)],
    ["the largest standard", asSchools(seed("us-lunch"))],
  ] as const) {
    const took: number[] = [];
    let boxes = 0;
    for (let round = 0; round < ROUNDS; round += 1) {
      const session = opened.db.openRead(clerk);
      const began = performance.now();
      const tables = countTables(document, index, brief.credits);
      const rows = await session.read((tx) =>
        countBoxes(tx, {
          schoolIds: [school.schoolId],
          schoolClassId: null,
          from: "2026-09-01",
          until: "2027-07-31",
          ruleSetId: randomUUID(),
          rules: boundsOf(document, tables),
          addends: tables.addends,
          dishes: index.dishes.map(({ key }) => key),
        }),
      );
      took.push((performance.now() - began) / 1000);
      await session.close();
      boxes = rows.find(({ rule }) => rule === null)?.held ?? 0;
    }
    const beside = performance.now();
    const rules = compileRuleSets([document], index, [], brief.credits);
    for (const { boxes: of } of weeks) judgeWeek(week, rules, of);
    const alone = (performance.now() - beside) / 1000;
    console.log(
      `${name}, ${document.rules.length} rules on ${boxes} boxes of ${households} households: median ${median(took).toFixed(1)} s of ${ROUNDS}; ` +
        `box by box in one process, with every family's boxes in its hands and reading them not counted: ${alone.toFixed(1)} s; load ${loadNow()}`,
    );
    printHold(`impact of ${name}`, median(took), { atMost: 10 }, " s");
  }
} finally {
  await owner.end();
  await opened.stop();
  rmSync(directory, { recursive: true, force: true });
}
