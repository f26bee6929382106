/** Keeps the cells of a run for the printed report, when one was asked for (ACCESS_REPORT: the folder). */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Cell } from "./sql-cells.js";

export function keep(part: "rows" | "things" | "mutations", cells: readonly Cell[]): void {
  const folder = process.env["ACCESS_REPORT"];
  if (folder !== undefined) writeFileSync(join(folder, `${part}.json`), JSON.stringify(cells));
}
