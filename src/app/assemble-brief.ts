/** Turns what the database knows about a household's week into the planner's brief. Pure: the reader and the clock are the caller's. */
import type { RuleSetDocument } from "../../shared/rule-set.js";
import type { HouseholdRow, ChildRow, SchoolRow, PrepTimeRow } from "../database/household.js";
import type { PlanningFacts } from "../database/planning.js";
import type { Reference } from "../database/reference.js";
import type { RuleSetRow } from "../database/school.js";
import type { WeekRow } from "../database/week.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
import { withOwnRows, type OwnRows } from "../domain/catalogue/own-rows.js";
import type { ChildBrief, ChildDayBrief, MadeBatchBrief, PinBrief, SessionBrief, WeekBrief } from "../domain/brief.js";
import { addDays, minutesOf, timeOf, weekdayOf } from "../domain/calendar/dates.js";
import { wakesIn, type Residence } from "../domain/calendar/residence.js";
import { shareOfBreak } from "../domain/nutrition/meal-share.js";
import { sessionKey } from "../domain/kitchen/session-key.js";
import { namesAllergen } from "../domain/rules/in-force.js";
import { clockElsewhere } from "./local-day.js";
import { rulesFromOtherHome } from "./other-home.js";

export interface BriefParts {
  readonly household: HouseholdRow;
  readonly facts: PlanningFacts;
  readonly ruleSets: readonly RuleSetRow[];
  readonly reference: Reference;
  /** The household's own foods and dishes; null when it has none. */
  readonly own: OwnRows | null;
  /** Every dish that may stand in a box here or in the other home. */
  readonly index: CatalogueIndex;
  readonly weekStart: string;
  /** The plan so far; what is packed, cooked or past in it stays. */
  readonly before: WeekRow | null;
  /** The household's local day and minute; what lies before cannot be changed. */
  readonly now: { readonly date: string; readonly time: string };
  /** Stay near the plan before, changing as few boxes as possible. */
  readonly stayClose: boolean;
  /** Boxes "childId@date" that are over and would not pass today: their days are no part of the brief. */
  readonly setAside?: ReadonlySet<string>;
}

/** First day of the household's week that holds a date. */
export function weekStartOf(date: string, firstWeekday: string): string {
  let day = date;
  while (weekdayOf(day) !== firstWeekday) day = addDays(day, -1);
  return day;
}

export const weekDates = (weekStart: string): string[] =>
  Array.from({ length: 7 }, (_, offset) => addDays(weekStart, offset));

/** What is agreed about one child. */
const residenceOf = (facts: PlanningFacts, childId: string): Residence => ({
  homes: facts.residences.flatMap((entry) => (entry.childId === childId ? entry.householdId : [])),
  patterns: facts.residencePatterns.filter((entry) => entry.childId === childId),
  exceptions: facts.residenceExceptions.filter((entry) => entry.childId === childId),
});

/** Whether a child of the household wakes here on a date. */
export const wakesHere = (facts: PlanningFacts, householdId: string, childId: string, date: string): boolean =>
  wakesIn(residenceOf(facts, childId), date)?.householdId === householdId;

export const enrolmentOn = (child: ChildRow, date: string) =>
  child.enrolments.find((entry) => entry.fromDate <= date && (entry.untilDate === null || entry.untilDate >= date)) ??
  null;

/** Is it a day on which this class has school: inside a term and no holiday. */
export function isSchoolDay(school: SchoolRow, schoolClassId: string, date: string): boolean {
  const weekday = weekdayOf(date);
  if (weekday === "SATURDAY" || weekday === "SUNDAY") return false;
  const inTerm = school.terms.some((term) => term.firstDay <= date && date <= term.lastDay);
  return (
    inTerm &&
    !school.days.some(
      (day) =>
        day.kind === "HOLIDAY" &&
        day.date === date &&
        (day.schoolClassId === null || day.schoolClassId === schoolClassId),
    )
  );
}

