import { describe, expect, it } from "@jest/globals";
import fc from "fast-check";
import {
  dailyNeeds,
  energyNeedKcal,
  proteinNeedGrams,
  tableEnergyKcal,
  type EnergyInput,
} from "../../src/domain/nutrition/needs.js";
import { isMet } from "../../src/cli/food-checks/check.js";
import { boy8, girl10, needsChecks } from "../../src/cli/food-checks/needs.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { nutrientsGiven } from "../../src/domain/nutrition/given-food.js";
import { shareOfBreak } from "../../src/domain/nutrition/meal-share.js";
import { readMealShares } from "./reference-rows.js";
import { sampleChild, sampleDay, sampleDish, sampleFood } from "./sample-rows.js";

function kcal(input: EnergyInput): number {
  const need = energyNeedKcal(input);
  if (!need.ok) throw new Error(JSON.stringify(need.error));
  return need.value;
}

describe("energy need by equation", () => {
  // Outside: IOM 2002/2005 equations; expected values worked from them by hand (EN-1, EN-2, EN-3).
  it("of a boy of 8 and a girl of 10 is what the IOM equations give", () => {
    expect(Math.abs(kcal(boy8) - 1691.78)).toBeLessThan(0.5);
    expect(Math.abs(kcal(girl10) - 1973.09)).toBeLessThan(0.5);
  });
  it("of a child of two does not ask for activity", () => {
    for (const activity of ["INACTIVE", "VERY_ACTIVE"] as const) {
      for (const sex of ["FEMALE", "MALE"] as const) {
        const two: EnergyInput = { sex, ageYears: 2, weightKg: 12.5, heightCm: 86, activity, method: "IOM_2005" };
        expect(Math.abs(kcal(two) - 1032.5)).toBeLessThan(0.1);
      }
    }
  });

  // Outside: NASEM 2023 equations; expected values worked from them by hand (EN-4, EN-5).
  it("of the same two children is what the NASEM equations give, height in centimetres", () => {
    expect(Math.abs(kcal({ ...boy8, method: "NASEM_2023" }) - 1686.09)).toBeLessThan(0.5);
    expect(Math.abs(kcal({ ...girl10, method: "NASEM_2023" }) - 1843.29)).toBeLessThan(0.5);
  });

  // Outside: Health Canada's page of the NASEM equations (base) with growth 20 and 15 kcal: worked here by hand.
  // Boy of 2, 87 cm, 12 kg: -716.45 - 2 + 1550.34 + 180.72 + 20 = 1032.61. Girl of 2, 86 cm, 11.5 kg: -69.15 + 160 + 227.9 + 622.725 + 15 = 956.475.
  it("of two-year-olds follows the equations for the youngest", () => {
    const two = { ageYears: 2, activity: "ACTIVE", method: "NASEM_2023" } as const;
    expect(kcal({ ...two, sex: "MALE", weightKg: 12, heightCm: 87 })).toBeCloseTo(1032.61, 2);
    expect(kcal({ ...two, sex: "FEMALE", weightKg: 11.5, heightCm: 86 })).toBeCloseTo(956.475, 3);
  });

  // Outside: Dietary Guidelines for Americans, estimated calorie needs (EN-6).
  it("rounded to 200 kcal is the printed cell of the Dietary Guidelines", () => {
    expect(Math.round(kcal(boy8) / 200) * 200).toBe(tableEnergyKcal("MALE", 8, "LOW_ACTIVE"));
    expect(tableEnergyKcal("MALE", 8, "LOW_ACTIVE")).toBe(1600);
    expect(Math.round(kcal(girl10) / 200) * 200).toBe(tableEnergyKcal("FEMALE", 10, "ACTIVE"));
    expect(tableEnergyKcal("FEMALE", 10, "ACTIVE")).toBe(2000);
  });

  it("is refused with the limits outside the ages and sizes the equations are for", () => {
    expect(energyNeedKcal({ ...boy8, ageYears: 19 })).toEqual({
      ok: false,
      error: { kind: "OutOfRange", field: "ageYears", min: 13 / 12, max: 19 },
    });
    expect(energyNeedKcal({ ...boy8, ageYears: 0.9, method: "NASEM_2023" })).toMatchObject({
      ok: false,
      error: { field: "ageYears", min: 1 },
    });
    expect(energyNeedKcal({ ...boy8, heightCm: 1.28 })).toMatchObject({ ok: false, error: { field: "heightCm" } });
    expect(energyNeedKcal({ ...boy8, weightKg: Number.NaN })).toMatchObject({
      ok: false,
      error: { field: "weightKg" },
    });
  });

  it("grows with weight and height from three years, and by the IOM equations with activity", () => {
    const levels = ["INACTIVE", "LOW_ACTIVE", "ACTIVE", "VERY_ACTIVE"] as const;
    fc.assert(
      fc.property(
        fc.constantFrom("FEMALE" as const, "MALE" as const),
        fc.constantFrom("NASEM_2023" as const, "IOM_2005" as const),
        fc.integer({ min: 3, max: 18 }),
        fc.integer({ min: 12, max: 90 }),
        fc.integer({ min: 90, max: 190 }),
        (sex, method, ageYears, weightKg, heightCm) => {
          const inputs = levels.map((activity): EnergyInput => ({
            sex,
            method,
            ageYears,
            weightKg,
            heightCm,
            activity,
          }));
          for (const input of inputs) {
            expect(kcal({ ...input, weightKg: weightKg + 1 })).toBeGreaterThan(kcal(input));
            expect(kcal({ ...input, heightCm: heightCm + 1 })).toBeGreaterThan(kcal(input));
          }
          const needs = inputs.map(kcal);
          if (method === "IOM_2005") expect(needs).toEqual([...needs].sort((a, b) => a - b));
        },
      ),
    );
  });

  // Outside: NASEM 2023, needs at reference sizes: 1220 kcal low active and 1216 active for boys of three, rising everywhere else.
  it("rises with activity at median size from three years, but for boys of three between low active and active", () => {
    const levels = ["INACTIVE", "LOW_ACTIVE", "ACTIVE", "VERY_ACTIVE"] as const;
    const falls: string[] = [];
    for (const sex of ["FEMALE", "MALE"] as const) {
      for (let age = 3; age <= 18; age += 1) {
        const needs = levels.map(
          (activity) =>
            dailyNeeds(sampleChild({ dateOfBirth: `${2026 - age}-09-07`, sex, activity }), onDate).energyKcal,
        );
        needs.forEach((need, level) => {
          if (level > 0 && need < needs[level - 1]!) falls.push(`${sex} ${age} ${levels[level]}`);
        });
      }
    }
    expect(falls).toEqual(["MALE 3 ACTIVE"]);
  });
});

