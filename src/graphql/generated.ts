import type { GraphQLResolveInfo, GraphQLScalarType, GraphQLScalarTypeConfig } from 'graphql';
import type { MeNode as MeRow, ChildNode as ChildRow, EnrolmentNode as EnrolmentRow, PlanNode as WeekPlanRow, BoxNode as BoxRow, BoxItemNode as BoxItemRow, BoxItemNode as BoxItemNoteRow, BatchNode as BatchRow, BatchFeedNode as BatchFeedRow, TaskNode as TaskRow, CautionNode as CautionRow, ConflictNode as ConflictRow, NoSchoolNode as NoSchoolRow, WeekPayloadNode as WeekPayloadRow, LabelsUnreadNode as LabelsUnreadRow } from './rows.js';
import type { PersonRow as PersonRow, HouseholdRow as HouseholdRow, HouseholdRow as KitchenRow, StockRow as StockRow, LeftoverRow as LeftoverRow, FreezerStockRow as FreezerStockRow, LabelCheckRow as LabelCheckRow, SchoolRow as SchoolRow, SchoolClassRow as SchoolClassRow } from '../database/household.js';
import type { RuleSetRow as RuleSetRow } from '../database/school.js';
import type { Rule as RuleRow } from '../../shared/rule-set.js';
import type { Food as FoodRow, Base as BaseRow } from '../../shared/catalogue.js';
import type { DerivedDish as DishRow } from '../domain/catalogue/derive.js';
import type { WeekRow as WeekRow, ShoppingLineRow as ShoppingLineRow } from '../database/week.js';
import type { Alternative as AlternativeRow } from '../domain/planner/alternatives.js';
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

export type AgreeWeekInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
  readonly weekId: Scalars['ID']['input'];
};

export type AgreeWeekResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | WeekAgreed | WeekPayload;

export type Allergy = {
  readonly __typename?: 'Allergy';
  readonly allergen?: Maybe<Scalars['String']['output']>;
  readonly avoid: Avoid;
  readonly foodKind?: Maybe<Scalars['String']['output']>;
};

export type AllergyInput = {
  /** An allergen or a family of them (TREE_NUTS, GLUTEN_CEREALS, SHELLFISH). Give this or foodKind. */
  readonly allergen?: InputMaybe<Scalars['String']['input']>;
  readonly avoid: Avoid;
  /** One food: kiwi, chickpea. */
  readonly foodKind?: InputMaybe<Scalars['String']['input']>;
};

