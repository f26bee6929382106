/** Agreed weeks of invented households, written straight into the tables: for counting over many at once. */
import { randomUUID } from "node:crypto";
import type postgres from "postgres";
import type { ChildBrief } from "../../src/domain/brief.js";
import type { BoxPlan } from "../../src/domain/week.js";

export interface AgreedWeek {
  readonly weekStart: string;
  readonly children: readonly Pick<ChildBrief, "id" | "dateOfBirth">[];
  readonly boxes: readonly Pick<BoxPlan, "childId" | "date" | "items">[];
  /** Rules that rest for a child on a day. */
  readonly exempt: readonly { readonly childId: string; readonly date: string; readonly rule: string }[];
}

export interface CountedSchool {
  readonly schoolId: string;
  readonly schoolClassId: string;
}

/** A school with one class, in a jurisdiction of its own. */
export async function writeSchool(
  owner: postgres.Sql,
  name: string,
  breaks: readonly { readonly key: string; readonly startsAt: string }[],
): Promise<CountedSchool> {
  const school = { schoolId: randomUUID(), schoolClassId: randomUUID() };
  await owner`insert into school (id, name, time_zone, jurisdiction) values (${school.schoolId}, ${name}, 'Europe/London', ${`Land of ${name}`})`;
  await owner`insert into school_class (id, school_id, name, facility) values (${school.schoolClassId}, ${school.schoolId}, 'All', 'NEITHER')`;
  for (const { key, startsAt } of breaks)
    await owner`insert into class_break (school_class_id, key, name, starts_at, minutes, slots)
      values (${school.schoolClassId}, ${key}, ${key}, ${startsAt}, 20, '{MAIN,VEGETABLE,FRUIT,EXTRA}')`;
  return school;
}

/** One household a week, with children of its own enrolled in the school. Answers nothing: who asks counts. */
export async function writeAgreedWeeks(
  owner: postgres.Sql,
  { schoolId, schoolClassId }: CountedSchool,
  ruleSetId: string | null,
  weeks: readonly AgreedWeek[],
): Promise<void> {
  const rows: Record<string, Record<string, unknown>[]> = {
    household: [],
    child: [],
    enrolment: [],
    week: [],
    week_plan: [],
    lunch_box: [],
    box_item: [],
    exemption: [],
  };
  const add = (table: string, row: Record<string, unknown>) => rows[table]!.push(row);
  for (const [at, week] of weeks.entries()) {
    const householdId = randomUUID();
    const weekId = randomUUID();
    const planId = randomUUID();
    add("household", { id: householdId, name: `Kitchen ${at}`, time_zone: "Europe/London", currency: "GBP" });
    add("week", { id: weekId, household_id: householdId, week_start: week.weekStart, revision: 1 });
    add("week_plan", {
      id: planId,
      week_id: weekId,
      household_id: householdId,
      number: 1,
      state: "AGREED",
      seed: 1,
      steps: 1,
      problem_hash: "none",
      catalogue_version: "none",
      wishes: {},
      cautions: [],
      ready_uses: [],
    });
    const ids = new Map(week.children.map(({ id }) => [id, randomUUID()]));
    for (const child of week.children) {
      const id = ids.get(child.id)!;
      add("child", { id, name: "A child", date_of_birth: child.dateOfBirth });
      add("enrolment", { child_id: id, school_id: schoolId, school_class_id: schoolClassId, from_date: "2020-09-01" });
    }
    for (const box of week.boxes) {
      const id = randomUUID();
      const child_id = ids.get(box.childId)!;
      add("lunch_box", { id, week_plan_id: planId, child_id, date: box.date, state: "PLANNED", current: true });
      for (const item of box.items)
        add("box_item", {
          lunch_box_id: id,
          child_id,
          break_key: item.breakKey,
          slot: item.slot,
          place: item.position,
          dish_key: item.dish,
          grams: item.grams,
          served: item.served,
          energy_kcal: item.energyKcal,
          cuts: [],
          holding_case: item.holding.case,
        });
    }
    if (ruleSetId !== null)
      for (const { childId, date, rule } of week.exempt)
        add("exemption", {
          child_id: ids.get(childId)!,
          rule_set_id: ruleSetId,
          rule_key: rule,
          from_date: date,
          until_date: date,
        });
  }
  await owner.begin(async (tx) => {
    for (const [table, list] of Object.entries(rows))
      for (let at = 0; at < list.length; at += 1000) {
        const some = list.slice(at, at + 1000);
        await tx`insert into ${tx(table)} ${tx(some as Record<string, never>[])}`;
      }
  });
}
