import type { EquipmentKind } from "../../../shared/codes.js";
import type { SessionBrief } from "../brief.js";
import type { TaskPlan } from "../week.js";
import { avoidedNames } from "./check-safety.js";
import { dayNumber, instant } from "./clock.js";
import type { Fault } from "./fault.js";
import { groupBy, purchaseChain } from "./week-read.js";
import type { ItemRead, WeekRead } from "./week-read.js";

/** A task on the household's clock, minutes since the epoch. A session may run past midnight. */
interface Timed {
  readonly task: TaskPlan;
  readonly session: SessionBrief;
  readonly starts: number;
  readonly handsFree: number;
  readonly ends: number;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
/** Minutes a sum of tenths may lose to rounding. */
const tenth = 0.1;

function onClock(week: WeekRead): Timed[] {
  return week.draft.tasks.flatMap((task): Timed[] => {
    const session = week.sessions.get(task.session);
    if (!session) return [];
    const opens = instant(session.date, session.startsAt);
    const after = (earliest: number, time: string): number => {
      const sameDay = instant(session.date, time);
      return sameDay < earliest ? sameDay + 1440 : sameDay;
    };
    const starts = after(opens, task.startsAt);
    const handsFree = after(starts, task.handsFreeAt);
    return [{ task, session, starts, handsFree, ends: after(handsFree, task.endsAt) }];
  });
}

function checkOneTask({ task, session, starts, handsFree, ends }: Timed, week: WeekRead): Fault[] {
  const at = { session: session.key, task: task.key };
  const faults: Fault[] = [];
  const closes = instant(session.date, session.startsAt) + session.elapsedMinutes;
  if (!(ends <= closes)) faults.push({ kind: "TASK_OUTSIDE_SESSION", ...at, found: ends, limit: closes });
  // Clock times are whole minutes: a task may show up to one minute less than it takes.
  const tooFast =
    handsFree - starts < task.handsOnMinutes - 1 || ends - starts < task.handsOnMinutes + task.passiveMinutes - 1;
  if (tooFast || !(task.handsOnMinutes >= 0 && task.passiveMinutes >= 0))
    faults.push({ kind: "TASK_TIMES_WRONG", ...at });
  if (!(Number.isInteger(task.carer) && task.carer >= 0 && task.carer < session.carers))
    faults.push({ kind: "CARER_UNKNOWN", ...at, found: task.carer, limit: session.carers });
  for (const use of task.equipment) {
    const owned = unitsFor(week, session, use.kind);
    if (!(use.units <= owned))
      faults.push({ kind: "EQUIPMENT_NOT_OWNED", ...at, equipment: use.kind, found: use.units, limit: owned });
  }
  return faults;
}

/** None in a session that has to do without it. */
function unitsFor(week: WeekRead, session: SessionBrief, kind: EquipmentKind): number {
  if (session.without?.equipment.includes(kind) === true) return 0;
  return week.brief.household.equipment.find((row) => row.kind === kind)?.units ?? 0;
}

function checkOrder(timed: readonly Timed[], tasks: readonly TaskPlan[]): Fault[] {
  const faults: Fault[] = [];
  for (const [task, same] of groupBy(tasks, (row) => row.key))
    if (same.length > 1) faults.push({ kind: "TASK_KEY_TWICE", task });
  const byKey = new Map(timed.map((row) => [row.task.key, row]));
  for (const row of timed) {
    for (const key of row.task.after) {
      const before = byKey.get(key);
      const at = { session: row.session.key, task: row.task.key };
      if (!before) faults.push({ kind: "TASK_AFTER_UNKNOWN", ...at });
      else if (before.ends > row.starts)
        faults.push({ kind: "TASK_OUT_OF_ORDER", ...at, found: row.starts, limit: before.ends });
    }
  }
  return faults;
}

/** A carer's hands are busy from a task's start until they are free; a task without hands-on minutes needs none. */
function checkCarers(timed: readonly Timed[]): Fault[] {
  const faults: Fault[] = [];
  const busy = timed.filter(({ task }) => task.handsOnMinutes > 0);
  for (const hands of groupBy(busy, ({ task, session }) => JSON.stringify([session.key, task.carer])).values()) {
    // On a clock of whole minutes a short task may begin and end in the minute in which the next begins.
    const inOrder = [...hands].sort((a, b) => a.starts - b.starts || a.handsFree - b.handsFree);
    let freeAt = Number.NEGATIVE_INFINITY;
    for (const { task, session, starts, handsFree } of inOrder) {
      if (starts < freeAt)
        faults.push({
          kind: "CARER_DOUBLE_BOOKED",
          session: session.key,
          task: task.key,
          found: starts,
          limit: freeAt,
        });
      freeAt = Math.max(freeAt, handsFree);
    }
  }
  return faults;
}

/** A task holds its equipment from its start for the minutes it states. Load can only rise where a task starts. */
function checkEquipment(timed: readonly Timed[], week: WeekRead): Fault[] {
  const holds = timed.flatMap(({ task, session, starts }) =>
    task.equipment.map((use) => ({
      session,
      task,
      kind: use.kind,
      units: use.units,
      from: starts,
      until: starts + use.minutes,
    })),
  );
  return [...groupBy(holds, (hold) => hold.kind).entries()].flatMap(([equipment, same]) => {
    return same.flatMap((start): Fault[] => {
      const owned = unitsFor(week, start.session, start.kind);
      const found = sum(
        same.filter((hold) => hold.from <= start.from && start.from < hold.until).map((hold) => hold.units),
      );
      // A single task over the limit is reported as equipment the household does not own.
      return found > owned && start.units <= owned
        ? [
            {
              kind: "EQUIPMENT_OVERBOOKED",
              session: start.session.key,
              task: start.task.key,
              equipment,
              found,
              limit: owned,
            },
          ]
        : [];
    });
  });
}

function checkMinutes(week: WeekRead): Fault[] {
  const faults: Fault[] = [];
  for (const [key, tasks] of groupBy(week.draft.tasks, (task) => task.session)) {
    const limit = week.sessions.get(key)?.handsOnMinutes;
    const found = sum(tasks.map((task) => task.handsOnMinutes));
    if (limit !== undefined && !(found <= limit + tenth))
      faults.push({ kind: "SESSION_OVER_MINUTES", session: key, found, limit });
  }
  return faults;
}

function missingEquipment(
  wanted: readonly EquipmentKind[],
  tasks: readonly TaskPlan[],
  at: Omit<Fault, "kind">,
): Fault[] {
  const listed = tasks.flatMap((task) => task.equipment.map((use) => use.kind));
  return [...new Set(wanted)]
    .filter((kind) => !listed.includes(kind))
    .map((equipment) => ({ kind: "EQUIPMENT_NOT_LISTED", ...at, equipment }));
}

/**
 * What some child of the household avoids and these ingredients bring, by recipe or by a label on record, allergens and single
 * foods: the cook has to see it.
 */
function missingAllergens(
  week: WeekRead,
  foods: readonly string[],
  tasks: readonly TaskPlan[],
  at: Omit<Fault, "kind">,
): Fault[] {
  const avoided = new Set<string>(
    week.brief.children.flatMap((child) =>
      child.allergies.flatMap((allergy) => {
        const { codes, kinds } = avoidedNames(allergy);
        return [...codes, ...kinds];
      }),
    ),
  );
  const brought = foods
    .flatMap((key) => week.foods.get(key) ?? [])
    .flatMap((food) => purchaseChain(food, week.foods))
    .flatMap((food): string[] => [
      ...food.allergens,
      food.kind,
      ...(week.labels.get(food.key) ?? []).flatMap((label) => [
        ...label.contains,
        ...label.mayContain,
        ...(label.kinds ?? []).filter(({ says }) => says !== "CLEAR").map(({ kind }) => kind),
      ]),
    ]);
  const handled = new Set(brought.filter((name) => avoided.has(name)));
  const listed = tasks.flatMap((task) => task.handles);
  return [...handled]
    .filter((allergen) => !listed.includes(allergen))
    .map((allergen) => ({ kind: "ALLERGEN_NOT_LISTED", ...at, allergen }));
}

function checkBaseTasks(week: WeekRead): Fault[] {
  const toCook = week.draft.batches.filter((batch) => !batch.made);
  return [...groupBy(toCook, (batch) => JSON.stringify([batch.base, batch.session])).values()].flatMap(
    (batches): Fault[] => {
      const [first] = batches;
      const base = first && week.bases.get(first.base);
      if (!first || !base) return [];
      const at = { base: base.key, session: first.session };
      const tasks = week.draft.tasks.filter(
        (task) => task.kind === "BASE" && task.base === base.key && task.session === first.session,
      );
      if (tasks.length === 0) return [{ kind: "BASE_TASK_MISSING", ...at }];
      const limit = base.fixedHandsOnMinutes + base.perBatchHandsOnMinutes * sum(batches.map((batch) => batch.batches));
      const found = sum(tasks.map((task) => task.handsOnMinutes));
      return [
        ...(found < limit - tenth ? [{ kind: "HANDS_ON_UNDERSTATED", ...at, found, limit } as const] : []),
        ...missingEquipment(
          base.equipment.map((use) => use.kind),
          tasks,
          at,
        ),
        ...missingAllergens(
          week,
          base.ingredients.map((row) => row.food),
          tasks,
          at,
        ),
      ];
    },
  );
}

/**
 * A base that stands for hours is used no sooner: from the end of its task, or of its session when it was cooked before this plan,
 * until the first hand is laid on a dish that takes it for a day and child that the batch feeds.
 */
function checkStanding(week: WeekRead, timed: readonly Timed[]): Fault[] {
  return week.draft.batches.flatMap((batch): Fault[] => {
    const base = week.bases.get(batch.base);
    const session = week.sessions.get(batch.session);
    const rest = base?.restMinutes ?? 0;
    if (!base || !session || rest === 0) return [];
    const cooking = timed.filter(
      ({ task }) => task.kind === "BASE" && task.base === base.key && task.session === session.key,
    );
    const closes = instant(session.date, session.startsAt) + session.elapsedMinutes;
    const ready = (batch.made || cooking.length === 0 ? closes : Math.max(...cooking.map(({ ends }) => ends))) + rest;
    return timed
      .filter(
        ({ task, starts }) =>
          task.kind === "FINISH" &&
          starts < ready &&
          week.brief.catalogue.dishes.some(
            (dish) => dish.key === task.dish && dish.bases.some((use) => use.base === base.key),
          ) &&
          batch.feeds.some(
            ({ date, childIds }) =>
              task.forDates.includes(date) && childIds.some((childId) => task.childIds.includes(childId)),
          ),
      )
      .map(({ task, starts }) => ({
        kind: "USED_BEFORE_STOOD",
        base: base.key,
        session: task.session,
        task: task.key,
        found: starts,
        limit: ready,
      }));
  });
}

/** The finishing of one dish for one date: who eats it, and the tasks that make it. */
function checkFinish(week: WeekRead, reads: readonly ItemRead[], timed: readonly Timed[]): Fault[] {
  const [first] = reads;
  if (!first) return [];
  const { dish } = first;
  const { date } = first.box;
  const at = { dish: dish.key, date };
  const finishing = timed.filter(
    ({ task }) => task.kind === "FINISH" && task.dish === dish.key && task.forDates.includes(date),
  );
  const tasks = finishing.map(({ task }) => task);
  const uncovered = reads.filter((read) => !tasks.some((task) => task.childIds.includes(read.child.id)));
  if (uncovered.length > 0)
    return uncovered.map((read) => ({ kind: "FINISH_TASK_MISSING", ...at, childId: read.child.id }));

  const faults: Fault[] = [];
  const limit = sum(dish.steps.map((step) => step.handsOnFixedMinutes + step.handsOnPerPortionMinutes * reads.length));
  const found = sum(tasks.map((task) => task.handsOnMinutes));
  if (found < limit - tenth) faults.push({ kind: "HANDS_ON_UNDERSTATED", ...at, found, limit });
  faults.push(
    ...missingEquipment(
      dish.steps.flatMap((step) => step.equipment.map((use) => use.kind)),
      tasks,
      at,
    ),
  );
  faults.push(
    ...missingAllergens(
      week,
      dish.ingredients.map((row) => row.food),
      tasks,
      at,
    ),
  );

  // Only steps that allow it are done early, and only the evening before; the rest is the morning's.
  const early = finishing.filter(({ session }) => session.date !== date);
  const evening = early.every(
    ({ session }) => session.kind === "EVENING" && dayNumber(date) - dayNumber(session.date) === 1,
  );
  const mayAll = dish.steps.every((step) => step.eveningBefore);
  const maySome = dish.steps.some((step) => step.eveningBefore);
  if (early.length > 0 && !(evening && maySome && (mayAll || early.length < finishing.length)))
    faults.push({ kind: "FINISHED_TOO_EARLY", ...at });

  // A base that goes in is cooked before the last finishing task starts, from one of the sources that feed the date.
  const lastStart = Math.max(...finishing.map(({ starts }) => starts));
  for (const { base } of dish.bases) {
    const sources = week.draft.batches.filter(
      (batch) => batch.base === base && batch.feeds.some((feed) => feed.date === date),
    );
    const ready =
      week.draft.readyUses.some((use) => use.base === base && use.date === date) || sources.some((batch) => batch.made);
    const cooked = timed.filter(
      ({ task, session }) =>
        task.kind === "BASE" && task.base === base && sources.some((batch) => batch.session === session.key),
    );
    if (!ready && cooked.length > 0 && !cooked.some(({ ends }) => ends <= lastStart)) {
      faults.push({
        kind: "TASK_OUT_OF_ORDER",
        ...at,
        base,
        found: lastStart,
        limit: Math.min(...cooked.map(({ ends }) => ends)),
      });
    }
  }
  return faults;
}

/** The last thing: everything of the box is finished and cool, then it is packed, then the child leaves. */
function checkPacking(week: WeekRead, timed: readonly Timed[]): Fault[] {
  return week.draft.boxes.flatMap((box): Fault[] => {
    const reads = week.items.filter((read) => read.box === box);
    const day = week.children.get(box.childId)?.days.find((row) => row.date === box.date);
    if (!day || reads.every((read) => read.packed)) return [];
    const at = { childId: box.childId, date: box.date };
    const isFor = ({ task }: Timed): boolean => task.childIds.includes(box.childId) && task.forDates.includes(box.date);
    const packing = timed.filter((row) => row.task.kind === "PACK" && isFor(row));
    if (packing.length === 0) return [{ kind: "PACK_TASK_MISSING", ...at }];
    const leaves = instant(box.date, day.leaveAt);
    const done = Math.max(...packing.map(({ ends }) => ends));
    const begun = Math.max(...packing.map(({ starts }) => starts));
    const faults: Fault[] = done > leaves ? [{ kind: "TASK_TOO_LATE", ...at, found: done, limit: leaves }] : [];
    for (const { dish, item } of reads) {
      const last = dish.steps.at(-1);
      const finished = timed.filter((row) => row.task.kind === "FINISH" && row.task.dish === dish.key && isFor(row));
      if (item.served === "WARM" || !last || last.coolMinutes === 0 || finished.length === 0) continue;
      // The last step cannot have been shorter than for one portion; then it cools with the lid open.
      const cooled =
        Math.max(...finished.map(({ starts }) => starts)) +
        last.handsOnFixedMinutes +
        last.handsOnPerPortionMinutes +
        last.passiveMinutes +
        last.coolMinutes;
      if (begun < cooled - 1) faults.push({ kind: "NOT_COOLED", ...at, dish: dish.key, found: begun, limit: cooled });
    }
    const dishes = reads.map((read) => read.dish.key);
    for (const row of timed) {
      const { kind, dish } = row.task;
      if (
        (kind === "FINISH" || kind === "COOL") &&
        dish !== null &&
        dishes.includes(dish) &&
        isFor(row) &&
        row.ends > begun
      ) {
        faults.push({ kind: "TASK_OUT_OF_ORDER", ...at, dish, task: row.task.key, found: begun, limit: row.ends });
      }
    }
    return faults;
  });
}

const finishRows = (week: WeekRead, timed: readonly Timed[]): Fault[] =>
  [
    ...groupBy(
      week.items.filter((read) => !read.packed),
      (read) => JSON.stringify([read.dish.key, read.box.date]),
    ).values(),
  ].flatMap((reads) => checkFinish(week, reads, timed));

const checkClock = (week: WeekRead, timed: readonly Timed[]): Fault[] => [
  ...timed.flatMap((row) => checkOneTask(row, week)),
  ...checkOrder(timed, week.draft.tasks),
  ...checkCarers(timed),
  ...checkEquipment(timed, week),
  ...finishRows(week, timed),
  ...checkPacking(week, timed),
];

/** With every task begun as late as it says it may, nothing goes wrong that does not go wrong anyway. */
function checkWaiting(week: WeekRead, timed: readonly Timed[], anyway: readonly Fault[]): Fault[] {
  const nameOf = ({ kind, session, task }: Fault): string => JSON.stringify([kind, session, task]);
  const known = new Set(anyway.map(nameOf));
  const waiting = timed.map((row): Timed => {
    const sameDay = instant(row.session.date, row.task.latestStartsAt);
    const begun = instant(row.session.date, row.session.startsAt);
    const by = (sameDay < begun ? sameDay + 1440 : sameDay) - row.starts;
    return { ...row, starts: row.starts + by, handsFree: row.handsFree + by, ends: row.ends + by };
  });
  const early = waiting.filter((row, i) => row.starts < (timed[i]?.starts ?? 0));
  return [
    ...early.map(({ task, session }): Fault => ({ kind: "WAITS_TOO_LONG", session: session.key, task: task.key })),
    ...checkClock(week, waiting)
      .filter((fault) => !known.has(nameOf(fault)))
      .map((fault): Fault => ({ ...fault, kind: "WAITS_TOO_LONG" })),
  ];
}

/** How long each session says it takes, against its own tasks. A plan from before sessions were timed says nothing. */
function checkSessions(week: WeekRead, timed: readonly Timed[]): Fault[] {
  const { sessions } = week.draft;
  if (sessions.length === 0) return [];
  return [...groupBy(timed, ({ session }) => session.key).values()].flatMap((rows): Fault[] => {
    const session = rows[0]?.session;
    if (session === undefined) return [];
    const stated = sessions.filter((row) => row.session === session.key);
    const [timing] = stated;
    const lasts = Math.max(...rows.map(({ ends }) => ends)) - instant(session.date, session.startsAt);
    const first = rows.map(({ task }) => task.latestStartsAt).sort()[0];
    const holds =
      stated.length === 1 &&
      timing !== undefined &&
      // The clock cuts parts of a minute off.
      lasts <= timing.lastsMinutes &&
      timing.lastsMinutes < lasts + 1 &&
      timing.leastMinutes <= timing.lastsMinutes &&
      timing.latestStartsAt === first &&
      timing.latestStartsAt <= timing.noLaterThan;
    return holds
      ? []
      : [{ kind: "SESSION_TIMES_WRONG", session: session.key, found: timing?.lastsMinutes ?? 0, limit: lasts }];
  });
}

/** The prep sessions as clock times: enough tasks for what is cooked, hands, appliances, order, and the door. */
export function checkTasks(week: WeekRead): Fault[] {
  const timed = onClock(week);
  const faults = checkClock(week, timed);
  return [
    ...faults,
    ...checkWaiting(week, timed, faults),
    ...checkSessions(week, timed),
    ...checkMinutes(week),
    ...checkBaseTasks(week),
    ...checkStanding(week, timed),
  ];
}
