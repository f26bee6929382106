/** The text of a rule set document, JSON or YAML 1.2, and the line on which each of its parts stands. */
import { isAlias, isMap, isScalar, isSeq, LineCounter, parseDocument, type Document, type Node } from "yaml";
import { fail, ok, type Result } from "../domain/result.js";

/** What is wrong at one place of a document, for the person who wrote it. */
export interface DocumentIssue {
  /** "rules.3.matches.anyOf.0.groups.1"; empty for the document as a whole. */
  readonly path: string;
  /** Counted from 1. */
  readonly line: number;
  readonly problem: string;
  readonly expected: string;
  /** Words that would do and look most like the one that stands there; none where no word is asked for. */
  readonly nearest: readonly string[];
}

export interface DocumentText {
  readonly value: unknown;
  /** The line of the part itself, or of the nearest part around it that is there. */
  lineOf(path: readonly PropertyKey[]): number;
}

export const MOST_BYTES = 1_000_000;
/** Syntax errors told at once: after the first few they follow from one another. */
const MOST_SYNTAX_ERRORS = 5;

const problemAt = (line: number, problem: string, expected: string): DocumentIssue => ({
  path: "",
  line,
  problem,
  expected,
  nearest: [],
});

/** What PostgreSQL's jsonb refuses in any text of the document. */
const isUnstorable = (text: string) => /[\0\p{Cs}]/u.test(text);

/** JSON is YAML 1.2, so that one reader with line numbers does for both. Two keys of the same name are an error in either. */
export function readDocument(text: string): Result<DocumentText, readonly DocumentIssue[]> {
  const bytes = Buffer.byteLength(text);
  if (bytes > MOST_BYTES)
    return fail([problemAt(1, `has ${bytes} bytes`, `at most ${MOST_BYTES}; divide it into several rule sets`)]);
  const lines = new LineCounter();
  let document: Document.Parsed;
  let value: unknown;
  try {
    document = parseDocument(text, { lineCounter: lines, prettyErrors: false, version: "1.2", schema: "core" });
    if (document.errors.length === 0) value = document.toJS({ maxAliasCount: 100 });
  } catch (error) {
    // An alias that grows without end, or brackets nested deeper than the stack.
    const problem = error instanceof RangeError ? "is nested too deeply" : (error as Error).message;
    return fail([problemAt(1, problem, "one object in the format noonpail-rule-set/1")]);
  }
  const line = (offset: number) => lines.linePos(offset).line || 1;
  if (document.errors.length > 0)
    return fail(
      document.errors
        .slice(0, MOST_SYNTAX_ERRORS)
        .map((error) => problemAt(line(error.pos[0]), error.message, "JSON or YAML that can be read")),
    );
  const unstorable = findUnstorable(document.contents);
  if (unstorable !== null)
    return fail([problemAt(line(unstorable), "holds U+0000 or half of a surrogate pair", "text without it")]);
  return ok({ value, lineOf: (path) => line(offsetOf(document, path)) });
}

function findUnstorable(node: unknown): number | null {
  if (isScalar(node)) return typeof node.value === "string" && isUnstorable(node.value) ? (node.range?.[0] ?? 0) : null;
  const parts = isMap(node) ? node.items.flatMap(({ key, value }) => [key, value]) : isSeq(node) ? node.items : [];
  for (const part of parts) {
    const found = findUnstorable(part);
    if (found !== null) return found;
  }
  return null;
}

function offsetOf(document: Document.Parsed, path: readonly PropertyKey[]): number {
  let node: unknown = document.contents;
  let offset = document.contents?.range[0] ?? 0;
  for (const part of path) {
    const at: unknown = isAlias(node) ? node.resolve(document) : node;
    if (isMap(at)) {
      const pair = at.items.find(({ key }) => isScalar(key) && String(key.value) === String(part));
      if (pair === undefined) return offset;
      offset = (pair.key as Node).range?.[0] ?? offset;
      node = pair.value;
    } else if (isSeq(at)) {
      node = at.items[Number(part)];
      if (node === undefined) return offset;
      offset = (node as Node).range?.[0] ?? offset;
    } else return offset;
  }
  return offset;
}
