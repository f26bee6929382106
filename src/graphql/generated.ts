import type { GraphQLResolveInfo, GraphQLScalarType, GraphQLScalarTypeConfig } from 'graphql';
import type { GraphqlContext } from './context.js';
export type Maybe<T> = T | null;
export type InputMaybe<T> = Maybe<T>;
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
  idempotencyKey: Scalars['String']['input'];
  seenRevision: Scalars['Int']['input'];
  weekId: Scalars['ID']['input'];
};

export type AgreeWeekResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | WeekAgreed | WeekPayload;

export type Allergy = {
  __typename?: 'Allergy';
  allergen?: Maybe<Scalars['String']['output']>;
  avoid: Avoid;
  foodKind?: Maybe<Scalars['String']['output']>;
};

export type AllergyInput = {
  /** An allergen or a family of them (TREE_NUTS, GLUTEN_CEREALS, SHELLFISH). Give this or foodKind. */
  allergen?: InputMaybe<Scalars['String']['input']>;
  avoid?: Avoid;
  /** One food: kiwi, chickpea. */
  foodKind?: InputMaybe<Scalars['String']['input']>;
};

export type Alternative = {
  __typename?: 'Alternative';
  dish: Dish;
  grams: Scalars['Float']['output'];
  pieces?: Maybe<Scalars['Float']['output']>;
  /** Points the week would lose by it; lower is better. */
  pointsMore: Scalars['Int']['output'];
};

export type Avoid =
  /** Only as an ingredient. */
  | 'INGREDIENTS'
  /** May-contain is shut out too; labels are read before packing. */
  | 'TRACES';

/** Made once, used by many dishes and children. */
export type Base = {
  __typename?: 'Base';
  batchGrams: Scalars['Float']['output'];
  fixedHandsOnMinutes: Scalars['Float']['output'];
  /** The day it is made counts as the first. */
  keepsChilledDays: Scalars['Int']['output'];
  keepsFrozenDays?: Maybe<Scalars['Int']['output']>;
  key: Scalars['String']['output'];
  kind: Scalars['String']['output'];
  name: Scalars['String']['output'];
  passiveMinutes: Scalars['Float']['output'];
  perBatchHandsOnMinutes: Scalars['Float']['output'];
  steps: Array<Scalars['String']['output']>;
  windows: Array<WindowKind>;
};

export type Batch = Node & {
  __typename?: 'Batch';
  base: Base;
  batches: Scalars['Int']['output'];
  feeds: Array<BatchFeed>;
  grams: Scalars['Int']['output'];
  id: Scalars['ID']['output'];
  session: Scalars['String']['output'];
  spareGrams: Scalars['Int']['output'];
  state: WorkState;
};

export type BatchFeed = {
  __typename?: 'BatchFeed';
  children: Array<Child>;
  date: Scalars['LocalDate']['output'];
  grams: Scalars['Float']['output'];
};

/** What leaves the house with a child on a school day. */
export type Box = Node & {
  __typename?: 'Box';
  child: Child;
  date: Scalars['LocalDate']['output'];
  id: Scalars['ID']['output'];
  items: Array<BoxItem>;
  packedAt?: Maybe<Scalars['DateTime']['output']>;
  /** How it leaves; null when the child's other home packs it. */
  packing?: Maybe<BoxPacking>;
  state: BoxState;
};

/** The box no longer passes; replan the week first. */
export type BoxBlocked = UserError & {
  __typename?: 'BoxBlocked';
  message: Scalars['String']['output'];
};

/** The box is packed or eaten; it does not move. */
export type BoxClosed = UserError & {
  __typename?: 'BoxClosed';
  message: Scalars['String']['output'];
  state: BoxState;
};

export type BoxItem = Node & {
  __typename?: 'BoxItem';
  allergens: Array<Scalars['String']['output']>;
  /** Dishes that could take its place with the whole week still passing every rule, best first; found by replanning each. At most five. */
  alternatives: Array<Alternative>;
  breakKey: Scalars['String']['output'];
  /** Null when an ingredient's figure is missing. */
  carbohydrateGrams?: Maybe<Scalars['Float']['output']>;
  cuts: Array<Cut>;
  dish: Dish;
  energyKcal: Scalars['Float']['output'];
  grams: Scalars['Float']['output'];
  /** CHILLED, FLASK, AMBIENT, NOT_CONTROLLED or REHEATED_AT_SCHOOL. */
  holdingCase: Scalars['String']['output'];
  id: Scalars['ID']['output'];
  /** Foods whose label must be read and clear before the box is packed. */
  labelsToRead: Array<Food>;
  /** Null for the child's other home. */
  note?: Maybe<BoxItemNote>;
  pieces?: Maybe<Scalars['Float']['output']>;
  pinned: Scalars['Boolean']['output'];
  /** Counts items of the same slot in a break, from 0. */
  place: Scalars['Int']['output'];
  served: ServedWarmth;
  slot: Slot;
};

export type BoxItemNote = {
  __typename?: 'BoxItemNote';
  /** Which compartment of the box, from 0; -1 is the flask. */
  compartment: Scalars['Int']['output'];
  holdingLimitMinutes: Scalars['Int']['output'];
  /** Minutes from leaving home to the end of the break. */
  holdingMinutes: Scalars['Int']['output'];
  why: Array<Scalars['String']['output']>;
};

export type BoxPacking = {
  __typename?: 'BoxPacking';
  coldSources: Scalars['Int']['output'];
  cutlery: Array<Scalars['String']['output']>;
  flask: Scalars['Boolean']['output'];
  leaveAt: Scalars['LocalTime']['output'];
};

export type BoxState =
  /** Something changed and the box no longer passes; replan before packing. */
  | 'BLOCKED'
  | 'EATEN'
  | 'PACKED'
  | 'PLANNED';

/** A person in their role in one household. */
export type Carer = {
  __typename?: 'Carer';
  person: Person;
  role: Role;
  since: Scalars['DateTime']['output'];
};

export type Caution = {
  __typename?: 'Caution';
  child?: Maybe<Child>;
  date?: Maybe<Scalars['LocalDate']['output']>;
  kind: Scalars['String']['output'];
  text: Scalars['String']['output'];
};

export type Child = Node & {
  __typename?: 'Child';
  /** Whole years on the day. */
  ageYears: Scalars['Int']['output'];
  allergies: Array<Allergy>;
  /** 1 is usual; portions are scaled by it. */
  appetite: Scalars['Float']['output'];
  /** What the day asks for, by published reference values. An estimate for planning, not dietetic advice. */
  dailyNeeds: DailyNeeds;
  dateOfBirth: Scalars['LocalDate']['output'];
  diets: Array<Scalars['String']['output']>;
  /** Dish keys or food kinds. */
  dislikes: Array<Scalars['String']['output']>;
  enrolments: Array<Enrolment>;
  id: Scalars['ID']['output'];
  minutesToEat: Scalars['Int']['output'];
  name: Scalars['String']['output'];
};


export type ChildAgeYearsArgs = {
  on: Scalars['LocalDate']['input'];
};


export type ChildDailyNeedsArgs = {
  on: Scalars['LocalDate']['input'];
};

/** No such child, or not one of yours. */
export type ChildNotFound = UserError & {
  __typename?: 'ChildNotFound';
  message: Scalars['String']['output'];
};

/** A shape or texture that small children choke on. */
export type ChokingHazard = {
  __typename?: 'ChokingHazard';
  class: Scalars['String']['output'];
  cut: Scalars['String']['output'];
  food: Scalars['String']['output'];
  /** No cut makes it safe below that age. */
  never: Scalars['Boolean']['output'];
  source: Scalars['String']['output'];
  /** Holds on days when the child is younger. */
  underAgeYears: Scalars['Int']['output'];
};

export type ClassBreak = {
  __typename?: 'ClassBreak';
  /** Part of the day's energy, 0 to 1. */
  energyShare: Scalars['Float']['output'];
  key: Scalars['String']['output'];
  minutes: Scalars['Int']['output'];
  name: Scalars['String']['output'];
  slots: Array<Slot>;
  startsAt: Scalars['LocalTime']['output'];
};

export type CompartmentInput = {
  leakProof: Scalars['Boolean']['input'];
  /** 50 to 2000. */
  ml: Scalars['Int']['input'];
};

export type Conflict = {
  __typename?: 'Conflict';
  child?: Maybe<Child>;
  date?: Maybe<Scalars['LocalDate']['output']>;
  kind: Scalars['String']['output'];
  session?: Maybe<Scalars['String']['output']>;
  text: Scalars['String']['output'];
  wayOut: Scalars['String']['output'];
};

