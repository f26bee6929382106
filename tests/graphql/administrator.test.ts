import { isUnionType } from "graphql";
import { appointByOperator } from "../../src/database/appoint-by-operator.js";
import { globalId } from "../../src/graphql/global-id.js";
import { newKey } from "../support/app.js";
import { localOf, schoolId, useServedApp } from "../support/served-app.js";
import { DAY } from "./documents.js";
import {
  administrator,
  documentOf,
  jurisdictionMutations,
  schoolDocumentOf,
  schoolInputNow,
  schoolMutations,
} from "./every-mutation.js";

const served = useServedApp();
const APPOINTMENTS =
  "... on AppointmentsPayload { appointments { person { displayName } school { id } jurisdiction since } }";
const FAILURES = `__typename ... on UserError { message } ... on InvalidInput { issues { field problem } } ... on KeyReused { usedFor }`;
const APPOINT = `mutation M($input: AppointInput!) { appoint(input: $input) { ${FAILURES} ... on PersonNotFound { subject } ${APPOINTMENTS} } }`;
const DISMISS = `mutation M($input: DismissInput!) { dismiss(input: $input) { ${FAILURES} ... on LastAdministrator { jurisdiction } ${APPOINTMENTS} } }`;
const REGISTER = `mutation M($input: RegisterSchoolInput!) { registerSchool(input: $input) { ${FAILURES} ... on SchoolPayload { school { id jurisdiction timeZone } } } }`;
const FACILITY = schoolDocumentOf("addSchoolClass");
const AUDIT =
  "audit(first: 50) { nodes { at action person { displayName } about { displayName } school { id } jurisdiction details } }";
const OF_SCHOOL = `query S($id: ID!) { school(id: $id) { appointments { person { displayName } school { id } jurisdiction } ${AUDIT} } }`;
const OF_JURISDICTION = `query J($name: String!) { jurisdictionAppointments(jurisdiction: $name) { person { displayName } }
  jurisdictionAudit(jurisdiction: $name, first: 50) { nodes { action school { name } jurisdiction } } }`;

const send = async (person: string, document: string, input: Record<string, unknown>) =>
  (await served.send(person, document, input)) as any;
/** Somebody who has signed in. */
async function somebody(): Promise<string> {
  const person = served.newcomer();
  await served.ask(person, "{ me { person { id } } }");
  return person;
}
/** A jurisdiction with one administrator and one school. */
async function aJurisdiction() {
  const name = `County ${newKey()}`;
  const chief = await somebody();
  const done = await appointByOperator(served.inProcess.database.ownerUrl, chief, { jurisdiction: name });
  expect(done.kind).toBe("APPOINTED");
  const made = await send(chief, REGISTER, {
    name: `School in ${name}`,
    timeZone: "Africa/Nairobi",
    jurisdiction: name,
  });
  expect(made.school).toMatchObject({ jurisdiction: name, timeZone: "Africa/Nairobi" });
  return { name, chief, schoolId: made.school.id as string };
}
const addClass = async (person: string, id: string) => {
  const { school } = await served.ask<any>(person, "query R($id: ID!) { school(id: $id) { revision } }", { id });
  const pause = { key: "lunch", name: "Lunch", startsAt: "12:00", minutes: 30, slots: ["MAIN"] };
  const input = {
    schoolId: id,
    seenRevision: school.revision,
    name: `Class ${newKey()}`,
    facility: "NEITHER",
    breaks: [pause],
  };
  return (await send(person, FACILITY, input)).__typename as string;
};
const names = (rows: readonly any[]) => rows.map(({ person }) => person.displayName);

