/** Internal type. DO NOT USE DIRECTLY. */
type Exact<T extends { [key: string]: unknown }> = { [K in keyof T]: T[K] };
/** Internal type. DO NOT USE DIRECTLY. */
export type Incremental<T> = T | { [P in keyof T]?: P extends ' $fragmentName' | '__typename' ? T[P] : never };
/** Made from schema/ and shared/operations/ by `npm run codegen`. */
import { z } from "zod";
import type { Document } from "../document.js";
import { inputSchemas } from "../input-schemas.js";
import { scalars } from "../scalars.js";
export type AcceptHomeInvitationInput = {
  /** The household the child is to live in too. */
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly token: string;
};

export type AcceptInvitationInput = {
  readonly idempotencyKey: string;
  readonly token: string;
};

export type AcceptRotaInput = {
  readonly from: string;
  readonly householdId: string;
  readonly idempotencyKey: string;
  /** Its token. */
  readonly proposal: string;
  readonly seenRevision: number;
  readonly to: string;
};

export type AddSchoolClassInput = {
  /** In the order of the day, none within another. */
  readonly breaks: ReadonlyArray<ClassBreakInput>;
  readonly facility: Facility;
  readonly idempotencyKey: string;
  readonly name: string;
  readonly schoolId: string;
  readonly seenRevision: number;
};

export type AdoptRuleSetInput = {
  /** False ends it. */
  readonly adopted?: boolean;
  readonly idempotencyKey: string;
  readonly ruleSetId: string;
  readonly schoolId: string;
};

export type AgreeWeekInput = {
  readonly idempotencyKey: string;
  readonly seenRevision: number;
  readonly weekId: string;
};

export type AllergyInput = {
  /** An allergen or a family of them (TREE_NUTS, GLUTEN_CEREALS, SHELLFISH). Give this or foodKind. */
  readonly allergen?: string | null | undefined;
  readonly avoid?: Avoid;
  /** One food: kiwi, chickpea. */
  readonly foodKind?: string | null | undefined;
  /** Says that foodKind is meant although no food of the catalogue is of that kind: it shuts out nothing until one is. */
  readonly kindUnknown?: boolean;
};

export type AnswerResidenceChangeInput = {
  readonly accept: boolean;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly proposalId: string;
  readonly seenRevision: number;
};

/** Counts for every box of the weeks it touches that is not packed, until its last day is over. */
export type ApplianceBrokenInput = {
  /** Kind of equipment: OVEN. */
  readonly appliance: string;
  readonly date: string;
  readonly units?: number;
  readonly until?: string | null | undefined;
};

export type AppointInput = {
  readonly idempotencyKey: string;
  readonly jurisdiction?: string | null | undefined;
  /** Give this or jurisdiction. */
  readonly schoolId?: string | null | undefined;
  /** Subject of the person's token. */
  readonly subject: string;
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

export type AvailabilityInput = {
  readonly kind: WindowKind;
  /** 0 to 600; 0: cannot help then. */
  readonly minutes: number;
  readonly weekday: Weekday;
};

export type Avoid =
  /** Only as an ingredient. */
  | 'INGREDIENTS'
  /** May-contain is shut out too; labels are read before packing. */
  | 'TRACES';

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

/** Give dish or food. */
export type BoxCheckItemInput = {
  readonly breakKey: string;
  /** Key of a dish. */
  readonly dish?: string | null | undefined;
  /** Key of a food that is put in as it is. */
  readonly food?: string | null | undefined;
  /** How the food is served: WHOLE, SLICED_THIN and the like. */
  readonly form?: string;
  readonly grams: number;
  readonly slot: Slot;
};

export type BoxState =
  /** Something changed and the box no longer passes; replan before packing. */
  | 'BLOCKED'
  | 'EATEN'
  | 'PACKED'
  | 'PLANNED';

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
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly personId: string;
  readonly role: Role;
};

export type ChangeSchoolClassInput = {
  /** In place of all it had, in the order of the day, none within another. */
  readonly breaks?: ReadonlyArray<ClassBreakInput> | null | undefined;
  readonly idempotencyKey: string;
  readonly name?: string | null | undefined;
  readonly schoolClassId: string;
  /** The school's revision. */
  readonly seenRevision: number;
};

/** What happened to it. */
export type ChangeVerb =
  | 'ADDED'
  | 'CHANGED'
  /** It is gone: take it out of what you show. */
  | 'REMOVED';

export type ChildDaysInput = {
  readonly childId: string;
  readonly date: string;
  readonly reason?: string;
  /** The last day; absent: the one day. */
  readonly until?: string | null | undefined;
};

export type ClashProof =
  /** Out of reach on its face, or every choice was tried. */
  | 'CERTAIN'
  /** A search of a fixed length found no week; it cannot prove that there is none. */
  | 'SEARCHED';

export type ClassBreakInput = {
  /** Part of the day's energy, 0 to 1; absent: our usual share. */
  readonly energyShare?: number | null | undefined;
  /** Lower-case words joined by hyphens, once in a class: morning-break. */
  readonly key: string;
  /** 5 to 120. */
  readonly minutes: number;
  readonly name: string;
  /** What may be eaten then. */
  readonly slots: ReadonlyArray<Slot>;
  /** On the school's clock. */
  readonly startsAt: string;
};

export type CloseFeedInput = {
  readonly householdId: string;
  readonly idempotencyKey: string;
};

export type CompartmentInput = {
  readonly leakProof: boolean;
  /** 50 to 2000. */
  readonly ml: number;
};

export type CountRuleSetComplianceInput = {
  readonly from: string;
  readonly idempotencyKey: string;
  readonly ruleSetId: string;
  /** Last day, at most 400 days later. */
  readonly until: string;
};

export type CountRuleSetImpactInput = {
  /** JSON or YAML text in the format noonpail-rule-set/1, at most 200 kB over HTTP. */
  readonly document: string;
  readonly idempotencyKey: string;
  /** Instead of a school: the jurisdiction whose schools it is for. */
  readonly jurisdiction?: string | null | undefined;
  readonly schoolClassId?: string | null | undefined;
  /** The school it is for; for a class, give schoolClassId as well. */
  readonly schoolId?: string | null | undefined;
};

export type CreateChildInput = {
  /** INACTIVE, LOW_ACTIVE, ACTIVE or VERY_ACTIVE. */
  readonly activity?: string;
  readonly allergies?: ReadonlyArray<AllergyInput>;
  /** 0.5 to 2; 1 is usual. */
  readonly appetite?: number;
  readonly coldSources?: number;
  readonly compartments: ReadonlyArray<CompartmentInput>;
  readonly dateOfBirth: string;
  readonly diets?: ReadonlyArray<string>;
  /** Dish keys or food kinds. */
  readonly dislikes?: ReadonlyArray<string>;
  readonly flask?: boolean;
  readonly heightCm?: number | null | undefined;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly insulated?: boolean;
  /** When the child leaves home on a school day. */
  readonly leaveAt: string;
  readonly minutesToEat?: number;
  readonly name: string;
  readonly seenRevision: number;
  /** FEMALE or MALE, only for the energy estimate; stays with this household. */
  readonly sex?: string | null | undefined;
  readonly weightKg?: number | null | undefined;
};

export type CreateHouseholdInput = {
  readonly currency: string;
  readonly idempotencyKey: string;
  readonly name: string;
  readonly timeZone: string;
};

export type Cutlery =
  | 'CHOPSTICKS'
  | 'FORK'
  | 'NONE'
  | 'SPOON';

export type DismissInput = {
  readonly idempotencyKey: string;
  readonly jurisdiction?: string | null | undefined;
  /** Give this or jurisdiction. */
  readonly schoolId?: string | null | undefined;
  /** Subject of the person's token. */
  readonly subject: string;
};

/** Exactly one of these. */
export type DisruptionInput =
  {   readonly applianceBroken: ApplianceBrokenInput; readonly childAbsent?: never; readonly earlyFinish?: never; readonly foodMissing?: never; readonly schoolClosed?: never; readonly shortMorning?: never; readonly tripDay?: never; }
  |  { readonly applianceBroken?: never;   readonly childAbsent: ChildDaysInput; readonly earlyFinish?: never; readonly foodMissing?: never; readonly schoolClosed?: never; readonly shortMorning?: never; readonly tripDay?: never; }
  |  { readonly applianceBroken?: never; readonly childAbsent?: never;   readonly earlyFinish: EarlyFinishInput; readonly foodMissing?: never; readonly schoolClosed?: never; readonly shortMorning?: never; readonly tripDay?: never; }
  |  { readonly applianceBroken?: never; readonly childAbsent?: never; readonly earlyFinish?: never;   readonly foodMissing: FoodMissingInput; readonly schoolClosed?: never; readonly shortMorning?: never; readonly tripDay?: never; }
  |  { readonly applianceBroken?: never; readonly childAbsent?: never; readonly earlyFinish?: never; readonly foodMissing?: never;   readonly schoolClosed: ChildDaysInput; readonly shortMorning?: never; readonly tripDay?: never; }
  |  { readonly applianceBroken?: never; readonly childAbsent?: never; readonly earlyFinish?: never; readonly foodMissing?: never; readonly schoolClosed?: never;   readonly shortMorning: ShortMorningInput; readonly tripDay?: never; }
  |  { readonly applianceBroken?: never; readonly childAbsent?: never; readonly earlyFinish?: never; readonly foodMissing?: never; readonly schoolClosed?: never; readonly shortMorning?: never;   readonly tripDay: TripDaysInput; };

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

export type DropOwnRulesInput = {
  /** First day on which it asks for nothing. */
  readonly from: string;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly ruleSetId: string;
  readonly seenRevision: number;
};

export type DutyInput = {
  /** Carers of the household, helper or more; at most 6. */
  readonly personIds: ReadonlyArray<string>;
  readonly session: string;
};

export type EarlyFinishInput = {
  readonly childId: string;
  readonly date: string;
  /** Breaks that start at or after it fall away. */
  readonly endsAt: string;
  readonly until?: string | null | undefined;
};

export type EndExemptionInput = {
  readonly exemptionId: string;
  /** First day on which the rule holds again. */
  readonly from: string;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly seenRevision: number;
};

export type EnergyMethod =
  /** Institute of Medicine 2002/2005. */
  | 'IOM_2005'
  /** National Academies 2023. */
  | 'NASEM_2023';

export type EnrolChildInput = {
  readonly childId: string;
  readonly fromDate: string;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly schoolClassId: string;
  readonly seenRevision: number;
  readonly untilDate?: string | null | undefined;
};

export type EquipmentInput = {
  readonly kind: string;
  readonly units: number;
};

export type EraseChildInput = {
  readonly childId: string;
  /** The home that asks. */
  readonly householdId: string;
  readonly idempotencyKey: string;
  /** From the first step's answer, with everything else the same. Absent: the first step. */
  readonly token?: string | null | undefined;
};

export type EraseHouseholdInput = {
  readonly householdId: string;
  readonly idempotencyKey: string;
  /** From the first step's answer, with everything else the same. Absent: the first step. */
  readonly token?: string | null | undefined;
};

export type EraseMeInput = {
  readonly idempotencyKey: string;
  /** From the first step's answer, with everything else the same. Absent: the first step. */
  readonly token?: string | null | undefined;
  /** Also erase the households of which the sender is the only carer, as eraseHousehold does. */
  readonly withHouseholds?: boolean;
};

export type ExemptionRefusal =
  | 'DOES_NOT_HOLD'
  | 'FAMILYS_OWN'
  | 'NAMES_ALLERGEN';

export type Facility =
  | 'NEITHER'
  /** Boxes are kept cold until they are eaten. */
  | 'REFRIGERATOR'
  /** Food can be heated before it is eaten. */
  | 'REHEATING';

export type FinishTaskInput = {
  readonly idempotencyKey: string;
  /** Hands-on minutes it took, 0 to 600, tenths count; absent: nobody looked at the clock. */
  readonly minutes?: number | null | undefined;
  readonly seenRevision: number;
  readonly taskId: string;
};

/** Counts for every box of the weeks it touches that is not packed, until its last day is over. */
export type FoodMissingInput = {
  readonly date: string;
  /** Kind of food: egg, broccoli. */
  readonly foodKind: string;
  readonly until?: string | null | undefined;
};

export type GiveUpHomeInput = {
  readonly childId: string;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly seenRevision: number;
};

export type HandOverCoordinationInput = {
  readonly householdId: string;
  readonly idempotencyKey: string;
  /** Who coordinates from now on. */
  readonly personId: string;
  /** The sender's role from now on: COOK, HELPER or OBSERVER. */
  readonly role: Role;
};

