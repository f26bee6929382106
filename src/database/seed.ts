/**
 * Fills a database from the files under seeds/: reference data (foods, bases, dishes, small tables), the same everywhere,
 * and the invented families of the demonstration. Every file is checked before the first row is written.
 */
import { createHash } from "node:crypto";
import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import postgres from "postgres";
import { z } from "zod";
import { baseSchema, dishSchema, foodSchema, retentionSchema, type Catalogue } from "../../shared/catalogue.js";
import {
  allergenCode,
  allergenGroupCode,
  chokingClass,
  dietCode,
  equipmentKind,
  facilityCode,
  localDate,
  localTime,
  servedForm,
  slotCode,
  slug,
  weekdayCode,
  windowKind,
  type WeekdayCode,
} from "../../shared/codes.js";
import { creditTable, type CreditTable } from "../../shared/credits.js";
import { holdingModelFile, type HoldingModel } from "../../shared/holding-model.js";
import { labelLawSchema, type LabelLaw } from "../../shared/label-law.js";
import { mealSharesSchema, type MealShares } from "../../shared/meal-shares.js";
import { ruleSetDocument } from "../../shared/rule-set.js";
import type { ChokingRule, HoldingLimits } from "../domain/brief.js";
import { addDays } from "../domain/calendar/dates.js";
import { residenceKinds } from "../domain/calendar/residence.js";

const LOCK = 7_306_143; // any fixed number: one seeding at a time in a database

/** Who published the figures of a file, in which edition, under which terms. */
const fileSource = z.strictObject({
  publisher: z.string(),
  edition: z.string(),
  licence: z.string(),
  note: z.string(),
});

const foodFile = z.strictObject({ source: fileSource, foods: z.array(foodSchema).min(1) });
const baseFile = z.strictObject({ source: fileSource, bases: z.array(baseSchema).min(1) });
const dishFile = z.strictObject({ source: fileSource, dishes: z.array(dishSchema).min(1) });
const retentionFile = z.strictObject({ source: fileSource, factors: z.array(retentionSchema).min(1) });
const chokingFile = z.strictObject({
  source: fileSource,
  rules: z.array(
    z.strictObject({
      class: chokingClass,
      underAgeYears: z.number().int().min(1).max(18),
      never: z.boolean(),
      safeForms: z.array(servedForm),
      cut: z.string().min(5),
      largestPieceMm: z.number().int().min(1).max(50).nullable(),
      source: z.string().min(3),
    }),
  ),
});
const minutes = z
  .number()
  .int()
  .min(0)
  .max(24 * 60);
const holdingFile = z.strictObject({
  source: fileSource,
  limits: z.strictObject({
    chilledMinutes: minutes,
    coldSources: z.number().int().min(0),
    flaskMinutes: minutes,
    ambientMinutes: minutes,
    hotDayAmbientMinutes: minutes,
    hotDayAboveC: z.number(),
    source: z.string().min(3),
  }),
});

const mealSharesFile = z.strictObject({ source: fileSource, shares: mealSharesSchema });
const labelLawsFile = z.strictObject({ source: fileSource, laws: z.array(labelLawSchema).min(1) });

function parseFile<T>(schema: z.ZodType<T>, path: string): T {
  const read = schema.safeParse(JSON.parse(readFileSync(path, "utf8")));
  if (!read.success) throw new Error(`${path} cannot be used:\n${z.prettifyError(read.error)}`);
  return read.data;
}

function jsonFilesIn(directory: string): string[] {
  return readdirSync(directory)
    .filter((name) => name.endsWith(".json"))
    .sort()
    .map((name) => join(directory, name));
}

const hash = (text: string): string => createHash("sha256").update(text).digest("hex");

/**
 * The id of a seeded row, the same in every database: RFC 9562 version 5, from the row's table and natural key.
 */
function nameUuid(...name: readonly string[]): string {
  const namespace = Buffer.from("9f1c3a52d0a74b0f8d6e1a2b3c4d5e6f", "hex");
  const bytes = createHash("sha1").update(namespace).update(name.join(":")).digest().subarray(0, 16);
  bytes[6] = (bytes[6]! & 0x0f) | 0x50;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  return bytes.toString("hex").replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
}

type Row = Readonly<Record<string, unknown>>;

/**
 * Writes rows as one statement. Every row names the same columns; their types come from the table. With `onKey` a row that is
 * there keeps its id and takes the new values.
 */
