import { checkRuleSet, readRuleSetDocument, type RuleSetPlace } from "../../src/app/check-rule-set.js";
import { MOST_ISSUES } from "../../src/app/document-shape.js";
import { place, seedWords } from "../support/rule-documents.js";
import { seedDocuments, spoil } from "../support/spoiled-documents.js";

const words = seedWords();
const COPIES = 30;

describe("spoiled copies of the rule sets that are shipped", () => {
  it("there are as many as there are files", () => expect(seedDocuments.length).toBeGreaterThanOrEqual(12));

  it.each(seedDocuments)("$name: each is read, or refused with reasons that have a line", ({ text }) => {
    const at: RuleSetPlace = { ...place, layer: (JSON.parse(text) as { layer: "SCHOOL" }).layer };
    const answers = Array.from({ length: COPIES }, (_, seed) => {
      const spoiled = spoil(text, seed);
      const { document, errors, warnings } = checkRuleSet(readRuleSetDocument(spoiled), words, at);
      if (document === null) expect(errors.length).toBeGreaterThan(0);
      expect(errors.length).toBeLessThanOrEqual(MOST_ISSUES + 1);
      const lines = spoiled.split("\n").length;
      for (const { line, problem, expected } of [...errors, ...warnings]) {
        expect(Number.isInteger(line) && line >= 1 && line <= lines).toBe(true);
        expect(problem).not.toBe("");
        expect(expected).not.toBe("");
        expect(`${problem} ${expected}`).not.toMatch(/\bundefined\b|\[object|call stack|Flow |scalar|zod/);
      }
      return document === null ? "refused" : "read";
    });
    // Neither a checker that takes everything nor one that takes nothing.
    expect(new Set(answers).size).toBe(2);
  });
});
