/** Who administers what, and what they did. */
import { GraphQLError } from "graphql";
import { jurisdictionName } from "../../shared/inputs.js";
import { appoint, dismiss, registerSchool, type AppointmentRef, type ChangeAppointment } from "../app/appointments.js";
import { readAppointments, readAudit, readOwnAppointments } from "../database/school.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import { localId } from "./global-id.js";
import type { AppointInput, AuditAction, DismissInput, Resolvers } from "./generated.js";
import type { AppointmentNode, AuditEntryNode } from "./rows.js";
import { keyOf, pageOf, pageSize } from "./page.js";
import { schoolPayload } from "./recheck.resolvers.js";

type Place = { readonly schoolId: string } | { readonly jurisdiction: string };

/** An administrator finds at least themselves; nobody else finds anybody. */
async function appointmentsOf(context: GraphqlContext, of: Place) {
  const rows = await context.reads.session().read((tx) => readAppointments(tx, of));
  return rows.length > 0 ? among(rows) : null;
}

/** Every row with the schools of all of them. */
function among<T extends { readonly schoolId: string | null }>(rows: readonly T[]) {
  const schoolIds = [...new Set(rows.flatMap(({ schoolId }) => schoolId ?? []))];
  return rows.map((row) => ({ row, schoolIds }));
}

const cursor = /^(\d{4}-\d\d-\d\dT[\d:.+-]{8,20}) ([0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12})$/;

async function auditOf(context: GraphqlContext, of: Place, args: { first: number; after?: string | null | undefined }) {
  const size = pageSize(args.first);
  const key = keyOf(args.after);
  const parts = key === null ? null : cursor.exec(key);
  if (key !== null && (parts === null || Number.isNaN(Date.parse(parts[1]!))))
    throw new GraphQLError("after is no cursor of this list; send the endCursor of the page before, or leave it out.", {
      extensions: { code: "BAD_USER_INPUT" },
    });
  const after = parts && { at: parts[1]!, id: parts[2]! };
  const rows = await context.reads.session().read((tx) => readAudit(tx, of, size + 1, after));
  const { nodes, pageInfo } = pageOf(rows, size, ({ at, id }) => `${at} ${id}`);
  return { nodes: among(nodes), pageInfo };
}

async function schoolOf({ row, schoolIds }: AppointmentNode | AuditEntryNode, { reads }: GraphqlContext) {
  if (row.schoolId === null) return null;
  return (await reads.schools(schoolIds)).find(({ id }) => id === row.schoolId) ?? null;
}

export const administratorTypes: Pick<Resolvers, "Appointment" | "AuditEntry"> = {
  Appointment: {
    person: ({ row }) => row.person,
    school: (node, _, context) => schoolOf(node, context),
    jurisdiction: ({ row }) => row.jurisdiction,
    since: ({ row }) => row.since,
  },
  AuditEntry: {
    at: ({ row }) => row.at,
    action: ({ row }) => row.action as AuditAction,
    person: ({ row }) => row.person,
    about: ({ row }) => row.about,
    school: (node, _, context) => schoolOf(node, context),
    jurisdiction: ({ row }) => row.jurisdiction,
    details: ({ row }) => JSON.stringify(row.details),
  },
};

export const administratorsOfSchool: Pick<NonNullable<Resolvers["School"]>, "appointments" | "audit"> = {
  appointments: ({ id }, _, context) => appointmentsOf(context, { schoolId: id }),
  audit: async ({ id }, args, context) =>
    (await context.reads.me())?.schoolIds.includes(id) ? auditOf(context, { schoolId: id }, args) : null,
};

export const appointmentsOfMe: Pick<NonNullable<Resolvers["Me"]>, "appointments"> = {
  appointments: async (_, __, context) => among(await context.reads.session().read(readOwnAppointments)),
};

export const administratorQueries: Pick<
  NonNullable<Resolvers["Query"]>,
  "jurisdictionAppointments" | "jurisdictionAudit"
> = {
  jurisdictionAppointments(_, { jurisdiction }, context) {
    requirePerson(context);
    return jurisdictionName.safeParse(jurisdiction).success ? appointmentsOf(context, { jurisdiction }) : null;
  },
  async jurisdictionAudit(_, { jurisdiction, ...args }, context) {
    requirePerson(context);
    const mine = await context.reads.session().read(readOwnAppointments);
    return mine.some((row) => row.jurisdiction === jurisdiction) ? auditOf(context, { jurisdiction }, args) : null;
  },
};

const askedBy = ({ schoolId, ...input }: AppointInput | DismissInput): ChangeAppointment => ({
  ...input,
  ...(schoolId == null ? {} : { schoolId: localId("School", schoolId) }),
});

async function appointmentsPayload(context: GraphqlContext, { schoolId, jurisdiction }: AppointmentRef) {
  context.reads.forget();
  const of = schoolId === null ? { jurisdiction: jurisdiction! } : { schoolId };
  return { __typename: "AppointmentsPayload" as const, appointments: (await appointmentsOf(context, of)) ?? [] };
}

export const administratorMutations: Pick<
  NonNullable<Resolvers["Mutation"]>,
  "appoint" | "dismiss" | "registerSchool"
> = {
  async appoint(_, { input }, context) {
    const done = await appoint(context.app, requirePerson(context), askedBy(input));
    return done.ok ? appointmentsPayload(context, done.value) : explain(done.error);
  },
  async dismiss(_, { input }, context) {
    const done = await dismiss(context.app, requirePerson(context), askedBy(input));
    return done.ok ? appointmentsPayload(context, done.value) : explain(done.error);
  },
  registerSchool: async (_, { input }, context) =>
    schoolPayload(context, await registerSchool(context.app, requirePerson(context), input)),
};