export type HandTaskInput = {
  readonly idempotencyKey: string;
  /** A carer of the household, helper or more. */
  readonly personId: string;
  readonly seenRevision: number;
  readonly taskId: string;
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

export type InvitationKind =
  /** Somebody becomes a carer of the household. */
  | 'CARER'
  /** A child of the household lives in another household too. */
  | 'HOME';

export type InvitationState =
  | 'EXPIRED'
  | 'OPEN'
  | 'USED'
  /** By a coordinator, or because who sent it does not coordinate any more. */
  | 'WITHDRAWN';

export type InviteCarerInput = {
  /** 1 to 720: an hour to 30 days. */
  readonly expiresInHours?: number;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly role: Role;
};

export type InviteHomeInput = {
  readonly childId: string;
  /** 1 to 720: an hour to 30 days. */
  readonly expiresInHours?: number;
  readonly householdId: string;
  readonly idempotencyKey: string;
};

export type KeepOwnRulesInput = {
  readonly childId: string;
  /** A school of the child, where the document writes down what that school asks for: the rule set is then not confirmed. */
  readonly copyOfSchoolId?: string | null | undefined;
  /** JSON or YAML text in the format noonpail-rule-set/1, of layer CHILD. */
  readonly document: string;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly seenRevision: number;
};

export type LabelKindInput = {
  readonly kind: string;
  readonly says: LabelSays;
};

/** Per 100 g, as the label prints it. Absent is not known, never none. */
export type LabelNutrientsInput = {
  /** Absent: all sugars count as free sugars. */
  readonly addedSugarsGrams?: number | null | undefined;
  readonly calciumMg?: number | null | undefined;
  /** Without fibre, as labels in Europe print it. */
  readonly carbohydrateGrams?: number | null | undefined;
  readonly energyKcal?: number | null | undefined;
  readonly energyKj?: number | null | undefined;
  readonly fatGrams?: number | null | undefined;
  readonly fibreGrams?: number | null | undefined;
  readonly folateMicrograms?: number | null | undefined;
  readonly ironMg?: number | null | undefined;
  readonly magnesiumMg?: number | null | undefined;
  readonly phosphorusMg?: number | null | undefined;
  readonly potassiumMg?: number | null | undefined;
  readonly proteinGrams?: number | null | undefined;
  /** Sodium is this divided by 2.5. */
  readonly saltGrams?: number | null | undefined;
  readonly saturatedFatGrams?: number | null | undefined;
  readonly sodiumMg?: number | null | undefined;
  readonly sugarsGrams?: number | null | undefined;
  /** With fibre, as labels in America print it. */
  readonly totalCarbohydrateGrams?: number | null | undefined;
  readonly vitaminAMicrograms?: number | null | undefined;
  readonly vitaminB12Micrograms?: number | null | undefined;
  readonly vitaminCMg?: number | null | undefined;
  readonly vitaminDMicrograms?: number | null | undefined;
  readonly zincMg?: number | null | undefined;
};

export type LabelSays =
  | 'CLEAR'
  | 'CONTAINS'
  | 'MAY_CONTAIN';

export type LeaveHouseholdInput = {
  readonly householdId: string;
  readonly idempotencyKey: string;
};

export type LeftoverInput = {
  /** Base key: rice-cooked. */
  readonly base: string;
  readonly cookedOn: string;
  readonly grams: number;
};

export type LoadCalendarInput = {
  /** The text of an iCalendar file (RFC 5545) with the whole calendar, at most 200,000 characters. CATEGORIES of each event is TERM, HOLIDAY, EARLY-FINISH or TRIP, with CLASS:name for one class; an early finish begins when school ends. */
  readonly calendar: string;
  readonly idempotencyKey: string;
  readonly schoolId: string;
  /** The school's revision. */
  readonly seenRevision: number;
};

export type LoadRuleSetInput = {
  /** JSON or YAML text in the format noonpail-rule-set/1, at most 200 kB over HTTP. */
  readonly document: string;
  readonly idempotencyKey: string;
  /** Instead of a school: the jurisdiction whose schools it is for. */
  readonly jurisdiction?: string | null | undefined;
  readonly schoolClassId?: string | null | undefined;
  /** The school it is for; for a class, give schoolClassId as well. */
  readonly schoolId?: string | null | undefined;
  /** The version of this rule set that the administrator saw; 0 for a new one. */
  readonly seenRevision: number;
};

export type MarkPackedInput = {
  readonly boxId: string;
  readonly idempotencyKey: string;
  readonly packedAt: string;
  readonly seenRevision: number;
};

export type MendWeekInput = {
  readonly idempotencyKey: string;
  readonly seenRevision: number;
  readonly weekId: string;
};

export type MissingFactKind =
  | 'DENSITY'
  | 'FREE_SUGAR'
  /** Water activity or pH. */
  | 'HOLDING'
  /** Nobody has read the label. */
  | 'LABEL'
  | 'NUTRIENT';

export type OwnDishBaseInput = {
  /** Base key: rice-cooked. */
  readonly base: string;
  readonly grams: number;
};

/** All of it each time, for one reference portion. */
export type OwnDishInput = {
  readonly bases?: ReadonlyArray<OwnDishBaseInput>;
  readonly colours?: ReadonlyArray<string>;
  readonly cookedInFat: boolean;
  readonly cuisine?: string;
  readonly cutlery?: Cutlery;
  readonly flavours?: ReadonlyArray<string>;
  /** Hours it stays good to eat, 1 to 24: quality, not safety. */
  readonly goodForHours: number;
  readonly ingredients: ReadonlyArray<OwnIngredientInput>;
  readonly name: string;
  readonly portion: OwnPortionInput;
  /** What school rules ask about: DEEP_FRIED, PASTRY, COATED, CONFECTIONERY, CAKE_OR_BISCUIT, SAVOURY_SNACK, FIZZY_DRINK. */
  readonly processing: ReadonlyArray<string>;
  /** EGG, CHICKEN, PULSE and so on, or NONE. */
  readonly protein: string;
  readonly served: ServedWarmth;
  readonly slots: ReadonlyArray<Slot>;
  readonly spill: SpillClass;
  /** RICE, BREAD, FLATBREAD, PASTA, NOODLE, POTATO, MAIZE, MILLET, GRAIN, BATTER_CAKE or NONE. */
  readonly starch: string;
  readonly steps: ReadonlyArray<OwnDishStepInput>;
  readonly textures?: ReadonlyArray<string>;
  readonly treat?: boolean;
  /** Space of the portion in the box. */
  readonly volumeMl: number;
};

export type OwnDishStepInput = {
  /** Portions one go of the equipment takes; absent when it does not limit. */
  readonly batchPortions?: number | null | undefined;
  /** Minutes to cool after it before the lid may close. */
  readonly coolMinutes?: number;
  readonly equipment?: ReadonlyArray<OwnEquipmentInput>;
  readonly eveningBefore?: boolean;
  readonly handsOnFixedMinutes: number;
  readonly handsOnPerPortionMinutes: number;
  /** The equipment stays occupied while it cools. */
  readonly heldWhileCooling?: boolean;
  readonly passiveMinutes?: number;
  readonly text: string;
};

export type OwnEquipmentInput = {
  readonly kind: string;
  readonly units?: number;
};

/** All of it each time: what is absent is not known, and nothing is kept from before. */
export type OwnFoodInput = {
  /** Shapes and textures small children choke on; an empty list says there are none. */
  readonly chokingClasses: ReadonlyArray<string>;
  /** Needed for recipes in millilitres. */
  readonly densityGramsPerMl?: number | null | undefined;
  /** A food group: GRAIN, CONDIMENT. */
  readonly group: string;
  readonly keepsChilledDays?: number | null | undefined;
  /** The plant, animal or product it is, for allergies to one food: chickpea, cow-milk. */
  readonly kind: string;
  /** Absent: nobody has read it, and it counts as unread for everybody who avoids anything. */
  readonly label?: OwnLabelInput | null | undefined;
  readonly name: string;
  readonly nutrients: LabelNutrientsInput;
  /** What it comes from: PLANT, DAIRY, EGG. All of them. */
  readonly origins: ReadonlyArray<string>;
  readonly pack: OwnPackInput;
  /** Sold with a label. Only an unpackaged food whose allergens are stated is taken to be nothing but its kind. */
  readonly packaged?: boolean;
  /** The day from which the product is as entered; an older label is another product's. */
  readonly productSince?: string | null | undefined;
  readonly refusePercent?: number;
  /** PRODUCE, CHILLED, MEAT_FISH, BAKERY, DRY_GOODS, TINS_JARS, FROZEN or SPICES_OILS. */
  readonly shopSection: string;
  readonly wholeGrain?: boolean;
};

export type OwnIngredientInput = {
  /** Food key, of the catalogue or of the household's own list. */
  readonly food: string;
  /** How it reaches the box: WHOLE, GRATED, MIXED_IN. */
  readonly form?: string;
  /** Give this or ml. */
  readonly grams?: number | null | undefined;
  /** Only for a food whose density is known. */
  readonly ml?: number | null | undefined;
  /** Code of the retention table for a raw food cooked here; 0000 where none of it fits. Without one it counts as eaten raw. */
  readonly retention?: string | null | undefined;
};

export type OwnLabelInput = {
  readonly contains: ReadonlyArray<string>;
  readonly kinds?: ReadonlyArray<LabelKindInput>;
  readonly mayContain: ReadonlyArray<string>;
  readonly readOn: string;
};

export type OwnPackInput = {
  readonly grams: number;
  /** In the household's currency. */
  readonly priceMinor: number;
};

/** Weighed (grams, stepGrams) or counted (gramsPerPiece, pieces, stepPieces, pieceName). */
export type OwnPortionInput = {
  readonly grams?: number | null | undefined;
  readonly gramsPerPiece?: number | null | undefined;
  readonly pieceName?: string | null | undefined;
  readonly pieces?: number | null | undefined;
  readonly stepGrams?: number | null | undefined;
  readonly stepPieces?: number | null | undefined;
};

export type PinItemInput = {
  readonly idempotencyKey: string;
  readonly itemId: string;
  readonly seenRevision: number;
};

export type PlanState =
  | 'AGREED'
  | 'DRAFT'
  | 'REPLACED';

/** The same as for planWeek. */
export type PlanWeekInBackgroundInput = {
  readonly date: string;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly replanAgreed?: boolean;
  readonly seenRevision: number;
};

export type PlanWeekInput = {
  /** Any day of the week. */
  readonly date: string;
  readonly householdId: string;
  readonly idempotencyKey: string;
  /** Needed to plan an agreed week afresh; changes as few boxes as it can. */
  readonly replanAgreed?: boolean;
  /** The week's revision; 0 when nothing has been planned for it. */
  readonly seenRevision: number;
};

export type PrepTimeInput = {
  readonly carers?: number;
  /** Only on this day. */
  readonly date?: string | null | undefined;
  /** A usual value for the kind of session when absent: weekend 4, evening 6, morning 10. */
  readonly effort?: number | null | undefined;
  readonly elapsedMinutes: number;
  readonly handsOnMinutes: number;
  readonly kind: WindowKind;
  readonly startsAt: string;
  /** Every week on this day. Give this or date. */
  readonly weekday?: Weekday | null | undefined;
};

export type ProposalState =
  | 'ACCEPTED'
  | 'DECLINED'
  | 'PROPOSED'
  | 'WITHDRAWN';

export type ProposeResidenceChangeInput = {
  readonly childId: string;
  /** 1 to 62 days from today on. */
  readonly dates: ReadonlyArray<string>;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly seenRevision: number;
  /** In this home; false: in the other. */
  readonly wakesHere: boolean;
};

export type RecordAllergyInput = {
  /** An allergen or a family of them (TREE_NUTS, GLUTEN_CEREALS, SHELLFISH). Give this or foodKind. */
  readonly allergen?: string | null | undefined;
  readonly avoid?: Avoid;
  readonly childId: string;
  /** One food: kiwi, chickpea. */
  readonly foodKind?: string | null | undefined;
  readonly householdId: string;
  readonly idempotencyKey: string;
  /** Says that foodKind is meant although no food of the catalogue is of that kind: it shuts out nothing until one is. */
  readonly kindUnknown?: boolean;
  readonly seenRevision: number;
};

export type RecordExemptionInput = {
  readonly childId: string;
  /** Who wrote the note. It stays with this home. */
  readonly clinician: string;
  readonly from: string;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly note: string;
  /** The rule's key in its document. */
  readonly rule: string;
  readonly ruleSetId: string;
  readonly seenRevision: number;
  /** Last day, at most a year later. */
  readonly until: string;
};

export type RecordLabelInput = {
  readonly contains: ReadonlyArray<string>;
  /** Food key. */
  readonly food: string;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly kinds?: ReadonlyArray<LabelKindInput>;
  readonly mayContain: ReadonlyArray<string>;
  readonly readOn: string;
  readonly seenRevision: number;
};

export type RegisterSchoolInput = {
  readonly idempotencyKey: string;
  readonly jurisdiction: string;
  /** Of at most 80 characters; no two schools have the same. */
  readonly name: string;
  /** IANA time zone, such as Europe/London. */
  readonly timeZone: string;
};

export type RelaxHouseRuleInput = {
  readonly date: string;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly rule: HouseRule;
  readonly seenRevision: number;
};

export type ReleaseTaskInput = {
  readonly idempotencyKey: string;
  readonly seenRevision: number;
  readonly taskId: string;
};

export type ReminderKind =
  /** A quarter of an hour before a session, to those on for it. */
  | 'SESSION_BEGINS'
  /** Ten minutes before a task, to whoever holds it. */
  | 'TASK_BEGINS'
  /** When a task that nobody holds can begin no later, to everybody in the household. */
  | 'TASK_GETS_LATE';

export type RemoveAllergyInput = {
  readonly allergen?: string | null | undefined;
  readonly childId: string;
  readonly foodKind?: string | null | undefined;
  readonly householdId: string;
  readonly idempotencyKey: string;
  /** INGREDIENTS keeps it less strictly; absent: it is removed. */
  readonly loosenTo?: Avoid | null | undefined;
  readonly seenRevision: number;
  /** From the first step's answer, with everything else the same. Absent: the first step. */
  readonly token?: string | null | undefined;
};

export type RemoveCarerInput = {
  readonly householdId: string;
  readonly idempotencyKey: string;
  /** Somebody else; who goes themselves leaves (leaveHousehold). */
  readonly personId: string;
};

export type RemoveOwnDishInput = {
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly key: string;
  readonly seenRevision: number;
};

export type RemoveOwnFoodInput = {
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly key: string;
  readonly seenRevision: number;
};

export type RemoveSchoolDayInput = {
  readonly date: string;
  readonly idempotencyKey: string;
  readonly schoolClassId?: string | null | undefined;
  readonly schoolId: string;
  readonly seenRevision: number;
};

export type RemoveTermInput = {
  readonly firstDay: string;
  readonly idempotencyKey: string;
  readonly schoolId: string;
  readonly seenRevision: number;
};

export type RenameMeInput = {
  /** 1 to 80 characters. */
  readonly displayName: string;
  readonly idempotencyKey: string;
};

export type RenewFeedAddressInput = {
  readonly householdId: string;
  readonly idempotencyKey: string;
};

export type ReportAbsenceInput = {
  readonly childId: string;
  readonly date: string;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly reason?: string;
  readonly seenRevision: number;
};

export type ReportDisruptionInput = {
  readonly disruption: DisruptionInput;
  readonly householdId: string;
  readonly idempotencyKey: string;
  /** Of the week that holds the first of its days from today on; 0 when nothing has been planned for it. */
  readonly seenRevision: number;
};

export type ReportReturnedInput = {
  readonly boxId: string;
  /** 1 to 40; items left out stay as they are. */
  readonly entries: ReadonlyArray<ReturnedInput>;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly seenRevision: number;
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

export type ResidenceSource =
  /** Agreed for the one day. */
  | 'EXCEPTION'
  | 'PATTERN'
  /** Nothing is agreed: the home in which the child has lived longest. */
  | 'USUAL';

export type ReturnedInput = {
  readonly cameBack: CameBack;
  readonly itemId: string;
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

export type RuleChangeKind =
  | 'ADDED'
  | 'CHANGED'
  | 'REMOVED';

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

export type RuleSetDocumentInput = {
  /** JSON or YAML text in the format noonpail-rule-set/1, at most 200 kB over HTTP. */
  readonly document: string;
  /** Instead of a school: the jurisdiction whose schools it is for. */
  readonly jurisdiction?: string | null | undefined;
  readonly schoolClassId?: string | null | undefined;
  /** The school it is for; for a class, give schoolClassId as well. */
  readonly schoolId?: string | null | undefined;
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
  readonly householdId: string;
  readonly idempotencyKey: string;
  /** Of the dish to change; absent for a new one. */
  readonly key?: string | null | undefined;
  readonly seenRevision: number;
};

export type SaveOwnFoodInput = {
  readonly food: OwnFoodInput;
  readonly householdId: string;
  readonly idempotencyKey: string;
  /** Of the food to change; absent for a new one. */
  readonly key?: string | null | undefined;
  readonly seenRevision: number;
};

export type SchoolDayKind =
  | 'EARLY_FINISH'
  | 'HOLIDAY'
  | 'TRIP';

export type SchoolProvisionInput = {
  /** A break of the child's class; any break without it. */
  readonly breakKey?: string | null | undefined;
  /** Food key: milk-whole. */
  readonly food: string;
  /** 1 to 1000. A glass of milk of 200 ml weighs 206 g. */
  readonly grams: number;
  /** Every school day without it. */
  readonly weekday?: Weekday | null | undefined;
};

export type ServedWarmth =
  | 'COLD'
  | 'EITHER'
  | 'WARM';

export type SetAvailabilityInput = {
  readonly entries: ReadonlyArray<AvailabilityInput>;
  readonly householdId: string;
  readonly idempotencyKey: string;
  /** Absent: one's own. */
  readonly personId?: string | null | undefined;
  readonly seenRevision: number;
};

export type SetBoxKitInput = {
  readonly childId: string;
  readonly coldSources?: number;
  readonly compartments: ReadonlyArray<CompartmentInput>;
  readonly flask?: boolean;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly insulated?: boolean;
  /** On Mondays to Fridays. */
  readonly leaveAt: string;
  readonly seenRevision: number;
};

export type SetDutiesInput = {
  readonly duties: ReadonlyArray<DutyInput>;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly seenRevision: number;
};

export type SetEnergyMethodInput = {
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly method: EnergyMethod;
  readonly seenRevision: number;
};

export type SetEquipmentInput = {
  readonly equipment: ReadonlyArray<EquipmentInput>;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly seenRevision: number;
};

export type SetFacilityInput = {
  readonly facility: Facility;
  readonly idempotencyKey: string;
  readonly schoolClassId: string;
  /** The school's revision. */
  readonly seenRevision: number;
};

export type SetHotDaysInput = {
  readonly dates: ReadonlyArray<string>;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly seenRevision: number;
};

export type SetKeepsOutInput = {
  /** Allergens or families of them. */
  readonly allergens: ReadonlyArray<string>;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly seenRevision: number;
};

export type SetLeftoversInput = {
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly leftovers: ReadonlyArray<LeftoverInput>;
  readonly seenRevision: number;
};

export type SetPrepTimesInput = {
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly prepTimes: ReadonlyArray<PrepTimeInput>;
  readonly seenRevision: number;
};

export type SetResidencePatternInput = {
  readonly childId: string;
  /** Of an own cycle only: the home of each day. */
  readonly cycle?: ReadonlyArray<HomeSide> | null | undefined;
  /** Where the child wakes on the first day. Not asked of an own cycle. */
  readonly firstHome?: HomeSide;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly kind: ResidenceKind;
  readonly seenRevision: number;
  /** First day of the cycle, from today on, at most a year ahead. */
  readonly starts: string;
};

export type SetSchoolDayInput = {
  readonly date: string;
  /** For an early finish: breaks that start at or after it fall away. */
  readonly endsAt?: string | null | undefined;
  readonly idempotencyKey: string;
  readonly kind: SchoolDayKind;
  /** Absent: the whole school. */
  readonly schoolClassId?: string | null | undefined;
  readonly schoolId: string;
  readonly seenRevision: number;
  readonly title: string;
};

export type SetSchoolProvisionInput = {
  readonly childId: string;
  readonly entries: ReadonlyArray<SchoolProvisionInput>;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly seenRevision: number;
};

export type SetStockInput = {
  readonly entries: ReadonlyArray<StockEntryInput>;
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly seenRevision: number;
};

export type SetTermInput = {
  readonly firstDay: string;
  readonly idempotencyKey: string;
  /** The last one itself. */
  readonly lastDay: string;
  readonly name: string;
  /** First day of the term that it takes the place of; absent: a new one. */
  readonly replaces?: string | null | undefined;
  readonly schoolId: string;
  readonly seenRevision: number;
};

export type ShortMorningInput = {
  readonly date: string;
  /** That are left, up to the end of the morning's session or the first child's leaving. */
  readonly minutes: number;
};

export type Slot =
  | 'EXTRA'
  | 'FRUIT'
  | 'MAIN'
  | 'VEGETABLE';

export type SpillClass =
  | 'DRY'
  | 'MOIST'
  | 'WET';

export type StockEntryInput = {
  /** Food key: rice-white-long-raw. */
  readonly food: string;
  readonly grams: number;
};

export type SwapItemInput = {
  /** Key of the dish to put there. */
  readonly dish: string;
  readonly idempotencyKey: string;
  readonly itemId: string;
  readonly seenRevision: number;
};

export type TakeTaskInput = {
  readonly idempotencyKey: string;
  readonly seenRevision: number;
  readonly taskId: string;
};

export type TickShoppingLineInput = {
  readonly idempotencyKey: string;
  readonly lineId: string;
  /** Ticks do not overtake each other: it may be an older one, but not one that has not been. */
  readonly seenRevision: number;
  readonly ticked: boolean;
};

export type TripDaysInput = {
  readonly childId: string;
  readonly date: string;
  readonly until?: string | null | undefined;
};

export type UndoTaskInput = {
  readonly idempotencyKey: string;
  readonly seenRevision: number;
  readonly taskId: string;
};

export type UnpinItemInput = {
  readonly idempotencyKey: string;
  readonly itemId: string;
  readonly seenRevision: number;
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

export type WithdrawDisruptionInput = {
  readonly disruptionId: string;
  readonly householdId: string;
  readonly idempotencyKey: string;
  /** Of the week that holds the first of its days from today on; 0 when nothing has been planned for it. */
  readonly seenRevision: number;
};

export type WithdrawErasureInput = {
  readonly childId: string;
  readonly householdId: string;
  readonly idempotencyKey: string;
};

export type WithdrawInvitationInput = {
  readonly idempotencyKey: string;
  readonly invitationId: string;
};

export type WithdrawResidenceChangeInput = {
  readonly householdId: string;
  readonly idempotencyKey: string;
  readonly proposalId: string;
  readonly seenRevision: number;
};

export type WithdrawRuleSetInput = {
  /** First day on which it asks for nothing. */
  readonly from: string;
  readonly idempotencyKey: string;
  readonly ruleSetId: string;
  /** The version that the administrator saw. */
  readonly seenRevision: number;
};

export type WorkState =
  | 'DONE'
  | 'OPEN'
  | 'TAKEN';

export type WriteHandoverInput = {
  readonly avoid?: ReadonlyArray<string>;
  readonly box?: Whereabouts | null | undefined;
  readonly childId: string;
  /** Any day of the week, within 62 days. */
  readonly date: string;
  readonly flask?: Whereabouts | null | undefined;
  readonly householdId: string;
  readonly icePacks?: Whereabouts | null | undefined;
  readonly idempotencyKey: string;
  /** At most 500 characters. */
  readonly note?: string;
  /** At most 20 dishes or words, of at most 80 characters each. */
  readonly repeat?: ReadonlyArray<string>;
  /** Of the note; 0 where nothing has been written. */
  readonly seenRevision: number;
};

export type AdministeredQueryVariables = Exact<{ [key: string]: never; }>;


export type AdministeredQuery = { readonly me: { readonly person: { readonly id: string, readonly displayName: string }, readonly administers: ReadonlyArray<{ readonly id: string, readonly name: string, readonly timeZone: string, readonly jurisdiction: string | null, readonly revision: number, readonly ruleSets: ReadonlyArray<{ readonly id: string, readonly key: string, readonly version: number, readonly title: string, readonly layer: RuleLayer, readonly confirmed: boolean, readonly withdrawn: boolean, readonly inForceFrom: string, readonly inForceUntil: string | null }>, readonly classes: ReadonlyArray<{ readonly id: string, readonly name: string, readonly facility: Facility, readonly breaks: ReadonlyArray<{ readonly key: string, readonly name: string, readonly startsAt: string, readonly minutes: number, readonly slots: ReadonlyArray<Slot>, readonly energyShare: number }> }>, readonly terms: ReadonlyArray<{ readonly name: string, readonly firstDay: string, readonly lastDay: string }>, readonly days: ReadonlyArray<{ readonly date: string, readonly kind: SchoolDayKind, readonly title: string, readonly endsAt: string | null }> }> } };

export type CheckRuleSetQueryVariables = Exact<{
  input: RuleSetDocumentInput;
}>;


export type CheckRuleSetQuery = { readonly ruleSetCheck:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'RuleSetCheck', readonly comparedWith: number | null, readonly unchanged: boolean, readonly errors: ReadonlyArray<{ readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> }>, readonly warnings: ReadonlyArray<{ readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> }>, readonly difference: { readonly fields: ReadonlyArray<{ readonly field: string, readonly before: string | null, readonly after: string | null }>, readonly rules: ReadonlyArray<{ readonly kind: RuleChangeKind, readonly rule: { readonly key: string, readonly says: string } }> } | null }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
   };

export type RuleSetFormatQueryVariables = Exact<{ [key: string]: never; }>;


export type RuleSetFormatQuery = { readonly ruleSetFormat: string };

export type RulesOfSchoolQueryVariables = Exact<{
  schoolId: string;
}>;


export type RulesOfSchoolQuery = { readonly school: { readonly id: string, readonly ruleSets: ReadonlyArray<{ readonly id: string, readonly key: string, readonly version: number, readonly title: string, readonly layer: RuleLayer, readonly confirmed: boolean, readonly withdrawn: boolean, readonly inForceFrom: string, readonly inForceUntil: string | null, readonly rules: ReadonlyArray<{ readonly key: string, readonly kind: string, readonly level: RuleLevel, readonly says: string, readonly source: string }> }> } | null };

export type JurisdictionRuleSetsQueryVariables = Exact<{
  jurisdiction: string;
}>;


export type JurisdictionRuleSetsQuery = { readonly jurisdictionRuleSets: ReadonlyArray<{ readonly id: string, readonly key: string, readonly version: number, readonly title: string, readonly layer: RuleLayer, readonly confirmed: boolean, readonly withdrawn: boolean, readonly inForceFrom: string, readonly inForceUntil: string | null, readonly rules: ReadonlyArray<{ readonly key: string, readonly kind: string, readonly level: RuleLevel, readonly says: string, readonly source: string }> }> };

export type CalendarChangeQueryVariables = Exact<{
  schoolId: string;
  calendar: string;
}>;


export type CalendarChangeQuery = { readonly calendarChange:
    | { readonly __typename: 'CalendarChange', readonly seenRevision: number, readonly unchanged: number, readonly added: ReadonlyArray<{ readonly kind: CalendarKind, readonly title: string, readonly firstDay: string, readonly lastDay: string, readonly endsAt: string | null, readonly schoolClass: { readonly id: string, readonly name: string } | null }>, readonly changed: ReadonlyArray<{ readonly before: { readonly kind: CalendarKind, readonly title: string, readonly firstDay: string, readonly lastDay: string, readonly endsAt: string | null, readonly schoolClass: { readonly id: string, readonly name: string } | null }, readonly after: { readonly kind: CalendarKind, readonly title: string, readonly firstDay: string, readonly lastDay: string, readonly endsAt: string | null, readonly schoolClass: { readonly id: string, readonly name: string } | null } }>, readonly removed: ReadonlyArray<{ readonly kind: CalendarKind, readonly title: string, readonly firstDay: string, readonly lastDay: string, readonly endsAt: string | null, readonly schoolClass: { readonly id: string, readonly name: string } | null }>, readonly setByHand: ReadonlyArray<{ readonly kind: CalendarKind, readonly title: string, readonly firstDay: string, readonly lastDay: string, readonly endsAt: string | null, readonly schoolClass: { readonly id: string, readonly name: string } | null }>, readonly warnings: ReadonlyArray<{ readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> }> }
    | { readonly __typename: 'DocumentRefused', readonly message: string, readonly issues: ReadonlyArray<{ readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> }>, readonly warnings: ReadonlyArray<{ readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> }> }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
   };

export type SchoolAuditQueryVariables = Exact<{
  schoolId: string;
  first: number;
  after?: string | null | undefined;
}>;


export type SchoolAuditQuery = { readonly school: { readonly id: string, readonly appointments: ReadonlyArray<{ readonly since: string, readonly person: { readonly id: string, readonly displayName: string } }> | null, readonly audit: { readonly nodes: ReadonlyArray<{ readonly at: string, readonly action: AuditAction, readonly jurisdiction: string | null, readonly details: string, readonly person: { readonly displayName: string } | null, readonly about: { readonly displayName: string } | null, readonly school: { readonly id: string, readonly name: string } | null }>, readonly pageInfo: { readonly endCursor: string | null, readonly hasNextPage: boolean } } | null } | null };

export type JurisdictionAuditQueryVariables = Exact<{
  jurisdiction: string;
  first: number;
  after?: string | null | undefined;
}>;


export type JurisdictionAuditQuery = { readonly jurisdictionAppointments: ReadonlyArray<{ readonly since: string, readonly person: { readonly id: string, readonly displayName: string }, readonly school: { readonly id: string, readonly name: string } | null }> | null, readonly jurisdictionAudit: { readonly nodes: ReadonlyArray<{ readonly at: string, readonly action: AuditAction, readonly jurisdiction: string | null, readonly details: string, readonly person: { readonly displayName: string } | null, readonly about: { readonly displayName: string } | null, readonly school: { readonly id: string, readonly name: string } | null }>, readonly pageInfo: { readonly endCursor: string | null, readonly hasNextPage: boolean } } | null };

export type LoadRuleSetMutationVariables = Exact<{
  input: LoadRuleSetInput;
}>;


export type LoadRuleSetMutation = { readonly loadRuleSet:
    | { readonly __typename: 'DocumentRefused', readonly message: string, readonly issues: ReadonlyArray<{ readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> }>, readonly warnings: ReadonlyArray<{ readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> }> }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'LoadRuleSetPayload', readonly unchanged: boolean, readonly ruleSet: { readonly id: string, readonly key: string, readonly version: number, readonly title: string, readonly layer: RuleLayer, readonly confirmed: boolean, readonly withdrawn: boolean, readonly inForceFrom: string, readonly inForceUntil: string | null, readonly rules: ReadonlyArray<{ readonly key: string, readonly kind: string, readonly level: RuleLevel, readonly says: string, readonly source: string }> } }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
   };

export type WithdrawRuleSetMutationVariables = Exact<{
  input: WithdrawRuleSetInput;
}>;


export type WithdrawRuleSetMutation = { readonly withdrawRuleSet:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'LoadRuleSetPayload', readonly unchanged: boolean, readonly ruleSet: { readonly id: string, readonly key: string, readonly version: number, readonly title: string, readonly layer: RuleLayer, readonly confirmed: boolean, readonly withdrawn: boolean, readonly inForceFrom: string, readonly inForceUntil: string | null, readonly rules: ReadonlyArray<{ readonly key: string, readonly kind: string, readonly level: RuleLevel, readonly says: string, readonly source: string }> } }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type AdoptRuleSetMutationVariables = Exact<{
  input: AdoptRuleSetInput;
}>;


export type AdoptRuleSetMutation = { readonly adoptRuleSet:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
    | { readonly __typename: 'SchoolPayload', readonly school: { readonly id: string, readonly ruleSets: ReadonlyArray<{ readonly id: string, readonly key: string, readonly version: number, readonly title: string, readonly layer: RuleLayer, readonly confirmed: boolean, readonly withdrawn: boolean, readonly inForceFrom: string, readonly inForceUntil: string | null, readonly rules: ReadonlyArray<{ readonly key: string, readonly kind: string, readonly level: RuleLevel, readonly says: string, readonly source: string }> }> } }
   };

export type CountRuleSetImpactMutationVariables = Exact<{
  input: CountRuleSetImpactInput;
}>;


export type CountRuleSetImpactMutation = { readonly countRuleSetImpact:
    | { readonly __typename: 'DocumentRefused', readonly message: string, readonly issues: ReadonlyArray<{ readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> }>, readonly warnings: ReadonlyArray<{ readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> }> }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'RuleSetCounts', readonly from: string, readonly until: string, readonly ownDishes: number | null, readonly notCounted: ReadonlyArray<string>, readonly all: { readonly held: number | null, readonly boxes: number | null, readonly children: number | null, readonly weeks: number | null }, readonly rules: ReadonlyArray<{ readonly rule: string | null, readonly held: number | null, readonly boxes: number | null, readonly children: number | null, readonly weeks: number | null }> }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
   };

export type CountRuleSetComplianceMutationVariables = Exact<{
  input: CountRuleSetComplianceInput;
}>;


export type CountRuleSetComplianceMutation = { readonly countRuleSetCompliance:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RuleSetCounts', readonly from: string, readonly until: string, readonly ownDishes: number | null, readonly notCounted: ReadonlyArray<string>, readonly all: { readonly held: number | null, readonly boxes: number | null, readonly children: number | null, readonly weeks: number | null }, readonly rules: ReadonlyArray<{ readonly rule: string | null, readonly held: number | null, readonly boxes: number | null, readonly children: number | null, readonly weeks: number | null }> }
   };

export type LoadCalendarMutationVariables = Exact<{
  input: LoadCalendarInput;
}>;


export type LoadCalendarMutation = { readonly loadCalendar:
    | { readonly __typename: 'DocumentRefused', readonly message: string, readonly issues: ReadonlyArray<{ readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> }>, readonly warnings: ReadonlyArray<{ readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> }> }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
    | { readonly __typename: 'SchoolPayload', readonly school: { readonly id: string, readonly name: string, readonly timeZone: string, readonly jurisdiction: string | null, readonly revision: number, readonly classes: ReadonlyArray<{ readonly id: string, readonly name: string, readonly facility: Facility, readonly breaks: ReadonlyArray<{ readonly key: string, readonly name: string, readonly startsAt: string, readonly minutes: number, readonly slots: ReadonlyArray<Slot>, readonly energyShare: number }> }>, readonly terms: ReadonlyArray<{ readonly name: string, readonly firstDay: string, readonly lastDay: string }>, readonly days: ReadonlyArray<{ readonly date: string, readonly kind: SchoolDayKind, readonly title: string, readonly endsAt: string | null }> } }
   };

export type SetTermMutationVariables = Exact<{
  input: SetTermInput;
}>;


export type SetTermMutation = { readonly setTerm:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
    | { readonly __typename: 'SchoolPayload', readonly school: { readonly id: string, readonly name: string, readonly timeZone: string, readonly jurisdiction: string | null, readonly revision: number, readonly classes: ReadonlyArray<{ readonly id: string, readonly name: string, readonly facility: Facility, readonly breaks: ReadonlyArray<{ readonly key: string, readonly name: string, readonly startsAt: string, readonly minutes: number, readonly slots: ReadonlyArray<Slot>, readonly energyShare: number }> }>, readonly terms: ReadonlyArray<{ readonly name: string, readonly firstDay: string, readonly lastDay: string }>, readonly days: ReadonlyArray<{ readonly date: string, readonly kind: SchoolDayKind, readonly title: string, readonly endsAt: string | null }> } }
   };

export type RemoveTermMutationVariables = Exact<{
  input: RemoveTermInput;
}>;


export type RemoveTermMutation = { readonly removeTerm:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
    | { readonly __typename: 'SchoolPayload', readonly school: { readonly id: string, readonly name: string, readonly timeZone: string, readonly jurisdiction: string | null, readonly revision: number, readonly classes: ReadonlyArray<{ readonly id: string, readonly name: string, readonly facility: Facility, readonly breaks: ReadonlyArray<{ readonly key: string, readonly name: string, readonly startsAt: string, readonly minutes: number, readonly slots: ReadonlyArray<Slot>, readonly energyShare: number }> }>, readonly terms: ReadonlyArray<{ readonly name: string, readonly firstDay: string, readonly lastDay: string }>, readonly days: ReadonlyArray<{ readonly date: string, readonly kind: SchoolDayKind, readonly title: string, readonly endsAt: string | null }> } }
   };

export type SetSchoolDayMutationVariables = Exact<{
  input: SetSchoolDayInput;
}>;


export type SetSchoolDayMutation = { readonly setSchoolDay:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
    | { readonly __typename: 'SchoolPayload', readonly school: { readonly id: string, readonly name: string, readonly timeZone: string, readonly jurisdiction: string | null, readonly revision: number, readonly classes: ReadonlyArray<{ readonly id: string, readonly name: string, readonly facility: Facility, readonly breaks: ReadonlyArray<{ readonly key: string, readonly name: string, readonly startsAt: string, readonly minutes: number, readonly slots: ReadonlyArray<Slot>, readonly energyShare: number }> }>, readonly terms: ReadonlyArray<{ readonly name: string, readonly firstDay: string, readonly lastDay: string }>, readonly days: ReadonlyArray<{ readonly date: string, readonly kind: SchoolDayKind, readonly title: string, readonly endsAt: string | null }> } }
   };

export type RemoveSchoolDayMutationVariables = Exact<{
  input: RemoveSchoolDayInput;
}>;


export type RemoveSchoolDayMutation = { readonly removeSchoolDay:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
    | { readonly __typename: 'SchoolPayload', readonly school: { readonly id: string, readonly name: string, readonly timeZone: string, readonly jurisdiction: string | null, readonly revision: number, readonly classes: ReadonlyArray<{ readonly id: string, readonly name: string, readonly facility: Facility, readonly breaks: ReadonlyArray<{ readonly key: string, readonly name: string, readonly startsAt: string, readonly minutes: number, readonly slots: ReadonlyArray<Slot>, readonly energyShare: number }> }>, readonly terms: ReadonlyArray<{ readonly name: string, readonly firstDay: string, readonly lastDay: string }>, readonly days: ReadonlyArray<{ readonly date: string, readonly kind: SchoolDayKind, readonly title: string, readonly endsAt: string | null }> } }
   };

export type SetFacilityMutationVariables = Exact<{
  input: SetFacilityInput;
}>;


export type SetFacilityMutation = { readonly setFacility:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
    | { readonly __typename: 'SchoolPayload', readonly school: { readonly id: string, readonly name: string, readonly timeZone: string, readonly jurisdiction: string | null, readonly revision: number, readonly classes: ReadonlyArray<{ readonly id: string, readonly name: string, readonly facility: Facility, readonly breaks: ReadonlyArray<{ readonly key: string, readonly name: string, readonly startsAt: string, readonly minutes: number, readonly slots: ReadonlyArray<Slot>, readonly energyShare: number }> }>, readonly terms: ReadonlyArray<{ readonly name: string, readonly firstDay: string, readonly lastDay: string }>, readonly days: ReadonlyArray<{ readonly date: string, readonly kind: SchoolDayKind, readonly title: string, readonly endsAt: string | null }> } }
   };

export type AddSchoolClassMutationVariables = Exact<{
  input: AddSchoolClassInput;
}>;


export type AddSchoolClassMutation = { readonly addSchoolClass:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
    | { readonly __typename: 'SchoolPayload', readonly school: { readonly id: string, readonly name: string, readonly timeZone: string, readonly jurisdiction: string | null, readonly revision: number, readonly classes: ReadonlyArray<{ readonly id: string, readonly name: string, readonly facility: Facility, readonly breaks: ReadonlyArray<{ readonly key: string, readonly name: string, readonly startsAt: string, readonly minutes: number, readonly slots: ReadonlyArray<Slot>, readonly energyShare: number }> }>, readonly terms: ReadonlyArray<{ readonly name: string, readonly firstDay: string, readonly lastDay: string }>, readonly days: ReadonlyArray<{ readonly date: string, readonly kind: SchoolDayKind, readonly title: string, readonly endsAt: string | null }> } }
   };

export type ChangeSchoolClassMutationVariables = Exact<{
  input: ChangeSchoolClassInput;
}>;


export type ChangeSchoolClassMutation = { readonly changeSchoolClass:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
    | { readonly __typename: 'SchoolPayload', readonly school: { readonly id: string, readonly name: string, readonly timeZone: string, readonly jurisdiction: string | null, readonly revision: number, readonly classes: ReadonlyArray<{ readonly id: string, readonly name: string, readonly facility: Facility, readonly breaks: ReadonlyArray<{ readonly key: string, readonly name: string, readonly startsAt: string, readonly minutes: number, readonly slots: ReadonlyArray<Slot>, readonly energyShare: number }> }>, readonly terms: ReadonlyArray<{ readonly name: string, readonly firstDay: string, readonly lastDay: string }>, readonly days: ReadonlyArray<{ readonly date: string, readonly kind: SchoolDayKind, readonly title: string, readonly endsAt: string | null }> } }
   };

export type AppointMutationVariables = Exact<{
  input: AppointInput;
}>;


export type AppointMutation = { readonly appoint:
    | { readonly __typename: 'AppointmentsPayload', readonly appointments: ReadonlyArray<{ readonly jurisdiction: string | null, readonly since: string, readonly person: { readonly id: string, readonly displayName: string }, readonly school: { readonly id: string, readonly name: string } | null }> }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'PersonNotFound', readonly message: string }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
   };

export type DismissMutationVariables = Exact<{
  input: DismissInput;
}>;


export type DismissMutation = { readonly dismiss:
    | { readonly __typename: 'AppointmentsPayload', readonly appointments: ReadonlyArray<{ readonly jurisdiction: string | null, readonly since: string, readonly person: { readonly id: string, readonly displayName: string }, readonly school: { readonly id: string, readonly name: string } | null }> }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'LastAdministrator', readonly message: string }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'PersonNotFound', readonly message: string }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
   };

export type RegisterSchoolMutationVariables = Exact<{
  input: RegisterSchoolInput;
}>;


export type RegisterSchoolMutation = { readonly registerSchool:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotAppointed', readonly message: string }
    | { readonly __typename: 'SchoolPayload', readonly school: { readonly id: string, readonly name: string, readonly timeZone: string, readonly jurisdiction: string | null, readonly revision: number, readonly classes: ReadonlyArray<{ readonly id: string, readonly name: string, readonly facility: Facility, readonly breaks: ReadonlyArray<{ readonly key: string, readonly name: string, readonly startsAt: string, readonly minutes: number, readonly slots: ReadonlyArray<Slot>, readonly energyShare: number }> }>, readonly terms: ReadonlyArray<{ readonly name: string, readonly firstDay: string, readonly lastDay: string }>, readonly days: ReadonlyArray<{ readonly date: string, readonly kind: SchoolDayKind, readonly title: string, readonly endsAt: string | null }> } }
   };

export type TakeTaskMutationVariables = Exact<{
  input: TakeTaskInput;
}>;


export type TakeTaskMutation = { readonly takeTask:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'TaskHeld', readonly message: string, readonly state: WorkState, readonly holder: { readonly id: string, readonly displayName: string } | null }
    | { readonly __typename: 'TaskPayload', readonly revision: number, readonly task: { readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null } }
   };

export type FinishTaskMutationVariables = Exact<{
  input: FinishTaskInput;
}>;


export type FinishTaskMutation = { readonly finishTask:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'TaskHeld', readonly message: string, readonly state: WorkState, readonly holder: { readonly id: string, readonly displayName: string } | null }
    | { readonly __typename: 'TaskPayload', readonly revision: number, readonly task: { readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null } }
   };

export type MarkPackedMutationVariables = Exact<{
  input: MarkPackedInput;
}>;


export type MarkPackedMutation = { readonly markPacked:
    | { readonly __typename: 'BoxBlocked', readonly message: string }
    | { readonly __typename: 'BoxClosed', readonly state: BoxState, readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'LabelsUnread', readonly message: string, readonly foods: ReadonlyArray<{ readonly key: string, readonly name: string }> }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'WeekPayload', readonly changedBoxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly child: { readonly id: string, readonly name: string } }>, readonly week: { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }>, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }>, readonly cautions: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly date: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } } }
   };

