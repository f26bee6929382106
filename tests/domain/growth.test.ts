import { describe, expect, it } from "@jest/globals";
import fc from "fast-check";
import type { HoldingModel } from "../../shared/holding-model.js";
import { isMet } from "../../src/cli/food-checks/check.js";
import { holdingChecks } from "../../src/cli/food-checks/holding.js";
import { carriedCurve, followItem, type Carried } from "../../src/domain/checker/holding-curve.js";
import { indexCatalogue } from "../../src/domain/catalogue/derive.js";
import { forecastHolding, holdingCurve, type ForecastInput } from "../../src/domain/food-safety/forecast.js";
import { growAlong, organismRate } from "../../src/domain/food-safety/growth.js";
import { coolsInTime, temperatureCurve, type HeatSituation } from "../../src/domain/food-safety/heat-balance.js";
import { readCatalogue, readHoldingLimits, readHoldingModel } from "./reference-rows.js";

const model = readHoldingModel();
const steps = model.heatCapacityStepsJoulesPerKelvin;
const withStep = (stepMinutes: number): HoldingModel => ({
  ...model,
  parameters: { ...model.parameters, stepMinutes },
});
const ask = (over: Partial<ForecastInput> = {}, of: HoldingModel = model) =>
  forecastHolding(of, {
    start: "CHILLED",
    coldSources: 2,
    hotDay: false,
    grams: 100,
    traits: { joulesPerGramKelvin: 3.5, organisms: model.organisms },
    minutes: 215,
    minutesBefore: 0,
    ...over,
  });

const situation = fc.record({
  start: fc.constantFrom("CHILLED" as const, "COLD" as const, "WARM" as const, "FLASK" as const),
  coldSources: fc.integer({ min: 2, max: 6 }),
  hotDay: fc.boolean(),
  grams: fc.constantFrom(...steps),
  minutes: fc.integer({ min: 15, max: 240 }),
});
/** One gram is one joule per kelvin, so that no rounding of the heat capacity is between the two. */
const traits = { joulesPerGramKelvin: 1, organisms: model.organisms };

describe("figures that were published", () => {
  const { retention = [], ...catalogue } = readCatalogue();
  const index = indexCatalogue({ version: "seeds", ...catalogue, retention });
  it.each(holdingChecks(model, readHoldingLimits(), index).map((check) => [check.id, check] as const))(
    "%s is what the model answers",
    (_, check) => {
      expect({ ...check, met: isMet(check) }).toMatchObject({ met: true });
    },
  );
});

describe("growth", () => {
  it("is nothing below what an organism needs and never negative", () => {
    for (const organism of model.organisms) {
      for (let celsius = -5; celsius <= 80; celsius += 0.5)
        expect(organismRate(organism, celsius)).toBeGreaterThanOrEqual(0);
      expect(organismRate(organism, -2)).toBe(0);
    }
  });
  it("with a lag is never more than without one, and catches up to a constant distance", () => {
    const rates = Array.from({ length: 601 }, () => 1.2);
    const free = growAlong(rates, 1 / 60);
    const late = growAlong(rates, 1 / 60, { log10: 2, lagWork: 4.1, mostLog10: null });
    for (let at = 0; at < rates.length; at += 1) expect(late[at]).toBeLessThanOrEqual((free[at] ?? 0) + 1e-12);
    expect((free[600] ?? 0) - (late[600] ?? 0)).toBeCloseTo(4.1 / Math.LN10, 2);
  });
});

