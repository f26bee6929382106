/** A household's week: read as one tree by one statement, written as an immutable revision. */
import { randomUUID } from "node:crypto";
import { foodSchema } from "../../shared/catalogue.js";
import type { AllergenCode, EquipmentKind, SlotCode } from "../../shared/codes.js";
import { boxKey } from "../domain/box-key.js";
import type {
  Caution,
  CutPlan,
  HoldingCase,
  HoldingForecast,
  ReadyUse,
  SessionPlan,
  Reason,
  SpareUse,
  WeekDraft,
  WishTotals,
} from "../domain/week.js";
import type { TakenOver } from "../domain/kitchen/kept-tasks.js";
import type { ReadTx, Tx } from "./database.js";
import type { PersonRow } from "./household.js";

export type PlanStateCode = "DRAFT" | "AGREED" | "REPLACED";
export type BoxStateCode = "PLANNED" | "PACKED" | "EATEN" | "BLOCKED";
export type WorkStateCode = "OPEN" | "TAKEN" | "DONE";
export type CameBackCode = "ALL" | "SOME" | "NONE" | "TRADED";

export interface BoxItemRow {
  readonly id: string;
  readonly boxId: string;
  readonly childId: string;
  readonly date: string;
  readonly breakKey: string;
  readonly slot: SlotCode;
  readonly place: number;
  readonly dish: string;
  readonly grams: number;
  readonly pieces: number | null;
  readonly served: "COLD" | "WARM";
  readonly energyKcal: number;
  readonly carbohydrateGrams: number | null;
  readonly allergens: readonly AllergenCode[];
  readonly cuts: readonly CutPlan[];
  readonly holdingCase: HoldingCase;
  readonly pinned: boolean;
  /** Null until somebody says. */
  readonly cameBack: CameBackCode | null;
  /** Null for the child's other home. */
  readonly note: {
    readonly reasons: readonly Reason[];
    readonly holdingMinutes: number;
    readonly holdingLimitMinutes: number;
    /** Null where nothing needs control, and in plans made before there was a model. */
    readonly holdingForecast: HoldingForecast | null;
    readonly compartment: number;
    readonly labelsToRead: readonly string[];
  } | null;
  readonly planId: string;
}
/** Why a box is blocked. KITCHEN: something only the home that packs it may know; its own note says what. */
export type BlockKind =
  | "ALLERGEN"
  | "MAY_CONTAIN"
  | "LABEL_UNREAD"
  | "KEPT_OUT"
  | "DIET"
  | "CHOKING"
  | "HOLDING"
  | "NO_REHEATING"
  | "RULE"
  | "RULE_NOT_JUDGED"
  | "NO_SCHOOL"
  | "NOT_DUE"
  | "BREAKS_CHANGED"
  | "DISH_UNKNOWN"
  | "FOOD_MISSING"
  | "APPLIANCE_BROKEN"
  | "SHORT_MORNING"
  | "KITCHEN";
