import { replayTasks, type TaskChangeDone } from "../support/replay-tasks.js";

const changes = (...rows: readonly (readonly [TaskChangeDone["verb"], string])[]): TaskChangeDone[] =>
  rows.map(([verb, carer], at) => ({ verb, carer, task: "t", revision: 8 + at }));

it("finds nothing wrong with one carer after the other, in whatever order the answers came", () => {
  const done = changes(
    ["takeTask", "tom"],
    ["takeTask", "tom"],
    ["releaseTask", "tom"],
    ["finishTask", "iris"],
    ["undoTask", "iris"],
  );
  expect(replayTasks([...done].reverse(), 7)).toEqual({ faults: [], tasks: new Map([["t", "TAKEN iris"]]) });
});

it.each([
  ["two holders", changes(["takeTask", "tom"], ["takeTask", "iris"])],
  ["a task done that another holds", changes(["takeTask", "tom"], ["finishTask", "iris"])],
  ["a task done twice", changes(["finishTask", "tom"], ["finishTask", "tom"])],
  ["a task taken from whoever has done it", changes(["finishTask", "tom"], ["undoTask", "iris"])],
  ["a change that got lost", changes(["takeTask", "tom"], ["releaseTask", "tom"]).slice(1)],
  ["two changes that made the same revision", [...changes(["takeTask", "tom"]), ...changes(["releaseTask", "tom"])]],
])("finds %s", (_, done) => {
  expect(replayTasks(done, 7).faults).not.toEqual([]);
});
