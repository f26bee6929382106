/** What every peer does before it reads: verifies the bearer token as we do, and finds the person behind it once. */
import { createLocalJWKSet, jwtVerify } from "jose";

export const settings = JSON.parse(process.env.BENCH_SETTINGS);

/** @param signIn asks the database for the person of a token's subject */
export function createSignIn(signIn) {
  const keys = createLocalJWKSet(settings.jwks);
  const { issuer, audience } = settings;
  const known = new Map();
  return async (authorization) => {
    const token = /^Bearer +(\S+)$/i.exec(authorization ?? "")?.[1];
    if (token === undefined) throw new Error("no token");
    const { payload } = await jwtVerify(token, keys, {
      issuer,
      audience,
      algorithms: ["ES256", "RS256", "EdDSA"],
      clockTolerance: 5,
      requiredClaims: ["sub", "exp"],
    });
    const before = known.get(payload.sub);
    if (before !== undefined) return before;
    const person = await signIn(payload.sub);
    known.set(payload.sub, person);
    return person;
  };
}

/** Reads a JSON body of a request. */
export function readJson(req) {
  return new Promise((resolve, reject) => {
    const chunks = [];
    req.on("data", (chunk) => chunks.push(chunk));
    req.on("end", () => resolve(JSON.parse(Buffer.concat(chunks).toString("utf8"))));
    req.on("error", reject);
  });
}

/** Listens on a free port and tells the bench which. */
export function listen(server) {
  server.listen(0, "127.0.0.1", () => process.send({ port: server.address().port }));
}
