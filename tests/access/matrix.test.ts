/** The access matrix: cells from schema and database, answers by hand. */
import { useDatabase } from "../support/database.js";
import { plantHomes, type Homes } from "./homes.js";
import { sqlCells, strangeColumns, unspoken, type Cell } from "./sql-cells.js";
import { acrossTheWall } from "./tables.js";

const database = useDatabase({ demo: true });
let homes: Homes;
beforeAll(async () => {
  homes = await plantHomes(database.owner);
});
const named = ({ what, verb, scope, actor, got }: Cell) =>
  `${actor} ${got ? "may" : "may not"} ${verb} ${what}, ${scope}`;

describe("rows, asked as the server's role", () => {
  let cells: Cell[];
  beforeAll(async () => {
    cells = await sqlCells(database.owner, homes);
  });
  it("every table has its line", async () => expect(await unspoken(database.owner)).toEqual([]));
  it("nobody reads or writes what they should not", () =>
    expect(cells.filter(({ expected, got }) => got && !expected).map(named)).toEqual([]));
  it("everybody may do what is theirs to do", () =>
    expect(cells.filter(({ expected, got }) => expected && !got).map(named)).toEqual([]));
  it("every column that the other home reads is named", async () =>
    expect(await strangeColumns(database.owner, acrossTheWall)).toEqual([]));
});
