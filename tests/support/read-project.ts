import type { Project } from "../../src/domain/kitchen/schedule/project.js";

/** Durations, successors and needs per job, in the order of the file; the first and the last job are the project's start and end. */
export interface ProjectRows {
  readonly durations: readonly number[];
  /** Numbered from 1. */
  readonly successors: readonly (readonly number[])[];
  readonly needs: readonly (readonly number[])[];
  readonly capacity: readonly number[];
}

export function toProject({ durations, successors, needs, capacity }: ProjectRows): Project {
  const horizon = durations.reduce((sum, duration) => sum + duration, 0);
  return {
    activities: durations.map((length, job) => ({
      earliest: 0,
      latest: horizon - length,
      length,
      uses: needs[job]!.map((units, resource) => ({ resource, units, offset: 0, length })).filter(
        (use) => use.units > 0 && use.length > 0,
      ),
    })),
    lags: successors.flatMap((after, from) => after.map((to) => ({ from, to: to - 1, length: durations[from]! }))),
    capacity,
    crew: null,
  };
}

/**
 * Reads a single-mode project of PSPLIB (Kolisch and Sprecher 1997: European Journal of Operational Research 96, 205-216). Throws on a
 * file without the three sections or with rows that are too short.
 */
export function readProject(text: string): ProjectRows {
  const lines = text.split(/\r?\n/);
  const rowsAfter = (title: string, skipped: number): number[][] => {
    const at = lines.findIndex((line) => line.startsWith(title));
    if (at < 0) throw new Error(`no section ${title}`);
    const rows = lines.slice(at + 1 + skipped);
    const end = rows.findIndex((line) => line.startsWith("*"));
    return rows.slice(0, end < 0 ? rows.length : end).map((line) => line.trim().split(/\s+/).map(Number));
  };
  const relations = rowsAfter("PRECEDENCE RELATIONS", 1);
  const requests = rowsAfter("REQUESTS/DURATIONS", 2);
  const [capacity] = rowsAfter("RESOURCEAVAILABILITIES", 1);
  if (capacity === undefined || relations.length !== requests.length) throw new Error("sections of different length");
  if (relations.some((row) => row[1] !== 1)) throw new Error("a job with several modes");
  return {
    durations: requests.map((row) => row[2]!),
    successors: relations.map((row) => row.slice(3, 3 + row[2]!)),
    needs: requests.map((row) => row.slice(3, 3 + capacity.length)),
    capacity,
  };
}
