import { createHmac } from "node:crypto";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { mkdtemp, readdir, readFile, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, describe, expect, it, jest } from "@jest/globals";
import {
  CompactEncrypt,
  createLocalJWKSet,
  exportJWK,
  exportSPKI,
  generateKeyPair,
  SignJWT,
  type CryptoKey,
  type JSONWebKeySet,
  type JWTHeaderParameters,
  type JWTPayload,
} from "jose";
import { readConfig } from "../../src/config.js";
import { createDevIssuer } from "../../src/http/dev-issuer.js";
import { createVerifier, remoteKeys, type Verify } from "../../src/http/tokens.js";
import { ANN, post, startServer, stopServers } from "./harness.js";

const ISSUER = "https://login.example.org";
const config = readConfig({ OIDC_ISSUER: ISSUER });
const now = () => Math.floor(Date.now() / 1000);
const good = (): JWTPayload => ({ iss: ISSUER, aud: "noonpail", sub: "ann", exp: now() + 600 });
const part = (value: unknown) => Buffer.from(JSON.stringify(value)).toString("base64url");
const HEADER = { alg: "ES256", kid: "first" };

let jwks: JSONWebKeySet;
const ourKeys = () => createLocalJWKSet(jwks);
/** The signature of our first key over any text, for headers that no library would write. */
const signed = (text: string) =>
  crypto.subtle.sign({ name: "ECDSA", hash: "SHA-256" }, ours.privateKey, new TextEncoder().encode(text));

let verify: Verify;
let ours: { privateKey: CryptoKey; publicKey: CryptoKey };
let theirs: { privateKey: CryptoKey; publicKey: CryptoKey };
let rsa: { privateKey: CryptoKey; publicKey: CryptoKey };
/** Who wants to sign in as somebody else, with a key of their own. */
let mallory: { privateKey: CryptoKey; publicKey: CryptoKey };
let edwards: { privateKey: CryptoKey; publicKey: CryptoKey };

beforeAll(async () => {
  [ours, theirs, rsa, edwards, mallory] = await Promise.all([
    generateKeyPair("ES256", { extractable: true }),
    generateKeyPair("ES256"),
    generateKeyPair("RS256", { extractable: true }),
    generateKeyPair("EdDSA", { extractable: true }),
    generateKeyPair("ES256", { extractable: true }),
  ]);
  const keys = [
    { ...(await exportJWK(ours.publicKey)), kid: "first", alg: "ES256" },
    { ...(await exportJWK(rsa.publicKey)), kid: "second", alg: "RS256" },
    { ...(await exportJWK(edwards.publicKey)), kid: "third", alg: "EdDSA" },
  ];
  jwks = { keys };
  verify = createVerifier(config, ourKeys());
});
afterAll(stopServers);

const sign = (payload: JWTPayload, key = ours.privateKey, header: JWTHeaderParameters = HEADER) =>
  new SignJWT(payload).setProtectedHeader(header).sign(key);
const kindOf = async (token: string) => {
  const result = await verify(`Bearer ${token}`);
  return result.ok ? result.value.subject : result.error.kind;
};

