/** The database as the rest of the program sees it: one pool for writes, one for whole-tree reads, one listener. */
import { AsyncLocalStorage } from "node:async_hooks";
import { createHash } from "node:crypto";
import { PrismaPg } from "@prisma/adapter-pg";
import postgres from "postgres";
import { PrismaClient, type Prisma } from "./generated/client.js";
import { readChangesFor, type ChangesFor } from "./changes-for.js";
import { readFeedOwner, type FeedOwner } from "./feed-owner.js";
import { readHomesToRecheck, type HomeToRecheck, type RecheckScope } from "./homes-to-recheck.js";
import { readReference, type Reference } from "./reference.js";

export type Tx = Prisma.TransactionClient;
export type ReadTx = postgres.TransactionSql;

export interface Database {
  /**
   * The only door for writes: one transaction, one person, row-level security on. Never nested.
   * @param how.unattended the server works in the person's name without having been asked by them, so the log names nobody
   * @param how.patienceMs how long it may take before it is given up
   */
  asPerson<T>(
    personId: string,
    work: (tx: Tx) => Promise<T>,
    how?: { readonly unattended?: boolean; readonly patienceMs?: number | undefined },
  ): Promise<T>;
  /**
   * A read transaction of one person that sees one moment; close it when it is done with. That of a GraphQL operation is held while
   * actions of the same operation read for themselves, so the two have connections of their own, or many operations at once would
   * wait for each other for ever.
   */
  openRead(personId: string, of?: "OPERATION" | "ACTION"): ReadSession;
  /** One read in a transaction of its own, closed behind it; of several that must agree, `openRead` is the way. */
  readAs<T>(personId: string, query: (tx: ReadTx) => Promise<T>): Promise<T>;
  /** The person behind a verified token; made on first sight. */
  signIn(subject: string, name: string): Promise<string>;
  /** Somebody who has signed in before; null for anybody else. */
  knownPerson(subject: string): Promise<string | null>;
  /** Whose calendar feed has an address with this SHA-256 (hex); null for nobody's. Nobody's own read. */
  feedOwner(digest: string): Promise<FeedOwner | null>;
  /** Foods, bases, dishes and small tables. Throws when they were never loaded. */
  readReference(): Promise<Reference>;
  /** The homes whose boxes a change may reach, each with the member in whose name they are looked at. Nobody's own read. */
  homesToRecheck(scope: RecheckScope): Promise<readonly HomeToRecheck[]>;
  /** Takes tokens from a bucket of the rate limits, in a statement of its own. */
  readonly takeRate: TakeRate;
  /** The homes in which work may begin or get late between two instants, each with the member in whose name it is read. */
  homesToRemind(since: Date, until: Date): Promise<readonly HomeToRecheck[]>;
  /** What came after an entry of a household's log, read once for all these listeners, and which of them may hear it. */
  changesFor(householdId: string, personIds: readonly string[], after: number, most: number): Promise<ChangesFor>;
  /**
   * What changed, as the triggers and jobs announce it. Returns the way to stop.
   * @param onAgain the connection was lost and is there again: what was announced in between went unheard
   */
  listen(onNotice: (notice: Notice) => void, onAgain: () => void): Promise<() => Promise<void>>;
  announce(notice: Notice): Promise<void>;
  /** Throws when the connected role could see past row security, naming the reason. */
  refusePowerfulRole(): Promise<void>;
  isReachable(): Promise<boolean>;
  close(): Promise<void>;
}

/**
 * @param bucket a keyed hash; never an address or a person
 * @param tokens up to so many; 1 or more
 * @param perMinute tokens that come back in a minute; as many are there at first
 * @returns how many there were, and the wait for the next when there was none
 */
export type TakeRate = (
  bucket: string,
  tokens: number,
  perMinute: number,
) => Promise<{ readonly granted: number; readonly retryAfterMs: number }>;

export type Notice =
  | { kind: "PLAN_CHANGED"; householdId: string; weekId: string; weekStart: string; revision: number }
  /** The household's log goes as far as `seq` now. */
  | { kind: "CHANGED"; householdId: string; seq: number }
  | { kind: "PLAN_PROGRESS"; householdId: string; weekStart: string; percent: number; bestPoints: number | null }
  /** A box of this child was blocked or passes again; each home of the child is told for itself. */
  | { kind: "BOX_CHECKED"; householdId: string; childId: string; date: string }
  /** A carer is none any more: what they listen to of this household ends. */
  | { kind: "CARER_LEFT"; householdId: string; personId: string }
  /** A job ended without a plan; why, as a sentence that everybody in the household may read. */
  | { kind: "PLAN_FAILED"; householdId: string; weekStart: string; failure: string }
  /** To one person, or to everybody in the household where there is none. */
  | { kind: "REMINDER"; householdId: string; reminderId: string; personId: string | null }
  /** For the servers alone: what they remember of this person is to be forgotten. */
  | { kind: "PERSON_ERASED"; personId: string };

export interface ReadSession {
  /** Runs one whole-tree statement inside the shared transaction; opens it on first use. */
  read<T>(query: (tx: ReadTx) => Promise<T>): Promise<T>;
  /** Statements sent so far, BEGIN and the setting included. */
  statements(): number;
  close(): Promise<void>;
}

const CHANNEL = "noonpail";
const NAMES_KEPT = 2_000;

/** Prepared-statement names: the same text always has the same name; past the bound a statement stays unnamed. */
function createStatementNamer(): (query: { sql: string }) => string | undefined {
  const names = new Map<string, string>();
  return ({ sql }) => {
    const known = names.get(sql);
    if (known !== undefined) return known;
    if (names.size >= NAMES_KEPT) return undefined;
    const name = createHash("sha1").update(sql).digest("hex");
    names.set(sql, name);
    return name;
  };
}

