/** Whole numbers from 0 to below `below`: a Lehmer generator (Park and Miller 1988), so that a seed draws the same on any machine. */
export function createDice(seed: number): (below: number) => number {
  let state = (seed % 2147483646) + 1;
  return (below) => {
    state = (state * 48271) % 2147483647;
    return state % below;
  };
}
