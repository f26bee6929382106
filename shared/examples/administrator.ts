/** An administrator loads a rule set: first a broken one, then a good one. Run while `npm start` serves. */
import { newKey, signIn } from "./client.js";

interface School {
  id: string;
  name: string;
  ruleSets: { key: string; version: number; title: string }[];
}
type Answer = {
  __typename: string;
  message?: string;
  issues?: { path: string; line: number; problem: string; expected: string; nearest: string[] }[];
  ruleSet?: { key: string; version: number };
};

const KEY = "quillbrook-primary-kiwi";
const ask = await signIn("demo:ruth");
const readSchool = async () =>
  (await ask<{ me: { administers: School[] } }>("{ me { administers { id name ruleSets { key version title } } } }")).me
    .administers[0]!;

const school = await readSchool();
console.log(`${school.name}: ${school.ruleSets.map((set) => `${set.key} v${set.version}`).join(", ")}`);
const seenRevision = school.ruleSets.find((set) => set.key === KEY)?.version ?? 0;
const load = async (document: object) =>
  (
    await ask<{ loadRuleSet: Answer }>(
      `mutation Load($input: LoadRuleSetInput!) { loadRuleSet(input: $input) {
        __typename ... on UserError { message } ... on DocumentRefused { issues { path line problem expected nearest } } ... on LoadRuleSetPayload { ruleSet { key version } } } }`,
      {
        input: {
          idempotencyKey: newKey(),
          schoolId: school.id,
          seenRevision,
          document: JSON.stringify(document, null, 1),
        },
      },
    )
  ).loadRuleSet;

const rule = {
  id: "no-kiwi",
  kind: "EXCLUDE",
  says: "No kiwi this term: a child in the school is allergic to it.",
  level: "FORBID",
  source: "own rule of an invented school",
  matches: { anyOf: [{ kinds: ["kiwi"] }] },
};
const document = {
  format: "noonpail-rule-set/1",
  key: KEY,
  title: "Kiwi",
  layer: "SCHOOL",
  coversFoodFromHome: true,
  language: "en",
  version: seenRevision + 1,
  inForceFrom: "2027-01-04",
  rules: [rule],
};

const broken = await load({
  ...document,
  inForceFrom: "4 January",
  rules: [
    { ...rule, level: "MAYBE" },
    { ...rule, id: "", kind: "BAN" },
  ],
});
for (const { line, path, problem, expected, nearest } of broken.issues ?? [])
  console.log(`  line ${line}, ${path} ${problem}; expected ${expected} ${nearest.join(", ")}`);
const loaded = await load(document);
console.log(
  loaded.ruleSet
    ? `loaded ${loaded.ruleSet.key} version ${loaded.ruleSet.version}; the next plan obeys it`
    : loaded.message,
);
