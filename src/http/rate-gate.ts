import { STATUS_CODES, type ServerResponse } from "node:http";
import { GraphQLError } from "graphql";
import { noticeOf, type RateNotice, type RateRefusal } from "../app/rate-limits.js";
import { answerJson } from "./answer.js";

const extensionsOf = ({ code, retryAfterSeconds }: RateNotice) => ({ code, retryAfterSeconds });
const headersOf = ({ retryAfterSeconds }: RateNotice) => ({ "retry-after": String(retryAfterSeconds) });

/** As an error of an operation, with what client and transport need to know. */
export function rateError(refusal: RateRefusal): GraphQLError {
  const notice = noticeOf(refusal);
  const headers = new Map(Object.entries(headersOf(notice)));
  // The server under us takes a Map, and the explorer's library declares the same extension as a plain object.
  const http = { status: notice.status, headers: headers as unknown as Record<string, string> };
  return new GraphQLError(notice.message, { extensions: { ...extensionsOf(notice), http } });
}

/** The answer to one whose operation is not even read. */
export function answerRate(res: ServerResponse, refusal: RateRefusal, headers: Readonly<Record<string, string>>): void {
  const notice = noticeOf(refusal);
  const errors = [{ message: notice.message, extensions: extensionsOf(notice) }];
  answerJson(res, notice.status, { errors }, { ...headers, ...headersOf(notice) });
}

/** The same before a connection became a WebSocket, when there is no response to write to. */
export function refusedUpgrade(refusal: RateRefusal): string {
  const { status, retryAfterSeconds } = noticeOf(refusal);
  return (
    `HTTP/1.1 ${status} ${STATUS_CODES[status] ?? ""}\r\nRetry-After: ${retryAfterSeconds}\r\n` +
    "Content-Length: 0\r\nConnection: close\r\n\r\n"
  );
}