/** Is this set meant for this child in this class: its own, its class's, its school's, or its jurisdiction's. */
export function isMeantFor(row: RuleSetRow, child: ChildRow, school: SchoolRow, schoolClassId: string): boolean {
  if (row.childId !== null) return row.childId === child.id;
  if (row.schoolClassId !== null) return row.schoolClassId === schoolClassId;
  if (row.schoolId !== null) return row.schoolId === school.id;
  return row.adoptedBy.includes(school.id) || (row.jurisdiction !== null && row.jurisdiction === school.jurisdiction);
}

/** A family's own rules are about what it packs; a school's or a jurisdiction's say so, or a school takes them over. */
export const bindsBoxes = ({ childId, adoptedBy, document }: RuleSetRow, school: SchoolRow): boolean =>
  childId !== null || document.coversFoodFromHome || adoptedBy.includes(school.id);

/** The version of each rule set in force on a date that binds this child's box there. */
export function ruleSetsFor(
  ruleSets: readonly RuleSetRow[],
  child: ChildRow,
  school: SchoolRow,
  schoolClassId: string,
  date: string,
): RuleSetRow[] {
  const newest = new Map<string, RuleSetRow>();
  for (const row of ruleSets) {
    const { document } = row;
    if (
      document.inForceFrom > date ||
      (document.inForceUntil !== undefined && document.inForceUntil < date) ||
      !isMeantFor(row, child, school, schoolClassId)
    )
      continue;
    const other = newest.get(row.id);
    if (!other || other.document.version < document.version) newest.set(row.id, row);
  }
  // Asked of the version in force: one that no longer speaks of boxes takes the place of one that did.
  return [...newest.values()].filter((row) => bindsBoxes(row, school));
}

/**
 * Rules that rest for a child on a date, by their places among the sets of that day. A rule that names an allergen in the version
 * of that day holds, whatever an older one said when the note was recorded.
 */
export const exemptOn = (child: ChildRow, rows: readonly RuleSetRow[], date: string) =>
  child.exemptions
    .filter(({ from, until }) => from <= date && date <= until)
    .flatMap(({ ruleSetId, rule }) => {
      const at = rows.findIndex((row) => row.id === ruleSetId);
      const found = rows[at]?.document.rules.find(({ id }) => id === rule);
      return found === undefined || namesAllergen(found) ? [] : [{ at, rule }];
    });

const DEFAULT_BOX = {
  compartments: [
    { ml: 800, leakProof: false },
    { ml: 250, leakProof: true },
  ],
  coldSources: 0,
  insulated: false,
  flask: false,
};
const NO_EFFORT = 1;

function sessionsFor(household: HouseholdRow, schoolDates: readonly string[]): SessionBrief[] {
  const first = schoolDates[0];
  if (first === undefined) return [];
  const wanted: { kind: PrepTimeRow["kind"]; date: string }[] = [];
  for (let back = 3; back >= 1; back -= 1) wanted.push({ kind: "WEEKEND", date: addDays(first, -back) });
  for (const date of schoolDates) wanted.push({ kind: "EVENING", date: addDays(date, -1) }, { kind: "MORNING", date });
  return wanted.flatMap(({ kind, date }): SessionBrief[] => {
    const usual = household.prepTimes.find((time) => time.kind === kind && time.weekday === weekdayOf(date));
    const special = household.prepTimeExceptions.find((time) => time.kind === kind && time.date === date);
    const time = special ?? usual;
    if (!time) return [];
    return [
      {
        key: sessionKey(kind, date),
        kind,
        date,
        startsAt: time.startsAt,
        handsOnMinutes: time.handsOnMinutes,
        elapsedMinutes: time.elapsedMinutes,
        carers: time.carers,
        effort: usual?.effort ?? NO_EFFORT,
      },
    ];
  });
}

