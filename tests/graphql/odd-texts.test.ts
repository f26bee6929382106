/** Texts that no column can hold (PostgreSQL, "Character Types": not U+0000), moments outside the calendar, and slips by the dozen. */
import { useServedApp } from "../support/served-app.js";
import { documentOf } from "./every-mutation.js";

const served = useServedApp();

it.each(["removeOwnFood", "removeOwnDish"])("%s of a key with U+0000 names the field", async (field) => {
  const home = await served.household().found();
  expect(await home.change(documentOf(field), { key: "a\u0000" })).toMatchObject({
    __typename: "InvalidInput",
    issues: [{ field: "key" }],
  });
});

it("a jurisdiction with U+0000 is nobody's", async () => {
  const query = "query J($j: String!) { jurisdictionRuleSets(jurisdiction: $j) { id } }";
  expect(await served.ask("demo:ana", query, { j: "a\u0000" })).toEqual({ jurisdictionRuleSets: [] });
  const load = "mutation L($input: LoadRuleSetInput!) { loadRuleSet(input: $input) { __typename } }";
  const said = await served.send("demo:ana", load, { jurisdiction: "a\u0000", document: "{}", seenRevision: 0 });
  expect(said.__typename).toBe("NotAppointed");
});

it.each(["0000-01-01T00:00:00Z", "0001-01-01T00:00:00+00:01", "9999-12-31T23:59:59-00:01"])(
  "%s is refused where it is written (RFC 3339, section 5.6: years have four digits)",
  async (after) => {
    const home = await served.household().found();
    const query = "query R($id: ID!, $after: DateTime!) { household(id: $id) { reminders(after: $after) { id } } }";
    const { errors } = await served.post(home.coordinator, query, { id: home.id, after });
    expect(errors.map(({ extensions }) => extensions["code"])).toEqual(["BAD_USER_INPUT"]);
  },
);

it("sixty wrong entries are sixty slips of the sender, none of the server", async () => {
  const home = await served.household().found();
  const { errors } = await served.post(home.coordinator, documentOf("setHotDays"), {
    input: { idempotencyKey: "sixty-wrong", householdId: home.id, seenRevision: 1, dates: Array(60).fill(7) },
  });
  expect(errors.length).toBeGreaterThan(50);
  expect(new Set(errors.map(({ extensions }) => extensions["code"]))).toEqual(new Set(["BAD_USER_INPUT"]));
});
