/**
 * A schema for every input type: the shape is made from the SDL, the ranges are those the server checks with. A client that asks
 * here first hears of a slip before anything is sent; the server's own check stays the one that counts.
 */
import { z } from "zod";
import { makeInputSchemas, type InputTypeName } from "./generated/inputs.js";
import {
  absenceReason,
  allergyInput,
  boxKitInput,
  availabilityEntries,
  createChildInput,
  createHouseholdInput,
  displayName,
  disruptionInput,
  dutyEntries,
  equipmentEntries,
  exemptionInput,
  expiresInHours,
  handoverInput,
  hotDayEntries,
  idempotencyKey,
  jurisdictionName,
  keepsOutInput,
  labelInput,
  leftoverEntries,
  prepTimeEntries,
  provisionEntries,
  residenceDates,
  residencePatternInput,
  returnedEntries,
  schoolClassChange,
  schoolClassInput,
  schoolDayInput,
  schoolInput,
  stockEntries,
  subject,
  taskMinutes,
  termInput,
} from "./inputs.js";
import { ownDishInput, ownFoodInput } from "./own-catalogue.js";

const appointment = z
  .object({ subject, schoolId: z.string().nullish(), jurisdiction: jurisdictionName.nullish() })
  .refine(
    (entry) => (entry.schoolId == null) !== (entry.jurisdiction == null),
    "Give either schoolId or jurisdiction.",
  );

/** What the SDL has no words for. Inputs that are IDs, dates and revisions and no more have none. */
const ranges: { readonly [T in InputTypeName]?: z.ZodType } = {
  CreateHouseholdInput: createHouseholdInput,
  CreateChildInput: createChildInput,
  AllergyInput: allergyInput,
  RecordAllergyInput: allergyInput,
  RemoveAllergyInput: z
    .looseObject({})
    .transform((input) => ({ ...input, avoid: "TRACES" }))
    .pipe(allergyInput),
  SetKeepsOutInput: z.object({ allergens: keepsOutInput }),
  SetSchoolProvisionInput: z.object({ entries: provisionEntries }),
  SetHotDaysInput: z.object({ dates: hotDayEntries }),
  SetStockInput: z.object({ entries: stockEntries }),
  SetLeftoversInput: z.object({ leftovers: leftoverEntries }),
  SetPrepTimesInput: z.object({ prepTimes: prepTimeEntries }),
  SetEquipmentInput: z.object({ equipment: equipmentEntries }),
  RecordLabelInput: labelInput,
  OwnFoodInput: ownFoodInput,
  OwnDishInput: ownDishInput,
  FinishTaskInput: z.object({ minutes: taskMinutes }),
  SetDutiesInput: z.object({ duties: dutyEntries }),
  SetAvailabilityInput: z.object({ entries: availabilityEntries }),
  ReportAbsenceInput: z.object({ reason: absenceReason }),
  DisruptionInput: disruptionInput,
  RecordExemptionInput: exemptionInput,
  SetBoxKitInput: z
    .looseObject({})
    .transform((input) => ({ coldSources: 2, ...input }))
    .pipe(boxKitInput),
  SetResidencePatternInput: residencePatternInput,
  ProposeResidenceChangeInput: z.object({ dates: residenceDates }),
  ReportReturnedInput: z.object({ entries: returnedEntries }),
  WriteHandoverInput: handoverInput,
  InviteCarerInput: z.object({ expiresInHours }),
  InviteHomeInput: z.object({ expiresInHours }),
  RenameMeInput: z.object({ displayName }),
  AppointInput: appointment,
  DismissInput: appointment,
  RegisterSchoolInput: schoolInput,
  SetTermInput: termInput,
  SetSchoolDayInput: schoolDayInput,
  AddSchoolClassInput: schoolClassInput,
  ChangeSchoolClassInput: schoolClassChange,
};
const keyed = z.object({ idempotencyKey: idempotencyKey.optional() });

/** By the name of the input type in the SDL. */
export const inputSchemas = makeInputSchemas((type) => {
  const asked = [keyed, ...(ranges[type] ? [ranges[type]] : [])];
  return ({ value, issues }) => {
    for (const schema of asked)
      for (const { path, message } of schema.safeParse(value).error?.issues ?? [])
        issues.push({ code: "custom", input: value, path, message });
  };
});
