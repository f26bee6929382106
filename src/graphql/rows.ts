/** What resolvers are handed where a row alone does not know enough: mostly the household whose tree it hangs on. */
import type { MendingOffer } from "../app/mend-week.js";
import type { ChangeRow } from "../database/changes-for.js";
import type { ChildRow, EnrolmentRow, ExemptionRow, HouseholdRow, PersonRow } from "../database/household.js";
import type {
  BatchRow,
  BlockRow,
  BoxItemRow,
  BoxRow,
  PlanRow,
  ShoppingLineRow,
  TaskRow,
  WeekRow,
} from "../database/week.js";
import type { RuleSetDocument } from "../../shared/rule-set.js";
import type { WeekBrief } from "../domain/brief.js";
import type { ListedAppliance, ListedSession } from "../domain/kitchen/list-sessions.js";
import type { ClashSet } from "../domain/planner/clashes.js";
import type { Conflict } from "../domain/planner/conflicts.js";
import type { PricedDish } from "../domain/planner/price.js";
import type { Requirement } from "../domain/planner/requirements.js";
import type { Change, VerifiedWayOut } from "../domain/planner/ways-out.js";
import type { BoxCard, BoxPart } from "../app/box-card.js";
import type { RuleFinding } from "../app/compliance.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
import type { RuleNotice } from "../app/own-rules.js";
import type { ProposedRota, RotaSession } from "../app/rota.js";
import type { NamedRule, ObeyedRule } from "../app/rule-origins.js";
import type { CalendarEntry } from "../domain/calendar/school-calendar.js";
import type { DisruptionRow } from "../database/disruption.js";
import type { HandoverRow } from "../database/handover.js";
import type { ProposalRow } from "../database/residence.js";
import type { ResidencePattern } from "../domain/calendar/residence.js";
import type { AppointmentRow, AuditRow } from "../database/school.js";
import type { BoxChange, SessionChange, WeekDifference } from "../domain/week-difference.js";
import type { Caution, SpareUse, TaskPlan } from "../domain/week.js";

export interface ChangeNode {
  readonly row: ChangeRow;
  readonly householdId: string;
}
export interface MeNode {
  readonly person: PersonRow;
  readonly householdIds: readonly string[];
  readonly schoolIds: readonly string[];
}
/** A child where a plan names one: everything but the name waits until somebody asks. */
export interface ChildNode {
  readonly id: string;
  readonly name: string;
  readonly load: () => Promise<LoadedChild>;
}
export interface LoadedChild {
  readonly row: ChildRow;
  readonly household: HouseholdRow;
}
export interface EnrolmentNode {
  readonly row: EnrolmentRow;
  readonly household: HouseholdRow;
}
export interface ResidencePatternNode {
  readonly row: ResidencePattern;
  readonly householdId: string;
}
export interface ResidenceProposalNode {
  readonly row: ProposalRow;
  readonly householdId: string;
}
export interface HandoverNode extends LoadedChild {
  readonly note: HandoverRow;
}
export interface DishReturnedNode {
  /** Key. */
  readonly dish: string;
  readonly days: HandoverRow["cameBack"];
}
export interface PlanNode {
  readonly row: PlanRow;
  readonly householdId: string;
}
export interface BoxNode {
  readonly row: BoxRow;
  /** The plan it hangs on, where that has been read. */
  readonly plan?: PlanRow;
  readonly householdId: string;
}
export interface BoxCardNode {
  readonly card: BoxCard;
  readonly householdId: string;
}
export interface BoxPartNode {
  readonly part: BoxPart;
  readonly householdId: string;
}
export interface BoxItemNode {
  readonly row: BoxItemRow;
  readonly householdId: string;
}
export interface BatchNode {
  readonly row: BatchRow;
  readonly householdId: string;
}
export interface BatchFeedNode {
  readonly row: BatchRow["feeds"][number];
  readonly householdId: string;
}
export interface TaskNode {
  readonly row: TaskRow;
  /** All tasks of the plan: what is done first is said by what else the session handles. */
  readonly among: readonly TaskRow[];
  readonly householdId: string;
}
/** What a listed session knows of its plan besides itself. */
type WithTasks<T> = T & { readonly among: readonly TaskRow[]; readonly householdId: string };
export type PrepSessionNode = WithTasks<{ readonly row: ListedSession<TaskRow> }>;
export type CarerTasksNode = WithTasks<{ readonly row: ListedSession<TaskRow>["carers"][number] }>;
export type ApplianceUsesNode = WithTasks<{ readonly row: ListedAppliance<TaskRow> }>;
export type ApplianceUseNode = WithTasks<{ readonly row: ListedAppliance<TaskRow>["uses"][number] }>;

