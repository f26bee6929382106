/** A household's week as lines of at most 100 columns, readable without colour, for somebody at 6:50 in the morning. */
import { boxCard } from "../app/box-card.js";
import { CARD_COLUMNS, sayBoxCard, sayDay as dayName, wrap as wrapAt } from "../app/say-box-card.js";
import { sayAllergens, sayCaution, sayCrossContact, saySpareUse, type Names } from "../app/say.js";
import type { HouseholdRow } from "../database/household.js";
import type { PlanRow, ShoppingLineRow, TaskRow, WeekRow } from "../database/week.js";
import type { SpareUse } from "../domain/week.js";
import { avoidedInSession, orderForCrossContact } from "../domain/kitchen/cross-contact.js";
import { listSessions, type ListedSession } from "../domain/kitchen/list-sessions.js";

const COLUMNS = 100;
/** Breaks a text at spaces into lines of the page's width; following lines stand under the first word. */
export const wrap = (indent: string, text: string): string[] => wrapAt(indent, text, COLUMNS);
export const minutes = (figure: number) => `${Math.round(figure * 10) / 10} min`;
export const money = (minor: number, currency: string) => `${(minor / 100).toFixed(2)} ${currency}`;
export const list = (words: readonly string[]) => words.join(", ");
const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

/** Cards two by two, as they hang on the refrigerator. */
function besideEachOther(cards: readonly (readonly string[])[]): string[] {
  return cards.flatMap((left, at) => {
    if (at % 2 === 1) return [];
    const right = cards[at + 1] ?? [];
    const rows = Array.from({ length: Math.max(left.length, right.length) }, (_, row) =>
      `${(left[row] ?? "").padEnd(COLUMNS - CARD_COLUMNS)}${right[row] ?? ""}`.trimEnd(),
    );
    return [...rows, ""];
  });
}

function printBoxes(plan: PlanRow, household: HouseholdRow, names: Names): string[] {
  const dates = [...new Set(plan.boxes.map((box) => box.date))];
  return [
    "BOX CARDS (carb: grams of carbohydrate in it)",
    ...dates.flatMap((date) =>
      besideEachOther(
        plan.boxes
          .filter((box) => box.date === date)
          .flatMap((box) => {
            const card = boxCard(box, plan, household);
            return card === null ? [] : [sayBoxCard(card, names)];
          }),
      ),
    ),
  ];
}

export const sessionTitle = (key: string) => {
  const [kind, ...date] = key.split("-");
  return `${dayName(date.join("-"))} ${kind}`;
};

function printSharing(plan: PlanRow, names: Names): string[] {
  const lines = ["COOKED ONCE, EATEN BY SEVERAL"];
  const shared = plan.batches.filter(
    (batch) => new Set(batch.feeds.flatMap((feed) => feed.childIds)).size > 1 || batch.feeds.length > 1,
  );
  for (const batch of shared) {
    const feeds = batch.feeds.map(
      (feed) => `${list(feed.childIds.map((id) => names.child(id)))} on ${dayName(feed.date)}`,
    );
    lines.push(
      ...wrap(
        "  ",
        `${names.index.base(batch.base)?.name ?? batch.base}, ${plural(batch.batches, "batch", "batches")} on ${sessionTitle(batch.session)}: ${feeds.join("; ")}.`,
      ),
    );
  }
  const finished = plan.tasks.filter((task) => task.kind === "FINISH" && task.childIds.length > 1);
  const dishes = new Set(finished.map((task) => `${task.dish}@${list(task.forDates)}`)).size;
  if (dishes > 0)
    lines.push(`  ${plural(dishes, "dish is", "dishes are")} finished in one go for more than one child.`);
  if (shared.length === 0 && dishes === 0) lines.push("  Nothing this week: one child eats alone.");
  const sharing = plan.comparison;
  if (sharing) {
    const { handsOnMinutesShared: together, handsOnMinutesAlone: alone } = sharing;
    lines.push(
      ...wrap(
        "  ",
        alone === null
          ? `Hands-on time ${minutes(together)}. Without sharing no week was found that fits the same kitchen.`
          : `Hands-on time ${minutes(together)}. Our best week found without sharing, in the same kitchen, takes ${minutes(alone)}: sharing ${alone >= together ? `saves ${minutes(alone - together)}` : `costs ${minutes(together - alone)} here, for a better week`}.`,
      ),
    );
  }
  return lines;
}

