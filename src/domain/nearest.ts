/**
 * The words of a list that look most like the one given, capitals aside: shared three-letter pieces and the fewest slips of the
 * finger (Damerau 1964: a letter too many, missing, wrong, or two changed about), then order of the list. At most three.
 */
export function nearest(word: string, list: readonly string[]): string[] {
  const wanted = word.slice(0, MOST_LETTERS).toLowerCase();
  return list
    .map((candidate) => ({ candidate, likeness: likeness(wanted, candidate.toLowerCase()) }))
    .sort((a, b) => b.likeness - a.likeness)
    .slice(0, 3)
    .map((entry) => entry.candidate);
}

/** Longer than any word of a list: a text of a megabyte looks like none of them. */
const MOST_LETTERS = 100;

function likeness(a: string, b: string): number {
  const [here, there] = [piecesOf(a), piecesOf(b)];
  const shared = [...here].filter((piece) => there.has(piece)).length;
  return shared / (here.size + there.size - shared) + 1 - slips(a, b) / Math.max(1, a.length, b.length);
}

const piecesOf = (text: string) =>
  new Set(Array.from({ length: Math.max(1, text.length - 2) }, (_, at) => text.slice(at, at + 3)));

function slips(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, beforeLast[j - 2]! + 1);
      row.push(least);
    }
    [beforeLast, last] = [last, row];
  }
  return last[b.length]!;
}
