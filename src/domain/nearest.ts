/** The words of a list that look most like the one given: shared three-letter pieces, then order of the list. At most three. */
export function nearest(word: string, list: readonly string[]): string[] {
  const pieces = (text: string) =>
    new Set(Array.from({ length: Math.max(1, text.length - 2) }, (_, at) => text.slice(at, at + 3)));
  const wanted = pieces(word.toLowerCase());
  return list
    .map((candidate) => {
      const has = pieces(candidate);
      const shared = [...wanted].filter((piece) => has.has(piece)).length;
      return { candidate, likeness: shared / (wanted.size + has.size - shared) };
    })
    .sort((a, b) => b.likeness - a.likeness)
    .slice(0, 3)
    .map((entry) => entry.candidate);
}
