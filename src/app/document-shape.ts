/** Whether a value has the shape of a rule set document, and where not: zod's findings in a clerk's words. */
import { z } from "zod";
import { MOST_RULES, ruleSetDocument, type RuleSetDocument } from "../../shared/rule-set.js";
import { nearest } from "../domain/nearest.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { DocumentIssue, DocumentText } from "./document-text.js";

/** More are counted and not told one by one. */
export const MOST_ISSUES = 200;

/** The published JSON Schema of the format (2020-12), as a writer of documents sees it. */
export const ruleSetJsonSchema = (): object => z.toJSONSchema(ruleSetDocument, { io: "input" });

export function checkShape(text: DocumentText): Result<RuleSetDocument, readonly DocumentIssue[]> {
  const { value } = text;
  const rules = typeof value === "object" && value !== null ? (value as { rules?: unknown }).rules : undefined;
  // Said once instead of once for each of a hundred thousand.
  if (Array.isArray(rules) && rules.length > MOST_RULES)
    return fail([issueAt(text, ["rules"], `has ${rules.length} rules`, `at most ${MOST_RULES}`)]);
  const parsed = ruleSetDocument.safeParse(value);
  if (parsed.success) return ok(parsed.data);
  const issues = parsed.error.issues.flatMap((issue) => explainIssue(text, issue));
  return fail(cut(issues.sort((a, b) => a.line - b.line)));
}

/** The first of many, and how many more there are. */
export function cut(issues: readonly DocumentIssue[]): readonly DocumentIssue[] {
  if (issues.length <= MOST_ISSUES) return issues;
  const rest = issues.length - MOST_ISSUES;
  const next = issues[MOST_ISSUES]!;
  return [
    ...issues.slice(0, MOST_ISSUES),
    { path: "", line: next.line, problem: `${rest} more like these`, expected: "mend the first ones", nearest: [] },
  ];
}

export function issueAt(
  text: DocumentText,
  path: readonly PropertyKey[],
  problem: string,
  expected: string,
  near: readonly string[] = [],
): DocumentIssue {
  return { path: path.map(String).join("."), line: text.lineOf(path), problem, expected, nearest: near };
}

const MOST_SHOWN = 60;
function shown(value: unknown): string {
  if (value === undefined) return "is missing";
  const json = JSON.stringify(value);
  return `is ${json.length > MOST_SHOWN ? `${json.slice(0, MOST_SHOWN)}...` : json}`;
}

const valueAt = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (at, key) => (typeof at === "object" && at !== null ? (at as Record<PropertyKey, unknown>)[key] : undefined),
    value,
  );

/** A word that is asked for and one that stands there; many words are not listed, the nearest are. */
function wordIssue(text: DocumentText, path: readonly PropertyKey[], words: readonly string[]): DocumentIssue {
  const value = valueAt(text.value, path);
  const few = words.length <= 8;
  const expected = words.length === 1 ? words[0]! : few ? `one of ${words.join(", ")}` : `one of ${words.length} words`;
  const near = typeof value === "string" && words.length > 1 ? nearest(value, words) : few ? [] : words.slice(0, 3);
  return issueAt(text, path, shown(value), expected, near);
}

const kinds: Readonly<Record<string, string>> = {
  string: "a text",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list",
  object: "an object",
};
const units: Readonly<Record<string, string>> = { string: "characters", array: "entries" };

function explainIssue(text: DocumentText, issue: z.core.$ZodIssue): DocumentIssue[] {
  const { path } = issue;
  const value = valueAt(text.value, path);
  switch (issue.code) {
    case "invalid_value":
      return [wordIssue(text, path, issue.values.map(String))];
    case "invalid_union":
      return [wordIssue(text, path, "options" in issue ? (issue.options as unknown[]).map(String) : [])];
    case "unrecognized_keys": {
      const known = fieldsAt(text.value, path);
      return issue.keys.map((key) =>
        issueAt(text, [...path, key], "is no field of the format", "a field that is", nearest(key, known)),
      );
    }
    case "invalid_type":
      return [issueAt(text, path, shown(value), kinds[issue.expected] ?? issue.expected)];
    case "too_small":
    case "too_big": {
      const least = issue.code === "too_small";
      const limit = least ? issue.minimum : issue.maximum;
      const unit = units[issue.origin];
      const size = typeof value === "string" || Array.isArray(value) ? `has ${value.length} ${unit}` : shown(value);
      return [issueAt(text, path, size, `${least ? "at least" : "at most"} ${limit}${unit ? ` ${unit}` : ""}`)];
    }
    case "custom":
    case "invalid_element":
    case "invalid_format":
    case "invalid_key":
    case "not_multiple_of":
      return [issueAt(text, path, shown(value), issue.message)];
  }
}

/** What the published schema allows at a place, for naming the field that was meant. */
function fieldsAt(value: unknown, path: readonly PropertyKey[]): string[] {
  let schema: JsonSchema = (known ??= ruleSetJsonSchema() as JsonSchema);
  let at = value;
  for (const part of [...path, null]) {
    if (schema.oneOf) {
      const { kind } = at as { kind?: unknown };
      schema = schema.oneOf.find((option) => option.properties?.["kind"]?.const === kind) ?? schema.oneOf[0]!;
    }
    if (part === null) break;
    const next = typeof part === "number" ? schema.items : schema.properties?.[String(part)];
    if (next === undefined) return [];
    schema = next;
    at = (at as Record<PropertyKey, unknown>)[part];
  }
  return Object.keys(schema.properties ?? {});
}
interface JsonSchema {
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly items?: JsonSchema;
  readonly oneOf?: readonly JsonSchema[];
  readonly const?: unknown;
}
let known: JsonSchema | undefined;
