/**
 * What the checker can find wrong, by kind. A fault carries facts only; the sentence for people is made elsewhere.
 */
export const faultKinds = [
  // Rows the plan refers to and the brief does not have.
  "CHILD_UNKNOWN",
  "DISH_UNKNOWN",
  "BASE_UNKNOWN",
  "FOOD_UNKNOWN",
  "SESSION_UNKNOWN",
  "BREAK_UNKNOWN",
  "RULE_SET_UNKNOWN",
  // Safety.
  "ALLERGEN",
  "MAY_CONTAIN",
  "LABEL_NOT_LISTED",
  "KEPT_OUT",
  "DIET",
  "CHOKING",
  "CUT_NOT_PRINTED",
  "HOLDING_MINUTES_WRONG",
  "HOLDING_TOO_LONG",
  "HOLDING_CASE_WRONG",
  "HOLDING_MODEL_EXCEEDED",
  "HOLDING_LIMIT_LOOSE",
  "HOLDING_FORECAST_MILD",
  "HOT_WHEN_PACKED",
  "COLD_SOURCES_MISSING",
  "NOT_INSULATED",
  "FLASK_MISSING",
  "NO_REHEATING",
  "GOOD_FOR_TOO_SHORT",
  "OUT_OF",
  // Rules of schools and families.
  "RULE_BROKEN",
  "NOT_KNOWN",
  "RULE_NOT_JUDGED",
  "EXEMPT_FROM_ALLERGEN_RULE",
  // Completeness.
  "BOX_MISSING",
  "BOX_TWICE",
  "BOX_WITHOUT_DAY",
  "LEAVE_TIME_WRONG",
  "PLACE_EMPTY",
  "PLACE_FILLED_TWICE",
  "PLACE_UNKNOWN",
  "SLOT_NOT_FILLED_BY_DISH",
  "GRAMS_WRONG",
  "PIECES_WRONG",
  "ENERGY_WRONG",
  "CARBOHYDRATE_WRONG",
  "CUTLERY_MISSING",
  "PIN_MOVED",
  // House rules.
  "SIBLINGS_ALIKE",
  "DISH_REPEATED",
  "TWICE_IN_ONE_BOX",
  "STARCH_REPEATED",
  // Compartments.
  "COMPARTMENT_UNKNOWN",
  "COMPARTMENT_TOO_FULL",
  "WET_NOT_LEAKPROOF",
  "WET_WITH_DRY",
  "FLASK_MISUSED",
  // Kitchen.
  "BATCH_GRAMS_WRONG",
  "FEEDS_DO_NOT_ADD_UP",
  "FED_OUT_OF_DATE",
  "FED_BEFORE_MADE",
  "USED_BEFORE_STOOD",
  "WINDOW_NOT_ALLOWED",
  "TOO_MANY_BATCHES",
  "BASE_SHORT",
  "SUPPLY_UNUSED",
  "READY_UNKNOWN",
  "READY_OUT_OF_DATE",
  "READY_OVERDRAWN",
  "MADE_BATCH_MISSING",
  "BATCH_NOT_MADE",
  "BASE_TASK_MISSING",
  "FINISH_TASK_MISSING",
  "PACK_TASK_MISSING",
  "FINISHED_TOO_EARLY",
  "TASK_KEY_TWICE",
  "TASK_AFTER_UNKNOWN",
  "TASK_OUT_OF_ORDER",
  "NOT_COOLED",
  "TASK_OUTSIDE_SESSION",
  "TASK_TOO_LATE",
  "TASK_TIMES_WRONG",
  "WAITS_TOO_LONG",
  "SESSION_TIMES_WRONG",
  "CARER_UNKNOWN",
  "CARER_DOUBLE_BOOKED",
  "HANDS_ON_UNDERSTATED",
  "SESSION_OVER_MINUTES",
  "EQUIPMENT_NOT_OWNED",
  "EQUIPMENT_OVERBOOKED",
  "EQUIPMENT_NOT_LISTED",
  "ALLERGEN_NOT_LISTED",
  "REFRIGERATOR_TOO_FULL",
  // Shopping.
  "NOT_BOUGHT",
  "BOUGHT_TWICE",
  "BOUGHT_FOR_NOTHING",
  "NEEDED_GRAMS_WRONG",
  "TOO_LITTLE_BOUGHT",
  "TOO_MUCH_BOUGHT",
  "PACK_WRONG",
  "COST_WRONG",
  "SPARE_WRONG",
  "STOCK_OVERDRAWN",
  "LABEL_NOT_FLAGGED",
  // Cautions that travel with the plan.
  "CAUTION_MISSING",
] as const;
export type FaultKind = (typeof faultKinds)[number];

export interface Fault {
  readonly kind: FaultKind;
  readonly childId?: string;
  readonly otherChildId?: string;
  readonly date?: string;
  readonly breakKey?: string;
  readonly slot?: string;
  readonly position?: number;
  readonly dish?: string;
  readonly base?: string;
  readonly food?: string;
  /** An allergen, or the food kind a child avoids. */
  readonly allergen?: string;
  readonly diet?: string;
  readonly nutrient?: string;
  /** Key of the rule set, id of the rule in it. */
  readonly ruleSet?: string;
  readonly rule?: string;
  readonly session?: string;
  readonly task?: string;
  readonly equipment?: string;
  readonly readyId?: string;
  /** Which caution is missing. */
  readonly caution?: string;
  /** What was found and the bound or figure it was held against, in the unit of the check (grams, minutes, ml, minor units, a count). */
  readonly found?: number;
  readonly limit?: number;
}
