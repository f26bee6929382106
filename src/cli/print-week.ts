/** A household's week as lines of at most 100 columns, readable without colour, for somebody at 6:50 in the morning. */
import { sayAllergens, sayBoxHolding, sayCaution, sayCrossContact, type Names } from "../app/say.js";
import type { HouseholdRow } from "../database/household.js";
import type { BoxItemRow, BoxRow, PlanRow, TaskRow, WeekRow } from "../database/week.js";
import { avoidedInSession, orderForCrossContact } from "../domain/kitchen/cross-contact.js";

const COLUMNS = 100;
const weekdays = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

export const dayName = (date: string) => {
  const day = new Date(`${date}T00:00:00Z`);
  return `${weekdays[day.getUTCDay()]} ${day.getUTCDate()} ${months[day.getUTCMonth()]}`;
};

/** Breaks a text at spaces; following lines stand under the first word. */
export function wrap(indent: string, text: string, columns = COLUMNS): string[] {
  const lines: string[] = [];
  const under = " ".repeat(indent.length);
  let line = indent;
  for (const word of text.split(" ")) {
    const joined = line.trim() === "" || line === indent ? line + word : `${line} ${word}`;
    if (joined.length > columns && line.trim() !== "") {
      lines.push(line.trimEnd());
      line = under + word;
    } else line = joined;
  }
  return [...lines, line.trimEnd()];
}

/** English plural of a piece's name: half, tomato, patty. */
const several = (piece: string) =>
  piece.endsWith("lf")
    ? `${piece.slice(0, -1)}ves`
    : /(s|x|ch|sh|to)$/.test(piece)
      ? `${piece}es`
      : /[^aeiou]y$/.test(piece)
        ? `${piece.slice(0, -1)}ies`
        : `${piece}s`;
const whole = (figure: number) => String(Math.round(figure));
export const minutes = (figure: number) => `${Math.round(figure * 10) / 10} min`;
export const money = (minor: number, currency: string) => `${(minor / 100).toFixed(2)} ${currency}`;
export const list = (words: readonly string[]) => words.join(", ");
const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

function amount(item: BoxItemRow, names: Names): string {
  const portion = names.index.dish(item.dish)?.portion;
  if (item.pieces === null || portion?.kind !== "PIECES") return `${whole(item.grams)} g`;
  const piece = item.pieces === 1 ? portion.pieceName : several(portion.pieceName);
  return `${item.pieces} ${piece} (${whole(item.grams)} g)`;
}

function printBox(box: BoxRow, household: HouseholdRow, names: Names): string[] {
  const child = household.children.find((entry) => entry.id === box.childId);
  const classes = household.schools.flatMap((school) => school.classes);
  const breaks =
    classes.find((entry) => child?.enrolments.some((enrolment) => enrolment.schoolClassId === entry.id))?.breaks ?? [];
  const keys = [...new Set(box.items.map((item) => item.breakKey))].sort((a, b) =>
    clockOf(a).localeCompare(clockOf(b)),
  );
  function clockOf(key: string) {
    return breaks.find((entry) => entry.key === key)?.startsAt ?? key;
  }
  const lines: string[] = [];
  const who = names.child(box.childId);
  for (const [at, key] of keys.entries()) {
    const here = box.items.filter((item) => item.breakKey === key);
    const label = `    ${(at === 0 ? who : "").padEnd(8)} ${clockOf(key).padEnd(6)} `;
    lines.push(
      ...wrap(
        label,
        here
          .map(
            (item) =>
              `${names.index.dish(item.dish)?.name ?? item.dish}, ${amount(item, names)}${item.served === "WARM" ? " (warm)" : ""}`,
          )
          .join(" | "),
      ),
    );
  }
  const under = " ".repeat(20);
  for (const item of box.items) {
    for (const cut of item.cuts)
      lines.push(
        ...wrap(
          `${under}CUT `,
          `${names.index.food(cut.food)?.name ?? cut.food} in "${names.index.dish(item.dish)?.name ?? item.dish}": ${cut.cut}.`.replace(
            "..",
            ".",
          ),
        ),
      );
  }
  const energy = box.items.reduce((sum, item) => sum + item.energyKcal, 0);
  const known = box.items.every((item) => item.carbohydrateGrams !== null);
  const carbohydrate = known
    ? `${whole(box.items.reduce((sum, item) => sum + (item.carbohydrateGrams ?? 0), 0))} g carbohydrate`
    : "carbohydrate not known";
  const packing = box.packing;
  const way = packing
    ? ` | leaves ${packing.leaveAt}, ${packing.flask ? "flask, " : ""}${packing.coldSources} cold sources${packing.cutlery.length > 0 ? `, ${list(packing.cutlery.map((tool) => tool.toLowerCase()))}` : ""}`
    : "";
  lines.push(...wrap(under, `${whole(energy)} kcal, ${carbohydrate}${way}`));
  const holding = sayBoxHolding(
    box.items.flatMap(({ holdingCase, note }) =>
      note === null
        ? []
        : [
            {
              case: holdingCase,
              minutes: note.holdingMinutes,
              limitMinutes: note.holdingLimitMinutes,
              forecast: note.holdingForecast,
            },
          ],
    ),
  );
  if (holding !== null) lines.push(...wrap(`${under}HOLD `, holding));
  return lines;
}

