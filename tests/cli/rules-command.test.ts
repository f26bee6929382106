import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { App } from "../../src/app/app.js";
import { Refused, runRules, type Command } from "../../src/cli/rule-files.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { useDatabase } from "../support/database.js";
import { noRates } from "../support/no-rates.js";
import { noKiwi, textOf, yaml } from "../support/rule-documents.js";

const database = useDatabase({ demo: true });
const SUBJECT = "test:district";
const DISTRICT = "Invented District";
const SCHOOLS = 500;
let app: App;
const folders: string[] = [];

/** A folder of its own with these files. */
function folderOf(files: Readonly<Record<string, string | Buffer>>): string {
  const folder = mkdtempSync(join(tmpdir(), "noonpail-rules-"));
  folders.push(folder);
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}
const run = async (command: Command, path: string, options = {}, subject = SUBJECT) => {
  const { report, done } = await runRules(app, command, path, subject, options);
  return { done, report: report.join("\n") };
};
const versions = async (): Promise<number> => {
  const [row] = await database.owner<{ count: number }[]>`select count(*)::int as count from rule_set_version`;
  return row!.count;
};
const school = (at: number) => `Invented School ${at}`;
const one = (change: object = {}) => textOf({ school: school(1), ...change });

beforeAll(async () => {
  const reference = await database.db.readReference();
  const unused = () => Promise.reject(new Error("nothing is planned here"));
  app = {
    db: database.db,
    reference,
    index: indexCatalogue(reference.catalogue),
    planner: { plan: unused, alternatives: unused, ask: unused },
    prover: null,
    queue: null,
    now: () => new Date("2026-11-25T12:00:00Z"),
    rates: noRates,
    planSteps: 1,
  };
  const person = await database.db.signIn(SUBJECT, "A district");
  await database.db.signIn("test:nobody", "Somebody else");
  const { owner } = database;
  await owner`insert into appointment (person_id, jurisdiction) values (${person}, ${DISTRICT})`;
  await owner`insert into school (name, time_zone, jurisdiction)
    select 'Invented School ' || n, 'Europe/London', ${DISTRICT} from generate_series(1, ${SCHOOLS}) n`;
  await owner`insert into school_class (school_id, name, facility) select id, 'Otters', 'NEITHER' from school where name = ${school(1)}`;
});
afterAll(() => folders.forEach((folder) => rmSync(folder, { recursive: true, force: true })));

describe("a folder of 500 documents", () => {
  const files = Object.fromEntries(
    Array.from({ length: SCHOOLS }, (_, at) => [
      `school-${at + 1}.${at % 2 === 0 ? "json" : "yaml"}`,
      at % 2 === 0 ? textOf({ school: school(at + 1) }) : `${yaml}school: ${school(at + 1)}\n`,
    ]),
  );

  it("with one that is broken is reported, and nothing is loaded", async () => {
    const before = await versions();
    const folder = folderOf({ ...files, "school-7.json": files["school-7.json"]!.replace("EXCLUDE", "EXCLUD") });
    const { done, report } = await run("load", folder);
    expect(done).toBe(false);
    expect(report.split("\n")).toEqual([
      `${join(folder, "school-7.json")}: cannot be read`,
      expect.stringMatching(/^ {2}wrong: Line \d+, rules.0.kind is "EXCLUD"; .* Did you mean EXCLUDE/),
      `1 of ${SCHOOLS} cannot be loaded. Nothing was loaded.`,
    ]);
    expect(await versions()).toBe(before);
  });

  it("is checked without loading, loaded, and there already when it comes again", async () => {
    const before = await versions();
    const folder = folderOf(files);
    expect(await run("check", folder)).toEqual({ done: true, report: `All ${SCHOOLS} can be loaded.` });
    expect(await versions()).toBe(before);
    const told: string[] = [];
    const loaded = await runRules(app, "load", folder, SUBJECT, {}, (done, of, what) =>
      told.push(`${done}/${of} ${what}`),
    );
    expect(loaded).toEqual({ done: true, report: [`${SCHOOLS} loaded, 0 there already.`] });
    expect(told).toHaveLength(2 * SCHOOLS);
    expect(told.at(-1)).toBe(`${SCHOOLS}/${SCHOOLS} loaded`);
    expect(await versions()).toBe(before + SCHOOLS);
    expect(await run("load", folder)).toEqual({ done: true, report: `0 loaded, ${SCHOOLS} there already.` });
    expect(await versions()).toBe(before + SCHOOLS);
  }, 600_000);
});