describe("appointing", () => {
  it("puts somebody in charge of a school, who then may change it, until they are dismissed", async () => {
    const { chief, schoolId: id } = await aJurisdiction();
    const head = await somebody();
    expect(await addClass(head, id)).toBe("NotAppointed");
    const appointed = await send(chief, APPOINT, { subject: head, schoolId: id });
    expect(names(appointed.appointments)).toEqual([chief, head]);
    expect(appointed.appointments[1]).toMatchObject({ school: { id }, jurisdiction: null });
    expect(await addClass(head, id)).toBe("SchoolPayload");
    expect(await served.ask(head, "{ me { appointments { school { id } jurisdiction } administers { id } } }")).toEqual(
      {
        me: { appointments: [{ school: { id }, jurisdiction: null }], administers: [{ id }] },
      },
    );
    const dismissed = await send(chief, DISMISS, { subject: head, schoolId: id });
    expect(names(dismissed.appointments)).toEqual([chief]);
    expect(await addClass(head, id)).toBe("NotAppointed");
  });

  it("puts somebody in charge of the jurisdiction and its schools, later ones too", async () => {
    const { name, chief, schoolId: id } = await aJurisdiction();
    const second = await somebody();
    const appointed = await send(chief, APPOINT, { subject: second, jurisdiction: name });
    expect(names(appointed.appointments)).toEqual([chief, second]);
    expect(await addClass(second, id)).toBe("SchoolPayload");
    const later = await send(chief, REGISTER, {
      name: `Later in ${name}`,
      timeZone: "Africa/Nairobi",
      jurisdiction: name,
    });
    expect(await addClass(second, later.school.id)).toBe("SchoolPayload");
    const third = await somebody();
    expect((await send(second, APPOINT, { subject: third, schoolId: id })).__typename).toBe("AppointmentsPayload");
  });

  it("reaches no further than what one administers", async () => {
    const [here, there] = [await aJurisdiction(), await aJurisdiction()];
    const [head, other] = [await somebody(), await somebody()];
    await send(here.chief, APPOINT, { subject: head, schoolId: here.schoolId });
    const before = await served.everyRow();
    const beyond: [string, Record<string, unknown>][] = [
      [here.chief, { schoolId: there.schoolId }],
      [here.chief, { jurisdiction: there.name }],
      [here.chief, { schoolId: schoolId("primary") }],
      // Who administers a school alone appoints nobody, not even there.
      [head, { schoolId: here.schoolId }],
      [head, { jurisdiction: here.name }],
      ["demo:ruth", { schoolId: schoolId("primary") }],
      ["demo:ruth", { jurisdiction: "England" }],
      [other, { schoolId: here.schoolId }],
      [other, { jurisdiction: here.name }],
      [other, { jurisdiction: "no such county" }],
    ];
    for (const [person, place] of beyond) {
      expect((await send(person, APPOINT, { subject: other, ...place })).__typename).toBe("NotAppointed");
      expect((await send(person, DISMISS, { subject: here.chief, ...place })).__typename).toBe("NotAppointed");
    }
    for (const jurisdiction of [there.name, "no such county"]) {
      const input = { name: `School ${newKey()}`, timeZone: "Europe/London", jurisdiction };
      expect((await send(here.chief, REGISTER, input)).__typename).toBe("NotAppointed");
      expect((await send(head, REGISTER, { ...input, jurisdiction: here.name })).__typename).toBe("NotAppointed");
    }
    expect(await served.everyRow()).toBe(before);
  });

  it("refuses strangers, doubles, schools that are not there and half an address", async () => {
    const { name, chief, schoolId: id } = await aJurisdiction();
    const head = await somebody();
    await send(chief, APPOINT, { subject: head, schoolId: id });
    const before = await served.everyRow();
    const unknown = await send(chief, APPOINT, { subject: "nobody@example.org", schoolId: id });
    expect(unknown).toMatchObject({ __typename: "PersonNotFound", subject: "nobody@example.org" });
    expect((await send(chief, APPOINT, { subject: head, schoolId: id })).issues).toMatchObject([{ field: "subject" }]);
    expect((await send(chief, DISMISS, { subject: head, jurisdiction: name })).issues).toMatchObject([
      { field: "subject" },
    ]);
    for (const subject of ["", "x".repeat(256), "a\u0000b"])
      expect((await send(chief, APPOINT, { subject, schoolId: id })).issues).toMatchObject([{ field: "subject" }]);
    for (const jurisdiction of ["", "x".repeat(81), "a\u0000b"])
      expect((await send(chief, APPOINT, { subject: head, jurisdiction })).issues).toMatchObject([
        { field: "jurisdiction" },
      ]);
    for (const place of [{}, { schoolId: id, jurisdiction: name }])
      expect((await send(chief, APPOINT, { subject: head, ...place })).issues).toMatchObject([
        { field: "jurisdiction" },
      ]);
    for (const nobodys of [
      globalId("School", "00000000-0000-4000-8000-000000000000"),
      "",
      globalId("Dish", localOf(id)),
    ])
      expect((await send(chief, APPOINT, { subject: head, schoolId: nobodys })).__typename).toBe("SchoolNotFound");
    expect(await served.everyRow()).toBe(before);
  });

  it("never leaves a jurisdiction without an administrator, whoever is dismissed at once", async () => {
    const { name, chief } = await aJurisdiction();
    const alone = await send(chief, DISMISS, { subject: chief, jurisdiction: name });
    expect(alone).toMatchObject({ __typename: "LastAdministrator", jurisdiction: name });
    const { owner } = served.inProcess.database;
    // Several times, for the two to meet at different moments.
    for (let round = 0; round < 5; round += 1) {
      const [remaining] = await owner<{ subject: string }[]>`
        select p.subject from appointment a join person p on p.id = a.person_id where a.jurisdiction = ${name}`;
      const first = remaining!.subject;
      const second = await somebody();
      expect((await send(first, APPOINT, { subject: second, jurisdiction: name })).__typename).toBe(
        "AppointmentsPayload",
      );
      const both = await Promise.all([
        send(first, DISMISS, { subject: second, jurisdiction: name }),
        send(second, DISMISS, { subject: first, jurisdiction: name }),
      ]);
      expect(both.map(({ __typename }) => __typename).sort()).toEqual(["AppointmentsPayload", "NotAppointed"]);
      const [left] = await owner`select count(*)::int as n from appointment where jurisdiction = ${name}`;
      expect(left!["n"]).toBe(1);
    }
  });

  it("somebody may go by themselves, where another stays", async () => {
    const { name, chief } = await aJurisdiction();
    const second = await somebody();
    await send(chief, APPOINT, { subject: second, jurisdiction: name });
    const gone = await send(second, DISMISS, { subject: second, jurisdiction: name });
    expect(gone).toMatchObject({ __typename: "AppointmentsPayload", appointments: [] });
    expect((await send(second, APPOINT, { subject: second, jurisdiction: name })).__typename).toBe("NotAppointed");
  });

  it("by the operator is noted in nobody's name, and done twice changes nothing", async () => {
    const { ownerUrl } = served.inProcess.database;
    const { name, chief, schoolId: id } = await aJurisdiction();
    const before = await served.everyRow();
    expect((await appointByOperator(ownerUrl, chief, { jurisdiction: name })).kind).toBe("APPOINTED_BEFORE");
    expect((await appointByOperator(ownerUrl, "nobody", { jurisdiction: name })).kind).toBe("NO_SUCH_PERSON");
    expect((await appointByOperator(ownerUrl, chief, { schoolName: "no such school" })).kind).toBe("NO_SUCH_SCHOOL");
    expect(await served.everyRow()).toBe(before);
    const head = await somebody();
    expect((await appointByOperator(ownerUrl, head, { schoolName: `School in ${name}` })).kind).toBe("APPOINTED");
    const { school } = await served.ask<any>(head, OF_SCHOOL, { id });
    expect(school.audit.nodes[0]).toMatchObject({ action: "APPOINTED", person: null, about: { displayName: head } });
  });
});

