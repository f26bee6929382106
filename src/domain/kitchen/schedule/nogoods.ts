/**
 * Whole-number variables between bounds, and nogoods: sets of bounds that cannot all hold. Propagation, and learning from a dead
 * end the one reason that lies closest to it. Method: lazy clause generation (Ohrimenko, Stuckey and Codish 2009), with bounds
 * themselves as literals, two watched literals a nogood, the first unique implication point of each conflict.
 *
 * A variable v has two sides: side 2v carries v, side 2v + 1 carries -v. A literal (side, bound) says that the side is at least the
 * bound, so "v <= 5" is (2v + 1, -5), and the opposite of (side, bound) is (side ^ 1, 1 - bound).
 */

/** A propagator works on the sides it watches; it answers false once it has called `failWith` or `raise` answered false. */
export interface Propagator {
  readonly watches: readonly number[];
  readonly propagate: () => boolean;
}

export interface Nogoods {
  /** Lowest value of each side. */
  readonly low: Int32Array;
  readonly addPropagator: (propagator: Propagator) => void;
  /** Whenever (`condition`, 1) holds, or always where it is -1: the `to` side is at least the `from` side + `length`. At the root only; false when nothing is left. */
  readonly addLag: (from: number, to: number, length: number, condition: number) => boolean;
  /** Literals as side, bound, side, bound, ...: not all of them. At the root only; false when nothing is left. */
  readonly addNogood: (literals: readonly number[]) => boolean;
  /** For all that follows, at the root only; false when nothing is left. */
  readonly impose: (side: number, bound: number) => boolean;
  /** For propagators: raises a side because all of `because` holds (side, bound, ...). */
  readonly raise: (side: number, bound: number, because: readonly number[]) => boolean;
  /** For propagators: all of `because` holds, and cannot. */
  readonly failWith: (because: readonly number[]) => false;
  readonly decide: (side: number, bound: number) => void;
  /** Everything that follows; false in a dead end. */
  readonly propagate: () => boolean;
  /** Learns from the dead end and goes back to where the lesson bites; false when the root itself is dead. */
  readonly learn: () => boolean;
  readonly restart: () => void;
  /** The undecided literal that dead ends were most about, as its side-0 bound; null when all known are decided. */
  readonly mostDisputed: () => { readonly variable: number; readonly bound: number } | null;
}

const GIVEN = -1;
/** Nogoods kept at first; the number grows by a tenth whenever half are dropped. */
const KEPT = 4000;
const FADING = 1 / 0.95;

