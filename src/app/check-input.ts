import type { z } from "zod";
import { fail, ok, type Result } from "../domain/result.js";
import type { FailureOf, InputIssue } from "./failures.js";

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
    issues: parsed.error.issues.map((issue): InputIssue => {
      const field = [at, ...issue.path.map(String)].filter((part) => part !== "").join(".");
      return {
        field,
        problem: `${JSON.stringify(valueAt(input, issue.path)) ?? "nothing"} cannot be used`,
        fix: issue.message,
      };
    }),
  });
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
