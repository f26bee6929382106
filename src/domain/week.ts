/** A planned week as the planner lays it out, the checker reads it and the database stores it. */
import type { EquipmentKind, ServedWarmth, SlotCode } from "../../shared/codes.js";
import type { OrganismCode } from "../../shared/holding-model.js";

export interface CutPlan {
  readonly food: string;
  readonly cut: string;
  readonly source: string;
}

export type HoldingCase = "CHILLED" | "FLASK" | "AMBIENT" | "NOT_CONTROLLED" | "REHEATED_AT_SCHOOL";
export type HoldingMend = "COLD_SOURCES" | "FLASK" | "OTHER_DISH" | "LESS_TIME";
/** What the model of heat and growth expects of an item; enough to draw its curve again. */
export interface HoldingForecast {
  /** Chilled beside cold sources, cold without them, warm from that morning's cooking, in the flask. */
  readonly start: "CHILLED" | "COLD" | "WARM" | "FLASK";
  readonly coldSources: number;
  readonly hotDay: boolean;
  /** Heat capacity it is given, J/K, rounded down. */
  readonly joulesPerKelvin: number;
  /** Minutes the curve began before leaving home. */
  readonly minutesBefore: number;
  /** Warmest from the start of the curve to the end of the break, and at its end. */
  readonly mostCelsius: number;
  readonly endCelsius: number;
  /** Growth of the organism that grows most, log10 CFU/g; null when none of those it is looked for in grows. */
  readonly growthLog10: number;
  readonly organism: OrganismCode | null;
  /** Whether the time rule or the model sets the limit. */
  readonly limitedBy: "RULE" | "GROWTH" | "EXPOSURE";
  /** What would give it more time where the model took some away; empty otherwise. */
  readonly mend: readonly HoldingMend[];
}
export interface HoldingPlan {
  readonly case: HoldingCase;
  /** Whole minutes from leaving home to the end of the break. */
  readonly minutes: number;
  readonly limitMinutes: number;
  /** Absent where nothing needs control, and in weeks planned before there was a model. */
  readonly forecast?: HoldingForecast;
}

/** Why the planner chose it; facts only. */
export type Reason =
  | {
      readonly kind: "SHARES_BASE";
      readonly base: string;
      readonly withChildren: readonly string[];
      readonly dates: readonly string[];
    }
  | { readonly kind: "FILLS_NEED"; readonly nutrient: string; readonly percentOfTarget: number }
  /** Hands-on minutes the week would have more if this portion were cooked and finished on its own. */
  | { readonly kind: "SAVES_MINUTES"; readonly minutes: number; readonly withChildren: readonly string[] }
  /** It eats of what is cooked already. */
  | { readonly kind: "USES_READY"; readonly base: string; readonly from: "LEFTOVER" | "FREEZER" | "COOKED" }
  /** Minutes that are done the evening before and so no longer stand in the morning. */
  | { readonly kind: "DONE_EVENING_BEFORE"; readonly minutes: number }
  /** Free of what the child avoids, as so many dishes for such a place are not. */
  | { readonly kind: "AVOIDS"; readonly allergens: readonly string[]; readonly dishes: number }
  /** Nothing in it the child dislikes, as in so many dishes that were to be had there. */
  | { readonly kind: "AVOIDS_DISLIKED"; readonly dishes: number }
  | { readonly kind: "LIKED" }
  | { readonly kind: "NEW_TASTE" }
  | { readonly kind: "PINNED" }
  | { readonly kind: "ONLY_CHOICE" };

export interface ItemPlan {
  readonly breakKey: string;
  readonly slot: SlotCode;
  /** Position of the slot inside its break, from 0. */
  readonly position: number;
  readonly dish: string;
  readonly grams: number;
  readonly pieces: number | null;
  readonly served: Exclude<ServedWarmth, "EITHER">;
  readonly energyKcal: number;
  readonly carbohydrateGrams: number | null;
  /** Which compartment of the child's box, from 0; -1: the flask. */
  readonly compartment: number;
  readonly cuts: readonly CutPlan[];
  readonly holding: HoldingPlan;
  /** Packaged foods whose label has to be read and clear before packing, because the child avoids traces. */
  readonly labelsToRead: readonly string[];
  readonly pinned: boolean;
  readonly why: readonly Reason[];
}

export interface BoxPlan {
  readonly childId: string;
  readonly date: string;
  readonly leaveAt: string;
  readonly coldSources: number;
  readonly flask: boolean;
  readonly cutlery: readonly ("SPOON" | "FORK" | "CHOPSTICKS")[];
  readonly items: readonly ItemPlan[];
}

export interface BatchPlan {
  readonly base: string;
  readonly session: string;
  readonly batches: number;
  readonly grams: number;
  /** What each date takes of it, grams; sums with `spareGrams` to `grams`. */
  readonly feeds: readonly { readonly date: string; readonly childIds: readonly string[]; readonly grams: number }[];
  readonly spareGrams: number;
  /** Cooked already when the week was planned. */
  readonly made: boolean;
}

export interface ReadyUse {
  readonly readyId: string;
  readonly base: string;
  readonly date: string;
  readonly grams: number;
}

