import { globalId } from "../../src/graphql/global-id.js";
import { newKey } from "../support/app.js";
import { useServedApp, type Household } from "../support/served-app.js";
import { DAY } from "./documents.js";
import {
  administrator,
  documentOf,
  everyMutation,
  foundingMutation,
  ownMattersMutations,
  inputNow,
  jurisdictionMutations,
  ownMutation,
  schoolDocumentOf,
  schoolInputNow,
  schoolMutations,
  type Mutation,
} from "./every-mutation.js";

const served = useServedApp();
const roles = ["OBSERVER", "HELPER", "COOK", "COORDINATOR"] as const;
const words = { HELPER: "a helper", COOK: "a cook", COORDINATOR: "a coordinator" };
let home: Household;
let before: string;
/** Nothing changes here, so one reading serves every test. */
const inputs = new Map<string, Record<string, unknown>>();

beforeAll(async () => {
  home = await served.household().child().carer("OBSERVER").carer("HELPER").carer("COOK").planned(DAY).found();
  // People are known from the first request they send.
  for (const person of Object.values(home.carers)) await served.ask(person, "{ me { person { id } } }");
  for (const mutation of everyMutation) inputs.set(mutation.field, await inputNow(mutation, home));
  for (const mutation of schoolMutations) inputs.set(mutation.field, await schoolInputNow(mutation, served));
  before = await served.everyRow();
});
// Nothing that is refused here leaves a trace in any table.
afterEach(async () => expect(await served.everyRow()).toBe(before));

const cases = everyMutation.map((mutation) => [mutation.field, mutation] as const);
const sendAs = async (person: string, mutation: Mutation, change: Record<string, unknown> = {}) =>
  served.send(person, documentOf(mutation.field), { ...inputs.get(mutation.field), ...change });

it("every mutation there is answers for itself here", () => {
  const asked = [...everyMutation, ...schoolMutations, ...jurisdictionMutations].map(({ field }) => field);
  const offered = Object.keys(served.inProcess.schema.getMutationType()!.getFields());
  expect([...asked, ...ownMattersMutations, foundingMutation, ownMutation].sort()).toEqual(offered.sort());
});

describe("a carer whose role does not reach", () => {
  it.each(cases)("%s says whom to ask", async (_, mutation) => {
    const tooLow = roles.slice(0, roles.indexOf(mutation.needs));
    expect(tooLow).not.toEqual([]);
    for (const role of tooLow) {
      const refused = await sendAs(home.carers[role]!, mutation);
      expect(refused).toMatchObject({ __typename: "NotPermitted", neededRole: mutation.needs });
      expect(refused.message).toContain(`ask ${words[mutation.needs as keyof typeof words]}`);
    }
  });
});

describe("somebody else's household", () => {
  it.each(cases)("%s tells a stranger no more than that nothing is there", async (_, mutation) => {
    const stranger = served.newcomer();
    const theirs = await sendAs(stranger, mutation);
    const said = new Set([theirs.message]);
    expect(theirs.__typename).toBe(mutation.missing);
    for (const name of mutation.names) {
      const nobodys = globalId(
        {
          householdId: "Household",
          itemId: "BoxItem",
          boxId: "Box",
          taskId: "Task",
          weekId: "Week",
          invitationId: "Invitation",
        }[name]!,
        "00000000-0000-4000-8000-000000000000",
      );
      const ofAnotherType = globalId("Dish", "00000000-0000-4000-8000-000000000000");
      for (const id of [nobodys, ofAnotherType, "", `${nobodys}=`]) {
        const refused = await sendAs(home.coordinator, mutation, { [name]: id });
        expect(refused.__typename).toBe(mutation.missing);
        said.add(refused.message);
      }
    }
    // Foreign, unknown and malformed look alike.
    expect(said.size).toBe(1);
  });

  it("is null to a stranger, and so is everything in it", async () => {
    const stranger = served.newcomer();
    const week = (await home.week(DAY))!;
    const query = `query Theirs($home: ID!, $day: LocalDate!, $item: ID!) { household(id: $home) { name } week(householdId: $home, date: $day) { id }
      alternatives(itemId: $item) { dish { key } } me { households { id } administers { id } } }`;
    const variables = { home: home.id, day: DAY, item: week.plan.boxes[0]!.items[0]!.id };
    expect(await served.ask(stranger, query, variables)).toEqual({
      household: null,
      week: null,
      alternatives: [],
      me: { households: [], administers: [] },
    });
  });
});

