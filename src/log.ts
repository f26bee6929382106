import { pino, type DestinationStream, type Logger } from "pino";
import type { LogLevel } from "./config.js";

export type Log = Logger;

/**
 * One JSON line per event. Request bodies, variables and query strings are never logged, so no child's name gets in
 * by our hand; of an error only type, code, message and stack are kept, because database drivers hang rows and
 * parameters on theirs.
 */
export function createLog(level: LogLevel, destination?: DestinationStream): Log {
  const options = {
    level,
    base: null,
    timestamp: pino.stdTimeFunctions.isoTime,
    formatters: { level: (label: string) => ({ level: label }) },
    serializers: { err: plainError },
    redact: {
      paths: ["authorization", "*.authorization", "*.headers.authorization", "token", "*.token"],
      censor: "[hidden]",
    },
  };
  return destination === undefined ? pino(options) : pino(options, destination);
}

/** A logger whose every line carries the request's id, so that a quoted id finds them all. */
export const requestLog = (log: Log, requestId: string): Log => log.child({ requestId });

function plainError(error: unknown): Record<string, unknown> {
  if (!(error instanceof Error)) return { type: typeof error, message: String(error) };
  const code = "code" in error && typeof error.code === "string" ? { code: error.code } : {};
  const cause = error.cause === undefined ? {} : { cause: plainError(error.cause) };
  return { type: error.name, message: error.message, stack: error.stack, ...code, ...cause };
}