// RFC 8725, JSON Web Token Best Current Practices (https://www.rfc-editor.org/rfc/rfc8725): section in brackets.
describe("a token", () => {
  it("is accepted when signed by the issuer for us with any of the three algorithms", async () => {
    expect(await kindOf(await sign(good()))).toBe("ann");
    expect(await kindOf(await sign(good(), rsa.privateKey, { alg: "RS256", kid: "second" }))).toBe("ann");
    expect(await kindOf(await sign(good(), edwards.privateKey, { alg: "EdDSA", kid: "third" }))).toBe("ann");
    const result = await verify(`bearer ${await sign({ ...good(), exp: 4_000_000_000 })}`);
    expect(result).toEqual({
      ok: true,
      value: { subject: "ann", name: null, expiresAt: new Date("2096-10-02T07:06:40Z") },
    });
  });

  it("without a signature is refused [2.1, 3.1]", async () => {
    for (const alg of ["none", "None", "nOnE"])
      expect(await kindOf(`${part({ alg })}.${part(good())}.`)).toBe("AlgorithmRefused");
  });

  it("signed with the public key used as a shared secret is refused [2.1, 3.1]", async () => {
    for (const secret of [await exportSPKI(rsa.publicKey), JSON.stringify(await exportJWK(ours.publicKey))]) {
      const open = `${part({ alg: "HS256", kid: "second" })}.${part(good())}`;
      const token = `${open}.${createHmac("sha256", secret).update(open).digest("base64url")}`;
      expect(await kindOf(token)).toBe("AlgorithmRefused");
    }
  });

  it("signed by another key under our key's name is refused [3.3]", async () => {
    expect(await kindOf(await sign(good(), theirs.privateKey))).toBe("BadSignature");
    expect(await kindOf(await sign(good(), theirs.privateKey, { alg: "ES256", kid: "unheard-of" }))).toBe(
      "BadSignature",
    );
  });

  it("signed by one of our keys under another's name is refused [3.1, 3.3]", async () => {
    for (const [key, header] of [
      [ours.privateKey, { alg: "ES256", kid: "second" }],
      [ours.privateKey, { alg: "ES256", kid: "third" }],
      [rsa.privateKey, { alg: "RS256", kid: "first" }],
      [edwards.privateKey, { alg: "EdDSA", kid: "second" }],
      // Names that would be a path or a statement, were they looked up in a file or a table [3.10].
      [theirs.privateKey, { alg: "ES256", kid: "../../../dev/null" }],
      [theirs.privateKey, { alg: "ES256", kid: "first' or '1'='1" }],
    ] as const)
      expect([header, await kindOf(await sign(good(), key, header))]).toEqual([header, "BadSignature"]);
  });

  it("that brings its own key, or says where it lies, gains nothing, and nobody goes there [3.10; RFC 7515, 4.1.2 to 4.1.6]", async () => {
    const asked: string[] = [];
    const brought = { ...(await exportJWK(mallory.publicKey)), kid: "first" };
    const elsewhere = createServer((req, res) => {
      asked.push(req.url ?? "");
      res.end(JSON.stringify({ keys: [brought] }));
    });
    await new Promise<void>((resolve) => elsewhere.listen(0, "127.0.0.1", resolve));
    const address = `http://127.0.0.1:${(elsewhere.address() as AddressInfo).port}/keys`;
    for (const header of [
      { ...HEADER, jwk: brought },
      { alg: "ES256", jwk: brought },
      { ...HEADER, jku: address },
      { ...HEADER, x5u: address },
      { ...HEADER, x5c: [Buffer.from("no certificate").toString("base64")] },
    ])
      expect(await kindOf(await sign(good(), mallory.privateKey, header))).toBe("BadSignature");
    expect(asked).toEqual([]);
    await new Promise((resolve) => elsewhere.close(resolve).closeAllConnections());
  });

  it("with an empty or all-zero signature is refused [3.3, 3.4]", async () => {
    const [header, body] = (await sign(good())).split(".");
    for (const signature of [
      "",
      "A".repeat(86),
      Buffer.alloc(64).toString("base64url"),
      Buffer.alloc(63).toString("base64url"),
    ])
      expect(await kindOf(`${header}.${body}.${signature}`)).toBe("BadSignature");
  });

  it("with a critical extension we do not know is refused, and so is an unencoded payload [RFC 7515, 4.1.11; RFC 7797]", async () => {
    for (const header of [
      { ...HEADER, crit: ["exp"], exp: 1 },
      { ...HEADER, crit: ["urn:example:new"], "urn:example:new": true },
      { ...HEADER, crit: [] },
      { ...HEADER, crit: "exp" },
      { ...HEADER, crit: ["b64"], b64: false },
    ]) {
      const open = `${part(header)}.${part(good())}`;
      const token = `${open}.${Buffer.from(await signed(open)).toString("base64url")}`;
      expect([header, await kindOf(token)]).toEqual([header, "MalformedToken"]);
    }
  });

  it("encrypted, compressed or one inside another is refused [2.3, 2.4, 3.3, 3.6]", async () => {
    const inner = await sign(good());
    const { publicKey } = await generateKeyPair("RSA-OAEP-256");
    const encrypted = await new CompactEncrypt(new TextEncoder().encode(inner))
      .setProtectedHeader({ alg: "RSA-OAEP-256", enc: "A256GCM", cty: "JWT" })
      .encrypt(publicKey);
    expect(encrypted.split(".")).toHaveLength(5);
    expect(await kindOf(encrypted)).toBe("MalformedToken");
    // The same with the header of a compressed one.
    const [, ...rest] = encrypted.split(".");
    const zipped = [part({ alg: "RSA-OAEP-256", enc: "A256GCM", zip: "DEF" }), ...rest].join(".");
    expect(await kindOf(zipped)).toBe("MalformedToken");
    // A signature around a whole token instead of around claims.
    const open = `${part({ ...HEADER, cty: "JWT" })}.${Buffer.from(inner).toString("base64url")}`;
    expect(await kindOf(`${open}.${Buffer.from(await signed(open)).toString("base64url")}`)).toBe("MalformedToken");
  });

  it("longer than 8 kB is refused before anything is worked out, however good its signature (common practice)", async () => {
    const long = await sign({ ...good(), padding: "x".repeat(7_000) });
    expect(long.length).toBeGreaterThan(8_192);
    expect(await kindOf(long)).toBe("MalformedToken");
    const broken: Verify = createVerifier(config, () => Promise.reject(new Error("keys were asked for")));
    expect(await broken(`Bearer ${long}`)).toEqual({ ok: false, error: { kind: "MalformedToken" } });
  });

  it("changed after signing is refused [3.3]", async () => {
    const [header, , signature] = (await sign(good())).split(".");
    expect(await kindOf(`${header}.${part({ ...good(), sub: "bob" })}.${signature}`)).toBe("BadSignature");
  });

  it("from another issuer, or for another audience, is refused [3.8, 3.9]", async () => {
    expect(await kindOf(await sign({ ...good(), iss: "https://login.example.com" }))).toBe("WrongIssuer");
    expect(await kindOf(await sign({ ...good(), iss: `${ISSUER}/` }))).toBe("WrongIssuer");
    expect(await kindOf(await sign({ ...good(), aud: ["somewhere-else"] }))).toBe("WrongAudience");
    expect(await kindOf(await sign({ ...good(), aud: ["somewhere-else", "noonpail"] }))).toBe("ann");
    const { aud: _aud, ...without } = good();
    expect(await kindOf(await sign(without))).toBe("WrongAudience");
  });

  it("is refused once it has expired, or before its time, give or take five seconds", async () => {
    expect(await kindOf(await sign({ ...good(), exp: now() - 2 }))).toBe("ann");
    expect(await kindOf(await sign({ ...good(), exp: now() - 10 }))).toBe("ExpiredToken");
    expect(await kindOf(await sign({ ...good(), nbf: now() + 60 }))).toBe("NotYetValid");
  });

  it("must say whom it is about and when it ends [3.8]", async () => {
    const { sub: _sub, ...nobody } = good();
    expect(await kindOf(await sign(nobody))).toBe("MalformedToken");
    expect(await kindOf(await sign({ ...good(), sub: "" }))).toBe("MalformedToken");
    const { exp: _exp, ...endless } = good();
    expect(await kindOf(await sign(endless))).toBe("MalformedToken");
  });

  it("names a subject that anybody could have, and times that are numbers [3.8; OpenID Connect Core 1.0, 2]", async () => {
    expect(await kindOf(await sign({ ...good(), sub: "x".repeat(255) }))).toBe("x".repeat(255));
    expect(await kindOf(await sign({ ...good(), sub: "x".repeat(256) }))).toBe("MalformedToken");
    for (const odd of [
      { sub: 7 },
      { sub: ["ann"] },
      { exp: "4000000000" },
      { nbf: "0" },
      { aud: 7 },
      { iss: [ISSUER] },
    ])
      expect([odd, await kindOf(await sign({ ...good(), ...odd } as unknown as JWTPayload))]).not.toEqual([odd, "ann"]);
  });

  it("hands on the name it carries, where that is text", async () => {
    for (const [name, seen] of [
      ["Ann Lark", "Ann Lark"],
      [7, null],
      [undefined, null],
    ])
      expect(
        await verify(`Bearer ${await sign({ ...good(), ...(name === undefined ? {} : { name }) })}`),
      ).toMatchObject({
        value: { name: seen },
      });
  });

  it("must be a token", async () => {
    const missing = { ok: false, error: { kind: "MissingToken" } };
    expect(await verify(undefined)).toEqual(missing);
    expect(await verify("  ")).toEqual(missing);
    const malformed = { ok: false, error: { kind: "MalformedToken" } };
    for (const value of [
      "Bearer",
      "Bearer a.b",
      "Basic YTpi",
      "Bearer a.b.c.d.e",
      `Bearer ${"a".repeat(9000)}.b.c`,
      "Bearer ...",
    ])
      expect([value, await verify(value)]).toEqual([value, malformed]);
    expect(await kindOf(`${part(HEADER)}.${part("text")}.AAAA`)).not.toBe("ann");
    expect(await kindOf(`AAAA.${part(good())}.AAAA`)).toBe("MalformedToken");
  });
});

