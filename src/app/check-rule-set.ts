/** Everything that can be said of a rule set document before it is loaded: what is wrong, what is odd, what it changes. */
import { matchersOf, type Rule, type RuleSetDocument } from "../../shared/rule-set.js";
import type { CatalogueBrief } from "../domain/brief.js";
import { addDays, isCalendarDate } from "../domain/calendar/dates.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
import { nearest } from "../domain/nearest.js";
import { kcalPerGram } from "../domain/nutrition/reference-values.js";
import {
  findDocumentClashes,
  matchCatalogue,
  type DocumentClash,
  type MatchedCatalogue,
  type RuleRef,
} from "../domain/rules/document-clashes.js";
import { contentOf, documentDifference, type DocumentDifference } from "../domain/rules/document-difference.js";
import type { App } from "./app.js";
import { checkShape, cut, issueAt, MOST_ISSUES, readableParts, type ReadableParts } from "./document-shape.js";
import { EATEN_IN_THE_OTHER_HOME } from "./other-home.js";
import { readDocument, type DocumentIssue, type DocumentText } from "./document-text.js";

/** Where a document is to hold, and what holds there already. */
export interface RuleSetPlace {
  readonly layer: RuleSetDocument["layer"];
  /** As registered; null where the layer has none. */
  readonly jurisdiction: string | null;
  readonly school: string | null;
  readonly schoolClass: string | null;
  /** Today there, for telling what has begun. */
  readonly today: string;
  /** One entry for every class that lies under it, or one for the school that has none yet: its breaks, and the other rule sets that hold in it. */
  readonly classes: readonly {
    readonly breakKeys: readonly string[];
    readonly others: readonly RuleSetDocument[];
  }[];
  /** Versions of the same key there, oldest first. */
  readonly versions: readonly RuleSetDocument[];
}

export interface RuleSetCheck {
  /** Null where its text or shape is wrong. */
  readonly document: RuleSetDocument | null;
  /** It is loaded only without any. */
  readonly errors: readonly DocumentIssue[];
  readonly warnings: readonly DocumentIssue[];
  /** The version it is compared with: the newest there is. */
  readonly against: number | null;
  readonly difference: DocumentDifference | null;
  /** The newest version says the same. */
  readonly unchanged: boolean;
}

/** A document with its text, or why it cannot be read. */
export type ReadRuleSet =
  { readonly text: DocumentText; readonly document: RuleSetDocument } | readonly DocumentIssue[];

/** In the order of the text. */
const inLines = (issues: readonly DocumentIssue[]) => [...issues].sort((a, b) => a.line - b.line);

/** The document alone: its text, its shape, and what of its dates and rules can be told without knowing its place. */
export function readRuleSetDocument(source: string): ReadRuleSet {
  const read = readDocument(source);
  if (!read.ok) return read.error;
  const text = read.value;
  const shape = checkShape(text);
  if (shape.ok) return { text, document: shape.value };
  if (shape.error.length > MOST_ISSUES) return shape.error;
  // What can be read already is looked at too, so that nothing of it is left for the second try.
  const { head, rules } = readableParts(text.value);
  return cut(inLines([...shape.error, ...dateIssues(text, head, rules), ...ruleIssues(text, rules)]));
}

/** What documents are held against: the catalogue without any family's own dishes. */
export interface KnownWords {
  readonly catalogue: MatchedCatalogue;
  readonly words: Readonly<Record<WordList, readonly string[]>>;
}
const WORD_LISTS = ["foods", "kinds", "dishes"] as const;
type WordList = (typeof WORD_LISTS)[number];

const known = new WeakMap<App["reference"], KnownWords>();

export const wordsOf = ({ foods, dishes }: CatalogueBrief, index: CatalogueIndex): KnownWords => ({
  catalogue: matchCatalogue(index),
  words: {
    foods: foods.map(({ key }) => key),
    kinds: [...new Set(foods.map(({ kind }) => kind))],
    dishes: dishes.map(({ key }) => key),
  },
});

