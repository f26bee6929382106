/** The text of a rule set document, JSON or YAML 1.2, and the line on which each of its parts stands. */
import {
  isAlias,
  isMap,
  isPair,
  isScalar,
  isSeq,
  LineCounter,
  parseDocument,
  type Document,
  type ErrorCode,
  type Node,
  type Pair,
  type YAMLMap,
} from "yaml";
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
/** A rule's deepest word stands nine deep. */
const MOST_DEPTH = 40;
/** Told at once: after the first few they follow from one another. */
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

interface Complaint {
  readonly offset: number;
  readonly problem: string;
  readonly expected: string;
}

/** JSON is YAML 1.2, so that one reader with line numbers does for both. Two fields of the same name are an error in either. */
export function readDocument(text: string): Result<DocumentText, readonly DocumentIssue[]> {
  const bytes = Buffer.byteLength(text);
  if (bytes > MOST_BYTES)
    return fail([problemAt(1, `has ${bytes} bytes`, `at most ${MOST_BYTES}; divide it into several rule sets`)]);
  const lines = new LineCounter();
  const options = {
    lineCounter: lines,
    prettyErrors: false,
    version: "1.2",
    schema: "core",
    uniqueKeys: false,
  } as const;
  let document: Document.Parsed;
  try {
    document = parseDocument(text, options);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return fail([problemAt(1, ...TOO_DEEP)]);
  }
  const line = (offset: number) => lines.linePos(Math.min(offset, Math.max(0, text.length - 1))).line || 1;
  const refuse = (complaints: readonly Complaint[]) => {
    const issues = complaints.map(({ offset, problem, expected }) => problemAt(line(offset), problem, expected));
    const said = new Map(issues.map((issue) => [`${issue.line} ${issue.problem}`, issue] as const));
    return fail([...said.values()].slice(0, MOST_SYNTAX_ERRORS));
  };
  if (document.errors.length > 0)
    return refuse(document.errors.map(({ code, message, pos }) => ({ offset: pos[0], ...sayError(code, message) })));
  if (document.contents === null || (isScalar(document.contents) && document.contents.value === null))
    return refuse([{ offset: 0, problem: "is empty", expected: "a rule set in the format noonpail-rule-set/1" }]);
  const complaints = complaintsOf(document, line);
  if (complaints.length > 0) return refuse(complaints);
  let value: unknown;
  try {
    value = document.toJS({ maxAliasCount: MOST_REPEATS });
  } catch (error) {
    if (!(error instanceof ReferenceError)) throw error;
    return refuse([
      {
        offset: 0,
        problem: "repeats parts of itself inside one another, so that it would grow without end",
        expected: "a text without * and &",
      },
    ]);
  }
  return ok({ value, lineOf: placesOf(document, line) });
}
/** Parts written once with & and meant again with *, counted as often as they are unfolded. */
const MOST_REPEATS = 100;

const TOO_DEEP = [
  `has brackets or indents more than ${MOST_DEPTH} deep in one another`,
  "the fields of the format, none of which is so deep",
] as const;
const OPEN = { problem: 'a { or [ or " is opened and not closed before this line', expected: 'a closing }, ] or "' };

/** A mistake of writing in a clerk's words; the reader's own are for programmers. */
function sayError(code: ErrorCode, message: string): { readonly problem: string; readonly expected: string } {
  if (message.includes("call stack")) return { problem: TOO_DEEP[0], expected: TOO_DEEP[1] };
  switch (code) {
    case "BAD_INDENT":
    case "BAD_COLLECTION_TYPE":
      // Inside brackets that are never closed everything below looks badly indented.
      return message.startsWith("Flow")
        ? OPEN
        : { problem: "is not indented like the lines it belongs to", expected: "the same number of spaces in front" };
    case "MISSING_CHAR": {
      if (message.includes("comma") || message.includes("Missing ,"))
        return { problem: "follows another entry without a comma", expected: "a comma between two entries" };
      return message.includes("space") || message.includes("separated")
        ? { problem: "has no space where one is needed", expected: "a space after : - , or #" }
        : OPEN;
    }
    case "DUPLICATE_KEY":
      return { problem: "states a field that is stated above already", expected: "every field once" };
    case "TAB_AS_INDENT":
      return { problem: "is indented with a tab", expected: "spaces" };
    case "BLOCK_AS_IMPLICIT_KEY":
    case "BLOCK_IN_FLOW":
    case "MULTILINE_IMPLICIT_KEY":
      return {
        problem: "has a colon where none can stand, or is not indented like the lines around it",
        expected: 'one field: value on a line; a text that holds a colon in "quotes"',
      };
    case "KEY_OVER_1024_CHARS":
      return { problem: "has a field name of more than 1,024 characters", expected: "a field of the format" };
    case "BAD_DQ_ESCAPE":
      return {
        problem: "has a backslash that stands for nothing",
        expected: 'two of them for the character itself, or one of \\n, \\t, \\" and \\u with four digits',
      };
    case "BAD_SCALAR_START":
      return { problem: "has a text that begins with a special character", expected: 'the text in "quotes"' };
    case "MULTIPLE_DOCS":
      return { problem: "begins a second document", expected: "one rule set in a text, without --- in between" };
    case "BAD_ALIAS":
    case "ALIAS_PROPS":
    case "MULTIPLE_ANCHORS":
      return {
        problem: "has a * or & that names nothing",
        expected: 'the part itself; a text with * or & in "quotes"',
      };
    case "BAD_PROP_ORDER":
    case "MULTIPLE_TAGS":
    case "TAG_RESOLVE_FAILED":
      return { problem: "has a word with ! in front", expected: 'a value without it; a text with ! in "quotes"' };
    case "BAD_DIRECTIVE":
      return { problem: "begins with %", expected: "a document without such a line" };
    case "UNEXPECTED_TOKEN":
      return {
        problem: "has a character or word that nothing before it leads to, as a bracket too many",
        expected: "nothing here, or a comma, bracket or quote before it",
      };
    case "IMPOSSIBLE":
    case "NON_STRING_KEY":
    case "RESOURCE_EXHAUSTION":
      return { problem: "cannot be read", expected: "JSON or YAML" };
  }
}

