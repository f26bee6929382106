/** The coverage table as it stands in seeds/README.md and in the food report. */
import type { CoverageRow } from "../../domain/catalogue/coverage.js";

const begins = "<!-- coverage: written by a program, do not edit -->";
const ends = "<!-- end of coverage -->";

const words = (names: readonly string[]): string =>
  names.map((name) => name.toLowerCase().replaceAll("_", " ")).join(", ");

function shutsOut({ allergens, diets, ageYears, coldOnly }: CoverageRow["requirement"]): string {
  const parts = [
    ...(allergens.length > 0 ? [words(allergens)] : []),
    ...(diets.length > 0 ? [`what is not ${words(diets)}`] : []),
    ...(ageYears === null ? [] : [`what no cut makes safe at ${ageYears} years`]),
    ...(coldOnly ? ["what is eaten warm or cooked that morning"] : []),
  ];
  return parts.join("; ");
}

/**
 * Markdown, one line a row: of each slot the dishes that differ in main ingredient or form, and in brackets all that pass;
 * of the mains where their protein comes from and what they are built on. A row that falls short says so in its last cell.
 */
export function coverageTable(rows: readonly CoverageRow[]): string {
  const head = [
    "row",
    "shuts out",
    "mains",
    "vegetables",
    "fruits",
    "extras",
    "protein of the mains",
    "starch",
    "holds",
  ];
  const lines = rows.map((row) => {
    const { requirement, distinct, dishes, proteinSources, starchFamilies, shortfalls } = row;
    return [
      requirement.key,
      shutsOut(requirement),
      ...(["MAIN", "VEGETABLE", "FRUIT", "EXTRA"] as const).map((slot) => `${distinct[slot]} (${dishes[slot]})`),
      `${proteinSources.length}: ${words(proteinSources)}`,
      `${starchFamilies.length}: ${words(starchFamilies)}`,
      shortfalls.length === 0
        ? "yes"
        : `no: ${shortfalls.map(({ of, has, needs }) => `${words([of])} ${has} of ${needs}`).join(", ")}`,
    ];
  });
  const asLine = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
  return [asLine(head), asLine(head.map(() => "---")), ...lines.map(asLine)].join("\n");
}

/** The part of a text between the marks, null where a mark is missing. */
export function readCoverageTable(text: string): string | null {
  const from = text.indexOf(begins);
  const to = text.indexOf(ends);
  return from < 0 || to < from ? null : text.slice(from + begins.length, to).trim();
}

/** The text with the table between its marks replaced; null where a mark is missing. */
export function replaceCoverageTable(text: string, rows: readonly CoverageRow[]): string | null {
  if (readCoverageTable(text) === null) return null;
  const before = text.slice(0, text.indexOf(begins) + begins.length);
  return `${before}\n\n${coverageTable(rows)}\n\n${text.slice(text.indexOf(ends))}`;
}
