import { useServedApp, type Household } from "../support/served-app.js";
import { DAY } from "./documents.js";

const served = useServedApp({ steps: 25_000 });

/** Everything a family app shows of a week, in one query. */
const WHOLE_WEEK = `query Whole($id: ID!, $day: LocalDate!) { week(householdId: $id, date: $day) { id revision plan { id number state
  createdAt origin { seed steps problemHash catalogueVersion ruleSetVersions } wishes { handsOnMinutes costMinor } sharing { savedMinutes }
  boxes { id date state packedAt packing { leaveAt coldSources flask cutlery packedBy { displayName } } child { id name }
    items { id breakKey slot place dish { key name allergens } grams pieces served energyKcal carbohydrateGrams allergens
      cuts { food cut source } holdingCase labelsToRead { key name } pinned note { compartment holdingMinutes holdingLimitMinutes why } } }
  batches { id base { key name } session batches grams feeds { date children { name } grams } spareGrams state }
  tasks { id session kind text children { name } forDates startsAt endsAt carer handles state takenBy { displayName } }
  shopping { id food { key name } section neededGrams packs costMinor readLabel }
  cautions { kind child { name } date text } } } }`;
/** The same with what only the household's tree knows about the children. */
const WITH_CHILDREN = WHOLE_WEEK.replace(
  "child { id name }",
  "child { id name dateOfBirth allergies { allergen avoid } enrolments { school { name } schoolClass { name } } }",
);

let one: Household;
let three: Household;
beforeAll(async () => {
  one = await served.household().child().planned(DAY).found();
  three = await served
    .household()
    .child()
    .child({ name: "Bo", dateOfBirth: "2018-02-03" }, "class-4")
    .child({ name: "Cleo", dateOfBirth: "2021-11-30", flask: false }, "reception")
    .planned(DAY)
    .found();
});

interface Answer {
  readonly week: {
    readonly plan: { readonly boxes: readonly { readonly child: { readonly name: string } }[] };
  };
}

async function statementsOf(home: Household, query: string): Promise<[number, number]> {
  const { data, errors, statements } = await served.inProcess.run(home.coordinator, query, { id: home.id, day: DAY });
  expect(errors).toEqual([]);
  const children = new Set((data as Answer).week.plan.boxes.map(({ child }) => child.name));
  return [children.size, statements];
}

describe("the whole week in one query", () => {
  it("costs as many statements for three children as for one", async () => {
    // BEGIN, the person of the transaction, the week.
    expect(await statementsOf(one, WHOLE_WEEK)).toEqual([1, 3]);
    expect(await statementsOf(three, WHOLE_WEEK)).toEqual([3, 3]);
  });

  it("costs one more, however many children there are, when it asks what the household knows of them", async () => {
    expect(await statementsOf(one, WITH_CHILDREN)).toEqual([1, 4]);
    expect(await statementsOf(three, WITH_CHILDREN)).toEqual([3, 4]);
  });

  it("is the same over HTTP as in process, to the last field", async () => {
    for (const query of [WHOLE_WEEK, WITH_CHILDREN]) {
      const variables = { id: three.id, day: DAY };
      const { data } = await served.inProcess.run(three.coordinator, query, variables);
      expect(await served.ask(three.coordinator, query, variables)).toEqual(data);
    }
  });
});
