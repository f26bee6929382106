/** Who administers what: a jurisdiction's administrators appoint and dismiss, for it and for its schools, and register schools. */
import { randomUUID } from "node:crypto";
import { IANAZone } from "luxon";
import { jurisdictionName, schoolInput, subject as subjectText } from "../../shared/inputs.js";
import type { Tx } from "../database/database.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { audit } from "./audit.js";
import { checkInput, invalid } from "./check-input.js";
import type { FailureOf } from "./failures.js";
import { once } from "./once.js";

/** A school or a jurisdiction. */
export interface AppointmentRef {
  readonly schoolId: string | null;
  readonly jurisdiction: string | null;
}
export interface ChangeAppointment {
  readonly idempotencyKey: string;
  readonly subject: string;
  /** Absent: the jurisdiction is meant. Null: an ID that names no school. */
  readonly schoolId?: string | null;
  readonly jurisdiction?: string | null | undefined;
}
type AppointmentFailure = FailureOf<
  "InvalidInput" | "SchoolNotFound" | "NotAppointed" | "PersonNotFound" | "KeyReused"
>;
type AppointmentChanged<E = never> = Promise<Result<AppointmentRef, AppointmentFailure | E>>;

export const appoint = (app: App, personId: string, input: ChangeAppointment): AppointmentChanged =>
  changeAppointment(app, personId, "appoint", input, async (tx, other, { schoolId, jurisdiction }) => {
    const [row] = await tx.$queryRaw<
      { added: boolean }[]
    >`select app_appoint(${other}::uuid, ${schoolId}::uuid, ${jurisdiction}) as added`;
    return row!.added
      ? ok(null)
      : fail(invalid("subject", `"${input.subject}" is appointed there already`, "There is nothing to do."));
  });

/** The last administrator of a jurisdiction stays: nobody could appoint the next. */
export const dismiss = (
  app: App,
  personId: string,
  input: ChangeAppointment,
): AppointmentChanged<FailureOf<"LastAdministrator">> =>
  changeAppointment(app, personId, "dismiss", input, async (tx, other, { schoolId, jurisdiction }) => {
    const [row] = await tx.$queryRaw<
      { outcome: "DISMISSED" | "ABSENT" | "LAST" }[]
    >`select app_dismiss(${other}::uuid, ${schoolId}::uuid, ${jurisdiction}) as outcome`;
    switch (row!.outcome) {
      case "DISMISSED":
        return ok(null);
      case "LAST":
        return fail({ kind: "LastAdministrator", jurisdiction: jurisdiction! });
      case "ABSENT":
        return fail(invalid("subject", `"${input.subject}" is not appointed there`, "Send one of its administrators."));
    }
  });

/**
 * Whether the person administers the jurisdiction, and so its schools. Its appointments change one after the other, so that nobody is
 * dismissed between this answer and the end of the transaction.
 */
async function appointsTo(tx: Tx, jurisdiction: string): Promise<boolean> {
  await tx.$executeRaw`select pg_advisory_xact_lock(hashtextextended(${`appointments of ${jurisdiction}`}, 0))`;
  const rows = await tx.$queryRaw<unknown[]>`select 1 from app_appointed_jurisdictions() a where a = ${jurisdiction}`;
  return rows.length > 0;
}

async function changeAppointment<E = never>(
  app: App,
  personId: string,
  action: "appoint" | "dismiss",
  input: ChangeAppointment,
  work: (tx: Tx, other: string, to: AppointmentRef) => Promise<Result<null, FailureOf<"InvalidInput"> | E>>,
): AppointmentChanged<E> {
  const checked = checkInput(subjectText, input.subject, "subject");
  if (!checked.ok) return checked;
  const named = checkInput(jurisdictionName.nullish(), input.jurisdiction, "jurisdiction");
  if (!named.ok) return named;
  if ((input.schoolId === undefined) === (input.jurisdiction == null))
    return fail(invalid("jurisdiction", "cannot be told from the school", "Give either schoolId or jurisdiction."));
  return once<AppointmentRef, AppointmentFailure | E>(
    app,
    { personId, action, key: input.idempotencyKey, input },
    async (tx) => {
      const to: AppointmentRef = { schoolId: input.schoolId ?? null, jurisdiction: input.jurisdiction ?? null };
      const school =
        to.schoolId === null
          ? null
          : await tx.school.findUnique({ where: { id: to.schoolId }, select: { jurisdiction: true } });
      if (input.schoolId !== undefined && school === null) return fail({ kind: "SchoolNotFound" });
      const jurisdiction = school === null ? to.jurisdiction : school.jurisdiction;
      if (jurisdiction === null || !(await appointsTo(tx, jurisdiction))) return fail({ kind: "NotAppointed" });
      const [known] = await tx.$queryRaw<{ id: string | null }[]>`select app_known_person(${checked.value}) as id`;
      if (known!.id === null) return fail({ kind: "PersonNotFound", subject: checked.value });
      // Written first: who dismisses themselves may not write it any more afterwards.
      await audit(tx, personId, {
        action: action === "appoint" ? "APPOINTED" : "DISMISSED",
        schoolId: to.schoolId,
        jurisdiction,
        details: { personId: known!.id },
      });
      const done = await work(tx, known!.id, to);
      return done.ok ? ok(to) : done;
    },
  );
}

export interface RegisterSchool {
  readonly idempotencyKey: string;
  readonly name: string;
  readonly timeZone: string;
  readonly jurisdiction: string;
}

/** A school without classes, terms or an administrator of its own. */
export async function registerSchool(
  app: App,
  personId: string,
  input: RegisterSchool,
): Promise<Result<{ schoolId: string }, FailureOf<"InvalidInput" | "NotAppointed" | "KeyReused">>> {
  const checked = checkInput(schoolInput, input);
  if (!checked.ok) return checked;
  const { name, timeZone, jurisdiction } = checked.value;
  if (!isTimeZone(timeZone))
    return fail(invalid("timeZone", `"${timeZone}" is no IANA time zone`, "Send one such as Europe/London."));
  return once<{ schoolId: string }, FailureOf<"InvalidInput" | "NotAppointed">>(
    app,
    { personId, action: "registerSchool", key: input.idempotencyKey, input },
    async (tx) => {
      if (!(await appointsTo(tx, jurisdiction))) return fail({ kind: "NotAppointed" });
      const schoolId = randomUUID();
      const [row] = await tx.$queryRaw<
        { added: boolean }[]
      >`select app_register_school(${schoolId}::uuid, ${name}, ${timeZone}, ${jurisdiction}) as added`;
      if (!row!.added)
        return fail(invalid("name", `there is a school "${name}" already`, "Add its town, or another word."));
      await audit(tx, personId, {
        action: "SCHOOL_CHANGED",
        schoolId,
        jurisdiction,
        details: { registered: { name, timeZone } },
      });
      return ok({ schoolId });
    },
  );
}

/** A name of the IANA time zone database; an offset such as +01:00 has no daylight-saving changes and is none. */
const isTimeZone = (name: string): boolean => /^[A-Za-z]/.test(name) && IANAZone.isValidZone(name);
