/** The one place where a failure becomes a type of the schema and a sentence. Exhaustive: a new failure does not compile. */
import type { Failure, FailureOf } from "../app/failures.js";
import type { PlanJobFailure } from "../app/plan-in-background.js";
import { plain, sayIssue } from "../app/say.js";
import { globalId } from "./global-id.js";

const roleWord = (role: string) =>
  role === "COORDINATOR" ? "a coordinator" : role === "COOK" ? "a cook" : role === "HELPER" ? "a helper" : "a member";
const sentence = (issues: FailureOf<"InvalidInput">["issues"]) =>
  `Nothing was saved. ${issues.map((issue) => `${issue.field}: ${issue.problem}. ${issue.fix}`).join(" ")}`;

/** Facts as the schema's failure types carry them. `householdId` lets types that point at children find them. */
export function explain<F extends Failure>(failure: F, householdId?: string | null): Explained<F["kind"]>;
export function explain(failure: Failure, householdId: string | null = null): Explained<Failure["kind"]> {
  switch (failure.kind) {
    case "InvalidInput":
      return { __typename: failure.kind, message: sentence(failure.issues), issues: failure.issues };
    case "NotPermitted":
      return {
        __typename: failure.kind,
        message: `Your role in this household does not allow that; ask ${roleWord(failure.neededRole)}.`,
        neededRole: failure.neededRole,
      };
    case "KeyReused":
      return {
        __typename: failure.kind,
        message: `This idempotency key was used before with other input (${failure.usedFor}). Send a new key for a new request.`,
        usedFor: failure.usedFor,
      };
    case "RevisionPassed":
      return {
        __typename: failure.kind,
        message: `It has changed since revision ${failure.seenRevision}; the current one is ${failure.currentRevision}. Read it again and repeat with that.`,
        seenRevision: failure.seenRevision,
        currentRevision: failure.currentRevision,
      };
    case "HouseholdNotFound":
      return { __typename: failure.kind, message: "There is no such household among yours." };
    case "ChildNotFound":
      return { __typename: failure.kind, message: "There is no such child in your households." };
    case "SchoolNotFound":
      return { __typename: failure.kind, message: "There is no such school or class." };
    case "NothingThere":
      return {
        __typename: failure.kind,
        message: `There is no such ${failure.what} in a current plan of yours. Read the week again.`,
        what: failure.what,
      };
    case "WeekAgreed":
      return {
        __typename: failure.kind,
        message: "The week is agreed. Swap single items, report an absence, or plan again with replanAgreed: true.",
        agreedAt: failure.agreedAt,
      };
    case "OutsideTerm":
      return {
        __typename: failure.kind,
        message:
          failure.nextSchoolDay === null
            ? "No box is due then and no later school day is known."
            : `No box is due in the week of ${failure.weekStart}; the next school day is ${failure.nextSchoolDay}.`,
        weekStart: failure.weekStart,
        nextSchoolDay: failure.nextSchoolDay,
      };
    case "NoSchool":
      return {
        __typename: failure.kind,
        message: "A child has no school that week; enrol the child first (enrolChild).",
        childIds: failure.childIds,
        householdId: householdId ?? "",
      };
    case "WeekInfeasible":
      return {
        __typename: failure.kind,
        message: `No week passes every rule; ${count(failure.conflicts.length)} and how to mend each are in conflicts.`,
        conflicts: failure.conflicts.map((row) => ({ row, householdId })),
        brief: failure.brief,
        notBefore: failure.notBefore,
      };
    case "SwapRefused":
      return {
        __typename: failure.kind,
        message: `That dish may not stand there; ${count(failure.conflicts.length)} and how to mend each are in conflicts.`,
        conflicts: failure.conflicts.map((row) => ({ row, householdId: failure.householdId })),
      };
    case "DishUnknown":
      return {
        __typename: failure.kind,
        message: `There is no dish "${failure.dish}". Did you mean ${failure.nearest.join(", ")}?`,
        dish: failure.dish,
        nearest: failure.nearest,
      };
    case "BoxClosed":
      return {
        __typename: failure.kind,
        message: `The box is already ${plain(failure.state)} and does not move.`,
        state: failure.state,
      };
    case "LabelsUnread":
      return {
        __typename: failure.kind,
        message: "Read these labels and record them (recordLabel) before the box is packed.",
        foods: failure.foods,
      };
    case "BoxBlocked":
      return {
        __typename: failure.kind,
        message:
          "The box no longer passes its checks; blockedBecause says why. Plan the week again or mend it (mendWeek) before packing it.",
      };
    case "ProposalOpen":
      return {
        __typename: failure.kind,
        message: `${failure.madeHere ? "Your home" : "The other home"} has an open proposal about ${failure.dates.length > 0 ? failure.dates.join(", ") : "the pattern"}; ${failure.madeHere ? "withdraw it (withdrawResidenceChange) to propose something else" : "answer it first (answerResidenceChange)"}.`,
        proposalId: proposalId(failure.proposal),
        madeHere: failure.madeHere,
        dates: failure.dates,
      };
    case "ProposalSettled":
      return {
        __typename: failure.kind,
        message: `The proposal was ${plain(failure.state)} meanwhile. Read the child's residence again; what is to change is proposed anew.`,
        state: failure.state,
      };
    case "ForTheOtherHome":
      return {
        __typename: failure.kind,
        message: failure.madeHere
          ? "Your home made this proposal, so the other home answers it. You can withdraw it (withdrawResidenceChange)."
          : "The other home made this proposal, so only that home withdraws it. You can decline it (answerResidenceChange).",
        madeHere: failure.madeHere,
      };
    case "DayClosed":
      return {
        __typename: failure.kind,
        message:
          failure.boxState === null
            ? `${failure.date} is over and stays as it was. Propose it again for days to come.`
            : `The box of ${failure.date} is already ${plain(failure.boxState)}, so that day does not move. Choose days after it.`,
        date: failure.date,
        boxState: failure.boxState,
      };
    case "OnlyHome":
      return {
        __typename: failure.kind,
        message: "It is the child's only home. Nobody else would pack; let another home take the child in first.",
      };
    case "StillInUse":
      return {
        __typename: failure.kind,
        message:
          failure.dishes.length > 0
            ? `Nothing was removed: ${failure.dishes.join(", ")} ${failure.dishes.length === 1 ? "is" : "are"} made of it. Change or remove that first.`
            : `Nothing was removed: it stands in ${failure.boxes.length === 1 ? "a box" : `${failure.boxes.length} boxes`} of a week that is not over (${[...new Set(failure.boxes.map(({ date }) => date))].join(", ")}). Swap it there first.`,
        dishes: failure.dishes,
        boxes: failure.boxes,
      };
    case "ConfirmationNeeded":
      return {
        __typename: failure.kind,
        message: {
          LESS_STRICT:
            "Nothing has changed yet. The child's boxes may hold it again once this is done: send the same again with the token to confirm.",
          ERASURE:
            "Nothing has been erased yet. It cannot be taken back, and no copy is kept: send the same again with the token to confirm.",
        }[failure.of],
        of: failure.of,
        token: failure.token,
        expiresAt: failure.expiresAt,
      };
    case "AgreementNeeded":
      return {
        __typename: failure.kind,
        message:
          "Nothing has been erased yet: the child has another home. Once a coordinator there asks for the same within 30 days, the child is erased.",
      };
    case "HouseholdsLeft":
      return {
        __typename: failure.kind,
        message:
          "Nothing was erased: a household would be left without any carer. Invite somebody who carries on, or say withHouseholds: true to erase it too.",
      };
    case "ExemptionRefused":
      return {
        __typename: failure.kind,
        message: {
          NAMES_ALLERGEN:
            "No note lets a rule rest that keeps an allergen out: other children rely on it. Talk to the school.",
          FAMILYS_OWN: "It is a rule of the family's own. Change it with keepOwnRules, or end it with dropOwnRules.",
          DOES_NOT_HOLD: "No such rule holds for this child's boxes on those days.",
        }[failure.reason],
        reason: failure.reason,
        says: failure.says,
      };
    case "NotAppointed":
      return { __typename: failure.kind, message: "You are not appointed to administer this." };
    case "PersonNotFound":
      return {
        __typename: failure.kind,
        message: `Nobody has signed in as "${failure.subject}" yet. Let the person sign in once, then appoint them.`,
        subject: failure.subject,
      };
    case "CarerNotFound":
      return { __typename: failure.kind, message: "There is no such carer in this household. Read its carers again." };
    case "LastCoordinator":
      return {
        __typename: failure.kind,
        message:
          "Nobody else coordinates this household. Hand coordination over (handOverCoordination) or make another carer coordinator (changeRole), then try again.",
      };
    case "InvitationNotFound":
      return { __typename: failure.kind, message: "There is no such invitation. Ask for a new link and use it whole." };
    case "InvitationClosed":
      return {
        __typename: failure.kind,
        message: {
          USED: "This invitation has been used; a link works once. Ask for a new one.",
          WITHDRAWN: "This invitation was taken back. Ask the household for a new one.",
          EXPIRED: "This invitation has expired. Ask for a new one.",
        }[failure.state],
        state: failure.state,
      };
    case "AlreadyCarer":
      return {
        __typename: failure.kind,
        message: `You are ${roleWord(failure.role)} of this household already. The link is still good for somebody else.`,
        role: failure.role,
      };
    case "LivesHereAlready":
      return {
        __typename: failure.kind,
        message: "The child lives in this household already. Another household accepts this link.",
      };
    case "LivesInTwoHomes":
      return { __typename: failure.kind, message: "The child lives in two homes already; a third cannot join." };
    case "LastAdministrator":
      return {
        __typename: failure.kind,
        message: `Nobody else administers ${failure.jurisdiction}. Appoint somebody first.`,
        jurisdiction: failure.jurisdiction,
      };
    case "DocumentRefused":
      return {
        __typename: failure.kind,
        message: `Nothing was loaded. ${failure.issues.map(sayIssue).join(" ")}`,
        issues: failure.issues,
        warnings: failure.warnings,
      };
    case "TaskHeld":
      return {
        __typename: failure.kind,
        message:
          failure.state === "DONE"
            ? `${failure.holder?.displayName ?? "Another carer"} has done this task.`
            : `${failure.holder?.displayName ?? "Another carer"} has taken this task.`,
        holder: failure.holder,
        state: failure.state,
      };
    case "TaskNotHeld":
      return {
        __typename: failure.kind,
        message:
          failure.state === "OPEN"
            ? "Nobody has taken this task; take it first (takeTask)."
            : "The task is not done, so there is nothing to take back.",
        state: failure.state,
      };
    case "WorkUsed":
      return {
        __typename: failure.kind,
        message: `What was made is used already: ${[
          ...(failure.tasks.length > 0 ? ["later work with it is done (take that back first)"] : []),
          ...(failure.boxes.length > 0 ? ["it lies in a packed box"] : []),
        ].join(", and ")}.`,
        tasks: failure.tasks,
        boxes: failure.boxes,
      };
    case "HelperNotFound":
      return {
        __typename: failure.kind,
        message: "There is no such carer in this household who helps; name one who is a helper or more.",
      };
    case "ProposalMoved":
      return {
        __typename: failure.kind,
        message: "The proposal is not the one you saw: work, rota or minutes have changed. Look at it again.",
      };
  }
}