/** Announced when the transaction commits, in the order of its statements, and not at all when it does not. */
export async function announceIn(tx: Tx, notice: Notice): Promise<void> {
  await tx.$executeRaw`select pg_notify(${CHANNEL}, ${JSON.stringify(notice)})`;
}

export function connectDatabase(url: string, options: { writers?: number; readers?: number } = {}): Database {
  const adapter = new PrismaPg({ connectionString: url, max: options.writers ?? 6 }, {
    statementNameGenerator: createStatementNamer(),
  } as ConstructorParameters<typeof PrismaPg>[1]);
  const prisma = new PrismaClient({ adapter });
  const readers = () =>
    postgres(url, {
      max: options.readers ?? 10,
      onnotice: () => undefined,
      connection: { application_name: "noonpail" },
    });
  const [sql, forActions] = [readers(), readers()];
  const inside = new AsyncLocalStorage<true>();

  const openRead: Database["openRead"] = (personId, of = "ACTION") => {
    let count = 0;
    let opened: Promise<{ tx: ReadTx; finish: () => void; done: Promise<unknown> }> | null = null;
    const open = () =>
      (opened ??= new Promise((resolve, reject) => {
        let finish: () => void = () => undefined;
        const held = new Promise<void>((release) => (finish = release));
        // One moment for everything an operation reads: what it says and how far it says the log goes belong together.
        const done = (of === "OPERATION" ? sql : forActions).begin(
          "isolation level repeatable read read only",
          async (tx) => {
            count += 2;
            // Not awaited: the setting and the first read travel together on the wire.
            tx`select set_config('app.person_id', ${personId}, true)`.catch(() => undefined);
            resolve({ tx, finish, done });
            await held;
          },
        );
        done.catch(reject);
      }));
    return {
      async read(query) {
        const { tx } = await open();
        count += 1;
        return query(tx);
      },
      statements: () => count,
      async close() {
        const session = await opened?.catch(() => null); // whoever read has heard of it
        if (!session) return;
        session.finish();
        await session.done.catch(() => undefined);
      },
    };
  };

  return {
    asPerson(personId, work, { unattended = false, patienceMs = 15_000 } = {}) {
      if (inside.getStore())
        throw new Error(
          "asPerson inside asPerson would wait for a second connection; pass the transaction on instead.",
        );
      return inside.run(true, () =>
        prisma.$transaction(
          async (tx) => {
            await tx.$executeRaw`select set_config('app.person_id', ${personId}, true), set_config('app.unattended', ${unattended ? "on" : "off"}, true)`;
            return work(tx);
          },
          { timeout: patienceMs, maxWait: 5_000 },
        ),
      );
    },

    openRead,

    async readAs(personId, query) {
      const session = openRead(personId);
      try {
        return await session.read(query);
      } finally {
        await session.close();
      }
    },

    async signIn(subject, name) {
      const [row] = await sql<{ id: string }[]>`select app_sign_in(${subject}, ${name}) as id`;
      return row!.id;
    },

    async knownPerson(subject) {
      const [row] = await sql<{ id: string | null }[]>`select app_known_person(${subject}) as id`;
      return row!.id;
    },

    feedOwner: (digest) => readFeedOwner(sql, digest),

    readReference: () => readReference(sql),

    homesToRecheck: (scope) => readHomesToRecheck(sql, scope),

    async takeRate(bucket, tokens, perMinute) {
      const [row] = await sql<{ granted: number; retryAfterMs: number }[]>`
        select granted, retry_after_ms as "retryAfterMs" from app_take_rate(${bucket}, ${tokens}, ${perMinute}, ${perMinute})`;
      return row!;
    },

    homesToRemind: (since, until) => sql<HomeToRecheck[]>`
      select household_id as "householdId", person_id as "personId" from app_homes_to_remind(${since}, ${until})`,

    changesFor: (householdId, personIds, after, most) => readChangesFor(sql, householdId, personIds, after, most),

    async listen(onNotice, onAgain) {
      let before = false;
      const subscription = await sql.listen(
        CHANNEL,
        (payload) => onNotice(JSON.parse(payload) as Notice),
        () => {
          if (before) onAgain();
          before = true;
        },
      );
      return () => subscription.unlisten();
    },

    async announce(notice) {
      await sql.notify(CHANNEL, JSON.stringify(notice));
    },

    async refusePowerfulRole() {
      // 'member' also counts a role that could only SET ROLE to the powerful one.
      const [row] = await sql<{ name: string; superuser: boolean; bypass: boolean; owns: boolean }[]>`
        select current_user as name, bool_or(r.rolsuper) as superuser, bool_or(r.rolbypassrls) as bypass,
          exists (select from pg_class c join pg_namespace n on n.oid = c.relnamespace
            where n.nspname = 'public' and c.relkind in ('r', 'p') and pg_has_role(current_user, c.relowner, 'member')) as owns
        from pg_roles r where pg_has_role(current_user, r.oid, 'member')`;
      const why = row!.superuser
        ? "is a superuser or may become one"
        : row!.bypass
          ? "has BYPASSRLS or may get it"
          : row!.owns
            ? "owns tables"
            : null;
      if (why) {
        throw new Error(
          `The database role "${row!.name}" ${why}, so row security would not hold. Connect as a member of noonpail_app that owns nothing (npm run db:migrate makes one).`,
        );
      }
    },

    async isReachable() {
      try {
        await sql`select 1`;
        return true;
      } catch {
        return false;
      }
    },

    async close() {
      await Promise.all([prisma.$disconnect(), sql.end({ timeout: 5 }), forActions.end({ timeout: 5 })]);
    },
  };
}
