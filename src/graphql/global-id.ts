const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

/**
 * The opaque id a client sees: base64url of `Type:uuid`.
 * @example globalId("Box", "3f2b8c1e-0000-4000-8000-000000000001") // "Qm94OjNmMmI4YzFlLTAwMDAtNDAwMC04MDAwLTAwMDAwMDAwMDAwMQ"
 */
export const globalId = (type: string, uuid: string): string =>
  Buffer.from(`${type}:${uuid}`, "utf8").toString("base64url");

/**
 * The database id behind a client's id of this type; null for a malformed id or one of another type, so that both
 * simply find nothing.
 */
export function localId(type: string, id: string): string | null {
  const text = Buffer.from(id, "base64url").toString("utf8");
  const uuid = text.startsWith(`${type}:`) ? text.slice(type.length + 1) : "";
  // Node's decoder skips what it does not know: only the exact spelling we would have written is an id.
  return UUID.test(uuid) && globalId(type, uuid) === id ? uuid : null;
}
