/** The week by node:http and postgres.js alone: the statement's JSON text goes out untouched. */
import { createServer } from "node:http";
import { createSignIn, listen, readJson } from "./sign-in.mjs";
import { readWeek, signIn } from "./week-statement.mjs";

const personOf = createSignIn(signIn);

listen(
  createServer(async (req, res) => {
    try {
      const { householdId, date } = await readJson(req);
      const personId = await personOf(req.headers.authorization);
      const body = Buffer.from(`{"data":{"week":${await readWeek(personId, householdId, date)}}}`);
      res.writeHead(200, { "content-type": "application/json", "content-length": body.byteLength });
      res.end(body);
    } catch (error) {
      res.writeHead(500).end(JSON.stringify({ message: String(error) }));
    }
  }),
);