export type RecordLabelMutationVariables = Exact<{
  input: RecordLabelInput;
}>;


export type RecordLabelMutation = { readonly recordLabel:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'KitchenPayload', readonly household: { readonly id: string, readonly revision: number, readonly keepsOut: ReadonlyArray<string>, readonly energyMethod: EnergyMethod, readonly kitchen: { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> } } }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type ReportAbsenceMutationVariables = Exact<{
  input: ReportAbsenceInput;
}>;


export type ReportAbsenceMutation = { readonly reportAbsence:
    | { readonly __typename: 'BoxClosed', readonly state: BoxState, readonly message: string }
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'OutsideTerm', readonly weekStart: string, readonly nextSchoolDay: string | null, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'WeekInfeasible', readonly message: string, readonly conflicts: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly wayOut: string, readonly date: string | null, readonly session: string | null, readonly child: { readonly id: string, readonly name: string } | null }> }
    | { readonly __typename: 'WeekPayload', readonly changedBoxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly child: { readonly id: string, readonly name: string } }>, readonly week: { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }>, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }>, readonly cautions: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly date: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } } }
   };

export type ReportDisruptionMutationVariables = Exact<{
  input: ReportDisruptionInput;
}>;


export type ReportDisruptionMutation = { readonly reportDisruption:
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'DisruptionPayload', readonly disruption: { readonly id: string, readonly kind: DisruptionKind, readonly date: string, readonly until: string, readonly text: string } | null, readonly week: { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }>, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }>, readonly cautions: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly date: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } } | null, readonly difference: { readonly boxes: ReadonlyArray<{ readonly date: string, readonly child: { readonly id: string, readonly name: string }, readonly before: ReadonlyArray<{ readonly slot: Slot, readonly dish: { readonly key: string, readonly name: string } }>, readonly after: ReadonlyArray<{ readonly slot: Slot, readonly dish: { readonly key: string, readonly name: string } }> }>, readonly toBuy: ReadonlyArray<{ readonly packs: number, readonly packGrams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly more: { readonly handsOnMinutes: number, readonly costMinor: number, readonly objectivePoints: number } } | null, readonly infeasible: { readonly message: string, readonly conflicts: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly wayOut: string, readonly date: string | null, readonly session: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } | null }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type WithdrawDisruptionMutationVariables = Exact<{
  input: WithdrawDisruptionInput;
}>;


export type WithdrawDisruptionMutation = { readonly withdrawDisruption:
    | { readonly __typename: 'DisruptionPayload', readonly week: { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }>, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }>, readonly cautions: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly date: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } } | null, readonly difference: { readonly boxes: ReadonlyArray<{ readonly date: string, readonly child: { readonly id: string, readonly name: string }, readonly before: ReadonlyArray<{ readonly slot: Slot, readonly dish: { readonly key: string, readonly name: string } }>, readonly after: ReadonlyArray<{ readonly slot: Slot, readonly dish: { readonly key: string, readonly name: string } }> }>, readonly toBuy: ReadonlyArray<{ readonly packs: number, readonly packGrams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly more: { readonly handsOnMinutes: number, readonly costMinor: number, readonly objectivePoints: number } } | null, readonly infeasible: { readonly message: string, readonly conflicts: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly wayOut: string, readonly date: string | null, readonly session: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } | null }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type DisruptionsQueryVariables = Exact<{
  householdId: string;
  from: string;
  to: string;
}>;


export type DisruptionsQuery = { readonly household: { readonly id: string, readonly disruptions: ReadonlyArray<{ readonly id: string, readonly kind: DisruptionKind, readonly date: string, readonly until: string, readonly text: string, readonly child: { readonly id: string, readonly name: string } | null }> } | null };

export type FeedsQueryVariables = Exact<{ [key: string]: never; }>;


export type FeedsQuery = { readonly feeds: ReadonlyArray<{ readonly createdAt: string, readonly household: { readonly id: string, readonly name: string } }> };

export type RenewFeedAddressMutationVariables = Exact<{
  input: RenewFeedAddressInput;
}>;


export type RenewFeedAddressMutation = { readonly renewFeedAddress:
    | { readonly __typename: 'FeedAddressPayload', readonly path: string | null, readonly createdAt: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
   };

export type CloseFeedMutationVariables = Exact<{
  input: CloseFeedInput;
}>;


export type CloseFeedMutation = { readonly closeFeed:
    | { readonly __typename: 'CloseFeedPayload', readonly wasOpen: boolean }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
   };

export type InvitationMadeFragment = { readonly id: string, readonly kind: InvitationKind, readonly state: InvitationState, readonly role: Role | null, readonly createdAt: string, readonly expiresAt: string, readonly child: { readonly id: string, readonly name: string } | null, readonly invitedBy: { readonly id: string, readonly displayName: string } | null };

export type CarersChangedFragment = { readonly household: { readonly id: string, readonly name: string, readonly revision: number, readonly myRole: Role, readonly mayDo: ReadonlyArray<string>, readonly carers: ReadonlyArray<{ readonly role: Role, readonly since: string, readonly person: { readonly id: string, readonly displayName: string } }> } };

export type CarersQueryVariables = Exact<{
  householdId: string;
}>;


export type CarersQuery = { readonly household: { readonly id: string, readonly myRole: Role, readonly mayDo: ReadonlyArray<string>, readonly carers: ReadonlyArray<{ readonly role: Role, readonly since: string, readonly person: { readonly id: string, readonly displayName: string } }>, readonly invitations: ReadonlyArray<{ readonly id: string, readonly kind: InvitationKind, readonly state: InvitationState, readonly role: Role | null, readonly createdAt: string, readonly expiresAt: string, readonly child: { readonly id: string, readonly name: string } | null, readonly invitedBy: { readonly id: string, readonly displayName: string } | null }> | null } | null };

export type InvitationOfferQueryVariables = Exact<{
  token: string;
}>;


export type InvitationOfferQuery = { readonly invitation: { readonly kind: InvitationKind, readonly state: InvitationState, readonly expiresAt: string, readonly householdName: string | null, readonly inviterName: string | null, readonly role: Role | null, readonly childFirstName: string | null } | null };

export type InviteCarerMutationVariables = Exact<{
  input: InviteCarerInput;
}>;


export type InviteCarerMutation = { readonly inviteCarer:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'InvitationPayload', readonly token: string | null, readonly invitation: { readonly id: string, readonly kind: InvitationKind, readonly state: InvitationState, readonly role: Role | null, readonly createdAt: string, readonly expiresAt: string, readonly child: { readonly id: string, readonly name: string } | null, readonly invitedBy: { readonly id: string, readonly displayName: string } | null } }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
   };

export type InviteHomeMutationVariables = Exact<{
  input: InviteHomeInput;
}>;


export type InviteHomeMutation = { readonly inviteHome:
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'InvitationPayload', readonly token: string | null, readonly invitation: { readonly id: string, readonly kind: InvitationKind, readonly state: InvitationState, readonly role: Role | null, readonly createdAt: string, readonly expiresAt: string, readonly child: { readonly id: string, readonly name: string } | null, readonly invitedBy: { readonly id: string, readonly displayName: string } | null } }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'LivesInTwoHomes', readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
   };

export type WithdrawInvitationMutationVariables = Exact<{
  input: WithdrawInvitationInput;
}>;


export type WithdrawInvitationMutation = { readonly withdrawInvitation:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'InvitationClosed', readonly state: InvitationState, readonly message: string }
    | { readonly __typename: 'InvitationNotFound', readonly message: string }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'WithdrawInvitationPayload', readonly invitation: { readonly id: string, readonly kind: InvitationKind, readonly state: InvitationState, readonly role: Role | null, readonly createdAt: string, readonly expiresAt: string, readonly child: { readonly id: string, readonly name: string } | null, readonly invitedBy: { readonly id: string, readonly displayName: string } | null } }
   };

export type AcceptInvitationMutationVariables = Exact<{
  input: AcceptInvitationInput;
}>;


export type AcceptInvitationMutation = { readonly acceptInvitation:
    | { readonly __typename: 'AlreadyCarer', readonly role: Role, readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdPayload', readonly household: { readonly id: string, readonly name: string, readonly revision: number, readonly myRole: Role, readonly mayDo: ReadonlyArray<string>, readonly carers: ReadonlyArray<{ readonly role: Role, readonly since: string, readonly person: { readonly id: string, readonly displayName: string } }> } }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'InvitationClosed', readonly state: InvitationState, readonly message: string }
    | { readonly __typename: 'InvitationNotFound', readonly message: string }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
   };

export type AcceptHomeInvitationMutationVariables = Exact<{
  input: AcceptHomeInvitationInput;
}>;


export type AcceptHomeInvitationMutation = { readonly acceptHomeInvitation:
    | { readonly __typename: 'AcceptHomeInvitationPayload', readonly household: { readonly id: string, readonly revision: number }, readonly child: { readonly id: string, readonly name: string, readonly dateOfBirth: string, readonly diets: ReadonlyArray<string>, readonly dislikes: ReadonlyArray<string>, readonly appetite: number, readonly minutesToEat: number, readonly allergies: ReadonlyArray<{ readonly allergen: string | null, readonly foodKind: string | null, readonly avoid: Avoid, readonly recordedHere: boolean }>, readonly enrolments: ReadonlyArray<{ readonly fromDate: string, readonly untilDate: string | null, readonly school: { readonly id: string, readonly name: string }, readonly schoolClass: { readonly id: string, readonly name: string } }> } }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'InvitationClosed', readonly state: InvitationState, readonly message: string }
    | { readonly __typename: 'InvitationNotFound', readonly message: string }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'LivesHereAlready', readonly message: string }
    | { readonly __typename: 'LivesInTwoHomes', readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
   };

export type ChangeRoleMutationVariables = Exact<{
  input: ChangeRoleInput;
}>;


export type ChangeRoleMutation = { readonly changeRole:
    | { readonly __typename: 'CarerNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdPayload', readonly household: { readonly id: string, readonly name: string, readonly revision: number, readonly myRole: Role, readonly mayDo: ReadonlyArray<string>, readonly carers: ReadonlyArray<{ readonly role: Role, readonly since: string, readonly person: { readonly id: string, readonly displayName: string } }> } }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'LastCoordinator', readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
   };

export type RemoveCarerMutationVariables = Exact<{
  input: RemoveCarerInput;
}>;


export type RemoveCarerMutation = { readonly removeCarer:
    | { readonly __typename: 'CarerNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdPayload', readonly household: { readonly id: string, readonly name: string, readonly revision: number, readonly myRole: Role, readonly mayDo: ReadonlyArray<string>, readonly carers: ReadonlyArray<{ readonly role: Role, readonly since: string, readonly person: { readonly id: string, readonly displayName: string } }> } }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'LastCoordinator', readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
   };

export type HandOverCoordinationMutationVariables = Exact<{
  input: HandOverCoordinationInput;
}>;


export type HandOverCoordinationMutation = { readonly handOverCoordination:
    | { readonly __typename: 'CarerNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdPayload', readonly household: { readonly id: string, readonly name: string, readonly revision: number, readonly myRole: Role, readonly mayDo: ReadonlyArray<string>, readonly carers: ReadonlyArray<{ readonly role: Role, readonly since: string, readonly person: { readonly id: string, readonly displayName: string } }> } }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
   };

export type LeaveHouseholdMutationVariables = Exact<{
  input: LeaveHouseholdInput;
}>;


export type LeaveHouseholdMutation = { readonly leaveHousehold:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'LastCoordinator', readonly message: string }
    | { readonly __typename: 'LeaveHouseholdPayload', readonly me: { readonly households: ReadonlyArray<{ readonly id: string, readonly name: string }> } }
   };

export type RenameMeMutationVariables = Exact<{
  input: RenameMeInput;
}>;


export type RenameMeMutation = { readonly renameMe:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'RenameMePayload', readonly person: { readonly id: string, readonly displayName: string } }
   };

export type EntryFragment = { readonly cursor: string, readonly at: string, readonly kind: ChangeKind, readonly verb: ChangeVerb, readonly subjectId: string, readonly date: string | null, readonly by: { readonly id: string, readonly displayName: string } | null, readonly child: { readonly id: string, readonly name: string } | null, readonly fields: ReadonlyArray<{ readonly name: string, readonly before: string | null, readonly after: string | null }> };

export type ChangesSubscriptionVariables = Exact<{
  householdId: string;
  after?: string | null | undefined;
}>;


export type ChangesSubscription = { readonly changes: { readonly cursor: string, readonly at: string, readonly kind: ChangeKind, readonly verb: ChangeVerb, readonly subjectId: string, readonly date: string | null, readonly task: { readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null } | null, readonly box: { readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> } | null, readonly week: { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState } } | null, readonly shoppingLine: { readonly id: string, readonly ticked: boolean, readonly food: { readonly key: string, readonly name: string } } | null, readonly by: { readonly id: string, readonly displayName: string } | null, readonly child: { readonly id: string, readonly name: string } | null, readonly fields: ReadonlyArray<{ readonly name: string, readonly before: string | null, readonly after: string | null }> } };

export type LogQueryVariables = Exact<{
  householdId: string;
  first: number;
  after?: string | null | undefined;
}>;


export type LogQuery = { readonly household: { readonly id: string, readonly changeCursor: string, readonly log: { readonly nodes: ReadonlyArray<{ readonly cursor: string, readonly at: string, readonly kind: ChangeKind, readonly verb: ChangeVerb, readonly subjectId: string, readonly date: string | null, readonly by: { readonly id: string, readonly displayName: string } | null, readonly child: { readonly id: string, readonly name: string } | null, readonly fields: ReadonlyArray<{ readonly name: string, readonly before: string | null, readonly after: string | null }> }>, readonly pageInfo: { readonly endCursor: string | null, readonly hasNextPage: boolean } } } | null };

export type TickShoppingLineMutationVariables = Exact<{
  input: TickShoppingLineInput;
}>;


export type TickShoppingLineMutation = { readonly tickShoppingLine:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'ShoppingLinePayload', readonly line: { readonly id: string, readonly ticked: boolean, readonly packs: number, readonly food: { readonly key: string, readonly name: string } } }
   };

export type EraseChildMutationVariables = Exact<{
  input: EraseChildInput;
}>;


export type EraseChildMutation = { readonly eraseChild:
    | { readonly __typename: 'AgreementNeeded', readonly message: string }
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'ConfirmationNeeded', readonly token: string, readonly expiresAt: string, readonly message: string }
    | { readonly __typename: 'ErasedPayload', readonly erasedAt: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
   };

export type WithdrawErasureMutationVariables = Exact<{
  input: WithdrawErasureInput;
}>;


export type WithdrawErasureMutation = { readonly withdrawErasure:
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'WithdrawErasurePayload', readonly child: { readonly id: string, readonly erasureAsked: ReadonlyArray<{ readonly askedAt: string, readonly askedHere: boolean }> } }
   };

export type EraseHouseholdMutationVariables = Exact<{
  input: EraseHouseholdInput;
}>;


export type EraseHouseholdMutation = { readonly eraseHousehold:
    | { readonly __typename: 'ConfirmationNeeded', readonly token: string, readonly expiresAt: string, readonly message: string }
    | { readonly __typename: 'ErasedPayload', readonly erasedAt: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
   };

export type EraseMeMutationVariables = Exact<{
  input: EraseMeInput;
}>;


export type EraseMeMutation = { readonly eraseMe:
    | { readonly __typename: 'ConfirmationNeeded', readonly token: string, readonly expiresAt: string, readonly message: string }
    | { readonly __typename: 'ErasedPayload', readonly erasedAt: string }
    | { readonly __typename: 'HouseholdsLeft', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'LastAdministrator', readonly message: string }
    | { readonly __typename: 'LastCoordinator', readonly message: string }
   };

type Refusal_AgreementNeeded_Fragment = { readonly __typename: 'AgreementNeeded', readonly message: string };

type Refusal_AlreadyCarer_Fragment = { readonly __typename: 'AlreadyCarer', readonly message: string };

type Refusal_BoxBlocked_Fragment = { readonly __typename: 'BoxBlocked', readonly message: string };

type Refusal_BoxClosed_Fragment = { readonly __typename: 'BoxClosed', readonly message: string };

type Refusal_CarerNotFound_Fragment = { readonly __typename: 'CarerNotFound', readonly message: string };

type Refusal_ChildNotFound_Fragment = { readonly __typename: 'ChildNotFound', readonly message: string };

type Refusal_ConfirmationNeeded_Fragment = { readonly __typename: 'ConfirmationNeeded', readonly message: string };

type Refusal_DayClosed_Fragment = { readonly __typename: 'DayClosed', readonly message: string };

type Refusal_DishNotOffered_Fragment = { readonly __typename: 'DishNotOffered', readonly message: string };

type Refusal_DishUnknown_Fragment = { readonly __typename: 'DishUnknown', readonly message: string };

type Refusal_DocumentRefused_Fragment = { readonly __typename: 'DocumentRefused', readonly message: string };

type Refusal_ExemptionRefused_Fragment = { readonly __typename: 'ExemptionRefused', readonly message: string };

type Refusal_ForTheOtherHome_Fragment = { readonly __typename: 'ForTheOtherHome', readonly message: string };

type Refusal_HelperNotFound_Fragment = { readonly __typename: 'HelperNotFound', readonly message: string };

type Refusal_HouseholdNotFound_Fragment = { readonly __typename: 'HouseholdNotFound', readonly message: string };

type Refusal_HouseholdsLeft_Fragment = { readonly __typename: 'HouseholdsLeft', readonly message: string };

type Refusal_InvalidInput_Fragment = { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> };

type Refusal_InvitationClosed_Fragment = { readonly __typename: 'InvitationClosed', readonly message: string };

type Refusal_InvitationNotFound_Fragment = { readonly __typename: 'InvitationNotFound', readonly message: string };

type Refusal_KeyReused_Fragment = { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string };

type Refusal_LabelsUnread_Fragment = { readonly __typename: 'LabelsUnread', readonly message: string };

type Refusal_LastAdministrator_Fragment = { readonly __typename: 'LastAdministrator', readonly message: string };

type Refusal_LastCoordinator_Fragment = { readonly __typename: 'LastCoordinator', readonly message: string };

type Refusal_LivesHereAlready_Fragment = { readonly __typename: 'LivesHereAlready', readonly message: string };

type Refusal_LivesInTwoHomes_Fragment = { readonly __typename: 'LivesInTwoHomes', readonly message: string };

type Refusal_NoSchool_Fragment = { readonly __typename: 'NoSchool', readonly message: string };

type Refusal_NoWeekWithDish_Fragment = { readonly __typename: 'NoWeekWithDish', readonly message: string };

type Refusal_NotAppointed_Fragment = { readonly __typename: 'NotAppointed', readonly message: string };

type Refusal_NotPermitted_Fragment = { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string };

type Refusal_NothingThere_Fragment = { readonly __typename: 'NothingThere', readonly message: string };

type Refusal_OnlyHome_Fragment = { readonly __typename: 'OnlyHome', readonly message: string };

type Refusal_OutsideTerm_Fragment = { readonly __typename: 'OutsideTerm', readonly message: string };

type Refusal_PersonNotFound_Fragment = { readonly __typename: 'PersonNotFound', readonly message: string };

type Refusal_ProposalMoved_Fragment = { readonly __typename: 'ProposalMoved', readonly message: string };

type Refusal_ProposalOpen_Fragment = { readonly __typename: 'ProposalOpen', readonly message: string };

type Refusal_ProposalSettled_Fragment = { readonly __typename: 'ProposalSettled', readonly message: string };

type Refusal_RevisionPassed_Fragment = { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string };

type Refusal_SchoolNotFound_Fragment = { readonly __typename: 'SchoolNotFound', readonly message: string };

type Refusal_StillInUse_Fragment = { readonly __typename: 'StillInUse', readonly message: string };

type Refusal_SwapRefused_Fragment = { readonly __typename: 'SwapRefused', readonly message: string };

type Refusal_TaskHeld_Fragment = { readonly __typename: 'TaskHeld', readonly message: string };

type Refusal_TaskNotHeld_Fragment = { readonly __typename: 'TaskNotHeld', readonly message: string };

type Refusal_WeekAgreed_Fragment = { readonly __typename: 'WeekAgreed', readonly message: string };

type Refusal_WeekInfeasible_Fragment = { readonly __typename: 'WeekInfeasible', readonly message: string };

type Refusal_WorkUsed_Fragment = { readonly __typename: 'WorkUsed', readonly message: string };

export type RefusalFragment =
  | Refusal_AgreementNeeded_Fragment
  | Refusal_AlreadyCarer_Fragment
  | Refusal_BoxBlocked_Fragment
  | Refusal_BoxClosed_Fragment
  | Refusal_CarerNotFound_Fragment
  | Refusal_ChildNotFound_Fragment
  | Refusal_ConfirmationNeeded_Fragment
  | Refusal_DayClosed_Fragment
  | Refusal_DishNotOffered_Fragment
  | Refusal_DishUnknown_Fragment
  | Refusal_DocumentRefused_Fragment
  | Refusal_ExemptionRefused_Fragment
  | Refusal_ForTheOtherHome_Fragment
  | Refusal_HelperNotFound_Fragment
  | Refusal_HouseholdNotFound_Fragment
  | Refusal_HouseholdsLeft_Fragment
  | Refusal_InvalidInput_Fragment
  | Refusal_InvitationClosed_Fragment
  | Refusal_InvitationNotFound_Fragment
  | Refusal_KeyReused_Fragment
  | Refusal_LabelsUnread_Fragment
  | Refusal_LastAdministrator_Fragment
  | Refusal_LastCoordinator_Fragment
  | Refusal_LivesHereAlready_Fragment
  | Refusal_LivesInTwoHomes_Fragment
  | Refusal_NoSchool_Fragment
  | Refusal_NoWeekWithDish_Fragment
  | Refusal_NotAppointed_Fragment
  | Refusal_NotPermitted_Fragment
  | Refusal_NothingThere_Fragment
  | Refusal_OnlyHome_Fragment
  | Refusal_OutsideTerm_Fragment
  | Refusal_PersonNotFound_Fragment
  | Refusal_ProposalMoved_Fragment
  | Refusal_ProposalOpen_Fragment
  | Refusal_ProposalSettled_Fragment
  | Refusal_RevisionPassed_Fragment
  | Refusal_SchoolNotFound_Fragment
  | Refusal_StillInUse_Fragment
  | Refusal_SwapRefused_Fragment
  | Refusal_TaskHeld_Fragment
  | Refusal_TaskNotHeld_Fragment
  | Refusal_WeekAgreed_Fragment
  | Refusal_WeekInfeasible_Fragment
  | Refusal_WorkUsed_Fragment
;

export type ConflictsFragment = { readonly conflicts: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly wayOut: string, readonly date: string | null, readonly session: string | null, readonly child: { readonly id: string, readonly name: string } | null }> };

export type ItemFragment = { readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null };

export type BoxAsPlannedFragment = { readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> };

export type TaskOfWeekFragment = { readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null };

export type WholeWeekFragment = { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }>, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }>, readonly cautions: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly date: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } };

export type WeekChangedFragment = { readonly changedBoxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly child: { readonly id: string, readonly name: string } }>, readonly week: { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }>, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }>, readonly cautions: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly date: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } } };

export type DifferenceFragment = { readonly boxes: ReadonlyArray<{ readonly date: string, readonly child: { readonly id: string, readonly name: string }, readonly before: ReadonlyArray<{ readonly slot: Slot, readonly dish: { readonly key: string, readonly name: string } }>, readonly after: ReadonlyArray<{ readonly slot: Slot, readonly dish: { readonly key: string, readonly name: string } }> }>, readonly toBuy: ReadonlyArray<{ readonly packs: number, readonly packGrams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly more: { readonly handsOnMinutes: number, readonly costMinor: number, readonly objectivePoints: number } };

export type KitchenAsSetFragment = { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> };

export type KitchenChangedFragment = { readonly household: { readonly id: string, readonly revision: number, readonly keepsOut: ReadonlyArray<string>, readonly energyMethod: EnergyMethod, readonly kitchen: { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> } } };

export type ChildAtHomeFragment = { readonly id: string, readonly name: string, readonly dateOfBirth: string, readonly diets: ReadonlyArray<string>, readonly dislikes: ReadonlyArray<string>, readonly appetite: number, readonly minutesToEat: number, readonly allergies: ReadonlyArray<{ readonly allergen: string | null, readonly foodKind: string | null, readonly avoid: Avoid, readonly recordedHere: boolean }>, readonly enrolments: ReadonlyArray<{ readonly fromDate: string, readonly untilDate: string | null, readonly school: { readonly id: string, readonly name: string }, readonly schoolClass: { readonly id: string, readonly name: string } }> };

export type RuleSetTitleFragment = { readonly id: string, readonly key: string, readonly version: number, readonly title: string, readonly layer: RuleLayer, readonly confirmed: boolean, readonly withdrawn: boolean, readonly inForceFrom: string, readonly inForceUntil: string | null };

export type RuleSetInForceFragment = { readonly id: string, readonly key: string, readonly version: number, readonly title: string, readonly layer: RuleLayer, readonly confirmed: boolean, readonly withdrawn: boolean, readonly inForceFrom: string, readonly inForceUntil: string | null, readonly rules: ReadonlyArray<{ readonly key: string, readonly kind: string, readonly level: RuleLevel, readonly says: string, readonly source: string }> };

export type IssueFragment = { readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> };

export type RefusedDocumentFragment = { readonly issues: ReadonlyArray<{ readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> }>, readonly warnings: ReadonlyArray<{ readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> }> };

export type DocumentChangeFragment = { readonly fields: ReadonlyArray<{ readonly field: string, readonly before: string | null, readonly after: string | null }>, readonly rules: ReadonlyArray<{ readonly kind: RuleChangeKind, readonly rule: { readonly key: string, readonly says: string } }> };

export type CountsFragment = { readonly from: string, readonly until: string, readonly ownDishes: number | null, readonly notCounted: ReadonlyArray<string>, readonly all: { readonly held: number | null, readonly boxes: number | null, readonly children: number | null, readonly weeks: number | null }, readonly rules: ReadonlyArray<{ readonly rule: string | null, readonly held: number | null, readonly boxes: number | null, readonly children: number | null, readonly weeks: number | null }> };

export type SchoolAsKeptFragment = { readonly id: string, readonly name: string, readonly timeZone: string, readonly jurisdiction: string | null, readonly revision: number, readonly classes: ReadonlyArray<{ readonly id: string, readonly name: string, readonly facility: Facility, readonly breaks: ReadonlyArray<{ readonly key: string, readonly name: string, readonly startsAt: string, readonly minutes: number, readonly slots: ReadonlyArray<Slot>, readonly energyShare: number }> }>, readonly terms: ReadonlyArray<{ readonly name: string, readonly firstDay: string, readonly lastDay: string }>, readonly days: ReadonlyArray<{ readonly date: string, readonly kind: SchoolDayKind, readonly title: string, readonly endsAt: string | null }> };

export type CalendarLineFragment = { readonly kind: CalendarKind, readonly title: string, readonly firstDay: string, readonly lastDay: string, readonly endsAt: string | null, readonly schoolClass: { readonly id: string, readonly name: string } | null };

export type AuditPageFragment = { readonly nodes: ReadonlyArray<{ readonly at: string, readonly action: AuditAction, readonly jurisdiction: string | null, readonly details: string, readonly person: { readonly displayName: string } | null, readonly about: { readonly displayName: string } | null, readonly school: { readonly id: string, readonly name: string } | null }>, readonly pageInfo: { readonly endCursor: string | null, readonly hasNextPage: boolean } };

export type HeldByAnotherFragment = { readonly state: WorkState, readonly holder: { readonly id: string, readonly displayName: string } | null };

export type WhereUsedFragment = { readonly dishes: ReadonlyArray<{ readonly key: string, readonly name: string }>, readonly boxes: ReadonlyArray<{ readonly date: string, readonly child: { readonly id: string, readonly name: string } }> };

export type HomeQueryVariables = Exact<{
  householdId: string;
}>;


export type HomeQuery = { readonly household: { readonly id: string, readonly name: string, readonly timeZone: string, readonly currency: string, readonly revision: number, readonly myRole: Role, readonly energyMethod: EnergyMethod, readonly keepsOut: ReadonlyArray<string>, readonly carers: ReadonlyArray<{ readonly role: Role, readonly since: string, readonly person: { readonly id: string, readonly displayName: string } }>, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string, readonly dateOfBirth: string, readonly diets: ReadonlyArray<string>, readonly dislikes: ReadonlyArray<string>, readonly appetite: number, readonly minutesToEat: number, readonly allergies: ReadonlyArray<{ readonly allergen: string | null, readonly foodKind: string | null, readonly avoid: Avoid, readonly recordedHere: boolean }>, readonly enrolments: ReadonlyArray<{ readonly fromDate: string, readonly untilDate: string | null, readonly school: { readonly id: string, readonly name: string }, readonly schoolClass: { readonly id: string, readonly name: string } }> }>, readonly kitchen: { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> }, readonly ruleNotices: ReadonlyArray<{ readonly from: string, readonly text: string, readonly child: { readonly id: string, readonly name: string }, readonly copy: { readonly id: string, readonly title: string } }> } | null };

