import { GraphQLError } from "graphql";
import type { App } from "../app/app.js";
import type { ReadSession } from "../database/database.js";
import { readLastChange } from "../database/change.js";
import { readErasuresAsked, type ErasureAskedRow } from "../database/erase.js";
import { readOwnCatalogue, type OwnCatalogueRows } from "../database/own-catalogue.js";
import { indexSeen } from "../app/own-rows.js";
import type { RulesOfHome } from "../app/rule-origins.js";
import type { CatalogueIndex } from "../domain/catalogue/derive.js";
import { readHousehold, readMe, type HouseholdRow, type SchoolRow } from "../database/household.js";
import { readOpenInvitations, type InvitationRow } from "../database/invitation.js";
import { readRuleSets, readSchools, type RuleSetRow } from "../database/school.js";
import { findWeekOf, readWeek, readWeekById, readWeekOfDay, type WeekRow } from "../database/week.js";
import type { Notices } from "./notices.js";
import type { ChildNode, LoadedChild } from "./rows.js";

export interface GraphqlContext {
  readonly app: App;
  readonly notices: Notices;
  readonly requestId: string;
  /** Whom the operation comes from, for `limitGuessing`. */
  readonly address: string;
  /** The person's ID, from the verified token; null when none was sent. */
  readonly personId: string | null;
  readonly reads: Reads;
  readonly searches: Searches;
}

/** The searches one operation begins for its questions. */
export interface Searches {
  /**
   * Counts one more, for as long as the asker waits.
   * @returns the signal that says nobody waits any more
   * @throws GraphQLError when the operation has begun as many as it may
   */
  begin(): AbortSignal;
}

/** Every one keeps a thread of the planner busy for a second or more. */
const MOST_SEARCHES = 4;

export function createSearches(gone: AbortSignal): Searches {
  let begun = 0;
  return {
    begin() {
      begun += 1;
      if (begun > MOST_SEARCHES)
        throw new GraphQLError(
          `One operation may begin ${MOST_SEARCHES} searches. Ask for the rest in a second query.`,
          {
            extensions: { code: "QUERY_LIMIT" },
          },
        );
      return gone;
    },
  };
}

export interface OwnSeen {
  readonly rows: OwnCatalogueRows;
  /** The reference catalogue and all of them, removed ones too: past weeks name those. */
  readonly index: CatalogueIndex;
  /** Row ID of each own dish by key. */
  readonly dishIds: ReadonlyMap<string, string>;
}

/** Whole trees of one operation, each read at most once, all in one transaction. */
export interface Reads {
  readonly session: () => ReadSession;
  household(id: string): Promise<HouseholdRow | null>;
  week(householdId: string, weekStart: string): Promise<WeekRow | null>;
  /** The week a day lies in. */
  weekOfDay(householdId: string, date: string): Promise<WeekRow | null>;
  weekById(id: string): Promise<WeekRow | null>;
  /** The week that holds a row that cannot be found by itself. */
  weekAround(kind: Parameters<typeof findWeekOf>[1], id: string): Promise<WeekRow | null>;
  /** A household's children by ID, once a tree that names them has been read; null before. */
  childrenOf(householdId: string): ReadonlyMap<string, ChildNode> | null;
  /** Own foods and dishes that the reader may see, in whichever household, by one statement. */
  own(): Promise<OwnSeen>;
  me(): ReturnType<typeof readMe>;
  /** How far the log of one of the reader's households goes. */
  lastChange(householdId: string): Promise<number>;
  /** Of all the reader's households, by one statement. */
  openInvitations(): Promise<readonly InvitationRow[]>;
  /** Of every child the reader may see. */
  erasuresAsked(): Promise<ErasureAskedRow[]>;
  schools(ids: readonly string[]): Promise<SchoolRow[]>;
  ruleSets(schoolId: string): Promise<RuleSetRow[]>;
  /** A household with every version of every rule set that may hold for its children; null when it is not the reader's. */
  rulesOfHome(householdId: string): Promise<RulesOfHome | null>;
  /** After a write everything is read anew. */
  forget(): void;
}

/**
 * @param openSession opens the read transaction of this person, at first use
 * @param leaveSession ends it; the next use opens another
 */