export interface TaskPlan {
  /** Unique in the week. */
  readonly key: string;
  readonly session: string;
  readonly kind: "BASE" | "FINISH" | "COOL" | "PACK" | "DEFROST";
  readonly base: string | null;
  readonly dish: string | null;
  readonly text: string;
  readonly childIds: readonly string[];
  /** For which date's boxes. */
  readonly forDates: readonly string[];
  readonly handsOnMinutes: number;
  readonly passiveMinutes: number;
  readonly equipment: readonly { readonly kind: EquipmentKind; readonly units: number; readonly minutes: number }[];
  readonly startsAt: string;
  readonly handsFreeAt: string;
  readonly endsAt: string;
  /** The latest it may begin when everything stays in this order and nothing is to be late. */
  readonly latestStartsAt: string;
  /** Which carer of the session, from 0. */
  readonly carer: number;
  /** Keys of tasks that come first. */
  readonly after: readonly string[];
  /** What it handles that a child of this household avoids, allergens and single foods ("kiwi"), by recipe or by label. */
  readonly handles: readonly string[];
}

/** How long a prep session takes and how late it can begin. */
export interface SessionPlan {
  /** The session's key. */
  readonly session: string;
  /** From its start to the end of its last task, in minutes; tenths count. */
  readonly lastsMinutes: number;
  /** No timetable of the same tasks is shorter: `lastsMinutes` where that is proven the shortest, less where it is not. */
  readonly leastMinutes: number;
  /** "HH:MM": begun by then, with the tasks in the same order, it still keeps every leave time and its own end. */
  readonly latestStartsAt: string;
  /** "HH:MM": no timetable of the same tasks that begins later keeps them. */
  readonly noLaterThan: string;
}

/** What the spare of a pack is good for once the week is over; facts only. */
export type SpareUse =
  /** `untilDate` null: for months. In the refrigerator the day it is opened counts as the first. */
  | {
      readonly kind: "KEEPS_FOR_NEXT_WEEK";
      readonly where: "CUPBOARD" | "REFRIGERATOR" | "FREEZER";
      readonly untilDate: string | null;
    }
  /** It does not keep until the next week begins. */
  | { readonly kind: "EAT_BY"; readonly untilDate: string }
  /** Nothing on record says how long it keeps once opened. */
  | { readonly kind: "KEEPING_UNKNOWN" }
  | { readonly kind: "FREEZES"; readonly days: number; readonly source: string }
  /** Dishes that eat of it and that these children might have had this week by every rule. */
  | {
      readonly kind: "DISHES";
      readonly dishes: readonly { readonly dish: string; readonly childIds: readonly string[] }[];
    };

export interface ShoppingLinePlan {
  readonly food: string;
  readonly section: string;
  /** As bought, with refuse. */
  readonly neededGrams: number;
  readonly fromStockGrams: number;
  readonly packs: number;
  readonly packGrams: number;
  readonly spareGrams: number;
  readonly costMinor: number;
  /** Read its label before first use. */
  readonly readLabel: boolean;
  /** Absent where too little is left to speak of, and in weeks planned before it was told. */
  readonly spareUses?: readonly SpareUse[];
  /** In the cupboard when the week was planned; null or absent in weeks planned before it was kept. */
  readonly stockGrams?: number | null;
}

export type Caution =
  | {
      readonly kind: "READ_LABEL";
      readonly childId: string;
      readonly food: string;
      readonly allergens: readonly string[];
    }
  | {
      readonly kind: "CUT_FOR_AGE";
      readonly childId: string;
      readonly date: string;
      readonly dish: string;
      readonly cut: string;
    }
  | { readonly kind: "KEEP_COLD"; readonly childId: string; readonly date: string; readonly coldSources: number }
  | { readonly kind: "PREHEAT_FLASK"; readonly childId: string; readonly date: string; readonly dish: string }
  | { readonly kind: "REHEAT_THROUGH"; readonly childId: string; readonly date: string; readonly dish: string }
  | { readonly kind: "CLEAN_BETWEEN"; readonly session: string; readonly allergens: readonly string[] }
  | { readonly kind: "COOL_QUICKLY"; readonly session: string; readonly base: string }
  | {
      readonly kind: "ADVICE_NOT_MET";
      readonly childId: string;
      readonly date: string | null;
      readonly ruleSet: string;
      readonly rule: string;
    }
  /** On a clinician's note: planned as if there were no such rule on these days of the child's boxes. */
  | {
      readonly kind: "RULE_RESTS";
      readonly childId: string;
      readonly dates: readonly string[];
      readonly ruleSet: string;
      readonly rule: string;
    }
  /** So much of what is ready is in no box; after `lastDate` it is not safe, or no longer good. */
  | {
      readonly kind: "READY_UNUSED";
      readonly readyId: string;
      readonly base: string;
      readonly from: "LEFTOVER" | "FREEZER";
      readonly grams: number;
      readonly lastDate: string;
    }
  | { readonly kind: "FIGURE_MISSING"; readonly food: string; readonly nutrient: string }
  | { readonly kind: "GENERAL"; readonly about: "LABELS" | "CHOKING" | "HOLDING" | "NUTRITION" };

/** The objective by wish, each in its own unit. */
export interface WishTotals {
  readonly handsOnMinutes: number;
  readonly costMinor: number;
  readonly spareBaseGrams: number;
  /** Sum over children and nutrients of percent short of (or above) the week's target. */
  readonly nutrientShortfallPercent: number;
  readonly refusalPoints: number;
  readonly monotonyPoints: number;
  /** The planner's own sum, in points of the model; lower is better. */
  readonly objectivePoints: number;
}

export interface WeekDraft {
  readonly boxes: readonly BoxPlan[];
  readonly batches: readonly BatchPlan[];
  readonly readyUses: readonly ReadyUse[];
  readonly tasks: readonly TaskPlan[];
  /** Those with work, in time order. */
  readonly sessions: readonly SessionPlan[];
  readonly shopping: readonly ShoppingLinePlan[];
  readonly cautions: readonly Caution[];
  readonly wishes: WishTotals;
}