describe.each(jurisdictionMutations.map((mutation) => [mutation.field, mutation] as const))(
  "%s sent again",
  (field, mutation) => {
    const document = schoolDocumentOf(field);

    it("with the same key is done once, however many arrive together; with other input it is refused", async () => {
      const { name, chief } = await aJurisdiction();
      const other = await somebody();
      if (field === "dismiss") await send(chief, APPOINT, { subject: other, jurisdiction: name });
      const input = { idempotencyKey: newKey(), ...mutation.input(other, name) };
      const start = await served.everyRow();
      const together = await Promise.all([1, 2, 3].map(() => send(chief, document, input)));
      expect(together.map(({ __typename }) => __typename)).toEqual(Array(3).fill(together[0].__typename));
      expect(together[0].__typename).toMatch(/Payload$/);
      const done = await served.everyRow();
      expect(done).not.toBe(start);
      expect(await send(chief, document, input)).toEqual(together[0]);
      expect(await send(chief, document, { ...input, ...mutation.other })).toMatchObject({
        __typename: "KeyReused",
        usedFor: field,
      });
      for (const idempotencyKey of ["", "1234567", "x".repeat(101)])
        expect((await send(chief, document, { ...input, idempotencyKey })).issues).toMatchObject([
          { field: "idempotencyKey" },
        ]);
      expect(await served.everyRow()).toBe(done);
    });

    it("without a token asks to sign in", async () => {
      const { data, errors } = await served.post(null, document, {
        input: { idempotencyKey: newKey(), ...mutation.input("demo:ana", "England") },
      });
      expect(data).toBeNull();
      expect(errors).toMatchObject([{ extensions: { code: "UNAUTHENTICATED" } }]);
    });
  },
);