const schoolCases = schoolMutations.map((mutation) => [mutation.field, mutation] as const);

describe("a school that did not appoint the sender", () => {
  it.each(schoolCases)("%s is for its administrator only", async (field) => {
    for (const person of [...Object.values(home.carers), served.newcomer(), "demo:ana"]) {
      const refused = await served.send(person, schoolDocumentOf(field), inputs.get(field)!);
      expect(refused.__typename).toBe("NotAppointed");
      expect(refused.message.length).toBeGreaterThan(10);
    }
  });

  it.each(schoolCases)(
    "%s on a school, class or rule set that is not there says just that",
    async (field, { names }) => {
      const [type, missing] = {
        schoolId: ["School", "SchoolNotFound"],
        schoolClassId: ["SchoolClass", "SchoolNotFound"],
        ruleSetId: ["RuleSet", "NothingThere"],
      }[names] as [string, string];
      const nobodys = globalId(type, "00000000-0000-4000-8000-000000000000");
      const said = new Set<string>();
      for (const id of [nobodys, globalId("Dish", "00000000-0000-4000-8000-000000000000"), "", `${nobodys}=`]) {
        const refused = await served.send(administrator, schoolDocumentOf(field), {
          ...inputs.get(field),
          [names]: id,
        });
        expect(refused.__typename).toBe(missing);
        said.add(refused.message);
      }
      expect(said.size).toBe(1);
    },
  );

  it.each(schoolCases)("%s without a token asks to sign in", async (field) => {
    const { data, errors } = await served.post(null, schoolDocumentOf(field), {
      input: { idempotencyKey: newKey(), ...inputs.get(field) },
    });
    expect(data).toBeNull();
    expect(errors).toMatchObject([{ extensions: { code: "UNAUTHENTICATED" } }]);
  });
});

describe("without a token", () => {
  it.each(cases)("%s asks to sign in", async (_, mutation) => {
    const { data, errors } = await served.post(null, documentOf(mutation.field), {
      input: { idempotencyKey: newKey(), ...inputs.get(mutation.field) },
    });
    expect(data).toBeNull();
    expect(errors).toMatchObject([{ extensions: { code: "UNAUTHENTICATED" } }]);
  });

  it("only the catalogue answers", async () => {
    const variables = { id: home.id, day: DAY };
    for (const field of [
      "me { person { id } }",
      "household(id: $id) { id }",
      "week(householdId: $id, date: $day) { id }",
      "node(id: $id) { id }",
      "alternatives(itemId: $id) { pointsMore }",
      "school(id: $id) { id }",
      "schools { nodes { id } }",
    ]) {
      const used = ["$id: ID!", "$day: LocalDate!"].filter((variable) => field.includes(variable.split(":")[0]!));
      const { errors } = await served.post(
        null,
        `query Ask${used.length > 0 ? `(${used.join(", ")})` : ""} { ${field} }`,
        variables,
      );
      expect(errors.map(({ extensions }) => extensions["code"])).toEqual(["UNAUTHENTICATED"]);
    }
    const open = await served.ask<{ dish: { key: string }; dishes: { nodes: unknown[] } }>(
      null,
      '{ dish(key: "orange-segments") { key } dishes(first: 2) { nodes { key } } }',
    );
    expect(open.dish.key).toBe("orange-segments");
    expect(open.dishes.nodes).toHaveLength(2);
  });
});
