/** An administrator loads a rule set document as a new version, withdraws one, or has a school take one over. */
import { createHash, randomUUID } from "node:crypto";
import { plainText } from "../../shared/inputs.js";
import type { RuleSetDocument } from "../../shared/rule-set.js";
import type { ReadTx, Tx } from "../database/database.js";
import { readRulePlace, readRuleSetById, type RuleOwner } from "../database/rule-set.js";
import { isCalendarDate } from "../domain/calendar/dates.js";
import { fail, ok, type Result } from "../domain/result.js";
import { contentOf } from "../domain/rules/document-difference.js";
import { withdrawnFrom } from "../domain/rules/withdrawn.js";
import type { App } from "./app.js";
import { audit, type Audited } from "./audit.js";
import { invalid } from "./check-input.js";
import {
  checkRuleSet,
  knownWords,
  readRuleSetDocument,
  type ReadRuleSet,
  type RuleSetCheck,
  type RuleSetPlace,
} from "./check-rule-set.js";
import type { FailureOf } from "./failures.js";
import { toDate, todayIn } from "./local-day.js";
import { before, once, type Attempt } from "./once.js";
import { queueRecheck, recheckNow, touching } from "./recheck.js";
import { administers } from "./school-days.js";

/** Where a document is loaded; what cannot be read is null. */
export interface RuleTarget {
  readonly schoolId?: string | null;
  readonly schoolClassId?: string | null;
  readonly jurisdiction?: string | null;
}

export interface LoadRuleSet extends RuleTarget {
  readonly idempotencyKey: string;
  readonly seenRevision: number;
  readonly document: string;
}

export interface LoadedRuleSet {
  readonly ruleSetId: string;
  readonly version: number;
  /** It was there already, word for word: nothing was loaded. */
  readonly unchanged: boolean;
}

/** A child's own rules are the family's. */
export type AdministeredOwner = Exclude<RuleOwner, { layer: "CHILD" }>;
type NotHere = FailureOf<"SchoolNotFound" | "NotAppointed" | "InvalidInput">;

/** Whom a target names, if the person administers it. A jurisdiction's administrator administers its schools. */
async function findOwner(read: ReadTx, target: RuleTarget): Promise<Result<AdministeredOwner, NotHere>> {
  const { schoolId, schoolClassId, jurisdiction } = target;
  if (jurisdiction != null) {
    if (schoolId != null || schoolClassId != null)
      return fail(invalid("jurisdiction", "stands beside a school", "Send a school or a jurisdiction."));
    // A name that no text column can hold is nobody's jurisdiction.
    if (!plainText.test(jurisdiction)) return fail({ kind: "NotAppointed" });
    const [row] = await read`select 1 from app_appointed_jurisdictions() a where a = ${jurisdiction}`;
    return row ? ok({ layer: "JURISDICTION", jurisdiction }) : fail({ kind: "NotAppointed" });
  }
  if (schoolId == null) return fail({ kind: "SchoolNotFound" });
  const [school] = await read<{ appointed: boolean; hasClass: boolean }[]>`
    select s.id in (select app_appointed_school_ids()) as appointed,
      exists (select from school_class k where k.school_id = s.id and k.id = ${schoolClassId ?? null}) as "hasClass"
    from school s where s.id = ${schoolId}`;
  if (!school) return fail({ kind: "SchoolNotFound" });
  if (!school.appointed) return fail({ kind: "NotAppointed" });
  if (schoolClassId == null) return ok({ layer: "SCHOOL", schoolId });
  return school.hasClass
    ? ok({ layer: "CLASS", schoolId, schoolClassId })
    : fail(invalid("schoolClassId", "is no class of this school", "Send the ID of one of its classes."));
}

/** A rule set that stands, with its newest version, if the person administers it. */
export async function findAdministered(
  read: ReadTx,
  ruleSetId: string | null,
): Promise<
  Result<
    { readonly owner: AdministeredOwner; readonly newest: RuleSetDocument; readonly timeZone: string },
    FailureOf<"NothingThere" | "NotAppointed">
  >
> {
  const row = ruleSetId === null ? null : await readRuleSetById(read, ruleSetId);
  if (!row || row.owner.layer === "CHILD") return fail({ kind: "NothingThere", what: "rule set" });
  const owner = await findOwner(read, row.owner);
  return owner.ok ? ok({ ...row, owner: owner.value }) : fail({ kind: "NotAppointed" });
}

