import type { Problem } from "../problem.js";

/**
 * Which candidates some week may have, by position: not those beside a pinned one, nor those with which a band is broken whatever is
 * picked elsewhere. Goes over the bands until nothing more is closed (bound propagation; from memory). Of lower sides only those of
 * bands that count (0 or 1 a pick) are used: they would leave a linear program no room but on its edge, where duals run away. Where
 * a position is left with nothing there is no week at all, and only pins are answered.
 */
export function openCandidates(problem: Problem): boolean[][] {
  const { positions, bands } = problem;
  const pinned = positions.map(({ candidates, fixed }) => candidates.map((_, k) => fixed < 0 || fixed === k));
  const open = pinned.map((own) => [...own]);
  let closed = true;
  while (closed) {
    closed = false;
    for (const { measure, positions: listed, lo, hi } of bands) {
      const over = [...new Set(listed)];
      if (over.length < listed.length) continue;
      const ranges = over.map((p) => {
        const amounts = positions[p]!.candidates.flatMap(({ q }, k) => (open[p]![k]! ? [q[measure]!] : []));
        return { least: Math.min(...amounts), most: Math.max(...amounts) };
      });
      const counts = over.every((p) => positions[p]!.candidates.every(({ q }) => q[measure] === 0 || q[measure] === 1));
      const least = ranges.reduce((sum, range) => sum + range.least, 0);
      const most = ranges.reduce((sum, range) => sum + range.most, 0);
      over.forEach((p, at) => {
        positions[p]!.candidates.forEach(({ q }, k) => {
          const amount = q[measure]!;
          const tooMuch = hi !== null && least - ranges[at]!.least + amount > hi;
          const tooLittle = counts && lo !== null && most - ranges[at]!.most + amount < lo;
          if (!open[p]![k]! || (!tooMuch && !tooLittle)) return;
          open[p]![k] = false;
          closed = true;
        });
      });
    }
  }
  return open.some((own) => !own.includes(true)) ? pinned : open;
}