export interface BlockRow {
  readonly kind: BlockKind;
  readonly dish: string | null;
  readonly allergen: string | null;
  readonly diet: string | null;
  readonly ruleSet: string | null;
  readonly rule: string | null;
  readonly says: string | null;
  /** Null for the child's other home, and where there is nothing to add. */
  readonly note: {
    readonly kind: BlockKind;
    readonly dish: string | null;
    readonly food: string | null;
    readonly allergen: string | null;
  } | null;
}
export interface BoxRow {
  readonly id: string;
  readonly childId: string;
  readonly date: string;
  readonly state: BoxStateCode;
  readonly packedAt: string | null;
  readonly packing: {
    readonly leaveAt: string;
    readonly coldSources: number;
    readonly flask: boolean;
    readonly cutlery: readonly ("SPOON" | "FORK" | "CHOPSTICKS")[];
    /** Null until it is packed. */
    readonly packedBy: PersonRow | null;
  } | null;
  readonly items: readonly BoxItemRow[];
  /** Empty unless the box is BLOCKED. */
  readonly blocks: readonly BlockRow[];
}
export interface BatchRow {
  readonly id: string;
  readonly base: string;
  readonly session: string;
  readonly batches: number;
  readonly grams: number;
  readonly feeds: readonly { readonly date: string; readonly childIds: readonly string[]; readonly grams: number }[];
  readonly spareGrams: number;
  readonly state: WorkStateCode;
}
export interface TaskRow {
  readonly id: string;
  readonly key: string;
  readonly session: string;
  readonly kind: "BASE" | "FINISH" | "COOL" | "PACK" | "DEFROST";
  readonly base: string | null;
  readonly dish: string | null;
  readonly text: string;
  readonly childIds: readonly string[];
  readonly forDates: readonly string[];
  readonly handsOnMinutes: number;
  readonly passiveMinutes: number;
  readonly equipment: readonly { readonly kind: EquipmentKind; readonly units: number; readonly minutes: number }[];
  readonly startsAt: string;
  readonly handsFreeAt: string;
  readonly endsAt: string;
  readonly latestStartsAt: string;
  readonly carer: number;
  readonly after: readonly string[];
  readonly handles: readonly string[];
  readonly state: WorkStateCode;
  /** Who holds it or has done it. */
  readonly takenById: string | null;
  /** The same person by name; null where that is no carer of the household any more. */
  readonly takenBy: PersonRow | null;
  readonly takenAt: string | null;
  readonly doneAt: string | null;
  /** Hands-on minutes it took, where that was said. */
  readonly actualMinutes: number | null;
  /** Of an earlier plan of the week, where it was done or begun: no work of this plan's own. */
  readonly kept: boolean;
}
export interface ShoppingLineRow {
  readonly id: string;
  readonly food: string;
  readonly section: string;
  readonly neededGrams: number;
  readonly fromStockGrams: number;
  readonly packs: number;
  readonly packGrams: number;
  readonly spareGrams: number;
  readonly costMinor: number;
  readonly readLabel: boolean;
  /** It is in the basket. */
  readonly ticked: boolean;
  /** Empty where too little is left to speak of, and in plans made before it was told. */
  readonly spareUses: readonly SpareUse[];
  /** In the cupboard when the week was planned; null in plans made before it was kept. */
  readonly stockGrams: number | null;
}
export interface SharingRow {
  readonly handsOnMinutesShared: number;
  readonly handsOnMinutesAlone: number | null;
}
/** How good the plan is for sure, when that was worked out. */
export interface CertificateRow {
  readonly objectivePoints: number;
  readonly boundPoints: number;
  readonly nodes: number;
  readonly milliseconds: number;
  readonly createdAt: string;
}
export interface PlanRow {
  readonly id: string;
  readonly number: number;
  readonly state: PlanStateCode;
  readonly seed: string;
  readonly steps: number;
  readonly problemHash: string;
  readonly catalogueVersion: string;
  readonly ruleSetVersions: readonly string[];
  readonly wishes: WishTotals;
  readonly cautions: readonly Caution[];
  readonly readyUses: readonly ReadyUse[];
  readonly sessions: readonly SessionPlan[];
  readonly comparison: SharingRow | null;
  readonly certificate: CertificateRow | null;
  readonly createdAt: string;
  readonly agreedAt: string | null;
  readonly boxes: readonly BoxRow[];
  readonly batches: readonly BatchRow[];
  readonly tasks: readonly TaskRow[];
  readonly shopping: readonly ShoppingLineRow[];
}
export interface WeekRow {
  readonly id: string;
  readonly householdId: string;
  readonly weekStart: string;
  readonly revision: number;
  /** Children of the household, the youngest first: whoever a plan names. */
  readonly children: readonly { readonly id: string; readonly name: string }[];
  readonly plan: PlanRow;
}

/**
 * SQL for the columns of one box `l`. Rows become JSON whole, their column names as keys: PostgreSQL writes them about twice
 * as fast as json_build_object, which looks up the type of every argument again for every row.
 */
