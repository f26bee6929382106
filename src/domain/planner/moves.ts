import type { ProblemTables } from "./problem-tables.js";
import type { RandomStream } from "./random.js";
import type { WeekState } from "./week-state.js";

/** Makes one random change between `begin` and `settle`; false when the draw led to no change (nothing was touched then). */
export type MoveProposer = () => boolean;

/** Draws out of 64 for each kind of move, in the order of the list in `createMoveProposer`. */
const SHARES = [24, 8, 4, 10, 3, 1, 5, 6, 2, 1] as const;

/** How often a kind is drawn anew before a draw counts as no move. */
const TRIES = 4;

/**
 * The moves of the search: one pick; two picks of a box; two picks of a child's slot; two days of a child's slot swapped; two
 * days of a child's boxes swapped; two days of all boxes swapped; a sibling's dish copied; a pick redirected to a base in use;
 * finishing moved to the evening or back; a base planned anew. Swaps go by dish, and only where the other day's list has it.
 */
export function createMoveProposer(tables: ProblemTables, week: WeekState, random: RandomStream): MoveProposer {
  const { free, candidateStart, candidateDish, candidateOfDish, dishes, days, bases, usersOfBase } = tables;
  const { childAt, dayAt, boxAt } = tables;
  const isFree = new Uint8Array(tables.positions);
  for (const position of free) isFree[position] = 1;

  const sameBox = freePeers(tables, (p, o) => boxAt[p] === boxAt[o]);
  const slotOf = tables.problem.positions.map((position) => position.slot);
  const sameSlot = freePeers(
    tables,
    (p, o) => childAt[p] === childAt[o] && slotOf[p] === slotOf[o] && dayAt[p] !== dayAt[o],
  );
  const siblings = tables.sameSlotPeers;
  const boxPairs = swapPairs(tables, true);
  const dayPairs = swapPairs(tables, false);
  const splitPossible = tables.canSplit.some((can) => can === 1) && tables.eveningOf.some((w) => w >= 0);

  const drawFree = (): number => free[random.below(free.length)]!;
  const drawOther = (position: number): number => {
    const start = candidateStart[position]!;
    const chosen = start + random.below(candidateStart[position + 1]! - start - 1);
    return chosen >= week.picks[position]! ? chosen + 1 : chosen;
  };

  const changeOne = (): boolean => {
    const position = drawFree();
    week.pick(position, drawOther(position));
    return true;
  };
  const changeTwo = (peers: readonly Int32Array[]) => (): boolean => {
    const position = drawFree();
    const others = peers[position]!;
    if (others.length === 0) return false;
    const other = others[random.below(others.length)]!;
    week.pick(position, drawOther(position));
    week.pick(other, drawOther(other));
    return true;
  };
  const exchange = (left: number, right: number): boolean => {
    const toLeft = candidateOfDish[left * dishes + candidateDish[week.picks[right]!]!]!;
    const toRight = candidateOfDish[right * dishes + candidateDish[week.picks[left]!]!]!;
    if (toLeft < 0 || toRight < 0 || toLeft === week.picks[left]) return false;
    week.pick(left, toLeft);
    week.pick(right, toRight);
    return true;
  };
  const swapSlot = (): boolean => {
    const position = drawFree();
    const others = sameSlot[position]!;
    return others.length > 0 && exchange(position, others[random.below(others.length)]!);
  };
  const swapMany = (pairs: readonly Int32Array[]) => (): boolean => {
    if (pairs.length === 0) return false;
    const pair = pairs[random.below(pairs.length)]!;
    for (let index = 0; index < pair.length; index += 2) {
      const left = pair[index]!;
      const right = pair[index + 1]!;
      if (candidateOfDish[left * dishes + candidateDish[week.picks[right]!]!]! < 0) return false;
      if (candidateOfDish[right * dishes + candidateDish[week.picks[left]!]!]! < 0) return false;
    }
    let changed = false;
    for (let index = 0; index < pair.length; index += 2) changed = exchange(pair[index]!, pair[index + 1]!) || changed;
    return changed;
  };
  const copySibling = (): boolean => {
    const position = drawFree();
    const others = siblings[position]!;
    if (others.length === 0) return false;
    const dish = candidateDish[week.picks[others[random.below(others.length)]!]!]!;
    const candidate = candidateOfDish[position * dishes + dish]!;
    if (candidate < 0 || candidate === week.picks[position]) return false;
    week.pick(position, candidate);
    return true;
  };
  const redirect = (): boolean => {
    if (bases === 0) return false;
    const position = drawFree();
    const base = random.below(bases);
    const users = usersOfBase[position * bases + base]!;
    if (users.length === 0 || !week.usesBase(base)) return false;
    const candidate = users[random.below(users.length)]!;
    if (candidate === week.picks[position]) return false;
    week.pick(position, candidate);
    return true;
  };
  const toggleEvening = (): boolean => {
    if (!splitPossible) return false;
    const position = random.below(tables.positions);
    return week.toggleEvening(candidateDish[week.picks[position]!]!, dayAt[position]!);
  };
  const replanBase = (): boolean => {
    if (bases === 0) return false;
    const base = random.below(bases);
    if (!week.usesBase(base)) return false;
    week.replan(base);
    return true;
  };

  const kinds: readonly MoveProposer[] = [
    changeOne,
    changeTwo(sameBox),
    changeTwo(sameSlot),
    swapSlot,
    swapMany(boxPairs),
    swapMany(dayPairs),
    copySibling,
    redirect,
    toggleEvening,
    replanBase,
  ];
  const wheel = SHARES.flatMap((share, kind) => new Array<MoveProposer>(share).fill(kinds[kind]!));
  const frozen: readonly MoveProposer[] = [toggleEvening, replanBase];
  return () => {
    for (let attempt = 0; attempt < TRIES; attempt += 1) {
      const propose = free.length === 0 ? frozen[random.below(2)]! : wheel[random.below(wheel.length)]!;
      if (propose()) return true;
    }
    return false;
  };

  function freePeers(of: ProblemTables, related: (p: number, o: number) => boolean): Int32Array[] {
    return Array.from({ length: of.positions }, (_, p) =>
      Int32Array.from(free.filter((o) => o !== p && isFree[p] === 1 && related(p, o))),
    );
  }

  /** Position pairs (left, right, left, right, ...) that a swap of two days exchanges, for one child each or for all. */
  function swapPairs(of: ProblemTables, perChild: boolean): Int32Array[] {
    const pairs: Int32Array[] = [];
    for (let first = 0; first < days; first += 1) {
      for (let second = first + 1; second < days; second += 1) {
        for (let child = 0; child < (perChild ? of.children : 1); child += 1) {
          const pair: number[] = [];
          for (const left of free) {
            if (dayAt[left] !== first || (perChild && childAt[left] !== child)) continue;
            for (const right of sameSlot[left]!) if (dayAt[right] === second) pair.push(left, right);
          }
          if (pair.length > 2) pairs.push(Int32Array.from(pair));
        }
      }
    }
    return pairs;
  }
}