export interface CheckedRuleSet {
  readonly owner: AdministeredOwner;
  readonly place: RuleSetPlace;
  readonly check: RuleSetCheck;
  /** Null for a key that is new there. */
  readonly ruleSetId: string | null;
}

async function checkAt(app: App, read: ReadTx, owner: AdministeredOwner, sent: ReadRuleSet): Promise<CheckedRuleSet> {
  const key = "document" in sent ? sent.document.key : null;
  const found = await readRulePlace(read, owner, key);
  const place: RuleSetPlace = { ...found.place, today: todayIn(found.timeZone, app.now()) };
  return { owner, place, ruleSetId: found.ruleSetId, check: checkRuleSet(sent, knownWords(app), place) };
}

/** What loading would do, without doing it. */
export async function checkForTarget(
  app: App,
  read: ReadTx,
  target: RuleTarget,
  sent: ReadRuleSet,
): Promise<Result<CheckedRuleSet, NotHere>> {
  const owner = await findOwner(read, target);
  return owner.ok ? ok(await checkAt(app, read, owner.value, sent)) : owner;
}

export const aboutOwner = (owner: AdministeredOwner): Pick<Audited, "schoolId" | "jurisdiction"> =>
  owner.layer === "JURISDICTION" ? { jurisdiction: owner.jurisdiction } : { schoolId: owner.schoolId };

export async function loadRuleSet(
  app: App,
  personId: string,
  input: LoadRuleSet,
): Promise<
  Result<
    LoadedRuleSet & { readonly owner: RuleOwner },
    FailureOf<"InvalidInput" | "DocumentRefused" | "SchoolNotFound" | "NotAppointed" | "RevisionPassed" | "KeyReused">
  >
> {
  const attempt: Attempt = { personId, action: "loadRuleSet", key: input.idempotencyKey, input };
  const known = await before<LoadedRuleSet & { owner: RuleOwner }>(app, attempt);
  if (known) return known;
  const sent = readRuleSetDocument(input.document);
  const checked = await app.db.readAs(personId, (read) => checkForTarget(app, read, input, sent));
  if (!checked.ok) return checked;
  const { owner, check, ruleSetId, place } = checked.value;
  const currentRevision = place.versions.at(-1)?.version ?? 0;
  const { document, unchanged } = check;
  if (check.errors.length > 0 || document === null)
    return fail({ kind: "DocumentRefused", issues: check.errors, warnings: check.warnings });
  if (input.seenRevision !== currentRevision)
    return fail({ kind: "RevisionPassed", seenRevision: input.seenRevision, currentRevision });
  const loaded = await once<LoadedRuleSet & { owner: RuleOwner }, FailureOf<"RevisionPassed">>(
    app,
    attempt,
    async (tx) => {
      if (unchanged && ruleSetId !== null) return ok({ ruleSetId, version: currentRevision, unchanged, owner });
      const added = await addVersion(tx, { personId, owner, ruleSetId, document, seen: currentRevision });
      if (!added.ok) return added;
      const { difference } = check;
      const count = (kind: string) => difference?.rules.filter((change) => change.kind === kind).length ?? 0;
      await audit(tx, personId, {
        action: "RULE_SET_LOADED",
        ...aboutOwner(owner),
        details: {
          ruleSetId: added.value,
          key: document.key,
          version: document.version,
          inForceFrom: document.inForceFrom,
          ...(owner.layer === "CLASS" ? { schoolClassId: owner.schoolClassId } : {}),
          rules: document.rules.length,
          added: count("ADDED"),
          changed: count("CHANGED"),
          removed: count("REMOVED"),
        },
      });
      await queueRecheck(app, tx, await scopeOf(tx, owner, added.value));
      return ok({ ruleSetId: added.value, version: document.version, unchanged: false, owner });
    },
  );
  if (loaded.ok && !loaded.value.unchanged) await recheckOwner(app, personId, owner, loaded.value.ruleSetId);
  return loaded;
}

interface NewVersion {
  readonly personId: string;
  readonly owner: RuleOwner;
  readonly ruleSetId: string | null;
  readonly document: RuleSetDocument;
  /** The newest version when the document was checked. */
  readonly seen: number;
}