const onDate = "2026-09-07";

describe("protein need", () => {
  // Outside: IOM 2002/2005 per kg, National Academies tables per day (EN-7): both 19 g.
  it("of a child of six with 20 kg is the same by weight and by table", () => {
    expect(proteinNeedGrams(6, 20, 19)).toBeCloseTo(19.0, 10);
    expect(dailyNeeds(sampleChild({ dateOfBirth: "2020-01-01", sex: "MALE" }), "2026-09-07").proteinGrams).toBe(19);
  });
});

describe("daily needs", () => {
  // Outside: National Academies DRI tables; NASEM 2019 sodium; WHO 2023 and 2015 shares of energy.
  it("of a measured girl of 13 stand beside the tables", () => {
    const needs = dailyNeeds(
      sampleChild({ dateOfBirth: "2013-09-07", sex: "FEMALE", weightKg: 46, heightCm: 157, activity: "ACTIVE" }),
      onDate,
    );
    expect(needs.method).toBe("NASEM_2023");
    // -189.55 - 22.25 x 13 + 11.74 x 157 + 18.34 x 46 + 30
    expect(needs.energyKcal).toBeCloseTo(2238.02, 2);
    expect(needs).toMatchObject({
      fibreGrams: 26,
      calciumMg: 1300,
      ironMg: 8,
      zincMg: 8,
      vitaminARaeUg: 600,
      vitaminCMg: 45,
      folateDfeUg: 300,
      sodiumMaxMg: 1800,
    });
    expect(needs.inputs).toEqual({
      ageYears: 13,
      sex: "FEMALE",
      weightKg: 46,
      heightCm: 157,
      activity: "ACTIVE",
      assumed: [],
    });
    expect(needs.addedSugarMaxGrams).toBeCloseTo(2238.02 / 40, 3);
    expect(needs.upperLevels.map(({ nutrient, amount }) => [nutrient, amount])).toEqual([
      ["CA", 3000],
      ["FE", 40],
      ["ZN", 23],
      ["RETINOL", 1700],
      ["FOLIC_ACID", 600],
    ]);
    expect(needs.proteinGrams).toBeCloseTo(43.7, 10);
    expect(needs.saturatedFatMaxGrams).toBeCloseTo(2238.02 / 90, 3);
    expect(needs.freeSugarMaxGrams).toBeCloseTo(2238.02 / 40, 3);
    expect(needs.sources.energy).toContain("NASEM 2023");
  });

  // Outside: CDC growth charts (2000), medians at 96.5 months: boys 128.1 cm and 25.8 kg, girls 127.8 cm and 25.8 kg.
  it("take the median body of the age when none is given, and say so", () => {
    const boy = sampleChild({ dateOfBirth: "2018-08-23", sex: "MALE", activity: "LOW_ACTIVE" });
    const needs = dailyNeeds(boy, onDate);
    expect(needs).toMatchObject({ method: "NASEM_2023", proteinGrams: 19, fibreGrams: 25 });
    expect(needs.inputs.assumed).toEqual(["weightKg", "heightCm"]);
    expect(needs.inputs.heightCm).toBeCloseTo(128.1, 1);
    expect(needs.inputs.weightKg).toBeCloseTo(25.8, 1);
    expect(needs.sources.bodySize).toContain("CDC growth charts");
    // 19.12 + 3.68 x 8.04 + 8.62 x 128.1 + 20.28 x 25.8 + 15
    expect(Math.abs(needs.energyKcal - 1691.2)).toBeLessThan(1);
    const girl = dailyNeeds({ ...boy, sex: "FEMALE" }, onDate);
    expect(girl.inputs.heightCm).toBeCloseTo(127.8, 1);
  });

  it("keep the size that is given and take the median of the other", () => {
    const needs = dailyNeeds(
      sampleChild({ dateOfBirth: "2018-09-07", sex: "FEMALE", weightKg: 31, heightCm: null }),
      onDate,
    );
    expect(needs.inputs).toMatchObject({ weightKg: 31, assumed: ["heightCm"] });
    expect(needs.proteinGrams).toBeCloseTo(0.95 * 31, 10);
  });

  it("come from the equation the household chose", () => {
    const boy = sampleChild({ dateOfBirth: "2018-09-07", sex: "MALE", weightKg: 25.6, heightCm: 128 });
    const [nasem, iom] = [dailyNeeds(boy, onDate), dailyNeeds(boy, onDate, "IOM_2005")];
    expect(nasem.method).toBe("NASEM_2023");
    expect(iom).toMatchObject({ method: "IOM_2005" });
    expect(iom.energyKcal).toBeCloseTo(1691.78, 2);
    expect(iom.sources.energy).toContain("IOM 2002/2005");
    expect(iom.calciumMg).toBe(nasem.calciumMg);
  });

  // Outside: Dietary Guidelines for Americans, 18 years, women, active.
  it("of a pupil too old for the equations come from the printed table, and say so", () => {
    const needs = dailyNeeds(sampleChild({ dateOfBirth: "2007-01-10", sex: "FEMALE", activity: "ACTIVE" }), onDate);
    expect(needs).toMatchObject({ method: "DGA_TABLE", energyKcal: 2400 });
    expect(needs.sources.energy).toContain("Dietary Guidelines");
  });

  it("take the mean energy and the larger recommendation when the sex is not given", () => {
    const teenager = sampleChild({ dateOfBirth: "2010-09-07", activity: "ACTIVE", weightKg: null, heightCm: null });
    const needs = dailyNeeds(teenager, onDate);
    const either = (["FEMALE", "MALE"] as const).map((sex) => dailyNeeds({ ...teenager, sex }, onDate).energyKcal);
    expect(needs.energyKcal).toBeCloseTo((either[0]! + either[1]!) / 2, 6);
    expect(needs.inputs.assumed).toEqual(["sex", "weightKg", "heightCm"]);
    expect(needs).toMatchObject({
      method: "NASEM_2023",
      ironMg: 15,
      vitaminARaeUg: 900,
      fibreGrams: 38,
      proteinGrams: 52,
    });
  });

  it("do not trust a height typed in metres", () => {
    const typo = dailyNeeds(
      sampleChild({ dateOfBirth: "2018-01-01", sex: "MALE", weightKg: 25.6, heightCm: 1.28 }),
      onDate,
    );
    expect(typo.inputs.assumed).toEqual(["heightCm"]);
    expect(typo.inputs.heightCm).toBeGreaterThan(120);
  });

  it("change band on the birthday", () => {
    const child = sampleChild({ dateOfBirth: "2017-09-08", sex: "MALE" });
    expect(dailyNeeds(child, "2026-09-07").calciumMg).toBe(1000);
    expect(dailyNeeds(child, "2026-09-08").calciumMg).toBe(1300);
  });
});