export function createReads(app: App, openSession: () => ReadSession, leaveSession: () => void): Reads {
  const kept = new Map<string, Promise<unknown>>();
  const once = <T>(key: string, read: () => Promise<T>): Promise<T> => {
    const before = kept.get(key) as Promise<T> | undefined;
    if (before) return before;
    const fresh = read();
    kept.set(key, fresh);
    return fresh;
  };
  const session = openSession;
  const known = new Map<string, ReadonlyMap<string, ChildNode>>();
  const loadChild = async (householdId: string, id: string): Promise<LoadedChild> => {
    const tree = await household(householdId);
    const row = tree?.children.find((child) => child.id === id);
    if (!tree || !row) throw new Error("a row names a child that is not in its household");
    return { row, household: tree };
  };
  const keepChildren = (householdId: string, children: readonly { id: string; name: string }[]) =>
    known.set(
      householdId,
      new Map(children.map(({ id, name }) => [id, { id, name, load: () => loadChild(householdId, id) }])),
    );
  const keepWeek = (week: WeekRow | null) => {
    if (week) keepChildren(week.householdId, week.children);
    return week;
  };
  const household = (id: string): Promise<HouseholdRow | null> =>
    once(`household/${id}`, async () => {
      const tree = await session().read((tx) => readHousehold(tx, id));
      // Kept before anybody goes on: whoever waits for the tree finds its children.
      if (tree) keepChildren(tree.id, tree.children);
      return tree;
    });
  const weekById = (id: string): Promise<WeekRow | null> =>
    once(`week/${id}`, () =>
      session()
        .read((tx) => readWeekById(tx, id))
        .then(keepWeek),
    );
  return {
    session,
    household,
    week: (householdId, weekStart) =>
      once(`week/${householdId}/${weekStart}`, () =>
        session()
          .read((tx) => readWeek(tx, householdId, weekStart))
          .then(keepWeek),
      ),
    weekOfDay: (householdId, date) =>
      once(`week-of-day/${householdId}/${date}`, () =>
        session()
          .read((tx) => readWeekOfDay(tx, householdId, date))
          .then(keepWeek),
      ),
    weekById,
    weekAround: async (kind, id) => {
      const found = await session().read((tx) => findWeekOf(tx, kind, id));
      return found && weekById(found.weekId);
    },
    childrenOf: (householdId) => known.get(householdId) ?? null,
    own: () =>
      once("own", async () => {
        const rows = await session().read(readOwnCatalogue);
        return {
          rows,
          index: indexSeen(app, rows),
          dishIds: new Map(rows.dishes.map(({ id, dish }) => [dish.key, id])),
        };
      }),
    me: () => once("me", () => session().read(readMe)),
    lastChange: (householdId) =>
      once(
        `last-change/${householdId}`,
        async () => (await session().read((tx) => readLastChange(tx, householdId))) ?? 0,
      ),
    openInvitations: () => once("open-invitations", () => session().read(readOpenInvitations)),
    erasuresAsked: () => once("erasures-asked", () => session().read(readErasuresAsked)),
    schools: (ids) =>
      ids.length === 0
        ? Promise.resolve([])
        : once(`schools/${ids.join()}`, () => session().read((tx) => readSchools(tx, ids))),
    ruleSets: (schoolId) =>
      once(`rule-sets/${schoolId}`, () => session().read((tx) => readRuleSets(tx, [schoolId], []))),
    rulesOfHome: (householdId) =>
      once(`rules-of-home/${householdId}`, async () => {
        const tree = await household(householdId);
        if (!tree) return null;
        const ids = (of: readonly { readonly id: string }[]) => of.map(({ id }) => id);
        const rows = await session().read((tx) => readRuleSets(tx, ids(tree.schools), ids(tree.children)));
        return { household: tree, rows };
      }),
    forget() {
      leaveSession();
      kept.clear();
      known.clear();
    },
  };
}

/** Everything but the catalogue needs a signed-in person. */
export function requirePerson(context: GraphqlContext): string {
  if (context.personId !== null) return context.personId;
  throw new GraphQLError("Sign in first: send the header Authorization: Bearer <token>.", {
    extensions: { code: "UNAUTHENTICATED" },
  });
}
