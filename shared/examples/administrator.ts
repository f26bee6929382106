/**
 * An administrator takes a rule set from the office's file to the families: a slip is found, the difference and what it would break
 * are shown, then it is loaded and stands in the school's list of what was done. Run while `npm start` serves.
 */
import { readFileSync } from "node:fs";
import {
  Administered,
  CheckRuleSet,
  CountRuleSetImpact,
  LoadRuleSet,
  SchoolAudit,
  type IssueFragment,
} from "../generated/operations.js";
import { signIn } from "./sign-in.js";

const KEY = "quillbrook-primary-spring";
const ruth = signIn("demo:ruth");
const school = (await ruth.ask(Administered, {})).me.administers[0]!;
console.log(`${school.name}: ${school.ruleSets.map(({ key, version }) => `${key} v${version}`).join(", ")}`);

const seenRevision = school.ruleSets.find(({ key }) => key === KEY)?.version ?? 0;
// The next number, or the one it has already: a document that says the same again loads nothing.
const document = readFileSync(new URL("./rule-set.yaml", import.meta.url), "utf8").replace(
  "version: 1\n",
  `version: ${seenRevision + 1}\n`,
);

const print = (issues: readonly IssueFragment[]) => {
  for (const { line, path, problem, expected, nearest } of issues)
    console.log(
      `  line ${line}, ${path} ${problem}; expected ${expected}${nearest[0] ? `, perhaps ${nearest[0]}` : ""}`,
    );
};
const check = async (text: string) => {
  const { ruleSetCheck } = await ruth.ask(CheckRuleSet, { input: { schoolId: school.id, document: text } });
  if (ruleSetCheck.__typename !== "RuleSetCheck") throw new Error(ruleSetCheck.message);
  return ruleSetCheck;
};
console.log("with a slip of the pen:");
print((await check(document.replace("groups: [DRIED_FRUIT]", "groups: [DRIED_FRIUT]"))).errors);
const looked = await check(document);
console.log(looked.unchanged ? "it says what is loaded already" : "as it is, it would change:");
for (const { kind, rule } of looked.difference?.rules ?? []) console.log(`  ${kind} ${rule.key}: ${rule.says}`);

const few = (count: number | null) => count ?? "fewer than 5";
const impact = await ruth.send(CountRuleSetImpact, { schoolId: school.id, document });
console.log(
  impact.__typename === "RuleSetCounts"
    ? `agreed boxes from ${impact.from} on: ${few(impact.all.boxes)} of ${few(impact.all.held)} would break it`
    : impact.message,
);

const loaded = await ruth.send(LoadRuleSet, { schoolId: school.id, seenRevision, document });
if (loaded.__typename === "LoadRuleSetPayload") {
  const { ruleSet, unchanged } = loaded;
  const what = unchanged ? "was there already" : "is loaded; the next plan obeys it";
  console.log(`${ruleSet.key} version ${ruleSet.version} ${what}`);
} else console.log(loaded.message);

const { school: audited } = await ruth.ask(SchoolAudit, { schoolId: school.id, first: 2 });
for (const { at, action, person } of audited?.audit?.nodes ?? [])
  console.log(`  ${at} ${action} by ${person?.displayName ?? "the operator"}`);
ruth.close();
