import {
  checkRuleSet,
  readRuleSetDocument,
  type RuleSetCheck,
  type RuleSetPlace,
} from "../../src/app/check-rule-set.js";
import { MOST_ISSUES } from "../../src/app/document-shape.js";
import { MOST_BYTES, readDocument } from "../../src/app/document-text.js";
import { sayIssue } from "../../src/app/say.js";
import { nearest } from "../../src/domain/nearest.js";
import { documentOf, head, noKiwi, place, seedWords, textOf, withRule, yaml } from "../support/rule-documents.js";

const words = seedWords();
const check = (text: string, at: Partial<RuleSetPlace> = {}): RuleSetCheck =>
  checkRuleSet(readRuleSetDocument(text), words, { ...place, ...at });
const errorsOf = (text: string, at: Partial<RuleSetPlace> = {}): string[] => check(text, at).errors.map(sayIssue);
const warningsOf = (text: string, at: Partial<RuleSetPlace> = {}): string[] => {
  const { errors, warnings } = check(text, at);
  expect(errors).toEqual([]);
  return warnings.map(sayIssue);
};
/** The line, counted from 1, on which a text stands first. */
const lineOf = (text: string, what: string): number => text.slice(0, text.indexOf(what)).split("\n").length;

describe("a text that can be read", () => {
  it.each([
    ["JSON", textOf()],
    ["JSON on one line", JSON.stringify(JSON.parse(textOf()))],
    ["JSON with a comma too many", textOf().replace("]\n}", "],\n}")],
    ["YAML", yaml],
    ["YAML with Windows line ends", yaml.replaceAll("\n", "\r\n")],
    ["YAML behind a byte order mark", `\uFEFF${yaml}`],
    ["JSON behind a byte order mark", `\uFEFF${textOf()}`],
    ["YAML between document marks", `---\n${yaml}...\n`],
    [
      "YAML with a part marked and meant again",
      yaml.replace("No kiwi.", "&said No kiwi.").replace("House rules", '"House rules"'),
    ],
  ])("%s is accepted", (_, text) => {
    const found = check(text);
    expect(found.errors).toEqual([]);
    expect(found.document).toMatchObject({ key: "house-rules", inForceFrom: "2027-01-11", rules: [{ id: "no-kiwi" }] });
  });

  it("a part marked with & stands wherever * names it, and complaints of it name the line of the mark", () => {
    const twice = `${yaml.replace("matches:\n      anyOf:", "matches: &kiwi\n      anyOf:")}  - id: no-kiwi-either\n    kind: EXCLUDE\n    says: No kiwi either.\n    level: FORBID\n    source: own rule\n    matches: *kiwi\n`;
    expect(check(twice).document?.rules[1]).toMatchObject({ matches: noKiwi.matches });
    const wrong = twice.replace("[kiwi]", "[KIWI]");
    expect(check(wrong).errors.map(({ path, line }) => [path, line])).toEqual([
      ["rules.0.matches.anyOf.0.kinds.0", lineOf(wrong, "KIWI")],
      ["rules.1.matches.anyOf.0.kinds.0", lineOf(wrong, "KIWI")],
    ]);
  });
});

