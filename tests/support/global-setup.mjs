import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { tsImport } from "tsx/esm/api";

/**
 * Starts the database of the run, unless NO_DATABASE=1 or no test asked for lives in a room that uses it.
 * JavaScript, because Jest loads this file without its own name mapping: a TypeScript one could not import product code.
 * @param {import("jest").Config & { rootDir: string, testPathPatterns?: { patterns: readonly string[] } }} run
 */
export default async function setUp({ rootDir, testPathPatterns }) {
  if (process.env.NO_DATABASE === "1" || !usesDatabase(join(rootDir, "tests"), testPathPatterns?.patterns ?? []))
    return;
  const here = pathToFileURL(join(rootDir, "tests/support/test-server.ts")).href;
  const { startTestServer } = await tsImport(here, import.meta.url);
  globalThis.noonpailTestServer = await startTestServer(
    process.env.TEST_DATABASE === "container" ? "container" : "embedded",
  );
  // Inherited by the workers, which start after this.
  process.env.NOONPAIL_TEST_SERVER = globalThis.noonpailTestServer.ownerUrl;
}

/**
 * A room is a folder of tests/; it uses the database when any file in it imports the support for it.
 * @param {string} tests
 * @param {readonly string[]} patterns what Jest was asked to run; empty for everything
 */
function usesDatabase(tests, patterns) {
  // Benchmarks hold no tests, but packages of their own that come and go.
  const folders = readdirSync(tests).filter((room) => room !== "bench");
  const files = folders.flatMap((room) =>
    readdirSync(join(tests, room), { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".ts"))
      .map((file) => join(room, file)),
  );
  const roomOf = (/** @type {string} */ file) => file.split(/[\\/]/)[0];
  const rooms = new Set(
    files
      .filter(
        (file) => readFileSync(join(tests, file), "utf8").match(/support\/(database|app|served-app)\.js/) !== null,
      )
      .map(roomOf),
  );
  const asked = patterns.map((pattern) => new RegExp(pattern, "i"));
  return files.some(
    (file) =>
      file.endsWith(".test.ts") &&
      rooms.has(roomOf(file)) &&
      (asked.length === 0 || asked.some((pattern) => pattern.test(join(tests, file)))),
  );
}
