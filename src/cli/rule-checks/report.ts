/** Everything `npm run report:rules` looks at, read from the seeds as they are shipped. */
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import type { RuleSetDocument } from "../../../shared/rule-set.js";
import { standardSchema, type Standard } from "../../../shared/standard.js";
import { checkRuleSet, readRuleSetDocument, wordsOf, type KnownWords } from "../../app/check-rule-set.js";
import type { DocumentIssue } from "../../app/document-text.js";
import { sayIssue } from "../../app/say.js";
import { readCatalogueFiles } from "../../database/seed.js";
import { indexCatalogue } from "../../domain/catalogue/derive.js";
import { reportOnStandard, type RuleWarning, type StandardReport } from "./standard-report.js";

export interface DocumentReport {
  readonly file: string;
  /** Null: it cannot be loaded. */
  readonly document: RuleSetDocument | null;
  readonly warnings: readonly RuleWarning[];
}

export interface RuleReport {
  readonly standards: readonly StandardReport[];
  /** Documents that belong to no published standard. */
  readonly others: readonly DocumentReport[];
  /** Files that cannot be read or loaded as what they are, with the reason. */
  readonly faults: readonly string[];
}

function textsIn(folder: string): { readonly file: string; readonly text: string }[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith(".json"))
    .sort()
    .map((file) => ({ file, text: readFileSync(join(folder, file), "utf8") }));
}

function shippedWords(): KnownWords {
  const catalogue = readCatalogueFiles();
  const shipped = { version: "seeds", ...catalogue };
  return wordsOf(shipped, indexCatalogue(shipped));
}

/** Checks a document as if it were the first of its key, loaded where it says it belongs. */
function checkFile(file: string, text: string, words: KnownWords): DocumentReport & { readonly faults: string[] } {
  const shape = readRuleSetDocument(text);
  const say = (issue: DocumentIssue): string => `${file}: ${sayIssue(issue)}`;
  if (!("document" in shape)) return { file, document: null, warnings: [], faults: shape.map(say) };
  const { document } = shape;
  const { errors, warnings } = checkRuleSet(shape, words, {
    layer: document.layer,
    jurisdiction: document.jurisdiction ?? null,
    school: document.school ?? null,
    schoolClass: document.schoolClass ?? null,
    today: document.inForceFrom,
    classes: [],
    versions: [],
  });
  return {
    file,
    document: errors.length > 0 ? null : document,
    warnings: warnings.map(({ path, problem }) => ({
      rule: document.rules[Number(path.split(".")[1])]?.id ?? path,
      says: problem,
    })),
    faults: errors.map(say),
  };
}

function readStandard(file: string, text: string): { readonly standard: Standard | null; readonly faults: string[] } {
  const off = (why: string) => ({ standard: null, faults: [`${file}: ${why}`] });
  try {
    const read = standardSchema.safeParse(JSON.parse(text));
    return read.success ? { standard: read.data, faults: [] } : off(z.prettifyError(read.error));
  } catch (error) {
    return off(String(error));
  }
}

/** Throws only when a folder is missing or the shipped catalogue is malformed. */
export function readRuleReport(directory = "seeds/reference"): RuleReport {
  const words = shippedWords();
  const documents = textsIn(join(directory, "rule-sets")).map(({ file, text }) => checkFile(file, text, words));
  const standards = textsIn(join(directory, "standards")).map(({ file, text }) => readStandard(file, text));
  const readable = standards.flatMap(({ standard }) => standard ?? []);
  const isOf = (standard: Standard, { file }: DocumentReport): boolean => file === `${standard.document}.json`;
  return {
    standards: readable.map((standard) => {
      const own = documents.find((document) => isOf(standard, document));
      return reportOnStandard(standard, own?.document ?? null, own?.warnings ?? []);
    }),
    others: documents
      .filter((document) => !readable.some((standard) => isOf(standard, document)))
      .map(({ file, document, warnings }) => ({ file, document, warnings })),
    faults: [...documents, ...standards].flatMap(({ faults }) => faults),
  };
}
