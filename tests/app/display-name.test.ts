import { nameAtFirstSight } from "../../src/app/display-name.js";

describe("the name somebody has when first seen", () => {
  test("is the token's, else the subject", () => {
    expect(nameAtFirstSight("Ana Lark", "auth|1")).toBe("Ana Lark");
    for (const nothing of [null, "", "  ", "\u0000\u0007", "\u202e"])
      expect(nameAtFirstSight(nothing, "auth|1")).toBe("auth|1");
    expect(nameAtFirstSight(null, "\u0001")).toBe("Carer");
  });

  test("stands on one line, without what does not show or turns the text after it", () => {
    expect(nameAtFirstSight("  Ana\r\n\tLark ", "-")).toBe("Ana Lark");
    expect(nameAtFirstSight("A\u0000n\u001ba\u009f \ud83dLark", "-")).toBe("Ana Lark");
    // Unicode Standard Annex 9, section 2: embeddings, overrides and isolates.
    expect(nameAtFirstSight("Ana \u202Ekral\u202C \u2066x\u2069", "-")).toBe("Ana kral x");
    // A joiner that holds one picture of two together stays.
    expect(nameAtFirstSight("Ana 👩‍🍳", "-")).toBe("Ana 👩‍🍳");
  });

  test("has at most 80 characters, none of them cut in two", () => {
    expect(nameAtFirstSight("x".repeat(200), "-")).toBe("x".repeat(80));
    expect(nameAtFirstSight(`${"x".repeat(79)}🍏`, "-")).toBe("x".repeat(79));
    expect(nameAtFirstSight(`${"x".repeat(78)}🍏🍏`, "-")).toBe(`${"x".repeat(78)}🍏`);
    expect(nameAtFirstSight(`${"x".repeat(79)} y`, "-")).toBe("x".repeat(79));
    expect(nameAtFirstSight(null, "s".repeat(255))).toBe("s".repeat(80));
  });
});
