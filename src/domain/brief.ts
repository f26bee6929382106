/**
 * Everything the planner may know about one household's week, as plain data: the database builds it, the worker thread
 * receives it, the same brief with the same seed gives the same plan. Dates are ISO local dates, times "HH:MM" in the
 * household's zone, money minor units.
 */
import type { Base, Dish, Food, Retention } from "../../shared/catalogue.js";
import type {
  AllergenCode,
  AllergenGroupCode,
  ChokingClass,
  DietCode,
  EquipmentKind,
  FacilityCode,
  ServedForm,
  SlotCode,
  WeekdayCode,
  WindowKind,
} from "../../shared/codes.js";
import type { CreditTable } from "../../shared/credits.js";
import type { HoldingModel } from "../../shared/holding-model.js";
import type { SlotShare } from "../../shared/meal-shares.js";
import type { RuleSetDocument } from "../../shared/rule-set.js";

export interface CatalogueBrief {
  readonly version: string;
  readonly foods: readonly Food[];
  readonly bases: readonly Base[];
  readonly dishes: readonly Dish[];
  /** What cooking leaves, by code: seeds/reference/retention.json. */
  readonly retention: readonly Retention[];
}

/** One row of seeds/reference/choking.json. */
export interface ChokingRule {
  readonly class: ChokingClass;
  /** Applies on days when the child is younger than this. */
  readonly underAgeYears: number;
  /** No cut makes it safe below that age. */
  readonly never: boolean;
  readonly safeForms: readonly ServedForm[];
  /** What the packer does, printed on the box card. */
  readonly cut: string;
  /** No piece larger than this in any direction that matters, mm; null where the rule is not about size. */
  readonly largestPieceMm?: number | null;
  readonly source: string;
}

/** seeds/reference/holding-limits.json: time rules, and the model of holding-model.json, which may only tighten them. */
export interface HoldingLimits {
  /** Cold food, at most 5 C when it leaves, insulated bag, two cold sources. */
  readonly chilledMinutes: number;
  readonly coldSources: number;
  /** Hot food at 74 C or more into a preheated flask. */
  readonly flaskMinutes: number;
  /** No cold or heat source. */
  readonly ambientMinutes: number;
  readonly hotDayAmbientMinutes: number;
  readonly hotDayAboveC: number;
  readonly source: string;
  /** Absent in tests of the rules alone; the reference tables always carry it. */
  readonly model?: HoldingModel;
}

export interface AllergyBrief {
  /** An allergen, a family of them, or one food kind ("kiwi"). Exactly one of the two is set. */
  readonly allergen: AllergenCode | AllergenGroupCode | null;
  readonly foodKind: string | null;
  /** TRACES: may-contain is shut out too, and labels are read before the box is packed. */
  readonly avoid: "TRACES" | "INGREDIENTS";
}

export interface BreakBrief {
  readonly key: string;
  readonly name: string;
  readonly startsAt: string;
  readonly minutes: number;
  readonly slots: readonly SlotCode[];
  /** Share of the day's energy, 0 to 1. */
  readonly energyShare: number;
}

/** Food or milk the school gives the child that day. */
export interface GivenFoodBrief {
  readonly food: string;
  readonly grams: number;
  /** Null or absent: at any of the day's breaks. */
  readonly breakKey?: string | null;
}

export interface ChildDayBrief {
  readonly date: string;
  readonly weekday: WeekdayCode;
  readonly leaveAt: string;
  readonly breaks: readonly BreakBrief[];
  readonly facility: FacilityCode;
  /** Indices into `WeekBrief.ruleSets`, every layer in force for this child on this date. */
  readonly ruleSets: readonly number[];
  /** Rules of those sets that do not hold for this child that day, on a clinician's note. */
  readonly exempt?: readonly { readonly ruleSet: number; readonly rule: string }[];
  readonly given?: readonly GivenFoodBrief[];
  /** The household expects a day above `HoldingLimits.hotDayAboveC`. */
  readonly hotDay?: true;
}

export interface CompartmentBrief {
  readonly ml: number;
  readonly leakProof: boolean;
}

export interface ChildBrief {
  readonly id: string;
  readonly name: string;
  readonly dateOfBirth: string;
  readonly sex: "FEMALE" | "MALE" | null;
  readonly weightKg: number | null;
  readonly heightCm: number | null;
  readonly activity: "INACTIVE" | "LOW_ACTIVE" | "ACTIVE" | "VERY_ACTIVE";
  readonly appetite: number;
  readonly diets: readonly DietCode[];
  /** Dish keys or food kinds the child does not like. */
  readonly dislikes: readonly string[];
  readonly minutesToEat: number;
  readonly allergies: readonly AllergyBrief[];
  readonly box: {
    readonly compartments: readonly CompartmentBrief[];
    readonly coldSources: number;
    readonly insulated: boolean;
    readonly flask: boolean;
  };
  readonly schoolName: string;
  /** Only the days this household packs a box for the child, in date order. */
  readonly days: readonly ChildDayBrief[];
}

