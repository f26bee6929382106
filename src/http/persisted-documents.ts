import { readFileSync } from "node:fs";
import { fail, ok, type Result } from "../domain/result.js";

/** Which documents are run: `any`, or only those on record. */
export type DocumentsAllowed = "any" | "persisted";

export type DocumentRefusal = {
  readonly code: "PERSISTED_DOCUMENT_NOT_FOUND" | "PERSISTED_DOCUMENTS_ONLY" | "BAD_REQUEST";
  readonly message: string;
};

/** What a request says of its document. */
export type DocumentAsked = { readonly query?: unknown; readonly documentId?: unknown };

export type PersistedDocuments = {
  /** The text to run, as it was sent or as it stands on record. */
  textOf(asked: DocumentAsked): Result<string, DocumentRefusal>;
};

const FILES = ["generated/persisted-documents.json", "operations/shipped-documents.json"];

/**
 * Texts by the lower-case hex of their SHA-256: the operations of shared/operations, and all that ever went out with a client,
 * for an old app keeps asking for what it knows.
 */
export const readPersistedDocuments = (): ReadonlyMap<string, string> =>
  new Map(
    FILES.flatMap((file) => {
      const text = readFileSync(new URL(`../../shared/${file}`, import.meta.url), "utf8");
      return Object.entries(JSON.parse(text) as Record<string, string>);
    }),
  );

/**
 * Persisted documents as the working draft of GraphQL over HTTP proposes them (its appendix "Persisted Documents"): `documentId`
 * in place of `query`, a SHA256 hex document identifier.
 */
export function createPersistedDocuments(
  allowed: DocumentsAllowed,
  texts: ReadonlyMap<string, string>,
): PersistedDocuments {
  return {
    textOf({ query, documentId }) {
      if (documentId == null) {
        if (typeof query !== "string" || query === "")
          return refuse("BAD_REQUEST", "The parameter query is missing: it holds the GraphQL document as text.");
        if (allowed === "any") return ok(query);
        return refuse(
          "PERSISTED_DOCUMENTS_ONLY",
          "Only documents on record are run here. Send documentId in place of query.",
        );
      }
      if (typeof documentId !== "string") return refuse("BAD_REQUEST", "documentId must be text.");
      if (query != null && query !== "") return refuse("BAD_REQUEST", "Send documentId or query, not both.");
      const text = texts.get(/^sha256:([0-9a-f]{64})$/.exec(documentId)?.[1] ?? "");
      return text === undefined
        ? refuse(
            "PERSISTED_DOCUMENT_NOT_FOUND",
            `No such document is on record. Send sha256: and 64 hexadecimal characters of an operation this server ships with${allowed === "any" ? ", or its text as query" : ""}.`,
          )
        : ok(text);
    },
  };
}

const refuse = (code: DocumentRefusal["code"], message: string): Result<never, DocumentRefusal> =>
  fail({ code, message });
