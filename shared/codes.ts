import { z } from "zod";

/**
 * Allergens named one by one, never as a group: a child's list and a label are compared name by name.
 * Names on the lists of EU 1169/2011 Annex II, US FALCPA with FASTER, and Canada B.01.010.1, plus
 * coconut and chestnut, which no list counts as a tree nut and a child may still have to avoid.
 */
export const allergenCode = z.enum([
  "MILK",
  "EGG",
  "FISH",
  "CRUSTACEAN",
  "MOLLUSC",
  "PEANUT",
  "ALMOND",
  "HAZELNUT",
  "WALNUT",
  "CASHEW",
  "PECAN",
  "BRAZIL_NUT",
  "PISTACHIO",
  "MACADAMIA",
  "PINE_NUT",
  "COCONUT",
  "CHESTNUT",
  "SOYA",
  "WHEAT",
  "RYE",
  "BARLEY",
  "OATS",
  "SESAME",
  "MUSTARD",
  "CELERY",
  "LUPIN",
  "SULPHITES",
]);
export type AllergenCode = z.infer<typeof allergenCode>;

/** Family names people use; each stands for the members in `allergenGroups`. */
export const allergenGroupCode = z.enum(["TREE_NUTS", "GLUTEN_CEREALS", "SHELLFISH"]);
export type AllergenGroupCode = z.infer<typeof allergenGroupCode>;

/** Widest published reading of each family: EU nuts plus pine nut (US, Canada); EU gluten cereals. */
export const allergenGroups: Readonly<Record<AllergenGroupCode, readonly AllergenCode[]>> = {
  TREE_NUTS: ["ALMOND", "HAZELNUT", "WALNUT", "CASHEW", "PECAN", "BRAZIL_NUT", "PISTACHIO", "MACADAMIA", "PINE_NUT"],
  GLUTEN_CEREALS: ["WHEAT", "RYE", "BARLEY", "OATS"],
  SHELLFISH: ["CRUSTACEAN", "MOLLUSC"],
};

export const slotCode = z.enum(["MAIN", "VEGETABLE", "FRUIT", "EXTRA"]);
export type SlotCode = z.infer<typeof slotCode>;

export const windowKind = z.enum(["WEEKEND", "EVENING", "MORNING"]);
export type WindowKind = z.infer<typeof windowKind>;

export const equipmentKind = z.enum([
  "HOB_BURNER",
  "OVEN",
  "STEAMER",
  "MICROWAVE",
  "TOASTER",
  "RICE_COOKER",
  "WAFFLE_IRON",
  "CAKE_MOULD_SET",
  "MUFFIN_TRAY",
  "BLENDER",
  "PRESSURE_COOKER",
]);
export type EquipmentKind = z.infer<typeof equipmentKind>;

/** INFOODS tag names; the unit is part of the definition (see `nutrientUnits`). */
export const nutrientTag = z.enum([
  "ENERC_KCAL",
  "WATER",
  "PROCNT",
  "FAT",
  "FASAT",
  "FAMS",
  "FAPU",
  "CHOCDF",
  "FIBTG",
  "SUGAR",
  "CA",
  "FE",
  "MG",
  "P",
  "K",
  "NA",
  "ZN",
  "VITA_RAE",
  "VITC",
  "VITB12",
  "FOLDFE",
  "VITD",
]);
export type NutrientTag = z.infer<typeof nutrientTag>;

export const nutrientUnits: Readonly<Record<NutrientTag, "kcal" | "g" | "mg" | "ug">> = {
  ENERC_KCAL: "kcal",
  WATER: "g",
  PROCNT: "g",
  FAT: "g",
  FASAT: "g",
  FAMS: "g",
  FAPU: "g",
  CHOCDF: "g",
  FIBTG: "g",
  SUGAR: "g",
  CA: "mg",
  FE: "mg",
  MG: "mg",
  P: "mg",
  K: "mg",
  NA: "mg",
  ZN: "mg",
  VITA_RAE: "ug",
  VITC: "mg",
  VITB12: "ug",
  FOLDFE: "ug",
  VITD: "ug",
};

export const dietCode = z.enum(["VEGETARIAN", "VEGAN", "PESCATARIAN", "HALAL", "NO_PORK", "NO_BEEF"]);
export type DietCode = z.infer<typeof dietCode>;

/** What animal (or process) a food comes from, as far as a diet or a rule asks. */
export const originCode = z.enum([
  "PLANT",
  "MEAT",
  "PORK",
  "BEEF",
  "POULTRY",
  "FISH",
  "SEAFOOD",
  "EGG",
  "DAIRY",
  "HONEY",
  "GELATINE",
  "ALCOHOL",
]);
export type OriginCode = z.infer<typeof originCode>;

export const foodGroup = z.enum([
  "GRAIN",
  "WHOLE_GRAIN",
  "BREAD",
  "PULSE",
  "VEGETABLE_DARK_GREEN",
  "VEGETABLE_RED_ORANGE",
  "VEGETABLE_STARCHY",
  "VEGETABLE_OTHER",
  "FRUIT",
  "DRIED_FRUIT",
  "JUICE",
  "MILK",
  "YOGURT",
  "CHEESE",
  "EGG",
  "MEAT",
  "MEAT_PRODUCT",
  "POULTRY",
  "FISH",
  "OILY_FISH",
  "SEAFOOD",
  "SOYA_FOOD",
  "NUT",
  "SEED",
  "FAT_OIL",
  "SUGAR_SYRUP",
  "CONFECTIONERY",
  "HERB_SPICE",
  "CONDIMENT",
  "SAVOURY_SNACK",
  "RAISING_AGENT",
  "WATER",
]);
export type FoodGroup = z.infer<typeof foodGroup>;