async function writeRows(
  tx: postgres.TransactionSql,
  table: string,
  rows: readonly Row[],
  onKey?: string,
): Promise<void> {
  const [first] = rows;
  if (!first) return;
  const names = Object.keys(first);
  const columns = names.map((name) => `"${name}"`).join(", ");
  const changes = names
    .filter((name) => name !== "id" && name !== onKey)
    .map((name) => `"${name}" = excluded."${name}"`);
  await tx.unsafe(
    `insert into "${table}" (${columns}) select ${columns} from jsonb_populate_recordset(null::"${table}", $1)
     ${onKey ? `on conflict ("${onKey}") do update set ${changes.join(", ")}` : ""}`,
    [tx.json(rows as unknown as postgres.JSONValue)],
  );
}

/** Foods, bases and dishes of a folder. Throws when a file is malformed or a row names another that is not there. */
export function readCatalogueFiles(directory = "seeds/reference"): Catalogue {
  const catalogue: Catalogue = {
    foods: jsonFilesIn(join(directory, "foods")).flatMap((path) => parseFile(foodFile, path).foods),
    bases: parseFile(baseFile, join(directory, "bases.json")).bases,
    dishes: jsonFilesIn(join(directory, "dishes")).flatMap((path) => parseFile(dishFile, path).dishes),
    retention: parseFile(retentionFile, join(directory, "retention.json")).factors,
  };
  const complaints = findBrokenNames(catalogue);
  if (complaints.length > 0)
    throw new Error(`The catalogue in ${directory} does not hold together:\n${complaints.join("\n")}`);
  return catalogue;
}

function findBrokenNames({ foods, bases, dishes, retention }: Catalogue): string[] {
  const known = {
    food: new Set(foods.map(({ key }) => key)),
    base: new Set(bases.map(({ key }) => key)),
    "retention code": new Set(retention.map(({ code }) => code)),
  };
  const missing = (owner: string, kind: keyof typeof known, keys: readonly string[]) =>
    keys.filter((key) => !known[kind].has(key)).map((key) => `${owner} names the ${kind} ${key}, which is not there`);
  const twice = (kind: string, keys: readonly string[]) =>
    keys.filter((key, at) => keys.indexOf(key) !== at).map((key) => `two ${kind} have the key ${key}`);
  return [
    ...twice(
      "foods",
      foods.map(({ key }) => key),
    ),
    ...twice(
      "bases",
      bases.map(({ key }) => key),
    ),
    ...twice(
      "dishes",
      dishes.map(({ key }) => key),
    ),
    ...twice(
      "retention rows",
      retention.map(({ code }) => code),
    ),
    ...[...bases, ...dishes].flatMap(({ key, ingredients }) =>
      missing(
        key,
        "retention code",
        ingredients.flatMap((ingredient) => ingredient.retention ?? []),
      ),
    ),
    ...foods.flatMap((food) => (food.boughtAs ? missing(`food ${food.key}`, "food", [food.boughtAs.food]) : [])),
    ...bases.flatMap((base) =>
      missing(
        `base ${base.key}`,
        "food",
        base.ingredients.map(({ food }) => food),
      ),
    ),
    ...dishes.flatMap((dish) => [
      ...missing(
        `dish ${dish.key}`,
        "food",
        dish.ingredients.map(({ food }) => food),
      ),
      ...missing(
        `dish ${dish.key}`,
        "base",
        dish.bases.map(({ base }) => base),
      ),
    ]),
  ];
}

/** The small tables of a folder, null where a file is not there. Throws when one is malformed. */
export function readSmallFiles(directory = "seeds/reference") {
  const read = <T>(name: string, parse: (path: string) => T): T | null => {
    const path = join(directory, name);
    return existsSync(path) ? parse(path) : null;
  };
  return {
    choking: read("choking.json", (path): readonly ChokingRule[] => parseFile(chokingFile, path).rules),
    mealShares: read("meal-shares.json", (path): MealShares => parseFile(mealSharesFile, path).shares),
    credits: read("credits.json", (path): CreditTable => parseFile(creditTable, path)),
    labelLaws: read("label-laws.json", (path): readonly LabelLaw[] => parseFile(labelLawsFile, path).laws),
    holding: read("holding-limits.json", (path): HoldingLimits => parseFile(holdingFile, path).limits),
    holdingModel: read("holding-model.json", (path): HoldingModel => parseFile(holdingModelFile, path)),
  };
}

export interface ReferenceSeeding {
  /** False: this very content was there already. */
  readonly changed: boolean;
  /** sha256 of the files. */
  readonly version: string;
}

