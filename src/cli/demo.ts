/**
 * npm run demo: from nothing to a printed week for two homes. With --json the same as one document on standard output; with --prove
 * it takes its time to say how good the weeks are for sure.
 */
import { planWeek } from "../app/plan-week.js";
import { pricedAlternativesOf } from "../app/prices.js";
import { readWeekInputs } from "../app/read-brief.js";
import { disruptionOffer } from "../app/report-disruption.js";
import { draftOf } from "../app/draft-of.js";
import { sayConflict, sayWayOut, type Names } from "../app/say.js";
import type { App } from "../app/app.js";
import { readConfig } from "../config.js";
import { readDemoFiles } from "../database/seed.js";
import type { HouseholdRow } from "../database/household.js";
import type { WeekRow } from "../database/week.js";
import { checkWeek } from "../domain/checker/check-week.js";
import { openApp } from "../open-app.js";
import { printChange } from "./print-change.js";
import { printGap, printPrices, printWhy } from "./print-why.js";
import { printWeek, wrap } from "./print-week.js";

const asJson = process.argv.includes("--json");
const proves = process.argv.includes("--prove");
const began = performance.now();
const progress = (line: string) =>
  process.stderr.write(`[${((performance.now() - began) / 1000).toFixed(1)} s] ${line}\n`);

/** Other dishes whose price is shown. */
const PRICED = 2;

type DemoFiles = ReturnType<typeof readDemoFiles>;

interface HomeWeek {
  readonly personId: string;
  readonly household: HouseholdRow;
  readonly week: WeekRow;
  readonly index: Names["index"];
  /** Whether the stored week was printed as it stands. */
  readonly reused: boolean;
}

const namesIn = (index: Names["index"], household: HouseholdRow): Names => ({
  index,
  child: (id) => household.children.find((child) => child.id === id)?.name ?? "a child",
});

async function readInputs(app: App, personId: string, householdId: string, date: string) {
  const inputs = await app.db.readAs(personId, (tx) => readWeekInputs(app, tx, householdId, date));
  if (!inputs) throw new Error("the demo household is not there; remove the data directory and start again");
  return inputs;
}

/** Whether its proof went on after the linear program as a whole. */
const isProvenAtLength = ({ plan }: WeekRow): boolean => plan.certificate !== null && plan.certificate.nodes > 1;

/** Plans the week unless the stored one still passes every check. Answers whether that one stands. */
async function settleWeek(app: App, personId: string, householdId: string, date: string): Promise<boolean> {
  const inputs = await readInputs(app, personId, householdId, date);
  const { household, before } = inputs;
  if (
    before &&
    before.plan.catalogueVersion === inputs.index.version &&
    (!proves || isProvenAtLength(before)) &&
    checkWeek(inputs.assemble(), draftOf(before.plan)).length === 0
  ) {
    progress(`${household.name}: the stored week still passes every check`);
    return true;
  }
  progress(`${household.name}: planning, with and without sharing`);
  const planned = await planWeek(app, personId, {
    idempotencyKey: `demo-${householdId}-${before?.revision ?? 0}`,
    householdId,
    date,
    seenRevision: before?.revision ?? 0,
    replanAgreed: true,
  });
  if (!planned.ok) {
    const names = namesIn(inputs.index, household);
    const why =
      planned.error.kind === "WeekInfeasible"
        ? planned.error.conflicts
            .map(
              (conflict) =>
                `\n  ${conflict.date ?? ""} ${sayConflict(conflict, names)} ${conflict.wayOut.map(sayWayOut).join(" ")}`,
            )
            .join("")
        : "";
    throw new Error(`${household.name}: ${planned.error.kind}${why}`);
  }
  return false;
}

/** The weeks of all homes. What is proved of a new one may still be on its way. */
async function weeksOf(app: App, { homes, people, residence: { demoWeek } }: DemoFiles): Promise<HomeWeek[]> {
  const weeks: HomeWeek[] = [];
  for (const home of homes) {
    const coordinator = home.members.find((member) => member.role === "COORDINATOR");
    const person = people.find((entry) => entry.key === coordinator?.person);
    if (!person) throw new Error(`${home.name} has no coordinator`);
    const personId = await app.db.signIn(person.subject, person.name);
    const reused = await settleWeek(app, personId, home.id, demoWeek);
    const { household, before: week, index } = await readInputs(app, personId, home.id, demoWeek);
    if (!week) throw new Error("the week just planned cannot be read");
    weeks.push({ personId, household, week, index, reused });
  }
  return weeks;
}