/** What can be read and yet is no plain document: fields stated twice, parts that hold themselves, texts nobody can store. */
function complaintsOf(document: Document.Parsed, line: (offset: number) => number): Complaint[] {
  const complaints: Complaint[] = [];
  const closed = new Set<string>();
  const visit = (node: unknown, depth: number, around: number): void => {
    if (complaints.length >= MOST_SYNTAX_ERRORS || node === null) return;
    if (isPair(node)) {
      visit(node.key, depth, around);
      return visit(node.value, depth, around);
    }
    const { range, tag } = node as Node;
    const offset = range?.[0] ?? around;
    const complain = (problem: string, expected: string) => void complaints.push({ offset, problem, expected });
    if (depth > MOST_DEPTH) return complain(...TOO_DEEP);
    if (isAlias(node)) {
      if (!closed.has(node.source))
        complain(
          `has *${node.source}, and no part that ends above it is marked &${node.source}`,
          'the part itself; a text with * in "quotes"',
        );
      return;
    }
    if (tag !== undefined && !PLAIN_TAGS.includes(tag))
      return complain(
        `has ${tag.startsWith("tag:") ? "a word with !!" : "a word with !"} in front`,
        "a value without it",
      );
    if (isScalar(node)) {
      if (typeof node.value === "string" && isUnstorable(node.value))
        complain(
          "holds a character that is none: U+0000, or half of a surrogate pair as a damaged copy has it",
          "text without it",
        );
    } else if (isMap(node)) {
      const first = new Map<string, number>();
      for (const pair of node.items) {
        const name = nameOf(pair);
        if (name === null) {
          complain("has a field whose name is itself a list or a group of fields", "a field of the format");
          continue;
        }
        const at = (pair.key as Node).range?.[0] ?? offset;
        const before = first.get(name);
        if (before !== undefined)
          complaints.push({
            offset: at,
            problem: `states ${JSON.stringify(name)}, which line ${line(before)} states already`,
            expected: "every field once",
          });
        else first.set(name, at);
      }
      for (const pair of node.items) visit(pair, depth + 1, offset);
    } else if (isSeq(node)) for (const item of node.items) visit(item, depth + 1, offset);
    const { anchor } = node as { anchor?: string };
    // A part that names itself is not closed when its name comes.
    if (anchor !== undefined) closed.add(anchor);
  };
  visit(document.contents, 0, 0);
  return complaints;
}
/** Written out, these change nothing. */
const PLAIN_TAGS = ["str", "int", "float", "bool", "null", "map", "seq"].map((name) => `tag:yaml.org,2002:${name}`);

const nameOf = ({ key }: Pair): string | null => (isScalar(key) ? String(key.value) : key === null ? "" : null);

/** Looks a field up by its name, however many there are. */
function placesOf(document: Document.Parsed, line: (offset: number) => number): DocumentText["lineOf"] {
  const fields = new WeakMap<YAMLMap, Map<string, Pair>>();
  const fieldsOf = (map: YAMLMap): Map<string, Pair> => {
    const known = fields.get(map) ?? new Map(map.items.map((pair) => [nameOf(pair) ?? "", pair]));
    fields.set(map, known);
    return known;
  };
  return (path) => {
    let node: unknown = document.contents;
    let offset = document.contents?.range[0] ?? 0;
    for (const part of path) {
      const at: unknown = isAlias(node) ? node.resolve(document) : node;
      if (isMap(at)) {
        const pair = fieldsOf(at).get(String(part));
        if (pair === undefined) break;
        offset = (pair.key as Node | null)?.range?.[0] ?? offset;
        node = pair.value;
      } else if (isSeq(at)) {
        node = at.items[Number(part)];
        if (node === undefined) break;
        offset = (node as Node | null)?.range?.[0] ?? offset;
      } else break;
    }
    return line(offset);
  };
}