describe("what a folder may hold", () => {
  it("names with spaces, letters of any script, a dash in front, dots and capitals", async () => {
    const names = ["a b.json", "Schüler–Küche ☂.YAML", "-rf.yml", "..json", "c..d.JSON", "$(x).json", "new\nline.json"];
    const folder = folderOf(Object.fromEntries(names.map((name, at) => [name, one({ key: `odd-name-${at}` })])));
    expect(await run("load", folder)).toEqual({ done: true, report: `${names.length} loaded, 0 there already.` });
    expect(await run("check", join(folder, "..", folder.split("/").at(-1)!))).toMatchObject({ done: true });
  });

  it("other files are left alone", async () => {
    const folder = folderOf({
      "a.json": one({ key: "beside-others" }),
      "notes.txt": "{",
      README: "",
      "b.json.bak": "{",
    });
    expect((await run("load", folder)).report).toMatch(/\n1 loaded, 0 there already\.$/);
  });

  it("a folder named like a file, a link in a circle, one that leads nowhere and bytes that are no text stop it", async () => {
    const before = await versions();
    const folder = folderOf({
      "good.json": one({ key: "good-one" }),
      "latin.json": Buffer.from(one({ key: "latin-one", title: "Küche" }), "latin1"),
      "wide.yaml": Buffer.from(`\uFEFF${yaml}`, "utf16le"),
      "large.json": " ".repeat(1_000_001),
      "empty.json": "",
    });
    mkdirSync(join(folder, "x.json"));
    symlinkSync("circle.json", join(folder, "circle.json"));
    symlinkSync("nowhere", join(folder, "lost.json"));
    const { done, report } = await run("load", folder);
    expect(done).toBe(false);
    for (const said of [
      `${join(folder, "x.json")} is no file; take it out of the folder.`,
      `${join(folder, "circle.json")} cannot be opened: ELOOP.`,
      `${join(folder, "lost.json")} is no file; take it out of the folder.`,
      `${join(folder, "latin.json")} is not written in UTF-8; save it again with that encoding.`,
      `${join(folder, "wide.yaml")} is not written in UTF-8; save it again with that encoding.`,
      `${join(folder, "large.json")} has 1000001 bytes; a rule set has at most 1000000. Divide it into several.`,
      "  wrong: Line 1: is empty; expected: a rule set in the format noonpail-rule-set/1.",
      "7 of 8 cannot be loaded. Nothing was loaded.",
    ])
      expect(report.split("\n")).toContain(said);
    expect(await versions()).toBe(before);
  });

  it("a link to a document is that document", async () => {
    const folder = folderOf({ "kept elsewhere": one({ key: "linked" }) });
    symlinkSync("kept elsewhere", join(folder, "here.json"));
    expect((await run("load", folder)).report).toMatch(/\n1 loaded, 0 there already\.$/);
  });

  it("the same rule set twice stops it, however its school is named", async () => {
    const before = await versions();
    const folder = folderOf({
      "a.json": one({ key: "doubled" }),
      "b.yaml": `${yaml.replace("house-rules", "doubled")}school: ${school(1)}\n`,
    });
    const { done, report } = await run("load", folder);
    expect(done).toBe(false);
    expect(report).toContain(`${join(folder, "b.yaml")} is for the same rule set as ${join(folder, "a.json")}.`);
    expect(await versions()).toBe(before);
  });

  it("documents that clash with each other stop it before any is loaded", async () => {
    const before = await versions();
    const fruit = { anyOf: [{ groups: ["FRUIT"] }] };
    const daily = {
      ...noKiwi,
      id: "fruit-daily",
      kind: "FREQUENCY",
      counts: "ITEMS",
      per: "BOX",
      atLeast: 1,
      matches: fruit,
    };
    const none = { ...noKiwi, id: "no-fruit", matches: fruit };
    const folder = folderOf({
      "class.json": one({ key: "of-the-class", layer: "CLASS", schoolClass: "Otters", rules: [none] }),
      "school.json": one({ key: "of-the-school", rules: [daily] }),
    });
    const { done, report } = await run("load", folder);
    expect(done).toBe(false);
    expect(report).toContain('"fruit-daily" of of-the-school asks for what "no-fruit" shuts out altogether');
    expect(await versions()).toBe(before);
  });
});