export type RulesOfChildQueryVariables = Exact<{
  childId: string;
}>;


export type RulesOfChildQuery = { readonly node:
    | { readonly id: string, readonly ownRules: ReadonlyArray<{ readonly id: string, readonly key: string, readonly version: number, readonly title: string, readonly layer: RuleLayer, readonly confirmed: boolean, readonly withdrawn: boolean, readonly inForceFrom: string, readonly inForceUntil: string | null, readonly rules: ReadonlyArray<{ readonly key: string, readonly kind: string, readonly level: RuleLevel, readonly says: string, readonly source: string }> }>, readonly exemptions: ReadonlyArray<{ readonly id: string, readonly rule: string, readonly says: string | null, readonly from: string, readonly until: string, readonly ruleSet: { readonly id: string, readonly title: string }, readonly note: { readonly clinician: string, readonly note: string } | null }> }
    | Record<PropertyKey, never>
   | null };

export type NeedsOfChildQueryVariables = Exact<{
  childId: string;
  day: string;
}>;


export type NeedsOfChildQuery = { readonly node:
    | { readonly id: string, readonly dailyNeeds: { readonly energyKcal: number, readonly energyMethod: string, readonly proteinGrams: number, readonly fibreGrams: number, readonly calciumMg: number, readonly ironMg: number, readonly sodiumMaxMg: number, readonly freeSugarMaxGrams: number, readonly breaks: ReadonlyArray<{ readonly breakKey: string, readonly share: number, readonly energyKcal: number, readonly givenKcal: number }>, readonly sources: ReadonlyArray<{ readonly figure: string, readonly source: string }> } }
    | Record<PropertyKey, never>
   | null };

export type BoxCheckQueryVariables = Exact<{
  householdId: string;
  childId: string;
  day: string;
  items: ReadonlyArray<BoxCheckItemInput>;
}>;


export type BoxCheckQuery = { readonly boxCheck:
    | { readonly __typename: 'BoxCheck', readonly cautions: ReadonlyArray<string>, readonly compliance: { readonly totals: { readonly met: number, readonly notMet: number, readonly notApplicable: number, readonly notKnown: number }, readonly rules: ReadonlyArray<{ readonly state: RuleState, readonly text: string, readonly date: string | null, readonly whoSaysSo: { readonly text: string } }> } }
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'DishUnknown', readonly nearest: ReadonlyArray<string>, readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'OutsideTerm', readonly weekStart: string, readonly nextSchoolDay: string | null, readonly message: string }
   };

export type SchoolsQueryVariables = Exact<{
  first: number;
  after?: string | null | undefined;
}>;


export type SchoolsQuery = { readonly schools: { readonly nodes: ReadonlyArray<{ readonly id: string, readonly name: string, readonly jurisdiction: string | null, readonly classes: ReadonlyArray<{ readonly id: string, readonly name: string }> }>, readonly pageInfo: { readonly endCursor: string | null, readonly hasNextPage: boolean } } };

export type DishesQueryVariables = Exact<{
  slot?: Slot | null | undefined;
  householdId?: string | null | undefined;
  first: number;
  after?: string | null | undefined;
}>;


export type DishesQuery = { readonly dishes: { readonly nodes: ReadonlyArray<{ readonly key: string, readonly name: string, readonly slots: ReadonlyArray<Slot> }>, readonly pageInfo: { readonly endCursor: string | null, readonly hasNextPage: boolean } } };

export type CreateHouseholdMutationVariables = Exact<{
  input: CreateHouseholdInput;
}>;


export type CreateHouseholdMutation = { readonly createHousehold:
    | { readonly __typename: 'CreateHouseholdPayload', readonly household: { readonly id: string, readonly name: string, readonly revision: number, readonly kitchen: { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> } } }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
   };

export type CreateChildMutationVariables = Exact<{
  input: CreateChildInput;
}>;


export type CreateChildMutation = { readonly createChild:
    | { readonly __typename: 'CreateChildPayload', readonly child: { readonly id: string, readonly name: string, readonly dateOfBirth: string, readonly diets: ReadonlyArray<string>, readonly dislikes: ReadonlyArray<string>, readonly appetite: number, readonly minutesToEat: number, readonly allergies: ReadonlyArray<{ readonly allergen: string | null, readonly foodKind: string | null, readonly avoid: Avoid, readonly recordedHere: boolean }>, readonly enrolments: ReadonlyArray<{ readonly fromDate: string, readonly untilDate: string | null, readonly school: { readonly id: string, readonly name: string }, readonly schoolClass: { readonly id: string, readonly name: string } }> }, readonly household: { readonly id: string, readonly revision: number } }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type EnrolChildMutationVariables = Exact<{
  input: EnrolChildInput;
}>;


export type EnrolChildMutation = { readonly enrolChild:
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'EnrolChildPayload', readonly child: { readonly id: string, readonly name: string, readonly dateOfBirth: string, readonly diets: ReadonlyArray<string>, readonly dislikes: ReadonlyArray<string>, readonly appetite: number, readonly minutesToEat: number, readonly allergies: ReadonlyArray<{ readonly allergen: string | null, readonly foodKind: string | null, readonly avoid: Avoid, readonly recordedHere: boolean }>, readonly enrolments: ReadonlyArray<{ readonly fromDate: string, readonly untilDate: string | null, readonly school: { readonly id: string, readonly name: string }, readonly schoolClass: { readonly id: string, readonly name: string } }> }, readonly household: { readonly id: string, readonly revision: number } }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
   };

export type SetSchoolProvisionMutationVariables = Exact<{
  input: SetSchoolProvisionInput;
}>;


export type SetSchoolProvisionMutation = { readonly setSchoolProvision:
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'SetSchoolProvisionPayload', readonly child: { readonly id: string, readonly provisions: ReadonlyArray<{ readonly grams: number, readonly weekday: Weekday | null, readonly breakKey: string | null, readonly food: { readonly key: string, readonly name: string } }> }, readonly household: { readonly id: string, readonly revision: number } }
   };

export type SetEnergyMethodMutationVariables = Exact<{
  input: SetEnergyMethodInput;
}>;


export type SetEnergyMethodMutation = { readonly setEnergyMethod:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'KitchenPayload', readonly household: { readonly id: string, readonly revision: number, readonly keepsOut: ReadonlyArray<string>, readonly energyMethod: EnergyMethod, readonly kitchen: { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> } } }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type SetStockMutationVariables = Exact<{
  input: SetStockInput;
}>;


export type SetStockMutation = { readonly setStock:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'KitchenPayload', readonly household: { readonly id: string, readonly revision: number, readonly keepsOut: ReadonlyArray<string>, readonly energyMethod: EnergyMethod, readonly kitchen: { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> } } }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type SetLeftoversMutationVariables = Exact<{
  input: SetLeftoversInput;
}>;


export type SetLeftoversMutation = { readonly setLeftovers:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'KitchenPayload', readonly household: { readonly id: string, readonly revision: number, readonly keepsOut: ReadonlyArray<string>, readonly energyMethod: EnergyMethod, readonly kitchen: { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> } } }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type SetPrepTimesMutationVariables = Exact<{
  input: SetPrepTimesInput;
}>;


export type SetPrepTimesMutation = { readonly setPrepTimes:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'KitchenPayload', readonly household: { readonly id: string, readonly revision: number, readonly keepsOut: ReadonlyArray<string>, readonly energyMethod: EnergyMethod, readonly kitchen: { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> } } }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type SetHotDaysMutationVariables = Exact<{
  input: SetHotDaysInput;
}>;


export type SetHotDaysMutation = { readonly setHotDays:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'KitchenPayload', readonly household: { readonly id: string, readonly revision: number, readonly keepsOut: ReadonlyArray<string>, readonly energyMethod: EnergyMethod, readonly kitchen: { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> } } }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type SetEquipmentMutationVariables = Exact<{
  input: SetEquipmentInput;
}>;


export type SetEquipmentMutation = { readonly setEquipment:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'KitchenPayload', readonly household: { readonly id: string, readonly revision: number, readonly keepsOut: ReadonlyArray<string>, readonly energyMethod: EnergyMethod, readonly kitchen: { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> } } }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type SetKeepsOutMutationVariables = Exact<{
  input: SetKeepsOutInput;
}>;


export type SetKeepsOutMutation = { readonly setKeepsOut:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'KitchenPayload', readonly household: { readonly id: string, readonly revision: number, readonly keepsOut: ReadonlyArray<string>, readonly energyMethod: EnergyMethod, readonly kitchen: { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> } } }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type RelaxHouseRuleMutationVariables = Exact<{
  input: RelaxHouseRuleInput;
}>;


export type RelaxHouseRuleMutation = { readonly relaxHouseRule:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'KitchenPayload', readonly household: { readonly id: string, readonly revision: number, readonly keepsOut: ReadonlyArray<string>, readonly energyMethod: EnergyMethod, readonly kitchen: { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> } } }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type RecordAllergyMutationVariables = Exact<{
  input: RecordAllergyInput;
}>;


export type RecordAllergyMutation = { readonly recordAllergy:
    | { readonly __typename: 'AllergyPayload', readonly child: { readonly id: string, readonly name: string, readonly dateOfBirth: string, readonly diets: ReadonlyArray<string>, readonly dislikes: ReadonlyArray<string>, readonly appetite: number, readonly minutesToEat: number, readonly allergies: ReadonlyArray<{ readonly allergen: string | null, readonly foodKind: string | null, readonly avoid: Avoid, readonly recordedHere: boolean }>, readonly enrolments: ReadonlyArray<{ readonly fromDate: string, readonly untilDate: string | null, readonly school: { readonly id: string, readonly name: string }, readonly schoolClass: { readonly id: string, readonly name: string } }> }, readonly household: { readonly id: string, readonly revision: number } }
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type RemoveAllergyMutationVariables = Exact<{
  input: RemoveAllergyInput;
}>;


export type RemoveAllergyMutation = { readonly removeAllergy:
    | { readonly __typename: 'AllergyPayload', readonly child: { readonly id: string, readonly name: string, readonly dateOfBirth: string, readonly diets: ReadonlyArray<string>, readonly dislikes: ReadonlyArray<string>, readonly appetite: number, readonly minutesToEat: number, readonly allergies: ReadonlyArray<{ readonly allergen: string | null, readonly foodKind: string | null, readonly avoid: Avoid, readonly recordedHere: boolean }>, readonly enrolments: ReadonlyArray<{ readonly fromDate: string, readonly untilDate: string | null, readonly school: { readonly id: string, readonly name: string }, readonly schoolClass: { readonly id: string, readonly name: string } }> }, readonly household: { readonly id: string, readonly revision: number } }
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'ConfirmationNeeded', readonly token: string, readonly expiresAt: string, readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type SaveOwnFoodMutationVariables = Exact<{
  input: SaveOwnFoodInput;
}>;


export type SaveOwnFoodMutation = { readonly saveOwnFood:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'SaveOwnFoodPayload', readonly household: { readonly id: string, readonly revision: number }, readonly food: { readonly key: string, readonly name: string }, readonly missing: ReadonlyArray<{ readonly kind: MissingFactKind, readonly text: string }> }
   };

export type RemoveOwnFoodMutationVariables = Exact<{
  input: RemoveOwnFoodInput;
}>;


export type RemoveOwnFoodMutation = { readonly removeOwnFood:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'KitchenPayload', readonly household: { readonly id: string, readonly revision: number, readonly keepsOut: ReadonlyArray<string>, readonly energyMethod: EnergyMethod, readonly kitchen: { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> } } }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'StillInUse', readonly message: string, readonly dishes: ReadonlyArray<{ readonly key: string, readonly name: string }>, readonly boxes: ReadonlyArray<{ readonly date: string, readonly child: { readonly id: string, readonly name: string } }> }
   };

export type SaveOwnDishMutationVariables = Exact<{
  input: SaveOwnDishInput;
}>;


export type SaveOwnDishMutation = { readonly saveOwnDish:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'SaveOwnDishPayload', readonly household: { readonly id: string, readonly revision: number }, readonly dish: { readonly key: string, readonly name: string, readonly slots: ReadonlyArray<Slot> }, readonly missing: ReadonlyArray<{ readonly kind: MissingFactKind, readonly text: string }> }
   };

export type RemoveOwnDishMutationVariables = Exact<{
  input: RemoveOwnDishInput;
}>;


export type RemoveOwnDishMutation = { readonly removeOwnDish:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'KitchenPayload', readonly household: { readonly id: string, readonly revision: number, readonly keepsOut: ReadonlyArray<string>, readonly energyMethod: EnergyMethod, readonly kitchen: { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> } } }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'StillInUse', readonly message: string, readonly dishes: ReadonlyArray<{ readonly key: string, readonly name: string }>, readonly boxes: ReadonlyArray<{ readonly date: string, readonly child: { readonly id: string, readonly name: string } }> }
   };

export type KeepOwnRulesMutationVariables = Exact<{
  input: KeepOwnRulesInput;
}>;


export type KeepOwnRulesMutation = { readonly keepOwnRules:
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'DocumentRefused', readonly message: string, readonly issues: ReadonlyArray<{ readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> }>, readonly warnings: ReadonlyArray<{ readonly path: string, readonly line: number, readonly problem: string, readonly expected: string, readonly nearest: ReadonlyArray<string> }> }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'OwnRulesPayload', readonly unchanged: boolean, readonly ruleSet: { readonly id: string, readonly key: string, readonly version: number, readonly title: string, readonly layer: RuleLayer, readonly confirmed: boolean, readonly withdrawn: boolean, readonly inForceFrom: string, readonly inForceUntil: string | null, readonly rules: ReadonlyArray<{ readonly key: string, readonly kind: string, readonly level: RuleLevel, readonly says: string, readonly source: string }> }, readonly household: { readonly id: string, readonly revision: number } }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'SchoolNotFound', readonly message: string }
   };

export type DropOwnRulesMutationVariables = Exact<{
  input: DropOwnRulesInput;
}>;


export type DropOwnRulesMutation = { readonly dropOwnRules:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'OwnRulesPayload', readonly unchanged: boolean, readonly ruleSet: { readonly id: string, readonly key: string, readonly version: number, readonly title: string, readonly layer: RuleLayer, readonly confirmed: boolean, readonly withdrawn: boolean, readonly inForceFrom: string, readonly inForceUntil: string | null, readonly rules: ReadonlyArray<{ readonly key: string, readonly kind: string, readonly level: RuleLevel, readonly says: string, readonly source: string }> }, readonly household: { readonly id: string, readonly revision: number } }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type RecordExemptionMutationVariables = Exact<{
  input: RecordExemptionInput;
}>;


export type RecordExemptionMutation = { readonly recordExemption:
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'ExemptionPayload', readonly exemption: { readonly id: string, readonly rule: string, readonly says: string | null, readonly from: string, readonly until: string } | null, readonly household: { readonly id: string, readonly revision: number } }
    | { readonly __typename: 'ExemptionRefused', readonly reason: ExemptionRefusal, readonly says: string | null, readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type EndExemptionMutationVariables = Exact<{
  input: EndExemptionInput;
}>;


export type EndExemptionMutation = { readonly endExemption:
    | { readonly __typename: 'ExemptionPayload', readonly exemption: { readonly id: string, readonly rule: string, readonly says: string | null, readonly from: string, readonly until: string } | null, readonly household: { readonly id: string, readonly revision: number } }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type SessionFragment = { readonly key: string, readonly kind: WindowKind, readonly date: string, readonly startsAt: string, readonly carers: number, readonly handsOnMinutes: number, readonly isPlanned: boolean, readonly onDuty: ReadonlyArray<{ readonly id: string, readonly displayName: string }> };

export type TaskChangedFragment = { readonly revision: number, readonly task: { readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null } };

export type ReminderDueFragment = { readonly id: string, readonly kind: ReminderKind, readonly session: string, readonly forEverybody: boolean, readonly aboutAt: string, readonly dueAt: string, readonly text: string, readonly task: { readonly id: string, readonly text: string } | null };

export type RotaQueryVariables = Exact<{
  householdId: string;
  from: string;
  to: string;
}>;


export type RotaQuery = { readonly household: { readonly id: string, readonly revision: number, readonly rota: ReadonlyArray<{ readonly key: string, readonly kind: WindowKind, readonly date: string, readonly startsAt: string, readonly carers: number, readonly handsOnMinutes: number, readonly isPlanned: boolean, readonly onDuty: ReadonlyArray<{ readonly id: string, readonly displayName: string }> }>, readonly availability: ReadonlyArray<{ readonly weekday: Weekday, readonly kind: WindowKind, readonly minutes: number, readonly person: { readonly id: string, readonly displayName: string } }> } | null };

export type FairnessQueryVariables = Exact<{
  householdId: string;
  day: string;
}>;


export type FairnessQuery = { readonly household: { readonly id: string, readonly fairness: { readonly from: string, readonly asOf: string, readonly othersMinutes: number, readonly carers: ReadonlyArray<{ readonly minutesDone: number, readonly sharePercent: number, readonly minutesAhead: number, readonly person: { readonly id: string, readonly displayName: string } }> } } | null };

export type RotaProposalQueryVariables = Exact<{
  householdId: string;
  from: string;
  to: string;
}>;


export type RotaProposalQuery = { readonly household: { readonly id: string, readonly revision: number, readonly rotaProposal: { readonly isFairest: boolean, readonly token: string, readonly sessions: ReadonlyArray<{ readonly openHands: number, readonly session: { readonly key: string, readonly kind: WindowKind, readonly date: string, readonly startsAt: string, readonly carers: number, readonly handsOnMinutes: number, readonly isPlanned: boolean, readonly onDuty: ReadonlyArray<{ readonly id: string, readonly displayName: string }> }, readonly onDuty: ReadonlyArray<{ readonly id: string, readonly displayName: string }> }>, readonly minutes: ReadonlyArray<{ readonly minutes: number, readonly person: { readonly id: string, readonly displayName: string } }> } } | null };

export type RemindersQueryVariables = Exact<{
  householdId: string;
  after: string;
}>;


export type RemindersQuery = { readonly household: { readonly id: string, readonly reminders: ReadonlyArray<{ readonly id: string, readonly kind: ReminderKind, readonly session: string, readonly forEverybody: boolean, readonly aboutAt: string, readonly dueAt: string, readonly text: string, readonly task: { readonly id: string, readonly text: string } | null }> } | null };

export type RemindersDueSubscriptionVariables = Exact<{
  householdId: string;
}>;


export type RemindersDueSubscription = { readonly reminders: { readonly id: string, readonly kind: ReminderKind, readonly session: string, readonly forEverybody: boolean, readonly aboutAt: string, readonly dueAt: string, readonly text: string, readonly task: { readonly id: string, readonly text: string } | null } };

export type ReleaseTaskMutationVariables = Exact<{
  input: ReleaseTaskInput;
}>;


export type ReleaseTaskMutation = { readonly releaseTask:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'TaskHeld', readonly message: string, readonly state: WorkState, readonly holder: { readonly id: string, readonly displayName: string } | null }
    | { readonly __typename: 'TaskNotHeld', readonly state: WorkState, readonly message: string }
    | { readonly __typename: 'TaskPayload', readonly revision: number, readonly task: { readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null } }
   };

export type HandTaskMutationVariables = Exact<{
  input: HandTaskInput;
}>;


export type HandTaskMutation = { readonly handTask:
    | { readonly __typename: 'HelperNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'TaskHeld', readonly message: string, readonly state: WorkState, readonly holder: { readonly id: string, readonly displayName: string } | null }
    | { readonly __typename: 'TaskNotHeld', readonly state: WorkState, readonly message: string }
    | { readonly __typename: 'TaskPayload', readonly revision: number, readonly task: { readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null } }
   };

export type UndoTaskMutationVariables = Exact<{
  input: UndoTaskInput;
}>;


export type UndoTaskMutation = { readonly undoTask:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'TaskHeld', readonly message: string, readonly state: WorkState, readonly holder: { readonly id: string, readonly displayName: string } | null }
    | { readonly __typename: 'TaskNotHeld', readonly state: WorkState, readonly message: string }
    | { readonly __typename: 'TaskPayload', readonly revision: number, readonly task: { readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null } }
    | { readonly __typename: 'WorkUsed', readonly tasks: ReadonlyArray<string>, readonly message: string, readonly boxes: ReadonlyArray<{ readonly date: string, readonly child: { readonly id: string, readonly name: string } }> }
   };

export type SetDutiesMutationVariables = Exact<{
  input: SetDutiesInput;
}>;


export type SetDutiesMutation = { readonly setDuties:
    | { readonly __typename: 'HelperNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'RotaPayload', readonly household: { readonly id: string, readonly revision: number } }
   };

export type AcceptRotaMutationVariables = Exact<{
  input: AcceptRotaInput;
}>;


export type AcceptRotaMutation = { readonly acceptRota:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'ProposalMoved', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'RotaPayload', readonly household: { readonly id: string, readonly revision: number } }
   };

export type SetAvailabilityMutationVariables = Exact<{
  input: SetAvailabilityInput;
}>;


export type SetAvailabilityMutation = { readonly setAvailability:
    | { readonly __typename: 'HelperNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'RotaPayload', readonly household: { readonly id: string, readonly revision: number, readonly availability: ReadonlyArray<{ readonly weekday: Weekday, readonly kind: WindowKind, readonly minutes: number, readonly person: { readonly id: string, readonly displayName: string } }> } }
   };

export type ProposalFragment = { readonly id: string, readonly state: ProposalState, readonly proposedBy: HomeSide, readonly proposedAt: string, readonly pattern: { readonly kind: ResidenceKind, readonly starts: string, readonly ends: string | null, readonly cycle: ReadonlyArray<HomeSide> } | null, readonly days: ReadonlyArray<{ readonly date: string, readonly here: boolean }> };

export type ResidenceChangedFragment = { readonly movedDays: ReadonlyArray<string>, readonly child: { readonly id: string, readonly residenceProposals: ReadonlyArray<{ readonly id: string, readonly state: ProposalState, readonly proposedBy: HomeSide, readonly proposedAt: string, readonly pattern: { readonly kind: ResidenceKind, readonly starts: string, readonly ends: string | null, readonly cycle: ReadonlyArray<HomeSide> } | null, readonly days: ReadonlyArray<{ readonly date: string, readonly here: boolean }> }> }, readonly household: { readonly id: string, readonly revision: number }, readonly proposal: { readonly id: string, readonly state: ProposalState, readonly proposedBy: HomeSide, readonly proposedAt: string, readonly pattern: { readonly kind: ResidenceKind, readonly starts: string, readonly ends: string | null, readonly cycle: ReadonlyArray<HomeSide> } | null, readonly days: ReadonlyArray<{ readonly date: string, readonly here: boolean }> } | null };

export type HandoverNoteFragment = { readonly weekStart: string, readonly revision: number, readonly repeat: ReadonlyArray<string>, readonly avoid: ReadonlyArray<string>, readonly note: string, readonly box: Whereabouts | null, readonly icePacks: Whereabouts | null, readonly flask: Whereabouts | null, readonly child: { readonly id: string, readonly name: string }, readonly allergies: ReadonlyArray<{ readonly allergen: string | null, readonly foodKind: string | null, readonly avoid: Avoid }>, readonly cameBack: ReadonlyArray<{ readonly dish: { readonly key: string, readonly name: string }, readonly days: ReadonlyArray<{ readonly date: string, readonly cameBack: CameBack }> }> };

export type ResidenceOfQueryVariables = Exact<{
  childId: string;
  from: string;
  to: string;
}>;


export type ResidenceOfQuery = { readonly node:
    | { readonly id: string, readonly residenceDays: ReadonlyArray<{ readonly date: string, readonly here: boolean, readonly source: ResidenceSource }>, readonly residencePattern: { readonly kind: ResidenceKind, readonly starts: string, readonly ends: string | null, readonly cycle: ReadonlyArray<HomeSide> } | null, readonly residenceProposals: ReadonlyArray<{ readonly id: string, readonly state: ProposalState, readonly proposedBy: HomeSide, readonly proposedAt: string, readonly pattern: { readonly kind: ResidenceKind, readonly starts: string, readonly ends: string | null, readonly cycle: ReadonlyArray<HomeSide> } | null, readonly days: ReadonlyArray<{ readonly date: string, readonly here: boolean }> }> }
    | Record<PropertyKey, never>
   | null };

export type BoxesOfChildQueryVariables = Exact<{
  childId: string;
  from: string;
  to: string;
}>;


export type BoxesOfChildQuery = { readonly node:
    | { readonly id: string, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }> }
    | Record<PropertyKey, never>
   | null };

export type HandoverQueryVariables = Exact<{
  householdId: string;
  childId: string;
  day: string;
}>;


export type HandoverQuery = { readonly handover: { readonly weekStart: string, readonly revision: number, readonly repeat: ReadonlyArray<string>, readonly avoid: ReadonlyArray<string>, readonly note: string, readonly box: Whereabouts | null, readonly icePacks: Whereabouts | null, readonly flask: Whereabouts | null, readonly child: { readonly id: string, readonly name: string }, readonly allergies: ReadonlyArray<{ readonly allergen: string | null, readonly foodKind: string | null, readonly avoid: Avoid }>, readonly cameBack: ReadonlyArray<{ readonly dish: { readonly key: string, readonly name: string }, readonly days: ReadonlyArray<{ readonly date: string, readonly cameBack: CameBack }> }> } | null };

export type SetResidencePatternMutationVariables = Exact<{
  input: SetResidencePatternInput;
}>;


export type SetResidencePatternMutation = { readonly setResidencePattern:
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'DayClosed', readonly date: string, readonly boxState: BoxState | null, readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'ProposalOpen', readonly proposalId: string, readonly madeHere: boolean, readonly dates: ReadonlyArray<string>, readonly message: string }
    | { readonly __typename: 'ResidencePayload', readonly movedDays: ReadonlyArray<string>, readonly child: { readonly id: string, readonly residenceProposals: ReadonlyArray<{ readonly id: string, readonly state: ProposalState, readonly proposedBy: HomeSide, readonly proposedAt: string, readonly pattern: { readonly kind: ResidenceKind, readonly starts: string, readonly ends: string | null, readonly cycle: ReadonlyArray<HomeSide> } | null, readonly days: ReadonlyArray<{ readonly date: string, readonly here: boolean }> }> }, readonly household: { readonly id: string, readonly revision: number }, readonly proposal: { readonly id: string, readonly state: ProposalState, readonly proposedBy: HomeSide, readonly proposedAt: string, readonly pattern: { readonly kind: ResidenceKind, readonly starts: string, readonly ends: string | null, readonly cycle: ReadonlyArray<HomeSide> } | null, readonly days: ReadonlyArray<{ readonly date: string, readonly here: boolean }> } | null }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type ProposeResidenceChangeMutationVariables = Exact<{
  input: ProposeResidenceChangeInput;
}>;


export type ProposeResidenceChangeMutation = { readonly proposeResidenceChange:
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'DayClosed', readonly date: string, readonly boxState: BoxState | null, readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'ProposalOpen', readonly proposalId: string, readonly madeHere: boolean, readonly dates: ReadonlyArray<string>, readonly message: string }
    | { readonly __typename: 'ResidencePayload', readonly movedDays: ReadonlyArray<string>, readonly child: { readonly id: string, readonly residenceProposals: ReadonlyArray<{ readonly id: string, readonly state: ProposalState, readonly proposedBy: HomeSide, readonly proposedAt: string, readonly pattern: { readonly kind: ResidenceKind, readonly starts: string, readonly ends: string | null, readonly cycle: ReadonlyArray<HomeSide> } | null, readonly days: ReadonlyArray<{ readonly date: string, readonly here: boolean }> }> }, readonly household: { readonly id: string, readonly revision: number }, readonly proposal: { readonly id: string, readonly state: ProposalState, readonly proposedBy: HomeSide, readonly proposedAt: string, readonly pattern: { readonly kind: ResidenceKind, readonly starts: string, readonly ends: string | null, readonly cycle: ReadonlyArray<HomeSide> } | null, readonly days: ReadonlyArray<{ readonly date: string, readonly here: boolean }> } | null }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type AnswerResidenceChangeMutationVariables = Exact<{
  input: AnswerResidenceChangeInput;
}>;


export type AnswerResidenceChangeMutation = { readonly answerResidenceChange:
    | { readonly __typename: 'DayClosed', readonly date: string, readonly boxState: BoxState | null, readonly message: string }
    | { readonly __typename: 'ForTheOtherHome', readonly madeHere: boolean, readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'ProposalSettled', readonly state: ProposalState, readonly message: string }
    | { readonly __typename: 'ResidencePayload', readonly movedDays: ReadonlyArray<string>, readonly child: { readonly id: string, readonly residenceProposals: ReadonlyArray<{ readonly id: string, readonly state: ProposalState, readonly proposedBy: HomeSide, readonly proposedAt: string, readonly pattern: { readonly kind: ResidenceKind, readonly starts: string, readonly ends: string | null, readonly cycle: ReadonlyArray<HomeSide> } | null, readonly days: ReadonlyArray<{ readonly date: string, readonly here: boolean }> }> }, readonly household: { readonly id: string, readonly revision: number }, readonly proposal: { readonly id: string, readonly state: ProposalState, readonly proposedBy: HomeSide, readonly proposedAt: string, readonly pattern: { readonly kind: ResidenceKind, readonly starts: string, readonly ends: string | null, readonly cycle: ReadonlyArray<HomeSide> } | null, readonly days: ReadonlyArray<{ readonly date: string, readonly here: boolean }> } | null }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type WithdrawResidenceChangeMutationVariables = Exact<{
  input: WithdrawResidenceChangeInput;
}>;


export type WithdrawResidenceChangeMutation = { readonly withdrawResidenceChange:
    | { readonly __typename: 'ForTheOtherHome', readonly madeHere: boolean, readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'ProposalSettled', readonly state: ProposalState, readonly message: string }
    | { readonly __typename: 'ResidencePayload', readonly movedDays: ReadonlyArray<string>, readonly child: { readonly id: string, readonly residenceProposals: ReadonlyArray<{ readonly id: string, readonly state: ProposalState, readonly proposedBy: HomeSide, readonly proposedAt: string, readonly pattern: { readonly kind: ResidenceKind, readonly starts: string, readonly ends: string | null, readonly cycle: ReadonlyArray<HomeSide> } | null, readonly days: ReadonlyArray<{ readonly date: string, readonly here: boolean }> }> }, readonly household: { readonly id: string, readonly revision: number }, readonly proposal: { readonly id: string, readonly state: ProposalState, readonly proposedBy: HomeSide, readonly proposedAt: string, readonly pattern: { readonly kind: ResidenceKind, readonly starts: string, readonly ends: string | null, readonly cycle: ReadonlyArray<HomeSide> } | null, readonly days: ReadonlyArray<{ readonly date: string, readonly here: boolean }> } | null }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type GiveUpHomeMutationVariables = Exact<{
  input: GiveUpHomeInput;
}>;


export type GiveUpHomeMutation = { readonly giveUpHome:
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'KitchenPayload', readonly household: { readonly id: string, readonly revision: number, readonly keepsOut: ReadonlyArray<string>, readonly energyMethod: EnergyMethod, readonly kitchen: { readonly hotDays: ReadonlyArray<string>, readonly equipment: ReadonlyArray<{ readonly kind: string, readonly units: number }>, readonly prepTimes: ReadonlyArray<{ readonly kind: WindowKind, readonly weekday: Weekday, readonly startsAt: string, readonly handsOnMinutes: number, readonly elapsedMinutes: number, readonly carers: number, readonly effort: number }>, readonly stock: ReadonlyArray<{ readonly grams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly leftovers: ReadonlyArray<{ readonly id: string, readonly grams: number, readonly cookedOn: string, readonly lastSafeDay: string, readonly base: { readonly key: string, readonly name: string } }>, readonly labelChecks: ReadonlyArray<{ readonly contains: ReadonlyArray<string>, readonly mayContain: ReadonlyArray<string>, readonly readOn: string, readonly food: { readonly key: string, readonly name: string }, readonly kinds: ReadonlyArray<{ readonly kind: string, readonly says: LabelSays }> }> } } }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'OnlyHome', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type ReportReturnedMutationVariables = Exact<{
  input: ReportReturnedInput;
}>;


export type ReportReturnedMutation = { readonly reportReturned:
    | { readonly __typename: 'BoxBlocked', readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'ReturnedPayload', readonly box: { readonly id: string, readonly state: BoxState, readonly items: ReadonlyArray<{ readonly id: string, readonly cameBack: CameBack | null }> }, readonly household: { readonly id: string, readonly revision: number } }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type WriteHandoverMutationVariables = Exact<{
  input: WriteHandoverInput;
}>;


export type WriteHandoverMutation = { readonly writeHandover:
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'HandoverPayload', readonly handover: { readonly weekStart: string, readonly revision: number, readonly repeat: ReadonlyArray<string>, readonly avoid: ReadonlyArray<string>, readonly note: string, readonly box: Whereabouts | null, readonly icePacks: Whereabouts | null, readonly flask: Whereabouts | null, readonly child: { readonly id: string, readonly name: string }, readonly allergies: ReadonlyArray<{ readonly allergen: string | null, readonly foodKind: string | null, readonly avoid: Avoid }>, readonly cameBack: ReadonlyArray<{ readonly dish: { readonly key: string, readonly name: string }, readonly days: ReadonlyArray<{ readonly date: string, readonly cameBack: CameBack }> }> } }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type SetBoxKitMutationVariables = Exact<{
  input: SetBoxKitInput;
}>;


export type SetBoxKitMutation = { readonly setBoxKit:
    | { readonly __typename: 'BoxKitPayload', readonly child: { readonly id: string, readonly name: string }, readonly household: { readonly id: string, readonly revision: number } }
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
   };

export type MyHomesQueryVariables = Exact<{
  day: string;
}>;


export type MyHomesQuery = { readonly me: { readonly person: { readonly id: string, readonly displayName: string }, readonly households: ReadonlyArray<{ readonly id: string, readonly name: string, readonly revision: number, readonly changeCursor: string, readonly myRole: Role, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly week: { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }>, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }>, readonly cautions: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly date: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } } | null }> } };

export type WeekOfQueryVariables = Exact<{
  householdId: string;
  day: string;
}>;


export type WeekOfQuery = { readonly week: { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }>, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }>, readonly cautions: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly date: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } } | null };

