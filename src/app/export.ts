/** A copy of everything a household or a person holds, as one JSON document, written piece by piece. */
import { readExport } from "../database/export.js";
import { fail, ok, type Result } from "../domain/result.js";
import type { App } from "./app.js";
import { roleIn } from "./change-household.js";
import type { FailureOf } from "./failures.js";
import { leastRole, may } from "./may.js";

export const EXPORT_FORMAT = "noonpail-export/1";

/** Writes the document; `out` is awaited before the next piece is read. */
export type Export = (out: (text: string) => Promise<void>) => Promise<void>;

/** What the person holds in their own name. */
export const exportMe = (app: App, personId: string): Export => exportAs(app, personId, "person", personId);

/** What the household holds, as far as this coordinator may read it: of a child with two homes nothing of the other kitchen. */
export async function exportHousehold(
  app: App,
  personId: string,
  householdId: string | null,
): Promise<Result<Export, FailureOf<"HouseholdNotFound" | "NotPermitted">>> {
  const role = householdId === null ? null : await app.db.asPerson(personId, (tx) => roleIn(tx, personId, householdId));
  if (role === null || householdId === null) return fail({ kind: "HouseholdNotFound" });
  if (!may(role, "exportHousehold")) return fail({ kind: "NotPermitted", neededRole: leastRole.exportHousehold });
  return ok(exportAs(app, personId, "household", householdId));
}

const exportAs =
  (app: App, personId: string, of: "household" | "person", id: string): Export =>
  async (out) => {
    // One state of the data in all tables, however long the reading takes.
    const session = app.db.openRead(personId);
    try {
      const head = { format: EXPORT_FORMAT, of, id, exportedAt: app.now().toISOString() };
      await out(`${JSON.stringify(head).slice(0, -1)},"tables":{`);
      let open: string | null = null;
      let first = true;
      await session.read((tx) =>
        readExport(tx, of, id, async (table, rows) => {
          if (table !== open) {
            await out(`${open === null ? "" : "],"}\n"${table}":[`);
            open = table;
            first = true;
          }
          if (rows.length === 0) return;
          await out(`${first ? "" : ","}\n${rows.join(",\n")}`);
          first = false;
        }),
      );
      await out("]}}\n");
    } finally {
      await session.close();
    }
  };
