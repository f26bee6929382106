import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join, resolve } from "node:path";

const root = resolve(import.meta.dirname, "../..");
const bin = join(root, "node_modules/.bin");
const homes: string[] = [];
afterAll(() => homes.forEach((home) => rmSync(home, { recursive: true })));

const lunch = `type Query { dish: String side: String @deprecated(reason: "Use dish.") }`;

/** A repository whose main branch carries `published`, with `proposed` in the working tree. */
function repository(published: string | null, proposed: string, branch = "main"): string {
  const home = mkdtempSync(join(tmpdir(), "schema-change-"));
  homes.push(home);
  mkdirSync(join(home, "schema"));
  writeFileSync(join(home, published === null ? "readme.md" : "schema/base.graphql"), published ?? "");
  const author = ["-c", "user.name=A", "-c", "user.email=a@example.org", "-c", "commit.gpgsign=false"];
  for (const args of [
    ["init", "-q", "-b", branch],
    ["add", "."],
    [...author, "commit", "-q", "-m", "first"],
  ])
    expect(spawnSync("git", args, { cwd: home }).status).toBe(0);
  writeFileSync(join(home, "schema/base.graphql"), proposed);
  return home;
}

function checkSchemaChange(home: string): { exit: number | null; said: string } {
  const run = spawnSync(join(bin, "tsx"), [join(root, "src/cli/check-schema-change.ts")], {
    cwd: home,
    encoding: "utf8",
    env: { ...process.env, NODE_OPTIONS: "", PATH: `${bin}${delimiter}${process.env.PATH}` },
  });
  return { exit: run.status, said: run.stdout + run.stderr };
}

test("a field that clients may still ask for cannot be taken away", () => {
  const { exit, said } = checkSchemaChange(repository(lunch, "type Query { side: String }"));
  expect(said).toContain("Field dish was removed from object type Query");
  expect(exit).toBe(1);
});

test("a field that main already deprecates can be taken away, and fields can be added", () => {
  const { exit } = checkSchemaChange(repository(lunch, "type Query { dish: String fruit: String }"));
  expect(exit).toBe(0);
});

test("a schema that did not change passes", () => {
  expect(checkSchemaChange(repository(lunch, lunch)).exit).toBe(0);
});

test.each([
  ["main has no schema yet", repository(null, lunch), "main has no schema yet: nothing to break"],
  ["there is no main branch", repository(lunch, lunch, "side-road"), "no main branch here: nothing to compare with"],
])("says so and passes when %s", (_, home, sentence) => {
  const { exit, said } = checkSchemaChange(home);
  expect(said.trim()).toBe(sentence);
  expect(exit).toBe(0);
});
