import type { z } from "zod";
import { fail, ok, type Result } from "../domain/result.js";
import type { FailureOf, InputIssue } from "./failures.js";

/** A list that is all wrong is told of by its beginning. */
const MOST_ISSUES = 50;
/** Characters of what was sent that a complaint repeats. */
const MOST_REPEATED = 200;

/** All complaints at once, each with its path, what is wrong and what to send instead. */
export function checkInput<S extends z.ZodType>(
  schema: S,
  input: unknown,
  at = "",
): Result<z.infer<S>, FailureOf<"InvalidInput">> {
  const parsed = schema.safeParse(input);
  if (parsed.success) return ok(parsed.data);
  return fail({
    kind: "InvalidInput",
    issues: listsFirst(parsed.error.issues).map((issue): InputIssue => {
      const field = [at, ...issue.path.map(String)].filter((part) => part !== "").join(".");
      return {
        field,
        problem: `${repeated(valueAt(input, issue.path))} cannot be used`,
        fix: issue.message,
      };
    }),
  });
}

/** Of many complaints those about a list's length, which stand last, and as many of the rest as anybody reads. */
function listsFirst(issues: readonly z.core.$ZodIssue[]): readonly z.core.$ZodIssue[] {
  if (issues.length <= MOST_ISSUES) return issues;
  const long = issues.filter(({ code }) => code === "too_big");
  return [...long, ...issues.filter(({ code }) => code !== "too_big")].slice(0, MOST_ISSUES);
}

function repeated(value: unknown): string {
  const text = JSON.stringify(value) ?? "nothing";
  return text.length > MOST_REPEATED ? `${text.slice(0, MOST_REPEATED)}...` : text;
}

const valueAt = (input: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (value, key) =>
      typeof value === "object" && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined,
    input,
  );

export const invalid = (field: string, problem: string, fix: string): FailureOf<"InvalidInput"> => ({
  kind: "InvalidInput",
  issues: [{ field, problem, fix }],
});
