/** Everything a person can be told when what they asked for is not done; facts only, `explain` adds the sentence. */
import type { RoleCode, PersonRow } from "../database/household.js";
import type { BoxStateCode, WorkStateCode } from "../database/week.js";
import type { WeekBrief } from "../domain/brief.js";
import type { ProposalState } from "../domain/calendar/residence.js";
import type { DocumentIssue } from "./document-text.js";
import type { Conflict } from "../domain/planner/conflicts.js";

export interface InputIssue {
  readonly field: string;
  readonly problem: string;
  readonly fix: string;
}

export type Failure =
  | { readonly kind: "InvalidInput"; readonly issues: readonly InputIssue[] }
  | { readonly kind: "NotPermitted"; readonly neededRole: RoleCode }
  | { readonly kind: "KeyReused"; readonly usedFor: string }
  | { readonly kind: "RevisionPassed"; readonly seenRevision: number; readonly currentRevision: number }
  | { readonly kind: "HouseholdNotFound" }
  | { readonly kind: "ChildNotFound" }
  | { readonly kind: "SchoolNotFound" }
  | { readonly kind: "NothingThere"; readonly what: string }
  | { readonly kind: "WeekAgreed"; readonly agreedAt: string }
  | { readonly kind: "OutsideTerm"; readonly weekStart: string; readonly nextSchoolDay: string | null }
  | { readonly kind: "NoSchool"; readonly childIds: readonly string[] }
  | {
      readonly kind: "WeekInfeasible";
      readonly conflicts: readonly Conflict[];
      /** What could not be planned, and the day before which nothing can be changed: for asking why. */
      readonly brief: WeekBrief;
      readonly notBefore: string;
    }
  | { readonly kind: "DishUnknown"; readonly dish: string; readonly nearest: readonly string[] }
  | { readonly kind: "SwapRefused"; readonly conflicts: readonly Conflict[]; readonly householdId: string }
  | { readonly kind: "BoxClosed"; readonly state: BoxStateCode }
  | { readonly kind: "LabelsUnread"; readonly foods: readonly string[] }
  | { readonly kind: "BoxBlocked" }
  | {
      readonly kind: "ProposalOpen";
      readonly proposal: { readonly of: "PATTERN" | "DAYS"; readonly id: string };
      /** By the home that asks. */
      readonly madeHere: boolean;
      /** Empty for a pattern. */
      readonly dates: readonly string[];
    }
  | { readonly kind: "ProposalSettled"; readonly state: ProposalState }
  /** A proposal that is the other home's to answer, or to take back. */
  | { readonly kind: "ForTheOtherHome"; readonly madeHere: boolean }
  /** @property boxState null: the day is over */
  | { readonly kind: "DayClosed"; readonly date: string; readonly boxState: BoxStateCode | null }
  | { readonly kind: "OnlyHome" }
  | {
      readonly kind: "ConfirmationNeeded";
      readonly of: "LESS_STRICT" | "ERASURE";
      readonly token: string;
      readonly expiresAt: string;
    }
  | { readonly kind: "AgreementNeeded" }
  | { readonly kind: "HouseholdsLeft" }
  | {
      readonly kind: "StillInUse";
      /** Keys of the household's own dishes that are made of it. */
      readonly dishes: readonly string[];
      readonly boxes: readonly { readonly childId: string; readonly date: string; readonly householdId: string }[];
    }
  | {
      readonly kind: "ExemptionRefused";
      readonly reason: "NAMES_ALLERGEN" | "FAMILYS_OWN" | "DOES_NOT_HOLD";
      /** The rule's own sentence; null where there is no such rule. */
      readonly says: string | null;
    }
  | { readonly kind: "NotAppointed" }
  | { readonly kind: "PersonNotFound"; readonly subject: string }
  | { readonly kind: "CarerNotFound" }
  | { readonly kind: "LastCoordinator" }
  | { readonly kind: "InvitationNotFound" }
  | { readonly kind: "InvitationClosed"; readonly state: "USED" | "WITHDRAWN" | "EXPIRED" }
  | { readonly kind: "AlreadyCarer"; readonly role: RoleCode }
  | { readonly kind: "LivesHereAlready" }
  | { readonly kind: "LivesInTwoHomes" }
  | { readonly kind: "LastAdministrator"; readonly jurisdiction: string }
  | {
      readonly kind: "DocumentRefused";
      readonly issues: readonly DocumentIssue[];
      readonly warnings: readonly DocumentIssue[];
    }
  | { readonly kind: "TaskHeld"; readonly holder: PersonRow | null; readonly state: WorkStateCode }
  | { readonly kind: "TaskNotHeld"; readonly state: WorkStateCode }
  | {
      readonly kind: "WorkUsed";
      /** What they say. */
      readonly tasks: readonly string[];
      readonly boxes: readonly { readonly childId: string; readonly date: string; readonly householdId: string }[];
    }
  | { readonly kind: "HelperNotFound" }
  | { readonly kind: "ProposalMoved" };

export type FailureOf<K extends Failure["kind"]> = Extract<Failure, { kind: K }>;