describe("a text that cannot be read", () => {
  const OPEN = 'a { or [ or " is opened and not closed before this line; expected: a closing }, ] or ".';
  const tabbed = yaml.replace("    kind", "\tkind");
  const colon = yaml.replace("No kiwi.", "No kiwi: please.");
  const twice = yaml.replace("title:", "key: other\ntitle:");
  const cases: readonly (readonly [string, string, string])[] = [
    ["empty", "", "Line 1: is empty; expected: a rule set in the format noonpail-rule-set/1."],
    ["only a remark", "# to be written\n", "Line 1: is empty; expected: a rule set in the format noonpail-rule-set/1."],
    ["a sentence", "no nuts please", 'Line 1: is "no nuts please"; expected: fields with their values.'],
    ["a list", "[1, 2]", "Line 1: is [1,2]; expected: fields with their values."],
    ["cut off", textOf().slice(0, 95), `Line ${textOf().slice(0, 95).split("\n").length}: ${OPEN}`],
    ["a bracket not closed", yaml.replace("[kiwi]", "[kiwi"), `Line 18: ${OPEN}`],
    ["a quote not closed", yaml.replace("No kiwi.", '"No kiwi.'), `Line 18: ${OPEN}`],
    [
      "a comma forgotten",
      textOf().replace('"House rules",', '"House rules"'),
      "Line 5: follows another entry without a comma; expected: a comma between two entries.",
    ],
    [
      "a bracket too many",
      `${textOf()}\n}`,
      `Line ${textOf().split("\n").length + 1}: has a character or word that nothing before it leads to, as a bracket too many; expected: nothing here, or a comma, bracket or quote before it.`,
    ],
    ["a tab", tabbed, `Line ${lineOf(tabbed, "\tkind")}: is indented with a tab; expected: spaces.`],
    [
      "a colon in a sentence",
      colon,
      `Line ${lineOf(colon, "No kiwi")}: has a colon where none can stand, or is not indented like the lines around it; expected: one field: value on a line; a text that holds a colon in "quotes".`,
    ],
    [
      "a field twice, in YAML",
      twice,
      `Line ${lineOf(twice, "key: other")}: states "key", which line 3 states already; expected: every field once.`,
    ],
    [
      "a field twice, in JSON",
      textOf().replace('"title"', '"key": "other",\n "title"'),
      'Line 4: states "key", which line 3 states already; expected: every field once.',
    ],
    [
      "two documents",
      `${yaml}---\n${yaml}`,
      "Line 19: begins a second document; expected: one rule set in a text, without --- in between.",
    ],
    [
      "a * that names nothing",
      yaml.replace("[kiwi]", "[*fruit]"),
      'Line 18: has *fruit, and no part that ends above it is marked &fruit; expected: the part itself; a text with * in "quotes".',
    ],
    [
      "a part that holds itself",
      yaml.replace("[kiwi]", "&a [*a]"),
      'Line 18: has *a, and no part that ends above it is marked &a; expected: the part itself; a text with * in "quotes".',
    ],
    [
      "a tag",
      yaml.replace("House", "!!binary House"),
      "Line 4: has a word with !! in front; expected: a value without it.",
    ],
    [
      "a timestamp by tag",
      yaml.replace("2027-01-11", "!!timestamp 2027-01-11"),
      "Line 9: has a word with !! in front; expected: a value without it.",
    ],
    [
      "a tag of one's own",
      yaml.replace("House", "!our House"),
      "Line 4: has a word with ! in front; expected: a value without it.",
    ],
    [
      "a list as a field's name",
      `? [a, b]\n: 1\n${yaml}`,
      "Line 1: has a field whose name is itself a list or a group of fields; expected: a field of the format.",
    ],
    [
      "U+0000",
      textOf({ title: "a\0b" }),
      "Line 4: holds a character that is none: U+0000, or half of a surrogate pair as a damaged copy has it; expected: text without it.",
    ],
    [
      "half a surrogate pair",
      textOf().replace("House", "\\ud800"),
      "Line 4: holds a character that is none: U+0000, or half of a surrogate pair as a damaged copy has it; expected: text without it.",
    ],
    [
      "U+0000 in a field's name",
      textOf({ "a\0": 1 }),
      `Line ${textOf().split("\n").length}: holds a character that is none: U+0000, or half of a surrogate pair as a damaged copy has it; expected: text without it.`,
    ],
  ];
  it.each(cases)("%s: says where and what to do", (_, text, first) => {
    const { document, errors } = check(text);
    expect(document).toBeNull();
    expect(sayIssue(errors[0]!)).toBe(first);
    for (const { line } of errors) expect(line).toBeLessThanOrEqual(text.split("\n").length);
  });

  it("speaks of nothing but the text, whatever is wrong with it", () => {
    const jargon =
      /flow|scalar|token|mapping|sequence|anchor|alias|yaml\.|schema|zod|undefined|call stack|\[object|NaN/i;
    for (const [, text] of cases)
      for (const { problem, expected } of check(text).errors) expect(`${problem} ${expected}`).not.toMatch(jargon);
  });
});

describe("a text that is made to do harm", () => {
  it("of 50 MB is not read", () => {
    const text = " ".repeat(50_000_000);
    expect(errorsOf(text)).toEqual([
      `Line 1: has 50000000 bytes; expected: at most ${MOST_BYTES}; divide it into several rule sets.`,
    ]);
  });

  it("with 100,000 rules is told so once", () => {
    expect(errorsOf(`{"rules":[${Array(100_000).fill("{}").join()}]}`)).toEqual([
      "Line 1, rules has 100000 rules; expected: at most 2000.",
    ]);
  });

  it.each([
    ["[", ""],
    ["[", "]"],
    ['{"a":', "}"],
    ["- ", ""],
  ])("with 100,000 brackets inside one another is refused: %s%s", (open, close) => {
    const errors = errorsOf(`${open.repeat(100_000)}1${close.repeat(100_000)}`);
    expect(errors[0]).toMatch(/^Line 1: has brackets or indents more than 40 deep in one another;/);
  });

  it.each([41, 500, 3_000])("with %s brackets inside one another in a field is refused", (depth) => {
    const text = textOf().replace('"House rules"', `${"[".repeat(depth)}${"]".repeat(depth)}`);
    expect(errorsOf(text)).toEqual([
      "Line 4: has brackets or indents more than 40 deep in one another; expected: the fields of the format, none of which is so deep.",
    ]);
  });

  it("that grows without end by naming its parts again is refused", () => {
    const names = [..."abcdefghi"];
    const text = names
      .map(
        (name, at) =>
          `${name}: &${name} [${Array(10)
            .fill(at === 0 ? "x" : `*${names[at - 1]}`)
            .join()}]`,
      )
      .join("\n");
    expect(errorsOf(text)).toEqual([
      "Line 1: repeats parts of itself inside one another, so that it would grow without end; expected: a text without * and &.",
    ]);
  });

  it("with 60,000 fields that are none is told the first", () => {
    const text = `{${Array.from({ length: 60_000 }, (_, at) => `"f${at}":1`).join()}}`;
    const { errors } = check(text);
    expect(errors).toHaveLength(MOST_ISSUES + 1);
    expect(errors.at(-1)!.problem).toBe(`${60_000 + 9 - MOST_ISSUES} more like these`);
  });

  it("with 20,000 unknown foods is told the first", () => {
    const foods = Array.from({ length: 20_000 }, (_, at) => `food-${at}`);
    const { errors, warnings } = check(withRule({ matches: { anyOf: [{ foods }] } }));
    expect(errors).toEqual([]);
    expect(warnings).toHaveLength(MOST_ISSUES + 1);
    expect(warnings.at(-1)!.problem).toBe(`${20_000 - MOST_ISSUES} more like these`);
  });

  it.each(["__proto__", "constructor", "toString", "hasOwnProperty", "valueOf"])(
    "with a field %s is refused",
    (name) => {
      const inDocument = textOf().replace('"key"', `"${name}": {"key": "other"},\n "key"`);
      expect(check(inDocument).errors).toMatchObject([
        { path: name, line: 3, problem: `"${name}" is no field of the format` },
      ]);
      const inRule = textOf().replace('"kind"', `"${name}": {"kind": "ONLY"},\n "kind"`);
      expect(check(inRule).errors).toMatchObject([{ path: `rules.0.${name}`, line: lineOf(inRule, name) }]);
      const inClause = withRule({ matches: { anyOf: [JSON.parse(`{"${name}": ["kiwi"]}`)] } });
      expect(check(inClause).errors).toMatchObject([{ path: `rules.0.matches.anyOf.0.${name}` }]);
      expect(check(withRule({ kind: name })).errors).toMatchObject([{ path: "rules.0.kind" }]);
      expect(({} as { key?: string }).key).toBeUndefined();
    },
  );

  it("with a number beyond all bounds is refused", () => {
    const version = (number: string) => errorsOf(yaml.replace("version: 1", `version: ${number}`));
    expect(version(".nan")).toEqual(["Line 8, version is no number; expected: a number."]);
    expect(version(".inf")).toEqual(["Line 8, version is a number without end; expected: a number."]);
    expect(version("1e999")).toEqual(["Line 8, version is a number without end; expected: a number."]);
    expect(version("123456789012345678901234567890")).toEqual([
      "Line 8, version is 1.2345678901234568e+29; expected: at most 100000.",
    ]);
    expect(version("-1")).toEqual(["Line 8, version is -1; expected: at least 1."]);
    expect(version("1.5")).toEqual(["Line 8, version is 1.5; expected: a whole number."]);
    expect(version("'1'")).toEqual(['Line 8, version is "1"; expected: a number.']);
  });
});

describe("a field or word that is not the format's", () => {
  const line = (text: string, what: string, says: string) => `Line ${lineOf(text, what)}, ${says}`;
  const cases: readonly (readonly [string, string, string, string])[] = [
    [
      "kind",
      withRule({ kind: "EXCLUD" }),
      '"EXCLUD"',
      'rules.0.kind is "EXCLUD"; expected: one of EXCLUDE, ONLY, FREQUENCY, AMOUNT, SHARE, NUTRIENT, TOGETHER, SERVING. Did you mean EXCLUDE, ONLY, SERVING?',
    ],
    [
      "no kind",
      withRule({ kind: undefined }),
      "{\n   ",
      "rules.0.kind is missing; expected: one of EXCLUDE, ONLY, FREQUENCY, AMOUNT, SHARE, NUTRIENT, TOGETHER, SERVING.",
    ],
    [
      "field of a rule",
      withRule({ weekday: ["MONDAY"] }),
      '"weekday"',
      'rules.0.weekday "weekday" is no field of the format; expected: one of its fields. Did you mean weekdays, shortWeek, splitWeek?',
    ],
    [
      "field of the document",
      textOf({ inForceform: "2027-01-11" }),
      '"inForceform"',
      'inForceform "inForceform" is no field of the format; expected: one of its fields. Did you mean inForceFrom, inForceUntil, format?',
    ],
    [
      "letters changed about",
      withRule({ matches: { anyOf: [{ groups: ["FRIUT"] }] } }),
      '"FRIUT"',
      'rules.0.matches.anyOf.0.groups.0 is "FRIUT"; expected: one of 32 words. Did you mean FRUIT, FISH, NUT?',
    ],
    [
      "small letters",
      withRule({ matches: { anyOf: [{ allergens: ["peanut"] }] } }),
      '"peanut"',
      'rules.0.matches.anyOf.0.allergens.0 is "peanut"; expected: one of ',
    ],
    [
      "capitals",
      withRule({ level: "Forbid" }),
      '"Forbid"',
      'rules.0.level is "Forbid"; expected: one of FORBID, ADVISE. Did you mean FORBID, ADVISE?',
    ],
    [
      "another format",
      textOf({ format: "noonpail-rule-set/2" }),
      '"format"',
      'format is "noonpail-rule-set/2"; expected: noonpail-rule-set/1.',
    ],
    ["yes for true", yaml.replace("true", "yes"), "yes", 'coversFoodFromHome is "yes"; expected: true or false.'],
    [
      "true in quotes",
      textOf({ coversFoodFromHome: "true" }),
      '"coversFood',
      'coversFoodFromHome is "true"; expected: true or false.',
    ],
    ["a text for a list", withRule({ breaks: "lunch" }), '"breaks"', 'rules.0.breaks is "lunch"; expected: a list.'],
    [
      "an empty list",
      withRule({ matches: { anyOf: [] } }),
      '"anyOf"',
      "rules.0.matches.anyOf has 0 entries; expected: at least 1 entry.",
    ],
    [
      "a short sentence",
      withRule({ says: "No." }),
      '"says"',
      "rules.0.says has 3 characters; expected: at least 5 characters.",
    ],
    [
      "a long title",
      textOf({ title: "x".repeat(201) }),
      '"title"',
      "title has 201 characters; expected: at most 200 characters.",
    ],
    [
      "a key with a space",
      textOf({ key: "house rules" }),
      '"key"',
      'key is "house rules"; expected: lower-case words joined by hyphens.',
    ],
    [
      "a language's name",
      textOf({ language: "English" }),
      '"language"',
      'language is "English"; expected: a language as en or en-GB.',
    ],
    [
      "an English date",
      textOf({ inForceFrom: "11/01/2027" }),
      '"inForceFrom"',
      'inForceFrom is "11/01/2027"; expected: a date as YYYY-MM-DD.',
    ],
    [
      "withdrawn: false",
      textOf({ withdrawn: false }),
      '"withdrawn"',
      "withdrawn is false; expected: true, or no such field.",
    ],
    [
      "a letter nobody sees",
      textOf({ "s\u200bchool": "x" }),
      "s\u200bchool",
      's\u200bchool "s\\u200bchool" is no field of the format; expected: one of its fields. Did you mean school, schoolClass, jurisdiction?',
    ],
    [
      "a Cyrillic letter",
      textOf({ "\u0441lass": "x" }),
      "\u0441lass",
      '\u0441lass "\\u0441lass" is no field of the format;',
    ],
    [
      "merging",
      yaml.replace("    kind", "    <<: {level: ADVISE}\n    kind"),
      "<<",
      'rules.0.<< "<<" is no field of the format;',
    ],
  ];
  it.each(cases)("%s", (_, text, what, says) => {
    const errors = errorsOf(text);
    expect(errors).toHaveLength(1);
    expect(errors[0]!.startsWith(line(text, what, says))).toBe(true);
  });

  it("a field without a name is one that is none", () => {
    expect(check(textOf({ "": 1 })).errors).toMatchObject([{ path: "", problem: '"" is no field of the format' }]);
  });

  it("a word of a megabyte is cut short in the complaint", () => {
    const long = "x".repeat(400_000);
    for (const { path, problem } of [
      ...check(textOf({ [long]: 1 })).errors,
      ...check(withRule({ kind: long })).errors,
    ]) {
      expect(path.length).toBeLessThan(100);
      expect(problem.length).toBeLessThan(120);
    }
  });

  it("nearest words come by likeness, capitals aside", () => {
    expect(nearest("tre nuts", ["MILK", "PEANUT", "TREE_NUTS"])[0]).toBe("TREE_NUTS");
    expect(nearest("CONFECTIONARY", ["CEREAL", "PASTRY", "CONFECTIONERY"])[0]).toBe("CONFECTIONERY");
    expect(nearest("", ["a", "b", "c", "d"])).toHaveLength(3);
  });
});

describe("all complaints come at once", () => {
  it("of words and of what they mean: a wrong kind hides no date, no age and no id", () => {
    const broken = { ...noKiwi, kind: "EXCLUD", inForceFrom: "2027-02-30", ages: { fromYears: 9, underYears: 5 } };
    const empty = { ...noKiwi, id: "empty", kind: "SERVING", matches: undefined };
    const { errors } = check(textOf({ inForceUntil: "2026-12-01", rules: [noKiwi, broken, empty, 7] }));
    expect(errors.map(({ path }) => path).sort()).toEqual([
      "inForceUntil",
      "rules.1.ages",
      "rules.1.id",
      "rules.1.inForceFrom",
      "rules.1.inForceFrom",
      "rules.1.kind",
      "rules.2",
      "rules.3",
    ]);
    // The same rules with the right words complain of the same, and of nothing else.
    const right = { ...broken, kind: "EXCLUDE" };
    const mended = check(textOf({ inForceUntil: "2026-12-01", rules: [noKiwi, right, empty] })).errors;
    for (const { path, problem } of errors.filter(({ path: at }) => !["rules.1.kind", "rules.3"].includes(at)))
      expect(mended).toContainEqual(expect.objectContaining({ path, problem }));
  });

  it("of shape, in the order of the lines", () => {
    const text = textOf({
      title: "x",
      layer: "SCOOL",
      rules: [{ ...noKiwi, says: 7 }, { ...noKiwi, kind: "ALSO" }, "x"],
    });
    const { errors } = check(text);
    expect(errors.map(({ path }) => path)).toEqual([
      "title",
      "layer",
      "rules.0.says",
      "rules.1.id",
      "rules.1.kind",
      "rules.2",
    ]);
    expect(errors.map(({ line }) => line)).toEqual([...errors.map(({ line }) => line)].sort((a, b) => a - b));
  });

  it("of sense, clashes included", () => {
    const frequent = { kind: "FREQUENCY", counts: "ITEMS", per: "BOX", matches: { anyOf: [{ groups: ["FRUIT"] }] } };
    const rules = [
      noKiwi,
      { ...noKiwi, ages: { fromYears: 9, underYears: 5 } },
      { ...noKiwi, ...frequent, id: "fruit", atLeast: 3, atMost: 2 },
      { ...noKiwi, ...frequent, id: "nothing" },
    ];
    const { errors } = check(textOf({ version: 4, jurisdiction: "Scotland", rules }));
    expect(errors.map(({ path }) => path)).toEqual([
      "version",
      "rules.1.id",
      "rules.1.ages",
      "rules.2",
      "rules.3",
      "jurisdiction",
    ]);
  });

  it(`cut at ${MOST_ISSUES}, with how many more there are`, () => {
    const { errors } = check(textOf({ rules: Array.from({ length: 1500 }, () => ({})) }));
    expect(errors).toHaveLength(MOST_ISSUES + 1);
    expect(errors.at(-1)).toMatchObject({ path: "", problem: "1300 more like these", expected: "mend the first ones" });
    const same = check(textOf({ rules: Array.from({ length: 400 }, () => noKiwi) })).errors;
    expect(same).toHaveLength(MOST_ISSUES + 1);
    expect(same.at(-1)!.problem).toBe("199 more like these");
  });
});

describe("dates and ages that contradict one another", () => {
  const only = (text: string) => {
    const errors = errorsOf(text);
    expect(errors).toHaveLength(1);
    return errors[0]!.replace(/^Line \d+, /, "");
  };
  it.each([
    [
      "the document's",
      textOf({ inForceUntil: "2027-01-10" }),
      "inForceUntil is 2027-01-10, before 2027-01-11; expected: 2027-01-11 or later, or nothing.",
    ],
    [
      "a rule's",
      withRule({ inForceFrom: "2027-03-01", inForceUntil: "2027-02-01" }),
      "rules.0.inForceUntil is 2027-02-01, before 2027-03-01; expected: 2027-03-01 or later, or nothing.",
    ],
    [
      "a rule over before the document begins",
      withRule({ inForceUntil: "2027-01-10" }),
      "rules.0.inForceUntil is 2027-01-10, before the rule set begins; expected: 2027-01-11 or later.",
    ],
    [
      "a rule that begins after the document",
      textOf({ inForceUntil: "2027-02-01", rules: [{ ...noKiwi, inForceFrom: "2027-02-02" }] }),
      "rules.0.inForceFrom is 2027-02-02, after the rule set ends; expected: 2027-02-01 or earlier.",
    ],
    [
      "no day",
      textOf({ inForceFrom: "2027-02-29" }),
      "inForceFrom is 2027-02-29; expected: a day that is on the calendar, from 2000-01-01 to 2199-12-31.",
    ],
    [
      "a rule on no day",
      withRule({ inForceFrom: "2027-04-31" }),
      "rules.0.inForceFrom is 2027-04-31; expected: a day that is on the calendar, from 2000-01-01 to 2199-12-31.",
    ],
    [
      "the year 0",
      textOf({ inForceFrom: "0000-01-01" }),
      "inForceFrom is 0000-01-01; expected: a day that is on the calendar, from 2000-01-01 to 2199-12-31.",
    ],
    [
      "the year 9999",
      textOf({ inForceFrom: "9999-12-31" }),
      "inForceFrom is 9999-12-31; expected: a day that is on the calendar, from 2000-01-01 to 2199-12-31.",
    ],
    [
      "a month 13",
      textOf({ inForceFrom: "2027-13-01" }),
      'inForceFrom is "2027-13-01"; expected: a date as YYYY-MM-DD.',
    ],
    [
      "a rule's ages",
      withRule({ ages: { fromYears: 12, underYears: 5 } }),
      "rules.0.ages are from 12 and under 5 years, which is nobody; expected: fromYears less than underYears.",
    ],
    [
      "nobody's age",
      withRule({ ages: { fromYears: 5, underYears: 5 } }),
      "rules.0.ages are from 5 and under 5 years, which is nobody; expected: fromYears less than underYears.",
    ],
    [
      "ages outside the document's",
      textOf({ ages: { underYears: 5 }, rules: [{ ...noKiwi, ages: { fromYears: 5 } }] }),
      "rules.0.ages are ages outside the document's; expected: ages for which both hold.",
    ],
    ["ages out of range", withRule({ ages: { fromYears: 30 } }), "rules.0.ages.fromYears is 30; expected: at most 19."],
  ])("%s", (_, text, says) => expect(only(text)).toBe(says));

  it("a leap day of a leap year is a day, and one day is long enough", () => {
    expect(errorsOf(textOf({ inForceFrom: "2028-02-29", inForceUntil: "2028-02-29" }))).toEqual([]);
  });
});

describe("a document that says nothing or twice", () => {
  it.each([
    ["no rules", textOf({ rules: [] }), "rules is empty; expected: at least one rule, or withdrawn: true."],
    [
      "withdrawn with rules",
      textOf({ withdrawn: true }),
      "withdrawn is true beside rules; expected: no rules in a version that withdraws them.",
    ],
    [
      "an id twice",
      textOf({ rules: [noKiwi, noKiwi] }),
      'rules.1.id "no-kiwi" is the id of rules.0 too; expected: an id of its own.',
    ],
    [
      "no bound",
      withRule({ kind: "FREQUENCY", counts: "ITEMS", per: "WEEK" }),
      "rules.0 states nothing to keep; expected: at least one of atLeast, atMost.",
    ],
    [
      "no way of serving",
      withRule({ kind: "SERVING", matches: undefined }),
      "rules.0 states nothing to keep; expected: at least one of noReheating, noRefrigerator, fingerFoodOnly, litterFree, noGlass, minutesToEat.",
    ],
    [
      "energy of salt",
      withRule({
        kind: "NUTRIENT",
        matches: undefined,
        nutrient: "NA",
        per: "BOX",
        as: "PERCENT_OF_ENERGY",
        atMost: 5,
      }),
      "rules.0.nutrient NA carries no energy of its own; expected: with as: PERCENT_OF_ENERGY one of ",
    ],
  ])("%s", (_, text, says) => {
    const errors = errorsOf(text);
    expect(errors).toHaveLength(1);
    expect(errors[0]!.replace(/^Line \d+, /, "").startsWith(says)).toBe(true);
  });

  it("a withdrawal without rules is one", () => {
    expect(errorsOf(textOf({ withdrawn: true, rules: [] }))).toEqual([]);
  });
});

describe("a document in the wrong place", () => {
  it.each([
    ["layer", textOf({ layer: "CLASS" }), {}, "layer is CLASS; expected: SCHOOL."],
    [
      "school",
      textOf({ school: "Fennel Hil School" }),
      {},
      'school is "Fennel Hil School"; expected: Fennel Hill School.',
    ],
    [
      "class",
      textOf({ schoolClass: "Badgers" }),
      {},
      'schoolClass is "Badgers"; expected: no schoolClass on this layer.',
    ],
    ["jurisdiction", textOf({ jurisdiction: "Scotland" }), {}, 'jurisdiction is "Scotland"; expected: England.'],
    [
      "another class",
      textOf({ layer: "CLASS", schoolClass: "Badgers" }),
      { layer: "CLASS", schoolClass: "Otters" },
      'schoolClass is "Badgers"; expected: Otters.',
    ],
    [
      "no jurisdiction",
      textOf({ layer: "JURISDICTION" }),
      { layer: "JURISDICTION", school: null },
      "jurisdiction is missing; expected: England.",
    ],
  ] as const)("%s", (_, text, at, says) => {
    const errors = errorsOf(text, at);
    expect(errors.map((said) => said.replace(/^Line \d+, /, ""))).toEqual([says]);
  });

  it("is right where it names the place as it is registered", () => {
    expect(errorsOf(textOf({ school: "Fennel Hill School", jurisdiction: "England" }))).toEqual([]);
  });
});

describe("versions", () => {
  const first = documentOf({ inForceFrom: "2026-09-01" });
  const loaded = (...versions: readonly (typeof first)[]) => ({ versions });
  const next = (change: object = {}) =>
    textOf({ version: 2, rules: [{ ...noKiwi, says: "No kiwi, please." }], ...change });

  it("the next one is compared with the newest", () => {
    const found = check(next(), loaded(first));
    expect(found).toMatchObject({ errors: [], against: 1, unchanged: false });
    expect(found.difference?.rules).toMatchObject([{ kind: "CHANGED", fields: [{ field: "says" }] }]);
  });

  it("sent again under its number or the next it is there already, and under another it is not", () => {
    const again = (version: number) => check(textOf({ inForceFrom: "2026-09-01", version }), loaded(first));
    for (const version of [1, 2]) expect(again(version)).toMatchObject({ errors: [], unchanged: true });
    expect(again(3).errors.map(({ path }) => path)).toEqual(["version", "inForceFrom"]);
  });

  it.each([
    ["a gap", next({ version: 4 }), "version is 4; expected: 2: a version that is loaded is never edited."],
    [
      "an edit",
      next({ version: 1 }),
      "version is 1, which is loaded and says something else; expected: 2: a version that is loaded is never edited.",
    ],
    [
      "the past",
      next({ inForceFrom: "2026-11-24" }),
      "inForceFrom is 2026-11-24, which is past; expected: 2026-11-25 or later: boxes were planned under version 1.",
    ],
  ])("%s is refused", (_, text, says) => {
    expect(errorsOf(text, loaded(first)).map((said) => said.replace(/^Line \d+, /, ""))).toEqual([says]);
  });

  it("a first one begins with 1 and may begin in the past", () => {
    expect(errorsOf(textOf({ inForceFrom: "2025-09-01" }))).toEqual([]);
    expect(check(textOf({ version: 2 })).errors).toMatchObject([
      { path: "version", expected: "1: a version that is loaded is never edited" },
    ]);
  });

  it("may begin today", () => expect(errorsOf(next({ inForceFrom: place.today }), loaded(first))).toEqual([]));

  it("one that overlaps a pending one is refused, ended before it is accepted", () => {
    const pending = documentOf({ version: 2, inForceFrom: "2027-02-01" });
    const third = (change: object) => next({ version: 3, ...change });
    expect(errorsOf(third({}), loaded(first, pending))).toEqual([
      `Line ${lineOf(third({}), '"inForceFrom"')}, inForceFrom overlaps version 2, which begins on 2027-02-01; expected: 2027-02-01 or later, or an inForceUntil before it.`,
    ]);
    expect(errorsOf(third({ inForceUntil: "2027-01-31" }), loaded(first, pending))).toEqual([]);
    expect(errorsOf(third({ inForceFrom: "2027-02-01" }), loaded(first, pending))).toEqual([]);
    expect(errorsOf(third({ withdrawn: true, rules: [] }), loaded(first, pending))).toEqual([]);
  });

  it("one that ends between two pending ones overlaps the first", () => {
    const second = documentOf({ version: 2, inForceFrom: "2027-02-01" });
    const third = documentOf({ version: 3, inForceFrom: "2027-04-01" });
    const between = next({ version: 4, inForceUntil: "2027-03-01" });
    expect(check(between, loaded(first, second, third)).errors).toMatchObject([
      { path: "inForceFrom", problem: "overlaps version 2, which begins on 2027-02-01" },
    ]);
  });

  it("one that ends and lets the old one hold again is odd", () => {
    const trial = next({ inForceUntil: "2027-03-25" });
    expect(warningsOf(trial, loaded(first))).toEqual([
      `Line ${lineOf(trial, '"inForceUntil"')}, inForceUntil is 2027-03-25; version 1 holds again after it; expected: as meant.`,
    ]);
    expect(warningsOf(trial, loaded({ ...first, inForceUntil: "2027-03-25" }))).toEqual([]);
    expect(warningsOf(trial, loaded({ ...first, withdrawn: true, rules: [] }))).toEqual([]);
  });
});

describe("what is odd and by itself no reason to refuse", () => {
  it("a food that the catalogue does not have, with those that look like it", () => {
    const text = withRule({ matches: { anyOf: [{ foods: ["apple-raw", "aple-raw"] }] } });
    const [warning] = check(text).warnings;
    expect(warning).toMatchObject({ path: "rules.0.matches.anyOf.0.foods.1", line: lineOf(text, 'aple-raw"') });
    expect(warning!.nearest[0]).toBe("apple-raw");
  });

  it("a matcher that means nothing of today's catalogue", () => {
    const text = withRule({ matches: { anyOf: [{ groups: ["FRUIT"], origins: ["FISH"] }] } });
    expect(warningsOf(text)).toEqual([
      `Line ${lineOf(text, '"matches"')}, rules.0.matches matches no food of today's catalogue; expected: something that a box may hold.`,
    ]);
  });

  it("a break that is in no class, and one that is in some class only is not odd", () => {
    const text = withRule({ breaks: ["lunchtime"] });
    expect(warningsOf(text)).toEqual([
      `Line ${lineOf(text, '"lunchtime"')}, rules.0.breaks.0 "lunchtime" is no break here, so that the rule holds at none; expected: one of morning-break, lunch. Did you mean lunch, morning-break?`,
    ]);
    const classes = [
      { breakKeys: ["lunch"], others: [] },
      { breakKeys: ["lunchtime"], others: [] },
    ];
    expect(warningsOf(text, { classes })).toEqual([]);
    expect(warningsOf(text, { classes: [] })).toEqual([]);
  });

  it("two shares that only a box with none of it keeps", () => {
    const share = {
      kind: "SHARE",
      matches: undefined,
      part: { anyOf: [{ wholeGrain: true }] },
      whole: { anyOf: [{ groups: ["BREAD"] }] },
      unit: "GRAMS",
    };
    const rules = [
      { ...noKiwi, ...share, id: "most", atLeast: 80 },
      { ...noKiwi, ...share, id: "half", atMost: 0.5 },
    ];
    expect(warningsOf(textOf({ rules }))).toEqual([
      expect.stringMatching(
        /^Line \d+, rules.0 "most" asks for at least 80, and "half" allows at most 0.5: only a box with none of it keeps both;/,
      ),
    ]);
    // Eighty in a hundred are less than nine tenths.
    expect(warningsOf(textOf({ rules: [rules[0], { ...rules[1], atMost: 0.9 }] }))).toEqual([]);
  });
});

describe("clashes", () => {
  const fruitDaily = {
    ...noKiwi,
    id: "fruit-daily",
    kind: "FREQUENCY",
    counts: "ITEMS",
    per: "BOX",
    atLeast: 1,
    matches: { anyOf: [{ groups: ["FRUIT"] }] },
  };
  const noFruit = { ...noKiwi, id: "no-fruit", matches: { anyOf: [{ groups: ["FRUIT"] }] } };

  it("within the document are named by rule and line", () => {
    const text = textOf({ rules: [fruitDaily, noFruit] });
    expect(errorsOf(text)).toEqual([
      `Line ${lineOf(text, "{\n   ")}, rules.0 "fruit-daily" asks for what "no-fruit" shuts out altogether; expected: rules that a box can keep together.`,
    ]);
  });

  it("with another layer are told of this document's rule, and once for all classes", () => {
    const others = [documentOf({ key: "county", layer: "JURISDICTION", rules: [fruitDaily] })];
    const classes = [
      { breakKeys: ["lunch"], others },
      { breakKeys: ["morning-break", "lunch"], others },
    ];
    expect(check(textOf({ rules: [noKiwi, noFruit] }), { classes }).errors).toMatchObject([
      { path: "rules.1", problem: '"fruit-daily" of county asks for what "no-fruit" shuts out altogether' },
    ]);
  });

  it("among other documents are not this one's fault", () => {
    const others = [
      documentOf({ key: "county", rules: [fruitDaily] }),
      documentOf({ key: "school", rules: [noFruit] }),
    ];
    expect(errorsOf(textOf(), { classes: [{ breakKeys: ["lunch"], others }] })).toEqual([]);
  });
});

describe("lines", () => {
  it("of any part are inside the text, and the nearest part's around one that is not there", () => {
    const read = readDocument(yaml);
    if (!read.ok) throw new Error("the sample cannot be read");
    const { lineOf: at } = read.value;
    expect(at([])).toBe(2);
    expect(at(["rules", 0, "matches", "anyOf", 0, "kinds", 0])).toBe(18);
    expect(at(["rules", 0, "matches", "noneOf"])).toBe(16);
    expect(at(["rules", 7, "matches"])).toBe(10);
    expect(at(["title", "x", "y"])).toBe(4);
    expect(at([head.key])).toBe(2);
  });
});
