/**
 * `npm run report:access`: asks every cell anew, by running the tests of this folder, and prints the matrix. Ends with 1 when a leak
 * or a gap was found, or a table or mutation has no line.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Cell } from "./sql-cells.js";

const folder = mkdtempSync(join(tmpdir(), "noonpail-access-"));
const run = spawnSync("npx", ["jest", "--silent", "tests/access"], {
  env: { ...process.env, NODE_OPTIONS: "--experimental-vm-modules", ACCESS_REPORT: folder },
  encoding: "utf8",
});

const LETTER = { SELECT: "r", INSERT: "a", UPDATE: "c", DELETE: "d", MUTATION: "y", READ: "r" } as const;
/** One mark per actor: what they may of what was asked; a leak in capitals, a gap as "!". */
function mark(cells: readonly Cell[]): string {
  return cells
    .map(({ verb, expected, got }) => {
      const letter = LETTER[verb as keyof typeof LETTER];
      return got ? (expected ? letter : letter.toUpperCase()) : expected ? "!" : verb === "MUTATION" ? "-" : "";
    })
    .join("");
}

function print(title: string, cells: readonly Cell[]): void {
  const actors = [...new Set(cells.map(({ actor }) => actor))];
  const shut = (row: string) =>
    cells.every((cell) => `${cell.what} ${cell.scope}` !== row || (!cell.expected && !cell.got));
  const every = [...new Set(cells.map(({ what, scope }) => `${what} ${scope}`))].sort();
  const rows = every.filter((row) => !shut(row));
  const wide = Math.max(...rows.map((row) => row.length)) + 2;
  console.log(`\n${title}\n${"".padEnd(wide)}${actors.map((actor) => actor.padEnd(15)).join("")}`);
  for (const row of rows) {
    const of = cells.filter(({ what, scope }) => `${what} ${scope}` === row);
    const marks = actors.map((actor) => (mark(of.filter((cell) => cell.actor === actor)) || "-").padEnd(15));
    console.log(`${row.padEnd(wide)}${marks.join("")}`.trimEnd());
  }
  if (rows.length < every.length) console.log(`nobody anything: ${every.filter(shut).join(", ")}`);
}

try {
  const read = (part: string) => JSON.parse(readFileSync(join(folder, `${part}.json`), "utf8")) as Cell[];
  const [rows, things, mutations] = [read("rows"), read("things"), read("mutations")];
  print("Rows, as the server's role: r reads, a adds, c changes, d removes", rows);
  print("Things by their ID, over HTTP: r reads", things);
  print("Mutations, over HTTP: y may ask", mutations);
  const all = [...rows, ...things, ...mutations];
  const count = (of: (cell: Cell) => boolean) => all.filter(of).length;
  console.log(
    `\n${all.length} cells asked: ${count(({ expected, got }) => got && !expected)} leaks, ${count(({ expected, got }) => expected && !got)} gaps.`,
  );
} catch {
  console.log(run.stdout, run.stderr);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
if (run.status !== 0) console.log("The tests of tests/access did not all pass: run npm test -- tests/access.");
process.exitCode = run.status ?? 1;
