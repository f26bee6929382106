/** Plays changes of tasks again, in the order in which the database did them. */

export type TaskVerb = "takeTask" | "releaseTask" | "finishTask" | "undoTask";
export interface TaskChangeDone {
  readonly verb: TaskVerb;
  readonly carer: string;
  readonly task: string;
  /** Of the week, as the answer gave it. */
  readonly revision: number;
}

/**
 * For carers who decide for themselves only.
 * @param before the week's revision before the first change; nothing else may have changed the week
 * @returns what could not be so if a task never had two holders, and how each task stands in the end: "TAKEN carer"
 */
export function replayTasks(
  done: readonly TaskChangeDone[],
  before: number,
): { readonly faults: string[]; readonly tasks: ReadonlyMap<string, string> } {
  const faults: string[] = [];
  const tasks = new Map<string, { readonly state: string; readonly holder: string | null }>();
  const inOrder = [...done].sort((a, b) => a.revision - b.revision);
  inOrder.forEach(({ verb, carer, task, revision }, at) => {
    const due = before + 1 + at;
    if (revision !== due) faults.push(`revision ${revision} stands where ${due} is due`);
    const { state, holder } = tasks.get(task) ?? { state: "OPEN", holder: null };
    const own = holder === carer;
    const might = {
      takeTask: state === "OPEN" || (state === "TAKEN" && own),
      releaseTask: state === "TAKEN" && own,
      finishTask: state === "OPEN" || (state === "TAKEN" && own),
      undoTask: state === "DONE" && own,
    }[verb];
    if (!might) faults.push(`${verb} at ${revision} by ${carer}, while it is ${state} with ${holder ?? "nobody"}`);
    const now = { takeTask: "TAKEN", releaseTask: "OPEN", finishTask: "DONE", undoTask: "TAKEN" }[verb];
    tasks.set(task, { state: now, holder: now === "OPEN" ? null : carer });
  });
  return { faults, tasks: new Map([...tasks].map(([id, { state, holder }]) => [id, `${state} ${holder ?? "-"}`])) };
}