/** A batch stays when it is done, or when its session began before now. */
function batchesThatStay(
  before: WeekRow | null,
  sessions: readonly SessionBrief[],
  now: BriefParts["now"],
): MadeBatchBrief[] {
  return (before?.plan.batches ?? []).flatMap((batch) => {
    const session = sessions.find((entry) => entry.key === batch.session);
    if (!session) return [];
    return batch.state === "DONE" || hasBegun(session, now)
      ? [{ base: batch.base, session: batch.session, batches: batch.batches }]
      : [];
  });
}

/**
 * Sessions whose batches stay although no school day asks for them any more: what was cooked on the eve of a day that fell away is
 * there all the same.
 */
function withSessionsThatStay(
  sessions: readonly SessionBrief[],
  household: HouseholdRow,
  dates: readonly string[],
  before: WeekRow | null,
  now: BriefParts["now"],
): readonly SessionBrief[] {
  const missing = sessionsFor(household, dates).filter(({ key }) => !sessions.some((session) => session.key === key));
  const stays = new Set(batchesThatStay(before, missing, now).map(({ session }) => session));
  const gone = missing.filter(({ key }) => stays.has(key));
  if (gone.length === 0) return sessions;
  // In the order of the clock; on one date the morning comes before the evening.
  return [...sessions, ...gone].sort((a, b) =>
    a.date === b.date ? minutesOf(a.startsAt) - minutesOf(b.startsAt) : a.date < b.date ? -1 : 1,
  );
}

const hasBegun = (session: SessionBrief, now: BriefParts["now"]) =>
  session.date < now.date || (session.date === now.date && session.startsAt <= now.time);

/** What a kitchen has to do without in a week, from now on. */
export interface KitchenUpset {
  /** Appliances of which a unit or more cannot be used on some day. */
  readonly broken: ReadonlySet<string>;
  /** Minutes of short mornings by date. */
  readonly mornings: ReadonlyMap<string, number>;
}

/** The reports of a kitchen that still count: once its last day is over a report counts no more. */
export function kitchenUpset(facts: PlanningFacts, weekStart: string, now: BriefParts["now"]): KitchenUpset {
  const mornings = new Map<string, number>();
  for (const date of weekDates(weekStart))
    for (const { minutes } of facts.kitchenDisruptions.filter((row) => covers(row, date)))
      if (minutes !== null) mornings.set(date, Math.min(minutes, mornings.get(date) ?? minutes));
  const counting = facts.kitchenDisruptions.filter(
    ({ date, until }) => until >= now.date && date <= addDays(weekStart, 6),
  );
  return { broken: new Set(counting.flatMap(({ appliance }) => appliance ?? [])), mornings };
}

/**
 * What there is to cook with: a food or an appliance that is reported missing is missing in the sessions of those days (and, with the
 * week's first school day, in all that cook for the week before it), and all week where no session to come has it. An appliance of
 * which some units are left then counts with so many all week, as how long a batch takes goes by them.
 */