describe("the list of what administrators did", () => {
  /** What each mutation of an administrator leaves in it. */
  const leaves: Readonly<Record<string, string>> = {
    setFacility: "SCHOOL_CHANGED",
    setSchoolDay: "CALENDAR_CHANGED",
    removeSchoolDay: "CALENDAR_CHANGED",
    setTerm: "CALENDAR_CHANGED",
    removeTerm: "CALENDAR_CHANGED",
    addSchoolClass: "SCHOOL_CHANGED",
    changeSchoolClass: "SCHOOL_CHANGED",
    loadCalendar: "CALENDAR_CHANGED",
    loadRuleSet: "RULE_SET_LOADED",
    withdrawRuleSet: "RULE_SET_WITHDRAWN",
    adoptRuleSet: "ADOPTED",
    countRuleSetImpact: "IMPACT_COUNTED",
    countRuleSetCompliance: "IMPACT_COUNTED",
    registerSchool: "SCHOOL_CHANGED",
    appoint: "APPOINTED",
    dismiss: "DISMISSED",
  };
  /** Every mutation that may be refused for want of an appointment. */
  const ofAdministrators = () =>
    Object.values(served.inProcess.schema.getMutationType()!.getFields())
      .filter(({ type }) => {
        const result = served.inProcess.schema.getType(String(type).replace(/!$/, ""));
        return isUnionType(result) && result.getTypes().some(({ name }) => name === "NotAppointed");
      })
      .map(({ name }) => name);
  const entries = async () =>
    (await served.inProcess.database.owner`select action, person_id from audit_entry order by at, id`).map(
      (row) => row["action"] as string,
    );

  it("says for every mutation of the schema what it leaves", () => {
    expect(Object.keys(leaves).sort()).toEqual(ofAdministrators().sort());
  });

  it.each(schoolMutations.map((mutation) => [mutation.field, mutation] as const))(
    "%s leaves one entry, and none when it is refused",
    async (field, mutation) => {
      const document = schoolDocumentOf(field);
      const input = await schoolInputNow(mutation, served);
      const start = await entries();
      for (const [person, change] of [
        ["demo:ana", {}],
        [administrator, { idempotencyKey: "short" }],
        ...("seenRevision" in input ? [[administrator, { seenRevision: 999 }] as const] : []),
      ] as const) {
        const refused = await served.send(person, document, { ...input, ...change });
        expect(refused.__typename).not.toMatch(/Payload$/);
      }
      expect(await entries()).toEqual(start);
      const key = newKey();
      for (let sent = 0; sent < 2; sent += 1) {
        const done = await served.send(administrator, document, { idempotencyKey: key, ...input });
        expect(done.__typename).toMatch(/Payload$|^RuleSetCounts$/);
      }
      expect(await entries()).toEqual([...start, leaves[field]]);
    },
  );

  it.each(jurisdictionMutations.map((mutation) => [mutation.field, mutation] as const))(
    "%s leaves one entry, and none when it is refused",
    async (field, mutation) => {
      const { name, chief } = await aJurisdiction();
      const other = await somebody();
      if (field === "dismiss") await send(chief, APPOINT, { subject: other, jurisdiction: name });
      const document = { appoint: APPOINT, dismiss: DISMISS, registerSchool: REGISTER }[field]!;
      const start = await entries();
      expect((await send(other, document, mutation.input(other, `${name}!`))).__typename).toBe("NotAppointed");
      expect(await entries()).toEqual(start);
      expect((await send(chief, document, mutation.input(other, name))).__typename).toMatch(/Payload$/);
      expect(await entries()).toEqual([...start, leaves[field]]);
    },
  );

  it("every mutation that it says something of was sent above", () => {
    const sent = [...schoolMutations, ...jurisdictionMutations].map(({ field }) => field);
    expect([...sent].sort()).toEqual(Object.keys(leaves).sort());
  });

  it("is read by those who administer the same, with names, and by nobody else", async () => {
    const { name, chief, schoolId: id } = await aJurisdiction();
    const head = await somebody();
    await send(chief, APPOINT, { subject: head, schoolId: id });
    await addClass(head, id);
    for (const person of [chief, head]) {
      const { school } = await served.ask<any>(person, OF_SCHOOL, { id });
      expect(names(school.appointments)).toEqual([chief, head]);
      expect(
        school.audit.nodes.map((node: any) => [node.action, node.person.displayName, node.about?.displayName]),
      ).toEqual([
        ["SCHOOL_CHANGED", head, undefined],
        ["APPOINTED", chief, head],
        ["SCHOOL_CHANGED", chief, undefined],
      ]);
      expect(JSON.parse(school.audit.nodes[0].details)).toMatchObject({
        added: { facility: "NEITHER", breaks: ["lunch"] },
      });
    }
    const mine = await served.ask<any>(chief, OF_JURISDICTION, { name });
    expect(names(mine.jurisdictionAppointments)).toEqual([chief]);
    expect(mine.jurisdictionAudit.nodes.map(({ action }: any) => action)).toEqual([
      "SCHOOL_CHANGED",
      "APPOINTED",
      "SCHOOL_CHANGED",
      "APPOINTED",
    ]);
    const outside = (await aJurisdiction()).chief;
    for (const person of [outside, "demo:ruth", "demo:ana", await somebody()]) {
      expect((await served.ask<any>(person, OF_SCHOOL, { id })).school).toEqual({ appointments: null, audit: null });
      expect(await served.ask(person, OF_JURISDICTION, { name })).toEqual({
        jurisdictionAppointments: null,
        jurisdictionAudit: null,
      });
    }
    // A school's administrator does not look into the whole jurisdiction.
    expect(await served.ask(head, OF_JURISDICTION, { name })).toEqual({
      jurisdictionAppointments: null,
      jurisdictionAudit: null,
    });
  });

  it("is read page by page, each entry once", async () => {
    const { chief, schoolId: id } = await aJurisdiction();
    for (let at = 0; at < 4; at += 1) await addClass(chief, id);
    const page = async (after: string | null) =>
      (
        await served.ask<any>(
          chief,
          "query P($id: ID!, $after: String) { school(id: $id) { audit(first: 2, after: $after) { nodes { at details } pageInfo { endCursor hasNextPage } } } }",
          { id, after },
        )
      ).school.audit;
    const seen: string[] = [];
    let after: string | null = null;
    for (let more = true; more;) {
      const { nodes, pageInfo } = await page(after);
      seen.push(...nodes.map(({ details }: any) => details));
      after = pageInfo.endCursor;
      more = pageInfo.hasNextPage;
    }
    expect(new Set(seen).size).toBe(5);
    expect(seen).toHaveLength(5);
    for (const wrong of ["x", Buffer.from("2026-01-01 nothing").toString("base64url")]) {
      const { errors } = await served.post(
        chief,
        "query P($id: ID!, $after: String) { school(id: $id) { audit(after: $after) { nodes { at } } } }",
        { id, after: wrong },
      );
      expect(errors).toMatchObject([{ extensions: { code: "BAD_USER_INPUT" } }]);
    }
  });

  it("is read with as many statements for many entries of many schools as for one", async () => {
    const { name, chief } = await aJurisdiction();
    const query = `query J($name: String!) { jurisdictionAppointments(jurisdiction: $name) { person { displayName } school { name } }
      jurisdictionAudit(jurisdiction: $name, first: 50) { nodes { action person { displayName } school { name } } } }`;
    const look = async () => {
      const { data, errors, statements } = await served.inProcess.run(chief, query, { name });
      expect(errors).toEqual([]);
      return { entries: data.jurisdictionAudit.nodes.length as number, statements };
    };
    const few = await look();
    for (let at = 0; at < 4; at += 1) {
      const input = { name: `School ${at} in ${name}`, timeZone: "Africa/Nairobi", jurisdiction: name };
      const { school } = await send(chief, REGISTER, input);
      await addClass(chief, school.id);
    }
    expect(await look()).toEqual({ entries: few.entries + 8, statements: few.statements });
  });

  it("is never changed, shortened or emptied, not by the tables' owner either", async () => {
    const { owner, db } = served.inProcess.database;
    const { chief } = await aJurisdiction();
    const start = await entries();
    expect(start.length).toBeGreaterThan(0);
    for (const statement of [
      "update audit_entry set action = 'ADOPTED'",
      "update audit_entry set person_id = null",
      "delete from audit_entry",
      "truncate audit_entry",
      "truncate audit_entry, appointment cascade",
    ])
      await expect(owner.unsafe(statement)).rejects.toThrow("never changed or removed");
    const id = (await db.knownPerson(chief))!;
    for (const statement of [
      "update audit_entry set action = 'ADOPTED'",
      "delete from audit_entry",
      "truncate audit_entry",
    ])
      await expect(db.asPerson(id, (tx) => tx.$executeRawUnsafe(statement))).rejects.toThrow(/permission denied/);
    // Nor is anything added in another's name, or to what one does not administer.
    for (const values of [
      `('APPOINTED', gen_random_uuid(), null, 'England', '{}')`,
      `('APPOINTED', null, null, 'England', '{}')`,
      `('APPOINTED', '${id}', null, 'England', '{}')`,
      `('APPOINTED', '${id}', '${localOf(schoolId("primary"))}', null, '{}')`,
    ])
      await expect(
        db.asPerson(id, (tx) =>
          tx.$executeRawUnsafe(
            `insert into audit_entry (action, person_id, school_id, jurisdiction, details) values ${values}`,
          ),
        ),
      ).rejects.toThrow(/row-level security/);
    expect(await entries()).toEqual(start);
  });
});