describe("a token of another kind [RFC 8725, 2.8, 3.11, 3.12]", () => {
  const asId = readConfig({ OIDC_ISSUER: ISSUER, OIDC_TOKENS: "id", OIDC_AUDIENCE: "app" });
  const kindFor = async (own: typeof config, payload: JWTPayload, typ?: string) => {
    const token = await sign(payload, ours.privateKey, { ...HEADER, ...(typ === undefined ? {} : { typ }) });
    const result = await createVerifier(own, ourKeys())(`Bearer ${token}`);
    return result.ok ? result.value.subject : result.error.kind;
  };

  it("access tokens are taken with their own type or none [RFC 9068, 2.1 and 4], and nothing typed otherwise", async () => {
    for (const typ of [undefined, "JWT", "jwt", "at+jwt", "AT+JWT", "application/at+jwt"])
      expect([typ, await kindFor(config, good(), typ)]).toEqual([typ, "ann"]);
    for (const typ of [
      "logout+jwt",
      "dpop+jwt",
      "secevent+jwt",
      "oauth-authz-req+jwt",
      "token-introspection+jwt",
      "JOSE",
      "",
    ])
      expect([typ, await kindFor(config, good(), typ)]).toEqual([typ, "WrongKind"]);
  });

  it("an ID token is no access token [OpenID Connect Core 1.0, 2, 3.1.3.6, 3.3.2.11]", async () => {
    for (const claims of [
      { at_hash: "77QmUPtjPfzWtF2AnpK9RQ" },
      { c_hash: "LDktKdoQak3Pk0cnXxCltA" },
      { nonce: "n-0S6_WzA2Mj" },
    ])
      expect(await kindFor(config, { ...good(), ...claims }, "JWT")).toBe("WrongKind");
    // Some issuers repeat the nonce in access tokens, which say what they are for.
    expect(await kindFor(config, { ...good(), nonce: "n-0S6_WzA2Mj", scope: "openid" })).toBe("ann");
    expect(await kindFor(config, { ...good(), nonce: "n-0S6_WzA2Mj", client_id: "app" })).toBe("ann");
  });

  it("a logout token or another security event signs nobody in [OpenID Connect Back-Channel Logout 1.0, 2.4; RFC 8417, 2.2]", async () => {
    const event = { ...good(), events: { "http://schemas.openid.net/event/backchannel-logout": {} } };
    expect(await kindFor(config, event)).toBe("WrongKind");
    expect(await kindFor(asId, { ...event, aud: "app" })).toBe("WrongKind");
  });

  it("where ID tokens sign in, access tokens do not, and the client is the audience [OpenID Connect Core 1.0, 3.1.3.7]", async () => {
    const id = { ...good(), aud: "app", nonce: "n-0S6_WzA2Mj", at_hash: "77QmUPtjPfzWtF2AnpK9RQ" };
    expect(await kindFor(asId, id)).toBe("ann");
    expect(await kindFor(asId, { ...id, azp: "app" }, "JWT")).toBe("ann");
    expect(await kindFor(asId, { ...id, aud: ["app", "another"], azp: "app" })).toBe("ann");
    expect(await kindFor(asId, id, "at+jwt")).toBe("WrongKind");
    expect(await kindFor(asId, { ...id, azp: "another" })).toBe("WrongClient");
    expect(await kindFor(asId, { ...id, aud: ["app", "another"] })).toBe("WrongClient");
    expect(await kindFor(asId, { ...id, aud: "another", azp: "app" })).toBe("WrongAudience");
  });

  it("made for an application that is not ours is refused where ours are named [2.7; RFC 9068, 2.2]", async () => {
    const own = readConfig({ OIDC_ISSUER: ISSUER, OIDC_CLIENTS: "family-app, school-app" });
    expect(await kindFor(own, { ...good(), client_id: "family-app" })).toBe("ann");
    expect(await kindFor(own, { ...good(), azp: "school-app" })).toBe("ann");
    for (const claims of [
      {},
      { client_id: "another" },
      { azp: "another" },
      { client_id: "family-app", azp: "another" },
      { azp: ["family-app"], client_id: 7 },
    ])
      expect(await kindFor(own, { ...good(), ...claims })).toBe("WrongClient");
    expect(await kindFor(config, { ...good(), azp: "another" })).toBe("ann");
  });
});

