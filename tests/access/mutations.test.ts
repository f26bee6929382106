/** The access matrix of mutations, over HTTP. */
import { useServedApp } from "../support/served-app.js";
import { leastRole } from "../../src/app/may.js";
import { mutationAsker, unspokenMutations, unspokenNodes } from "./mutation-cells.js";
import { keep } from "./report-cells.js";
import type { Cell } from "./sql-cells.js";

const served = useServedApp();
const named = ({ what, actor, got }: Cell) => `${actor} ${got ? "may" : "may not"} ask for ${what}`;

describe("mutations, asked over HTTP", () => {
  let ask: Awaited<ReturnType<typeof mutationAsker>>["ask"];
  let cells: Cell[];
  let reads: Cell[];
  beforeAll(async () => {
    const asker = await mutationAsker(served);
    ask = asker.ask;
    // Before anybody gives coordination away.
    reads = await asker.read();
    keep("things", reads);
    cells = await ask();
    keep("mutations", cells);
    // Each of some seventy mutations is asked in eight names, one after the other.
  }, 240_000);
  it("everything with an ID has its line, and is read by whom it should be and nobody else", () => {
    expect(unspokenNodes(served)).toEqual([]);
    expect(new Set(reads.map(({ what }) => what)).size).toBe(16);
    expect(reads.filter(({ expected, got }) => expected !== got).map(named)).toEqual([]);
  });
  it("every mutation has its line", () => expect(unspokenMutations(served)).toEqual([]));
  it("every mutation was asked for by everybody", () =>
    expect(new Set(cells.map(({ what }) => what)).size).toBe(
      Object.keys(served.inProcess.schema.getMutationType()!.getFields()).length,
    ));
  it("nobody may what they should not", () =>
    expect(cells.filter(({ expected, got }) => got && !expected).map(named)).toEqual([]));
  it("everybody may what is theirs to do", () =>
    expect(cells.filter(({ expected, got }) => expected && !got).map(named)).toEqual([]));

  it.each([
    ["agreeWeek", "agreeWeek"],
    ["changeStock", "setStock"],
    ["packBox", "markPacked"],
  ] as const)("a verb that is looked up wrongly is caught: %s for everybody", async (verb, field) => {
    const table = leastRole as Record<string, string>;
    const least = table[verb]!;
    table[verb] = "OBSERVER";
    try {
      const leaks = (await ask([field])).filter(({ expected, got }) => got && !expected);
      expect(leaks.map(named)).toContain(`OBSERVER may ask for ${field}`);
    } finally {
      table[verb] = least;
    }
  });
});
