import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { holdingModelFile } from "../../shared/holding-model.js";
import { readReference } from "../../src/database/reference.js";
import { readCatalogueFiles, seedDemo, seedReference } from "../../src/database/seed.js";
import { useDatabase } from "../support/database.js";

const database = useDatabase();

const countRows = async () => {
  const [row] = await database.owner<Record<string, number>[]>`select
    (select count(*)::int from food) as food, (select count(*)::int from base) as base, (select count(*)::int from base_ingredient) as "baseIngredient",
    (select count(*)::int from dish) as dish, (select count(*)::int from dish_base) as "dishBase",
    (select count(*)::int from dish_ingredient) as "dishIngredient", (select count(*)::int from dish_step) as "dishStep"`;
  return row!;
};
const lastChange = async () =>
  (await database.owner<{ xmin: string }[]>`select max(xmin::text::bigint)::text as xmin from dish_step`)[0]!.xmin;

const copies: string[] = [];
afterAll(() => copies.forEach((directory) => rmSync(directory, { recursive: true })));

/** A copy of the reference files in which one of them was changed. */
function changedFiles(file: string, change: (text: string) => string): string {
  const directory = mkdtempSync(join(tmpdir(), "noonpail-seeds-"));
  copies.push(directory);
  cpSync("seeds/reference", directory, { recursive: true });
  writeFileSync(join(directory, file), change(readFileSync(join(directory, file), "utf8")));
  return directory;
}

describe("reference data", () => {
  test("what the planner reads from the database is what the files say, part by part and in order", async () => {
    const files = readCatalogueFiles();
    const { catalogue, choking, holding } = await readReference(database.owner);
    const byKey = <T extends { key: string }>(rows: readonly T[]) => [...rows].sort((a, b) => (a.key < b.key ? -1 : 1));
    expect(byKey(catalogue.foods)).toEqual(byKey(files.foods));
    expect(byKey(catalogue.bases)).toEqual(byKey(files.bases));
    expect(byKey(catalogue.dishes)).toEqual(byKey(files.dishes));
    expect(catalogue.retention).toEqual(files.retention);
    expect(choking).toEqual(
      (JSON.parse(readFileSync("seeds/reference/choking.json", "utf8")) as { rules: unknown }).rules,
    );
    const { limits } = JSON.parse(readFileSync("seeds/reference/holding-limits.json", "utf8")) as { limits: object };
    const model = holdingModelFile.parse(JSON.parse(readFileSync("seeds/reference/holding-model.json", "utf8")));
    expect(holding).toEqual({ ...limits, model });
  });

  test("loading the same files again writes nothing", async () => {
    const before = [await countRows(), await lastChange()];
    expect((await seedReference(database.ownerUrl)).changed).toBe(false);
    expect([await countRows(), await lastChange()]).toEqual(before);
  });

  test("a changed file gives a new version; rows keep their ids, parts are not doubled", async () => {
    const [{ counts, ids }] = [
      { counts: await countRows(), ids: await database.owner`select key, id from dish order by key` },
    ];
    const old = (await readReference(database.owner)).catalogue.version;
    const directory = changedFiles("dishes/sides.json", (text) =>
      text.replace(/"name": "[^"]+"/, '"name": "Renamed for this test"'),
    );
    const { changed, version } = await seedReference(database.ownerUrl, directory);
    expect(changed).toBe(true);
    expect(version).not.toBe(old);
    expect(await countRows()).toEqual(counts);
    expect(await database.owner`select key, id from dish order by key`).toEqual(ids);
    expect(await database.owner`select 1 from dish where name = 'Renamed for this test'`).toHaveLength(1);
    expect((await seedReference(database.ownerUrl)).version).toBe(old);
    expect(await database.owner`select 1 from dish where name = 'Renamed for this test'`).toHaveLength(0);
  });

  test("a food that left the files stays only while a cupboard holds it", async () => {
    const person = await database.newPerson("Ada");
    const home = await database.newHousehold(person);
    await database.owner`insert into food (key, name, kind, food_group, packaged, nutrients, free_sugar_grams, refuse_percent, measures, pack_grams, price_minor, shop_section, whole_grain)
      select unnest(array['gone-held', 'gone-unheld']), 'Gone', 'gone', 'FRUIT', false, '{}', 0, 0, '[]', 100, 100, 'PRODUCE', false`;
    await database.owner`insert into stock (household_id, food_id, grams) select ${home}, id, 50 from food where key = 'gone-held'`;
    await database.owner`update reference_table set version = 'older' where key = 'catalogue'`;
    await seedReference(database.ownerUrl);
    expect(await database.owner`select key from food where key like 'gone-%'`).toEqual([{ key: "gone-held" }]);
  });

  test("a dish that names a food nobody described is refused before anything is written", async () => {
    const before = await lastChange();
    const directory = changedFiles("dishes/mains.json", (text) =>
      text.replace(/"food": "[^"]+"/, '"food": "moon-cheese"'),
    );
    await expect(seedReference(database.ownerUrl, directory)).rejects.toThrow(
      "names the food moon-cheese, which is not there",
    );
    expect(await lastChange()).toBe(before);
  });

  test("how an ingredient is cooked is kept, and a code that no table has is refused before anything is written", async () => {
    const cooked = (code: string) =>
      changedFiles("dishes/mains.json", (text) =>
        text.replace(/"food": "([^"]+)"/, `"food": "$1", "retention": "${code}"`),
      );
    const before = await lastChange();
    await expect(seedReference(database.ownerUrl, cooked("9999"))).rejects.toThrow(
      "names the retention code 9999, which is not there",
    );
    expect(await lastChange()).toBe(before);
    await seedReference(database.ownerUrl, cooked("3775"));
    const { catalogue } = await readReference(database.owner);
    const kept = catalogue.dishes.flatMap(({ ingredients }) => ingredients).filter(({ retention }) => retention);
    expect(kept.some(({ retention }) => retention === "3775")).toBe(true);
    await seedReference(database.ownerUrl);
  });

  test("a figure outside its range is refused with the file and the field", async () => {
    const directory = changedFiles("holding-limits.json", (text) =>
      text.replace('"chilledMinutes": 240', '"chilledMinutes": -1'),
    );
    await expect(seedReference(database.ownerUrl, directory)).rejects.toThrow(
      /holding-limits\.json cannot be used:[\s\S]*limits\.chilledMinutes/,
    );
  });
});

describe("demonstration", () => {
  test("never enters a database in which a family lives", async () => {
    expect(await database.owner`select 1 from household`).not.toHaveLength(0);
    expect(await seedDemo(database.ownerUrl)).toBe(false);
    expect(await database.owner`select 1 from person where subject like 'demo:%'`).toHaveLength(0);
  });
});