export type CreateChildInput = {
  /** INACTIVE, LOW_ACTIVE, ACTIVE or VERY_ACTIVE. */
  activity?: Scalars['String']['input'];
  allergies?: Array<AllergyInput>;
  /** 0.5 to 2; 1 is usual. */
  appetite?: Scalars['Float']['input'];
  coldSources?: Scalars['Int']['input'];
  compartments: Array<CompartmentInput>;
  dateOfBirth: Scalars['LocalDate']['input'];
  diets?: Array<Scalars['String']['input']>;
  /** Dish keys or food kinds. */
  dislikes?: Array<Scalars['String']['input']>;
  flask?: Scalars['Boolean']['input'];
  heightCm?: InputMaybe<Scalars['Float']['input']>;
  householdId: Scalars['ID']['input'];
  idempotencyKey: Scalars['String']['input'];
  insulated?: Scalars['Boolean']['input'];
  /** When the child leaves home on a school day. */
  leaveAt: Scalars['LocalTime']['input'];
  minutesToEat?: Scalars['Int']['input'];
  name: Scalars['String']['input'];
  seenRevision: Scalars['Int']['input'];
  /** FEMALE or MALE, only for the energy estimate; stays with this household. */
  sex?: InputMaybe<Scalars['String']['input']>;
  weightKg?: InputMaybe<Scalars['Float']['input']>;
};

export type CreateChildPayload = {
  __typename?: 'CreateChildPayload';
  child: Child;
  household: Household;
};

export type CreateChildResult = CreateChildPayload | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | RevisionPassed;

export type CreateHouseholdInput = {
  currency: Scalars['String']['input'];
  idempotencyKey: Scalars['String']['input'];
  name: Scalars['String']['input'];
  timeZone: Scalars['String']['input'];
};

export type CreateHouseholdPayload = {
  __typename?: 'CreateHouseholdPayload';
  household: Household;
};

export type CreateHouseholdResult = CreateHouseholdPayload | InvalidInput | KeyReused;

export type Cut = {
  __typename?: 'Cut';
  cut: Scalars['String']['output'];
  food: Scalars['String']['output'];
  source: Scalars['String']['output'];
};

export type DailyNeeds = {
  __typename?: 'DailyNeeds';
  calciumMg: Scalars['Float']['output'];
  energyKcal: Scalars['Int']['output'];
  /** NASEM_2023 from body size, or DGA_TABLE by age and sex where body size is not known to this household. */
  energyMethod: Scalars['String']['output'];
  fibreGrams: Scalars['Float']['output'];
  freeSugarMaxGrams: Scalars['Float']['output'];
  ironMg: Scalars['Float']['output'];
  proteinGrams: Scalars['Float']['output'];
  saturatedFatMaxGrams: Scalars['Float']['output'];
  sodiumMaxMg: Scalars['Float']['output'];
  vitaminARaeUg: Scalars['Float']['output'];
  vitaminCMg: Scalars['Float']['output'];
  zincMg: Scalars['Float']['output'];
};

export type Dish = Node & {
  __typename?: 'Dish';
  /** Derived from every ingredient, bases included. */
  allergens: Array<Scalars['String']['output']>;
  bases: Array<DishBase>;
  costMinor: Scalars['Int']['output'];
  cuisine: Scalars['String']['output'];
  freeSugarGrams: Scalars['Float']['output'];
  goodForHours: Scalars['Float']['output'];
  hazards: Array<ChokingHazard>;
  id: Scalars['ID']['output'];
  ingredients: Array<DishIngredient>;
  key: Scalars['String']['output'];
  /** Packaged ingredients: their labels may say more. */
  labelsToRead: Array<Food>;
  /** Figures the composition table lacks for an ingredient; a maximum that needs one is not taken as met. */
  missing: Array<MissingFigure>;
  name: Scalars['String']['output'];
  /** Derived, for the reference portion; sums of what is known. */
  nutrients: Array<NutrientAmount>;
  pieceName?: Maybe<Scalars['String']['output']>;
  /** Grams of the reference portion. */
  portionGrams: Scalars['Float']['output'];
  /** Pieces in the reference portion; null when it is not counted in pieces. */
  portionPieces?: Maybe<Scalars['Float']['output']>;
  served: ServedWarmth;
  slots: Array<Slot>;
  steps: Array<DishStep>;
};

export type DishBase = {
  __typename?: 'DishBase';
  base: Base;
  grams: Scalars['Float']['output'];
};

export type DishConnection = {
  __typename?: 'DishConnection';
  nodes: Array<Dish>;
  pageInfo: PageInfo;
};

export type DishIngredient = {
  __typename?: 'DishIngredient';
  food: Food;
  form: Scalars['String']['output'];
  grams: Scalars['Float']['output'];
};

export type DishStep = {
  __typename?: 'DishStep';
  eveningBefore: Scalars['Boolean']['output'];
  handsOnFixedMinutes: Scalars['Float']['output'];
  handsOnPerPortionMinutes: Scalars['Float']['output'];
  passiveMinutes: Scalars['Float']['output'];
  text: Scalars['String']['output'];
};

/** No dish has this key. */
export type DishUnknown = UserError & {
  __typename?: 'DishUnknown';
  dish: Scalars['String']['output'];
  message: Scalars['String']['output'];
  /** Keys that look like it. */
  nearest: Array<Scalars['String']['output']>;
};

export type EnrolChildInput = {
  childId: Scalars['ID']['input'];
  fromDate: Scalars['LocalDate']['input'];
  householdId: Scalars['ID']['input'];
  idempotencyKey: Scalars['String']['input'];
  schoolClassId: Scalars['ID']['input'];
  seenRevision: Scalars['Int']['input'];
  untilDate?: InputMaybe<Scalars['LocalDate']['input']>;
};

export type EnrolChildPayload = {
  __typename?: 'EnrolChildPayload';
  child: Child;
  household: Household;
};

export type EnrolChildResult = ChildNotFound | EnrolChildPayload | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | RevisionPassed | SchoolNotFound;

export type Enrolment = {
  __typename?: 'Enrolment';
  fromDate: Scalars['LocalDate']['output'];
  school: School;
  schoolClass: SchoolClass;
  untilDate?: Maybe<Scalars['LocalDate']['output']>;
};

export type Equipment = {
  __typename?: 'Equipment';
  /** HOB_BURNER, OVEN, STEAMER, MICROWAVE, TOASTER, RICE_COOKER, WAFFLE_IRON, CAKE_MOULD_SET, MUFFIN_TRAY, BLENDER or PRESSURE_COOKER. */
  kind: Scalars['String']['output'];
  units: Scalars['Int']['output'];
};

export type EquipmentInput = {
  kind: Scalars['String']['input'];
  units: Scalars['Int']['input'];
};

export type Facility =
  | 'NEITHER'
  /** Boxes are kept cold until they are eaten. */
  | 'REFRIGERATOR'
  /** Food can be heated before it is eaten. */
  | 'REHEATING';

export type FinishTaskInput = {
  idempotencyKey: Scalars['String']['input'];
  seenRevision: Scalars['Int']['input'];
  taskId: Scalars['ID']['input'];
};

export type FinishTaskResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | TaskHeld | TaskPayload;

/** One row of a composition table, per 100 g edible. */
export type Food = {
  __typename?: 'Food';
  allergens: Array<Scalars['String']['output']>;
  group: Scalars['String']['output'];
  key: Scalars['String']['output'];
  kind: Scalars['String']['output'];
  name: Scalars['String']['output'];
  /** USDA Standard Reference number; null for water. */
  ndb?: Maybe<Scalars['String']['output']>;
  /** Only what the table knows: a nutrient that is not listed is missing, not zero. */
  nutrients: Array<NutrientAmount>;
  /** Has a label that a carer of a child who avoids traces has to read. */
  packaged: Scalars['Boolean']['output'];
  refusePercent: Scalars['Float']['output'];
};

export type FreezerStock = Node & {
  __typename?: 'FreezerStock';
  base: Base;
  frozenOn: Scalars['LocalDate']['output'];
  grams: Scalars['Int']['output'];
  id: Scalars['ID']['output'];
  useBy: Scalars['LocalDate']['output'];
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
  __typename?: 'Household';
  carers: Array<Carer>;
  children: Array<Child>;
  /** ISO 4217 code; money is in its minor unit. */
  currency: Scalars['String']['output'];
  id: Scalars['ID']['output'];
  /** Allergens that never enter this kitchen. */
  keepsOut: Array<Scalars['String']['output']>;
  kitchen: Kitchen;
  myRole: Role;
  name: Scalars['String']['output'];
  /** Goes up with every change of kitchen, children or stock. */
  revision: Scalars['Int']['output'];
  /** IANA name: Europe/London. */
  timeZone: Scalars['String']['output'];
  unitSystem: UnitSystem;
  /** The week that holds this day; null when nothing has been planned for it. */
  week?: Maybe<Week>;
  weekStart: Weekday;
};


/** A kitchen that packs boxes. */
export type HouseholdWeekArgs = {
  date: Scalars['LocalDate']['input'];
};

/** No such household, or not one of yours. */
export type HouseholdNotFound = UserError & {
  __typename?: 'HouseholdNotFound';
  message: Scalars['String']['output'];
};