/** Worked out once for a process. */
export function knownWords({ reference, index }: Pick<App, "reference" | "index">): KnownWords {
  const found = known.get(reference) ?? wordsOf(reference.catalogue, index);
  known.set(reference, found);
  return found;
}

/** What is said of a document that cannot be read. */
export const unreadable = (errors: readonly DocumentIssue[]): RuleSetCheck => ({
  document: null,
  errors,
  warnings: [],
  against: null,
  difference: null,
  unchanged: false,
});

/** All complaints at once: nothing is left for a second try to find. */
export function checkRuleSet(read: ReadRuleSet, words: KnownWords, place: RuleSetPlace): RuleSetCheck {
  if (!("document" in read)) return unreadable(read);
  const { text, document } = read;
  const newest = place.versions.at(-1) ?? null;
  const unchanged = newest !== null && contentOf(newest) === contentOf(document);
  const errors = [
    ...placeIssues(text, document, place),
    ...dateIssues(text, document, document.rules),
    ...ruleIssues(text, document.rules),
    // Sent again, under its own number or the next, it is there already.
    ...(unchanged && [0, 1].includes(document.version - newest.version) ? [] : versionIssues(text, document, place)),
  ];
  const clashes = clashIssues(text, document, words.catalogue, place);
  return {
    document,
    errors: cut(inLines([...errors, ...clashes.errors])),
    warnings: cut(
      inLines([
        ...clashes.warnings,
        ...matcherWarnings(text, document, words),
        ...breakWarnings(text, document, place),
        ...returnWarnings(text, document, place),
      ]),
    ),
    against: newest?.version ?? null,
    difference: documentDifference(newest, document),
    unchanged,
  };
}

function placeIssues(text: DocumentText, document: RuleSetDocument, place: RuleSetPlace): DocumentIssue[] {
  const issues: DocumentIssue[] = [];
  // What the other home's boxes ask of these is told apart by this key, and blocks nothing.
  if (document.key === EATEN_IN_THE_OTHER_HOME)
    issues.push(issueAt(text, ["key"], `is ${document.key}, which is a house rule's`, "a key of its own"));
  if (document.layer !== place.layer) issues.push(issueAt(text, ["layer"], `is ${document.layer}`, place.layer));
  for (const field of ["jurisdiction", "school", "schoolClass"] as const) {
    const stated = document[field];
    const meant = place[field];
    if (stated !== undefined && stated !== meant)
      issues.push(issueAt(text, [field], `is ${JSON.stringify(stated)}`, meant ?? `no ${field} on this layer`));
  }
  if (place.layer === "JURISDICTION" && document.jurisdiction === undefined)
    issues.push(issueAt(text, ["jurisdiction"], "is missing", place.jurisdiction ?? "the jurisdiction"));
  if (document.withdrawn === true && document.rules.length > 0)
    issues.push(issueAt(text, ["withdrawn"], "is true beside rules", "no rules in a version that withdraws them"));
  if (document.withdrawn === undefined && document.rules.length === 0)
    issues.push(issueAt(text, ["rules"], "is empty", "at least one rule, or withdrawn: true"));
  return issues;
}

const DATES = ["inForceFrom", "inForceUntil"] as const;
/** Outside these a date is a slip of the finger. */
const [FIRST_DAY, LAST_DAY] = ["2000-01-01", "2199-12-31"];
const isRuleDay = (date: string) => isCalendarDate(date) && date >= FIRST_DAY && date <= LAST_DAY;

