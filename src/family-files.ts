/** What a family reads as files instead of over GraphQL, wired by hand. */
import type { App } from "./app/app.js";
import { nameAtFirstSight } from "./app/display-name.js";
import { exportHousehold, exportMe } from "./app/export.js";
import { readFeed } from "./app/feed.js";
import { explain } from "./graphql/explain.js";
import { localId } from "./graphql/global-id.js";
import { exportRoute } from "./http/export.js";
import { feedRoute } from "./http/feed.js";
import type { PrefixRoute } from "./http/server.js";
import type { Verify } from "./http/tokens.js";

export const familyFiles = (app: App, verify: Verify): readonly PrefixRoute[] => [
  feedRoute((secret) => readFeed(app, secret)),
  exportRoute({
    verify,
    personOf: ({ subject, name }) => app.db.signIn(subject, nameAtFirstSight(name, subject)),
    me: (personId) => exportMe(app, personId),
    async household(personId, id) {
      const found = await exportHousehold(app, personId, localId("Household", id));
      if (found.ok) return found;
      const { __typename: kind, ...facts } = explain(found.error);
      return { ok: false, error: { status: kind === "HouseholdNotFound" ? 404 : 403, body: { kind, ...facts } } };
    },
  }),
];