export interface SessionBrief {
  /** "weekend-2026-09-06", "evening-2026-09-06" (the evening before the school day after it), "morning-2026-09-07". */
  readonly key: string;
  readonly kind: WindowKind;
  readonly date: string;
  readonly startsAt: string;
  /** Hands-on minutes the household can give. */
  readonly handsOnMinutes: number;
  /** Elapsed minutes from startsAt to the end. */
  readonly elapsedMinutes: number;
  readonly carers: number;
  /** Points per hands-on minute: the household's rhythm. */
  readonly effort: number;
  /** What the kitchen has, but not then; absent where nothing is missing. */
  readonly without?: {
    /** None of its units can be used. */
    readonly equipment: readonly EquipmentKind[];
    /** Food kinds that are not to be had. */
    readonly foodKinds: readonly string[];
  };
}

export interface EquipmentBrief {
  readonly kind: EquipmentKind;
  readonly units: number;
}
export interface StockBrief {
  readonly food: string;
  readonly grams: number;
}
/** Made already: a leftover of the family meal or a portion from the freezer. */
export interface ReadyBaseBrief {
  readonly id: string;
  readonly base: string;
  readonly grams: number;
  readonly from: "LEFTOVER" | "FREEZER";
  readonly firstDate: string;
  readonly lastDate: string;
}
export interface LabelBrief {
  readonly food: string;
  readonly contains: readonly AllergenCode[];
  readonly mayContain: readonly AllergenCode[];
  readonly readOn: string;
  /** What the reader found on single food kinds ("kiwi") looked for; a kind not listed was not looked for. */
  readonly kinds?: readonly { readonly kind: string; readonly says: "CLEAR" | "MAY_CONTAIN" | "CONTAINS" }[];
}

export type HouseRule = "SIBLINGS_DIFFER" | "DISH_REPEATS" | "STARCH_CHANGES";
export interface RelaxationBrief {
  readonly rule: HouseRule;
  readonly date: string;
}

/** A place in a box: one child, date, break and the n-th slot of that break. */
export interface PlaceBrief {
  readonly childId: string;
  readonly date: string;
  readonly breakKey: string;
  readonly slot: SlotCode;
  readonly position: number;
}
export interface PinBrief extends PlaceBrief {
  readonly dish: string;
  /** PINNED by a person; PACKED or EATEN never moves. */ readonly because: "PINNED" | "PACKED";
}
/** A batch already cooked: it stays and its food is used without set-up. */
export interface MadeBatchBrief {
  readonly base: string;
  readonly session: string;
  readonly batches: number;
}

export interface WeekBrief {
  readonly format: "noonpail-brief/1";
  /** First day of the household's week. */
  readonly weekStart: string;
  readonly household: {
    readonly id: string;
    readonly name: string;
    readonly currency: string;
    readonly keepsOut: readonly (AllergenCode | AllergenGroupCode)[];
    readonly equipment: readonly EquipmentBrief[];
    readonly refrigeratorMl: number;
    /** NASEM_2023 where nothing is said. */
    readonly energyMethod?: "NASEM_2023" | "IOM_2005";
  };
  /** In time order; the evening of a date lies before the morning of the next. */
  readonly sessions: readonly SessionBrief[];
  readonly children: readonly ChildBrief[];
  readonly catalogue: CatalogueBrief;
  readonly ruleSets: readonly RuleSetDocument[];
  readonly choking: readonly ChokingRule[];
  /** Every slot once. */
  readonly slotShares: readonly SlotShare[];
  /** Grams of a cup and of an ounce equivalent, for rules that count in them. */
  readonly credits: CreditTable;
  readonly holding: HoldingLimits;
  readonly stock: readonly StockBrief[];
  readonly ready: readonly ReadyBaseBrief[];
  readonly labels: readonly LabelBrief[];
  readonly relaxations: readonly RelaxationBrief[];
  readonly pins: readonly PinBrief[];
  readonly made: readonly MadeBatchBrief[];
  /** Food kinds the household is out of all week; of single sessions, `SessionBrief.without` says so. */
  readonly outOf: readonly string[];
  /** The last two weeks' boxes, both homes. */
  readonly history: readonly { readonly childId: string; readonly date: string; readonly dish: string }[];
  /** A week to stay close to when replanning; empty for a fresh week. */
  readonly stayCloseTo: readonly (PlaceBrief & { readonly dish: string })[];
  /** False switches sharing off: every portion is cooked on its own (for the comparison only). */
  readonly sharing: boolean;
}