describe("over HTTP", () => {
  it("no token means a stranger, whom the resolvers turn away where they must", async () => {
    const server = await startServer();
    expect((await post(server, { query: "{ me }" })).body).toEqual({ data: { me: null } });
    const turnedAway = await post(server, { query: "{ whoami }" });
    expect(turnedAway.status).toBe(200);
    expect(turnedAway.body.errors?.[0]?.extensions["code"]).toBe("UNAUTHENTICATED");
  });

  it("a refused token is 401 with the reason and a challenge (RFC 6750, section 3), and runs nothing", async () => {
    const server = await startServer();
    const answer = await post(server, { query: "mutation { count }" }, { authorization: "Bearer a.b.c" });
    expect(answer.status).toBe(401);
    expect(answer.body.errors?.[0]?.extensions).toEqual({ code: "UNAUTHENTICATED", reason: "MalformedToken" });
    expect(answer.headers.get("www-authenticate")).toMatch(
      /^Bearer realm="noonpail", error="invalid_token", error_description="[^"]+"$/,
    );
    expect(server.opened).toHaveLength(0);
  });

  it("keys that cannot be fetched are our trouble, not the caller's", async () => {
    const server = await startServer({
      verify: () => () => Promise.reject(new Error("connect ECONNREFUSED 10.0.0.7")),
    });
    const answer = await post(server, { query: "{ me }" }, { authorization: "Bearer a.b.c" });
    expect([answer.status, answer.body.errors?.[0]?.extensions["code"]]).toEqual([500, "INTERNAL"]);
    expect(JSON.stringify(answer.body)).not.toContain("10.0.0.7");
  });
});

