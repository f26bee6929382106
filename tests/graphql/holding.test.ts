import { useServedApp } from "../support/served-app.js";
import { DAY } from "./documents.js";

const served = useServedApp({ steps: 25_000 });
const HOT = `mutation Hot($input: SetHotDaysInput!) { setHotDays(input: $input) { __typename
  ... on InvalidInput { issues { field fix } } ... on KitchenPayload { household { kitchen { hotDays } } } } }`;
const HOLDING = `query Holding($id: ID!) { week(householdId: $id, date: "${DAY}") { plan { boxes { date state
  items { holdingCase holdingCurve { minute celsius log10 }
    note { holding { case minutes limitMinutes limitedBy mostCelsius endCelsius growthLog10 organism assumptions mend } } } } } } }`;

interface Item {
  readonly holdingCase: string;
  readonly holdingCurve: readonly { readonly minute: number; readonly celsius: number; readonly log10: number }[];
  readonly note: {
    readonly holding: {
      readonly case: string;
      readonly minutes: number;
      readonly limitMinutes: number;
      readonly limitedBy: string | null;
      readonly mostCelsius: number | null;
      readonly endCelsius: number | null;
      readonly growthLog10: number | null;
      readonly organism: string | null;
      readonly assumptions: readonly string[];
      readonly mend: readonly string[];
    };
  };
}
interface Seen {
  readonly week: {
    readonly plan: {
      readonly boxes: readonly { readonly date: string; readonly state: string; readonly items: readonly Item[] }[];
    };
  };
}

describe("how a box is kept safe on its way", () => {
  it("is told item by item, with the curve to its last bite, what it assumes and which limit holds", async () => {
    const home = await served.household().child().planned(DAY).found();
    const seen = await served.ask<Seen>(home.coordinator, HOLDING, { id: home.id });
    const items = seen.week.plan.boxes.flatMap((box) => box.items);
    const chilled = items.filter(({ holdingCase }) => holdingCase === "CHILLED");
    expect(chilled.length).toBeGreaterThan(0);
    for (const { holdingCase, holdingCurve, note } of items) {
      const { holding } = note;
      expect(holding.case).toBe(holdingCase);
      expect(holding.minutes).toBeLessThanOrEqual(holding.limitMinutes);
      if (holdingCase === "NOT_CONTROLLED") {
        expect(holdingCurve).toEqual([]);
        expect(holding).toMatchObject({ limitedBy: null, mostCelsius: null, growthLog10: null, assumptions: [] });
        continue;
      }
      expect(holdingCurve[0]).toMatchObject({ minute: 0, log10: 0 });
      expect(holdingCurve.at(-1)).toEqual({
        minute: holding.minutes,
        celsius: holding.endCelsius,
        log10: holding.growthLog10,
      });
      expect(Math.max(...holdingCurve.map(({ celsius }) => celsius))).toBeLessThanOrEqual(holding.mostCelsius! + 0.05);
      expect(holding.growthLog10).toBeLessThanOrEqual(1);
    }
    expect(chilled[0]!.note.holding.assumptions.join(" ")).toMatch(/5 °C or colder.*2 cold sources of at least 150 g/);
  });

  it("is looked at again when a day turns out hot: a box whose ice would not last is blocked", async () => {
    const home = await served.household().child().planned(DAY).found();
    const said = await home.change(HOT, { dates: [DAY, DAY] });
    expect(said).toMatchObject({ __typename: "KitchenPayload", household: { kitchen: { hotDays: [DAY] } } });
    const states = async () => {
      const seen = await served.ask<Seen>(home.coordinator, HOLDING, { id: home.id });
      return seen.week.plan.boxes.map((box) => [box.date, box.state]);
    };
    const hot = await states();
    expect(hot.filter(([, state]) => state === "BLOCKED")).toEqual([[DAY, "BLOCKED"]]);
    await home.change(HOT, { dates: [] });
    expect((await states()).every(([, state]) => state === "PLANNED")).toBe(true);
  });

  it("takes no more hot days at once than a summer has", async () => {
    const home = await served.household().child().found();
    const dates = Array.from({ length: 61 }, (_, day) =>
      new Date(Date.UTC(2027, 5, 1 + day)).toISOString().slice(0, 10),
    );
    expect(await home.change(HOT, { dates })).toMatchObject({
      __typename: "InvalidInput",
      issues: [{ field: "dates", fix: "Send at most 60 days." }],
    });
  });
});
