/** What a figure depends on besides the program: printed above every benchmark. */
import { readdirSync, readFileSync } from "node:fs";
import { cpus, loadavg, totalmem } from "node:os";

/** Load of the last minute, in runnable processes; more than the cores means that figures are upper bounds. */
export const loadNow = (): string => loadavg()[0]!.toFixed(2);

export function printMachine(): void {
  const cores = cpus();
  console.log(
    `machine: ${cores[0]?.model.trim() ?? "unknown processor"}, ${cores.length} cores, ` +
      `${Math.round(totalmem() / 2 ** 30)} GiB, ${process.platform}, Node ${process.versions.node}, load ${loadNow()}`,
  );
}

/** Processor milliseconds of this process: the wall clock would count other work on the machine. */
export const cpuMs = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** Linux counts processor time in ticks of 10 ms (USER_HZ, proc(5)). */
const MS_PER_TICK = 10;

/** Fields of /proc/PID/stat after the name in brackets; null when the process or the file is not there. */
function readStat(pid: number | string): { parent: number; ms: number } | null {
  try {
    const text = readFileSync(`/proc/${pid}/stat`, "utf8");
    const fields = text.slice(text.lastIndexOf(")") + 2).split(" ");
    return { parent: Number(fields[1]), ms: (Number(fields[11]) + Number(fields[12])) * MS_PER_TICK };
  } catch {
    return null;
  }
}

/** Processor milliseconds a process has used, its children's included; null where /proc does not tell. */
export function processorMs(pid: number): number | null {
  const own = readStat(pid);
  if (own === null) return null;
  const children = readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name))
    .map(readStat)
    .filter((stat) => stat?.parent === pid);
  return own.ms + children.reduce((sum, stat) => sum + (stat?.ms ?? 0), 0);
}

/** @param share 0 to 1, 0.5 for the median; nearest rank */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.max(0, Math.ceil(share * sorted.length) - 1))] ?? Number.NaN;
}

export const median = (values: readonly number[]): number => quantile(values, 0.5);

/** Prints rows in columns, the first left, the others right. */
export function printTable(head: readonly string[], rows: readonly (readonly string[])[]): void {
  const widths = head.map((title, at) => Math.max(title.length, ...rows.map((row) => row[at]!.length)));
  for (const row of [head, ...rows])
    console.log(row.map((cell, at) => (at === 0 ? cell.padEnd(widths[at]!) : cell.padStart(widths[at]!))).join("  "));
}

/** Says whether a figure holds what was promised; the exit code stays 0, for a busy machine is no defect. */
export function printHold(what: string, value: number, limit: { atMost?: number; atLeast?: number }, unit = ""): void {
  const { atMost, atLeast } = limit;
  const holds = (atMost === undefined || value <= atMost) && (atLeast === undefined || value >= atLeast);
  const bound = atMost === undefined ? `at least ${atLeast}` : `at most ${atMost}`;
  console.log(`${holds ? "holds" : "MISSED"}: ${what} ${Number(value.toFixed(2))}${unit} (${bound}${unit})`);
}
