/** The week by PostGraphile 4 as a library: the tables as they are, row security by the verified person. */
import { createServer } from "node:http";
import pg from "pg";
import { postgraphile } from "postgraphile";
import { createSignIn, listen, settings } from "../sign-in.mjs";

const pool = new pg.Pool({ connectionString: settings.databaseUrl, max: 10 });
const personOf = createSignIn(async (subject) => {
  const { rows } = await pool.query("select app_sign_in($1, $1) as id", [subject]);
  return rows[0].id;
});

listen(
  createServer(
    postgraphile(pool, "public", {
      pgSettings: async (req) => ({ "app.person_id": await personOf(req.headers.authorization) }),
      disableQueryLog: true,
      dynamicJson: true,
      setofFunctionsContainNulls: false,
      graphiql: false,
    }),
  ),
);
