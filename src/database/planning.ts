/** What a plan needs beside the household: where children wake, what happened, what is fixed. One statement. */
import type { SlotCode } from "../../shared/codes.js";
import type { HouseRule } from "../domain/brief.js";
import type { ResidenceException, ResidencePattern } from "../domain/calendar/residence.js";
import type { ReadTx } from "./database.js";
import {
  childDisruptions,
  kitchenDisruptions,
  type ChildDisruptionRow,
  type KitchenDisruptionRow,
} from "./disruption.js";
import { acceptedExceptions, acceptedPatterns } from "./residence.js";

type OfChild<T> = T & { readonly childId: string };

export interface PlanningFacts {
  /** What was agreed for these days, in the order in which it was agreed. */
  readonly residencePatterns: readonly OfChild<ResidencePattern>[];
  readonly residenceExceptions: readonly OfChild<ResidenceException>[];
  /** Every home of the children, oldest first; the first holds where nothing is agreed. */
  readonly residences: readonly { readonly childId: string; readonly householdId: string }[];
  readonly childDisruptions: readonly ChildDisruptionRow[];
  readonly kitchenDisruptions: readonly KitchenDisruptionRow[];
  readonly pins: readonly {
    readonly childId: string;
    readonly date: string;
    readonly breakKey: string;
    readonly slot: SlotCode;
    readonly place: number;
    readonly dish: string;
  }[];
  readonly relaxations: readonly { readonly rule: HouseRule; readonly date: string }[];
  /** What the children eat from another home's boxes in this very week. */
  readonly elsewhere: readonly {
    readonly childId: string;
    readonly date: string;
    readonly slot: SlotCode;
    readonly dish: string;
  }[];
  /** Boxes of the two weeks before, both homes, absent days left out. */
  readonly history: readonly { readonly childId: string; readonly date: string; readonly dish: string }[];
}

/** @param from first day of the week, @param to last day, both included */
export async function readPlanningFacts(
  tx: ReadTx,
  householdId: string,
  from: string,
  to: string,
): Promise<PlanningFacts> {
  const [row] = await tx<{ tree: PlanningFacts }[]>`
    with here as (select r.child_id from residence r where r.household_id = ${householdId})
    select json_build_object(
      'residencePatterns', ${acceptedPatterns(tx, tx`p.child_id in (select child_id from here)`, to)},
      'residenceExceptions', ${acceptedExceptions(tx, tx`e.child_id in (select child_id from here)`, from, to)},
      'residences', (select coalesce(json_agg(json_build_object('childId', r.child_id, 'householdId', r.household_id) order by r.since, r.household_id), '[]')
        from residence r where r.child_id in (select child_id from here)),
      'childDisruptions', ${childDisruptions(tx, householdId, from, to)},
      'kitchenDisruptions', ${kitchenDisruptions(tx, householdId, from, to)},
      'pins', (select coalesce(json_agg(json_build_object('childId', p.child_id, 'date', p.date, 'breakKey', p.break_key, 'slot', p.slot, 'place', p.place, 'dish', p.dish_key) order by p.date, p.child_id, p.break_key, p.slot, p.place), '[]')
        from pin p where p.household_id = ${householdId} and p.date between ${from} and ${to}),
      'relaxations', (select coalesce(json_agg(json_build_object('rule', x.rule, 'date', x.date) order by x.date, x.rule), '[]')
        from relaxation x where x.household_id = ${householdId} and x.date between ${from} and ${to}),
      'elsewhere', (select coalesce(json_agg(json_build_object('childId', i.child_id, 'date', l.date, 'slot', i.slot, 'dish', i.dish_key) order by l.date, i.child_id, i.dish_key), '[]')
        from lunch_box l join box_item i on i.lunch_box_id = l.id
        where l.child_id in (select child_id from here) and l.current and l.date between ${from} and ${to}
          and l.week_plan_id not in (select p.id from week_plan p where p.household_id = ${householdId})),
      'history', (select coalesce(json_agg(json_build_object('childId', i.child_id, 'date', l.date, 'dish', i.dish_key) order by l.date, i.child_id, i.dish_key), '[]')
        from lunch_box l join box_item i on i.lunch_box_id = l.id
        where l.child_id in (select child_id from here) and l.current and l.date between ${from}::date - 14 and ${from}::date - 1)
    ) as tree`;
  return row!.tree;
}
