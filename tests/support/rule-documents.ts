/** An invented school's rule set, its text, and the place it is checked for: small things to spoil one at a time. */
import { ruleSetDocument, type RuleSetDocument } from "../../shared/rule-set.js";
import { wordsOf, type KnownWords, type RuleSetPlace } from "../../src/app/check-rule-set.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { threeChildren } from "./demo-brief.js";

export const noKiwi = {
  id: "no-kiwi",
  kind: "EXCLUDE",
  says: "No kiwi.",
  level: "FORBID",
  source: "own rule of an invented school",
  matches: { anyOf: [{ kinds: ["kiwi"] }] },
};
export const head = {
  format: "noonpail-rule-set/1",
  key: "house-rules",
  title: "House rules",
  layer: "SCHOOL",
  coversFoodFromHome: true,
  language: "en",
  version: 1,
  inForceFrom: "2027-01-11",
};

/** One field a line, so that a line number can be told. */
export const textOf = (change: object = {}): string => JSON.stringify({ ...head, rules: [noKiwi], ...change }, null, 1);
export const withRule = (change: object): string => textOf({ rules: [{ ...noKiwi, ...change }] });
export const documentOf = (change: object = {}): RuleSetDocument => ruleSetDocument.parse(JSON.parse(textOf(change)));

export const yaml = `# What may be in a box
format: noonpail-rule-set/1
key: house-rules
title: House rules
layer: SCHOOL
coversFoodFromHome: true
language: en
version: 1
inForceFrom: 2027-01-11
rules:
  - id: no-kiwi
    kind: EXCLUDE
    says: No kiwi.
    level: FORBID
    source: own rule of an invented school # by the parents' evening
    matches:
      anyOf:
        - kinds: [kiwi]
`;

export const place: RuleSetPlace = {
  layer: "SCHOOL",
  jurisdiction: "England",
  school: "Fennel Hill School",
  schoolClass: null,
  today: "2026-11-25",
  classes: [{ breakKeys: ["morning-break", "lunch"], others: [] }],
  versions: [],
};

/** The catalogue the project ships, as the loader knows it. */
export function seedWords(): KnownWords {
  const { catalogue } = threeChildren();
  return wordsOf(catalogue, indexCatalogue(catalogue));
}
