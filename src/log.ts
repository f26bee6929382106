import { pino, type DestinationStream, type Logger } from "pino";
import type { LogLevel } from "./config.js";
import { OperatorError } from "./domain/operator-error.js";

export type Log = Logger;

/**
 * One JSON line per event. Request bodies, variables and query strings are never logged, so no child's name gets in
 * by our hand; of an error only its kind, codes and places are kept, because drivers and parsers quote what they were given.
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

/**
 * Messages are left out: "invalid input syntax: \"Wren\"", "Key (name)=(Wren) already exists" and "Unexpected token in Wren" are
 * what databases and parsers write. The place in our source tells which fault it was.
 */
function plainError(error: unknown): Record<string, unknown> {
  if (!(error instanceof Error)) return { type: typeof error };
  const cause = error.cause === undefined ? {} : { cause: plainError(error.cause) };
  const message = error instanceof OperatorError ? { message: error.message } : {};
  return { type: error.name, ...message, ...factsOf(error), stack: framesOf(error), ...cause };
}

/** What drivers say about the place of a fault: codes and names of the schema, never values. */
const FACTS = [
  "code",
  "originalCode",
  "severity",
  "schema_name",
  "table_name",
  "column_name",
  "constraint_name",
  "routine",
  "syscall",
] as const;

function factsOf(error: object): Record<string, string> {
  const found = Object.entries(error).filter(
    ([key, value]) =>
      (FACTS as readonly string[]).includes(key) && typeof value === "string" && /^[\w.]{1,80}$/.test(value),
  );
  return Object.fromEntries(found);
}

/** The lines that name a place in a file; what stands before them repeats the message, however many lines that has. */
const framesOf = ({ stack = "", message }: Error): string =>
  stack
    .replace(message, "")
    .split("\n")
    .filter((line) => /^\s+at .*:\d+:\d+\)?$/.test(line))
    .map((line) => line.trim())
    .join("\n");

/** An error in a few words for a line of text: its kind and its code, or its message where that is for operators. */
export function briefly(error: unknown): string {
  const { type, message, code } = plainError(error);
  return String(message ?? code ?? type);
}

/** An error nobody caught ends the process, as without this, but through the log: what it says is nobody's business. */
export function endOnFault(log: Log): void {
  process.on("uncaughtException", (error) => {
    log.fatal({ err: error }, "an error that nobody caught");
    process.exit(1);
  });
}