function printBoxes(plan: PlanRow, household: HouseholdRow, names: Names): string[] {
  const dates = [...new Set(plan.boxes.map((box) => box.date))];
  return [
    "WHO EATS WHAT",
    ...dates.flatMap((date) => [
      `  ${dayName(date)}`,
      ...plan.boxes.filter((box) => box.date === date).flatMap((box) => printBox(box, household, names)),
    ]),
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
  const { certificate } = plan;
  if (certificate) {
    const gap = (100 * (certificate.objectivePoints - certificate.boundPoints)) / certificate.objectivePoints;
    lines.push(
      ...wrap(
        "  ",
        `By everything the plan weighs, minutes, cost, leftovers, needs and taste, this week counts ${Math.round(certificate.objectivePoints)} points, less being better. No week for this kitchen can be below ${Math.floor(certificate.boundPoints)}: at most ${Math.ceil(gap)} % of it could be saved by any other.`,
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

function printSessions(plan: PlanRow, names: Names): string[] {
  const lines = ["WHEN WHAT IS DONE (hands-on minutes; what needs no hands goes on by itself)"];
  for (const session of new Set(plan.tasks.map((task) => task.session))) {
    const tasks = plan.tasks.filter((task) => task.session === session);
    const hands = tasks.reduce((sum, task) => sum + task.handsOnMinutes, 0);
    const last = tasks.reduce((latest, task) => (task.endsAt > latest ? task.endsAt : latest), "00:00");
    lines.push(`  ${sessionTitle(session)}: ${tasks[0]?.startsAt ?? ""} to ${last}, ${minutes(hands)} hands-on`);
    for (const task of tasks) {
      if (task.kind === "COOL") lines.push(...wrap(`    ${task.startsAt}-${task.endsAt}  `, task.text));
      else if (task.kind === "PACK")
        lines.push(
          `    ${task.startsAt}-${task.endsAt}  Pack ${list(task.childIds.map((id) => names.child(id)))}'s box (${minutes(task.handsOnMinutes)})`,
        );
      else lines.push(...printTask(task, plan.tasks, names));
    }
  }
  return lines;
}

function printShopping(plan: PlanRow, household: HouseholdRow, names: Names): string[] {
  const buy = plan.shopping.filter((line) => line.packs > 0);
  const have = plan.shopping.filter((line) => line.packs === 0);
  const lines = [
    `SHOPPING (${plural(buy.length, "line", "lines")}, about ${money(
      buy.reduce((sum, line) => sum + line.costMinor, 0),
      household.currency,
    )}; the prices are invented)`,
  ];
  for (const section of new Set(buy.map((line) => line.section))) {
    const words = buy
      .filter((line) => line.section === section)
      .map(
        (line) =>
          `${names.index.food(line.food)?.name ?? line.food} ${line.packs} x ${line.packGrams} g (needs ${line.neededGrams}${line.fromStockGrams > 0 ? `, ${line.fromStockGrams} in the cupboard` : ""})`,
      );
    lines.push(...wrap(`  ${section.toLowerCase().replaceAll("_", " ").padEnd(12)} `, words.join("; ")));
  }
  if (have.length > 0)
    lines.push(
      ...wrap(
        "  in stock     ",
        have.map((line) => `${names.index.food(line.food)?.name ?? line.food} ${line.neededGrams} g`).join("; "),
      ),
    );
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
    printCautions(plan, household, names),
  ];
  return [
    "=".repeat(COLUMNS),
    ...wrap("", title),
    "=".repeat(COLUMNS),
    ...parts.flatMap((lines) => ["", ...lines]),
    "",
  ];
}