const boxColumns = (tx: ReadTx) => tx`
  l.id, l.child_id as "childId", l.date, l.state, l.packed_at as "packedAt",
  (select x from (select p.leave_at as "leaveAt", p.cold_sources as "coldSources", p.flask, p.cutlery,
      (select y from (select q.id, q.display_name as "displayName" from person q where q.id = p.packed_by_id) y) as "packedBy"
    from box_packing p where p.lunch_box_id = l.id) x) as packing,
  coalesce((select json_agg(x) from (select
      i.id, l.id as "boxId", i.child_id as "childId", l.date, l.week_plan_id as "planId", i.break_key as "breakKey", i.slot, i.place, i.dish_key as dish,
      i.grams, i.pieces, i.served, i.energy_kcal as "energyKcal", i.carbohydrate_grams as "carbohydrateGrams", i.allergens,
      i.cuts, i.holding_case as "holdingCase",
      (n.box_item_id is not null and exists (select from pin x where x.child_id = i.child_id and x.date = l.date and x.break_key = i.break_key and x.slot = i.slot and x.place = i.place)) as pinned,
      (select b.came_back from box_return b where b.child_id = i.child_id and b.date = l.date and b.break_key = i.break_key and b.slot = i.slot and b.place = i.place and b.dish_key = i.dish_key) as "cameBack",
      case when n.box_item_id is not null then (select y from (select n.reasons, n.holding_minutes as "holdingMinutes", n.holding_limit_minutes as "holdingLimitMinutes", n.holding_forecast as "holdingForecast", n.compartment, n.labels_to_read as "labelsToRead") y) end as note
    from box_item i left join box_item_note n on n.box_item_id = i.id where i.lunch_box_id = l.id
    order by i.break_key, array_position(array['MAIN', 'VEGETABLE', 'FRUIT', 'EXTRA'], i.slot), i.place) x), '[]') as items,
  case when l.state = 'BLOCKED' then coalesce((select json_agg(x) from (select
      k.kind, k.dish_key as dish, k.allergen, k.diet, k.rule_set as "ruleSet", k.rule, k.says,
      (select y from (select m.kind, m.dish_key as dish, m.food_key as food, m.allergen from box_block_note m where m.box_block_id = k.id) y) as note
    from box_block k where k.lunch_box_id = l.id order by k.place) x), '[]') else '[]' end as blocks`;

/** The shop's sections in the order they are walked. */
const SHOP_WALK = [...foodSchema.shape.shopSection.options];

