/** Why something was refused, for the person at the keyboard. */
import type { Failure } from "../app/failures.js";
import { sayIssue } from "../app/say.js";

export function sayFailure(failure: Failure): string[] {
  if (failure.kind === "NotAppointed") return ["That person does not administer this."];
  if (failure.kind === "SchoolNotFound") return ["There is no such school or class."];
  if (failure.kind === "DocumentRefused")
    return ["Nothing was loaded.", ...failure.issues.map((issue) => `  ${sayIssue(issue)}`)];
  if (failure.kind === "InvalidInput")
    return failure.issues.map(({ field, problem, fix }) => `${field}: ${problem}. ${fix}`);
  if (failure.kind === "RevisionPassed")
    return [`Version ${failure.currentRevision} came in between; look at the difference again and repeat.`];
  return [`Nothing was done: ${failure.kind}. Try again.`];
}