/**
 * Brings the reference tables to the content of the files, in one transaction; does nothing when they have it. Foods, bases and
 * dishes keep their ids. One that left the files stays while a household's stock, labels or freezer still name it.
 * @param ownerUrl a role that owns the tables
 */
export async function seedReference(ownerUrl: string, directory = "seeds/reference"): Promise<ReferenceSeeding> {
  const paths = {
    catalogue: [
      ...jsonFilesIn(join(directory, "foods")),
      join(directory, "bases.json"),
      ...jsonFilesIn(join(directory, "dishes")),
      join(directory, "retention.json"),
    ],
    choking: join(directory, "choking.json"),
    mealShares: join(directory, "meal-shares.json"),
    credits: join(directory, "credits.json"),
    labelLaws: join(directory, "label-laws.json"),
    holding: join(directory, "holding-limits.json"),
    holdingModel: join(directory, "holding-model.json"),
  };
  const texts = {
    catalogue: paths.catalogue.map((path) => readFileSync(path, "utf8")).join("\n"),
    small: [paths.choking, paths.mealShares, paths.credits, paths.labelLaws, paths.holding, paths.holdingModel]
      .filter(existsSync)
      .map((path) => readFileSync(path, "utf8"))
      .join("\n"),
  };
  const version = hash(`${texts.catalogue}\n${texts.small}`);
  const sql = postgres(ownerUrl, { max: 1, onnotice: () => undefined });
  try {
    const there = await sql`select 1 from reference_table where key = 'catalogue' and version = ${version}`;
    if (there.length > 0) return { changed: false, version };
    const catalogue = readCatalogueFiles(directory);
    const small = readSmallFiles(directory);
    await sql.begin(async (tx) => {
      await tx`select pg_advisory_xact_lock(${LOCK})`;
      await writeCatalogue(tx, catalogue);
      const counts = { foods: catalogue.foods.length, bases: catalogue.bases.length, dishes: catalogue.dishes.length };
      const tables = { catalogue: counts, retention: catalogue.retention, ...small };
      const rows = Object.entries(tables)
        .filter(([, body]) => body !== null)
        .map(([key, body]) => ({
          id: nameUuid("reference_table", key),
          key,
          version: key === "catalogue" ? version : hash(JSON.stringify(body)),
          body,
        }));
      await writeRows(tx, "reference_table", rows, "key");
    });
    return { changed: true, version };
  } finally {
    await sql.end();
  }
}