/** SQL for the columns of one week `w` with its newest plan `p`, or the one with a number. */
const weekColumns = (tx: ReadTx, number: number | null = null) => tx`
  w.id, w.household_id as "householdId", w.week_start as "weekStart", w.revision,
  coalesce((select json_agg(x) from (select c.id, c.name from child c join residence r on r.child_id = c.id
    where r.household_id = w.household_id order by c.date_of_birth desc, c.id) x), '[]') as children,
  (select x from (select
    p.id, p.number, p.state, p.seed::text as seed, p.steps, p.problem_hash as "problemHash", p.catalogue_version as "catalogueVersion",
    p.rule_set_versions as "ruleSetVersions", p.wishes, p.cautions, p.ready_uses as "readyUses", p.sessions, p.comparison,
    (select y from (select k.objective_points as "objectivePoints", k.bound_points as "boundPoints", k.nodes, k.milliseconds, k.created_at as "createdAt"
      from plan_certificate k where k.week_plan_id = p.id) y) as certificate,
    p.created_at as "createdAt", p.agreed_at as "agreedAt",
    coalesce((select json_agg(y) from (select ${boxColumns(tx)}
      from lunch_box l join child c on c.id = l.child_id where l.week_plan_id = p.id and ${number === null ? tx`l.current` : tx`true`}
      order by l.date, c.date_of_birth desc, c.id) y), '[]') as boxes,
    coalesce((select json_agg(y) from (select b.id, b.base_key as base, b.session, b.batches, b.grams, b.feeds, b.spare_grams as "spareGrams", b.state
      from batch b where b.week_plan_id = p.id
      order by split_part(b.session, '-', 2), split_part(b.session, '-', 3), split_part(b.session, '-', 4), b.session desc, b.base_key) y), '[]') as batches,
    coalesce((select json_agg(y) from (select t.id, t.key, t.session, t.kind, t.base_key as base, t.dish_key as dish, t.text, t.child_ids as "childIds",
        t.for_dates as "forDates", t.hands_on_minutes as "handsOnMinutes", t.passive_minutes as "passiveMinutes", t.equipment, t.starts_at as "startsAt",
        t.hands_free_at as "handsFreeAt", t.ends_at as "endsAt", t.latest_starts_at as "latestStartsAt", t.carer, t.after, t.handles, t.state,
        t.taken_by_id as "takenById", t.taken_at as "takenAt", t.done_at as "doneAt", t.actual_minutes as "actualMinutes", t.kept,
        (select z from (select q.id, q.display_name as "displayName" from person q where q.id = t.taken_by_id) z) as "takenBy"
      from task t where t.week_plan_id = p.id
      order by substring(t.session from '[0-9].*'), t.session desc, t.starts_at, t.hands_free_at, t.carer, t.key) y), '[]') as tasks,
    coalesce((select json_agg(y) from (select s.id, s.food_key as food, s.section, s.needed_grams as "neededGrams", s.from_stock_grams as "fromStockGrams", s.packs,
        s.pack_grams as "packGrams", s.spare_grams as "spareGrams", s.cost_minor as "costMinor", s.read_label as "readLabel", s.ticked, s.spare_uses as "spareUses", s.stock_grams as "stockGrams"
      from shopping_line s where s.week_plan_id = p.id order by array_position(${SHOP_WALK}::text[], s.section), s.food_key) y), '[]') as shopping
  ) x) as plan
  from week w join lateral (select * from week_plan p where p.week_id = w.id ${number === null ? tx`` : tx`and p.number = ${number}`} order by p.number desc limit 1) p on true`;

/** The newest plan of the week that starts on a day; null when there is none or it is not the reader's. */
export async function readWeek(tx: ReadTx, householdId: string, weekStart: string): Promise<WeekRow | null> {
  const [row] = await tx<
    { tree: WeekRow }[]
  >`select row_to_json(r) as tree from (select ${weekColumns(tx)} where w.household_id = ${householdId} and w.week_start = ${weekStart}) r`;
  return row?.tree ?? null;
}

/** The week a day lies in, as `readWeek` gives it, without asking the household on which weekday its weeks begin. */
export async function readWeekOfDay(tx: ReadTx, householdId: string, date: string): Promise<WeekRow | null> {
  const [row] = await tx<
    { tree: WeekRow }[]
  >`select row_to_json(r) as tree from (select ${weekColumns(tx)} where w.household_id = ${householdId}
    and w.week_start between ${date}::date - 6 and ${date}::date order by w.week_start desc limit 1) r`;
  return row?.tree ?? null;
}

export async function readWeekById(tx: ReadTx, weekId: string): Promise<WeekRow | null> {
  const [row] = await tx<
    { tree: WeekRow }[]
  >`select row_to_json(r) as tree from (select ${weekColumns(tx)} where w.id = ${weekId}) r`;
  return row?.tree ?? null;
}

/** Of the week that a plan is of, the plan with a number, replaced or not; null when there is none or it is not the reader's. */
export async function readPlanBeside(tx: ReadTx, planId: string, number: number): Promise<PlanRow | null> {
  const [row] = await tx<
    { tree: WeekRow }[]
  >`select row_to_json(r) as tree from (select ${weekColumns(tx, number)} where w.id = (select week_id from week_plan where id = ${planId})) r`;
  return row?.tree.plan ?? null;
}

/** A child's boxes in both homes, as far as the reader may see them. */
export async function readBoxesOfChild(tx: ReadTx, childId: string, from: string, to: string): Promise<BoxRow[]> {
  const rows = await tx<
    { tree: BoxRow }[]
  >`select row_to_json(r) as tree from (select ${boxColumns(tx)} from lunch_box l where l.child_id = ${childId} and l.current and l.date between ${from} and ${to} order by l.date) r`;
  return rows.map((row) => row.tree);
}

