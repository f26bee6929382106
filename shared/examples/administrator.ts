/**
 * An administrator takes a rule set from the office's file to the families: a slip is found, the difference and what it would break
 * are shown, then it is loaded and stands in the school's list of what was done. Run while `npm start` serves.
 */
import { readFileSync } from "node:fs";
import { newKey, signIn } from "./client.js";

interface Issue {
  line: number;
  path: string;
  problem: string;
  expected: string;
  nearest: string[];
}
interface School {
  id: string;
  name: string;
  ruleSets: { key: string; version: number; title: string }[];
}

const KEY = "quillbrook-primary-spring";
const ask = await signIn("demo:ruth");
const school = (
  await ask<{ me: { administers: School[] } }>("{ me { administers { id name ruleSets { key version title } } } }")
).me.administers[0]!;
console.log(`${school.name}: ${school.ruleSets.map((set) => `${set.key} v${set.version}`).join(", ")}`);

const seenRevision = school.ruleSets.find((set) => set.key === KEY)?.version ?? 0;
// The next number, or the one it has already: a document that says the same again loads nothing.
const document = readFileSync(new URL("./rule-set.yaml", import.meta.url), "utf8").replace(
  "version: 1\n",
  `version: ${seenRevision + 1}\n`,
);
const ISSUES = "path line problem expected nearest";
const print = (issues: readonly Issue[]) => {
  for (const { line, path, problem, expected, nearest } of issues)
    console.log(
      `  line ${line}, ${path} ${problem}; expected ${expected}${nearest[0] ? `, perhaps ${nearest[0]}` : ""}`,
    );
};

interface Check {
  message?: string;
  errors?: Issue[];
  warnings?: Issue[];
  unchanged?: boolean;
  difference?: { rules: { kind: string; rule: { key: string; says: string } }[] } | null;
}
const check = async (text: string) =>
  (
    await ask<{ ruleSetCheck: Check }>(
      `query Check($input: RuleSetDocumentInput!) { ruleSetCheck(input: $input) { ... on UserError { message }
        ... on RuleSetCheck { errors { ${ISSUES} } warnings { ${ISSUES} } unchanged difference { rules { kind rule { key says } } } } } }`,
      { input: { schoolId: school.id, document: text } },
    )
  ).ruleSetCheck;

console.log("with a slip of the pen:");
print((await check(document.replace("groups: [DRIED_FRUIT]", "groups: [DRIED_FRIUT]"))).errors ?? []);
const looked = await check(document);
console.log(looked.unchanged ? "it says what is loaded already" : "as it is, it would change:");
for (const { kind, rule } of looked.difference?.rules ?? []) console.log(`  ${kind} ${rule.key}: ${rule.says}`);

interface Impact {
  message?: string;
  from?: string;
  all?: { held: number | null; boxes: number | null; children: number | null };
}
const { countRuleSetImpact: impact } = await ask<{ countRuleSetImpact: Impact }>(
  `mutation Impact($input: CountRuleSetImpactInput!) { countRuleSetImpact(input: $input) { ... on UserError { message }
    ... on RuleSetCounts { from all { held boxes children } } } }`,
  { input: { idempotencyKey: newKey(), schoolId: school.id, document } },
);
const few = (count: number | null | undefined) => count ?? "fewer than 5";
console.log(
  impact.all
    ? `agreed boxes from ${impact.from} on: ${few(impact.all.boxes)} of ${few(impact.all.held)} would break it`
    : impact.message,
);

interface Loaded {
  message?: string;
  unchanged?: boolean;
  ruleSet?: { key: string; version: number };
}
const { loadRuleSet: loaded } = await ask<{ loadRuleSet: Loaded }>(
  `mutation Load($input: LoadRuleSetInput!) { loadRuleSet(input: $input) { ... on UserError { message }
    ... on LoadRuleSetPayload { unchanged ruleSet { key version } } } }`,
  { input: { idempotencyKey: newKey(), schoolId: school.id, seenRevision, document } },
);
console.log(
  loaded.ruleSet
    ? `${loaded.ruleSet.key} version ${loaded.ruleSet.version} ${loaded.unchanged ? "was there already" : "is loaded; the next plan obeys it"}`
    : loaded.message,
);