describe("the keys of an outside issuer", () => {
  afterEach(() => void jest.restoreAllMocks());
  const serve = async (configuration: (base: string) => unknown, published: JSONWebKeySet = jwks) => {
    const asked: string[] = [];
    const outside = createServer((req, res) => {
      asked.push(req.url ?? "");
      const base = `http://127.0.0.1:${(outside.address() as AddressInfo).port}`;
      res.setHeader("content-type", "application/json");
      res.end(JSON.stringify(req.url === "/keys" ? published : configuration(base)));
    });
    await new Promise<void>((resolve) => outside.listen(0, "127.0.0.1", resolve));
    const issuer = `http://127.0.0.1:${(outside.address() as AddressInfo).port}`;
    return { issuer, asked, stop: () => new Promise((resolve) => outside.close(resolve).closeAllConnections()) };
  };

  it("are found through its openid-configuration, once for many tokens", async () => {
    const outside = await serve((base) => ({ issuer: base, jwks_uri: `${base}/keys` }));
    const own = readConfig({ OIDC_ISSUER: outside.issuer });
    const check = createVerifier(own, remoteKeys(own));
    for (let n = 0; n < 3; n++)
      expect(await check(`Bearer ${await sign({ ...good(), iss: outside.issuer })}`)).toMatchObject({ ok: true });
    expect(outside.asked).toEqual(["/.well-known/openid-configuration", "/keys"]);
    await outside.stop();
  });

  it("change: a new one is asked for when first seen, a withdrawn one is forgotten (OpenID Connect Core 1.0, 10.1.1)", async () => {
    const published: JSONWebKeySet = { keys: [{ ...(await exportJWK(ours.publicKey)), kid: "first", alg: "ES256" }] };
    const outside = await serve((base) => ({ issuer: base, jwks_uri: `${base}/keys` }), published);
    const own = readConfig({ OIDC_ISSUER: outside.issuer });
    const check = createVerifier(own, remoteKeys(own));
    const claims = () => ({ ...good(), iss: outside.issuer });
    const older = `Bearer ${await sign(claims())}`;
    const newer = `Bearer ${await sign(claims(), rsa.privateKey, { alg: "RS256", kid: "second" })}`;
    expect(await check(older)).toMatchObject({ ok: true });
    published.keys = [{ ...(await exportJWK(rsa.publicKey)), kid: "second", alg: "RS256" }];
    // Names nobody knows do not make us ask again and again.
    for (let n = 0; n < 5; n++) expect(await check(newer)).toMatchObject({ error: { kind: "BadSignature" } });
    expect(outside.asked.filter((path) => path === "/keys")).toHaveLength(1);
    const start = Date.now();
    const clock = jest.spyOn(Date, "now").mockImplementation(() => start + 31_000);
    expect(await check(newer)).toMatchObject({ ok: true });
    expect(await check(older)).toMatchObject({ error: { kind: "BadSignature" } });
    expect(outside.asked.filter((path) => path === "/keys")).toHaveLength(2);
    clock.mockRestore();
    await outside.stop();
  });

  it("that were withdrawn without a successor are forgotten after ten minutes", async () => {
    const published: JSONWebKeySet = { keys: [{ ...(await exportJWK(ours.publicKey)), kid: "first", alg: "ES256" }] };
    const outside = await serve((base) => ({ issuer: base, jwks_uri: `${base}/keys` }), published);
    const own = readConfig({ OIDC_ISSUER: outside.issuer });
    const check = createVerifier(own, remoteKeys(own));
    const token = `Bearer ${await sign({ ...good(), iss: outside.issuer, exp: now() + 3600 })}`;
    expect(await check(token)).toMatchObject({ ok: true });
    published.keys = [];
    expect(await check(token)).toMatchObject({ ok: true });
    const start = Date.now();
    jest.spyOn(Date, "now").mockImplementation(() => start + 601_000);
    expect(await check(token)).toMatchObject({ error: { kind: "BadSignature" } });
    await outside.stop();
  });

  it("are not taken from a configuration that speaks for somebody else (OpenID Connect Discovery 1.0, 4.3)", async () => {
    const outside = await serve((base) => ({ issuer: "https://login.example.com", jwks_uri: `${base}/keys` }));
    const own = readConfig({ OIDC_ISSUER: outside.issuer });
    const token = await sign({ ...good(), iss: outside.issuer });
    await expect(createVerifier(own, remoteKeys(own))(`Bearer ${token}`)).rejects.toThrow("Check OIDC_ISSUER");
    expect(outside.asked).not.toContain("/keys");
    await outside.stop();
  });
});

