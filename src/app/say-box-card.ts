/** A box card as lines of text, for a phone held in one hand and for the door of the refrigerator. */
import type { BoxItemRow } from "../database/week.js";
import type { BoxCard, BoxPart } from "./box-card.js";
import { sayBoxHolding, sayCaution, type Names } from "./say.js";

/** So many letters stand beside each other on a small phone without turning it. */
export const CARD_COLUMNS = 48;

const weekdays = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** "2027-01-11" -> "Mon 11 Jan". */
export function sayDay(date: string): string {
  const day = new Date(`${date}T00:00:00Z`);
  return `${weekdays[day.getUTCDay()]} ${day.getUTCDate()} ${months[day.getUTCMonth()]}`;
}

/** Breaks a text at spaces; following lines stand under the first word. */
export function wrap(indent: string, text: string, columns: number): string[] {
  const lines: string[] = [];
  const under = " ".repeat(indent.length);
  let line = indent;
  for (const word of text.split(" ")) {
    const joined = line.trim() === "" || line === indent ? line + word : `${line} ${word}`;
    if (joined.length > columns && line.trim() !== "") {
      lines.push(line.trimEnd());
      line = under + word;
    } else line = joined;
  }
  return [...lines, line.trimEnd()];
}

/** English plural of a piece's name: half, tomato, patty. */
const several = (piece: string) =>
  piece.endsWith("lf")
    ? `${piece.slice(0, -1)}ves`
    : /(s|x|ch|sh|to)$/.test(piece)
      ? `${piece}es`
      : /[^aeiou]y$/.test(piece)
        ? `${piece.slice(0, -1)}ies`
        : `${piece}s`;
const whole = (figure: number) => String(Math.round(figure));

/** Pieces with their weight where a dish comes in pieces, else the weight: "2 quarters (104 g)", "60 g". */
function sayAmount(item: Pick<BoxItemRow, "dish" | "grams" | "pieces">, { index }: Names): string {
  const portion = index.dish(item.dish)?.portion;
  if (item.pieces === null || portion?.kind !== "PIECES") return `${whole(item.grams)} g`;
  const piece = item.pieces === 1 ? portion.pieceName : several(portion.pieceName);
  return `${item.pieces} ${piece} (${whole(item.grams)} g)`;
}

const sayPart = ({ compartment, ml, leakProof }: BoxPart): string =>
  compartment === null
    ? "FLASK"
    : `COMPARTMENT ${compartment}${ml === null ? "" : `, ${ml} ml`}${leakProof ? ", leak-proof" : ""}`;

/** At most `CARD_COLUMNS` wide. What is eaten, what is packed with it, then what to watch; sources of cuts last. */
export function sayBoxCard(card: BoxCard, names: Names): string[] {
  const { box, pack } = card;
  const food = (key: string) => names.index.food(key)?.name ?? key;
  const dish = (key: string) => names.index.dish(key)?.name ?? key;
  const lines: string[] = [];
  const say = (indent: string, text: string) => lines.push(...wrap(indent, text, CARD_COLUMNS));
  say("", `${names.child(box.childId).toUpperCase()}, ${sayDay(box.date)}, leaves ${box.packing.leaveAt}`);
  if (box.state === "BLOCKED") say("", "BLOCKED: do not pack it; the week has to be mended first.");
  else if (box.state !== "PLANNED") say("", box.state === "EATEN" ? "Eaten." : "Packed.");
  if (pack !== null) say("", `Pack it ${pack.startsAt}-${pack.endsAt}, carer ${pack.carer}.`);
  for (const part of card.parts) {
    lines.push(sayPart(part));
    for (const item of part.items) {
      const clock = card.clockOf(item.breakKey) ?? item.breakKey;
      const carbohydrate = item.carbohydrateGrams === null ? "?" : whole(item.carbohydrateGrams);
      say(
        `  ${clock} `,
        `${dish(item.dish)}${item.served === "WARM" ? ", warm" : ""}: ${sayAmount(item, names)}, carb ${carbohydrate} g`,
      );
      for (const { food: key, cut } of item.cuts) say("        CUT ", `${food(key)}: ${cut.replace(/\.$/, "")}.`);
    }
  }
  const { coldSources, cutlery } = box.packing;
  const beside = [
    ...(coldSources > 0 ? [`${coldSources} frozen cold ${coldSources === 1 ? "source" : "sources"}`] : []),
    ...cutlery.map((tool) => tool.toLowerCase()),
  ];
  if (beside.length > 0) say("WITH IT ", beside.join(", "));
  const total = card.carbohydrateGrams;
  say("IN ALL  ", `${whole(card.energyKcal)} kcal, carbohydrate ${total === null ? "not known" : `${whole(total)} g`}`);
  if (card.labels.length > 0) say("LABELS  ", `read before packing: ${card.labels.map(food).join("; ")}`);
  const holding = sayBoxHolding(
    box.items.flatMap(({ holdingCase, note }) =>
      note === null
        ? []
        : [
            {
              case: holdingCase,
              minutes: note.holdingMinutes,
              limitMinutes: note.holdingLimitMinutes,
              forecast: note.holdingForecast,
            },
          ],
    ),
  );
  if (holding !== null) say("HOLD    ", holding);
  for (const caution of card.cautions) say("! ", sayCaution(caution, names));
  const sources = [...new Set(box.items.flatMap(({ cuts }) => cuts.flatMap(({ source }) => source.split("; "))))];
  if (sources.length > 0) say("", `Cuts by: ${sources.join("; ")}.`);
  return lines;
}