/** Writes a version that was checked; refuses when another came in between. Answers the rule set's ID. */
export async function addVersion(
  tx: Tx,
  { personId, owner, ruleSetId, document, seen }: NewVersion,
): Promise<Result<string, FailureOf<"RevisionPassed">>> {
  const id = ruleSetId ?? randomUUID();
  // Two loads of one rule set take turns, so that the second sees what the first has written.
  await tx.$executeRaw`select pg_advisory_xact_lock(hashtextextended(${`${document.key}/${JSON.stringify(owner)}`}, 0))`;
  const known = await tx.ruleSet.findFirst({
    where: { key: document.key, ...columnsOf(owner) },
    select: { id: true, versions: { select: { version: true }, orderBy: { version: "desc" }, take: 1 } },
  });
  const currentRevision = known?.versions[0]?.version ?? 0;
  if (currentRevision !== seen || (known !== null && known.id !== id))
    return fail({ kind: "RevisionPassed", seenRevision: seen, currentRevision });
  if (!known)
    await tx.ruleSet.create({
      data: {
        id,
        key: document.key,
        layer: owner.layer,
        ...columnsOf(owner),
        confirmed: owner.layer !== "CHILD" || owner.copyOfId === null,
      },
      select: { id: true },
    });
  const versionId = randomUUID();
  const { ages, inForceUntil } = document;
  await tx.ruleSetVersion.create({
    data: {
      id: versionId,
      ruleSetId: id,
      version: document.version,
      title: document.title,
      language: document.language,
      coversFoodFromHome: document.coversFoodFromHome,
      inForceFrom: toDate(document.inForceFrom),
      inForceUntil: inForceUntil === undefined ? null : toDate(inForceUntil),
      ...(ages === undefined ? {} : { ages: asJson(ages) }),
      withdrawn: document.withdrawn === true,
      digest: createHash("sha256").update(contentOf(document)).digest("hex"),
      loadedById: personId,
    },
    select: { id: true },
  });
  await tx.rule.createMany({
    data: document.rules.map((rule, place) => ({
      ruleSetVersionId: versionId,
      place,
      ruleKey: rule.id,
      kind: rule.kind,
      level: rule.level,
      says: rule.says,
      source: rule.source,
      body: asJson(rule),
    })),
  });
  return ok(id);
}

/** Without the fields that are undefined. */
const asJson = (value: object) => JSON.parse(JSON.stringify(value)) as object;

function columnsOf(owner: RuleOwner) {
  switch (owner.layer) {
    case "JURISDICTION":
      return { jurisdiction: owner.jurisdiction };
    case "SCHOOL":
      return { schoolId: owner.schoolId };
    case "CLASS":
      return { schoolClassId: owner.schoolClassId };
    case "CHILD":
      return { childId: owner.childId, copyOfId: owner.copyOfId };
  }
}

const askedOf = (schoolIds: readonly string[]) => touching({ schoolIds, news: { kind: "SCHOOL_RULES", schoolIds } });

/** Whose boxes a rule set may touch. */
async function scopeOf(tx: Tx, owner: RuleOwner, ruleSetId: string | null) {
  switch (owner.layer) {
    case "CHILD":
      return touching({ childIds: [owner.childId] });
    case "SCHOOL":
    case "CLASS":
      return askedOf([owner.schoolId]);
    case "JURISDICTION": {
      const rows = await tx.$queryRaw<{ id: string }[]>`
        select s.id from school s where s.jurisdiction = ${owner.jurisdiction}
        union select a.school_id from rule_set_adoption a where a.rule_set_id = ${ruleSetId}::uuid`;
      return askedOf(rows.map(({ id }) => id));
    }
  }
}

async function recheckOwner(app: App, personId: string, owner: RuleOwner, ruleSetId: string): Promise<void> {
  await recheckNow(app, await app.db.asPerson(personId, (tx) => scopeOf(tx, owner, ruleSetId)));
}

export interface WithdrawRuleSet {
  readonly idempotencyKey: string;
  readonly ruleSetId: string | null;
  readonly seenRevision: number;
  /** First day on which it asks for nothing. */
  readonly from: string;
}

type RuleSetChangeFailure = FailureOf<
  "InvalidInput" | "NothingThere" | "NotAppointed" | "RevisionPassed" | "KeyReused"
>;

