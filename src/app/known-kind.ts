/** A word for a single food that matches none would shut out nothing, and nobody would notice. */
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { nearest } from "../domain/nearest.js";

interface NamedKind {
  readonly foodKind?: string | null | undefined;
  readonly kindUnknown?: boolean;
}

/** Refuses a kind of no food in the catalogue, unless the sender says it is meant; `at` is the field's path in the input. */
export function checkKind(
  app: App,
  { foodKind, kindUnknown }: NamedKind,
  at: string,
): Result<null, FailureOf<"InvalidInput">> {
  if (foodKind == null || kindUnknown === true) return ok(null);
  const kinds = [...new Set(app.reference.catalogue.foods.map(({ kind }) => kind))].sort();
  if (kinds.includes(foodKind)) return ok(null);
  const near = nearest(foodKind, kinds).join(", ");
  return fail(
    invalid(
      at,
      `no food of the catalogue is of the kind "${foodKind}"`,
      `Did you mean ${near}? Send kindUnknown: true to record it all the same: it shuts out nothing until a food of that kind is there.`,
    ),
  );
}
