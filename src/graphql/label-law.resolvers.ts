import { classesInForce, declaredUnder } from "../domain/catalogue/label-law.js";
import type { Resolvers } from "./generated.js";

const CAUTION =
  "A list says what labels have to name, not what a child may eat: the child's own allergies decide, and a label is read whole.";

export const labelLawQueries: Pick<NonNullable<Resolvers["Query"]>, "labelLaws"> = {
  labelLaws: (_, { on }, { app }) =>
    app.reference.labelLaws.map((law) => ({
      key: law.key,
      title: law.title,
      incomplete: law.incomplete,
      caution: CAUTION,
      allergens: classesInForce(law, on).map(({ code, as, since, members, note, source }) => ({
        code,
        as,
        since: since ?? null,
        members: members.map(({ name, allergen }) => ({ name, allergen: allergen ?? null })),
        note: note ?? null,
        source,
      })),
      exempt: law.exempt,
      source: law.source,
    })),
};

export const foodOnLabels: Pick<NonNullable<Resolvers["Food"]>, "labelDeclarations"> = {
  labelDeclarations(food, { law: key, on }, { app }) {
    const law = app.reference.labelLaws.find((row) => row.key === key);
    return law === undefined ? [] : declaredUnder(law, food, on);
  },
};
