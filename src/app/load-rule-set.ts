/** An administrator loads a rule set document as a new version. */
import { randomUUID } from "node:crypto";
import { ruleSetDocument } from "../../shared/rule-set.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { checkInput, invalid } from "./check-input.js";
import type { FailureOf, InputIssue } from "./failures.js";
import { toDate } from "./local-day.js";
import { once } from "./once.js";
import { queueRecheck, recheckNow, touching } from "./recheck.js";

export interface LoadRuleSet {
  readonly idempotencyKey: string;
  readonly schoolId: string | null;
  readonly schoolClassId?: string | null;
  readonly seenRevision: number;
  readonly document: string;
}

const MOST_CHARACTERS = 200_000;

/** What PostgreSQL's jsonb refuses in any text of the document. */
function holdsUnstorable(value: unknown): boolean {
  if (typeof value === "string") return /[\0\p{Cs}]/u.test(value);
  return typeof value === "object" && value !== null && Object.entries(value).flat().some(holdsUnstorable);
}

export async function loadRuleSet(
  app: App,
  personId: string,
  input: LoadRuleSet,
): Promise<
  Result<
    { ruleSetId: string; schoolId: string },
    FailureOf<"InvalidInput" | "SchoolNotFound" | "NotAppointed" | "RevisionPassed" | "KeyReused">
  >
> {
  if (input.document.length > MOST_CHARACTERS)
    return fail(invalid("document", `has ${input.document.length} characters`, `Send at most ${MOST_CHARACTERS}.`));
  let json: unknown;
  try {
    json = JSON.parse(input.document);
  } catch (error) {
    return fail(
      invalid(
        "document",
        `is not JSON: ${(error as Error).message}`,
        "Send one JSON object in the format noonpail-rule-set/1.",
      ),
    );
  }
  if (holdsUnstorable(json))
    return fail(
      invalid("document", "holds U+0000 or half of a surrogate pair", "Take the character out: it cannot be stored."),
    );
  const checked = checkInput(ruleSetDocument, json, "document");
  if (!checked.ok) return checked;
  const document = checked.value;
  const layer = input.schoolClassId == null ? "SCHOOL" : "CLASS";
  const issues: InputIssue[] = [];
  if (document.layer !== layer)
    issues.push({ field: "document.layer", problem: `is ${document.layer}`, fix: `Use ${layer} here.` });
  if (document.inForceUntil !== undefined && document.inForceUntil < document.inForceFrom)
    issues.push({
      field: "document.inForceUntil",
      problem: "lies before inForceFrom",
      fix: "Send a later day or leave it out.",
    });
  const ids = document.rules.map((rule) => rule.id);
  for (const [at, id] of ids.entries()) {
    if (ids.indexOf(id) !== at)
      issues.push({
        field: `document.rules.${at}.id`,
        problem: `"${id}" comes twice`,
        fix: "Give every rule an id of its own.",
      });
  }
  if (issues.length > 0) return fail({ kind: "InvalidInput", issues });
  const loaded = await once<
    { ruleSetId: string; schoolId: string },
    FailureOf<"InvalidInput" | "SchoolNotFound" | "NotAppointed" | "RevisionPassed">
  >(app, { personId, action: "loadRuleSet", key: input.idempotencyKey, input }, async (tx) => {
    const school =
      input.schoolId === null
        ? null
        : await tx.school.findUnique({
            where: { id: input.schoolId },
            select: { id: true, classes: { select: { id: true } } },
          });
    if (!school) return fail({ kind: "SchoolNotFound" });
    const appointed = await tx.$queryRaw<
      unknown[]
    >`select 1 from app_appointed_school_ids() a where a = ${school.id}::uuid`;
    if (appointed.length === 0) return fail({ kind: "NotAppointed" });
    if (input.schoolClassId != null && !school.classes.some((entry) => entry.id === input.schoolClassId))
      return fail(invalid("schoolClassId", "is no class of this school", "Send the ID of one of its classes."));
    const owner = layer === "SCHOOL" ? { schoolId: school.id } : { schoolClassId: input.schoolClassId! };
    const known = await tx.ruleSet.findFirst({
      where: { key: document.key, ...owner },
      include: { versions: { select: { version: true, inForceFrom: true }, orderBy: { version: "desc" }, take: 1 } },
    });
    const current = known?.versions[0]?.version ?? 0;
    if (current !== input.seenRevision)
      return fail({ kind: "RevisionPassed", seenRevision: input.seenRevision, currentRevision: current });
    if (document.version !== current + 1)
      return fail(invalid("document.version", `is ${document.version}`, `The next version is ${current + 1}.`));
    const ruleSetId = known?.id ?? randomUUID();
    if (!known)
      await tx.ruleSet.create({
        data: { id: ruleSetId, key: document.key, layer, ...owner, confirmed: true },
        select: { id: true },
      });
    const versionId = randomUUID();
    await tx.ruleSetVersion.create({
      data: {
        id: versionId,
        ruleSetId,
        version: document.version,
        title: document.title,
        language: document.language,
        coversFoodFromHome: document.coversFoodFromHome,
        inForceFrom: toDate(document.inForceFrom),
        inForceUntil: document.inForceUntil === undefined ? null : toDate(document.inForceUntil),
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
        body: JSON.parse(JSON.stringify(rule)) as object,
      })),
    });
    await queueRecheck(app, tx, touching({ schoolIds: [school.id] }));
    return ok({ ruleSetId, schoolId: school.id });
  });
  if (loaded.ok) await recheckNow(app, touching({ schoolIds: [loaded.value.schoolId] }));
  return loaded;
}
