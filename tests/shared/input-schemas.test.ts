/** Every input type has a zod schema, and the two agree: what zod lets through, the schema takes. */
import {
  coerceInputValue,
  isEnumType,
  isInputObjectType,
  isListType,
  isNonNullType,
  isScalarType,
  type GraphQLInputType,
} from "graphql";
import * as fc from "fast-check";
import type { z } from "zod";
import { makeInputSchemas } from "../../shared/generated/inputs.js";
import { inputSchemas } from "../../shared/input-schemas.js";
import { buildSchema } from "../../src/graphql/schema.js";

const schema = buildSchema();
const inputTypes = Object.values(schema.getTypeMap()).filter(isInputObjectType);
const byName: Readonly<Record<string, z.ZodType>> = inputSchemas;
const shapes: Readonly<Record<string, z.ZodType>> = makeInputSchemas(() => () => undefined);

/** By the schema's own reading of the value, as the GraphQL specification has it for variables (section 6.1.2). */
function takes(type: GraphQLInputType, value: unknown): boolean {
  let taken = true;
  coerceInputValue(value, type, () => (taken = false));
  return taken;
}

const day = fc
  .date({ min: new Date("1900-01-01T00:00:00Z"), max: new Date("2199-12-31T00:00:00Z"), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));
const twoDigits = (most: number) => fc.nat(most).map((number) => String(number).padStart(2, "0"));
const clock = fc.tuple(twoDigits(23), twoDigits(59)).map((parts) => parts.join(":"));
const scalarValues: Readonly<Record<string, fc.Arbitrary<unknown>>> = {
  ID: fc.string(),
  String: fc.string({ unit: "binary" }),
  Boolean: fc.boolean(),
  Int: fc.integer(),
  Float: fc.double({ noNaN: true, noDefaultInfinity: true }),
  LocalDate: day,
  LocalTime: clock,
  DateTime: fc
    .tuple(
      day,
      clock,
      twoDigits(59),
      fc.constantFrom("", ".5", ".123456789"),
      fc.constantFrom("Z", "z", "+02:00", "-23:59"),
    )
    .map(([date, time, second, fraction, offset]) => `${date}T${time}:${second}${fraction}${offset}`),
};
/** Near misses, and what slips into JSON: each may stand where any value stands. */
const slips = fc.constantFrom<unknown>(
  ...[
    null,
    undefined,
    "",
    " ",
    0,
    -1,
    1.5,
    2 ** 31,
    -(2 ** 31) - 1,
    1e400,
    true,
    [],
    [[]],
    {},
    { nobody: 1 },
    "TRACES",
  ],
  ...["2027-02-29", "2028-02-29", "1899-12-31", "2200-01-01", "0099-01-01", "2027-1-1", "2027-01-11T07:10:00", "24:00"],
  ...[
    "2027-01-11T24:00:00Z",
    "2016-12-31T23:59:60Z",
    "2027-01-11T07:10:00+24:00",
    "2027-02-30T07:10:00Z",
    "07:60",
    "7:05",
  ],
  ...[
    "2027-01-11t07:10:00.5z",
    "2027-01-11T07:10Z",
    "2027-01-11 07:10:00Z",
    "0000-01-01",
    "0000-01-01T00:00:00Z",
    "07:10\n",
  ],
);

/** @param slip of 100, how often something else stands there */
function valueOf(type: GraphQLInputType, slip: number): fc.Arbitrary<unknown> {
  const usual = present(isNonNullType(type) ? type.ofType : type, slip);
  const absent = fc.constantFrom(null, undefined);
  return fc.oneof(
    { weight: 100 - slip, arbitrary: usual },
    { weight: isNonNullType(type) ? 0 : 40, arbitrary: absent },
    { weight: slip, arbitrary: slips },
  );
}
function present(type: GraphQLInputType, slip: number): fc.Arbitrary<unknown> {
  if (isListType(type)) return fc.array(valueOf(type.ofType, slip), { maxLength: 3 });
  if (isEnumType(type)) return fc.constantFrom(...type.getValues().map(({ name }) => name));
  if (isScalarType(type)) return scalarValues[type.name]!;
  if (!isInputObjectType(type)) throw new Error(`no value of ${String(type)} is known`);
  const fields = Object.values(type.getFields());
  if (type.isOneOf) {
    const one = fc.oneof(...fields.map((field) => present(field.type, slip).map((value) => ({ [field.name]: value }))));
    const few = fc.tuple(one, one).map(([first, second]) => ({ ...first, ...second }));
    return slip === 0 ? one : fc.oneof({ weight: 5, arbitrary: one }, few);
  }
  const whole = fc.record(Object.fromEntries(fields.map((field) => [field.name, valueOf(field.type, slip)])), {
    requiredKeys: fields
      .filter(({ type, defaultValue }) => isNonNullType(type) && defaultValue === undefined)
      .map(({ name }) => name),
  });
  const stray = whole.map((value) => ({ ...value, nobodyKnows: true }));
  return fc.oneof({ weight: 100, arbitrary: whole }, { weight: slip, arbitrary: stray });
}

