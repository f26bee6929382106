import { createHmac } from "node:crypto";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { mkdtemp, readdir, readFile, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "@jest/globals";
import {
  createLocalJWKSet,
  exportJWK,
  exportSPKI,
  generateKeyPair,
  SignJWT,
  type CryptoKey,
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

let verify: Verify;
let ours: { privateKey: CryptoKey; publicKey: CryptoKey };
let theirs: { privateKey: CryptoKey; publicKey: CryptoKey };
let rsa: { privateKey: CryptoKey; publicKey: CryptoKey };
let edwards: { privateKey: CryptoKey; publicKey: CryptoKey };

beforeAll(async () => {
  [ours, theirs, rsa, edwards] = await Promise.all([
    generateKeyPair("ES256", { extractable: true }),
    generateKeyPair("ES256"),
    generateKeyPair("RS256", { extractable: true }),
    generateKeyPair("EdDSA", { extractable: true }),
  ]);
  const keys = [
    { ...(await exportJWK(ours.publicKey)), kid: "first", alg: "ES256" },
    { ...(await exportJWK(rsa.publicKey)), kid: "second", alg: "RS256" },
    { ...(await exportJWK(edwards.publicKey)), kid: "third", alg: "EdDSA" },
  ];
  verify = createVerifier(config, createLocalJWKSet({ keys }));
});
afterAll(stopServers);

const sign = (
  payload: JWTPayload,
  key = ours.privateKey,
  header: { alg: string; kid?: string; crit?: string[] } = HEADER,
) => new SignJWT(payload).setProtectedHeader(header).sign(key);
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
    expect(result).toEqual({ ok: true, value: { subject: "ann", expiresAt: new Date("2096-10-02T07:06:40Z") } });
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
  const serve = async (configuration: (base: string) => unknown) => {
    const asked: string[] = [];
    const jwks = { keys: [{ ...(await exportJWK(ours.publicKey)), kid: "first", alg: "ES256" }] };
    const outside = createServer((req, res) => {
      asked.push(req.url ?? "");
      const base = `http://127.0.0.1:${(outside.address() as AddressInfo).port}`;
      res.setHeader("content-type", "application/json");
      res.end(JSON.stringify(req.url === "/keys" ? jwks : configuration(base)));
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