async function writeCatalogue(tx: postgres.TransactionSql, { foods, bases, dishes }: Catalogue): Promise<void> {
  const idOf = (table: "food" | "base" | "dish", key: string) => nameUuid(table, key);
  await writeRows(
    tx,
    "food",
    foods.map((food) => ({
      id: idOf("food", food.key),
      key: food.key,
      name: food.name,
      ndb: food.ndb,
      kind: food.kind,
      food_group: food.group,
      origins: food.origins,
      allergens: food.allergens,
      packaged: food.packaged,
      nutrients: food.nutrients,
      sugar_rule: food.sugarRule,
      free_sugar_grams: food.freeSugarGrams,
      added_sugar_grams: food.addedSugarGrams,
      refuse_percent: food.refusePercent,
      density_grams_per_ml: food.densityGramsPerMl,
      measures: food.measures,
      water_activity: food.waterActivity,
      ph: food.ph,
      choking_classes: food.chokingClasses,
      keeps_chilled_days: food.keepsChilledDays,
      keeps_frozen_days: food.keepsFrozenDays,
      seasons: food.seasons,
      bought_as: food.boughtAs,
      pack_grams: food.pack.grams,
      price_minor: food.pack.priceMinor,
      shop_section: food.shopSection,
      whole_grain: food.wholeGrain,
    })),
    "key",
  );
  await writeRows(
    tx,
    "base",
    bases.map((base) => ({
      id: idOf("base", base.key),
      key: base.key,
      name: base.name,
      kind: base.kind,
      batch_grams: base.batchGrams,
      fixed_hands_on_minutes: base.fixedHandsOnMinutes,
      per_batch_hands_on_minutes: base.perBatchHandsOnMinutes,
      passive_minutes: base.passiveMinutes,
      rest_minutes: base.restMinutes ?? null,
      equipment: base.equipment,
      equipment_minutes: base.equipmentMinutes,
      max_batches: base.maxBatches,
      windows: base.windows,
      keeps_chilled_days: base.keepsChilledDays,
      keeps_frozen_days: base.keepsFrozenDays,
      storage_ml: base.storageMl,
      steps: base.steps,
    })),
    "key",
  );
  await writeRows(
    tx,
    "dish",
    dishes.map((dish) => ({
      id: idOf("dish", dish.key),
      key: dish.key,
      name: dish.name,
      slots: dish.slots,
      portion: dish.portion,
      served: dish.served,
      good_for_hours: dish.goodForHours,
      cutlery: dish.cutlery,
      spill: dish.spill,
      volume_ml: dish.volumeMl,
      starch: dish.starch,
      protein: dish.protein,
      colours: dish.colours,
      textures: dish.textures,
      flavours: dish.flavours,
      cuisine: dish.cuisine,
      processing: dish.processing,
      cooked_in_fat: dish.cookedInFat,
      treat: dish.treat,
    })),
    "key",
  );
  // Parts are replaced whole. The parts of a base that left the files go with it, or stay when it has to stay.
  const baseKeys = bases.map(({ key }) => key);
  await tx`delete from dish where key <> all(${dishes.map(({ key }) => key)})`;
  await tx`delete from dish_base`;
  await tx`delete from dish_ingredient`;
  await tx`delete from dish_step`;
  await tx`delete from base_ingredient i using base b where b.id = i.base_id and b.key = any(${baseKeys})`;
  await tx`delete from base b where b.key <> all(${baseKeys})
    and not exists (select from leftover l where l.base_id = b.id) and not exists (select from freezer_stock s where s.base_id = b.id)`;
  await tx`delete from food f where f.key <> all(${foods.map(({ key }) => key)})
    and not exists (select from stock s where s.food_id = f.id) and not exists (select from label_check l where l.food_id = f.id)
    and not exists (select from school_provision p where p.food_id = f.id)
    and not exists (select from base_ingredient i where i.food_id = f.id)`;
  await writeRows(
    tx,
    "base_ingredient",
    bases.flatMap(({ key, ingredients }) =>
      ingredients.map(({ food, grams, form, retention }, place) => ({
        id: nameUuid("base_ingredient", key, String(place)),
        base_id: idOf("base", key),
        place,
        food_id: idOf("food", food),
        grams,
        form,
        retention: retention ?? null,
      })),
    ),
  );
  await writeRows(
    tx,
    "dish_base",
    dishes.flatMap((dish) =>
      dish.bases.map(({ base, grams }, place) => ({
        id: nameUuid("dish_base", dish.key, String(place)),
        dish_id: idOf("dish", dish.key),
        place,
        base_id: idOf("base", base),
        grams,
      })),
    ),
  );
  await writeRows(
    tx,
    "dish_ingredient",
    dishes.flatMap(({ key, ingredients }) =>
      ingredients.map(({ food, grams, form, retention }, place) => ({
        id: nameUuid("dish_ingredient", key, String(place)),
        dish_id: idOf("dish", key),
        place,
        food_id: idOf("food", food),
        grams,
        form,
        retention: retention ?? null,
      })),
    ),
  );
  await writeRows(
    tx,
    "dish_step",
    dishes.flatMap(({ key, steps }) =>
      steps.map((step, place) => ({
        id: nameUuid("dish_step", key, String(place)),
        dish_id: idOf("dish", key),
        place,
        text: step.text,
        hands_on_fixed_minutes: step.handsOnFixedMinutes,
        hands_on_per_portion_minutes: step.handsOnPerPortionMinutes,
        passive_minutes: step.passiveMinutes,
        equipment: step.equipment,
        batch_portions: step.batchPortions,
        evening_before: step.eveningBefore,
        cool_minutes: step.coolMinutes,
        held_while_cooling: step.heldWhileCooling,
      })),
    ),
  );
}

// The demonstration.

const note = z.string();
const uuid = z.uuid();
const allergen = z.union([allergenCode, allergenGroupCode]);

const peopleFile = z.strictObject({
  note,
  people: z.array(
    z.strictObject({
      key: slug,
      id: uuid,
      subject: z.string().startsWith("demo:"),
      name: z.string().min(1),
      about: z.string(),
    }),
  ),
  appointments: z.array(z.strictObject({ person: slug, school: slug })),
});