test("every input type of the schema has a schema of its own name, and nothing else has", () => {
  expect(inputTypes.length).toBeGreaterThan(40);
  expect(Object.keys(byName).sort()).toEqual(inputTypes.map(({ name }) => name).sort());
});

test.each(inputTypes.map((type) => [type.name, type] as const))(
  "%s: what is written as the SDL says passes",
  (name, type) => {
    fc.assert(
      fc.property(present(type, 0), (value) => {
        expect(takes(type, value)).toBe(true);
        expect(shapes[name]!.safeParse(value).error?.issues ?? []).toEqual([]);
      }),
      { numRuns: 40 },
    );
  },
);

/** GraphQL specification, September 2025, section 3: the reference implementation is the judge of what a type takes. */
test.each(inputTypes.map((type) => [type.name, type] as const))(
  "%s: what the SDL refuses, zod refuses",
  (name, type) => {
    let refused = 0;
    fc.assert(
      fc.property(present(type, 12), (value) => {
        const asSent: unknown = JSON.parse(JSON.stringify(value));
        if (takes(type, asSent)) return;
        refused++;
        expect(byName[name]!.safeParse(asSent).success).toBe(false);
        expect(shapes[name]!.safeParse(asSent).success).toBe(false);
      }),
      { numRuns: 150 },
    );
    expect(refused).toBeGreaterThan(0);
  },
);

const ofHome = { idempotencyKey: "key-of-this-test", householdId: "home", seenRevision: 1 };
const issuesOf = (name: keyof typeof inputSchemas, value: unknown) =>
  (byName[name]!.safeParse(value).error?.issues ?? []).map(({ path, message }) => [path.join("."), message]);

test("ranges are the server's own, at the field they are about", () => {
  expect(issuesOf("SetStockInput", { ...ofHome, entries: [{ food: "Rice!", grams: -1 }] })).toEqual([
    ["entries.0.food", expect.stringContaining("hyphens")],
    ["entries.0.grams", "Send a whole number from 0 to 100000."],
  ]);
  expect(issuesOf("RecordAllergyInput", { ...ofHome, childId: "child" })).toEqual([
    ["", "Give either allergen or foodKind."],
  ]);
  expect(issuesOf("RemoveAllergyInput", { ...ofHome, childId: "child", allergen: "MILK" })).toEqual([]);
  expect(issuesOf("MendWeekInput", { idempotencyKey: "short", weekId: "week", seenRevision: 1 })).toEqual([
    ["idempotencyKey", expect.stringContaining("8 to 100 characters")],
  ]);
});

test("a range inside another input is at its whole path", () => {
  const disruption = { foodMissing: { foodKind: "Apple!", date: "2027-01-11" } };
  expect(issuesOf("ReportDisruptionInput", { ...ofHome, disruption })).toEqual([
    ["disruption.foodMissing.foodKind", expect.stringContaining("hyphens")],
  ]);
});

test("a default is filled in before ranges are looked at", () => {
  const child = {
    ...{ name: "Ari", dateOfBirth: "2018-05-20", leaveAt: "08:10" },
    compartments: [{ ml: 850, leakProof: true }],
  };
  expect(issuesOf("CreateChildInput", { ...ofHome, ...child })).toEqual([]);
  expect(issuesOf("CreateChildInput", { ...ofHome, ...child, minutesToEat: 1 })).toEqual([
    ["minutesToEat", "Send a whole number from 5 to 90."],
  ]);
});
