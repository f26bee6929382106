import type { CodegenConfig } from "@graphql-codegen/cli";
import { documents, persisted } from "./src/cli/codegen/documents.js";
import * as inputSchemas from "./src/cli/codegen/input-schemas.js";

/**
 * What a resolver is handed for a type whose row is not spelled like its SDL. One line per type, written
 * `TypeName: "./room/file.js#Name as NameRow"`, the path as seen from src/graphql; the alias keeps the row's name
 * apart from the SDL type's.
 */
const mappers: Record<string, string> = {
  Me: "./rows.js#MeNode as MeRow",
  Change: "./rows.js#ChangeNode as ChangeNode",
  Person: "../database/household.js#PersonRow as PersonRow",
  Invitation: "../database/invitation.js#InvitationRow as InvitationRow",
  InvitationOffer: "../database/invitation.js#InvitationOfferRow as InvitationOfferRow",
  Household: "../database/household.js#HouseholdRow as HouseholdRow",
  Kitchen: "../database/household.js#HouseholdRow as KitchenRow",
  Stock: "../database/household.js#StockRow as StockRow",
  Leftover: "../database/household.js#LeftoverRow as LeftoverRow",
  FreezerStock: "../database/household.js#FreezerStockRow as FreezerStockRow",
  LabelCheck: "../database/household.js#LabelCheckRow as LabelCheckRow",
  Child: "./rows.js#ChildNode as ChildRow",
  Enrolment: "./rows.js#EnrolmentNode as EnrolmentRow",
  School: "../database/household.js#SchoolRow as SchoolRow",
  ClassBreak: "../database/household.js#BreakRow as BreakRow",
  SchoolProvision: "../database/household.js#ProvisionRow as ProvisionRow",
  SchoolClass: "../database/household.js#SchoolClassRow as SchoolClassRow",
  RuleSet: "../database/school.js#RuleSetRow as RuleSetRow",
  RuleSetCounts: "../app/count-rules.js#RuleImpact as RuleImpact",
  RuleSetVersion: "./rows.js#RuleSetVersionNode as RuleSetVersionNode",
  RuleSetCheck: "../app/check-rule-set.js#RuleSetCheck as CheckedDocument",
  RuleSetDifference: "../domain/rules/document-difference.js#DocumentDifference as DocumentDifference",
  RuleChange: "../domain/rules/document-difference.js#RuleChange as ChangedRule",
  Rule: "../../shared/rule-set.js#Rule as RuleRow",
  Appointment: "./rows.js#AppointmentNode as AppointmentRow",
  AuditEntry: "./rows.js#AuditEntryNode as AuditEntryRow",
  CalendarChange: "../app/load-calendar.js#CalendarOffer as CalendarChangeRow",
  CalendarEntry: "./rows.js#CalendarEntryNode as CalendarEntryRow",
  Food: "../../shared/catalogue.js#Food as FoodRow",
  Base: "../../shared/catalogue.js#Base as BaseRow",
  Dish: "../domain/catalogue/derive.js#DerivedDish as DishRow",
  DishIngredient: "../../shared/catalogue.js#Ingredient as DishIngredientRow",
  NutrientDerivation: "../domain/catalogue/derive.js#NutrientDerivation as NutrientDerivationRow",
  NutrientPart: "../domain/catalogue/derive.js#NutrientPart as NutrientPartRow",
  CostPart: "../domain/catalogue/derive.js#CostPart as CostPartRow",
  ProcessingClass: "../domain/catalogue/processing.js#ProcessingClass as ProcessingClassRow",
  Week: "../database/week.js#WeekRow as WeekRow",
  WeekPlan: "./rows.js#PlanNode as WeekPlanRow",
  PlanCertificate: "../database/week.js#CertificateRow as PlanCertificateRow",
  Box: "./rows.js#BoxNode as BoxRow",
  BoxItem: "./rows.js#BoxItemNode as BoxItemRow",
  BoxItemNote: "./rows.js#BoxItemNode as BoxItemNoteRow",
  ItemHolding: "./rows.js#BoxItemNode as ItemHoldingRow",
  Batch: "./rows.js#BatchNode as BatchRow",
  BatchFeed: "./rows.js#BatchFeedNode as BatchFeedRow",
  Task: "./rows.js#TaskNode as TaskRow",
  PrepSession: "./rows.js#PrepSessionNode as PrepSessionRow",
  SessionTiming: "../domain/week.js#SessionPlan as SessionTimingRow",
  CarerTasks: "./rows.js#CarerTasksNode as CarerTasksRow",
  ApplianceUses: "./rows.js#ApplianceUsesNode as ApplianceUsesRow",
  ApplianceUse: "./rows.js#ApplianceUseNode as ApplianceUseRow",
  ShoppingLine: "./rows.js#ShoppingLineNode as ShoppingLineRow",
  SpareUse: "./rows.js#SpareUseNode as SpareUseRow",
  SpareDish: "./rows.js#SpareDishNode as SpareDishRow",
  ReadyUse: "../domain/week.js#ReadyUse as ReadyUseRow",
  BoxCard: "./rows.js#BoxCardNode as BoxCardRow",
  BoxPart: "./rows.js#BoxPartNode as BoxPartRow",
  Caution: "./rows.js#CautionNode as CautionRow",
  Conflict: "./rows.js#ConflictNode as ConflictRow",
  Alternative: "../domain/planner/alternatives.js#Alternative as AlternativeRow",
  WeekInfeasible: "./rows.js#WeekInfeasibleNode as WeekInfeasibleRow",
  Clash: "./rows.js#ClashNode as ClashRow",
  ClashMember: "./rows.js#ClashMemberNode as ClashMemberRow",
  DishNotOffered: "./rows.js#DishNotOfferedNode as DishNotOfferedRow",
  Exclusion: "./rows.js#ShutOutNode as ExclusionRow",
  RuleOrigin: "../app/rule-origins.js#RuleOrigin as RuleOriginRow",
  Compliance: "../app/compliance.js#Compliance as ComplianceRow",
  RuleFinding: "./rows.js#RuleFindingNode as RuleFindingRow",
  RuleObeyed: "./rows.js#RuleObeyedNode as RuleObeyedRow",
  RuleNotice: "./rows.js#RuleNoticeNode as RuleNoticeRow",
  Exemption: "./rows.js#ExemptionNode as ExemptionNodeRow",
  WayOut: "./rows.js#WayOutNode as WayOutRow",
  WayOutChange: "./rows.js#WayOutChangeNode as WayOutChangeRow",
  PricedAlternative: "./rows.js#PricedDishNode as PricedAlternativeRow",
  PriceOfChange: "./rows.js#PricedDishNode as PriceOfChangeRow",
  NoWeekWithDish: "./rows.js#NoWeekWithDishNode as NoWeekWithDishRow",
  NoSchool: "./rows.js#NoSchoolNode as NoSchoolRow",
  WeekPayload: "./rows.js#WeekPayloadNode as WeekPayloadRow",
  LabelsUnread: "./rows.js#LabelsUnreadNode as LabelsUnreadRow",
  BlockReason: "./rows.js#BlockNode as BlockReasonRow",
  BoxVerdict: "./rows.js#BoxVerdictNode as BoxVerdictRow",
  MendingOffer: "../app/mend-week.js#MendingOffer as MendingOfferRow",
  MendedBox: "./rows.js#MendedBoxNode as MendedBoxRow",
  MendedItem: "../domain/week.js#ItemPlan as MendedItemRow",
  MissingFact: "../domain/catalogue/what-is-missing.js#MissingFact as MissingFactRow",
  StillInUse: "./rows.js#StillInUseNode as StillInUseRow",
  BoxPlace: "./rows.js#BoxPlaceNode as BoxPlaceRow",
  Disruption: "./rows.js#DisruptionNode as DisruptionRow",
  DisruptionOffer: "../app/report-disruption.js#DisruptionOffer as DisruptionOfferRow",
  DisruptionPayload: "../app/report-disruption.js#DisruptionRef as DisruptionPayloadRow",
  WeekDifference: "./rows.js#WeekDifferenceNode as WeekDifferenceRow",
  BoxDifference: "./rows.js#BoxDifferenceNode as BoxDifferenceRow",
  ItemDifference: "../domain/week.js#ItemPlan as ItemDifferenceRow",
  BatchDifference: "../domain/week-difference.js#BatchChange as BatchDifferenceRow",
  SessionDifference: "./rows.js#SessionDifferenceNode as SessionDifferenceRow",
  TaskDifference: "./rows.js#TaskDifferenceNode as TaskDifferenceRow",
  ShoppingDifference: "../domain/week-difference.js#ShoppingChange as ShoppingDifferenceRow",
};

