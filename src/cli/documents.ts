/**
 * `npm run documents -- ship` adds the operations of today to those that went out with a client: run it for every release of an
 * app. `npm run documents -- check` (also `npm run check:documents`) exits 1 when one of either would be refused by today's
 * schema, or when something that is on record on the main branch is not on record here.
 */
import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { buildSchema } from "graphql";
import { documentFaults, takenBack, type Documents } from "./document-faults.js";

const SHIPPED = "shared/operations/shipped-documents.json";
const read = (text: string) => JSON.parse(text) as Documents;
const shipped = read(readFileSync(SHIPPED, "utf8"));
const current = read(readFileSync("shared/generated/persisted-documents.json", "utf8"));

function schema() {
  const files = readdirSync("schema").filter((file) => file.endsWith(".graphql"));
  return buildSchema(files.map((file) => readFileSync(`schema/${file}`, "utf8")).join("\n"));
}

function onMain(): Documents {
  for (const branch of ["main", "origin/main"]) {
    const shown = spawnSync("git", ["show", `${branch}:${SHIPPED}`], { encoding: "utf8" });
    if (shown.status === 0) return read(shown.stdout);
  }
  return {};
}

switch (process.argv[2] ?? "") {
  case "ship": {
    const all = { ...shipped, ...current };
    writeFileSync(SHIPPED, JSON.stringify(all, null, 2) + "\n");
    console.log(
      `${Object.keys(all).length} documents on record, ${Object.keys(all).length - Object.keys(shipped).length} of them new`,
    );
    break;
  }
  case "check": {
    const faults = [...documentFaults(schema(), { ...shipped, ...current }), ...takenBack(onMain(), shipped)];
    for (const fault of faults) console.log(fault);
    console.log(
      `${Object.keys(current).length} documents of today and ${Object.keys(shipped).length} shipped, ${faults.length} faults`,
    );
    if (faults.length > 0) process.exitCode = 1;
    break;
  }
  default:
    console.log("Say what to do: npm run documents -- check, or npm run documents -- ship.");
    process.exitCode = 1;
}
