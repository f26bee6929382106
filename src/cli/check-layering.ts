/**
 * Reads every import under src/ and shared/ of the current folder and holds it against .dependency-cruiser.cjs.
 * Exit 1 for a broken rule, and also when the reading itself cannot be trusted. Handed a TypeScript it does not know,
 * the cruiser says nothing: it falls back to a parser that cannot tell a type-only import from a real one, or, where
 * that one is missing too, reads no file at all and finds nothing wrong.
 */
import { existsSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { cruise, getAvailableTranspilers } from "dependency-cruiser";
import type { ICruiseResult } from "dependency-cruiser";
import extractRules from "dependency-cruiser/config-utl/extract-depcruise-config";

const rules = await extractRules(fileURLToPath(new URL("../../.dependency-cruiser.cjs", import.meta.url)));
const rooms = ["src", "shared"].filter((room) => existsSync(room));
const sources = rooms.flatMap((room) =>
  readdirSync(room, { recursive: true, encoding: "utf8" })
    .map((file) => `${room}/${file}`)
    .filter((file) => file.endsWith(".ts") && !file.startsWith("src/database/generated/")),
);

const typescript = getAvailableTranspilers().find(({ name }) => name === "typescript");
const { output } = await cruise(rooms, { ...rules.options, validate: true, ruleSet: rules });
if (typeof output === "string") throw new Error(`The cruiser answered with text: ${output.slice(0, 200)}`);

const complaints = [
  ...(typescript?.available ? [] : [`TypeScript ${typescript?.version ?? ""} is not there: types and code look alike`]),
  ...brokenRules(output),
  ...unreadSources(output),
];
for (const complaint of complaints) console.log(complaint);
const count = sources.length - unreadSources(output).length;
if (count === 0) console.log("no module was read, so nothing was checked");
console.log(`${count} of ${sources.length} modules read, ${output.summary.violations.length} broken rules`);
if (complaints.length > 0 || count === 0) process.exitCode = 1;

function brokenRules({ summary }: ICruiseResult): string[] {
  return summary.violations.map(({ rule, from, to, cycle }) =>
    [`${rule.name}: ${from}`, ...(cycle?.map(({ name }) => name) ?? [to])].join(" -> "),
  );
}

function unreadSources({ modules }: ICruiseResult): string[] {
  const read = new Set(modules.map(({ source }) => source));
  return sources.filter((source) => !read.has(source)).map((source) => `not read: ${source}`);
}
