/** What a label has to name under a law. For reading labels only: a law's list never narrows what a child avoids. */
import type { AllergenCode } from "../../../shared/codes.js";
import type { LabelLaw } from "../../../shared/label-law.js";

export interface LabelledFood {
  readonly allergens: readonly AllergenCode[];
  /** The plant or animal it is: a law may name one for which there is no allergen code. */
  readonly kind: string;
  /** How it is made, where a law exempts that: "soya-oil-fully-refined". */
  readonly derivative?: string;
  /** Total sulphur dioxide in the ready food, mg per kg; not known unless given. */
  readonly sulphitesMgPerKg?: number;
}

export interface LabelFinding {
  /** An allergen, or the food kind where the law names a food that has no code. */
  readonly subject: string;
  /** UNKNOWN: the law was read in part, and the part read does not say. */
  readonly status: "NAMED" | "NOT_NAMED" | "EXEMPT" | "UNKNOWN";
  /** The law's class it falls under; null when it falls under none. */
  readonly class: string | null;
  readonly source: string;
}

export type LawClass = LabelLaw["classes"][number];

/** The classes a law names on a date, each with the foods that count then. */
export function classesInForce(law: LabelLaw, onDate: string): LawClass[] {
  return law.classes
    .filter(({ since }) => since === undefined || since <= onDate)
    .map((row) => ({ ...row, members: row.members.filter(({ until }) => until === undefined || onDate < until) }))
    .filter(({ members }) => members.length > 0);
}

/**
 * Which of a food's allergens a label must name under a law on a date, one finding for each, in the food's order. An amount
 * that is not known counts as enough to be named, and a derivative the law does not list as not exempt.
 */
export function declaredUnder(law: LabelLaw, food: LabelledFood, onDate: string): LabelFinding[] {
  const classes = classesInForce(law, onDate);
  const find = (subject: string, is: (member: LawClass["members"][number]) => boolean): LabelFinding => {
    const row = classes.find(({ members }) => members.some(is));
    if (row === undefined)
      return { subject, status: law.incomplete ? "UNKNOWN" : "NOT_NAMED", class: null, source: law.source };
    const exemption = law.exempt.find(
      ({ derivative, allergens }) => derivative === food.derivative && allergens.some((one) => one === subject),
    );
    if (exemption !== undefined) return { subject, status: "EXEMPT", class: row.code, source: exemption.source };
    const tooLittle =
      row.fromMgPerKg !== undefined && food.sulphitesMgPerKg !== undefined && food.sulphitesMgPerKg < row.fromMgPerKg;
    return { subject, status: tooLittle ? "NOT_NAMED" : "NAMED", class: row.code, source: row.source };
  };
  const named = food.allergens.map((allergen) => find(allergen, (member) => member.allergen === allergen));
  const byKind = law.classes.some(({ members }) => members.some(({ kind }) => kind === food.kind));
  return byKind ? [...named, find(food.kind, (member) => member.kind === food.kind)] : named;
}
