import type { ServerResponse } from "node:http";
import type { Log } from "../log.js";
import { answerJson } from "./answer.js";

export type Check = { readonly ok: true } | { readonly ok: false; readonly problem: string };
export type Readiness = { readonly ready: boolean; readonly checks: Readonly<Record<string, Check>> };

/** Milliseconds; a probe that hangs is a probe that failed. */
const PATIENCE = 2_000;

/** Alive: the event loop turns. Says nothing about the database, or an outage there would restart every server. */
export const answerLive = (res: ServerResponse): void => answerJson(res, 200, { status: "live" });

/** Ready for traffic: 200, or 503 naming each failing check. */
export async function answerReady(
  res: ServerResponse,
  isReady: () => Promise<Readiness>,
  stopping: boolean,
  log: Log,
): Promise<void> {
  const { ready, checks } = stopping ? shuttingDown : await inTime(isReady, log);
  const failing = Object.keys(checks).filter((name) => checks[name]?.ok === false);
  const up = ready && failing.length === 0;
  answerJson(res, up ? 200 : 503, { status: up ? "ready" : "not ready", failing, checks });
}

const shuttingDown: Readiness = {
  ready: false,
  checks: { running: { ok: false, problem: "The server is shutting down." } },
};

async function inTime(isReady: () => Promise<Readiness>, log: Log): Promise<Readiness> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<Readiness>((resolve) => {
    timer = setTimeout(() => resolve(failed(`No answer within ${PATIENCE} ms.`)), PATIENCE);
  });
  try {
    return await Promise.race([isReady(), late]);
  } catch (error) {
    log.error({ err: error }, "readiness check threw");
    return failed("The check itself failed; see the log.");
  } finally {
    clearTimeout(timer);
  }
}

const failed = (problem: string): Readiness => ({ ready: false, checks: { readiness: { ok: false, problem } } });