function dateIssues(text: DocumentText, head: ReadableParts["head"], rules: ReadableParts["rules"]): DocumentIssue[] {
  const issues = spanIssues(text, [], head);
  for (const [at, rule] of rules.entries()) {
    const path = ["rules", at];
    issues.push(...spanIssues(text, path, rule));
    const { inForceFrom: from, inForceUntil: until } = head;
    if (rule.inForceUntil !== undefined && from !== undefined && rule.inForceUntil < from)
      issues.push(
        issueAt(
          text,
          [...path, "inForceUntil"],
          `is ${rule.inForceUntil}, before the rule set begins`,
          `${from} or later`,
        ),
      );
    if (rule.inForceFrom !== undefined && until !== undefined && rule.inForceFrom > until)
      issues.push(
        issueAt(
          text,
          [...path, "inForceFrom"],
          `is ${rule.inForceFrom}, after the rule set ends`,
          `${until} or earlier`,
        ),
      );
    const [a, b] = [rule.ages, head.ages];
    const least = Math.max(a?.fromYears ?? 0, b?.fromYears ?? 0);
    const under = Math.min(a?.underYears ?? 100, b?.underYears ?? 100);
    if (a && b && least >= under)
      issues.push(issueAt(text, [...path, "ages"], "are ages outside the document's", "ages for which both hold"));
  }
  return issues;
}

function spanIssues(text: DocumentText, path: readonly PropertyKey[], part: ReadableParts["head"]): DocumentIssue[] {
  const unreal = DATES.flatMap((field) =>
    part[field] === undefined || isRuleDay(part[field])
      ? []
      : [
          issueAt(
            text,
            [...path, field],
            `is ${part[field]}`,
            `a day that is on the calendar, from ${FIRST_DAY} to ${LAST_DAY}`,
          ),
        ],
  );
  const { inForceFrom: from, inForceUntil: until, ages } = part;
  return [
    ...unreal,
    ...(from !== undefined && until !== undefined && until < from
      ? [issueAt(text, [...path, "inForceUntil"], `is ${until}, before ${from}`, `${from} or later, or nothing`)]
      : []),
    ...(ages && (ages.fromYears ?? 0) >= (ages.underYears ?? 100)
      ? [
          issueAt(
            text,
            [...path, "ages"],
            `are from ${ages.fromYears ?? 0} and under ${ages.underYears ?? 100} years, which is nobody`,
            "fromYears less than underYears",
          ),
        ]
      : []),
  ];
}

/** What a rule has to state to say anything. */
const needed: Partial<Record<Rule["kind"], readonly string[]>> = {
  FREQUENCY: ["atLeast", "atMost"],
  AMOUNT: ["atLeast", "atMost"],
  SHARE: ["atLeast", "atMost"],
  NUTRIENT: ["atLeast", "atMost"],
  SERVING: ["noReheating", "noRefrigerator", "fingerFoodOnly", "litterFree", "noGlass", "minutesToEat"],
};

function ruleIssues(text: DocumentText, rules: ReadableParts["rules"]): DocumentIssue[] {
  const first = new Map<string, number>();
  return rules.flatMap((rule, at) => {
    const issues: DocumentIssue[] = [];
    const path = ["rules", at];
    const before = rule.id === undefined ? undefined : first.get(rule.id);
    if (before !== undefined)
      issues.push(issueAt(text, [...path, "id"], `"${rule.id}" is the id of rules.${before} too`, "an id of its own"));
    else if (rule.id !== undefined) first.set(rule.id, at);
    if (!("kind" in rule)) return issues;
    const fields = needed[rule.kind];
    if (fields && !fields.some((field) => (rule as Record<string, unknown>)[field] !== undefined))
      issues.push(issueAt(text, path, "states nothing to keep", `at least one of ${fields.join(", ")}`));
    if (rule.kind === "NUTRIENT" && rule.as === "PERCENT_OF_ENERGY" && !(rule.nutrient in kcalPerGram))
      issues.push(
        issueAt(
          text,
          [...path, "nutrient"],
          `${rule.nutrient} carries no energy of its own`,
          `with as: PERCENT_OF_ENERGY one of ${Object.keys(kcalPerGram).join(", ")}`,
        ),
      );
    return issues;
  });
}

