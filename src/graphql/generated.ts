import type { GraphQLResolveInfo, GraphQLScalarType, GraphQLScalarTypeConfig } from 'graphql';
import type { MeNode as MeRow, ChangeNode as ChangeNode, ChildNode as ChildRow, EnrolmentNode as EnrolmentRow, ResidencePatternNode as ResidencePatternRow, ResidenceProposalNode as ResidenceProposalRow, HandoverNode as HandoverRow, DishReturnedNode as DishReturnedRow, RuleSetVersionNode as RuleSetVersionNode, AppointmentNode as AppointmentRow, AuditEntryNode as AuditEntryRow, CalendarEntryNode as CalendarEntryRow, PlanNode as WeekPlanRow, BoxNode as BoxRow, BoxItemNode as BoxItemRow, BoxItemNode as BoxItemNoteRow, BoxItemNode as ItemHoldingRow, BatchNode as BatchRow, BatchFeedNode as BatchFeedRow, TaskNode as TaskRow, PrepSessionNode as PrepSessionRow, CarerTasksNode as CarerTasksRow, ApplianceUsesNode as ApplianceUsesRow, ApplianceUseNode as ApplianceUseRow, RotaSessionNode as RotaSessionRow, RotaProposalNode as RotaProposalRow, ProposedSessionNode as ProposedSessionRow, ProposedMinutesNode as ProposedMinutesRow, ShoppingLineNode as ShoppingLineRow, SpareUseNode as SpareUseRow, SpareDishNode as SpareDishRow, BoxCardNode as BoxCardRow, BoxPartNode as BoxPartRow, CautionNode as CautionRow, ConflictNode as ConflictRow, WeekInfeasibleNode as WeekInfeasibleRow, ClashNode as ClashRow, ClashMemberNode as ClashMemberRow, DishNotOfferedNode as DishNotOfferedRow, ShutOutNode as ExclusionRow, RuleFindingNode as RuleFindingRow, RuleObeyedNode as RuleObeyedRow, RuleNoticeNode as RuleNoticeRow, ExemptionNode as ExemptionNodeRow, WayOutNode as WayOutRow, WayOutChangeNode as WayOutChangeRow, PricedDishNode as PricedAlternativeRow, PricedDishNode as PriceOfChangeRow, NoWeekWithDishNode as NoWeekWithDishRow, NoSchoolNode as NoSchoolRow, WeekPayloadNode as WeekPayloadRow, LabelsUnreadNode as LabelsUnreadRow, BlockNode as BlockReasonRow, BoxVerdictNode as BoxVerdictRow, MendedBoxNode as MendedBoxRow, StillInUseNode as StillInUseRow, BoxPlaceNode as BoxPlaceRow, DisruptionNode as DisruptionRow, WeekDifferenceNode as WeekDifferenceRow, BoxDifferenceNode as BoxDifferenceRow, SessionDifferenceNode as SessionDifferenceRow, TaskDifferenceNode as TaskDifferenceRow } from './rows.js';
import type { PersonRow as PersonRow, HouseholdRow as HouseholdRow, HouseholdRow as KitchenRow, StockRow as StockRow, LeftoverRow as LeftoverRow, FreezerStockRow as FreezerStockRow, LabelCheckRow as LabelCheckRow, SchoolRow as SchoolRow, BreakRow as BreakRow, ProvisionRow as ProvisionRow, SchoolClassRow as SchoolClassRow } from '../database/household.js';
import type { InvitationRow as InvitationRow, InvitationOfferRow as InvitationOfferRow } from '../database/invitation.js';
import type { ResidenceRef as ResidencePayloadRow } from '../app/residence.js';
import type { HandoverRef as HandoverPayloadRow } from '../app/write-handover.js';
import type { ReturnedRef as ReturnedPayloadRow } from '../app/report-returned.js';
import type { RuleSetRow as RuleSetRow } from '../database/school.js';
import type { RuleImpact as RuleImpact } from '../app/count-rules.js';
import type { RuleSetCheck as CheckedDocument } from '../app/check-rule-set.js';
import type { DocumentDifference as DocumentDifference, RuleChange as ChangedRule } from '../domain/rules/document-difference.js';
import type { Rule as RuleRow } from '../../shared/rule-set.js';
import type { CalendarOffer as CalendarChangeRow } from '../app/load-calendar.js';
import type { Food as FoodRow, Base as BaseRow, Ingredient as DishIngredientRow } from '../../shared/catalogue.js';
import type { DerivedDish as DishRow, NutrientDerivation as NutrientDerivationRow, NutrientPart as NutrientPartRow, CostPart as CostPartRow } from '../domain/catalogue/derive.js';
import type { ProcessingClass as ProcessingClassRow } from '../domain/catalogue/processing.js';
import type { WeekRow as WeekRow, CertificateRow as PlanCertificateRow } from '../database/week.js';
import type { SessionPlan as SessionTimingRow, ReadyUse as ReadyUseRow, ItemPlan as MendedItemRow, ItemPlan as ItemDifferenceRow } from '../domain/week.js';
import type { ReminderRow as ReminderRow } from '../database/rota.js';
import type { Alternative as AlternativeRow } from '../domain/planner/alternatives.js';
import type { RuleOrigin as RuleOriginRow } from '../app/rule-origins.js';
import type { Compliance as ComplianceRow } from '../app/compliance.js';
import type { MendingOffer as MendingOfferRow } from '../app/mend-week.js';
import type { MissingFact as MissingFactRow } from '../domain/catalogue/what-is-missing.js';
import type { FeedAddressRow as FeedAddressRow } from '../database/feed.js';
import type { DisruptionOffer as DisruptionOfferRow, DisruptionRef as DisruptionPayloadRow } from '../app/report-disruption.js';
import type { BatchChange as BatchDifferenceRow, ShoppingChange as ShoppingDifferenceRow } from '../domain/week-difference.js';
import type { GraphqlContext } from './context.js';
export type Maybe<T> = T | null;
export type InputMaybe<T> = Maybe<T>;
export type Omit<T, K extends keyof T> = Pick<T, Exclude<keyof T, K>>;
export type RequireFields<T, K extends keyof T> = Omit<T, K> & { [P in K]-?: NonNullable<T[P]> };
/** All built-in and custom scalars, mapped to their actual values */
export type Scalars = {
  ID: { input: string; output: string; }
  String: { input: string; output: string; }
  Boolean: { input: boolean; output: boolean; }
  Int: { input: number; output: number; }
  Float: { input: number; output: number; }
  /** An instant, RFC 3339 with an offset: 2026-09-07T06:50:00+01:00. */
  DateTime: { input: Date; output: Date | string; }
  /** A calendar day without a zone, ISO 8601: 2026-09-07. */
  LocalDate: { input: string; output: string; }
  /** A wall-clock time to the minute, without a zone: 06:50. */
  LocalTime: { input: string; output: string; }
};

export type AcceptHomeInvitationInput = {
  /** The household the child is to live in too. */
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly token: Scalars['String']['input'];
};

export type AcceptHomeInvitationPayload = {
  readonly __typename?: 'AcceptHomeInvitationPayload';
  readonly child: Child;
  readonly household: Household;
};

export type AcceptHomeInvitationResult = AcceptHomeInvitationPayload | HouseholdNotFound | InvalidInput | InvitationClosed | InvitationNotFound | KeyReused | LivesHereAlready | LivesInTwoHomes | NotPermitted;

export type AcceptInvitationInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly token: Scalars['String']['input'];
};

export type AcceptInvitationResult = AlreadyCarer | HouseholdNotFound | HouseholdPayload | InvalidInput | InvitationClosed | InvitationNotFound | KeyReused;

export type AcceptRotaInput = {
  readonly from: Scalars['LocalDate']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** Its token. */
  readonly proposal: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
  readonly to: Scalars['LocalDate']['input'];
};

export type AcceptRotaResult = HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | ProposalMoved | RevisionPassed | RotaPayload;

export type AddSchoolClassInput = {
  /** In the order of the day, none within another. */
  readonly breaks: ReadonlyArray<ClassBreakInput>;
  readonly facility: Facility;
  readonly idempotencyKey: Scalars['String']['input'];
  readonly name: Scalars['String']['input'];
  readonly schoolId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type AddSchoolClassResult = InvalidInput | KeyReused | NotAppointed | RevisionPassed | SchoolNotFound | SchoolPayload;

export type AdoptRuleSetInput = {
  /** False ends it. */
  readonly adopted: Scalars['Boolean']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly ruleSetId: Scalars['ID']['input'];
  readonly schoolId: Scalars['ID']['input'];
};

export type AdoptRuleSetResult = InvalidInput | KeyReused | NotAppointed | NothingThere | SchoolNotFound | SchoolPayload;

export type AgeSpan = {
  readonly __typename?: 'AgeSpan';
  readonly fromYears?: Maybe<Scalars['Int']['output']>;
  /** Younger than this. */
  readonly underYears?: Maybe<Scalars['Int']['output']>;
};

export type AgreeWeekInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
  readonly weekId: Scalars['ID']['input'];
};

export type AgreeWeekResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | WeekAgreed | WeekPayload;

/** The child has another home, which has to ask for the same. */
export type AgreementNeeded = UserError & {
  readonly __typename?: 'AgreementNeeded';
  readonly message: Scalars['String']['output'];
};

export type AllergenSource = {
  readonly __typename?: 'AllergenSource';
  readonly allergen: Scalars['String']['output'];
  /** The foods themselves, or the rows they are bought as. */
  readonly foods: ReadonlyArray<Food>;
};

export type Allergy = {
  readonly __typename?: 'Allergy';
  readonly allergen?: Maybe<Scalars['String']['output']>;
  readonly avoid: Avoid;
  readonly foodKind?: Maybe<Scalars['String']['output']>;
  /** Whether this household has a record of its own; only that one can be taken back here. The stricter of two homes' records holds. */
  readonly recordedHere: Scalars['Boolean']['output'];
};

export type AllergyInput = {
  /** An allergen or a family of them (TREE_NUTS, GLUTEN_CEREALS, SHELLFISH). Give this or foodKind. */
  readonly allergen?: InputMaybe<Scalars['String']['input']>;
  readonly avoid: Avoid;
  /** One food: kiwi, chickpea. */
  readonly foodKind?: InputMaybe<Scalars['String']['input']>;
  /** Says that foodKind is meant although no food of the catalogue is of that kind: it shuts out nothing until one is. */
  readonly kindUnknown: Scalars['Boolean']['input'];
};

export type AllergyPayload = {
  readonly __typename?: 'AllergyPayload';
  readonly child: Child;
  readonly household: Household;
};

/** The person belongs to the household; the link was not used up. */
export type AlreadyCarer = UserError & {
  readonly __typename?: 'AlreadyCarer';
  readonly message: Scalars['String']['output'];
  readonly role: Role;
};

export type Alternative = {
  readonly __typename?: 'Alternative';
  readonly dish: Dish;
  readonly grams: Scalars['Float']['output'];
  readonly pieces?: Maybe<Scalars['Float']['output']>;
  /** Points the week would lose by it; lower is better. */
  readonly pointsMore: Scalars['Int']['output'];
};

export type AnswerResidenceChangeInput = {
  readonly accept: Scalars['Boolean']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly proposalId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type AnswerResidenceChangeResult = DayClosed | ForTheOtherHome | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | NothingThere | ProposalSettled | ResidencePayload | RevisionPassed;

/** Counts for every box of the weeks it touches that is not packed, until its last day is over. */
export type ApplianceBrokenInput = {
  /** Kind of equipment: OVEN. */
  readonly appliance: Scalars['String']['input'];
  readonly date: Scalars['LocalDate']['input'];
  readonly units: Scalars['Int']['input'];
  readonly until?: InputMaybe<Scalars['LocalDate']['input']>;
};

export type ApplianceUse = {
  readonly __typename?: 'ApplianceUse';
  readonly from: Scalars['LocalTime']['output'];
  readonly task: Task;
  /** May lie after the task's end: a mould stays in use while what is in it cools. */
  readonly until: Scalars['LocalTime']['output'];
};

export type ApplianceUses = {
  readonly __typename?: 'ApplianceUses';
  readonly kind: Scalars['String']['output'];
  /** Which of its kind, from 1. */
  readonly unit: Scalars['Int']['output'];
  readonly uses: ReadonlyArray<ApplianceUse>;
};

export type AppointInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly jurisdiction?: InputMaybe<Scalars['String']['input']>;
  /** Give this or jurisdiction. */
  readonly schoolId?: InputMaybe<Scalars['ID']['input']>;
  /** Subject of the person's token. */
  readonly subject: Scalars['String']['input'];
};

export type AppointResult = AppointmentsPayload | InvalidInput | KeyReused | NotAppointed | PersonNotFound | SchoolNotFound;

/** Somebody in charge of a school, or of a jurisdiction and all its schools. */
export type Appointment = {
  readonly __typename?: 'Appointment';
  /** Null: appointed to the school. */
  readonly jurisdiction?: Maybe<Scalars['String']['output']>;
  readonly person: Person;
  /** Null: appointed to the jurisdiction. */
  readonly school?: Maybe<School>;
  readonly since: Scalars['DateTime']['output'];
};

export type AppointmentsPayload = {
  readonly __typename?: 'AppointmentsPayload';
  /** Who administers the school or jurisdiction now; empty to somebody who dismissed themselves. */
  readonly appointments: ReadonlyArray<Appointment>;
};

export type AuditAction =
  /** A school took on a rule set of its jurisdiction. */
  | 'ADOPTED'
  | 'ADOPTION_ENDED'
  | 'APPOINTED'
  | 'CALENDAR_CHANGED'
  | 'DISMISSED'
  /** The effect of a rule set on agreed weeks was counted. */
  | 'IMPACT_COUNTED'
  | 'RULE_SET_LOADED'
  | 'RULE_SET_WITHDRAWN'
  /** Registered, or a class, its breaks or its facility changed. */
  | 'SCHOOL_CHANGED';

export type AuditConnection = {
  readonly __typename?: 'AuditConnection';
  readonly nodes: ReadonlyArray<AuditEntry>;
  readonly pageInfo: PageInfo;
};

export type AuditEntry = {
  readonly __typename?: 'AuditEntry';
  /** Who was appointed or dismissed. */
  readonly about?: Maybe<Person>;
  readonly action: AuditAction;
  readonly at: Scalars['DateTime']['output'];
  /** What changed, as a JSON object of keys, codes, dates and counts; never anything of a family's. */
  readonly details: Scalars['String']['output'];
  readonly jurisdiction?: Maybe<Scalars['String']['output']>;
  /** Who did it; null for the operator of the server, or for somebody who is gone. */
  readonly person?: Maybe<Person>;
  readonly school?: Maybe<School>;
};

/** How much a carer can give to sessions of one kind on one weekday. What is not listed they can, whatever it takes. */
export type Availability = {
  readonly __typename?: 'Availability';
  readonly kind: WindowKind;
  /** Hands-on minutes at most; 0: cannot help then. */
  readonly minutes: Scalars['Int']['output'];
  readonly person: Person;
  readonly weekday: Weekday;
};

export type AvailabilityInput = {
  readonly kind: WindowKind;
  /** 0 to 600; 0: cannot help then. */
  readonly minutes: Scalars['Int']['input'];
  readonly weekday: Weekday;
};

export type Avoid =
  /** Only as an ingredient. */
  | 'INGREDIENTS'
  /** May-contain is shut out too; labels are read before packing. */
  | 'TRACES';

/** Made once, used by many dishes and children. */
export type Base = {
  readonly __typename?: 'Base';
  readonly batchGrams: Scalars['Float']['output'];
  readonly fixedHandsOnMinutes: Scalars['Float']['output'];
  /** What goes into one batch. */
  readonly ingredients: ReadonlyArray<DishIngredient>;
  /** The day it is made counts as the first. */
  readonly keepsChilledDays: Scalars['Int']['output'];
  readonly keepsFrozenDays?: Maybe<Scalars['Int']['output']>;
  readonly key: Scalars['String']['output'];
  readonly kind: Scalars['String']['output'];
  readonly name: Scalars['String']['output'];
  readonly passiveMinutes: Scalars['Float']['output'];
  readonly perBatchHandsOnMinutes: Scalars['Float']['output'];
  /** Minutes it stands unwatched after that, beyond the session if need be, before anything can be made of it; null: none. */
  readonly restMinutes?: Maybe<Scalars['Int']['output']>;
  readonly steps: ReadonlyArray<Scalars['String']['output']>;
  readonly windows: ReadonlyArray<WindowKind>;
};

export type Batch = Node & {
  readonly __typename?: 'Batch';
  readonly base: Base;
  readonly batches: Scalars['Int']['output'];
  readonly feeds: ReadonlyArray<BatchFeed>;
  readonly grams: Scalars['Int']['output'];
  readonly id: Scalars['ID']['output'];
  readonly session: Scalars['String']['output'];
  readonly spareGrams: Scalars['Int']['output'];
  readonly state: WorkState;
};

export type BatchDifference = {
  readonly __typename?: 'BatchDifference';
  /** Null: no longer made. */
  readonly after?: Maybe<BatchSize>;
  readonly base: Base;
  /** Null: not made before. */
  readonly before?: Maybe<BatchSize>;
  readonly session: Scalars['String']['output'];
};

export type BatchFeed = {
  readonly __typename?: 'BatchFeed';
  readonly children: ReadonlyArray<Child>;
  readonly date: Scalars['LocalDate']['output'];
  readonly grams: Scalars['Float']['output'];
};

export type BatchSize = {
  readonly __typename?: 'BatchSize';
  readonly batches: Scalars['Int']['output'];
  readonly grams: Scalars['Int']['output'];
};

export type BlockKind =
  /** It contains what the child avoids. */
  | 'ALLERGEN'
  /** It is made with an appliance that cannot be used; the other home sees KITCHEN. */
  | 'APPLIANCE_BROKEN'
  /** The breaks of the day are not those it was planned for. */
  | 'BREAKS_CHANGED'
  | 'CHOKING'
  | 'DIET'
  /** The dish or something in it is no longer in the catalogue. */
  | 'DISH_UNKNOWN'
  /** Something it needs is not to be had; the other home sees KITCHEN. */
  | 'FOOD_MISSING'
  /** It would not stay cold, hot or good until the break. */
  | 'HOLDING'
  /** It contains what the kitchen keeps out. */
  | 'KEPT_OUT'
  /** Something in the kitchen that packs it; only that home sees what. */
  | 'KITCHEN'
  /** It is packed, and a label that counts now has not been read. */
  | 'LABEL_UNREAD'
  /** A label says it may contain what the child avoids. */
  | 'MAY_CONTAIN'
  /** No box is due from this home that day. */
  | 'NOT_DUE'
  /** It was to be heated at school, and nothing there heats it that day. */
  | 'NO_REHEATING'
  | 'NO_SCHOOL'
  /** Against a rule of the school or the family. */
  | 'RULE'
  /** A rule that cannot be judged yet lets nothing through. */
  | 'RULE_NOT_JUDGED'
  /** The morning is too short for it; the other home sees KITCHEN. */
  | 'SHORT_MORNING';

/** Why a box is blocked. Both homes of the child see it; what the packing kitchen keeps out or read on labels stays there. */
export type BlockReason = {
  readonly __typename?: 'BlockReason';
  /** What the child avoids, or the kitchen keeps out. */
  readonly allergen?: Maybe<Scalars['String']['output']>;
  /** Null where it is not about one dish. */
  readonly dish?: Maybe<Dish>;
  readonly kind: BlockKind;
  readonly text: Scalars['String']['output'];
  /** Where a rule of a school or the family blocks it. */
  readonly whoSaysSo?: Maybe<RuleOrigin>;
};

/** What leaves the house with a child on a school day. */
export type Box = Node & {
  readonly __typename?: 'Box';
  /** Empty unless it is BLOCKED. */
  readonly blockedBecause: ReadonlyArray<BlockReason>;
  /** Everything for whoever packs it; null when the child's other home does. */
  readonly card?: Maybe<BoxCard>;
  readonly child: Child;
  /** How it keeps them: what is asked of the box, and of the days that the same home packs with it. Both homes may ask. */
  readonly compliance: Compliance;
  readonly date: Scalars['LocalDate']['output'];
  readonly id: Scalars['ID']['output'];
  readonly items: ReadonlyArray<BoxItem>;
  readonly packedAt?: Maybe<Scalars['DateTime']['output']>;
  /** How it leaves; null when the child's other home packs it. */
  readonly packing?: Maybe<BoxPacking>;
  readonly state: BoxState;
};

/** The box no longer passes; replan the week first. */
export type BoxBlocked = UserError & {
  readonly __typename?: 'BoxBlocked';
  readonly message: Scalars['String']['output'];
};

/** One box as it is packed. */
export type BoxCard = {
  readonly __typename?: 'BoxCard';
  /** Null when the figure of an item is missing. */
  readonly carbohydrateGrams?: Maybe<Scalars['Float']['output']>;
  /** What to watch with this box and no other; how the flask is heated is here, how a food is cut is with its item. */
  readonly cautions: ReadonlyArray<Scalars['String']['output']>;
  /** Frozen, in an insulated bag. */
  readonly coldSources: Scalars['Int']['output'];
  readonly cutlery: ReadonlyArray<Scalars['String']['output']>;
  readonly energyKcal: Scalars['Float']['output'];
  readonly flask: Scalars['Boolean']['output'];
  /** Read and clear before it is packed. */
  readonly labels: ReadonlyArray<Food>;
  readonly leaveAt: Scalars['LocalTime']['output'];
  /** The whole card as lines of at most 48 letters. */
  readonly lines: ReadonlyArray<Scalars['String']['output']>;
  /** When it is packed and by whom; null when it is packed already. */
  readonly packing?: Maybe<PackingTime>;
  /** Compartments in their order, the flask last; those that stay empty are left out. */
  readonly parts: ReadonlyArray<BoxPart>;
};

export type BoxCheck = {
  readonly __typename?: 'BoxCheck';
  /** What the child avoids and finds in it, and what this check does not look at. */
  readonly cautions: ReadonlyArray<Scalars['String']['output']>;
  readonly compliance: Compliance;
};

/** Give dish or food. */
export type BoxCheckItemInput = {
  readonly breakKey: Scalars['String']['input'];
  /** Key of a dish. */
  readonly dish?: InputMaybe<Scalars['String']['input']>;
  /** Key of a food that is put in as it is. */
  readonly food?: InputMaybe<Scalars['String']['input']>;
  /** How the food is served: WHOLE, SLICED_THIN and the like. */
  readonly form: Scalars['String']['input'];
  readonly grams: Scalars['Float']['input'];
  readonly slot: Slot;
};

export type BoxCheckResult = BoxCheck | ChildNotFound | DishUnknown | HouseholdNotFound | InvalidInput | OutsideTerm;

/** The box is packed or eaten; it does not move. */
export type BoxClosed = UserError & {
  readonly __typename?: 'BoxClosed';
  readonly message: Scalars['String']['output'];
  readonly state: BoxState;
};

export type BoxDifference = {
  readonly __typename?: 'BoxDifference';
  /** Empty: the box falls away. */
  readonly after: ReadonlyArray<ItemDifference>;
  /** Empty: a box that was not planned before. */
  readonly before: ReadonlyArray<ItemDifference>;
  readonly child: Child;
  readonly date: Scalars['LocalDate']['output'];
};

export type BoxItem = Node & {
  readonly __typename?: 'BoxItem';
  readonly allergens: ReadonlyArray<Scalars['String']['output']>;
  /** Rules that ask for such an item: that there be some of it, or nothing else at its break. Empty when none does. */
  readonly askedForBy: ReadonlyArray<RuleOrigin>;
  readonly breakKey: Scalars['String']['output'];
  /** How much of it came back; null until either home says. Who said it is not kept. */
  readonly cameBack?: Maybe<CameBack>;
  /** Null when an ingredient's figure is missing. */
  readonly carbohydrateGrams?: Maybe<Scalars['Float']['output']>;
  readonly cuts: ReadonlyArray<Cut>;
  readonly dish: Dish;
  readonly energyKcal: Scalars['Float']['output'];
  readonly grams: Scalars['Float']['output'];
  /** CHILLED, FLASK, AMBIENT, NOT_CONTROLLED or REHEATED_AT_SCHOOL. */
  readonly holdingCase: Scalars['String']['output'];
  /** What the holding model expects from home to the end of the break, a point every quarter of an hour, worked out when asked. Empty where the food needs no control; null for the child's other home. */
  readonly holdingCurve?: Maybe<ReadonlyArray<HoldingPoint>>;
  readonly id: Scalars['ID']['output'];
  /** Foods whose label must be read and clear before the box is packed; null for the child's other home. */
  readonly labelsToRead?: Maybe<ReadonlyArray<Food>>;
  /** Null for the child's other home. */
  readonly note?: Maybe<BoxItemNote>;
  readonly pieces?: Maybe<Scalars['Float']['output']>;
  readonly pinned: Scalars['Boolean']['output'];
  /** Counts items of the same slot in a break, from 0. */
  readonly place: Scalars['Int']['output'];
  /** The best other dishes for this place, each with what it would cost: the week was planned again with it there. At most five; null for the child's other home. Runs searches, of which one operation may begin four. */
  readonly pricedAlternatives?: Maybe<ReadonlyArray<PricedAlternative>>;
  readonly served: ServedWarmth;
  readonly slot: Slot;
};


export type BoxItemPricedAlternativesArgs = {
  first: Scalars['Int']['input'];
};

export type BoxItemNote = {
  readonly __typename?: 'BoxItemNote';
  /** Which compartment of the box, from 0; -1 is the flask. */
  readonly compartment: Scalars['Int']['output'];
  readonly holding: ItemHolding;
  readonly holdingLimitMinutes: Scalars['Int']['output'];
  /** Minutes from leaving home to the end of the break. */
  readonly holdingMinutes: Scalars['Int']['output'];
  readonly why: ReadonlyArray<Scalars['String']['output']>;
};

export type BoxKitPayload = {
  readonly __typename?: 'BoxKitPayload';
  readonly child: Child;
  readonly household: Household;
};

export type BoxPacking = {
  readonly __typename?: 'BoxPacking';
  readonly coldSources: Scalars['Int']['output'];
  readonly cutlery: ReadonlyArray<Scalars['String']['output']>;
  readonly flask: Scalars['Boolean']['output'];
  readonly leaveAt: Scalars['LocalTime']['output'];
  /** Who packed it; null until then. */
  readonly packedBy?: Maybe<Person>;
};

/** What lies together. Wet food lies where nothing leaks and never beside dry. */
export type BoxPart = {
  readonly __typename?: 'BoxPart';
  /** From 1; null for the flask. */
  readonly compartment?: Maybe<Scalars['Int']['output']>;
  /** Those for the earlier break first. */
  readonly items: ReadonlyArray<BoxItem>;
  readonly leakProof: Scalars['Boolean']['output'];
  /** Null for the flask, and when the box on record has changed since. */
  readonly ml?: Maybe<Scalars['Int']['output']>;
};

export type BoxPlace = {
  readonly __typename?: 'BoxPlace';
  readonly child: Child;
  readonly date: Scalars['LocalDate']['output'];
};

export type BoxState =
  /** Something changed and the box no longer passes; replan before packing. */
  | 'BLOCKED'
  | 'EATEN'
  | 'PACKED'
  | 'PLANNED';

/** A box whose verdict has just changed. */
export type BoxVerdict = {
  readonly __typename?: 'BoxVerdict';
  readonly child: Child;
  readonly date: Scalars['LocalDate']['output'];
  /** Empty when it passes again. */
  readonly reasons: ReadonlyArray<BlockReason>;
  readonly state: BoxState;
};

export type BreakNeeds = {
  readonly __typename?: 'BreakNeeds';
  readonly breakKey: Scalars['String']['output'];
  /** Before appetite. */
  readonly energyKcal: Scalars['Int']['output'];
  /** Of it given by the school. */
  readonly givenKcal: Scalars['Int']['output'];
  /** Of the day's energy, 0 to 1. */
  readonly share: Scalars['Float']['output'];
  /** The school, or where our usual share comes from. */
  readonly source: Scalars['String']['output'];
};

/** What loading a calendar file would do now. Nothing is stored. */
export type CalendarChange = {
  readonly __typename?: 'CalendarChange';
  readonly added: ReadonlyArray<CalendarEntry>;
  readonly changed: ReadonlyArray<CalendarEntryChange>;
  /** Loaded from a file before, and not in this one. */
  readonly removed: ReadonlyArray<CalendarEntry>;
  /** The school's revision, to load the file with. */
  readonly seenRevision: Scalars['Int']['output'];
  /** In the file, but left out: what was set by hand stands there. */
  readonly setByHand: ReadonlyArray<CalendarEntry>;
  readonly unchanged: Scalars['Int']['output'];
  /** Would be loaded all the same; somebody should look at it. */
  readonly warnings: ReadonlyArray<DocumentIssue>;
};

export type CalendarChangeResult = CalendarChange | DocumentRefused | NotAppointed | SchoolNotFound;

/** Something of a school's calendar; days in a row that say the same are one entry. */
export type CalendarEntry = {
  readonly __typename?: 'CalendarEntry';
  /** For an early finish, on the school's clock: breaks that start at or after it fall away. */
  readonly endsAt?: Maybe<Scalars['LocalTime']['output']>;
  readonly firstDay: Scalars['LocalDate']['output'];
  readonly kind: CalendarKind;
  /** The last one itself. */
  readonly lastDay: Scalars['LocalDate']['output'];
  /** Null: the whole school. */
  readonly schoolClass?: Maybe<SchoolClass>;
  readonly title: Scalars['String']['output'];
};

export type CalendarEntryChange = {
  readonly __typename?: 'CalendarEntryChange';
  readonly after: CalendarEntry;
  readonly before: CalendarEntry;
};

export type CalendarKind =
  | 'EARLY_FINISH'
  | 'HOLIDAY'
  | 'TERM'
  | 'TRIP';

export type CameBack =
  /** Nothing was eaten. */
  | 'ALL'
  /** Everything was eaten. */
  | 'NONE'
  | 'SOME'
  /** Given to somebody else, or exchanged. */
  | 'TRADED';

/** A person in their role in one household. */
export type Carer = {
  readonly __typename?: 'Carer';
  readonly person: Person;
  readonly role: Role;
  readonly since: Scalars['DateTime']['output'];
};

export type CarerMinutes = {
  readonly __typename?: 'CarerMinutes';
  /** Estimates of what is taken and not done, in sessions from asOf on. */
  readonly minutesAhead: Scalars['Float']['output'];
  readonly minutesDone: Scalars['Float']['output'];
  readonly person: Person;
  /** Of all minutes done; 0 where nobody did any. */
  readonly sharePercent: Scalars['Float']['output'];
};

/** No such carer in this household. */
export type CarerNotFound = UserError & {
  readonly __typename?: 'CarerNotFound';
  readonly message: Scalars['String']['output'];
};

export type CarerTasks = {
  readonly __typename?: 'CarerTasks';
  /** Which pair of hands, from 1. */
  readonly carer: Scalars['Int']['output'];
  readonly handsOnMinutes: Scalars['Float']['output'];
  readonly tasks: ReadonlyArray<Task>;
};

export type Caution = {
  readonly __typename?: 'Caution';
  readonly child?: Maybe<Child>;
  readonly date?: Maybe<Scalars['LocalDate']['output']>;
  readonly kind: Scalars['String']['output'];
  readonly text: Scalars['String']['output'];
  /** Of advice that is not kept and of a rule that rests; null otherwise. */
  readonly whoSaysSo?: Maybe<RuleOrigin>;
};

/** One entry of a household's log. Live events, catching up and the log are the same list. */
export type Change = {
  readonly __typename?: 'Change';
  readonly at: Scalars['DateTime']['output'];
  /** As it is now; null where the entry is about something else, or it is gone. */
  readonly box?: Maybe<Box>;
  /** Null: the child's other home, a school, the server itself, or somebody who has left. */
  readonly by?: Maybe<Person>;
  /** Null too when the child is no longer of this household. */
  readonly child?: Maybe<Child>;
  /** Where this entry stands in the list: send it as `after` to be told of everything since. */
  readonly cursor: Scalars['String']['output'];
  readonly date?: Maybe<Scalars['LocalDate']['output']>;
  /** What it said before and after; empty where that has been erased or has no place in a log. */
  readonly fields: ReadonlyArray<ChangedField>;
  readonly kind: ChangeKind;
  /** As it is now; null where the entry is about something else, or it is gone. */
  readonly shoppingLine?: Maybe<ShoppingLine>;
  /** ID of what changed, also when it is gone. */
  readonly subjectId: Scalars['ID']['output'];
  /** As it is now; null where the entry is about something else, or it is gone. */
  readonly task?: Maybe<Task>;
  readonly verb: ChangeVerb;
  /** As it is now; null where the entry is about something else, or it is gone. */
  readonly week?: Maybe<Week>;
};

export type ChangeConnection = {
  readonly __typename?: 'ChangeConnection';
  /** The newest first. */
  readonly nodes: ReadonlyArray<Change>;
  readonly pageInfo: PageInfo;
};

/** What an entry of a household's log is about. */
export type ChangeKind =
  | 'ALLERGY'
  /** When a carer can help. */
  | 'AVAILABILITY'
  /** A child's size; never what it is. */
  | 'BODY'
  /** One box: packed, eaten, blocked, or passing again. */
  | 'BOX'
  /** What the child's other home packs is not what it was: read the boxes anew. */
  | 'BOXES'
  | 'BOX_KIT'
  /** What was reported to have come back from a day's box. */
  | 'CAME_BACK'
  | 'CARER'
  | 'CHILD'
  | 'DISRUPTION'
  | 'ENROLMENT'
  | 'EXEMPTION'
  | 'FREEZER'
  /** The note of the week that starts on the date. */
  | 'HANDOVER'
  /** A household became or ceased to be a home of the child. */
  | 'HOME'
  | 'HOT_DAYS'
  | 'INVITATION'
  /** Name, time zone, allergens kept out, equipment. */
  | 'KITCHEN'
  | 'LABELS'
  | 'LEAVE_TIMES'
  | 'LEFTOVERS'
  | 'OWN_DISH'
  | 'OWN_FOOD'
  | 'PIN'
  /** The week has another plan, or it was agreed: read it anew. */
  | 'PLAN'
  | 'PREP_TIMES'
  /** A house rule rests for a day. */
  | 'RELAXATION'
  /** Where the child wakes: proposed, accepted, declined or taken back. */
  | 'RESIDENCE'
  /** Who is on for which session. */
  | 'ROTA'
  /** A child's own rules. */
  | 'RULES'
  /** Days or facilities of a child's school. */
  | 'SCHOOL'
  | 'SCHOOL_MEALS'
  /** What a child's school asks of boxes. */
  | 'SCHOOL_RULES'
  /** A line of the shopping list. */
  | 'SHOPPING'
  | 'STOCK'
  | 'TASK';

export type ChangeRoleInput = {
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly personId: Scalars['ID']['input'];
  readonly role: Role;
};

export type ChangeRoleResult = CarerNotFound | HouseholdNotFound | HouseholdPayload | InvalidInput | KeyReused | LastCoordinator | NotPermitted;

export type ChangeSchoolClassInput = {
  /** In place of all it had, in the order of the day, none within another. */
  readonly breaks?: InputMaybe<ReadonlyArray<ClassBreakInput>>;
  readonly idempotencyKey: Scalars['String']['input'];
  readonly name?: InputMaybe<Scalars['String']['input']>;
  readonly schoolClassId: Scalars['ID']['input'];
  /** The school's revision. */
  readonly seenRevision: Scalars['Int']['input'];
};

export type ChangeSchoolClassResult = InvalidInput | KeyReused | NotAppointed | RevisionPassed | SchoolNotFound | SchoolPayload;

/** What happened to it. */
export type ChangeVerb =
  | 'ADDED'
  | 'CHANGED'
  /** It is gone: take it out of what you show. */
  | 'REMOVED';

/** One fact. Values are text as in JSON, without quotes around plain text; of a list each row is one, named by what it is about. */
export type ChangedField = {
  readonly __typename?: 'ChangedField';
  /** Null: it is gone. */
  readonly after?: Maybe<Scalars['String']['output']>;
  /** Null: it was not there. */
  readonly before?: Maybe<Scalars['String']['output']>;
  readonly name: Scalars['String']['output'];
};

export type Child = Node & {
  readonly __typename?: 'Child';
  /** Whole years on the day. */
  readonly ageYears: Scalars['Int']['output'];
  readonly allergies: ReadonlyArray<Allergy>;
  /** 1 is usual; portions are scaled by it. */
  readonly appetite: Scalars['Float']['output'];
  /** Boxes of these days from every home of the child, at most 62 days. */
  readonly boxes: ReadonlyArray<Box>;
  /** What the day asks for, by published reference values. An estimate for planning, not dietetic advice. */
  readonly dailyNeeds: DailyNeeds;
  readonly dateOfBirth: Scalars['LocalDate']['output'];
  readonly diets: ReadonlyArray<Scalars['String']['output']>;
  /** Dish keys or food kinds. */
  readonly dislikes: ReadonlyArray<Scalars['String']['output']>;
  readonly enrolments: ReadonlyArray<Enrolment>;
  /** Homes that ask for this child to be erased. Where all of them do, within 30 days, it is done. */
  readonly erasureAsked: ReadonlyArray<ErasureAsked>;
  /** Rules that rest for the child on a clinician's note. */
  readonly exemptions: ReadonlyArray<Exemption>;
  readonly id: Scalars['ID']['output'];
  readonly minutesToEat: Scalars['Int']['output'];
  readonly name: Scalars['String']['output'];
  /** The family's own rule sets, copies of what a school asks for and dropped ones among them. Both homes see them; no administrator does. */
  readonly ownRules: ReadonlyArray<RuleSet>;
  /** Food or milk the school gives. Boxes are planned for the rest of the day's need. */
  readonly provisions: ReadonlyArray<SchoolProvision>;
  /** Where the child wakes, at most 62 days. */
  readonly residenceDays: ReadonlyArray<ResidenceDay>;
  /** The pattern that holds on a day; null where none is agreed. */
  readonly residencePattern?: Maybe<ResidencePattern>;
  /** Proposals that nobody has answered, of either home, the oldest first. */
  readonly residenceProposals: ReadonlyArray<ResidenceProposal>;
  /** May a dish, or a food as it comes, stand in the box this household packs for that day; and if not, why not. Give one of the two keys. */
  readonly verdicts: VerdictsResult;
};


export type ChildAgeYearsArgs = {
  on: Scalars['LocalDate']['input'];
};


export type ChildBoxesArgs = {
  from: Scalars['LocalDate']['input'];
  to: Scalars['LocalDate']['input'];
};


export type ChildDailyNeedsArgs = {
  on: Scalars['LocalDate']['input'];
};


export type ChildResidenceDaysArgs = {
  from: Scalars['LocalDate']['input'];
  to: Scalars['LocalDate']['input'];
};


export type ChildResidencePatternArgs = {
  on: Scalars['LocalDate']['input'];
};


export type ChildVerdictsArgs = {
  date: Scalars['LocalDate']['input'];
  dish?: InputMaybe<Scalars['String']['input']>;
  food?: InputMaybe<Scalars['String']['input']>;
};

export type ChildDaysInput = {
  readonly childId: Scalars['ID']['input'];
  readonly date: Scalars['LocalDate']['input'];
  readonly reason: Scalars['String']['input'];
  /** The last day; absent: the one day. */
  readonly until?: InputMaybe<Scalars['LocalDate']['input']>;
};

/** No such child, or not one of yours. */
export type ChildNotFound = UserError & {
  readonly __typename?: 'ChildNotFound';
  readonly message: Scalars['String']['output'];
};

/** A shape or texture that small children choke on. */
export type ChokingHazard = {
  readonly __typename?: 'ChokingHazard';
  readonly class: Scalars['String']['output'];
  readonly cut: Scalars['String']['output'];
  readonly food: Scalars['String']['output'];
  /** No piece larger than this; null where the form decides and not the size. */
  readonly largestPieceMm?: Maybe<Scalars['Int']['output']>;
  /** No cut makes it safe below that age. */
  readonly never: Scalars['Boolean']['output'];
  readonly source: Scalars['String']['output'];
  /** Holds on days when the child is younger. */
  readonly underAgeYears: Scalars['Int']['output'];
};

export type Clash = {
  readonly __typename?: 'Clash';
  /** False only when the search for a smaller set ran out of tries. */
  readonly irreducible: Scalars['Boolean']['output'];
  readonly members: ReadonlyArray<ClashMember>;
  readonly proof: ClashProof;
};

export type ClashMember = {
  readonly __typename?: 'ClashMember';
  readonly child?: Maybe<Child>;
  readonly date?: Maybe<Scalars['LocalDate']['output']>;
  /** True for safety, a child's needs, and rules of school and family: nothing of that is ever offered as a way out. */
  readonly fixed: Scalars['Boolean']['output'];
  /** BOX, PIN, ENERGY, NUTRIENT, BOX_SPACE, BOX_REPEATS, RULE, HOUSE_RULE, SESSION, EQUIPMENT, EQUIPMENT_TIME, REFRIGERATOR, OUT_OF, HOLDING, ALLERGY, KEPT_OUT, DIET or CHOKING. */
  readonly kind: Scalars['String']['output'];
  /** Key of the session. */
  readonly session?: Maybe<Scalars['String']['output']>;
  readonly text: Scalars['String']['output'];
  /** Of a RULE of a school or the family; null otherwise. */
  readonly whoSaysSo?: Maybe<RuleOrigin>;
};

export type ClashProof =
  /** Out of reach on its face, or every choice was tried. */
  | 'CERTAIN'
  /** A search of a fixed length found no week; it cannot prove that there is none. */
  | 'SEARCHED';

export type ClassBreak = {
  readonly __typename?: 'ClassBreak';
  /** Part of the day's energy, 0 to 1. */
  readonly energyShare: Scalars['Float']['output'];
  /** The school, or where our usual share comes from. */
  readonly energyShareSource: Scalars['String']['output'];
  readonly key: Scalars['String']['output'];
  readonly minutes: Scalars['Int']['output'];
  readonly name: Scalars['String']['output'];
  readonly slots: ReadonlyArray<Slot>;
  readonly startsAt: Scalars['LocalTime']['output'];
};

export type ClassBreakInput = {
  /** Part of the day's energy, 0 to 1; absent: our usual share. */
  readonly energyShare?: InputMaybe<Scalars['Float']['input']>;
  /** Lower-case words joined by hyphens, once in a class: morning-break. */
  readonly key: Scalars['String']['input'];
  /** 5 to 120. */
  readonly minutes: Scalars['Int']['input'];
  readonly name: Scalars['String']['input'];
  /** What may be eaten then. */
  readonly slots: ReadonlyArray<Slot>;
  /** On the school's clock. */
  readonly startsAt: Scalars['LocalTime']['input'];
};

export type ClimateRegion =
  | 'NORTH_TEMPERATE'
  | 'SOUTH_TEMPERATE'
  | 'TROPICAL';

export type CloseFeedInput = {
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
};

export type CloseFeedPayload = {
  readonly __typename?: 'CloseFeedPayload';
  /** False: there was none. */
  readonly wasOpen: Scalars['Boolean']['output'];
};

/** Select `... on UserError` as well: members may be added. */
export type CloseFeedResult = CloseFeedPayload | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted;

export type CompartmentInput = {
  readonly leakProof: Scalars['Boolean']['input'];
  /** 50 to 2000. */
  readonly ml: Scalars['Int']['input'];
};

/** Every rule that may bind the boxes, as the rules are today. Rules only: safety, holding and what a child avoids are looked at before a box is planned, and by Child.verdicts. */
export type Compliance = {
  readonly __typename?: 'Compliance';
  /** Days judged together: a week's limits hold over these. */
  readonly dates: ReadonlyArray<Scalars['LocalDate']['output']>;
  /** By child, rule set and rule; those in one state when given. */
  readonly rules: ReadonlyArray<RuleFinding>;
  readonly totals: ComplianceTotals;
};


/** Every rule that may bind the boxes, as the rules are today. Rules only: safety, holding and what a child avoids are looked at before a box is planned, and by Child.verdicts. */
export type ComplianceRulesArgs = {
  state?: InputMaybe<RuleState>;
};

export type ComplianceTotals = {
  readonly __typename?: 'ComplianceTotals';
  readonly met: Scalars['Int']['output'];
  readonly notApplicable: Scalars['Int']['output'];
  readonly notKnown: Scalars['Int']['output'];
  readonly notMet: Scalars['Int']['output'];
};

/** Nothing has changed yet. Send the same again with the token, and a new idempotency key, to go through with it. */
export type ConfirmationNeeded = UserError & {
  readonly __typename?: 'ConfirmationNeeded';
  readonly expiresAt: Scalars['DateTime']['output'];
  readonly message: Scalars['String']['output'];
  readonly token: Scalars['String']['output'];
};

export type Conflict = {
  readonly __typename?: 'Conflict';
  readonly child?: Maybe<Child>;
  readonly date?: Maybe<Scalars['LocalDate']['output']>;
  readonly kind: Scalars['String']['output'];
  readonly session?: Maybe<Scalars['String']['output']>;
  readonly text: Scalars['String']['output'];
  readonly wayOut: Scalars['String']['output'];
  /** Where it is a rule of a school or the family; null otherwise. */
  readonly whoSaysSo?: Maybe<RuleOrigin>;
};

export type CostPart = {
  readonly __typename?: 'CostPart';
  readonly base?: Maybe<Base>;
  /** What is bought for it: the raw food of a cooked one. */
  readonly bought: Food;
  /** As sold, refuse and cooking losses counted. */
  readonly boughtGrams: Scalars['Float']['output'];
  /** Minor units with fractions. */
  readonly costMinor: Scalars['Float']['output'];
  readonly food: Food;
};

export type CountRuleSetComplianceInput = {
  readonly from: Scalars['LocalDate']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly ruleSetId: Scalars['ID']['input'];
  /** Last day, at most 400 days later. */
  readonly until: Scalars['LocalDate']['input'];
};

export type CountRuleSetComplianceResult = InvalidInput | KeyReused | NotAppointed | NothingThere | RuleSetCounts;

export type CountRuleSetImpactInput = {
  /** JSON or YAML text in the format noonpail-rule-set/1, at most 200 kB over HTTP. */
  readonly document: Scalars['String']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** Instead of a school: the jurisdiction whose schools it is for. */
  readonly jurisdiction?: InputMaybe<Scalars['String']['input']>;
  readonly schoolClassId?: InputMaybe<Scalars['ID']['input']>;
  /** The school it is for; for a class, give schoolClassId as well. */
  readonly schoolId?: InputMaybe<Scalars['ID']['input']>;
};

export type CountRuleSetImpactResult = DocumentRefused | InvalidInput | KeyReused | NotAppointed | RuleSetCounts | SchoolNotFound;

export type CreateChildInput = {
  /** INACTIVE, LOW_ACTIVE, ACTIVE or VERY_ACTIVE. */
  readonly activity: Scalars['String']['input'];
  readonly allergies: ReadonlyArray<AllergyInput>;
  /** 0.5 to 2; 1 is usual. */
  readonly appetite: Scalars['Float']['input'];
  readonly coldSources: Scalars['Int']['input'];
  readonly compartments: ReadonlyArray<CompartmentInput>;
  readonly dateOfBirth: Scalars['LocalDate']['input'];
  readonly diets: ReadonlyArray<Scalars['String']['input']>;
  /** Dish keys or food kinds. */
  readonly dislikes: ReadonlyArray<Scalars['String']['input']>;
  readonly flask: Scalars['Boolean']['input'];
  readonly heightCm?: InputMaybe<Scalars['Float']['input']>;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly insulated: Scalars['Boolean']['input'];
  /** When the child leaves home on a school day. */
  readonly leaveAt: Scalars['LocalTime']['input'];
  readonly minutesToEat: Scalars['Int']['input'];
  readonly name: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
  /** FEMALE or MALE, only for the energy estimate; stays with this household. */
  readonly sex?: InputMaybe<Scalars['String']['input']>;
  readonly weightKg?: InputMaybe<Scalars['Float']['input']>;
};

export type CreateChildPayload = {
  readonly __typename?: 'CreateChildPayload';
  readonly child: Child;
  readonly household: Household;
};

export type CreateChildResult = CreateChildPayload | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | RevisionPassed;

export type CreateHouseholdInput = {
  readonly currency: Scalars['String']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly name: Scalars['String']['input'];
  readonly timeZone: Scalars['String']['input'];
};

export type CreateHouseholdPayload = {
  readonly __typename?: 'CreateHouseholdPayload';
  readonly household: Household;
};

export type CreateHouseholdResult = CreateHouseholdPayload | HouseholdNotFound | InvalidInput | KeyReused;

/** What is made first, and on what. Washing and separate boards lower the risk; they do not take it away. */
export type CrossContact = {
  readonly __typename?: 'CrossContact';
  readonly order: CrossContactOrder;
  /** The same as a sentence for the cook. */
  readonly text: Scalars['String']['output'];
};

export type CrossContactOrder =
  /** It handles something avoided: on boards and with knives of its own. */
  | 'APART'
  /** Something avoided was on the worktop before it: boards, knives and hands are washed first. */
  | 'CLEAN_FIRST'
  /** Before anything avoided comes out. */
  | 'SAFE_FIRST';

export type Cut = {
  readonly __typename?: 'Cut';
  readonly cut: Scalars['String']['output'];
  readonly food: Scalars['String']['output'];
  readonly source: Scalars['String']['output'];
};

export type Cutlery =
  | 'CHOPSTICKS'
  | 'FORK'
  | 'NONE'
  | 'SPOON';

export type DailyNeeds = {
  readonly __typename?: 'DailyNeeds';
  readonly addedSugarMaxGrams: Scalars['Float']['output'];
  /** In one meal. */
  readonly addedSugarMealMaxGrams: Scalars['Float']['output'];
  /** Each break of the child's class that day, with its part of the day. Empty without an enrolment. */
  readonly breaks: ReadonlyArray<BreakNeeds>;
  readonly calciumMg: Scalars['Float']['output'];
  readonly energyKcal: Scalars['Int']['output'];
  /** NASEM_2023 or IOM_2005, as the household chose; DGA_TABLE, by age and sex, for ages the equations are not for. */
  readonly energyMethod: Scalars['String']['output'];
  readonly fibreGrams: Scalars['Float']['output'];
  /** Dietary folate equivalents. */
  readonly folateDfeUg: Scalars['Float']['output'];
  readonly freeSugarMaxGrams: Scalars['Float']['output'];
  /** What the energy was worked out from. Body size stays with the home that entered it; another home sees medians of the age. */
  readonly inputs: NeedsInputs;
  readonly ironMg: Scalars['Float']['output'];
  readonly proteinGrams: Scalars['Float']['output'];
  readonly saturatedFatMaxGrams: Scalars['Float']['output'];
  /** Intake is better reduced above it. */
  readonly sodiumMaxMg: Scalars['Float']['output'];
  /** Where each figure was published. */
  readonly sources: ReadonlyArray<NeedSource>;
  /** The most of a day that is thought to harm almost nobody; no goal and no limit on one box. */
  readonly upperLevels: ReadonlyArray<UpperLevel>;
  readonly vitaminARaeUg: Scalars['Float']['output'];
  readonly vitaminCMg: Scalars['Float']['output'];
  readonly zincMg: Scalars['Float']['output'];
};

/** A day that does not move: it is over, or its box is packed or eaten. Nothing was changed. */
export type DayClosed = UserError & {
  readonly __typename?: 'DayClosed';
  /** Null where the day is over. */
  readonly boxState?: Maybe<BoxState>;
  readonly date: Scalars['LocalDate']['output'];
  readonly message: Scalars['String']['output'];
};

export type DayReturned = {
  readonly __typename?: 'DayReturned';
  readonly cameBack: CameBack;
  readonly date: Scalars['LocalDate']['output'];
};

export type Dish = Node & {
  readonly __typename?: 'Dish';
  /** Which foods bring each allergen. */
  readonly allergenSources: ReadonlyArray<AllergenSource>;
  /** Derived from every ingredient, bases included. */
  readonly allergens: ReadonlyArray<Scalars['String']['output']>;
  readonly bases: ReadonlyArray<DishBase>;
  /** Carbohydrate of the reference portion; null when an ingredient's figure is missing, never a part of the sum. */
  readonly carbohydrateGrams?: Maybe<Scalars['Float']['output']>;
  /** The same for one piece; null as well when the dish is not counted in pieces. */
  readonly carbohydrateGramsPerPiece?: Maybe<Scalars['Float']['output']>;
  /**
   * Whole minor units; the parts behind it have fractions.
   * @deprecated Use portionCostMinor: here an own dish of a child's other home, whose prices are theirs, counts 0.
   */
  readonly costMinor: Scalars['Int']['output'];
  readonly costParts: ReadonlyArray<CostPart>;
  readonly cuisine: Scalars['String']['output'];
  readonly cutlery: Cutlery;
  /** How one figure came about, to be added up by hand. */
  readonly derivation: NutrientDerivation;
  readonly freeSugarGrams: Scalars['Float']['output'];
  readonly goodForHours: Scalars['Float']['output'];
  readonly hazards: ReadonlyArray<ChokingHazard>;
  readonly id: Scalars['ID']['output'];
  readonly ingredients: ReadonlyArray<DishIngredient>;
  readonly key: Scalars['String']['output'];
  /** Packaged ingredients: their labels may say more. */
  readonly labelsToRead: ReadonlyArray<Food>;
  /** Figures the composition table lacks for an ingredient; a maximum that needs one is not taken as met. */
  readonly missing: ReadonlyArray<MissingFigure>;
  readonly name: Scalars['String']['output'];
  /** Derived, for the reference portion; sums of what is known. */
  readonly nutrients: ReadonlyArray<NutrientAmount>;
  /** Entered by a household. What it costs and how it is made stay with that household. */
  readonly own: Scalars['Boolean']['output'];
  readonly pieceName?: Maybe<Scalars['String']['output']>;
  /** Cost of the reference portion in whole minor units; null for a dish of a child's other home. */
  readonly portionCostMinor?: Maybe<Scalars['Int']['output']>;
  /** Grams of the reference portion. */
  readonly portionGrams: Scalars['Float']['output'];
  /** Pieces in the reference portion; null when it is not counted in pieces. */
  readonly portionPieces?: Maybe<Scalars['Float']['output']>;
  /** How it is made, and what its foods are on their own. */
  readonly processing: ReadonlyArray<ProcessingClass>;
  /** Part of the mass that goes in which is bought ready made (bread, meat products, condiments, sweets, bagged snacks), 0 to 1: our own line. */
  readonly readyMadeShare: Scalars['Float']['output'];
  readonly served: ServedWarmth;
  readonly slots: ReadonlyArray<Slot>;
  readonly spill: SpillClass;
  readonly steps: ReadonlyArray<DishStep>;
  /** Space of the reference portion in the box. */
  readonly volumeMl: Scalars['Float']['output'];
};


export type DishDerivationArgs = {
  tag: NutrientTag;
};

export type DishBase = {
  readonly __typename?: 'DishBase';
  readonly base: Base;
  readonly grams: Scalars['Float']['output'];
};

export type DishConnection = {
  readonly __typename?: 'DishConnection';
  readonly nodes: ReadonlyArray<Dish>;
  readonly pageInfo: PageInfo;
};

export type DishIngredient = {
  readonly __typename?: 'DishIngredient';
  readonly food: Food;
  readonly form: Scalars['String']['output'];
  /** As the food's row describes it: raw grams of a raw row. */
  readonly grams: Scalars['Float']['output'];
  /** How it is cooked here; null for what is eaten raw or entered as the cooked food. */
  readonly retention?: Maybe<Retention>;
};

/** The dish is shut out there. */
export type DishNotOffered = UserError & {
  readonly __typename?: 'DishNotOffered';
  /** What shuts it out: ALLERGEN, RULE, HOLDING and the like; OTHER_SLOT or BOX_CLOSED. */
  readonly kind: Scalars['String']['output'];
  readonly message: Scalars['String']['output'];
  /** The rule's own sentence, where a rule of a school or the family shuts it out. */
  readonly rule?: Maybe<Scalars['String']['output']>;
  /** Where that is laid down. */
  readonly source: Scalars['String']['output'];
  /** Of a RULE of a school or the family; null otherwise. */
  readonly whoSaysSo?: Maybe<RuleOrigin>;
};

export type DishReturned = {
  readonly __typename?: 'DishReturned';
  /** By date. */
  readonly days: ReadonlyArray<DayReturned>;
  readonly dish: Dish;
};

export type DishStep = {
  readonly __typename?: 'DishStep';
  readonly eveningBefore: Scalars['Boolean']['output'];
  readonly handsOnFixedMinutes: Scalars['Float']['output'];
  readonly handsOnPerPortionMinutes: Scalars['Float']['output'];
  readonly passiveMinutes: Scalars['Float']['output'];
  readonly text: Scalars['String']['output'];
};

/** No dish has this key. */
export type DishUnknown = UserError & {
  readonly __typename?: 'DishUnknown';
  readonly dish: Scalars['String']['output'];
  readonly message: Scalars['String']['output'];
  /** Keys that look like it. */
  readonly nearest: ReadonlyArray<Scalars['String']['output']>;
};

export type DismissInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly jurisdiction?: InputMaybe<Scalars['String']['input']>;
  /** Give this or jurisdiction. */
  readonly schoolId?: InputMaybe<Scalars['ID']['input']>;
  /** Subject of the person's token. */
  readonly subject: Scalars['String']['input'];
};

export type DismissResult = AppointmentsPayload | InvalidInput | KeyReused | LastAdministrator | NotAppointed | PersonNotFound | SchoolNotFound;

/** Something that upsets the week. What is about a child both homes see; what is about a kitchen stays behind its wall. */
export type Disruption = {
  readonly __typename?: 'Disruption';
  readonly appliance?: Maybe<Scalars['String']['output']>;
  /** Null when it is about the kitchen. */
  readonly child?: Maybe<Child>;
  readonly date: Scalars['LocalDate']['output'];
  readonly endsAt?: Maybe<Scalars['LocalTime']['output']>;
  readonly foodKind?: Maybe<Scalars['String']['output']>;
  readonly id: Scalars['ID']['output'];
  readonly kind: DisruptionKind;
  readonly minutes?: Maybe<Scalars['Int']['output']>;
  readonly reason?: Maybe<Scalars['String']['output']>;
  /** The same in a sentence. */
  readonly text: Scalars['String']['output'];
  /** How many of the appliance cannot be used. */
  readonly units?: Maybe<Scalars['Int']['output']>;
  /** The last day, itself included. */
  readonly until: Scalars['LocalDate']['output'];
};

/** Exactly one of these. */
export type DisruptionInput =
  { readonly applianceBroken: ApplianceBrokenInput; readonly childAbsent?: never; readonly earlyFinish?: never; readonly foodMissing?: never; readonly schoolClosed?: never; readonly shortMorning?: never; readonly tripDay?: never; }
  |  { readonly applianceBroken?: never; readonly childAbsent: ChildDaysInput; readonly earlyFinish?: never; readonly foodMissing?: never; readonly schoolClosed?: never; readonly shortMorning?: never; readonly tripDay?: never; }
  |  { readonly applianceBroken?: never; readonly childAbsent?: never; readonly earlyFinish: EarlyFinishInput; readonly foodMissing?: never; readonly schoolClosed?: never; readonly shortMorning?: never; readonly tripDay?: never; }
  |  { readonly applianceBroken?: never; readonly childAbsent?: never; readonly earlyFinish?: never; readonly foodMissing: FoodMissingInput; readonly schoolClosed?: never; readonly shortMorning?: never; readonly tripDay?: never; }
  |  { readonly applianceBroken?: never; readonly childAbsent?: never; readonly earlyFinish?: never; readonly foodMissing?: never; readonly schoolClosed: ChildDaysInput; readonly shortMorning?: never; readonly tripDay?: never; }
  |  { readonly applianceBroken?: never; readonly childAbsent?: never; readonly earlyFinish?: never; readonly foodMissing?: never; readonly schoolClosed?: never; readonly shortMorning: ShortMorningInput; readonly tripDay?: never; }
  |  { readonly applianceBroken?: never; readonly childAbsent?: never; readonly earlyFinish?: never; readonly foodMissing?: never; readonly schoolClosed?: never; readonly shortMorning?: never; readonly tripDay: TripDaysInput; };

export type DisruptionKind =
  /** The child stays home: no box. */
  | 'ABSENT'
  /** So many of an appliance cannot be used in the same sessions. */
  | 'APPLIANCE_BROKEN'
  /** School ends early: breaks that start at or after endsAt fall away. */
  | 'EARLY_FINISH'
  /** A kind of food is not there in the sessions of those days, with the week's first school day neither in those before it. What was cooked before may hold it. */
  | 'FOOD_MISSING'
  /** The child's school is closed: no box. */
  | 'SCHOOL_CLOSED'
  /** Only so many minutes are left of the morning's session. */
  | 'SHORT_MORNING'
  /** Away from school: nothing keeps food cold or heats it. */
  | 'TRIP';

/** What a report would change. Nothing is stored. */
export type DisruptionOffer = {
  readonly __typename?: 'DisruptionOffer';
  /** Null: the week stays as it is, or none is planned. */
  readonly difference?: Maybe<WeekDifference>;
};

export type DisruptionOfferResult = ChildNotFound | DisruptionOffer | HouseholdNotFound | InvalidInput | NotPermitted | WeekInfeasible;

export type DisruptionPayload = {
  readonly __typename?: 'DisruptionPayload';
  /** Boxes of the week that differ from the plan before. */
  readonly changedBoxes: ReadonlyArray<Box>;
  /** Null when the plan stayed as it is. */
  readonly difference?: Maybe<WeekDifference>;
  /** Null when it was taken back. */
  readonly disruption?: Maybe<Disruption>;
  /** Null when the week obeys it; else what clashes. Planned again when asked for. */
  readonly infeasible?: Maybe<WeekInfeasible>;
  /** Null when nothing has been planned for it. */
  readonly week?: Maybe<Week>;
};

/** Something in a document, with the line it stands on. */
export type DocumentIssue = {
  readonly __typename?: 'DocumentIssue';
  readonly expected: Scalars['String']['output'];
  readonly line: Scalars['Int']['output'];
  /** Words that would do and look most like the one that stands there. */
  readonly nearest: ReadonlyArray<Scalars['String']['output']>;
  /** rules.3.matches.anyOf.0.groups.1; empty for the document as a whole. */
  readonly path: Scalars['String']['output'];
  readonly problem: Scalars['String']['output'];
};

/** Nothing was loaded; every complaint is listed. */
export type DocumentRefused = UserError & {
  readonly __typename?: 'DocumentRefused';
  readonly issues: ReadonlyArray<DocumentIssue>;
  readonly message: Scalars['String']['output'];
  /** Odd, and by itself no reason to refuse it. */
  readonly warnings: ReadonlyArray<DocumentIssue>;
};

export type DropOwnRulesInput = {
  /** First day on which it asks for nothing. */
  readonly from: Scalars['LocalDate']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly ruleSetId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type DropOwnRulesResult = HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | NothingThere | OwnRulesPayload | RevisionPassed;

export type DutyInput = {
  /** Carers of the household, helper or more; at most 6. */
  readonly personIds: ReadonlyArray<Scalars['ID']['input']>;
  readonly session: Scalars['String']['input'];
};

export type EarlyFinishInput = {
  readonly childId: Scalars['ID']['input'];
  readonly date: Scalars['LocalDate']['input'];
  /** Breaks that start at or after it fall away. */
  readonly endsAt: Scalars['LocalTime']['input'];
  readonly until?: InputMaybe<Scalars['LocalDate']['input']>;
};

export type EndExemptionInput = {
  readonly exemptionId: Scalars['ID']['input'];
  /** First day on which the rule holds again. */
  readonly from: Scalars['LocalDate']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type EndExemptionResult = ExemptionPayload | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed;

export type EnergyMethod =
  /** Institute of Medicine 2002/2005. */
  | 'IOM_2005'
  /** National Academies 2023. */
  | 'NASEM_2023';

export type EnrolChildInput = {
  readonly childId: Scalars['ID']['input'];
  readonly fromDate: Scalars['LocalDate']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly schoolClassId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
  readonly untilDate?: InputMaybe<Scalars['LocalDate']['input']>;
};

export type EnrolChildPayload = {
  readonly __typename?: 'EnrolChildPayload';
  readonly child: Child;
  readonly household: Household;
};

export type EnrolChildResult = ChildNotFound | EnrolChildPayload | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | RevisionPassed | SchoolNotFound;

export type Enrolment = {
  readonly __typename?: 'Enrolment';
  readonly fromDate: Scalars['LocalDate']['output'];
  readonly school: School;
  readonly schoolClass: SchoolClass;
  readonly untilDate?: Maybe<Scalars['LocalDate']['output']>;
};

export type Equipment = {
  readonly __typename?: 'Equipment';
  /** HOB_BURNER, OVEN, STEAMER, MICROWAVE, TOASTER, RICE_COOKER, WAFFLE_IRON, CAKE_MOULD_SET, MUFFIN_TRAY, BLENDER or PRESSURE_COOKER. */
  readonly kind: Scalars['String']['output'];
  readonly units: Scalars['Int']['output'];
};

export type EquipmentInput = {
  readonly kind: Scalars['String']['input'];
  readonly units: Scalars['Int']['input'];
};

export type EraseChildInput = {
  readonly childId: Scalars['ID']['input'];
  /** The home that asks. */
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** From the first step's answer, with everything else the same. Absent: the first step. */
  readonly token?: InputMaybe<Scalars['String']['input']>;
};

/** Select `... on UserError` as well: members may be added. */
export type EraseChildResult = AgreementNeeded | ChildNotFound | ConfirmationNeeded | ErasedPayload | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted;

export type EraseHouseholdInput = {
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** From the first step's answer, with everything else the same. Absent: the first step. */
  readonly token?: InputMaybe<Scalars['String']['input']>;
};

/** Select `... on UserError` as well: members may be added. */
export type EraseHouseholdResult = ConfirmationNeeded | ErasedPayload | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted;

export type EraseMeInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  /** From the first step's answer, with everything else the same. Absent: the first step. */
  readonly token?: InputMaybe<Scalars['String']['input']>;
  /** Also erase the households of which the sender is the only carer, as eraseHousehold does. */
  readonly withHouseholds: Scalars['Boolean']['input'];
};

/** Select `... on UserError` as well: members may be added. */
export type EraseMeResult = ConfirmationNeeded | ErasedPayload | HouseholdsLeft | InvalidInput | KeyReused | LastAdministrator | LastCoordinator;

/** Nothing of it is left. */
export type ErasedPayload = {
  readonly __typename?: 'ErasedPayload';
  readonly erasedAt: Scalars['DateTime']['output'];
};

/** That a home of this child asks for the child to be erased. */
export type ErasureAsked = {
  readonly __typename?: 'ErasureAsked';
  readonly askedAt: Scalars['DateTime']['output'];
  /** Asked by this household; else by the child's other home. */
  readonly askedHere: Scalars['Boolean']['output'];
};

export type EstimatedCost = {
  readonly __typename?: 'EstimatedCost';
  /** ISO 4217. */
  readonly currency: Scalars['String']['output'];
  readonly minor: Scalars['Int']['output'];
};

export type Exclusion = {
  readonly __typename?: 'Exclusion';
  /** ALLERGEN, MAY_CONTAIN, KEPT_OUT, DIET, CHOKING, HOLDING, FACILITY, RULE, OUT_OF, EQUIPMENT, NO_SESSION, MORNING_TOO_SHORT or VOLUME. */
  readonly kind: Scalars['String']['output'];
  /** Where that is laid down; null where it is the family's own list or the kitchen itself. */
  readonly source?: Maybe<Scalars['String']['output']>;
  readonly text: Scalars['String']['output'];
  /** Of a RULE of a school or the family; null otherwise. */
  readonly whoSaysSo?: Maybe<RuleOrigin>;
};

export type Exemption = {
  readonly __typename?: 'Exemption';
  readonly from: Scalars['LocalDate']['output'];
  readonly id: Scalars['ID']['output'];
  /** Null for the home that did not enter it. */
  readonly note?: Maybe<ExemptionNote>;
  /** The rule's key in its document. */
  readonly rule: Scalars['String']['output'];
  readonly ruleSet: RuleSet;
  /** The rule's sentence; null where the newest version has no such rule. */
  readonly says?: Maybe<Scalars['String']['output']>;
  /** Last day. */
  readonly until: Scalars['LocalDate']['output'];
};

export type ExemptionNote = {
  readonly __typename?: 'ExemptionNote';
  readonly clinician: Scalars['String']['output'];
  readonly note: Scalars['String']['output'];
};

/** The school should know of it. */
export type ExemptionPayload = {
  readonly __typename?: 'ExemptionPayload';
  readonly child: Child;
  /** Null when it was taken back before it began. */
  readonly exemption?: Maybe<Exemption>;
  readonly household: Household;
};

export type ExemptionRefusal =
  | 'DOES_NOT_HOLD'
  | 'FAMILYS_OWN'
  | 'NAMES_ALLERGEN';

export type ExemptionRefused = UserError & {
  readonly __typename?: 'ExemptionRefused';
  readonly message: Scalars['String']['output'];
  readonly reason: ExemptionRefusal;
  /** The rule's sentence; null where there is no such rule. */
  readonly says?: Maybe<Scalars['String']['output']>;
};

export type Facility =
  | 'NEITHER'
  /** Boxes are kept cold until they are eaten. */
  | 'REFRIGERATOR'
  /** Food can be heated before it is eaten. */
  | 'REHEATING';

/** How the work of the 28 days that end with asOf is spread; a task counts for the day of its session, with the minutes it took, or else the estimate. */
export type Fairness = {
  readonly __typename?: 'Fairness';
  readonly asOf: Scalars['LocalDate']['output'];
  /** Those who help: observers are left out. */
  readonly carers: ReadonlyArray<CarerMinutes>;
  readonly from: Scalars['LocalDate']['output'];
  /** Done by people who are no carers that help any more. */
  readonly othersMinutes: Scalars['Float']['output'];
};

/** The sender's own calendar feed (RFC 5545) of the tasks they have taken in one household. */
export type Feed = {
  readonly __typename?: 'Feed';
  /** When its address was made last. */
  readonly createdAt: Scalars['DateTime']['output'];
  readonly household: Household;
};

export type FeedAddressPayload = {
  readonly __typename?: 'FeedAddressPayload';
  readonly createdAt: Scalars['DateTime']['output'];
  /** Path on this server, `/feed/<secret>.ics`: whoever knows it reads the feed. Told once; null when this request was answered before, for nobody keeps it. */
  readonly path?: Maybe<Scalars['String']['output']>;
};

export type FieldChange = {
  readonly __typename?: 'FieldChange';
  readonly after?: Maybe<Scalars['String']['output']>;
  /** JSON; null where nothing was stated. */
  readonly before?: Maybe<Scalars['String']['output']>;
  readonly field: Scalars['String']['output'];
};

export type FinishTaskInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  /** Hands-on minutes it took, 0 to 600, tenths count; absent: nobody looked at the clock. */
  readonly minutes?: InputMaybe<Scalars['Float']['input']>;
  readonly seenRevision: Scalars['Int']['input'];
  readonly taskId: Scalars['ID']['input'];
};

export type FinishTaskResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | TaskHeld | TaskPayload;

/** One row of a composition table, per 100 g edible. */
export type Food = {
  readonly __typename?: 'Food';
  readonly addedSugarGrams: Scalars['Float']['output'];
  readonly allergens: ReadonlyArray<Scalars['String']['output']>;
  readonly chokingClasses: ReadonlyArray<Scalars['String']['output']>;
  readonly densityGramsPerMl?: Maybe<Scalars['Float']['output']>;
  readonly freeSugarGrams: Scalars['Float']['output'];
  readonly group: Scalars['String']['output'];
  readonly keepsChilledDays?: Maybe<Scalars['Int']['output']>;
  /** At -18 °C, for quality. */
  readonly keepsFrozenDays?: Maybe<SourcedFigure>;
  readonly key: Scalars['String']['output'];
  readonly kind: Scalars['String']['output'];
  /** Which of its allergens a label must name under a law; empty for a law that is not known. Says nothing about who may eat it. */
  readonly labelDeclarations: ReadonlyArray<LabelDeclaration>;
  readonly measures: ReadonlyArray<FoodMeasure>;
  readonly name: Scalars['String']['output'];
  /** USDA Standard Reference number; null for water. */
  readonly ndb?: Maybe<Scalars['String']['output']>;
  /** Only what the table knows: a nutrient that is not listed is missing, not zero. */
  readonly nutrients: ReadonlyArray<NutrientAmount>;
  /** Entered by a household, not a row of the composition table. */
  readonly own: Scalars['Boolean']['output'];
  /** Has a label that a carer of a child who avoids traces has to read. */
  readonly packaged: Scalars['Boolean']['output'];
  /** Null: not known, so it counts as needing time or temperature control. */
  readonly ph?: Maybe<SourcedFigure>;
  /** From the price of its pack, which is invented; null for another home's own food. */
  readonly priceBand?: Maybe<PriceBand>;
  readonly refusePercent: Scalars['Float']['output'];
  /** Fresh produce only; a region that is not listed is not known. */
  readonly seasons: ReadonlyArray<Season>;
  /** How free and added sugars follow from the table's sugars. */
  readonly sugarRule: SugarRule;
  /** Null: not known, so it counts as needing time or temperature control. */
  readonly waterActivity?: Maybe<SourcedFigure>;
};


/** One row of a composition table, per 100 g edible. */
export type FoodLabelDeclarationsArgs = {
  law: Scalars['String']['input'];
  on: Scalars['LocalDate']['input'];
};

/** A household measure and what it weighs. */
export type FoodMeasure = {
  readonly __typename?: 'FoodMeasure';
  readonly grams: Scalars['Float']['output'];
  readonly measure: Scalars['String']['output'];
};

/** Counts for every box of the weeks it touches that is not packed, until its last day is over. */
export type FoodMissingInput = {
  readonly date: Scalars['LocalDate']['input'];
  /** Kind of food: egg, broccoli. */
  readonly foodKind: Scalars['String']['input'];
  readonly until?: InputMaybe<Scalars['LocalDate']['input']>;
};

/** A proposal is answered by the home that did not make it, and withdrawn by the one that did. */
export type ForTheOtherHome = UserError & {
  readonly __typename?: 'ForTheOtherHome';
  /** By this home. */
  readonly madeHere: Scalars['Boolean']['output'];
  readonly message: Scalars['String']['output'];
};

export type FreezerStock = Node & {
  readonly __typename?: 'FreezerStock';
  readonly base: Base;
  readonly frozenOn: Scalars['LocalDate']['output'];
  readonly grams: Scalars['Int']['output'];
  readonly id: Scalars['ID']['output'];
  readonly useBy: Scalars['LocalDate']['output'];
};

export type GiveUpHomeInput = {
  readonly childId: Scalars['ID']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type GiveUpHomeResult = ChildNotFound | HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | OnlyHome | RevisionPassed;

export type HandOverCoordinationInput = {
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** Who coordinates from now on. */
  readonly personId: Scalars['ID']['input'];
  /** The sender's role from now on: COOK, HELPER or OBSERVER. */
  readonly role: Role;
};

export type HandOverCoordinationResult = CarerNotFound | HouseholdNotFound | HouseholdPayload | InvalidInput | KeyReused | NotPermitted;

export type HandTaskInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  /** A carer of the household, helper or more. */
  readonly personId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
  readonly taskId: Scalars['ID']['input'];
};

export type HandTaskResult = HelperNotFound | InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | TaskHeld | TaskNotHeld | TaskPayload;

/** What either home of a child has to know for a week. Nothing of a kitchen and nobody's name is in it. */
export type Handover = {
  readonly __typename?: 'Handover';
  /** As both homes recorded them; the stricter holds. */
  readonly allergies: ReadonlyArray<Allergy>;
  readonly avoid: ReadonlyArray<Scalars['String']['output']>;
  /** Null: not said. */
  readonly box?: Maybe<Whereabouts>;
  /** What either home's boxes of the week brought back, by dish. */
  readonly cameBack: ReadonlyArray<DishReturned>;
  readonly child: Child;
  readonly flask?: Maybe<Whereabouts>;
  readonly icePacks?: Maybe<Whereabouts>;
  readonly note: Scalars['String']['output'];
  /** Worth packing again. */
  readonly repeat: ReadonlyArray<Scalars['String']['output']>;
  /** Send it back with writeHandover; 0 where nothing has been written. */
  readonly revision: Scalars['Int']['output'];
  /** A Monday, whatever day the homes' weeks begin on: both read the same note. */
  readonly weekStart: Scalars['LocalDate']['output'];
};

export type HandoverPayload = {
  readonly __typename?: 'HandoverPayload';
  readonly handover: Handover;
};

/** No carer of the household who helps: an observer does not. */
export type HelperNotFound = UserError & {
  readonly __typename?: 'HelperNotFound';
  readonly message: Scalars['String']['output'];
};

export type HoldingPoint = {
  readonly __typename?: 'HoldingPoint';
  /** Of the food, °C. */
  readonly celsius: Scalars['Float']['output'];
  /** Growth of the organism that grows most, log10 CFU/g since it left the cold or the heat. */
  readonly log10: Scalars['Float']['output'];
  /** From leaving home. */
  readonly minute: Scalars['Int']['output'];
};

/** The two homes of a child, as the one that asks sees them. */
export type HomeSide =
  | 'OTHER_HOME'
  | 'THIS_HOME';

export type HouseRule =
  /** A main at most once a week for a child, any other dish at most twice. */
  | 'DISH_REPEATS'
  /** Siblings' mains differ, and at least two slots of every two boxes. */
  | 'SIBLINGS_DIFFER'
  /** No starch family two days running. */
  | 'STARCH_CHANGES';

/** A kitchen that packs boxes. */
export type Household = Node & {
  readonly __typename?: 'Household';
  readonly availability: ReadonlyArray<Availability>;
  readonly carers: ReadonlyArray<Carer>;
  /** How far the log goes at the moment this answer shows: subscribe to `changes` after it and nothing is missed or told twice. */
  readonly changeCursor: Scalars['String']['output'];
  readonly children: ReadonlyArray<Child>;
  /** ISO 4217 code; money is in its minor unit. */
  readonly currency: Scalars['String']['output'];
  /** What was reported for these days, by date, at most 62 days: of its kitchen, and of its children in either home. */
  readonly disruptions: ReadonlyArray<Disruption>;
  readonly energyMethod: EnergyMethod;
  readonly fairness: Fairness;
  readonly id: Scalars['ID']['output'];
  /** Open invitations, the newest first. Null to everybody but a coordinator. */
  readonly invitations?: Maybe<ReadonlyArray<Invitation>>;
  /** Allergens that never enter this kitchen. */
  readonly keepsOut: ReadonlyArray<Scalars['String']['output']>;
  readonly kitchen: Kitchen;
  readonly log: ChangeConnection;
  /** What the signed-in person may do here, as the names the server decides by, such as planWeek, takeTask or inviteCarers; for hiding what would be refused. */
  readonly mayDo: ReadonlyArray<Scalars['String']['output']>;
  readonly myRole: Role;
  readonly name: Scalars['String']['output'];
  /** Dishes on this household's own list, by key. */
  readonly ownDishes: ReadonlyArray<Dish>;
  /** Foods on this household's own list, by key. */
  readonly ownFoods: ReadonlyArray<Food>;
  /** One's own and everybody's, due after an instant, the first first; at most 200. */
  readonly reminders: ReadonlyArray<Reminder>;
  /** Goes up with every change of kitchen, children or stock. */
  readonly revision: Scalars['Int']['output'];
  /** Sessions of these days in time order, at most 62 days: those the kitchen gives time to, and those of plans. */
  readonly rota: ReadonlyArray<RotaSession>;
  /** For the sessions of these days that have not begun, at most 62 days. The same facts give the same proposal. */
  readonly rotaProposal: RotaProposal;
  /** What the household should look at in its children's rules. */
  readonly ruleNotices: ReadonlyArray<RuleNotice>;
  /** IANA name: Europe/London. */
  readonly timeZone: Scalars['String']['output'];
  readonly unitSystem: UnitSystem;
  /** The week that holds this day; null when nothing has been planned for it. */
  readonly week?: Maybe<Week>;
  readonly weekStart: Weekday;
};


/** A kitchen that packs boxes. */
export type HouseholdDisruptionsArgs = {
  from: Scalars['LocalDate']['input'];
  to: Scalars['LocalDate']['input'];
};


/** A kitchen that packs boxes. */
export type HouseholdFairnessArgs = {
  asOf: Scalars['LocalDate']['input'];
};


/** A kitchen that packs boxes. */
export type HouseholdLogArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first: Scalars['Int']['input'];
};


/** A kitchen that packs boxes. */
export type HouseholdRemindersArgs = {
  after: Scalars['DateTime']['input'];
};


/** A kitchen that packs boxes. */
export type HouseholdRotaArgs = {
  from: Scalars['LocalDate']['input'];
  to: Scalars['LocalDate']['input'];
};


/** A kitchen that packs boxes. */
export type HouseholdRotaProposalArgs = {
  from: Scalars['LocalDate']['input'];
  to: Scalars['LocalDate']['input'];
};


/** A kitchen that packs boxes. */
export type HouseholdWeekArgs = {
  date: Scalars['LocalDate']['input'];
};

/** No such household, or not one of yours. */
export type HouseholdNotFound = UserError & {
  readonly __typename?: 'HouseholdNotFound';
  readonly message: Scalars['String']['output'];
};

export type HouseholdPayload = {
  readonly __typename?: 'HouseholdPayload';
  readonly household: Household;
};

/** The sender is the only carer of a household, and did not say that it goes too. */
export type HouseholdsLeft = UserError & {
  readonly __typename?: 'HouseholdsLeft';
  readonly message: Scalars['String']['output'];
};

export type InputIssue = {
  readonly __typename?: 'InputIssue';
  /** Path inside the input: children.0.dateOfBirth. */
  readonly field: Scalars['String']['output'];
  /** What to send instead. */
  readonly fix: Scalars['String']['output'];
  /** What is wrong with it. */
  readonly problem: Scalars['String']['output'];
};

/** Something in the input cannot be used. All complaints come at once; nothing was saved. */
export type InvalidInput = UserError & {
  readonly __typename?: 'InvalidInput';
  readonly issues: ReadonlyArray<InputIssue>;
  readonly message: Scalars['String']['output'];
};

/** A link that works once. Its token is answered by the mutation that makes it and by nothing else: only a digest is kept. */
export type Invitation = {
  readonly __typename?: 'Invitation';
  /** Who is to live in another household too; null for a carer. */
  readonly child?: Maybe<Child>;
  readonly createdAt: Scalars['DateTime']['output'];
  readonly expiresAt: Scalars['DateTime']['output'];
  readonly id: Scalars['ID']['output'];
  /** Null when they are no carer here any more. */
  readonly invitedBy?: Maybe<Person>;
  readonly kind: InvitationKind;
  /** Of the carer to be; null for a home. */
  readonly role?: Maybe<Role>;
  readonly state: InvitationState;
};

/** The link does not work any more. */
export type InvitationClosed = UserError & {
  readonly __typename?: 'InvitationClosed';
  readonly message: Scalars['String']['output'];
  /** USED, WITHDRAWN or EXPIRED. */
  readonly state: InvitationState;
};

export type InvitationKind =
  /** Somebody becomes a carer of the household. */
  | 'CARER'
  /** A child of the household lives in another household too. */
  | 'HOME';

/** No such invitation: the token is none, or the ID is none of a household of yours. */
export type InvitationNotFound = UserError & {
  readonly __typename?: 'InvitationNotFound';
  readonly message: Scalars['String']['output'];
};

/** What somebody who has the token is invited to. Names are told while it is open, and to nobody without the token. */
export type InvitationOffer = {
  readonly __typename?: 'InvitationOffer';
  /** Null for a carer. */
  readonly childFirstName?: Maybe<Scalars['String']['output']>;
  readonly expiresAt: Scalars['DateTime']['output'];
  readonly householdName?: Maybe<Scalars['String']['output']>;
  readonly inviterName?: Maybe<Scalars['String']['output']>;
  readonly kind: InvitationKind;
  /** Of the carer to be; null for a home. */
  readonly role?: Maybe<Role>;
  readonly state: InvitationState;
};

export type InvitationPayload = {
  readonly __typename?: 'InvitationPayload';
  readonly invitation: Invitation;
  /** 43 characters, answered once: null when the same request comes again. If the first answer was lost, withdraw the invitation and make another. */
  readonly token?: Maybe<Scalars['String']['output']>;
};

export type InvitationState =
  | 'EXPIRED'
  | 'OPEN'
  | 'USED'
  /** By a coordinator, or because who sent it does not coordinate any more. */
  | 'WITHDRAWN';

export type InviteCarerInput = {
  /** 1 to 720: an hour to 30 days. */
  readonly expiresInHours: Scalars['Int']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly role: Role;
};

export type InviteCarerResult = HouseholdNotFound | InvalidInput | InvitationPayload | KeyReused | NotPermitted;

export type InviteHomeInput = {
  readonly childId: Scalars['ID']['input'];
  /** 1 to 720: an hour to 30 days. */
  readonly expiresInHours: Scalars['Int']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
};

export type InviteHomeResult = ChildNotFound | HouseholdNotFound | InvalidInput | InvitationPayload | KeyReused | LivesInTwoHomes | NotPermitted;

export type ItemDifference = {
  readonly __typename?: 'ItemDifference';
  readonly breakKey: Scalars['String']['output'];
  readonly dish: Dish;
  readonly grams: Scalars['Float']['output'];
  readonly pieces?: Maybe<Scalars['Float']['output']>;
  readonly slot: Slot;
};

/** How an item is kept safe on its way. The limit is the time rule's, or less where the model of heat and growth says so. */
export type ItemHolding = {
  readonly __typename?: 'ItemHolding';
  /** What has to be true for these figures. */
  readonly assumptions: ReadonlyArray<Scalars['String']['output']>;
  /** CHILLED, FLASK, AMBIENT, NOT_CONTROLLED or REHEATED_AT_SCHOOL. */
  readonly case: Scalars['String']['output'];
  /** At the end of the break, °C. */
  readonly endCelsius?: Maybe<Scalars['Float']['output']>;
  /** Growth by the end of the break, log10 CFU/g. */
  readonly growthLog10?: Maybe<Scalars['Float']['output']>;
  readonly limitMinutes: Scalars['Int']['output'];
  /** RULE: a published time limit. GROWTH or EXPOSURE: the model reaches its limit sooner. Null where there is no model. */
  readonly limitedBy?: Maybe<Scalars['String']['output']>;
  /** What would give back the time that the model took away; empty when it took none. */
  readonly mend: ReadonlyArray<Scalars['String']['output']>;
  /** From leaving home to the end of the break. */
  readonly minutes: Scalars['Int']['output'];
  /** Warmest on the way, °C; a flask begins with its hottest. */
  readonly mostCelsius?: Maybe<Scalars['Float']['output']>;
  /** The organism that grows most; null when none of those looked for does. */
  readonly organism?: Maybe<Scalars['String']['output']>;
};

export type KeepOwnRulesInput = {
  readonly childId: Scalars['ID']['input'];
  /** A school of the child, where the document writes down what that school asks for: the rule set is then not confirmed. */
  readonly copyOfSchoolId?: InputMaybe<Scalars['ID']['input']>;
  /** JSON or YAML text in the format noonpail-rule-set/1, of layer CHILD. */
  readonly document: Scalars['String']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type KeepOwnRulesResult = ChildNotFound | DocumentRefused | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | OwnRulesPayload | RevisionPassed | SchoolNotFound;

/** The same idempotency key came before with another input. Nothing was changed. */
export type KeyReused = UserError & {
  readonly __typename?: 'KeyReused';
  readonly message: Scalars['String']['output'];
  /** The mutation that used the key. */
  readonly usedFor: Scalars['String']['output'];
};

export type Kitchen = {
  readonly __typename?: 'Kitchen';
  readonly equipment: ReadonlyArray<Equipment>;
  readonly freezerMl: Scalars['Int']['output'];
  readonly freezerStock: ReadonlyArray<FreezerStock>;
  /** Days on which the household expects more than 32 °C, in date order. */
  readonly hotDays: ReadonlyArray<Scalars['LocalDate']['output']>;
  readonly labelChecks: ReadonlyArray<LabelCheck>;
  readonly leftovers: ReadonlyArray<Leftover>;
  readonly prepTimes: ReadonlyArray<PrepTime>;
  /** Room for boxes and batches overnight, in ml. */
  readonly refrigeratorMl: Scalars['Int']['output'];
  readonly stock: ReadonlyArray<Stock>;
};

/** The household after a change of its kitchen. */
export type KitchenPayload = {
  readonly __typename?: 'KitchenPayload';
  readonly household: Household;
};

/** What was read on the label of a bought product. */
export type LabelCheck = {
  readonly __typename?: 'LabelCheck';
  readonly contains: ReadonlyArray<Scalars['String']['output']>;
  readonly food: Food;
  /** Single foods that were looked for on it, for a child allergic to one food. */
  readonly kinds: ReadonlyArray<LabelKind>;
  readonly mayContain: ReadonlyArray<Scalars['String']['output']>;
  readonly readOn: Scalars['LocalDate']['output'];
};

export type LabelDeclaration = {
  readonly __typename?: 'LabelDeclaration';
  /** The law's class; null when it falls under none. */
  readonly class?: Maybe<Scalars['String']['output']>;
  readonly source: Scalars['String']['output'];
  readonly status: LabelStatus;
  /** An allergen, or a food kind that the law names. */
  readonly subject: Scalars['String']['output'];
};

/** A product that need not be named although it is made of an allergen. */
export type LabelExemption = {
  readonly __typename?: 'LabelExemption';
  readonly about: Scalars['String']['output'];
  readonly allergens: ReadonlyArray<Scalars['String']['output']>;
  readonly derivative: Scalars['String']['output'];
  readonly source: Scalars['String']['output'];
};

export type LabelKind = {
  readonly __typename?: 'LabelKind';
  readonly kind: Scalars['String']['output'];
  readonly says: LabelSays;
};

export type LabelKindInput = {
  readonly kind: Scalars['String']['input'];
  readonly says: LabelSays;
};

/** Allergens that a law makes a label name. For reading labels; it never narrows what a child avoids. */
export type LabelLaw = {
  readonly __typename?: 'LabelLaw';
  readonly allergens: ReadonlyArray<LabelLawClass>;
  readonly caution: Scalars['String']['output'];
  readonly exempt: ReadonlyArray<LabelExemption>;
  /** The list was read in part: what is not on it may still have to be named. */
  readonly incomplete: Scalars['Boolean']['output'];
  /** eu, us, ca or in. */
  readonly key: Scalars['String']['output'];
  readonly source: Scalars['String']['output'];
  readonly title: Scalars['String']['output'];
};

export type LabelLawClass = {
  readonly __typename?: 'LabelLawClass';
  /** ALLERGEN, or GLUTEN_SOURCE: named on labels outside the law's list of allergens. */
  readonly as: Scalars['String']['output'];
  /** The law's own class: MILK, TREE_NUTS, GLUTEN_CEREALS. */
  readonly code: Scalars['String']['output'];
  /** Foods that count under it on the day. */
  readonly members: ReadonlyArray<LabelLawMember>;
  readonly note?: Maybe<Scalars['String']['output']>;
  /** First day it has to be named; null where it was so before any date that matters here. */
  readonly since?: Maybe<Scalars['LocalDate']['output']>;
  readonly source: Scalars['String']['output'];
};

export type LabelLawMember = {
  readonly __typename?: 'LabelLawMember';
  /** Null for a food without an allergen code of its own. */
  readonly allergen?: Maybe<Scalars['String']['output']>;
  readonly name: Scalars['String']['output'];
};

/** Per 100 g, as the label prints it. Absent is not known, never none. */
export type LabelNutrientsInput = {
  /** Absent: all sugars count as free sugars. */
  readonly addedSugarsGrams?: InputMaybe<Scalars['Float']['input']>;
  readonly calciumMg?: InputMaybe<Scalars['Float']['input']>;
  /** Without fibre, as labels in Europe print it. */
  readonly carbohydrateGrams?: InputMaybe<Scalars['Float']['input']>;
  readonly energyKcal?: InputMaybe<Scalars['Float']['input']>;
  readonly energyKj?: InputMaybe<Scalars['Float']['input']>;
  readonly fatGrams?: InputMaybe<Scalars['Float']['input']>;
  readonly fibreGrams?: InputMaybe<Scalars['Float']['input']>;
  readonly folateMicrograms?: InputMaybe<Scalars['Float']['input']>;
  readonly ironMg?: InputMaybe<Scalars['Float']['input']>;
  readonly magnesiumMg?: InputMaybe<Scalars['Float']['input']>;
  readonly phosphorusMg?: InputMaybe<Scalars['Float']['input']>;
  readonly potassiumMg?: InputMaybe<Scalars['Float']['input']>;
  readonly proteinGrams?: InputMaybe<Scalars['Float']['input']>;
  /** Sodium is this divided by 2.5. */
  readonly saltGrams?: InputMaybe<Scalars['Float']['input']>;
  readonly saturatedFatGrams?: InputMaybe<Scalars['Float']['input']>;
  readonly sodiumMg?: InputMaybe<Scalars['Float']['input']>;
  readonly sugarsGrams?: InputMaybe<Scalars['Float']['input']>;
  /** With fibre, as labels in America print it. */
  readonly totalCarbohydrateGrams?: InputMaybe<Scalars['Float']['input']>;
  readonly vitaminAMicrograms?: InputMaybe<Scalars['Float']['input']>;
  readonly vitaminB12Micrograms?: InputMaybe<Scalars['Float']['input']>;
  readonly vitaminCMg?: InputMaybe<Scalars['Float']['input']>;
  readonly vitaminDMicrograms?: InputMaybe<Scalars['Float']['input']>;
  readonly zincMg?: InputMaybe<Scalars['Float']['input']>;
};

export type LabelSays =
  | 'CLEAR'
  | 'CONTAINS'
  | 'MAY_CONTAIN';

export type LabelStatus =
  | 'EXEMPT'
  | 'NAMED'
  | 'NOT_NAMED'
  /** The law was read in part, and the part read does not say. */
  | 'UNKNOWN';

/** Labels that must be read and clear first, because the child avoids traces. */
export type LabelsUnread = UserError & {
  readonly __typename?: 'LabelsUnread';
  readonly foods: ReadonlyArray<Food>;
  readonly message: Scalars['String']['output'];
};

/** Nobody could appoint the next. */
export type LastAdministrator = UserError & {
  readonly __typename?: 'LastAdministrator';
  readonly jurisdiction: Scalars['String']['output'];
  readonly message: Scalars['String']['output'];
};

/** Without this carer nobody would coordinate the household. */
export type LastCoordinator = UserError & {
  readonly __typename?: 'LastCoordinator';
  readonly message: Scalars['String']['output'];
};

export type LeaveHouseholdInput = {
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
};

export type LeaveHouseholdPayload = {
  readonly __typename?: 'LeaveHouseholdPayload';
  readonly me: Me;
};

export type LeaveHouseholdResult = HouseholdNotFound | InvalidInput | KeyReused | LastCoordinator | LeaveHouseholdPayload;

/** What the family meal leaves. */
export type Leftover = Node & {
  readonly __typename?: 'Leftover';
  readonly base: Base;
  readonly cookedOn: Scalars['LocalDate']['output'];
  readonly grams: Scalars['Int']['output'];
  readonly id: Scalars['ID']['output'];
  /** Set by how long the base keeps chilled; never later. */
  readonly lastSafeDay: Scalars['LocalDate']['output'];
};

export type LeftoverInput = {
  /** Base key: rice-cooked. */
  readonly base: Scalars['String']['input'];
  readonly cookedOn: Scalars['LocalDate']['input'];
  readonly grams: Scalars['Int']['input'];
};

/** The child lives in the household that would take them in; the link was not used up. */
export type LivesHereAlready = UserError & {
  readonly __typename?: 'LivesHereAlready';
  readonly message: Scalars['String']['output'];
};

/** A child lives in at most two homes. */
export type LivesInTwoHomes = UserError & {
  readonly __typename?: 'LivesInTwoHomes';
  readonly message: Scalars['String']['output'];
};

export type LoadCalendarInput = {
  /** The text of an iCalendar file (RFC 5545) with the whole calendar, at most 200,000 characters. CATEGORIES of each event is TERM, HOLIDAY, EARLY-FINISH or TRIP, with CLASS:name for one class; an early finish begins when school ends. */
  readonly calendar: Scalars['String']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly schoolId: Scalars['ID']['input'];
  /** The school's revision. */
  readonly seenRevision: Scalars['Int']['input'];
};

export type LoadCalendarResult = DocumentRefused | InvalidInput | KeyReused | NotAppointed | RevisionPassed | SchoolNotFound | SchoolPayload;

export type LoadRuleSetInput = {
  /** JSON or YAML text in the format noonpail-rule-set/1, at most 200 kB over HTTP. */
  readonly document: Scalars['String']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** Instead of a school: the jurisdiction whose schools it is for. */
  readonly jurisdiction?: InputMaybe<Scalars['String']['input']>;
  readonly schoolClassId?: InputMaybe<Scalars['ID']['input']>;
  /** The school it is for; for a class, give schoolClassId as well. */
  readonly schoolId?: InputMaybe<Scalars['ID']['input']>;
  /** The version of this rule set that the administrator saw; 0 for a new one. */
  readonly seenRevision: Scalars['Int']['input'];
};

export type LoadRuleSetPayload = {
  readonly __typename?: 'LoadRuleSetPayload';
  readonly ruleSet: RuleSet;
  /** The newest version said the same already: nothing was loaded. */
  readonly unchanged: Scalars['Boolean']['output'];
};

export type LoadRuleSetResult = DocumentRefused | InvalidInput | KeyReused | LoadRuleSetPayload | NotAppointed | RevisionPassed | SchoolNotFound;

export type MarkPackedInput = {
  readonly boxId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly packedAt: Scalars['DateTime']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type MarkPackedResult = BoxBlocked | BoxClosed | InvalidInput | KeyReused | LabelsUnread | NotPermitted | NothingThere | RevisionPassed | WeekPayload;

/** The person behind the token and what is theirs. */
export type Me = {
  readonly __typename?: 'Me';
  /** Schools they were appointed to administer. */
  readonly administers: ReadonlyArray<School>;
  /** What the person was appointed to administer, the oldest first. */
  readonly appointments: ReadonlyArray<Appointment>;
  /** Households they belong to, the oldest membership first. */
  readonly households: ReadonlyArray<Household>;
  readonly person: Person;
};

export type MendWeekInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
  readonly weekId: Scalars['ID']['input'];
};

export type MendWeekResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | WeekInfeasible | WeekPayload;

export type MendedBox = {
  readonly __typename?: 'MendedBox';
  readonly child: Child;
  readonly date: Scalars['LocalDate']['output'];
  readonly items: ReadonlyArray<MendedItem>;
};

export type MendedItem = {
  readonly __typename?: 'MendedItem';
  readonly breakKey: Scalars['String']['output'];
  readonly dish: Dish;
  readonly slot: Slot;
};

/** What mendWeek would do now. Nothing is stored. */
export type MendingOffer = {
  readonly __typename?: 'MendingOffer';
  /** Boxes that would change, with what they would hold; empty items: no box any more. */
  readonly changedBoxes: ReadonlyArray<MendedBox>;
  /** What stands in the way when it is not possible. */
  readonly conflicts: ReadonlyArray<Conflict>;
  readonly possible: Scalars['Boolean']['output'];
};

/** Something that is not known, and what that keeps from happening. */
export type MissingFact = {
  readonly __typename?: 'MissingFact';
  readonly foods: ReadonlyArray<Food>;
  readonly kind: MissingFactKind;
  /** The figure that is missing; null when it is none. */
  readonly nutrient?: Maybe<NutrientTag>;
  /** Sentences of the rules in force that need it. */
  readonly rules: ReadonlyArray<Scalars['String']['output']>;
  readonly text: Scalars['String']['output'];
};

export type MissingFactKind =
  | 'DENSITY'
  | 'FREE_SUGAR'
  /** Water activity or pH. */
  | 'HOLDING'
  /** Nobody has read the label. */
  | 'LABEL'
  | 'NUTRIENT';

export type MissingFigure = {
  readonly __typename?: 'MissingFigure';
  readonly food: Scalars['String']['output'];
  readonly nutrient: Scalars['String']['output'];
};

export type Mutation = {
  readonly __typename?: 'Mutation';
  /** Let the child of the link live in this household too, from today on: both homes see the child. Only for its coordinator. */
  readonly acceptHomeInvitation: AcceptHomeInvitationResult;
  /** Become a carer of the household whose link it is. The link stays good when this is refused. */
  readonly acceptInvitation: AcceptInvitationResult;
  /** Put a proposal on the rota, as long as it is the one that was seen. */
  readonly acceptRota: AcceptRotaResult;
  /** Add a class with its breaks. Only for the administrator. */
  readonly addSchoolClass: AddSchoolClassResult;
  /** Let a jurisdiction's rule set hold in a school for food from home, or end that. Only for the school's administrator. */
  readonly adoptRuleSet: AdoptRuleSetResult;
  /** Settle the week. It can still be changed by what happens: absence, a swap by hand. */
  readonly agreeWeek: AgreeWeekResult;
  /** Accept or decline what the other home proposes. Planned boxes of days that move fall away in the home that loses them, in the same step; a day whose box is packed or eaten does not move. */
  readonly answerResidenceChange: AnswerResidenceChangeResult;
  /** Put somebody in charge of a school, or of the whole jurisdiction. Only for the jurisdiction's administrators; the person must have signed in once. */
  readonly appoint: AppointResult;
  /** Give a carer another role. Only for a coordinator. Tasks of who may do none any more are open again. */
  readonly changeRole: ChangeRoleResult;
  /** Give a class another name or other breaks; absent is unchanged. Only for the administrator. */
  readonly changeSchoolClass: ChangeSchoolClassResult;
  /** Ends the sender's own feed: its address stops working at once. */
  readonly closeFeed: CloseFeedResult;
  /** Count how boxes of agreed weeks keep a rule set. Numbers only, none below five; asking is noted in the audit list. */
  readonly countRuleSetCompliance: CountRuleSetComplianceResult;
  /** Count what agreed weeks would break if a document were loaded, from the day it begins. Numbers only, none below five; asking is noted in the audit list. */
  readonly countRuleSetImpact: CountRuleSetImpactResult;
  /** Add a child to a household. */
  readonly createChild: CreateChildResult;
  /** Start a household with a usual kitchen and usual prep times; the caller becomes its coordinator. */
  readonly createHousehold: CreateHouseholdResult;
  /** End an appointment. Only for the jurisdiction's administrators; the last of them stays. */
  readonly dismiss: DismissResult;
  /** Let a rule set of the family's own ask for nothing any more from a day on, as a new version. From either home. */
  readonly dropOwnRules: DropOwnRulesResult;
  /** Let the rule hold again from a day on. From either home. */
  readonly endExemption: EndExemptionResult;
  /** Join a child to a class of a school from a day on. */
  readonly enrolChild: EnrolChildResult;
  /** Erases a child, for good and in both homes: a child with another home only once that home's coordinator asks for it too. Takes two steps; siblings' weeks stay. */
  readonly eraseChild: EraseChildResult;
  /** Erases a household, for good: kitchen, weeks, log, and the children who live nowhere else. Children with another home stay there, with their allergies. Takes two steps. */
  readonly eraseHousehold: EraseHouseholdResult;
  /** Erases the sender: name, sign-in, memberships, appointments, and their name on what they did. Takes two steps. */
  readonly eraseMe: EraseMeResult;
  /** Say a task is done. */
  readonly finishTask: FinishTaskResult;
  /** This household stops being one of the child's homes, from today on. Its planned boxes of the child fall away, patterns that name it end the day before, and the body size, box and leaving times it entered are gone. Never the only home. */
  readonly giveUpHome: GiveUpHomeResult;
  /** Make another carer coordinator and take another role oneself, in one step. */
  readonly handOverCoordination: HandOverCoordinationResult;
  /** Hand a task to a carer, who holds it from then on. For whoever holds it; a coordinator may hand on any that is not done. */
  readonly handTask: HandTaskResult;
  /** Make a link by which one person becomes a carer. Only for a coordinator. */
  readonly inviteCarer: InviteCarerResult;
  /** Make a link by which the coordinator of another household takes a child in as well. Only for a coordinator. */
  readonly inviteHome: InviteHomeResult;
  /** Keep rules of the family's own for a child, or a copy of what a school asks for, as a new version. From either home. Boxes that no longer pass are blocked in both. */
  readonly keepOwnRules: KeepOwnRulesResult;
  /** Leave. What the person had taken is open again. The last coordinator stays. */
  readonly leaveHousehold: LeaveHouseholdResult;
  /** Put an iCalendar file in place of whatever came from a file before; terms and days set by hand stay and win. All or nothing. Only for the school's or jurisdiction's administrator. */
  readonly loadCalendar: LoadCalendarResult;
  /** Load a rule set document as a new version. Only for the school's or jurisdiction's administrator. A version that is loaded is never edited; a document that says what the newest version says loads nothing. */
  readonly loadRuleSet: LoadRuleSetResult;
  /** Record that a box was packed. */
  readonly markPacked: MarkPackedResult;
  /** Replace the blocked boxes of a week, changing others only when nothing else works. An agreed week in which only blocked boxes change stays agreed, else it is a draft again. Pins on what is blocked are let go. */
  readonly mendWeek: MendWeekResult;
  /** Keep an item as it is through every replan. */
  readonly pinItem: PinItemResult;
  /** Plan the week that holds a day. Pinned, packed and cooked things stay. */
  readonly planWeek: PlanWeekResult;
  /** Plan the week thoroughly, with ten times the search, as a job; planProgress and weekChanged tell how it goes. */
  readonly planWeekInBackground: PlanWeekInBackgroundResult;
  /** Propose that the child wakes elsewhere than agreed on single days. It holds when the other home accepts. */
  readonly proposeResidenceChange: ProposeResidenceChangeResult;
  /** Record an allergy of a child or make it stricter, from either home, at once. Boxes that no longer pass are blocked in both. */
  readonly recordAllergy: RecordAllergyResult;
  /** Let a rule of a school or jurisdiction rest for a child on a clinician's note, at most a year. Never one that keeps an allergen out, nor one of the family's own. */
  readonly recordExemption: RecordExemptionResult;
  /** Record what a label says. Needed before a box may be marked packed for a child who avoids traces. */
  readonly recordLabel: RecordLabelResult;
  /** Add a school to the jurisdiction. Only for its administrators. */
  readonly registerSchool: RegisterSchoolResult;
  /** Let a house rule rest for one day. Safety, school rules and the kitchen's limits cannot be relaxed. */
  readonly relaxHouseRule: RelaxHouseRuleResult;
  /** Let go of a task: anybody may take it again. For whoever holds it, and for a coordinator. */
  readonly releaseTask: ReleaseTaskResult;
  /** Remove or loosen this home's record of an allergy. Takes two steps: without a token it answers what to send back. */
  readonly removeAllergy: RemoveAllergyResult;
  /** Take a carer out. Only for a coordinator. What they had taken is open again, what they did stays done. */
  readonly removeCarer: RemoveCarerResult;
  /** Take a dish off the list; refused while it stands in a box of a week that is not over. */
  readonly removeOwnDish: RemoveOwnDishResult;
  /** Take a food off the list; refused while one of the household's own dishes is made of it. */
  readonly removeOwnFood: RemoveOwnFoodResult;
  /** Take back what was said of a day. Only for the administrator. */
  readonly removeSchoolDay: RemoveSchoolDayResult;
  /** Take a term off the calendar. Only for the administrator. */
  readonly removeTerm: RemoveTermResult;
  /** Change the name that other carers see. */
  readonly renameMe: RenameMeResult;
  /** Makes a new secret address of the sender's own feed; the one before stops working at once. */
  readonly renewFeedAddress: RenewFeedAddressResult;
  /** A child stays home: the day's box falls away and the rest is replanned with the fewest changes. */
  readonly reportAbsence: ReportAbsenceResult;
  /** Report what upsets the week. It is recorded in any case, with the week planned again in the same step: as few boxes change as can, and nothing pinned, packed or cooked moves. When no such week is left, boxes that no longer pass are BLOCKED and infeasible says why. A later week it touches is not planned again: its boxes are checked, and mended by mendWeek. */
  readonly reportDisruption: ReportDisruptionResult;
  /** Say what came back in a box, from either home of the child. The box is EATEN then. Said again, the last word holds. */
  readonly reportReturned: ReportReturnedResult;
  /** Add a dish to the household's own list, or change one. It is derived and checked at once. */
  readonly saveOwnDish: SaveOwnDishResult;
  /** Add a food to the household's own list, or change one: the product in hand, as its label prints it. */
  readonly saveOwnFood: SaveOwnFoodResult;
  /** Say when one can help; replaces what was said before. A coordinator may say it for others. */
  readonly setAvailability: SetAvailabilityResult;
  /** Say what this household packs the child's box in, and when the child leaves it on a school day. A home that took the child in by a link says so before its first week. */
  readonly setBoxKit: SetBoxKitResult;
  /** Say who is on for sessions. Sessions not named stay as they are; an empty list takes everybody off. */
  readonly setDuties: SetDutiesResult;
  /** Choose the equation that the household's energy figures come from. */
  readonly setEnergyMethod: SetEnergyMethodResult;
  /** Set how many of each piece of equipment the kitchen has; kinds not named stay. */
  readonly setEquipment: SetEquipmentResult;
  /** Say how a class keeps or heats food. Only for the school's or jurisdiction's administrator. */
  readonly setFacility: SetFacilityResult;
  /** Say on which days it will be hotter than 32 °C; replaces the list. Boxes of those days are held to an hour without cold, and planned cold ones to a warmer room. */
  readonly setHotDays: SetHotDaysResult;
  /** Say which allergens never enter this kitchen; replaces the list. */
  readonly setKeepsOut: SetKeepsOutResult;
  /** Say what the family meals leave; replaces the list. */
  readonly setLeftovers: SetLeftoversResult;
  /** Set the minutes of prep sessions, by weekday or for one date. */
  readonly setPrepTimes: SetPrepTimesResult;
  /** Set the days on which the child wakes here. With one home it holds at once; with two it is proposed to the other home and holds when that accepts. */
  readonly setResidencePattern: SetResidencePatternResult;
  /** Say what one day of the school or a class is like; takes the place of what was said of it before. Only for the administrator. */
  readonly setSchoolDay: SetSchoolDayResult;
  /** Say what food or milk the school gives a child; replaces the list. */
  readonly setSchoolProvision: SetSchoolProvisionResult;
  /** Say what is in the cupboard. Foods not named stay as they are; 0 grams takes one out. */
  readonly setStock: SetStockResult;
  /** Add a term, or put it in place of another. Only for the administrator. */
  readonly setTerm: SetTermResult;
  /** Put another dish in an item's place and lay the week out again. */
  readonly swapItem: SwapItemResult;
  /** Take a task. Exactly one carer holds it. */
  readonly takeTask: TakeTaskResult;
  /** Tick a line of the shopping list, or take the tick back. */
  readonly tickShoppingLine: TickShoppingLineResult;
  /** Take back that a task is done: whoever did it holds it again. For that person, and for a coordinator. */
  readonly undoTask: UndoTaskResult;
  readonly unpinItem: UnpinItemResult;
  /** Take a report back, from either home when it is about a child; the week is planned again near what it is. */
  readonly withdrawDisruption: WithdrawDisruptionResult;
  /** Takes back this home's asking for a child to be erased. */
  readonly withdrawErasure: WithdrawErasureResult;
  /** Take an open link back. Only for a coordinator. */
  readonly withdrawInvitation: WithdrawInvitationResult;
  /** Take back what this home proposed and nobody has answered. */
  readonly withdrawResidenceChange: WithdrawResidenceChangeResult;
  /** Let a rule set ask for nothing any more from a day on, as a new version. Only for its administrator. */
  readonly withdrawRuleSet: WithdrawRuleSetResult;
  /** Write the week's handover note; it takes the place of what it said. Either home may. */
  readonly writeHandover: WriteHandoverResult;
};


export type MutationAcceptHomeInvitationArgs = {
  input: AcceptHomeInvitationInput;
};


export type MutationAcceptInvitationArgs = {
  input: AcceptInvitationInput;
};


export type MutationAcceptRotaArgs = {
  input: AcceptRotaInput;
};


export type MutationAddSchoolClassArgs = {
  input: AddSchoolClassInput;
};


export type MutationAdoptRuleSetArgs = {
  input: AdoptRuleSetInput;
};


export type MutationAgreeWeekArgs = {
  input: AgreeWeekInput;
};


export type MutationAnswerResidenceChangeArgs = {
  input: AnswerResidenceChangeInput;
};


export type MutationAppointArgs = {
  input: AppointInput;
};


export type MutationChangeRoleArgs = {
  input: ChangeRoleInput;
};


export type MutationChangeSchoolClassArgs = {
  input: ChangeSchoolClassInput;
};


export type MutationCloseFeedArgs = {
  input: CloseFeedInput;
};


export type MutationCountRuleSetComplianceArgs = {
  input: CountRuleSetComplianceInput;
};


export type MutationCountRuleSetImpactArgs = {
  input: CountRuleSetImpactInput;
};


export type MutationCreateChildArgs = {
  input: CreateChildInput;
};


export type MutationCreateHouseholdArgs = {
  input: CreateHouseholdInput;
};


export type MutationDismissArgs = {
  input: DismissInput;
};


export type MutationDropOwnRulesArgs = {
  input: DropOwnRulesInput;
};


export type MutationEndExemptionArgs = {
  input: EndExemptionInput;
};


export type MutationEnrolChildArgs = {
  input: EnrolChildInput;
};


export type MutationEraseChildArgs = {
  input: EraseChildInput;
};


export type MutationEraseHouseholdArgs = {
  input: EraseHouseholdInput;
};


export type MutationEraseMeArgs = {
  input: EraseMeInput;
};


export type MutationFinishTaskArgs = {
  input: FinishTaskInput;
};


export type MutationGiveUpHomeArgs = {
  input: GiveUpHomeInput;
};


export type MutationHandOverCoordinationArgs = {
  input: HandOverCoordinationInput;
};


export type MutationHandTaskArgs = {
  input: HandTaskInput;
};


export type MutationInviteCarerArgs = {
  input: InviteCarerInput;
};


export type MutationInviteHomeArgs = {
  input: InviteHomeInput;
};


export type MutationKeepOwnRulesArgs = {
  input: KeepOwnRulesInput;
};


export type MutationLeaveHouseholdArgs = {
  input: LeaveHouseholdInput;
};


export type MutationLoadCalendarArgs = {
  input: LoadCalendarInput;
};


export type MutationLoadRuleSetArgs = {
  input: LoadRuleSetInput;
};


export type MutationMarkPackedArgs = {
  input: MarkPackedInput;
};


export type MutationMendWeekArgs = {
  input: MendWeekInput;
};


export type MutationPinItemArgs = {
  input: PinItemInput;
};


export type MutationPlanWeekArgs = {
  input: PlanWeekInput;
};


export type MutationPlanWeekInBackgroundArgs = {
  input: PlanWeekInBackgroundInput;
};


export type MutationProposeResidenceChangeArgs = {
  input: ProposeResidenceChangeInput;
};


export type MutationRecordAllergyArgs = {
  input: RecordAllergyInput;
};


export type MutationRecordExemptionArgs = {
  input: RecordExemptionInput;
};


export type MutationRecordLabelArgs = {
  input: RecordLabelInput;
};


export type MutationRegisterSchoolArgs = {
  input: RegisterSchoolInput;
};


export type MutationRelaxHouseRuleArgs = {
  input: RelaxHouseRuleInput;
};


export type MutationReleaseTaskArgs = {
  input: ReleaseTaskInput;
};


export type MutationRemoveAllergyArgs = {
  input: RemoveAllergyInput;
};


export type MutationRemoveCarerArgs = {
  input: RemoveCarerInput;
};


export type MutationRemoveOwnDishArgs = {
  input: RemoveOwnDishInput;
};


export type MutationRemoveOwnFoodArgs = {
  input: RemoveOwnFoodInput;
};


export type MutationRemoveSchoolDayArgs = {
  input: RemoveSchoolDayInput;
};


export type MutationRemoveTermArgs = {
  input: RemoveTermInput;
};


export type MutationRenameMeArgs = {
  input: RenameMeInput;
};


export type MutationRenewFeedAddressArgs = {
  input: RenewFeedAddressInput;
};


export type MutationReportAbsenceArgs = {
  input: ReportAbsenceInput;
};


export type MutationReportDisruptionArgs = {
  input: ReportDisruptionInput;
};


export type MutationReportReturnedArgs = {
  input: ReportReturnedInput;
};


export type MutationSaveOwnDishArgs = {
  input: SaveOwnDishInput;
};


export type MutationSaveOwnFoodArgs = {
  input: SaveOwnFoodInput;
};


export type MutationSetAvailabilityArgs = {
  input: SetAvailabilityInput;
};


export type MutationSetBoxKitArgs = {
  input: SetBoxKitInput;
};


export type MutationSetDutiesArgs = {
  input: SetDutiesInput;
};


export type MutationSetEnergyMethodArgs = {
  input: SetEnergyMethodInput;
};


export type MutationSetEquipmentArgs = {
  input: SetEquipmentInput;
};


export type MutationSetFacilityArgs = {
  input: SetFacilityInput;
};


export type MutationSetHotDaysArgs = {
  input: SetHotDaysInput;
};


export type MutationSetKeepsOutArgs = {
  input: SetKeepsOutInput;
};


export type MutationSetLeftoversArgs = {
  input: SetLeftoversInput;
};


export type MutationSetPrepTimesArgs = {
  input: SetPrepTimesInput;
};


export type MutationSetResidencePatternArgs = {
  input: SetResidencePatternInput;
};


export type MutationSetSchoolDayArgs = {
  input: SetSchoolDayInput;
};


export type MutationSetSchoolProvisionArgs = {
  input: SetSchoolProvisionInput;
};


export type MutationSetStockArgs = {
  input: SetStockInput;
};


export type MutationSetTermArgs = {
  input: SetTermInput;
};


export type MutationSwapItemArgs = {
  input: SwapItemInput;
};


export type MutationTakeTaskArgs = {
  input: TakeTaskInput;
};


export type MutationTickShoppingLineArgs = {
  input: TickShoppingLineInput;
};


export type MutationUndoTaskArgs = {
  input: UndoTaskInput;
};


export type MutationUnpinItemArgs = {
  input: UnpinItemInput;
};


export type MutationWithdrawDisruptionArgs = {
  input: WithdrawDisruptionInput;
};


export type MutationWithdrawErasureArgs = {
  input: WithdrawErasureInput;
};


export type MutationWithdrawInvitationArgs = {
  input: WithdrawInvitationInput;
};


export type MutationWithdrawResidenceChangeArgs = {
  input: WithdrawResidenceChangeInput;
};


export type MutationWithdrawRuleSetArgs = {
  input: WithdrawRuleSetInput;
};


export type MutationWriteHandoverArgs = {
  input: WriteHandoverInput;
};

export type NeedSource = {
  readonly __typename?: 'NeedSource';
  /** energy, protein, intakes, sodium, saturatedFat, freeSugars, addedSugars, upperLevels or bodySize. */
  readonly figure: Scalars['String']['output'];
  readonly source: Scalars['String']['output'];
};

export type NeedsInputs = {
  readonly __typename?: 'NeedsInputs';
  /** INACTIVE, LOW_ACTIVE, ACTIVE or VERY_ACTIVE, each method's own scale. */
  readonly activity: Scalars['String']['output'];
  /** With the part of the running year. */
  readonly ageYears: Scalars['Float']['output'];
  /** What this household did not enter: sex, weightKg, heightCm. Sizes are then medians of the growth charts. */
  readonly assumed: ReadonlyArray<Scalars['String']['output']>;
  readonly heightCm: Scalars['Float']['output'];
  /** FEMALE or MALE; null where it is not known to this household, then both sexes' figures are averaged. */
  readonly sex?: Maybe<Scalars['String']['output']>;
  readonly weightKg: Scalars['Float']['output'];
};

/** A child who wakes here that week has no school. */
export type NoSchool = UserError & {
  readonly __typename?: 'NoSchool';
  readonly children: ReadonlyArray<Child>;
  readonly message: Scalars['String']['output'];
};

/** The dish may stand there, and no week with it was found. */
export type NoWeekWithDish = UserError & {
  readonly __typename?: 'NoWeekWithDish';
  /** What it clashes with; null when the search was not sure. */
  readonly clash?: Maybe<Clash>;
  readonly message: Scalars['String']['output'];
};

/** Anything that can be asked for again by its ID. */
export type Node = {
  /** Opaque. Not to be taken apart: its form may change. */
  readonly id: Scalars['ID']['output'];
};

/** The person does not administer this school. */
export type NotAppointed = UserError & {
  readonly __typename?: 'NotAppointed';
  readonly message: Scalars['String']['output'];
};

/** The person's role in this household does not allow it. */
export type NotPermitted = UserError & {
  readonly __typename?: 'NotPermitted';
  readonly message: Scalars['String']['output'];
  /** The least role that may do it. */
  readonly neededRole: Role;
};

/** No such box, item or task, or not one of yours, or of a plan that was replaced. */
export type NothingThere = UserError & {
  readonly __typename?: 'NothingThere';
  readonly message: Scalars['String']['output'];
  /** What was looked for. */
  readonly what: Scalars['String']['output'];
};

/** INFOODS tag name, amount and unit. */
export type NutrientAmount = {
  readonly __typename?: 'NutrientAmount';
  readonly amount: Scalars['Float']['output'];
  readonly tag: Scalars['String']['output'];
  readonly unit: Scalars['String']['output'];
};

export type NutrientDerivation = {
  readonly __typename?: 'NutrientDerivation';
  /** What a maximum counts: more than the total only where no retention factor was read. */
  readonly atMost?: Maybe<Scalars['Float']['output']>;
  /** The table has no figure for these; the total leaves them out. */
  readonly missing: ReadonlyArray<Food>;
  readonly nutrient: NutrientTag;
  /** They add up to the total. */
  readonly parts: ReadonlyArray<NutrientPart>;
  /** What a minimum counts and what is shown; null when no ingredient's figure is known. */
  readonly total?: Maybe<Scalars['Float']['output']>;
  readonly unit: Scalars['String']['output'];
};

/** An ingredient's amount: grams times the figure per 100 g times the factor. */
export type NutrientPart = {
  readonly __typename?: 'NutrientPart';
  readonly amount: Scalars['Float']['output'];
  /** The base it comes in with; null for an ingredient of the dish itself. */
  readonly base?: Maybe<Base>;
  readonly basis: RetentionBasis;
  /** The part that cooking surely leaves, 0 to 1. */
  readonly factor: Scalars['Float']['output'];
  readonly food: Food;
  readonly grams: Scalars['Float']['output'];
  readonly per100: Scalars['Float']['output'];
  readonly retention?: Maybe<Retention>;
};

/** INFOODS tag names; an amount's unit stands beside it. */
export type NutrientTag =
  | 'CA'
  | 'CHOCDF'
  | 'ENERC_KCAL'
  | 'FAMS'
  | 'FAPU'
  | 'FASAT'
  | 'FAT'
  | 'FE'
  | 'FIBTG'
  | 'FOLDFE'
  | 'K'
  | 'MG'
  | 'NA'
  | 'P'
  | 'PROCNT'
  | 'SUGAR'
  | 'VITA_RAE'
  | 'VITB12'
  | 'VITC'
  | 'VITD'
  | 'WATER'
  | 'ZN';

/** It is the child's only home. */
export type OnlyHome = UserError & {
  readonly __typename?: 'OnlyHome';
  readonly message: Scalars['String']['output'];
};

/** No child of this household has a school day then. */
export type OutsideTerm = UserError & {
  readonly __typename?: 'OutsideTerm';
  readonly message: Scalars['String']['output'];
  /** The next school day of any of the children; null when no term is known. */
  readonly nextSchoolDay?: Maybe<Scalars['LocalDate']['output']>;
  readonly weekStart: Scalars['LocalDate']['output'];
};

export type OwnDishBaseInput = {
  /** Base key: rice-cooked. */
  readonly base: Scalars['String']['input'];
  readonly grams: Scalars['Float']['input'];
};

/** All of it each time, for one reference portion. */
export type OwnDishInput = {
  readonly bases: ReadonlyArray<OwnDishBaseInput>;
  readonly colours: ReadonlyArray<Scalars['String']['input']>;
  readonly cookedInFat: Scalars['Boolean']['input'];
  readonly cuisine: Scalars['String']['input'];
  readonly cutlery: Cutlery;
  readonly flavours: ReadonlyArray<Scalars['String']['input']>;
  /** Hours it stays good to eat, 1 to 24: quality, not safety. */
  readonly goodForHours: Scalars['Float']['input'];
  readonly ingredients: ReadonlyArray<OwnIngredientInput>;
  readonly name: Scalars['String']['input'];
  readonly portion: OwnPortionInput;
  /** What school rules ask about: DEEP_FRIED, PASTRY, COATED, CONFECTIONERY, CAKE_OR_BISCUIT, SAVOURY_SNACK, FIZZY_DRINK. */
  readonly processing: ReadonlyArray<Scalars['String']['input']>;
  /** EGG, CHICKEN, PULSE and so on, or NONE. */
  readonly protein: Scalars['String']['input'];
  readonly served: ServedWarmth;
  readonly slots: ReadonlyArray<Slot>;
  readonly spill: SpillClass;
  /** RICE, BREAD, FLATBREAD, PASTA, NOODLE, POTATO, MAIZE, MILLET, GRAIN, BATTER_CAKE or NONE. */
  readonly starch: Scalars['String']['input'];
  readonly steps: ReadonlyArray<OwnDishStepInput>;
  readonly textures: ReadonlyArray<Scalars['String']['input']>;
  readonly treat: Scalars['Boolean']['input'];
  /** Space of the portion in the box. */
  readonly volumeMl: Scalars['Float']['input'];
};

export type OwnDishStepInput = {
  /** Portions one go of the equipment takes; absent when it does not limit. */
  readonly batchPortions?: InputMaybe<Scalars['Int']['input']>;
  /** Minutes to cool after it before the lid may close. */
  readonly coolMinutes: Scalars['Float']['input'];
  readonly equipment: ReadonlyArray<OwnEquipmentInput>;
  readonly eveningBefore: Scalars['Boolean']['input'];
  readonly handsOnFixedMinutes: Scalars['Float']['input'];
  readonly handsOnPerPortionMinutes: Scalars['Float']['input'];
  /** The equipment stays occupied while it cools. */
  readonly heldWhileCooling: Scalars['Boolean']['input'];
  readonly passiveMinutes: Scalars['Float']['input'];
  readonly text: Scalars['String']['input'];
};

export type OwnEquipmentInput = {
  readonly kind: Scalars['String']['input'];
  readonly units: Scalars['Int']['input'];
};

/** All of it each time: what is absent is not known, and nothing is kept from before. */
export type OwnFoodInput = {
  /** Shapes and textures small children choke on; an empty list says there are none. */
  readonly chokingClasses: ReadonlyArray<Scalars['String']['input']>;
  /** Needed for recipes in millilitres. */
  readonly densityGramsPerMl?: InputMaybe<Scalars['Float']['input']>;
  /** A food group: GRAIN, CONDIMENT. */
  readonly group: Scalars['String']['input'];
  readonly keepsChilledDays?: InputMaybe<Scalars['Int']['input']>;
  /** The plant, animal or product it is, for allergies to one food: chickpea, cow-milk. */
  readonly kind: Scalars['String']['input'];
  /** Absent: nobody has read it, and it counts as unread for everybody who avoids anything. */
  readonly label?: InputMaybe<OwnLabelInput>;
  readonly name: Scalars['String']['input'];
  readonly nutrients: LabelNutrientsInput;
  /** What it comes from: PLANT, DAIRY, EGG. All of them. */
  readonly origins: ReadonlyArray<Scalars['String']['input']>;
  readonly pack: OwnPackInput;
  /** Sold with a label. Only an unpackaged food whose allergens are stated is taken to be nothing but its kind. */
  readonly packaged: Scalars['Boolean']['input'];
  /** The day from which the product is as entered; an older label is another product's. */
  readonly productSince?: InputMaybe<Scalars['LocalDate']['input']>;
  readonly refusePercent: Scalars['Float']['input'];
  /** PRODUCE, CHILLED, MEAT_FISH, BAKERY, DRY_GOODS, TINS_JARS, FROZEN or SPICES_OILS. */
  readonly shopSection: Scalars['String']['input'];
  readonly wholeGrain: Scalars['Boolean']['input'];
};

export type OwnIngredientInput = {
  /** Food key, of the catalogue or of the household's own list. */
  readonly food: Scalars['String']['input'];
  /** How it reaches the box: WHOLE, GRATED, MIXED_IN. */
  readonly form: Scalars['String']['input'];
  /** Give this or ml. */
  readonly grams?: InputMaybe<Scalars['Float']['input']>;
  /** Only for a food whose density is known. */
  readonly ml?: InputMaybe<Scalars['Float']['input']>;
  /** Code of the retention table for a raw food cooked here; 0000 where none of it fits. Without one it counts as eaten raw. */
  readonly retention?: InputMaybe<Scalars['String']['input']>;
};

export type OwnLabelInput = {
  readonly contains: ReadonlyArray<Scalars['String']['input']>;
  readonly kinds: ReadonlyArray<LabelKindInput>;
  readonly mayContain: ReadonlyArray<Scalars['String']['input']>;
  readonly readOn: Scalars['LocalDate']['input'];
};

export type OwnPackInput = {
  readonly grams: Scalars['Float']['input'];
  /** In the household's currency. */
  readonly priceMinor: Scalars['Int']['input'];
};

/** Weighed (grams, stepGrams) or counted (gramsPerPiece, pieces, stepPieces, pieceName). */
export type OwnPortionInput = {
  readonly grams?: InputMaybe<Scalars['Float']['input']>;
  readonly gramsPerPiece?: InputMaybe<Scalars['Float']['input']>;
  readonly pieceName?: InputMaybe<Scalars['String']['input']>;
  readonly pieces?: InputMaybe<Scalars['Float']['input']>;
  readonly stepGrams?: InputMaybe<Scalars['Int']['input']>;
  readonly stepPieces?: InputMaybe<Scalars['Float']['input']>;
};

export type OwnRulesPayload = {
  readonly __typename?: 'OwnRulesPayload';
  readonly child: Child;
  readonly household: Household;
  readonly ruleSet: RuleSet;
  /** The newest version said the same already: nothing was kept. */
  readonly unchanged: Scalars['Boolean']['output'];
};

export type PackingTime = {
  readonly __typename?: 'PackingTime';
  /** Which pair of hands, from 1. */
  readonly carer: Scalars['Int']['output'];
  readonly endsAt: Scalars['LocalTime']['output'];
  /** morning- and the date. */
  readonly session: Scalars['String']['output'];
  readonly startsAt: Scalars['LocalTime']['output'];
};

export type PageInfo = {
  readonly __typename?: 'PageInfo';
  readonly endCursor?: Maybe<Scalars['String']['output']>;
  readonly hasNextPage: Scalars['Boolean']['output'];
};

/** Who signs in. */
export type Person = Node & {
  readonly __typename?: 'Person';
  readonly displayName: Scalars['String']['output'];
  readonly id: Scalars['ID']['output'];
};

/** Nobody has signed in with this subject. */
export type PersonNotFound = UserError & {
  readonly __typename?: 'PersonNotFound';
  readonly message: Scalars['String']['output'];
  readonly subject: Scalars['String']['output'];
};

export type PinItemInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly itemId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type PinItemResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | WeekPayload;

export type PlaceVerdict = {
  readonly __typename?: 'PlaceVerdict';
  readonly allowed: Scalars['Boolean']['output'];
  readonly breakKey: Scalars['String']['output'];
  /** What the packer has to cut, and how; empty when it is not allowed. */
  readonly cuts: ReadonlyArray<Cut>;
  /** The first thing that shuts it out; null when it is allowed. */
  readonly exclusion?: Maybe<Exclusion>;
  /** Labels to read before packing; empty when it is not allowed. */
  readonly labelsToRead: ReadonlyArray<Food>;
  /** Counts items of the same slot in a break, from 0. */
  readonly place: Scalars['Int']['output'];
  readonly slot: Slot;
};

/** No week that meets the same requirements has fewer points than boundPoints: checked in whole numbers, without trust in a solver. About what the search weighs, not about safety, which no week of it may break. */
export type PlanCertificate = {
  readonly __typename?: 'PlanCertificate';
  readonly boundPoints: Scalars['Float']['output'];
  readonly createdAt: Scalars['DateTime']['output'];
  /** Points of the week above the bound, in percent of the week's own; 0 or more. */
  readonly gapPercent: Scalars['Float']['output'];
  /** Linear programs solved. */
  readonly nodes: Scalars['Int']['output'];
  readonly objectivePoints: Scalars['Float']['output'];
  /** Nothing better is possible, but for 0.01 percent. */
  readonly provenOptimal: Scalars['Boolean']['output'];
  readonly seconds: Scalars['Float']['output'];
};

export type PlanOrigin = {
  readonly __typename?: 'PlanOrigin';
  readonly catalogueVersion: Scalars['String']['output'];
  readonly problemHash: Scalars['String']['output'];
  /** key@version of every rule set that was obeyed. */
  readonly ruleSetVersions: ReadonlyArray<Scalars['String']['output']>;
  /** Unsigned 32-bit number as text. */
  readonly seed: Scalars['String']['output'];
  readonly steps: Scalars['Int']['output'];
};

export type PlanProgress = {
  readonly __typename?: 'PlanProgress';
  /** Objective of the best week so far, in the planner's points; null before the first that passes every rule. */
  readonly bestPoints?: Maybe<Scalars['Int']['output']>;
  /** Set when a job ended without a plan: why, as a sentence. Null while it goes well. */
  readonly failure?: Maybe<Scalars['String']['output']>;
  readonly percent: Scalars['Int']['output'];
  readonly weekStart: Scalars['LocalDate']['output'];
};

/** The job is on record; it survives a restart of the server that works on it. */
export type PlanQueued = {
  readonly __typename?: 'PlanQueued';
  /** Moves the search will make. */
  readonly steps: Scalars['Int']['output'];
  readonly weekStart: Scalars['LocalDate']['output'];
};

export type PlanState =
  | 'AGREED'
  | 'DRAFT'
  | 'REPLACED';

/** The same as for planWeek. */
export type PlanWeekInBackgroundInput = {
  readonly date: Scalars['LocalDate']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly replanAgreed: Scalars['Boolean']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type PlanWeekInBackgroundResult = HouseholdNotFound | InvalidInput | KeyReused | NoSchool | NotPermitted | OutsideTerm | PlanQueued | RevisionPassed | WeekAgreed | WeekInfeasible;

export type PlanWeekInput = {
  /** Any day of the week. */
  readonly date: Scalars['LocalDate']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** Needed to plan an agreed week afresh; changes as few boxes as it can. */
  readonly replanAgreed: Scalars['Boolean']['input'];
  /** The week's revision; 0 when nothing has been planned for it. */
  readonly seenRevision: Scalars['Int']['input'];
};

export type PlanWeekResult = HouseholdNotFound | InvalidInput | KeyReused | NoSchool | NotPermitted | OutsideTerm | RevisionPassed | WeekAgreed | WeekInfeasible | WeekPayload;

/** A stretch of kitchen time with its tasks on the clock. */
export type PrepSession = {
  readonly __typename?: 'PrepSession';
  /** Each appliance with what stands on it, one thing after the other. */
  readonly appliances: ReadonlyArray<ApplianceUses>;
  /** Each pair of hands with what it does, one thing after the other. */
  readonly carers: ReadonlyArray<CarerTasks>;
  readonly endsAt: Scalars['LocalTime']['output'];
  readonly handsOnMinutes: Scalars['Float']['output'];
  /** weekend-, evening- or morning- and the date it happens. */
  readonly key: Scalars['String']['output'];
  readonly startsAt: Scalars['LocalTime']['output'];
  readonly tasks: ReadonlyArray<Task>;
  /** How long it takes at least and how late it can begin; null in a plan from before sessions were timed. */
  readonly timing?: Maybe<SessionTiming>;
};

/** Time a household gives to one kind of prep session on one weekday. */
export type PrepTime = {
  readonly __typename?: 'PrepTime';
  readonly carers: Scalars['Int']['output'];
  /** Points the planner counts per hands-on minute, 0 to 1000: higher where minutes are scarce. */
  readonly effort: Scalars['Int']['output'];
  /** Minutes from start to end, 0 to 720. */
  readonly elapsedMinutes: Scalars['Int']['output'];
  /** Minutes of hands-on work in all, 0 to 600. */
  readonly handsOnMinutes: Scalars['Int']['output'];
  readonly kind: WindowKind;
  readonly startsAt: Scalars['LocalTime']['output'];
  /** The day the session happens on. */
  readonly weekday: Weekday;
};

export type PrepTimeInput = {
  readonly carers: Scalars['Int']['input'];
  /** Only on this day. */
  readonly date?: InputMaybe<Scalars['LocalDate']['input']>;
  /** A usual value for the kind of session when absent: weekend 4, evening 6, morning 10. */
  readonly effort?: InputMaybe<Scalars['Int']['input']>;
  readonly elapsedMinutes: Scalars['Int']['input'];
  readonly handsOnMinutes: Scalars['Int']['input'];
  readonly kind: WindowKind;
  readonly startsAt: Scalars['LocalTime']['input'];
  /** Every week on this day. Give this or date. */
  readonly weekday?: InputMaybe<Weekday>;
};

export type PriceBand =
  | 'HIGH'
  | 'LOW'
  | 'MIDDLE';

/** What the week would have more of, each wish in its own unit; negative where it has less. */
export type PriceOfChange = {
  readonly __typename?: 'PriceOfChange';
  readonly changedBoxes: ReadonlyArray<BoxPlace>;
  /** Items that would be another dish, the one asked for among them. */
  readonly changedItems: Scalars['Int']['output'];
  readonly costMinor: Scalars['Int']['output'];
  readonly handsOnMinutes: Scalars['Float']['output'];
  readonly monotonyPoints: Scalars['Int']['output'];
  /** Percent of the week's targets missed, summed over children and nutrients. */
  readonly nutrientShortfallPercent: Scalars['Float']['output'];
  /** All wishes together, as the planner weighs them. */
  readonly objectivePoints: Scalars['Float']['output'];
  readonly refusalPoints: Scalars['Int']['output'];
  readonly spareBaseGrams: Scalars['Int']['output'];
  /** The same in a sentence. */
  readonly text: Scalars['String']['output'];
};

export type PriceOfDishResult = ChildNotFound | DishNotOffered | DishUnknown | HouseholdNotFound | InvalidInput | NoWeekWithDish | NotPermitted | NothingThere | OutsideTerm | PricedAlternative;

export type PricedAlternative = {
  readonly __typename?: 'PricedAlternative';
  readonly dish: Dish;
  readonly grams: Scalars['Float']['output'];
  /** Null for a dish that is weighed. */
  readonly pieces?: Maybe<Scalars['Float']['output']>;
  readonly price: PriceOfChange;
};

export type ProcessingClass = {
  readonly __typename?: 'ProcessingClass';
  /** The foods that bring it; empty when it is how the dish is made. */
  readonly foods: ReadonlyArray<Food>;
  readonly tag: Scalars['String']['output'];
};

/** Work, rota or minutes have changed since: look at the proposal again. */
export type ProposalMoved = UserError & {
  readonly __typename?: 'ProposalMoved';
  readonly message: Scalars['String']['output'];
};

/** A proposal about the same pattern or day stands open. Answer it, or withdraw it where it is this home's. */
export type ProposalOpen = UserError & {
  readonly __typename?: 'ProposalOpen';
  /** The days it is about; empty for a pattern. */
  readonly dates: ReadonlyArray<Scalars['LocalDate']['output']>;
  /** By this home. */
  readonly madeHere: Scalars['Boolean']['output'];
  readonly message: Scalars['String']['output'];
  readonly proposalId: Scalars['ID']['output'];
};

/** The proposal was answered or withdrawn meanwhile. */
export type ProposalSettled = UserError & {
  readonly __typename?: 'ProposalSettled';
  readonly message: Scalars['String']['output'];
  readonly state: ProposalState;
};

export type ProposalState =
  | 'ACCEPTED'
  | 'DECLINED'
  | 'PROPOSED'
  | 'WITHDRAWN';

export type ProposeResidenceChangeInput = {
  readonly childId: Scalars['ID']['input'];
  /** 1 to 62 days from today on. */
  readonly dates: ReadonlyArray<Scalars['LocalDate']['input']>;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
  /** In this home; false: in the other. */
  readonly wakesHere: Scalars['Boolean']['input'];
};

export type ProposeResidenceChangeResult = ChildNotFound | DayClosed | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | ProposalOpen | ResidencePayload | RevisionPassed;

export type ProposedDay = {
  readonly __typename?: 'ProposedDay';
  readonly date: Scalars['LocalDate']['output'];
  readonly here: Scalars['Boolean']['output'];
};

export type ProposedMinutes = {
  readonly __typename?: 'ProposedMinutes';
  readonly minutes: Scalars['Float']['output'];
  readonly person: Person;
};

export type ProposedSession = {
  readonly __typename?: 'ProposedSession';
  readonly onDuty: ReadonlyArray<Person>;
  /** Pairs of hands that nobody can take. */
  readonly openHands: Scalars['Int']['output'];
  readonly session: RotaSession;
};

export type Query = {
  readonly __typename?: 'Query';
  /** Dishes that could take an item's place with the whole week still passing every rule, best first; found by replanning each. At most five. */
  readonly alternatives: ReadonlyArray<Alternative>;
  /** How a box would keep the rules of school and family, without planning or storing it. It takes the place of that day's box in the week as it is planned. Only for members of the child's household. */
  readonly boxCheck: BoxCheckResult;
  /** What loadCalendar would add, change and remove. Only for the school's or jurisdiction's administrator. */
  readonly calendarChange: CalendarChangeResult;
  /** By key; with householdId also one of that household's own list. */
  readonly dish?: Maybe<Dish>;
  /** All dishes by key, those for one slot when given; with householdId its own ones among them. */
  readonly dishes: DishConnection;
  /** What reportDisruption would change in the week, by planning it; nothing is stored. Runs a search, of which one operation may begin four. */
  readonly disruptionOffer: DisruptionOfferResult;
  /** The sender's own feeds, the oldest address first. */
  readonly feeds: ReadonlyArray<Feed>;
  /** A food by its key; a household's own when householdId is given. */
  readonly food?: Maybe<Food>;
  /** The handover note of the week that holds a day; null where the child is not one of the household's. */
  readonly handover?: Maybe<Handover>;
  /** Null when there is none or it is not yours. */
  readonly household?: Maybe<Household>;
  /** What a link invites to; null for a token that is none. Send it by POST: addresses are written down on the way. */
  readonly invitation?: Maybe<InvitationOffer>;
  /** Administrators of a jurisdiction, the oldest first. Null to everybody who is none of them. */
  readonly jurisdictionAppointments?: Maybe<ReadonlyArray<Appointment>>;
  /** What administrators did in a jurisdiction and at its schools, the newest first. Null to everybody who is none of them. */
  readonly jurisdictionAudit?: Maybe<AuditConnection>;
  /** A jurisdiction's rule sets, by key. */
  readonly jurisdictionRuleSets: ReadonlyArray<RuleSet>;
  /** Label laws as they stand on a day. */
  readonly labelLaws: ReadonlyArray<LabelLaw>;
  /** The person behind the token. */
  readonly me: Me;
  /** How the blocked boxes of a week could be replaced with the fewest changes; null when there is no such week of yours. */
  readonly mendingOffer?: Maybe<MendingOffer>;
  /** Anything by its ID; null when there is none or it is not yours to see. */
  readonly node?: Maybe<Node>;
  /** What a dish would cost at a place of a planned week, by planning the week again with it there, or why it is not offered there. Runs searches, of which one operation may begin four. */
  readonly priceOfDish: PriceOfDishResult;
  /** Look at a document before loading it. Only for the administrator. */
  readonly ruleSetCheck: RuleSetCheckResult;
  /** The format of rule set documents as JSON Schema (2020-12). */
  readonly ruleSetFormat: Scalars['String']['output'];
  readonly school?: Maybe<School>;
  /** All schools by name. */
  readonly schools: SchoolConnection;
  /** The week of a household that holds a day; null when nothing has been planned for it. */
  readonly week?: Maybe<Week>;
};


export type QueryAlternativesArgs = {
  itemId: Scalars['ID']['input'];
};


export type QueryBoxCheckArgs = {
  childId: Scalars['ID']['input'];
  date: Scalars['LocalDate']['input'];
  householdId: Scalars['ID']['input'];
  items: ReadonlyArray<BoxCheckItemInput>;
};


export type QueryCalendarChangeArgs = {
  calendar: Scalars['String']['input'];
  schoolId: Scalars['ID']['input'];
};


export type QueryDishArgs = {
  householdId?: InputMaybe<Scalars['ID']['input']>;
  key: Scalars['String']['input'];
};


export type QueryDishesArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first: Scalars['Int']['input'];
  householdId?: InputMaybe<Scalars['ID']['input']>;
  slot?: InputMaybe<Slot>;
};


export type QueryDisruptionOfferArgs = {
  disruption: DisruptionInput;
  householdId: Scalars['ID']['input'];
};


export type QueryFoodArgs = {
  householdId?: InputMaybe<Scalars['ID']['input']>;
  key: Scalars['String']['input'];
};


export type QueryHandoverArgs = {
  childId: Scalars['ID']['input'];
  date: Scalars['LocalDate']['input'];
  householdId: Scalars['ID']['input'];
};


export type QueryHouseholdArgs = {
  id: Scalars['ID']['input'];
};


export type QueryInvitationArgs = {
  token: Scalars['String']['input'];
};


export type QueryJurisdictionAppointmentsArgs = {
  jurisdiction: Scalars['String']['input'];
};


export type QueryJurisdictionAuditArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first: Scalars['Int']['input'];
  jurisdiction: Scalars['String']['input'];
};


export type QueryJurisdictionRuleSetsArgs = {
  jurisdiction: Scalars['String']['input'];
};


export type QueryLabelLawsArgs = {
  on: Scalars['LocalDate']['input'];
};


export type QueryMendingOfferArgs = {
  weekId: Scalars['ID']['input'];
};


export type QueryNodeArgs = {
  id: Scalars['ID']['input'];
};


export type QueryPriceOfDishArgs = {
  breakKey: Scalars['String']['input'];
  childId: Scalars['ID']['input'];
  date: Scalars['LocalDate']['input'];
  dish: Scalars['String']['input'];
  householdId: Scalars['ID']['input'];
  place: Scalars['Int']['input'];
  slot: Slot;
};


export type QueryRuleSetCheckArgs = {
  input: RuleSetDocumentInput;
};


export type QuerySchoolArgs = {
  id: Scalars['ID']['input'];
};


export type QuerySchoolsArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first: Scalars['Int']['input'];
};


export type QueryWeekArgs = {
  date: Scalars['LocalDate']['input'];
  householdId: Scalars['ID']['input'];
};

/** Grams of something ready that a day's boxes eat. */
export type ReadyUse = {
  readonly __typename?: 'ReadyUse';
  readonly base: Base;
  readonly date: Scalars['LocalDate']['output'];
  readonly grams: Scalars['Float']['output'];
};

export type RecordAllergyInput = {
  /** An allergen or a family of them (TREE_NUTS, GLUTEN_CEREALS, SHELLFISH). Give this or foodKind. */
  readonly allergen?: InputMaybe<Scalars['String']['input']>;
  readonly avoid: Avoid;
  readonly childId: Scalars['ID']['input'];
  /** One food: kiwi, chickpea. */
  readonly foodKind?: InputMaybe<Scalars['String']['input']>;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** Says that foodKind is meant although no food of the catalogue is of that kind: it shuts out nothing until one is. */
  readonly kindUnknown: Scalars['Boolean']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type RecordAllergyResult = AllergyPayload | ChildNotFound | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed;

export type RecordExemptionInput = {
  readonly childId: Scalars['ID']['input'];
  /** Who wrote the note. It stays with this home. */
  readonly clinician: Scalars['String']['input'];
  readonly from: Scalars['LocalDate']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly note: Scalars['String']['input'];
  /** The rule's key in its document. */
  readonly rule: Scalars['String']['input'];
  readonly ruleSetId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
  /** Last day, at most a year later. */
  readonly until: Scalars['LocalDate']['input'];
};

export type RecordExemptionResult = ChildNotFound | ExemptionPayload | ExemptionRefused | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | RevisionPassed;

export type RecordLabelInput = {
  readonly contains: ReadonlyArray<Scalars['String']['input']>;
  /** Food key. */
  readonly food: Scalars['String']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly kinds: ReadonlyArray<LabelKindInput>;
  readonly mayContain: ReadonlyArray<Scalars['String']['input']>;
  readonly readOn: Scalars['LocalDate']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type RecordLabelResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

export type RegisterSchoolInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly jurisdiction: Scalars['String']['input'];
  /** Of at most 80 characters; no two schools have the same. */
  readonly name: Scalars['String']['input'];
  /** IANA time zone, such as Europe/London. */
  readonly timeZone: Scalars['String']['input'];
};

export type RegisterSchoolResult = InvalidInput | KeyReused | NotAppointed | SchoolPayload;

export type RelaxHouseRuleInput = {
  readonly date: Scalars['LocalDate']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly rule: HouseRule;
  readonly seenRevision: Scalars['Int']['input'];
};

export type RelaxHouseRuleResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

export type ReleaseTaskInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
  readonly taskId: Scalars['ID']['input'];
};

export type ReleaseTaskResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | TaskHeld | TaskNotHeld | TaskPayload;

export type Reminder = {
  readonly __typename?: 'Reminder';
  /** When it begins, or begins to be late. */
  readonly aboutAt: Scalars['DateTime']['output'];
  readonly dueAt: Scalars['DateTime']['output'];
  readonly forEverybody: Scalars['Boolean']['output'];
  readonly id: Scalars['ID']['output'];
  readonly kind: ReminderKind;
  readonly session: Scalars['String']['output'];
  /** Null for a session, and where the plan has the task no more. */
  readonly task?: Maybe<Task>;
  readonly text: Scalars['String']['output'];
};

export type ReminderKind =
  /** A quarter of an hour before a session, to those on for it. */
  | 'SESSION_BEGINS'
  /** Ten minutes before a task, to whoever holds it. */
  | 'TASK_BEGINS'
  /** When a task that nobody holds can begin no later, to everybody in the household. */
  | 'TASK_GETS_LATE';

export type RemoveAllergyInput = {
  readonly allergen?: InputMaybe<Scalars['String']['input']>;
  readonly childId: Scalars['ID']['input'];
  readonly foodKind?: InputMaybe<Scalars['String']['input']>;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** INGREDIENTS keeps it less strictly; absent: it is removed. */
  readonly loosenTo?: InputMaybe<Avoid>;
  readonly seenRevision: Scalars['Int']['input'];
  /** From the first step's answer, with everything else the same. Absent: the first step. */
  readonly token?: InputMaybe<Scalars['String']['input']>;
};

export type RemoveAllergyResult = AllergyPayload | ChildNotFound | ConfirmationNeeded | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed;

export type RemoveCarerInput = {
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** Somebody else; who goes themselves leaves (leaveHousehold). */
  readonly personId: Scalars['ID']['input'];
};

export type RemoveCarerResult = CarerNotFound | HouseholdNotFound | HouseholdPayload | InvalidInput | KeyReused | LastCoordinator | NotPermitted;

export type RemoveOwnDishInput = {
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly key: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type RemoveOwnDishResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed | StillInUse;

export type RemoveOwnFoodInput = {
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly key: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type RemoveOwnFoodResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed | StillInUse;

export type RemoveSchoolDayInput = {
  readonly date: Scalars['LocalDate']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly schoolClassId?: InputMaybe<Scalars['ID']['input']>;
  readonly schoolId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type RemoveSchoolDayResult = InvalidInput | KeyReused | NotAppointed | RevisionPassed | SchoolNotFound | SchoolPayload;

export type RemoveTermInput = {
  readonly firstDay: Scalars['LocalDate']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly schoolId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type RemoveTermResult = InvalidInput | KeyReused | NotAppointed | RevisionPassed | SchoolNotFound | SchoolPayload;

export type RenameMeInput = {
  /** 1 to 80 characters. */
  readonly displayName: Scalars['String']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
};

export type RenameMePayload = {
  readonly __typename?: 'RenameMePayload';
  readonly person: Person;
};

export type RenameMeResult = InvalidInput | KeyReused | RenameMePayload;

export type RenewFeedAddressInput = {
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
};

/** Select `... on UserError` as well: members may be added. */
export type RenewFeedAddressResult = FeedAddressPayload | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted;

export type ReportAbsenceInput = {
  readonly childId: Scalars['ID']['input'];
  readonly date: Scalars['LocalDate']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly reason: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type ReportAbsenceResult = BoxClosed | ChildNotFound | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | OutsideTerm | RevisionPassed | WeekInfeasible | WeekPayload;

export type ReportDisruptionInput = {
  readonly disruption: DisruptionInput;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** Of the week that holds the first of its days from today on; 0 when nothing has been planned for it. */
  readonly seenRevision: Scalars['Int']['input'];
};

export type ReportDisruptionResult = ChildNotFound | DisruptionPayload | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | RevisionPassed;

export type ReportReturnedInput = {
  readonly boxId: Scalars['ID']['input'];
  /** 1 to 40; items left out stay as they are. */
  readonly entries: ReadonlyArray<ReturnedInput>;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type ReportReturnedResult = BoxBlocked | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | NothingThere | ReturnedPayload | RevisionPassed;

/** Where a child wakes on a day. The home in which it wakes packs that day. */
export type ResidenceDay = {
  readonly __typename?: 'ResidenceDay';
  readonly date: Scalars['LocalDate']['output'];
  /** The child wakes in this home. */
  readonly here: Scalars['Boolean']['output'];
  readonly source: ResidenceSource;
};

export type ResidenceKind =
  /** Seven days each. */
  | 'ALTERNATE_WEEKS'
  /** A cycle of 1 to 56 days of the homes' own. */
  | 'OWN_CYCLE'
  | 'SAME_HOME'
  /** A A B B A A A A A B B B B B: 14 days, in which each home has the same two weekdays every week. */
  | 'TWO_TWO_FIVE_FIVE'
  /** A A B B A A A, then with the homes changed over: 14 days. */
  | 'TWO_TWO_THREE';

export type ResidencePattern = {
  readonly __typename?: 'ResidencePattern';
  /** The home of each day, from the first on; it comes round again. */
  readonly cycle: ReadonlyArray<HomeSide>;
  /** Last day; null where none is set. */
  readonly ends?: Maybe<Scalars['LocalDate']['output']>;
  readonly kind: ResidenceKind;
  /** First day of the cycle. It holds from here until its last day, or until the pattern that begins next. */
  readonly starts: Scalars['LocalDate']['output'];
};

export type ResidencePayload = {
  readonly __typename?: 'ResidencePayload';
  readonly child: Child;
  readonly household: Household;
  /** Days whose planned box fell away; the home in which the child wakes now can plan them. */
  readonly movedDays: ReadonlyArray<Scalars['LocalDate']['output']>;
  /** Null where it holds without anybody's answer. */
  readonly proposal?: Maybe<ResidenceProposal>;
};

/** What one home asks of the other. Nobody is named: the other home's coordinators answer it. */
export type ResidenceProposal = {
  readonly __typename?: 'ResidenceProposal';
  /** Where the child would wake, by date; empty for a pattern. */
  readonly days: ReadonlyArray<ProposedDay>;
  readonly id: Scalars['ID']['output'];
  /** Null where single days are proposed. */
  readonly pattern?: Maybe<ResidencePattern>;
  readonly proposedAt: Scalars['DateTime']['output'];
  readonly proposedBy: HomeSide;
  readonly state: ProposalState;
};

export type ResidenceSource =
  /** Agreed for the one day. */
  | 'EXCEPTION'
  | 'PATTERN'
  /** Nothing is agreed: the home in which the child has lived longest. */
  | 'USUAL';

/** A row of the retention table: what cooking one kind of food one way leaves of its minerals and vitamins. */
export type Retention = {
  readonly __typename?: 'Retention';
  readonly code: Scalars['String']['output'];
  readonly cooked: Scalars['String']['output'];
  readonly source: Scalars['String']['output'];
};

export type RetentionBasis =
  /** None was read for this food and method: the least that any row of the table leaves. */
  | 'FLOOR'
  /** A factor read in the published table. */
  | 'TABLE'
  /** Nothing is lost, or nothing is cooked. */
  | 'WHOLE';

export type ReturnedInput = {
  readonly cameBack: CameBack;
  readonly itemId: Scalars['ID']['input'];
};

export type ReturnedPayload = {
  readonly __typename?: 'ReturnedPayload';
  readonly box: Box;
  readonly household: Household;
};

/** Someone changed it meanwhile. Read it again, then decide. */
export type RevisionPassed = UserError & {
  readonly __typename?: 'RevisionPassed';
  readonly currentRevision: Scalars['Int']['output'];
  readonly message: Scalars['String']['output'];
  readonly seenRevision: Scalars['Int']['output'];
};

/** What a carer may do in a household; each role includes the ones after it. */
export type Role =
  /** Plans, packs, takes tasks. */
  | 'COOK'
  /** Runs the household: kitchen, children, house rules. */
  | 'COORDINATOR'
  /** Takes tasks, packs, reports what came back. */
  | 'HELPER'
  /** Reads. */
  | 'OBSERVER';

export type RotaPayload = {
  readonly __typename?: 'RotaPayload';
  readonly household: Household;
};

/** Who could be on for the sessions nobody is on for yet, so that everybody's minutes of four weeks even out. */
export type RotaProposal = {
  readonly __typename?: 'RotaProposal';
  /** No other rota of these sessions is more even: every one was ruled out. */
  readonly isFairest: Scalars['Boolean']['output'];
  /** Done in the four weeks that end with the last day, what is on the rota already, and this. */
  readonly minutes: ReadonlyArray<ProposedMinutes>;
  readonly sessions: ReadonlyArray<ProposedSession>;
  /** Names just this proposal, for acceptRota. */
  readonly token: Scalars['String']['output'];
};

/** A session of the kitchen and who is on for it. */
export type RotaSession = {
  readonly __typename?: 'RotaSession';
  /** Pairs of hands. */
  readonly carers: Scalars['Int']['output'];
  readonly date: Scalars['LocalDate']['output'];
  /** Of its tasks where its week is planned, else what the kitchen gives. */
  readonly handsOnMinutes: Scalars['Float']['output'];
  /** Whether its week is planned. */
  readonly isPlanned: Scalars['Boolean']['output'];
  /** weekend-, evening- or morning- and the date it happens. */
  readonly key: Scalars['String']['output'];
  readonly kind: WindowKind;
  readonly onDuty: ReadonlyArray<Person>;
  /** Of its first task where there is one, else as the kitchen's prep times say. */
  readonly startsAt: Scalars['LocalTime']['output'];
};

export type Rule = {
  readonly __typename?: 'Rule';
  readonly ages?: Maybe<AgeSpan>;
  /** Keys of the breaks it holds at; null: all. */
  readonly breaks?: Maybe<ReadonlyArray<Scalars['String']['output']>>;
  /** First and last day of the rule itself; null: those of its rule set. */
  readonly inForceFrom?: Maybe<Scalars['LocalDate']['output']>;
  readonly inForceUntil?: Maybe<Scalars['LocalDate']['output']>;
  /** The id inside its document. */
  readonly key: Scalars['String']['output'];
  /** EXCLUDE, ONLY, FREQUENCY, AMOUNT, SHARE, NUTRIENT, TOGETHER or SERVING. */
  readonly kind: Scalars['String']['output'];
  readonly level: RuleLevel;
  /** The sentence a family reads. */
  readonly says: Scalars['String']['output'];
  readonly source: Scalars['String']['output'];
  readonly weekdays?: Maybe<ReadonlyArray<Weekday>>;
};

export type RuleChange = {
  readonly __typename?: 'RuleChange';
  /** Of a changed rule. */
  readonly fields: ReadonlyArray<FieldChange>;
  readonly kind: RuleChangeKind;
  /** As it is now; a removed one as it was. */
  readonly rule: Rule;
};

export type RuleChangeKind =
  | 'ADDED'
  | 'CHANGED'
  | 'REMOVED';

export type RuleCount = {
  readonly __typename?: 'RuleCount';
  /** Of them, boxes that break it; a limit over a week counts every box of that week. */
  readonly boxes?: Maybe<Scalars['Int']['output']>;
  readonly children?: Maybe<Scalars['Int']['output']>;
  /** Boxes it holds for. */
  readonly held?: Maybe<Scalars['Int']['output']>;
  /** The rule's id in its document; null for all together. */
  readonly rule?: Maybe<Scalars['String']['output']>;
  /** Weeks of a child. */
  readonly weeks?: Maybe<Scalars['Int']['output']>;
};

export type RuleFinding = {
  readonly __typename?: 'RuleFinding';
  /** Limits as they hold here: a short week's share of them. */
  readonly atLeast?: Maybe<Scalars['Float']['output']>;
  readonly atMost?: Maybe<Scalars['Float']['output']>;
  readonly child: Child;
  /** Null: over all the days. */
  readonly date?: Maybe<Scalars['LocalDate']['output']>;
  /** Foods whose figure is missing. */
  readonly foods: ReadonlyArray<Food>;
  /** What there is, in the unit; null where the rule has no figure or nothing was measured. */
  readonly found?: Maybe<Scalars['Float']['output']>;
  /** The item it is about; null: the whole box, or the days. */
  readonly place?: Maybe<RuleFindingPlace>;
  readonly state: RuleState;
  readonly text: Scalars['String']['output'];
  /** GRAMS, ML, CUPS, OZ_EQ, OZ_EQ_MYPLATE, KCAL, G, MG, UG, ITEMS, KINDS, DAYS, SHARE (of 1) or PERCENT_OF_ENERGY. */
  readonly unit?: Maybe<Scalars['String']['output']>;
  readonly whoSaysSo: RuleOrigin;
};

export type RuleFindingPlace = {
  readonly __typename?: 'RuleFindingPlace';
  readonly breakKey: Scalars['String']['output'];
  /** Name of the dish or food; its key where the catalogue has it no more. */
  readonly name: Scalars['String']['output'];
  /** Counts items of the same slot in the break, from 0. */
  readonly place: Scalars['Int']['output'];
  readonly slot: Slot;
};

export type RuleLayer =
  | 'CHILD'
  | 'CLASS'
  | 'JURISDICTION'
  | 'SCHOOL';

export type RuleLevel =
  /** Planned with a caution. */
  | 'ADVISE'
  /** A box that breaks it is never planned. */
  | 'FORBID';

/** The school has loaded rules of its own, and the family still keeps a copy that it wrote down itself. */
export type RuleNotice = {
  readonly __typename?: 'RuleNotice';
  readonly child: Child;
  /** With differsFromSchool. */
  readonly copy: RuleSet;
  /** First day on which one of them holds. */
  readonly from: Scalars['LocalDate']['output'];
  /** What the school loaded, the newest version of each. */
  readonly schoolRuleSets: ReadonlyArray<RuleSet>;
  readonly text: Scalars['String']['output'];
};

/** A rule that was obeyed, by child, with the days on which it held. */
export type RuleObeyed = {
  readonly __typename?: 'RuleObeyed';
  readonly child: Child;
  /** Days of the plan's boxes, without those on which it rests. */
  readonly dates: ReadonlyArray<Scalars['LocalDate']['output']>;
  readonly whoSaysSo: RuleOrigin;
};

/** Who says so: a rule with the rule set and version it stands in, as they hold on the day in question. */
export type RuleOrigin = {
  readonly __typename?: 'RuleOrigin';
  /** False: a family's copy that the school has not confirmed. */
  readonly confirmed: Scalars['Boolean']['output'];
  readonly jurisdiction?: Maybe<Scalars['String']['output']>;
  readonly rule: Rule;
  /** In the version that holds, with its layer, title and dates. */
  readonly ruleSet: RuleSet;
  /** A school's or jurisdiction's name, or: the family. */
  readonly saidBy: Scalars['String']['output'];
  /** The school that loaded it, or whose rules the family wrote down; null for a jurisdiction's and for a family's own. */
  readonly school?: Maybe<School>;
  /** Of a class's rules. */
  readonly schoolClass?: Maybe<SchoolClass>;
  /** All of it in a sentence. */
  readonly text: Scalars['String']['output'];
};

export type RuleSet = Node & {
  readonly __typename?: 'RuleSet';
  /** Whom all its rules are for, in whole years on the day; null: everyone. */
  readonly ages?: Maybe<AgeSpan>;
  /** False: a family's own copy that the school has not confirmed. */
  readonly confirmed: Scalars['Boolean']['output'];
  /** A family's copy only: the school whose rules it writes down. */
  readonly copyOf?: Maybe<School>;
  /** False: a school has to take it over before it holds for boxes. */
  readonly coversFoodFromHome: Scalars['Boolean']['output'];
  /** What the school asks for now that the copy does not say, and the other way round; null for other rule sets and while the school has loaded nothing. The copy stays in force beside the school's own until it is dropped: the strictest wins. */
  readonly differsFromSchool?: Maybe<RuleSetDifference>;
  /** The newest version as it was loaded: JSON text in the format noonpail-rule-set/1. */
  readonly document: Scalars['String']['output'];
  readonly id: Scalars['ID']['output'];
  readonly inForceFrom: Scalars['LocalDate']['output'];
  /** Last day in force; null until it is replaced. */
  readonly inForceUntil?: Maybe<Scalars['LocalDate']['output']>;
  /** Of a jurisdiction's rule set. */
  readonly jurisdiction?: Maybe<Scalars['String']['output']>;
  readonly key: Scalars['String']['output'];
  readonly layer: RuleLayer;
  readonly rules: ReadonlyArray<Rule>;
  readonly title: Scalars['String']['output'];
  readonly version: Scalars['Int']['output'];
  /** Every version that was loaded, newest first, each with what it changed. */
  readonly versions: ReadonlyArray<RuleSetVersion>;
  /** From inForceFrom on it asks for nothing any more. */
  readonly withdrawn: Scalars['Boolean']['output'];
};

/** What loading a document would find and change. Nothing is stored. */
export type RuleSetCheck = {
  readonly __typename?: 'RuleSetCheck';
  /** The newest version there, which it is compared with; null for a new rule set. */
  readonly comparedWith?: Maybe<Scalars['Int']['output']>;
  /** Null where the document cannot be read. */
  readonly difference?: Maybe<RuleSetDifference>;
  /** It is loaded only without any. */
  readonly errors: ReadonlyArray<DocumentIssue>;
  /** The newest version says the same already. */
  readonly unchanged: Scalars['Boolean']['output'];
  readonly warnings: ReadonlyArray<DocumentIssue>;
};

export type RuleSetCheckResult = InvalidInput | NotAppointed | RuleSetCheck | SchoolNotFound;

/** Boxes of agreed weeks, as numbers; null stands for fewer than five, none among them. What families' labels say of a food does not count, and a figure that is missing counts as none. */
export type RuleSetCounts = {
  readonly __typename?: 'RuleSetCounts';
  /** All rules together. */
  readonly all: RuleCount;
  readonly from: Scalars['LocalDate']['output'];
  /** Ids of rules that are not counted: they advise, look back further than a week, or speak of what no box lists. */
  readonly notCounted: ReadonlyArray<Scalars['String']['output']>;
  /** Boxes with a dish of a family's own, which are not judged here. */
  readonly ownDishes?: Maybe<Scalars['Int']['output']>;
  readonly rules: ReadonlyArray<RuleCount>;
  readonly until: Scalars['LocalDate']['output'];
};

/** What one version of a rule set says that another does not. */
export type RuleSetDifference = {
  readonly __typename?: 'RuleSetDifference';
  /** Of the document itself; a new version and where it is loaded are no difference. */
  readonly fields: ReadonlyArray<FieldChange>;
  readonly rules: ReadonlyArray<RuleChange>;
};

export type RuleSetDocumentInput = {
  /** JSON or YAML text in the format noonpail-rule-set/1, at most 200 kB over HTTP. */
  readonly document: Scalars['String']['input'];
  /** Instead of a school: the jurisdiction whose schools it is for. */
  readonly jurisdiction?: InputMaybe<Scalars['String']['input']>;
  readonly schoolClassId?: InputMaybe<Scalars['ID']['input']>;
  /** The school it is for; for a class, give schoolClassId as well. */
  readonly schoolId?: InputMaybe<Scalars['ID']['input']>;
};

export type RuleSetVersion = {
  readonly __typename?: 'RuleSetVersion';
  /** From the version before; of the first, all that it says. */
  readonly difference: RuleSetDifference;
  readonly inForceFrom: Scalars['LocalDate']['output'];
  readonly inForceUntil?: Maybe<Scalars['LocalDate']['output']>;
  readonly rules: ReadonlyArray<Rule>;
  readonly title: Scalars['String']['output'];
  readonly version: Scalars['Int']['output'];
  readonly withdrawn: Scalars['Boolean']['output'];
};

export type RuleState =
  | 'MET'
  /** It asks for nothing here; the text says why. */
  | 'NOT_APPLICABLE'
  /** A figure is missing, or it is about something that no list of dishes shows. */
  | 'NOT_KNOWN'
  | 'NOT_MET';

export type SaveOwnDishInput = {
  readonly dish: OwnDishInput;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** Of the dish to change; absent for a new one. */
  readonly key?: InputMaybe<Scalars['String']['input']>;
  readonly seenRevision: Scalars['Int']['input'];
};

export type SaveOwnDishPayload = {
  readonly __typename?: 'SaveOwnDishPayload';
  /** With everything that is derived from what goes in. */
  readonly dish: Dish;
  readonly household: Household;
  readonly missing: ReadonlyArray<MissingFact>;
};

export type SaveOwnDishResult = HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | RevisionPassed | SaveOwnDishPayload;

export type SaveOwnFoodInput = {
  readonly food: OwnFoodInput;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** Of the food to change; absent for a new one. */
  readonly key?: InputMaybe<Scalars['String']['input']>;
  readonly seenRevision: Scalars['Int']['input'];
};

export type SaveOwnFoodPayload = {
  readonly __typename?: 'SaveOwnFoodPayload';
  readonly food: Food;
  readonly household: Household;
  readonly missing: ReadonlyArray<MissingFact>;
};

export type SaveOwnFoodResult = HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | RevisionPassed | SaveOwnFoodPayload;

export type School = Node & {
  readonly __typename?: 'School';
  /** Its own and its jurisdiction's administrators, the oldest first. Null to everybody who is none of them. */
  readonly appointments?: Maybe<ReadonlyArray<Appointment>>;
  /** What administrators did here, the newest first; nothing is ever taken from it. Null to everybody who is none of them. */
  readonly audit?: Maybe<AuditConnection>;
  readonly classes: ReadonlyArray<SchoolClass>;
  /** Holidays, early finishes and trip days. */
  readonly days: ReadonlyArray<SchoolDay>;
  readonly id: Scalars['ID']['output'];
  readonly jurisdiction?: Maybe<Scalars['String']['output']>;
  readonly name: Scalars['String']['output'];
  /** Goes up with every change of its days and facilities. */
  readonly revision: Scalars['Int']['output'];
  /** Rule sets that hold here, the newest version of each. */
  readonly ruleSets: ReadonlyArray<RuleSet>;
  readonly terms: ReadonlyArray<SchoolTerm>;
  readonly timeZone: Scalars['String']['output'];
};


export type SchoolAuditArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first: Scalars['Int']['input'];
};

export type SchoolClass = Node & {
  readonly __typename?: 'SchoolClass';
  readonly breaks: ReadonlyArray<ClassBreak>;
  readonly facility: Facility;
  readonly id: Scalars['ID']['output'];
  readonly name: Scalars['String']['output'];
};

export type SchoolConnection = {
  readonly __typename?: 'SchoolConnection';
  readonly nodes: ReadonlyArray<School>;
  readonly pageInfo: PageInfo;
};

export type SchoolDay = {
  readonly __typename?: 'SchoolDay';
  readonly date: Scalars['LocalDate']['output'];
  /** For an early finish: breaks that start at or after it fall away. */
  readonly endsAt?: Maybe<Scalars['LocalTime']['output']>;
  readonly kind: SchoolDayKind;
  readonly title: Scalars['String']['output'];
};

export type SchoolDayKind =
  | 'EARLY_FINISH'
  | 'HOLIDAY'
  | 'TRIP';

/** No such school. */
export type SchoolNotFound = UserError & {
  readonly __typename?: 'SchoolNotFound';
  readonly message: Scalars['String']['output'];
};

export type SchoolPayload = {
  readonly __typename?: 'SchoolPayload';
  readonly school: School;
};

export type SchoolProvision = {
  readonly __typename?: 'SchoolProvision';
  /** Null: at any break. */
  readonly breakKey?: Maybe<Scalars['String']['output']>;
  readonly food: Food;
  readonly grams: Scalars['Int']['output'];
  /** Null: every school day. */
  readonly weekday?: Maybe<Weekday>;
};

export type SchoolProvisionInput = {
  /** A break of the child's class; any break without it. */
  readonly breakKey?: InputMaybe<Scalars['String']['input']>;
  /** Food key: milk-whole. */
  readonly food: Scalars['String']['input'];
  /** 1 to 1000. A glass of milk of 200 ml weighs 206 g. */
  readonly grams: Scalars['Int']['input'];
  /** Every school day without it. */
  readonly weekday?: InputMaybe<Weekday>;
};

export type SchoolTerm = {
  readonly __typename?: 'SchoolTerm';
  readonly firstDay: Scalars['LocalDate']['output'];
  readonly lastDay: Scalars['LocalDate']['output'];
  readonly name: Scalars['String']['output'];
};

export type Season = {
  readonly __typename?: 'Season';
  /** 1 to 12. */
  readonly months: ReadonlyArray<Scalars['Int']['output']>;
  readonly region: ClimateRegion;
  readonly source: Scalars['String']['output'];
};

export type ServedWarmth =
  | 'COLD'
  | 'EITHER'
  | 'WARM';

export type SessionDifference = {
  readonly __typename?: 'SessionDifference';
  /** The same work for other children or with other minutes, as it is now. */
  readonly changes: ReadonlyArray<TaskDifference>;
  readonly comes: ReadonlyArray<TaskDifference>;
  readonly goes: ReadonlyArray<TaskDifference>;
  /** Negative where there is less to do. */
  readonly handsOnMinutesMore: Scalars['Float']['output'];
  /** weekend-, evening- or morning- and the date it happens. */
  readonly session: Scalars['String']['output'];
};

export type SessionTiming = {
  readonly __typename?: 'SessionTiming';
  /** From its start to the end of its last task. */
  readonly lastsMinutes: Scalars['Float']['output'];
  /** Begun by then, with the tasks in the same order, every box is ready in time. */
  readonly latestStartsAt: Scalars['LocalTime']['output'];
  /** No timetable of the same tasks, safe things first, is shorter: every shorter one was ruled out. */
  readonly leastMinutes: Scalars['Float']['output'];
  /** Begun later than this, no order of the tasks is in time. */
  readonly noLaterThan: Scalars['LocalTime']['output'];
  /** Nothing shorter is possible. */
  readonly provenShortest: Scalars['Boolean']['output'];
};

export type SetAvailabilityInput = {
  readonly entries: ReadonlyArray<AvailabilityInput>;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** Absent: one's own. */
  readonly personId?: InputMaybe<Scalars['ID']['input']>;
  readonly seenRevision: Scalars['Int']['input'];
};

export type SetAvailabilityResult = HelperNotFound | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | RevisionPassed | RotaPayload;

export type SetBoxKitInput = {
  readonly childId: Scalars['ID']['input'];
  readonly coldSources: Scalars['Int']['input'];
  readonly compartments: ReadonlyArray<CompartmentInput>;
  readonly flask: Scalars['Boolean']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly insulated: Scalars['Boolean']['input'];
  /** On Mondays to Fridays. */
  readonly leaveAt: Scalars['LocalTime']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type SetBoxKitResult = BoxKitPayload | ChildNotFound | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | RevisionPassed;

export type SetDutiesInput = {
  readonly duties: ReadonlyArray<DutyInput>;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type SetDutiesResult = HelperNotFound | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | RevisionPassed | RotaPayload;

export type SetEnergyMethodInput = {
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly method: EnergyMethod;
  readonly seenRevision: Scalars['Int']['input'];
};

export type SetEnergyMethodResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

export type SetEquipmentInput = {
  readonly equipment: ReadonlyArray<EquipmentInput>;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type SetEquipmentResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

export type SetFacilityInput = {
  readonly facility: Facility;
  readonly idempotencyKey: Scalars['String']['input'];
  readonly schoolClassId: Scalars['ID']['input'];
  /** The school's revision. */
  readonly seenRevision: Scalars['Int']['input'];
};

export type SetFacilityResult = InvalidInput | KeyReused | NotAppointed | RevisionPassed | SchoolNotFound | SchoolPayload;

export type SetHotDaysInput = {
  readonly dates: ReadonlyArray<Scalars['LocalDate']['input']>;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type SetHotDaysResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

export type SetKeepsOutInput = {
  /** Allergens or families of them. */
  readonly allergens: ReadonlyArray<Scalars['String']['input']>;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type SetKeepsOutResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

export type SetLeftoversInput = {
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly leftovers: ReadonlyArray<LeftoverInput>;
  readonly seenRevision: Scalars['Int']['input'];
};

export type SetLeftoversResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

export type SetPrepTimesInput = {
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly prepTimes: ReadonlyArray<PrepTimeInput>;
  readonly seenRevision: Scalars['Int']['input'];
};

export type SetPrepTimesResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

export type SetResidencePatternInput = {
  readonly childId: Scalars['ID']['input'];
  /** Of an own cycle only: the home of each day. */
  readonly cycle?: InputMaybe<ReadonlyArray<HomeSide>>;
  /** Where the child wakes on the first day. Not asked of an own cycle. */
  readonly firstHome: HomeSide;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly kind: ResidenceKind;
  readonly seenRevision: Scalars['Int']['input'];
  /** First day of the cycle, from today on, at most a year ahead. */
  readonly starts: Scalars['LocalDate']['input'];
};

export type SetResidencePatternResult = ChildNotFound | DayClosed | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | ProposalOpen | ResidencePayload | RevisionPassed;

export type SetSchoolDayInput = {
  readonly date: Scalars['LocalDate']['input'];
  /** For an early finish: breaks that start at or after it fall away. */
  readonly endsAt?: InputMaybe<Scalars['LocalTime']['input']>;
  readonly idempotencyKey: Scalars['String']['input'];
  readonly kind: SchoolDayKind;
  /** Absent: the whole school. */
  readonly schoolClassId?: InputMaybe<Scalars['ID']['input']>;
  readonly schoolId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
  readonly title: Scalars['String']['input'];
};

export type SetSchoolDayResult = InvalidInput | KeyReused | NotAppointed | RevisionPassed | SchoolNotFound | SchoolPayload;

export type SetSchoolProvisionInput = {
  readonly childId: Scalars['ID']['input'];
  readonly entries: ReadonlyArray<SchoolProvisionInput>;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type SetSchoolProvisionPayload = {
  readonly __typename?: 'SetSchoolProvisionPayload';
  readonly child: Child;
  readonly household: Household;
};

export type SetSchoolProvisionResult = ChildNotFound | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | RevisionPassed | SetSchoolProvisionPayload;

export type SetStockInput = {
  readonly entries: ReadonlyArray<StockEntryInput>;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type SetStockResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

export type SetTermInput = {
  readonly firstDay: Scalars['LocalDate']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** The last one itself. */
  readonly lastDay: Scalars['LocalDate']['input'];
  readonly name: Scalars['String']['input'];
  /** First day of the term that it takes the place of; absent: a new one. */
  readonly replaces?: InputMaybe<Scalars['LocalDate']['input']>;
  readonly schoolId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type SetTermResult = InvalidInput | KeyReused | NotAppointed | RevisionPassed | SchoolNotFound | SchoolPayload;

/** The best plan found with sharing switched off under the same limits, beside this one. */
export type SharingGain = {
  readonly __typename?: 'SharingGain';
  /** Null when the kitchen has no time for a week without sharing. */
  readonly handsOnMinutesAlone?: Maybe<Scalars['Float']['output']>;
  readonly handsOnMinutesShared: Scalars['Float']['output'];
  readonly savedMinutes?: Maybe<Scalars['Float']['output']>;
};

export type ShoppingDifference = {
  readonly __typename?: 'ShoppingDifference';
  readonly costMinor: Scalars['Int']['output'];
  readonly food: Food;
  readonly packGrams: Scalars['Int']['output'];
  readonly packs: Scalars['Int']['output'];
};

export type ShoppingLine = Node & {
  readonly __typename?: 'ShoppingLine';
  /** Packs at the catalogue's price, an estimate; in the minor unit of the household's currency. */
  readonly costMinor: Scalars['Int']['output'];
  /** Grams in the cupboard once the week is over, for setStock: the spare counts only where it keeps. Null in plans made before it was kept. */
  readonly cupboardAfterGrams?: Maybe<Scalars['Int']['output']>;
  readonly food: Food;
  readonly fromStockGrams: Scalars['Int']['output'];
  readonly id: Scalars['ID']['output'];
  readonly neededGrams: Scalars['Int']['output'];
  readonly packGrams: Scalars['Int']['output'];
  readonly packs: Scalars['Int']['output'];
  /** Read the label before first use. */
  readonly readLabel: Scalars['Boolean']['output'];
  readonly section: Scalars['String']['output'];
  readonly spareGrams: Scalars['Int']['output'];
  /** What the spare is good for; empty where too little is left to speak of. */
  readonly spareUses: ReadonlyArray<SpareUse>;
  /** It is in the basket. */
  readonly ticked: Scalars['Boolean']['output'];
};

export type ShoppingLinePayload = {
  readonly __typename?: 'ShoppingLinePayload';
  readonly line: ShoppingLine;
};

export type ShortMorningInput = {
  readonly date: Scalars['LocalDate']['input'];
  /** That are left, up to the end of the morning's session or the first child's leaving. */
  readonly minutes: Scalars['Int']['input'];
};

export type Slot =
  | 'EXTRA'
  | 'FRUIT'
  | 'MAIN'
  | 'VEGETABLE';

/** A figure and where it was published. */
export type SourcedFigure = {
  readonly __typename?: 'SourcedFigure';
  readonly source: Scalars['String']['output'];
  readonly value: Scalars['Float']['output'];
};

/** Passed every rule for some place of these children this week. */
export type SpareDish = {
  readonly __typename?: 'SpareDish';
  readonly children: ReadonlyArray<Child>;
  readonly dish: Dish;
};

export type SpareKeptIn =
  | 'CUPBOARD'
  | 'FREEZER'
  | 'REFRIGERATOR';

export type SpareUse = {
  readonly __typename?: 'SpareUse';
  /** With FREEZES: days at -18 °C, for quality. */
  readonly days?: Maybe<Scalars['Int']['output']>;
  readonly dishes: ReadonlyArray<SpareDish>;
  /** With KEEPS_FOR_NEXT_WEEK. */
  readonly keptIn?: Maybe<SpareKeptIn>;
  readonly kind: SpareUseKind;
  /** Who published the days. */
  readonly source?: Maybe<Scalars['String']['output']>;
  readonly text: Scalars['String']['output'];
  /** Last day, the day it is opened counted as the first; null where it keeps for months or nobody knows. */
  readonly untilDate?: Maybe<Scalars['LocalDate']['output']>;
};

export type SpareUseKind =
  /** Dishes the children may have that eat of it. */
  | 'DISHES'
  /** It does not keep until the next week begins. */
  | 'EAT_BY'
  | 'FREEZES'
  /** Nothing on record says how long it keeps once opened. */
  | 'KEEPING_UNKNOWN'
  /** Counts as stock for the next week. */
  | 'KEEPS_FOR_NEXT_WEEK';

export type SpillClass =
  | 'DRY'
  | 'MOIST'
  | 'WET';

/** It stands where it cannot be missed. */
export type StillInUse = UserError & {
  readonly __typename?: 'StillInUse';
  /** Boxes it stands in. */
  readonly boxes: ReadonlyArray<BoxPlace>;
  /** Own dishes made of it. */
  readonly dishes: ReadonlyArray<Dish>;
  readonly message: Scalars['String']['output'];
};

export type Stock = {
  readonly __typename?: 'Stock';
  readonly food: Food;
  readonly grams: Scalars['Int']['output'];
};

export type StockEntryInput = {
  /** Food key: rice-white-long-raw. */
  readonly food: Scalars['String']['input'];
  readonly grams: Scalars['Int']['input'];
};

export type Subscription = {
  readonly __typename?: 'Subscription';
  /** Each box of the household's children, in either home, that is blocked or passes again; null when it has been planned anew meanwhile. */
  readonly boxesBlocked?: Maybe<BoxVerdict>;
  /** Everything that changes in a household, and of its children in their other homes what both may see; in order, each once. With `after` first what was missed since. Ends when the reader is no carer of the household any more. */
  readonly changes: Change;
  /** How far a plan of this household has come. */
  readonly planProgress: PlanProgress;
  /** Reminders as they come due: one's own and everybody's. */
  readonly reminders: Reminder;
  /** The week each time it changes. */
  readonly weekChanged: Week;
};


export type SubscriptionBoxesBlockedArgs = {
  householdId: Scalars['ID']['input'];
};


export type SubscriptionChangesArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  householdId: Scalars['ID']['input'];
};


export type SubscriptionPlanProgressArgs = {
  householdId: Scalars['ID']['input'];
};


export type SubscriptionRemindersArgs = {
  householdId: Scalars['ID']['input'];
};


export type SubscriptionWeekChangedArgs = {
  householdId: Scalars['ID']['input'];
};

export type SugarRule =
  /** A stated part was added. */
  | 'ADDED_PART'
  /** All sugars free and added; for made foods an upper bound. */
  | 'ALL_FREE'
  /** Its own sugars, in its cells or from its flour: none free, none added. */
  | 'INTACT'
  /** All sugars free, none added. */
  | 'JUICE'
  /** Lactose: none free, none added. */
  | 'MILK_SUGAR';

export type SwapItemInput = {
  /** Key of the dish to put there. */
  readonly dish: Scalars['String']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly itemId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type SwapItemResult = BoxClosed | DishUnknown | InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | SwapRefused | WeekPayload;

/** The dish may not stand there. Each conflict names the rule and its source. */
export type SwapRefused = UserError & {
  readonly __typename?: 'SwapRefused';
  readonly conflicts: ReadonlyArray<Conflict>;
  readonly message: Scalars['String']['output'];
};

export type TakeTaskInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
  readonly taskId: Scalars['ID']['input'];
};

export type TakeTaskResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | TaskHeld | TaskPayload;

export type Task = Node & {
  readonly __typename?: 'Task';
  /** Hands-on minutes it took, where that was said when it was done. */
  readonly actualMinutes?: Maybe<Scalars['Float']['output']>;
  /** Which pair of hands, from 1. */
  readonly carer: Scalars['Int']['output'];
  readonly children: ReadonlyArray<Child>;
  /** Where it stands when the session handles something a child here avoids; null when it handles nothing of the kind. */
  readonly crossContact?: Maybe<CrossContact>;
  readonly doneAt?: Maybe<Scalars['DateTime']['output']>;
  readonly endsAt: Scalars['LocalTime']['output'];
  readonly equipment: ReadonlyArray<Scalars['String']['output']>;
  readonly forDates: ReadonlyArray<Scalars['LocalDate']['output']>;
  /** What it handles that a child here avoids, by recipe or by a label on record: allergens and single foods. */
  readonly handles: ReadonlyArray<Scalars['String']['output']>;
  readonly handsFreeAt: Scalars['LocalTime']['output'];
  /** The estimate. */
  readonly handsOnMinutes: Scalars['Float']['output'];
  readonly id: Scalars['ID']['output'];
  /** Of an earlier plan of the week, where it was done or begun: it stays on record and is no work of this plan's. */
  readonly kept: Scalars['Boolean']['output'];
  /** BASE, FINISH, COOL, PACK or DEFROST. */
  readonly kind: Scalars['String']['output'];
  /** The latest it may begin when everything stays in this order and every box is to be ready in time. */
  readonly latestStartsAt: Scalars['LocalTime']['output'];
  readonly passiveMinutes: Scalars['Float']['output'];
  /** weekend-, evening- or morning- and the date it happens. */
  readonly session: Scalars['String']['output'];
  readonly startsAt: Scalars['LocalTime']['output'];
  readonly state: WorkState;
  readonly takenAt?: Maybe<Scalars['DateTime']['output']>;
  /** Who holds it, or has done it. */
  readonly takenBy?: Maybe<Person>;
  readonly text: Scalars['String']['output'];
};

export type TaskDifference = {
  readonly __typename?: 'TaskDifference';
  readonly children: ReadonlyArray<Child>;
  readonly handsOnMinutes: Scalars['Float']['output'];
  /** BASE, FINISH, COOL, PACK or DEFROST. */
  readonly kind: Scalars['String']['output'];
  readonly startsAt: Scalars['LocalTime']['output'];
  readonly text: Scalars['String']['output'];
};

/** Another carer has it, or it is done. */
export type TaskHeld = UserError & {
  readonly __typename?: 'TaskHeld';
  /** Null where that person is no carer of the household any more. */
  readonly holder?: Maybe<Person>;
  readonly message: Scalars['String']['output'];
  readonly state: WorkState;
};

/** It is not taken, or not done, which this asks for. */
export type TaskNotHeld = UserError & {
  readonly __typename?: 'TaskNotHeld';
  readonly message: Scalars['String']['output'];
  readonly state: WorkState;
};

export type TaskPayload = {
  readonly __typename?: 'TaskPayload';
  /** The week's, with this change. */
  readonly revision: Scalars['Int']['output'];
  readonly task: Task;
};

export type TickShoppingLineInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly lineId: Scalars['ID']['input'];
  /** Ticks do not overtake each other: it may be an older one, but not one that has not been. */
  readonly seenRevision: Scalars['Int']['input'];
  readonly ticked: Scalars['Boolean']['input'];
};

export type TickShoppingLineResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | ShoppingLinePayload;

export type TripDaysInput = {
  readonly childId: Scalars['ID']['input'];
  readonly date: Scalars['LocalDate']['input'];
  readonly until?: InputMaybe<Scalars['LocalDate']['input']>;
};

export type UndoTaskInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
  readonly taskId: Scalars['ID']['input'];
};

export type UndoTaskResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | TaskHeld | TaskNotHeld | TaskPayload | WorkUsed;

export type UnitSystem =
  | 'METRIC'
  | 'US_CUSTOMARY';

export type UnpinItemInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly itemId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type UnpinItemResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | WeekPayload;

export type UpperLevel = {
  readonly __typename?: 'UpperLevel';
  readonly amount: Scalars['Float']['output'];
  /** What of a day's intake counts. */
  readonly counts: Scalars['String']['output'];
  /** CA, FE, ZN, RETINOL or FOLIC_ACID. */
  readonly nutrient: Scalars['String']['output'];
  readonly unit: Scalars['String']['output'];
};

/** An expected refusal. Select `... on UserError { message }` in every result: members may be added. */
export type UserError = {
  /** One sentence for the person: what is wrong and the way out. */
  readonly message: Scalars['String']['output'];
};

export type Verdicts = {
  readonly __typename?: 'Verdicts';
  /** By break and slot. A food is judged whole and cold, so a cut or cooking may make a dish safe that the food is not. */
  readonly places: ReadonlyArray<PlaceVerdict>;
};

export type VerdictsResult = DishUnknown | InvalidInput | OutsideTerm | Verdicts;

export type WayOut = {
  readonly __typename?: 'WayOut';
  /** All of them together; one that could be left out is not among them. */
  readonly changes: ReadonlyArray<WayOutChange>;
  /** Of the week that was planned with them. */
  readonly wishes: WishTotals;
};

export type WayOutChange = {
  readonly __typename?: 'WayOutChange';
  readonly child?: Maybe<Child>;
  readonly date?: Maybe<Scalars['LocalDate']['output']>;
  /** UNPIN, RELAX_HOUSE_RULE, GET_FOOD, COLD_SOURCES, FLASK, MORE_MINUTES, EXTRA_SESSION, BIGGER_BOX, REFRIGERATOR_ROOM, MORE_EQUIPMENT or SCHOOL_MEAL. */
  readonly kind: Scalars['String']['output'];
  readonly text: Scalars['String']['output'];
};

/** One household's week. Plans come and go inside it; the revision counts every change. */
export type Week = Node & {
  readonly __typename?: 'Week';
  readonly id: Scalars['ID']['output'];
  /** The newest plan. */
  readonly plan: WeekPlan;
  /** Send it back with every mutation about this week. */
  readonly revision: Scalars['Int']['output'];
  readonly weekStart: Scalars['LocalDate']['output'];
};

/** The week is agreed. Swap an item, report an absence, or plan with replanAgreed: true. */
export type WeekAgreed = UserError & {
  readonly __typename?: 'WeekAgreed';
  readonly agreedAt: Scalars['DateTime']['output'];
  readonly message: Scalars['String']['output'];
};

/** What changes from one plan of a week to another. */
export type WeekDifference = {
  readonly __typename?: 'WeekDifference';
  readonly batches: ReadonlyArray<BatchDifference>;
  /** By date and child. */
  readonly boxes: ReadonlyArray<BoxDifference>;
  /** What the week has more of, each wish in its own unit; negative where it has less. */
  readonly more: WishTotals;
  /** Packs that are no longer needed; bought in vain where they were bought. */
  readonly notNeeded: ReadonlyArray<ShoppingDifference>;
  /** Sessions whose work changes; what only moves on the clock is not listed. */
  readonly sessions: ReadonlyArray<SessionDifference>;
  /** Packs to buy besides. */
  readonly toBuy: ReadonlyArray<ShoppingDifference>;
};

/** No week passes every rule. Each clash says what would make it possible. */
export type WeekInfeasible = UserError & {
  readonly __typename?: 'WeekInfeasible';
  /** Requirements that cannot all be met and of which none could be left out. Found by planning again without each in turn, when asked for; null when a week was found after all. */
  readonly clash?: Maybe<Clash>;
  readonly conflicts: ReadonlyArray<Conflict>;
  readonly message: Scalars['String']['output'];
  /** The smallest changes that make the week possible, the least trouble first. Each was made and the week planned with it. Empty when nothing the household can do itself was found. */
  readonly waysOut: ReadonlyArray<WayOut>;
};

/** The week after a change. */
export type WeekPayload = {
  readonly __typename?: 'WeekPayload';
  /** Boxes that differ from the plan before. */
  readonly changedBoxes: ReadonlyArray<Box>;
  readonly week: Week;
};

/** An immutable revision of the week's plan. */
export type WeekPlan = Node & {
  readonly __typename?: 'WeekPlan';
  readonly agreedAt?: Maybe<Scalars['DateTime']['output']>;
  readonly batches: ReadonlyArray<Batch>;
  /** By date and child, the youngest first; those of one day when given. */
  readonly boxes: ReadonlyArray<Box>;
  readonly cautions: ReadonlyArray<Caution>;
  /** How good the week is for sure; null until it was worked out, some seconds after the plan, and where nothing works it out. */
  readonly certificate?: Maybe<PlanCertificate>;
  /** How its boxes keep the rules of school and family, child by child. */
  readonly compliance: Compliance;
  readonly createdAt: Scalars['DateTime']['output'];
  /** What this plan changed from an earlier or later one of the same week; null when it has none of that number. */
  readonly differenceFrom?: Maybe<WeekDifference>;
  /** Of everything on the list, by catalogue prices: an estimate, no promise of any shop. */
  readonly estimatedCost: EstimatedCost;
  readonly id: Scalars['ID']['output'];
  readonly number: Scalars['Int']['output'];
  /** Seed and steps repeat the search; the hash names the problem it solved. */
  readonly origin: PlanOrigin;
  /** Leftovers and frozen portions that go into boxes, the first to spoil first. What no box eats stands among the cautions. */
  readonly readyUses: ReadonlyArray<ReadyUse>;
  /** Every rule of school and family that the plan was made under, in the versions of that day. */
  readonly rulesObeyed: ReadonlyArray<RuleObeyed>;
  /** The timetable by session, in time order. */
  readonly sessions: ReadonlyArray<PrepSession>;
  /** What cooking together saves; null when it was not compared. */
  readonly sharing?: Maybe<SharingGain>;
  /** In the order a shop is walked; what stands together in it together. */
  readonly shopping: ReadonlyArray<ShoppingLine>;
  readonly state: PlanState;
  readonly tasks: ReadonlyArray<Task>;
  readonly wishes: WishTotals;
};


/** An immutable revision of the week's plan. */
export type WeekPlanBoxesArgs = {
  date?: InputMaybe<Scalars['LocalDate']['input']>;
};


/** An immutable revision of the week's plan. */
export type WeekPlanDifferenceFromArgs = {
  number: Scalars['Int']['input'];
};

export type Weekday =
  | 'FRIDAY'
  | 'MONDAY'
  | 'SATURDAY'
  | 'SUNDAY'
  | 'THURSDAY'
  | 'TUESDAY'
  | 'WEDNESDAY';

export type Whereabouts =
  | 'AT_SCHOOL'
  | 'LOST'
  | 'OTHER_HOME'
  | 'THIS_HOME'
  | 'WITH_CHILD';

export type WindowKind =
  /** The evening before a school day. */
  | 'EVENING'
  /** Between getting up and leaving. */
  | 'MORNING'
  /** Before the first school day of the week. */
  | 'WEEKEND';

/** The planner's wishes, each in its own unit. */
export type WishTotals = {
  readonly __typename?: 'WishTotals';
  readonly costMinor: Scalars['Int']['output'];
  readonly handsOnMinutes: Scalars['Float']['output'];
  readonly monotonyPoints: Scalars['Int']['output'];
  readonly nutrientShortfallPercent: Scalars['Int']['output'];
  readonly objectivePoints: Scalars['Int']['output'];
  readonly refusalPoints: Scalars['Int']['output'];
  readonly spareBaseGrams: Scalars['Int']['output'];
};

export type WithdrawDisruptionInput = {
  readonly disruptionId: Scalars['ID']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  /** Of the week that holds the first of its days from today on; 0 when nothing has been planned for it. */
  readonly seenRevision: Scalars['Int']['input'];
};

export type WithdrawDisruptionResult = DisruptionPayload | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed;

export type WithdrawErasureInput = {
  readonly childId: Scalars['ID']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
};

export type WithdrawErasurePayload = {
  readonly __typename?: 'WithdrawErasurePayload';
  readonly child: Child;
};

/** Select `... on UserError` as well: members may be added. */
export type WithdrawErasureResult = ChildNotFound | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | WithdrawErasurePayload;

export type WithdrawInvitationInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly invitationId: Scalars['ID']['input'];
};

export type WithdrawInvitationPayload = {
  readonly __typename?: 'WithdrawInvitationPayload';
  readonly invitation: Invitation;
};

export type WithdrawInvitationResult = HouseholdNotFound | InvalidInput | InvitationClosed | InvitationNotFound | KeyReused | NotPermitted | WithdrawInvitationPayload;

export type WithdrawResidenceChangeInput = {
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly proposalId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type WithdrawResidenceChangeResult = ForTheOtherHome | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | NothingThere | ProposalSettled | ResidencePayload | RevisionPassed;

export type WithdrawRuleSetInput = {
  /** First day on which it asks for nothing. */
  readonly from: Scalars['LocalDate']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly ruleSetId: Scalars['ID']['input'];
  /** The version that the administrator saw. */
  readonly seenRevision: Scalars['Int']['input'];
};

export type WithdrawRuleSetResult = InvalidInput | KeyReused | LoadRuleSetPayload | NotAppointed | NothingThere | RevisionPassed;

export type WorkState =
  | 'DONE'
  | 'OPEN'
  | 'TAKEN';

/** What was made is used: later work with it is done, or it lies in a packed box. */
export type WorkUsed = UserError & {
  readonly __typename?: 'WorkUsed';
  /** Packed boxes that hold it. */
  readonly boxes: ReadonlyArray<BoxPlace>;
  readonly message: Scalars['String']['output'];
  /** Tasks that are done and come after it. */
  readonly tasks: ReadonlyArray<Scalars['String']['output']>;
};

export type WriteHandoverInput = {
  readonly avoid: ReadonlyArray<Scalars['String']['input']>;
  readonly box?: InputMaybe<Whereabouts>;
  readonly childId: Scalars['ID']['input'];
  /** Any day of the week, within 62 days. */
  readonly date: Scalars['LocalDate']['input'];
  readonly flask?: InputMaybe<Whereabouts>;
  readonly householdId: Scalars['ID']['input'];
  readonly icePacks?: InputMaybe<Whereabouts>;
  readonly idempotencyKey: Scalars['String']['input'];
  /** At most 500 characters. */
  readonly note: Scalars['String']['input'];
  /** At most 20 dishes or words, of at most 80 characters each. */
  readonly repeat: ReadonlyArray<Scalars['String']['input']>;
  /** Of the note; 0 where nothing has been written. */
  readonly seenRevision: Scalars['Int']['input'];
};

export type WriteHandoverResult = ChildNotFound | HandoverPayload | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | RevisionPassed;



export type ResolverTypeWrapper<T> = Promise<T> | T;


export type ResolverWithResolve<TResult, TParent, TContext, TArgs> = {
  resolve: ResolverFn<TResult, TParent, TContext, TArgs>;
};
export type Resolver<TResult, TParent = Record<PropertyKey, never>, TContext = Record<PropertyKey, never>, TArgs = Record<PropertyKey, never>> = ResolverFn<TResult, TParent, TContext, TArgs> | ResolverWithResolve<TResult, TParent, TContext, TArgs>;

export type ResolverFn<TResult, TParent, TContext, TArgs> = (
  parent: TParent,
  args: TArgs,
  context: TContext,
  info: GraphQLResolveInfo
) => Promise<TResult> | TResult;

export type SubscriptionSubscribeFn<TResult, TParent, TContext, TArgs> = (
  parent: TParent,
  args: TArgs,
  context: TContext,
  info: GraphQLResolveInfo
) => AsyncIterable<TResult> | Promise<AsyncIterable<TResult>>;

export type SubscriptionResolveFn<TResult, TParent, TContext, TArgs> = (
  parent: TParent,
  args: TArgs,
  context: TContext,
  info: GraphQLResolveInfo
) => TResult | Promise<TResult>;

export interface SubscriptionSubscriberObject<TResult, TKey extends string, TParent, TContext, TArgs> {
  subscribe: SubscriptionSubscribeFn<{ [key in TKey]: TResult }, TParent, TContext, TArgs>;
  resolve?: SubscriptionResolveFn<TResult, { [key in TKey]: TResult }, TContext, TArgs>;
}

export interface SubscriptionResolverObject<TResult, TParent, TContext, TArgs> {
  subscribe: SubscriptionSubscribeFn<any, TParent, TContext, TArgs>;
  resolve: SubscriptionResolveFn<TResult, any, TContext, TArgs>;
}

export type SubscriptionObject<TResult, TKey extends string, TParent, TContext, TArgs> =
  | SubscriptionSubscriberObject<TResult, TKey, TParent, TContext, TArgs>
  | SubscriptionResolverObject<TResult, TParent, TContext, TArgs>;

export type SubscriptionResolver<TResult, TKey extends string, TParent = Record<PropertyKey, never>, TContext = Record<PropertyKey, never>, TArgs = Record<PropertyKey, never>> =
  | ((...args: any[]) => SubscriptionObject<TResult, TKey, TParent, TContext, TArgs>)
  | SubscriptionObject<TResult, TKey, TParent, TContext, TArgs>;

export type TypeResolveFn<TTypes, TParent = Record<PropertyKey, never>, TContext = Record<PropertyKey, never>> = (
  parent: TParent,
  context: TContext,
  info: GraphQLResolveInfo
) => Maybe<TTypes> | Promise<Maybe<TTypes>>;

export type IsTypeOfResolverFn<T = Record<PropertyKey, never>, TContext = Record<PropertyKey, never>> = (obj: T, context: TContext, info: GraphQLResolveInfo) => boolean | Promise<boolean>;

export type NextResolverFn<T> = () => Promise<T>;

export type DirectiveResolverFn<TResult = Record<PropertyKey, never>, TParent = Record<PropertyKey, never>, TContext = Record<PropertyKey, never>, TArgs = Record<PropertyKey, never>> = (
  next: NextResolverFn<TResult>,
  parent: TParent,
  args: TArgs,
  context: TContext,
  info: GraphQLResolveInfo
) => TResult | Promise<TResult>;



/** Mapping of union types */
export type ResolversUnionTypes<_RefType extends Record<string, unknown>> = {
  AcceptHomeInvitationResult:
    | ( Omit<AcceptHomeInvitationPayload, 'child' | 'household'> & { child: _RefType['Child'], household: _RefType['Household'] } & { __typename: 'AcceptHomeInvitationPayload' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( InvitationClosed & { __typename: 'InvitationClosed' } )
    | ( InvitationNotFound & { __typename: 'InvitationNotFound' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( LivesHereAlready & { __typename: 'LivesHereAlready' } )
    | ( LivesInTwoHomes & { __typename: 'LivesInTwoHomes' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
  ;
  AcceptInvitationResult:
    | ( AlreadyCarer & { __typename: 'AlreadyCarer' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( Omit<HouseholdPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'HouseholdPayload' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( InvitationClosed & { __typename: 'InvitationClosed' } )
    | ( InvitationNotFound & { __typename: 'InvitationNotFound' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
  ;
  AcceptRotaResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( ProposalMoved & { __typename: 'ProposalMoved' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( Omit<RotaPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'RotaPayload' } )
  ;
  AddSchoolClassResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
    | ( Omit<SchoolPayload, 'school'> & { school: _RefType['School'] } & { __typename: 'SchoolPayload' } )
  ;
  AdoptRuleSetResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
    | ( Omit<SchoolPayload, 'school'> & { school: _RefType['School'] } & { __typename: 'SchoolPayload' } )
  ;
  AgreeWeekResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( WeekAgreed & { __typename: 'WeekAgreed' } )
    | ( WeekPayloadRow & { __typename: 'WeekPayload' } )
  ;
  AnswerResidenceChangeResult:
    | ( DayClosed & { __typename: 'DayClosed' } )
    | ( ForTheOtherHome & { __typename: 'ForTheOtherHome' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( ProposalSettled & { __typename: 'ProposalSettled' } )
    | ( ResidencePayloadRow & { __typename: 'ResidencePayload' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  AppointResult:
    | ( Omit<AppointmentsPayload, 'appointments'> & { appointments: ReadonlyArray<_RefType['Appointment']> } & { __typename: 'AppointmentsPayload' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( PersonNotFound & { __typename: 'PersonNotFound' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
  ;
  BoxCheckResult:
    | ( Omit<BoxCheck, 'compliance'> & { compliance: _RefType['Compliance'] } & { __typename: 'BoxCheck' } )
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( DishUnknown & { __typename: 'DishUnknown' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( OutsideTerm & { __typename: 'OutsideTerm' } )
  ;
  CalendarChangeResult:
    | ( CalendarChangeRow & { __typename: 'CalendarChange' } )
    | ( DocumentRefused & { __typename: 'DocumentRefused' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
  ;
  ChangeRoleResult:
    | ( CarerNotFound & { __typename: 'CarerNotFound' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( Omit<HouseholdPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'HouseholdPayload' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( LastCoordinator & { __typename: 'LastCoordinator' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
  ;
  ChangeSchoolClassResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
    | ( Omit<SchoolPayload, 'school'> & { school: _RefType['School'] } & { __typename: 'SchoolPayload' } )
  ;
  CloseFeedResult:
    | ( CloseFeedPayload & { __typename: 'CloseFeedPayload' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
  ;
  CountRuleSetComplianceResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RuleImpact & { __typename: 'RuleSetCounts' } )
  ;
  CountRuleSetImpactResult:
    | ( DocumentRefused & { __typename: 'DocumentRefused' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( RuleImpact & { __typename: 'RuleSetCounts' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
  ;
  CreateChildResult:
    | ( Omit<CreateChildPayload, 'child' | 'household'> & { child: _RefType['Child'], household: _RefType['Household'] } & { __typename: 'CreateChildPayload' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  CreateHouseholdResult:
    | ( Omit<CreateHouseholdPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'CreateHouseholdPayload' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
  ;
  DismissResult:
    | ( Omit<AppointmentsPayload, 'appointments'> & { appointments: ReadonlyArray<_RefType['Appointment']> } & { __typename: 'AppointmentsPayload' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( LastAdministrator & { __typename: 'LastAdministrator' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( PersonNotFound & { __typename: 'PersonNotFound' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
  ;
  DisruptionOfferResult:
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( DisruptionOfferRow & { __typename: 'DisruptionOffer' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( WeekInfeasibleRow & { __typename: 'WeekInfeasible' } )
  ;
  DropOwnRulesResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( Omit<OwnRulesPayload, 'child' | 'household' | 'ruleSet'> & { child: _RefType['Child'], household: _RefType['Household'], ruleSet: _RefType['RuleSet'] } & { __typename: 'OwnRulesPayload' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  EndExemptionResult:
    | ( Omit<ExemptionPayload, 'child' | 'exemption' | 'household'> & { child: _RefType['Child'], exemption?: Maybe<_RefType['Exemption']>, household: _RefType['Household'] } & { __typename: 'ExemptionPayload' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  EnrolChildResult:
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( Omit<EnrolChildPayload, 'child' | 'household'> & { child: _RefType['Child'], household: _RefType['Household'] } & { __typename: 'EnrolChildPayload' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
  ;
  EraseChildResult:
    | ( AgreementNeeded & { __typename: 'AgreementNeeded' } )
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( ConfirmationNeeded & { __typename: 'ConfirmationNeeded' } )
    | ( ErasedPayload & { __typename: 'ErasedPayload' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
  ;
  EraseHouseholdResult:
    | ( ConfirmationNeeded & { __typename: 'ConfirmationNeeded' } )
    | ( ErasedPayload & { __typename: 'ErasedPayload' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
  ;
  EraseMeResult:
    | ( ConfirmationNeeded & { __typename: 'ConfirmationNeeded' } )
    | ( ErasedPayload & { __typename: 'ErasedPayload' } )
    | ( HouseholdsLeft & { __typename: 'HouseholdsLeft' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( LastAdministrator & { __typename: 'LastAdministrator' } )
    | ( LastCoordinator & { __typename: 'LastCoordinator' } )
  ;
  FinishTaskResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( Omit<TaskHeld, 'holder'> & { holder?: Maybe<_RefType['Person']> } & { __typename: 'TaskHeld' } )
    | ( Omit<TaskPayload, 'task'> & { task: _RefType['Task'] } & { __typename: 'TaskPayload' } )
  ;
  GiveUpHomeResult:
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<KitchenPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( OnlyHome & { __typename: 'OnlyHome' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  HandOverCoordinationResult:
    | ( CarerNotFound & { __typename: 'CarerNotFound' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( Omit<HouseholdPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'HouseholdPayload' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
  ;
  HandTaskResult:
    | ( HelperNotFound & { __typename: 'HelperNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( Omit<TaskHeld, 'holder'> & { holder?: Maybe<_RefType['Person']> } & { __typename: 'TaskHeld' } )
    | ( TaskNotHeld & { __typename: 'TaskNotHeld' } )
    | ( Omit<TaskPayload, 'task'> & { task: _RefType['Task'] } & { __typename: 'TaskPayload' } )
  ;
  InviteCarerResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( Omit<InvitationPayload, 'invitation'> & { invitation: _RefType['Invitation'] } & { __typename: 'InvitationPayload' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
  ;
  InviteHomeResult:
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( Omit<InvitationPayload, 'invitation'> & { invitation: _RefType['Invitation'] } & { __typename: 'InvitationPayload' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( LivesInTwoHomes & { __typename: 'LivesInTwoHomes' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
  ;
  KeepOwnRulesResult:
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( DocumentRefused & { __typename: 'DocumentRefused' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( Omit<OwnRulesPayload, 'child' | 'household' | 'ruleSet'> & { child: _RefType['Child'], household: _RefType['Household'], ruleSet: _RefType['RuleSet'] } & { __typename: 'OwnRulesPayload' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
  ;
  LeaveHouseholdResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( LastCoordinator & { __typename: 'LastCoordinator' } )
    | ( Omit<LeaveHouseholdPayload, 'me'> & { me: _RefType['Me'] } & { __typename: 'LeaveHouseholdPayload' } )
  ;
  LoadCalendarResult:
    | ( DocumentRefused & { __typename: 'DocumentRefused' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
    | ( Omit<SchoolPayload, 'school'> & { school: _RefType['School'] } & { __typename: 'SchoolPayload' } )
  ;
  LoadRuleSetResult:
    | ( DocumentRefused & { __typename: 'DocumentRefused' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<LoadRuleSetPayload, 'ruleSet'> & { ruleSet: _RefType['RuleSet'] } & { __typename: 'LoadRuleSetPayload' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
  ;
  MarkPackedResult:
    | ( BoxBlocked & { __typename: 'BoxBlocked' } )
    | ( BoxClosed & { __typename: 'BoxClosed' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( LabelsUnreadRow & { __typename: 'LabelsUnread' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( WeekPayloadRow & { __typename: 'WeekPayload' } )
  ;
  MendWeekResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( WeekInfeasibleRow & { __typename: 'WeekInfeasible' } )
    | ( WeekPayloadRow & { __typename: 'WeekPayload' } )
  ;
  PinItemResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( WeekPayloadRow & { __typename: 'WeekPayload' } )
  ;
  PlanWeekInBackgroundResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NoSchoolRow & { __typename: 'NoSchool' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( OutsideTerm & { __typename: 'OutsideTerm' } )
    | ( PlanQueued & { __typename: 'PlanQueued' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( WeekAgreed & { __typename: 'WeekAgreed' } )
    | ( WeekInfeasibleRow & { __typename: 'WeekInfeasible' } )
  ;
  PlanWeekResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NoSchoolRow & { __typename: 'NoSchool' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( OutsideTerm & { __typename: 'OutsideTerm' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( WeekAgreed & { __typename: 'WeekAgreed' } )
    | ( WeekInfeasibleRow & { __typename: 'WeekInfeasible' } )
    | ( WeekPayloadRow & { __typename: 'WeekPayload' } )
  ;
  PriceOfDishResult:
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( DishNotOfferedRow & { __typename: 'DishNotOffered' } )
    | ( DishUnknown & { __typename: 'DishUnknown' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( NoWeekWithDishRow & { __typename: 'NoWeekWithDish' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( OutsideTerm & { __typename: 'OutsideTerm' } )
    | ( PricedAlternativeRow & { __typename: 'PricedAlternative' } )
  ;
  ProposeResidenceChangeResult:
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( DayClosed & { __typename: 'DayClosed' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( ProposalOpen & { __typename: 'ProposalOpen' } )
    | ( ResidencePayloadRow & { __typename: 'ResidencePayload' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  RecordAllergyResult:
    | ( Omit<AllergyPayload, 'child' | 'household'> & { child: _RefType['Child'], household: _RefType['Household'] } & { __typename: 'AllergyPayload' } )
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  RecordExemptionResult:
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( Omit<ExemptionPayload, 'child' | 'exemption' | 'household'> & { child: _RefType['Child'], exemption?: Maybe<_RefType['Exemption']>, household: _RefType['Household'] } & { __typename: 'ExemptionPayload' } )
    | ( ExemptionRefused & { __typename: 'ExemptionRefused' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  RecordLabelResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<KitchenPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  RegisterSchoolResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( Omit<SchoolPayload, 'school'> & { school: _RefType['School'] } & { __typename: 'SchoolPayload' } )
  ;
  RelaxHouseRuleResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<KitchenPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  ReleaseTaskResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( Omit<TaskHeld, 'holder'> & { holder?: Maybe<_RefType['Person']> } & { __typename: 'TaskHeld' } )
    | ( TaskNotHeld & { __typename: 'TaskNotHeld' } )
    | ( Omit<TaskPayload, 'task'> & { task: _RefType['Task'] } & { __typename: 'TaskPayload' } )
  ;
  RemoveAllergyResult:
    | ( Omit<AllergyPayload, 'child' | 'household'> & { child: _RefType['Child'], household: _RefType['Household'] } & { __typename: 'AllergyPayload' } )
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( ConfirmationNeeded & { __typename: 'ConfirmationNeeded' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  RemoveCarerResult:
    | ( CarerNotFound & { __typename: 'CarerNotFound' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( Omit<HouseholdPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'HouseholdPayload' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( LastCoordinator & { __typename: 'LastCoordinator' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
  ;
  RemoveOwnDishResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<KitchenPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( StillInUseRow & { __typename: 'StillInUse' } )
  ;
  RemoveOwnFoodResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<KitchenPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( StillInUseRow & { __typename: 'StillInUse' } )
  ;
  RemoveSchoolDayResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
    | ( Omit<SchoolPayload, 'school'> & { school: _RefType['School'] } & { __typename: 'SchoolPayload' } )
  ;
  RemoveTermResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
    | ( Omit<SchoolPayload, 'school'> & { school: _RefType['School'] } & { __typename: 'SchoolPayload' } )
  ;
  RenameMeResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<RenameMePayload, 'person'> & { person: _RefType['Person'] } & { __typename: 'RenameMePayload' } )
  ;
  RenewFeedAddressResult:
    | ( FeedAddressPayload & { __typename: 'FeedAddressPayload' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
  ;
  ReportAbsenceResult:
    | ( BoxClosed & { __typename: 'BoxClosed' } )
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( OutsideTerm & { __typename: 'OutsideTerm' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( WeekInfeasibleRow & { __typename: 'WeekInfeasible' } )
    | ( WeekPayloadRow & { __typename: 'WeekPayload' } )
  ;
  ReportDisruptionResult:
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( DisruptionPayloadRow & { __typename: 'DisruptionPayload' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  ReportReturnedResult:
    | ( BoxBlocked & { __typename: 'BoxBlocked' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( ReturnedPayloadRow & { __typename: 'ReturnedPayload' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  RuleSetCheckResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( CheckedDocument & { __typename: 'RuleSetCheck' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
  ;
  SaveOwnDishResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( Omit<SaveOwnDishPayload, 'dish' | 'household' | 'missing'> & { dish: _RefType['Dish'], household: _RefType['Household'], missing: ReadonlyArray<_RefType['MissingFact']> } & { __typename: 'SaveOwnDishPayload' } )
  ;
  SaveOwnFoodResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( Omit<SaveOwnFoodPayload, 'food' | 'household' | 'missing'> & { food: _RefType['Food'], household: _RefType['Household'], missing: ReadonlyArray<_RefType['MissingFact']> } & { __typename: 'SaveOwnFoodPayload' } )
  ;
  SetAvailabilityResult:
    | ( HelperNotFound & { __typename: 'HelperNotFound' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( Omit<RotaPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'RotaPayload' } )
  ;
  SetBoxKitResult:
    | ( Omit<BoxKitPayload, 'child' | 'household'> & { child: _RefType['Child'], household: _RefType['Household'] } & { __typename: 'BoxKitPayload' } )
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  SetDutiesResult:
    | ( HelperNotFound & { __typename: 'HelperNotFound' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( Omit<RotaPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'RotaPayload' } )
  ;
  SetEnergyMethodResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<KitchenPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  SetEquipmentResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<KitchenPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  SetFacilityResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
    | ( Omit<SchoolPayload, 'school'> & { school: _RefType['School'] } & { __typename: 'SchoolPayload' } )
  ;
  SetHotDaysResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<KitchenPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  SetKeepsOutResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<KitchenPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  SetLeftoversResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<KitchenPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  SetPrepTimesResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<KitchenPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  SetResidencePatternResult:
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( DayClosed & { __typename: 'DayClosed' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( ProposalOpen & { __typename: 'ProposalOpen' } )
    | ( ResidencePayloadRow & { __typename: 'ResidencePayload' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  SetSchoolDayResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
    | ( Omit<SchoolPayload, 'school'> & { school: _RefType['School'] } & { __typename: 'SchoolPayload' } )
  ;
  SetSchoolProvisionResult:
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( Omit<SetSchoolProvisionPayload, 'child' | 'household'> & { child: _RefType['Child'], household: _RefType['Household'] } & { __typename: 'SetSchoolProvisionPayload' } )
  ;
  SetStockResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<KitchenPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  SetTermResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
    | ( Omit<SchoolPayload, 'school'> & { school: _RefType['School'] } & { __typename: 'SchoolPayload' } )
  ;
  SwapItemResult:
    | ( BoxClosed & { __typename: 'BoxClosed' } )
    | ( DishUnknown & { __typename: 'DishUnknown' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( Omit<SwapRefused, 'conflicts'> & { conflicts: ReadonlyArray<_RefType['Conflict']> } & { __typename: 'SwapRefused' } )
    | ( WeekPayloadRow & { __typename: 'WeekPayload' } )
  ;
  TakeTaskResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( Omit<TaskHeld, 'holder'> & { holder?: Maybe<_RefType['Person']> } & { __typename: 'TaskHeld' } )
    | ( Omit<TaskPayload, 'task'> & { task: _RefType['Task'] } & { __typename: 'TaskPayload' } )
  ;
  TickShoppingLineResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( Omit<ShoppingLinePayload, 'line'> & { line: _RefType['ShoppingLine'] } & { __typename: 'ShoppingLinePayload' } )
  ;
  UndoTaskResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( Omit<TaskHeld, 'holder'> & { holder?: Maybe<_RefType['Person']> } & { __typename: 'TaskHeld' } )
    | ( TaskNotHeld & { __typename: 'TaskNotHeld' } )
    | ( Omit<TaskPayload, 'task'> & { task: _RefType['Task'] } & { __typename: 'TaskPayload' } )
    | ( Omit<WorkUsed, 'boxes'> & { boxes: ReadonlyArray<_RefType['BoxPlace']> } & { __typename: 'WorkUsed' } )
  ;
  UnpinItemResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( WeekPayloadRow & { __typename: 'WeekPayload' } )
  ;
  VerdictsResult:
    | ( DishUnknown & { __typename: 'DishUnknown' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( OutsideTerm & { __typename: 'OutsideTerm' } )
    | ( Omit<Verdicts, 'places'> & { places: ReadonlyArray<_RefType['PlaceVerdict']> } & { __typename: 'Verdicts' } )
  ;
  WithdrawDisruptionResult:
    | ( DisruptionPayloadRow & { __typename: 'DisruptionPayload' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  WithdrawErasureResult:
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( Omit<WithdrawErasurePayload, 'child'> & { child: _RefType['Child'] } & { __typename: 'WithdrawErasurePayload' } )
  ;
  WithdrawInvitationResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( InvitationClosed & { __typename: 'InvitationClosed' } )
    | ( InvitationNotFound & { __typename: 'InvitationNotFound' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( Omit<WithdrawInvitationPayload, 'invitation'> & { invitation: _RefType['Invitation'] } & { __typename: 'WithdrawInvitationPayload' } )
  ;
  WithdrawResidenceChangeResult:
    | ( ForTheOtherHome & { __typename: 'ForTheOtherHome' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( ProposalSettled & { __typename: 'ProposalSettled' } )
    | ( ResidencePayloadRow & { __typename: 'ResidencePayload' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  WithdrawRuleSetResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<LoadRuleSetPayload, 'ruleSet'> & { ruleSet: _RefType['RuleSet'] } & { __typename: 'LoadRuleSetPayload' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  WriteHandoverResult:
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( HandoverPayloadRow & { __typename: 'HandoverPayload' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
};

/** Mapping of interface types */
export type ResolversInterfaceTypes<_RefType extends Record<string, unknown>> = {
  Node:
    | ( BatchRow & { __typename: 'Batch' } )
    | ( BoxRow & { __typename: 'Box' } )
    | ( BoxItemRow & { __typename: 'BoxItem' } )
    | ( ChildRow & { __typename: 'Child' } )
    | ( DishRow & { __typename: 'Dish' } )
    | ( FreezerStockRow & { __typename: 'FreezerStock' } )
    | ( HouseholdRow & { __typename: 'Household' } )
    | ( LeftoverRow & { __typename: 'Leftover' } )
    | ( PersonRow & { __typename: 'Person' } )
    | ( RuleSetRow & { __typename: 'RuleSet' } )
    | ( SchoolRow & { __typename: 'School' } )
    | ( SchoolClassRow & { __typename: 'SchoolClass' } )
    | ( ShoppingLineRow & { __typename: 'ShoppingLine' } )
    | ( TaskRow & { __typename: 'Task' } )
    | ( WeekRow & { __typename: 'Week' } )
    | ( WeekPlanRow & { __typename: 'WeekPlan' } )
  ;
  UserError:
    | ( AgreementNeeded & { __typename: 'AgreementNeeded' } )
    | ( AlreadyCarer & { __typename: 'AlreadyCarer' } )
    | ( BoxBlocked & { __typename: 'BoxBlocked' } )
    | ( BoxClosed & { __typename: 'BoxClosed' } )
    | ( CarerNotFound & { __typename: 'CarerNotFound' } )
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( ConfirmationNeeded & { __typename: 'ConfirmationNeeded' } )
    | ( DayClosed & { __typename: 'DayClosed' } )
    | ( DishNotOfferedRow & { __typename: 'DishNotOffered' } )
    | ( DishUnknown & { __typename: 'DishUnknown' } )
    | ( DocumentRefused & { __typename: 'DocumentRefused' } )
    | ( ExemptionRefused & { __typename: 'ExemptionRefused' } )
    | ( ForTheOtherHome & { __typename: 'ForTheOtherHome' } )
    | ( HelperNotFound & { __typename: 'HelperNotFound' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( HouseholdsLeft & { __typename: 'HouseholdsLeft' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( InvitationClosed & { __typename: 'InvitationClosed' } )
    | ( InvitationNotFound & { __typename: 'InvitationNotFound' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( LabelsUnreadRow & { __typename: 'LabelsUnread' } )
    | ( LastAdministrator & { __typename: 'LastAdministrator' } )
    | ( LastCoordinator & { __typename: 'LastCoordinator' } )
    | ( LivesHereAlready & { __typename: 'LivesHereAlready' } )
    | ( LivesInTwoHomes & { __typename: 'LivesInTwoHomes' } )
    | ( NoSchoolRow & { __typename: 'NoSchool' } )
    | ( NoWeekWithDishRow & { __typename: 'NoWeekWithDish' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( OnlyHome & { __typename: 'OnlyHome' } )
    | ( OutsideTerm & { __typename: 'OutsideTerm' } )
    | ( PersonNotFound & { __typename: 'PersonNotFound' } )
    | ( ProposalMoved & { __typename: 'ProposalMoved' } )
    | ( ProposalOpen & { __typename: 'ProposalOpen' } )
    | ( ProposalSettled & { __typename: 'ProposalSettled' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
    | ( StillInUseRow & { __typename: 'StillInUse' } )
    | ( Omit<SwapRefused, 'conflicts'> & { conflicts: ReadonlyArray<_RefType['Conflict']> } & { __typename: 'SwapRefused' } )
    | ( Omit<TaskHeld, 'holder'> & { holder?: Maybe<_RefType['Person']> } & { __typename: 'TaskHeld' } )
    | ( TaskNotHeld & { __typename: 'TaskNotHeld' } )
    | ( WeekAgreed & { __typename: 'WeekAgreed' } )
    | ( WeekInfeasibleRow & { __typename: 'WeekInfeasible' } )
    | ( Omit<WorkUsed, 'boxes'> & { boxes: ReadonlyArray<_RefType['BoxPlace']> } & { __typename: 'WorkUsed' } )
  ;
};

/** Mapping between all available schema types and the resolvers types */
export type ResolversTypes = {
  AcceptHomeInvitationInput: AcceptHomeInvitationInput;
  AcceptHomeInvitationPayload: ResolverTypeWrapper<Omit<AcceptHomeInvitationPayload, 'child' | 'household'> & { child: ResolversTypes['Child'], household: ResolversTypes['Household'] }>;
  AcceptHomeInvitationResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['AcceptHomeInvitationResult']>;
  AcceptInvitationInput: AcceptInvitationInput;
  AcceptInvitationResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['AcceptInvitationResult']>;
  AcceptRotaInput: AcceptRotaInput;
  AcceptRotaResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['AcceptRotaResult']>;
  AddSchoolClassInput: AddSchoolClassInput;
  AddSchoolClassResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['AddSchoolClassResult']>;
  AdoptRuleSetInput: AdoptRuleSetInput;
  AdoptRuleSetResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['AdoptRuleSetResult']>;
  AgeSpan: ResolverTypeWrapper<AgeSpan>;
  AgreeWeekInput: AgreeWeekInput;
  AgreeWeekResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['AgreeWeekResult']>;
  AgreementNeeded: ResolverTypeWrapper<AgreementNeeded>;
  AllergenSource: ResolverTypeWrapper<Omit<AllergenSource, 'foods'> & { foods: ReadonlyArray<ResolversTypes['Food']> }>;
  Allergy: ResolverTypeWrapper<Allergy>;
  AllergyInput: AllergyInput;
  AllergyPayload: ResolverTypeWrapper<Omit<AllergyPayload, 'child' | 'household'> & { child: ResolversTypes['Child'], household: ResolversTypes['Household'] }>;
  AlreadyCarer: ResolverTypeWrapper<AlreadyCarer>;
  Alternative: ResolverTypeWrapper<AlternativeRow>;
  AnswerResidenceChangeInput: AnswerResidenceChangeInput;
  AnswerResidenceChangeResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['AnswerResidenceChangeResult']>;
  ApplianceBrokenInput: ApplianceBrokenInput;
  ApplianceUse: ResolverTypeWrapper<ApplianceUseRow>;
  ApplianceUses: ResolverTypeWrapper<ApplianceUsesRow>;
  AppointInput: AppointInput;
  AppointResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['AppointResult']>;
  Appointment: ResolverTypeWrapper<AppointmentRow>;
  AppointmentsPayload: ResolverTypeWrapper<Omit<AppointmentsPayload, 'appointments'> & { appointments: ReadonlyArray<ResolversTypes['Appointment']> }>;
  AuditAction: AuditAction;
  AuditConnection: ResolverTypeWrapper<Omit<AuditConnection, 'nodes'> & { nodes: ReadonlyArray<ResolversTypes['AuditEntry']> }>;
  AuditEntry: ResolverTypeWrapper<AuditEntryRow>;
  Availability: ResolverTypeWrapper<Omit<Availability, 'person'> & { person: ResolversTypes['Person'] }>;
  AvailabilityInput: AvailabilityInput;
  Avoid: Avoid;
  Base: ResolverTypeWrapper<BaseRow>;
  Batch: ResolverTypeWrapper<BatchRow>;
  BatchDifference: ResolverTypeWrapper<BatchDifferenceRow>;
  BatchFeed: ResolverTypeWrapper<BatchFeedRow>;
  BatchSize: ResolverTypeWrapper<BatchSize>;
  BlockKind: BlockKind;
  BlockReason: ResolverTypeWrapper<BlockReasonRow>;
  Boolean: ResolverTypeWrapper<Scalars['Boolean']['output']>;
  Box: ResolverTypeWrapper<BoxRow>;
  BoxBlocked: ResolverTypeWrapper<BoxBlocked>;
  BoxCard: ResolverTypeWrapper<BoxCardRow>;
  BoxCheck: ResolverTypeWrapper<Omit<BoxCheck, 'compliance'> & { compliance: ResolversTypes['Compliance'] }>;
  BoxCheckItemInput: BoxCheckItemInput;
  BoxCheckResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['BoxCheckResult']>;
  BoxClosed: ResolverTypeWrapper<BoxClosed>;
  BoxDifference: ResolverTypeWrapper<BoxDifferenceRow>;
  BoxItem: ResolverTypeWrapper<BoxItemRow>;
  BoxItemNote: ResolverTypeWrapper<BoxItemNoteRow>;
  BoxKitPayload: ResolverTypeWrapper<Omit<BoxKitPayload, 'child' | 'household'> & { child: ResolversTypes['Child'], household: ResolversTypes['Household'] }>;
  BoxPacking: ResolverTypeWrapper<Omit<BoxPacking, 'packedBy'> & { packedBy?: Maybe<ResolversTypes['Person']> }>;
  BoxPart: ResolverTypeWrapper<BoxPartRow>;
  BoxPlace: ResolverTypeWrapper<BoxPlaceRow>;
  BoxState: BoxState;
  BoxVerdict: ResolverTypeWrapper<BoxVerdictRow>;
  BreakNeeds: ResolverTypeWrapper<BreakNeeds>;
  CalendarChange: ResolverTypeWrapper<CalendarChangeRow>;
  CalendarChangeResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['CalendarChangeResult']>;
  CalendarEntry: ResolverTypeWrapper<CalendarEntryRow>;
  CalendarEntryChange: ResolverTypeWrapper<Omit<CalendarEntryChange, 'after' | 'before'> & { after: ResolversTypes['CalendarEntry'], before: ResolversTypes['CalendarEntry'] }>;
  CalendarKind: CalendarKind;
  CameBack: CameBack;
  Carer: ResolverTypeWrapper<Omit<Carer, 'person'> & { person: ResolversTypes['Person'] }>;
  CarerMinutes: ResolverTypeWrapper<Omit<CarerMinutes, 'person'> & { person: ResolversTypes['Person'] }>;
  CarerNotFound: ResolverTypeWrapper<CarerNotFound>;
  CarerTasks: ResolverTypeWrapper<CarerTasksRow>;
  Caution: ResolverTypeWrapper<CautionRow>;
  Change: ResolverTypeWrapper<ChangeNode>;
  ChangeConnection: ResolverTypeWrapper<Omit<ChangeConnection, 'nodes'> & { nodes: ReadonlyArray<ResolversTypes['Change']> }>;
  ChangeKind: ChangeKind;
  ChangeRoleInput: ChangeRoleInput;
  ChangeRoleResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['ChangeRoleResult']>;
  ChangeSchoolClassInput: ChangeSchoolClassInput;
  ChangeSchoolClassResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['ChangeSchoolClassResult']>;
  ChangeVerb: ChangeVerb;
  ChangedField: ResolverTypeWrapper<ChangedField>;
  Child: ResolverTypeWrapper<ChildRow>;
  ChildDaysInput: ChildDaysInput;
  ChildNotFound: ResolverTypeWrapper<ChildNotFound>;
  ChokingHazard: ResolverTypeWrapper<ChokingHazard>;
  Clash: ResolverTypeWrapper<ClashRow>;
  ClashMember: ResolverTypeWrapper<ClashMemberRow>;
  ClashProof: ClashProof;
  ClassBreak: ResolverTypeWrapper<BreakRow>;
  ClassBreakInput: ClassBreakInput;
  ClimateRegion: ClimateRegion;
  CloseFeedInput: CloseFeedInput;
  CloseFeedPayload: ResolverTypeWrapper<CloseFeedPayload>;
  CloseFeedResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['CloseFeedResult']>;
  CompartmentInput: CompartmentInput;
  Compliance: ResolverTypeWrapper<ComplianceRow>;
  ComplianceTotals: ResolverTypeWrapper<ComplianceTotals>;
  ConfirmationNeeded: ResolverTypeWrapper<ConfirmationNeeded>;
  Conflict: ResolverTypeWrapper<ConflictRow>;
  CostPart: ResolverTypeWrapper<CostPartRow>;
  CountRuleSetComplianceInput: CountRuleSetComplianceInput;
  CountRuleSetComplianceResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['CountRuleSetComplianceResult']>;
  CountRuleSetImpactInput: CountRuleSetImpactInput;
  CountRuleSetImpactResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['CountRuleSetImpactResult']>;
  CreateChildInput: CreateChildInput;
  CreateChildPayload: ResolverTypeWrapper<Omit<CreateChildPayload, 'child' | 'household'> & { child: ResolversTypes['Child'], household: ResolversTypes['Household'] }>;
  CreateChildResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['CreateChildResult']>;
  CreateHouseholdInput: CreateHouseholdInput;
  CreateHouseholdPayload: ResolverTypeWrapper<Omit<CreateHouseholdPayload, 'household'> & { household: ResolversTypes['Household'] }>;
  CreateHouseholdResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['CreateHouseholdResult']>;
  CrossContact: ResolverTypeWrapper<CrossContact>;
  CrossContactOrder: CrossContactOrder;
  Cut: ResolverTypeWrapper<Cut>;
  Cutlery: Cutlery;
  DailyNeeds: ResolverTypeWrapper<DailyNeeds>;
  DateTime: ResolverTypeWrapper<Scalars['DateTime']['output']>;
  DayClosed: ResolverTypeWrapper<DayClosed>;
  DayReturned: ResolverTypeWrapper<DayReturned>;
  Dish: ResolverTypeWrapper<DishRow>;
  DishBase: ResolverTypeWrapper<Omit<DishBase, 'base'> & { base: ResolversTypes['Base'] }>;
  DishConnection: ResolverTypeWrapper<Omit<DishConnection, 'nodes'> & { nodes: ReadonlyArray<ResolversTypes['Dish']> }>;
  DishIngredient: ResolverTypeWrapper<DishIngredientRow>;
  DishNotOffered: ResolverTypeWrapper<DishNotOfferedRow>;
  DishReturned: ResolverTypeWrapper<DishReturnedRow>;
  DishStep: ResolverTypeWrapper<DishStep>;
  DishUnknown: ResolverTypeWrapper<DishUnknown>;
  DismissInput: DismissInput;
  DismissResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['DismissResult']>;
  Disruption: ResolverTypeWrapper<DisruptionRow>;
  DisruptionInput: DisruptionInput;
  DisruptionKind: DisruptionKind;
  DisruptionOffer: ResolverTypeWrapper<DisruptionOfferRow>;
  DisruptionOfferResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['DisruptionOfferResult']>;
  DisruptionPayload: ResolverTypeWrapper<DisruptionPayloadRow>;
  DocumentIssue: ResolverTypeWrapper<DocumentIssue>;
  DocumentRefused: ResolverTypeWrapper<DocumentRefused>;
  DropOwnRulesInput: DropOwnRulesInput;
  DropOwnRulesResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['DropOwnRulesResult']>;
  DutyInput: DutyInput;
  EarlyFinishInput: EarlyFinishInput;
  EndExemptionInput: EndExemptionInput;
  EndExemptionResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['EndExemptionResult']>;
  EnergyMethod: EnergyMethod;
  EnrolChildInput: EnrolChildInput;
  EnrolChildPayload: ResolverTypeWrapper<Omit<EnrolChildPayload, 'child' | 'household'> & { child: ResolversTypes['Child'], household: ResolversTypes['Household'] }>;
  EnrolChildResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['EnrolChildResult']>;
  Enrolment: ResolverTypeWrapper<EnrolmentRow>;
  Equipment: ResolverTypeWrapper<Equipment>;
  EquipmentInput: EquipmentInput;
  EraseChildInput: EraseChildInput;
  EraseChildResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['EraseChildResult']>;
  EraseHouseholdInput: EraseHouseholdInput;
  EraseHouseholdResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['EraseHouseholdResult']>;
  EraseMeInput: EraseMeInput;
  EraseMeResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['EraseMeResult']>;
  ErasedPayload: ResolverTypeWrapper<ErasedPayload>;
  ErasureAsked: ResolverTypeWrapper<ErasureAsked>;
  EstimatedCost: ResolverTypeWrapper<EstimatedCost>;
  Exclusion: ResolverTypeWrapper<ExclusionRow>;
  Exemption: ResolverTypeWrapper<ExemptionNodeRow>;
  ExemptionNote: ResolverTypeWrapper<ExemptionNote>;
  ExemptionPayload: ResolverTypeWrapper<Omit<ExemptionPayload, 'child' | 'exemption' | 'household'> & { child: ResolversTypes['Child'], exemption?: Maybe<ResolversTypes['Exemption']>, household: ResolversTypes['Household'] }>;
  ExemptionRefusal: ExemptionRefusal;
  ExemptionRefused: ResolverTypeWrapper<ExemptionRefused>;
  Facility: Facility;
  Fairness: ResolverTypeWrapper<Omit<Fairness, 'carers'> & { carers: ReadonlyArray<ResolversTypes['CarerMinutes']> }>;
  Feed: ResolverTypeWrapper<FeedAddressRow>;
  FeedAddressPayload: ResolverTypeWrapper<FeedAddressPayload>;
  FieldChange: ResolverTypeWrapper<FieldChange>;
  FinishTaskInput: FinishTaskInput;
  FinishTaskResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['FinishTaskResult']>;
  Float: ResolverTypeWrapper<Scalars['Float']['output']>;
  Food: ResolverTypeWrapper<FoodRow>;
  FoodMeasure: ResolverTypeWrapper<FoodMeasure>;
  FoodMissingInput: FoodMissingInput;
  ForTheOtherHome: ResolverTypeWrapper<ForTheOtherHome>;
  FreezerStock: ResolverTypeWrapper<FreezerStockRow>;
  GiveUpHomeInput: GiveUpHomeInput;
  GiveUpHomeResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['GiveUpHomeResult']>;
  HandOverCoordinationInput: HandOverCoordinationInput;
  HandOverCoordinationResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['HandOverCoordinationResult']>;
  HandTaskInput: HandTaskInput;
  HandTaskResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['HandTaskResult']>;
  Handover: ResolverTypeWrapper<HandoverRow>;
  HandoverPayload: ResolverTypeWrapper<HandoverPayloadRow>;
  HelperNotFound: ResolverTypeWrapper<HelperNotFound>;
  HoldingPoint: ResolverTypeWrapper<HoldingPoint>;
  HomeSide: HomeSide;
  HouseRule: HouseRule;
  Household: ResolverTypeWrapper<HouseholdRow>;
  HouseholdNotFound: ResolverTypeWrapper<HouseholdNotFound>;
  HouseholdPayload: ResolverTypeWrapper<Omit<HouseholdPayload, 'household'> & { household: ResolversTypes['Household'] }>;
  HouseholdsLeft: ResolverTypeWrapper<HouseholdsLeft>;
  ID: ResolverTypeWrapper<Scalars['ID']['output']>;
  InputIssue: ResolverTypeWrapper<InputIssue>;
  Int: ResolverTypeWrapper<Scalars['Int']['output']>;
  InvalidInput: ResolverTypeWrapper<InvalidInput>;
  Invitation: ResolverTypeWrapper<InvitationRow>;
  InvitationClosed: ResolverTypeWrapper<InvitationClosed>;
  InvitationKind: InvitationKind;
  InvitationNotFound: ResolverTypeWrapper<InvitationNotFound>;
  InvitationOffer: ResolverTypeWrapper<InvitationOfferRow>;
  InvitationPayload: ResolverTypeWrapper<Omit<InvitationPayload, 'invitation'> & { invitation: ResolversTypes['Invitation'] }>;
  InvitationState: InvitationState;
  InviteCarerInput: InviteCarerInput;
  InviteCarerResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['InviteCarerResult']>;
  InviteHomeInput: InviteHomeInput;
  InviteHomeResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['InviteHomeResult']>;
  ItemDifference: ResolverTypeWrapper<ItemDifferenceRow>;
  ItemHolding: ResolverTypeWrapper<ItemHoldingRow>;
  KeepOwnRulesInput: KeepOwnRulesInput;
  KeepOwnRulesResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['KeepOwnRulesResult']>;
  KeyReused: ResolverTypeWrapper<KeyReused>;
  Kitchen: ResolverTypeWrapper<KitchenRow>;
  KitchenPayload: ResolverTypeWrapper<Omit<KitchenPayload, 'household'> & { household: ResolversTypes['Household'] }>;
  LabelCheck: ResolverTypeWrapper<LabelCheckRow>;
  LabelDeclaration: ResolverTypeWrapper<LabelDeclaration>;
  LabelExemption: ResolverTypeWrapper<LabelExemption>;
  LabelKind: ResolverTypeWrapper<LabelKind>;
  LabelKindInput: LabelKindInput;
  LabelLaw: ResolverTypeWrapper<LabelLaw>;
  LabelLawClass: ResolverTypeWrapper<LabelLawClass>;
  LabelLawMember: ResolverTypeWrapper<LabelLawMember>;
  LabelNutrientsInput: LabelNutrientsInput;
  LabelSays: LabelSays;
  LabelStatus: LabelStatus;
  LabelsUnread: ResolverTypeWrapper<LabelsUnreadRow>;
  LastAdministrator: ResolverTypeWrapper<LastAdministrator>;
  LastCoordinator: ResolverTypeWrapper<LastCoordinator>;
  LeaveHouseholdInput: LeaveHouseholdInput;
  LeaveHouseholdPayload: ResolverTypeWrapper<Omit<LeaveHouseholdPayload, 'me'> & { me: ResolversTypes['Me'] }>;
  LeaveHouseholdResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['LeaveHouseholdResult']>;
  Leftover: ResolverTypeWrapper<LeftoverRow>;
  LeftoverInput: LeftoverInput;
  LivesHereAlready: ResolverTypeWrapper<LivesHereAlready>;
  LivesInTwoHomes: ResolverTypeWrapper<LivesInTwoHomes>;
  LoadCalendarInput: LoadCalendarInput;
  LoadCalendarResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['LoadCalendarResult']>;
  LoadRuleSetInput: LoadRuleSetInput;
  LoadRuleSetPayload: ResolverTypeWrapper<Omit<LoadRuleSetPayload, 'ruleSet'> & { ruleSet: ResolversTypes['RuleSet'] }>;
  LoadRuleSetResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['LoadRuleSetResult']>;
  LocalDate: ResolverTypeWrapper<Scalars['LocalDate']['output']>;
  LocalTime: ResolverTypeWrapper<Scalars['LocalTime']['output']>;
  MarkPackedInput: MarkPackedInput;
  MarkPackedResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['MarkPackedResult']>;
  Me: ResolverTypeWrapper<MeRow>;
  MendWeekInput: MendWeekInput;
  MendWeekResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['MendWeekResult']>;
  MendedBox: ResolverTypeWrapper<MendedBoxRow>;
  MendedItem: ResolverTypeWrapper<MendedItemRow>;
  MendingOffer: ResolverTypeWrapper<MendingOfferRow>;
  MissingFact: ResolverTypeWrapper<MissingFactRow>;
  MissingFactKind: MissingFactKind;
  MissingFigure: ResolverTypeWrapper<MissingFigure>;
  Mutation: ResolverTypeWrapper<Record<PropertyKey, never>>;
  NeedSource: ResolverTypeWrapper<NeedSource>;
  NeedsInputs: ResolverTypeWrapper<NeedsInputs>;
  NoSchool: ResolverTypeWrapper<NoSchoolRow>;
  NoWeekWithDish: ResolverTypeWrapper<NoWeekWithDishRow>;
  Node: ResolverTypeWrapper<ResolversInterfaceTypes<ResolversTypes>['Node']>;
  NotAppointed: ResolverTypeWrapper<NotAppointed>;
  NotPermitted: ResolverTypeWrapper<NotPermitted>;
  NothingThere: ResolverTypeWrapper<NothingThere>;
  NutrientAmount: ResolverTypeWrapper<NutrientAmount>;
  NutrientDerivation: ResolverTypeWrapper<NutrientDerivationRow>;
  NutrientPart: ResolverTypeWrapper<NutrientPartRow>;
  NutrientTag: NutrientTag;
  OnlyHome: ResolverTypeWrapper<OnlyHome>;
  OutsideTerm: ResolverTypeWrapper<OutsideTerm>;
  OwnDishBaseInput: OwnDishBaseInput;
  OwnDishInput: OwnDishInput;
  OwnDishStepInput: OwnDishStepInput;
  OwnEquipmentInput: OwnEquipmentInput;
  OwnFoodInput: OwnFoodInput;
  OwnIngredientInput: OwnIngredientInput;
  OwnLabelInput: OwnLabelInput;
  OwnPackInput: OwnPackInput;
  OwnPortionInput: OwnPortionInput;
  OwnRulesPayload: ResolverTypeWrapper<Omit<OwnRulesPayload, 'child' | 'household' | 'ruleSet'> & { child: ResolversTypes['Child'], household: ResolversTypes['Household'], ruleSet: ResolversTypes['RuleSet'] }>;
  PackingTime: ResolverTypeWrapper<PackingTime>;
  PageInfo: ResolverTypeWrapper<PageInfo>;
  Person: ResolverTypeWrapper<PersonRow>;
  PersonNotFound: ResolverTypeWrapper<PersonNotFound>;
  PinItemInput: PinItemInput;
  PinItemResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['PinItemResult']>;
  PlaceVerdict: ResolverTypeWrapper<Omit<PlaceVerdict, 'exclusion' | 'labelsToRead'> & { exclusion?: Maybe<ResolversTypes['Exclusion']>, labelsToRead: ReadonlyArray<ResolversTypes['Food']> }>;
  PlanCertificate: ResolverTypeWrapper<PlanCertificateRow>;
  PlanOrigin: ResolverTypeWrapper<PlanOrigin>;
  PlanProgress: ResolverTypeWrapper<PlanProgress>;
  PlanQueued: ResolverTypeWrapper<PlanQueued>;
  PlanState: PlanState;
  PlanWeekInBackgroundInput: PlanWeekInBackgroundInput;
  PlanWeekInBackgroundResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['PlanWeekInBackgroundResult']>;
  PlanWeekInput: PlanWeekInput;
  PlanWeekResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['PlanWeekResult']>;
  PrepSession: ResolverTypeWrapper<PrepSessionRow>;
  PrepTime: ResolverTypeWrapper<PrepTime>;
  PrepTimeInput: PrepTimeInput;
  PriceBand: PriceBand;
  PriceOfChange: ResolverTypeWrapper<PriceOfChangeRow>;
  PriceOfDishResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['PriceOfDishResult']>;
  PricedAlternative: ResolverTypeWrapper<PricedAlternativeRow>;
  ProcessingClass: ResolverTypeWrapper<ProcessingClassRow>;
  ProposalMoved: ResolverTypeWrapper<ProposalMoved>;
  ProposalOpen: ResolverTypeWrapper<ProposalOpen>;
  ProposalSettled: ResolverTypeWrapper<ProposalSettled>;
  ProposalState: ProposalState;
  ProposeResidenceChangeInput: ProposeResidenceChangeInput;
  ProposeResidenceChangeResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['ProposeResidenceChangeResult']>;
  ProposedDay: ResolverTypeWrapper<ProposedDay>;
  ProposedMinutes: ResolverTypeWrapper<ProposedMinutesRow>;
  ProposedSession: ResolverTypeWrapper<ProposedSessionRow>;
  Query: ResolverTypeWrapper<Record<PropertyKey, never>>;
  ReadyUse: ResolverTypeWrapper<ReadyUseRow>;
  RecordAllergyInput: RecordAllergyInput;
  RecordAllergyResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RecordAllergyResult']>;
  RecordExemptionInput: RecordExemptionInput;
  RecordExemptionResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RecordExemptionResult']>;
  RecordLabelInput: RecordLabelInput;
  RecordLabelResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RecordLabelResult']>;
  RegisterSchoolInput: RegisterSchoolInput;
  RegisterSchoolResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RegisterSchoolResult']>;
  RelaxHouseRuleInput: RelaxHouseRuleInput;
  RelaxHouseRuleResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RelaxHouseRuleResult']>;
  ReleaseTaskInput: ReleaseTaskInput;
  ReleaseTaskResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['ReleaseTaskResult']>;
  Reminder: ResolverTypeWrapper<ReminderRow>;
  ReminderKind: ReminderKind;
  RemoveAllergyInput: RemoveAllergyInput;
  RemoveAllergyResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RemoveAllergyResult']>;
  RemoveCarerInput: RemoveCarerInput;
  RemoveCarerResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RemoveCarerResult']>;
  RemoveOwnDishInput: RemoveOwnDishInput;
  RemoveOwnDishResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RemoveOwnDishResult']>;
  RemoveOwnFoodInput: RemoveOwnFoodInput;
  RemoveOwnFoodResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RemoveOwnFoodResult']>;
  RemoveSchoolDayInput: RemoveSchoolDayInput;
  RemoveSchoolDayResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RemoveSchoolDayResult']>;
  RemoveTermInput: RemoveTermInput;
  RemoveTermResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RemoveTermResult']>;
  RenameMeInput: RenameMeInput;
  RenameMePayload: ResolverTypeWrapper<Omit<RenameMePayload, 'person'> & { person: ResolversTypes['Person'] }>;
  RenameMeResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RenameMeResult']>;
  RenewFeedAddressInput: RenewFeedAddressInput;
  RenewFeedAddressResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RenewFeedAddressResult']>;
  ReportAbsenceInput: ReportAbsenceInput;
  ReportAbsenceResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['ReportAbsenceResult']>;
  ReportDisruptionInput: ReportDisruptionInput;
  ReportDisruptionResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['ReportDisruptionResult']>;
  ReportReturnedInput: ReportReturnedInput;
  ReportReturnedResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['ReportReturnedResult']>;
  ResidenceDay: ResolverTypeWrapper<ResidenceDay>;
  ResidenceKind: ResidenceKind;
  ResidencePattern: ResolverTypeWrapper<ResidencePatternRow>;
  ResidencePayload: ResolverTypeWrapper<ResidencePayloadRow>;
  ResidenceProposal: ResolverTypeWrapper<ResidenceProposalRow>;
  ResidenceSource: ResidenceSource;
  Retention: ResolverTypeWrapper<Retention>;
  RetentionBasis: RetentionBasis;
  ReturnedInput: ReturnedInput;
  ReturnedPayload: ResolverTypeWrapper<ReturnedPayloadRow>;
  RevisionPassed: ResolverTypeWrapper<RevisionPassed>;
  Role: Role;
  RotaPayload: ResolverTypeWrapper<Omit<RotaPayload, 'household'> & { household: ResolversTypes['Household'] }>;
  RotaProposal: ResolverTypeWrapper<RotaProposalRow>;
  RotaSession: ResolverTypeWrapper<RotaSessionRow>;
  Rule: ResolverTypeWrapper<RuleRow>;
  RuleChange: ResolverTypeWrapper<ChangedRule>;
  RuleChangeKind: RuleChangeKind;
  RuleCount: ResolverTypeWrapper<RuleCount>;
  RuleFinding: ResolverTypeWrapper<RuleFindingRow>;
  RuleFindingPlace: ResolverTypeWrapper<RuleFindingPlace>;
  RuleLayer: RuleLayer;
  RuleLevel: RuleLevel;
  RuleNotice: ResolverTypeWrapper<RuleNoticeRow>;
  RuleObeyed: ResolverTypeWrapper<RuleObeyedRow>;
  RuleOrigin: ResolverTypeWrapper<RuleOriginRow>;
  RuleSet: ResolverTypeWrapper<RuleSetRow>;
  RuleSetCheck: ResolverTypeWrapper<CheckedDocument>;
  RuleSetCheckResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RuleSetCheckResult']>;
  RuleSetCounts: ResolverTypeWrapper<RuleImpact>;
  RuleSetDifference: ResolverTypeWrapper<DocumentDifference>;
  RuleSetDocumentInput: RuleSetDocumentInput;
  RuleSetVersion: ResolverTypeWrapper<RuleSetVersionNode>;
  RuleState: RuleState;
  SaveOwnDishInput: SaveOwnDishInput;
  SaveOwnDishPayload: ResolverTypeWrapper<Omit<SaveOwnDishPayload, 'dish' | 'household' | 'missing'> & { dish: ResolversTypes['Dish'], household: ResolversTypes['Household'], missing: ReadonlyArray<ResolversTypes['MissingFact']> }>;
  SaveOwnDishResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SaveOwnDishResult']>;
  SaveOwnFoodInput: SaveOwnFoodInput;
  SaveOwnFoodPayload: ResolverTypeWrapper<Omit<SaveOwnFoodPayload, 'food' | 'household' | 'missing'> & { food: ResolversTypes['Food'], household: ResolversTypes['Household'], missing: ReadonlyArray<ResolversTypes['MissingFact']> }>;
  SaveOwnFoodResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SaveOwnFoodResult']>;
  School: ResolverTypeWrapper<SchoolRow>;
  SchoolClass: ResolverTypeWrapper<SchoolClassRow>;
  SchoolConnection: ResolverTypeWrapper<Omit<SchoolConnection, 'nodes'> & { nodes: ReadonlyArray<ResolversTypes['School']> }>;
  SchoolDay: ResolverTypeWrapper<SchoolDay>;
  SchoolDayKind: SchoolDayKind;
  SchoolNotFound: ResolverTypeWrapper<SchoolNotFound>;
  SchoolPayload: ResolverTypeWrapper<Omit<SchoolPayload, 'school'> & { school: ResolversTypes['School'] }>;
  SchoolProvision: ResolverTypeWrapper<ProvisionRow>;
  SchoolProvisionInput: SchoolProvisionInput;
  SchoolTerm: ResolverTypeWrapper<SchoolTerm>;
  Season: ResolverTypeWrapper<Season>;
  ServedWarmth: ServedWarmth;
  SessionDifference: ResolverTypeWrapper<SessionDifferenceRow>;
  SessionTiming: ResolverTypeWrapper<SessionTimingRow>;
  SetAvailabilityInput: SetAvailabilityInput;
  SetAvailabilityResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetAvailabilityResult']>;
  SetBoxKitInput: SetBoxKitInput;
  SetBoxKitResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetBoxKitResult']>;
  SetDutiesInput: SetDutiesInput;
  SetDutiesResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetDutiesResult']>;
  SetEnergyMethodInput: SetEnergyMethodInput;
  SetEnergyMethodResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetEnergyMethodResult']>;
  SetEquipmentInput: SetEquipmentInput;
  SetEquipmentResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetEquipmentResult']>;
  SetFacilityInput: SetFacilityInput;
  SetFacilityResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetFacilityResult']>;
  SetHotDaysInput: SetHotDaysInput;
  SetHotDaysResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetHotDaysResult']>;
  SetKeepsOutInput: SetKeepsOutInput;
  SetKeepsOutResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetKeepsOutResult']>;
  SetLeftoversInput: SetLeftoversInput;
  SetLeftoversResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetLeftoversResult']>;
  SetPrepTimesInput: SetPrepTimesInput;
  SetPrepTimesResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetPrepTimesResult']>;
  SetResidencePatternInput: SetResidencePatternInput;
  SetResidencePatternResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetResidencePatternResult']>;
  SetSchoolDayInput: SetSchoolDayInput;
  SetSchoolDayResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetSchoolDayResult']>;
  SetSchoolProvisionInput: SetSchoolProvisionInput;
  SetSchoolProvisionPayload: ResolverTypeWrapper<Omit<SetSchoolProvisionPayload, 'child' | 'household'> & { child: ResolversTypes['Child'], household: ResolversTypes['Household'] }>;
  SetSchoolProvisionResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetSchoolProvisionResult']>;
  SetStockInput: SetStockInput;
  SetStockResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetStockResult']>;
  SetTermInput: SetTermInput;
  SetTermResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetTermResult']>;
  SharingGain: ResolverTypeWrapper<SharingGain>;
  ShoppingDifference: ResolverTypeWrapper<ShoppingDifferenceRow>;
  ShoppingLine: ResolverTypeWrapper<ShoppingLineRow>;
  ShoppingLinePayload: ResolverTypeWrapper<Omit<ShoppingLinePayload, 'line'> & { line: ResolversTypes['ShoppingLine'] }>;
  ShortMorningInput: ShortMorningInput;
  Slot: Slot;
  SourcedFigure: ResolverTypeWrapper<SourcedFigure>;
  SpareDish: ResolverTypeWrapper<SpareDishRow>;
  SpareKeptIn: SpareKeptIn;
  SpareUse: ResolverTypeWrapper<SpareUseRow>;
  SpareUseKind: SpareUseKind;
  SpillClass: SpillClass;
  StillInUse: ResolverTypeWrapper<StillInUseRow>;
  Stock: ResolverTypeWrapper<StockRow>;
  StockEntryInput: StockEntryInput;
  String: ResolverTypeWrapper<Scalars['String']['output']>;
  Subscription: ResolverTypeWrapper<Record<PropertyKey, never>>;
  SugarRule: SugarRule;
  SwapItemInput: SwapItemInput;
  SwapItemResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SwapItemResult']>;
  SwapRefused: ResolverTypeWrapper<Omit<SwapRefused, 'conflicts'> & { conflicts: ReadonlyArray<ResolversTypes['Conflict']> }>;
  TakeTaskInput: TakeTaskInput;
  TakeTaskResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['TakeTaskResult']>;
  Task: ResolverTypeWrapper<TaskRow>;
  TaskDifference: ResolverTypeWrapper<TaskDifferenceRow>;
  TaskHeld: ResolverTypeWrapper<Omit<TaskHeld, 'holder'> & { holder?: Maybe<ResolversTypes['Person']> }>;
  TaskNotHeld: ResolverTypeWrapper<TaskNotHeld>;
  TaskPayload: ResolverTypeWrapper<Omit<TaskPayload, 'task'> & { task: ResolversTypes['Task'] }>;
  TickShoppingLineInput: TickShoppingLineInput;
  TickShoppingLineResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['TickShoppingLineResult']>;
  TripDaysInput: TripDaysInput;
  UndoTaskInput: UndoTaskInput;
  UndoTaskResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['UndoTaskResult']>;
  UnitSystem: UnitSystem;
  UnpinItemInput: UnpinItemInput;
  UnpinItemResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['UnpinItemResult']>;
  UpperLevel: ResolverTypeWrapper<UpperLevel>;
  UserError: ResolverTypeWrapper<ResolversInterfaceTypes<ResolversTypes>['UserError']>;
  Verdicts: ResolverTypeWrapper<Omit<Verdicts, 'places'> & { places: ReadonlyArray<ResolversTypes['PlaceVerdict']> }>;
  VerdictsResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['VerdictsResult']>;
  WayOut: ResolverTypeWrapper<WayOutRow>;
  WayOutChange: ResolverTypeWrapper<WayOutChangeRow>;
  Week: ResolverTypeWrapper<WeekRow>;
  WeekAgreed: ResolverTypeWrapper<WeekAgreed>;
  WeekDifference: ResolverTypeWrapper<WeekDifferenceRow>;
  WeekInfeasible: ResolverTypeWrapper<WeekInfeasibleRow>;
  WeekPayload: ResolverTypeWrapper<WeekPayloadRow>;
  WeekPlan: ResolverTypeWrapper<WeekPlanRow>;
  Weekday: Weekday;
  Whereabouts: Whereabouts;
  WindowKind: WindowKind;
  WishTotals: ResolverTypeWrapper<WishTotals>;
  WithdrawDisruptionInput: WithdrawDisruptionInput;
  WithdrawDisruptionResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['WithdrawDisruptionResult']>;
  WithdrawErasureInput: WithdrawErasureInput;
  WithdrawErasurePayload: ResolverTypeWrapper<Omit<WithdrawErasurePayload, 'child'> & { child: ResolversTypes['Child'] }>;
  WithdrawErasureResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['WithdrawErasureResult']>;
  WithdrawInvitationInput: WithdrawInvitationInput;
  WithdrawInvitationPayload: ResolverTypeWrapper<Omit<WithdrawInvitationPayload, 'invitation'> & { invitation: ResolversTypes['Invitation'] }>;
  WithdrawInvitationResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['WithdrawInvitationResult']>;
  WithdrawResidenceChangeInput: WithdrawResidenceChangeInput;
  WithdrawResidenceChangeResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['WithdrawResidenceChangeResult']>;
  WithdrawRuleSetInput: WithdrawRuleSetInput;
  WithdrawRuleSetResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['WithdrawRuleSetResult']>;
  WorkState: WorkState;
  WorkUsed: ResolverTypeWrapper<Omit<WorkUsed, 'boxes'> & { boxes: ReadonlyArray<ResolversTypes['BoxPlace']> }>;
  WriteHandoverInput: WriteHandoverInput;
  WriteHandoverResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['WriteHandoverResult']>;
};

/** Mapping between all available schema types and the resolvers parents */
export type ResolversParentTypes = {
  AcceptHomeInvitationInput: AcceptHomeInvitationInput;
  AcceptHomeInvitationPayload: Omit<AcceptHomeInvitationPayload, 'child' | 'household'> & { child: ResolversParentTypes['Child'], household: ResolversParentTypes['Household'] };
  AcceptHomeInvitationResult: ResolversUnionTypes<ResolversParentTypes>['AcceptHomeInvitationResult'];
  AcceptInvitationInput: AcceptInvitationInput;
  AcceptInvitationResult: ResolversUnionTypes<ResolversParentTypes>['AcceptInvitationResult'];
  AcceptRotaInput: AcceptRotaInput;
  AcceptRotaResult: ResolversUnionTypes<ResolversParentTypes>['AcceptRotaResult'];
  AddSchoolClassInput: AddSchoolClassInput;
  AddSchoolClassResult: ResolversUnionTypes<ResolversParentTypes>['AddSchoolClassResult'];
  AdoptRuleSetInput: AdoptRuleSetInput;
  AdoptRuleSetResult: ResolversUnionTypes<ResolversParentTypes>['AdoptRuleSetResult'];
  AgeSpan: AgeSpan;
  AgreeWeekInput: AgreeWeekInput;
  AgreeWeekResult: ResolversUnionTypes<ResolversParentTypes>['AgreeWeekResult'];
  AgreementNeeded: AgreementNeeded;
  AllergenSource: Omit<AllergenSource, 'foods'> & { foods: ReadonlyArray<ResolversParentTypes['Food']> };
  Allergy: Allergy;
  AllergyInput: AllergyInput;
  AllergyPayload: Omit<AllergyPayload, 'child' | 'household'> & { child: ResolversParentTypes['Child'], household: ResolversParentTypes['Household'] };
  AlreadyCarer: AlreadyCarer;
  Alternative: AlternativeRow;
  AnswerResidenceChangeInput: AnswerResidenceChangeInput;
  AnswerResidenceChangeResult: ResolversUnionTypes<ResolversParentTypes>['AnswerResidenceChangeResult'];
  ApplianceBrokenInput: ApplianceBrokenInput;
  ApplianceUse: ApplianceUseRow;
  ApplianceUses: ApplianceUsesRow;
  AppointInput: AppointInput;
  AppointResult: ResolversUnionTypes<ResolversParentTypes>['AppointResult'];
  Appointment: AppointmentRow;
  AppointmentsPayload: Omit<AppointmentsPayload, 'appointments'> & { appointments: ReadonlyArray<ResolversParentTypes['Appointment']> };
  AuditConnection: Omit<AuditConnection, 'nodes'> & { nodes: ReadonlyArray<ResolversParentTypes['AuditEntry']> };
  AuditEntry: AuditEntryRow;
  Availability: Omit<Availability, 'person'> & { person: ResolversParentTypes['Person'] };
  AvailabilityInput: AvailabilityInput;
  Base: BaseRow;
  Batch: BatchRow;
  BatchDifference: BatchDifferenceRow;
  BatchFeed: BatchFeedRow;
  BatchSize: BatchSize;
  BlockReason: BlockReasonRow;
  Boolean: Scalars['Boolean']['output'];
  Box: BoxRow;
  BoxBlocked: BoxBlocked;
  BoxCard: BoxCardRow;
  BoxCheck: Omit<BoxCheck, 'compliance'> & { compliance: ResolversParentTypes['Compliance'] };
  BoxCheckItemInput: BoxCheckItemInput;
  BoxCheckResult: ResolversUnionTypes<ResolversParentTypes>['BoxCheckResult'];
  BoxClosed: BoxClosed;
  BoxDifference: BoxDifferenceRow;
  BoxItem: BoxItemRow;
  BoxItemNote: BoxItemNoteRow;
  BoxKitPayload: Omit<BoxKitPayload, 'child' | 'household'> & { child: ResolversParentTypes['Child'], household: ResolversParentTypes['Household'] };
  BoxPacking: Omit<BoxPacking, 'packedBy'> & { packedBy?: Maybe<ResolversParentTypes['Person']> };
  BoxPart: BoxPartRow;
  BoxPlace: BoxPlaceRow;
  BoxVerdict: BoxVerdictRow;
  BreakNeeds: BreakNeeds;
  CalendarChange: CalendarChangeRow;
  CalendarChangeResult: ResolversUnionTypes<ResolversParentTypes>['CalendarChangeResult'];
  CalendarEntry: CalendarEntryRow;
  CalendarEntryChange: Omit<CalendarEntryChange, 'after' | 'before'> & { after: ResolversParentTypes['CalendarEntry'], before: ResolversParentTypes['CalendarEntry'] };
  Carer: Omit<Carer, 'person'> & { person: ResolversParentTypes['Person'] };
  CarerMinutes: Omit<CarerMinutes, 'person'> & { person: ResolversParentTypes['Person'] };
  CarerNotFound: CarerNotFound;
  CarerTasks: CarerTasksRow;
  Caution: CautionRow;
  Change: ChangeNode;
  ChangeConnection: Omit<ChangeConnection, 'nodes'> & { nodes: ReadonlyArray<ResolversParentTypes['Change']> };
  ChangeRoleInput: ChangeRoleInput;
  ChangeRoleResult: ResolversUnionTypes<ResolversParentTypes>['ChangeRoleResult'];
  ChangeSchoolClassInput: ChangeSchoolClassInput;
  ChangeSchoolClassResult: ResolversUnionTypes<ResolversParentTypes>['ChangeSchoolClassResult'];
  ChangedField: ChangedField;
  Child: ChildRow;
  ChildDaysInput: ChildDaysInput;
  ChildNotFound: ChildNotFound;
  ChokingHazard: ChokingHazard;
  Clash: ClashRow;
  ClashMember: ClashMemberRow;
  ClassBreak: BreakRow;
  ClassBreakInput: ClassBreakInput;
  CloseFeedInput: CloseFeedInput;
  CloseFeedPayload: CloseFeedPayload;
  CloseFeedResult: ResolversUnionTypes<ResolversParentTypes>['CloseFeedResult'];
  CompartmentInput: CompartmentInput;
  Compliance: ComplianceRow;
  ComplianceTotals: ComplianceTotals;
  ConfirmationNeeded: ConfirmationNeeded;
  Conflict: ConflictRow;
  CostPart: CostPartRow;
  CountRuleSetComplianceInput: CountRuleSetComplianceInput;
  CountRuleSetComplianceResult: ResolversUnionTypes<ResolversParentTypes>['CountRuleSetComplianceResult'];
  CountRuleSetImpactInput: CountRuleSetImpactInput;
  CountRuleSetImpactResult: ResolversUnionTypes<ResolversParentTypes>['CountRuleSetImpactResult'];
  CreateChildInput: CreateChildInput;
  CreateChildPayload: Omit<CreateChildPayload, 'child' | 'household'> & { child: ResolversParentTypes['Child'], household: ResolversParentTypes['Household'] };
  CreateChildResult: ResolversUnionTypes<ResolversParentTypes>['CreateChildResult'];
  CreateHouseholdInput: CreateHouseholdInput;
  CreateHouseholdPayload: Omit<CreateHouseholdPayload, 'household'> & { household: ResolversParentTypes['Household'] };
  CreateHouseholdResult: ResolversUnionTypes<ResolversParentTypes>['CreateHouseholdResult'];
  CrossContact: CrossContact;
  Cut: Cut;
  DailyNeeds: DailyNeeds;
  DateTime: Scalars['DateTime']['output'];
  DayClosed: DayClosed;
  DayReturned: DayReturned;
  Dish: DishRow;
  DishBase: Omit<DishBase, 'base'> & { base: ResolversParentTypes['Base'] };
  DishConnection: Omit<DishConnection, 'nodes'> & { nodes: ReadonlyArray<ResolversParentTypes['Dish']> };
  DishIngredient: DishIngredientRow;
  DishNotOffered: DishNotOfferedRow;
  DishReturned: DishReturnedRow;
  DishStep: DishStep;
  DishUnknown: DishUnknown;
  DismissInput: DismissInput;
  DismissResult: ResolversUnionTypes<ResolversParentTypes>['DismissResult'];
  Disruption: DisruptionRow;
  DisruptionInput: DisruptionInput;
  DisruptionOffer: DisruptionOfferRow;
  DisruptionOfferResult: ResolversUnionTypes<ResolversParentTypes>['DisruptionOfferResult'];
  DisruptionPayload: DisruptionPayloadRow;
  DocumentIssue: DocumentIssue;
  DocumentRefused: DocumentRefused;
  DropOwnRulesInput: DropOwnRulesInput;
  DropOwnRulesResult: ResolversUnionTypes<ResolversParentTypes>['DropOwnRulesResult'];
  DutyInput: DutyInput;
  EarlyFinishInput: EarlyFinishInput;
  EndExemptionInput: EndExemptionInput;
  EndExemptionResult: ResolversUnionTypes<ResolversParentTypes>['EndExemptionResult'];
  EnrolChildInput: EnrolChildInput;
  EnrolChildPayload: Omit<EnrolChildPayload, 'child' | 'household'> & { child: ResolversParentTypes['Child'], household: ResolversParentTypes['Household'] };
  EnrolChildResult: ResolversUnionTypes<ResolversParentTypes>['EnrolChildResult'];
  Enrolment: EnrolmentRow;
  Equipment: Equipment;
  EquipmentInput: EquipmentInput;
  EraseChildInput: EraseChildInput;
  EraseChildResult: ResolversUnionTypes<ResolversParentTypes>['EraseChildResult'];
  EraseHouseholdInput: EraseHouseholdInput;
  EraseHouseholdResult: ResolversUnionTypes<ResolversParentTypes>['EraseHouseholdResult'];
  EraseMeInput: EraseMeInput;
  EraseMeResult: ResolversUnionTypes<ResolversParentTypes>['EraseMeResult'];
  ErasedPayload: ErasedPayload;
  ErasureAsked: ErasureAsked;
  EstimatedCost: EstimatedCost;
  Exclusion: ExclusionRow;
  Exemption: ExemptionNodeRow;
  ExemptionNote: ExemptionNote;
  ExemptionPayload: Omit<ExemptionPayload, 'child' | 'exemption' | 'household'> & { child: ResolversParentTypes['Child'], exemption?: Maybe<ResolversParentTypes['Exemption']>, household: ResolversParentTypes['Household'] };
  ExemptionRefused: ExemptionRefused;
  Fairness: Omit<Fairness, 'carers'> & { carers: ReadonlyArray<ResolversParentTypes['CarerMinutes']> };
  Feed: FeedAddressRow;
  FeedAddressPayload: FeedAddressPayload;
  FieldChange: FieldChange;
  FinishTaskInput: FinishTaskInput;
  FinishTaskResult: ResolversUnionTypes<ResolversParentTypes>['FinishTaskResult'];
  Float: Scalars['Float']['output'];
  Food: FoodRow;
  FoodMeasure: FoodMeasure;
  FoodMissingInput: FoodMissingInput;
  ForTheOtherHome: ForTheOtherHome;
  FreezerStock: FreezerStockRow;
  GiveUpHomeInput: GiveUpHomeInput;
  GiveUpHomeResult: ResolversUnionTypes<ResolversParentTypes>['GiveUpHomeResult'];
  HandOverCoordinationInput: HandOverCoordinationInput;
  HandOverCoordinationResult: ResolversUnionTypes<ResolversParentTypes>['HandOverCoordinationResult'];
  HandTaskInput: HandTaskInput;
  HandTaskResult: ResolversUnionTypes<ResolversParentTypes>['HandTaskResult'];
  Handover: HandoverRow;
  HandoverPayload: HandoverPayloadRow;
  HelperNotFound: HelperNotFound;
  HoldingPoint: HoldingPoint;
  Household: HouseholdRow;
  HouseholdNotFound: HouseholdNotFound;
  HouseholdPayload: Omit<HouseholdPayload, 'household'> & { household: ResolversParentTypes['Household'] };
  HouseholdsLeft: HouseholdsLeft;
  ID: Scalars['ID']['output'];
  InputIssue: InputIssue;
  Int: Scalars['Int']['output'];
  InvalidInput: InvalidInput;
  Invitation: InvitationRow;
  InvitationClosed: InvitationClosed;
  InvitationNotFound: InvitationNotFound;
  InvitationOffer: InvitationOfferRow;
  InvitationPayload: Omit<InvitationPayload, 'invitation'> & { invitation: ResolversParentTypes['Invitation'] };
  InviteCarerInput: InviteCarerInput;
  InviteCarerResult: ResolversUnionTypes<ResolversParentTypes>['InviteCarerResult'];
  InviteHomeInput: InviteHomeInput;
  InviteHomeResult: ResolversUnionTypes<ResolversParentTypes>['InviteHomeResult'];
  ItemDifference: ItemDifferenceRow;
  ItemHolding: ItemHoldingRow;
  KeepOwnRulesInput: KeepOwnRulesInput;
  KeepOwnRulesResult: ResolversUnionTypes<ResolversParentTypes>['KeepOwnRulesResult'];
  KeyReused: KeyReused;
  Kitchen: KitchenRow;
  KitchenPayload: Omit<KitchenPayload, 'household'> & { household: ResolversParentTypes['Household'] };
  LabelCheck: LabelCheckRow;
  LabelDeclaration: LabelDeclaration;
  LabelExemption: LabelExemption;
  LabelKind: LabelKind;
  LabelKindInput: LabelKindInput;
  LabelLaw: LabelLaw;
  LabelLawClass: LabelLawClass;
  LabelLawMember: LabelLawMember;
  LabelNutrientsInput: LabelNutrientsInput;
  LabelsUnread: LabelsUnreadRow;
  LastAdministrator: LastAdministrator;
  LastCoordinator: LastCoordinator;
  LeaveHouseholdInput: LeaveHouseholdInput;
  LeaveHouseholdPayload: Omit<LeaveHouseholdPayload, 'me'> & { me: ResolversParentTypes['Me'] };
  LeaveHouseholdResult: ResolversUnionTypes<ResolversParentTypes>['LeaveHouseholdResult'];
  Leftover: LeftoverRow;
  LeftoverInput: LeftoverInput;
  LivesHereAlready: LivesHereAlready;
  LivesInTwoHomes: LivesInTwoHomes;
  LoadCalendarInput: LoadCalendarInput;
  LoadCalendarResult: ResolversUnionTypes<ResolversParentTypes>['LoadCalendarResult'];
  LoadRuleSetInput: LoadRuleSetInput;
  LoadRuleSetPayload: Omit<LoadRuleSetPayload, 'ruleSet'> & { ruleSet: ResolversParentTypes['RuleSet'] };
  LoadRuleSetResult: ResolversUnionTypes<ResolversParentTypes>['LoadRuleSetResult'];
  LocalDate: Scalars['LocalDate']['output'];
  LocalTime: Scalars['LocalTime']['output'];
  MarkPackedInput: MarkPackedInput;
  MarkPackedResult: ResolversUnionTypes<ResolversParentTypes>['MarkPackedResult'];
  Me: MeRow;
  MendWeekInput: MendWeekInput;
  MendWeekResult: ResolversUnionTypes<ResolversParentTypes>['MendWeekResult'];
  MendedBox: MendedBoxRow;
  MendedItem: MendedItemRow;
  MendingOffer: MendingOfferRow;
  MissingFact: MissingFactRow;
  MissingFigure: MissingFigure;
  Mutation: Record<PropertyKey, never>;
  NeedSource: NeedSource;
  NeedsInputs: NeedsInputs;
  NoSchool: NoSchoolRow;
  NoWeekWithDish: NoWeekWithDishRow;
  Node: ResolversInterfaceTypes<ResolversParentTypes>['Node'];
  NotAppointed: NotAppointed;
  NotPermitted: NotPermitted;
  NothingThere: NothingThere;
  NutrientAmount: NutrientAmount;
  NutrientDerivation: NutrientDerivationRow;
  NutrientPart: NutrientPartRow;
  OnlyHome: OnlyHome;
  OutsideTerm: OutsideTerm;
  OwnDishBaseInput: OwnDishBaseInput;
  OwnDishInput: OwnDishInput;
  OwnDishStepInput: OwnDishStepInput;
  OwnEquipmentInput: OwnEquipmentInput;
  OwnFoodInput: OwnFoodInput;
  OwnIngredientInput: OwnIngredientInput;
  OwnLabelInput: OwnLabelInput;
  OwnPackInput: OwnPackInput;
  OwnPortionInput: OwnPortionInput;
  OwnRulesPayload: Omit<OwnRulesPayload, 'child' | 'household' | 'ruleSet'> & { child: ResolversParentTypes['Child'], household: ResolversParentTypes['Household'], ruleSet: ResolversParentTypes['RuleSet'] };
  PackingTime: PackingTime;
  PageInfo: PageInfo;
  Person: PersonRow;
  PersonNotFound: PersonNotFound;
  PinItemInput: PinItemInput;
  PinItemResult: ResolversUnionTypes<ResolversParentTypes>['PinItemResult'];
  PlaceVerdict: Omit<PlaceVerdict, 'exclusion' | 'labelsToRead'> & { exclusion?: Maybe<ResolversParentTypes['Exclusion']>, labelsToRead: ReadonlyArray<ResolversParentTypes['Food']> };
  PlanCertificate: PlanCertificateRow;
  PlanOrigin: PlanOrigin;
  PlanProgress: PlanProgress;
  PlanQueued: PlanQueued;
  PlanWeekInBackgroundInput: PlanWeekInBackgroundInput;
  PlanWeekInBackgroundResult: ResolversUnionTypes<ResolversParentTypes>['PlanWeekInBackgroundResult'];
  PlanWeekInput: PlanWeekInput;
  PlanWeekResult: ResolversUnionTypes<ResolversParentTypes>['PlanWeekResult'];
  PrepSession: PrepSessionRow;
  PrepTime: PrepTime;
  PrepTimeInput: PrepTimeInput;
  PriceOfChange: PriceOfChangeRow;
  PriceOfDishResult: ResolversUnionTypes<ResolversParentTypes>['PriceOfDishResult'];
  PricedAlternative: PricedAlternativeRow;
  ProcessingClass: ProcessingClassRow;
  ProposalMoved: ProposalMoved;
  ProposalOpen: ProposalOpen;
  ProposalSettled: ProposalSettled;
  ProposeResidenceChangeInput: ProposeResidenceChangeInput;
  ProposeResidenceChangeResult: ResolversUnionTypes<ResolversParentTypes>['ProposeResidenceChangeResult'];
  ProposedDay: ProposedDay;
  ProposedMinutes: ProposedMinutesRow;
  ProposedSession: ProposedSessionRow;
  Query: Record<PropertyKey, never>;
  ReadyUse: ReadyUseRow;
  RecordAllergyInput: RecordAllergyInput;
  RecordAllergyResult: ResolversUnionTypes<ResolversParentTypes>['RecordAllergyResult'];
  RecordExemptionInput: RecordExemptionInput;
  RecordExemptionResult: ResolversUnionTypes<ResolversParentTypes>['RecordExemptionResult'];
  RecordLabelInput: RecordLabelInput;
  RecordLabelResult: ResolversUnionTypes<ResolversParentTypes>['RecordLabelResult'];
  RegisterSchoolInput: RegisterSchoolInput;
  RegisterSchoolResult: ResolversUnionTypes<ResolversParentTypes>['RegisterSchoolResult'];
  RelaxHouseRuleInput: RelaxHouseRuleInput;
  RelaxHouseRuleResult: ResolversUnionTypes<ResolversParentTypes>['RelaxHouseRuleResult'];
  ReleaseTaskInput: ReleaseTaskInput;
  ReleaseTaskResult: ResolversUnionTypes<ResolversParentTypes>['ReleaseTaskResult'];
  Reminder: ReminderRow;
  RemoveAllergyInput: RemoveAllergyInput;
  RemoveAllergyResult: ResolversUnionTypes<ResolversParentTypes>['RemoveAllergyResult'];
  RemoveCarerInput: RemoveCarerInput;
  RemoveCarerResult: ResolversUnionTypes<ResolversParentTypes>['RemoveCarerResult'];
  RemoveOwnDishInput: RemoveOwnDishInput;
  RemoveOwnDishResult: ResolversUnionTypes<ResolversParentTypes>['RemoveOwnDishResult'];
  RemoveOwnFoodInput: RemoveOwnFoodInput;
  RemoveOwnFoodResult: ResolversUnionTypes<ResolversParentTypes>['RemoveOwnFoodResult'];
  RemoveSchoolDayInput: RemoveSchoolDayInput;
  RemoveSchoolDayResult: ResolversUnionTypes<ResolversParentTypes>['RemoveSchoolDayResult'];
  RemoveTermInput: RemoveTermInput;
  RemoveTermResult: ResolversUnionTypes<ResolversParentTypes>['RemoveTermResult'];
  RenameMeInput: RenameMeInput;
  RenameMePayload: Omit<RenameMePayload, 'person'> & { person: ResolversParentTypes['Person'] };
  RenameMeResult: ResolversUnionTypes<ResolversParentTypes>['RenameMeResult'];
  RenewFeedAddressInput: RenewFeedAddressInput;
  RenewFeedAddressResult: ResolversUnionTypes<ResolversParentTypes>['RenewFeedAddressResult'];
  ReportAbsenceInput: ReportAbsenceInput;
  ReportAbsenceResult: ResolversUnionTypes<ResolversParentTypes>['ReportAbsenceResult'];
  ReportDisruptionInput: ReportDisruptionInput;
  ReportDisruptionResult: ResolversUnionTypes<ResolversParentTypes>['ReportDisruptionResult'];
  ReportReturnedInput: ReportReturnedInput;
  ReportReturnedResult: ResolversUnionTypes<ResolversParentTypes>['ReportReturnedResult'];
  ResidenceDay: ResidenceDay;
  ResidencePattern: ResidencePatternRow;
  ResidencePayload: ResidencePayloadRow;
  ResidenceProposal: ResidenceProposalRow;
  Retention: Retention;
  ReturnedInput: ReturnedInput;
  ReturnedPayload: ReturnedPayloadRow;
  RevisionPassed: RevisionPassed;
  RotaPayload: Omit<RotaPayload, 'household'> & { household: ResolversParentTypes['Household'] };
  RotaProposal: RotaProposalRow;
  RotaSession: RotaSessionRow;
  Rule: RuleRow;
  RuleChange: ChangedRule;
  RuleCount: RuleCount;
  RuleFinding: RuleFindingRow;
  RuleFindingPlace: RuleFindingPlace;
  RuleNotice: RuleNoticeRow;
  RuleObeyed: RuleObeyedRow;
  RuleOrigin: RuleOriginRow;
  RuleSet: RuleSetRow;
  RuleSetCheck: CheckedDocument;
  RuleSetCheckResult: ResolversUnionTypes<ResolversParentTypes>['RuleSetCheckResult'];
  RuleSetCounts: RuleImpact;
  RuleSetDifference: DocumentDifference;
  RuleSetDocumentInput: RuleSetDocumentInput;
  RuleSetVersion: RuleSetVersionNode;
  SaveOwnDishInput: SaveOwnDishInput;
  SaveOwnDishPayload: Omit<SaveOwnDishPayload, 'dish' | 'household' | 'missing'> & { dish: ResolversParentTypes['Dish'], household: ResolversParentTypes['Household'], missing: ReadonlyArray<ResolversParentTypes['MissingFact']> };
  SaveOwnDishResult: ResolversUnionTypes<ResolversParentTypes>['SaveOwnDishResult'];
  SaveOwnFoodInput: SaveOwnFoodInput;
  SaveOwnFoodPayload: Omit<SaveOwnFoodPayload, 'food' | 'household' | 'missing'> & { food: ResolversParentTypes['Food'], household: ResolversParentTypes['Household'], missing: ReadonlyArray<ResolversParentTypes['MissingFact']> };
  SaveOwnFoodResult: ResolversUnionTypes<ResolversParentTypes>['SaveOwnFoodResult'];
  School: SchoolRow;
  SchoolClass: SchoolClassRow;
  SchoolConnection: Omit<SchoolConnection, 'nodes'> & { nodes: ReadonlyArray<ResolversParentTypes['School']> };
  SchoolDay: SchoolDay;
  SchoolNotFound: SchoolNotFound;
  SchoolPayload: Omit<SchoolPayload, 'school'> & { school: ResolversParentTypes['School'] };
  SchoolProvision: ProvisionRow;
  SchoolProvisionInput: SchoolProvisionInput;
  SchoolTerm: SchoolTerm;
  Season: Season;
  SessionDifference: SessionDifferenceRow;
  SessionTiming: SessionTimingRow;
  SetAvailabilityInput: SetAvailabilityInput;
  SetAvailabilityResult: ResolversUnionTypes<ResolversParentTypes>['SetAvailabilityResult'];
  SetBoxKitInput: SetBoxKitInput;
  SetBoxKitResult: ResolversUnionTypes<ResolversParentTypes>['SetBoxKitResult'];
  SetDutiesInput: SetDutiesInput;
  SetDutiesResult: ResolversUnionTypes<ResolversParentTypes>['SetDutiesResult'];
  SetEnergyMethodInput: SetEnergyMethodInput;
  SetEnergyMethodResult: ResolversUnionTypes<ResolversParentTypes>['SetEnergyMethodResult'];
  SetEquipmentInput: SetEquipmentInput;
  SetEquipmentResult: ResolversUnionTypes<ResolversParentTypes>['SetEquipmentResult'];
  SetFacilityInput: SetFacilityInput;
  SetFacilityResult: ResolversUnionTypes<ResolversParentTypes>['SetFacilityResult'];
  SetHotDaysInput: SetHotDaysInput;
  SetHotDaysResult: ResolversUnionTypes<ResolversParentTypes>['SetHotDaysResult'];
  SetKeepsOutInput: SetKeepsOutInput;
  SetKeepsOutResult: ResolversUnionTypes<ResolversParentTypes>['SetKeepsOutResult'];
  SetLeftoversInput: SetLeftoversInput;
  SetLeftoversResult: ResolversUnionTypes<ResolversParentTypes>['SetLeftoversResult'];
  SetPrepTimesInput: SetPrepTimesInput;
  SetPrepTimesResult: ResolversUnionTypes<ResolversParentTypes>['SetPrepTimesResult'];
  SetResidencePatternInput: SetResidencePatternInput;
  SetResidencePatternResult: ResolversUnionTypes<ResolversParentTypes>['SetResidencePatternResult'];
  SetSchoolDayInput: SetSchoolDayInput;
  SetSchoolDayResult: ResolversUnionTypes<ResolversParentTypes>['SetSchoolDayResult'];
  SetSchoolProvisionInput: SetSchoolProvisionInput;
  SetSchoolProvisionPayload: Omit<SetSchoolProvisionPayload, 'child' | 'household'> & { child: ResolversParentTypes['Child'], household: ResolversParentTypes['Household'] };
  SetSchoolProvisionResult: ResolversUnionTypes<ResolversParentTypes>['SetSchoolProvisionResult'];
  SetStockInput: SetStockInput;
  SetStockResult: ResolversUnionTypes<ResolversParentTypes>['SetStockResult'];
  SetTermInput: SetTermInput;
  SetTermResult: ResolversUnionTypes<ResolversParentTypes>['SetTermResult'];
  SharingGain: SharingGain;
  ShoppingDifference: ShoppingDifferenceRow;
  ShoppingLine: ShoppingLineRow;
  ShoppingLinePayload: Omit<ShoppingLinePayload, 'line'> & { line: ResolversParentTypes['ShoppingLine'] };
  ShortMorningInput: ShortMorningInput;
  SourcedFigure: SourcedFigure;
  SpareDish: SpareDishRow;
  SpareUse: SpareUseRow;
  StillInUse: StillInUseRow;
  Stock: StockRow;
  StockEntryInput: StockEntryInput;
  String: Scalars['String']['output'];
  Subscription: Record<PropertyKey, never>;
  SwapItemInput: SwapItemInput;
  SwapItemResult: ResolversUnionTypes<ResolversParentTypes>['SwapItemResult'];
  SwapRefused: Omit<SwapRefused, 'conflicts'> & { conflicts: ReadonlyArray<ResolversParentTypes['Conflict']> };
  TakeTaskInput: TakeTaskInput;
  TakeTaskResult: ResolversUnionTypes<ResolversParentTypes>['TakeTaskResult'];
  Task: TaskRow;
  TaskDifference: TaskDifferenceRow;
  TaskHeld: Omit<TaskHeld, 'holder'> & { holder?: Maybe<ResolversParentTypes['Person']> };
  TaskNotHeld: TaskNotHeld;
  TaskPayload: Omit<TaskPayload, 'task'> & { task: ResolversParentTypes['Task'] };
  TickShoppingLineInput: TickShoppingLineInput;
  TickShoppingLineResult: ResolversUnionTypes<ResolversParentTypes>['TickShoppingLineResult'];
  TripDaysInput: TripDaysInput;
  UndoTaskInput: UndoTaskInput;
  UndoTaskResult: ResolversUnionTypes<ResolversParentTypes>['UndoTaskResult'];
  UnpinItemInput: UnpinItemInput;
  UnpinItemResult: ResolversUnionTypes<ResolversParentTypes>['UnpinItemResult'];
  UpperLevel: UpperLevel;
  UserError: ResolversInterfaceTypes<ResolversParentTypes>['UserError'];
  Verdicts: Omit<Verdicts, 'places'> & { places: ReadonlyArray<ResolversParentTypes['PlaceVerdict']> };
  VerdictsResult: ResolversUnionTypes<ResolversParentTypes>['VerdictsResult'];
  WayOut: WayOutRow;
  WayOutChange: WayOutChangeRow;
  Week: WeekRow;
  WeekAgreed: WeekAgreed;
  WeekDifference: WeekDifferenceRow;
  WeekInfeasible: WeekInfeasibleRow;
  WeekPayload: WeekPayloadRow;
  WeekPlan: WeekPlanRow;
  WishTotals: WishTotals;
  WithdrawDisruptionInput: WithdrawDisruptionInput;
  WithdrawDisruptionResult: ResolversUnionTypes<ResolversParentTypes>['WithdrawDisruptionResult'];
  WithdrawErasureInput: WithdrawErasureInput;
  WithdrawErasurePayload: Omit<WithdrawErasurePayload, 'child'> & { child: ResolversParentTypes['Child'] };
  WithdrawErasureResult: ResolversUnionTypes<ResolversParentTypes>['WithdrawErasureResult'];
  WithdrawInvitationInput: WithdrawInvitationInput;
  WithdrawInvitationPayload: Omit<WithdrawInvitationPayload, 'invitation'> & { invitation: ResolversParentTypes['Invitation'] };
  WithdrawInvitationResult: ResolversUnionTypes<ResolversParentTypes>['WithdrawInvitationResult'];
  WithdrawResidenceChangeInput: WithdrawResidenceChangeInput;
  WithdrawResidenceChangeResult: ResolversUnionTypes<ResolversParentTypes>['WithdrawResidenceChangeResult'];
  WithdrawRuleSetInput: WithdrawRuleSetInput;
  WithdrawRuleSetResult: ResolversUnionTypes<ResolversParentTypes>['WithdrawRuleSetResult'];
  WorkUsed: Omit<WorkUsed, 'boxes'> & { boxes: ReadonlyArray<ResolversParentTypes['BoxPlace']> };
  WriteHandoverInput: WriteHandoverInput;
  WriteHandoverResult: ResolversUnionTypes<ResolversParentTypes>['WriteHandoverResult'];
};

export type CostDirectiveArgs = {
  weight: Scalars['String']['input'];
};

export type CostDirectiveResolver<Result, Parent, ContextType = GraphqlContext, Args = CostDirectiveArgs> = DirectiveResolverFn<Result, Parent, ContextType, Args>;

export type ListSizeDirectiveArgs = {
  assumedSize?: Maybe<Scalars['Int']['input']>;
  requireOneSlicingArgument?: Maybe<Scalars['Boolean']['input']>;
  sizedFields?: Maybe<ReadonlyArray<Scalars['String']['input']>>;
  slicingArguments?: Maybe<ReadonlyArray<Scalars['String']['input']>>;
};

export type ListSizeDirectiveResolver<Result, Parent, ContextType = GraphqlContext, Args = ListSizeDirectiveArgs> = DirectiveResolverFn<Result, Parent, ContextType, Args>;

export type AcceptHomeInvitationPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AcceptHomeInvitationPayload'] = ResolversParentTypes['AcceptHomeInvitationPayload']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type AcceptHomeInvitationResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AcceptHomeInvitationResult'] = ResolversParentTypes['AcceptHomeInvitationResult']> = {
  __resolveType: TypeResolveFn<'AcceptHomeInvitationPayload' | 'HouseholdNotFound' | 'InvalidInput' | 'InvitationClosed' | 'InvitationNotFound' | 'KeyReused' | 'LivesHereAlready' | 'LivesInTwoHomes' | 'NotPermitted', ParentType, ContextType>;
};

export type AcceptInvitationResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AcceptInvitationResult'] = ResolversParentTypes['AcceptInvitationResult']> = {
  __resolveType: TypeResolveFn<'AlreadyCarer' | 'HouseholdNotFound' | 'HouseholdPayload' | 'InvalidInput' | 'InvitationClosed' | 'InvitationNotFound' | 'KeyReused', ParentType, ContextType>;
};

export type AcceptRotaResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AcceptRotaResult'] = ResolversParentTypes['AcceptRotaResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'ProposalMoved' | 'RevisionPassed' | 'RotaPayload', ParentType, ContextType>;
};

export type AddSchoolClassResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AddSchoolClassResult'] = ResolversParentTypes['AddSchoolClassResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotAppointed' | 'RevisionPassed' | 'SchoolNotFound' | 'SchoolPayload', ParentType, ContextType>;
};

export type AdoptRuleSetResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AdoptRuleSetResult'] = ResolversParentTypes['AdoptRuleSetResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotAppointed' | 'NothingThere' | 'SchoolNotFound' | 'SchoolPayload', ParentType, ContextType>;
};

export type AgeSpanResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AgeSpan'] = ResolversParentTypes['AgeSpan']> = {
  fromYears?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  underYears?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
};

export type AgreeWeekResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AgreeWeekResult'] = ResolversParentTypes['AgreeWeekResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'WeekAgreed' | 'WeekPayload', ParentType, ContextType>;
};

export type AgreementNeededResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AgreementNeeded'] = ResolversParentTypes['AgreementNeeded']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type AllergenSourceResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AllergenSource'] = ResolversParentTypes['AllergenSource']> = {
  allergen?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  foods?: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
};

export type AllergyResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Allergy'] = ResolversParentTypes['Allergy']> = {
  allergen?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  avoid?: Resolver<ResolversTypes['Avoid'], ParentType, ContextType>;
  foodKind?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  recordedHere?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
};

export type AllergyPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AllergyPayload'] = ResolversParentTypes['AllergyPayload']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type AlreadyCarerResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AlreadyCarer'] = ResolversParentTypes['AlreadyCarer']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  role?: Resolver<ResolversTypes['Role'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type AlternativeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Alternative'] = ResolversParentTypes['Alternative']> = {
  dish?: Resolver<ResolversTypes['Dish'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  pieces?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  pointsMore?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type AnswerResidenceChangeResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AnswerResidenceChangeResult'] = ResolversParentTypes['AnswerResidenceChangeResult']> = {
  __resolveType: TypeResolveFn<'DayClosed' | 'ForTheOtherHome' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'ProposalSettled' | 'ResidencePayload' | 'RevisionPassed', ParentType, ContextType>;
};

export type ApplianceUseResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ApplianceUse'] = ResolversParentTypes['ApplianceUse']> = {
  from?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  task?: Resolver<ResolversTypes['Task'], ParentType, ContextType>;
  until?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
};

export type ApplianceUsesResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ApplianceUses'] = ResolversParentTypes['ApplianceUses']> = {
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  unit?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  uses?: Resolver<ReadonlyArray<ResolversTypes['ApplianceUse']>, ParentType, ContextType>;
};

export type AppointResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AppointResult'] = ResolversParentTypes['AppointResult']> = {
  __resolveType: TypeResolveFn<'AppointmentsPayload' | 'InvalidInput' | 'KeyReused' | 'NotAppointed' | 'PersonNotFound' | 'SchoolNotFound', ParentType, ContextType>;
};

export type AppointmentResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Appointment'] = ResolversParentTypes['Appointment']> = {
  jurisdiction?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  person?: Resolver<ResolversTypes['Person'], ParentType, ContextType>;
  school?: Resolver<Maybe<ResolversTypes['School']>, ParentType, ContextType>;
  since?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
};

export type AppointmentsPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AppointmentsPayload'] = ResolversParentTypes['AppointmentsPayload']> = {
  appointments?: Resolver<ReadonlyArray<ResolversTypes['Appointment']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type AuditConnectionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AuditConnection'] = ResolversParentTypes['AuditConnection']> = {
  nodes?: Resolver<ReadonlyArray<ResolversTypes['AuditEntry']>, ParentType, ContextType>;
  pageInfo?: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type AuditEntryResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AuditEntry'] = ResolversParentTypes['AuditEntry']> = {
  about?: Resolver<Maybe<ResolversTypes['Person']>, ParentType, ContextType>;
  action?: Resolver<ResolversTypes['AuditAction'], ParentType, ContextType>;
  at?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  details?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  jurisdiction?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  person?: Resolver<Maybe<ResolversTypes['Person']>, ParentType, ContextType>;
  school?: Resolver<Maybe<ResolversTypes['School']>, ParentType, ContextType>;
};

export type AvailabilityResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Availability'] = ResolversParentTypes['Availability']> = {
  kind?: Resolver<ResolversTypes['WindowKind'], ParentType, ContextType>;
  minutes?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  person?: Resolver<ResolversTypes['Person'], ParentType, ContextType>;
  weekday?: Resolver<ResolversTypes['Weekday'], ParentType, ContextType>;
};

export type BaseResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Base'] = ResolversParentTypes['Base']> = {
  batchGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  fixedHandsOnMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  ingredients?: Resolver<ReadonlyArray<ResolversTypes['DishIngredient']>, ParentType, ContextType>;
  keepsChilledDays?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  keepsFrozenDays?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  passiveMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  perBatchHandsOnMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  restMinutes?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  steps?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  windows?: Resolver<ReadonlyArray<ResolversTypes['WindowKind']>, ParentType, ContextType>;
};

export type BatchResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Batch'] = ResolversParentTypes['Batch']> = {
  base?: Resolver<ResolversTypes['Base'], ParentType, ContextType>;
  batches?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  feeds?: Resolver<ReadonlyArray<ResolversTypes['BatchFeed']>, ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  session?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  spareGrams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  state?: Resolver<ResolversTypes['WorkState'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type BatchDifferenceResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BatchDifference'] = ResolversParentTypes['BatchDifference']> = {
  after?: Resolver<Maybe<ResolversTypes['BatchSize']>, ParentType, ContextType>;
  base?: Resolver<ResolversTypes['Base'], ParentType, ContextType>;
  before?: Resolver<Maybe<ResolversTypes['BatchSize']>, ParentType, ContextType>;
  session?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type BatchFeedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BatchFeed'] = ResolversParentTypes['BatchFeed']> = {
  children?: Resolver<ReadonlyArray<ResolversTypes['Child']>, ParentType, ContextType>;
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type BatchSizeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BatchSize'] = ResolversParentTypes['BatchSize']> = {
  batches?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type BlockReasonResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BlockReason'] = ResolversParentTypes['BlockReason']> = {
  allergen?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  dish?: Resolver<Maybe<ResolversTypes['Dish']>, ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['BlockKind'], ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  whoSaysSo?: Resolver<Maybe<ResolversTypes['RuleOrigin']>, ParentType, ContextType>;
};

export type BoxResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Box'] = ResolversParentTypes['Box']> = {
  blockedBecause?: Resolver<ReadonlyArray<ResolversTypes['BlockReason']>, ParentType, ContextType>;
  card?: Resolver<Maybe<ResolversTypes['BoxCard']>, ParentType, ContextType>;
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  compliance?: Resolver<ResolversTypes['Compliance'], ParentType, ContextType>;
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  items?: Resolver<ReadonlyArray<ResolversTypes['BoxItem']>, ParentType, ContextType>;
  packedAt?: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  packing?: Resolver<Maybe<ResolversTypes['BoxPacking']>, ParentType, ContextType>;
  state?: Resolver<ResolversTypes['BoxState'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type BoxBlockedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxBlocked'] = ResolversParentTypes['BoxBlocked']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type BoxCardResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxCard'] = ResolversParentTypes['BoxCard']> = {
  carbohydrateGrams?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  cautions?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  coldSources?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  cutlery?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  energyKcal?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  flask?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  labels?: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  leaveAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  lines?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  packing?: Resolver<Maybe<ResolversTypes['PackingTime']>, ParentType, ContextType>;
  parts?: Resolver<ReadonlyArray<ResolversTypes['BoxPart']>, ParentType, ContextType>;
};

export type BoxCheckResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxCheck'] = ResolversParentTypes['BoxCheck']> = {
  cautions?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  compliance?: Resolver<ResolversTypes['Compliance'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type BoxCheckResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxCheckResult'] = ResolversParentTypes['BoxCheckResult']> = {
  __resolveType: TypeResolveFn<'BoxCheck' | 'ChildNotFound' | 'DishUnknown' | 'HouseholdNotFound' | 'InvalidInput' | 'OutsideTerm', ParentType, ContextType>;
};

export type BoxClosedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxClosed'] = ResolversParentTypes['BoxClosed']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  state?: Resolver<ResolversTypes['BoxState'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type BoxDifferenceResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxDifference'] = ResolversParentTypes['BoxDifference']> = {
  after?: Resolver<ReadonlyArray<ResolversTypes['ItemDifference']>, ParentType, ContextType>;
  before?: Resolver<ReadonlyArray<ResolversTypes['ItemDifference']>, ParentType, ContextType>;
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
};

export type BoxItemResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxItem'] = ResolversParentTypes['BoxItem']> = {
  allergens?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  askedForBy?: Resolver<ReadonlyArray<ResolversTypes['RuleOrigin']>, ParentType, ContextType>;
  breakKey?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  cameBack?: Resolver<Maybe<ResolversTypes['CameBack']>, ParentType, ContextType>;
  carbohydrateGrams?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  cuts?: Resolver<ReadonlyArray<ResolversTypes['Cut']>, ParentType, ContextType>;
  dish?: Resolver<ResolversTypes['Dish'], ParentType, ContextType>;
  energyKcal?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  holdingCase?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  holdingCurve?: Resolver<Maybe<ReadonlyArray<ResolversTypes['HoldingPoint']>>, ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  labelsToRead?: Resolver<Maybe<ReadonlyArray<ResolversTypes['Food']>>, ParentType, ContextType>;
  note?: Resolver<Maybe<ResolversTypes['BoxItemNote']>, ParentType, ContextType>;
  pieces?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  pinned?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  place?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  pricedAlternatives?: Resolver<Maybe<ReadonlyArray<ResolversTypes['PricedAlternative']>>, ParentType, ContextType, RequireFields<BoxItemPricedAlternativesArgs, 'first'>>;
  served?: Resolver<ResolversTypes['ServedWarmth'], ParentType, ContextType>;
  slot?: Resolver<ResolversTypes['Slot'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type BoxItemNoteResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxItemNote'] = ResolversParentTypes['BoxItemNote']> = {
  compartment?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  holding?: Resolver<ResolversTypes['ItemHolding'], ParentType, ContextType>;
  holdingLimitMinutes?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  holdingMinutes?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  why?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
};

export type BoxKitPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxKitPayload'] = ResolversParentTypes['BoxKitPayload']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type BoxPackingResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxPacking'] = ResolversParentTypes['BoxPacking']> = {
  coldSources?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  cutlery?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  flask?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  leaveAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  packedBy?: Resolver<Maybe<ResolversTypes['Person']>, ParentType, ContextType>;
};

export type BoxPartResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxPart'] = ResolversParentTypes['BoxPart']> = {
  compartment?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  items?: Resolver<ReadonlyArray<ResolversTypes['BoxItem']>, ParentType, ContextType>;
  leakProof?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  ml?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
};

export type BoxPlaceResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxPlace'] = ResolversParentTypes['BoxPlace']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
};

export type BoxVerdictResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxVerdict'] = ResolversParentTypes['BoxVerdict']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  reasons?: Resolver<ReadonlyArray<ResolversTypes['BlockReason']>, ParentType, ContextType>;
  state?: Resolver<ResolversTypes['BoxState'], ParentType, ContextType>;
};

export type BreakNeedsResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BreakNeeds'] = ResolversParentTypes['BreakNeeds']> = {
  breakKey?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  energyKcal?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  givenKcal?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  share?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type CalendarChangeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CalendarChange'] = ResolversParentTypes['CalendarChange']> = {
  added?: Resolver<ReadonlyArray<ResolversTypes['CalendarEntry']>, ParentType, ContextType>;
  changed?: Resolver<ReadonlyArray<ResolversTypes['CalendarEntryChange']>, ParentType, ContextType>;
  removed?: Resolver<ReadonlyArray<ResolversTypes['CalendarEntry']>, ParentType, ContextType>;
  seenRevision?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  setByHand?: Resolver<ReadonlyArray<ResolversTypes['CalendarEntry']>, ParentType, ContextType>;
  unchanged?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  warnings?: Resolver<ReadonlyArray<ResolversTypes['DocumentIssue']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type CalendarChangeResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CalendarChangeResult'] = ResolversParentTypes['CalendarChangeResult']> = {
  __resolveType: TypeResolveFn<'CalendarChange' | 'DocumentRefused' | 'NotAppointed' | 'SchoolNotFound', ParentType, ContextType>;
};

export type CalendarEntryResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CalendarEntry'] = ResolversParentTypes['CalendarEntry']> = {
  endsAt?: Resolver<Maybe<ResolversTypes['LocalTime']>, ParentType, ContextType>;
  firstDay?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['CalendarKind'], ParentType, ContextType>;
  lastDay?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  schoolClass?: Resolver<Maybe<ResolversTypes['SchoolClass']>, ParentType, ContextType>;
  title?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type CalendarEntryChangeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CalendarEntryChange'] = ResolversParentTypes['CalendarEntryChange']> = {
  after?: Resolver<ResolversTypes['CalendarEntry'], ParentType, ContextType>;
  before?: Resolver<ResolversTypes['CalendarEntry'], ParentType, ContextType>;
};

export type CarerResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Carer'] = ResolversParentTypes['Carer']> = {
  person?: Resolver<ResolversTypes['Person'], ParentType, ContextType>;
  role?: Resolver<ResolversTypes['Role'], ParentType, ContextType>;
  since?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
};

export type CarerMinutesResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CarerMinutes'] = ResolversParentTypes['CarerMinutes']> = {
  minutesAhead?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  minutesDone?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  person?: Resolver<ResolversTypes['Person'], ParentType, ContextType>;
  sharePercent?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type CarerNotFoundResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CarerNotFound'] = ResolversParentTypes['CarerNotFound']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type CarerTasksResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CarerTasks'] = ResolversParentTypes['CarerTasks']> = {
  carer?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  handsOnMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  tasks?: Resolver<ReadonlyArray<ResolversTypes['Task']>, ParentType, ContextType>;
};

export type CautionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Caution'] = ResolversParentTypes['Caution']> = {
  child?: Resolver<Maybe<ResolversTypes['Child']>, ParentType, ContextType>;
  date?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  whoSaysSo?: Resolver<Maybe<ResolversTypes['RuleOrigin']>, ParentType, ContextType>;
};

export type ChangeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Change'] = ResolversParentTypes['Change']> = {
  at?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  box?: Resolver<Maybe<ResolversTypes['Box']>, ParentType, ContextType>;
  by?: Resolver<Maybe<ResolversTypes['Person']>, ParentType, ContextType>;
  child?: Resolver<Maybe<ResolversTypes['Child']>, ParentType, ContextType>;
  cursor?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  date?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  fields?: Resolver<ReadonlyArray<ResolversTypes['ChangedField']>, ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['ChangeKind'], ParentType, ContextType>;
  shoppingLine?: Resolver<Maybe<ResolversTypes['ShoppingLine']>, ParentType, ContextType>;
  subjectId?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  task?: Resolver<Maybe<ResolversTypes['Task']>, ParentType, ContextType>;
  verb?: Resolver<ResolversTypes['ChangeVerb'], ParentType, ContextType>;
  week?: Resolver<Maybe<ResolversTypes['Week']>, ParentType, ContextType>;
};

export type ChangeConnectionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ChangeConnection'] = ResolversParentTypes['ChangeConnection']> = {
  nodes?: Resolver<ReadonlyArray<ResolversTypes['Change']>, ParentType, ContextType>;
  pageInfo?: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type ChangeRoleResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ChangeRoleResult'] = ResolversParentTypes['ChangeRoleResult']> = {
  __resolveType: TypeResolveFn<'CarerNotFound' | 'HouseholdNotFound' | 'HouseholdPayload' | 'InvalidInput' | 'KeyReused' | 'LastCoordinator' | 'NotPermitted', ParentType, ContextType>;
};

export type ChangeSchoolClassResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ChangeSchoolClassResult'] = ResolversParentTypes['ChangeSchoolClassResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotAppointed' | 'RevisionPassed' | 'SchoolNotFound' | 'SchoolPayload', ParentType, ContextType>;
};

export type ChangedFieldResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ChangedField'] = ResolversParentTypes['ChangedField']> = {
  after?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  before?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type ChildResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Child'] = ResolversParentTypes['Child']> = {
  ageYears?: Resolver<ResolversTypes['Int'], ParentType, ContextType, RequireFields<ChildAgeYearsArgs, 'on'>>;
  allergies?: Resolver<ReadonlyArray<ResolversTypes['Allergy']>, ParentType, ContextType>;
  appetite?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  boxes?: Resolver<ReadonlyArray<ResolversTypes['Box']>, ParentType, ContextType, RequireFields<ChildBoxesArgs, 'from' | 'to'>>;
  dailyNeeds?: Resolver<ResolversTypes['DailyNeeds'], ParentType, ContextType, RequireFields<ChildDailyNeedsArgs, 'on'>>;
  dateOfBirth?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  diets?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  dislikes?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  enrolments?: Resolver<ReadonlyArray<ResolversTypes['Enrolment']>, ParentType, ContextType>;
  erasureAsked?: Resolver<ReadonlyArray<ResolversTypes['ErasureAsked']>, ParentType, ContextType>;
  exemptions?: Resolver<ReadonlyArray<ResolversTypes['Exemption']>, ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  minutesToEat?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  ownRules?: Resolver<ReadonlyArray<ResolversTypes['RuleSet']>, ParentType, ContextType>;
  provisions?: Resolver<ReadonlyArray<ResolversTypes['SchoolProvision']>, ParentType, ContextType>;
  residenceDays?: Resolver<ReadonlyArray<ResolversTypes['ResidenceDay']>, ParentType, ContextType, RequireFields<ChildResidenceDaysArgs, 'from' | 'to'>>;
  residencePattern?: Resolver<Maybe<ResolversTypes['ResidencePattern']>, ParentType, ContextType, RequireFields<ChildResidencePatternArgs, 'on'>>;
  residenceProposals?: Resolver<ReadonlyArray<ResolversTypes['ResidenceProposal']>, ParentType, ContextType>;
  verdicts?: Resolver<ResolversTypes['VerdictsResult'], ParentType, ContextType, RequireFields<ChildVerdictsArgs, 'date'>>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type ChildNotFoundResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ChildNotFound'] = ResolversParentTypes['ChildNotFound']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type ChokingHazardResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ChokingHazard'] = ResolversParentTypes['ChokingHazard']> = {
  class?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  cut?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  food?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  largestPieceMm?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  never?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  underAgeYears?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type ClashResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Clash'] = ResolversParentTypes['Clash']> = {
  irreducible?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  members?: Resolver<ReadonlyArray<ResolversTypes['ClashMember']>, ParentType, ContextType>;
  proof?: Resolver<ResolversTypes['ClashProof'], ParentType, ContextType>;
};

export type ClashMemberResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ClashMember'] = ResolversParentTypes['ClashMember']> = {
  child?: Resolver<Maybe<ResolversTypes['Child']>, ParentType, ContextType>;
  date?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  fixed?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  session?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  whoSaysSo?: Resolver<Maybe<ResolversTypes['RuleOrigin']>, ParentType, ContextType>;
};

export type ClassBreakResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ClassBreak'] = ResolversParentTypes['ClassBreak']> = {
  energyShare?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  energyShareSource?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  minutes?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  slots?: Resolver<ReadonlyArray<ResolversTypes['Slot']>, ParentType, ContextType>;
  startsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
};

export type CloseFeedPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CloseFeedPayload'] = ResolversParentTypes['CloseFeedPayload']> = {
  wasOpen?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type CloseFeedResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CloseFeedResult'] = ResolversParentTypes['CloseFeedResult']> = {
  __resolveType: TypeResolveFn<'CloseFeedPayload' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted', ParentType, ContextType>;
};

export type ComplianceResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Compliance'] = ResolversParentTypes['Compliance']> = {
  dates?: Resolver<ReadonlyArray<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  rules?: Resolver<ReadonlyArray<ResolversTypes['RuleFinding']>, ParentType, ContextType, Partial<ComplianceRulesArgs>>;
  totals?: Resolver<ResolversTypes['ComplianceTotals'], ParentType, ContextType>;
};

export type ComplianceTotalsResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ComplianceTotals'] = ResolversParentTypes['ComplianceTotals']> = {
  met?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  notApplicable?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  notKnown?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  notMet?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type ConfirmationNeededResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ConfirmationNeeded'] = ResolversParentTypes['ConfirmationNeeded']> = {
  expiresAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  token?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type ConflictResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Conflict'] = ResolversParentTypes['Conflict']> = {
  child?: Resolver<Maybe<ResolversTypes['Child']>, ParentType, ContextType>;
  date?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  session?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  wayOut?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  whoSaysSo?: Resolver<Maybe<ResolversTypes['RuleOrigin']>, ParentType, ContextType>;
};

export type CostPartResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CostPart'] = ResolversParentTypes['CostPart']> = {
  base?: Resolver<Maybe<ResolversTypes['Base']>, ParentType, ContextType>;
  bought?: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  boughtGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  costMinor?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  food?: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
};

export type CountRuleSetComplianceResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CountRuleSetComplianceResult'] = ResolversParentTypes['CountRuleSetComplianceResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotAppointed' | 'NothingThere' | 'RuleSetCounts', ParentType, ContextType>;
};

export type CountRuleSetImpactResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CountRuleSetImpactResult'] = ResolversParentTypes['CountRuleSetImpactResult']> = {
  __resolveType: TypeResolveFn<'DocumentRefused' | 'InvalidInput' | 'KeyReused' | 'NotAppointed' | 'RuleSetCounts' | 'SchoolNotFound', ParentType, ContextType>;
};

export type CreateChildPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CreateChildPayload'] = ResolversParentTypes['CreateChildPayload']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type CreateChildResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CreateChildResult'] = ResolversParentTypes['CreateChildResult']> = {
  __resolveType: TypeResolveFn<'CreateChildPayload' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type CreateHouseholdPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CreateHouseholdPayload'] = ResolversParentTypes['CreateHouseholdPayload']> = {
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type CreateHouseholdResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CreateHouseholdResult'] = ResolversParentTypes['CreateHouseholdResult']> = {
  __resolveType: TypeResolveFn<'CreateHouseholdPayload' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused', ParentType, ContextType>;
};

export type CrossContactResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['CrossContact'] = ResolversParentTypes['CrossContact']> = {
  order?: Resolver<ResolversTypes['CrossContactOrder'], ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type CutResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Cut'] = ResolversParentTypes['Cut']> = {
  cut?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  food?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type DailyNeedsResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DailyNeeds'] = ResolversParentTypes['DailyNeeds']> = {
  addedSugarMaxGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  addedSugarMealMaxGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  breaks?: Resolver<ReadonlyArray<ResolversTypes['BreakNeeds']>, ParentType, ContextType>;
  calciumMg?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  energyKcal?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  energyMethod?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  fibreGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  folateDfeUg?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  freeSugarMaxGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  inputs?: Resolver<ResolversTypes['NeedsInputs'], ParentType, ContextType>;
  ironMg?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  proteinGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  saturatedFatMaxGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  sodiumMaxMg?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  sources?: Resolver<ReadonlyArray<ResolversTypes['NeedSource']>, ParentType, ContextType>;
  upperLevels?: Resolver<ReadonlyArray<ResolversTypes['UpperLevel']>, ParentType, ContextType>;
  vitaminARaeUg?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  vitaminCMg?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  zincMg?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export interface DateTimeScalarConfig extends GraphQLScalarTypeConfig<ResolversTypes['DateTime'], any> {
  name: 'DateTime';
}

export type DayClosedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DayClosed'] = ResolversParentTypes['DayClosed']> = {
  boxState?: Resolver<Maybe<ResolversTypes['BoxState']>, ParentType, ContextType>;
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type DayReturnedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DayReturned'] = ResolversParentTypes['DayReturned']> = {
  cameBack?: Resolver<ResolversTypes['CameBack'], ParentType, ContextType>;
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
};

export type DishResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Dish'] = ResolversParentTypes['Dish']> = {
  allergenSources?: Resolver<ReadonlyArray<ResolversTypes['AllergenSource']>, ParentType, ContextType>;
  allergens?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  bases?: Resolver<ReadonlyArray<ResolversTypes['DishBase']>, ParentType, ContextType>;
  carbohydrateGrams?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  carbohydrateGramsPerPiece?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  costMinor?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  costParts?: Resolver<ReadonlyArray<ResolversTypes['CostPart']>, ParentType, ContextType>;
  cuisine?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  cutlery?: Resolver<ResolversTypes['Cutlery'], ParentType, ContextType>;
  derivation?: Resolver<ResolversTypes['NutrientDerivation'], ParentType, ContextType, RequireFields<DishDerivationArgs, 'tag'>>;
  freeSugarGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  goodForHours?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  hazards?: Resolver<ReadonlyArray<ResolversTypes['ChokingHazard']>, ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  ingredients?: Resolver<ReadonlyArray<ResolversTypes['DishIngredient']>, ParentType, ContextType>;
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  labelsToRead?: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  missing?: Resolver<ReadonlyArray<ResolversTypes['MissingFigure']>, ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  nutrients?: Resolver<ReadonlyArray<ResolversTypes['NutrientAmount']>, ParentType, ContextType>;
  own?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  pieceName?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  portionCostMinor?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  portionGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  portionPieces?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  processing?: Resolver<ReadonlyArray<ResolversTypes['ProcessingClass']>, ParentType, ContextType>;
  readyMadeShare?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  served?: Resolver<ResolversTypes['ServedWarmth'], ParentType, ContextType>;
  slots?: Resolver<ReadonlyArray<ResolversTypes['Slot']>, ParentType, ContextType>;
  spill?: Resolver<ResolversTypes['SpillClass'], ParentType, ContextType>;
  steps?: Resolver<ReadonlyArray<ResolversTypes['DishStep']>, ParentType, ContextType>;
  volumeMl?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type DishBaseResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DishBase'] = ResolversParentTypes['DishBase']> = {
  base?: Resolver<ResolversTypes['Base'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type DishConnectionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DishConnection'] = ResolversParentTypes['DishConnection']> = {
  nodes?: Resolver<ReadonlyArray<ResolversTypes['Dish']>, ParentType, ContextType>;
  pageInfo?: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type DishIngredientResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DishIngredient'] = ResolversParentTypes['DishIngredient']> = {
  food?: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  form?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  retention?: Resolver<Maybe<ResolversTypes['Retention']>, ParentType, ContextType>;
};

export type DishNotOfferedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DishNotOffered'] = ResolversParentTypes['DishNotOffered']> = {
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  rule?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  whoSaysSo?: Resolver<Maybe<ResolversTypes['RuleOrigin']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type DishReturnedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DishReturned'] = ResolversParentTypes['DishReturned']> = {
  days?: Resolver<ReadonlyArray<ResolversTypes['DayReturned']>, ParentType, ContextType>;
  dish?: Resolver<ResolversTypes['Dish'], ParentType, ContextType>;
};

export type DishStepResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DishStep'] = ResolversParentTypes['DishStep']> = {
  eveningBefore?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  handsOnFixedMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  handsOnPerPortionMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  passiveMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type DishUnknownResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DishUnknown'] = ResolversParentTypes['DishUnknown']> = {
  dish?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  nearest?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type DismissResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DismissResult'] = ResolversParentTypes['DismissResult']> = {
  __resolveType: TypeResolveFn<'AppointmentsPayload' | 'InvalidInput' | 'KeyReused' | 'LastAdministrator' | 'NotAppointed' | 'PersonNotFound' | 'SchoolNotFound', ParentType, ContextType>;
};

export type DisruptionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Disruption'] = ResolversParentTypes['Disruption']> = {
  appliance?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  child?: Resolver<Maybe<ResolversTypes['Child']>, ParentType, ContextType>;
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  endsAt?: Resolver<Maybe<ResolversTypes['LocalTime']>, ParentType, ContextType>;
  foodKind?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['DisruptionKind'], ParentType, ContextType>;
  minutes?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  reason?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  units?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  until?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
};

export type DisruptionOfferResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DisruptionOffer'] = ResolversParentTypes['DisruptionOffer']> = {
  difference?: Resolver<Maybe<ResolversTypes['WeekDifference']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type DisruptionOfferResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DisruptionOfferResult'] = ResolversParentTypes['DisruptionOfferResult']> = {
  __resolveType: TypeResolveFn<'ChildNotFound' | 'DisruptionOffer' | 'HouseholdNotFound' | 'InvalidInput' | 'NotPermitted' | 'WeekInfeasible', ParentType, ContextType>;
};

export type DisruptionPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DisruptionPayload'] = ResolversParentTypes['DisruptionPayload']> = {
  changedBoxes?: Resolver<ReadonlyArray<ResolversTypes['Box']>, ParentType, ContextType>;
  difference?: Resolver<Maybe<ResolversTypes['WeekDifference']>, ParentType, ContextType>;
  disruption?: Resolver<Maybe<ResolversTypes['Disruption']>, ParentType, ContextType>;
  infeasible?: Resolver<Maybe<ResolversTypes['WeekInfeasible']>, ParentType, ContextType>;
  week?: Resolver<Maybe<ResolversTypes['Week']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type DocumentIssueResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DocumentIssue'] = ResolversParentTypes['DocumentIssue']> = {
  expected?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  line?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  nearest?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  path?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  problem?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type DocumentRefusedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DocumentRefused'] = ResolversParentTypes['DocumentRefused']> = {
  issues?: Resolver<ReadonlyArray<ResolversTypes['DocumentIssue']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  warnings?: Resolver<ReadonlyArray<ResolversTypes['DocumentIssue']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type DropOwnRulesResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DropOwnRulesResult'] = ResolversParentTypes['DropOwnRulesResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'OwnRulesPayload' | 'RevisionPassed', ParentType, ContextType>;
};

export type EndExemptionResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['EndExemptionResult'] = ResolversParentTypes['EndExemptionResult']> = {
  __resolveType: TypeResolveFn<'ExemptionPayload' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed', ParentType, ContextType>;
};

export type EnrolChildPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['EnrolChildPayload'] = ResolversParentTypes['EnrolChildPayload']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type EnrolChildResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['EnrolChildResult'] = ResolversParentTypes['EnrolChildResult']> = {
  __resolveType: TypeResolveFn<'ChildNotFound' | 'EnrolChildPayload' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'RevisionPassed' | 'SchoolNotFound', ParentType, ContextType>;
};

export type EnrolmentResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Enrolment'] = ResolversParentTypes['Enrolment']> = {
  fromDate?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  school?: Resolver<ResolversTypes['School'], ParentType, ContextType>;
  schoolClass?: Resolver<ResolversTypes['SchoolClass'], ParentType, ContextType>;
  untilDate?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
};

export type EquipmentResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Equipment'] = ResolversParentTypes['Equipment']> = {
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  units?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type EraseChildResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['EraseChildResult'] = ResolversParentTypes['EraseChildResult']> = {
  __resolveType: TypeResolveFn<'AgreementNeeded' | 'ChildNotFound' | 'ConfirmationNeeded' | 'ErasedPayload' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted', ParentType, ContextType>;
};

export type EraseHouseholdResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['EraseHouseholdResult'] = ResolversParentTypes['EraseHouseholdResult']> = {
  __resolveType: TypeResolveFn<'ConfirmationNeeded' | 'ErasedPayload' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted', ParentType, ContextType>;
};

export type EraseMeResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['EraseMeResult'] = ResolversParentTypes['EraseMeResult']> = {
  __resolveType: TypeResolveFn<'ConfirmationNeeded' | 'ErasedPayload' | 'HouseholdsLeft' | 'InvalidInput' | 'KeyReused' | 'LastAdministrator' | 'LastCoordinator', ParentType, ContextType>;
};

export type ErasedPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ErasedPayload'] = ResolversParentTypes['ErasedPayload']> = {
  erasedAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type ErasureAskedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ErasureAsked'] = ResolversParentTypes['ErasureAsked']> = {
  askedAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  askedHere?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
};

export type EstimatedCostResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['EstimatedCost'] = ResolversParentTypes['EstimatedCost']> = {
  currency?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  minor?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type ExclusionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Exclusion'] = ResolversParentTypes['Exclusion']> = {
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  source?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  whoSaysSo?: Resolver<Maybe<ResolversTypes['RuleOrigin']>, ParentType, ContextType>;
};

export type ExemptionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Exemption'] = ResolversParentTypes['Exemption']> = {
  from?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  note?: Resolver<Maybe<ResolversTypes['ExemptionNote']>, ParentType, ContextType>;
  rule?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  ruleSet?: Resolver<ResolversTypes['RuleSet'], ParentType, ContextType>;
  says?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  until?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
};

export type ExemptionNoteResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ExemptionNote'] = ResolversParentTypes['ExemptionNote']> = {
  clinician?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  note?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type ExemptionPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ExemptionPayload'] = ResolversParentTypes['ExemptionPayload']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  exemption?: Resolver<Maybe<ResolversTypes['Exemption']>, ParentType, ContextType>;
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type ExemptionRefusedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ExemptionRefused'] = ResolversParentTypes['ExemptionRefused']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  reason?: Resolver<ResolversTypes['ExemptionRefusal'], ParentType, ContextType>;
  says?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type FairnessResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Fairness'] = ResolversParentTypes['Fairness']> = {
  asOf?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  carers?: Resolver<ReadonlyArray<ResolversTypes['CarerMinutes']>, ParentType, ContextType>;
  from?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  othersMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type FeedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Feed'] = ResolversParentTypes['Feed']> = {
  createdAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
};

export type FeedAddressPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['FeedAddressPayload'] = ResolversParentTypes['FeedAddressPayload']> = {
  createdAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  path?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type FieldChangeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['FieldChange'] = ResolversParentTypes['FieldChange']> = {
  after?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  before?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  field?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type FinishTaskResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['FinishTaskResult'] = ResolversParentTypes['FinishTaskResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'TaskHeld' | 'TaskPayload', ParentType, ContextType>;
};

export type FoodResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Food'] = ResolversParentTypes['Food']> = {
  addedSugarGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  allergens?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  chokingClasses?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  densityGramsPerMl?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  freeSugarGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  group?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  keepsChilledDays?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  keepsFrozenDays?: Resolver<Maybe<ResolversTypes['SourcedFigure']>, ParentType, ContextType>;
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  labelDeclarations?: Resolver<ReadonlyArray<ResolversTypes['LabelDeclaration']>, ParentType, ContextType, RequireFields<FoodLabelDeclarationsArgs, 'law' | 'on'>>;
  measures?: Resolver<ReadonlyArray<ResolversTypes['FoodMeasure']>, ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  ndb?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  nutrients?: Resolver<ReadonlyArray<ResolversTypes['NutrientAmount']>, ParentType, ContextType>;
  own?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  packaged?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  ph?: Resolver<Maybe<ResolversTypes['SourcedFigure']>, ParentType, ContextType>;
  priceBand?: Resolver<Maybe<ResolversTypes['PriceBand']>, ParentType, ContextType>;
  refusePercent?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  seasons?: Resolver<ReadonlyArray<ResolversTypes['Season']>, ParentType, ContextType>;
  sugarRule?: Resolver<ResolversTypes['SugarRule'], ParentType, ContextType>;
  waterActivity?: Resolver<Maybe<ResolversTypes['SourcedFigure']>, ParentType, ContextType>;
};

export type FoodMeasureResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['FoodMeasure'] = ResolversParentTypes['FoodMeasure']> = {
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  measure?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type ForTheOtherHomeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ForTheOtherHome'] = ResolversParentTypes['ForTheOtherHome']> = {
  madeHere?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type FreezerStockResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['FreezerStock'] = ResolversParentTypes['FreezerStock']> = {
  base?: Resolver<ResolversTypes['Base'], ParentType, ContextType>;
  frozenOn?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  useBy?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type GiveUpHomeResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['GiveUpHomeResult'] = ResolversParentTypes['GiveUpHomeResult']> = {
  __resolveType: TypeResolveFn<'ChildNotFound' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'OnlyHome' | 'RevisionPassed', ParentType, ContextType>;
};

export type HandOverCoordinationResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['HandOverCoordinationResult'] = ResolversParentTypes['HandOverCoordinationResult']> = {
  __resolveType: TypeResolveFn<'CarerNotFound' | 'HouseholdNotFound' | 'HouseholdPayload' | 'InvalidInput' | 'KeyReused' | 'NotPermitted', ParentType, ContextType>;
};

export type HandTaskResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['HandTaskResult'] = ResolversParentTypes['HandTaskResult']> = {
  __resolveType: TypeResolveFn<'HelperNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'TaskHeld' | 'TaskNotHeld' | 'TaskPayload', ParentType, ContextType>;
};

export type HandoverResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Handover'] = ResolversParentTypes['Handover']> = {
  allergies?: Resolver<ReadonlyArray<ResolversTypes['Allergy']>, ParentType, ContextType>;
  avoid?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  box?: Resolver<Maybe<ResolversTypes['Whereabouts']>, ParentType, ContextType>;
  cameBack?: Resolver<ReadonlyArray<ResolversTypes['DishReturned']>, ParentType, ContextType>;
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  flask?: Resolver<Maybe<ResolversTypes['Whereabouts']>, ParentType, ContextType>;
  icePacks?: Resolver<Maybe<ResolversTypes['Whereabouts']>, ParentType, ContextType>;
  note?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  repeat?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  revision?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  weekStart?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
};

export type HandoverPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['HandoverPayload'] = ResolversParentTypes['HandoverPayload']> = {
  handover?: Resolver<ResolversTypes['Handover'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type HelperNotFoundResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['HelperNotFound'] = ResolversParentTypes['HelperNotFound']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type HoldingPointResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['HoldingPoint'] = ResolversParentTypes['HoldingPoint']> = {
  celsius?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  log10?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  minute?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type HouseholdResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Household'] = ResolversParentTypes['Household']> = {
  availability?: Resolver<ReadonlyArray<ResolversTypes['Availability']>, ParentType, ContextType>;
  carers?: Resolver<ReadonlyArray<ResolversTypes['Carer']>, ParentType, ContextType>;
  changeCursor?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  children?: Resolver<ReadonlyArray<ResolversTypes['Child']>, ParentType, ContextType>;
  currency?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  disruptions?: Resolver<ReadonlyArray<ResolversTypes['Disruption']>, ParentType, ContextType, RequireFields<HouseholdDisruptionsArgs, 'from' | 'to'>>;
  energyMethod?: Resolver<ResolversTypes['EnergyMethod'], ParentType, ContextType>;
  fairness?: Resolver<ResolversTypes['Fairness'], ParentType, ContextType, RequireFields<HouseholdFairnessArgs, 'asOf'>>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  invitations?: Resolver<Maybe<ReadonlyArray<ResolversTypes['Invitation']>>, ParentType, ContextType>;
  keepsOut?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  kitchen?: Resolver<ResolversTypes['Kitchen'], ParentType, ContextType>;
  log?: Resolver<ResolversTypes['ChangeConnection'], ParentType, ContextType, RequireFields<HouseholdLogArgs, 'first'>>;
  mayDo?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  myRole?: Resolver<ResolversTypes['Role'], ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  ownDishes?: Resolver<ReadonlyArray<ResolversTypes['Dish']>, ParentType, ContextType>;
  ownFoods?: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  reminders?: Resolver<ReadonlyArray<ResolversTypes['Reminder']>, ParentType, ContextType, RequireFields<HouseholdRemindersArgs, 'after'>>;
  revision?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  rota?: Resolver<ReadonlyArray<ResolversTypes['RotaSession']>, ParentType, ContextType, RequireFields<HouseholdRotaArgs, 'from' | 'to'>>;
  rotaProposal?: Resolver<ResolversTypes['RotaProposal'], ParentType, ContextType, RequireFields<HouseholdRotaProposalArgs, 'from' | 'to'>>;
  ruleNotices?: Resolver<ReadonlyArray<ResolversTypes['RuleNotice']>, ParentType, ContextType>;
  timeZone?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  unitSystem?: Resolver<ResolversTypes['UnitSystem'], ParentType, ContextType>;
  week?: Resolver<Maybe<ResolversTypes['Week']>, ParentType, ContextType, RequireFields<HouseholdWeekArgs, 'date'>>;
  weekStart?: Resolver<ResolversTypes['Weekday'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type HouseholdNotFoundResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['HouseholdNotFound'] = ResolversParentTypes['HouseholdNotFound']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type HouseholdPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['HouseholdPayload'] = ResolversParentTypes['HouseholdPayload']> = {
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type HouseholdsLeftResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['HouseholdsLeft'] = ResolversParentTypes['HouseholdsLeft']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type InputIssueResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['InputIssue'] = ResolversParentTypes['InputIssue']> = {
  field?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  fix?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  problem?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type InvalidInputResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['InvalidInput'] = ResolversParentTypes['InvalidInput']> = {
  issues?: Resolver<ReadonlyArray<ResolversTypes['InputIssue']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type InvitationResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Invitation'] = ResolversParentTypes['Invitation']> = {
  child?: Resolver<Maybe<ResolversTypes['Child']>, ParentType, ContextType>;
  createdAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  expiresAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  invitedBy?: Resolver<Maybe<ResolversTypes['Person']>, ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['InvitationKind'], ParentType, ContextType>;
  role?: Resolver<Maybe<ResolversTypes['Role']>, ParentType, ContextType>;
  state?: Resolver<ResolversTypes['InvitationState'], ParentType, ContextType>;
};

export type InvitationClosedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['InvitationClosed'] = ResolversParentTypes['InvitationClosed']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  state?: Resolver<ResolversTypes['InvitationState'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type InvitationNotFoundResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['InvitationNotFound'] = ResolversParentTypes['InvitationNotFound']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type InvitationOfferResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['InvitationOffer'] = ResolversParentTypes['InvitationOffer']> = {
  childFirstName?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  expiresAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  householdName?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  inviterName?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['InvitationKind'], ParentType, ContextType>;
  role?: Resolver<Maybe<ResolversTypes['Role']>, ParentType, ContextType>;
  state?: Resolver<ResolversTypes['InvitationState'], ParentType, ContextType>;
};

export type InvitationPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['InvitationPayload'] = ResolversParentTypes['InvitationPayload']> = {
  invitation?: Resolver<ResolversTypes['Invitation'], ParentType, ContextType>;
  token?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type InviteCarerResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['InviteCarerResult'] = ResolversParentTypes['InviteCarerResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'InvitationPayload' | 'KeyReused' | 'NotPermitted', ParentType, ContextType>;
};

export type InviteHomeResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['InviteHomeResult'] = ResolversParentTypes['InviteHomeResult']> = {
  __resolveType: TypeResolveFn<'ChildNotFound' | 'HouseholdNotFound' | 'InvalidInput' | 'InvitationPayload' | 'KeyReused' | 'LivesInTwoHomes' | 'NotPermitted', ParentType, ContextType>;
};

export type ItemDifferenceResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ItemDifference'] = ResolversParentTypes['ItemDifference']> = {
  breakKey?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  dish?: Resolver<ResolversTypes['Dish'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  pieces?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  slot?: Resolver<ResolversTypes['Slot'], ParentType, ContextType>;
};

export type ItemHoldingResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ItemHolding'] = ResolversParentTypes['ItemHolding']> = {
  assumptions?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  case?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  endCelsius?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  growthLog10?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  limitMinutes?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  limitedBy?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  mend?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  minutes?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  mostCelsius?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  organism?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
};

export type KeepOwnRulesResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['KeepOwnRulesResult'] = ResolversParentTypes['KeepOwnRulesResult']> = {
  __resolveType: TypeResolveFn<'ChildNotFound' | 'DocumentRefused' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'OwnRulesPayload' | 'RevisionPassed' | 'SchoolNotFound', ParentType, ContextType>;
};

export type KeyReusedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['KeyReused'] = ResolversParentTypes['KeyReused']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  usedFor?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type KitchenResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Kitchen'] = ResolversParentTypes['Kitchen']> = {
  equipment?: Resolver<ReadonlyArray<ResolversTypes['Equipment']>, ParentType, ContextType>;
  freezerMl?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  freezerStock?: Resolver<ReadonlyArray<ResolversTypes['FreezerStock']>, ParentType, ContextType>;
  hotDays?: Resolver<ReadonlyArray<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  labelChecks?: Resolver<ReadonlyArray<ResolversTypes['LabelCheck']>, ParentType, ContextType>;
  leftovers?: Resolver<ReadonlyArray<ResolversTypes['Leftover']>, ParentType, ContextType>;
  prepTimes?: Resolver<ReadonlyArray<ResolversTypes['PrepTime']>, ParentType, ContextType>;
  refrigeratorMl?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  stock?: Resolver<ReadonlyArray<ResolversTypes['Stock']>, ParentType, ContextType>;
};

export type KitchenPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['KitchenPayload'] = ResolversParentTypes['KitchenPayload']> = {
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type LabelCheckResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LabelCheck'] = ResolversParentTypes['LabelCheck']> = {
  contains?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  food?: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  kinds?: Resolver<ReadonlyArray<ResolversTypes['LabelKind']>, ParentType, ContextType>;
  mayContain?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  readOn?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
};

export type LabelDeclarationResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LabelDeclaration'] = ResolversParentTypes['LabelDeclaration']> = {
  class?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  status?: Resolver<ResolversTypes['LabelStatus'], ParentType, ContextType>;
  subject?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type LabelExemptionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LabelExemption'] = ResolversParentTypes['LabelExemption']> = {
  about?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  allergens?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  derivative?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type LabelKindResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LabelKind'] = ResolversParentTypes['LabelKind']> = {
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  says?: Resolver<ResolversTypes['LabelSays'], ParentType, ContextType>;
};

export type LabelLawResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LabelLaw'] = ResolversParentTypes['LabelLaw']> = {
  allergens?: Resolver<ReadonlyArray<ResolversTypes['LabelLawClass']>, ParentType, ContextType>;
  caution?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  exempt?: Resolver<ReadonlyArray<ResolversTypes['LabelExemption']>, ParentType, ContextType>;
  incomplete?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  title?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type LabelLawClassResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LabelLawClass'] = ResolversParentTypes['LabelLawClass']> = {
  as?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  code?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  members?: Resolver<ReadonlyArray<ResolversTypes['LabelLawMember']>, ParentType, ContextType>;
  note?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  since?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type LabelLawMemberResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LabelLawMember'] = ResolversParentTypes['LabelLawMember']> = {
  allergen?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type LabelsUnreadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LabelsUnread'] = ResolversParentTypes['LabelsUnread']> = {
  foods?: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type LastAdministratorResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LastAdministrator'] = ResolversParentTypes['LastAdministrator']> = {
  jurisdiction?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type LastCoordinatorResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LastCoordinator'] = ResolversParentTypes['LastCoordinator']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type LeaveHouseholdPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LeaveHouseholdPayload'] = ResolversParentTypes['LeaveHouseholdPayload']> = {
  me?: Resolver<ResolversTypes['Me'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type LeaveHouseholdResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LeaveHouseholdResult'] = ResolversParentTypes['LeaveHouseholdResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'LastCoordinator' | 'LeaveHouseholdPayload', ParentType, ContextType>;
};

export type LeftoverResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Leftover'] = ResolversParentTypes['Leftover']> = {
  base?: Resolver<ResolversTypes['Base'], ParentType, ContextType>;
  cookedOn?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  lastSafeDay?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type LivesHereAlreadyResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LivesHereAlready'] = ResolversParentTypes['LivesHereAlready']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type LivesInTwoHomesResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LivesInTwoHomes'] = ResolversParentTypes['LivesInTwoHomes']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type LoadCalendarResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LoadCalendarResult'] = ResolversParentTypes['LoadCalendarResult']> = {
  __resolveType: TypeResolveFn<'DocumentRefused' | 'InvalidInput' | 'KeyReused' | 'NotAppointed' | 'RevisionPassed' | 'SchoolNotFound' | 'SchoolPayload', ParentType, ContextType>;
};

export type LoadRuleSetPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LoadRuleSetPayload'] = ResolversParentTypes['LoadRuleSetPayload']> = {
  ruleSet?: Resolver<ResolversTypes['RuleSet'], ParentType, ContextType>;
  unchanged?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type LoadRuleSetResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LoadRuleSetResult'] = ResolversParentTypes['LoadRuleSetResult']> = {
  __resolveType: TypeResolveFn<'DocumentRefused' | 'InvalidInput' | 'KeyReused' | 'LoadRuleSetPayload' | 'NotAppointed' | 'RevisionPassed' | 'SchoolNotFound', ParentType, ContextType>;
};

export interface LocalDateScalarConfig extends GraphQLScalarTypeConfig<ResolversTypes['LocalDate'], any> {
  name: 'LocalDate';
}

export interface LocalTimeScalarConfig extends GraphQLScalarTypeConfig<ResolversTypes['LocalTime'], any> {
  name: 'LocalTime';
}

export type MarkPackedResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['MarkPackedResult'] = ResolversParentTypes['MarkPackedResult']> = {
  __resolveType: TypeResolveFn<'BoxBlocked' | 'BoxClosed' | 'InvalidInput' | 'KeyReused' | 'LabelsUnread' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'WeekPayload', ParentType, ContextType>;
};

export type MeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Me'] = ResolversParentTypes['Me']> = {
  administers?: Resolver<ReadonlyArray<ResolversTypes['School']>, ParentType, ContextType>;
  appointments?: Resolver<ReadonlyArray<ResolversTypes['Appointment']>, ParentType, ContextType>;
  households?: Resolver<ReadonlyArray<ResolversTypes['Household']>, ParentType, ContextType>;
  person?: Resolver<ResolversTypes['Person'], ParentType, ContextType>;
};

export type MendWeekResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['MendWeekResult'] = ResolversParentTypes['MendWeekResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'WeekInfeasible' | 'WeekPayload', ParentType, ContextType>;
};

export type MendedBoxResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['MendedBox'] = ResolversParentTypes['MendedBox']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  items?: Resolver<ReadonlyArray<ResolversTypes['MendedItem']>, ParentType, ContextType>;
};

export type MendedItemResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['MendedItem'] = ResolversParentTypes['MendedItem']> = {
  breakKey?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  dish?: Resolver<ResolversTypes['Dish'], ParentType, ContextType>;
  slot?: Resolver<ResolversTypes['Slot'], ParentType, ContextType>;
};

export type MendingOfferResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['MendingOffer'] = ResolversParentTypes['MendingOffer']> = {
  changedBoxes?: Resolver<ReadonlyArray<ResolversTypes['MendedBox']>, ParentType, ContextType>;
  conflicts?: Resolver<ReadonlyArray<ResolversTypes['Conflict']>, ParentType, ContextType>;
  possible?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
};

export type MissingFactResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['MissingFact'] = ResolversParentTypes['MissingFact']> = {
  foods?: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['MissingFactKind'], ParentType, ContextType>;
  nutrient?: Resolver<Maybe<ResolversTypes['NutrientTag']>, ParentType, ContextType>;
  rules?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type MissingFigureResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['MissingFigure'] = ResolversParentTypes['MissingFigure']> = {
  food?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  nutrient?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type MutationResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Mutation'] = ResolversParentTypes['Mutation']> = {
  acceptHomeInvitation?: Resolver<ResolversTypes['AcceptHomeInvitationResult'], ParentType, ContextType, RequireFields<MutationAcceptHomeInvitationArgs, 'input'>>;
  acceptInvitation?: Resolver<ResolversTypes['AcceptInvitationResult'], ParentType, ContextType, RequireFields<MutationAcceptInvitationArgs, 'input'>>;
  acceptRota?: Resolver<ResolversTypes['AcceptRotaResult'], ParentType, ContextType, RequireFields<MutationAcceptRotaArgs, 'input'>>;
  addSchoolClass?: Resolver<ResolversTypes['AddSchoolClassResult'], ParentType, ContextType, RequireFields<MutationAddSchoolClassArgs, 'input'>>;
  adoptRuleSet?: Resolver<ResolversTypes['AdoptRuleSetResult'], ParentType, ContextType, RequireFields<MutationAdoptRuleSetArgs, 'input'>>;
  agreeWeek?: Resolver<ResolversTypes['AgreeWeekResult'], ParentType, ContextType, RequireFields<MutationAgreeWeekArgs, 'input'>>;
  answerResidenceChange?: Resolver<ResolversTypes['AnswerResidenceChangeResult'], ParentType, ContextType, RequireFields<MutationAnswerResidenceChangeArgs, 'input'>>;
  appoint?: Resolver<ResolversTypes['AppointResult'], ParentType, ContextType, RequireFields<MutationAppointArgs, 'input'>>;
  changeRole?: Resolver<ResolversTypes['ChangeRoleResult'], ParentType, ContextType, RequireFields<MutationChangeRoleArgs, 'input'>>;
  changeSchoolClass?: Resolver<ResolversTypes['ChangeSchoolClassResult'], ParentType, ContextType, RequireFields<MutationChangeSchoolClassArgs, 'input'>>;
  closeFeed?: Resolver<ResolversTypes['CloseFeedResult'], ParentType, ContextType, RequireFields<MutationCloseFeedArgs, 'input'>>;
  countRuleSetCompliance?: Resolver<ResolversTypes['CountRuleSetComplianceResult'], ParentType, ContextType, RequireFields<MutationCountRuleSetComplianceArgs, 'input'>>;
  countRuleSetImpact?: Resolver<ResolversTypes['CountRuleSetImpactResult'], ParentType, ContextType, RequireFields<MutationCountRuleSetImpactArgs, 'input'>>;
  createChild?: Resolver<ResolversTypes['CreateChildResult'], ParentType, ContextType, RequireFields<MutationCreateChildArgs, 'input'>>;
  createHousehold?: Resolver<ResolversTypes['CreateHouseholdResult'], ParentType, ContextType, RequireFields<MutationCreateHouseholdArgs, 'input'>>;
  dismiss?: Resolver<ResolversTypes['DismissResult'], ParentType, ContextType, RequireFields<MutationDismissArgs, 'input'>>;
  dropOwnRules?: Resolver<ResolversTypes['DropOwnRulesResult'], ParentType, ContextType, RequireFields<MutationDropOwnRulesArgs, 'input'>>;
  endExemption?: Resolver<ResolversTypes['EndExemptionResult'], ParentType, ContextType, RequireFields<MutationEndExemptionArgs, 'input'>>;
  enrolChild?: Resolver<ResolversTypes['EnrolChildResult'], ParentType, ContextType, RequireFields<MutationEnrolChildArgs, 'input'>>;
  eraseChild?: Resolver<ResolversTypes['EraseChildResult'], ParentType, ContextType, RequireFields<MutationEraseChildArgs, 'input'>>;
  eraseHousehold?: Resolver<ResolversTypes['EraseHouseholdResult'], ParentType, ContextType, RequireFields<MutationEraseHouseholdArgs, 'input'>>;
  eraseMe?: Resolver<ResolversTypes['EraseMeResult'], ParentType, ContextType, RequireFields<MutationEraseMeArgs, 'input'>>;
  finishTask?: Resolver<ResolversTypes['FinishTaskResult'], ParentType, ContextType, RequireFields<MutationFinishTaskArgs, 'input'>>;
  giveUpHome?: Resolver<ResolversTypes['GiveUpHomeResult'], ParentType, ContextType, RequireFields<MutationGiveUpHomeArgs, 'input'>>;
  handOverCoordination?: Resolver<ResolversTypes['HandOverCoordinationResult'], ParentType, ContextType, RequireFields<MutationHandOverCoordinationArgs, 'input'>>;
  handTask?: Resolver<ResolversTypes['HandTaskResult'], ParentType, ContextType, RequireFields<MutationHandTaskArgs, 'input'>>;
  inviteCarer?: Resolver<ResolversTypes['InviteCarerResult'], ParentType, ContextType, RequireFields<MutationInviteCarerArgs, 'input'>>;
  inviteHome?: Resolver<ResolversTypes['InviteHomeResult'], ParentType, ContextType, RequireFields<MutationInviteHomeArgs, 'input'>>;
  keepOwnRules?: Resolver<ResolversTypes['KeepOwnRulesResult'], ParentType, ContextType, RequireFields<MutationKeepOwnRulesArgs, 'input'>>;
  leaveHousehold?: Resolver<ResolversTypes['LeaveHouseholdResult'], ParentType, ContextType, RequireFields<MutationLeaveHouseholdArgs, 'input'>>;
  loadCalendar?: Resolver<ResolversTypes['LoadCalendarResult'], ParentType, ContextType, RequireFields<MutationLoadCalendarArgs, 'input'>>;
  loadRuleSet?: Resolver<ResolversTypes['LoadRuleSetResult'], ParentType, ContextType, RequireFields<MutationLoadRuleSetArgs, 'input'>>;
  markPacked?: Resolver<ResolversTypes['MarkPackedResult'], ParentType, ContextType, RequireFields<MutationMarkPackedArgs, 'input'>>;
  mendWeek?: Resolver<ResolversTypes['MendWeekResult'], ParentType, ContextType, RequireFields<MutationMendWeekArgs, 'input'>>;
  pinItem?: Resolver<ResolversTypes['PinItemResult'], ParentType, ContextType, RequireFields<MutationPinItemArgs, 'input'>>;
  planWeek?: Resolver<ResolversTypes['PlanWeekResult'], ParentType, ContextType, RequireFields<MutationPlanWeekArgs, 'input'>>;
  planWeekInBackground?: Resolver<ResolversTypes['PlanWeekInBackgroundResult'], ParentType, ContextType, RequireFields<MutationPlanWeekInBackgroundArgs, 'input'>>;
  proposeResidenceChange?: Resolver<ResolversTypes['ProposeResidenceChangeResult'], ParentType, ContextType, RequireFields<MutationProposeResidenceChangeArgs, 'input'>>;
  recordAllergy?: Resolver<ResolversTypes['RecordAllergyResult'], ParentType, ContextType, RequireFields<MutationRecordAllergyArgs, 'input'>>;
  recordExemption?: Resolver<ResolversTypes['RecordExemptionResult'], ParentType, ContextType, RequireFields<MutationRecordExemptionArgs, 'input'>>;
  recordLabel?: Resolver<ResolversTypes['RecordLabelResult'], ParentType, ContextType, RequireFields<MutationRecordLabelArgs, 'input'>>;
  registerSchool?: Resolver<ResolversTypes['RegisterSchoolResult'], ParentType, ContextType, RequireFields<MutationRegisterSchoolArgs, 'input'>>;
  relaxHouseRule?: Resolver<ResolversTypes['RelaxHouseRuleResult'], ParentType, ContextType, RequireFields<MutationRelaxHouseRuleArgs, 'input'>>;
  releaseTask?: Resolver<ResolversTypes['ReleaseTaskResult'], ParentType, ContextType, RequireFields<MutationReleaseTaskArgs, 'input'>>;
  removeAllergy?: Resolver<ResolversTypes['RemoveAllergyResult'], ParentType, ContextType, RequireFields<MutationRemoveAllergyArgs, 'input'>>;
  removeCarer?: Resolver<ResolversTypes['RemoveCarerResult'], ParentType, ContextType, RequireFields<MutationRemoveCarerArgs, 'input'>>;
  removeOwnDish?: Resolver<ResolversTypes['RemoveOwnDishResult'], ParentType, ContextType, RequireFields<MutationRemoveOwnDishArgs, 'input'>>;
  removeOwnFood?: Resolver<ResolversTypes['RemoveOwnFoodResult'], ParentType, ContextType, RequireFields<MutationRemoveOwnFoodArgs, 'input'>>;
  removeSchoolDay?: Resolver<ResolversTypes['RemoveSchoolDayResult'], ParentType, ContextType, RequireFields<MutationRemoveSchoolDayArgs, 'input'>>;
  removeTerm?: Resolver<ResolversTypes['RemoveTermResult'], ParentType, ContextType, RequireFields<MutationRemoveTermArgs, 'input'>>;
  renameMe?: Resolver<ResolversTypes['RenameMeResult'], ParentType, ContextType, RequireFields<MutationRenameMeArgs, 'input'>>;
  renewFeedAddress?: Resolver<ResolversTypes['RenewFeedAddressResult'], ParentType, ContextType, RequireFields<MutationRenewFeedAddressArgs, 'input'>>;
  reportAbsence?: Resolver<ResolversTypes['ReportAbsenceResult'], ParentType, ContextType, RequireFields<MutationReportAbsenceArgs, 'input'>>;
  reportDisruption?: Resolver<ResolversTypes['ReportDisruptionResult'], ParentType, ContextType, RequireFields<MutationReportDisruptionArgs, 'input'>>;
  reportReturned?: Resolver<ResolversTypes['ReportReturnedResult'], ParentType, ContextType, RequireFields<MutationReportReturnedArgs, 'input'>>;
  saveOwnDish?: Resolver<ResolversTypes['SaveOwnDishResult'], ParentType, ContextType, RequireFields<MutationSaveOwnDishArgs, 'input'>>;
  saveOwnFood?: Resolver<ResolversTypes['SaveOwnFoodResult'], ParentType, ContextType, RequireFields<MutationSaveOwnFoodArgs, 'input'>>;
  setAvailability?: Resolver<ResolversTypes['SetAvailabilityResult'], ParentType, ContextType, RequireFields<MutationSetAvailabilityArgs, 'input'>>;
  setBoxKit?: Resolver<ResolversTypes['SetBoxKitResult'], ParentType, ContextType, RequireFields<MutationSetBoxKitArgs, 'input'>>;
  setDuties?: Resolver<ResolversTypes['SetDutiesResult'], ParentType, ContextType, RequireFields<MutationSetDutiesArgs, 'input'>>;
  setEnergyMethod?: Resolver<ResolversTypes['SetEnergyMethodResult'], ParentType, ContextType, RequireFields<MutationSetEnergyMethodArgs, 'input'>>;
  setEquipment?: Resolver<ResolversTypes['SetEquipmentResult'], ParentType, ContextType, RequireFields<MutationSetEquipmentArgs, 'input'>>;
  setFacility?: Resolver<ResolversTypes['SetFacilityResult'], ParentType, ContextType, RequireFields<MutationSetFacilityArgs, 'input'>>;
  setHotDays?: Resolver<ResolversTypes['SetHotDaysResult'], ParentType, ContextType, RequireFields<MutationSetHotDaysArgs, 'input'>>;
  setKeepsOut?: Resolver<ResolversTypes['SetKeepsOutResult'], ParentType, ContextType, RequireFields<MutationSetKeepsOutArgs, 'input'>>;
  setLeftovers?: Resolver<ResolversTypes['SetLeftoversResult'], ParentType, ContextType, RequireFields<MutationSetLeftoversArgs, 'input'>>;
  setPrepTimes?: Resolver<ResolversTypes['SetPrepTimesResult'], ParentType, ContextType, RequireFields<MutationSetPrepTimesArgs, 'input'>>;
  setResidencePattern?: Resolver<ResolversTypes['SetResidencePatternResult'], ParentType, ContextType, RequireFields<MutationSetResidencePatternArgs, 'input'>>;
  setSchoolDay?: Resolver<ResolversTypes['SetSchoolDayResult'], ParentType, ContextType, RequireFields<MutationSetSchoolDayArgs, 'input'>>;
  setSchoolProvision?: Resolver<ResolversTypes['SetSchoolProvisionResult'], ParentType, ContextType, RequireFields<MutationSetSchoolProvisionArgs, 'input'>>;
  setStock?: Resolver<ResolversTypes['SetStockResult'], ParentType, ContextType, RequireFields<MutationSetStockArgs, 'input'>>;
  setTerm?: Resolver<ResolversTypes['SetTermResult'], ParentType, ContextType, RequireFields<MutationSetTermArgs, 'input'>>;
  swapItem?: Resolver<ResolversTypes['SwapItemResult'], ParentType, ContextType, RequireFields<MutationSwapItemArgs, 'input'>>;
  takeTask?: Resolver<ResolversTypes['TakeTaskResult'], ParentType, ContextType, RequireFields<MutationTakeTaskArgs, 'input'>>;
  tickShoppingLine?: Resolver<ResolversTypes['TickShoppingLineResult'], ParentType, ContextType, RequireFields<MutationTickShoppingLineArgs, 'input'>>;
  undoTask?: Resolver<ResolversTypes['UndoTaskResult'], ParentType, ContextType, RequireFields<MutationUndoTaskArgs, 'input'>>;
  unpinItem?: Resolver<ResolversTypes['UnpinItemResult'], ParentType, ContextType, RequireFields<MutationUnpinItemArgs, 'input'>>;
  withdrawDisruption?: Resolver<ResolversTypes['WithdrawDisruptionResult'], ParentType, ContextType, RequireFields<MutationWithdrawDisruptionArgs, 'input'>>;
  withdrawErasure?: Resolver<ResolversTypes['WithdrawErasureResult'], ParentType, ContextType, RequireFields<MutationWithdrawErasureArgs, 'input'>>;
  withdrawInvitation?: Resolver<ResolversTypes['WithdrawInvitationResult'], ParentType, ContextType, RequireFields<MutationWithdrawInvitationArgs, 'input'>>;
  withdrawResidenceChange?: Resolver<ResolversTypes['WithdrawResidenceChangeResult'], ParentType, ContextType, RequireFields<MutationWithdrawResidenceChangeArgs, 'input'>>;
  withdrawRuleSet?: Resolver<ResolversTypes['WithdrawRuleSetResult'], ParentType, ContextType, RequireFields<MutationWithdrawRuleSetArgs, 'input'>>;
  writeHandover?: Resolver<ResolversTypes['WriteHandoverResult'], ParentType, ContextType, RequireFields<MutationWriteHandoverArgs, 'input'>>;
};

export type NeedSourceResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['NeedSource'] = ResolversParentTypes['NeedSource']> = {
  figure?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type NeedsInputsResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['NeedsInputs'] = ResolversParentTypes['NeedsInputs']> = {
  activity?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  ageYears?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  assumed?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  heightCm?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  sex?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  weightKg?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type NoSchoolResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['NoSchool'] = ResolversParentTypes['NoSchool']> = {
  children?: Resolver<ReadonlyArray<ResolversTypes['Child']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type NoWeekWithDishResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['NoWeekWithDish'] = ResolversParentTypes['NoWeekWithDish']> = {
  clash?: Resolver<Maybe<ResolversTypes['Clash']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type NodeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Node'] = ResolversParentTypes['Node']> = {
  __resolveType: TypeResolveFn<'Batch' | 'Box' | 'BoxItem' | 'Child' | 'Dish' | 'FreezerStock' | 'Household' | 'Leftover' | 'Person' | 'RuleSet' | 'School' | 'SchoolClass' | 'ShoppingLine' | 'Task' | 'Week' | 'WeekPlan', ParentType, ContextType>;
};

export type NotAppointedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['NotAppointed'] = ResolversParentTypes['NotAppointed']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type NotPermittedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['NotPermitted'] = ResolversParentTypes['NotPermitted']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  neededRole?: Resolver<ResolversTypes['Role'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type NothingThereResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['NothingThere'] = ResolversParentTypes['NothingThere']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  what?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type NutrientAmountResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['NutrientAmount'] = ResolversParentTypes['NutrientAmount']> = {
  amount?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  tag?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  unit?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type NutrientDerivationResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['NutrientDerivation'] = ResolversParentTypes['NutrientDerivation']> = {
  atMost?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  missing?: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  nutrient?: Resolver<ResolversTypes['NutrientTag'], ParentType, ContextType>;
  parts?: Resolver<ReadonlyArray<ResolversTypes['NutrientPart']>, ParentType, ContextType>;
  total?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  unit?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type NutrientPartResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['NutrientPart'] = ResolversParentTypes['NutrientPart']> = {
  amount?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  base?: Resolver<Maybe<ResolversTypes['Base']>, ParentType, ContextType>;
  basis?: Resolver<ResolversTypes['RetentionBasis'], ParentType, ContextType>;
  factor?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  food?: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  per100?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  retention?: Resolver<Maybe<ResolversTypes['Retention']>, ParentType, ContextType>;
};

export type OnlyHomeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['OnlyHome'] = ResolversParentTypes['OnlyHome']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type OutsideTermResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['OutsideTerm'] = ResolversParentTypes['OutsideTerm']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  nextSchoolDay?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  weekStart?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type OwnRulesPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['OwnRulesPayload'] = ResolversParentTypes['OwnRulesPayload']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  ruleSet?: Resolver<ResolversTypes['RuleSet'], ParentType, ContextType>;
  unchanged?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type PackingTimeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PackingTime'] = ResolversParentTypes['PackingTime']> = {
  carer?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  endsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  session?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  startsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
};

export type PageInfoResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PageInfo'] = ResolversParentTypes['PageInfo']> = {
  endCursor?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  hasNextPage?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
};

export type PersonResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Person'] = ResolversParentTypes['Person']> = {
  displayName?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type PersonNotFoundResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PersonNotFound'] = ResolversParentTypes['PersonNotFound']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  subject?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type PinItemResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PinItemResult'] = ResolversParentTypes['PinItemResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'WeekPayload', ParentType, ContextType>;
};

export type PlaceVerdictResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PlaceVerdict'] = ResolversParentTypes['PlaceVerdict']> = {
  allowed?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  breakKey?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  cuts?: Resolver<ReadonlyArray<ResolversTypes['Cut']>, ParentType, ContextType>;
  exclusion?: Resolver<Maybe<ResolversTypes['Exclusion']>, ParentType, ContextType>;
  labelsToRead?: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  place?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  slot?: Resolver<ResolversTypes['Slot'], ParentType, ContextType>;
};

export type PlanCertificateResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PlanCertificate'] = ResolversParentTypes['PlanCertificate']> = {
  boundPoints?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  createdAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  gapPercent?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  nodes?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  objectivePoints?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  provenOptimal?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  seconds?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type PlanOriginResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PlanOrigin'] = ResolversParentTypes['PlanOrigin']> = {
  catalogueVersion?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  problemHash?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  ruleSetVersions?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  seed?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  steps?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type PlanProgressResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PlanProgress'] = ResolversParentTypes['PlanProgress']> = {
  bestPoints?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  failure?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  percent?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  weekStart?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
};

export type PlanQueuedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PlanQueued'] = ResolversParentTypes['PlanQueued']> = {
  steps?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  weekStart?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type PlanWeekInBackgroundResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PlanWeekInBackgroundResult'] = ResolversParentTypes['PlanWeekInBackgroundResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NoSchool' | 'NotPermitted' | 'OutsideTerm' | 'PlanQueued' | 'RevisionPassed' | 'WeekAgreed' | 'WeekInfeasible', ParentType, ContextType>;
};

export type PlanWeekResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PlanWeekResult'] = ResolversParentTypes['PlanWeekResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NoSchool' | 'NotPermitted' | 'OutsideTerm' | 'RevisionPassed' | 'WeekAgreed' | 'WeekInfeasible' | 'WeekPayload', ParentType, ContextType>;
};

export type PrepSessionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PrepSession'] = ResolversParentTypes['PrepSession']> = {
  appliances?: Resolver<ReadonlyArray<ResolversTypes['ApplianceUses']>, ParentType, ContextType>;
  carers?: Resolver<ReadonlyArray<ResolversTypes['CarerTasks']>, ParentType, ContextType>;
  endsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  handsOnMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  startsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  tasks?: Resolver<ReadonlyArray<ResolversTypes['Task']>, ParentType, ContextType>;
  timing?: Resolver<Maybe<ResolversTypes['SessionTiming']>, ParentType, ContextType>;
};

export type PrepTimeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PrepTime'] = ResolversParentTypes['PrepTime']> = {
  carers?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  effort?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  elapsedMinutes?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  handsOnMinutes?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['WindowKind'], ParentType, ContextType>;
  startsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  weekday?: Resolver<ResolversTypes['Weekday'], ParentType, ContextType>;
};

export type PriceOfChangeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PriceOfChange'] = ResolversParentTypes['PriceOfChange']> = {
  changedBoxes?: Resolver<ReadonlyArray<ResolversTypes['BoxPlace']>, ParentType, ContextType>;
  changedItems?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  costMinor?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  handsOnMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  monotonyPoints?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  nutrientShortfallPercent?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  objectivePoints?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  refusalPoints?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  spareBaseGrams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type PriceOfDishResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PriceOfDishResult'] = ResolversParentTypes['PriceOfDishResult']> = {
  __resolveType: TypeResolveFn<'ChildNotFound' | 'DishNotOffered' | 'DishUnknown' | 'HouseholdNotFound' | 'InvalidInput' | 'NoWeekWithDish' | 'NotPermitted' | 'NothingThere' | 'OutsideTerm' | 'PricedAlternative', ParentType, ContextType>;
};

export type PricedAlternativeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PricedAlternative'] = ResolversParentTypes['PricedAlternative']> = {
  dish?: Resolver<ResolversTypes['Dish'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  pieces?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  price?: Resolver<ResolversTypes['PriceOfChange'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type ProcessingClassResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ProcessingClass'] = ResolversParentTypes['ProcessingClass']> = {
  foods?: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  tag?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type ProposalMovedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ProposalMoved'] = ResolversParentTypes['ProposalMoved']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type ProposalOpenResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ProposalOpen'] = ResolversParentTypes['ProposalOpen']> = {
  dates?: Resolver<ReadonlyArray<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  madeHere?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  proposalId?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type ProposalSettledResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ProposalSettled'] = ResolversParentTypes['ProposalSettled']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  state?: Resolver<ResolversTypes['ProposalState'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type ProposeResidenceChangeResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ProposeResidenceChangeResult'] = ResolversParentTypes['ProposeResidenceChangeResult']> = {
  __resolveType: TypeResolveFn<'ChildNotFound' | 'DayClosed' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'ProposalOpen' | 'ResidencePayload' | 'RevisionPassed', ParentType, ContextType>;
};

export type ProposedDayResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ProposedDay'] = ResolversParentTypes['ProposedDay']> = {
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  here?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
};

export type ProposedMinutesResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ProposedMinutes'] = ResolversParentTypes['ProposedMinutes']> = {
  minutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  person?: Resolver<ResolversTypes['Person'], ParentType, ContextType>;
};

export type ProposedSessionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ProposedSession'] = ResolversParentTypes['ProposedSession']> = {
  onDuty?: Resolver<ReadonlyArray<ResolversTypes['Person']>, ParentType, ContextType>;
  openHands?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  session?: Resolver<ResolversTypes['RotaSession'], ParentType, ContextType>;
};

export type QueryResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Query'] = ResolversParentTypes['Query']> = {
  alternatives?: Resolver<ReadonlyArray<ResolversTypes['Alternative']>, ParentType, ContextType, RequireFields<QueryAlternativesArgs, 'itemId'>>;
  boxCheck?: Resolver<ResolversTypes['BoxCheckResult'], ParentType, ContextType, RequireFields<QueryBoxCheckArgs, 'childId' | 'date' | 'householdId' | 'items'>>;
  calendarChange?: Resolver<ResolversTypes['CalendarChangeResult'], ParentType, ContextType, RequireFields<QueryCalendarChangeArgs, 'calendar' | 'schoolId'>>;
  dish?: Resolver<Maybe<ResolversTypes['Dish']>, ParentType, ContextType, RequireFields<QueryDishArgs, 'key'>>;
  dishes?: Resolver<ResolversTypes['DishConnection'], ParentType, ContextType, RequireFields<QueryDishesArgs, 'first'>>;
  disruptionOffer?: Resolver<ResolversTypes['DisruptionOfferResult'], ParentType, ContextType, RequireFields<QueryDisruptionOfferArgs, 'disruption' | 'householdId'>>;
  feeds?: Resolver<ReadonlyArray<ResolversTypes['Feed']>, ParentType, ContextType>;
  food?: Resolver<Maybe<ResolversTypes['Food']>, ParentType, ContextType, RequireFields<QueryFoodArgs, 'key'>>;
  handover?: Resolver<Maybe<ResolversTypes['Handover']>, ParentType, ContextType, RequireFields<QueryHandoverArgs, 'childId' | 'date' | 'householdId'>>;
  household?: Resolver<Maybe<ResolversTypes['Household']>, ParentType, ContextType, RequireFields<QueryHouseholdArgs, 'id'>>;
  invitation?: Resolver<Maybe<ResolversTypes['InvitationOffer']>, ParentType, ContextType, RequireFields<QueryInvitationArgs, 'token'>>;
  jurisdictionAppointments?: Resolver<Maybe<ReadonlyArray<ResolversTypes['Appointment']>>, ParentType, ContextType, RequireFields<QueryJurisdictionAppointmentsArgs, 'jurisdiction'>>;
  jurisdictionAudit?: Resolver<Maybe<ResolversTypes['AuditConnection']>, ParentType, ContextType, RequireFields<QueryJurisdictionAuditArgs, 'first' | 'jurisdiction'>>;
  jurisdictionRuleSets?: Resolver<ReadonlyArray<ResolversTypes['RuleSet']>, ParentType, ContextType, RequireFields<QueryJurisdictionRuleSetsArgs, 'jurisdiction'>>;
  labelLaws?: Resolver<ReadonlyArray<ResolversTypes['LabelLaw']>, ParentType, ContextType, RequireFields<QueryLabelLawsArgs, 'on'>>;
  me?: Resolver<ResolversTypes['Me'], ParentType, ContextType>;
  mendingOffer?: Resolver<Maybe<ResolversTypes['MendingOffer']>, ParentType, ContextType, RequireFields<QueryMendingOfferArgs, 'weekId'>>;
  node?: Resolver<Maybe<ResolversTypes['Node']>, ParentType, ContextType, RequireFields<QueryNodeArgs, 'id'>>;
  priceOfDish?: Resolver<ResolversTypes['PriceOfDishResult'], ParentType, ContextType, RequireFields<QueryPriceOfDishArgs, 'breakKey' | 'childId' | 'date' | 'dish' | 'householdId' | 'place' | 'slot'>>;
  ruleSetCheck?: Resolver<ResolversTypes['RuleSetCheckResult'], ParentType, ContextType, RequireFields<QueryRuleSetCheckArgs, 'input'>>;
  ruleSetFormat?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  school?: Resolver<Maybe<ResolversTypes['School']>, ParentType, ContextType, RequireFields<QuerySchoolArgs, 'id'>>;
  schools?: Resolver<ResolversTypes['SchoolConnection'], ParentType, ContextType, RequireFields<QuerySchoolsArgs, 'first'>>;
  week?: Resolver<Maybe<ResolversTypes['Week']>, ParentType, ContextType, RequireFields<QueryWeekArgs, 'date' | 'householdId'>>;
};

export type ReadyUseResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ReadyUse'] = ResolversParentTypes['ReadyUse']> = {
  base?: Resolver<ResolversTypes['Base'], ParentType, ContextType>;
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type RecordAllergyResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RecordAllergyResult'] = ResolversParentTypes['RecordAllergyResult']> = {
  __resolveType: TypeResolveFn<'AllergyPayload' | 'ChildNotFound' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed', ParentType, ContextType>;
};

export type RecordExemptionResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RecordExemptionResult'] = ResolversParentTypes['RecordExemptionResult']> = {
  __resolveType: TypeResolveFn<'ChildNotFound' | 'ExemptionPayload' | 'ExemptionRefused' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type RecordLabelResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RecordLabelResult'] = ResolversParentTypes['RecordLabelResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type RegisterSchoolResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RegisterSchoolResult'] = ResolversParentTypes['RegisterSchoolResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotAppointed' | 'SchoolPayload', ParentType, ContextType>;
};

export type RelaxHouseRuleResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RelaxHouseRuleResult'] = ResolversParentTypes['RelaxHouseRuleResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type ReleaseTaskResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ReleaseTaskResult'] = ResolversParentTypes['ReleaseTaskResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'TaskHeld' | 'TaskNotHeld' | 'TaskPayload', ParentType, ContextType>;
};

export type ReminderResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Reminder'] = ResolversParentTypes['Reminder']> = {
  aboutAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  dueAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  forEverybody?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['ReminderKind'], ParentType, ContextType>;
  session?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  task?: Resolver<Maybe<ResolversTypes['Task']>, ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type RemoveAllergyResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RemoveAllergyResult'] = ResolversParentTypes['RemoveAllergyResult']> = {
  __resolveType: TypeResolveFn<'AllergyPayload' | 'ChildNotFound' | 'ConfirmationNeeded' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed', ParentType, ContextType>;
};

export type RemoveCarerResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RemoveCarerResult'] = ResolversParentTypes['RemoveCarerResult']> = {
  __resolveType: TypeResolveFn<'CarerNotFound' | 'HouseholdNotFound' | 'HouseholdPayload' | 'InvalidInput' | 'KeyReused' | 'LastCoordinator' | 'NotPermitted', ParentType, ContextType>;
};

export type RemoveOwnDishResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RemoveOwnDishResult'] = ResolversParentTypes['RemoveOwnDishResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed' | 'StillInUse', ParentType, ContextType>;
};

export type RemoveOwnFoodResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RemoveOwnFoodResult'] = ResolversParentTypes['RemoveOwnFoodResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed' | 'StillInUse', ParentType, ContextType>;
};

export type RemoveSchoolDayResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RemoveSchoolDayResult'] = ResolversParentTypes['RemoveSchoolDayResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotAppointed' | 'RevisionPassed' | 'SchoolNotFound' | 'SchoolPayload', ParentType, ContextType>;
};

export type RemoveTermResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RemoveTermResult'] = ResolversParentTypes['RemoveTermResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotAppointed' | 'RevisionPassed' | 'SchoolNotFound' | 'SchoolPayload', ParentType, ContextType>;
};

export type RenameMePayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RenameMePayload'] = ResolversParentTypes['RenameMePayload']> = {
  person?: Resolver<ResolversTypes['Person'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type RenameMeResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RenameMeResult'] = ResolversParentTypes['RenameMeResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'RenameMePayload', ParentType, ContextType>;
};

export type RenewFeedAddressResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RenewFeedAddressResult'] = ResolversParentTypes['RenewFeedAddressResult']> = {
  __resolveType: TypeResolveFn<'FeedAddressPayload' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted', ParentType, ContextType>;
};

export type ReportAbsenceResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ReportAbsenceResult'] = ResolversParentTypes['ReportAbsenceResult']> = {
  __resolveType: TypeResolveFn<'BoxClosed' | 'ChildNotFound' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'OutsideTerm' | 'RevisionPassed' | 'WeekInfeasible' | 'WeekPayload', ParentType, ContextType>;
};

export type ReportDisruptionResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ReportDisruptionResult'] = ResolversParentTypes['ReportDisruptionResult']> = {
  __resolveType: TypeResolveFn<'ChildNotFound' | 'DisruptionPayload' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type ReportReturnedResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ReportReturnedResult'] = ResolversParentTypes['ReportReturnedResult']> = {
  __resolveType: TypeResolveFn<'BoxBlocked' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'ReturnedPayload' | 'RevisionPassed', ParentType, ContextType>;
};

export type ResidenceDayResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ResidenceDay'] = ResolversParentTypes['ResidenceDay']> = {
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  here?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  source?: Resolver<ResolversTypes['ResidenceSource'], ParentType, ContextType>;
};

export type ResidencePatternResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ResidencePattern'] = ResolversParentTypes['ResidencePattern']> = {
  cycle?: Resolver<ReadonlyArray<ResolversTypes['HomeSide']>, ParentType, ContextType>;
  ends?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['ResidenceKind'], ParentType, ContextType>;
  starts?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
};

export type ResidencePayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ResidencePayload'] = ResolversParentTypes['ResidencePayload']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  movedDays?: Resolver<ReadonlyArray<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  proposal?: Resolver<Maybe<ResolversTypes['ResidenceProposal']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type ResidenceProposalResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ResidenceProposal'] = ResolversParentTypes['ResidenceProposal']> = {
  days?: Resolver<ReadonlyArray<ResolversTypes['ProposedDay']>, ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  pattern?: Resolver<Maybe<ResolversTypes['ResidencePattern']>, ParentType, ContextType>;
  proposedAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  proposedBy?: Resolver<ResolversTypes['HomeSide'], ParentType, ContextType>;
  state?: Resolver<ResolversTypes['ProposalState'], ParentType, ContextType>;
};

export type RetentionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Retention'] = ResolversParentTypes['Retention']> = {
  code?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  cooked?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type ReturnedPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ReturnedPayload'] = ResolversParentTypes['ReturnedPayload']> = {
  box?: Resolver<ResolversTypes['Box'], ParentType, ContextType>;
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type RevisionPassedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RevisionPassed'] = ResolversParentTypes['RevisionPassed']> = {
  currentRevision?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  seenRevision?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type RotaPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RotaPayload'] = ResolversParentTypes['RotaPayload']> = {
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type RotaProposalResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RotaProposal'] = ResolversParentTypes['RotaProposal']> = {
  isFairest?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  minutes?: Resolver<ReadonlyArray<ResolversTypes['ProposedMinutes']>, ParentType, ContextType>;
  sessions?: Resolver<ReadonlyArray<ResolversTypes['ProposedSession']>, ParentType, ContextType>;
  token?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type RotaSessionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RotaSession'] = ResolversParentTypes['RotaSession']> = {
  carers?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  handsOnMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  isPlanned?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['WindowKind'], ParentType, ContextType>;
  onDuty?: Resolver<ReadonlyArray<ResolversTypes['Person']>, ParentType, ContextType>;
  startsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
};

export type RuleResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Rule'] = ResolversParentTypes['Rule']> = {
  ages?: Resolver<Maybe<ResolversTypes['AgeSpan']>, ParentType, ContextType>;
  breaks?: Resolver<Maybe<ReadonlyArray<ResolversTypes['String']>>, ParentType, ContextType>;
  inForceFrom?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  inForceUntil?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  level?: Resolver<ResolversTypes['RuleLevel'], ParentType, ContextType>;
  says?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  weekdays?: Resolver<Maybe<ReadonlyArray<ResolversTypes['Weekday']>>, ParentType, ContextType>;
};

export type RuleChangeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RuleChange'] = ResolversParentTypes['RuleChange']> = {
  fields?: Resolver<ReadonlyArray<ResolversTypes['FieldChange']>, ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['RuleChangeKind'], ParentType, ContextType>;
  rule?: Resolver<ResolversTypes['Rule'], ParentType, ContextType>;
};

export type RuleCountResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RuleCount'] = ResolversParentTypes['RuleCount']> = {
  boxes?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  children?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  held?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  rule?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  weeks?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
};

export type RuleFindingResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RuleFinding'] = ResolversParentTypes['RuleFinding']> = {
  atLeast?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  atMost?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  date?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  foods?: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  found?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  place?: Resolver<Maybe<ResolversTypes['RuleFindingPlace']>, ParentType, ContextType>;
  state?: Resolver<ResolversTypes['RuleState'], ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  unit?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  whoSaysSo?: Resolver<ResolversTypes['RuleOrigin'], ParentType, ContextType>;
};

export type RuleFindingPlaceResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RuleFindingPlace'] = ResolversParentTypes['RuleFindingPlace']> = {
  breakKey?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  place?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  slot?: Resolver<ResolversTypes['Slot'], ParentType, ContextType>;
};

export type RuleNoticeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RuleNotice'] = ResolversParentTypes['RuleNotice']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  copy?: Resolver<ResolversTypes['RuleSet'], ParentType, ContextType>;
  from?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  schoolRuleSets?: Resolver<ReadonlyArray<ResolversTypes['RuleSet']>, ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type RuleObeyedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RuleObeyed'] = ResolversParentTypes['RuleObeyed']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  dates?: Resolver<ReadonlyArray<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  whoSaysSo?: Resolver<ResolversTypes['RuleOrigin'], ParentType, ContextType>;
};

export type RuleOriginResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RuleOrigin'] = ResolversParentTypes['RuleOrigin']> = {
  confirmed?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  jurisdiction?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  rule?: Resolver<ResolversTypes['Rule'], ParentType, ContextType>;
  ruleSet?: Resolver<ResolversTypes['RuleSet'], ParentType, ContextType>;
  saidBy?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  school?: Resolver<Maybe<ResolversTypes['School']>, ParentType, ContextType>;
  schoolClass?: Resolver<Maybe<ResolversTypes['SchoolClass']>, ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type RuleSetResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RuleSet'] = ResolversParentTypes['RuleSet']> = {
  ages?: Resolver<Maybe<ResolversTypes['AgeSpan']>, ParentType, ContextType>;
  confirmed?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  copyOf?: Resolver<Maybe<ResolversTypes['School']>, ParentType, ContextType>;
  coversFoodFromHome?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  differsFromSchool?: Resolver<Maybe<ResolversTypes['RuleSetDifference']>, ParentType, ContextType>;
  document?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  inForceFrom?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  inForceUntil?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  jurisdiction?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  layer?: Resolver<ResolversTypes['RuleLayer'], ParentType, ContextType>;
  rules?: Resolver<ReadonlyArray<ResolversTypes['Rule']>, ParentType, ContextType>;
  title?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  version?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  versions?: Resolver<ReadonlyArray<ResolversTypes['RuleSetVersion']>, ParentType, ContextType>;
  withdrawn?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type RuleSetCheckResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RuleSetCheck'] = ResolversParentTypes['RuleSetCheck']> = {
  comparedWith?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  difference?: Resolver<Maybe<ResolversTypes['RuleSetDifference']>, ParentType, ContextType>;
  errors?: Resolver<ReadonlyArray<ResolversTypes['DocumentIssue']>, ParentType, ContextType>;
  unchanged?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  warnings?: Resolver<ReadonlyArray<ResolversTypes['DocumentIssue']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type RuleSetCheckResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RuleSetCheckResult'] = ResolversParentTypes['RuleSetCheckResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'NotAppointed' | 'RuleSetCheck' | 'SchoolNotFound', ParentType, ContextType>;
};

export type RuleSetCountsResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RuleSetCounts'] = ResolversParentTypes['RuleSetCounts']> = {
  all?: Resolver<ResolversTypes['RuleCount'], ParentType, ContextType>;
  from?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  notCounted?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  ownDishes?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  rules?: Resolver<ReadonlyArray<ResolversTypes['RuleCount']>, ParentType, ContextType>;
  until?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type RuleSetDifferenceResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RuleSetDifference'] = ResolversParentTypes['RuleSetDifference']> = {
  fields?: Resolver<ReadonlyArray<ResolversTypes['FieldChange']>, ParentType, ContextType>;
  rules?: Resolver<ReadonlyArray<ResolversTypes['RuleChange']>, ParentType, ContextType>;
};

export type RuleSetVersionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RuleSetVersion'] = ResolversParentTypes['RuleSetVersion']> = {
  difference?: Resolver<ResolversTypes['RuleSetDifference'], ParentType, ContextType>;
  inForceFrom?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  inForceUntil?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  rules?: Resolver<ReadonlyArray<ResolversTypes['Rule']>, ParentType, ContextType>;
  title?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  version?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  withdrawn?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
};

export type SaveOwnDishPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SaveOwnDishPayload'] = ResolversParentTypes['SaveOwnDishPayload']> = {
  dish?: Resolver<ResolversTypes['Dish'], ParentType, ContextType>;
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  missing?: Resolver<ReadonlyArray<ResolversTypes['MissingFact']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type SaveOwnDishResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SaveOwnDishResult'] = ResolversParentTypes['SaveOwnDishResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'RevisionPassed' | 'SaveOwnDishPayload', ParentType, ContextType>;
};

export type SaveOwnFoodPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SaveOwnFoodPayload'] = ResolversParentTypes['SaveOwnFoodPayload']> = {
  food?: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  missing?: Resolver<ReadonlyArray<ResolversTypes['MissingFact']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type SaveOwnFoodResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SaveOwnFoodResult'] = ResolversParentTypes['SaveOwnFoodResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'RevisionPassed' | 'SaveOwnFoodPayload', ParentType, ContextType>;
};

export type SchoolResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['School'] = ResolversParentTypes['School']> = {
  appointments?: Resolver<Maybe<ReadonlyArray<ResolversTypes['Appointment']>>, ParentType, ContextType>;
  audit?: Resolver<Maybe<ResolversTypes['AuditConnection']>, ParentType, ContextType, RequireFields<SchoolAuditArgs, 'first'>>;
  classes?: Resolver<ReadonlyArray<ResolversTypes['SchoolClass']>, ParentType, ContextType>;
  days?: Resolver<ReadonlyArray<ResolversTypes['SchoolDay']>, ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  jurisdiction?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  revision?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  ruleSets?: Resolver<ReadonlyArray<ResolversTypes['RuleSet']>, ParentType, ContextType>;
  terms?: Resolver<ReadonlyArray<ResolversTypes['SchoolTerm']>, ParentType, ContextType>;
  timeZone?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type SchoolClassResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SchoolClass'] = ResolversParentTypes['SchoolClass']> = {
  breaks?: Resolver<ReadonlyArray<ResolversTypes['ClassBreak']>, ParentType, ContextType>;
  facility?: Resolver<ResolversTypes['Facility'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type SchoolConnectionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SchoolConnection'] = ResolversParentTypes['SchoolConnection']> = {
  nodes?: Resolver<ReadonlyArray<ResolversTypes['School']>, ParentType, ContextType>;
  pageInfo?: Resolver<ResolversTypes['PageInfo'], ParentType, ContextType>;
};

export type SchoolDayResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SchoolDay'] = ResolversParentTypes['SchoolDay']> = {
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  endsAt?: Resolver<Maybe<ResolversTypes['LocalTime']>, ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['SchoolDayKind'], ParentType, ContextType>;
  title?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type SchoolNotFoundResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SchoolNotFound'] = ResolversParentTypes['SchoolNotFound']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type SchoolPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SchoolPayload'] = ResolversParentTypes['SchoolPayload']> = {
  school?: Resolver<ResolversTypes['School'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type SchoolProvisionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SchoolProvision'] = ResolversParentTypes['SchoolProvision']> = {
  breakKey?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  food?: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  weekday?: Resolver<Maybe<ResolversTypes['Weekday']>, ParentType, ContextType>;
};

export type SchoolTermResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SchoolTerm'] = ResolversParentTypes['SchoolTerm']> = {
  firstDay?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  lastDay?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type SeasonResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Season'] = ResolversParentTypes['Season']> = {
  months?: Resolver<ReadonlyArray<ResolversTypes['Int']>, ParentType, ContextType>;
  region?: Resolver<ResolversTypes['ClimateRegion'], ParentType, ContextType>;
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type SessionDifferenceResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SessionDifference'] = ResolversParentTypes['SessionDifference']> = {
  changes?: Resolver<ReadonlyArray<ResolversTypes['TaskDifference']>, ParentType, ContextType>;
  comes?: Resolver<ReadonlyArray<ResolversTypes['TaskDifference']>, ParentType, ContextType>;
  goes?: Resolver<ReadonlyArray<ResolversTypes['TaskDifference']>, ParentType, ContextType>;
  handsOnMinutesMore?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  session?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type SessionTimingResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SessionTiming'] = ResolversParentTypes['SessionTiming']> = {
  lastsMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  latestStartsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  leastMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  noLaterThan?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  provenShortest?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
};

export type SetAvailabilityResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetAvailabilityResult'] = ResolversParentTypes['SetAvailabilityResult']> = {
  __resolveType: TypeResolveFn<'HelperNotFound' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'RevisionPassed' | 'RotaPayload', ParentType, ContextType>;
};

export type SetBoxKitResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetBoxKitResult'] = ResolversParentTypes['SetBoxKitResult']> = {
  __resolveType: TypeResolveFn<'BoxKitPayload' | 'ChildNotFound' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type SetDutiesResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetDutiesResult'] = ResolversParentTypes['SetDutiesResult']> = {
  __resolveType: TypeResolveFn<'HelperNotFound' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'RevisionPassed' | 'RotaPayload', ParentType, ContextType>;
};

export type SetEnergyMethodResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetEnergyMethodResult'] = ResolversParentTypes['SetEnergyMethodResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type SetEquipmentResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetEquipmentResult'] = ResolversParentTypes['SetEquipmentResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type SetFacilityResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetFacilityResult'] = ResolversParentTypes['SetFacilityResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotAppointed' | 'RevisionPassed' | 'SchoolNotFound' | 'SchoolPayload', ParentType, ContextType>;
};

export type SetHotDaysResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetHotDaysResult'] = ResolversParentTypes['SetHotDaysResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type SetKeepsOutResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetKeepsOutResult'] = ResolversParentTypes['SetKeepsOutResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type SetLeftoversResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetLeftoversResult'] = ResolversParentTypes['SetLeftoversResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type SetPrepTimesResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetPrepTimesResult'] = ResolversParentTypes['SetPrepTimesResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type SetResidencePatternResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetResidencePatternResult'] = ResolversParentTypes['SetResidencePatternResult']> = {
  __resolveType: TypeResolveFn<'ChildNotFound' | 'DayClosed' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'ProposalOpen' | 'ResidencePayload' | 'RevisionPassed', ParentType, ContextType>;
};

export type SetSchoolDayResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetSchoolDayResult'] = ResolversParentTypes['SetSchoolDayResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotAppointed' | 'RevisionPassed' | 'SchoolNotFound' | 'SchoolPayload', ParentType, ContextType>;
};

export type SetSchoolProvisionPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetSchoolProvisionPayload'] = ResolversParentTypes['SetSchoolProvisionPayload']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type SetSchoolProvisionResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetSchoolProvisionResult'] = ResolversParentTypes['SetSchoolProvisionResult']> = {
  __resolveType: TypeResolveFn<'ChildNotFound' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'RevisionPassed' | 'SetSchoolProvisionPayload', ParentType, ContextType>;
};

export type SetStockResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetStockResult'] = ResolversParentTypes['SetStockResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type SetTermResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetTermResult'] = ResolversParentTypes['SetTermResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotAppointed' | 'RevisionPassed' | 'SchoolNotFound' | 'SchoolPayload', ParentType, ContextType>;
};

export type SharingGainResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SharingGain'] = ResolversParentTypes['SharingGain']> = {
  handsOnMinutesAlone?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  handsOnMinutesShared?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  savedMinutes?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
};

export type ShoppingDifferenceResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ShoppingDifference'] = ResolversParentTypes['ShoppingDifference']> = {
  costMinor?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  food?: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  packGrams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  packs?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type ShoppingLineResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ShoppingLine'] = ResolversParentTypes['ShoppingLine']> = {
  costMinor?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  cupboardAfterGrams?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  food?: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  fromStockGrams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  neededGrams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  packGrams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  packs?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  readLabel?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  section?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  spareGrams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  spareUses?: Resolver<ReadonlyArray<ResolversTypes['SpareUse']>, ParentType, ContextType>;
  ticked?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type ShoppingLinePayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ShoppingLinePayload'] = ResolversParentTypes['ShoppingLinePayload']> = {
  line?: Resolver<ResolversTypes['ShoppingLine'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type SourcedFigureResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SourcedFigure'] = ResolversParentTypes['SourcedFigure']> = {
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  value?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type SpareDishResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SpareDish'] = ResolversParentTypes['SpareDish']> = {
  children?: Resolver<ReadonlyArray<ResolversTypes['Child']>, ParentType, ContextType>;
  dish?: Resolver<ResolversTypes['Dish'], ParentType, ContextType>;
};

export type SpareUseResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SpareUse'] = ResolversParentTypes['SpareUse']> = {
  days?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  dishes?: Resolver<ReadonlyArray<ResolversTypes['SpareDish']>, ParentType, ContextType>;
  keptIn?: Resolver<Maybe<ResolversTypes['SpareKeptIn']>, ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['SpareUseKind'], ParentType, ContextType>;
  source?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  untilDate?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
};

export type StillInUseResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['StillInUse'] = ResolversParentTypes['StillInUse']> = {
  boxes?: Resolver<ReadonlyArray<ResolversTypes['BoxPlace']>, ParentType, ContextType>;
  dishes?: Resolver<ReadonlyArray<ResolversTypes['Dish']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type StockResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Stock'] = ResolversParentTypes['Stock']> = {
  food?: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type SubscriptionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Subscription'] = ResolversParentTypes['Subscription']> = {
  boxesBlocked?: SubscriptionResolver<Maybe<ResolversTypes['BoxVerdict']>, "boxesBlocked", ParentType, ContextType, RequireFields<SubscriptionBoxesBlockedArgs, 'householdId'>>;
  changes?: SubscriptionResolver<ResolversTypes['Change'], "changes", ParentType, ContextType, RequireFields<SubscriptionChangesArgs, 'householdId'>>;
  planProgress?: SubscriptionResolver<ResolversTypes['PlanProgress'], "planProgress", ParentType, ContextType, RequireFields<SubscriptionPlanProgressArgs, 'householdId'>>;
  reminders?: SubscriptionResolver<ResolversTypes['Reminder'], "reminders", ParentType, ContextType, RequireFields<SubscriptionRemindersArgs, 'householdId'>>;
  weekChanged?: SubscriptionResolver<ResolversTypes['Week'], "weekChanged", ParentType, ContextType, RequireFields<SubscriptionWeekChangedArgs, 'householdId'>>;
};

export type SwapItemResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SwapItemResult'] = ResolversParentTypes['SwapItemResult']> = {
  __resolveType: TypeResolveFn<'BoxClosed' | 'DishUnknown' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'SwapRefused' | 'WeekPayload', ParentType, ContextType>;
};

export type SwapRefusedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SwapRefused'] = ResolversParentTypes['SwapRefused']> = {
  conflicts?: Resolver<ReadonlyArray<ResolversTypes['Conflict']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type TakeTaskResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['TakeTaskResult'] = ResolversParentTypes['TakeTaskResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'TaskHeld' | 'TaskPayload', ParentType, ContextType>;
};

export type TaskResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Task'] = ResolversParentTypes['Task']> = {
  actualMinutes?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  carer?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  children?: Resolver<ReadonlyArray<ResolversTypes['Child']>, ParentType, ContextType>;
  crossContact?: Resolver<Maybe<ResolversTypes['CrossContact']>, ParentType, ContextType>;
  doneAt?: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  endsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  equipment?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  forDates?: Resolver<ReadonlyArray<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  handles?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  handsFreeAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  handsOnMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  kept?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  latestStartsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  passiveMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  session?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  startsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  state?: Resolver<ResolversTypes['WorkState'], ParentType, ContextType>;
  takenAt?: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  takenBy?: Resolver<Maybe<ResolversTypes['Person']>, ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type TaskDifferenceResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['TaskDifference'] = ResolversParentTypes['TaskDifference']> = {
  children?: Resolver<ReadonlyArray<ResolversTypes['Child']>, ParentType, ContextType>;
  handsOnMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  startsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type TaskHeldResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['TaskHeld'] = ResolversParentTypes['TaskHeld']> = {
  holder?: Resolver<Maybe<ResolversTypes['Person']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  state?: Resolver<ResolversTypes['WorkState'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type TaskNotHeldResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['TaskNotHeld'] = ResolversParentTypes['TaskNotHeld']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  state?: Resolver<ResolversTypes['WorkState'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type TaskPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['TaskPayload'] = ResolversParentTypes['TaskPayload']> = {
  revision?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  task?: Resolver<ResolversTypes['Task'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type TickShoppingLineResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['TickShoppingLineResult'] = ResolversParentTypes['TickShoppingLineResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'ShoppingLinePayload', ParentType, ContextType>;
};

export type UndoTaskResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['UndoTaskResult'] = ResolversParentTypes['UndoTaskResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'TaskHeld' | 'TaskNotHeld' | 'TaskPayload' | 'WorkUsed', ParentType, ContextType>;
};

export type UnpinItemResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['UnpinItemResult'] = ResolversParentTypes['UnpinItemResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'WeekPayload', ParentType, ContextType>;
};

export type UpperLevelResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['UpperLevel'] = ResolversParentTypes['UpperLevel']> = {
  amount?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  counts?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  nutrient?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  unit?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type UserErrorResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['UserError'] = ResolversParentTypes['UserError']> = {
  __resolveType: TypeResolveFn<'AgreementNeeded' | 'AlreadyCarer' | 'BoxBlocked' | 'BoxClosed' | 'CarerNotFound' | 'ChildNotFound' | 'ConfirmationNeeded' | 'DayClosed' | 'DishNotOffered' | 'DishUnknown' | 'DocumentRefused' | 'ExemptionRefused' | 'ForTheOtherHome' | 'HelperNotFound' | 'HouseholdNotFound' | 'HouseholdsLeft' | 'InvalidInput' | 'InvitationClosed' | 'InvitationNotFound' | 'KeyReused' | 'LabelsUnread' | 'LastAdministrator' | 'LastCoordinator' | 'LivesHereAlready' | 'LivesInTwoHomes' | 'NoSchool' | 'NoWeekWithDish' | 'NotAppointed' | 'NotPermitted' | 'NothingThere' | 'OnlyHome' | 'OutsideTerm' | 'PersonNotFound' | 'ProposalMoved' | 'ProposalOpen' | 'ProposalSettled' | 'RevisionPassed' | 'SchoolNotFound' | 'StillInUse' | 'SwapRefused' | 'TaskHeld' | 'TaskNotHeld' | 'WeekAgreed' | 'WeekInfeasible' | 'WorkUsed', ParentType, ContextType>;
};

export type VerdictsResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Verdicts'] = ResolversParentTypes['Verdicts']> = {
  places?: Resolver<ReadonlyArray<ResolversTypes['PlaceVerdict']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type VerdictsResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['VerdictsResult'] = ResolversParentTypes['VerdictsResult']> = {
  __resolveType: TypeResolveFn<'DishUnknown' | 'InvalidInput' | 'OutsideTerm' | 'Verdicts', ParentType, ContextType>;
};

export type WayOutResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WayOut'] = ResolversParentTypes['WayOut']> = {
  changes?: Resolver<ReadonlyArray<ResolversTypes['WayOutChange']>, ParentType, ContextType>;
  wishes?: Resolver<ResolversTypes['WishTotals'], ParentType, ContextType>;
};

export type WayOutChangeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WayOutChange'] = ResolversParentTypes['WayOutChange']> = {
  child?: Resolver<Maybe<ResolversTypes['Child']>, ParentType, ContextType>;
  date?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type WeekResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Week'] = ResolversParentTypes['Week']> = {
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  plan?: Resolver<ResolversTypes['WeekPlan'], ParentType, ContextType>;
  revision?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  weekStart?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type WeekAgreedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WeekAgreed'] = ResolversParentTypes['WeekAgreed']> = {
  agreedAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type WeekDifferenceResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WeekDifference'] = ResolversParentTypes['WeekDifference']> = {
  batches?: Resolver<ReadonlyArray<ResolversTypes['BatchDifference']>, ParentType, ContextType>;
  boxes?: Resolver<ReadonlyArray<ResolversTypes['BoxDifference']>, ParentType, ContextType>;
  more?: Resolver<ResolversTypes['WishTotals'], ParentType, ContextType>;
  notNeeded?: Resolver<ReadonlyArray<ResolversTypes['ShoppingDifference']>, ParentType, ContextType>;
  sessions?: Resolver<ReadonlyArray<ResolversTypes['SessionDifference']>, ParentType, ContextType>;
  toBuy?: Resolver<ReadonlyArray<ResolversTypes['ShoppingDifference']>, ParentType, ContextType>;
};

export type WeekInfeasibleResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WeekInfeasible'] = ResolversParentTypes['WeekInfeasible']> = {
  clash?: Resolver<Maybe<ResolversTypes['Clash']>, ParentType, ContextType>;
  conflicts?: Resolver<ReadonlyArray<ResolversTypes['Conflict']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  waysOut?: Resolver<ReadonlyArray<ResolversTypes['WayOut']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type WeekPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WeekPayload'] = ResolversParentTypes['WeekPayload']> = {
  changedBoxes?: Resolver<ReadonlyArray<ResolversTypes['Box']>, ParentType, ContextType>;
  week?: Resolver<ResolversTypes['Week'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type WeekPlanResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WeekPlan'] = ResolversParentTypes['WeekPlan']> = {
  agreedAt?: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  batches?: Resolver<ReadonlyArray<ResolversTypes['Batch']>, ParentType, ContextType>;
  boxes?: Resolver<ReadonlyArray<ResolversTypes['Box']>, ParentType, ContextType, Partial<WeekPlanBoxesArgs>>;
  cautions?: Resolver<ReadonlyArray<ResolversTypes['Caution']>, ParentType, ContextType>;
  certificate?: Resolver<Maybe<ResolversTypes['PlanCertificate']>, ParentType, ContextType>;
  compliance?: Resolver<ResolversTypes['Compliance'], ParentType, ContextType>;
  createdAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  differenceFrom?: Resolver<Maybe<ResolversTypes['WeekDifference']>, ParentType, ContextType, RequireFields<WeekPlanDifferenceFromArgs, 'number'>>;
  estimatedCost?: Resolver<ResolversTypes['EstimatedCost'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  number?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  origin?: Resolver<ResolversTypes['PlanOrigin'], ParentType, ContextType>;
  readyUses?: Resolver<ReadonlyArray<ResolversTypes['ReadyUse']>, ParentType, ContextType>;
  rulesObeyed?: Resolver<ReadonlyArray<ResolversTypes['RuleObeyed']>, ParentType, ContextType>;
  sessions?: Resolver<ReadonlyArray<ResolversTypes['PrepSession']>, ParentType, ContextType>;
  sharing?: Resolver<Maybe<ResolversTypes['SharingGain']>, ParentType, ContextType>;
  shopping?: Resolver<ReadonlyArray<ResolversTypes['ShoppingLine']>, ParentType, ContextType>;
  state?: Resolver<ResolversTypes['PlanState'], ParentType, ContextType>;
  tasks?: Resolver<ReadonlyArray<ResolversTypes['Task']>, ParentType, ContextType>;
  wishes?: Resolver<ResolversTypes['WishTotals'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type WishTotalsResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WishTotals'] = ResolversParentTypes['WishTotals']> = {
  costMinor?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  handsOnMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  monotonyPoints?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  nutrientShortfallPercent?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  objectivePoints?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  refusalPoints?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  spareBaseGrams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type WithdrawDisruptionResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WithdrawDisruptionResult'] = ResolversParentTypes['WithdrawDisruptionResult']> = {
  __resolveType: TypeResolveFn<'DisruptionPayload' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed', ParentType, ContextType>;
};

export type WithdrawErasurePayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WithdrawErasurePayload'] = ResolversParentTypes['WithdrawErasurePayload']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type WithdrawErasureResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WithdrawErasureResult'] = ResolversParentTypes['WithdrawErasureResult']> = {
  __resolveType: TypeResolveFn<'ChildNotFound' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'WithdrawErasurePayload', ParentType, ContextType>;
};

export type WithdrawInvitationPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WithdrawInvitationPayload'] = ResolversParentTypes['WithdrawInvitationPayload']> = {
  invitation?: Resolver<ResolversTypes['Invitation'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type WithdrawInvitationResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WithdrawInvitationResult'] = ResolversParentTypes['WithdrawInvitationResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'InvitationClosed' | 'InvitationNotFound' | 'KeyReused' | 'NotPermitted' | 'WithdrawInvitationPayload', ParentType, ContextType>;
};

export type WithdrawResidenceChangeResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WithdrawResidenceChangeResult'] = ResolversParentTypes['WithdrawResidenceChangeResult']> = {
  __resolveType: TypeResolveFn<'ForTheOtherHome' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'ProposalSettled' | 'ResidencePayload' | 'RevisionPassed', ParentType, ContextType>;
};

export type WithdrawRuleSetResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WithdrawRuleSetResult'] = ResolversParentTypes['WithdrawRuleSetResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'LoadRuleSetPayload' | 'NotAppointed' | 'NothingThere' | 'RevisionPassed', ParentType, ContextType>;
};

export type WorkUsedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WorkUsed'] = ResolversParentTypes['WorkUsed']> = {
  boxes?: Resolver<ReadonlyArray<ResolversTypes['BoxPlace']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  tasks?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type WriteHandoverResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WriteHandoverResult'] = ResolversParentTypes['WriteHandoverResult']> = {
  __resolveType: TypeResolveFn<'ChildNotFound' | 'HandoverPayload' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type Resolvers<ContextType = GraphqlContext> = {
  AcceptHomeInvitationPayload?: AcceptHomeInvitationPayloadResolvers<ContextType>;
  AcceptHomeInvitationResult?: AcceptHomeInvitationResultResolvers<ContextType>;
  AcceptInvitationResult?: AcceptInvitationResultResolvers<ContextType>;
  AcceptRotaResult?: AcceptRotaResultResolvers<ContextType>;
  AddSchoolClassResult?: AddSchoolClassResultResolvers<ContextType>;
  AdoptRuleSetResult?: AdoptRuleSetResultResolvers<ContextType>;
  AgeSpan?: AgeSpanResolvers<ContextType>;
  AgreeWeekResult?: AgreeWeekResultResolvers<ContextType>;
  AgreementNeeded?: AgreementNeededResolvers<ContextType>;
  AllergenSource?: AllergenSourceResolvers<ContextType>;
  Allergy?: AllergyResolvers<ContextType>;
  AllergyPayload?: AllergyPayloadResolvers<ContextType>;
  AlreadyCarer?: AlreadyCarerResolvers<ContextType>;
  Alternative?: AlternativeResolvers<ContextType>;
  AnswerResidenceChangeResult?: AnswerResidenceChangeResultResolvers<ContextType>;
  ApplianceUse?: ApplianceUseResolvers<ContextType>;
  ApplianceUses?: ApplianceUsesResolvers<ContextType>;
  AppointResult?: AppointResultResolvers<ContextType>;
  Appointment?: AppointmentResolvers<ContextType>;
  AppointmentsPayload?: AppointmentsPayloadResolvers<ContextType>;
  AuditConnection?: AuditConnectionResolvers<ContextType>;
  AuditEntry?: AuditEntryResolvers<ContextType>;
  Availability?: AvailabilityResolvers<ContextType>;
  Base?: BaseResolvers<ContextType>;
  Batch?: BatchResolvers<ContextType>;
  BatchDifference?: BatchDifferenceResolvers<ContextType>;
  BatchFeed?: BatchFeedResolvers<ContextType>;
  BatchSize?: BatchSizeResolvers<ContextType>;
  BlockReason?: BlockReasonResolvers<ContextType>;
  Box?: BoxResolvers<ContextType>;
  BoxBlocked?: BoxBlockedResolvers<ContextType>;
  BoxCard?: BoxCardResolvers<ContextType>;
  BoxCheck?: BoxCheckResolvers<ContextType>;
  BoxCheckResult?: BoxCheckResultResolvers<ContextType>;
  BoxClosed?: BoxClosedResolvers<ContextType>;
  BoxDifference?: BoxDifferenceResolvers<ContextType>;
  BoxItem?: BoxItemResolvers<ContextType>;
  BoxItemNote?: BoxItemNoteResolvers<ContextType>;
  BoxKitPayload?: BoxKitPayloadResolvers<ContextType>;
  BoxPacking?: BoxPackingResolvers<ContextType>;
  BoxPart?: BoxPartResolvers<ContextType>;
  BoxPlace?: BoxPlaceResolvers<ContextType>;
  BoxVerdict?: BoxVerdictResolvers<ContextType>;
  BreakNeeds?: BreakNeedsResolvers<ContextType>;
  CalendarChange?: CalendarChangeResolvers<ContextType>;
  CalendarChangeResult?: CalendarChangeResultResolvers<ContextType>;
  CalendarEntry?: CalendarEntryResolvers<ContextType>;
  CalendarEntryChange?: CalendarEntryChangeResolvers<ContextType>;
  Carer?: CarerResolvers<ContextType>;
  CarerMinutes?: CarerMinutesResolvers<ContextType>;
  CarerNotFound?: CarerNotFoundResolvers<ContextType>;
  CarerTasks?: CarerTasksResolvers<ContextType>;
  Caution?: CautionResolvers<ContextType>;
  Change?: ChangeResolvers<ContextType>;
  ChangeConnection?: ChangeConnectionResolvers<ContextType>;
  ChangeRoleResult?: ChangeRoleResultResolvers<ContextType>;
  ChangeSchoolClassResult?: ChangeSchoolClassResultResolvers<ContextType>;
  ChangedField?: ChangedFieldResolvers<ContextType>;
  Child?: ChildResolvers<ContextType>;
  ChildNotFound?: ChildNotFoundResolvers<ContextType>;
  ChokingHazard?: ChokingHazardResolvers<ContextType>;
  Clash?: ClashResolvers<ContextType>;
  ClashMember?: ClashMemberResolvers<ContextType>;
  ClassBreak?: ClassBreakResolvers<ContextType>;
  CloseFeedPayload?: CloseFeedPayloadResolvers<ContextType>;
  CloseFeedResult?: CloseFeedResultResolvers<ContextType>;
  Compliance?: ComplianceResolvers<ContextType>;
  ComplianceTotals?: ComplianceTotalsResolvers<ContextType>;
  ConfirmationNeeded?: ConfirmationNeededResolvers<ContextType>;
  Conflict?: ConflictResolvers<ContextType>;
  CostPart?: CostPartResolvers<ContextType>;
  CountRuleSetComplianceResult?: CountRuleSetComplianceResultResolvers<ContextType>;
  CountRuleSetImpactResult?: CountRuleSetImpactResultResolvers<ContextType>;
  CreateChildPayload?: CreateChildPayloadResolvers<ContextType>;
  CreateChildResult?: CreateChildResultResolvers<ContextType>;
  CreateHouseholdPayload?: CreateHouseholdPayloadResolvers<ContextType>;
  CreateHouseholdResult?: CreateHouseholdResultResolvers<ContextType>;
  CrossContact?: CrossContactResolvers<ContextType>;
  Cut?: CutResolvers<ContextType>;
  DailyNeeds?: DailyNeedsResolvers<ContextType>;
  DateTime?: GraphQLScalarType;
  DayClosed?: DayClosedResolvers<ContextType>;
  DayReturned?: DayReturnedResolvers<ContextType>;
  Dish?: DishResolvers<ContextType>;
  DishBase?: DishBaseResolvers<ContextType>;
  DishConnection?: DishConnectionResolvers<ContextType>;
  DishIngredient?: DishIngredientResolvers<ContextType>;
  DishNotOffered?: DishNotOfferedResolvers<ContextType>;
  DishReturned?: DishReturnedResolvers<ContextType>;
  DishStep?: DishStepResolvers<ContextType>;
  DishUnknown?: DishUnknownResolvers<ContextType>;
  DismissResult?: DismissResultResolvers<ContextType>;
  Disruption?: DisruptionResolvers<ContextType>;
  DisruptionOffer?: DisruptionOfferResolvers<ContextType>;
  DisruptionOfferResult?: DisruptionOfferResultResolvers<ContextType>;
  DisruptionPayload?: DisruptionPayloadResolvers<ContextType>;
  DocumentIssue?: DocumentIssueResolvers<ContextType>;
  DocumentRefused?: DocumentRefusedResolvers<ContextType>;
  DropOwnRulesResult?: DropOwnRulesResultResolvers<ContextType>;
  EndExemptionResult?: EndExemptionResultResolvers<ContextType>;
  EnrolChildPayload?: EnrolChildPayloadResolvers<ContextType>;
  EnrolChildResult?: EnrolChildResultResolvers<ContextType>;
  Enrolment?: EnrolmentResolvers<ContextType>;
  Equipment?: EquipmentResolvers<ContextType>;
  EraseChildResult?: EraseChildResultResolvers<ContextType>;
  EraseHouseholdResult?: EraseHouseholdResultResolvers<ContextType>;
  EraseMeResult?: EraseMeResultResolvers<ContextType>;
  ErasedPayload?: ErasedPayloadResolvers<ContextType>;
  ErasureAsked?: ErasureAskedResolvers<ContextType>;
  EstimatedCost?: EstimatedCostResolvers<ContextType>;
  Exclusion?: ExclusionResolvers<ContextType>;
  Exemption?: ExemptionResolvers<ContextType>;
  ExemptionNote?: ExemptionNoteResolvers<ContextType>;
  ExemptionPayload?: ExemptionPayloadResolvers<ContextType>;
  ExemptionRefused?: ExemptionRefusedResolvers<ContextType>;
  Fairness?: FairnessResolvers<ContextType>;
  Feed?: FeedResolvers<ContextType>;
  FeedAddressPayload?: FeedAddressPayloadResolvers<ContextType>;
  FieldChange?: FieldChangeResolvers<ContextType>;
  FinishTaskResult?: FinishTaskResultResolvers<ContextType>;
  Food?: FoodResolvers<ContextType>;
  FoodMeasure?: FoodMeasureResolvers<ContextType>;
  ForTheOtherHome?: ForTheOtherHomeResolvers<ContextType>;
  FreezerStock?: FreezerStockResolvers<ContextType>;
  GiveUpHomeResult?: GiveUpHomeResultResolvers<ContextType>;
  HandOverCoordinationResult?: HandOverCoordinationResultResolvers<ContextType>;
  HandTaskResult?: HandTaskResultResolvers<ContextType>;
  Handover?: HandoverResolvers<ContextType>;
  HandoverPayload?: HandoverPayloadResolvers<ContextType>;
  HelperNotFound?: HelperNotFoundResolvers<ContextType>;
  HoldingPoint?: HoldingPointResolvers<ContextType>;
  Household?: HouseholdResolvers<ContextType>;
  HouseholdNotFound?: HouseholdNotFoundResolvers<ContextType>;
  HouseholdPayload?: HouseholdPayloadResolvers<ContextType>;
  HouseholdsLeft?: HouseholdsLeftResolvers<ContextType>;
  InputIssue?: InputIssueResolvers<ContextType>;
  InvalidInput?: InvalidInputResolvers<ContextType>;
  Invitation?: InvitationResolvers<ContextType>;
  InvitationClosed?: InvitationClosedResolvers<ContextType>;
  InvitationNotFound?: InvitationNotFoundResolvers<ContextType>;
  InvitationOffer?: InvitationOfferResolvers<ContextType>;
  InvitationPayload?: InvitationPayloadResolvers<ContextType>;
  InviteCarerResult?: InviteCarerResultResolvers<ContextType>;
  InviteHomeResult?: InviteHomeResultResolvers<ContextType>;
  ItemDifference?: ItemDifferenceResolvers<ContextType>;
  ItemHolding?: ItemHoldingResolvers<ContextType>;
  KeepOwnRulesResult?: KeepOwnRulesResultResolvers<ContextType>;
  KeyReused?: KeyReusedResolvers<ContextType>;
  Kitchen?: KitchenResolvers<ContextType>;
  KitchenPayload?: KitchenPayloadResolvers<ContextType>;
  LabelCheck?: LabelCheckResolvers<ContextType>;
  LabelDeclaration?: LabelDeclarationResolvers<ContextType>;
  LabelExemption?: LabelExemptionResolvers<ContextType>;
  LabelKind?: LabelKindResolvers<ContextType>;
  LabelLaw?: LabelLawResolvers<ContextType>;
  LabelLawClass?: LabelLawClassResolvers<ContextType>;
  LabelLawMember?: LabelLawMemberResolvers<ContextType>;
  LabelsUnread?: LabelsUnreadResolvers<ContextType>;
  LastAdministrator?: LastAdministratorResolvers<ContextType>;
  LastCoordinator?: LastCoordinatorResolvers<ContextType>;
  LeaveHouseholdPayload?: LeaveHouseholdPayloadResolvers<ContextType>;
  LeaveHouseholdResult?: LeaveHouseholdResultResolvers<ContextType>;
  Leftover?: LeftoverResolvers<ContextType>;
  LivesHereAlready?: LivesHereAlreadyResolvers<ContextType>;
  LivesInTwoHomes?: LivesInTwoHomesResolvers<ContextType>;
  LoadCalendarResult?: LoadCalendarResultResolvers<ContextType>;
  LoadRuleSetPayload?: LoadRuleSetPayloadResolvers<ContextType>;
  LoadRuleSetResult?: LoadRuleSetResultResolvers<ContextType>;
  LocalDate?: GraphQLScalarType;
  LocalTime?: GraphQLScalarType;
  MarkPackedResult?: MarkPackedResultResolvers<ContextType>;
  Me?: MeResolvers<ContextType>;
  MendWeekResult?: MendWeekResultResolvers<ContextType>;
  MendedBox?: MendedBoxResolvers<ContextType>;
  MendedItem?: MendedItemResolvers<ContextType>;
  MendingOffer?: MendingOfferResolvers<ContextType>;
  MissingFact?: MissingFactResolvers<ContextType>;
  MissingFigure?: MissingFigureResolvers<ContextType>;
  Mutation?: MutationResolvers<ContextType>;
  NeedSource?: NeedSourceResolvers<ContextType>;
  NeedsInputs?: NeedsInputsResolvers<ContextType>;
  NoSchool?: NoSchoolResolvers<ContextType>;
  NoWeekWithDish?: NoWeekWithDishResolvers<ContextType>;
  Node?: NodeResolvers<ContextType>;
  NotAppointed?: NotAppointedResolvers<ContextType>;
  NotPermitted?: NotPermittedResolvers<ContextType>;
  NothingThere?: NothingThereResolvers<ContextType>;
  NutrientAmount?: NutrientAmountResolvers<ContextType>;
  NutrientDerivation?: NutrientDerivationResolvers<ContextType>;
  NutrientPart?: NutrientPartResolvers<ContextType>;
  OnlyHome?: OnlyHomeResolvers<ContextType>;
  OutsideTerm?: OutsideTermResolvers<ContextType>;
  OwnRulesPayload?: OwnRulesPayloadResolvers<ContextType>;
  PackingTime?: PackingTimeResolvers<ContextType>;
  PageInfo?: PageInfoResolvers<ContextType>;
  Person?: PersonResolvers<ContextType>;
  PersonNotFound?: PersonNotFoundResolvers<ContextType>;
  PinItemResult?: PinItemResultResolvers<ContextType>;
  PlaceVerdict?: PlaceVerdictResolvers<ContextType>;
  PlanCertificate?: PlanCertificateResolvers<ContextType>;
  PlanOrigin?: PlanOriginResolvers<ContextType>;
  PlanProgress?: PlanProgressResolvers<ContextType>;
  PlanQueued?: PlanQueuedResolvers<ContextType>;
  PlanWeekInBackgroundResult?: PlanWeekInBackgroundResultResolvers<ContextType>;
  PlanWeekResult?: PlanWeekResultResolvers<ContextType>;
  PrepSession?: PrepSessionResolvers<ContextType>;
  PrepTime?: PrepTimeResolvers<ContextType>;
  PriceOfChange?: PriceOfChangeResolvers<ContextType>;
  PriceOfDishResult?: PriceOfDishResultResolvers<ContextType>;
  PricedAlternative?: PricedAlternativeResolvers<ContextType>;
  ProcessingClass?: ProcessingClassResolvers<ContextType>;
  ProposalMoved?: ProposalMovedResolvers<ContextType>;
  ProposalOpen?: ProposalOpenResolvers<ContextType>;
  ProposalSettled?: ProposalSettledResolvers<ContextType>;
  ProposeResidenceChangeResult?: ProposeResidenceChangeResultResolvers<ContextType>;
  ProposedDay?: ProposedDayResolvers<ContextType>;
  ProposedMinutes?: ProposedMinutesResolvers<ContextType>;
  ProposedSession?: ProposedSessionResolvers<ContextType>;
  Query?: QueryResolvers<ContextType>;
  ReadyUse?: ReadyUseResolvers<ContextType>;
  RecordAllergyResult?: RecordAllergyResultResolvers<ContextType>;
  RecordExemptionResult?: RecordExemptionResultResolvers<ContextType>;
  RecordLabelResult?: RecordLabelResultResolvers<ContextType>;
  RegisterSchoolResult?: RegisterSchoolResultResolvers<ContextType>;
  RelaxHouseRuleResult?: RelaxHouseRuleResultResolvers<ContextType>;
  ReleaseTaskResult?: ReleaseTaskResultResolvers<ContextType>;
  Reminder?: ReminderResolvers<ContextType>;
  RemoveAllergyResult?: RemoveAllergyResultResolvers<ContextType>;
  RemoveCarerResult?: RemoveCarerResultResolvers<ContextType>;
  RemoveOwnDishResult?: RemoveOwnDishResultResolvers<ContextType>;
  RemoveOwnFoodResult?: RemoveOwnFoodResultResolvers<ContextType>;
  RemoveSchoolDayResult?: RemoveSchoolDayResultResolvers<ContextType>;
  RemoveTermResult?: RemoveTermResultResolvers<ContextType>;
  RenameMePayload?: RenameMePayloadResolvers<ContextType>;
  RenameMeResult?: RenameMeResultResolvers<ContextType>;
  RenewFeedAddressResult?: RenewFeedAddressResultResolvers<ContextType>;
  ReportAbsenceResult?: ReportAbsenceResultResolvers<ContextType>;
  ReportDisruptionResult?: ReportDisruptionResultResolvers<ContextType>;
  ReportReturnedResult?: ReportReturnedResultResolvers<ContextType>;
  ResidenceDay?: ResidenceDayResolvers<ContextType>;
  ResidencePattern?: ResidencePatternResolvers<ContextType>;
  ResidencePayload?: ResidencePayloadResolvers<ContextType>;
  ResidenceProposal?: ResidenceProposalResolvers<ContextType>;
  Retention?: RetentionResolvers<ContextType>;
  ReturnedPayload?: ReturnedPayloadResolvers<ContextType>;
  RevisionPassed?: RevisionPassedResolvers<ContextType>;
  RotaPayload?: RotaPayloadResolvers<ContextType>;
  RotaProposal?: RotaProposalResolvers<ContextType>;
  RotaSession?: RotaSessionResolvers<ContextType>;
  Rule?: RuleResolvers<ContextType>;
  RuleChange?: RuleChangeResolvers<ContextType>;
  RuleCount?: RuleCountResolvers<ContextType>;
  RuleFinding?: RuleFindingResolvers<ContextType>;
  RuleFindingPlace?: RuleFindingPlaceResolvers<ContextType>;
  RuleNotice?: RuleNoticeResolvers<ContextType>;
  RuleObeyed?: RuleObeyedResolvers<ContextType>;
  RuleOrigin?: RuleOriginResolvers<ContextType>;
  RuleSet?: RuleSetResolvers<ContextType>;
  RuleSetCheck?: RuleSetCheckResolvers<ContextType>;
  RuleSetCheckResult?: RuleSetCheckResultResolvers<ContextType>;
  RuleSetCounts?: RuleSetCountsResolvers<ContextType>;
  RuleSetDifference?: RuleSetDifferenceResolvers<ContextType>;
  RuleSetVersion?: RuleSetVersionResolvers<ContextType>;
  SaveOwnDishPayload?: SaveOwnDishPayloadResolvers<ContextType>;
  SaveOwnDishResult?: SaveOwnDishResultResolvers<ContextType>;
  SaveOwnFoodPayload?: SaveOwnFoodPayloadResolvers<ContextType>;
  SaveOwnFoodResult?: SaveOwnFoodResultResolvers<ContextType>;
  School?: SchoolResolvers<ContextType>;
  SchoolClass?: SchoolClassResolvers<ContextType>;
  SchoolConnection?: SchoolConnectionResolvers<ContextType>;
  SchoolDay?: SchoolDayResolvers<ContextType>;
  SchoolNotFound?: SchoolNotFoundResolvers<ContextType>;
  SchoolPayload?: SchoolPayloadResolvers<ContextType>;
  SchoolProvision?: SchoolProvisionResolvers<ContextType>;
  SchoolTerm?: SchoolTermResolvers<ContextType>;
  Season?: SeasonResolvers<ContextType>;
  SessionDifference?: SessionDifferenceResolvers<ContextType>;
  SessionTiming?: SessionTimingResolvers<ContextType>;
  SetAvailabilityResult?: SetAvailabilityResultResolvers<ContextType>;
  SetBoxKitResult?: SetBoxKitResultResolvers<ContextType>;
  SetDutiesResult?: SetDutiesResultResolvers<ContextType>;
  SetEnergyMethodResult?: SetEnergyMethodResultResolvers<ContextType>;
  SetEquipmentResult?: SetEquipmentResultResolvers<ContextType>;
  SetFacilityResult?: SetFacilityResultResolvers<ContextType>;
  SetHotDaysResult?: SetHotDaysResultResolvers<ContextType>;
  SetKeepsOutResult?: SetKeepsOutResultResolvers<ContextType>;
  SetLeftoversResult?: SetLeftoversResultResolvers<ContextType>;
  SetPrepTimesResult?: SetPrepTimesResultResolvers<ContextType>;
  SetResidencePatternResult?: SetResidencePatternResultResolvers<ContextType>;
  SetSchoolDayResult?: SetSchoolDayResultResolvers<ContextType>;
  SetSchoolProvisionPayload?: SetSchoolProvisionPayloadResolvers<ContextType>;
  SetSchoolProvisionResult?: SetSchoolProvisionResultResolvers<ContextType>;
  SetStockResult?: SetStockResultResolvers<ContextType>;
  SetTermResult?: SetTermResultResolvers<ContextType>;
  SharingGain?: SharingGainResolvers<ContextType>;
  ShoppingDifference?: ShoppingDifferenceResolvers<ContextType>;
  ShoppingLine?: ShoppingLineResolvers<ContextType>;
  ShoppingLinePayload?: ShoppingLinePayloadResolvers<ContextType>;
  SourcedFigure?: SourcedFigureResolvers<ContextType>;
  SpareDish?: SpareDishResolvers<ContextType>;
  SpareUse?: SpareUseResolvers<ContextType>;
  StillInUse?: StillInUseResolvers<ContextType>;
  Stock?: StockResolvers<ContextType>;
  Subscription?: SubscriptionResolvers<ContextType>;
  SwapItemResult?: SwapItemResultResolvers<ContextType>;
  SwapRefused?: SwapRefusedResolvers<ContextType>;
  TakeTaskResult?: TakeTaskResultResolvers<ContextType>;
  Task?: TaskResolvers<ContextType>;
  TaskDifference?: TaskDifferenceResolvers<ContextType>;
  TaskHeld?: TaskHeldResolvers<ContextType>;
  TaskNotHeld?: TaskNotHeldResolvers<ContextType>;
  TaskPayload?: TaskPayloadResolvers<ContextType>;
  TickShoppingLineResult?: TickShoppingLineResultResolvers<ContextType>;
  UndoTaskResult?: UndoTaskResultResolvers<ContextType>;
  UnpinItemResult?: UnpinItemResultResolvers<ContextType>;
  UpperLevel?: UpperLevelResolvers<ContextType>;
  UserError?: UserErrorResolvers<ContextType>;
  Verdicts?: VerdictsResolvers<ContextType>;
  VerdictsResult?: VerdictsResultResolvers<ContextType>;
  WayOut?: WayOutResolvers<ContextType>;
  WayOutChange?: WayOutChangeResolvers<ContextType>;
  Week?: WeekResolvers<ContextType>;
  WeekAgreed?: WeekAgreedResolvers<ContextType>;
  WeekDifference?: WeekDifferenceResolvers<ContextType>;
  WeekInfeasible?: WeekInfeasibleResolvers<ContextType>;
  WeekPayload?: WeekPayloadResolvers<ContextType>;
  WeekPlan?: WeekPlanResolvers<ContextType>;
  WishTotals?: WishTotalsResolvers<ContextType>;
  WithdrawDisruptionResult?: WithdrawDisruptionResultResolvers<ContextType>;
  WithdrawErasurePayload?: WithdrawErasurePayloadResolvers<ContextType>;
  WithdrawErasureResult?: WithdrawErasureResultResolvers<ContextType>;
  WithdrawInvitationPayload?: WithdrawInvitationPayloadResolvers<ContextType>;
  WithdrawInvitationResult?: WithdrawInvitationResultResolvers<ContextType>;
  WithdrawResidenceChangeResult?: WithdrawResidenceChangeResultResolvers<ContextType>;
  WithdrawRuleSetResult?: WithdrawRuleSetResultResolvers<ContextType>;
  WorkUsed?: WorkUsedResolvers<ContextType>;
  WriteHandoverResult?: WriteHandoverResultResolvers<ContextType>;
};

export type DirectiveResolvers<ContextType = GraphqlContext> = {
  cost?: CostDirectiveResolver<any, any, ContextType>;
  listSize?: ListSizeDirectiveResolver<any, any, ContextType>;
};