/** With the household whose carers it names. */
type OfHousehold<T> = { readonly row: T; readonly household: HouseholdRow };
export type RotaSessionNode = OfHousehold<RotaSession>;
export type RotaProposalNode = OfHousehold<ProposedRota>;
export type ProposedSessionNode = OfHousehold<ProposedRota["sessions"][number]>;
export type ProposedMinutesNode = OfHousehold<ProposedRota["minutes"][number]>;

export interface ShoppingLineNode {
  readonly row: ShoppingLineRow;
  readonly householdId: string;
}
export interface SpareUseNode {
  readonly row: SpareUse;
  readonly householdId: string;
}
export interface SpareDishNode {
  readonly row: Extract<SpareUse, { kind: "DISHES" }>["dishes"][number];
  readonly householdId: string;
}
export interface CautionNode {
  readonly row: Caution;
  /** Days of the plan's boxes. */
  readonly dates: readonly string[];
  readonly householdId: string;
}
export interface ConflictNode {
  readonly row: Conflict;
  readonly householdId: string | null;
}
export interface WeekInfeasibleNode {
  readonly message: string;
  readonly conflicts: readonly ConflictNode[];
  readonly brief: WeekBrief;
  readonly notBefore: string;
}
/** With the household whose children it names and the rule sets it quotes from. */
interface Told {
  readonly householdId: string;
  readonly ruleSets: readonly RuleSetDocument[];
}
export interface ClashNode extends Told {
  readonly row: ClashSet;
}
export interface ClashMemberNode extends Told {
  readonly row: Requirement;
}
export interface WayOutNode {
  readonly row: VerifiedWayOut;
  readonly householdId: string;
}
export interface WayOutChangeNode {
  readonly row: Change;
  readonly householdId: string;
}
export interface PricedDishNode {
  readonly row: PricedDish;
  readonly householdId: string;
}
export interface NoWeekWithDishNode {
  readonly message: string;
  readonly clash: ClashNode | null;
}
export interface BlockNode {
  readonly row: BlockRow;
  readonly childId: string;
  readonly date: string;
  readonly householdId: string;
}
export interface BoxVerdictNode {
  readonly row: BoxRow;
  readonly householdId: string;
}
export interface MendedBoxNode {
  readonly row: MendingOffer["changedBoxes"][number];
  readonly householdId: string;
}
export interface NoSchoolNode {
  readonly message: string;
  readonly childIds: readonly string[];
  readonly householdId: string;
}
export interface WeekPayloadNode {
  readonly week: WeekRow;
  readonly changed: readonly string[];
}
export interface BoxPlaceNode {
  readonly childId: string;
  readonly date: string;
  readonly householdId: string;
}
export interface StillInUseNode {
  readonly message: string;
  /** Keys of dishes. */
  readonly dishes: readonly string[];
  readonly boxes: readonly BoxPlaceNode[];
}
export interface LabelsUnreadNode {
  readonly message: string;
  readonly foods: readonly string[];
}
export interface DisruptionNode {
  readonly row: DisruptionRow;
  readonly householdId: string;
}
export interface WeekDifferenceNode {
  readonly row: WeekDifference;
  readonly householdId: string;
}
export interface BoxDifferenceNode {
  readonly row: BoxChange;
  readonly householdId: string;
}
export interface SessionDifferenceNode {
  readonly row: SessionChange;
  readonly householdId: string;
}
export interface TaskDifferenceNode {
  readonly row: TaskPlan;
  readonly householdId: string;
}
/** A row of a list that names schools, with all that the list names: they are read together. */
type AmongSchools<T> = { readonly row: T; readonly schoolIds: readonly string[] };
export type AppointmentNode = AmongSchools<AppointmentRow>;
export type AuditEntryNode = AmongSchools<AuditRow>;
export interface CalendarEntryNode {
  readonly row: CalendarEntry;
  readonly schoolId: string;
}

/** What shuts a dish out of a place, and the rule if it is one. */
export interface ShutOutNode {
  readonly kind: string;
  readonly text: string;
  readonly source: string | null;
  readonly named: NamedRule | null;
  readonly householdId: string;
}
export interface DishNotOfferedNode {
  readonly message: string;
  readonly kind: string;
  readonly rule: string | null;
  readonly source: string;
  readonly named: NamedRule | null;
  readonly householdId: string;
}
export interface RuleObeyedNode {
  readonly row: ObeyedRule;
  readonly householdId: string;
}
export interface RuleNoticeNode {
  readonly row: RuleNotice;
  readonly householdId: string;
}
export interface RuleFindingNode {
  readonly row: RuleFinding;
  /** Names what stands at the place. */
  readonly index: CatalogueIndex;
  readonly householdId: string;
}
export interface ExemptionNode {
  readonly row: ExemptionRow;
  readonly householdId: string;
}
/** A version of a rule set beside the one it took over from; null for the first. */
export interface RuleSetVersionNode {
  readonly document: RuleSetDocument;
  readonly before: RuleSetDocument | null;
}
