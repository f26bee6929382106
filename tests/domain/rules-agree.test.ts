/** The engine that reports against the checker that shares no code with it, on random rules over random boxes. */
import type { Rule } from "../../shared/rule-set.js";
import type { WeekBrief } from "../../src/domain/brief.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { checkWeek } from "../../src/domain/checker/check-week.js";
import type { FaultKind } from "../../src/domain/checker/fault.js";
import { compileRuleSets } from "../../src/domain/rules/compile.js";
import { judgeWeek, type RuleJudgement } from "../../src/domain/rules/judge-week.js";
import type { WeekDraft } from "../../src/domain/week.js";
import { threeChildren } from "../support/demo-brief.js";
import { drawHousehold } from "../support/random-household.js";
import { drawBoxes, drawRuleSet, underRuleSets } from "../support/random-rules.js";

const { catalogue } = threeChildren();
const index = indexCatalogue(catalogue);
const RULES = 45;

function drawWeek(seed: number): { brief: WeekBrief; draft: WeekDraft } {
  const sets = [drawRuleSet(seed * 7 + 1, "first", RULES), drawRuleSet(seed * 7 + 2, "second", RULES)];
  const brief = underRuleSets(drawHousehold(seed), sets, seed * 7 + 3);
  return { brief, draft: drawBoxes(brief, index, seed * 7 + 4) };
}

const judgeDraft = (brief: WeekBrief, draft: WeekDraft): RuleJudgement[] =>
  judgeWeek(brief, compileRuleSets(brief.ruleSets, index, brief.labels, brief.credits), draft.boxes);

/** One line a rule, child and date (or week), however many items are behind it. */
const linesOf = (
  rows: readonly { childId: string; set: string; rule: string; date: string | null | undefined }[],
): string[] =>
  [...new Set(rows.map(({ childId, set, rule, date }) => `${childId} ${set}/${rule} ${date ?? "week"}`))].sort();

function told(brief: WeekBrief, judged: readonly RuleJudgement[], isMeant: (row: RuleJudgement) => boolean): string[] {
  return linesOf(
    judged
      .filter(isMeant)
      .map(({ childId, ruleSet, rule, date }) => ({ childId, set: brief.ruleSets[ruleSet]!.key, rule: rule.id, date })),
  );
}
function found(brief: WeekBrief, draft: WeekDraft, kind: FaultKind): string[] {
  return linesOf(
    checkWeek(brief, draft)
      .filter((fault) => fault.kind === kind && fault.ruleSet !== undefined)
      .map(({ childId = "", ruleSet = "", rule = "", date }) => ({ childId, set: ruleSet, rule, date })),
  );
}

const seeds = Array.from({ length: 24 }, (_, at) => 5000 + at);

test("what the engine calls not met is what the independent checker calls broken, rule by rule and day by day", () => {
  const kinds = new Map<string, number>();
  for (const seed of seeds) {
    const { brief, draft } = drawWeek(seed);
    const judged = judgeDraft(brief, draft);
    expect({ seed, broken: told(brief, judged, ({ state }) => state === "NOT_MET") }).toEqual({
      seed,
      broken: found(brief, draft, "RULE_BROKEN"),
    });
    for (const { rule, state } of judged) {
      const key = `${rule.kind} ${state}`;
      kinds.set(key, (kinds.get(key) ?? 0) + 1);
    }
  }
  // Each kind is met and broken often enough for the agreement to mean something.
  const all: readonly Rule["kind"][] = [
    "EXCLUDE",
    "ONLY",
    "FREQUENCY",
    "AMOUNT",
    "SHARE",
    "NUTRIENT",
    "TOGETHER",
    "SERVING",
  ];
  for (const kind of all)
    for (const state of ["MET", "NOT_MET"]) expect(kinds.get(`${kind} ${state}`) ?? 0).toBeGreaterThan(50);
});

test("what the engine cannot know for want of a figure the checker does not know either", () => {
  let lines = 0;
  for (const seed of seeds) {
    const { brief, draft } = drawWeek(seed);
    const open = told(brief, judgeDraft(brief, draft), ({ reason }) => reason === "FIGURE_MISSING");
    expect({ seed, open }).toEqual({ seed, open: found(brief, draft, "NOT_KNOWN") });
    lines += open.length;
  }
  expect(lines).toBeGreaterThan(50);
});

test("every rule of every child's rule sets has its line", () => {
  for (const seed of seeds) {
    const { brief, draft } = drawWeek(seed);
    const judged = judgeDraft(brief, draft);
    const rules = new Set(judged.map(({ childId, ruleSet, rule }) => `${childId}/${ruleSet}/${rule.id}`));
    expect(rules.size).toBe(brief.children.length * 2 * RULES);
    for (const { state, reason } of judged) expect(reason === null).toBe(state === "MET" || state === "NOT_MET");
  }
});

test("taking a rule away changes nothing of what is said of the others", () => {
  for (const seed of seeds.slice(0, 8)) {
    const { brief, draft } = drawWeek(seed);
    const [first, second] = brief.ruleSets as [WeekBrief["ruleSets"][number], WeekBrief["ruleSets"][number]];
    const gone = first.rules[seed % RULES]!;
    const ruleSets = [{ ...first, rules: first.rules.filter((rule) => rule !== gone) }, second];
    const left = judgeDraft({ ...brief, ruleSets }, draft);
    expect(left).toEqual(judgeDraft(brief, draft).filter(({ rule }) => rule !== gone));
  }
});