describe("what a break is for", () => {
  const shares = readMealShares();
  // Outside: England and Wales nutrient-based standards of 2008-09: 30 % of the day's energy.
  it("is a lunch of 30 % of the day and a snack of 8 %, where the school says nothing", () => {
    expect(shareOfBreak({ slots: ["MAIN", "FRUIT"], energyShare: null }, shares)).toMatchObject({ share: 0.3 });
    expect(shareOfBreak({ slots: ["FRUIT"], energyShare: null }, shares)).toMatchObject({ share: 0.08 });
    for (const slots of [["MAIN"], ["FRUIT"]] as const)
      expect(shareOfBreak({ slots, energyShare: null }, shares).source).toMatch(/our estimate/);
  });
  it("is what the school says, where it says so", () => {
    expect(shareOfBreak({ slots: ["MAIN"], energyShare: 0.35 }, shares)).toEqual({
      share: 0.35,
      source: "given by the school",
    });
  });
  it("stays between the shares that were published", () => {
    const published = shares.published.map(({ energyShare }) => energyShare);
    expect(shares.usual.lunch.energyShare).toBeGreaterThanOrEqual(Math.min(...published));
    expect(shares.usual.lunch.energyShare).toBeLessThanOrEqual(Math.max(...published));
  });
});

describe("what the school gives", () => {
  const milk = sampleFood("milk", {
    kind: "cow-milk",
    allergens: ["MILK"],
    nutrients: { ENERC_KCAL: 61, CA: 113, NA: 43, FASAT: 1.9 },
    freeSugarGrams: 0,
  });
  const foodOf = (key: string) => (key === "milk" ? milk : undefined);
  const pause = (key: string, energyShare: number) => ({
    key,
    name: key,
    startsAt: "10:00",
    minutes: 15,
    slots: [],
    energyShare,
  });
  const breaks = [pause("morning", 0.1), pause("lunch", 0.3)];
  const day = (given: NonNullable<ReturnType<typeof sampleDay>["given"]>) => sampleDay(onDate, { breaks, given });

  it("counts by its grams, and at a break by the break's part of the day", () => {
    const given = day([{ food: "milk", grams: 200 }]);
    expect(nutrientsGiven(given, [], foodOf).of("CA")).toBeCloseTo(226, 10);
    expect(nutrientsGiven(given, [], foodOf, "morning").of("CA")).toBeCloseTo(226 / 4, 10);
    expect(nutrientsGiven(given, [], foodOf, "lunch").of("CA")).toBeCloseTo((226 * 3) / 4, 10);
  });
  it("belongs to its own break, and is nothing when that break is dropped", () => {
    const atMorning = day([{ food: "milk", grams: 200, breakKey: "morning" }]);
    expect(nutrientsGiven(atMorning, [], foodOf, "morning").of("CA")).toBeCloseTo(226, 10);
    expect(nutrientsGiven(atMorning, [], foodOf, "lunch").of("CA")).toBe(0);
    expect(nutrientsGiven(day([{ food: "milk", grams: 200, breakKey: "club" }]), [], foodOf).of("CA")).toBe(0);
  });
  it("is not counted on for a child who avoids it, by allergen or by food", () => {
    const given = day([{ food: "milk", grams: 200 }]);
    for (const allergy of [
      { allergen: "MILK", foodKind: null },
      { allergen: null, foodKind: "cow-milk" },
    ] as const)
      expect(nutrientsGiven(given, [{ ...allergy, avoid: "INGREDIENTS" }], foodOf).of("CA")).toBe(0);
    expect(nutrientsGiven(given, [{ allergen: "EGG", foodKind: null, avoid: "TRACES" }], foodOf).of("CA")).toBeCloseTo(
      226,
    );
  });
});

describe("published needs", () => {
  const index = indexCatalogue({
    version: "sample",
    foods: [sampleFood("sample")],
    bases: [],
    dishes: [sampleDish("plain")],
    retention: [],
  });
  it.each(needsChecks(index).map((check) => [check.id, check] as const))(
    "%s is what the product answers",
    (_, check) => {
      expect([check, isMet(check)]).toEqual([check, true]);
    },
  );
});
