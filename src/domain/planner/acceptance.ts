/**
 * The rule by which a worse week is accepted: worse by at most temperature x -ln(u), u uniform. That is the Metropolis rule
 * exp(-worse / temperature) > u, turned round so that one table of -ln replaces every exponential.
 */

const TABLE_BITS = 10;
const TABLE_SIZE = 1 << TABLE_BITS;
/** Values of the table are in 1/4096. */
const LOG_SCALE = 4096;

/**
 * -ln((2i + 1) / 2048) x 4096, rounded down, for i = 0 .. 1023. Built downwards from 1 by
 * ln((n + 1) / (n - 1)) = 2 (1/n + 1/(3 n^3) + 1/(5 n^5) + ...), in integers of 2^-60: no engine's Math.log is asked.
 */
function buildLogTable(): Int32Array {
  const table = new Int32Array(TABLE_SIZE);
  const one = 1n << 60n;
  /** ln of (n + 1) / (n - 1). */
  const step = (n: bigint): bigint => {
    let power = one / n;
    let sum = 0n;
    for (let odd = 1n; power > 0n; odd += 2n) {
      sum += power / odd;
      power /= n * n;
    }
    return 2n * sum;
  };
  // The first is 2048/2047, n = 4095; the next factors are (2i + 1)/(2i - 1), n = 2i.
  let minusLog = step(4095n);
  for (let index = TABLE_SIZE - 1; index >= 0; index -= 1) {
    table[index] = Number((minusLog * BigInt(LOG_SCALE)) >> 60n);
    if (index > 0) minusLog += step(BigInt(2 * index));
  }
  return table;
}

const LOG_TABLE = buildLogTable();

/** How much worse is still accepted, in the temperature's unit; `word` is a random unsigned 32-bit number. */
export function worseAccepted(temperature: number, word: number): number {
  return Math.floor((temperature * LOG_TABLE[word >>> (32 - TABLE_BITS)]!) / LOG_SCALE);
}

/** Temperatures of one cooling, each the one before x ratio / 65536 rounded down, at least 1. */
export function coolingTemperatures(first: number, levels: number, ratio: number): Float64Array {
  const temperatures = new Float64Array(levels);
  let temperature = first;
  for (let level = 0; level < levels; level += 1) {
    temperatures[level] = temperature;
    temperature = Math.max(1, Math.floor((temperature * ratio) / 65536));
  }
  return temperatures;
}