export function createNogoods(bounds: readonly { readonly lowest: number; readonly highest: number }[]): Nogoods {
  const variables = bounds.length;
  const sides = variables * 2;
  const low = new Int32Array(sides);
  bounds.forEach(({ lowest, highest }, v) => {
    low[2 * v] = lowest;
    low[2 * v + 1] = -highest;
  });

  // The trail: every rise of a side, with the value before, the rise before of the same side, and the reason.
  const trailSide: number[] = [];
  const trailValue: number[] = [];
  const trailBefore: number[] = [];
  const trailPrevious: number[] = [];
  const trailKind: number[] = [];
  const trailReason: number[] = [];
  const lastRise = new Int32Array(sides).fill(GIVEN);
  const levelStart: number[] = [];
  let head = 0;

  const BY_LAG = 1;
  const BY_NOGOOD = 2;
  const BY_LIST = 3;

  const lagFrom: number[] = [];
  const lagTo: number[] = [];
  const lagLength: number[] = [];
  const lagCondition: number[] = [];
  const lagsFrom: number[][] = Array.from({ length: sides }, () => []);
  const lagsWhen: number[][] = Array.from({ length: sides }, () => []);

  const nogoods: (Int32Array | null)[] = [];
  const usefulness: number[] = [];
  /** Per side: nogood and bound of each watched literal, in pairs. */
  const watchers: number[][] = Array.from({ length: sides }, () => []);
  let learned: number[] = [];
  let mostLearned = KEPT;

  const lists: (readonly number[])[] = [];
  /** Literals that hold and cannot, together with the reason of one rise where that crossed the other side. */
  let deadEnd: readonly number[] = [];
  let deadRise = GIVEN;

  const propagators: Propagator[] = [];
  const wakes: number[][] = Array.from({ length: sides }, () => []);
  const isAwake: boolean[] = [];

  const isTrue = (side: number, bound: number): boolean => low[side]! >= bound;
  const isFalse = (side: number, bound: number): boolean => -low[side ^ 1]! < bound;

  /** False when the two sides of the variable now cross; the rise is on the trail all the same, for `learn`. */
  const rise = (side: number, value: number, kind: number, reason: number): boolean => {
    const before = low[side]!;
    if (value <= before) return true;
    trailSide.push(side);
    trailValue.push(value);
    trailBefore.push(before);
    trailPrevious.push(lastRise[side]!);
    trailKind.push(kind);
    trailReason.push(reason);
    lastRise[side] = trailSide.length - 1;
    low[side] = value;
    if (value + low[side ^ 1]! <= 0) return true;
    deadEnd = [side ^ 1, low[side ^ 1]!];
    deadRise = trailSide.length - 1;
    return false;
  };

  const raise = (side: number, bound: number, because: readonly number[]): boolean => {
    if (bound <= low[side]!) return true;
    lists.push(because);
    return rise(side, bound, BY_LIST, lists.length - 1);
  };

  const failWith = (because: readonly number[]): false => {
    deadEnd = because;
    deadRise = GIVEN;
    return false;
  };

  const undoTo = (level: number): void => {
    if (levelStart.length <= level) return;
    const start = levelStart[level]!;
    for (let index = trailSide.length - 1; index >= start; index -= 1) {
      const side = trailSide[index]!;
      low[side] = trailBefore[index]!;
      lastRise[side] = trailPrevious[index]!;
      if (trailKind[index] === BY_LIST) lists.length = trailReason[index]!;
    }
    trailSide.length = start;
    trailValue.length = start;
    trailBefore.length = start;
    trailPrevious.length = start;
    trailKind.length = start;
    trailReason.length = start;
    levelStart.length = level;
    head = start;
    // Nothing was left to follow where this level ended, and less holds now than then.
    isAwake.fill(false);
  };

  const impose = (side: number, bound: number): boolean => rise(side, bound, GIVEN, GIVEN);

  const followLag = (lag: number): boolean => {
    const condition = lagCondition[lag]!;
    const bound = low[lagFrom[lag]!]! + lagLength[lag]!;
    const to = lagTo[lag]!;
    if (condition >= 0 && !isTrue(condition, 1)) {
      // Where it cannot be kept, the condition does not hold.
      if (isFalse(condition, 1) || -low[to ^ 1]! >= bound) return true;
      return raise(condition ^ 1, 0, [lagFrom[lag]!, low[lagFrom[lag]!]!, to ^ 1, 1 - bound]);
    }
    return bound <= low[to]! || rise(to, bound, BY_LAG, lag);
  };

  const followNogoods = (side: number, before: number, now: number): boolean => {
    const list = watchers[side]!;
    let kept = 0;
    let read = 0;
    let alive = true;
    for (; read < list.length; read += 2) {
      const index = list[read]!;
      const bound = list[read + 1]!;
      const nogood = nogoods[index]!;
      if (nogood === null) continue;
      if (bound > now || bound <= before) {
        list[kept] = index;
        list[kept + 1] = bound;
        kept += 2;
        continue;
      }
      // The watched literal that has come true stands second.
      if (nogood[0] === side && nogood[1] === bound) {
        nogood[0] = nogood[2]!;
        nogood[1] = nogood[3]!;
        nogood[2] = side;
        nogood[3] = bound;
      }
      let moved = false;
      if (!isFalse(nogood[0]!, nogood[1]!)) {
        for (let at = 4; at < nogood.length; at += 2) {
          if (isTrue(nogood[at]!, nogood[at + 1]!)) continue;
          nogood[2] = nogood[at]!;
          nogood[3] = nogood[at + 1]!;
          nogood[at] = side;
          nogood[at + 1] = bound;
          watchers[nogood[2]]!.push(index, nogood[3]);
          moved = true;
          break;
        }
      }
      if (moved) continue;
      list[kept] = index;
      list[kept + 1] = bound;
      kept += 2;
      if (isFalse(nogood[0]!, nogood[1]!)) continue;
      if (!rise(nogood[0]! ^ 1, 1 - nogood[1]!, BY_NOGOOD, index)) {
        alive = false;
        read += 2;
        break;
      }
    }
    for (; read < list.length; read += 1) {
      list[kept] = list[read]!;
      kept += 1;
    }
    list.length = kept;
    return alive;
  };

  const propagate = (): boolean => {
    for (;;) {
      while (head < trailSide.length) {
        const side = trailSide[head]!;
        const before = trailBefore[head]!;
        const value = trailValue[head]!;
        head += 1;
        for (const p of wakes[side]!) isAwake[p] = true;
        for (const lag of lagsFrom[side]!) if (!followLag(lag)) return false;
        for (const lag of lagsWhen[side]!) if (!followLag(lag)) return false;
        if (!followNogoods(side, before, value)) return false;
      }
      const next = isAwake.indexOf(true);
      if (next < 0) return true;
      isAwake[next] = false;
      if (!propagators[next]!.propagate()) {
        isAwake[next] = true;
        return false;
      }
    }
  };

  // Disputed literals: activity by variable and bound of side 0, raised for each literal met on the way to a lesson.
  const atoms: Map<number, number>[] = Array.from({ length: variables }, () => new Map<number, number>());
  const atomVariable: number[] = [];
  const atomBound: number[] = [];
  const atomActivity: number[] = [];
  let increment = 1;
  const dispute = (side: number, bound: number): void => {
    const variable = side >> 1;
    const own = (side & 1) === 0 ? bound : 1 - bound;
    let atom = atoms[variable]!.get(own);
    if (atom === undefined) {
      atom = atomVariable.length;
      atoms[variable]!.set(own, atom);
      atomVariable.push(variable);
      atomBound.push(own);
      atomActivity.push(0);
    }
    atomActivity[atom]! += increment;
    if (atomActivity[atom]! > 1e100) {
      for (let a = 0; a < atomActivity.length; a += 1) atomActivity[a]! *= 1e-100;
      increment *= 1e-100;
    }
  };

  const mostDisputed = (): { variable: number; bound: number } | null => {
    let best = -1;
    let most = -1;
    for (let atom = 0; atom < atomVariable.length; atom += 1) {
      const activity = atomActivity[atom]!;
      if (activity <= most) continue;
      const side = atomVariable[atom]! * 2;
      const bound = atomBound[atom]!;
      if (low[side]! >= bound || -low[side + 1]! < bound) continue;
      best = atom;
      most = activity;
    }
    return best < 0 ? null : { variable: atomVariable[best]!, bound: atomBound[best]! };
  };

  /** Per side, what the lesson under way still asks for: the bound and the rise that brought it. */
  const askedBound = new Int32Array(sides);
  const askedRise = new Int32Array(sides).fill(GIVEN);

  // The lesson under way: sides asked for, the level it is drawn at, and how many asked rises lie in that level.
  const asked: number[] = [];
  let levelFrom = 0;
  let here = 0;

  const ask = (side: number, bound: number): void => {
    const had = askedRise[side]!;
    if (had >= 0 && askedBound[side]! >= bound) return;
    let at = lastRise[side]!;
    while (at >= 0 && trailBefore[at]! >= bound) at = trailPrevious[at]!;
    // True before anything was decided: needs no reason.
    if (at < levelStart[0]!) return;
    if (had < 0) asked.push(side);
    if (at >= levelFrom && had < levelFrom) here += 1;
    askedRise[side] = at;
    askedBound[side] = bound;
  };

  const learn = (): boolean => {
    if (levelStart.length === 0) return false;
    asked.length = 0;
    here = 0;
    let level = levelStart.length;
    levelFrom = levelStart[level - 1]!;
    for (let at = 0; at < deadEnd.length; at += 2) ask(deadEnd[at]!, deadEnd[at + 1]!);
    if (deadRise >= 0) explain(deadRise, 1 - low[trailSide[deadRise]! ^ 1]!);
    // The dead end may have been certain at a level above.
    while (here === 0 && level > 1) {
      level -= 1;
      levelFrom = levelStart[level - 1]!;
      for (const side of asked) if (askedRise[side]! >= levelFrom) here += 1;
    }
    if (here === 0) {
      for (const side of asked) askedRise[side] = GIVEN;
      return false;
    }

    let index = levelStart[level] ?? trailSide.length;
    while (here > 1) {
      do index -= 1;
      while (askedRise[trailSide[index]!]! !== index);
      const side = trailSide[index]!;
      const bound = askedBound[side]!;
      dispute(side, bound);
      askedRise[side] = GIVEN;
      here -= 1;
      explain(index, bound);
    }
    // The one literal of that level first, then the deepest of the rest.
    const lesson = [0, 0];
    let second = GIVEN;
    for (const side of asked) {
      const at = askedRise[side]!;
      if (at < 0) continue;
      askedRise[side] = GIVEN;
      const bound = askedBound[side]!;
      dispute(side, bound);
      if (at >= levelFrom) {
        lesson[0] = side;
        lesson[1] = bound;
        continue;
      }
      lesson.push(side, bound);
      if (at <= second) continue;
      second = at;
      const last = lesson.length - 2;
      lesson[last] = lesson[2]!;
      lesson[last + 1] = lesson[3]!;
      lesson[2] = side;
      lesson[3] = bound;
    }
    increment *= FADING;
    undoTo(second < 0 ? 0 : levelOf(second));
    const opposite = lesson[0]! ^ 1;
    const bound = 1 - lesson[1]!;
    if (lesson.length === 2) return impose(opposite, bound);
    const number = keep(Int32Array.from(lesson));
    learned.push(number);
    if (!rise(opposite, bound, BY_NOGOOD, number)) return learn();
    if (learned.length > mostLearned) forget();
    return true;
  };

  const levelOf = (rise: number): number => {
    let from = 0;
    let to = levelStart.length;
    while (from < to) {
      const middle = (from + to) >> 1;
      if (levelStart[middle]! <= rise) from = middle + 1;
      else to = middle;
    }
    return from;
  };

  /** Asks for that of which the rise at `index`, as far as `bound`, is a consequence. */
  const explain = (index: number, bound: number): void => {
    const reason = trailReason[index]!;
    switch (trailKind[index]!) {
      case BY_LAG:
        ask(lagFrom[reason]!, bound - lagLength[reason]!);
        if (lagCondition[reason]! >= 0) ask(lagCondition[reason]!, 1);
        return;
      case BY_NOGOOD: {
        const nogood = nogoods[reason]!;
        const negated = trailSide[index]! ^ 1;
        usefulness[reason]! += increment;
        for (let at = 0; at < nogood.length; at += 2) if (nogood[at] !== negated) ask(nogood[at]!, nogood[at + 1]!);
        return;
      }
      case BY_LIST: {
        const list = lists[reason]!;
        for (let at = 0; at < list.length; at += 2) ask(list[at]!, list[at + 1]!);
        return;
      }
      default:
        throw new Error("a decision has no reason");
    }
  };

  const keep = (nogood: Int32Array): number => {
    const number = nogoods.length;
    nogoods.push(nogood);
    usefulness.push(increment);
    watchers[nogood[0]!]!.push(number, nogood[1]!);
    watchers[nogood[2]!]!.push(number, nogood[3]!);
    return number;
  };

  /** Drops the less useful half of the lessons; those that are a reason on the trail, and pairs, stay. */
  const forget = (): void => {
    const inUse = new Set<number>();
    for (let index = 0; index < trailSide.length; index += 1)
      if (trailKind[index] === BY_NOGOOD) inUse.add(trailReason[index]!);
    const ranked = [...learned].sort((a, b) => usefulness[b]! - usefulness[a]! || a - b);
    learned = ranked.filter((number, rank) => {
      if (rank < ranked.length / 2 || inUse.has(number) || nogoods[number]!.length <= 4) return true;
      nogoods[number] = null;
      return false;
    });
    mostLearned = Math.ceil(mostLearned * 1.1);
  };

  return {
    low,
    addPropagator: (propagator) => {
      const number = propagators.length;
      propagators.push(propagator);
      isAwake.push(true);
      for (const side of propagator.watches) wakes[side]!.push(number);
    },
    addLag: (from, to, length, condition) => {
      for (const [first, then] of [
        [from, to],
        [to ^ 1, from ^ 1],
      ] as const) {
        const lag = lagFrom.length;
        lagFrom.push(first);
        lagTo.push(then);
        lagLength.push(length);
        lagCondition.push(condition);
        lagsFrom[first]!.push(lag);
        if (condition >= 0) lagsWhen[condition]!.push(lag);
        if (!followLag(lag)) return false;
      }
      return true;
    },
    addNogood: (literals) => {
      const open: number[] = [];
      for (let at = 0; at < literals.length; at += 2) {
        if (isFalse(literals[at]!, literals[at + 1]!)) return true;
        if (!isTrue(literals[at]!, literals[at + 1]!)) open.push(literals[at]!, literals[at + 1]!);
      }
      if (open.length === 0) return false;
      if (open.length === 2) return impose(open[0]! ^ 1, 1 - open[1]!);
      keep(Int32Array.from(open));
      return true;
    },
    impose,
    raise,
    failWith,
    decide: (side, bound) => {
      levelStart.push(trailSide.length);
      rise(side, bound, GIVEN, GIVEN);
    },
    propagate,
    learn,
    restart: () => undoTo(0),
    mostDisputed,
  };
}