/** By a newer version without rules: what was in force stays on record. */
export async function withdrawRuleSet(
  app: App,
  personId: string,
  input: WithdrawRuleSet,
): Promise<Result<LoadedRuleSet & { readonly owner: RuleOwner }, RuleSetChangeFailure>> {
  const { from, seenRevision } = input;
  const attempt: Attempt = { personId, action: "withdrawRuleSet", key: input.idempotencyKey, input };
  const known = await before<LoadedRuleSet & { owner: RuleOwner }>(app, attempt);
  if (known) return known;
  if (!isCalendarDate(from))
    return fail(invalid("from", `${from} is no day of the calendar`, "Send a real date as YYYY-MM-DD."));
  const found = await app.db.readAs(personId, (read) => findAdministered(read, input.ruleSetId));
  if (!found.ok) return found;
  const { owner, newest, timeZone } = found.value;
  const today = todayIn(timeZone, app.now());
  if (newest.version !== seenRevision)
    return fail({ kind: "RevisionPassed", seenRevision, currentRevision: newest.version });
  if (from < today)
    return fail(invalid("from", `${from} is past`, `Send ${today} or later: boxes were planned under it until now.`));
  if (newest.withdrawn)
    return fail(invalid("ruleSetId", "is withdrawn already", "Load a document to put a new version in force."));
  const document = withdrawnFrom(newest, from);
  const ruleSetId = input.ruleSetId!;
  const done = await once<LoadedRuleSet & { owner: RuleOwner }, RuleSetChangeFailure>(app, attempt, async (tx) => {
    const added = await addVersion(tx, { personId, owner, ruleSetId, document, seen: newest.version });
    if (!added.ok) return added;
    await audit(tx, personId, {
      action: "RULE_SET_WITHDRAWN",
      ...aboutOwner(owner),
      details: { ruleSetId, key: document.key, version: document.version, from, rules: newest.rules.length },
    });
    await queueRecheck(app, tx, await scopeOf(tx, owner, ruleSetId));
    return ok({ ruleSetId, version: document.version, unchanged: false, owner });
  });
  if (done.ok) await recheckOwner(app, personId, owner, ruleSetId);
  return done;
}

export interface AdoptRuleSet {
  readonly idempotencyKey: string;
  readonly schoolId: string | null;
  readonly ruleSetId: string | null;
  /** False ends it. */
  readonly adopted: boolean;
}

/** A jurisdiction's rule set that does not cover food from home holds in a school that takes it over for boxes. */
export async function adoptRuleSet(
  app: App,
  personId: string,
  input: AdoptRuleSet,
): Promise<
  Result<
    { schoolId: string; ruleSetId: string },
    FailureOf<"InvalidInput" | "SchoolNotFound" | "NothingThere" | "NotAppointed" | "KeyReused">
  >
> {
  const { schoolId, ruleSetId, adopted } = input;
  const scope = askedOf(schoolId === null ? [] : [schoolId]);
  const done = await once<
    { schoolId: string; ruleSetId: string },
    FailureOf<"SchoolNotFound" | "NothingThere" | "NotAppointed">
  >(app, { personId, action: "adoptRuleSet", key: input.idempotencyKey, input }, async (tx) => {
    const school =
      schoolId === null ? null : await tx.school.findUnique({ where: { id: schoolId }, select: { id: true } });
    if (!school) return fail({ kind: "SchoolNotFound" });
    if (!(await administers(tx, school.id))) return fail({ kind: "NotAppointed" });
    const ruleSet =
      ruleSetId === null
        ? null
        : await tx.ruleSet.findUnique({ where: { id: ruleSetId }, select: { id: true, layer: true, key: true } });
    if (ruleSet?.layer !== "JURISDICTION") return fail({ kind: "NothingThere", what: "rule set" });
    const row = { schoolId: school.id, ruleSetId: ruleSet.id };
    const changed = adopted
      ? await tx.$executeRaw`insert into rule_set_adoption (school_id, rule_set_id) values (${row.schoolId}::uuid, ${row.ruleSetId}::uuid)
          on conflict (school_id, rule_set_id) do nothing`
      : (await tx.ruleSetAdoption.deleteMany({ where: row })).count;
    if (changed > 0) {
      await audit(tx, personId, {
        action: adopted ? "ADOPTED" : "ADOPTION_ENDED",
        schoolId: school.id,
        details: { ruleSetId: ruleSet.id, key: ruleSet.key },
      });
      await queueRecheck(app, tx, scope);
    }
    return ok(row);
  });
  if (done.ok) await recheckNow(app, scope);
  return done;
}