/**
 * How a food's free and added sugars follow from its sugars; explained at `foodSchema` in catalogue.ts and checked by
 * src/domain/catalogue/sugars.ts.
 */
export const sugarRule = z.enum(["INTACT", "MILK_SUGAR", "JUICE", "ALL_FREE", "ADDED_PART"]);
export type SugarRule = z.infer<typeof sugarRule>;

/** Where a food grows, as far as its season goes. Southern months are northern ones six months later unless a source says so. */
export const climateRegion = z.enum(["NORTH_TEMPERATE", "SOUTH_TEMPERATE", "TROPICAL"]);
export type ClimateRegion = z.infer<typeof climateRegion>;

/** How dear a food is, from its invented price; never typed in. */
export const priceBand = z.enum(["LOW", "MIDDLE", "HIGH"]);
export type PriceBand = z.infer<typeof priceBand>;

/** How a piece behaves in a small throat; the table in seeds/reference/choking.json says what makes it safe. */
export const chokingClass = z.enum([
  "GRAPE_LIKE",
  "STONE_FRUIT",
  "MELON_BALL",
  "HARD_RAW",
  "WHOLE_NUT",
  "WHOLE_SEED",
  "NUT_BUTTER",
  "POPCORN",
  "SAUSAGE",
  "FIRM_CHEESE",
  "MEAT_PIECE",
  "BONY_FISH",
  "MARSHMALLOW_JELLY",
  "HARD_SWEET",
  "CRISP_PRETZEL",
  "ROUND_EGG",
]);
export type ChokingClass = z.infer<typeof chokingClass>;

/** The shape in which an ingredient reaches the box. */
export const servedForm = z.enum([
  "WHOLE",
  "HALVED",
  "QUARTERED_LENGTHWAYS",
  "SLICED_THIN",
  "STRIPS",
  "MATCHSTICKS",
  "CUBED",
  "CHUNKS",
  "GRATED",
  "MASHED",
  "COOKED_SOFT",
  "CHOPPED_SMALL",
  "GROUND",
  "SPREAD_THIN",
  "MIXED_IN",
  "FLAKED",
  "ROUNDS",
]);
export type ServedForm = z.infer<typeof servedForm>;

export const starchFamily = z.enum([
  "RICE",
  "BREAD",
  "FLATBREAD",
  "PASTA",
  "NOODLE",
  "POTATO",
  "MAIZE",
  "MILLET",
  "GRAIN",
  "BATTER_CAKE",
  "NONE",
]);
export type StarchFamily = z.infer<typeof starchFamily>;
export const proteinFamily = z.enum([
  "EGG",
  "CHICKEN",
  "BEEF",
  "LAMB",
  "PORK",
  "FISH",
  "SEAFOOD",
  "PULSE",
  "TOFU",
  "CHEESE",
  "YOGURT",
  "NUT",
  "SEED",
  "NONE",
]);
export type ProteinFamily = z.infer<typeof proteinFamily>;
export const colourTag = z.enum(["RED", "ORANGE", "YELLOW", "GREEN", "WHITE", "BROWN", "PURPLE"]);
export const textureTag = z.enum(["CRISP", "SOFT", "CHEWY", "CREAMY", "JUICY", "CRUMBLY"]);
export const flavourTag = z.enum(["MILD", "SAVOURY", "SWEET", "SOUR", "SPICED", "HERBY"]);
export const processingTag = z.enum([
  "DEEP_FRIED",
  "CONFECTIONERY",
  "FIZZY_DRINK",
  "SAVOURY_SNACK",
  "PASTRY",
  "COATED",
  "CAKE_OR_BISCUIT",
]);
export type ProcessingTag = z.infer<typeof processingTag>;
export const cutleryCode = z.enum(["NONE", "SPOON", "FORK", "CHOPSTICKS"]);
export const spillClass = z.enum(["DRY", "MOIST", "WET"]);
export type SpillClass = z.infer<typeof spillClass>;
export const servedWarmth = z.enum(["COLD", "WARM", "EITHER"]);
export type ServedWarmth = z.infer<typeof servedWarmth>;

export const facilityCode = z.enum(["REFRIGERATOR", "REHEATING", "NEITHER"]);
export type FacilityCode = z.infer<typeof facilityCode>;
export const weekdayCode = z.enum(["MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY", "SATURDAY", "SUNDAY"]);
export type WeekdayCode = z.infer<typeof weekdayCode>;

/** ISO 8601 calendar date, no zone: "2026-09-07". */
export const localDate = z.string().regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, "a date as YYYY-MM-DD");
/** ISO 8601 wall-clock time to the minute, no zone: "06:50". */
export const localTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, "a time as HH:MM");
/** Lower-case words joined by hyphens; the stable key of a catalogue row. */
export const slug = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "lower-case words joined by hyphens")
  .max(80);