const homesFile = z.strictObject({
  note,
  homes: z.array(
    z.strictObject({
      key: slug,
      id: uuid,
      name: z.string().min(1),
      timeZone: z.string(),
      weekStart: weekdayCode,
      unitSystem: z.enum(["METRIC", "US_CUSTOMARY"]),
      currency: z.string().length(3),
      keepsOut: z.array(allergen),
      refrigeratorMl: z.number().int(),
      freezerMl: z.number().int(),
      members: z.array(z.strictObject({ person: slug, role: z.enum(["COORDINATOR", "COOK", "HELPER", "OBSERVER"]) })),
      equipment: z.partialRecord(equipmentKind, z.number().int().min(1)),
      prepTimes: z.array(
        z.strictObject({
          kind: windowKind,
          weekdays: z.array(weekdayCode).min(1),
          startsAt: localTime,
          handsOnMinutes: z.number().int(),
          elapsedMinutes: z.number().int(),
          carers: z.number().int(),
          effort: z.number().int(),
        }),
      ),
      stock: z.record(slug, z.number().int().positive()),
      leftovers: z.array(z.strictObject({ base: slug, grams: z.number().int(), cookedOn: localDate })),
      freezerStock: z.array(z.strictObject({ base: slug, grams: z.number().int(), frozenOn: localDate })),
      labelChecks: z.array(
        z.strictObject({
          food: slug,
          contains: z.array(allergenCode),
          mayContain: z.array(allergenCode),
          readOn: localDate,
          readBy: slug,
        }),
      ),
    }),
  ),
});

const schoolsFile = z.strictObject({
  note,
  schools: z.array(
    z.strictObject({
      key: slug,
      id: uuid,
      name: z.string().min(1),
      timeZone: z.string(),
      jurisdiction: z.string().nullable(),
      terms: z.array(z.strictObject({ name: z.string(), firstDay: localDate, lastDay: localDate })),
      holidays: z.array(z.strictObject({ from: localDate, until: localDate, title: z.string() })),
      days: z.array(
        z.strictObject({
          date: localDate,
          kind: z.enum(["EARLY_FINISH", "TRIP"]),
          title: z.string(),
          endsAt: localTime.optional(),
          class: slug.optional(),
        }),
      ),
      classes: z.array(
        z.strictObject({
          key: slug,
          id: uuid,
          name: z.string(),
          facility: facilityCode,
          breaks: z.array(
            z.strictObject({
              key: slug,
              name: z.string(),
              startsAt: localTime,
              minutes: z.number().int(),
              slots: z.array(slotCode).min(1),
              energyShare: z.number().min(0).max(1).optional(),
            }),
          ),
        }),
      ),
    }),
  ),
  ruleSets: z.array(
    z.strictObject({
      id: uuid,
      document: z.string(),
      school: slug.optional(),
      class: slug.optional(),
      child: slug.optional(),
      /** Of a jurisdiction's document: the schools that hold food from home to it. */
      adoptedBy: z.array(slug).optional(),
      loadedBy: slug.optional(),
    }),
  ),
});

const childrenFile = z.strictObject({
  note,
  children: z.array(
    z.strictObject({
      key: slug,
      id: uuid,
      name: z.string().min(1),
      dateOfBirth: localDate,
      diets: z.array(dietCode),
      dislikes: z.array(slug),
      appetite: z.number(),
      activity: z.enum(["INACTIVE", "LOW_ACTIVE", "ACTIVE", "VERY_ACTIVE"]),
      minutesToEat: z.number().int(),
      allergies: z.array(z.strictObject({ allergen, avoid: z.enum(["TRACES", "INGREDIENTS"]), recordedBy: slug })),
      enrolment: z.strictObject({ school: slug, class: slug, from: localDate }),
      homes: z.array(
        z.strictObject({
          home: slug,
          since: localDate,
          body: z
            .strictObject({ sex: z.enum(["FEMALE", "MALE"]), weightKg: z.number(), heightCm: z.number() })
            .optional(),
          box: z.strictObject({
            compartments: z.array(z.strictObject({ ml: z.number().int(), leakProof: z.boolean() })).min(1),
            coldSources: z.number().int(),
            insulated: z.boolean(),
            flask: z.boolean(),
          }),
          leaveAt: localTime,
        }),
      ),
    }),
  ),
});

const residenceFile = z.strictObject({
  note,
  /** A Monday: the week the demonstration plans. */
  demoWeek: localDate,
  /** `cycle`: the home of each day, from the first on. */
  patterns: z.array(
    z.strictObject({ child: slug, kind: z.enum(residenceKinds), starts: localDate, cycle: z.array(slug).min(1) }),
  ),
});