/** Which week a plan or one of its parts belongs to, when it is of the newest plan and the reader's own. */
export async function findWeekOf(
  tx: ReadTx,
  kind: "BoxItem" | "Box" | "Task" | "Batch" | "ShoppingLine" | "WeekPlan",
  id: string,
): Promise<{ weekId: string; householdId: string } | null> {
  const plan =
    kind === "BoxItem"
      ? tx`select l.week_plan_id from box_item i join lunch_box l on l.id = i.lunch_box_id where i.id = ${id} and l.current`
      : kind === "Box"
        ? tx`select l.week_plan_id from lunch_box l where l.id = ${id} and l.current`
        : kind === "Task"
          ? tx`select t.week_plan_id from task t where t.id = ${id}`
          : kind === "Batch"
            ? tx`select b.week_plan_id from batch b where b.id = ${id}`
            : kind === "ShoppingLine"
              ? tx`select s.week_plan_id from shopping_line s where s.id = ${id}`
              : tx`select ${id}::uuid`;
  const [row] = await tx<{ weekId: string; householdId: string }[]>`
    select p.week_id as "weekId", p.household_id as "householdId" from week_plan p where p.id in (${plan}) and p.state <> 'REPLACED'`;
  return row ?? null;
}

export interface PlanToSave {
  readonly householdId: string;
  readonly weekId: string;
  readonly number: number;
  readonly state: "DRAFT" | "AGREED";
  readonly draft: WeekDraft;
  readonly seed: number;
  readonly steps: number;
  readonly problemHash: string;
  readonly catalogueVersion: string;
  readonly ruleSetVersions: readonly string[];
  readonly comparison: SharingRow | null;
  readonly createdById: string;
  readonly agreedAt: Date | null;
  /** Per box "childId@date": what happened to it in the plan before. */
  readonly boxStates: ReadonlyMap<string, { state: BoxStateCode; packedAt: Date | null; packedById: string | null }>;
  /** Per box "childId@date": why it does not pass, at the moment of writing. Such a box is stored as BLOCKED. */
  readonly blocks: ReadonlyMap<string, readonly BlockRow[]>;
  /** Packs in the basket already, by food. A line that wants more of them is open again. */
  readonly packsTicked: ReadonlyMap<string, number>;
  /** Of the plan before. */
  readonly takenOver: TakenOver<TaskRow>;
  readonly allergensOf: (dish: string) => readonly AllergenCode[];
}

const day = (date: string) => new Date(`${date}T00:00:00Z`);
const json = (value: unknown) => JSON.parse(JSON.stringify(value)) as object;

/** Adds reasons to boxes that have none. Three statements at most. */
export async function saveBlocks(
  tx: Tx,
  householdId: string,
  boxes: readonly { readonly boxId: string; readonly childId: string; readonly blocks: readonly BlockRow[] }[],
  newId: () => string,
): Promise<void> {
  const rows = boxes.flatMap(({ boxId, childId, blocks }) =>
    blocks.map((block, place) => ({ id: newId(), boxId, childId, place, block })),
  );
  if (rows.length === 0) return;
  await tx.boxBlock.createMany({
    data: rows.map(({ id, boxId, childId, place, block }) => ({
      id,
      lunchBoxId: boxId,
      childId,
      place,
      kind: block.kind,
      dishKey: block.dish,
      allergen: block.allergen,
      diet: block.diet,
      ruleSet: block.ruleSet,
      rule: block.rule,
      says: block.says,
    })),
  });
  await tx.boxBlockNote.createMany({
    data: rows.flatMap(({ id, block: { note } }) =>
      note === null
        ? []
        : [
            {
              boxBlockId: id,
              householdId,
              kind: note.kind,
              dishKey: note.dish,
              foodKey: note.food,
              allergen: note.allergen,
            },
          ],
    ),
  });
}

