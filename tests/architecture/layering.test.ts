import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";

const root = resolve(import.meta.dirname, "../..");
const require = createRequire(import.meta.url);
const { forbidden } = require(join(root, ".dependency-cruiser.cjs")) as { forbidden: { name: string }[] };

/** One rule, the file that breaks it, what that file says, and the answer. */
const planted: readonly (readonly [rule: string, file: string, says: string, to: string])[] = [
  ["domain-is-pure", "src/domain/menu.ts", `import "../database/rows.js";`, "src/database/rows.ts"],
  ["domain-is-pure", "src/domain/diary.ts", `import "node:fs";`, "fs"],
  ["domain-is-pure", "src/domain/zone.ts", `import type {} from "luxon";`, "node_modules/luxon/build/es6/luxon.mjs"],
  ["shared-is-light", "shared/menu.ts", `import "../src/domain/week.js";`, "src/domain/week.ts"],
  ["one-door-to-prisma", "src/app/peek.ts", `import "postgres";`, "node_modules/postgres/types/index.d.ts"],
  ["one-door-to-prisma", "src/app/lazy.ts", `await import("postgres");`, "node_modules/postgres/types/index.d.ts"],
  [
    "one-door-to-prisma",
    "src/jobs/peek.ts",
    `import "../database/generated/client.js";`,
    "src/database/generated/client.ts",
  ],
  ["adapters-are-strangers", "src/http/door.ts", `import "../graphql/root.js";`, "src/graphql/root.ts"],
  ["no-way-back", "src/app/back.ts", `import "../graphql/root.js";`, "src/graphql/root.ts"],
  ["database-below-app", "src/database/up.ts", `import "../app/pack.js";`, "src/app/pack.ts"],
  [
    "checker-is-a-stranger",
    "src/domain/checker/borrow.ts",
    `import "../planner/search.js";`,
    "src/domain/planner/search.ts",
  ],
  ["checker-takes-types-only", "src/domain/checker/lean.ts", `import "../week.js";`, "src/domain/week.ts"],
  [
    "nobody-leans-on-the-checker",
    "src/domain/planner/ask.ts",
    `import "../checker/check-week.js";`,
    "src/domain/checker/check-week.ts",
  ],
  ["one-door-to-the-checker", "src/app/pry.ts", `import "../domain/checker/clock.js";`, "src/domain/checker/clock.ts"],
  ["no-cycles", "src/domain/egg.ts", `import "./egg.js";`, "src/domain/egg.ts"],
  ["resolves", "src/app/lost.ts", `import "./nowhere.js";`, "./nowhere.js"],
];

/** What the house allows, so that a rule that forbids everything is caught too. */
const sound: Record<string, string> = {
  "shared/codes.ts": `import "zod";`,
  "src/domain/week.ts": `import "../../shared/codes.js"; export type Week = 1;`,
  "src/domain/planner/search.ts": `import "../week.js";`,
  "src/domain/checker/clock.ts": `export const clock = 1;`,
  "src/domain/checker/check-week.ts": `import "./clock.js"; import type { Week } from "../week.js"; export type W = Week;`,
  "src/database/generated/client.ts": `export type Row = 1;`,
  "src/database/rows.ts": `import "postgres"; import "./generated/client.js"; import "../domain/week.js";`,
  "src/app/pack.ts": `import "../domain/checker/check-week.js"; import "../database/rows.js";
    import type { Row } from "../database/generated/client.js"; export type R = Row;`,
  "src/graphql/root.ts": `import "../app/pack.js"; import "graphql";`,
  "src/main.ts": `import "./graphql/root.js"; import "./database/rows.js";`,
};

const homes: string[] = [];
afterAll(() => homes.forEach((home) => rmSync(home, { recursive: true })));

function build(files: Record<string, string>): string {
  const home = mkdtempSync(join(tmpdir(), "layering-"));
  homes.push(home);
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(join(home, dirname(file)), { recursive: true });
    writeFileSync(join(home, file), text);
  }
  symlinkSync(join(root, "node_modules"), join(home, "node_modules"));
  return home;
}

function checkLayering(home: string, nodeOptions = ""): { exit: number | null; lines: string[] } {
  const run = spawnSync(join(root, "node_modules/.bin/tsx"), [join(root, "src/cli/check-layering.ts")], {
    cwd: home,
    encoding: "utf8",
    env: { ...process.env, NODE_OPTIONS: nodeOptions },
  });
  return { exit: run.status, lines: `${run.stdout}${run.stderr}`.trim().split("\n") };
}

test("a house with every permitted arrow passes, and says how many modules were read", () => {
  expect(checkLayering(build(sound))).toEqual({ exit: 0, lines: ["9 of 9 modules read, 0 broken rules"] });
});

test("every rule has an arrow that breaks it, and each such arrow is reported", () => {
  expect(new Set(planted.map(([rule]) => rule))).toEqual(new Set(forbidden.map(({ name }) => name)));
  const faults = Object.fromEntries(planted.map(([, file, says]) => [file, says]));
  const { exit, lines } = checkLayering(build({ ...sound, ...faults }));
  // Outside packages are reached through a link here: their path begins with the way up to it.
  const reported = lines.map((line) => line.replace(/-> (?:\.\.\/)+\S*?node_modules/, "-> node_modules"));
  const expected = planted.map(([rule, file, , to]) => `${rule}: ${file} -> ${to}`);
  expect(expected.filter((line) => !reported.includes(line))).toEqual([]);
  expect(exit).toBe(1);
});

/** What dependency-cruiser sees when a package is there in a version it does not know, as `typescript@7` is. */
function tooNew(home: string, ...packages: string[]): string {
  const versions = Object.fromEntries(packages.map((name) => [`${name}/package.json`, { version: "99.0.0" }]));
  writeFileSync(
    join(home, "too-new.cjs"),
    `const { Module } = require("node:module"); const load = Module._load; const versions = ${JSON.stringify(versions)};
     Module._load = (id, ...rest) => versions[id] ?? load(id, ...rest);`,
  );
  return `--require ${join(home, "too-new.cjs")}`;
}

test("a TypeScript the cruiser does not know fails, although another parser reads every file", () => {
  const home = build(sound);
  const { exit, lines } = checkLayering(home, tooNew(home, "typescript"));
  expect(lines[0]).toMatch(/^TypeScript .* is not there/);
  expect(exit).toBe(1);
});

test("no usable parser at all fails, instead of finding nothing wrong in nothing", () => {
  const home = build(sound);
  const { exit, lines } = checkLayering(home, tooNew(home, "typescript", "@swc/core"));
  expect(lines).toContain("not read: src/main.ts");
  expect(lines.at(-1)).toBe("0 of 9 modules read, 0 broken rules");
  expect(exit).toBe(1);
});

test("an empty house fails", () => {
  const { exit, lines } = checkLayering(build({ "src/readme.txt": "" }));
  expect(lines.at(-1)).toBe("0 of 0 modules read, 0 broken rules");
  expect(exit).toBe(1);
});
