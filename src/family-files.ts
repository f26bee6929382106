/** What a family reads as files instead of over GraphQL, wired by hand. */
import type { App } from "./app/app.js";
import { readFeed } from "./app/feed.js";
import { feedRoute } from "./http/feed.js";
import type { PrefixRoute } from "./http/server.js";

export const familyFiles = (app: App): readonly PrefixRoute[] => [feedRoute((secret) => readFeed(app, secret))];