function printTask(task: TaskRow, among: readonly TaskRow[], names: Names): string[] {
  const hands =
    task.handsOnMinutes > 0
      ? `${minutes(task.handsOnMinutes)}${task.passiveMinutes > 0 ? ` + ${minutes(task.passiveMinutes)} by itself` : ""}`
      : `${minutes(task.passiveMinutes)} by itself`;
  const tools =
    task.equipment.length > 0
      ? `, ${list(task.equipment.map((use) => use.kind.toLowerCase().replaceAll("_", " ")))}`
      : "";
  const order = orderForCrossContact(task, among);
  const avoided = task.handles.length > 0 ? task.handles : avoidedInSession(task.session, among);
  const handles = order === null ? "" : ` ${sayCrossContact(order, avoided)}`;
  return wrap(
    `    ${task.startsAt}-${task.endsAt}  `,
    `${task.text} [${list(task.childIds.map((id) => names.child(id)))}; ${hands}${tools}]${handles}`,
  );
}

/** How long it takes at least, and how late it can begin: what a carer who is running late wants to know. */
function sayTiming({ timing, startsAt }: ListedSession<TaskRow>): string {
  if (timing === null) return "";
  const { lastsMinutes, leastMinutes, latestStartsAt, noLaterThan } = timing;
  const shortest =
    leastMinutes >= lastsMinutes ? "; no order is shorter" : `; no order is shorter than ${minutes(leastMinutes)}`;
  if (latestStartsAt === startsAt) return `${shortest}; begin on time`;
  const other = noLaterThan > latestStartsAt ? ` (in another order at most until ${noLaterThan})` : "";
  return `${shortest}; begin by ${latestStartsAt}${other}`;
}

function printSessions(plan: PlanRow, names: Names): string[] {
  const lines = ["WHEN WHAT IS DONE (hands-on minutes; what needs no hands goes on by itself)"];
  const ofThisPlan = plan.tasks.filter(({ kept }) => !kept);
  for (const session of listSessions(ofThisPlan, plan.sessions)) {
    const { key, startsAt, endsAt, handsOnMinutes, tasks, carers, appliances } = session;
    lines.push(
      ...wrap(
        "  ",
        `${sessionTitle(key)}: ${startsAt} to ${endsAt}, ${minutes(handsOnMinutes)} hands-on${sayTiming(session)}`,
      ),
    );
    for (const task of tasks) {
      if (task.kind === "COOL") lines.push(...wrap(`    ${task.startsAt}-${task.endsAt}  `, task.text));
      else if (task.kind === "PACK")
        lines.push(
          `    ${task.startsAt}-${task.endsAt}  Pack ${list(task.childIds.map((id) => names.child(id)))}'s box (${minutes(task.handsOnMinutes)})`,
        );
      else lines.push(...printTask(task, plan.tasks, names));
    }
    if (carers.length > 1)
      for (const { carer, tasks: own } of carers)
        lines.push(...wrap(`    carer ${carer + 1}  `, own.map((task) => `${task.startsAt} ${task.text}`).join("; ")));
    const kinds = new Set(appliances.map(({ kind }) => kind));
    for (const kind of kinds) {
      const units = appliances.filter((appliance) => appliance.kind === kind);
      lines.push(
        ...wrap(
          `    ${kind.toLowerCase().replaceAll("_", " ")}  `,
          units
            .map(({ unit, uses }) => {
              const times = uses.map(({ from, until }) => `${from}-${until}`).join(", ");
              return units.length > 1 ? `no. ${unit + 1}: ${times}` : times;
            })
            .join("; "),
        ),
      );
    }
  }
  return lines;
}

function printShopping(plan: PlanRow, household: HouseholdRow, names: Names): string[] {
  const buy = plan.shopping.filter((line) => line.packs > 0);
  const have = plan.shopping.filter((line) => line.packs === 0);
  const food = (line: ShoppingLineRow) => names.index.food(line.food)?.name ?? line.food;
  const lines = [
    `SHOPPING (${plural(buy.length, "line", "lines")}, about ${money(
      buy.reduce((sum, line) => sum + line.costMinor, 0),
      household.currency,
    )}: an estimate, the prices are invented)`,
  ];
  for (const section of new Set(buy.map((line) => line.section))) {
    const words = buy
      .filter((line) => line.section === section)
      .map(
        (line) =>
          `${food(line)} ${line.packs} x ${line.packGrams} g, ${(line.costMinor / 100).toFixed(2)} (needs ${line.neededGrams}${line.fromStockGrams > 0 ? `, ${line.fromStockGrams} in the cupboard` : ""})`,
      );
    lines.push(...wrap(`  ${section.toLowerCase().replaceAll("_", " ").padEnd(12)} `, words.join("; ")));
  }
  if (have.length > 0)
    lines.push(...wrap("  in stock     ", have.map((line) => `${food(line)} ${line.neededGrams} g`).join("; ")));
  return lines;
}