export type Alternative = {
  readonly __typename?: 'Alternative';
  readonly dish: Dish;
  readonly grams: Scalars['Float']['output'];
  readonly pieces?: Maybe<Scalars['Float']['output']>;
  /** Points the week would lose by it; lower is better. */
  readonly pointsMore: Scalars['Int']['output'];
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
  /** The day it is made counts as the first. */
  readonly keepsChilledDays: Scalars['Int']['output'];
  readonly keepsFrozenDays?: Maybe<Scalars['Int']['output']>;
  readonly key: Scalars['String']['output'];
  readonly kind: Scalars['String']['output'];
  readonly name: Scalars['String']['output'];
  readonly passiveMinutes: Scalars['Float']['output'];
  readonly perBatchHandsOnMinutes: Scalars['Float']['output'];
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

export type BatchFeed = {
  readonly __typename?: 'BatchFeed';
  readonly children: ReadonlyArray<Child>;
  readonly date: Scalars['LocalDate']['output'];
  readonly grams: Scalars['Float']['output'];
};

/** What leaves the house with a child on a school day. */
export type Box = Node & {
  readonly __typename?: 'Box';
  readonly child: Child;
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

/** The box is packed or eaten; it does not move. */
export type BoxClosed = UserError & {
  readonly __typename?: 'BoxClosed';
  readonly message: Scalars['String']['output'];
  readonly state: BoxState;
};

export type BoxItem = Node & {
  readonly __typename?: 'BoxItem';
  readonly allergens: ReadonlyArray<Scalars['String']['output']>;
  readonly breakKey: Scalars['String']['output'];
  /** Null when an ingredient's figure is missing. */
  readonly carbohydrateGrams?: Maybe<Scalars['Float']['output']>;
  readonly cuts: ReadonlyArray<Cut>;
  readonly dish: Dish;
  readonly energyKcal: Scalars['Float']['output'];
  readonly grams: Scalars['Float']['output'];
  /** CHILLED, FLASK, AMBIENT, NOT_CONTROLLED or REHEATED_AT_SCHOOL. */
  readonly holdingCase: Scalars['String']['output'];
  readonly id: Scalars['ID']['output'];
  /** Foods whose label must be read and clear before the box is packed; null for the child's other home. */
  readonly labelsToRead?: Maybe<ReadonlyArray<Food>>;
  /** Null for the child's other home. */
  readonly note?: Maybe<BoxItemNote>;
  readonly pieces?: Maybe<Scalars['Float']['output']>;
  readonly pinned: Scalars['Boolean']['output'];
  /** Counts items of the same slot in a break, from 0. */
  readonly place: Scalars['Int']['output'];
  readonly served: ServedWarmth;
  readonly slot: Slot;
};

export type BoxItemNote = {
  readonly __typename?: 'BoxItemNote';
  /** Which compartment of the box, from 0; -1 is the flask. */
  readonly compartment: Scalars['Int']['output'];
  readonly holdingLimitMinutes: Scalars['Int']['output'];
  /** Minutes from leaving home to the end of the break. */
  readonly holdingMinutes: Scalars['Int']['output'];
  readonly why: ReadonlyArray<Scalars['String']['output']>;
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

export type BoxState =
  /** Something changed and the box no longer passes; replan before packing. */
  | 'BLOCKED'
  | 'EATEN'
  | 'PACKED'
  | 'PLANNED';

/** A person in their role in one household. */
export type Carer = {
  readonly __typename?: 'Carer';
  readonly person: Person;
  readonly role: Role;
  readonly since: Scalars['DateTime']['output'];
};

export type Caution = {
  readonly __typename?: 'Caution';
  readonly child?: Maybe<Child>;
  readonly date?: Maybe<Scalars['LocalDate']['output']>;
  readonly kind: Scalars['String']['output'];
  readonly text: Scalars['String']['output'];
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
  readonly id: Scalars['ID']['output'];
  readonly minutesToEat: Scalars['Int']['output'];
  readonly name: Scalars['String']['output'];
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
  /** No cut makes it safe below that age. */
  readonly never: Scalars['Boolean']['output'];
  readonly source: Scalars['String']['output'];
  /** Holds on days when the child is younger. */
  readonly underAgeYears: Scalars['Int']['output'];
};

export type ClassBreak = {
  readonly __typename?: 'ClassBreak';
  /** Part of the day's energy, 0 to 1. */
  readonly energyShare: Scalars['Float']['output'];
  readonly key: Scalars['String']['output'];
  readonly minutes: Scalars['Int']['output'];
  readonly name: Scalars['String']['output'];
  readonly slots: ReadonlyArray<Slot>;
  readonly startsAt: Scalars['LocalTime']['output'];
};

export type CompartmentInput = {
  readonly leakProof: Scalars['Boolean']['input'];
  /** 50 to 2000. */
  readonly ml: Scalars['Int']['input'];
};

export type Conflict = {
  readonly __typename?: 'Conflict';
  readonly child?: Maybe<Child>;
  readonly date?: Maybe<Scalars['LocalDate']['output']>;
  readonly kind: Scalars['String']['output'];
  readonly session?: Maybe<Scalars['String']['output']>;
  readonly text: Scalars['String']['output'];
  readonly wayOut: Scalars['String']['output'];
};

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

export type CreateHouseholdResult = CreateHouseholdPayload | InvalidInput | KeyReused;

export type Cut = {
  readonly __typename?: 'Cut';
  readonly cut: Scalars['String']['output'];
  readonly food: Scalars['String']['output'];
  readonly source: Scalars['String']['output'];
};

export type DailyNeeds = {
  readonly __typename?: 'DailyNeeds';
  readonly calciumMg: Scalars['Float']['output'];
  readonly energyKcal: Scalars['Int']['output'];
  /** NASEM_2023 from body size, or DGA_TABLE by age and sex where body size is not known to this household. */
  readonly energyMethod: Scalars['String']['output'];
  readonly fibreGrams: Scalars['Float']['output'];
  readonly freeSugarMaxGrams: Scalars['Float']['output'];
  readonly ironMg: Scalars['Float']['output'];
  readonly proteinGrams: Scalars['Float']['output'];
  readonly saturatedFatMaxGrams: Scalars['Float']['output'];
  readonly sodiumMaxMg: Scalars['Float']['output'];
  readonly vitaminARaeUg: Scalars['Float']['output'];
  readonly vitaminCMg: Scalars['Float']['output'];
  readonly zincMg: Scalars['Float']['output'];
};

export type Dish = Node & {
  readonly __typename?: 'Dish';
  /** Derived from every ingredient, bases included. */
  readonly allergens: ReadonlyArray<Scalars['String']['output']>;
  readonly bases: ReadonlyArray<DishBase>;
  readonly costMinor: Scalars['Int']['output'];
  readonly cuisine: Scalars['String']['output'];
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
  readonly pieceName?: Maybe<Scalars['String']['output']>;
  /** Grams of the reference portion. */
  readonly portionGrams: Scalars['Float']['output'];
  /** Pieces in the reference portion; null when it is not counted in pieces. */
  readonly portionPieces?: Maybe<Scalars['Float']['output']>;
  readonly served: ServedWarmth;
  readonly slots: ReadonlyArray<Slot>;
  readonly steps: ReadonlyArray<DishStep>;
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
  readonly grams: Scalars['Float']['output'];
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

export type Facility =
  | 'NEITHER'
  /** Boxes are kept cold until they are eaten. */
  | 'REFRIGERATOR'
  /** Food can be heated before it is eaten. */
  | 'REHEATING';

export type FinishTaskInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
  readonly taskId: Scalars['ID']['input'];
};

export type FinishTaskResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | TaskHeld | TaskPayload;

/** One row of a composition table, per 100 g edible. */
export type Food = {
  readonly __typename?: 'Food';
  readonly allergens: ReadonlyArray<Scalars['String']['output']>;
  readonly group: Scalars['String']['output'];
  readonly key: Scalars['String']['output'];
  readonly kind: Scalars['String']['output'];
  readonly name: Scalars['String']['output'];
  /** USDA Standard Reference number; null for water. */
  readonly ndb?: Maybe<Scalars['String']['output']>;
  /** Only what the table knows: a nutrient that is not listed is missing, not zero. */
  readonly nutrients: ReadonlyArray<NutrientAmount>;
  /** Has a label that a carer of a child who avoids traces has to read. */
  readonly packaged: Scalars['Boolean']['output'];
  readonly refusePercent: Scalars['Float']['output'];
};

export type FreezerStock = Node & {
  readonly __typename?: 'FreezerStock';
  readonly base: Base;
  readonly frozenOn: Scalars['LocalDate']['output'];
  readonly grams: Scalars['Int']['output'];
  readonly id: Scalars['ID']['output'];
  readonly useBy: Scalars['LocalDate']['output'];
};

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
  readonly carers: ReadonlyArray<Carer>;
  readonly children: ReadonlyArray<Child>;
  /** ISO 4217 code; money is in its minor unit. */
  readonly currency: Scalars['String']['output'];
  readonly id: Scalars['ID']['output'];
  /** Allergens that never enter this kitchen. */
  readonly keepsOut: ReadonlyArray<Scalars['String']['output']>;
  readonly kitchen: Kitchen;
  readonly myRole: Role;
  readonly name: Scalars['String']['output'];
  /** Goes up with every change of kitchen, children or stock. */
  readonly revision: Scalars['Int']['output'];
  /** IANA name: Europe/London. */
  readonly timeZone: Scalars['String']['output'];
  readonly unitSystem: UnitSystem;
  /** The week that holds this day; null when nothing has been planned for it. */
  readonly week?: Maybe<Week>;
  readonly weekStart: Weekday;
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

export type LabelKind = {
  readonly __typename?: 'LabelKind';
  readonly kind: Scalars['String']['output'];
  readonly says: LabelSays;
};

export type LabelKindInput = {
  readonly kind: Scalars['String']['input'];
  readonly says: LabelSays;
};

export type LabelSays =
  | 'CLEAR'
  | 'CONTAINS'
  | 'MAY_CONTAIN';

/** Labels that must be read and clear first, because the child avoids traces. */
export type LabelsUnread = UserError & {
  readonly __typename?: 'LabelsUnread';
  readonly foods: ReadonlyArray<Food>;
  readonly message: Scalars['String']['output'];
};

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

export type LoadRuleSetInput = {
  /** The document as JSON text, format noonpail-rule-set/1, at most 200 kB. */
  readonly document: Scalars['String']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly schoolClassId?: InputMaybe<Scalars['ID']['input']>;
  /** The school it is for; for a class, give schoolClassId as well. */
  readonly schoolId: Scalars['ID']['input'];
  /** The version of this rule set that the administrator saw; 0 for a new one. */
  readonly seenRevision: Scalars['Int']['input'];
};

export type LoadRuleSetPayload = {
  readonly __typename?: 'LoadRuleSetPayload';
  readonly ruleSet: RuleSet;
};

export type LoadRuleSetResult = InvalidInput | KeyReused | LoadRuleSetPayload | NotAppointed | RevisionPassed | SchoolNotFound;

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
  /** Households they belong to, the oldest membership first. */
  readonly households: ReadonlyArray<Household>;
  readonly person: Person;
};

export type MissingFigure = {
  readonly __typename?: 'MissingFigure';
  readonly food: Scalars['String']['output'];
  readonly nutrient: Scalars['String']['output'];
};

export type Mutation = {
  readonly __typename?: 'Mutation';
  /** Settle the week. It can still be changed by what happens: absence, a swap by hand. */
  readonly agreeWeek: AgreeWeekResult;
  /** Add a child to a household. */
  readonly createChild: CreateChildResult;
  /** Start a household with a usual kitchen and usual prep times; the caller becomes its coordinator. */
  readonly createHousehold: CreateHouseholdResult;
  /** Join a child to a class of a school from a day on. */
  readonly enrolChild: EnrolChildResult;
  /** Say a task is done. */
  readonly finishTask: FinishTaskResult;
  /** Load a rule set document as a new version. Only for the school's or jurisdiction's administrator. A version in force is never edited. */
  readonly loadRuleSet: LoadRuleSetResult;
  /** Record that a box was packed. */
  readonly markPacked: MarkPackedResult;
  /** Keep an item as it is through every replan. */
  readonly pinItem: PinItemResult;
  /** Plan the week that holds a day. Pinned, packed and cooked things stay. */
  readonly planWeek: PlanWeekResult;
  /** Plan the week thoroughly, with ten times the search, as a job; planProgress and weekChanged tell how it goes. */
  readonly planWeekInBackground: PlanWeekInBackgroundResult;
  /** Record what a label says. Needed before a box may be marked packed for a child who avoids traces. */
  readonly recordLabel: RecordLabelResult;
  /** Let a house rule rest for one day. Safety, school rules and the kitchen's limits cannot be relaxed. */
  readonly relaxHouseRule: RelaxHouseRuleResult;
  /** A child stays home: the day's box falls away and the rest is replanned with the fewest changes. */
  readonly reportAbsence: ReportAbsenceResult;
  /** Set how many of each piece of equipment the kitchen has; kinds not named stay. */
  readonly setEquipment: SetEquipmentResult;
  /** Say what the family meals leave; replaces the list. */
  readonly setLeftovers: SetLeftoversResult;
  /** Set the minutes of prep sessions, by weekday or for one date. */
  readonly setPrepTimes: SetPrepTimesResult;
  /** Say what is in the cupboard. Foods not named stay as they are; 0 grams takes one out. */
  readonly setStock: SetStockResult;
  /** Put another dish in an item's place and lay the week out again. */
  readonly swapItem: SwapItemResult;
  /** Take a task. Exactly one carer holds it. */
  readonly takeTask: TakeTaskResult;
  readonly unpinItem: UnpinItemResult;
};


export type MutationAgreeWeekArgs = {
  input: AgreeWeekInput;
};


export type MutationCreateChildArgs = {
  input: CreateChildInput;
};


export type MutationCreateHouseholdArgs = {
  input: CreateHouseholdInput;
};


export type MutationEnrolChildArgs = {
  input: EnrolChildInput;
};


export type MutationFinishTaskArgs = {
  input: FinishTaskInput;
};


export type MutationLoadRuleSetArgs = {
  input: LoadRuleSetInput;
};


export type MutationMarkPackedArgs = {
  input: MarkPackedInput;
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


export type MutationRecordLabelArgs = {
  input: RecordLabelInput;
};


export type MutationRelaxHouseRuleArgs = {
  input: RelaxHouseRuleInput;
};


export type MutationReportAbsenceArgs = {
  input: ReportAbsenceInput;
};


export type MutationSetEquipmentArgs = {
  input: SetEquipmentInput;
};


export type MutationSetLeftoversArgs = {
  input: SetLeftoversInput;
};


export type MutationSetPrepTimesArgs = {
  input: SetPrepTimesInput;
};


export type MutationSetStockArgs = {
  input: SetStockInput;
};


export type MutationSwapItemArgs = {
  input: SwapItemInput;
};


export type MutationTakeTaskArgs = {
  input: TakeTaskInput;
};


export type MutationUnpinItemArgs = {
  input: UnpinItemInput;
};

/** A child who wakes here that week has no school. */
export type NoSchool = UserError & {
  readonly __typename?: 'NoSchool';
  readonly children: ReadonlyArray<Child>;
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

/** No child of this household has a school day then. */
export type OutsideTerm = UserError & {
  readonly __typename?: 'OutsideTerm';
  readonly message: Scalars['String']['output'];
  /** The next school day of any of the children; null when no term is known. */
  readonly nextSchoolDay?: Maybe<Scalars['LocalDate']['output']>;
  readonly weekStart: Scalars['LocalDate']['output'];
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

export type PinItemInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly itemId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type PinItemResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | WeekPayload;

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

export type Query = {
  readonly __typename?: 'Query';
  /** Dishes that could take an item's place with the whole week still passing every rule, best first; found by replanning each. At most five. */
  readonly alternatives: ReadonlyArray<Alternative>;
  readonly dish?: Maybe<Dish>;
  /** All dishes by key, those for one slot when given. */
  readonly dishes: DishConnection;
  /** Null when there is none or it is not yours. */
  readonly household?: Maybe<Household>;
  /** The person behind the token. */
  readonly me: Me;
  /** Anything by its ID; null when there is none or it is not yours to see. */
  readonly node?: Maybe<Node>;
  readonly school?: Maybe<School>;
  /** All schools by name. */
  readonly schools: SchoolConnection;
  /** The week of a household that holds a day; null when nothing has been planned for it. */
  readonly week?: Maybe<Week>;
};


export type QueryAlternativesArgs = {
  itemId: Scalars['ID']['input'];
};


export type QueryDishArgs = {
  key: Scalars['String']['input'];
};


export type QueryDishesArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first: Scalars['Int']['input'];
  slot?: InputMaybe<Slot>;
};


export type QueryHouseholdArgs = {
  id: Scalars['ID']['input'];
};


export type QueryNodeArgs = {
  id: Scalars['ID']['input'];
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

export type RelaxHouseRuleInput = {
  readonly date: Scalars['LocalDate']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly rule: HouseRule;
  readonly seenRevision: Scalars['Int']['input'];
};

export type RelaxHouseRuleResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

export type ReportAbsenceInput = {
  readonly childId: Scalars['ID']['input'];
  readonly date: Scalars['LocalDate']['input'];
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly reason: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type ReportAbsenceResult = BoxClosed | ChildNotFound | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | OutsideTerm | RevisionPassed | WeekInfeasible | WeekPayload;

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

export type Rule = {
  readonly __typename?: 'Rule';
  /** The id inside its document. */
  readonly key: Scalars['String']['output'];
  /** EXCLUDE, ONLY, FREQUENCY, AMOUNT, SHARE, NUTRIENT, TOGETHER or SERVING. */
  readonly kind: Scalars['String']['output'];
  readonly level: RuleLevel;
  /** The sentence a family reads. */
  readonly says: Scalars['String']['output'];
  readonly source: Scalars['String']['output'];
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

export type RuleSet = Node & {
  readonly __typename?: 'RuleSet';
  /** False: a family's own copy that the school has not confirmed. */
  readonly confirmed: Scalars['Boolean']['output'];
  readonly id: Scalars['ID']['output'];
  readonly inForceFrom: Scalars['LocalDate']['output'];
  readonly inForceUntil?: Maybe<Scalars['LocalDate']['output']>;
  readonly key: Scalars['String']['output'];
  readonly layer: RuleLayer;
  readonly rules: ReadonlyArray<Rule>;
  readonly title: Scalars['String']['output'];
  readonly version: Scalars['Int']['output'];
};

export type School = Node & {
  readonly __typename?: 'School';
  readonly classes: ReadonlyArray<SchoolClass>;
  /** Holidays, early finishes and trip days. */
  readonly days: ReadonlyArray<SchoolDay>;
  readonly id: Scalars['ID']['output'];
  readonly jurisdiction?: Maybe<Scalars['String']['output']>;
  readonly name: Scalars['String']['output'];
  /** Rule sets that hold here, the newest version of each. */
  readonly ruleSets: ReadonlyArray<RuleSet>;
  readonly terms: ReadonlyArray<SchoolTerm>;
  readonly timeZone: Scalars['String']['output'];
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

export type SchoolTerm = {
  readonly __typename?: 'SchoolTerm';
  readonly firstDay: Scalars['LocalDate']['output'];
  readonly lastDay: Scalars['LocalDate']['output'];
  readonly name: Scalars['String']['output'];
};

export type ServedWarmth =
  | 'COLD'
  | 'EITHER'
  | 'WARM';

export type SetEquipmentInput = {
  readonly equipment: ReadonlyArray<EquipmentInput>;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type SetEquipmentResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

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

export type SetStockInput = {
  readonly entries: ReadonlyArray<StockEntryInput>;
  readonly householdId: Scalars['ID']['input'];
  readonly idempotencyKey: Scalars['String']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type SetStockResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

/** The best plan found with sharing switched off under the same limits, beside this one. */
export type SharingGain = {
  readonly __typename?: 'SharingGain';
  /** Null when the kitchen has no time for a week without sharing. */
  readonly handsOnMinutesAlone?: Maybe<Scalars['Float']['output']>;
  readonly handsOnMinutesShared: Scalars['Float']['output'];
  readonly savedMinutes?: Maybe<Scalars['Float']['output']>;
};

export type ShoppingLine = Node & {
  readonly __typename?: 'ShoppingLine';
  readonly costMinor: Scalars['Int']['output'];
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
};

export type Slot =
  | 'EXTRA'
  | 'FRUIT'
  | 'MAIN'
  | 'VEGETABLE';

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
  /** How far a plan of this household has come. */
  readonly planProgress: PlanProgress;
  /** The week each time it changes. */
  readonly weekChanged: Week;
};


export type SubscriptionPlanProgressArgs = {
  householdId: Scalars['ID']['input'];
};


export type SubscriptionWeekChangedArgs = {
  householdId: Scalars['ID']['input'];
};

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
  /** Which pair of hands, from 1. */
  readonly carer: Scalars['Int']['output'];
  readonly children: ReadonlyArray<Child>;
  readonly endsAt: Scalars['LocalTime']['output'];
  readonly equipment: ReadonlyArray<Scalars['String']['output']>;
  readonly forDates: ReadonlyArray<Scalars['LocalDate']['output']>;
  /** Allergens it handles that a child here avoids: safe things first, then clean boards. */
  readonly handles: ReadonlyArray<Scalars['String']['output']>;
  readonly handsFreeAt: Scalars['LocalTime']['output'];
  readonly handsOnMinutes: Scalars['Float']['output'];
  readonly id: Scalars['ID']['output'];
  /** BASE, FINISH, COOL, PACK or DEFROST. */
  readonly kind: Scalars['String']['output'];
  readonly passiveMinutes: Scalars['Float']['output'];
  /** weekend-, evening- or morning- and the date it happens. */
  readonly session: Scalars['String']['output'];
  readonly startsAt: Scalars['LocalTime']['output'];
  readonly state: WorkState;
  readonly takenBy?: Maybe<Person>;
  readonly text: Scalars['String']['output'];
};

/** Another carer has it, or it is done. */
export type TaskHeld = UserError & {
  readonly __typename?: 'TaskHeld';
  readonly holder?: Maybe<Person>;
  readonly message: Scalars['String']['output'];
  readonly state: WorkState;
};

export type TaskPayload = {
  readonly __typename?: 'TaskPayload';
  readonly task: Task;
};

export type UnitSystem =
  | 'METRIC'
  | 'US_CUSTOMARY';

export type UnpinItemInput = {
  readonly idempotencyKey: Scalars['String']['input'];
  readonly itemId: Scalars['ID']['input'];
  readonly seenRevision: Scalars['Int']['input'];
};

export type UnpinItemResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | WeekPayload;

/** An expected refusal. Select `... on UserError { message }` in every result: members may be added. */
export type UserError = {
  /** One sentence for the person: what is wrong and the way out. */
  readonly message: Scalars['String']['output'];
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

/** No week passes every rule. Each clash says what would make it possible. */
export type WeekInfeasible = UserError & {
  readonly __typename?: 'WeekInfeasible';
  readonly conflicts: ReadonlyArray<Conflict>;
  readonly message: Scalars['String']['output'];
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
  readonly createdAt: Scalars['DateTime']['output'];
  readonly id: Scalars['ID']['output'];
  readonly number: Scalars['Int']['output'];
  /** Seed and steps repeat the search; the hash names the problem it solved. */
  readonly origin: PlanOrigin;
  /** What cooking together saves; null when it was not compared. */
  readonly sharing?: Maybe<SharingGain>;
  readonly shopping: ReadonlyArray<ShoppingLine>;
  readonly state: PlanState;
  readonly tasks: ReadonlyArray<Task>;
  readonly wishes: WishTotals;
};


/** An immutable revision of the week's plan. */
export type WeekPlanBoxesArgs = {
  date?: InputMaybe<Scalars['LocalDate']['input']>;
};

export type Weekday =
  | 'FRIDAY'
  | 'MONDAY'
  | 'SATURDAY'
  | 'SUNDAY'
  | 'THURSDAY'
  | 'TUESDAY'
  | 'WEDNESDAY';

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

export type WorkState =
  | 'DONE'
  | 'OPEN'
  | 'TAKEN';



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
  AgreeWeekResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( WeekAgreed & { __typename: 'WeekAgreed' } )
    | ( WeekPayloadRow & { __typename: 'WeekPayload' } )
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
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
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
  FinishTaskResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( Omit<TaskHeld, 'holder'> & { holder?: Maybe<_RefType['Person']> } & { __typename: 'TaskHeld' } )
    | ( Omit<TaskPayload, 'task'> & { task: _RefType['Task'] } & { __typename: 'TaskPayload' } )
  ;
  LoadRuleSetResult:
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
    | ( Omit<WeekInfeasible, 'conflicts'> & { conflicts: ReadonlyArray<_RefType['Conflict']> } & { __typename: 'WeekInfeasible' } )
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
    | ( Omit<WeekInfeasible, 'conflicts'> & { conflicts: ReadonlyArray<_RefType['Conflict']> } & { __typename: 'WeekInfeasible' } )
    | ( WeekPayloadRow & { __typename: 'WeekPayload' } )
  ;
  RecordLabelResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<KitchenPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  RelaxHouseRuleResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<KitchenPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
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
    | ( Omit<WeekInfeasible, 'conflicts'> & { conflicts: ReadonlyArray<_RefType['Conflict']> } & { __typename: 'WeekInfeasible' } )
    | ( WeekPayloadRow & { __typename: 'WeekPayload' } )
  ;
  SetEquipmentResult:
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
  SetStockResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( Omit<KitchenPayload, 'household'> & { household: _RefType['Household'] } & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
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
  UnpinItemResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( WeekPayloadRow & { __typename: 'WeekPayload' } )
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
    | ( BoxBlocked & { __typename: 'BoxBlocked' } )
    | ( BoxClosed & { __typename: 'BoxClosed' } )
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( DishUnknown & { __typename: 'DishUnknown' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( LabelsUnreadRow & { __typename: 'LabelsUnread' } )
    | ( NoSchoolRow & { __typename: 'NoSchool' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( OutsideTerm & { __typename: 'OutsideTerm' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
    | ( Omit<SwapRefused, 'conflicts'> & { conflicts: ReadonlyArray<_RefType['Conflict']> } & { __typename: 'SwapRefused' } )
    | ( Omit<TaskHeld, 'holder'> & { holder?: Maybe<_RefType['Person']> } & { __typename: 'TaskHeld' } )
    | ( WeekAgreed & { __typename: 'WeekAgreed' } )
    | ( Omit<WeekInfeasible, 'conflicts'> & { conflicts: ReadonlyArray<_RefType['Conflict']> } & { __typename: 'WeekInfeasible' } )
  ;
};

/** Mapping between all available schema types and the resolvers types */
export type ResolversTypes = {
  AgreeWeekInput: AgreeWeekInput;
  AgreeWeekResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['AgreeWeekResult']>;
  Allergy: ResolverTypeWrapper<Allergy>;
  AllergyInput: AllergyInput;
  Alternative: ResolverTypeWrapper<AlternativeRow>;
  Avoid: Avoid;
  Base: ResolverTypeWrapper<BaseRow>;
  Batch: ResolverTypeWrapper<BatchRow>;
  BatchFeed: ResolverTypeWrapper<BatchFeedRow>;
  Boolean: ResolverTypeWrapper<Scalars['Boolean']['output']>;
  Box: ResolverTypeWrapper<BoxRow>;
  BoxBlocked: ResolverTypeWrapper<BoxBlocked>;
  BoxClosed: ResolverTypeWrapper<BoxClosed>;
  BoxItem: ResolverTypeWrapper<BoxItemRow>;
  BoxItemNote: ResolverTypeWrapper<BoxItemNoteRow>;
  BoxPacking: ResolverTypeWrapper<Omit<BoxPacking, 'packedBy'> & { packedBy?: Maybe<ResolversTypes['Person']> }>;
  BoxState: BoxState;
  Carer: ResolverTypeWrapper<Omit<Carer, 'person'> & { person: ResolversTypes['Person'] }>;
  Caution: ResolverTypeWrapper<CautionRow>;
  Child: ResolverTypeWrapper<ChildRow>;
  ChildNotFound: ResolverTypeWrapper<ChildNotFound>;
  ChokingHazard: ResolverTypeWrapper<ChokingHazard>;
  ClassBreak: ResolverTypeWrapper<ClassBreak>;
  CompartmentInput: CompartmentInput;
  Conflict: ResolverTypeWrapper<ConflictRow>;
  CreateChildInput: CreateChildInput;
  CreateChildPayload: ResolverTypeWrapper<Omit<CreateChildPayload, 'child' | 'household'> & { child: ResolversTypes['Child'], household: ResolversTypes['Household'] }>;
  CreateChildResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['CreateChildResult']>;
  CreateHouseholdInput: CreateHouseholdInput;
  CreateHouseholdPayload: ResolverTypeWrapper<Omit<CreateHouseholdPayload, 'household'> & { household: ResolversTypes['Household'] }>;
  CreateHouseholdResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['CreateHouseholdResult']>;
  Cut: ResolverTypeWrapper<Cut>;
  DailyNeeds: ResolverTypeWrapper<DailyNeeds>;
  DateTime: ResolverTypeWrapper<Scalars['DateTime']['output']>;
  Dish: ResolverTypeWrapper<DishRow>;
  DishBase: ResolverTypeWrapper<Omit<DishBase, 'base'> & { base: ResolversTypes['Base'] }>;
  DishConnection: ResolverTypeWrapper<Omit<DishConnection, 'nodes'> & { nodes: ReadonlyArray<ResolversTypes['Dish']> }>;
  DishIngredient: ResolverTypeWrapper<Omit<DishIngredient, 'food'> & { food: ResolversTypes['Food'] }>;
  DishStep: ResolverTypeWrapper<DishStep>;
  DishUnknown: ResolverTypeWrapper<DishUnknown>;
  EnrolChildInput: EnrolChildInput;
  EnrolChildPayload: ResolverTypeWrapper<Omit<EnrolChildPayload, 'child' | 'household'> & { child: ResolversTypes['Child'], household: ResolversTypes['Household'] }>;
  EnrolChildResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['EnrolChildResult']>;
  Enrolment: ResolverTypeWrapper<EnrolmentRow>;
  Equipment: ResolverTypeWrapper<Equipment>;
  EquipmentInput: EquipmentInput;
  Facility: Facility;
  FinishTaskInput: FinishTaskInput;
  FinishTaskResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['FinishTaskResult']>;
  Float: ResolverTypeWrapper<Scalars['Float']['output']>;
  Food: ResolverTypeWrapper<FoodRow>;
  FreezerStock: ResolverTypeWrapper<FreezerStockRow>;
  HouseRule: HouseRule;
  Household: ResolverTypeWrapper<HouseholdRow>;
  HouseholdNotFound: ResolverTypeWrapper<HouseholdNotFound>;
  ID: ResolverTypeWrapper<Scalars['ID']['output']>;
  InputIssue: ResolverTypeWrapper<InputIssue>;
  Int: ResolverTypeWrapper<Scalars['Int']['output']>;
  InvalidInput: ResolverTypeWrapper<InvalidInput>;
  KeyReused: ResolverTypeWrapper<KeyReused>;
  Kitchen: ResolverTypeWrapper<KitchenRow>;
  KitchenPayload: ResolverTypeWrapper<Omit<KitchenPayload, 'household'> & { household: ResolversTypes['Household'] }>;
  LabelCheck: ResolverTypeWrapper<LabelCheckRow>;
  LabelKind: ResolverTypeWrapper<LabelKind>;
  LabelKindInput: LabelKindInput;
  LabelSays: LabelSays;
  LabelsUnread: ResolverTypeWrapper<LabelsUnreadRow>;
  Leftover: ResolverTypeWrapper<LeftoverRow>;
  LeftoverInput: LeftoverInput;
  LoadRuleSetInput: LoadRuleSetInput;
  LoadRuleSetPayload: ResolverTypeWrapper<Omit<LoadRuleSetPayload, 'ruleSet'> & { ruleSet: ResolversTypes['RuleSet'] }>;
  LoadRuleSetResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['LoadRuleSetResult']>;
  LocalDate: ResolverTypeWrapper<Scalars['LocalDate']['output']>;
  LocalTime: ResolverTypeWrapper<Scalars['LocalTime']['output']>;
  MarkPackedInput: MarkPackedInput;
  MarkPackedResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['MarkPackedResult']>;
  Me: ResolverTypeWrapper<MeRow>;
  MissingFigure: ResolverTypeWrapper<MissingFigure>;
  Mutation: ResolverTypeWrapper<Record<PropertyKey, never>>;
  NoSchool: ResolverTypeWrapper<NoSchoolRow>;
  Node: ResolverTypeWrapper<ResolversInterfaceTypes<ResolversTypes>['Node']>;
  NotAppointed: ResolverTypeWrapper<NotAppointed>;
  NotPermitted: ResolverTypeWrapper<NotPermitted>;
  NothingThere: ResolverTypeWrapper<NothingThere>;
  NutrientAmount: ResolverTypeWrapper<NutrientAmount>;
  OutsideTerm: ResolverTypeWrapper<OutsideTerm>;
  PageInfo: ResolverTypeWrapper<PageInfo>;
  Person: ResolverTypeWrapper<PersonRow>;
  PinItemInput: PinItemInput;
  PinItemResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['PinItemResult']>;
  PlanOrigin: ResolverTypeWrapper<PlanOrigin>;
  PlanProgress: ResolverTypeWrapper<PlanProgress>;
  PlanQueued: ResolverTypeWrapper<PlanQueued>;
  PlanState: PlanState;
  PlanWeekInBackgroundInput: PlanWeekInBackgroundInput;
  PlanWeekInBackgroundResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['PlanWeekInBackgroundResult']>;
  PlanWeekInput: PlanWeekInput;
  PlanWeekResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['PlanWeekResult']>;
  PrepTime: ResolverTypeWrapper<PrepTime>;
  PrepTimeInput: PrepTimeInput;
  Query: ResolverTypeWrapper<Record<PropertyKey, never>>;
  RecordLabelInput: RecordLabelInput;
  RecordLabelResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RecordLabelResult']>;
  RelaxHouseRuleInput: RelaxHouseRuleInput;
  RelaxHouseRuleResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['RelaxHouseRuleResult']>;
  ReportAbsenceInput: ReportAbsenceInput;
  ReportAbsenceResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['ReportAbsenceResult']>;
  RevisionPassed: ResolverTypeWrapper<RevisionPassed>;
  Role: Role;
  Rule: ResolverTypeWrapper<RuleRow>;
  RuleLayer: RuleLayer;
  RuleLevel: RuleLevel;
  RuleSet: ResolverTypeWrapper<RuleSetRow>;
  School: ResolverTypeWrapper<SchoolRow>;
  SchoolClass: ResolverTypeWrapper<SchoolClassRow>;
  SchoolConnection: ResolverTypeWrapper<Omit<SchoolConnection, 'nodes'> & { nodes: ReadonlyArray<ResolversTypes['School']> }>;
  SchoolDay: ResolverTypeWrapper<SchoolDay>;
  SchoolDayKind: SchoolDayKind;
  SchoolNotFound: ResolverTypeWrapper<SchoolNotFound>;
  SchoolTerm: ResolverTypeWrapper<SchoolTerm>;
  ServedWarmth: ServedWarmth;
  SetEquipmentInput: SetEquipmentInput;
  SetEquipmentResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetEquipmentResult']>;
  SetLeftoversInput: SetLeftoversInput;
  SetLeftoversResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetLeftoversResult']>;
  SetPrepTimesInput: SetPrepTimesInput;
  SetPrepTimesResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetPrepTimesResult']>;
  SetStockInput: SetStockInput;
  SetStockResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SetStockResult']>;
  SharingGain: ResolverTypeWrapper<SharingGain>;
  ShoppingLine: ResolverTypeWrapper<ShoppingLineRow>;
  Slot: Slot;
  Stock: ResolverTypeWrapper<StockRow>;
  StockEntryInput: StockEntryInput;
  String: ResolverTypeWrapper<Scalars['String']['output']>;
  Subscription: ResolverTypeWrapper<Record<PropertyKey, never>>;
  SwapItemInput: SwapItemInput;
  SwapItemResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SwapItemResult']>;
  SwapRefused: ResolverTypeWrapper<Omit<SwapRefused, 'conflicts'> & { conflicts: ReadonlyArray<ResolversTypes['Conflict']> }>;
  TakeTaskInput: TakeTaskInput;
  TakeTaskResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['TakeTaskResult']>;
  Task: ResolverTypeWrapper<TaskRow>;
  TaskHeld: ResolverTypeWrapper<Omit<TaskHeld, 'holder'> & { holder?: Maybe<ResolversTypes['Person']> }>;
  TaskPayload: ResolverTypeWrapper<Omit<TaskPayload, 'task'> & { task: ResolversTypes['Task'] }>;
  UnitSystem: UnitSystem;
  UnpinItemInput: UnpinItemInput;
  UnpinItemResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['UnpinItemResult']>;
  UserError: ResolverTypeWrapper<ResolversInterfaceTypes<ResolversTypes>['UserError']>;
  Week: ResolverTypeWrapper<WeekRow>;
  WeekAgreed: ResolverTypeWrapper<WeekAgreed>;
  WeekInfeasible: ResolverTypeWrapper<Omit<WeekInfeasible, 'conflicts'> & { conflicts: ReadonlyArray<ResolversTypes['Conflict']> }>;
  WeekPayload: ResolverTypeWrapper<WeekPayloadRow>;
  WeekPlan: ResolverTypeWrapper<WeekPlanRow>;
  Weekday: Weekday;
  WindowKind: WindowKind;
  WishTotals: ResolverTypeWrapper<WishTotals>;
  WorkState: WorkState;
};

/** Mapping between all available schema types and the resolvers parents */
export type ResolversParentTypes = {
  AgreeWeekInput: AgreeWeekInput;
  AgreeWeekResult: ResolversUnionTypes<ResolversParentTypes>['AgreeWeekResult'];
  Allergy: Allergy;
  AllergyInput: AllergyInput;
  Alternative: AlternativeRow;
  Base: BaseRow;
  Batch: BatchRow;
  BatchFeed: BatchFeedRow;
  Boolean: Scalars['Boolean']['output'];
  Box: BoxRow;
  BoxBlocked: BoxBlocked;
  BoxClosed: BoxClosed;
  BoxItem: BoxItemRow;
  BoxItemNote: BoxItemNoteRow;
  BoxPacking: Omit<BoxPacking, 'packedBy'> & { packedBy?: Maybe<ResolversParentTypes['Person']> };
  Carer: Omit<Carer, 'person'> & { person: ResolversParentTypes['Person'] };
  Caution: CautionRow;
  Child: ChildRow;
  ChildNotFound: ChildNotFound;
  ChokingHazard: ChokingHazard;
  ClassBreak: ClassBreak;
  CompartmentInput: CompartmentInput;
  Conflict: ConflictRow;
  CreateChildInput: CreateChildInput;
  CreateChildPayload: Omit<CreateChildPayload, 'child' | 'household'> & { child: ResolversParentTypes['Child'], household: ResolversParentTypes['Household'] };
  CreateChildResult: ResolversUnionTypes<ResolversParentTypes>['CreateChildResult'];
  CreateHouseholdInput: CreateHouseholdInput;
  CreateHouseholdPayload: Omit<CreateHouseholdPayload, 'household'> & { household: ResolversParentTypes['Household'] };
  CreateHouseholdResult: ResolversUnionTypes<ResolversParentTypes>['CreateHouseholdResult'];
  Cut: Cut;
  DailyNeeds: DailyNeeds;
  DateTime: Scalars['DateTime']['output'];
  Dish: DishRow;
  DishBase: Omit<DishBase, 'base'> & { base: ResolversParentTypes['Base'] };
  DishConnection: Omit<DishConnection, 'nodes'> & { nodes: ReadonlyArray<ResolversParentTypes['Dish']> };
  DishIngredient: Omit<DishIngredient, 'food'> & { food: ResolversParentTypes['Food'] };
  DishStep: DishStep;
  DishUnknown: DishUnknown;
  EnrolChildInput: EnrolChildInput;
  EnrolChildPayload: Omit<EnrolChildPayload, 'child' | 'household'> & { child: ResolversParentTypes['Child'], household: ResolversParentTypes['Household'] };
  EnrolChildResult: ResolversUnionTypes<ResolversParentTypes>['EnrolChildResult'];
  Enrolment: EnrolmentRow;
  Equipment: Equipment;
  EquipmentInput: EquipmentInput;
  FinishTaskInput: FinishTaskInput;
  FinishTaskResult: ResolversUnionTypes<ResolversParentTypes>['FinishTaskResult'];
  Float: Scalars['Float']['output'];
  Food: FoodRow;
  FreezerStock: FreezerStockRow;
  Household: HouseholdRow;
  HouseholdNotFound: HouseholdNotFound;
  ID: Scalars['ID']['output'];
  InputIssue: InputIssue;
  Int: Scalars['Int']['output'];
  InvalidInput: InvalidInput;
  KeyReused: KeyReused;
  Kitchen: KitchenRow;
  KitchenPayload: Omit<KitchenPayload, 'household'> & { household: ResolversParentTypes['Household'] };
  LabelCheck: LabelCheckRow;
  LabelKind: LabelKind;
  LabelKindInput: LabelKindInput;
  LabelsUnread: LabelsUnreadRow;
  Leftover: LeftoverRow;
  LeftoverInput: LeftoverInput;
  LoadRuleSetInput: LoadRuleSetInput;
  LoadRuleSetPayload: Omit<LoadRuleSetPayload, 'ruleSet'> & { ruleSet: ResolversParentTypes['RuleSet'] };
  LoadRuleSetResult: ResolversUnionTypes<ResolversParentTypes>['LoadRuleSetResult'];
  LocalDate: Scalars['LocalDate']['output'];
  LocalTime: Scalars['LocalTime']['output'];
  MarkPackedInput: MarkPackedInput;
  MarkPackedResult: ResolversUnionTypes<ResolversParentTypes>['MarkPackedResult'];
  Me: MeRow;
  MissingFigure: MissingFigure;
  Mutation: Record<PropertyKey, never>;
  NoSchool: NoSchoolRow;
  Node: ResolversInterfaceTypes<ResolversParentTypes>['Node'];
  NotAppointed: NotAppointed;
  NotPermitted: NotPermitted;
  NothingThere: NothingThere;
  NutrientAmount: NutrientAmount;
  OutsideTerm: OutsideTerm;
  PageInfo: PageInfo;
  Person: PersonRow;
  PinItemInput: PinItemInput;
  PinItemResult: ResolversUnionTypes<ResolversParentTypes>['PinItemResult'];
  PlanOrigin: PlanOrigin;
  PlanProgress: PlanProgress;
  PlanQueued: PlanQueued;
  PlanWeekInBackgroundInput: PlanWeekInBackgroundInput;
  PlanWeekInBackgroundResult: ResolversUnionTypes<ResolversParentTypes>['PlanWeekInBackgroundResult'];
  PlanWeekInput: PlanWeekInput;
  PlanWeekResult: ResolversUnionTypes<ResolversParentTypes>['PlanWeekResult'];
  PrepTime: PrepTime;
  PrepTimeInput: PrepTimeInput;
  Query: Record<PropertyKey, never>;
  RecordLabelInput: RecordLabelInput;
  RecordLabelResult: ResolversUnionTypes<ResolversParentTypes>['RecordLabelResult'];
  RelaxHouseRuleInput: RelaxHouseRuleInput;
  RelaxHouseRuleResult: ResolversUnionTypes<ResolversParentTypes>['RelaxHouseRuleResult'];
  ReportAbsenceInput: ReportAbsenceInput;
  ReportAbsenceResult: ResolversUnionTypes<ResolversParentTypes>['ReportAbsenceResult'];
  RevisionPassed: RevisionPassed;
  Rule: RuleRow;
  RuleSet: RuleSetRow;
  School: SchoolRow;
  SchoolClass: SchoolClassRow;
  SchoolConnection: Omit<SchoolConnection, 'nodes'> & { nodes: ReadonlyArray<ResolversParentTypes['School']> };
  SchoolDay: SchoolDay;
  SchoolNotFound: SchoolNotFound;
  SchoolTerm: SchoolTerm;
  SetEquipmentInput: SetEquipmentInput;
  SetEquipmentResult: ResolversUnionTypes<ResolversParentTypes>['SetEquipmentResult'];
  SetLeftoversInput: SetLeftoversInput;
  SetLeftoversResult: ResolversUnionTypes<ResolversParentTypes>['SetLeftoversResult'];
  SetPrepTimesInput: SetPrepTimesInput;
  SetPrepTimesResult: ResolversUnionTypes<ResolversParentTypes>['SetPrepTimesResult'];
  SetStockInput: SetStockInput;
  SetStockResult: ResolversUnionTypes<ResolversParentTypes>['SetStockResult'];
  SharingGain: SharingGain;
  ShoppingLine: ShoppingLineRow;
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
  TaskHeld: Omit<TaskHeld, 'holder'> & { holder?: Maybe<ResolversParentTypes['Person']> };
  TaskPayload: Omit<TaskPayload, 'task'> & { task: ResolversParentTypes['Task'] };
  UnpinItemInput: UnpinItemInput;
  UnpinItemResult: ResolversUnionTypes<ResolversParentTypes>['UnpinItemResult'];
  UserError: ResolversInterfaceTypes<ResolversParentTypes>['UserError'];
  Week: WeekRow;
  WeekAgreed: WeekAgreed;
  WeekInfeasible: Omit<WeekInfeasible, 'conflicts'> & { conflicts: ReadonlyArray<ResolversParentTypes['Conflict']> };
  WeekPayload: WeekPayloadRow;
  WeekPlan: WeekPlanRow;
  WishTotals: WishTotals;
};

export type AgreeWeekResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['AgreeWeekResult'] = ResolversParentTypes['AgreeWeekResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'WeekAgreed' | 'WeekPayload', ParentType, ContextType>;
};

export type AllergyResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Allergy'] = ResolversParentTypes['Allergy']> = {
  allergen?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  avoid?: Resolver<ResolversTypes['Avoid'], ParentType, ContextType>;
  foodKind?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
};

export type AlternativeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Alternative'] = ResolversParentTypes['Alternative']> = {
  dish?: Resolver<ResolversTypes['Dish'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  pieces?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  pointsMore?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type BaseResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Base'] = ResolversParentTypes['Base']> = {
  batchGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  fixedHandsOnMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  keepsChilledDays?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  keepsFrozenDays?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  passiveMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  perBatchHandsOnMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
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

export type BatchFeedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BatchFeed'] = ResolversParentTypes['BatchFeed']> = {
  children?: Resolver<ReadonlyArray<ResolversTypes['Child']>, ParentType, ContextType>;
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type BoxResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Box'] = ResolversParentTypes['Box']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
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

export type BoxClosedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxClosed'] = ResolversParentTypes['BoxClosed']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  state?: Resolver<ResolversTypes['BoxState'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type BoxItemResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxItem'] = ResolversParentTypes['BoxItem']> = {
  allergens?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  breakKey?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  carbohydrateGrams?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  cuts?: Resolver<ReadonlyArray<ResolversTypes['Cut']>, ParentType, ContextType>;
  dish?: Resolver<ResolversTypes['Dish'], ParentType, ContextType>;
  energyKcal?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  holdingCase?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  labelsToRead?: Resolver<Maybe<ReadonlyArray<ResolversTypes['Food']>>, ParentType, ContextType>;
  note?: Resolver<Maybe<ResolversTypes['BoxItemNote']>, ParentType, ContextType>;
  pieces?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  pinned?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  place?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  served?: Resolver<ResolversTypes['ServedWarmth'], ParentType, ContextType>;
  slot?: Resolver<ResolversTypes['Slot'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type BoxItemNoteResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxItemNote'] = ResolversParentTypes['BoxItemNote']> = {
  compartment?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  holdingLimitMinutes?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  holdingMinutes?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  why?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
};

export type BoxPackingResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxPacking'] = ResolversParentTypes['BoxPacking']> = {
  coldSources?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  cutlery?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  flask?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  leaveAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  packedBy?: Resolver<Maybe<ResolversTypes['Person']>, ParentType, ContextType>;
};

export type CarerResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Carer'] = ResolversParentTypes['Carer']> = {
  person?: Resolver<ResolversTypes['Person'], ParentType, ContextType>;
  role?: Resolver<ResolversTypes['Role'], ParentType, ContextType>;
  since?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
};

export type CautionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Caution'] = ResolversParentTypes['Caution']> = {
  child?: Resolver<Maybe<ResolversTypes['Child']>, ParentType, ContextType>;
  date?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
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
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  minutesToEat?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
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
  never?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  underAgeYears?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type ClassBreakResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ClassBreak'] = ResolversParentTypes['ClassBreak']> = {
  energyShare?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  minutes?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  slots?: Resolver<ReadonlyArray<ResolversTypes['Slot']>, ParentType, ContextType>;
  startsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
};

export type ConflictResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Conflict'] = ResolversParentTypes['Conflict']> = {
  child?: Resolver<Maybe<ResolversTypes['Child']>, ParentType, ContextType>;
  date?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  session?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  wayOut?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
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
  __resolveType: TypeResolveFn<'CreateHouseholdPayload' | 'InvalidInput' | 'KeyReused', ParentType, ContextType>;
};

export type CutResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Cut'] = ResolversParentTypes['Cut']> = {
  cut?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  food?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type DailyNeedsResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DailyNeeds'] = ResolversParentTypes['DailyNeeds']> = {
  calciumMg?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  energyKcal?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  energyMethod?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  fibreGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  freeSugarMaxGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  ironMg?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  proteinGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  saturatedFatMaxGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  sodiumMaxMg?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  vitaminARaeUg?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  vitaminCMg?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  zincMg?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export interface DateTimeScalarConfig extends GraphQLScalarTypeConfig<ResolversTypes['DateTime'], any> {
  name: 'DateTime';
}

export type DishResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Dish'] = ResolversParentTypes['Dish']> = {
  allergens?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  bases?: Resolver<ReadonlyArray<ResolversTypes['DishBase']>, ParentType, ContextType>;
  costMinor?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  cuisine?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
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
  pieceName?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  portionGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  portionPieces?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  served?: Resolver<ResolversTypes['ServedWarmth'], ParentType, ContextType>;
  slots?: Resolver<ReadonlyArray<ResolversTypes['Slot']>, ParentType, ContextType>;
  steps?: Resolver<ReadonlyArray<ResolversTypes['DishStep']>, ParentType, ContextType>;
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

export type FinishTaskResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['FinishTaskResult'] = ResolversParentTypes['FinishTaskResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'TaskHeld' | 'TaskPayload', ParentType, ContextType>;
};

export type FoodResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Food'] = ResolversParentTypes['Food']> = {
  allergens?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  group?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  ndb?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  nutrients?: Resolver<ReadonlyArray<ResolversTypes['NutrientAmount']>, ParentType, ContextType>;
  packaged?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  refusePercent?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type FreezerStockResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['FreezerStock'] = ResolversParentTypes['FreezerStock']> = {
  base?: Resolver<ResolversTypes['Base'], ParentType, ContextType>;
  frozenOn?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  useBy?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type HouseholdResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Household'] = ResolversParentTypes['Household']> = {
  carers?: Resolver<ReadonlyArray<ResolversTypes['Carer']>, ParentType, ContextType>;
  children?: Resolver<ReadonlyArray<ResolversTypes['Child']>, ParentType, ContextType>;
  currency?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  keepsOut?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  kitchen?: Resolver<ResolversTypes['Kitchen'], ParentType, ContextType>;
  myRole?: Resolver<ResolversTypes['Role'], ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  revision?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
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

export type KeyReusedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['KeyReused'] = ResolversParentTypes['KeyReused']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  usedFor?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type KitchenResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Kitchen'] = ResolversParentTypes['Kitchen']> = {
  equipment?: Resolver<ReadonlyArray<ResolversTypes['Equipment']>, ParentType, ContextType>;
  freezerMl?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  freezerStock?: Resolver<ReadonlyArray<ResolversTypes['FreezerStock']>, ParentType, ContextType>;
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

export type LabelKindResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LabelKind'] = ResolversParentTypes['LabelKind']> = {
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  says?: Resolver<ResolversTypes['LabelSays'], ParentType, ContextType>;
};

export type LabelsUnreadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LabelsUnread'] = ResolversParentTypes['LabelsUnread']> = {
  foods?: Resolver<ReadonlyArray<ResolversTypes['Food']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type LeftoverResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Leftover'] = ResolversParentTypes['Leftover']> = {
  base?: Resolver<ResolversTypes['Base'], ParentType, ContextType>;
  cookedOn?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  lastSafeDay?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type LoadRuleSetPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LoadRuleSetPayload'] = ResolversParentTypes['LoadRuleSetPayload']> = {
  ruleSet?: Resolver<ResolversTypes['RuleSet'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type LoadRuleSetResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LoadRuleSetResult'] = ResolversParentTypes['LoadRuleSetResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'LoadRuleSetPayload' | 'NotAppointed' | 'RevisionPassed' | 'SchoolNotFound', ParentType, ContextType>;
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
  households?: Resolver<ReadonlyArray<ResolversTypes['Household']>, ParentType, ContextType>;
  person?: Resolver<ResolversTypes['Person'], ParentType, ContextType>;
};

export type MissingFigureResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['MissingFigure'] = ResolversParentTypes['MissingFigure']> = {
  food?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  nutrient?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type MutationResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Mutation'] = ResolversParentTypes['Mutation']> = {
  agreeWeek?: Resolver<ResolversTypes['AgreeWeekResult'], ParentType, ContextType, RequireFields<MutationAgreeWeekArgs, 'input'>>;
  createChild?: Resolver<ResolversTypes['CreateChildResult'], ParentType, ContextType, RequireFields<MutationCreateChildArgs, 'input'>>;
  createHousehold?: Resolver<ResolversTypes['CreateHouseholdResult'], ParentType, ContextType, RequireFields<MutationCreateHouseholdArgs, 'input'>>;
  enrolChild?: Resolver<ResolversTypes['EnrolChildResult'], ParentType, ContextType, RequireFields<MutationEnrolChildArgs, 'input'>>;
  finishTask?: Resolver<ResolversTypes['FinishTaskResult'], ParentType, ContextType, RequireFields<MutationFinishTaskArgs, 'input'>>;
  loadRuleSet?: Resolver<ResolversTypes['LoadRuleSetResult'], ParentType, ContextType, RequireFields<MutationLoadRuleSetArgs, 'input'>>;
  markPacked?: Resolver<ResolversTypes['MarkPackedResult'], ParentType, ContextType, RequireFields<MutationMarkPackedArgs, 'input'>>;
  pinItem?: Resolver<ResolversTypes['PinItemResult'], ParentType, ContextType, RequireFields<MutationPinItemArgs, 'input'>>;
  planWeek?: Resolver<ResolversTypes['PlanWeekResult'], ParentType, ContextType, RequireFields<MutationPlanWeekArgs, 'input'>>;
  planWeekInBackground?: Resolver<ResolversTypes['PlanWeekInBackgroundResult'], ParentType, ContextType, RequireFields<MutationPlanWeekInBackgroundArgs, 'input'>>;
  recordLabel?: Resolver<ResolversTypes['RecordLabelResult'], ParentType, ContextType, RequireFields<MutationRecordLabelArgs, 'input'>>;
  relaxHouseRule?: Resolver<ResolversTypes['RelaxHouseRuleResult'], ParentType, ContextType, RequireFields<MutationRelaxHouseRuleArgs, 'input'>>;
  reportAbsence?: Resolver<ResolversTypes['ReportAbsenceResult'], ParentType, ContextType, RequireFields<MutationReportAbsenceArgs, 'input'>>;
  setEquipment?: Resolver<ResolversTypes['SetEquipmentResult'], ParentType, ContextType, RequireFields<MutationSetEquipmentArgs, 'input'>>;
  setLeftovers?: Resolver<ResolversTypes['SetLeftoversResult'], ParentType, ContextType, RequireFields<MutationSetLeftoversArgs, 'input'>>;
  setPrepTimes?: Resolver<ResolversTypes['SetPrepTimesResult'], ParentType, ContextType, RequireFields<MutationSetPrepTimesArgs, 'input'>>;
  setStock?: Resolver<ResolversTypes['SetStockResult'], ParentType, ContextType, RequireFields<MutationSetStockArgs, 'input'>>;
  swapItem?: Resolver<ResolversTypes['SwapItemResult'], ParentType, ContextType, RequireFields<MutationSwapItemArgs, 'input'>>;
  takeTask?: Resolver<ResolversTypes['TakeTaskResult'], ParentType, ContextType, RequireFields<MutationTakeTaskArgs, 'input'>>;
  unpinItem?: Resolver<ResolversTypes['UnpinItemResult'], ParentType, ContextType, RequireFields<MutationUnpinItemArgs, 'input'>>;
};

export type NoSchoolResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['NoSchool'] = ResolversParentTypes['NoSchool']> = {
  children?: Resolver<ReadonlyArray<ResolversTypes['Child']>, ParentType, ContextType>;
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

export type OutsideTermResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['OutsideTerm'] = ResolversParentTypes['OutsideTerm']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  nextSchoolDay?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  weekStart?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
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

export type PinItemResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PinItemResult'] = ResolversParentTypes['PinItemResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'WeekPayload', ParentType, ContextType>;
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

export type PrepTimeResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PrepTime'] = ResolversParentTypes['PrepTime']> = {
  carers?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  effort?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  elapsedMinutes?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  handsOnMinutes?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['WindowKind'], ParentType, ContextType>;
  startsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  weekday?: Resolver<ResolversTypes['Weekday'], ParentType, ContextType>;
};

export type QueryResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Query'] = ResolversParentTypes['Query']> = {
  alternatives?: Resolver<ReadonlyArray<ResolversTypes['Alternative']>, ParentType, ContextType, RequireFields<QueryAlternativesArgs, 'itemId'>>;
  dish?: Resolver<Maybe<ResolversTypes['Dish']>, ParentType, ContextType, RequireFields<QueryDishArgs, 'key'>>;
  dishes?: Resolver<ResolversTypes['DishConnection'], ParentType, ContextType, RequireFields<QueryDishesArgs, 'first'>>;
  household?: Resolver<Maybe<ResolversTypes['Household']>, ParentType, ContextType, RequireFields<QueryHouseholdArgs, 'id'>>;
  me?: Resolver<ResolversTypes['Me'], ParentType, ContextType>;
  node?: Resolver<Maybe<ResolversTypes['Node']>, ParentType, ContextType, RequireFields<QueryNodeArgs, 'id'>>;
  school?: Resolver<Maybe<ResolversTypes['School']>, ParentType, ContextType, RequireFields<QuerySchoolArgs, 'id'>>;
  schools?: Resolver<ResolversTypes['SchoolConnection'], ParentType, ContextType, RequireFields<QuerySchoolsArgs, 'first'>>;
  week?: Resolver<Maybe<ResolversTypes['Week']>, ParentType, ContextType, RequireFields<QueryWeekArgs, 'date' | 'householdId'>>;
};

export type RecordLabelResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RecordLabelResult'] = ResolversParentTypes['RecordLabelResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type RelaxHouseRuleResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RelaxHouseRuleResult'] = ResolversParentTypes['RelaxHouseRuleResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type ReportAbsenceResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ReportAbsenceResult'] = ResolversParentTypes['ReportAbsenceResult']> = {
  __resolveType: TypeResolveFn<'BoxClosed' | 'ChildNotFound' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'OutsideTerm' | 'RevisionPassed' | 'WeekInfeasible' | 'WeekPayload', ParentType, ContextType>;
};

export type RevisionPassedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RevisionPassed'] = ResolversParentTypes['RevisionPassed']> = {
  currentRevision?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  seenRevision?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type RuleResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Rule'] = ResolversParentTypes['Rule']> = {
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  level?: Resolver<ResolversTypes['RuleLevel'], ParentType, ContextType>;
  says?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  source?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type RuleSetResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['RuleSet'] = ResolversParentTypes['RuleSet']> = {
  confirmed?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  inForceFrom?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  inForceUntil?: Resolver<Maybe<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  layer?: Resolver<ResolversTypes['RuleLayer'], ParentType, ContextType>;
  rules?: Resolver<ReadonlyArray<ResolversTypes['Rule']>, ParentType, ContextType>;
  title?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  version?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type SchoolResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['School'] = ResolversParentTypes['School']> = {
  classes?: Resolver<ReadonlyArray<ResolversTypes['SchoolClass']>, ParentType, ContextType>;
  days?: Resolver<ReadonlyArray<ResolversTypes['SchoolDay']>, ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  jurisdiction?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
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

export type SchoolTermResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SchoolTerm'] = ResolversParentTypes['SchoolTerm']> = {
  firstDay?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  lastDay?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
};

export type SetEquipmentResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetEquipmentResult'] = ResolversParentTypes['SetEquipmentResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type SetLeftoversResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetLeftoversResult'] = ResolversParentTypes['SetLeftoversResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type SetPrepTimesResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetPrepTimesResult'] = ResolversParentTypes['SetPrepTimesResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type SetStockResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SetStockResult'] = ResolversParentTypes['SetStockResult']> = {
  __resolveType: TypeResolveFn<'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'KitchenPayload' | 'NotPermitted' | 'RevisionPassed', ParentType, ContextType>;
};

export type SharingGainResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SharingGain'] = ResolversParentTypes['SharingGain']> = {
  handsOnMinutesAlone?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  handsOnMinutesShared?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  savedMinutes?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
};

export type ShoppingLineResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['ShoppingLine'] = ResolversParentTypes['ShoppingLine']> = {
  costMinor?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  food?: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  fromStockGrams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  neededGrams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  packGrams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  packs?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  readLabel?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  section?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  spareGrams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type StockResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Stock'] = ResolversParentTypes['Stock']> = {
  food?: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type SubscriptionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Subscription'] = ResolversParentTypes['Subscription']> = {
  planProgress?: SubscriptionResolver<ResolversTypes['PlanProgress'], "planProgress", ParentType, ContextType, RequireFields<SubscriptionPlanProgressArgs, 'householdId'>>;
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
  carer?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  children?: Resolver<ReadonlyArray<ResolversTypes['Child']>, ParentType, ContextType>;
  endsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  equipment?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  forDates?: Resolver<ReadonlyArray<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  handles?: Resolver<ReadonlyArray<ResolversTypes['String']>, ParentType, ContextType>;
  handsFreeAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  handsOnMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  passiveMinutes?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  session?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  startsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  state?: Resolver<ResolversTypes['WorkState'], ParentType, ContextType>;
  takenBy?: Resolver<Maybe<ResolversTypes['Person']>, ParentType, ContextType>;
  text?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type TaskHeldResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['TaskHeld'] = ResolversParentTypes['TaskHeld']> = {
  holder?: Resolver<Maybe<ResolversTypes['Person']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  state?: Resolver<ResolversTypes['WorkState'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type TaskPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['TaskPayload'] = ResolversParentTypes['TaskPayload']> = {
  task?: Resolver<ResolversTypes['Task'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type UnpinItemResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['UnpinItemResult'] = ResolversParentTypes['UnpinItemResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'WeekPayload', ParentType, ContextType>;
};

export type UserErrorResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['UserError'] = ResolversParentTypes['UserError']> = {
  __resolveType: TypeResolveFn<'BoxBlocked' | 'BoxClosed' | 'ChildNotFound' | 'DishUnknown' | 'HouseholdNotFound' | 'InvalidInput' | 'KeyReused' | 'LabelsUnread' | 'NoSchool' | 'NotAppointed' | 'NotPermitted' | 'NothingThere' | 'OutsideTerm' | 'RevisionPassed' | 'SchoolNotFound' | 'SwapRefused' | 'TaskHeld' | 'WeekAgreed' | 'WeekInfeasible', ParentType, ContextType>;
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

export type WeekInfeasibleResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WeekInfeasible'] = ResolversParentTypes['WeekInfeasible']> = {
  conflicts?: Resolver<ReadonlyArray<ResolversTypes['Conflict']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
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
  createdAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  number?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  origin?: Resolver<ResolversTypes['PlanOrigin'], ParentType, ContextType>;
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

export type Resolvers<ContextType = GraphqlContext> = {
  AgreeWeekResult?: AgreeWeekResultResolvers<ContextType>;
  Allergy?: AllergyResolvers<ContextType>;
  Alternative?: AlternativeResolvers<ContextType>;
  Base?: BaseResolvers<ContextType>;
  Batch?: BatchResolvers<ContextType>;
  BatchFeed?: BatchFeedResolvers<ContextType>;
  Box?: BoxResolvers<ContextType>;
  BoxBlocked?: BoxBlockedResolvers<ContextType>;
  BoxClosed?: BoxClosedResolvers<ContextType>;
  BoxItem?: BoxItemResolvers<ContextType>;
  BoxItemNote?: BoxItemNoteResolvers<ContextType>;
  BoxPacking?: BoxPackingResolvers<ContextType>;
  Carer?: CarerResolvers<ContextType>;
  Caution?: CautionResolvers<ContextType>;
  Child?: ChildResolvers<ContextType>;
  ChildNotFound?: ChildNotFoundResolvers<ContextType>;
  ChokingHazard?: ChokingHazardResolvers<ContextType>;
  ClassBreak?: ClassBreakResolvers<ContextType>;
  Conflict?: ConflictResolvers<ContextType>;
  CreateChildPayload?: CreateChildPayloadResolvers<ContextType>;
  CreateChildResult?: CreateChildResultResolvers<ContextType>;
  CreateHouseholdPayload?: CreateHouseholdPayloadResolvers<ContextType>;
  CreateHouseholdResult?: CreateHouseholdResultResolvers<ContextType>;
  Cut?: CutResolvers<ContextType>;
  DailyNeeds?: DailyNeedsResolvers<ContextType>;
  DateTime?: GraphQLScalarType;
  Dish?: DishResolvers<ContextType>;
  DishBase?: DishBaseResolvers<ContextType>;
  DishConnection?: DishConnectionResolvers<ContextType>;
  DishIngredient?: DishIngredientResolvers<ContextType>;
  DishStep?: DishStepResolvers<ContextType>;
  DishUnknown?: DishUnknownResolvers<ContextType>;
  EnrolChildPayload?: EnrolChildPayloadResolvers<ContextType>;
  EnrolChildResult?: EnrolChildResultResolvers<ContextType>;
  Enrolment?: EnrolmentResolvers<ContextType>;
  Equipment?: EquipmentResolvers<ContextType>;
  FinishTaskResult?: FinishTaskResultResolvers<ContextType>;
  Food?: FoodResolvers<ContextType>;
  FreezerStock?: FreezerStockResolvers<ContextType>;
  Household?: HouseholdResolvers<ContextType>;
  HouseholdNotFound?: HouseholdNotFoundResolvers<ContextType>;
  InputIssue?: InputIssueResolvers<ContextType>;
  InvalidInput?: InvalidInputResolvers<ContextType>;
  KeyReused?: KeyReusedResolvers<ContextType>;
  Kitchen?: KitchenResolvers<ContextType>;
  KitchenPayload?: KitchenPayloadResolvers<ContextType>;
  LabelCheck?: LabelCheckResolvers<ContextType>;
  LabelKind?: LabelKindResolvers<ContextType>;
  LabelsUnread?: LabelsUnreadResolvers<ContextType>;
  Leftover?: LeftoverResolvers<ContextType>;
  LoadRuleSetPayload?: LoadRuleSetPayloadResolvers<ContextType>;
  LoadRuleSetResult?: LoadRuleSetResultResolvers<ContextType>;
  LocalDate?: GraphQLScalarType;
  LocalTime?: GraphQLScalarType;
  MarkPackedResult?: MarkPackedResultResolvers<ContextType>;
  Me?: MeResolvers<ContextType>;
  MissingFigure?: MissingFigureResolvers<ContextType>;
  Mutation?: MutationResolvers<ContextType>;
  NoSchool?: NoSchoolResolvers<ContextType>;
  Node?: NodeResolvers<ContextType>;
  NotAppointed?: NotAppointedResolvers<ContextType>;
  NotPermitted?: NotPermittedResolvers<ContextType>;
  NothingThere?: NothingThereResolvers<ContextType>;
  NutrientAmount?: NutrientAmountResolvers<ContextType>;
  OutsideTerm?: OutsideTermResolvers<ContextType>;
  PageInfo?: PageInfoResolvers<ContextType>;
  Person?: PersonResolvers<ContextType>;
  PinItemResult?: PinItemResultResolvers<ContextType>;
  PlanOrigin?: PlanOriginResolvers<ContextType>;
  PlanProgress?: PlanProgressResolvers<ContextType>;
  PlanQueued?: PlanQueuedResolvers<ContextType>;
  PlanWeekInBackgroundResult?: PlanWeekInBackgroundResultResolvers<ContextType>;
  PlanWeekResult?: PlanWeekResultResolvers<ContextType>;
  PrepTime?: PrepTimeResolvers<ContextType>;
  Query?: QueryResolvers<ContextType>;
  RecordLabelResult?: RecordLabelResultResolvers<ContextType>;
  RelaxHouseRuleResult?: RelaxHouseRuleResultResolvers<ContextType>;
  ReportAbsenceResult?: ReportAbsenceResultResolvers<ContextType>;
  RevisionPassed?: RevisionPassedResolvers<ContextType>;
  Rule?: RuleResolvers<ContextType>;
  RuleSet?: RuleSetResolvers<ContextType>;
  School?: SchoolResolvers<ContextType>;
  SchoolClass?: SchoolClassResolvers<ContextType>;
  SchoolConnection?: SchoolConnectionResolvers<ContextType>;
  SchoolDay?: SchoolDayResolvers<ContextType>;
  SchoolNotFound?: SchoolNotFoundResolvers<ContextType>;
  SchoolTerm?: SchoolTermResolvers<ContextType>;
  SetEquipmentResult?: SetEquipmentResultResolvers<ContextType>;
  SetLeftoversResult?: SetLeftoversResultResolvers<ContextType>;
  SetPrepTimesResult?: SetPrepTimesResultResolvers<ContextType>;
  SetStockResult?: SetStockResultResolvers<ContextType>;
  SharingGain?: SharingGainResolvers<ContextType>;
  ShoppingLine?: ShoppingLineResolvers<ContextType>;
  Stock?: StockResolvers<ContextType>;
  Subscription?: SubscriptionResolvers<ContextType>;
  SwapItemResult?: SwapItemResultResolvers<ContextType>;
  SwapRefused?: SwapRefusedResolvers<ContextType>;
  TakeTaskResult?: TakeTaskResultResolvers<ContextType>;
  Task?: TaskResolvers<ContextType>;
  TaskHeld?: TaskHeldResolvers<ContextType>;
  TaskPayload?: TaskPayloadResolvers<ContextType>;
  UnpinItemResult?: UnpinItemResultResolvers<ContextType>;
  UserError?: UserErrorResolvers<ContextType>;
  Week?: WeekResolvers<ContextType>;
  WeekAgreed?: WeekAgreedResolvers<ContextType>;
  WeekInfeasible?: WeekInfeasibleResolvers<ContextType>;
  WeekPayload?: WeekPayloadResolvers<ContextType>;
  WeekPlan?: WeekPlanResolvers<ContextType>;
  WishTotals?: WishTotalsResolvers<ContextType>;
};