export type BoxCardsQueryVariables = Exact<{
  householdId: string;
  week: string;
  day: string;
}>;


export type BoxCardsQuery = { readonly week: { readonly id: string, readonly plan: { readonly boxes: ReadonlyArray<{ readonly id: string, readonly child: { readonly id: string, readonly name: string }, readonly card: { readonly leaveAt: string, readonly coldSources: number, readonly flask: boolean, readonly cutlery: ReadonlyArray<string>, readonly energyKcal: number, readonly carbohydrateGrams: number | null, readonly cautions: ReadonlyArray<string>, readonly lines: ReadonlyArray<string>, readonly labels: ReadonlyArray<{ readonly key: string, readonly name: string }> } | null }> } } | null };

export type ShoppingQueryVariables = Exact<{
  householdId: string;
  week: string;
}>;


export type ShoppingQuery = { readonly week: { readonly id: string, readonly plan: { readonly estimatedCost: { readonly minor: number, readonly currency: string }, readonly shopping: ReadonlyArray<{ readonly id: string, readonly section: string, readonly neededGrams: number, readonly fromStockGrams: number, readonly packs: number, readonly packGrams: number, readonly costMinor: number, readonly readLabel: boolean, readonly ticked: boolean, readonly food: { readonly key: string, readonly name: string }, readonly spareUses: ReadonlyArray<{ readonly text: string }> }> } } | null };

export type TimetableQueryVariables = Exact<{
  householdId: string;
  week: string;
}>;


export type TimetableQuery = { readonly week: { readonly id: string, readonly plan: { readonly sessions: ReadonlyArray<{ readonly key: string, readonly startsAt: string, readonly endsAt: string, readonly handsOnMinutes: number, readonly timing: { readonly lastsMinutes: number, readonly leastMinutes: number, readonly provenShortest: boolean, readonly latestStartsAt: string, readonly noLaterThan: string } | null, readonly carers: ReadonlyArray<{ readonly carer: number, readonly handsOnMinutes: number, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }> }> }> } } | null };

export type HowGoodQueryVariables = Exact<{
  householdId: string;
  week: string;
}>;


export type HowGoodQuery = { readonly week: { readonly id: string, readonly plan: { readonly sharing: { readonly handsOnMinutesShared: number, readonly handsOnMinutesAlone: number | null, readonly savedMinutes: number | null } | null, readonly wishes: { readonly handsOnMinutes: number, readonly costMinor: number, readonly nutrientShortfallPercent: number, readonly refusalPoints: number, readonly monotonyPoints: number, readonly objectivePoints: number }, readonly certificate: { readonly objectivePoints: number, readonly boundPoints: number, readonly gapPercent: number, readonly provenOptimal: boolean } | null, readonly compliance: { readonly totals: { readonly met: number, readonly notMet: number, readonly notApplicable: number, readonly notKnown: number }, readonly rules: ReadonlyArray<{ readonly date: string | null, readonly text: string, readonly child: { readonly id: string, readonly name: string }, readonly whoSaysSo: { readonly text: string } }> } } } | null };

export type AlternativesQueryVariables = Exact<{
  itemId: string;
}>;


export type AlternativesQuery = { readonly alternatives: ReadonlyArray<{ readonly grams: number, readonly pieces: number | null, readonly pointsMore: number, readonly dish: { readonly key: string, readonly name: string } }> };

export type VerdictsQueryVariables = Exact<{
  childId: string;
  day: string;
  dish?: string | null | undefined;
  food?: string | null | undefined;
}>;


export type VerdictsQuery = { readonly node:
    | { readonly id: string, readonly verdicts:
        | { readonly __typename: 'DishUnknown', readonly nearest: ReadonlyArray<string>, readonly message: string }
        | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
        | { readonly __typename: 'OutsideTerm', readonly weekStart: string, readonly nextSchoolDay: string | null, readonly message: string }
        | { readonly __typename: 'Verdicts', readonly places: ReadonlyArray<{ readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly allowed: boolean, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }>, readonly exclusion: { readonly kind: string, readonly text: string, readonly source: string | null, readonly whoSaysSo: { readonly text: string } | null } | null }> }
       }
    | Record<PropertyKey, never>
   | null };

export type PriceOfDishQueryVariables = Exact<{
  householdId: string;
  childId: string;
  day: string;
  breakKey: string;
  slot: Slot;
  place: number;
  dish: string;
}>;


export type PriceOfDishQuery = { readonly priceOfDish:
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'DishNotOffered', readonly kind: string, readonly rule: string | null, readonly source: string, readonly message: string }
    | { readonly __typename: 'DishUnknown', readonly nearest: ReadonlyArray<string>, readonly message: string }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'NoWeekWithDish', readonly message: string, readonly clash: { readonly proof: ClashProof, readonly members: ReadonlyArray<{ readonly kind: string, readonly text: string }> } | null }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'OutsideTerm', readonly message: string }
    | { readonly __typename: 'PricedAlternative', readonly grams: number, readonly pieces: number | null, readonly dish: { readonly key: string, readonly name: string }, readonly price: { readonly text: string, readonly objectivePoints: number, readonly changedItems: number } }
   };

export type MendingOfferQueryVariables = Exact<{
  weekId: string;
}>;


export type MendingOfferQuery = { readonly mendingOffer: { readonly possible: boolean, readonly changedBoxes: ReadonlyArray<{ readonly date: string, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly breakKey: string, readonly slot: Slot, readonly dish: { readonly key: string, readonly name: string } }> }>, readonly conflicts: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly wayOut: string }> } | null };

export type DisruptionOfferQueryVariables = Exact<{
  householdId: string;
  disruption: DisruptionInput;
}>;


export type DisruptionOfferQuery = { readonly disruptionOffer:
    | { readonly __typename: 'ChildNotFound', readonly message: string }
    | { readonly __typename: 'DisruptionOffer', readonly difference: { readonly boxes: ReadonlyArray<{ readonly date: string, readonly child: { readonly id: string, readonly name: string }, readonly before: ReadonlyArray<{ readonly slot: Slot, readonly dish: { readonly key: string, readonly name: string } }>, readonly after: ReadonlyArray<{ readonly slot: Slot, readonly dish: { readonly key: string, readonly name: string } }> }>, readonly toBuy: ReadonlyArray<{ readonly packs: number, readonly packGrams: number, readonly food: { readonly key: string, readonly name: string } }>, readonly more: { readonly handsOnMinutes: number, readonly costMinor: number, readonly objectivePoints: number } } | null }
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'WeekInfeasible', readonly message: string, readonly conflicts: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly wayOut: string, readonly date: string | null, readonly session: string | null, readonly child: { readonly id: string, readonly name: string } | null }> }
   };

export type PlanWeekMutationVariables = Exact<{
  input: PlanWeekInput;
}>;


export type PlanWeekMutation = { readonly planWeek:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NoSchool', readonly message: string, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }> }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'OutsideTerm', readonly weekStart: string, readonly nextSchoolDay: string | null, readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'WeekAgreed', readonly agreedAt: string, readonly message: string }
    | { readonly __typename: 'WeekInfeasible', readonly message: string, readonly conflicts: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly wayOut: string, readonly date: string | null, readonly session: string | null, readonly child: { readonly id: string, readonly name: string } | null }> }
    | { readonly __typename: 'WeekPayload', readonly changedBoxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly child: { readonly id: string, readonly name: string } }>, readonly week: { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }>, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }>, readonly cautions: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly date: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } } }
   };

export type PlanWeekInBackgroundMutationVariables = Exact<{
  input: PlanWeekInBackgroundInput;
}>;


export type PlanWeekInBackgroundMutation = { readonly planWeekInBackground:
    | { readonly __typename: 'HouseholdNotFound', readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NoSchool', readonly message: string, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }> }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'OutsideTerm', readonly weekStart: string, readonly nextSchoolDay: string | null, readonly message: string }
    | { readonly __typename: 'PlanQueued', readonly weekStart: string, readonly steps: number }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'WeekAgreed', readonly agreedAt: string, readonly message: string }
    | { readonly __typename: 'WeekInfeasible', readonly message: string, readonly conflicts: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly wayOut: string, readonly date: string | null, readonly session: string | null, readonly child: { readonly id: string, readonly name: string } | null }> }
   };

export type PinItemMutationVariables = Exact<{
  input: PinItemInput;
}>;


export type PinItemMutation = { readonly pinItem:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'WeekPayload', readonly changedBoxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly child: { readonly id: string, readonly name: string } }>, readonly week: { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }>, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }>, readonly cautions: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly date: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } } }
   };

export type UnpinItemMutationVariables = Exact<{
  input: UnpinItemInput;
}>;


export type UnpinItemMutation = { readonly unpinItem:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'WeekPayload', readonly changedBoxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly child: { readonly id: string, readonly name: string } }>, readonly week: { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }>, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }>, readonly cautions: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly date: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } } }
   };

export type SwapItemMutationVariables = Exact<{
  input: SwapItemInput;
}>;


export type SwapItemMutation = { readonly swapItem:
    | { readonly __typename: 'BoxClosed', readonly state: BoxState, readonly message: string }
    | { readonly __typename: 'DishUnknown', readonly nearest: ReadonlyArray<string>, readonly message: string }
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'SwapRefused', readonly message: string, readonly conflicts: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly wayOut: string }> }
    | { readonly __typename: 'WeekPayload', readonly changedBoxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly child: { readonly id: string, readonly name: string } }>, readonly week: { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }>, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }>, readonly cautions: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly date: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } } }
   };

export type AgreeWeekMutationVariables = Exact<{
  input: AgreeWeekInput;
}>;


export type AgreeWeekMutation = { readonly agreeWeek:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'WeekAgreed', readonly agreedAt: string, readonly message: string }
    | { readonly __typename: 'WeekPayload', readonly changedBoxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly child: { readonly id: string, readonly name: string } }>, readonly week: { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }>, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }>, readonly cautions: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly date: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } } }
   };

export type MendWeekMutationVariables = Exact<{
  input: MendWeekInput;
}>;


export type MendWeekMutation = { readonly mendWeek:
    | { readonly __typename: 'InvalidInput', readonly message: string, readonly issues: ReadonlyArray<{ readonly field: string, readonly problem: string, readonly fix: string }> }
    | { readonly __typename: 'KeyReused', readonly usedFor: string, readonly message: string }
    | { readonly __typename: 'NotPermitted', readonly neededRole: Role, readonly message: string }
    | { readonly __typename: 'NothingThere', readonly message: string }
    | { readonly __typename: 'RevisionPassed', readonly seenRevision: number, readonly currentRevision: number, readonly message: string }
    | { readonly __typename: 'WeekInfeasible', readonly message: string, readonly conflicts: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly wayOut: string, readonly date: string | null, readonly session: string | null, readonly child: { readonly id: string, readonly name: string } | null }> }
    | { readonly __typename: 'WeekPayload', readonly changedBoxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly child: { readonly id: string, readonly name: string } }>, readonly week: { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }>, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }>, readonly cautions: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly date: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } } }
   };

export type WeekChangesSubscriptionVariables = Exact<{
  householdId: string;
}>;


export type WeekChangesSubscription = { readonly weekChanged: { readonly id: string, readonly weekStart: string, readonly revision: number, readonly plan: { readonly id: string, readonly number: number, readonly state: PlanState, readonly boxes: ReadonlyArray<{ readonly id: string, readonly date: string, readonly state: BoxState, readonly packedAt: string | null, readonly child: { readonly id: string, readonly name: string }, readonly items: ReadonlyArray<{ readonly id: string, readonly breakKey: string, readonly slot: Slot, readonly place: number, readonly grams: number, readonly pieces: number | null, readonly served: ServedWarmth, readonly allergens: ReadonlyArray<string>, readonly carbohydrateGrams: number | null, readonly pinned: boolean, readonly dish: { readonly key: string, readonly name: string }, readonly cuts: ReadonlyArray<{ readonly food: string, readonly cut: string }>, readonly labelsToRead: ReadonlyArray<{ readonly key: string, readonly name: string }> | null }>, readonly blockedBecause: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> }>, readonly tasks: ReadonlyArray<{ readonly id: string, readonly session: string, readonly kind: string, readonly text: string, readonly state: WorkState, readonly startsAt: string, readonly endsAt: string, readonly latestStartsAt: string, readonly handsOnMinutes: number, readonly actualMinutes: number | null, readonly kept: boolean, readonly carer: number, readonly children: ReadonlyArray<{ readonly id: string, readonly name: string }>, readonly takenBy: { readonly id: string, readonly displayName: string } | null }>, readonly cautions: ReadonlyArray<{ readonly kind: string, readonly text: string, readonly date: string | null, readonly child: { readonly id: string, readonly name: string } | null }> } } };

export type PlanProgressSubscriptionVariables = Exact<{
  householdId: string;
}>;


export type PlanProgressSubscription = { readonly planProgress: { readonly weekStart: string, readonly percent: number, readonly bestPoints: number | null, readonly failure: string | null } };

export type BoxesBlockedSubscriptionVariables = Exact<{
  householdId: string;
}>;


export type BoxesBlockedSubscription = { readonly boxesBlocked: { readonly date: string, readonly state: BoxState, readonly child: { readonly id: string, readonly name: string }, readonly reasons: ReadonlyArray<{ readonly kind: BlockKind, readonly text: string }> } | null };

export const AcceptHomeInvitation: Document<AcceptHomeInvitationMutation, AcceptHomeInvitationMutationVariables> = {
  name: "AcceptHomeInvitation",
  kind: "mutation",
  id: "sha256:aec7ac639141cdb86cfa52feed03c8ef09612bb64fdd0c185e11d72a6e576938",
  text: "mutation AcceptHomeInvitation($input:AcceptHomeInvitationInput!){acceptHomeInvitation(input:$input){__typename ...Refusal ...on InvitationClosed{state}...on AcceptHomeInvitationPayload{household{id revision}child{...ChildAtHome}}}}fragment ChildAtHome on Child{id name dateOfBirth diets dislikes appetite minutesToEat allergies{allergen foodKind avoid recordedHere}enrolments{school{id name}schoolClass{id name}fromDate untilDate}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.AcceptHomeInvitationInput }),
};

export const AcceptInvitation: Document<AcceptInvitationMutation, AcceptInvitationMutationVariables> = {
  name: "AcceptInvitation",
  kind: "mutation",
  id: "sha256:cb5f688a3825e6106489603674ab292692e22e35f373a27ed93753e667275b5b",
  text: "mutation AcceptInvitation($input:AcceptInvitationInput!){acceptInvitation(input:$input){__typename ...Refusal ...CarersChanged ...on InvitationClosed{state}...on AlreadyCarer{role}}}fragment CarersChanged on HouseholdPayload{household{id name revision myRole mayDo carers{person{id displayName}role since}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.AcceptInvitationInput }),
};

export const AcceptRota: Document<AcceptRotaMutation, AcceptRotaMutationVariables> = {
  name: "AcceptRota",
  kind: "mutation",
  id: "sha256:53bcd17bf03d82d0885d09dd7226c666006f1bd418e9a1efe2988f76b5baadcc",
  text: "mutation AcceptRota($input:AcceptRotaInput!){acceptRota(input:$input){__typename ...Refusal ...on RotaPayload{household{id revision}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.AcceptRotaInput }),
};

export const AddSchoolClass: Document<AddSchoolClassMutation, AddSchoolClassMutationVariables> = {
  name: "AddSchoolClass",
  kind: "mutation",
  id: "sha256:943b18a8ead7d3766d57b4dd7b543c5441caba87f2d6be47769598d11c6093fe",
  text: "mutation AddSchoolClass($input:AddSchoolClassInput!){addSchoolClass(input:$input){__typename ...Refusal ...on SchoolPayload{school{...SchoolAsKept}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment SchoolAsKept on School{id name timeZone jurisdiction revision classes{id name facility breaks{key name startsAt minutes slots energyShare}}terms{name firstDay lastDay}days{date kind title endsAt}}",
  variables: () => z.strictObject({ input: inputSchemas.AddSchoolClassInput }),
};

export const Administered: Document<AdministeredQuery, AdministeredQueryVariables> = {
  name: "Administered",
  kind: "query",
  id: "sha256:5f1c7fb4f91adb102420a9811fc7f416a10a796be778411f7dfdae7a7ecdb3c5",
  text: "query Administered{me{person{id displayName}administers{...SchoolAsKept ruleSets{...RuleSetTitle}}}}fragment RuleSetTitle on RuleSet{id key version title layer confirmed withdrawn inForceFrom inForceUntil}fragment SchoolAsKept on School{id name timeZone jurisdiction revision classes{id name facility breaks{key name startsAt minutes slots energyShare}}terms{name firstDay lastDay}days{date kind title endsAt}}",
  variables: () => z.strictObject({  }),
};

export const AdoptRuleSet: Document<AdoptRuleSetMutation, AdoptRuleSetMutationVariables> = {
  name: "AdoptRuleSet",
  kind: "mutation",
  id: "sha256:e0fdbc461b7e75b781bb828dc9071c2a1e1f1f79b4e455a0927a119a86d7207b",
  text: "mutation AdoptRuleSet($input:AdoptRuleSetInput!){adoptRuleSet(input:$input){__typename ...Refusal ...on SchoolPayload{school{id ruleSets{...RuleSetInForce}}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment RuleSetInForce on RuleSet{id key version title layer confirmed withdrawn inForceFrom inForceUntil rules{key kind level says source}}",
  variables: () => z.strictObject({ input: inputSchemas.AdoptRuleSetInput }),
};

export const AgreeWeek: Document<AgreeWeekMutation, AgreeWeekMutationVariables> = {
  name: "AgreeWeek",
  kind: "mutation",
  id: "sha256:c1a411452437e7761751761f3af3dd14d011ae8fe6b6411a517a6e3d28ed5a40",
  text: "mutation AgreeWeek($input:AgreeWeekInput!){agreeWeek(input:$input){__typename ...Refusal ...WeekChanged ...on WeekAgreed{agreedAt}}}fragment BoxAsPlanned on Box{id date state packedAt child{id name}items{...Item}blockedBecause{kind text}}fragment Item on BoxItem{id breakKey slot place dish{key name}grams pieces served allergens cuts{food cut}carbohydrateGrams labelsToRead{key name}pinned}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}fragment WeekChanged on WeekPayload{changedBoxes{id date child{id name}}week{...WholeWeek}}fragment WholeWeek on Week{id weekStart revision plan{id number state boxes{...BoxAsPlanned}tasks{...TaskOfWeek}cautions{kind text date child{id name}}}}",
  variables: () => z.strictObject({ input: inputSchemas.AgreeWeekInput }),
};

export const Alternatives: Document<AlternativesQuery, AlternativesQueryVariables> = {
  name: "Alternatives",
  kind: "query",
  id: "sha256:bccc83ea147e1be152acc03da198c537a64f673b70007b659d63229970b637db",
  text: "query Alternatives($itemId:ID!){alternatives(itemId:$itemId){dish{key name}grams pieces pointsMore}}",
  variables: () => z.strictObject({ itemId: scalars.ID }),
};

export const AnswerResidenceChange: Document<AnswerResidenceChangeMutation, AnswerResidenceChangeMutationVariables> = {
  name: "AnswerResidenceChange",
  kind: "mutation",
  id: "sha256:5cadb9d8ef05d00a43c134da42c4566446efb91b6d80c9da43101bf11db12eaf",
  text: "mutation AnswerResidenceChange($input:AnswerResidenceChangeInput!){answerResidenceChange(input:$input){__typename ...Refusal ...ResidenceChanged ...on ProposalSettled{state}...on ForTheOtherHome{madeHere}...on DayClosed{date boxState}}}fragment Proposal on ResidenceProposal{id state proposedBy proposedAt pattern{kind starts ends cycle}days{date here}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment ResidenceChanged on ResidencePayload{child{id residenceProposals{...Proposal}}household{id revision}proposal{...Proposal}movedDays}",
  variables: () => z.strictObject({ input: inputSchemas.AnswerResidenceChangeInput }),
};

export const Appoint: Document<AppointMutation, AppointMutationVariables> = {
  name: "Appoint",
  kind: "mutation",
  id: "sha256:da5ccdab9c8fb51e56b0fa311f2f6a56dfe04d89efc70bdb1e823d1f3a93a4ed",
  text: "mutation Appoint($input:AppointInput!){appoint(input:$input){__typename ...Refusal ...on AppointmentsPayload{appointments{person{id displayName}school{id name}jurisdiction since}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.AppointInput }),
};

export const BoxCards: Document<BoxCardsQuery, BoxCardsQueryVariables> = {
  name: "BoxCards",
  kind: "query",
  id: "sha256:cc9dda08d2342a235d9f3b4767881efb826c7e433faf7628085927d4a407bcfb",
  text: "query BoxCards($householdId:ID!$week:LocalDate!$day:LocalDate!){week(householdId:$householdId date:$week){id plan{boxes(date:$day){id child{id name}card{leaveAt coldSources flask cutlery energyKcal carbohydrateGrams cautions lines labels{key name}}}}}}",
  variables: () => z.strictObject({ householdId: scalars.ID, week: scalars.LocalDate, day: scalars.LocalDate }),
};

export const BoxCheck: Document<BoxCheckQuery, BoxCheckQueryVariables> = {
  name: "BoxCheck",
  kind: "query",
  id: "sha256:9be6c72059ac2c0937ed5522b69b22e4ce008c2fb9bfd50c244456e6e6498c4a",
  text: "query BoxCheck($householdId:ID!$childId:ID!$day:LocalDate!$items:[BoxCheckItemInput!]!){boxCheck(householdId:$householdId childId:$childId date:$day items:$items){__typename ...Refusal ...on DishUnknown{nearest}...on OutsideTerm{weekStart nextSchoolDay}...on BoxCheck{cautions compliance{totals{met notMet notApplicable notKnown}rules{state text date whoSaysSo{text}}}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ householdId: scalars.ID, childId: scalars.ID, day: scalars.LocalDate, items: z.array(inputSchemas.BoxCheckItemInput) }),
};

export const BoxesBlocked: Document<BoxesBlockedSubscription, BoxesBlockedSubscriptionVariables> = {
  name: "BoxesBlocked",
  kind: "subscription",
  id: "sha256:5031810f454970b8c586470bb04a77562e255244af76e1c5df4ea63c03412839",
  text: "subscription BoxesBlocked($householdId:ID!){boxesBlocked(householdId:$householdId){child{id name}date state reasons{kind text}}}",
  variables: () => z.strictObject({ householdId: scalars.ID }),
};

