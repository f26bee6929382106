import { describe, expect, it } from "@jest/globals";
import fc from "fast-check";
import { allergenCode } from "../../shared/codes.js";
import { allergenChecks } from "../../src/cli/food-checks/allergens.js";
import { isMet } from "../../src/cli/food-checks/check.js";
import { judgeAllergies } from "../../src/domain/catalogue/allergens.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { classesInForce, declaredUnder } from "../../src/domain/catalogue/label-law.js";
import { readLabelLaws } from "./reference-rows.js";
import { dishOf, sampleDish, sampleFood } from "./sample-rows.js";

const laws = readLabelLaws();
const lawOf = (key: string) => laws.find((law) => law.key === key)!;
const today = "2026-11-25";

describe("label laws", () => {
  const index = indexCatalogue({
    version: "sample",
    foods: [sampleFood("sample")],
    bases: [],
    dishes: [sampleDish("plain")],
    retention: [],
  });
  it.each(allergenChecks(laws, index).map((check) => [check.id, check] as const))(
    "%s is what the law was read to say",
    (_, check) => {
      expect([check, isMet(check)]).toEqual([check, true]);
    },
  );

  // Outside: FASTER Act of 2021.
  it("name sesame in the United States from 1 January 2023 on", () => {
    const food = { kind: "sesame", allergens: ["SESAME"] as const };
    expect(declaredUnder(lawOf("us"), food, "2022-12-31")[0]!.status).toBe("NOT_NAMED");
    expect(declaredUnder(lawOf("us"), food, "2023-01-01")[0]!.status).toBe("NAMED");
  });

  it("that were read in part never say that something need not be named", () => {
    const partly = laws.filter(({ incomplete }) => incomplete);
    expect(partly.map(({ key }) => key)).toEqual(["in"]);
    const statuses = declaredUnder(lawOf("in"), { kind: "x", allergens: allergenCode.options }, today);
    expect(statuses.filter(({ status }) => status === "NOT_NAMED")).toEqual([]);
    expect(statuses.find(({ subject }) => subject === "SOYA")!.status).toBe("UNKNOWN");
  });

  it("name an allergen whose amount is not known, and let one below the limit pass", () => {
    const wine = { kind: "grape", allergens: ["SULPHITES"] as const };
    expect(declaredUnder(lawOf("eu"), wine, today)[0]!.status).toBe("NAMED");
    expect(declaredUnder(lawOf("eu"), { ...wine, sulphitesMgPerKg: 9.9 }, today)[0]!.status).toBe("NOT_NAMED");
    expect(declaredUnder(lawOf("eu"), { ...wine, sulphitesMgPerKg: 10 }, today)[0]!.status).toBe("NAMED");
  });

  it("name a nut that has no code of ours by its kind", () => {
    const hickory = { kind: "hickory-nut", allergens: [] };
    expect(declaredUnder(lawOf("us"), hickory, "2025-01-05")[0]).toMatchObject({
      subject: "hickory-nut",
      status: "NAMED",
      class: "TREE_NUTS",
    });
    expect(declaredUnder(lawOf("us"), hickory, today)[0]!.status).toBe("NOT_NAMED");
    expect(declaredUnder(lawOf("us"), { kind: "heartnut", allergens: [] }, today)[0]!.status).toBe("NAMED");
    expect(declaredUnder(lawOf("us"), { kind: "apple", allergens: [] }, today)).toEqual([]);
  });

  it("know every allergen that any of the complete laws names, by one name", () => {
    const named = new Set(
      laws.flatMap((law) =>
        classesInForce(law, today).flatMap(({ members }) => members.flatMap((m) => m.allergen ?? [])),
      ),
    );
    expect(allergenCode.options.filter((code) => !named.has(code))).toEqual(["COCONUT", "CHESTNUT"]);
  });
});

describe("a child's own list", () => {
  it("protects a child who avoids coconut though no law's list names it", () => {
    const curry = dishOf([sampleFood("rice"), sampleFood("coconut-milk", { kind: "coconut", allergens: ["COCONUT"] })]);
    for (const law of laws)
      expect(declaredUnder(law, { kind: "coconut", allergens: ["COCONUT"] }, today)[0]!.status).not.toBe("NAMED");
    for (const avoid of ["TRACES", "INGREDIENTS"] as const)
      expect(judgeAllergies([{ allergen: "COCONUT", foodKind: null, avoid }], curry, [])).toMatchObject({
        kind: "CONTAINS",
        food: "coconut-milk",
      });
  });

  it("is kept whatever a law says of the food: exempt, too little, or not on the list", () => {
    fc.assert(
      fc.property(fc.constantFrom(...allergenCode.options), fc.constantFrom(...laws), (allergen, law) => {
        const food = sampleFood("food", { allergens: [allergen] });
        const [said] = declaredUnder(law, food, today);
        expect(said).toMatchObject({ subject: allergen });
        const child = [{ allergen, foodKind: null, avoid: "INGREDIENTS" as const }];
        expect(judgeAllergies(child, dishOf([food]), []).kind).toBe("CONTAINS");
      }),
    );
  });
});