/** The same weeks with what was proved of them. */
async function provenOf(app: App, weeks: readonly HomeWeek[], date: string): Promise<HomeWeek[]> {
  // A stored week came with its own.
  if (app.prover === null || weeks.every(({ reused }) => reused)) return [...weeks];
  progress("proving how good the weeks are");
  await app.prover.settled();
  return Promise.all(
    weeks.map(async (home) => {
      const { before } = await readInputs(app, home.personId, home.household.id, date);
      return before ? { ...home, week: before } : home;
    }),
  );
}

/** The first main of the week and what two other dishes in its place would cost, each found by planning again. */
async function pricesOf(app: App, { personId, household, week, index }: HomeWeek): Promise<string[]> {
  const [box] = week.plan.boxes;
  const item = box?.items.find(({ slot }) => slot === "MAIN");
  if (!box || !item) return [];
  const names = namesIn(index, household);
  progress(`${household.name}: planning again with other dishes for ${names.child(box.childId)}`);
  const found = await pricedAlternativesOf(app, personId, item.id, PRICED);
  return printPrices(box, item, found?.priced ?? [], names);
}

/** What the greengrocer did not have: of the fresh things to buy the one of which the week needs least. */
async function changeOf(app: App, { personId, household, week, index }: HomeWeek): Promise<string[]> {
  const fresh = week.plan.shopping.filter(({ section, packs }) => section === "PRODUCE" && packs > 0);
  const [line] = [...fresh].sort((a, b) => a.neededGrams - b.neededGrams || (a.food < b.food ? -1 : 1));
  const food = line && index.food(line.food);
  if (!food) return [];
  progress(`${household.name}: planning again without ${food.kind}`);
  const dates = week.plan.boxes.map(({ date }) => date).sort();
  const missing = { foodKind: food.kind, date: week.weekStart, until: dates.at(-1)! };
  const offered = await disruptionOffer(
    app,
    personId,
    household.id,
    { foodMissing: missing },
    new AbortController().signal,
  );
  // A demo week that is over cannot be upset any more.
  if (!offered.ok) return [];
  const text = `there is no ${food.kind.replaceAll("-", " ")} to be had.`;
  const names = namesIn(index, household);
  return printChange(text, offered.value.difference, week.plan.boxes.length, household, names);
}

async function demonstrate(): Promise<void> {
  progress("starting the database");
  const config = readConfig();
  const { app, stop } = await openApp(config, progress, { ready: false, briefProofs: !proves });
  try {
    const demo = readDemoFiles();
    const weeks = await weeksOf(app, demo);
    if (asJson) {
      const proven = await provenOf(app, weeks, demo.residence.demoWeek);
      progress("done");
      process.stdout.write(
        `${JSON.stringify({ format: "noonpail-demo/1", weeks: proven.map(({ household, week, reused }) => ({ household, week, reused })) }, null, 2)}\n`,
      );
      return;
    }
    for (const { household, week, index } of weeks) {
      const names = namesIn(index, household);
      console.log([...printWeek(week, household, names), ...printWhy(week, household, names), ""].join("\n"));
    }
    const prices = weeks[0] ? await pricesOf(app, weeks[0]) : [];
    if (prices.length > 0) console.log(prices.join("\n"));
    const change = weeks[0] ? await changeOf(app, weeks[0]) : [];
    if (change.length > 0) console.log(change.join("\n"));
    const proven = await provenOf(app, weeks, demo.residence.demoWeek);
    progress("done");
    const gaps = proven.flatMap(({ household, week }) => printGap(household.name, week.plan));
    if (gaps.length > 0) console.log(["HOW GOOD THAT IS", ...gaps, ""].join("\n"));
    const shared =
      weeks[0]?.household.children.filter((child) =>
        weeks.slice(1).some((entry) => entry.household.children.some((other) => other.id === child.id)),
      ) ?? [];
    for (const line of wrap(
      "",
      `Two homes share ${shared.map((child) => child.name).join(", ")}. Each home packs the days on which a child wakes there, what was eaten in the other home counts, and neither sees the other's kitchen.`,
    ))
      console.log(line);
    console.log(`
SEE IT SERVED
  npm start                     then open http://${config.host}:${config.port}/explorer and sign in as one of:
${demo.people.map((person) => `    ${person.subject.padEnd(12)} ${person.name}, ${person.about}`).join("\n")}
  npm run demo -- --json        the same weeks as one JSON document
  npm run demo -- --prove       the same weeks, and how much better a week could be at all
`);
  } finally {
    await stop();
  }
}

demonstrate().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
});