export const BoxesOfChild: Document<BoxesOfChildQuery, BoxesOfChildQueryVariables> = {
  name: "BoxesOfChild",
  kind: "query",
  id: "sha256:df773e6483705210b4a772f4a3d8eedbc6bf82c9c00c62fc7f6f9e367f5ada82",
  text: "query BoxesOfChild($childId:ID!$from:LocalDate!$to:LocalDate!){node(id:$childId){...on Child{id boxes(from:$from to:$to){...BoxAsPlanned}}}}fragment BoxAsPlanned on Box{id date state packedAt child{id name}items{...Item}blockedBecause{kind text}}fragment Item on BoxItem{id breakKey slot place dish{key name}grams pieces served allergens cuts{food cut}carbohydrateGrams labelsToRead{key name}pinned}",
  variables: () => z.strictObject({ childId: scalars.ID, from: scalars.LocalDate, to: scalars.LocalDate }),
};

export const CalendarChange: Document<CalendarChangeQuery, CalendarChangeQueryVariables> = {
  name: "CalendarChange",
  kind: "query",
  id: "sha256:f9fb1e315be60b0b287c5c11a2227e4860c3cb0f3eaf79e4c20d456e0b4334b2",
  text: "query CalendarChange($schoolId:ID!$calendar:String!){calendarChange(schoolId:$schoolId calendar:$calendar){__typename ...Refusal ...RefusedDocument ...on CalendarChange{seenRevision added{...CalendarLine}changed{before{...CalendarLine}after{...CalendarLine}}removed{...CalendarLine}unchanged setByHand{...CalendarLine}warnings{...Issue}}}}fragment CalendarLine on CalendarEntry{kind title firstDay lastDay endsAt schoolClass{id name}}fragment Issue on DocumentIssue{path line problem expected nearest}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment RefusedDocument on DocumentRefused{issues{...Issue}warnings{...Issue}}",
  variables: () => z.strictObject({ schoolId: scalars.ID, calendar: scalars.String }),
};

export const Carers: Document<CarersQuery, CarersQueryVariables> = {
  name: "Carers",
  kind: "query",
  id: "sha256:45f9bfd0320e3f1f301edb1133c84c7b28743ad9350e9df58e35cc5e3d62a3af",
  text: "query Carers($householdId:ID!){household(id:$householdId){id myRole mayDo carers{person{id displayName}role since}invitations{...InvitationMade}}}fragment InvitationMade on Invitation{id kind state role child{id name}invitedBy{id displayName}createdAt expiresAt}",
  variables: () => z.strictObject({ householdId: scalars.ID }),
};

export const ChangeRole: Document<ChangeRoleMutation, ChangeRoleMutationVariables> = {
  name: "ChangeRole",
  kind: "mutation",
  id: "sha256:c0f049d1f67b30ebaa77d849c254a7f4e6b5a81a9d04124e1e3cdf50f3f5d6a5",
  text: "mutation ChangeRole($input:ChangeRoleInput!){changeRole(input:$input){__typename ...Refusal ...CarersChanged}}fragment CarersChanged on HouseholdPayload{household{id name revision myRole mayDo carers{person{id displayName}role since}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.ChangeRoleInput }),
};

export const ChangeSchoolClass: Document<ChangeSchoolClassMutation, ChangeSchoolClassMutationVariables> = {
  name: "ChangeSchoolClass",
  kind: "mutation",
  id: "sha256:40cb26e5350586049ed3faac370ab461af06a6dc409e2f4932b559406dfc8a59",
  text: "mutation ChangeSchoolClass($input:ChangeSchoolClassInput!){changeSchoolClass(input:$input){__typename ...Refusal ...on SchoolPayload{school{...SchoolAsKept}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment SchoolAsKept on School{id name timeZone jurisdiction revision classes{id name facility breaks{key name startsAt minutes slots energyShare}}terms{name firstDay lastDay}days{date kind title endsAt}}",
  variables: () => z.strictObject({ input: inputSchemas.ChangeSchoolClassInput }),
};

export const Changes: Document<ChangesSubscription, ChangesSubscriptionVariables> = {
  name: "Changes",
  kind: "subscription",
  id: "sha256:d7aabd1dcfd10571d2c094c348cb9ec6768cc86cdb1cd014ed958991a39b1519",
  text: "subscription Changes($householdId:ID!$after:String){changes(householdId:$householdId after:$after){...Entry task{...TaskOfWeek}box{...BoxAsPlanned}week{id weekStart revision plan{id number state}}shoppingLine{id ticked food{key name}}}}fragment BoxAsPlanned on Box{id date state packedAt child{id name}items{...Item}blockedBecause{kind text}}fragment Entry on Change{cursor at by{id displayName}kind verb subjectId child{id name}date fields{name before after}}fragment Item on BoxItem{id breakKey slot place dish{key name}grams pieces served allergens cuts{food cut}carbohydrateGrams labelsToRead{key name}pinned}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}",
  variables: () => z.strictObject({ householdId: scalars.ID, after: scalars.String.nullish() }),
};

export const CheckRuleSet: Document<CheckRuleSetQuery, CheckRuleSetQueryVariables> = {
  name: "CheckRuleSet",
  kind: "query",
  id: "sha256:a8a3276cec58a5f6ab2e4de0aab14964e68c282bcc7b5732ff10f6f48d7636f9",
  text: "query CheckRuleSet($input:RuleSetDocumentInput!){ruleSetCheck(input:$input){__typename ...Refusal ...on RuleSetCheck{errors{...Issue}warnings{...Issue}comparedWith unchanged difference{...DocumentChange}}}}fragment DocumentChange on RuleSetDifference{fields{field before after}rules{kind rule{key says}}}fragment Issue on DocumentIssue{path line problem expected nearest}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.RuleSetDocumentInput }),
};

export const CloseFeed: Document<CloseFeedMutation, CloseFeedMutationVariables> = {
  name: "CloseFeed",
  kind: "mutation",
  id: "sha256:6005cbd971cb90d8ace2e1485808b469d10bb27a1856ba994b2865558999cac0",
  text: "mutation CloseFeed($input:CloseFeedInput!){closeFeed(input:$input){__typename ...Refusal ...on CloseFeedPayload{wasOpen}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.CloseFeedInput }),
};

export const CountRuleSetCompliance: Document<CountRuleSetComplianceMutation, CountRuleSetComplianceMutationVariables> = {
  name: "CountRuleSetCompliance",
  kind: "mutation",
  id: "sha256:c5d591d565b085da5183e0a16acbd7363229ea6fb6239cfb9b2b99b3021679e9",
  text: "mutation CountRuleSetCompliance($input:CountRuleSetComplianceInput!){countRuleSetCompliance(input:$input){__typename ...Refusal ...Counts}}fragment Counts on RuleSetCounts{from until all{held boxes children weeks}rules{rule held boxes children weeks}ownDishes notCounted}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.CountRuleSetComplianceInput }),
};

export const CountRuleSetImpact: Document<CountRuleSetImpactMutation, CountRuleSetImpactMutationVariables> = {
  name: "CountRuleSetImpact",
  kind: "mutation",
  id: "sha256:c0678b1772d2019b370aa3f938d77f2245a7e509f6425b03062da418305de676",
  text: "mutation CountRuleSetImpact($input:CountRuleSetImpactInput!){countRuleSetImpact(input:$input){__typename ...Refusal ...RefusedDocument ...Counts}}fragment Counts on RuleSetCounts{from until all{held boxes children weeks}rules{rule held boxes children weeks}ownDishes notCounted}fragment Issue on DocumentIssue{path line problem expected nearest}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment RefusedDocument on DocumentRefused{issues{...Issue}warnings{...Issue}}",
  variables: () => z.strictObject({ input: inputSchemas.CountRuleSetImpactInput }),
};

export const CreateChild: Document<CreateChildMutation, CreateChildMutationVariables> = {
  name: "CreateChild",
  kind: "mutation",
  id: "sha256:281474492547dba2561e1b4e4eba00b6e90c7d5faec450d46b9ff4c9627280de",
  text: "mutation CreateChild($input:CreateChildInput!){createChild(input:$input){__typename ...Refusal ...on CreateChildPayload{child{...ChildAtHome}household{id revision}}}}fragment ChildAtHome on Child{id name dateOfBirth diets dislikes appetite minutesToEat allergies{allergen foodKind avoid recordedHere}enrolments{school{id name}schoolClass{id name}fromDate untilDate}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.CreateChildInput }),
};

export const CreateHousehold: Document<CreateHouseholdMutation, CreateHouseholdMutationVariables> = {
  name: "CreateHousehold",
  kind: "mutation",
  id: "sha256:3461936abb06767f3abba7d2508d0d501076178cf60be5926127a454a14719dd",
  text: "mutation CreateHousehold($input:CreateHouseholdInput!){createHousehold(input:$input){__typename ...Refusal ...on CreateHouseholdPayload{household{id name revision kitchen{...KitchenAsSet}}}}}fragment KitchenAsSet on Kitchen{equipment{kind units}prepTimes{kind weekday startsAt handsOnMinutes elapsedMinutes carers effort}hotDays stock{food{key name}grams}leftovers{id base{key name}grams cookedOn lastSafeDay}labelChecks{food{key name}contains mayContain kinds{kind says}readOn}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.CreateHouseholdInput }),
};

export const Dishes: Document<DishesQuery, DishesQueryVariables> = {
  name: "Dishes",
  kind: "query",
  id: "sha256:846740527183aa8cf2d5c4efba9488c5069e9d16e635e39c22108b4aa5891fec",
  text: "query Dishes($slot:Slot$householdId:ID$first:Int!$after:String){dishes(slot:$slot householdId:$householdId first:$first after:$after){nodes{key name slots}pageInfo{endCursor hasNextPage}}}",
  variables: () => z.strictObject({ slot: z.enum(["EXTRA","FRUIT","MAIN","VEGETABLE"]).nullish(), householdId: scalars.ID.nullish(), first: scalars.Int, after: scalars.String.nullish() }),
};

export const Dismiss: Document<DismissMutation, DismissMutationVariables> = {
  name: "Dismiss",
  kind: "mutation",
  id: "sha256:a1a929a237477f0b9cec4cdf30979b21935cd7086037361b220f24da4db28a95",
  text: "mutation Dismiss($input:DismissInput!){dismiss(input:$input){__typename ...Refusal ...on AppointmentsPayload{appointments{person{id displayName}school{id name}jurisdiction since}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.DismissInput }),
};

export const DisruptionOffer: Document<DisruptionOfferQuery, DisruptionOfferQueryVariables> = {
  name: "DisruptionOffer",
  kind: "query",
  id: "sha256:a0a89d4f9fcc9b83c94538daa2915e296807b3fc29ffcfd3b973e097d186edf2",
  text: "query DisruptionOffer($householdId:ID!$disruption:DisruptionInput!){disruptionOffer(householdId:$householdId disruption:$disruption){__typename ...Refusal ...Conflicts ...on DisruptionOffer{difference{...Difference}}}}fragment Conflicts on WeekInfeasible{conflicts{kind text wayOut date session child{id name}}}fragment Difference on WeekDifference{boxes{date child{id name}before{slot dish{key name}}after{slot dish{key name}}}toBuy{food{key name}packs packGrams}more{handsOnMinutes costMinor objectivePoints}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ householdId: scalars.ID, disruption: inputSchemas.DisruptionInput }),
};

export const Disruptions: Document<DisruptionsQuery, DisruptionsQueryVariables> = {
  name: "Disruptions",
  kind: "query",
  id: "sha256:1c8989545cea5108e85368a9fd77baea5571d78419754296b4d68583f3a59a7b",
  text: "query Disruptions($householdId:ID!$from:LocalDate!$to:LocalDate!){household(id:$householdId){id disruptions(from:$from to:$to){id kind date until text child{id name}}}}",
  variables: () => z.strictObject({ householdId: scalars.ID, from: scalars.LocalDate, to: scalars.LocalDate }),
};

export const DropOwnRules: Document<DropOwnRulesMutation, DropOwnRulesMutationVariables> = {
  name: "DropOwnRules",
  kind: "mutation",
  id: "sha256:c807b21cfc5fdbccc1e16dcc04af83c69df9a9115ca51a79de3a4087b28af7da",
  text: "mutation DropOwnRules($input:DropOwnRulesInput!){dropOwnRules(input:$input){__typename ...Refusal ...on OwnRulesPayload{unchanged ruleSet{...RuleSetInForce}household{id revision}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment RuleSetInForce on RuleSet{id key version title layer confirmed withdrawn inForceFrom inForceUntil rules{key kind level says source}}",
  variables: () => z.strictObject({ input: inputSchemas.DropOwnRulesInput }),
};

export const EndExemption: Document<EndExemptionMutation, EndExemptionMutationVariables> = {
  name: "EndExemption",
  kind: "mutation",
  id: "sha256:eb9c2e70ac670fef4d58c08fb2b564204db1f5e7dc1973f798a36a52cb74e621",
  text: "mutation EndExemption($input:EndExemptionInput!){endExemption(input:$input){__typename ...Refusal ...on ExemptionPayload{exemption{id rule says from until}household{id revision}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.EndExemptionInput }),
};

export const EnrolChild: Document<EnrolChildMutation, EnrolChildMutationVariables> = {
  name: "EnrolChild",
  kind: "mutation",
  id: "sha256:45485c856034b0dd7e6125f432b5fb1c17fcd6f953952fa5473d865b1bb7d103",
  text: "mutation EnrolChild($input:EnrolChildInput!){enrolChild(input:$input){__typename ...Refusal ...on EnrolChildPayload{child{...ChildAtHome}household{id revision}}}}fragment ChildAtHome on Child{id name dateOfBirth diets dislikes appetite minutesToEat allergies{allergen foodKind avoid recordedHere}enrolments{school{id name}schoolClass{id name}fromDate untilDate}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.EnrolChildInput }),
};

export const EraseChild: Document<EraseChildMutation, EraseChildMutationVariables> = {
  name: "EraseChild",
  kind: "mutation",
  id: "sha256:7981ab6de6ff02bdd0615a119a1072fdfda46a75bcd14a186c20a2ea0d56fd28",
  text: "mutation EraseChild($input:EraseChildInput!){eraseChild(input:$input){__typename ...Refusal ...on ConfirmationNeeded{token expiresAt}...on ErasedPayload{erasedAt}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.EraseChildInput }),
};

export const EraseHousehold: Document<EraseHouseholdMutation, EraseHouseholdMutationVariables> = {
  name: "EraseHousehold",
  kind: "mutation",
  id: "sha256:2da0bfae4c46c4e28ea7594e2b1c92106652ec40ad3712bf02e834440c92ff36",
  text: "mutation EraseHousehold($input:EraseHouseholdInput!){eraseHousehold(input:$input){__typename ...Refusal ...on ConfirmationNeeded{token expiresAt}...on ErasedPayload{erasedAt}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.EraseHouseholdInput }),
};

export const EraseMe: Document<EraseMeMutation, EraseMeMutationVariables> = {
  name: "EraseMe",
  kind: "mutation",
  id: "sha256:0d25a966aa858aee138a03123885af68cc96a055a16b155ab9acdb1ed98d31f7",
  text: "mutation EraseMe($input:EraseMeInput!){eraseMe(input:$input){__typename ...Refusal ...on ConfirmationNeeded{token expiresAt}...on ErasedPayload{erasedAt}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.EraseMeInput }),
};

export const Fairness: Document<FairnessQuery, FairnessQueryVariables> = {
  name: "Fairness",
  kind: "query",
  id: "sha256:43302dff4633de1a4a16a56dd1ff9a2b3a6443c826d430601d97a0b469b78572",
  text: "query Fairness($householdId:ID!$day:LocalDate!){household(id:$householdId){id fairness(asOf:$day){from asOf carers{person{id displayName}minutesDone sharePercent minutesAhead}othersMinutes}}}",
  variables: () => z.strictObject({ householdId: scalars.ID, day: scalars.LocalDate }),
};

export const Feeds: Document<FeedsQuery, FeedsQueryVariables> = {
  name: "Feeds",
  kind: "query",
  id: "sha256:b2a3d7bc3615f5fe0b5c7823ce014d313a8c315317e7d3a159433e3d58ebb2d4",
  text: "query Feeds{feeds{household{id name}createdAt}}",
  variables: () => z.strictObject({  }),
};

export const FinishTask: Document<FinishTaskMutation, FinishTaskMutationVariables> = {
  name: "FinishTask",
  kind: "mutation",
  id: "sha256:d366cc45c471a94e866b900672af79aebeab98ae5dac2f49d7d586c0d0de37b1",
  text: "mutation FinishTask($input:FinishTaskInput!){finishTask(input:$input){__typename ...Refusal ...HeldByAnother ...TaskChanged}}fragment HeldByAnother on TaskHeld{holder{id displayName}state}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment TaskChanged on TaskPayload{revision task{...TaskOfWeek}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}",
  variables: () => z.strictObject({ input: inputSchemas.FinishTaskInput }),
};

export const GiveUpHome: Document<GiveUpHomeMutation, GiveUpHomeMutationVariables> = {
  name: "GiveUpHome",
  kind: "mutation",
  id: "sha256:b39fc98e6b2620ea7f2c9c6bff587cb6888e9317a3655bdddc4b91528af2a791",
  text: "mutation GiveUpHome($input:GiveUpHomeInput!){giveUpHome(input:$input){__typename ...Refusal ...KitchenChanged}}fragment KitchenAsSet on Kitchen{equipment{kind units}prepTimes{kind weekday startsAt handsOnMinutes elapsedMinutes carers effort}hotDays stock{food{key name}grams}leftovers{id base{key name}grams cookedOn lastSafeDay}labelChecks{food{key name}contains mayContain kinds{kind says}readOn}}fragment KitchenChanged on KitchenPayload{household{id revision keepsOut energyMethod kitchen{...KitchenAsSet}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.GiveUpHomeInput }),
};

export const HandOverCoordination: Document<HandOverCoordinationMutation, HandOverCoordinationMutationVariables> = {
  name: "HandOverCoordination",
  kind: "mutation",
  id: "sha256:993888ac2c06c2dce58c231699e94ff43900c8093f7cbdfebce34b18e80c1353",
  text: "mutation HandOverCoordination($input:HandOverCoordinationInput!){handOverCoordination(input:$input){__typename ...Refusal ...CarersChanged}}fragment CarersChanged on HouseholdPayload{household{id name revision myRole mayDo carers{person{id displayName}role since}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.HandOverCoordinationInput }),
};

export const HandTask: Document<HandTaskMutation, HandTaskMutationVariables> = {
  name: "HandTask",
  kind: "mutation",
  id: "sha256:7c010772cc8b1ca1ecfc176963051aec239b8d63e7a74ca8faff46d94bc486c3",
  text: "mutation HandTask($input:HandTaskInput!){handTask(input:$input){__typename ...Refusal ...TaskChanged ...HeldByAnother ...on TaskNotHeld{state}}}fragment HeldByAnother on TaskHeld{holder{id displayName}state}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment TaskChanged on TaskPayload{revision task{...TaskOfWeek}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}",
  variables: () => z.strictObject({ input: inputSchemas.HandTaskInput }),
};

export const Handover: Document<HandoverQuery, HandoverQueryVariables> = {
  name: "Handover",
  kind: "query",
  id: "sha256:f95552c0db4ba527cb50d595d91d048b58fc2a1edda6fba66e1de4b95c106392",
  text: "query Handover($householdId:ID!$childId:ID!$day:LocalDate!){handover(householdId:$householdId childId:$childId date:$day){...HandoverNote}}fragment HandoverNote on Handover{child{id name}weekStart revision allergies{allergen foodKind avoid}cameBack{dish{key name}days{date cameBack}}repeat avoid note box icePacks flask}",
  variables: () => z.strictObject({ householdId: scalars.ID, childId: scalars.ID, day: scalars.LocalDate }),
};

export const Home: Document<HomeQuery, HomeQueryVariables> = {
  name: "Home",
  kind: "query",
  id: "sha256:77c0f8ff00052a05cf9dd71e4b16aa1364cd9c3ce7a2db81c38875123769ec55",
  text: "query Home($householdId:ID!){household(id:$householdId){id name timeZone currency revision myRole energyMethod keepsOut carers{person{id displayName}role since}children{...ChildAtHome}kitchen{...KitchenAsSet}ruleNotices{child{id name}from text copy{id title}}}}fragment ChildAtHome on Child{id name dateOfBirth diets dislikes appetite minutesToEat allergies{allergen foodKind avoid recordedHere}enrolments{school{id name}schoolClass{id name}fromDate untilDate}}fragment KitchenAsSet on Kitchen{equipment{kind units}prepTimes{kind weekday startsAt handsOnMinutes elapsedMinutes carers effort}hotDays stock{food{key name}grams}leftovers{id base{key name}grams cookedOn lastSafeDay}labelChecks{food{key name}contains mayContain kinds{kind says}readOn}}",
  variables: () => z.strictObject({ householdId: scalars.ID }),
};

export const HowGood: Document<HowGoodQuery, HowGoodQueryVariables> = {
  name: "HowGood",
  kind: "query",
  id: "sha256:a6ddadea6fae146721ed328edd7a8a2343e9db70a7c36ec56d6a081ca93f1d36",
  text: "query HowGood($householdId:ID!$week:LocalDate!){week(householdId:$householdId date:$week){id plan{sharing{handsOnMinutesShared handsOnMinutesAlone savedMinutes}wishes{handsOnMinutes costMinor nutrientShortfallPercent refusalPoints monotonyPoints objectivePoints}certificate{objectivePoints boundPoints gapPercent provenOptimal}compliance{totals{met notMet notApplicable notKnown}rules(state:NOT_MET){child{id name}date text whoSaysSo{text}}}}}}",
  variables: () => z.strictObject({ householdId: scalars.ID, week: scalars.LocalDate }),
};

export const InvitationOffer: Document<InvitationOfferQuery, InvitationOfferQueryVariables> = {
  name: "InvitationOffer",
  kind: "query",
  id: "sha256:966da2d33ca1466178f2f8072e83b0a1374422b02beeb3010ba9e556955fbeb3",
  text: "query InvitationOffer($token:String!){invitation(token:$token){kind state expiresAt householdName inviterName role childFirstName}}",
  variables: () => z.strictObject({ token: scalars.String }),
};

export const InviteCarer: Document<InviteCarerMutation, InviteCarerMutationVariables> = {
  name: "InviteCarer",
  kind: "mutation",
  id: "sha256:860110beca7e0ec39f46476399e66e25eb94c6779570b7f5dc379a4d169db8e5",
  text: "mutation InviteCarer($input:InviteCarerInput!){inviteCarer(input:$input){__typename ...Refusal ...on InvitationPayload{token invitation{...InvitationMade}}}}fragment InvitationMade on Invitation{id kind state role child{id name}invitedBy{id displayName}createdAt expiresAt}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.InviteCarerInput }),
};

export const InviteHome: Document<InviteHomeMutation, InviteHomeMutationVariables> = {
  name: "InviteHome",
  kind: "mutation",
  id: "sha256:81c9a6589f81e409aa91676c3f2870925af53aac5c695330a7aa0a60c1ed8d88",
  text: "mutation InviteHome($input:InviteHomeInput!){inviteHome(input:$input){__typename ...Refusal ...on InvitationPayload{token invitation{...InvitationMade}}}}fragment InvitationMade on Invitation{id kind state role child{id name}invitedBy{id displayName}createdAt expiresAt}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.InviteHomeInput }),
};

export const JurisdictionAudit: Document<JurisdictionAuditQuery, JurisdictionAuditQueryVariables> = {
  name: "JurisdictionAudit",
  kind: "query",
  id: "sha256:5f6c877744b9be05bda2dd64871e6a037df039344786c70fb528c489745bc234",
  text: "query JurisdictionAudit($jurisdiction:String!$first:Int!$after:String){jurisdictionAppointments(jurisdiction:$jurisdiction){person{id displayName}school{id name}since}jurisdictionAudit(jurisdiction:$jurisdiction first:$first after:$after){...AuditPage}}fragment AuditPage on AuditConnection{nodes{at action person{displayName}about{displayName}school{id name}jurisdiction details}pageInfo{endCursor hasNextPage}}",
  variables: () => z.strictObject({ jurisdiction: scalars.String, first: scalars.Int, after: scalars.String.nullish() }),
};

export const JurisdictionRuleSets: Document<JurisdictionRuleSetsQuery, JurisdictionRuleSetsQueryVariables> = {
  name: "JurisdictionRuleSets",
  kind: "query",
  id: "sha256:339620fab13c4cd0642bdb92afcf4860a549034f89fb3155673663de4ae6214b",
  text: "query JurisdictionRuleSets($jurisdiction:String!){jurisdictionRuleSets(jurisdiction:$jurisdiction){...RuleSetInForce}}fragment RuleSetInForce on RuleSet{id key version title layer confirmed withdrawn inForceFrom inForceUntil rules{key kind level says source}}",
  variables: () => z.strictObject({ jurisdiction: scalars.String }),
};

export const KeepOwnRules: Document<KeepOwnRulesMutation, KeepOwnRulesMutationVariables> = {
  name: "KeepOwnRules",
  kind: "mutation",
  id: "sha256:e4ff86183004d4aa57fb3a0c892dc92659b5b73ca6eff82f335da80f931cb621",
  text: "mutation KeepOwnRules($input:KeepOwnRulesInput!){keepOwnRules(input:$input){__typename ...Refusal ...RefusedDocument ...on OwnRulesPayload{unchanged ruleSet{...RuleSetInForce}household{id revision}}}}fragment Issue on DocumentIssue{path line problem expected nearest}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment RefusedDocument on DocumentRefused{issues{...Issue}warnings{...Issue}}fragment RuleSetInForce on RuleSet{id key version title layer confirmed withdrawn inForceFrom inForceUntil rules{key kind level says source}}",
  variables: () => z.strictObject({ input: inputSchemas.KeepOwnRulesInput }),
};

export const LeaveHousehold: Document<LeaveHouseholdMutation, LeaveHouseholdMutationVariables> = {
  name: "LeaveHousehold",
  kind: "mutation",
  id: "sha256:a9d24e7e797ac02e307e99c711b1d54913e9528f0e0617ab7ced8eb4a2809eeb",
  text: "mutation LeaveHousehold($input:LeaveHouseholdInput!){leaveHousehold(input:$input){__typename ...Refusal ...on LeaveHouseholdPayload{me{households{id name}}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.LeaveHouseholdInput }),
};

export const LoadCalendar: Document<LoadCalendarMutation, LoadCalendarMutationVariables> = {
  name: "LoadCalendar",
  kind: "mutation",
  id: "sha256:f1061f5269b7157dd0225a894a8df634ba3f9a2051588681dd960c5a7a4d6d77",
  text: "mutation LoadCalendar($input:LoadCalendarInput!){loadCalendar(input:$input){__typename ...Refusal ...RefusedDocument ...on SchoolPayload{school{...SchoolAsKept}}}}fragment Issue on DocumentIssue{path line problem expected nearest}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment RefusedDocument on DocumentRefused{issues{...Issue}warnings{...Issue}}fragment SchoolAsKept on School{id name timeZone jurisdiction revision classes{id name facility breaks{key name startsAt minutes slots energyShare}}terms{name firstDay lastDay}days{date kind title endsAt}}",
  variables: () => z.strictObject({ input: inputSchemas.LoadCalendarInput }),
};

export const LoadRuleSet: Document<LoadRuleSetMutation, LoadRuleSetMutationVariables> = {
  name: "LoadRuleSet",
  kind: "mutation",
  id: "sha256:719ade9c292b92dda6081ea450bca790b36f124375790215e9a5046be7de8b1d",
  text: "mutation LoadRuleSet($input:LoadRuleSetInput!){loadRuleSet(input:$input){__typename ...Refusal ...RefusedDocument ...on LoadRuleSetPayload{unchanged ruleSet{...RuleSetInForce}}}}fragment Issue on DocumentIssue{path line problem expected nearest}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment RefusedDocument on DocumentRefused{issues{...Issue}warnings{...Issue}}fragment RuleSetInForce on RuleSet{id key version title layer confirmed withdrawn inForceFrom inForceUntil rules{key kind level says source}}",
  variables: () => z.strictObject({ input: inputSchemas.LoadRuleSetInput }),
};