describe("one file", () => {
  const file = (text: string): string => join(folderOf({ "one.json": text }), "one.json");

  it("says what it changes in the version that is there", async () => {
    expect(await run("load", file(one({ key: "differing" })))).toMatchObject({ done: true });
    const next = one({ key: "differing", version: 2, title: "House rules again", rules: [{ ...noKiwi, id: "other" }] });
    const { report } = await run("diff", file(next));
    expect(report.split("\n").slice(1)).toEqual([
      "  compared with version 1:",
      '    title: "House rules" -> "House rules again"',
      "    + other: No kiwi.",
      "    - no-kiwi: No kiwi.",
    ]);
    expect((await run("diff", file(one({ key: "differing" })))).report).toMatch(/says what is loaded already$/);
  });

  it("says what agreed weeks would break, in numbers", async () => {
    const { done, report } = await run("impact", file(one({ key: "counted" })));
    expect(done).toBe(true);
    expect(report).toMatch(
      /agreed weeks from 2027-01-11 to 2028-02-15: of fewer than 5 boxes fewer than 5 would break it/,
    );
  });

  it.each<[string, string, object, RegExp]>([
    ["for no school", textOf(), {}, /says of no school or jurisdiction that it is for it/],
    ["for a school that is not there", textOf({ school: "Nowhere School" }), {}, /there is no school "Nowhere School"/],
    [
      "for a class that is not there",
      one({ layer: "CLASS", schoolClass: "Badgers" }),
      {},
      /there is no class "Badgers" in a school/,
    ],
    ["for somebody else's school", textOf({ school: "Quillbrook Primary School" }), {}, /one\.json: .+/],
    [
      "for another school than its own",
      one(),
      { school: school(2) },
      /school is "Invented School 1"; expected: Invented School 2/,
    ],
    [
      "for somebody else's jurisdiction",
      textOf({ layer: "JURISDICTION", jurisdiction: "England" }),
      {},
      /one\.json: .+/,
    ],
  ])("%s is refused", async (_, text, options, says) => {
    const before = await versions();
    const { done, report } = await run("load", file(text), options);
    expect(done).toBe(false);
    expect(report).toMatch(says);
    expect(report).toMatch(/1 of 1 cannot be loaded\. Nothing was loaded\.$/);
    expect(await versions()).toBe(before);
  });

  it.each<[string, () => Promise<unknown>, RegExp]>([
    ["a path that is not there", () => run("load", join(tmpdir(), "no-such-folder")), /There is no file or folder/],
    ["an empty folder", () => run("load", folderOf({ "notes.txt": "" })), /There is no \.json, \.yaml, \.yml file in/],
    [
      "a subject nobody has",
      () => run("load", file(one()), {}, "test:never-seen"),
      /Nobody has signed in as "test:never-seen" yet/,
    ],
  ])("%s is refused", async (_, attempt, says) => {
    await expect(attempt()).rejects.toThrow(Refused);
    await expect(attempt()).rejects.toThrow(says);
  });

  it("somebody who was appointed nowhere loads nothing", async () => {
    const before = await versions();
    expect(await run("load", file(one({ key: "by-a-stranger" })), {}, "test:nobody")).toMatchObject({ done: false });
    expect(await versions()).toBe(before);
  });

  it("of the jurisdiction holds in its schools", async () => {
    const fruit = { anyOf: [{ kinds: ["banana"] }] };
    const rules = [{ ...noKiwi, id: "no-banana", matches: fruit }];
    const text = textOf({ key: "district", layer: "JURISDICTION", jurisdiction: DISTRICT, rules });
    expect(await run("load", file(text))).toMatchObject({ done: true });
    const wants = {
      ...noKiwi,
      id: "banana-weekly",
      kind: "FREQUENCY",
      counts: "ITEMS",
      per: "WEEK",
      atLeast: 1,
      matches: fruit,
    };
    const { done, report } = await run("check", file(textOf({ key: "bananas", school: school(3), rules: [wants] })));
    expect(done).toBe(false);
    expect(report).toContain('"banana-weekly" asks for what "no-banana" of district shuts out altogether');
  });
});
