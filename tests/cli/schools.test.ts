import { spawn } from "node:child_process";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { calendar, event } from "../support/calendar-file.js";
import { useDatabase } from "../support/database.js";

const database = useDatabase({ demo: true });
const SCHOOL = "Quillbrook Primary School";
let directory: string;
beforeAll(async () => {
  directory = await mkdtemp(join(tmpdir(), "noonpail-schools-"));
});
afterAll(() => rm(directory, { recursive: true, force: true }));

/** The command as an operator types it, on this test's database. */
function schools(...words: string[]): Promise<{ code: number | null; out: string; err: string }> {
  const { serverUrl, ownerUrl } = database;
  const env = { ...process.env, NODE_OPTIONS: "", DATABASE_URL: serverUrl, DATABASE_OWNER_URL: ownerUrl };
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ["--import", "tsx", "src/cli/schools.ts", ...words], { env });
    let [out, err] = ["", ""];
    child.stdout.on("data", (data: Buffer) => (out += data.toString()));
    child.stderr.on("data", (data: Buffer) => (err += data.toString()));
    child.on("error", reject);
    child.on("close", (code) => resolve({ code, out, err }));
  });
}
const aFile = async (name: string, text: string | Buffer) => {
  const path = join(directory, name);
  await writeFile(path, text);
  return path;
};
const days = async () =>
  (await database.owner`select date::text as date, kind, title from school_day where event_uid is not null`).map(
    (row) => `${row["date"]} ${row["kind"]} ${row["title"]}`,
  );

describe("npm run schools", () => {
  it("appoints somebody who has signed in, and says who is not there", async () => {
    const done = await schools("appoint", "demo:ruth", "--jurisdiction", "England");
    expect(done).toMatchObject({ code: 0, out: "Ruth Pellowen (demo:ruth) now administers England.\n" });
    const [row] = await database.owner`select person_id, jurisdiction from audit_entry where action = 'APPOINTED'`;
    expect(row).toEqual({ person_id: null, jurisdiction: "England" });
    const unknown = await schools("appoint", "demo:nobody", "--school", SCHOOL);
    expect(unknown).toMatchObject({ code: 1, out: "" });
    expect(unknown.err).toContain('Nobody has signed in as "demo:nobody" yet.');
  });

  it("shows what a calendar file changes, then loads it", async () => {
    const woods = event("CATEGORIES:TRIP,CLASS:Class 4", "SUMMARY:Woods", "DTSTART;VALUE=DATE:20270302");
    // A name that a shell and a reader both stumble over.
    const path = await aFile("year 2026–27 'final' (2).ics", calendar(woods));
    const looked = await schools("calendar", path, "--school", SCHOOL, "--as", "demo:ruth", "--check");
    expect(looked.code).toBe(0);
    expect(looked.out).toContain("Added (1)\n  trip 2027-03-02 Woods (Class 4)\n");
    expect(await days()).toEqual([]);
    const loaded = await schools("calendar", path, "--school", SCHOOL, "--as", "demo:ruth");
    expect(loaded.code).toBe(0);
    expect(await days()).toEqual(["2027-03-02 TRIP Woods"]);
  });

  it("refuses with a list of reasons, and loads nothing", async () => {
    const before = await days();
    const wrong = await aFile("wrong.ics", calendar(event("CATEGORIES:INSET", "DTSTART;VALUE=DATE:20270230")));
    const bad = await schools("calendar", wrong, "--school", SCHOOL, "--as", "demo:ruth");
    expect(bad).toMatchObject({ code: 1, out: "" });
    expect(bad.err).toContain("Nothing was loaded.");
    expect(bad.err).toContain('Line 7, CATEGORIES "INSET" is unknown');
    expect(bad.err).toContain("Line 8, DTSTART 20270230 is no day of the calendar");
    const good = await aFile("good.ics", calendar(event("CATEGORIES:TRIP", "DTSTART;VALUE=DATE:20270309")));
    for (const [words, says] of [
      [[await aFile("large.ics", Buffer.alloc(50_000_000)), "--school", SCHOOL, "--as", "demo:ruth"], "50000000 bytes"],
      [[await aFile("latin.ics", Buffer.from([0xe9])), "--school", SCHOOL, "--as", "demo:ruth"], "is not UTF-8"],
      [[join(directory, "none.ics"), "--school", SCHOOL, "--as", "demo:ruth"], "There is no file"],
      [[good, "--school", SCHOOL, "--as", "demo:ana"], "does not administer"],
      [[good, "--school", "Nowhere", "--as", "demo:ruth"], 'There is no school "Nowhere"'],
      [[good, "--school", SCHOOL], "Use one of"],
    ] as const) {
      const refused = await schools("calendar", ...words);
      expect(refused).toMatchObject({ code: 1, out: "" });
      expect(refused.err).toContain(says);
    }
    expect(await days()).toEqual(before);
  });
});