function versionIssues(text: DocumentText, document: RuleSetDocument, place: RuleSetPlace): DocumentIssue[] {
  const newest = place.versions.at(-1);
  const next = (newest?.version ?? 0) + 1;
  const issues: DocumentIssue[] = [];
  if (document.version !== next)
    issues.push(
      issueAt(
        text,
        ["version"],
        newest && document.version === newest.version
          ? `is ${document.version}, which is loaded and says something else`
          : `is ${document.version}`,
        `${next}: a version that is loaded is never edited`,
      ),
    );
  if (newest && document.inForceFrom < place.today)
    issues.push(
      issueAt(
        text,
        ["inForceFrom"],
        `is ${document.inForceFrom}, which is past`,
        `${place.today} or later: boxes were planned under version ${newest.version}`,
      ),
    );
  const pending = place.versions.filter(
    ({ inForceFrom, withdrawn }) =>
      withdrawn === undefined && inForceFrom > document.inForceFrom && inForceFrom > place.today,
  );
  const last = pending.findLast(
    ({ inForceFrom }) => document.inForceUntil === undefined || document.inForceUntil >= inForceFrom,
  );
  if (last && document.withdrawn === undefined)
    issues.push(
      issueAt(
        text,
        ["inForceFrom"],
        `overlaps version ${last.version}, which begins on ${last.inForceFrom}`,
        `${last.inForceFrom} or later, or an inForceUntil before it`,
      ),
    );
  return issues;
}

function clashIssues(
  text: DocumentText,
  document: RuleSetDocument,
  catalogue: MatchedCatalogue,
  place: RuleSetPlace,
): { readonly errors: readonly DocumentIssue[]; readonly warnings: readonly DocumentIssue[] } {
  // Days that are none cannot be put in order; they are complained of themselves.
  const unreal = [document, ...document.rules].some((part) =>
    DATES.some((field) => part[field] !== undefined && !isRuleDay(part[field])),
  );
  if (unreal) return { errors: [], warnings: [] };
  const places = place.classes.length > 0 ? place.classes : [{ breakKeys: [], others: [] }];
  const found = { errors: new Map<string, DocumentIssue>(), warnings: new Map<string, DocumentIssue>() };
  for (const { breakKeys, others } of places) {
    const documents = [document, ...others];
    for (const clash of findDocumentClashes(documents, catalogue, breakKeys)) {
      const members = membersOf(clash);
      const own = members.find((ref) => ref.document === 0);
      // What others cannot keep among themselves is not this document's.
      if (own === undefined) continue;
      const expected = clash.kind === "ONLY_WITHOUT" ? "as meant" : "rules that a box can keep together";
      const issue = issueAt(text, ["rules", own.at], sayClash(clash, documents), expected);
      found[clash.kind === "ONLY_WITHOUT" ? "warnings" : "errors"].set(JSON.stringify(issue), issue);
    }
  }
  return { errors: [...found.errors.values()], warnings: [...found.warnings.values()] };
}

function membersOf(clash: DocumentClash): readonly RuleRef[] {
  switch (clash.kind) {
    case "ABOVE_MAXIMUM":
      return [clash.minimum, clash.maximum, ...clash.by];
    case "ONLY_WITHOUT":
      return [clash.minimum, clash.maximum];
    case "MORE_THAN_THERE_ARE":
    case "GROUP_EMPTIED":
      return [clash.minimum, ...clash.by];
    case "NOTHING_LEFT":
      return clash.by;
    case "APART_AND_TOGETHER":
      return [clash.apart, clash.first, clash.second];
  }
}

