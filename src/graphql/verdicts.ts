/** What a box may hold: the answer of `judgePlaces` in the schema's shape. */
import { judgePlaces } from "../app/judge-places.js";
import { sayExclusion } from "../app/say.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
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
    places: value.map((verdict, at) => ({ ...shape(verdict, index, context), place: countBefore(value, at) })),
  };
}

const countBefore = (all: readonly PlaceVerdict[], at: number) =>
  all.slice(0, at).filter(({ breakKey, slot }) => breakKey === all[at]!.breakKey && slot === all[at]!.slot).length;

function shape({ breakKey, slot, candidate, why }: PlaceVerdict, index: CatalogueIndex, context: GraphqlContext) {
  return {
    breakKey,
    slot,
    allowed: candidate !== null,
    cuts: candidate?.cuts ?? [],
    labelsToRead: (candidate?.labelsToRead ?? []).map((key) => foodOf(context, key)),
    exclusion: why && {
      kind: why.kind,
      text: sayExclusion(why, { index, child: (id) => id }),
      source: "source" in why ? why.source : null,
    },
  };
}