export type InputIssue = {
  __typename?: 'InputIssue';
  /** Path inside the input: children.0.dateOfBirth. */
  field: Scalars['String']['output'];
  /** What to send instead. */
  fix: Scalars['String']['output'];
  /** What is wrong with it. */
  problem: Scalars['String']['output'];
};

/** Something in the input cannot be used. All complaints come at once; nothing was saved. */
export type InvalidInput = UserError & {
  __typename?: 'InvalidInput';
  issues: Array<InputIssue>;
  message: Scalars['String']['output'];
};

/** The same idempotency key came before with another input. Nothing was changed. */
export type KeyReused = UserError & {
  __typename?: 'KeyReused';
  message: Scalars['String']['output'];
  /** The mutation that used the key. */
  usedFor: Scalars['String']['output'];
};

export type Kitchen = {
  __typename?: 'Kitchen';
  equipment: Array<Equipment>;
  freezerMl: Scalars['Int']['output'];
  freezerStock: Array<FreezerStock>;
  labelChecks: Array<LabelCheck>;
  leftovers: Array<Leftover>;
  prepTimes: Array<PrepTime>;
  /** Room for boxes and batches overnight, in ml. */
  refrigeratorMl: Scalars['Int']['output'];
  stock: Array<Stock>;
};

/** The household after a change of its kitchen. */
export type KitchenPayload = {
  __typename?: 'KitchenPayload';
  household: Household;
};

/** What was read on the label of a bought product. */
export type LabelCheck = {
  __typename?: 'LabelCheck';
  contains: Array<Scalars['String']['output']>;
  food: Food;
  mayContain: Array<Scalars['String']['output']>;
  readOn: Scalars['LocalDate']['output'];
};

/** Labels that must be read and clear first, because the child avoids traces. */
export type LabelsUnread = UserError & {
  __typename?: 'LabelsUnread';
  foods: Array<Food>;
  message: Scalars['String']['output'];
};

/** What the family meal leaves. */
export type Leftover = Node & {
  __typename?: 'Leftover';
  base: Base;
  cookedOn: Scalars['LocalDate']['output'];
  grams: Scalars['Int']['output'];
  id: Scalars['ID']['output'];
  /** Set by how long the base keeps chilled; never later. */
  lastSafeDay: Scalars['LocalDate']['output'];
};

export type LeftoverInput = {
  /** Base key: rice-cooked. */
  base: Scalars['String']['input'];
  cookedOn: Scalars['LocalDate']['input'];
  grams: Scalars['Int']['input'];
};

export type LoadRuleSetInput = {
  /** The document as JSON text, format noonpail-rule-set/1, at most 200 kB. */
  document: Scalars['String']['input'];
  idempotencyKey: Scalars['String']['input'];
  schoolClassId?: InputMaybe<Scalars['ID']['input']>;
  /** The school it is for; for a class, give schoolClassId as well. */
  schoolId: Scalars['ID']['input'];
  /** The version of this rule set that the administrator saw; 0 for a new one. */
  seenRevision: Scalars['Int']['input'];
};

export type LoadRuleSetPayload = {
  __typename?: 'LoadRuleSetPayload';
  ruleSet: RuleSet;
};

export type LoadRuleSetResult = InvalidInput | KeyReused | LoadRuleSetPayload | NotAppointed | RevisionPassed | SchoolNotFound;

export type MarkPackedInput = {
  boxId: Scalars['ID']['input'];
  idempotencyKey: Scalars['String']['input'];
  packedAt: Scalars['DateTime']['input'];
  seenRevision: Scalars['Int']['input'];
};

export type MarkPackedResult = BoxBlocked | BoxClosed | InvalidInput | KeyReused | LabelsUnread | NotPermitted | NothingThere | RevisionPassed | WeekPayload;

export type MissingFigure = {
  __typename?: 'MissingFigure';
  food: Scalars['String']['output'];
  nutrient: Scalars['String']['output'];
};

export type Mutation = {
  __typename?: 'Mutation';
  /** Settle the week. It can still be changed by what happens: absence, a swap by hand. */
  agreeWeek: AgreeWeekResult;
  /** Add a child to a household. */
  createChild: CreateChildResult;
  /** Start a household with a usual kitchen and usual prep times; the caller becomes its coordinator. */
  createHousehold: CreateHouseholdResult;
  /** Join a child to a class of a school from a day on. */
  enrolChild: EnrolChildResult;
  /** Say a task is done. */
  finishTask: FinishTaskResult;
  /** Load a rule set document as a new version. Only for the school's or jurisdiction's administrator. A version in force is never edited. */
  loadRuleSet: LoadRuleSetResult;
  /** Record that a box was packed. */
  markPacked: MarkPackedResult;
  /** Keep an item as it is through every replan. */
  pinItem: PinItemResult;
  /** Plan the week that holds a day. Pinned, packed and cooked things stay. */
  planWeek: PlanWeekResult;
  /** Record what a label says. Needed before a box may be marked packed for a child who avoids traces. */
  recordLabel: RecordLabelResult;
  /** Let a house rule rest for one day. Safety, school rules and the kitchen's limits cannot be relaxed. */
  relaxHouseRule: RelaxHouseRuleResult;
  /** A child stays home: the day's box falls away and the rest is replanned with the fewest changes. */
  reportAbsence: ReportAbsenceResult;
  /** Set how many of each piece of equipment the kitchen has; kinds not named stay. */
  setEquipment: SetEquipmentResult;
  /** Say what the family meals leave; replaces the list. */
  setLeftovers: SetLeftoversResult;
  /** Set the minutes of prep sessions, by weekday or for one date. */
  setPrepTimes: SetPrepTimesResult;
  /** Say what is in the cupboard. Foods not named stay as they are; 0 grams takes one out. */
  setStock: SetStockResult;
  /** Put another dish in an item's place and lay the week out again. */
  swapItem: SwapItemResult;
  /** Take a task. Exactly one carer holds it. */
  takeTask: TakeTaskResult;
  unpinItem: UnpinItemResult;
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
  __typename?: 'NoSchool';
  children: Array<Child>;
  message: Scalars['String']['output'];
};

/** Anything that can be asked for again by its ID. */
export type Node = {
  /** Opaque. Not to be taken apart: its form may change. */
  id: Scalars['ID']['output'];
};

/** The person does not administer this school. */
export type NotAppointed = UserError & {
  __typename?: 'NotAppointed';
  message: Scalars['String']['output'];
};

/** The person's role in this household does not allow it. */
export type NotPermitted = UserError & {
  __typename?: 'NotPermitted';
  message: Scalars['String']['output'];
  /** The least role that may do it. */
  neededRole: Role;
};

/** No such box, item or task, or not one of yours, or of a plan that was replaced. */
export type NothingThere = UserError & {
  __typename?: 'NothingThere';
  message: Scalars['String']['output'];
  /** What was looked for. */
  what: Scalars['String']['output'];
};

/** INFOODS tag name, amount and unit. */
export type NutrientAmount = {
  __typename?: 'NutrientAmount';
  amount: Scalars['Float']['output'];
  tag: Scalars['String']['output'];
  unit: Scalars['String']['output'];
};

/** No child of this household has a school day then. */
export type OutsideTerm = UserError & {
  __typename?: 'OutsideTerm';
  message: Scalars['String']['output'];
  /** The next school day of any of the children; null when no term is known. */
  nextSchoolDay?: Maybe<Scalars['LocalDate']['output']>;
  weekStart: Scalars['LocalDate']['output'];
};

export type PageInfo = {
  __typename?: 'PageInfo';
  endCursor?: Maybe<Scalars['String']['output']>;
  hasNextPage: Scalars['Boolean']['output'];
};

/** Who signs in. */
export type Person = Node & {
  __typename?: 'Person';
  /** Schools this person was appointed to administer. */
  administers: Array<School>;
  displayName: Scalars['String']['output'];
  /** Households this person belongs to. */
  households: Array<Household>;
  id: Scalars['ID']['output'];
};

export type PinItemInput = {
  idempotencyKey: Scalars['String']['input'];
  itemId: Scalars['ID']['input'];
  seenRevision: Scalars['Int']['input'];
};

export type PinItemResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | WeekPayload;

export type PlanOrigin = {
  __typename?: 'PlanOrigin';
  catalogueVersion: Scalars['String']['output'];
  problemHash: Scalars['String']['output'];
  /** key@version of every rule set that was obeyed. */
  ruleSetVersions: Array<Scalars['String']['output']>;
  /** Unsigned 32-bit number as text. */
  seed: Scalars['String']['output'];
  steps: Scalars['Int']['output'];
};

export type PlanProgress = {
  __typename?: 'PlanProgress';
  /** Objective of the best week so far, in the planner's points; null before the first that passes every rule. */
  bestPoints?: Maybe<Scalars['Int']['output']>;
  percent: Scalars['Int']['output'];
  weekStart: Scalars['LocalDate']['output'];
};

export type PlanState =
  | 'AGREED'
  | 'DRAFT'
  | 'REPLACED';