function sayClash(clash: DocumentClash, documents: readonly RuleSetDocument[]): string {
  const name = ({ document, at }: RuleRef) => {
    const { id } = documents[document]!.rules[at]!;
    return document === 0 ? `"${id}"` : `"${id}" of ${documents[document]!.key}`;
  };
  const names = (refs: readonly RuleRef[]) => refs.map(name).join(" and ");
  switch (clash.kind) {
    case "ABOVE_MAXIMUM": {
      const { minimum, maximum, atLeast, atMost, by } = clash;
      const since = by.length > 0 ? `, now that ${names(by)} shut${by.length > 1 ? "" : "s"} out the rest` : "";
      return minimum.document === maximum.document && minimum.at === maximum.at
        ? `${name(minimum)} asks for at least ${atLeast} and at most ${atMost}`
        : `${name(minimum)} asks for at least ${atLeast}, and ${name(maximum)} allows at most ${atMost} of it${since}`;
    }
    case "ONLY_WITHOUT":
      return `${name(clash.minimum)} asks for at least ${clash.atLeast}, and ${name(clash.maximum)} allows at most ${clash.atMost}: only a box with none of it keeps both`;
    case "MORE_THAN_THERE_ARE":
      return `${name(clash.minimum)} asks for at least ${clash.atLeast}, and there are ${clash.left}${clash.by.length > 0 ? ` that ${names(clash.by)} ${clash.by.length > 1 ? "leave" : "leaves"}` : ""}`;
    case "GROUP_EMPTIED":
      return `${name(clash.minimum)} asks for what ${names(clash.by)} ${clash.by.length > 1 ? "together shut" : "shuts"} out altogether`;
    case "NOTHING_LEFT":
      return `${names(clash.by)} ${clash.by.length > 1 ? "together leave" : "leaves"} nothing to eat${clash.breakKey === "" ? "" : ` at ${clash.breakKey}`}`;
    case "APART_AND_TOGETHER":
      return `${names([clash.first, clash.second])} want in every box what ${name(clash.apart)} keeps apart`;
  }
}

function matcherWarnings(
  text: DocumentText,
  document: RuleSetDocument,
  { catalogue, words }: KnownWords,
): DocumentIssue[] {
  let asked = 0;
  // Of a list full of unknown words the first are told with what was meant; looking that up takes its time.
  const meant = (word: string, list: WordList) => ((asked += 1) > MOST_ISSUES ? [] : nearest(word, words[list]));
  return document.rules.flatMap((rule, at) =>
    matchersOf(rule).flatMap(({ field, matcher }) => {
      const path = ["rules", at, field];
      const unknown = matcher.anyOf.flatMap((clause, place) =>
        WORD_LISTS.flatMap((list) =>
          (clause[list] ?? []).flatMap((word, entry) =>
            words[list].includes(word)
              ? []
              : [
                  issueAt(
                    text,
                    [...path, "anyOf", place, list, entry],
                    `"${word}" is in nothing the catalogue has today`,
                    `one of its ${list}`,
                    meant(word, list),
                  ),
                ],
          ),
        ),
      );
      if (unknown.length > 0 || catalogue.setOf(matcher).size > 0) return unknown;
      return [issueAt(text, path, "matches no food of today's catalogue", "something that a box may hold")];
    }),
  );
}

function breakWarnings(text: DocumentText, document: RuleSetDocument, { classes }: RuleSetPlace): DocumentIssue[] {
  const known = [...new Set(classes.flatMap(({ breakKeys }) => breakKeys))];
  if (known.length === 0) return [];
  return document.rules.flatMap((rule, at) =>
    (rule.breaks ?? []).flatMap((key, entry) =>
      known.includes(key)
        ? []
        : [
            issueAt(
              text,
              ["rules", at, "breaks", entry],
              `"${key}" is no break here, so that the rule holds at none`,
              `one of ${known.join(", ")}`,
              nearest(key, known),
            ),
          ],
    ),
  );
}

/** A version that ends gives way to the one before, if that one goes on. */
function returnWarnings(text: DocumentText, document: RuleSetDocument, { versions }: RuleSetPlace): DocumentIssue[] {
  const { inForceUntil } = document;
  if (inForceUntil === undefined || !isRuleDay(inForceUntil)) return [];
  const after = addDays(inForceUntil, 1);
  const back = versions.findLast(
    (version) => version.inForceFrom <= after && (version.inForceUntil === undefined || version.inForceUntil >= after),
  );
  return back && back.withdrawn === undefined
    ? [issueAt(text, ["inForceUntil"], `is ${inForceUntil}; version ${back.version} holds again after it`, "as meant")]
    : [];
}
