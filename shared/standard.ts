/** Which clauses of a published standard a rule document of ours states, and which it cannot: seeds/reference/standards/*.json. */
import { z } from "zod";
import { slug } from "./codes.js";

const clauseSchema = z
  .strictObject({
    /** Its number in the publication, or where it stands there; unique in the standard. */
    clause: z.string().min(1).max(120),
    /** What it asks, in our words. */
    content: z.string().min(5).max(400),
    /** Where it was read, or "from memory". */
    source: z.string().min(3).max(400),
    /** Ids of the document's rules that state it. */
    statedBy: z.array(z.string().min(1)).min(1).optional(),
    /** Why no rule does. */
    cannot: z.string().min(10).max(400).optional(),
    /** How far the rules go beyond the clause or fall short of it. */
    note: z.string().min(10).max(400).optional(),
  })
  .refine(
    (clause) => (clause.statedBy === undefined) !== (clause.cannot === undefined),
    "either the rules that state it or the reason why none does",
  );
export type StandardClause = z.infer<typeof clauseSchema>;

export const standardSchema = z
  .strictObject({
    source: z.strictObject({ publisher: z.string(), edition: z.string(), licence: z.string(), note: z.string() }),
    key: slug,
    title: z.string().min(3).max(200),
    /** Key of the rule document; its file bears the same name. */
    document: slug,
    clauses: z.array(clauseSchema).min(1),
    /** Rules of the document with a matcher that nothing in the catalogue fits today, and why they stand there all the same. */
    idle: z.array(z.strictObject({ rule: z.string().min(1), because: z.string().min(10).max(400) })),
  })
  .refine(
    ({ clauses }) => new Set(clauses.map(({ clause }) => clause)).size === clauses.length,
    "every clause is listed once",
  );
export type Standard = z.infer<typeof standardSchema>;
