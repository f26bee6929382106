import { useServedApp } from "../support/served-app.js";
import { documentOf } from "./every-mutation.js";
import { globalId } from "../../src/graphql/global-id.js";
import { newKey } from "../support/app.js";
import { DAY } from "./documents.js";
const served = useServedApp();
test("probe", async () => {
  const home = await served.household().child().planned(DAY).found();
  const out: string[] = [];
  const p = home.coordinator;
  const say = async (label: string, field: string, input: Record<string, unknown>) => {
    const r = await served.post(p, documentOf(field), { input: { idempotencyKey: newKey(), householdId: home.id, seenRevision: await home.revision(), ...input } });
    out.push(`${label}: ${JSON.stringify(r.data)?.slice(0, 400)} ${JSON.stringify(r.errors.map((e) => [e.message, e.extensions["code"]]))}`);
  };
  await say("dup stock", "setStock", { entries: [{ food: "apple-raw", grams: 1 }, { food: "apple-raw", grams: 2 }] });
  await say("dup equip", "setEquipment", { equipment: [{ kind: "OVEN", units: 1 }, { kind: "OVEN", units: 2 }] });
  const pt = { kind: "MORNING", startsAt: "06:40", handsOnMinutes: 3, elapsedMinutes: 60 };
  await say("dup prep weekday", "setPrepTimes", { prepTimes: [{ ...pt, weekday: "MONDAY" }, { ...pt, weekday: "MONDAY" }] });
  await say("dup prep date", "setPrepTimes", { prepTimes: [{ ...pt, date: DAY }, { ...pt, date: DAY }] });
  await say("dup leftover", "setLeftovers", { leftovers: [{ base: "tomato-sauce", grams: 1, cookedOn: DAY }, { base: "tomato-sauce", grams: 2, cookedOn: DAY }] });
  await say("label dup allergen", "recordLabel", { food: "raisins", contains: ["MILK", "MILK"], mayContain: ["MILK"], readOn: "2026-11-20", kinds: [{ kind: "kiwi", says: "CLEAR" }, { kind: "kiwi", says: "CONTAINS" }] });
  await say("label unpackaged", "recordLabel", { food: "apple-raw", contains: [], mayContain: [], readOn: "2026-11-20" });
  for (const date of ["0000-01-01", "0001-01-01", "9999-12-31", "1066-10-14"]) {
    await say(`plan ${date}`, "planWeek", { date, seenRevision: 0 });
    await say(`absence ${date}`, "reportAbsence", { date, childId: home.children[0], seenRevision: 0 });
    await say(`relax ${date}`, "relaxHouseRule", { date, rule: "DISH_REPEATS" });
    await say(`leftover ${date}`, "setLeftovers", { leftovers: [{ base: "tomato-sauce", grams: 1, cookedOn: date }] });
    await say(`prep ${date}`, "setPrepTimes", { prepTimes: [{ ...pt, date }] });
    await say(`label ${date}`, "recordLabel", { food: "raisins", contains: [], mayContain: [], readOn: date });
    for (const q of [`week(householdId: "${home.id}", date: "${date}") { id }`, `household(id: "${home.id}") { week(date: "${date}") { id } children { ageYears(on: "${date}") dailyNeeds(on: "${date}") { energyKcal } boxes(from: "${date}", to: "${date}") { id } } }`]) {
      const r = await served.post(p, `{ ${q} }`);
      out.push(`${date} ${q.slice(0, 9)} ${JSON.stringify(r.data)} ${JSON.stringify(r.errors.map((e) => [e.message, e.extensions["code"]]))}`);
    }
  }
  await say("enrol 9999", "enrolChild", { childId: home.children[0], schoolClassId: globalId("SchoolClass", "00000000-0000-4000-8000-000000000000"), fromDate: "9999-12-31" });
  const child = { name: "Zed", dateOfBirth: "2019-02-03", compartments: [{ ml: 600, leakProof: true }], leaveAt: "08:00" };
  await say("nul name", "createChild", { ...child, name: "Z\u0000ed" });
  await say("surrogate", "createChild", { ...child, name: "Z\ud800ed" });
  await say("dob today", "createChild", { ...child, dateOfBirth: "2026-11-25" });
  await say("dup allergy", "createChild", { ...child, allergies: [{ allergen: "EGG" }, { allergen: "EGG", avoid: "INGREDIENTS" }] });
  await say("dislikes", "createChild", { ...child, dislikes: ["Not A Key"] });
  await say("nul reason", "reportAbsence", { childId: home.children[0], date: DAY, seenRevision: 1, reason: "a\u0000" });
  await say("nul dish", "swapItem", { itemId: (await home.week(DAY))!.plan.boxes[0]!.items[0]!.id, dish: "\u0000", seenRevision: 1 });
  const r = await served.post(p, documentOf("setStock"), { input: { idempotencyKey: "aaaaaaaaaaa\u0000", householdId: home.id, seenRevision: 1, entries: [] } });
  out.push(`nul key ${JSON.stringify(r)}`);
  for (const after of ["AA", "", "%%%", "gICA"]) {
    const s = await served.post(p, `{ schools(after: "${after}") { nodes { name } } dishes(first: 1, after: "${after}") { nodes { key } } }`);
    out.push(`after ${after}: ${JSON.stringify(s)}`);
  }
  for (const first of [0, -1, 101]) out.push(JSON.stringify((await served.post(p, `{ schools(first: ${first}) { nodes { name } } }`)).errors));
  await say("absence sat", "reportAbsence", { childId: home.children[0], date: "2027-01-16", seenRevision: (await home.week(DAY))!.revision });
  await say("packed far", "markPacked", { boxId: (await home.week(DAY))!.plan.boxes[0]!.id, seenRevision: (await home.week(DAY))!.revision, packedAt: "2030-01-01T00:00:00Z" });
  const nodes = await served.post(p, `{ household(id: "${home.id}") { kitchen { leftovers { id } } carers { person { id } } week(date: "${DAY}") { id plan { id boxes { id items { id dish { id } } } batches { id } tasks { id } shopping { id } } } children { id enrolments { school { id ruleSets { id } } schoolClass { id } } } } }`);
  const ids = new Set<string>(); JSON.stringify(nodes.data, (k, v: unknown) => { if (k === "id") ids.add(v as string); return v; });
  const kinds = new Map<string, string>();
  for (const id of ids) kinds.set(Buffer.from(id, "base64url").toString().split(":")[0]!, id);
  for (const [k, id] of kinds) { const n = await served.post(p, `{ node(id: "${id}") { __typename id } }`); out.push(`node ${k} ${JSON.stringify(n)}`); }
  console.log(out.join("\n"));
});
