import { spawn } from "node:child_process";
import { randomUUID } from "node:crypto";
import { rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** `npm run demo` in a data folder of its own, as somebody runs it who has just cloned the project. */
function runDemo(
  folder: string,
): Promise<{ readonly code: number | null; readonly page: string; readonly progress: string }> {
  const { DATABASE_URL: _url, DATABASE_OWNER_URL: _owner, NODE_OPTIONS: _options, ...env } = process.env;
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ["--import", "tsx", "src/cli/demo.ts"], {
      env: { ...env, DATA_DIR: folder },
      stdio: ["ignore", "pipe", "pipe"],
    });
    const texts = { page: "", progress: "" };
    child.stdout.setEncoding("utf8").on("data", (text: string) => (texts.page += text));
    child.stderr.setEncoding("utf8").on("data", (text: string) => (texts.progress += text));
    child.on("error", reject);
    child.on("close", (code) => resolve({ code, ...texts }));
  });
}

// Made by the demo itself, for the account that its database runs under.
const folder = join(tmpdir(), `noonpail-demo-${randomUUID()}`);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The lines of a part, from its title to the next empty line. */
const partOf = (page: string, title: string): string[] => {
  const lines = page.split("\n");
  const first = lines.findIndex((line) => line.startsWith(title));
  const length = lines.slice(first).findIndex((line) => line === "");
  return first < 0 ? [] : lines.slice(first + 1, first + length);
};

test("the demo prints boxes, clock times, reasons, how good the week is for sure, and one thing that goes wrong", async () => {
  const first = await runDemo(folder);
  expect([first.code, first.progress]).toEqual([0, expect.stringContaining("done")]);
  const { page } = first;
  expect(Math.max(...page.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
  expect(page).toMatch(/^PIA, Mon 11 Jan, leaves \d\d:\d\d/m);

  const sessions = partOf(page, "WHEN WHAT IS DONE");
  expect(sessions).toContainEqual(
    expect.stringMatching(/^ {2}Mon 11 Jan morning: \d\d:\d\d to \d\d:\d\d, .* hands-on/),
  );
  expect(sessions.filter((line) => /^ {4}\d\d:\d\d-\d\d:\d\d {2}/.test(line)).length).toBeGreaterThan(20);

  const textOf = (title: string) => partOf(page, title).join(" ").replace(/\s+/g, " ");
  const good = textOf("HOW GOOD THAT IS");
  const [, points, least, percent] =
    /Millpond.* counts (\d+) points.* below (\d+): at most (\d+) % of it .*Hilltop/.exec(good) ?? [];
  expect(Number(least)).toBeGreaterThan(0);
  expect(Number(least)).toBeLessThanOrEqual(Number(points));
  expect(Math.abs(100 * (1 - Number(least) / Number(points)) - Number(percent))).toBeLessThan(2);
  expect(textOf("WHY THIS WEEK")).toMatch(/Mon 11 Jan, Pia: .+(uses|saves|brings|keeps|new taste|free of)/);
  expect(partOf(page, "WHY NOT ANOTHER").join(" ")).toMatch(/The week would (have|be)/);

  const changes = partOf(page, "IF SOMETHING HAPPENS");
  expect(changes[0]).toMatch(/^ {2}\d+ of 13 boxes change|The week stays as it is/);

  const again = await runDemo(folder);
  expect(again.code).toBe(0);
  expect(again.progress.match(/still passes every check/g)).toHaveLength(2);
  for (const title of ["WHY THIS WEEK", "HOW GOOD THAT IS"])
    expect(partOf(again.page, title)).toEqual(partOf(page, title));
});