describe("the model", () => {
  it("finds the same limits in half its steps", () => {
    fc.assert(
      fc.property(situation, (x) => {
        const [whole, half] = [ask({ ...x, traits }), ask({ ...x, traits }, withStep(0.5))];
        expect(Math.abs(whole.limitMinutes - half.limitMinutes)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("agrees with the checker, which solves the same balance in closed form", () => {
    fc.assert(
      fc.property(situation, (x) => {
        const planned = ask({ ...x, traits });
        const carried: Carried =
          x.start === "CHILLED"
            ? { way: "CHILLED", coldSources: x.coldSources, hotDay: x.hotDay }
            : x.start === "COLD"
              ? { way: "COLD", hotDay: x.hotDay }
              : { way: x.start };
        const own = followItem(model, carried, x.grams, model.organisms, 300);
        expect(Math.abs(own.goodUntil - planned.limitMinutes)).toBeLessThanOrEqual(2);
        expect(Math.abs((own.grown[x.minutes] ?? 0) - planned.forecast.growthLog10)).toBeLessThan(0.02);
        const heat: HeatSituation = {
          start: x.start,
          coldSources: x.coldSources,
          hotDay: x.hotDay && (x.start === "CHILLED" || x.start === "COLD"),
          joulesPerKelvin: x.grams,
        };
        const stepped = temperatureCurve(model, heat, 240);
        const closed = carriedCurve(model.parameters, carried, x.grams);
        for (let minute = 0; minute <= 240; minute += 10)
          expect(Math.abs((stepped[minute] ?? 0) - closed(minute))).toBeLessThan(0.3);
      }),
    );
  });

  it("never gives more time for fewer cold sources, a hotter day, or a lighter portion", () => {
    const limit = (over: Partial<ForecastInput>) => ask(over).limitMinutes;
    for (const hotDay of [false, true]) {
      for (let count = 2; count < 6; count += 1)
        expect(limit({ hotDay, coldSources: count })).toBeLessThanOrEqual(limit({ hotDay, coldSources: count + 1 }));
      for (const start of ["CHILLED", "COLD", "FLASK"] as const) {
        for (const [light, heavy] of [
          [20, 80],
          [80, 150],
          [150, 400],
        ])
          expect(limit({ hotDay, start, grams: light ?? 0 })).toBeLessThanOrEqual(
            limit({ hotDay, start, grams: heavy ?? 0 }),
          );
      }
    }
    for (const start of ["CHILLED", "COLD", "WARM", "FLASK"] as const)
      expect(limit({ start, hotDay: true })).toBeLessThanOrEqual(limit({ start }));
  });

  // Outside: Almansour et al. 2011, Pediatrics 128(3):519-523: with several ice packs more than nine in ten items were above 4 °C.
  it("does not claim that two packs keep a lunch at refrigerator temperature", () => {
    expect(ask().forecast.mostCelsius).toBeGreaterThan(8);
  });

  it("keeps half a litre in a flask no hotter than tested flasks did", () => {
    // Outside: Hong Kong Consumer Council 2021: eight vacuum food jars were all above 62 °C after six hours from 95 °C (fill and room from memory).
    const asTested = {
      ...model,
      parameters: { ...model.parameters, flaskStartCelsius: 95, coolRoomCelsius: 20 },
    };
    const curve = temperatureCurve(
      asTested,
      { start: "FLASK", coldSources: 0, hotDay: false, joulesPerKelvin: 0.5 * 4180 },
      360,
    );
    expect(curve[360]).toBeLessThan(62);
  });

  it("draws a curve that ends at the break with what the verdict says", () => {
    const { forecast } = ask({ minutes: 215 });
    const curve = holdingCurve(model, forecast, 215);
    expect(curve[0]).toMatchObject({ minute: 0, celsius: 5, log10: 0 });
    expect(curve.at(-1)).toEqual({ minute: 215, celsius: forecast.endCelsius, log10: forecast.growthLog10 });
    expect(curve.map(({ minute }) => minute).slice(0, 3)).toEqual([0, 15, 30]);
  });

  it("says that a layer of one centimetre cools in time in a refrigerator alone, as the caution has it, and no deeper one", () => {
    expect(coolsInTime(model, 10)).toBe(true);
    expect(coolsInTime(model, 11)).toBe(false);
    expect(coolsInTime(model, 60)).toBe(false);
  });
});