function meansOf(
  household: HouseholdRow,
  facts: PlanningFacts,
  sessions: readonly SessionBrief[],
  now: BriefParts["now"],
): Pick<WeekBrief, "sessions" | "outOf"> & { readonly equipment: WeekBrief["household"]["equipment"] } {
  const reports = facts.kitchenDisruptions;
  const toCome = sessions.filter(({ date }) => date >= now.date);
  const firstDay = sessions.find(({ kind }) => kind === "MORNING")?.date ?? "";
  const isTouched = (row: (typeof reports)[number], { date }: SessionBrief) =>
    covers(row, date) || (date < firstDay && covers(row, firstDay));
  const lacksFood = (kind: string, session: SessionBrief) =>
    reports.some((row) => row.foodKind === kind && isTouched(row, session));
  const unitsLeft = (kind: string, units: number, session: SessionBrief) =>
    reports.reduce(
      (left, row) => (row.appliance === kind && isTouched(row, session) ? left - (row.units ?? 0) : left),
      units,
    );
  const kinds = [...new Set(reports.flatMap(({ foodKind }) => foodKind ?? []))].sort();
  const outOf = kinds.filter((kind) => toCome.length > 0 && toCome.every((session) => lacksFood(kind, session)));
  const someDays = kinds.filter((kind) => !outOf.includes(kind));
  const equipment = household.equipment.flatMap(({ kind, units }) => {
    const left = (toCome.length > 0 ? toCome.map((session) => unitsLeft(kind, units, session)) : [units]).filter(
      (some) => some > 0,
    );
    return left.length > 0 ? [{ kind, units: Math.min(...left) }] : [];
  });
  return {
    outOf,
    equipment,
    sessions: sessions.map((session) => {
      if (session.date < now.date) return session;
      const foodKinds = someDays.filter((kind) => lacksFood(kind, session));
      const broken = household.equipment
        .filter(({ kind, units }) => unitsLeft(kind, units, session) <= 0)
        .map(({ kind }) => kind)
        .filter((kind) => equipment.some((row) => row.kind === kind));
      return foodKinds.length + broken.length === 0
        ? session
        : { ...session, without: { equipment: broken, foodKinds } };
    }),
  };
}

const covers = (row: { readonly date: string; readonly until: string }, date: string) =>
  row.date <= date && date <= row.until;

/** The last so many minutes before the session would end, or the first child leaves. */
function shortened(session: SessionBrief, minutes: number, leaveTimes: readonly string[]): SessionBrief {
  const startsAt = minutesOf(session.startsAt);
  const end = Math.min(startsAt + session.elapsedMinutes, ...leaveTimes.map(minutesOf));
  if (startsAt + minutes >= end) return session;
  return {
    ...session,
    startsAt: timeOf(end - minutes),
    elapsedMinutes: minutes,
    handsOnMinutes: Math.min(session.handsOnMinutes, minutes * session.carers),
  };
}

/** @param on the day whose school it is named after */
export function childBriefOf(
  household: HouseholdRow,
  child: ChildRow,
  days: readonly ChildDayBrief[],
  on: string,
): ChildBrief {
  const enrolled = enrolmentOn(child, on);
  return {
    id: child.id,
    name: child.name,
    dateOfBirth: child.dateOfBirth,
    sex: child.body?.sex ?? null,
    weightKg: child.body?.weightKg ?? null,
    heightCm: child.body?.heightCm ?? null,
    activity: child.activity,
    appetite: child.appetite,
    diets: child.diets,
    dislikes: child.dislikes,
    minutesToEat: child.minutesToEat,
    allergies: child.allergies.map(({ allergen, foodKind, avoid }) => ({ allergen, foodKind, avoid })),
    box: child.boxKit ?? DEFAULT_BOX,
    schoolName: household.schools.find((school) => school.id === enrolled?.schoolId)?.name ?? "",
    days,
  };
}

