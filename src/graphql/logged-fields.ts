/** What an entry of the log says of before and after, as names and texts. */
import type { ChangeRow, LoggedValues } from "../database/changes-for.js";
import { globalId } from "./global-id.js";

export interface LoggedField {
  readonly name: string;
  readonly before: string | null;
  readonly after: string | null;
}
type Row = Readonly<Record<string, unknown>>;

/** Columns that name a person; every other key of a row stays inside. */
const PEOPLE = new Set(["taken_by_id", "packed_by_id", "read_by_id", "person_id"]);
/** What tells rows of one list apart, in the order they are read. */
const NAMES = ["session", "food", "base", "kind", "weekday", "date", "cooked_on", "frozen_on"];

const camel = (column: string) =>
  column.replace(/_id$/, "").replace(/_([a-z])/g, (_, letter: string) => letter.toUpperCase());

function text(column: string, value: unknown): string | null {
  if (value === null || value === undefined) return null;
  if (PEOPLE.has(column)) return globalId("Person", value as string);
  return typeof value === "string" ? value : JSON.stringify(value);
}

const shown = (column: string) => PEOPLE.has(column) || !column.endsWith("_id");

function fieldsOfRow(before: Row, after: Row): LoggedField[] {
  return [...new Set([...Object.keys(before), ...Object.keys(after)])]
    .filter(shown)
    .sort()
    .map((column) => ({
      name: camel(column),
      before: text(column, before[column]),
      after: text(column, after[column]),
    }));
}

/** One field per row of the list; the row is named by what it is about, such as its food. */
function fieldsOfRows(before: readonly Row[], after: readonly Row[]): LoggedField[] {
  // Two people may be on for one session, and each says when they can help.
  const nameOf = (row: Row) =>
    [...NAMES, "person_id"].flatMap((column) => text(column, row[column] ?? null) ?? []).join(" ");
  const rest = (row: Row | undefined) =>
    row === undefined
      ? null
      : Object.entries(row)
          .filter(
            ([column, value]) => shown(column) && !NAMES.includes(column) && column !== "person_id" && value !== null,
          )
          .map(([column, value]) => `${camel(column)} ${text(column, value)}`)
          .sort()
          .join(", ") || "yes";
  const [was, is] = [before, after].map((rows) => new Map(rows.map((row) => [nameOf(row), row])));
  return [...new Set([...was!.keys(), ...is!.keys()])]
    .sort()
    .map((name) => ({ name, before: rest(was!.get(name)), after: rest(is!.get(name)) }))
    .filter((field) => field.before !== field.after);
}

const isList = (values: LoggedValues): values is readonly Row[] => Array.isArray(values);

export function loggedFields({ before, after }: Pick<ChangeRow, "before" | "after">): readonly LoggedField[] {
  const [was, is] = [before ?? {}, after ?? {}];
  if (isList(was) || isList(is)) return fieldsOfRows(isList(was) ? was : [], isList(is) ? is : []);
  return fieldsOfRow(was, is).filter(({ name }) => name !== "mark");
}
