/** Mutations that answer with the household after a change of its kitchen. */
import {
  recordLabel,
  relaxHouseRule,
  setEnergyMethod,
  setEquipment,
  setHotDays,
  setKeepsOut,
  setLeftovers,
  setPrepTimes,
  setStock,
} from "../app/change-kitchen.js";
import type { HouseholdChangeFailure } from "../app/change-household.js";
import type { App } from "../app/app.js";
import type { Result } from "../domain/result.js";
import { requirePerson, type GraphqlContext } from "./context.js";
import { explain } from "./explain.js";
import { localId } from "./global-id.js";
import { GoneSince } from "./gone-since.js";
import type { Resolvers } from "./generated.js";

interface KitchenInput {
  readonly householdId: string;
}

/** Decodes the household's ID, acts, and reads the household again. */
const kitchenMutation =
  <I extends KitchenInput>(
    act: (
      app: App,
      personId: string,
      input: Omit<I, "householdId"> & { householdId: string | null },
    ) => Promise<Result<{ householdId: string }, HouseholdChangeFailure>>,
  ) =>
  async (_: unknown, { input }: { input: I }, context: GraphqlContext) => {
    const done = await act(context.app, requirePerson(context), {
      ...input,
      householdId: localId("Household", input.householdId),
    });
    if (!done.ok) return explain(done.error);
    context.reads.forget();
    const household = await context.reads.household(done.value.householdId);
    if (!household) throw new GoneSince();
    return { __typename: "KitchenPayload" as const, household };
  };

export const changeKitchen: Pick<
  NonNullable<Resolvers["Mutation"]>,
  | "setStock"
  | "setLeftovers"
  | "setPrepTimes"
  | "setEquipment"
  | "setHotDays"
  | "setEnergyMethod"
  | "recordLabel"
  | "setKeepsOut"
  | "relaxHouseRule"
> = {
  setStock: kitchenMutation(setStock),
  setLeftovers: kitchenMutation(setLeftovers),
  setPrepTimes: kitchenMutation(setPrepTimes),
  setEquipment: kitchenMutation(setEquipment),
  setHotDays: kitchenMutation(setHotDays),
  setEnergyMethod: kitchenMutation(setEnergyMethod),
  recordLabel: kitchenMutation(recordLabel),
  setKeepsOut: kitchenMutation(setKeepsOut),
  relaxHouseRule: kitchenMutation(relaxHouseRule),
};
