/** An error as the server writes it (GraphQL specification, section 7.1.2). */
export interface ErrorSeen {
  readonly message: string;
  readonly path?: readonly (string | number)[];
  readonly extensions?: Readonly<Record<string, unknown>>;
}

/** Why an operation has no answer. What the server refuses on purpose is an answer: a member of the result, with its sentence. */
export type Trouble =
  /** Nothing was sent: a path inside the variables, and what to send instead. */
  | { readonly kind: "VARIABLES"; readonly issues: readonly { readonly path: string; readonly fix: string }[] }
  /** No connection, or it was lost each time. Of a mutation it is not known whether it was done: send it again with the same key. */
  | { readonly kind: "UNREACHABLE" }
  /** 429, 5xx or a fault of the server's own, each time. Seconds to stay away, where the server said so. */
  | { readonly kind: "BUSY"; readonly status: number; readonly retryAfterSeconds: number | null }
  /** The token was refused, and the one after it. */
  | { readonly kind: "TOKEN"; readonly reason: string }
  /** The document or its variables were refused, or a part of the answer failed. */
  | { readonly kind: "REFUSED"; readonly errors: readonly ErrorSeen[] }
  /** What answers there does not speak GraphQL, or not this subprotocol. */
  | { readonly kind: "PROTOCOL"; readonly status: number; readonly reason: string };

const sentenceOf = (trouble: Trouble): string => {
  switch (trouble.kind) {
    case "VARIABLES":
      return `Not sent: ${trouble.issues.map(({ path, fix }) => `${path}: ${fix}`).join("; ")}`;
    case "UNREACHABLE":
      return "The server cannot be reached.";
    case "BUSY":
      return `The server does not answer now (${trouble.status}).${trouble.retryAfterSeconds === null ? "" : ` Try again in ${trouble.retryAfterSeconds} s.`}`;
    case "TOKEN":
      return `Sign in again: ${trouble.reason}`;
    case "REFUSED":
      return trouble.errors.map(({ message }) => message).join("; ");
    case "PROTOCOL":
      return `No GraphQL is spoken there (${trouble.status} ${trouble.reason}).`;
  }
};

export class ClientError extends Error {
  constructor(
    readonly trouble: Trouble,
    cause?: unknown,
  ) {
    super(sentenceOf(trouble), cause === undefined ? {} : { cause });
    this.name = "ClientError";
  }
}

/** Codes of errors that may be gone the next time. */
const PASSING = new Set(["INTERNAL", "RATE_LIMITED"]);
export const mayPass = (errors: readonly ErrorSeen[]): boolean =>
  errors.length > 0 && errors.every(({ extensions }) => PASSING.has(String(extensions?.["code"])));