export interface CertificateToSave {
  readonly householdId: string;
  readonly weekId: string;
  readonly planId: string;
  readonly objectivePoints: number;
  readonly boundPoints: number;
  readonly nodes: number;
  readonly milliseconds: number;
  /** JSON, gzip. */
  readonly problem: Uint8Array;
  /** JSON, gzip. */
  readonly certificate: Uint8Array;
}

/** Keeps the certificate of a plan and lets go of those of the week's plans before it. Answers with the week's revision. */
/** What stands for the hash of a problem that names somebody who was erased since (migration 0027). */
const PROBLEM_ERASED = "-";

/** @returns the week's revision; null when the problem names somebody who was erased since, and nothing was kept */
export async function saveCertificate(tx: Tx, { weekId, planId, ...row }: CertificateToSave): Promise<number | null> {
  const plan = await tx.weekPlan.findUnique({ where: { id: planId }, select: { problemHash: true } });
  if (plan === null || plan.problemHash === PROBLEM_ERASED) return null;
  await tx.planCertificate.deleteMany({ where: { plan: { weekId } } });
  await tx.planCertificate.create({
    data: {
      ...row,
      weekPlanId: planId,
      problem: Uint8Array.from(row.problem),
      certificate: Uint8Array.from(row.certificate),
    },
    select: { weekPlanId: true },
  });
  const week = await tx.week.findUniqueOrThrow({ where: { id: weekId }, select: { revision: true } });
  return week.revision;
}

