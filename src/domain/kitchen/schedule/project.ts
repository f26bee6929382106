/**
 * Work that waits for work and shares what there is, in whole numbers: activities with fixed lengths, smallest distances
 * between their starts, and resources of which each activity holds some for a time of its own. With every use as long as its
 * activity this is the resource-constrained project scheduling problem of the literature.
 */

/** Holds `units` of a resource over [start + offset, start + offset + length). */
export interface Use {
  readonly resource: number;
  /** 1 or more. */
  readonly units: number;
  readonly offset: number;
  /** 1 or more. */
  readonly length: number;
}

export interface Activity {
  /** Bounds of its start, both included. */
  readonly earliest: number;
  readonly latest: number;
  /** From its start to its end, 0 or more; the end of the last activity is the project's. */
  readonly length: number;
  readonly uses: readonly Use[];
}

/** `to` starts at least `length` after `from` starts; a negative length lets it start that much before. */
export interface Lag {
  readonly from: number;
  readonly to: number;
  readonly length: number;
}

/**
 * People who each do one thing at a time, where it matters who does what: without such rules a resource of as many units says
 * the same and is faster.
 */
export interface Crew {
  readonly size: number;
  /** Activities that need one of them over [start + offset, start + offset + length). */
  readonly duties: readonly { readonly activity: number; readonly offset: number; readonly length: number }[];
  /** Where one person does both, `first` is over before `then` begins; indices into `duties`. */
  readonly orders: readonly { readonly first: number; readonly then: number }[];
}

export interface Project {
  readonly activities: readonly Activity[];
  readonly lags: readonly Lag[];
  /** Units of each resource. */
  readonly capacity: readonly number[];
  readonly crew: Crew | null;
}

/**
 * The project run backwards from `from`: what ended at t now starts at `from` - t. Its shortest end, taken off `from`, is the latest
 * moment at which the project can begin and still meet every latest start.
 */
export function reverseProject(project: Project, from: number): Project {
  const { activities, lags, crew } = project;
  const turn = (activity: number, use: { readonly offset: number; readonly length: number }): number =>
    activities[activity]!.length - use.offset - use.length;
  return {
    ...project,
    activities: activities.map((activity, a) => ({
      earliest: from - activity.latest - activity.length,
      latest: from - activity.earliest - activity.length,
      length: activity.length,
      uses: activity.uses.map((use) => ({ ...use, offset: turn(a, use) })),
    })),
    lags: lags.map(({ from: first, to: then, length }) => ({
      from: then,
      to: first,
      length: length + activities[then]!.length - activities[first]!.length,
    })),
    crew: crew && {
      ...crew,
      duties: crew.duties.map((duty) => ({ ...duty, offset: turn(duty.activity, duty) })),
      orders: crew.orders.map(({ first, then }) => ({ first: then, then: first })),
    },
  };
}