/** Why a job left no plan, for the whole household: who hears it may not be who asked, and has no list of clashes at hand. */
export function explainPlanJob(failure: PlanJobFailure): string {
  switch (failure.kind) {
    case "HouseholdNotFound":
    case "NotPermitted":
      return "The person who asked for this plan may no longer plan for this household; another carer can ask for it.";
    case "WeekInfeasible":
      return `No week passes every rule; planWeek names ${count(failure.conflicts.length)} and how to mend each.`;
    case "GaveUp":
      return "The plan could not be made, though it was tried several times. Ask for it again.";
    case "InvalidInput":
    case "KeyReused":
    case "NoSchool":
    case "OutsideTerm":
    case "RevisionPassed":
    case "WeekAgreed":
      return explain(failure).message;
  }
}

const count = (conflicts: number) => (conflicts === 1 ? "the clash" : `the ${conflicts} clashes`);

/** What a client knows a proposal by. */
export const proposalId = ({ of, id }: FailureOf<"ProposalOpen">["proposal"]): string =>
  globalId(of === "PATTERN" ? "ResidencePattern" : "ResidenceChange", id);

type ConflictRows = readonly {
  readonly row: FailureOf<"WeekInfeasible">["conflicts"][number];
  readonly householdId: string | null;
}[];
interface Extra {
  NoSchool: { readonly childIds: readonly string[]; readonly householdId: string };
  WeekInfeasible: Pick<FailureOf<"WeekInfeasible">, "brief" | "notBefore"> & { readonly conflicts: ConflictRows };
  SwapRefused: { readonly conflicts: ConflictRows };
  ProposalOpen: { readonly proposalId: string } & Pick<FailureOf<"ProposalOpen">, "madeHere" | "dates">;
}
/** The failure's own facts, but where children or conflicts need their household. Distributes over unions. */
export type Explained<K extends Failure["kind"]> = K extends Failure["kind"]
  ? { readonly __typename: K; readonly message: string } & (K extends keyof Extra
      ? Extra[K]
      : Omit<FailureOf<K>, "kind">)
  : never;
