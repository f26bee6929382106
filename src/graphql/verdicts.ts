/** What a box may hold: the answer of `judgePlaces` in the schema's shape. */
import { judgePlaces } from "../app/judge-places.js";
import { sayExclusion } from "../app/say.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
import type { ExclusionCause } from "../domain/planner/candidates.js";
import type { NamedRule } from "../app/rule-origins.js";
import type { WhyNotOffered } from "../domain/planner/price.js";
import type { PlaceVerdict } from "../domain/planner/verdicts.js";
import type { GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import { foodOf, indexSeenBy } from "./food.resolvers.js";
import type { ChildNode } from "./rows.js";

export async function verdictsOf(
  child: ChildNode,
  about: { date: string; dish?: string | null; food?: string | null },
  context: GraphqlContext,
) {
  const { row, household } = await child.load();
  const judged = await judgePlaces(context.app, (query) => context.reads.session().read(query), {
    householdId: household.id,
    childId: row.id,
    date: about.date,
    dish: about.dish ?? null,
    food: about.food ?? null,
  });
  if (!judged.ok) return explain(judged.error);
  const { value } = judged;
  const index = await indexSeenBy(context, [
    about.dish ?? "",
    about.food ?? "",
    ...value.flatMap(({ why }) => (why && "food" in why ? why.food : [])),
  ]);
  return {
    __typename: "Verdicts" as const,
    places: value.map((verdict, at) => ({
      ...shape(verdict, context),
      exclusion: shutOut(verdict.why, { childId: row.id, date: about.date, householdId: household.id }, index),
      place: countBefore(value, at),
    })),
  };
}

const countBefore = (all: readonly PlaceVerdict[], at: number) =>
  all.slice(0, at).filter(({ breakKey, slot }) => breakKey === all[at]!.breakKey && slot === all[at]!.slot).length;

function shutOut(
  why: ExclusionCause | null,
  { childId, date, householdId }: { readonly childId: string; readonly date: string; readonly householdId: string },
  index: CatalogueIndex,
) {
  return (
    why && {
      kind: why.kind,
      text: sayExclusion(why, { index, child: (id) => id }),
      source: "source" in why ? why.source : null,
      named: ruleOf(why, childId, date),
      householdId,
    }
  );
}

/** The rule behind a cause; null where it is none. */
export const ruleOf = (why: WhyNotOffered, childId: string, date: string): NamedRule | null =>
  why.kind === "RULE" ? { childId, dates: [date], ruleSet: why.ruleSet, rule: why.rule, source: why.source } : null;

function shape({ breakKey, slot, candidate }: PlaceVerdict, context: GraphqlContext) {
  return {
    breakKey,
    slot,
    allowed: candidate !== null,
    cuts: candidate?.cuts ?? [],
    labelsToRead: (candidate?.labelsToRead ?? []).map((key) => foodOf(context, key)),
  };
}