/** The invented town of the demonstration, as its files describe it. */
export function readDemoFiles(directory = "seeds/demo") {
  return {
    ...parseFile(peopleFile, join(directory, "people.json")),
    ...parseFile(homesFile, join(directory, "homes.json")),
    ...parseFile(schoolsFile, join(directory, "schools.json")),
    ...parseFile(childrenFile, join(directory, "children.json")),
    residence: parseFile(residenceFile, join(directory, "residence.json")),
  };
}
export type Demo = ReturnType<typeof readDemoFiles>;

/** Days from the first to the last, both included. */
function datesBetween(first: string, last: string): string[] {
  const dates: string[] = [];
  for (let date = first; date <= last; date = addDays(date, 1)) dates.push(date);
  return dates;
}

const schoolDays: readonly WeekdayCode[] = ["MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY"];

/** Looks a key up; a key the files never defined is a mistake in them. */
function finder<T extends { readonly key: string }>(what: string, rows: readonly T[]): (key: string) => T {
  const byKey = new Map(rows.map((row) => [row.key, row]));
  return (key) => {
    const row = byKey.get(key);
    if (!row) throw new Error(`The demonstration names the ${what} ${key}, which is not there.`);
    return row;
  };
}

/**
 * Writes the demonstration's families and schools, in one transaction; needs the reference data. Does nothing and answers false
 * when the database has any household.
 * @param ownerUrl a superuser, or an owner with BYPASSRLS: row security binds everybody else
 */
export async function seedDemo(
  ownerUrl: string,
  directory = "seeds/demo",
  ruleSets = "seeds/reference/rule-sets",
): Promise<boolean> {
  const demo = readDemoFiles(directory);
  const sql = postgres(ownerUrl, { max: 1, onnotice: () => undefined });
  try {
    const [role] = await sql<{ mayWrite: boolean; inhabited: boolean }[]>`
      select rolsuper or rolbypassrls as "mayWrite", exists (select from household) as inhabited from pg_roles where rolname = current_user`;
    if (!role!.mayWrite)
      throw new Error(
        "The demonstration is written for several families at once: connect as a superuser or a role with BYPASSRLS.",
      );
    if (role!.inhabited) return false;
    await sql.begin(async (tx) => {
      await tx`select pg_advisory_xact_lock(${LOCK})`;
      const known = await tx<
        { key: string; id: string; keepsChilledDays: number | null; keepsFrozenDays: number | null }[]
      >`
        select key, id, null::int as "keepsChilledDays", null::int as "keepsFrozenDays" from food
        union all select 'base ' || key, id, keeps_chilled_days, keeps_frozen_days from base`;
      const reference = finder("food or base", known);
      for (const [table, rows] of Object.entries(demoRows(demo, reference, ruleSets))) await writeRows(tx, table, rows);
    });
    return true;
  } finally {
    await sql.end();
  }
}

type FindReference = (key: string) => {
  readonly id: string;
  readonly keepsChilledDays: number | null;
  readonly keepsFrozenDays: number | null;
};

