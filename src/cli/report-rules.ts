/**
 * `npm run report:rules`: for each published standard of the seeds, how many of its clauses the rule document states and which it
 * cannot, with the reason. `-- --json` prints one JSON document. Ends with 1 when a file cannot be read or loaded, a clause names a
 * rule that is not there, a rule belongs to no clause, or one fits nothing in the catalogue and no reason is given.
 */
import { readRuleReport } from "./rule-checks/report.js";
import type { StandardReport } from "./rule-checks/standard-report.js";

const { standards, others, faults } = readRuleReport();
const holds = faults.length === 0 && standards.every((standard) => standard.faults.length === 0);

if (process.argv.includes("--json")) console.log(JSON.stringify({ standards, others, faults, holds }, null, 2));
else {
  for (const standard of standards) console.log(linesOf(standard).join("\n"));
  console.log("Rule sets of invented schools and families");
  for (const { file, document, warnings } of others) {
    console.log(`  ${file}: ${document === null ? "cannot be loaded" : `rules: ${document.rules.length}`}`);
    for (const { rule, says } of warnings) console.log(`    warning: rule ${rule} ${says}`);
  }
  for (const fault of faults) console.log(`  OFF ${fault}`);
}
if (!holds) process.exitCode = 1;

function linesOf(standard: StandardReport): string[] {
  const { title, document, rules, clauses, stated, cannot, notes, warnings } = standard;
  return [
    `${title}: ${stated} of ${clauses} clauses stated (${document}, rules: ${rules})`,
    ...cannot.map(({ clause, because }) => `  not stated: ${clause}: ${because}`),
    ...notes.map(({ clause, note }) => `  note: ${clause}: ${note}`),
    ...warnings.map((warning) => `  warning: ${warning}`),
    ...standard.faults.map((fault) => `  OFF ${fault}`),
    "",
  ];
}