export const Log: Document<LogQuery, LogQueryVariables> = {
  name: "Log",
  kind: "query",
  id: "sha256:a7842f9ac883de9956533baf761f2985d0f55cb07aa308ee1114e6475e4a2eb5",
  text: "query Log($householdId:ID!$first:Int!$after:String){household(id:$householdId){id changeCursor log(first:$first after:$after){nodes{...Entry}pageInfo{endCursor hasNextPage}}}}fragment Entry on Change{cursor at by{id displayName}kind verb subjectId child{id name}date fields{name before after}}",
  variables: () => z.strictObject({ householdId: scalars.ID, first: scalars.Int, after: scalars.String.nullish() }),
};

export const MarkPacked: Document<MarkPackedMutation, MarkPackedMutationVariables> = {
  name: "MarkPacked",
  kind: "mutation",
  id: "sha256:64b44be5a793214488b806a301480e8ec6f2a8411898695a5e9971b48e6a40c0",
  text: "mutation MarkPacked($input:MarkPackedInput!){markPacked(input:$input){__typename ...Refusal ...WeekChanged ...on LabelsUnread{foods{key name}}...on BoxClosed{state}}}fragment BoxAsPlanned on Box{id date state packedAt child{id name}items{...Item}blockedBecause{kind text}}fragment Item on BoxItem{id breakKey slot place dish{key name}grams pieces served allergens cuts{food cut}carbohydrateGrams labelsToRead{key name}pinned}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}fragment WeekChanged on WeekPayload{changedBoxes{id date child{id name}}week{...WholeWeek}}fragment WholeWeek on Week{id weekStart revision plan{id number state boxes{...BoxAsPlanned}tasks{...TaskOfWeek}cautions{kind text date child{id name}}}}",
  variables: () => z.strictObject({ input: inputSchemas.MarkPackedInput }),
};

export const MendWeek: Document<MendWeekMutation, MendWeekMutationVariables> = {
  name: "MendWeek",
  kind: "mutation",
  id: "sha256:38616aaa44b9697b68a44913891a822c14ca87561889bb6986c221c79e19def0",
  text: "mutation MendWeek($input:MendWeekInput!){mendWeek(input:$input){__typename ...Refusal ...WeekChanged ...Conflicts}}fragment BoxAsPlanned on Box{id date state packedAt child{id name}items{...Item}blockedBecause{kind text}}fragment Conflicts on WeekInfeasible{conflicts{kind text wayOut date session child{id name}}}fragment Item on BoxItem{id breakKey slot place dish{key name}grams pieces served allergens cuts{food cut}carbohydrateGrams labelsToRead{key name}pinned}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}fragment WeekChanged on WeekPayload{changedBoxes{id date child{id name}}week{...WholeWeek}}fragment WholeWeek on Week{id weekStart revision plan{id number state boxes{...BoxAsPlanned}tasks{...TaskOfWeek}cautions{kind text date child{id name}}}}",
  variables: () => z.strictObject({ input: inputSchemas.MendWeekInput }),
};

export const MendingOffer: Document<MendingOfferQuery, MendingOfferQueryVariables> = {
  name: "MendingOffer",
  kind: "query",
  id: "sha256:613de86e185d9a68746a9213293194b3ebbdff807c24f8e433611b73c6d842df",
  text: "query MendingOffer($weekId:ID!){mendingOffer(weekId:$weekId){possible changedBoxes{date child{id name}items{breakKey slot dish{key name}}}conflicts{kind text wayOut}}}",
  variables: () => z.strictObject({ weekId: scalars.ID }),
};

export const MyHomes: Document<MyHomesQuery, MyHomesQueryVariables> = {
  name: "MyHomes",
  kind: "query",
  id: "sha256:7653d17b4daf7ad1b96c8893546e14b318407669b51a21950cd1dc3e3f1ef8b5",
  text: "query MyHomes($day:LocalDate!){me{person{id displayName}households{id name revision changeCursor myRole children{id name}week(date:$day){...WholeWeek}}}}fragment BoxAsPlanned on Box{id date state packedAt child{id name}items{...Item}blockedBecause{kind text}}fragment Item on BoxItem{id breakKey slot place dish{key name}grams pieces served allergens cuts{food cut}carbohydrateGrams labelsToRead{key name}pinned}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}fragment WholeWeek on Week{id weekStart revision plan{id number state boxes{...BoxAsPlanned}tasks{...TaskOfWeek}cautions{kind text date child{id name}}}}",
  variables: () => z.strictObject({ day: scalars.LocalDate }),
};

export const NeedsOfChild: Document<NeedsOfChildQuery, NeedsOfChildQueryVariables> = {
  name: "NeedsOfChild",
  kind: "query",
  id: "sha256:5687dc9472cfc92675840b42af777b03f1cc6fc6d725091fdba64fd6d6dce9c8",
  text: "query NeedsOfChild($childId:ID!$day:LocalDate!){node(id:$childId){...on Child{id dailyNeeds(on:$day){energyKcal energyMethod proteinGrams fibreGrams calciumMg ironMg sodiumMaxMg freeSugarMaxGrams breaks{breakKey share energyKcal givenKcal}sources{figure source}}}}}",
  variables: () => z.strictObject({ childId: scalars.ID, day: scalars.LocalDate }),
};

export const PinItem: Document<PinItemMutation, PinItemMutationVariables> = {
  name: "PinItem",
  kind: "mutation",
  id: "sha256:c96460f61acfec98b210d237a081070f48b191f8d9c11b33951a88228e3c3917",
  text: "mutation PinItem($input:PinItemInput!){pinItem(input:$input){__typename ...Refusal ...WeekChanged}}fragment BoxAsPlanned on Box{id date state packedAt child{id name}items{...Item}blockedBecause{kind text}}fragment Item on BoxItem{id breakKey slot place dish{key name}grams pieces served allergens cuts{food cut}carbohydrateGrams labelsToRead{key name}pinned}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}fragment WeekChanged on WeekPayload{changedBoxes{id date child{id name}}week{...WholeWeek}}fragment WholeWeek on Week{id weekStart revision plan{id number state boxes{...BoxAsPlanned}tasks{...TaskOfWeek}cautions{kind text date child{id name}}}}",
  variables: () => z.strictObject({ input: inputSchemas.PinItemInput }),
};

export const PlanProgress: Document<PlanProgressSubscription, PlanProgressSubscriptionVariables> = {
  name: "PlanProgress",
  kind: "subscription",
  id: "sha256:9d429bee5bc82fdf71e569b742ce73cbda15ac7dccc57edcbf5b1c92dacf8ace",
  text: "subscription PlanProgress($householdId:ID!){planProgress(householdId:$householdId){weekStart percent bestPoints failure}}",
  variables: () => z.strictObject({ householdId: scalars.ID }),
};

export const PlanWeek: Document<PlanWeekMutation, PlanWeekMutationVariables> = {
  name: "PlanWeek",
  kind: "mutation",
  id: "sha256:a48850ee7d666c9a512ddb5ba31a298bbde7a3a569b075e5c3fd48ce67791a47",
  text: "mutation PlanWeek($input:PlanWeekInput!){planWeek(input:$input){__typename ...Refusal ...WeekChanged ...Conflicts ...on WeekAgreed{agreedAt}...on OutsideTerm{weekStart nextSchoolDay}...on NoSchool{children{id name}}}}fragment BoxAsPlanned on Box{id date state packedAt child{id name}items{...Item}blockedBecause{kind text}}fragment Conflicts on WeekInfeasible{conflicts{kind text wayOut date session child{id name}}}fragment Item on BoxItem{id breakKey slot place dish{key name}grams pieces served allergens cuts{food cut}carbohydrateGrams labelsToRead{key name}pinned}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}fragment WeekChanged on WeekPayload{changedBoxes{id date child{id name}}week{...WholeWeek}}fragment WholeWeek on Week{id weekStart revision plan{id number state boxes{...BoxAsPlanned}tasks{...TaskOfWeek}cautions{kind text date child{id name}}}}",
  variables: () => z.strictObject({ input: inputSchemas.PlanWeekInput }),
};

export const PlanWeekInBackground: Document<PlanWeekInBackgroundMutation, PlanWeekInBackgroundMutationVariables> = {
  name: "PlanWeekInBackground",
  kind: "mutation",
  id: "sha256:820e02666a860f3debe5ff438043ed42d2acab9ebb3591f7eebb9020d6bf32d9",
  text: "mutation PlanWeekInBackground($input:PlanWeekInBackgroundInput!){planWeekInBackground(input:$input){__typename ...Refusal ...Conflicts ...on PlanQueued{weekStart steps}...on WeekAgreed{agreedAt}...on OutsideTerm{weekStart nextSchoolDay}...on NoSchool{children{id name}}}}fragment Conflicts on WeekInfeasible{conflicts{kind text wayOut date session child{id name}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.PlanWeekInBackgroundInput }),
};

export const PriceOfDish: Document<PriceOfDishQuery, PriceOfDishQueryVariables> = {
  name: "PriceOfDish",
  kind: "query",
  id: "sha256:760875a922f5c45bb6ae97ef5cd4f4fa665322fa4697b33812dee448c6493abb",
  text: "query PriceOfDish($householdId:ID!$childId:ID!$day:LocalDate!$breakKey:String!$slot:Slot!$place:Int!$dish:String!){priceOfDish(householdId:$householdId childId:$childId date:$day breakKey:$breakKey slot:$slot place:$place dish:$dish){__typename ...Refusal ...on DishNotOffered{kind rule source}...on NoWeekWithDish{clash{members{kind text}proof}}...on DishUnknown{nearest}...on PricedAlternative{dish{key name}grams pieces price{text objectivePoints changedItems}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ householdId: scalars.ID, childId: scalars.ID, day: scalars.LocalDate, breakKey: scalars.String, slot: z.enum(["EXTRA","FRUIT","MAIN","VEGETABLE"]), place: scalars.Int, dish: scalars.String }),
};

export const ProposeResidenceChange: Document<ProposeResidenceChangeMutation, ProposeResidenceChangeMutationVariables> = {
  name: "ProposeResidenceChange",
  kind: "mutation",
  id: "sha256:59177e3139ff03f306cd313eaf69f8938c8c619339bbe6818b8d67d041c0f4ca",
  text: "mutation ProposeResidenceChange($input:ProposeResidenceChangeInput!){proposeResidenceChange(input:$input){__typename ...Refusal ...ResidenceChanged ...on ProposalOpen{proposalId madeHere dates}...on DayClosed{date boxState}}}fragment Proposal on ResidenceProposal{id state proposedBy proposedAt pattern{kind starts ends cycle}days{date here}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment ResidenceChanged on ResidencePayload{child{id residenceProposals{...Proposal}}household{id revision}proposal{...Proposal}movedDays}",
  variables: () => z.strictObject({ input: inputSchemas.ProposeResidenceChangeInput }),
};

export const RecordAllergy: Document<RecordAllergyMutation, RecordAllergyMutationVariables> = {
  name: "RecordAllergy",
  kind: "mutation",
  id: "sha256:59aeacd16c2c45c60f4f69496a99e6c222bf0e3ea578061ac324aafceab7b5e9",
  text: "mutation RecordAllergy($input:RecordAllergyInput!){recordAllergy(input:$input){__typename ...Refusal ...on AllergyPayload{child{...ChildAtHome}household{id revision}}}}fragment ChildAtHome on Child{id name dateOfBirth diets dislikes appetite minutesToEat allergies{allergen foodKind avoid recordedHere}enrolments{school{id name}schoolClass{id name}fromDate untilDate}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.RecordAllergyInput }),
};

export const RecordExemption: Document<RecordExemptionMutation, RecordExemptionMutationVariables> = {
  name: "RecordExemption",
  kind: "mutation",
  id: "sha256:fc96623dd2e5e5f3c2b0b6e57bb875d424168966d26c7030db3ab88147c22b52",
  text: "mutation RecordExemption($input:RecordExemptionInput!){recordExemption(input:$input){__typename ...Refusal ...on ExemptionRefused{reason says}...on ExemptionPayload{exemption{id rule says from until}household{id revision}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.RecordExemptionInput }),
};

export const RecordLabel: Document<RecordLabelMutation, RecordLabelMutationVariables> = {
  name: "RecordLabel",
  kind: "mutation",
  id: "sha256:f46f269038b081fb14dbbc1407e2afe75e7d246fb035931324a00d9a578072ab",
  text: "mutation RecordLabel($input:RecordLabelInput!){recordLabel(input:$input){__typename ...Refusal ...KitchenChanged}}fragment KitchenAsSet on Kitchen{equipment{kind units}prepTimes{kind weekday startsAt handsOnMinutes elapsedMinutes carers effort}hotDays stock{food{key name}grams}leftovers{id base{key name}grams cookedOn lastSafeDay}labelChecks{food{key name}contains mayContain kinds{kind says}readOn}}fragment KitchenChanged on KitchenPayload{household{id revision keepsOut energyMethod kitchen{...KitchenAsSet}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.RecordLabelInput }),
};

export const RegisterSchool: Document<RegisterSchoolMutation, RegisterSchoolMutationVariables> = {
  name: "RegisterSchool",
  kind: "mutation",
  id: "sha256:245328e97b6455b1b618d8fed28a2eaa6a559ec6b578c95137a0bd0f119277b6",
  text: "mutation RegisterSchool($input:RegisterSchoolInput!){registerSchool(input:$input){__typename ...Refusal ...on SchoolPayload{school{...SchoolAsKept}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment SchoolAsKept on School{id name timeZone jurisdiction revision classes{id name facility breaks{key name startsAt minutes slots energyShare}}terms{name firstDay lastDay}days{date kind title endsAt}}",
  variables: () => z.strictObject({ input: inputSchemas.RegisterSchoolInput }),
};

export const RelaxHouseRule: Document<RelaxHouseRuleMutation, RelaxHouseRuleMutationVariables> = {
  name: "RelaxHouseRule",
  kind: "mutation",
  id: "sha256:100916cea00a64c61a0c9847cbad3523867beec400335e0e7bc5e9cc6dbbcfa6",
  text: "mutation RelaxHouseRule($input:RelaxHouseRuleInput!){relaxHouseRule(input:$input){__typename ...Refusal ...KitchenChanged}}fragment KitchenAsSet on Kitchen{equipment{kind units}prepTimes{kind weekday startsAt handsOnMinutes elapsedMinutes carers effort}hotDays stock{food{key name}grams}leftovers{id base{key name}grams cookedOn lastSafeDay}labelChecks{food{key name}contains mayContain kinds{kind says}readOn}}fragment KitchenChanged on KitchenPayload{household{id revision keepsOut energyMethod kitchen{...KitchenAsSet}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.RelaxHouseRuleInput }),
};

export const ReleaseTask: Document<ReleaseTaskMutation, ReleaseTaskMutationVariables> = {
  name: "ReleaseTask",
  kind: "mutation",
  id: "sha256:7000b71ec71ed705e6faabcd14d9a6a55f576a9cb5860de5aa61703cd140ba5c",
  text: "mutation ReleaseTask($input:ReleaseTaskInput!){releaseTask(input:$input){__typename ...Refusal ...TaskChanged ...HeldByAnother ...on TaskNotHeld{state}}}fragment HeldByAnother on TaskHeld{holder{id displayName}state}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment TaskChanged on TaskPayload{revision task{...TaskOfWeek}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}",
  variables: () => z.strictObject({ input: inputSchemas.ReleaseTaskInput }),
};

export const Reminders: Document<RemindersQuery, RemindersQueryVariables> = {
  name: "Reminders",
  kind: "query",
  id: "sha256:54261db30cc6c3c9762902e1609ea7d0675a9ce94c48d819cb6e6a6ac077cd7d",
  text: "query Reminders($householdId:ID!$after:DateTime!){household(id:$householdId){id reminders(after:$after){...ReminderDue}}}fragment ReminderDue on Reminder{id kind session task{id text}forEverybody aboutAt dueAt text}",
  variables: () => z.strictObject({ householdId: scalars.ID, after: scalars.DateTime }),
};

export const RemindersDue: Document<RemindersDueSubscription, RemindersDueSubscriptionVariables> = {
  name: "RemindersDue",
  kind: "subscription",
  id: "sha256:9e550b3c79d6b77ad208ec300fdd8da060d56dd8bfd12e7ff4e281ce9f8a6a8f",
  text: "subscription RemindersDue($householdId:ID!){reminders(householdId:$householdId){...ReminderDue}}fragment ReminderDue on Reminder{id kind session task{id text}forEverybody aboutAt dueAt text}",
  variables: () => z.strictObject({ householdId: scalars.ID }),
};

export const RemoveAllergy: Document<RemoveAllergyMutation, RemoveAllergyMutationVariables> = {
  name: "RemoveAllergy",
  kind: "mutation",
  id: "sha256:ce4b956c0d2b14d7ce4b940c3dc1e510c9e20ec3c9d9300afe91909b5286a700",
  text: "mutation RemoveAllergy($input:RemoveAllergyInput!){removeAllergy(input:$input){__typename ...Refusal ...on ConfirmationNeeded{token expiresAt}...on AllergyPayload{child{...ChildAtHome}household{id revision}}}}fragment ChildAtHome on Child{id name dateOfBirth diets dislikes appetite minutesToEat allergies{allergen foodKind avoid recordedHere}enrolments{school{id name}schoolClass{id name}fromDate untilDate}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.RemoveAllergyInput }),
};

export const RemoveCarer: Document<RemoveCarerMutation, RemoveCarerMutationVariables> = {
  name: "RemoveCarer",
  kind: "mutation",
  id: "sha256:ab6230ea383305b54ba742745161f240ef5aa59282528ea02ec02dd1bfc0de7a",
  text: "mutation RemoveCarer($input:RemoveCarerInput!){removeCarer(input:$input){__typename ...Refusal ...CarersChanged}}fragment CarersChanged on HouseholdPayload{household{id name revision myRole mayDo carers{person{id displayName}role since}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.RemoveCarerInput }),
};

export const RemoveOwnDish: Document<RemoveOwnDishMutation, RemoveOwnDishMutationVariables> = {
  name: "RemoveOwnDish",
  kind: "mutation",
  id: "sha256:e24ec3bb69077e9ebad2c60cd495fb740efef4f58f5de3f7cd98f0385613378b",
  text: "mutation RemoveOwnDish($input:RemoveOwnDishInput!){removeOwnDish(input:$input){__typename ...Refusal ...KitchenChanged ...WhereUsed}}fragment KitchenAsSet on Kitchen{equipment{kind units}prepTimes{kind weekday startsAt handsOnMinutes elapsedMinutes carers effort}hotDays stock{food{key name}grams}leftovers{id base{key name}grams cookedOn lastSafeDay}labelChecks{food{key name}contains mayContain kinds{kind says}readOn}}fragment KitchenChanged on KitchenPayload{household{id revision keepsOut energyMethod kitchen{...KitchenAsSet}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment WhereUsed on StillInUse{dishes{key name}boxes{child{id name}date}}",
  variables: () => z.strictObject({ input: inputSchemas.RemoveOwnDishInput }),
};

export const RemoveOwnFood: Document<RemoveOwnFoodMutation, RemoveOwnFoodMutationVariables> = {
  name: "RemoveOwnFood",
  kind: "mutation",
  id: "sha256:529b0ca52b52da8037f034cb689256609d77ee1d42bb7f77f49e9486ace9bf3b",
  text: "mutation RemoveOwnFood($input:RemoveOwnFoodInput!){removeOwnFood(input:$input){__typename ...Refusal ...KitchenChanged ...WhereUsed}}fragment KitchenAsSet on Kitchen{equipment{kind units}prepTimes{kind weekday startsAt handsOnMinutes elapsedMinutes carers effort}hotDays stock{food{key name}grams}leftovers{id base{key name}grams cookedOn lastSafeDay}labelChecks{food{key name}contains mayContain kinds{kind says}readOn}}fragment KitchenChanged on KitchenPayload{household{id revision keepsOut energyMethod kitchen{...KitchenAsSet}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment WhereUsed on StillInUse{dishes{key name}boxes{child{id name}date}}",
  variables: () => z.strictObject({ input: inputSchemas.RemoveOwnFoodInput }),
};

export const RemoveSchoolDay: Document<RemoveSchoolDayMutation, RemoveSchoolDayMutationVariables> = {
  name: "RemoveSchoolDay",
  kind: "mutation",
  id: "sha256:63f9ecf7f2360856cc34b23b7d19ebf379b8eef1d365388ea8f3ae66cad67384",
  text: "mutation RemoveSchoolDay($input:RemoveSchoolDayInput!){removeSchoolDay(input:$input){__typename ...Refusal ...on SchoolPayload{school{...SchoolAsKept}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment SchoolAsKept on School{id name timeZone jurisdiction revision classes{id name facility breaks{key name startsAt minutes slots energyShare}}terms{name firstDay lastDay}days{date kind title endsAt}}",
  variables: () => z.strictObject({ input: inputSchemas.RemoveSchoolDayInput }),
};

export const RemoveTerm: Document<RemoveTermMutation, RemoveTermMutationVariables> = {
  name: "RemoveTerm",
  kind: "mutation",
  id: "sha256:2541c9d084fe8fd246802c75cf2bb0ee9e5644c62bef36371de75016ae5030b4",
  text: "mutation RemoveTerm($input:RemoveTermInput!){removeTerm(input:$input){__typename ...Refusal ...on SchoolPayload{school{...SchoolAsKept}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment SchoolAsKept on School{id name timeZone jurisdiction revision classes{id name facility breaks{key name startsAt minutes slots energyShare}}terms{name firstDay lastDay}days{date kind title endsAt}}",
  variables: () => z.strictObject({ input: inputSchemas.RemoveTermInput }),
};

export const RenameMe: Document<RenameMeMutation, RenameMeMutationVariables> = {
  name: "RenameMe",
  kind: "mutation",
  id: "sha256:002dc717168a84c2f9021b881424f91958746f652224467dff87a9e781d021b9",
  text: "mutation RenameMe($input:RenameMeInput!){renameMe(input:$input){__typename ...Refusal ...on RenameMePayload{person{id displayName}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.RenameMeInput }),
};

export const RenewFeedAddress: Document<RenewFeedAddressMutation, RenewFeedAddressMutationVariables> = {
  name: "RenewFeedAddress",
  kind: "mutation",
  id: "sha256:5b22f4e84f46576fa423a4a3bd9c3345785421489515a2c8272596497308af9b",
  text: "mutation RenewFeedAddress($input:RenewFeedAddressInput!){renewFeedAddress(input:$input){__typename ...Refusal ...on FeedAddressPayload{path createdAt}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.RenewFeedAddressInput }),
};

export const ReportAbsence: Document<ReportAbsenceMutation, ReportAbsenceMutationVariables> = {
  name: "ReportAbsence",
  kind: "mutation",
  id: "sha256:c83a5c50dbc833ca862fce32a78ea9de3fc8bfacbbb99056387f347ea4103415",
  text: "mutation ReportAbsence($input:ReportAbsenceInput!){reportAbsence(input:$input){__typename ...Refusal ...WeekChanged ...Conflicts ...on OutsideTerm{weekStart nextSchoolDay}...on BoxClosed{state}}}fragment BoxAsPlanned on Box{id date state packedAt child{id name}items{...Item}blockedBecause{kind text}}fragment Conflicts on WeekInfeasible{conflicts{kind text wayOut date session child{id name}}}fragment Item on BoxItem{id breakKey slot place dish{key name}grams pieces served allergens cuts{food cut}carbohydrateGrams labelsToRead{key name}pinned}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}fragment WeekChanged on WeekPayload{changedBoxes{id date child{id name}}week{...WholeWeek}}fragment WholeWeek on Week{id weekStart revision plan{id number state boxes{...BoxAsPlanned}tasks{...TaskOfWeek}cautions{kind text date child{id name}}}}",
  variables: () => z.strictObject({ input: inputSchemas.ReportAbsenceInput }),
};

export const ReportDisruption: Document<ReportDisruptionMutation, ReportDisruptionMutationVariables> = {
  name: "ReportDisruption",
  kind: "mutation",
  id: "sha256:3d20777794a8a69dc91790d30e637ce8d3720074e7f6ac28016c0823ab8867af",
  text: "mutation ReportDisruption($input:ReportDisruptionInput!){reportDisruption(input:$input){__typename ...Refusal ...on DisruptionPayload{disruption{id kind date until text}week{...WholeWeek}difference{...Difference}infeasible{message ...Conflicts}}}}fragment BoxAsPlanned on Box{id date state packedAt child{id name}items{...Item}blockedBecause{kind text}}fragment Conflicts on WeekInfeasible{conflicts{kind text wayOut date session child{id name}}}fragment Difference on WeekDifference{boxes{date child{id name}before{slot dish{key name}}after{slot dish{key name}}}toBuy{food{key name}packs packGrams}more{handsOnMinutes costMinor objectivePoints}}fragment Item on BoxItem{id breakKey slot place dish{key name}grams pieces served allergens cuts{food cut}carbohydrateGrams labelsToRead{key name}pinned}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}fragment WholeWeek on Week{id weekStart revision plan{id number state boxes{...BoxAsPlanned}tasks{...TaskOfWeek}cautions{kind text date child{id name}}}}",
  variables: () => z.strictObject({ input: inputSchemas.ReportDisruptionInput }),
};

export const ReportReturned: Document<ReportReturnedMutation, ReportReturnedMutationVariables> = {
  name: "ReportReturned",
  kind: "mutation",
  id: "sha256:833521dff7e475776db9c6e0befe68942dc01c8cd9fe18b446031b37ea874d20",
  text: "mutation ReportReturned($input:ReportReturnedInput!){reportReturned(input:$input){__typename ...Refusal ...on ReturnedPayload{box{id state items{id cameBack}}household{id revision}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.ReportReturnedInput }),
};

export const ResidenceOf: Document<ResidenceOfQuery, ResidenceOfQueryVariables> = {
  name: "ResidenceOf",
  kind: "query",
  id: "sha256:5ad3a55511f1aa36f3a05fc68a6a95154a0b8e1bf303c127612fcbc3fde42a60",
  text: "query ResidenceOf($childId:ID!$from:LocalDate!$to:LocalDate!){node(id:$childId){...on Child{id residenceDays(from:$from to:$to){date here source}residencePattern(on:$from){kind starts ends cycle}residenceProposals{...Proposal}}}}fragment Proposal on ResidenceProposal{id state proposedBy proposedAt pattern{kind starts ends cycle}days{date here}}",
  variables: () => z.strictObject({ childId: scalars.ID, from: scalars.LocalDate, to: scalars.LocalDate }),
};

export const Rota: Document<RotaQuery, RotaQueryVariables> = {
  name: "Rota",
  kind: "query",
  id: "sha256:acd78464dc661967775eb40ec2cb72224592280d398de7e20f5a225837c304a5",
  text: "query Rota($householdId:ID!$from:LocalDate!$to:LocalDate!){household(id:$householdId){id revision rota(from:$from to:$to){...Session}availability{person{id displayName}weekday kind minutes}}}fragment Session on RotaSession{key kind date startsAt carers handsOnMinutes isPlanned onDuty{id displayName}}",
  variables: () => z.strictObject({ householdId: scalars.ID, from: scalars.LocalDate, to: scalars.LocalDate }),
};

export const RotaProposal: Document<RotaProposalQuery, RotaProposalQueryVariables> = {
  name: "RotaProposal",
  kind: "query",
  id: "sha256:42181bfae41d118e7d8874bb45886ad7bd63828ca9812c022e2fdd62f8510883",
  text: "query RotaProposal($householdId:ID!$from:LocalDate!$to:LocalDate!){household(id:$householdId){id revision rotaProposal(from:$from to:$to){sessions{session{...Session}onDuty{id displayName}openHands}minutes{person{id displayName}minutes}isFairest token}}}fragment Session on RotaSession{key kind date startsAt carers handsOnMinutes isPlanned onDuty{id displayName}}",
  variables: () => z.strictObject({ householdId: scalars.ID, from: scalars.LocalDate, to: scalars.LocalDate }),
};

export const RuleSetFormat: Document<RuleSetFormatQuery, RuleSetFormatQueryVariables> = {
  name: "RuleSetFormat",
  kind: "query",
  id: "sha256:818818beb1699aabe7a8eda3561473d80e23c6d1b4a238c5cdfd9af883c03732",
  text: "query RuleSetFormat{ruleSetFormat}",
  variables: () => z.strictObject({  }),
};