/** Rows by table, in an order that keeps every foreign key. */
function demoRows(
  demo: Demo,
  reference: FindReference,
  ruleSetDirectory: string,
): Readonly<Record<string, readonly Row[]>> {
  const person = finder("person", demo.people);
  const home = finder("home", demo.homes);
  const school = finder("school", demo.schools);
  const schoolClass = finder(
    "class",
    demo.schools.flatMap(({ classes }) => classes),
  );
  const child = finder("child", demo.children);
  const epoch = "2026-09-01T08:00:00Z";
  const documents = demo.ruleSets.map((row) => ({
    row,
    document: parseFile(ruleSetDocument, join(ruleSetDirectory, row.document)),
    versionId: nameUuid("rule_set_version", row.id, "1"),
  }));
  const childHomes = demo.children.flatMap((one) =>
    one.homes.map((at) => ({ child: one, at, homeId: home(at.home).id, key: `${one.key}:${at.home}` })),
  );

  return {
    person: demo.people.map(({ id, subject, name }) => ({ id, subject, display_name: name, created_at: epoch })),
    school: demo.schools.map(({ id, name, timeZone, jurisdiction }) => ({
      id,
      name,
      time_zone: timeZone,
      jurisdiction,
    })),
    school_class: demo.schools.flatMap(({ id, classes }) =>
      classes.map((one) => ({ id: one.id, school_id: id, name: one.name, facility: one.facility })),
    ),
    class_break: demo.schools.flatMap(({ classes }) =>
      classes.flatMap((one) =>
        one.breaks.map((at) => ({
          id: nameUuid("class_break", one.key, at.key),
          school_class_id: one.id,
          key: at.key,
          name: at.name,
          starts_at: at.startsAt,
          minutes: at.minutes,
          slots: at.slots,
          energy_share: at.energyShare ?? null,
        })),
      ),
    ),
    school_term: demo.schools.flatMap(({ id, key, terms }) =>
      terms.map((term) => ({
        id: nameUuid("school_term", key, term.name),
        school_id: id,
        name: term.name,
        first_day: term.firstDay,
        last_day: term.lastDay,
      })),
    ),
    school_day: demo.schools.flatMap(({ id, key, holidays, days }) => [
      ...holidays.flatMap(({ from, until, title }) =>
        datesBetween(from, until).map((date) => ({
          id: nameUuid("school_day", key, date),
          school_id: id,
          school_class_id: null,
          date,
          kind: "HOLIDAY",
          title,
          ends_at: null,
        })),
      ),
      ...days.map((day) => ({
        id: nameUuid("school_day", key, day.date, day.kind),
        school_id: id,
        school_class_id: day.class === undefined ? null : schoolClass(day.class).id,
        date: day.date,
        kind: day.kind,
        title: day.title,
        ends_at: day.endsAt ?? null,
      })),
    ]),
    appointment: demo.appointments.map((one) => ({
      id: nameUuid("appointment", one.person, one.school),
      person_id: person(one.person).id,
      school_id: school(one.school).id,
    })),
    household: demo.homes.map((one) => ({
      id: one.id,
      name: one.name,
      time_zone: one.timeZone,
      week_start: one.weekStart,
      unit_system: one.unitSystem,
      currency: one.currency,
      keeps_out: one.keepsOut,
      refrigerator_ml: one.refrigeratorMl,
      freezer_ml: one.freezerMl,
      revision: 1,
    })),
    membership: demo.homes.flatMap(({ id, key, members }) =>
      members.map((one) => ({
        id: nameUuid("membership", key, one.person),
        household_id: id,
        person_id: person(one.person).id,
        role: one.role,
        since: epoch,
      })),
    ),
    equipment: demo.homes.flatMap(({ id, key, equipment }) =>
      Object.entries(equipment).map(([kind, units]) => ({
        id: nameUuid("equipment", key, kind),
        household_id: id,
        kind,
        units,
      })),
    ),
    prep_time: demo.homes.flatMap(({ id, key, prepTimes }) =>
      prepTimes.flatMap((time) =>
        time.weekdays.map((weekday) => ({
          id: nameUuid("prep_time", key, time.kind, weekday),
          household_id: id,
          kind: time.kind,
          weekday,
          starts_at: time.startsAt,
          hands_on_minutes: time.handsOnMinutes,
          elapsed_minutes: time.elapsedMinutes,
          carers: time.carers,
          effort: time.effort,
        })),
      ),
    ),
    stock: demo.homes.flatMap(({ id, key, stock }) =>
      Object.entries(stock).map(([food, grams]) => ({
        id: nameUuid("stock", key, food),
        household_id: id,
        food_id: reference(food).id,
        grams,
      })),
    ),
    leftover: demo.homes.flatMap(({ id, key, leftovers }) =>
      leftovers.map(({ base, grams, cookedOn }) => {
        const { id: baseId, keepsChilledDays } = reference(`base ${base}`);
        // An evening's product counts its days from the next one, as in the catalogue.
        return {
          id: nameUuid("leftover", key, base, cookedOn),
          household_id: id,
          base_id: baseId,
          grams,
          cooked_on: cookedOn,
          last_safe_day: addDays(cookedOn, keepsChilledDays ?? 1),
        };
      }),
    ),
    freezer_stock: demo.homes.flatMap(({ id, key, freezerStock }) =>
      freezerStock.map(({ base, grams, frozenOn }) => {
        const { id: baseId, keepsFrozenDays } = reference(`base ${base}`);
        if (keepsFrozenDays === null) throw new Error(`The demonstration freezes ${base}, which does not keep frozen.`);
        return {
          id: nameUuid("freezer_stock", key, base, frozenOn),
          household_id: id,
          base_id: baseId,
          grams,
          frozen_on: frozenOn,
          use_by: addDays(frozenOn, keepsFrozenDays),
        };
      }),
    ),
    label_check: demo.homes.flatMap(({ id, key, labelChecks }) =>
      labelChecks.map((one) => ({
        id: nameUuid("label_check", key, one.food),
        household_id: id,
        food_id: reference(one.food).id,
        contains: one.contains,
        may_contain: one.mayContain,
        kinds: [],
        read_on: one.readOn,
        read_by_id: person(one.readBy).id,
      })),
    ),
    child: demo.children.map((one) => ({
      id: one.id,
      name: one.name,
      date_of_birth: one.dateOfBirth,
      diets: one.diets,
      dislikes: one.dislikes,
      appetite: one.appetite,
      activity: one.activity,
      minutes_to_eat: one.minutesToEat,
      revision: 1,
    })),
    allergy: demo.children.flatMap((one) =>
      one.allergies.map((row) => ({
        id: nameUuid("allergy", one.key, row.allergen),
        child_id: one.id,
        allergen: row.allergen,
        food_kind: null,
        avoid: row.avoid,
        recorded_by_household_id: home(row.recordedBy).id,
      })),
    ),
    residence: childHomes.map(({ child: one, at, homeId, key }) => ({
      id: nameUuid("residence", key),
      child_id: one.id,
      household_id: homeId,
      since: at.since,
    })),
    residence_pattern: demo.residence.patterns.map((pattern) => ({
      id: nameUuid("residence_pattern", pattern.child, pattern.starts),
      child_id: child(pattern.child).id,
      kind: pattern.kind,
      starts: pattern.starts,
      cycle: pattern.cycle.map((key) => home(key).id),
      state: "ACCEPTED",
      proposed_by_household_id: home(pattern.cycle[0]!).id,
      answered_at: `${pattern.starts}T00:00:00Z`,
    })),
    child_body: childHomes.flatMap(({ child: one, at, homeId, key }) =>
      at.body
        ? [
            {
              id: nameUuid("child_body", key),
              child_id: one.id,
              household_id: homeId,
              sex: at.body.sex,
              weight_kg: at.body.weightKg,
              height_cm: at.body.heightCm,
            },
          ]
        : [],
    ),
    box_kit: childHomes.map(({ child: one, at, homeId, key }) => ({
      id: nameUuid("box_kit", key),
      child_id: one.id,
      household_id: homeId,
      compartments: at.box.compartments,
      cold_sources: at.box.coldSources,
      insulated: at.box.insulated,
      flask: at.box.flask,
    })),
    leave_time: childHomes.flatMap(({ child: one, at, homeId, key }) =>
      schoolDays.map((weekday) => ({
        id: nameUuid("leave_time", key, weekday),
        child_id: one.id,
        household_id: homeId,
        weekday,
        leave_at: at.leaveAt,
      })),
    ),
    enrolment: demo.children.map((one) => ({
      id: nameUuid("enrolment", one.key),
      child_id: one.id,
      school_id: school(one.enrolment.school).id,
      school_class_id: schoolClass(one.enrolment.class).id,
      from_date: one.enrolment.from,
      until_date: null,
    })),
    rule_set: documents.map(({ row, document }) => ({
      id: row.id,
      key: document.key,
      layer: document.layer,
      school_id: row.school === undefined ? null : school(row.school).id,
      school_class_id: row.class === undefined ? null : schoolClass(row.class).id,
      child_id: row.child === undefined ? null : child(row.child).id,
      jurisdiction: document.jurisdiction ?? null,
      // A school's set that no administrator loaded is a family's own copy; a published standard is nobody's.
      confirmed: document.layer === "JURISDICTION" || row.child !== undefined || row.loadedBy !== undefined,
    })),
    rule_set_version: documents.map(({ row, document, versionId }) => ({
      id: versionId,
      rule_set_id: row.id,
      version: document.version,
      title: document.title,
      language: document.language,
      covers_food_from_home: document.coversFoodFromHome,
      in_force_from: document.inForceFrom,
      in_force_until: document.inForceUntil ?? null,
      ages: document.ages ?? null,
      withdrawn: document.withdrawn ?? false,
      loaded_by_id: row.loadedBy === undefined ? null : person(row.loadedBy).id,
      loaded_at: epoch,
    })),
    rule: documents.flatMap(({ document, versionId }) =>
      document.rules.map((rule, place) => ({
        id: nameUuid("rule", document.key, rule.id),
        rule_set_version_id: versionId,
        place,
        rule_key: rule.id,
        kind: rule.kind,
        level: rule.level,
        says: rule.says,
        source: rule.source,
        body: rule,
      })),
    ),
    rule_set_adoption: demo.ruleSets.flatMap(({ id, adoptedBy = [] }) =>
      adoptedBy.map((key) => ({
        id: nameUuid("rule_set_adoption", id, key),
        school_id: school(key).id,
        rule_set_id: id,
      })),
    ),
  };
}