type Output = Exclude<CodegenConfig["generates"][string], readonly unknown[]>;
type Preset = Extract<NonNullable<Output["preset"]>, object>;
/** Plugins that live in this repository: the configuration takes plugins by the name of their package, a preset takes functions. */
const ours = (own: Parameters<Preset["buildGeneratesSection"]>[0]["pluginMap"]): Preset => ({
  buildGeneratesSection: (options) => [
    {
      ...options,
      filename: options.baseOutputDir,
      plugins: [...options.plugins, ...Object.keys(own).map((name) => ({ [name]: {} }))],
      pluginMap: { ...options.pluginMap, ...own },
    },
  ],
});

const config: CodegenConfig = {
  schema: "schema/*.graphql",
  importExtension: ".js",
  emitLegacyCommonJSImports: false,
  generates: {
    "src/graphql/generated.ts": {
      plugins: ["typescript", "typescript-resolvers"],
      config: {
        useTypeImports: true,
        enumsAsTypes: true,
        strictScalars: true,
        defaultScalarType: "unknown",
        scalars: {
          ID: "string",
          // Rows read as JSON carry times as text, rows read by the ORM as Date.
          DateTime: { input: "Date", output: "Date | string" },
          LocalDate: "string",
          LocalTime: "string",
        },
        contextType: "./context.js#GraphqlContext",
        // A union or interface value says which member it is; nobody guesses from its fields.
        resolversNonOptionalTypename: { unionMember: true, interfaceImplementingType: true },
        // Rows and domain values are readonly all the way down; a resolver may hand them over as they are.
        immutableTypes: true,
        // An input field with a default always has a value by the time a resolver sees it.
        avoidOptionals: { defaultValue: true },
        mappers,
      },
    },
    "shared/generated/inputs.ts": { preset: ours({ inputSchemas }), plugins: [] },
    "shared/generated/operations.ts": {
      documents: "shared/operations/*.graphql",
      preset: ours({ documents }),
      plugins: ["typescript-operations"],
      config: {
        useTypeImports: true,
        strictScalars: true,
        defaultScalarType: "never",
        scalars: { ID: "string", DateTime: "string", LocalDate: "string", LocalTime: "string" },
        immutableTypes: true,
        // Only where an operation asks for it; a name nobody asked for is not in the answer.
        skipTypename: true,
        arrayInputCoercion: false,
      },
    },
    "shared/generated/persisted-documents.json": {
      documents: "shared/operations/*.graphql",
      preset: ours({ persisted }),
      plugins: [],
    },
  },
};

export default config;