export function assembleBrief(parts: BriefParts): WeekBrief {
  const { household, facts, reference, weekStart, before, now } = parts;
  const dates = weekDates(weekStart);
  const upset = kitchenUpset(facts, weekStart, now);
  const documents: RuleSetDocument[] = [];
  const indexOf = (document: RuleSetDocument) => {
    const at = documents.indexOf(document);
    return at >= 0 ? at : documents.push(document) - 1;
  };
  // One object per version, so that children under the same rules share it; whatever binds a box covers it.
  const binding = new Map(parts.ruleSets.map((row) => [row, { ...row.document, coversFoodFromHome: true }]));
  const children = household.children.map((child): ChildBrief => {
    const otherHome = rulesFromOtherHome(facts, parts.index, child.id, weekStart);
    const days = dates.flatMap((date): ChildDayBrief[] => {
      const enrolment = enrolmentOn(child, date);
      const school = enrolment && household.schools.find((entry) => entry.id === enrolment.schoolId);
      if (
        !enrolment ||
        !school ||
        !isSchoolDay(school, enrolment.schoolClassId, date) ||
        !wakesHere(facts, household.id, child.id, date) ||
        // A box packed by a home that has given the child up since: there is one already.
        facts.elsewhere.some((eaten) => eaten.childId === child.id && eaten.date === date) ||
        parts.setAside?.has(`${child.id}@${date}`)
      )
        return [];
      const reported = facts.childDisruptions.filter((row) => row.childId === child.id && covers(row, date));
      if (
        child.schoolMealDays.includes(weekdayOf(date)) ||
        reported.some(({ kind }) => kind === "ABSENT" || kind === "SCHOOL_CLOSED")
      )
        return [];
      const schoolClass = school.classes.find((entry) => entry.id === enrolment.schoolClassId);
      const leave = child.leaveTimes.find((time) => time.weekday === weekdayOf(date));
      if (!schoolClass || !leave) return [];
      const special = school.days.filter(
        (day) => day.date === date && (day.schoolClassId === null || day.schoolClassId === schoolClass.id),
      );
      // The school's clock may not be the household's, and how long food waits is counted from when the child leaves home.
      const atHome = (time: string) => clockElsewhere(date, time, school.timeZone, household.timeZone);
      const ends = [
        ...special.flatMap((day) => (day.endsAt === null ? [] : atHome(day.endsAt))),
        ...reported.flatMap((day) => day.endsAt ?? []),
      ];
      const endsAt = ends.sort()[0] ?? null;
      const breaks = schoolClass.breaks
        .map((entry) => ({ ...entry, startsAt: atHome(entry.startsAt) }))
        .filter(
          (entry) =>
            entry.startsAt > leave.leaveAt && (endsAt === null || minutesOf(entry.startsAt) < minutesOf(endsAt)),
        );
      const given = child.provisions.filter((entry) => entry.weekday === null || entry.weekday === weekdayOf(date));
      if (breaks.length === 0) return [];
      const holding = ruleSetsFor(parts.ruleSets, child, school, schoolClass.id, date);
      const places = holding.map((row) => indexOf(binding.get(row)!));
      const exempt = exemptOn(child, holding, date).map(({ at, rule }) => ({ ruleSet: places[at]!, rule }));
      return [
        {
          date,
          weekday: weekdayOf(date),
          leaveAt: leave.leaveAt,
          breaks: breaks.map((entry) => ({
            ...entry,
            energyShare: shareOfBreak(entry, reference.mealShares).share,
          })),
          // Away from school there is neither a refrigerator nor anything to heat with.
          facility: [...special, ...reported].some((day) => day.kind === "TRIP") ? "NEITHER" : schoolClass.facility,
          ruleSets: [...places, ...(otherHome ? [indexOf(otherHome)] : [])],
          ...(exempt.length > 0 ? { exempt } : {}),
          ...(household.hotDays.includes(date) ? { hotDay: true as const } : {}),
          ...(given.length > 0 ? { given: given.map(({ food, grams, breakKey }) => ({ food, grams, breakKey })) } : {}),
        },
      ];
    });
    return childBriefOf(household, child, days, days[0]?.date ?? weekStart);
  });
  const packing = children.filter((child) => child.days.length > 0);
  const schoolDates = dates.filter((date) => packing.some((child) => child.days.some((day) => day.date === date)));
  const beforeBoxes = before?.plan.boxes ?? [];
  const known = [...new Set([...schoolDates, ...beforeBoxes.map(({ date }) => date)])].sort();
  const leaveTimes = (date: string) =>
    packing.flatMap(({ days }) => days.flatMap((day) => (day.date === date ? day.leaveAt : [])));
  const asked = sessionsFor(household, schoolDates);
  const lengths = withSessionsThatStay(asked, household, known, before, now).map((session) => {
    const minutes = session.kind === "MORNING" ? upset.mornings.get(session.date) : undefined;
    return minutes === undefined ? session : shortened(session, minutes, leaveTimes(session.date));
  });
  const { sessions, outOf, equipment } = meansOf(household, facts, lengths, now);
  // A box that was packed and is BLOCKED since is not closed: it has to be made anew.
  const closed = beforeBoxes.filter((box) => box.state === "PACKED" || box.state === "EATEN" || box.date < now.date);
  /** A break that fell away holds nothing any more. */
  const isDue = ({ childId, date, breakKey }: { childId: string; date: string; breakKey: string }) =>
    packing.some(
      ({ id, days }) =>
        id === childId && days.some((day) => day.date === date && day.breaks.some(({ key }) => key === breakKey)),
    );
  const closedPins = closed.flatMap((box) =>
    box.items
      .map((item): PinBrief => ({
        childId: box.childId,
        date: box.date,
        breakKey: item.breakKey,
        slot: item.slot,
        position: item.place,
        dish: item.dish,
        because: "PACKED",
      }))
      .filter(isDue),
  );
  const isClosed = (childId: string, date: string) =>
    closed.some((box) => box.childId === childId && box.date === date);
  return {
    format: "noonpail-brief/1",
    weekStart,
    household: {
      id: household.id,
      name: household.name,
      currency: household.currency,
      energyMethod: household.energyMethod,
      keepsOut: household.keepsOut,
      equipment,
      refrigeratorMl: household.refrigeratorMl,
    },
    sessions,
    children: packing,
    catalogue: parts.own === null ? reference.catalogue : withOwnRows(reference.catalogue, parts.own),
    ruleSets: documents,
    choking: reference.choking,
    slotShares: reference.mealShares.slots,
    credits: reference.credits,
    holding: reference.holding,
    stock: household.stock,
    ready: [
      ...household.leftovers.map((entry) => ({
        id: entry.id,
        base: entry.base,
        grams: entry.grams,
        from: "LEFTOVER" as const,
        firstDate: addDays(entry.cookedOn, 1),
        lastDate: entry.lastSafeDay,
      })),
      // Thawed overnight in the refrigerator, so from the day after the freezer is opened at the earliest.
      ...household.freezerStock.map((entry) => ({
        id: entry.id,
        base: entry.base,
        grams: entry.grams,
        from: "FREEZER" as const,
        firstDate: addDays(entry.frozenOn, 1),
        lastDate: entry.useBy,
      })),
    ],
    labels: household.labelChecks,
    relaxations: facts.relaxations,
    pins: [
      ...closedPins,
      ...facts.pins
        .filter((pin) => isDue(pin) && !isClosed(pin.childId, pin.date))
        .map((pin): PinBrief => ({
          childId: pin.childId,
          date: pin.date,
          breakKey: pin.breakKey,
          slot: pin.slot,
          position: pin.place,
          dish: pin.dish,
          because: "PINNED",
        })),
    ],
    made: batchesThatStay(before, sessions, now),
    outOf,
    history: facts.history,
    stayCloseTo: parts.stayClose
      ? beforeBoxes.flatMap((box) =>
          box.items.map((item) => ({
            childId: box.childId,
            date: box.date,
            breakKey: item.breakKey,
            slot: item.slot,
            position: item.place,
            dish: item.dish,
          })),
        )
      : [],
    sharing: true,
  };
}

/** The next day from `from` on which a child of the household has school; null when no term says so within a year. */
export function nextSchoolDay(household: HouseholdRow, from: string): string | null {
  for (let ahead = 0; ahead <= 366; ahead += 1) {
    const date = addDays(from, ahead);
    for (const child of household.children) {
      const enrolment = enrolmentOn(child, date);
      const school = enrolment && household.schools.find((entry) => entry.id === enrolment.schoolId);
      if (school && isSchoolDay(school, enrolment.schoolClassId, date)) return date;
    }
  }
  return null;
}
