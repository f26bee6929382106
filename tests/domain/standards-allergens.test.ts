/** What "nut-free and sesame-free" shuts out, held against the lists of the label laws. */
import type { AllergenCode } from "../../shared/codes.js";
import type { Food } from "../../shared/catalogue.js";
import { classesInForce } from "../../src/domain/catalogue/label-law.js";
import { readCatalogue, readLabelLaws } from "./reference-rows.js";
import { everyDay, faultsOf, food, readDocument, schoolDays, type ChildWeek } from "./standards-week.js";

const document = readDocument("wrenhollow-kindergarten.json");
const day = schoolDays("2027-01-11", 1);

/** Whether the class's rule keeps out an item with this food in it. */
function isShutOut(row: Food, labels: ChildWeek["labels"] = []): boolean {
  const boxes = everyDay(day, { grams: { [row.key]: 30 } });
  return faultsOf("no-nuts-no-sesame", { document, bornOn: "2021-03-01", foods: [row], boxes, labels }).length > 0;
}
const named = (allergen: AllergenCode): Food =>
  food("ingredient", { kind: allergen.toLowerCase(), allergens: [allergen] });

/** Regulation (EU) No 1169/2011, Annex II, as adopted in the United Kingdom too: eight nuts. */
const euNuts: readonly AllergenCode[] = [
  "ALMOND",
  "HAZELNUT",
  "WALNUT",
  "CASHEW",
  "PECAN",
  "BRAZIL_NUT",
  "PISTACHIO",
  "MACADAMIA",
];
/** Health Canada, food allergen labelling: nine. */
const canadaNuts: readonly AllergenCode[] = [...euNuts, "PINE_NUT"];
/** FDA, questions and answers on food allergen labelling, 5th edition, 6 January 2025: twelve, three of them other walnuts. */
const usWalnuts = ["black-walnut", "california-walnut", "heartnut"];

describe("a nut- and sesame-free class", () => {
  it.each([
    ["the European Union and the United Kingdom", euNuts, 8],
    ["Canada", canadaNuts, 9],
    ["the United States, but for the walnuts of other kinds", canadaNuts, 9],
  ] as const)("shuts out every nut on the list of %s", (_, nuts, count) => {
    expect(nuts).toHaveLength(count);
    expect(nuts.filter((nut) => !isShutOut(named(nut)))).toEqual([]);
  });
  it("shuts out the walnuts that the list of the United States names besides", () => {
    expect(canadaNuts.length + usWalnuts.length).toBe(12);
    expect(usWalnuts.filter((kind) => !isShutOut(food("ingredient", { kind })))).toEqual([]);
  });
  it("shuts out peanut, which is no tree nut, and sesame, on the US list since 1 January 2023", () => {
    expect(isShutOut(named("PEANUT"))).toBe(true);
    expect(isShutOut(named("SESAME"))).toBe(true);
  });
  it("shuts out what only a label names, as an ingredient or as a may-contain", () => {
    const label = { food: "ingredient", readOn: "2027-01-01", contains: [], mayContain: [] };
    const plain = food("ingredient", {});
    expect([
      isShutOut(plain),
      isShutOut(plain, [label]),
      isShutOut(plain, [{ ...label, contains: ["CASHEW"] }]),
      isShutOut(plain, [{ ...label, mayContain: ["SESAME"] }]),
    ]).toEqual([false, false, true, true]);
  });
  it("shuts out whatever the laws of the seeds name as nut, peanut or sesame on a day in force", () => {
    const missed = readLabelLaws().flatMap((law) =>
      classesInForce(law, "2027-01-11")
        .filter(({ code }) => ["TREE_NUTS", "PEANUT", "SESAME"].includes(code))
        .flatMap(({ members }) => members)
        .filter(({ allergen, kind = "", name }) =>
          allergen ? !isShutOut(named(allergen)) : !isShutOut(food(name, { key: "ingredient", kind })),
        )
        .map(({ name }) => `${law.key}: ${name}`),
    );
    expect(missed).toEqual([]);
  });
  it("leaves alone what no list counts as a nut", () => {
    // FDA, 5th edition: coconut and chestnut no longer; nutmeg, water chestnut and butternut squash never (from memory).
    expect([
      ...(["COCONUT", "CHESTNUT", "MILK", "EGG", "WHEAT", "SOYA"] as const).map((code) => isShutOut(named(code))),
      ...["nutmeg", "water-chestnut", "squash"].map((kind) => isShutOut(food("ingredient", { kind }))),
    ]).toEqual(Array.from({ length: 9 }, () => false));
  });
  it("shuts out every nut, peanut and sesame food of the catalogue by its row", () => {
    const kinds = [
      ...["almond", "brazil-nut", "cashew", "hazelnut", "macadamia", "pecan", "pine-nut", "pistachio", "walnut"],
      ...["peanut", "sesame"],
    ];
    const rows = readCatalogue().foods.filter(({ kind }) => kinds.includes(kind));
    expect(new Set(rows.map(({ kind }) => kind)).size).toBe(kinds.length);
    expect(rows.filter((row) => !isShutOut(row)).map(({ key }) => key)).toEqual([]);
  });
});
