/** Which of several like things each task has: appliances, pairs of hands. */
export interface Holding {
  readonly from: number;
  readonly to: number;
  readonly units: number;
}

/**
 * The units each holding takes, numbered from 0: the lowest that are free when it begins. Where never more is held than there is,
 * no unit is given twice at one time and no number reaches the number of units.
 */
export function giveUnits(holdings: readonly Holding[]): number[][] {
  const freeAt: number[] = [];
  const given: number[][] = holdings.map(() => []);
  const order = holdings
    .map((holding, at) => ({ holding, at }))
    .sort((a, b) => a.holding.from - b.holding.from || a.holding.to - b.holding.to || a.at - b.at);
  for (const { holding, at } of order) {
    if (holding.to <= holding.from) continue;
    for (let unit = 0; (given[at]?.length ?? 0) < holding.units; unit += 1) {
      if ((freeAt[unit] ?? -Infinity) > holding.from) continue;
      freeAt[unit] = holding.to;
      given[at]?.push(unit);
    }
  }
  return given;
}
