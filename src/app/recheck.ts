/**
 * After a change to an allergy, a label, food, dish, facility, calendar or rule, every box not yet eaten is looked at again,
 * in every home it may touch. A box that fails is BLOCKED; one that was blocked and passes again is what it was before,
 * PACKED when it had been packed, else PLANNED. Each home's boxes are judged and written in the name of one of its members.
 */
import { randomUUID } from "node:crypto";
import type { Tx } from "../database/database.js";
import type { HomeToRecheck, RecheckScope, SchoolNews } from "../database/homes-to-recheck.js";
import { tellOfSchools } from "../database/change.js";
import {
  announceVerdicts,
  blockRowOf,
  lockVerdicts,
  readCatalogueVersion,
  readWeeksNotEaten,
  saveVerdicts,
  type BoxVerdictToSave,
} from "../database/recheck.js";
import type { BoxStateCode } from "../database/week.js";
import { boxKey } from "../domain/box-key.js";
import type { App, RecheckJob } from "./app.js";
import { draftOf } from "./draft-of.js";
import { judgeBoxes } from "./judge-boxes.js";
import { readWeekInputs, type WeekInputs } from "./read-brief.js";

/** More homes than this are left to the jobs; where nothing works on jobs, all are looked at before the answer. */
const HOMES_AT_ONCE = 10;
/** How often the recheck of a home begins again when its week moves meanwhile. */
const ATTEMPTS = 5;

/** Whose boxes a change touches; what is not named is nobody's. */
export const touching = (scope: Partial<RecheckScope>): RecheckScope => ({
  childIds: [],
  schoolIds: [],
  householdIds: [],
  ...scope,
});

/** The week moved between reading and writing. */
class WeekMoved extends Error {}

/** This process read other foods and dishes than the database has now: its verdict would be about yesterday's. */
class CatalogueMoved extends Error {
  constructor() {
    super("the catalogue was reloaded since this process read it; a restarted one does the recheck");
  }
}

/** Queues the recheck with the change itself: when the change is committed, the recheck will happen. */
export async function queueRecheck(app: App, tx: Tx, scope: RecheckScope): Promise<void> {
  await app.queue?.sendRecheck({ id: randomUUID(), scope }, tx);
}

/**
 * Looks at the boxes at once, after the change was committed and before it is answered, so that who asks next sees the
 * verdict. The job that was queued with the change finds nothing left to do, or does what could not be done here.
 * @throws where nothing works on jobs and a recheck broke off; sent again with the same key, the change is not done again,
 *   the recheck is
 */
export async function recheckNow(app: App, scope: RecheckScope): Promise<void> {
  try {
    const homes = await app.db.homesToRecheck(scope);
    const now = app.queue === null ? homes : homes.slice(0, HOMES_AT_ONCE);
    for (const home of now) await recheckHome(app, home, scope.news);
  } catch (error) {
    if (app.queue === null) throw error;
  }
}

/** What a worker does with a job. Many homes are given back as a job each, so that none waits for all the others. */
export async function workOnRecheckJob(app: App, { scope }: RecheckJob): Promise<{ homes: number; boxes: number }> {
  const homes = await app.db.homesToRecheck(scope);
  if (homes.length > HOMES_AT_ONCE && app.queue !== null) {
    for (const { householdId } of homes) {
      const own = touching({ householdIds: [householdId], ...(scope.news && { news: scope.news }) });
      await app.queue.sendRecheck({ id: randomUUID(), scope: own }, null);
    }
    return { homes: homes.length, boxes: 0 };
  }
  let boxes = 0;
  for (const home of homes) boxes += await recheckHome(app, home, scope.news);
  return { homes: homes.length, boxes };
}

/** @returns how many boxes have another verdict than before */
async function recheckHome(app: App, home: HomeToRecheck, news: SchoolNews | undefined): Promise<number> {
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await recheckOnce(app, home, news);
    } catch (error) {
      if (!(error instanceof WeekMoved) || attempt === ATTEMPTS) throw error;
    }
  }
}

function recheckOnce(
  app: App,
  { householdId, personId }: HomeToRecheck,
  news: SchoolNews | undefined,
): Promise<number> {
  const recheck = async (tx: Tx) => {
    await lockVerdicts(tx, householdId);
    if (news) await tellOfSchools(tx, householdId, news);
    const session = app.db.openRead(personId);
    try {
      if ((await session.read(readCatalogueVersion)) !== app.reference.catalogue.version) throw new CatalogueMoved();
      const weeks = await session.read((read) => readWeeksNotEaten(read, householdId, app.now()));
      let boxes = 0;
      for (const weekStart of weeks) {
        const inputs = await session.read((read) => readWeekInputs(app, read, householdId, weekStart));
        const verdicts = inputs ? changedVerdicts(inputs) : [];
        if (!inputs?.before || verdicts.length === 0) continue;
        const moved = await tx.week.updateMany({
          where: { id: inputs.before.id, revision: inputs.before.revision },
          data: { revision: { increment: 1 } },
        });
        if (moved.count === 0) throw new WeekMoved();
        await saveVerdicts(tx, householdId, verdicts, randomUUID);
        await announceVerdicts(tx, verdicts);
        boxes += verdicts.length;
      }
      return boxes;
    } finally {
      await session.close();
    }
  };
  return app.db.asPerson(personId, recheck, { unattended: true });
}

/** Boxes from today on, not eaten, whose verdict today is not the one on record. */
function changedVerdicts(inputs: WeekInputs): BoxVerdictToSave[] {
  if (!inputs.before) return [];
  const { plan } = inputs.before;
  const open = plan.boxes.filter((box) => box.state !== "EATEN" && box.date >= inputs.now.date);
  const packed = open.filter((box) => box.packedAt !== null);
  const blocks = judgeBoxes(
    inputs.index,
    inputs.household,
    inputs.asStored(),
    draftOf(plan),
    new Set(open.map(boxKey)),
    new Set(packed.map(boxKey)),
    inputs.upset,
  );
  return open.flatMap((box): BoxVerdictToSave[] => {
    const reasons = blocks.get(boxKey(box)) ?? [];
    const state: BoxStateCode = reasons.length > 0 ? "BLOCKED" : box.packedAt === null ? "PLANNED" : "PACKED";
    const same = state === box.state && JSON.stringify(reasons.map(blockRowOf)) === JSON.stringify(box.blocks);
    return same ? [] : [{ boxId: box.id, childId: box.childId, date: box.date, state, blocks: reasons }];
  });
}