describe("an administrator can do only this", () => {
  it("sees no household, child or week, over the API and in every table", async () => {
    const home = await served.household().child({}, "class-4").planned(DAY).found();
    const { chief } = await aJurisdiction();
    const { owner, ownerUrl, db } = served.inProcess.database;
    // In charge of the very school and jurisdiction.
    await appointByOperator(ownerUrl, chief, { schoolName: "Quillbrook Primary School" });
    await appointByOperator(ownerUrl, chief, { jurisdiction: "England" });
    const week = (await home.week(DAY))!;
    const nodes = [home.id, home.children[0]!, week.id, week.plan.id, week.plan.boxes[0]!.id, week.plan.tasks[0]!.id];
    const query = `query Look($home: ID!, $day: LocalDate!) { me { households { id } administers { id } } household(id: $home) { id }
      week(householdId: $home, date: $day) { id } ${nodes.map((id, at) => `n${at}: node(id: "${id}") { id }`).join(" ")} }`;
    const seen = await served.ask<Record<string, any>>(chief, query, { home: home.id, day: DAY });
    expect(seen["me"].households).toEqual([]);
    expect(seen["me"].administers.length).toBeGreaterThan(1);
    for (const [field, value] of Object.entries(seen))
      if (field !== "me") expect([field, value]).toEqual([field, null]);

    // Whatever the database lets them read, of rows that belong to a household, a child or another person: nothing.
    const columns = await owner<{ table: string; column: string }[]>`
      select c.table_name as "table", c.column_name as "column" from information_schema.columns c
      join information_schema.tables t on t.table_name = c.table_name and t.table_schema = c.table_schema and t.table_type = 'BASE TABLE'
      where c.table_schema = 'public' and c.column_name in ('household_id', 'child_id', 'week_id', 'week_plan_id', 'lunch_box_id')`;
    expect(columns.length).toBeGreaterThan(30);
    const id = (await db.knownPerson(chief))!;
    const tables = [...new Set(columns.map(({ table }) => table)), "household", "child", "membership", "week"];
    for (const table of tables) {
      const conditions = columns.filter((one) => one.table === table).map(({ column }) => `${column} is not null`);
      const where = conditions.length === 0 ? "" : `where ${conditions.join(" or ")}`;
      const rows = await db.asPerson(id, (tx) => tx.$queryRawUnsafe(`select 1 from ${table} ${where}`));
      expect([table, rows]).toEqual([table, []]);
    }
    const people = await db.asPerson(id, (tx) => tx.$queryRawUnsafe<{ id: string }[]>("select id::text from person"));
    expect(people).toEqual([{ id }]);
  });

  it("appoints only through the two functions, which hold to what they administer", async () => {
    const { chief } = await aJurisdiction();
    const { db } = served.inProcess.database;
    const id = (await db.knownPerson(chief))!;
    const other = (await db.knownPerson("demo:ruth"))!;
    const primary = localOf(schoolId("primary"));
    for (const [statement, refusal] of [
      [`insert into appointment (person_id, jurisdiction) values ('${id}', 'England')`, /permission denied/],
      [`update appointment set jurisdiction = 'England'`, /permission denied/],
      [`delete from appointment`, /permission denied/],
      [`insert into school (name, time_zone) values ('Own', 'UTC')`, /permission denied/],
      [`select app_appoint('${id}', null, 'England')`, /not an administrator/],
      [`select app_appoint('${id}', '${primary}', null)`, /not an administrator/],
      [`select app_appoint('${id}', null, null)`, /not an administrator/],
      [`select app_dismiss('${other}', '${primary}', null)`, /not an administrator/],
      [`select app_register_school(gen_random_uuid(), 'Own', 'UTC', 'England')`, /not an administrator/],
      [`select app_register_school(gen_random_uuid(), 'Own', 'UTC', null)`, /not an administrator/],
    ] as const)
      await expect(db.asPerson(id, (tx) => tx.$executeRawUnsafe(statement))).rejects.toThrow(refusal);
    for (const read of [
      `app_appointments('${primary}', null)`,
      `app_appointments(null, 'England')`,
      `app_audit(null, 'England', null, null, 99)`,
    ])
      expect(await db.asPerson(id, (tx) => tx.$queryRawUnsafe(`select * from ${read}`))).toEqual([]);
  });

  it("asks nothing of it without a token", async () => {
    for (const field of [
      'jurisdictionAppointments(jurisdiction: "England") { since }',
      'jurisdictionAudit(jurisdiction: "England") { nodes { at } }',
      `calendarChange(schoolId: "${schoolId("primary")}", calendar: "") { __typename }`,
    ]) {
      const { errors } = await served.post(null, `{ ${field} }`);
      expect(errors).toMatchObject([{ extensions: { code: "UNAUTHENTICATED" } }]);
    }
  });

  it("changes nothing of a household by any of its mutations", async () => {
    const home = await served.household().child({}, "class-4").found();
    for (const [field, input] of [
      ["setStock", { entries: [] }],
      ["setKeepsOut", { allergens: [] }],
      ["recordAllergy", { childId: home.children[0], allergen: "LUPIN" }],
    ] as const) {
      const refused = await home.change(documentOf(field), input, administrator);
      expect(refused.__typename).toBe("HouseholdNotFound");
    }
  });
});
