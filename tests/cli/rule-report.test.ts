import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ruleSetDocument } from "../../shared/rule-set.js";
import { standardSchema } from "../../shared/standard.js";
import { readRuleReport } from "../../src/cli/rule-checks/report.js";
import { reportOnStandard } from "../../src/cli/rule-checks/standard-report.js";

const report = readRuleReport();

describe("the report on rules", () => {
  it("finds nothing wrong with the standards as they are shipped", () => {
    expect(report.faults).toEqual([]);
    for (const { key, faults } of report.standards) expect([key, faults]).toEqual([key, []]);
  });

  it("counts, for each published standard, what is stated and what is not, and gives the reason", () => {
    expect(report.standards.map(({ key }) => key)).toEqual([
      "england-2014-primary",
      "england-2014-secondary",
      "india-2020",
      "scotland-2008",
      "us-lunch",
      "us-preschool-lunch",
    ]);
    for (const { clauses, stated, cannot, rules } of report.standards) {
      expect(stated).toBeGreaterThan(0);
      expect(rules).toBeGreaterThan(0);
      expect(stated + cannot.length).toBe(clauses);
      for (const { because } of cannot) expect(because.length).toBeGreaterThan(10);
    }
  });

  it("warns of rules that nothing in the catalogue fits, with the reason why they are there", () => {
    const warnings = report.standards.flatMap((standard) => standard.warnings);
    expect(warnings.length).toBeGreaterThan(0);
    for (const warning of warnings)
      expect(warning).toMatch(/^rule [a-z-]+ matches no food of today's catalogue: .{10,}/);
  });
});

describe("what makes the report fail", () => {
  const document = ruleSetDocument.parse({
    format: "noonpail-rule-set/1",
    key: "invented",
    title: "An invented standard",
    layer: "JURISDICTION",
    jurisdiction: "Nowhere",
    coversFoodFromHome: false,
    language: "en",
    version: 1,
    inForceFrom: "2027-01-01",
    rules: [
      {
        id: "fruit",
        kind: "FREQUENCY",
        level: "FORBID",
        says: "Fruit every day.",
        source: "invented for this test",
        matches: { anyOf: [{ groups: ["FRUIT"] }] },
        counts: "ITEMS",
        per: "BOX",
        atLeast: 1,
      },
      {
        id: "dragon",
        kind: "EXCLUDE",
        level: "FORBID",
        says: "No dragon meat.",
        source: "invented for this test",
        matches: { anyOf: [{ kinds: ["dragon"] }] },
      },
    ],
  });
  const clause = (name: string, statedBy: readonly string[]) => ({
    clause: name,
    content: "Something asked.",
    source: "invented for this test",
    statedBy,
  });
  const standardOf = (clauses: readonly object[], idle: readonly object[] = []) =>
    standardSchema.parse({
      source: { publisher: "nobody", edition: "none", licence: "none", note: "invented for this test" },
      key: "invented",
      title: "An invented standard",
      document: "invented",
      clauses,
      idle,
    });
  const excused = [{ rule: "dragon", because: "the catalogue has no dragon" }];
  const found = [{ rule: "dragon", says: "matches nothing" }];
  const faultsOf = (standard: ReturnType<typeof standardOf>) => reportOnStandard(standard, document, found).faults;

  it("is nothing where all rules stand in a clause and are excused where they are idle", () => {
    expect(faultsOf(standardOf([clause("1", ["fruit"]), clause("2", ["dragon"])], excused))).toEqual([]);
  });
  it("is a clause that names a rule which is not there", () => {
    expect(faultsOf(standardOf([clause("1", ["fruit", "dragon", "fish"])], excused))).toEqual([
      "1 names the rule fish, which is not there",
    ]);
  });
  it("is a rule that belongs to no clause", () => {
    expect(faultsOf(standardOf([clause("1", ["dragon"])], excused))).toEqual(["rule fruit belongs to no clause"]);
  });
  it("is a rule that fits nothing, without a reason, or with one that is no longer true", () => {
    const all = [clause("1", ["fruit", "dragon"])];
    expect([
      faultsOf(standardOf(all)),
      faultsOf(standardOf(all, [...excused, { rule: "fruit", because: "the catalogue has no fruit" }])),
    ]).toEqual([
      ["rule dragon matches nothing, and no reason is given"],
      ["a reason is given for the rule fruit, of which nothing has to be said"],
    ]);
  });
  it("is a document that is missing", () => {
    expect(reportOnStandard(standardOf([clause("1", ["fruit"])]), null, []).faults).toEqual([
      "there is no document invented",
      "1 names the rule fruit, which is not there",
    ]);
  });
  it("is a clause that is both stated and not, or neither", () => {
    expect(() => standardOf([{ ...clause("1", ["fruit"]), cannot: "because it cannot" }])).toThrow("either the rules");
    expect(() => standardOf([{ clause: "1", content: "Something.", source: "invented" }])).toThrow("either the rules");
    expect(() => standardOf([clause("1", ["fruit"]), clause("1", ["fruit"])])).toThrow("listed once");
  });

  describe("of a folder", () => {
    let folder = "";
    beforeEach(() => {
      folder = mkdtempSync(join(tmpdir(), "rules-"));
      for (const name of ["rule-sets", "standards"]) mkdirSync(join(folder, name));
    });
    afterEach(() => rmSync(folder, { recursive: true }));
    const write = (path: string, content: unknown): void =>
      writeFileSync(join(folder, path), typeof content === "string" ? content : JSON.stringify(content));
    const standard = standardOf([clause("1", ["fruit"]), clause("2", ["dragon"])], excused);

    it("is nothing where document and standard hold together", () => {
      write("rule-sets/invented.json", document);
      write("standards/invented.json", standard);
      const { faults, standards, others } = readRuleReport(folder);
      expect([faults, standards[0]?.faults, others]).toEqual([[], [], []]);
      expect(standards[0]?.warnings).toEqual([
        'rule dragon "dragon" is in nothing the catalogue has today: the catalogue has no dragon',
      ]);
    });
    it("is a file that is no document, no standard or no JSON, each by its name", () => {
      write("rule-sets/broken.json", "{");
      write("rule-sets/invented.json", { ...document, rules: [{ kind: "NO" }] });
      write("standards/invented.json", standard);
      write("standards/list.json", "[]");
      write("standards/open.json", "{");
      const { faults, standards } = readRuleReport(folder);
      expect([...new Set(faults.map((fault) => /^[a-z]+\.json/.exec(fault)?.[0]))]).toEqual([
        "broken.json",
        "invented.json",
        "list.json",
        "open.json",
      ]);
      expect(standards[0]?.faults[0]).toBe("there is no document invented");
    });
    it("is a document that could be read and not loaded: a rule twice, a day that is none, an asked minimum shut out", () => {
      const [fruit] = document.rules;
      write("rule-sets/twice.json", { ...document, rules: [fruit, fruit] });
      write("rule-sets/day.json", { ...document, inForceFrom: "2027-02-30" });
      const shut = { ...document.rules[1], matches: { anyOf: [{ groups: ["FRUIT"] }] } };
      write("rule-sets/shut.json", { ...document, rules: [fruit, shut] });
      const { faults, others } = readRuleReport(folder);
      expect(faults.map((fault) => /^[a-z]+\.json/.exec(fault)?.[0])).toEqual(["day.json", "shut.json", "twice.json"]);
      expect(others.map((other) => other.document)).toEqual([null, null, null]);
    });
  });
});
