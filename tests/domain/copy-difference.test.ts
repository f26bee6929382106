import { ruleSchema, type Rule } from "../../shared/rule-set.js";
import { copyDifference } from "../../src/domain/rules/copy-difference.js";

const rule = (id: string, change: Record<string, unknown> = {}): Rule =>
  ruleSchema.parse({
    id,
    kind: "EXCLUDE",
    says: `Not ${id}.`,
    level: "FORBID",
    source: "own rule of this test",
    matches: { anyOf: [{ kinds: [id] }] },
    ...change,
  });
const kinds = (...names: string[]) => ({ matches: { anyOf: [{ kinds: names }] } });

describe("a copy beside what the school says", () => {
  it("does not differ where the same is asked under another name, in other words, or in another order", () => {
    const copy = [rule("no-crisps", kinds("crisps", "puffs")), rule("b", kinds("gum"))];
    const school = [rule("a1", { ...kinds("gum"), says: "No gum, please." }), rule("a2", kinds("puffs", "crisps"))];
    expect(copyDifference(copy, school)).toEqual({ fields: [], rules: [] });
  });

  it("differs where the level, the break or the amount is another", () => {
    const school = [rule("a", { ...kinds("gum"), level: "ADVISE" })];
    const [change] = copyDifference([rule("a", kinds("gum"))], school).rules;
    expect(change).toMatchObject({
      kind: "CHANGED",
      fields: [{ field: "level", before: '"FORBID"', after: '"ADVISE"' }],
    });
  });

  it("says which side alone asks for a rule", () => {
    const { rules } = copyDifference([rule("ours"), rule("both")], [rule("both"), rule("theirs")]);
    expect(rules.map(({ kind, rule: { id } }) => [kind, id])).toEqual([
      ["ADDED", "theirs"],
      ["REMOVED", "ours"],
    ]);
  });
});