describe("the development issuer", () => {
  const people = [{ subject: ANN, name: "Ann", about: "packs" }];
  const folders: string[] = [];
  const folder = async () => {
    const made = await mkdtemp(join(tmpdir(), "noonpail-issuer-"));
    folders.push(made);
    return made;
  };
  afterAll(() => Promise.all(folders.map((made) => rm(made, { recursive: true }))));

  it("is refused in production, and beside an outside issuer", async () => {
    const production = readConfig({ NODE_ENV: "production", OIDC_ISSUER: ISSUER });
    await expect(createDevIssuer(production, people)).rejects.toThrow("refused in production");
    await expect(createDevIssuer(config, people)).rejects.toThrow("outside issuer");
  });

  it("signs for demo people only, for eight hours", async () => {
    const own = readConfig({ DATA_DIR: await folder() });
    const issuer = await createDevIssuer(own, people);
    expect(await issuer.issueToken("stranger")).toEqual({ ok: false, error: { kind: "UnknownPerson", known: [ANN] } });
    const token = await issuer.issueToken(ANN);
    if (!token.ok) throw new Error("Ann is a demo person");
    expect(token.value).toMatchObject({ token_type: "Bearer", expires_in: 28_800 });
    const read = await createVerifier(own, issuer.keys)(`Bearer ${token.value.access_token}`);
    if (!read.ok) throw new Error(read.error.kind);
    expect(read.value.subject).toBe(ANN);
    expect(Math.abs(read.value.expiresAt.getTime() - Date.now() - 28_800_000)).toBeLessThan(10_000);
  });

  it("keeps its key, so that a token outlives a restart, and nobody else may read it", async () => {
    const own = readConfig({ DATA_DIR: await folder() });
    const [first, second] = await Promise.all([createDevIssuer(own, people), createDevIssuer(own, people)]);
    const later = await createDevIssuer(own, people);
    for (const before of [first, second]) {
      const token = await before.issueToken(ANN);
      if (!token.ok) throw new Error("Ann is a demo person");
      expect(await createVerifier(own, later.keys)(`Bearer ${token.value.access_token}`)).toMatchObject({ ok: true });
    }
    const files = await readdir(own.dataDir);
    expect(files).toEqual(["development-issuer-key.json"]);
    expect((await stat(join(own.dataDir, files[0] ?? ""))).mode & 0o077).toBe(0);
    const secret = (JSON.parse(await readFile(join(own.dataDir, files[0] ?? ""), "utf8")) as { d: string }).d;
    expect(secret).toBeTruthy();
    expect(JSON.stringify([later.jwks, later.configuration])).not.toContain(secret);
  });

  it("says how to mend a damaged key file", async () => {
    const own = readConfig({ DATA_DIR: await folder() });
    await writeFile(join(own.dataDir, "development-issuer-key.json"), "{");
    await expect(createDevIssuer(own, people)).rejects.toThrow(/Delete it/);
  });

  it("hands out tokens over HTTP, and lists who may have one", async () => {
    const server = await startServer();
    const ask = (body: string, type = "application/json") =>
      fetch(`${server.url}/dev/token`, { method: "POST", headers: { "content-type": type }, body });
    const answer = (await (await ask(JSON.stringify({ person: ANN }))).json()) as { access_token: string };
    const mine = await post(server, { query: "{ me }" }, { authorization: `Bearer ${answer.access_token}` });
    expect(mine.body).toEqual({ data: { me: ANN } });
    for (const refused of [
      await ask('{"person":"mallory"}'),
      await ask("{"),
      await ask(JSON.stringify({ person: ANN }), "text/plain"),
    ]) {
      expect(refused.status).toBe(400);
      expect(await refused.json()).toMatchObject({ people: [{ person: ANN, name: "Ann" }] });
    }
    expect((await fetch(`${server.url}/dev/token`)).status).toBe(405);
    const found: unknown = await (await fetch(`${server.url}/.well-known/openid-configuration`)).json();
    expect(found).toMatchObject({ issuer: server.config.tokens.issuer });
    expect(await (await fetch(`${server.url}/dev/jwks.json`)).json()).toMatchObject({
      keys: [{ kty: "EC", use: "sig" }],
    });
  });

  it("is not served in production", async () => {
    const server = await startServer({ env: { NODE_ENV: "production", OIDC_ISSUER: ISSUER } });
    for (const path of ["/dev/token", "/dev/jwks.json", "/.well-known/openid-configuration", "/explorer", "/"])
      expect([path, (await fetch(server.url + path, { redirect: "manual" })).status]).toEqual([path, 404]);
  });
});