/** Shorter than for a client that knows nothing else: two dishes, the day as it is said at home. */
function spareUse(use: SpareUse, names: Names): string {
  if (use.kind === "EAT_BY") return `eat it by ${dayName(use.untilDate)}`;
  if (use.kind !== "DISHES") return saySpareUse(use, names);
  const dishes = use.dishes.slice(0, 2).map(({ dish }) => names.index.dish(dish)?.name ?? dish);
  return `good for ${dishes.join(" or ")}`;
}

/** What the packs leave over: first what has to be eaten, then what waits for the next week. */
function printSpare(plan: PlanRow, names: Names): string[] {
  const spare = plan.shopping.filter((line) => line.spareUses.length > 0);
  if (spare.length === 0) return [];
  const keeps = (line: ShoppingLineRow) => line.spareUses.some(({ kind }) => kind === "KEEPS_FOR_NEXT_WEEK");
  const name = (line: ShoppingLineRow) => `${names.index.food(line.food)?.name ?? line.food} ${line.spareGrams} g`;
  const lines = ["OVER FROM THE PACKS"];
  for (const line of spare.filter((row) => !keeps(row)))
    lines.push(...wrap("  ", `${name(line)}: ${line.spareUses.map((use) => spareUse(use, names)).join("; ")}.`));
  const kept = spare.filter(keeps);
  if (kept.length > 0) lines.push(...wrap("  keeps for next week: ", `${kept.map(name).join("; ")}.`));
  return lines;
}

function printCautions(plan: PlanRow, household: HouseholdRow, names: Names): string[] {
  const lines = ["WATCH OUT"];
  for (const child of household.children) {
    const labels = plan.cautions.filter((caution) => caution.kind === "READ_LABEL" && caution.childId === child.id);
    if (labels.length === 0) continue;
    const allergens = [
      ...new Set(labels.flatMap((caution) => (caution.kind === "READ_LABEL" ? caution.allergens : []))),
    ];
    const foods = labels.map((caution) =>
      caution.kind === "READ_LABEL" ? (names.index.food(caution.food)?.name ?? caution.food) : "",
    );
    lines.push(
      ...wrap(
        "  * ",
        `${child.name}: read these labels before packing (no ${sayAllergens(allergens, "or")}, not even as "may contain"): ${foods.join("; ")}.`,
      ),
    );
  }
  const cold = plan.cautions.filter((caution) => caution.kind === "KEEP_COLD").length;
  if (cold > 0)
    lines.push(
      ...wrap(
        "  * ",
        `${cold === plan.boxes.length ? "Every box" : plural(cold, "box", "boxes")} stays in the refrigerator until it leaves, in an insulated bag with its frozen cold sources.`,
      ),
    );
  const plain = plan.cautions.filter(
    (caution) => !["READ_LABEL", "KEEP_COLD", "CUT_FOR_AGE", "FIGURE_MISSING", "GENERAL"].includes(caution.kind),
  );
  for (const caution of plain) {
    const who =
      "childId" in caution
        ? `${names.child(caution.childId)}${"date" in caution && caution.date !== null ? `, ${dayName(caution.date)}` : ""}: `
        : "";
    lines.push(...wrap("  * ", `${who}${sayCaution(caution, names)}`));
  }
  const missing = plan.cautions.filter((caution) => caution.kind === "FIGURE_MISSING").length;
  if (missing > 0)
    lines.push(
      ...wrap(
        "  * ",
        `${plural(missing, "nutrient figure is", "nutrient figures are")} missing in the composition table; those sums are too low, not zero.`,
      ),
    );
  for (const caution of plan.cautions)
    if (caution.kind === "GENERAL") lines.push(...wrap("  * ", sayCaution(caution, names)));
  return lines;
}

export function printWeek(week: WeekRow, household: HouseholdRow, names: Names): string[] {
  const { plan } = week;
  const title = `${household.name}: week of ${dayName(week.weekStart)} ${week.weekStart.slice(0, 4)}, ${plural(plan.boxes.length, "box", "boxes")}, plan ${plan.number} (${plan.state.toLowerCase()})`;
  const parts = [
    printBoxes(plan, household, names),
    printSharing(plan, names),
    printSessions(plan, names),
    printShopping(plan, household, names),
    printSpare(plan, names),
    printCautions(plan, household, names),
  ];
  return [
    "=".repeat(COLUMNS),
    ...wrap("", title),
    "=".repeat(COLUMNS),
    ...parts.flatMap((lines) => (lines.length > 0 ? ["", ...lines] : [])),
    "",
  ];
}
