/** Copies of rule set documents with something wrong with them, drawn from a seed; the same seed spoils the same way. */
import { readdirSync, readFileSync } from "node:fs";
import { createDice } from "./dice.js";

const folder = new URL("../../seeds/reference/rule-sets/", import.meta.url);

/** Every rule set the project ships, as text. */
export const seedDocuments: readonly { readonly name: string; readonly text: string }[] = readdirSync(folder)
  .filter((name) => name.endsWith(".json"))
  .sort()
  .map((name) => ({ name, text: readFileSync(new URL(name, folder), "utf8") }));

type Dice = ReturnType<typeof createDice>;
type Box = Record<string, unknown> | unknown[];
const one = <T>(dice: Dice, of: readonly T[]): T => of[dice(of.length)]!;

/** Every object and list of a value that has something in it. */
function boxesIn(value: unknown): Box[] {
  if (typeof value !== "object" || value === null) return [];
  const inside = Object.values(value).flatMap(boxesIn);
  return Object.keys(value).length > 0 ? [value as Box, ...inside] : inside;
}

const others: readonly unknown[] = [
  null,
  true,
  false,
  0,
  -1,
  1.5,
  1e300,
  "",
  "x",
  "EXCLUDE",
  "2027-02-30",
  [],
  {},
  [[]],
  [null],
  { kind: "ONLY" },
];

const inValue: readonly ((dice: Dice, box: Box, key: string) => void)[] = [
  // Dropped.
  (_, box, key) => void (Array.isArray(box) ? box.splice(Number(key), 1) : delete box[key]),
  // Of another type.
  (dice, box, key) => void ((box as Record<string, unknown>)[key] = structuredClone(one(dice, others))),
  // Twice, or under another name.
  (dice, box, key) => {
    const copy = structuredClone((box as Record<string, unknown>)[key]);
    if (Array.isArray(box)) box.push(copy);
    else box[one(dice, [`${key}s`, key.toUpperCase(), key.slice(1), "constructor", "matches", ""])] = copy;
  },
  // Swapped with its neighbour.
  (dice, box, key) => {
    const fields = box as Record<string, unknown>;
    const other = one(dice, Object.keys(fields));
    [fields[key], fields[other]] = [fields[other], fields[key]];
  },
  // A word with a slip of the finger, a number a little off.
  (dice, box, key) => {
    const fields = box as Record<string, unknown>;
    const value = fields[key];
    if (typeof value === "number") fields[key] = value * one(dice, [-1, 0, 10, 0.1]) + dice(3);
    if (typeof value === "string")
      fields[key] = value.slice(0, dice(value.length + 1)) + value.slice(dice(value.length + 1));
  },
];

const letters = [
  '"',
  "{",
  "}",
  "[",
  "]",
  ":",
  ",",
  "\n",
  "\t",
  "\0",
  "\\",
  "#",
  "&",
  "*",
  "!",
  "%",
  "-",
  "?",
  "|",
  ">",
  "'",
  "\uFEFF",
  "\ud800",
  "\u2028",
  "e",
  "9",
];

const inText: readonly ((dice: Dice, text: string) => string)[] = [
  // Cut off at a byte, in the middle of a letter too.
  (dice, text) => Buffer.from(text).subarray(0, dice(text.length)).toString("utf8"),
  // Letters written over.
  (dice, text) => {
    const spoiled = [...text];
    for (let times = 1 + dice(4); times > 0; times -= 1) spoiled[dice(spoiled.length)] = one(dice, letters);
    return spoiled.join("");
  },
  // A piece moved, doubled or lost.
  (dice, text) => {
    const [from, to, at] = [dice(text.length), dice(400), dice(text.length)];
    const piece = text.slice(from, from + to);
    const rest = dice(2) === 0 ? text : text.slice(0, from) + text.slice(from + to);
    return rest.slice(0, at) + (dice(3) === 0 ? "" : piece) + rest.slice(at);
  },
  // A bit turned over.
  (dice, text) => {
    const bytes = Buffer.from(text);
    const at = dice(bytes.length);
    bytes[at] = bytes[at]! ^ (1 << dice(8));
    return bytes.toString("utf8");
  },
];

/** One to three things wrong, in what it says or in how it is written. */
export function spoil(text: string, seed: number): string {
  const dice = createDice(seed);
  for (let skip = 0; skip < 5; skip += 1) dice(2);
  if (dice(3) === 0) return one(dice, inText)(dice, text);
  const value = JSON.parse(text) as unknown;
  for (let times = 1 + dice(3); times > 0; times -= 1) {
    const box = one(dice, boxesIn(value));
    one(dice, inValue)(dice, box, one(dice, Object.keys(box)));
    if (boxesIn(value).length === 0) break;
  }
  return JSON.stringify(value, null, dice(2) === 0 ? 2 : 0);
}
