import { contentOf, documentDifference } from "../../src/domain/rules/document-difference.js";
import type { RuleSetDocument } from "../../shared/rule-set.js";
import { documentOf, noKiwi } from "../support/rule-documents.js";
import { drawRuleSet } from "../support/random-rules.js";

const noPear = {
  ...noKiwi,
  id: "no-pear",
  says: "No pear.",
  matches: { anyOf: [{ kinds: ["pear"], groups: ["FRUIT"] }] },
};
const before = documentOf({ rules: [noKiwi, noPear] });
const differ = (change: object) => documentDifference(before, documentOf({ rules: [noKiwi, noPear], ...change }));
const none = { fields: [], rules: [] };

/** The same document with every object's fields written the other way round. */
const turned = <T>(value: T): T =>
  (Array.isArray(value)
    ? value.map(turned)
    : typeof value === "object" && value !== null
      ? Object.fromEntries(
          Object.entries(value)
            .reverse()
            .map(([key, part]) => [key, turned(part)]),
        )
      : value) as T;

describe("the difference of two versions", () => {
  it("from nothing is every rule, and no field of the document", () => {
    const { fields, rules } = documentDifference(null, before);
    expect(fields).toEqual([]);
    expect(rules.map(({ kind, rule }) => [kind, rule.id])).toEqual([
      ["ADDED", "no-kiwi"],
      ["ADDED", "no-pear"],
    ]);
  });

  it("names the fields of the document with what they were and are", () => {
    const change = {
      title: "House rules again",
      inForceUntil: "2027-07-20",
      ages: { underYears: 8 },
      coversFoodFromHome: false,
    };
    expect(differ(change)).toEqual({
      fields: [
        { field: "title", before: '"House rules"', after: '"House rules again"' },
        { field: "coversFoodFromHome", before: "true", after: "false" },
        { field: "inForceUntil", before: null, after: '"2027-07-20"' },
        { field: "ages", before: null, after: '{"underYears":8}' },
      ],
      rules: [],
    });
  });

  it("of a withdrawal is every rule taken away", () => {
    const { fields, rules } = differ({ withdrawn: true, rules: [] });
    expect(fields).toEqual([{ field: "withdrawn", before: null, after: "true" }]);
    expect(rules.map(({ kind, rule }) => [kind, rule.id])).toEqual([
      ["REMOVED", "no-kiwi"],
      ["REMOVED", "no-pear"],
    ]);
  });

  it("names rules that are new, changed and gone: the newer's order, then those that are gone", () => {
    const noPlum = { ...noKiwi, id: "no-plum" };
    const { rules } = differ({ rules: [noPlum, { ...noPear, level: "ADVISE", weekdays: ["MONDAY"] }] });
    expect(rules).toMatchObject([
      { kind: "ADDED", rule: { id: "no-plum" } },
      {
        kind: "CHANGED",
        rule: { id: "no-pear", level: "ADVISE" },
        fields: [
          { field: "level", before: '"FORBID"', after: '"ADVISE"' },
          { field: "weekdays", before: null, after: '["MONDAY"]' },
        ],
      },
      { kind: "REMOVED", rule: { id: "no-kiwi", says: "No kiwi." } },
    ]);
  });

  it("of a rule of another kind under the same id names every field that came and went", () => {
    const { rules } = differ({ rules: [noKiwi, { ...noPear, kind: "SERVING", matches: undefined, litterFree: true }] });
    expect(rules).toMatchObject([
      {
        kind: "CHANGED",
        fields: [
          { field: "kind", before: '"EXCLUDE"', after: '"SERVING"' },
          { field: "matches", after: null },
          { field: "litterFree", before: null, after: "true" },
        ],
      },
    ]);
  });

  it("is none for another version, school, order of rules or order of fields", () => {
    expect(differ({ version: 7 })).toEqual(none);
    expect(differ({ school: "Fennel Hill School", schoolClass: "Badgers" })).toEqual(none);
    expect(differ({ rules: [noPear, noKiwi] })).toEqual(none);
    expect(documentDifference(before, turned(before))).toEqual(none);
  });

  it("is none for a field that is stated as what is meant without it", () => {
    expect(differ({ rules: [{ ...noKiwi, shortWeek: "PRORATE" }, noPear] })).toEqual(none);
  });

  it("takes the order inside a list as said", () => {
    const turnedAbout = { ...noPear, matches: { anyOf: [{ kinds: ["pear"] }, { groups: ["FRUIT"] }] } };
    const other = { ...turnedAbout, matches: { anyOf: [...turnedAbout.matches.anyOf].reverse() } };
    const { rules } = documentDifference(documentOf({ rules: [turnedAbout] }), documentOf({ rules: [other] }));
    expect(rules).toMatchObject([{ kind: "CHANGED", fields: [{ field: "matches" }] }]);
  });
});

describe("the content of a document", () => {
  it("is the same whatever its version, its place and the order of its fields, and not for anything else it says", () => {
    expect(contentOf({ ...before, version: 9, school: "Fennel Hill School", schoolClass: "Badgers" })).toBe(
      contentOf(before),
    );
    expect(contentOf(turned(before))).toBe(contentOf(before));
    for (const change of [
      { title: "Other" },
      { inForceFrom: "2027-01-12" },
      { key: "other" },
      { language: "de" },
      { rules: [noPear, noKiwi] },
      { inForceUntil: "2027-12-31" },
    ])
      expect(contentOf(documentOf({ rules: [noKiwi, noPear], ...change }))).not.toBe(contentOf(before));
  });

  it("of random documents is equal where there is no difference, and what is told of a difference makes one of the other", () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const [one, two] = [drawRuleSet(seed, "drawn", 6), drawRuleSet(seed + 1000, "drawn", 7)];
      expect(documentDifference(one, turned(one))).toEqual(none);
      const mixed: RuleSetDocument = {
        ...one,
        rules: [...two.rules.slice(2, 5), ...one.rules.slice(3)].filter(
          ({ id }, at, all) => all.findIndex((rule) => rule.id === id) === at,
        ),
      };
      const { rules } = documentDifference(one, mixed);
      const told = new Map(one.rules.map((rule) => [rule.id, rule]));
      for (const change of rules) {
        if (change.kind === "REMOVED") expect(told.delete(change.rule.id)).toBe(true);
        else expect(told.set(change.rule.id, change.rule).has(change.rule.id)).toBe(true);
      }
      const byId = (document: RuleSetDocument): RuleSetDocument => ({
        ...document,
        rules: [...document.rules].sort((a, b) => (a.id < b.id ? -1 : 1)),
      });
      expect(contentOf(byId({ ...mixed, rules: [...told.values()] }))).toBe(contentOf(byId(mixed)));
    }
  });
});
