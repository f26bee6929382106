/**
 * Where a search works: the tables of a week, its sums and its moves, in lists that are made once a thread and written over by the next
 * week. Nothing of one week reaches another. V8 builds a function's own lists into its machine code as long as that function was made
 * only once; made anew for every search, the same code takes 1.7 times as long (DEVELOPERS.md, "The search").
 */
import { createMoves, type Moves } from "./moves.js";
import type { Problem } from "./problem.js";
import { buildTables, type ProblemTables, type TableSizes } from "./problem-tables.js";
import { createWeekState, type WeekState } from "./week-state.js";

export interface Workbench {
  readonly tables: ProblemTables;
  /** Empty at first. */
  readonly week: WeekState;
  readonly moves: Moves;
}

/** Room for weeks far larger than a household's; memory that no week has used yet costs nothing. */
const USUAL: Readonly<TableSizes> = {
  positions: 1 << 10,
  days: 16,
  children: 16,
  measures: 1 << 9,
  equipment: 16,
  windows: 64,
  bases: 1 << 9,
  dishes: 1 << 11,
  boxes: 1 << 9,
  candidates: 1 << 16,
  groups: 16,
  rows: 1 << 12,
  distinctRules: 1 << 10,
  distinctCounters: 1 << 13,
  togetherRows: 1 << 11,
  families: 1 << 6,
  pairs: 1 << 11,
  capacities: 1 << 11,
  firstNightCapacity: 1 << 11,
  ready: 1 << 9,
};
const USUAL_LENGTH = 1 << 17;
/** Lists that go by two of the sizes at once. */
const LONGER: Readonly<Record<string, number>> = { candidateQ: 1 << 22, candidateOfDish: 1 << 21 };

let idle: Workbench | null = null;

/**
 * Lays a problem out and lends the workbench to `work`. A week larger than the one at hand gets a larger one; work within work, one of
 * its own.
 */
export function atWorkbench<T>(problem: Problem, work: (workbench: Workbench) => T): T {
  const tables = buildTables(problem);
  const workbench = idle !== null && fits(idle.tables, tables) ? idle : openWorkbench(tables);
  idle = null;
  try {
    lay(workbench.tables, tables);
    workbench.week.clear();
    return work(workbench);
  } finally {
    idle = workbench;
  }
}

function openWorkbench(first: ProblemTables): Workbench {
  const tables = makeRoom(first);
  const week = createWeekState(tables);
  return { tables, week, moves: createMoves(tables, week) };
}

type List = Int32Array | Float64Array | Uint8Array;
const listsOf = (tables: ProblemTables) =>
  Object.entries(tables).filter(
    (entry): entry is [string, List] => entry[0] !== "free" && ArrayBuffer.isView(entry[1]),
  );
const sizesOf = (sizes: Readonly<TableSizes>) => Object.entries(sizes) as [keyof TableSizes, number][];

/** Tables with room for at least these and for what is usual. */
function makeRoom(tables: ProblemTables): ProblemTables {
  const roomy = (needed: number, usual: number): number => (needed <= usual ? usual : 2 * needed);
  const most = Object.fromEntries(sizesOf(tables.size).map(([name, size]) => [name, roomy(size, USUAL[name])]));
  const lists = listsOf(tables).map(([name, list]) => {
    const length = roomy(list.length, LONGER[name] ?? USUAL_LENGTH);
    const Kind = list.constructor as new (length: number) => List;
    return [name, new Kind(length)];
  });
  return { ...tables, ...Object.fromEntries(lists), size: { ...tables.size }, most } as ProblemTables;
}

function fits(room: ProblemTables, tables: ProblemTables): boolean {
  const lengths = new Map(listsOf(room).map(([name, list]) => [name, list.length]));
  return (
    sizesOf(tables.size).every(([name, size]) => size <= room.most[name]) &&
    listsOf(tables).every(([name, list]) => list.length <= lengths.get(name)!)
  );
}

function lay(room: ProblemTables, tables: ProblemTables): void {
  const lists = new Map(listsOf(room));
  for (const [name, list] of listsOf(tables)) lists.get(name)!.set(list);
  Object.assign(room.size, tables.size);
  room.problem = tables.problem;
  room.free = tables.free;
}