export type PlanWeekInput = {
  /** Any day of the week. */
  date: Scalars['LocalDate']['input'];
  householdId: Scalars['ID']['input'];
  idempotencyKey: Scalars['String']['input'];
  /** Needed to plan an agreed week afresh; changes as few boxes as it can. */
  replanAgreed?: Scalars['Boolean']['input'];
  /** The week's revision; 0 when nothing has been planned for it. */
  seenRevision: Scalars['Int']['input'];
};

export type PlanWeekResult = HouseholdNotFound | InvalidInput | KeyReused | NoSchool | NotPermitted | OutsideTerm | RevisionPassed | WeekAgreed | WeekInfeasible | WeekPayload;

/** Time a household gives to one kind of prep session on one weekday. */
export type PrepTime = {
  __typename?: 'PrepTime';
  carers: Scalars['Int']['output'];
  /** Points the planner counts per hands-on minute, 0 to 1000: higher where minutes are scarce. */
  effort: Scalars['Int']['output'];
  /** Minutes from start to end, 0 to 720. */
  elapsedMinutes: Scalars['Int']['output'];
  /** Minutes of hands-on work in all, 0 to 600. */
  handsOnMinutes: Scalars['Int']['output'];
  kind: WindowKind;
  startsAt: Scalars['LocalTime']['output'];
  /** The day the session happens on. */
  weekday: Weekday;
};

export type PrepTimeInput = {
  carers?: Scalars['Int']['input'];
  /** Only on this day. */
  date?: InputMaybe<Scalars['LocalDate']['input']>;
  /** Left as it is when absent. */
  effort?: InputMaybe<Scalars['Int']['input']>;
  elapsedMinutes: Scalars['Int']['input'];
  handsOnMinutes: Scalars['Int']['input'];
  kind: WindowKind;
  startsAt: Scalars['LocalTime']['input'];
  /** Every week on this day. Give this or date. */
  weekday?: InputMaybe<Weekday>;
};

export type Query = {
  __typename?: 'Query';
  dish?: Maybe<Dish>;
  /** All dishes by key, those for one slot when given. */
  dishes: DishConnection;
  /** Null when there is none or it is not yours. */
  household?: Maybe<Household>;
  /** The person behind the token. */
  me: Person;
  /** Anything by its ID; null when there is none or it is not yours to see. */
  node?: Maybe<Node>;
  school?: Maybe<School>;
  /** All schools by name. */
  schools: SchoolConnection;
  /** The week of a household that holds a day; null when nothing has been planned for it. */
  week?: Maybe<Week>;
};


export type QueryDishArgs = {
  key: Scalars['String']['input'];
};


export type QueryDishesArgs = {
  after?: InputMaybe<Scalars['String']['input']>;
  first?: Scalars['Int']['input'];
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
  first?: Scalars['Int']['input'];
};


export type QueryWeekArgs = {
  date: Scalars['LocalDate']['input'];
  householdId: Scalars['ID']['input'];
};

export type RecordLabelInput = {
  contains: Array<Scalars['String']['input']>;
  /** Food key. */
  food: Scalars['String']['input'];
  householdId: Scalars['ID']['input'];
  idempotencyKey: Scalars['String']['input'];
  mayContain: Array<Scalars['String']['input']>;
  readOn: Scalars['LocalDate']['input'];
  seenRevision: Scalars['Int']['input'];
};

export type RecordLabelResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

export type RelaxHouseRuleInput = {
  date: Scalars['LocalDate']['input'];
  householdId: Scalars['ID']['input'];
  idempotencyKey: Scalars['String']['input'];
  rule: HouseRule;
  seenRevision: Scalars['Int']['input'];
};

export type RelaxHouseRuleResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

export type ReportAbsenceInput = {
  childId: Scalars['ID']['input'];
  date: Scalars['LocalDate']['input'];
  householdId: Scalars['ID']['input'];
  idempotencyKey: Scalars['String']['input'];
  reason?: Scalars['String']['input'];
  seenRevision: Scalars['Int']['input'];
};

export type ReportAbsenceResult = BoxClosed | ChildNotFound | HouseholdNotFound | InvalidInput | KeyReused | NotPermitted | OutsideTerm | RevisionPassed | WeekInfeasible | WeekPayload;

/** Someone changed it meanwhile. Read it again, then decide. */
export type RevisionPassed = UserError & {
  __typename?: 'RevisionPassed';
  currentRevision: Scalars['Int']['output'];
  message: Scalars['String']['output'];
  seenRevision: Scalars['Int']['output'];
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
  __typename?: 'Rule';
  /** The id inside its document. */
  key: Scalars['String']['output'];
  /** EXCLUDE, ONLY, FREQUENCY, AMOUNT, SHARE, NUTRIENT, TOGETHER or SERVING. */
  kind: Scalars['String']['output'];
  level: RuleLevel;
  /** The sentence a family reads. */
  says: Scalars['String']['output'];
  source: Scalars['String']['output'];
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
  __typename?: 'RuleSet';
  /** False: a family's own copy that the school has not confirmed. */
  confirmed: Scalars['Boolean']['output'];
  id: Scalars['ID']['output'];
  inForceFrom: Scalars['LocalDate']['output'];
  inForceUntil?: Maybe<Scalars['LocalDate']['output']>;
  key: Scalars['String']['output'];
  layer: RuleLayer;
  rules: Array<Rule>;
  title: Scalars['String']['output'];
  version: Scalars['Int']['output'];
};

export type School = Node & {
  __typename?: 'School';
  classes: Array<SchoolClass>;
  /** Holidays, early finishes and trip days. */
  days: Array<SchoolDay>;
  id: Scalars['ID']['output'];
  jurisdiction?: Maybe<Scalars['String']['output']>;
  name: Scalars['String']['output'];
  /** Rule sets that hold here, the newest version of each. */
  ruleSets: Array<RuleSet>;
  terms: Array<SchoolTerm>;
  timeZone: Scalars['String']['output'];
};

export type SchoolClass = Node & {
  __typename?: 'SchoolClass';
  breaks: Array<ClassBreak>;
  facility: Facility;
  id: Scalars['ID']['output'];
  name: Scalars['String']['output'];
};

export type SchoolConnection = {
  __typename?: 'SchoolConnection';
  nodes: Array<School>;
  pageInfo: PageInfo;
};

export type SchoolDay = {
  __typename?: 'SchoolDay';
  date: Scalars['LocalDate']['output'];
  /** For an early finish: breaks that start at or after it fall away. */
  endsAt?: Maybe<Scalars['LocalTime']['output']>;
  kind: SchoolDayKind;
  title: Scalars['String']['output'];
};

export type SchoolDayKind =
  | 'EARLY_FINISH'
  | 'HOLIDAY'
  | 'TRIP';

/** No such school. */
export type SchoolNotFound = UserError & {
  __typename?: 'SchoolNotFound';
  message: Scalars['String']['output'];
};

export type SchoolTerm = {
  __typename?: 'SchoolTerm';
  firstDay: Scalars['LocalDate']['output'];
  lastDay: Scalars['LocalDate']['output'];
  name: Scalars['String']['output'];
};

export type ServedWarmth =
  | 'COLD'
  | 'EITHER'
  | 'WARM';

export type SetEquipmentInput = {
  equipment: Array<EquipmentInput>;
  householdId: Scalars['ID']['input'];
  idempotencyKey: Scalars['String']['input'];
  seenRevision: Scalars['Int']['input'];
};

export type SetEquipmentResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

export type SetLeftoversInput = {
  householdId: Scalars['ID']['input'];
  idempotencyKey: Scalars['String']['input'];
  leftovers: Array<LeftoverInput>;
  seenRevision: Scalars['Int']['input'];
};

export type SetLeftoversResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

export type SetPrepTimesInput = {
  householdId: Scalars['ID']['input'];
  idempotencyKey: Scalars['String']['input'];
  prepTimes: Array<PrepTimeInput>;
  seenRevision: Scalars['Int']['input'];
};

export type SetPrepTimesResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

export type SetStockInput = {
  entries: Array<StockEntryInput>;
  householdId: Scalars['ID']['input'];
  idempotencyKey: Scalars['String']['input'];
  seenRevision: Scalars['Int']['input'];
};

export type SetStockResult = HouseholdNotFound | InvalidInput | KeyReused | KitchenPayload | NotPermitted | RevisionPassed;

/** The best plan found with sharing switched off under the same limits, beside this one. */
export type SharingGain = {
  __typename?: 'SharingGain';
  /** Null when the kitchen has no time for a week without sharing. */
  handsOnMinutesAlone?: Maybe<Scalars['Float']['output']>;
  handsOnMinutesShared: Scalars['Float']['output'];
  savedMinutes?: Maybe<Scalars['Float']['output']>;
};

export type ShoppingLine = Node & {
  __typename?: 'ShoppingLine';
  costMinor: Scalars['Int']['output'];
  food: Food;
  fromStockGrams: Scalars['Int']['output'];
  id: Scalars['ID']['output'];
  neededGrams: Scalars['Int']['output'];
  packGrams: Scalars['Int']['output'];
  packs: Scalars['Int']['output'];
  /** Read the label before first use. */
  readLabel: Scalars['Boolean']['output'];
  section: Scalars['String']['output'];
  spareGrams: Scalars['Int']['output'];
};

