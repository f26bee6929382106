import { describe, expect, it } from "@jest/globals";
import fc from "fast-check";
import {
  dailyNeeds,
  energyNeedKcal,
  proteinNeedGrams,
  tableEnergyKcal,
  type EnergyInput,
} from "../../src/domain/nutrition/needs.js";
import { sampleChild } from "./sample-rows.js";

const boy8: EnergyInput = {
  sex: "MALE",
  ageYears: 8,
  weightKg: 25.6,
  heightCm: 128,
  activity: "LOW_ACTIVE",
  method: "IOM_2005",
};
const girl10: EnergyInput = {
  sex: "FEMALE",
  ageYears: 10,
  weightKg: 33,
  heightCm: 138,
  activity: "ACTIVE",
  method: "IOM_2005",
};

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
          // The NASEM equations were fitted level by level and do cross, for a boy of three between low active and active.
          const needs = inputs.map(kcal);
          if (method === "IOM_2005") expect(needs).toEqual([...needs].sort((a, b) => a - b));
        },
      ),
    );
  });
});

describe("protein need", () => {
  // Outside: IOM 2002/2005 per kg, National Academies tables per day (EN-7): both 19 g.
  it("of a child of six with 20 kg is the same by weight and by table", () => {
    expect(proteinNeedGrams(6, 20, 19)).toBeCloseTo(19.0, 10);
    expect(dailyNeeds(sampleChild({ dateOfBirth: "2020-01-01", sex: "MALE" }), "2026-09-07").proteinGrams).toBe(19);
  });
});

describe("daily needs", () => {
  const onDate = "2026-09-07";

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
      sodiumMaxMg: 1800,
    });
    expect(needs.proteinGrams).toBeCloseTo(43.7, 10);
    expect(needs.saturatedFatMaxGrams).toBeCloseTo(2238.02 / 90, 3);
    expect(needs.freeSugarMaxGrams).toBeCloseTo(2238.02 / 40, 3);
    expect(needs.sources.energy).toContain("NASEM 2023");
  });

  it("fall back to the printed table when body size is not given, and say so", () => {
    const needs = dailyNeeds(sampleChild({ dateOfBirth: "2022-01-10", sex: "MALE", activity: "VERY_ACTIVE" }), onDate);
    expect(needs).toMatchObject({ method: "DGA_TABLE", energyKcal: 1600, proteinGrams: 19, fibreGrams: 25 });
    expect(needs.sources.energy).toContain("Dietary Guidelines");
  });

  it("take the mean energy and the larger recommendation when the sex is not given", () => {
    const needs = dailyNeeds(
      sampleChild({ dateOfBirth: "2010-09-07", activity: "ACTIVE", weightKg: null, heightCm: null }),
      onDate,
    );
    expect(needs).toMatchObject({
      method: "DGA_TABLE",
      energyKcal: 2800,
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
    expect(typo.method).toBe("DGA_TABLE");
  });

  it("change band on the birthday", () => {
    const child = sampleChild({ dateOfBirth: "2017-09-08", sex: "MALE" });
    expect(dailyNeeds(child, "2026-09-07").calciumMg).toBe(1000);
    expect(dailyNeeds(child, "2026-09-08").calciumMg).toBe(1300);
  });
});
