/** Transactions that the database ended so that others could go on; begun anew they succeed. */

/** PostgreSQL: serialization_failure, deadlock_detected. */
const CODES = new Set(["40001", "40P01"]);

/** The ORM words it three ways: of a query of its own, of raw SQL, and of the commit. */
export function isConflict(error: unknown): boolean {
  if (typeof error !== "object" || error === null) return false;
  const { code, kind, originalCode, cause, meta } = error as Readonly<Record<string, unknown>>;
  if (code === "P2034" || kind === "TransactionWriteConflict") return true;
  if (CODES.has(String(originalCode)) || CODES.has(String(code))) return true;
  const { driverAdapterError } = (meta ?? {}) as Readonly<Record<string, unknown>>;
  return isConflict(driverAdapterError) || isConflict(cause);
}
