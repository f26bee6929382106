import { avoidedInSession, orderForCrossContact } from "../../src/domain/kitchen/cross-contact.js";

const task = (startsAt: string, handles: readonly string[] = [], more: { session?: string; hands?: number } = {}) => ({
  session: more.session ?? "morning-2027-01-11",
  startsAt,
  handsOnMinutes: more.hands ?? 3,
  handles,
});

// Safe food first, separate boards, washing with soap and water between: common practice for a kitchen with an allergy.
describe("what is made first, and on what", () => {
  const safe = task("06:50");
  const nutty = task("06:55", ["ALMOND"]);
  const later = task("07:00");
  const all = [safe, nutty, later];

  it("says nothing where the session handles nothing anybody avoids", () => {
    expect(
      orderForCrossContact(safe, [safe, later, task("06:40", ["ALMOND"], { session: "evening-2027-01-10" })]),
    ).toBe(null);
  });

  it("makes the safe things before anything avoided comes out", () => {
    expect(orderForCrossContact(safe, all)).toBe("SAFE_FIRST");
  });

  it("keeps what is avoided on a board of its own", () => {
    expect(orderForCrossContact(nutty, all)).toBe("APART");
  });

  it("has boards, knives and hands washed before a safe thing that comes later, or at the same time", () => {
    expect(orderForCrossContact(later, all)).toBe("CLEAN_FIRST");
    expect(orderForCrossContact(task("06:55"), all)).toBe("CLEAN_FIRST");
  });

  it("asks no washing of what cools or bakes by itself", () => {
    expect(orderForCrossContact(task("07:05", [], { hands: 0 }), all)).toBe(null);
  });

  it("names everything avoided that the session handles, once", () => {
    expect(avoidedInSession("morning-2027-01-11", [...all, task("07:10", ["kiwi", "ALMOND"])])).toEqual([
      "ALMOND",
      "kiwi",
    ]);
  });
});
