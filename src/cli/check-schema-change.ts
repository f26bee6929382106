/**
 * Compares schema/ with the one on the main branch and exits 1 when a client that works today would stop working.
 * The way through is in two steps: add the new field beside the old one and mark that `@deprecated(reason: "...")`;
 * once main has carried the notice past its date, take the old field away. Removing what main already deprecates passes.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";

const branch = ["main", "origin/main"].find((name) => git("rev-parse", "--verify", "--quiet", name) !== null);
const files = branch === undefined ? null : git("ls-tree", "-r", "--name-only", branch, "schema/");
const published = files?.split("\n").filter((file) => file.endsWith(".graphql")) ?? [];

if (branch === undefined) console.log("no main branch here: nothing to compare with");
else if (published.length === 0) console.log(`${branch} has no schema yet: nothing to break`);
else process.exitCode = compareWith(branch, published);

function compareWith(revision: string, paths: readonly string[]): number {
  const old = mkdtempSync(join(tmpdir(), "schema-main-"));
  try {
    for (const path of paths) writeFileSync(join(old, basename(path)), git("show", `${revision}:${path}`) ?? "");
    const run = spawnSync(
      "graphql-inspector",
      ["diff", join(old, "*.graphql"), "schema/*.graphql", "--rule", "suppressRemovalOfDeprecatedField"],
      { encoding: "utf8" },
    );
    console.log(`${run.stdout}${run.stderr}`.trim());
    return run.status ?? 1;
  } finally {
    rmSync(old, { recursive: true });
  }
}

function git(...args: readonly string[]): string | null {
  const run = spawnSync("git", args, { encoding: "utf8" });
  return run.status === 0 ? run.stdout : null;
}