export type Slot =
  | 'EXTRA'
  | 'FRUIT'
  | 'MAIN'
  | 'VEGETABLE';

export type Stock = {
  __typename?: 'Stock';
  food: Food;
  grams: Scalars['Int']['output'];
};

export type StockEntryInput = {
  /** Food key: rice-white-long-raw. */
  food: Scalars['String']['input'];
  grams: Scalars['Int']['input'];
};

export type Subscription = {
  __typename?: 'Subscription';
  /** How far a plan of this household has come. */
  planProgress: PlanProgress;
  /** The week each time it changes. */
  weekChanged: Week;
};


export type SubscriptionPlanProgressArgs = {
  householdId: Scalars['ID']['input'];
};


export type SubscriptionWeekChangedArgs = {
  householdId: Scalars['ID']['input'];
};

export type SwapItemInput = {
  /** Key of the dish to put there. */
  dish: Scalars['String']['input'];
  idempotencyKey: Scalars['String']['input'];
  itemId: Scalars['ID']['input'];
  seenRevision: Scalars['Int']['input'];
};

export type SwapItemResult = BoxClosed | DishUnknown | InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | SwapRefused | WeekPayload;

/** The dish may not stand there. Each conflict names the rule and its source. */
export type SwapRefused = UserError & {
  __typename?: 'SwapRefused';
  conflicts: Array<Conflict>;
  message: Scalars['String']['output'];
};

export type TakeTaskInput = {
  idempotencyKey: Scalars['String']['input'];
  seenRevision: Scalars['Int']['input'];
  taskId: Scalars['ID']['input'];
};

export type TakeTaskResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | TaskHeld | TaskPayload;

export type Task = Node & {
  __typename?: 'Task';
  /** Which pair of hands, from 1. */
  carer: Scalars['Int']['output'];
  children: Array<Child>;
  endsAt: Scalars['LocalTime']['output'];
  equipment: Array<Scalars['String']['output']>;
  forDates: Array<Scalars['LocalDate']['output']>;
  /** Allergens it handles that a child here avoids: safe things first, then clean boards. */
  handles: Array<Scalars['String']['output']>;
  handsFreeAt: Scalars['LocalTime']['output'];
  handsOnMinutes: Scalars['Float']['output'];
  id: Scalars['ID']['output'];
  /** BASE, FINISH, COOL, PACK or DEFROST. */
  kind: Scalars['String']['output'];
  passiveMinutes: Scalars['Float']['output'];
  /** weekend-, evening- or morning- and the date it happens. */
  session: Scalars['String']['output'];
  startsAt: Scalars['LocalTime']['output'];
  state: WorkState;
  takenBy?: Maybe<Person>;
  text: Scalars['String']['output'];
};

/** Another carer has it, or it is done. */
export type TaskHeld = UserError & {
  __typename?: 'TaskHeld';
  holder?: Maybe<Person>;
  message: Scalars['String']['output'];
  state: WorkState;
};

export type TaskPayload = {
  __typename?: 'TaskPayload';
  task: Task;
};

export type UnitSystem =
  | 'METRIC'
  | 'US_CUSTOMARY';

export type UnpinItemInput = {
  idempotencyKey: Scalars['String']['input'];
  itemId: Scalars['ID']['input'];
  seenRevision: Scalars['Int']['input'];
};

export type UnpinItemResult = InvalidInput | KeyReused | NotPermitted | NothingThere | RevisionPassed | WeekPayload;

/** An expected refusal. Select `... on UserError { message }` in every result: members may be added. */
export type UserError = {
  /** One sentence for the person: what is wrong and the way out. */
  message: Scalars['String']['output'];
};

/** One household's week. Plans come and go inside it; the revision counts every change. */
export type Week = Node & {
  __typename?: 'Week';
  id: Scalars['ID']['output'];
  /** The newest plan. */
  plan: WeekPlan;
  /** Send it back with every mutation about this week. */
  revision: Scalars['Int']['output'];
  weekStart: Scalars['LocalDate']['output'];
};

/** The week is agreed. Swap an item, report an absence, or plan with replanAgreed: true. */
export type WeekAgreed = UserError & {
  __typename?: 'WeekAgreed';
  agreedAt: Scalars['DateTime']['output'];
  message: Scalars['String']['output'];
};

/** No week passes every rule. Each clash says what would make it possible. */
export type WeekInfeasible = UserError & {
  __typename?: 'WeekInfeasible';
  conflicts: Array<Conflict>;
  message: Scalars['String']['output'];
};

/** The week after a change. */
export type WeekPayload = {
  __typename?: 'WeekPayload';
  /** Boxes that differ from the plan before. */
  changedBoxes: Array<Box>;
  week: Week;
};

