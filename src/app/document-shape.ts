/** Whether a value has the shape of a rule set document, and where not: zod's findings in a clerk's words. */
import { z } from "zod";
import { MOST_RULES, ruleSchema, ruleSetDocument, type Rule, type RuleSetDocument } from "../../shared/rule-set.js";
import { nearest } from "../domain/nearest.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { DocumentIssue, DocumentText } from "./document-text.js";

/** More are counted and not told one by one. */
export const MOST_ISSUES = 200;

/** The published JSON Schema of the format (2020-12), as a writer of documents sees it. */
export const ruleSetJsonSchema = (): object => (jsonSchema ??= z.toJSONSchema(ruleSetDocument, { io: "input" }));
let jsonSchema: object | undefined;

export function checkShape(text: DocumentText): Result<RuleSetDocument, readonly DocumentIssue[]> {
  const { value } = text;
  const rules = typeof value === "object" && value !== null ? (value as { rules?: unknown }).rules : undefined;
  // Said once instead of once for each of a hundred thousand.
  if (Array.isArray(rules) && rules.length > MOST_RULES)
    return fail([issueAt(text, ["rules"], `has ${rules.length} rules`, `at most ${MOST_RULES}`)]);
  const parsed = ruleSetDocument.safeParse(value);
  if (parsed.success) return ok(parsed.data);
  const places = parsed.error.issues
    .filter((issue) => !isOfTheMachine(issue))
    .flatMap((issue): Place[] =>
      issue.code === "unrecognized_keys" ? issue.keys.map((key) => ({ issue, key })) : [{ issue, key: null }],
    )
    .map((place) => ({
      ...place,
      line: text.lineOf([...place.issue.path, ...(place.key === null ? [] : [place.key])]),
    }))
    .sort((a, b) => a.line - b.line);
  // A document may have as many mistakes as letters: only those that are told are put into words.
  const told = places
    .slice(0, MOST_ISSUES + 1)
    .map(({ issue, key }) => (key === null ? explainIssue(text, issue) : unknownField(text, issue.path, key)));
  return fail(cut(told, places.length));
}

const { inForceFrom, inForceUntil, ages } = ruleSetDocument.shape;
const spanned = {
  inForceFrom: inForceFrom.optional().catch(undefined),
  inForceUntil: inForceUntil.catch(undefined),
  ages: ages.catch(undefined),
};
const headPart = z.object(spanned).catch({});
const rulePart = z.object({ id: z.string().min(1).optional().catch(undefined), ...spanned }).catch({});

/** What can be read of a document whose shape is wrong: whole rules, and of the others the id, the dates and the ages. */
export interface ReadableParts {
  readonly head: z.infer<typeof headPart>;
  /** As many as there are, in their order. */
  readonly rules: readonly (Rule | z.infer<typeof rulePart>)[];
}

/** Nothing of a document with more rules than it may have. */
export function readableParts(value: unknown): ReadableParts {
  const rules = typeof value === "object" && value !== null ? (value as { rules?: unknown }).rules : undefined;
  const list: readonly unknown[] = Array.isArray(rules) && rules.length <= MOST_RULES ? rules : [];
  return {
    head: headPart.parse(value),
    rules: list.map((rule) => {
      const whole = ruleSchema.safeParse(rule);
      return whole.success ? whole.data : rulePart.parse(rule);
    }),
  };
}

interface Place {
  readonly issue: z.core.$ZodIssue;
  /** Of a field that is none of the format. */
  readonly key: string | null;
}

/** The largest whole number a machine counts to, which every field's own limit lies below. */
const isOfTheMachine = (issue: z.core.$ZodIssue) =>
  (issue.code === "too_big" && issue.maximum === Number.MAX_SAFE_INTEGER) ||
  (issue.code === "too_small" && issue.minimum === Number.MIN_SAFE_INTEGER);

/**
 * The first of many, and how many more there are.
 * @param of how many there are, where not all of them are put into words
 */
export function cut(issues: readonly DocumentIssue[], of = issues.length): readonly DocumentIssue[] {
  if (of <= MOST_ISSUES) return issues;
  const rest = of - MOST_ISSUES;
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
  const parts = path.map((part) => clip(String(part)));
  return { path: parts.join("."), line: text.lineOf(path), problem, expected, nearest: near };
}

const MOST_SHOWN = 60;
const clip = (text: string) => (text.length > MOST_SHOWN ? `${text.slice(0, MOST_SHOWN)}...` : text);
function shown(value: unknown): string {
  if (value === undefined) return "is missing";
  if (value === Infinity || value === -Infinity) return "is a number without end";
  if (Number.isNaN(value)) return "is no number";
  const json = JSON.stringify(value);
  return `is ${clip(json)}`;
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
  const single = words[0] === "true" ? "true, or no such field" : words[0]!;
  const expected = words.length === 1 ? single : few ? `one of ${words.join(", ")}` : `one of ${words.length} words`;
  const near = typeof value === "string" && words.length > 1 ? nearest(value, words) : few ? [] : words.slice(0, 3);
  return issueAt(text, path, shown(value), expected, near);
}

const kinds: Readonly<Record<string, string>> = {
  string: "a text",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list",
  object: "fields with their values",
};
const units: Readonly<Record<string, { readonly one: string; readonly many: string }>> = {
  string: { one: "character", many: "characters" },
  array: { one: "entry", many: "entries" },
};

function unknownField(text: DocumentText, path: readonly PropertyKey[], key: string): DocumentIssue {
  const known = fieldsAt(text.value, path);
  return issueAt(
    text,
    [...path, key],
    `${visible(key)} is no field of the format`,
    "one of its fields",
    nearest(key, known),
  );
}

/** A name in quotes, with a code for every character that a reader cannot see or would take for another. */
const visible = (name: string): string =>
  JSON.stringify(clip(name)).replaceAll(
    /[^ -~]/g,
    (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );

function explainIssue(text: DocumentText, issue: z.core.$ZodIssue): DocumentIssue {
  const { path } = issue;
  const value = valueAt(text.value, path);
  switch (issue.code) {
    case "invalid_value":
      return wordIssue(text, path, issue.values.map(String));
    case "invalid_union":
      return wordIssue(text, path, "options" in issue ? (issue.options as unknown[]).map(String) : []);
    case "invalid_type":
      return issueAt(text, path, shown(value), kinds[issue.expected] ?? issue.expected);
    case "too_small":
    case "too_big": {
      const least = issue.code === "too_small";
      const limit = least ? issue.minimum : issue.maximum;
      const unit = units[issue.origin];
      const counted = (count: number | bigint) => (unit ? ` ${Number(count) === 1 ? unit.one : unit.many}` : "");
      const size =
        typeof value === "string" || Array.isArray(value)
          ? `has ${value.length}${counted(value.length)}`
          : shown(value);
      return issueAt(text, path, size, `${least ? "at least" : "at most"} ${limit}${counted(limit)}`);
    }
    case "unrecognized_keys":
    case "custom":
    case "invalid_element":
    case "invalid_format":
    case "invalid_key":
    case "not_multiple_of":
      return issueAt(text, path, shown(value), issue.message);
  }
}

/** What the published schema allows at a place, for naming the field that was meant. */
function fieldsAt(value: unknown, path: readonly PropertyKey[]): string[] {
  let schema: JsonSchema = ruleSetJsonSchema();
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
