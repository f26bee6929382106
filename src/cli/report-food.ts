/**
 * `npm run report:food`: what is left of the catalogue for children with given needs, and every figure that a publication prints
 * beside what the product answers. `-- --json` prints one JSON document; `-- --write` renews the table in seeds/README.md.
 * Ends with 1 when a row falls short or a figure is off.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { coverageOf } from "../domain/catalogue/coverage.js";
import { isMet, type OutsideCheck } from "./food-checks/check.js";
import { coverageTable, replaceCoverageTable } from "./food-checks/coverage.js";
import { readFoodReport } from "./food-checks/report.js";

const seedsReadme = new URL("../../seeds/README.md", import.meta.url);
const args = new Set(process.argv.slice(2));

const { index, choking, checks } = readFoodReport();
const coverage = coverageOf(index, choking);
const off = checks.filter((check) => !isMet(check));
const short = coverage.filter(({ shortfalls }) => shortfalls.length > 0);

if (args.has("--write")) {
  const renewed = replaceCoverageTable(readFileSync(seedsReadme, "utf8"), coverage);
  if (renewed === null) throw new Error("seeds/README.md has lost the marks around its coverage table.");
  writeFileSync(seedsReadme, renewed);
}
if (args.has("--json")) {
  const rows = checks.map((check) => ({ ...check, met: isMet(check) }));
  console.log(JSON.stringify({ coverage, checks: rows, holds: off.length === 0 && short.length === 0 }, null, 2));
} else {
  console.log(`COVERAGE (dishes that differ; in brackets all that pass)\n${coverageTable(coverage)}\n`);
  console.log(`CHECKS AGAINST PUBLISHED FIGURES: ${checks.length - off.length} of ${checks.length} hold`);
  for (const check of checks) console.log(line(check));
}
if (off.length > 0 || short.length > 0) process.exitCode = 1;

function line(check: OutsideCheck): string {
  const { id, about, source, expected, tolerance, found } = check;
  const shown = typeof found === "number" ? Math.round(found * 1000) / 1000 : found;
  const within = tolerance > 0 ? ` +/- ${tolerance}` : "";
  return `${isMet(check) ? "  ok " : "  OFF"} ${id}: ${about}: ${shown} (printed ${expected}${within}; ${source})`;
}