/** An immutable revision of the week's plan. */
export type WeekPlan = Node & {
  __typename?: 'WeekPlan';
  agreedAt?: Maybe<Scalars['DateTime']['output']>;
  batches: Array<Batch>;
  boxes: Array<Box>;
  cautions: Array<Caution>;
  createdAt: Scalars['DateTime']['output'];
  id: Scalars['ID']['output'];
  number: Scalars['Int']['output'];
  /** Seed and steps repeat the search; the hash names the problem it solved. */
  origin: PlanOrigin;
  /** What cooking together saves; null when it was not compared. */
  sharing?: Maybe<SharingGain>;
  shopping: Array<ShoppingLine>;
  state: PlanState;
  tasks: Array<Task>;
  wishes: WishTotals;
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
  __typename?: 'WishTotals';
  costMinor: Scalars['Int']['output'];
  handsOnMinutes: Scalars['Float']['output'];
  monotonyPoints: Scalars['Int']['output'];
  nutrientShortfallPercent: Scalars['Int']['output'];
  objectivePoints: Scalars['Int']['output'];
  refusalPoints: Scalars['Int']['output'];
  spareBaseGrams: Scalars['Int']['output'];
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
    | ( WeekPayload & { __typename: 'WeekPayload' } )
  ;
  CreateChildResult:
    | ( CreateChildPayload & { __typename: 'CreateChildPayload' } )
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  CreateHouseholdResult:
    | ( CreateHouseholdPayload & { __typename: 'CreateHouseholdPayload' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
  ;
  EnrolChildResult:
    | ( ChildNotFound & { __typename: 'ChildNotFound' } )
    | ( EnrolChildPayload & { __typename: 'EnrolChildPayload' } )
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
    | ( TaskHeld & { __typename: 'TaskHeld' } )
    | ( TaskPayload & { __typename: 'TaskPayload' } )
  ;
  LoadRuleSetResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( LoadRuleSetPayload & { __typename: 'LoadRuleSetPayload' } )
    | ( NotAppointed & { __typename: 'NotAppointed' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( SchoolNotFound & { __typename: 'SchoolNotFound' } )
  ;
  MarkPackedResult:
    | ( BoxBlocked & { __typename: 'BoxBlocked' } )
    | ( BoxClosed & { __typename: 'BoxClosed' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( LabelsUnread & { __typename: 'LabelsUnread' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( WeekPayload & { __typename: 'WeekPayload' } )
  ;
  PinItemResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( WeekPayload & { __typename: 'WeekPayload' } )
  ;
  PlanWeekResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NoSchool & { __typename: 'NoSchool' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( OutsideTerm & { __typename: 'OutsideTerm' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( WeekAgreed & { __typename: 'WeekAgreed' } )
    | ( WeekInfeasible & { __typename: 'WeekInfeasible' } )
    | ( WeekPayload & { __typename: 'WeekPayload' } )
  ;
  RecordLabelResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( KitchenPayload & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  RelaxHouseRuleResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( KitchenPayload & { __typename: 'KitchenPayload' } )
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
    | ( WeekInfeasible & { __typename: 'WeekInfeasible' } )
    | ( WeekPayload & { __typename: 'WeekPayload' } )
  ;
  SetEquipmentResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( KitchenPayload & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  SetLeftoversResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( KitchenPayload & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  SetPrepTimesResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( KitchenPayload & { __typename: 'KitchenPayload' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
  ;
  SetStockResult:
    | ( HouseholdNotFound & { __typename: 'HouseholdNotFound' } )
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( KitchenPayload & { __typename: 'KitchenPayload' } )
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
    | ( SwapRefused & { __typename: 'SwapRefused' } )
    | ( WeekPayload & { __typename: 'WeekPayload' } )
  ;
  TakeTaskResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( TaskHeld & { __typename: 'TaskHeld' } )
    | ( TaskPayload & { __typename: 'TaskPayload' } )
  ;
  UnpinItemResult:
    | ( InvalidInput & { __typename: 'InvalidInput' } )
    | ( KeyReused & { __typename: 'KeyReused' } )
    | ( NotPermitted & { __typename: 'NotPermitted' } )
    | ( NothingThere & { __typename: 'NothingThere' } )
    | ( RevisionPassed & { __typename: 'RevisionPassed' } )
    | ( WeekPayload & { __typename: 'WeekPayload' } )
  ;
};

/** Mapping of interface types */
export type ResolversInterfaceTypes<_RefType extends Record<string, unknown>> = {
  Node:
    | ( Batch )
    | ( Box )
    | ( BoxItem )
    | ( Child )
    | ( Dish )
    | ( FreezerStock )
    | ( Household )
    | ( Leftover )
    | ( Person )
    | ( RuleSet )
    | ( School )
    | ( SchoolClass )
    | ( ShoppingLine )
    | ( Task )
    | ( Week )
    | ( WeekPlan )
  ;
  UserError:
    | ( BoxBlocked )
    | ( BoxClosed )
    | ( ChildNotFound )
    | ( DishUnknown )
    | ( HouseholdNotFound )
    | ( InvalidInput )
    | ( KeyReused )
    | ( LabelsUnread )
    | ( NoSchool )
    | ( NotAppointed )
    | ( NotPermitted )
    | ( NothingThere )
    | ( OutsideTerm )
    | ( RevisionPassed )
    | ( SchoolNotFound )
    | ( SwapRefused )
    | ( TaskHeld )
    | ( WeekAgreed )
    | ( WeekInfeasible )
  ;
};

/** Mapping between all available schema types and the resolvers types */
export type ResolversTypes = {
  AgreeWeekInput: AgreeWeekInput;
  AgreeWeekResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['AgreeWeekResult']>;
  Allergy: ResolverTypeWrapper<Allergy>;
  AllergyInput: AllergyInput;
  Alternative: ResolverTypeWrapper<Alternative>;
  Avoid: Avoid;
  Base: ResolverTypeWrapper<Base>;
  Batch: ResolverTypeWrapper<Batch>;
  BatchFeed: ResolverTypeWrapper<BatchFeed>;
  Boolean: ResolverTypeWrapper<Scalars['Boolean']['output']>;
  Box: ResolverTypeWrapper<Box>;
  BoxBlocked: ResolverTypeWrapper<BoxBlocked>;
  BoxClosed: ResolverTypeWrapper<BoxClosed>;
  BoxItem: ResolverTypeWrapper<BoxItem>;
  BoxItemNote: ResolverTypeWrapper<BoxItemNote>;
  BoxPacking: ResolverTypeWrapper<BoxPacking>;
  BoxState: BoxState;
  Carer: ResolverTypeWrapper<Carer>;
  Caution: ResolverTypeWrapper<Caution>;
  Child: ResolverTypeWrapper<Child>;
  ChildNotFound: ResolverTypeWrapper<ChildNotFound>;
  ChokingHazard: ResolverTypeWrapper<ChokingHazard>;
  ClassBreak: ResolverTypeWrapper<ClassBreak>;
  CompartmentInput: CompartmentInput;
  Conflict: ResolverTypeWrapper<Conflict>;
  CreateChildInput: CreateChildInput;
  CreateChildPayload: ResolverTypeWrapper<CreateChildPayload>;
  CreateChildResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['CreateChildResult']>;
  CreateHouseholdInput: CreateHouseholdInput;
  CreateHouseholdPayload: ResolverTypeWrapper<CreateHouseholdPayload>;
  CreateHouseholdResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['CreateHouseholdResult']>;
  Cut: ResolverTypeWrapper<Cut>;
  DailyNeeds: ResolverTypeWrapper<DailyNeeds>;
  DateTime: ResolverTypeWrapper<Scalars['DateTime']['output']>;
  Dish: ResolverTypeWrapper<Dish>;
  DishBase: ResolverTypeWrapper<DishBase>;
  DishConnection: ResolverTypeWrapper<DishConnection>;
  DishIngredient: ResolverTypeWrapper<DishIngredient>;
  DishStep: ResolverTypeWrapper<DishStep>;
  DishUnknown: ResolverTypeWrapper<DishUnknown>;
  EnrolChildInput: EnrolChildInput;
  EnrolChildPayload: ResolverTypeWrapper<EnrolChildPayload>;
  EnrolChildResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['EnrolChildResult']>;
  Enrolment: ResolverTypeWrapper<Enrolment>;
  Equipment: ResolverTypeWrapper<Equipment>;
  EquipmentInput: EquipmentInput;
  Facility: Facility;
  FinishTaskInput: FinishTaskInput;
  FinishTaskResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['FinishTaskResult']>;
  Float: ResolverTypeWrapper<Scalars['Float']['output']>;
  Food: ResolverTypeWrapper<Food>;
  FreezerStock: ResolverTypeWrapper<FreezerStock>;
  HouseRule: HouseRule;
  Household: ResolverTypeWrapper<Household>;
  HouseholdNotFound: ResolverTypeWrapper<HouseholdNotFound>;
  ID: ResolverTypeWrapper<Scalars['ID']['output']>;
  InputIssue: ResolverTypeWrapper<InputIssue>;
  Int: ResolverTypeWrapper<Scalars['Int']['output']>;
  InvalidInput: ResolverTypeWrapper<InvalidInput>;
  KeyReused: ResolverTypeWrapper<KeyReused>;
  Kitchen: ResolverTypeWrapper<Kitchen>;
  KitchenPayload: ResolverTypeWrapper<KitchenPayload>;
  LabelCheck: ResolverTypeWrapper<LabelCheck>;
  LabelsUnread: ResolverTypeWrapper<LabelsUnread>;
  Leftover: ResolverTypeWrapper<Leftover>;
  LeftoverInput: LeftoverInput;
  LoadRuleSetInput: LoadRuleSetInput;
  LoadRuleSetPayload: ResolverTypeWrapper<LoadRuleSetPayload>;
  LoadRuleSetResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['LoadRuleSetResult']>;
  LocalDate: ResolverTypeWrapper<Scalars['LocalDate']['output']>;
  LocalTime: ResolverTypeWrapper<Scalars['LocalTime']['output']>;
  MarkPackedInput: MarkPackedInput;
  MarkPackedResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['MarkPackedResult']>;
  MissingFigure: ResolverTypeWrapper<MissingFigure>;
  Mutation: ResolverTypeWrapper<Record<PropertyKey, never>>;
  NoSchool: ResolverTypeWrapper<NoSchool>;
  Node: ResolverTypeWrapper<ResolversInterfaceTypes<ResolversTypes>['Node']>;
  NotAppointed: ResolverTypeWrapper<NotAppointed>;
  NotPermitted: ResolverTypeWrapper<NotPermitted>;
  NothingThere: ResolverTypeWrapper<NothingThere>;
  NutrientAmount: ResolverTypeWrapper<NutrientAmount>;
  OutsideTerm: ResolverTypeWrapper<OutsideTerm>;
  PageInfo: ResolverTypeWrapper<PageInfo>;
  Person: ResolverTypeWrapper<Person>;
  PinItemInput: PinItemInput;
  PinItemResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['PinItemResult']>;
  PlanOrigin: ResolverTypeWrapper<PlanOrigin>;
  PlanProgress: ResolverTypeWrapper<PlanProgress>;
  PlanState: PlanState;
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
  Rule: ResolverTypeWrapper<Rule>;
  RuleLayer: RuleLayer;
  RuleLevel: RuleLevel;
  RuleSet: ResolverTypeWrapper<RuleSet>;
  School: ResolverTypeWrapper<School>;
  SchoolClass: ResolverTypeWrapper<SchoolClass>;
  SchoolConnection: ResolverTypeWrapper<SchoolConnection>;
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
  ShoppingLine: ResolverTypeWrapper<ShoppingLine>;
  Slot: Slot;
  Stock: ResolverTypeWrapper<Stock>;
  StockEntryInput: StockEntryInput;
  String: ResolverTypeWrapper<Scalars['String']['output']>;
  Subscription: ResolverTypeWrapper<Record<PropertyKey, never>>;
  SwapItemInput: SwapItemInput;
  SwapItemResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['SwapItemResult']>;
  SwapRefused: ResolverTypeWrapper<SwapRefused>;
  TakeTaskInput: TakeTaskInput;
  TakeTaskResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['TakeTaskResult']>;
  Task: ResolverTypeWrapper<Task>;
  TaskHeld: ResolverTypeWrapper<TaskHeld>;
  TaskPayload: ResolverTypeWrapper<TaskPayload>;
  UnitSystem: UnitSystem;
  UnpinItemInput: UnpinItemInput;
  UnpinItemResult: ResolverTypeWrapper<ResolversUnionTypes<ResolversTypes>['UnpinItemResult']>;
  UserError: ResolverTypeWrapper<ResolversInterfaceTypes<ResolversTypes>['UserError']>;
  Week: ResolverTypeWrapper<Week>;
  WeekAgreed: ResolverTypeWrapper<WeekAgreed>;
  WeekInfeasible: ResolverTypeWrapper<WeekInfeasible>;
  WeekPayload: ResolverTypeWrapper<WeekPayload>;
  WeekPlan: ResolverTypeWrapper<WeekPlan>;
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
  Alternative: Alternative;
  Base: Base;
  Batch: Batch;
  BatchFeed: BatchFeed;
  Boolean: Scalars['Boolean']['output'];
  Box: Box;
  BoxBlocked: BoxBlocked;
  BoxClosed: BoxClosed;
  BoxItem: BoxItem;
  BoxItemNote: BoxItemNote;
  BoxPacking: BoxPacking;
  Carer: Carer;
  Caution: Caution;
  Child: Child;
  ChildNotFound: ChildNotFound;
  ChokingHazard: ChokingHazard;
  ClassBreak: ClassBreak;
  CompartmentInput: CompartmentInput;
  Conflict: Conflict;
  CreateChildInput: CreateChildInput;
  CreateChildPayload: CreateChildPayload;
  CreateChildResult: ResolversUnionTypes<ResolversParentTypes>['CreateChildResult'];
  CreateHouseholdInput: CreateHouseholdInput;
  CreateHouseholdPayload: CreateHouseholdPayload;
  CreateHouseholdResult: ResolversUnionTypes<ResolversParentTypes>['CreateHouseholdResult'];
  Cut: Cut;
  DailyNeeds: DailyNeeds;
  DateTime: Scalars['DateTime']['output'];
  Dish: Dish;
  DishBase: DishBase;
  DishConnection: DishConnection;
  DishIngredient: DishIngredient;
  DishStep: DishStep;
  DishUnknown: DishUnknown;
  EnrolChildInput: EnrolChildInput;
  EnrolChildPayload: EnrolChildPayload;
  EnrolChildResult: ResolversUnionTypes<ResolversParentTypes>['EnrolChildResult'];
  Enrolment: Enrolment;
  Equipment: Equipment;
  EquipmentInput: EquipmentInput;
  FinishTaskInput: FinishTaskInput;
  FinishTaskResult: ResolversUnionTypes<ResolversParentTypes>['FinishTaskResult'];
  Float: Scalars['Float']['output'];
  Food: Food;
  FreezerStock: FreezerStock;
  Household: Household;
  HouseholdNotFound: HouseholdNotFound;
  ID: Scalars['ID']['output'];
  InputIssue: InputIssue;
  Int: Scalars['Int']['output'];
  InvalidInput: InvalidInput;
  KeyReused: KeyReused;
  Kitchen: Kitchen;
  KitchenPayload: KitchenPayload;
  LabelCheck: LabelCheck;
  LabelsUnread: LabelsUnread;
  Leftover: Leftover;
  LeftoverInput: LeftoverInput;
  LoadRuleSetInput: LoadRuleSetInput;
  LoadRuleSetPayload: LoadRuleSetPayload;
  LoadRuleSetResult: ResolversUnionTypes<ResolversParentTypes>['LoadRuleSetResult'];
  LocalDate: Scalars['LocalDate']['output'];
  LocalTime: Scalars['LocalTime']['output'];
  MarkPackedInput: MarkPackedInput;
  MarkPackedResult: ResolversUnionTypes<ResolversParentTypes>['MarkPackedResult'];
  MissingFigure: MissingFigure;
  Mutation: Record<PropertyKey, never>;
  NoSchool: NoSchool;
  Node: ResolversInterfaceTypes<ResolversParentTypes>['Node'];
  NotAppointed: NotAppointed;
  NotPermitted: NotPermitted;
  NothingThere: NothingThere;
  NutrientAmount: NutrientAmount;
  OutsideTerm: OutsideTerm;
  PageInfo: PageInfo;
  Person: Person;
  PinItemInput: PinItemInput;
  PinItemResult: ResolversUnionTypes<ResolversParentTypes>['PinItemResult'];
  PlanOrigin: PlanOrigin;
  PlanProgress: PlanProgress;
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
  Rule: Rule;
  RuleSet: RuleSet;
  School: School;
  SchoolClass: SchoolClass;
  SchoolConnection: SchoolConnection;
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
  ShoppingLine: ShoppingLine;
  Stock: Stock;
  StockEntryInput: StockEntryInput;
  String: Scalars['String']['output'];
  Subscription: Record<PropertyKey, never>;
  SwapItemInput: SwapItemInput;
  SwapItemResult: ResolversUnionTypes<ResolversParentTypes>['SwapItemResult'];
  SwapRefused: SwapRefused;
  TakeTaskInput: TakeTaskInput;
  TakeTaskResult: ResolversUnionTypes<ResolversParentTypes>['TakeTaskResult'];
  Task: Task;
  TaskHeld: TaskHeld;
  TaskPayload: TaskPayload;
  UnpinItemInput: UnpinItemInput;
  UnpinItemResult: ResolversUnionTypes<ResolversParentTypes>['UnpinItemResult'];
  UserError: ResolversInterfaceTypes<ResolversParentTypes>['UserError'];
  Week: Week;
  WeekAgreed: WeekAgreed;
  WeekInfeasible: WeekInfeasible;
  WeekPayload: WeekPayload;
  WeekPlan: WeekPlan;
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
  steps?: Resolver<Array<ResolversTypes['String']>, ParentType, ContextType>;
  windows?: Resolver<Array<ResolversTypes['WindowKind']>, ParentType, ContextType>;
};

export type BatchResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Batch'] = ResolversParentTypes['Batch']> = {
  base?: Resolver<ResolversTypes['Base'], ParentType, ContextType>;
  batches?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  feeds?: Resolver<Array<ResolversTypes['BatchFeed']>, ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  session?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  spareGrams?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  state?: Resolver<ResolversTypes['WorkState'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type BatchFeedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BatchFeed'] = ResolversParentTypes['BatchFeed']> = {
  children?: Resolver<Array<ResolversTypes['Child']>, ParentType, ContextType>;
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type BoxResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Box'] = ResolversParentTypes['Box']> = {
  child?: Resolver<ResolversTypes['Child'], ParentType, ContextType>;
  date?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  items?: Resolver<Array<ResolversTypes['BoxItem']>, ParentType, ContextType>;
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
  allergens?: Resolver<Array<ResolversTypes['String']>, ParentType, ContextType>;
  alternatives?: Resolver<Array<ResolversTypes['Alternative']>, ParentType, ContextType>;
  breakKey?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  carbohydrateGrams?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  cuts?: Resolver<Array<ResolversTypes['Cut']>, ParentType, ContextType>;
  dish?: Resolver<ResolversTypes['Dish'], ParentType, ContextType>;
  energyKcal?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  holdingCase?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  labelsToRead?: Resolver<Array<ResolversTypes['Food']>, ParentType, ContextType>;
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
  why?: Resolver<Array<ResolversTypes['String']>, ParentType, ContextType>;
};

export type BoxPackingResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['BoxPacking'] = ResolversParentTypes['BoxPacking']> = {
  coldSources?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  cutlery?: Resolver<Array<ResolversTypes['String']>, ParentType, ContextType>;
  flask?: Resolver<ResolversTypes['Boolean'], ParentType, ContextType>;
  leaveAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
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
  allergies?: Resolver<Array<ResolversTypes['Allergy']>, ParentType, ContextType>;
  appetite?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  dailyNeeds?: Resolver<ResolversTypes['DailyNeeds'], ParentType, ContextType, RequireFields<ChildDailyNeedsArgs, 'on'>>;
  dateOfBirth?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
  diets?: Resolver<Array<ResolversTypes['String']>, ParentType, ContextType>;
  dislikes?: Resolver<Array<ResolversTypes['String']>, ParentType, ContextType>;
  enrolments?: Resolver<Array<ResolversTypes['Enrolment']>, ParentType, ContextType>;
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
  slots?: Resolver<Array<ResolversTypes['Slot']>, ParentType, ContextType>;
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
  allergens?: Resolver<Array<ResolversTypes['String']>, ParentType, ContextType>;
  bases?: Resolver<Array<ResolversTypes['DishBase']>, ParentType, ContextType>;
  costMinor?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  cuisine?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  freeSugarGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  goodForHours?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  hazards?: Resolver<Array<ResolversTypes['ChokingHazard']>, ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  ingredients?: Resolver<Array<ResolversTypes['DishIngredient']>, ParentType, ContextType>;
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  labelsToRead?: Resolver<Array<ResolversTypes['Food']>, ParentType, ContextType>;
  missing?: Resolver<Array<ResolversTypes['MissingFigure']>, ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  nutrients?: Resolver<Array<ResolversTypes['NutrientAmount']>, ParentType, ContextType>;
  pieceName?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  portionGrams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
  portionPieces?: Resolver<Maybe<ResolversTypes['Float']>, ParentType, ContextType>;
  served?: Resolver<ResolversTypes['ServedWarmth'], ParentType, ContextType>;
  slots?: Resolver<Array<ResolversTypes['Slot']>, ParentType, ContextType>;
  steps?: Resolver<Array<ResolversTypes['DishStep']>, ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type DishBaseResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DishBase'] = ResolversParentTypes['DishBase']> = {
  base?: Resolver<ResolversTypes['Base'], ParentType, ContextType>;
  grams?: Resolver<ResolversTypes['Float'], ParentType, ContextType>;
};

export type DishConnectionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['DishConnection'] = ResolversParentTypes['DishConnection']> = {
  nodes?: Resolver<Array<ResolversTypes['Dish']>, ParentType, ContextType>;
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
  nearest?: Resolver<Array<ResolversTypes['String']>, ParentType, ContextType>;
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
  allergens?: Resolver<Array<ResolversTypes['String']>, ParentType, ContextType>;
  group?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  key?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  kind?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  ndb?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  nutrients?: Resolver<Array<ResolversTypes['NutrientAmount']>, ParentType, ContextType>;
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
  carers?: Resolver<Array<ResolversTypes['Carer']>, ParentType, ContextType>;
  children?: Resolver<Array<ResolversTypes['Child']>, ParentType, ContextType>;
  currency?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  keepsOut?: Resolver<Array<ResolversTypes['String']>, ParentType, ContextType>;
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
  issues?: Resolver<Array<ResolversTypes['InputIssue']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type KeyReusedResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['KeyReused'] = ResolversParentTypes['KeyReused']> = {
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  usedFor?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type KitchenResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Kitchen'] = ResolversParentTypes['Kitchen']> = {
  equipment?: Resolver<Array<ResolversTypes['Equipment']>, ParentType, ContextType>;
  freezerMl?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  freezerStock?: Resolver<Array<ResolversTypes['FreezerStock']>, ParentType, ContextType>;
  labelChecks?: Resolver<Array<ResolversTypes['LabelCheck']>, ParentType, ContextType>;
  leftovers?: Resolver<Array<ResolversTypes['Leftover']>, ParentType, ContextType>;
  prepTimes?: Resolver<Array<ResolversTypes['PrepTime']>, ParentType, ContextType>;
  refrigeratorMl?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  stock?: Resolver<Array<ResolversTypes['Stock']>, ParentType, ContextType>;
};

export type KitchenPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['KitchenPayload'] = ResolversParentTypes['KitchenPayload']> = {
  household?: Resolver<ResolversTypes['Household'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type LabelCheckResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LabelCheck'] = ResolversParentTypes['LabelCheck']> = {
  contains?: Resolver<Array<ResolversTypes['String']>, ParentType, ContextType>;
  food?: Resolver<ResolversTypes['Food'], ParentType, ContextType>;
  mayContain?: Resolver<Array<ResolversTypes['String']>, ParentType, ContextType>;
  readOn?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
};

export type LabelsUnreadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['LabelsUnread'] = ResolversParentTypes['LabelsUnread']> = {
  foods?: Resolver<Array<ResolversTypes['Food']>, ParentType, ContextType>;
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
  children?: Resolver<Array<ResolversTypes['Child']>, ParentType, ContextType>;
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
  administers?: Resolver<Array<ResolversTypes['School']>, ParentType, ContextType>;
  displayName?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  households?: Resolver<Array<ResolversTypes['Household']>, ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type PinItemResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PinItemResult'] = ResolversParentTypes['PinItemResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'WeekPayload', ParentType, ContextType>;
};

export type PlanOriginResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PlanOrigin'] = ResolversParentTypes['PlanOrigin']> = {
  catalogueVersion?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  problemHash?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  ruleSetVersions?: Resolver<Array<ResolversTypes['String']>, ParentType, ContextType>;
  seed?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  steps?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
};

export type PlanProgressResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['PlanProgress'] = ResolversParentTypes['PlanProgress']> = {
  bestPoints?: Resolver<Maybe<ResolversTypes['Int']>, ParentType, ContextType>;
  percent?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  weekStart?: Resolver<ResolversTypes['LocalDate'], ParentType, ContextType>;
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
  dish?: Resolver<Maybe<ResolversTypes['Dish']>, ParentType, ContextType, RequireFields<QueryDishArgs, 'key'>>;
  dishes?: Resolver<ResolversTypes['DishConnection'], ParentType, ContextType, RequireFields<QueryDishesArgs, 'first'>>;
  household?: Resolver<Maybe<ResolversTypes['Household']>, ParentType, ContextType, RequireFields<QueryHouseholdArgs, 'id'>>;
  me?: Resolver<ResolversTypes['Person'], ParentType, ContextType>;
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
  rules?: Resolver<Array<ResolversTypes['Rule']>, ParentType, ContextType>;
  title?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  version?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type SchoolResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['School'] = ResolversParentTypes['School']> = {
  classes?: Resolver<Array<ResolversTypes['SchoolClass']>, ParentType, ContextType>;
  days?: Resolver<Array<ResolversTypes['SchoolDay']>, ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  jurisdiction?: Resolver<Maybe<ResolversTypes['String']>, ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  ruleSets?: Resolver<Array<ResolversTypes['RuleSet']>, ParentType, ContextType>;
  terms?: Resolver<Array<ResolversTypes['SchoolTerm']>, ParentType, ContextType>;
  timeZone?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type SchoolClassResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SchoolClass'] = ResolversParentTypes['SchoolClass']> = {
  breaks?: Resolver<Array<ResolversTypes['ClassBreak']>, ParentType, ContextType>;
  facility?: Resolver<ResolversTypes['Facility'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  name?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type SchoolConnectionResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['SchoolConnection'] = ResolversParentTypes['SchoolConnection']> = {
  nodes?: Resolver<Array<ResolversTypes['School']>, ParentType, ContextType>;
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
  conflicts?: Resolver<Array<ResolversTypes['Conflict']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type TakeTaskResultResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['TakeTaskResult'] = ResolversParentTypes['TakeTaskResult']> = {
  __resolveType: TypeResolveFn<'InvalidInput' | 'KeyReused' | 'NotPermitted' | 'NothingThere' | 'RevisionPassed' | 'TaskHeld' | 'TaskPayload', ParentType, ContextType>;
};

export type TaskResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['Task'] = ResolversParentTypes['Task']> = {
  carer?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  children?: Resolver<Array<ResolversTypes['Child']>, ParentType, ContextType>;
  endsAt?: Resolver<ResolversTypes['LocalTime'], ParentType, ContextType>;
  equipment?: Resolver<Array<ResolversTypes['String']>, ParentType, ContextType>;
  forDates?: Resolver<Array<ResolversTypes['LocalDate']>, ParentType, ContextType>;
  handles?: Resolver<Array<ResolversTypes['String']>, ParentType, ContextType>;
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
  conflicts?: Resolver<Array<ResolversTypes['Conflict']>, ParentType, ContextType>;
  message?: Resolver<ResolversTypes['String'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type WeekPayloadResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WeekPayload'] = ResolversParentTypes['WeekPayload']> = {
  changedBoxes?: Resolver<Array<ResolversTypes['Box']>, ParentType, ContextType>;
  week?: Resolver<ResolversTypes['Week'], ParentType, ContextType>;
  __isTypeOf?: IsTypeOfResolverFn<ParentType, ContextType>;
};

export type WeekPlanResolvers<ContextType = GraphqlContext, ParentType extends ResolversParentTypes['WeekPlan'] = ResolversParentTypes['WeekPlan']> = {
  agreedAt?: Resolver<Maybe<ResolversTypes['DateTime']>, ParentType, ContextType>;
  batches?: Resolver<Array<ResolversTypes['Batch']>, ParentType, ContextType>;
  boxes?: Resolver<Array<ResolversTypes['Box']>, ParentType, ContextType>;
  cautions?: Resolver<Array<ResolversTypes['Caution']>, ParentType, ContextType>;
  createdAt?: Resolver<ResolversTypes['DateTime'], ParentType, ContextType>;
  id?: Resolver<ResolversTypes['ID'], ParentType, ContextType>;
  number?: Resolver<ResolversTypes['Int'], ParentType, ContextType>;
  origin?: Resolver<ResolversTypes['PlanOrigin'], ParentType, ContextType>;
  sharing?: Resolver<Maybe<ResolversTypes['SharingGain']>, ParentType, ContextType>;
  shopping?: Resolver<Array<ResolversTypes['ShoppingLine']>, ParentType, ContextType>;
  state?: Resolver<ResolversTypes['PlanState'], ParentType, ContextType>;
  tasks?: Resolver<Array<ResolversTypes['Task']>, ParentType, ContextType>;
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
  LabelsUnread?: LabelsUnreadResolvers<ContextType>;
  Leftover?: LeftoverResolvers<ContextType>;
  LoadRuleSetPayload?: LoadRuleSetPayloadResolvers<ContextType>;
  LoadRuleSetResult?: LoadRuleSetResultResolvers<ContextType>;
  LocalDate?: GraphQLScalarType;
  LocalTime?: GraphQLScalarType;
  MarkPackedResult?: MarkPackedResultResolvers<ContextType>;
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

