/** One transaction, one person, one key: an action happens once, and a refused one leaves nothing behind. */
import { createHash } from "node:crypto";
import { idempotencyKey } from "../../shared/inputs.js";
import { isConflict } from "../database/conflict.js";
import type { Prisma } from "../database/generated/client.js";
import type { Tx } from "../database/database.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { checkInput } from "./check-input.js";
import type { FailureOf } from "./failures.js";

class Refused extends Error {
  constructor(readonly failure: unknown) {
    super("refused");
  }
}

export interface Attempt {
  readonly personId: string;
  readonly action: string;
  readonly key: string;
  /** Everything that makes the request what it is; compared when the key comes again. */
  readonly input: unknown;
  /** Absent: as long as writing usually may take. */
  readonly patienceMs?: number;
  /** Called before each try: what a try that was ended has set outside the transaction never was. */
  readonly forget?: () => void;
}

const fingerprint = (input: unknown) =>
  createHash("sha256")
    .update(JSON.stringify(input, (name, value: unknown) => (name === "idempotencyKey" ? undefined : value)))
    .digest("hex");

const checkKey = (key: string) => checkInput(idempotencyKey, key, "idempotencyKey");

/** How often a change begins that the database ended in favour of another. */
const ATTEMPTS = 4;

/**
 * One transaction as one person; a failure rolls everything back. Two that wait for each other are not the asker's fault: the one
 * that the database ended begins anew, so `work` may run more than once, each time as if it were the first.
 */
export async function allOrNothing<T, E>(
  app: App,
  personId: string,
  work: (tx: Tx) => Promise<Result<T, E>>,
  patienceMs?: number,
): Promise<Result<T, E>> {
  const whole = async (tx: Tx) => {
    const result = await work(tx);
    if (!result.ok) throw new Refused(result.error);
    return result;
  };
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await app.db.asPerson(personId, whole, { patienceMs });
    } catch (error) {
      if (error instanceof Refused) return fail(error.failure as E);
      if (!isConflict(error) || attempt === ATTEMPTS) throw error;
    }
  }
}

/**
 * Runs `work` in one transaction unless the person's key was used before: then the stored outcome is answered again, or
 * `KeyReused` when the input differs. A failure rolls everything back, the key included.
 * @typeParam T what is stored: keys and numbers only
 */
export async function once<T, E>(
  app: App,
  attempt: Attempt,
  work: (tx: Tx) => Promise<Result<T, E>>,
): Promise<Result<T, E | FailureOf<"KeyReused"> | FailureOf<"InvalidInput">>> {
  const checked = checkKey(attempt.key);
  if (!checked.ok) return checked;
  const mark = fingerprint(attempt.input);
  const first = async (tx: Tx): Promise<Result<T, E | FailureOf<"KeyReused">>> => {
    attempt.forget?.();
    // A second request with the same key waits here until the first has committed or rolled back.
    const added = await tx.$executeRaw`insert into idempotency_key (person_id, key, action, fingerprint)
        values (${attempt.personId}::uuid, ${attempt.key}, ${attempt.action}, ${mark}) on conflict (person_id, key) do nothing`;
    if (added === 0) {
      const before = await tx.idempotencyKey.findUniqueOrThrow({
        where: { personId_key: { personId: attempt.personId, key: attempt.key } },
      });
      if (before.fingerprint !== mark || before.action !== attempt.action)
        return fail({ kind: "KeyReused", usedFor: before.action } as const);
      return ok(before.outcome as T);
    }
    const result = await work(tx);
    if (!result.ok) return result;
    await tx.idempotencyKey.update({
      where: { personId_key: { personId: attempt.personId, key: attempt.key } },
      data: { outcome: result.value as Prisma.InputJsonValue },
      select: { id: true },
    });
    return result;
  };
  return allOrNothing(app, attempt.personId, first, attempt.patienceMs);
}

/**
 * Whether a week is still at the revision that was seen: null when it is. Else its twin, sent at the same time, may have done it
 * since, and that one's outcome is the answer.
 */
export async function checkRevision<T>(
  app: App,
  attempt: Attempt,
  seenRevision: number,
  currentRevision: number,
): Promise<Result<T, FailureOf<"KeyReused" | "InvalidInput" | "RevisionPassed">> | null> {
  if (currentRevision === seenRevision) return null;
  return (await before<T>(app, attempt)) ?? fail({ kind: "RevisionPassed", seenRevision, currentRevision });
}

/** The outcome stored under a key, for actions that work long before they write; null when the key is new. */
export async function before<T>(
  app: App,
  attempt: Attempt,
): Promise<Result<T, FailureOf<"KeyReused"> | FailureOf<"InvalidInput">> | null> {
  const checked = checkKey(attempt.key);
  if (!checked.ok) return checked;
  const known = await app.db.asPerson(attempt.personId, (tx) =>
    tx.idempotencyKey.findUnique({ where: { personId_key: { personId: attempt.personId, key: attempt.key } } }),
  );
  if (!known) return null;
  if (known.fingerprint !== fingerprint(attempt.input) || known.action !== attempt.action)
    return fail({ kind: "KeyReused", usedFor: known.action });
  return ok(known.outcome as T);
}