/** Writes one immutable revision with a constant number of statements; the plan before becomes REPLACED and its boxes give way. */
export async function savePlan(tx: Tx, plan: PlanToSave): Promise<string> {
  const planId = randomUUID();
  await tx.weekPlan.updateMany({
    where: { weekId: plan.weekId, state: { not: "REPLACED" } },
    data: { state: "REPLACED" },
  });
  await tx.$executeRaw`update lunch_box set current = false where current and week_plan_id in (select id from week_plan where week_id = ${plan.weekId}::uuid)`;
  await tx.weekPlan.create({
    data: {
      id: planId,
      weekId: plan.weekId,
      householdId: plan.householdId,
      number: plan.number,
      state: plan.state,
      seed: BigInt(plan.seed),
      steps: plan.steps,
      problemHash: plan.problemHash,
      catalogueVersion: plan.catalogueVersion,
      ruleSetVersions: [...plan.ruleSetVersions],
      wishes: json(plan.draft.wishes),
      cautions: json(plan.draft.cautions),
      readyUses: json(plan.draft.readyUses),
      sessions: json(plan.draft.sessions),
      ...(plan.comparison ? { comparison: json(plan.comparison) } : {}),
      createdById: plan.createdById,
      agreedAt: plan.agreedAt,
    },
    select: { id: true },
  });
  const boxes = plan.draft.boxes.map((box) => ({ id: randomUUID(), box }));
  const items = boxes.flatMap(({ id, box }) => box.items.map((item) => ({ id: randomUUID(), boxId: id, box, item })));
  await tx.lunchBox.createMany({
    data: boxes.map(({ id, box }) => {
      const before = plan.boxStates.get(boxKey(box));
      return {
        id,
        weekPlanId: planId,
        childId: box.childId,
        date: day(box.date),
        state: plan.blocks.has(boxKey(box)) ? "BLOCKED" : (before?.state ?? "PLANNED"),
        packedAt: before?.packedAt ?? null,
        current: true,
      };
    }),
  });
  await saveBlocks(
    tx,
    plan.householdId,
    boxes.map(({ id, box }) => ({
      boxId: id,
      childId: box.childId,
      blocks: plan.blocks.get(boxKey(box)) ?? [],
    })),
    randomUUID,
  );
  await tx.boxPacking.createMany({
    data: boxes.map(({ id, box }) => ({
      lunchBoxId: id,
      householdId: plan.householdId,
      leaveAt: box.leaveAt,
      coldSources: box.coldSources,
      flask: box.flask,
      cutlery: [...box.cutlery],
      packedById: plan.boxStates.get(boxKey(box))?.packedById ?? null,
    })),
  });
  await tx.boxItem.createMany({
    data: items.map(({ id, boxId, box, item }) => ({
      id,
      lunchBoxId: boxId,
      childId: box.childId,
      breakKey: item.breakKey,
      slot: item.slot,
      place: item.position,
      dishKey: item.dish,
      grams: item.grams,
      pieces: item.pieces,
      served: item.served,
      energyKcal: item.energyKcal,
      carbohydrateGrams: item.carbohydrateGrams,
      cuts: json(item.cuts),
      allergens: [...plan.allergensOf(item.dish)],
      holdingCase: item.holding.case,
    })),
  });
  await tx.boxItemNote.createMany({
    data: items.map(({ id, item }) => ({
      boxItemId: id,
      householdId: plan.householdId,
      reasons: json(item.why),
      holdingMinutes: item.holding.minutes,
      holdingLimitMinutes: item.holding.limitMinutes,
      ...(item.holding.forecast ? { holdingForecast: json(item.holding.forecast) } : {}),
      compartment: item.compartment,
      labelsToRead: [...item.labelsToRead],
    })),
  });
  const made = new Map(
    plan.draft.tasks
      .filter((task) => task.kind === "BASE")
      .map((task) => [`${task.base}@${task.session}`, plan.takenOver.goOn.get(task.key)?.state]),
  );
  await tx.batch.createMany({
    data: plan.draft.batches.map((batch) => ({
      weekPlanId: planId,
      householdId: plan.householdId,
      baseKey: batch.base,
      session: batch.session,
      batches: batch.batches,
      grams: Math.round(batch.grams),
      feeds: json(batch.feeds),
      spareGrams: Math.round(batch.spareGrams),
      state: batch.made ? ("DONE" as const) : (made.get(`${batch.base}@${batch.session}`) ?? ("OPEN" as const)),
    })),
  });
  await tx.task.createMany({
    data: [
      ...plan.draft.tasks.map((task) => ({
        key: task.key,
        task,
        before: plan.takenOver.goOn.get(task.key),
        kept: false,
      })),
      ...plan.takenOver.kept.map(({ key, task }) => ({ key, task, before: task, kept: true })),
    ].map(({ key, task, before, kept }) => ({
      weekPlanId: planId,
      householdId: plan.householdId,
      key,
      session: task.session,
      kind: task.kind,
      baseKey: task.base,
      dishKey: task.dish,
      text: task.text,
      childIds: [...task.childIds],
      forDates: [...task.forDates],
      handsOnMinutes: task.handsOnMinutes,
      passiveMinutes: task.passiveMinutes,
      equipment: json(task.equipment),
      startsAt: task.startsAt,
      handsFreeAt: task.handsFreeAt,
      endsAt: task.endsAt,
      latestStartsAt: task.latestStartsAt,
      carer: task.carer,
      after: [...task.after],
      handles: [...task.handles],
      state: before?.state ?? ("OPEN" as const),
      takenById: before?.takenById ?? null,
      takenAt: before?.takenAt ?? null,
      doneAt: before?.doneAt ?? null,
      actualMinutes: before?.actualMinutes ?? null,
      kept,
    })),
  });
  await tx.shoppingLine.createMany({
    data: plan.draft.shopping.map((line) => ({
      weekPlanId: planId,
      householdId: plan.householdId,
      foodKey: line.food,
      section: line.section,
      neededGrams: line.neededGrams,
      fromStockGrams: line.fromStockGrams,
      packs: line.packs,
      packGrams: Math.round(line.packGrams),
      spareGrams: line.spareGrams,
      costMinor: line.costMinor,
      readLabel: line.readLabel,
      spareUses: json(line.spareUses ?? []),
      stockGrams: line.stockGrams ?? null,
      ticked: line.packs <= (plan.packsTicked.get(line.food) ?? -1),
    })),
  });
  return planId;
}
