/**
 * npm run bench:cancel: how soon a planner thread is free again when nobody wants its answer any more. Plans, prices of a dish and of
 * the alternatives are cancelled at moments spread over the time that they take; then a question that needs next to nothing is asked.
 * Options: `-- --cancels N`.
 */
import { parseArgs } from "node:util";
import { setTimeout } from "node:timers/promises";
import type { WeekDraft } from "../../src/domain/week.js";
import { startPlannerPool } from "../../src/jobs/planner-pool.js";
import { PLAN_STEPS } from "../../src/plan-steps.js";
import { threeChildren } from "../support/demo-brief.js";
import { loadNow, median, printHold, printMachine, printTable } from "./machine.js";

const { values: options } = parseArgs({ options: { cancels: { type: "string", default: "17" } } });
const cancels = Number(options.cancels);

const brief = threeChildren();
const pool = startPlannerPool(brief.catalogue, { threads: 1 });
const planned = await pool.plan({ brief, seed: 901, steps: PLAN_STEPS, compare: false });
if (planned.outcome.kind !== "PLANNED") throw new Error("the week has no plan");
const { draft }: { draft: WeekDraft } = planned.outcome;
const [box] = draft.boxes;
const [item] = box!.items;
const place = {
  childId: box!.childId,
  date: box!.date,
  breakKey: item!.breakKey,
  slot: item!.slot,
  position: item!.position,
};
const at = { childId: place.childId, date: place.date, breakKey: place.breakKey, slot: place.slot, nth: 0 };
const { dish } = draft.boxes.find(({ childId, date }) => childId === box!.childId && date !== box!.date)!.items[0]!;

const work: Readonly<Record<string, (signal?: AbortSignal) => Promise<unknown>>> = {
  plan: (signal) => pool.plan({ brief, seed: 1, steps: PLAN_STEPS, compare: false }, undefined, signal),
  "price of a dish": (signal) => pool.ask({ kind: "PRICE_DISH", brief, draft, at, dish }, signal),
  "prices of the alternatives": (signal) =>
    pool.ask({ kind: "PRICE_ALTERNATIVES", brief, draft, place, first: 5 }, signal),
};
/** Answered before any dish is looked at: the way to the thread and back. */
const trifle = () => pool.ask({ kind: "PRICE_DISH", brief, draft, at: { ...at, breakKey: "none" }, dish });
const timed = async (task: () => Promise<unknown>): Promise<number> => {
  const began = performance.now();
  await task();
  return performance.now() - began;
};

try {
  const rows: string[][] = [];
  let all: number[] = [];
  const ways: number[] = [];
  for (const [name, run] of Object.entries(work)) {
    await run();
    const takes = await timed(run);
    const free: number[] = [];
    for (let cancel = 0; cancel < cancels; cancel += 1) {
      ways.push(await timed(trifle));
      const controller = new AbortController();
      const running = run(controller.signal).catch(() => undefined);
      // Moments that no period of the work falls in with.
      await setTimeout(takes * ((cancel * 0.618034) % 1));
      controller.abort();
      free.push(await timed(trifle));
      await running;
    }
    rows.push([name, takes.toFixed(0), median(free).toFixed(1), Math.max(...free).toFixed(1)]);
    all = [...all, ...free];
  }
  printMachine();
  console.log(
    `${cancels} cancels each, load ${loadNow()} at the end; the trifle alone ${median(ways).toFixed(1)} ms, worst ${Math.max(...ways).toFixed(1)}`,
  );
  printTable(["cancelled", "takes ms", "next answer after ms, median", "worst"], rows);
  printHold("worst next answer after a cancel", Math.max(...all), { atMost: 50 }, " ms");
} finally {
  await pool.stop();
}
