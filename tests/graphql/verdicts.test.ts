import { useApp } from "../support/app.js";

const { run } = useApp();
const MONDAY = "2027-01-11";

const VERDICTS = `query Verdicts($date: LocalDate!, $dish: String, $food: String) { me { households { name children { name
  verdicts(date: $date, dish: $dish, food: $food) { __typename ... on UserError { message }
    ... on DishUnknown { nearest } ... on InvalidInput { issues { field fix } }
    ... on Verdicts { places { breakKey slot place allowed cuts { food cut } labelsToRead { key } exclusion { kind text source } } } } } } } }`;

async function ask(person: string, child: string, about: Record<string, string>, date = MONDAY): Promise<any> {
  const { data, errors } = await run(person, VERDICTS, { date, ...about });
  expect(errors).toEqual([]);
  const { children } = data.me.households[0];
  return children.find(({ name }: { name: string }) => name === child).verdicts;
}
const lunch = (answer: { places: { breakKey: string; slot: string }[] }, slot: string) =>
  answer.places.find((place) => place.breakKey.includes("lunch") && place.slot === slot);

describe("why a food or a dish is not in a child's box", () => {
  it("names what the kitchen keeps out and the food that brings it, whoever would eat it", async () => {
    const { places } = await ask("demo:leo", "Mina", { food: "almonds" }, "2027-01-13");
    expect(places.length).toBeGreaterThan(3);
    for (const place of [...places, ...(await ask("demo:ana", "Theo", { food: "almonds" })).places]) {
      expect(place).toMatchObject({ allowed: false, exclusion: { kind: "KEPT_OUT", source: null } });
      expect(place.exclusion.text).toMatch(/^Contains almond \(.*lmond.*\), which this kitchen keeps out\.$/);
    }
  });

  it("shuts out for the youngest by age what no cut makes safe, with the source, and not for the eldest", async () => {
    const [place] = (await ask("demo:ana", "Pia", { food: "popcorn-plain" })).places;
    expect(place).toMatchObject({ allowed: false, exclusion: { kind: "CHOKING" } });
    expect(place.exclusion.text).toMatch(/under \d years that no cut makes safe/);
    expect(place.exclusion.source.length).toBeGreaterThan(5);
    const kinds = (await ask("demo:ana", "Theo", { food: "popcorn-plain" })).places.map(
      ({ exclusion }: { exclusion: { kind: string } | null }) => exclusion?.kind,
    );
    expect(kinds).not.toContain("CHOKING");
  });

  it("names the diet, and the rule of the school with its source", async () => {
    for (const place of (await ask("demo:ana", "Theo", { food: "chicken-breast-cooked" })).places)
      expect(place).toMatchObject({ allowed: false, exclusion: { kind: "DIET" } });
    const { places } = await ask("demo:ana", "Mina", { dish: "carrot-cupcakes" });
    expect(places.every(({ slot }: { slot: string }) => slot === "EXTRA")).toBe(true);
    const [sweets] = (await ask("demo:ana", "Mina", { food: "chocolate-dark-sweet" })).places;
    expect(sweets).toMatchObject({ allowed: false, exclusion: { kind: "RULE" } });
    expect(sweets.exclusion.text).toContain("quillbrook-primary");
    expect(sweets.exclusion.source.length).toBeGreaterThan(5);
  });

  it("allows what may stand there, with the cut and its food, or none for the eldest", async () => {
    const forPia = lunch(await ask("demo:ana", "Pia", { dish: "carrot-sticks" }), "VEGETABLE");
    expect(forPia).toMatchObject({
      allowed: true,
      exclusion: null,
      cuts: [{ food: "carrot-raw", cut: expect.stringContaining("matchsticks") }],
    });
    const forTheo = lunch(await ask("demo:ana", "Theo", { dish: "carrot-sticks" }), "VEGETABLE");
    expect(forTheo).toMatchObject({ allowed: true, exclusion: null, cuts: [] });
  });

  it("answers a day without a box, an unknown key and two keys at once each in its own way", async () => {
    expect(await ask("demo:ana", "Mina", { dish: "grapes-on-the-stem" }, "2027-01-16")).toMatchObject({
      __typename: "OutsideTerm",
    });
    expect(await ask("demo:ana", "Mina", { dish: "grapes-on-the-sten" })).toMatchObject({
      __typename: "DishUnknown",
      nearest: expect.arrayContaining(["grapes-on-the-stem"]),
    });
    expect(await ask("demo:ana", "Mina", { food: "almondz" })).toMatchObject({
      __typename: "InvalidInput",
      issues: [{ field: "food", fix: expect.stringContaining("almonds") }],
    });
    expect(await ask("demo:ana", "Mina", { food: "almonds", dish: "grapes-on-the-stem" })).toMatchObject({
      __typename: "InvalidInput",
      issues: [{ field: "dish" }],
    });
    expect(await ask("demo:ana", "Mina", {})).toMatchObject({ __typename: "InvalidInput" });
  });
});