export const RulesOfChild: Document<RulesOfChildQuery, RulesOfChildQueryVariables> = {
  name: "RulesOfChild",
  kind: "query",
  id: "sha256:6e8717000e87962933f62f8494e764a23c3b1091f08995c4602ec33495edc702",
  text: "query RulesOfChild($childId:ID!){node(id:$childId){...on Child{id ownRules{...RuleSetInForce}exemptions{id rule says from until ruleSet{id title}note{clinician note}}}}}fragment RuleSetInForce on RuleSet{id key version title layer confirmed withdrawn inForceFrom inForceUntil rules{key kind level says source}}",
  variables: () => z.strictObject({ childId: scalars.ID }),
};

export const RulesOfSchool: Document<RulesOfSchoolQuery, RulesOfSchoolQueryVariables> = {
  name: "RulesOfSchool",
  kind: "query",
  id: "sha256:b9847f8a8681f9b222c797e0350704e5bb6a4f11314e317f42aafa6c0d65c342",
  text: "query RulesOfSchool($schoolId:ID!){school(id:$schoolId){id ruleSets{...RuleSetInForce}}}fragment RuleSetInForce on RuleSet{id key version title layer confirmed withdrawn inForceFrom inForceUntil rules{key kind level says source}}",
  variables: () => z.strictObject({ schoolId: scalars.ID }),
};

export const SaveOwnDish: Document<SaveOwnDishMutation, SaveOwnDishMutationVariables> = {
  name: "SaveOwnDish",
  kind: "mutation",
  id: "sha256:131ea35e7eae52c0758e12b783c9dd98682506cc4a19fbfa05cc604782e594c2",
  text: "mutation SaveOwnDish($input:SaveOwnDishInput!){saveOwnDish(input:$input){__typename ...Refusal ...on SaveOwnDishPayload{household{id revision}dish{key name slots}missing{kind text}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.SaveOwnDishInput }),
};

export const SaveOwnFood: Document<SaveOwnFoodMutation, SaveOwnFoodMutationVariables> = {
  name: "SaveOwnFood",
  kind: "mutation",
  id: "sha256:e94c7a037d1a2d183af931a7daef3f8e695f47358094bf21c145f74f5da39eb9",
  text: "mutation SaveOwnFood($input:SaveOwnFoodInput!){saveOwnFood(input:$input){__typename ...Refusal ...on SaveOwnFoodPayload{household{id revision}food{key name}missing{kind text}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.SaveOwnFoodInput }),
};

export const SchoolAudit: Document<SchoolAuditQuery, SchoolAuditQueryVariables> = {
  name: "SchoolAudit",
  kind: "query",
  id: "sha256:efc5700a8ffb04d6570ad202d248abcb027eedcbf0d913046541f272cf15a271",
  text: "query SchoolAudit($schoolId:ID!$first:Int!$after:String){school(id:$schoolId){id appointments{person{id displayName}since}audit(first:$first after:$after){...AuditPage}}}fragment AuditPage on AuditConnection{nodes{at action person{displayName}about{displayName}school{id name}jurisdiction details}pageInfo{endCursor hasNextPage}}",
  variables: () => z.strictObject({ schoolId: scalars.ID, first: scalars.Int, after: scalars.String.nullish() }),
};

export const Schools: Document<SchoolsQuery, SchoolsQueryVariables> = {
  name: "Schools",
  kind: "query",
  id: "sha256:2ee5b6e21f727f5e227b0c6f9256a4f5d418e54ccf8117c28ecbfb3a4dccd573",
  text: "query Schools($first:Int!$after:String){schools(first:$first after:$after){nodes{id name jurisdiction classes{id name}}pageInfo{endCursor hasNextPage}}}",
  variables: () => z.strictObject({ first: scalars.Int, after: scalars.String.nullish() }),
};

export const SetAvailability: Document<SetAvailabilityMutation, SetAvailabilityMutationVariables> = {
  name: "SetAvailability",
  kind: "mutation",
  id: "sha256:2462e502eae9d0d5b62a44aa2c201c855efc6f8051e00ccfb6b1377e66bd99c2",
  text: "mutation SetAvailability($input:SetAvailabilityInput!){setAvailability(input:$input){__typename ...Refusal ...on RotaPayload{household{id revision availability{person{id displayName}weekday kind minutes}}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.SetAvailabilityInput }),
};

export const SetBoxKit: Document<SetBoxKitMutation, SetBoxKitMutationVariables> = {
  name: "SetBoxKit",
  kind: "mutation",
  id: "sha256:7f6be3e59ae6f9ed89482c1ddcf3f0957b568c3e6fd21f36abd2cb5a78976de3",
  text: "mutation SetBoxKit($input:SetBoxKitInput!){setBoxKit(input:$input){__typename ...Refusal ...on BoxKitPayload{child{id name}household{id revision}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.SetBoxKitInput }),
};

export const SetDuties: Document<SetDutiesMutation, SetDutiesMutationVariables> = {
  name: "SetDuties",
  kind: "mutation",
  id: "sha256:c90a740573c004154b5cf9a38f01c16e023eafc16141b4aa48c52da709ce6703",
  text: "mutation SetDuties($input:SetDutiesInput!){setDuties(input:$input){__typename ...Refusal ...on RotaPayload{household{id revision}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.SetDutiesInput }),
};

export const SetEnergyMethod: Document<SetEnergyMethodMutation, SetEnergyMethodMutationVariables> = {
  name: "SetEnergyMethod",
  kind: "mutation",
  id: "sha256:03014b83d7fcee2235350d4dfaaf867a488d89c91c54f25fbcb043b1d7e3b6f4",
  text: "mutation SetEnergyMethod($input:SetEnergyMethodInput!){setEnergyMethod(input:$input){__typename ...Refusal ...KitchenChanged}}fragment KitchenAsSet on Kitchen{equipment{kind units}prepTimes{kind weekday startsAt handsOnMinutes elapsedMinutes carers effort}hotDays stock{food{key name}grams}leftovers{id base{key name}grams cookedOn lastSafeDay}labelChecks{food{key name}contains mayContain kinds{kind says}readOn}}fragment KitchenChanged on KitchenPayload{household{id revision keepsOut energyMethod kitchen{...KitchenAsSet}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.SetEnergyMethodInput }),
};

export const SetEquipment: Document<SetEquipmentMutation, SetEquipmentMutationVariables> = {
  name: "SetEquipment",
  kind: "mutation",
  id: "sha256:2bf04fc5d1229672c8396d23b158b6bba61d591045ae83ebc6bc655536de1cd0",
  text: "mutation SetEquipment($input:SetEquipmentInput!){setEquipment(input:$input){__typename ...Refusal ...KitchenChanged}}fragment KitchenAsSet on Kitchen{equipment{kind units}prepTimes{kind weekday startsAt handsOnMinutes elapsedMinutes carers effort}hotDays stock{food{key name}grams}leftovers{id base{key name}grams cookedOn lastSafeDay}labelChecks{food{key name}contains mayContain kinds{kind says}readOn}}fragment KitchenChanged on KitchenPayload{household{id revision keepsOut energyMethod kitchen{...KitchenAsSet}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.SetEquipmentInput }),
};

export const SetFacility: Document<SetFacilityMutation, SetFacilityMutationVariables> = {
  name: "SetFacility",
  kind: "mutation",
  id: "sha256:6d5d9d39cd6844b3e2e1a9440aa83ef55548da7ac729feb311cadc71dab77855",
  text: "mutation SetFacility($input:SetFacilityInput!){setFacility(input:$input){__typename ...Refusal ...on SchoolPayload{school{...SchoolAsKept}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment SchoolAsKept on School{id name timeZone jurisdiction revision classes{id name facility breaks{key name startsAt minutes slots energyShare}}terms{name firstDay lastDay}days{date kind title endsAt}}",
  variables: () => z.strictObject({ input: inputSchemas.SetFacilityInput }),
};

export const SetHotDays: Document<SetHotDaysMutation, SetHotDaysMutationVariables> = {
  name: "SetHotDays",
  kind: "mutation",
  id: "sha256:2d0006ebebd6d7c2c22d16d1151d2c4bc240c15210e98ddd322f5494bc1b873c",
  text: "mutation SetHotDays($input:SetHotDaysInput!){setHotDays(input:$input){__typename ...Refusal ...KitchenChanged}}fragment KitchenAsSet on Kitchen{equipment{kind units}prepTimes{kind weekday startsAt handsOnMinutes elapsedMinutes carers effort}hotDays stock{food{key name}grams}leftovers{id base{key name}grams cookedOn lastSafeDay}labelChecks{food{key name}contains mayContain kinds{kind says}readOn}}fragment KitchenChanged on KitchenPayload{household{id revision keepsOut energyMethod kitchen{...KitchenAsSet}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.SetHotDaysInput }),
};

export const SetKeepsOut: Document<SetKeepsOutMutation, SetKeepsOutMutationVariables> = {
  name: "SetKeepsOut",
  kind: "mutation",
  id: "sha256:6702878ba2bd3e8813ef0f65ca1a7dbcd1ff35d79382bde1990c9cf5c9e87ef4",
  text: "mutation SetKeepsOut($input:SetKeepsOutInput!){setKeepsOut(input:$input){__typename ...Refusal ...KitchenChanged}}fragment KitchenAsSet on Kitchen{equipment{kind units}prepTimes{kind weekday startsAt handsOnMinutes elapsedMinutes carers effort}hotDays stock{food{key name}grams}leftovers{id base{key name}grams cookedOn lastSafeDay}labelChecks{food{key name}contains mayContain kinds{kind says}readOn}}fragment KitchenChanged on KitchenPayload{household{id revision keepsOut energyMethod kitchen{...KitchenAsSet}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.SetKeepsOutInput }),
};

export const SetLeftovers: Document<SetLeftoversMutation, SetLeftoversMutationVariables> = {
  name: "SetLeftovers",
  kind: "mutation",
  id: "sha256:a0ff24ea5db66159668706c7c1ed79070eb3f3be9d8e1aa6ac16309213b8d912",
  text: "mutation SetLeftovers($input:SetLeftoversInput!){setLeftovers(input:$input){__typename ...Refusal ...KitchenChanged}}fragment KitchenAsSet on Kitchen{equipment{kind units}prepTimes{kind weekday startsAt handsOnMinutes elapsedMinutes carers effort}hotDays stock{food{key name}grams}leftovers{id base{key name}grams cookedOn lastSafeDay}labelChecks{food{key name}contains mayContain kinds{kind says}readOn}}fragment KitchenChanged on KitchenPayload{household{id revision keepsOut energyMethod kitchen{...KitchenAsSet}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.SetLeftoversInput }),
};

export const SetPrepTimes: Document<SetPrepTimesMutation, SetPrepTimesMutationVariables> = {
  name: "SetPrepTimes",
  kind: "mutation",
  id: "sha256:b801aa093bda6c2cb347d9e8dcf36f871d379790991d41da11de4c6a1158ad62",
  text: "mutation SetPrepTimes($input:SetPrepTimesInput!){setPrepTimes(input:$input){__typename ...Refusal ...KitchenChanged}}fragment KitchenAsSet on Kitchen{equipment{kind units}prepTimes{kind weekday startsAt handsOnMinutes elapsedMinutes carers effort}hotDays stock{food{key name}grams}leftovers{id base{key name}grams cookedOn lastSafeDay}labelChecks{food{key name}contains mayContain kinds{kind says}readOn}}fragment KitchenChanged on KitchenPayload{household{id revision keepsOut energyMethod kitchen{...KitchenAsSet}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.SetPrepTimesInput }),
};

export const SetResidencePattern: Document<SetResidencePatternMutation, SetResidencePatternMutationVariables> = {
  name: "SetResidencePattern",
  kind: "mutation",
  id: "sha256:2f0913329f9c4cec7a30ccdbbe455dc528e872546cdf8a2a180b3b5a5d8507d7",
  text: "mutation SetResidencePattern($input:SetResidencePatternInput!){setResidencePattern(input:$input){__typename ...Refusal ...ResidenceChanged ...on ProposalOpen{proposalId madeHere dates}...on DayClosed{date boxState}}}fragment Proposal on ResidenceProposal{id state proposedBy proposedAt pattern{kind starts ends cycle}days{date here}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment ResidenceChanged on ResidencePayload{child{id residenceProposals{...Proposal}}household{id revision}proposal{...Proposal}movedDays}",
  variables: () => z.strictObject({ input: inputSchemas.SetResidencePatternInput }),
};

export const SetSchoolDay: Document<SetSchoolDayMutation, SetSchoolDayMutationVariables> = {
  name: "SetSchoolDay",
  kind: "mutation",
  id: "sha256:5256b77612d0781aa8b5a6956e1e2ca836bf85af7804d7bb18ffcbbbcde4ac9c",
  text: "mutation SetSchoolDay($input:SetSchoolDayInput!){setSchoolDay(input:$input){__typename ...Refusal ...on SchoolPayload{school{...SchoolAsKept}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment SchoolAsKept on School{id name timeZone jurisdiction revision classes{id name facility breaks{key name startsAt minutes slots energyShare}}terms{name firstDay lastDay}days{date kind title endsAt}}",
  variables: () => z.strictObject({ input: inputSchemas.SetSchoolDayInput }),
};

export const SetSchoolProvision: Document<SetSchoolProvisionMutation, SetSchoolProvisionMutationVariables> = {
  name: "SetSchoolProvision",
  kind: "mutation",
  id: "sha256:56eb6d27fedb914cc69003ae20db26ab9d6b828e471fc059019fce73785e7990",
  text: "mutation SetSchoolProvision($input:SetSchoolProvisionInput!){setSchoolProvision(input:$input){__typename ...Refusal ...on SetSchoolProvisionPayload{child{id provisions{food{key name}grams weekday breakKey}}household{id revision}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.SetSchoolProvisionInput }),
};

export const SetStock: Document<SetStockMutation, SetStockMutationVariables> = {
  name: "SetStock",
  kind: "mutation",
  id: "sha256:cb6217152b55bc3849f196853a9551371a22ede372f6306d33d97e9993f0bd59",
  text: "mutation SetStock($input:SetStockInput!){setStock(input:$input){__typename ...Refusal ...KitchenChanged}}fragment KitchenAsSet on Kitchen{equipment{kind units}prepTimes{kind weekday startsAt handsOnMinutes elapsedMinutes carers effort}hotDays stock{food{key name}grams}leftovers{id base{key name}grams cookedOn lastSafeDay}labelChecks{food{key name}contains mayContain kinds{kind says}readOn}}fragment KitchenChanged on KitchenPayload{household{id revision keepsOut energyMethod kitchen{...KitchenAsSet}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.SetStockInput }),
};

export const SetTerm: Document<SetTermMutation, SetTermMutationVariables> = {
  name: "SetTerm",
  kind: "mutation",
  id: "sha256:6981dea4675ae80696124abc366b8f0c92e67af64a40bd1a23f6de8d5a48fda9",
  text: "mutation SetTerm($input:SetTermInput!){setTerm(input:$input){__typename ...Refusal ...on SchoolPayload{school{...SchoolAsKept}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment SchoolAsKept on School{id name timeZone jurisdiction revision classes{id name facility breaks{key name startsAt minutes slots energyShare}}terms{name firstDay lastDay}days{date kind title endsAt}}",
  variables: () => z.strictObject({ input: inputSchemas.SetTermInput }),
};

export const Shopping: Document<ShoppingQuery, ShoppingQueryVariables> = {
  name: "Shopping",
  kind: "query",
  id: "sha256:d01fe330519ed33acd32370e54c3181f78f0d40601b70d772bed1612f31c1dc7",
  text: "query Shopping($householdId:ID!$week:LocalDate!){week(householdId:$householdId date:$week){id plan{estimatedCost{minor currency}shopping{id food{key name}section neededGrams fromStockGrams packs packGrams costMinor readLabel ticked spareUses{text}}}}}",
  variables: () => z.strictObject({ householdId: scalars.ID, week: scalars.LocalDate }),
};

export const SwapItem: Document<SwapItemMutation, SwapItemMutationVariables> = {
  name: "SwapItem",
  kind: "mutation",
  id: "sha256:72eeb26184415648c235d1be170939d5f3fd65f64dd77876187da21db5970346",
  text: "mutation SwapItem($input:SwapItemInput!){swapItem(input:$input){__typename ...Refusal ...WeekChanged ...on DishUnknown{nearest}...on SwapRefused{conflicts{kind text wayOut}}...on BoxClosed{state}}}fragment BoxAsPlanned on Box{id date state packedAt child{id name}items{...Item}blockedBecause{kind text}}fragment Item on BoxItem{id breakKey slot place dish{key name}grams pieces served allergens cuts{food cut}carbohydrateGrams labelsToRead{key name}pinned}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}fragment WeekChanged on WeekPayload{changedBoxes{id date child{id name}}week{...WholeWeek}}fragment WholeWeek on Week{id weekStart revision plan{id number state boxes{...BoxAsPlanned}tasks{...TaskOfWeek}cautions{kind text date child{id name}}}}",
  variables: () => z.strictObject({ input: inputSchemas.SwapItemInput }),
};

export const TakeTask: Document<TakeTaskMutation, TakeTaskMutationVariables> = {
  name: "TakeTask",
  kind: "mutation",
  id: "sha256:625f44e358a58de1acedc54d302e737139f90577cb529ce623a1fa947f2b3d0c",
  text: "mutation TakeTask($input:TakeTaskInput!){takeTask(input:$input){__typename ...Refusal ...HeldByAnother ...TaskChanged}}fragment HeldByAnother on TaskHeld{holder{id displayName}state}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment TaskChanged on TaskPayload{revision task{...TaskOfWeek}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}",
  variables: () => z.strictObject({ input: inputSchemas.TakeTaskInput }),
};

export const TickShoppingLine: Document<TickShoppingLineMutation, TickShoppingLineMutationVariables> = {
  name: "TickShoppingLine",
  kind: "mutation",
  id: "sha256:55d576f3c91ff703349d471e7f7f954ac600a8c8942e4c8a153186c00fa557fe",
  text: "mutation TickShoppingLine($input:TickShoppingLineInput!){tickShoppingLine(input:$input){__typename ...Refusal ...on ShoppingLinePayload{line{id ticked food{key name}packs}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.TickShoppingLineInput }),
};

export const Timetable: Document<TimetableQuery, TimetableQueryVariables> = {
  name: "Timetable",
  kind: "query",
  id: "sha256:2771c2576afb465209d6c27f7c8c7573d57733135dfcc2c2343b03f83a8f778d",
  text: "query Timetable($householdId:ID!$week:LocalDate!){week(householdId:$householdId date:$week){id plan{sessions{key startsAt endsAt handsOnMinutes timing{lastsMinutes leastMinutes provenShortest latestStartsAt noLaterThan}carers{carer handsOnMinutes tasks{...TaskOfWeek}}}}}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}",
  variables: () => z.strictObject({ householdId: scalars.ID, week: scalars.LocalDate }),
};

export const UndoTask: Document<UndoTaskMutation, UndoTaskMutationVariables> = {
  name: "UndoTask",
  kind: "mutation",
  id: "sha256:a54fe0c2daa6fd60ef1c8003e93f7473aa1d4c128fea2cdef45458c2bf1611b4",
  text: "mutation UndoTask($input:UndoTaskInput!){undoTask(input:$input){__typename ...Refusal ...TaskChanged ...HeldByAnother ...on TaskNotHeld{state}...on WorkUsed{tasks boxes{child{id name}date}}}}fragment HeldByAnother on TaskHeld{holder{id displayName}state}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment TaskChanged on TaskPayload{revision task{...TaskOfWeek}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}",
  variables: () => z.strictObject({ input: inputSchemas.UndoTaskInput }),
};

export const UnpinItem: Document<UnpinItemMutation, UnpinItemMutationVariables> = {
  name: "UnpinItem",
  kind: "mutation",
  id: "sha256:f5d4334020c320353933c76e36770de7f745c2918ce1f3bdca87f5a89244afae",
  text: "mutation UnpinItem($input:UnpinItemInput!){unpinItem(input:$input){__typename ...Refusal ...WeekChanged}}fragment BoxAsPlanned on Box{id date state packedAt child{id name}items{...Item}blockedBecause{kind text}}fragment Item on BoxItem{id breakKey slot place dish{key name}grams pieces served allergens cuts{food cut}carbohydrateGrams labelsToRead{key name}pinned}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}fragment WeekChanged on WeekPayload{changedBoxes{id date child{id name}}week{...WholeWeek}}fragment WholeWeek on Week{id weekStart revision plan{id number state boxes{...BoxAsPlanned}tasks{...TaskOfWeek}cautions{kind text date child{id name}}}}",
  variables: () => z.strictObject({ input: inputSchemas.UnpinItemInput }),
};

export const Verdicts: Document<VerdictsQuery, VerdictsQueryVariables> = {
  name: "Verdicts",
  kind: "query",
  id: "sha256:6ff6b6ba75ccee838ca48f0e8314e955d02714bea106a762064b4bdc78c90878",
  text: "query Verdicts($childId:ID!$day:LocalDate!$dish:String$food:String){node(id:$childId){...on Child{id verdicts(date:$day dish:$dish food:$food){__typename ...Refusal ...on DishUnknown{nearest}...on OutsideTerm{weekStart nextSchoolDay}...on Verdicts{places{breakKey slot place allowed cuts{food cut}labelsToRead{key name}exclusion{kind text source whoSaysSo{text}}}}}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ childId: scalars.ID, day: scalars.LocalDate, dish: scalars.String.nullish(), food: scalars.String.nullish() }),
};

export const WeekChanges: Document<WeekChangesSubscription, WeekChangesSubscriptionVariables> = {
  name: "WeekChanges",
  kind: "subscription",
  id: "sha256:7fd69f36b43ddeb43b894db03503d45d50260818385018f78a625e715f7f12fe",
  text: "subscription WeekChanges($householdId:ID!){weekChanged(householdId:$householdId){...WholeWeek}}fragment BoxAsPlanned on Box{id date state packedAt child{id name}items{...Item}blockedBecause{kind text}}fragment Item on BoxItem{id breakKey slot place dish{key name}grams pieces served allergens cuts{food cut}carbohydrateGrams labelsToRead{key name}pinned}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}fragment WholeWeek on Week{id weekStart revision plan{id number state boxes{...BoxAsPlanned}tasks{...TaskOfWeek}cautions{kind text date child{id name}}}}",
  variables: () => z.strictObject({ householdId: scalars.ID }),
};

export const WeekOf: Document<WeekOfQuery, WeekOfQueryVariables> = {
  name: "WeekOf",
  kind: "query",
  id: "sha256:29f990a3758bf26a84738fb4673e9f956e5732f764496cd3229644b1e14ae788",
  text: "query WeekOf($householdId:ID!$day:LocalDate!){week(householdId:$householdId date:$day){...WholeWeek}}fragment BoxAsPlanned on Box{id date state packedAt child{id name}items{...Item}blockedBecause{kind text}}fragment Item on BoxItem{id breakKey slot place dish{key name}grams pieces served allergens cuts{food cut}carbohydrateGrams labelsToRead{key name}pinned}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}fragment WholeWeek on Week{id weekStart revision plan{id number state boxes{...BoxAsPlanned}tasks{...TaskOfWeek}cautions{kind text date child{id name}}}}",
  variables: () => z.strictObject({ householdId: scalars.ID, day: scalars.LocalDate }),
};

export const WithdrawDisruption: Document<WithdrawDisruptionMutation, WithdrawDisruptionMutationVariables> = {
  name: "WithdrawDisruption",
  kind: "mutation",
  id: "sha256:89e0a2bb1a7775356c8c6b9673a7c8ed40e1b278e2730fcaf308f56cecf116eb",
  text: "mutation WithdrawDisruption($input:WithdrawDisruptionInput!){withdrawDisruption(input:$input){__typename ...Refusal ...on DisruptionPayload{week{...WholeWeek}difference{...Difference}infeasible{message ...Conflicts}}}}fragment BoxAsPlanned on Box{id date state packedAt child{id name}items{...Item}blockedBecause{kind text}}fragment Conflicts on WeekInfeasible{conflicts{kind text wayOut date session child{id name}}}fragment Difference on WeekDifference{boxes{date child{id name}before{slot dish{key name}}after{slot dish{key name}}}toBuy{food{key name}packs packGrams}more{handsOnMinutes costMinor objectivePoints}}fragment Item on BoxItem{id breakKey slot place dish{key name}grams pieces served allergens cuts{food cut}carbohydrateGrams labelsToRead{key name}pinned}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment TaskOfWeek on Task{id session kind text state startsAt endsAt latestStartsAt handsOnMinutes actualMinutes kept carer children{id name}takenBy{id displayName}}fragment WholeWeek on Week{id weekStart revision plan{id number state boxes{...BoxAsPlanned}tasks{...TaskOfWeek}cautions{kind text date child{id name}}}}",
  variables: () => z.strictObject({ input: inputSchemas.WithdrawDisruptionInput }),
};

export const WithdrawErasure: Document<WithdrawErasureMutation, WithdrawErasureMutationVariables> = {
  name: "WithdrawErasure",
  kind: "mutation",
  id: "sha256:90640cdb5e40ef1b700886a279872bf1dd055b21044f5080bb02f380fe443bf3",
  text: "mutation WithdrawErasure($input:WithdrawErasureInput!){withdrawErasure(input:$input){__typename ...Refusal ...on WithdrawErasurePayload{child{id erasureAsked{askedAt askedHere}}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.WithdrawErasureInput }),
};

export const WithdrawInvitation: Document<WithdrawInvitationMutation, WithdrawInvitationMutationVariables> = {
  name: "WithdrawInvitation",
  kind: "mutation",
  id: "sha256:a2accb7fa5a9d745e6a4d0da3f20e2f9fb878babd73999a5fce82d2dc2e6e386",
  text: "mutation WithdrawInvitation($input:WithdrawInvitationInput!){withdrawInvitation(input:$input){__typename ...Refusal ...on InvitationClosed{state}...on WithdrawInvitationPayload{invitation{...InvitationMade}}}}fragment InvitationMade on Invitation{id kind state role child{id name}invitedBy{id displayName}createdAt expiresAt}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.WithdrawInvitationInput }),
};

export const WithdrawResidenceChange: Document<WithdrawResidenceChangeMutation, WithdrawResidenceChangeMutationVariables> = {
  name: "WithdrawResidenceChange",
  kind: "mutation",
  id: "sha256:59c31b127f5cc5d430f9f282b26bf3370e45f384edd709e5f4e978000286d4a7",
  text: "mutation WithdrawResidenceChange($input:WithdrawResidenceChangeInput!){withdrawResidenceChange(input:$input){__typename ...Refusal ...ResidenceChanged ...on ProposalSettled{state}...on ForTheOtherHome{madeHere}}}fragment Proposal on ResidenceProposal{id state proposedBy proposedAt pattern{kind starts ends cycle}days{date here}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment ResidenceChanged on ResidencePayload{child{id residenceProposals{...Proposal}}household{id revision}proposal{...Proposal}movedDays}",
  variables: () => z.strictObject({ input: inputSchemas.WithdrawResidenceChangeInput }),
};

export const WithdrawRuleSet: Document<WithdrawRuleSetMutation, WithdrawRuleSetMutationVariables> = {
  name: "WithdrawRuleSet",
  kind: "mutation",
  id: "sha256:1bf9214295a55830b90214da53c0910c63d7b8828a4822b66846ee7e5fff0222",
  text: "mutation WithdrawRuleSet($input:WithdrawRuleSetInput!){withdrawRuleSet(input:$input){__typename ...Refusal ...on LoadRuleSetPayload{unchanged ruleSet{...RuleSetInForce}}}}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}fragment RuleSetInForce on RuleSet{id key version title layer confirmed withdrawn inForceFrom inForceUntil rules{key kind level says source}}",
  variables: () => z.strictObject({ input: inputSchemas.WithdrawRuleSetInput }),
};

export const WriteHandover: Document<WriteHandoverMutation, WriteHandoverMutationVariables> = {
  name: "WriteHandover",
  kind: "mutation",
  id: "sha256:a55ffa00a0ddb93961b8ee3155116de7772bef5dc32dd9152030d4105635cc72",
  text: "mutation WriteHandover($input:WriteHandoverInput!){writeHandover(input:$input){__typename ...Refusal ...on HandoverPayload{handover{...HandoverNote}}}}fragment HandoverNote on Handover{child{id name}weekStart revision allergies{allergen foodKind avoid}cameBack{dish{key name}days{date cameBack}}repeat avoid note box icePacks flask}fragment Refusal on UserError{__typename message ...on InvalidInput{issues{field problem fix}}...on NotPermitted{neededRole}...on RevisionPassed{seenRevision currentRevision}...on KeyReused{usedFor}}",
  variables: () => z.strictObject({ input: inputSchemas.WriteHandoverInput }),
};