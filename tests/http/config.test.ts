import { describe, expect, it } from "@jest/globals";
import { ConfigError, readConfig } from "../../src/config.js";

const problemsOf = (env: NodeJS.ProcessEnv): Record<string, string> => {
  try {
    readConfig(env);
    return {};
  } catch (error) {
    if (!(error instanceof ConfigError)) throw error;
    return Object.fromEntries(error.problems.map(({ variable, problem }) => [variable, problem]));
  }
};

describe("the configuration", () => {
  it("needs nothing in development: this machine, port 4000, embedded database, own issuer", () => {
    expect(readConfig({})).toEqual({
      nodeEnv: "development",
      production: false,
      host: "127.0.0.1",
      port: 4000,
      databaseUrl: null,
      databaseOwnerUrl: null,
      dataDir: ".noonpail",
      tokens: {
        issuer: "http://127.0.0.1:4000",
        audience: "noonpail",
        accepts: "access",
        clients: null,
        jwksUrl: null,
        kind: "development",
      },
      logLevel: "info",
      planSteps: null,
      boundSeconds: 20,
      explorer: true,
      documents: "any",
    });
  });

  it("runs in production only documents on record, and no explorer beside them", () => {
    const production = { NODE_ENV: "production", OIDC_ISSUER: "https://login.example.org" };
    expect(readConfig(production)).toMatchObject({ documents: "persisted", explorer: false });
    expect(readConfig({ ...production, DOCUMENTS: "any", EXPLORER: "on" })).toMatchObject({
      documents: "any",
      explorer: true,
    });
    expect(readConfig({ DOCUMENTS: "persisted" })).toMatchObject({ documents: "persisted", explorer: false });
    expect(problemsOf({ ...production, EXPLORER: "on" })).toEqual({
      EXPLORER: expect.stringContaining("DOCUMENTS=any"),
    });
    expect(problemsOf({ DOCUMENTS: "some" })["DOCUMENTS"]).toContain("any or persisted");
  });

  it("takes an empty variable as one that was not given", () => {
    expect(readConfig({ PORT: "", DATABASE_URL: " ", OIDC_ISSUER: "" })).toEqual(readConfig({}));
  });

  it("reads every variable", () => {
    const config = readConfig({
      NODE_ENV: "production",
      HOST: "0.0.0.0",
      PORT: "8080",
      DATABASE_URL: "postgresql://app:pw@db/noonpail",
      DATABASE_OWNER_URL: "postgres://owner:pw@db/noonpail",
      DATA_DIR: "/data",
      OIDC_ISSUER: "https://login.example.org",
      OIDC_AUDIENCE: "lunch",
      OIDC_CLIENTS: "family-app, school-app",
      OIDC_JWKS_URL: "https://login.example.org/keys",
      LOG_LEVEL: "warn",
      PLAN_STEPS: "5000",
      BOUND_SECONDS: "0",
    });
    expect(config).toMatchObject({
      production: true,
      host: "0.0.0.0",
      port: 8080,
      logLevel: "warn",
      planSteps: 5000,
      boundSeconds: 0,
      explorer: false,
    });
    expect(config.tokens).toEqual({
      issuer: "https://login.example.org",
      audience: "lunch",
      accepts: "access",
      clients: ["family-app", "school-app"],
      jwksUrl: "https://login.example.org/keys",
      kind: "outside",
    });
    expect(Object.isFrozen(config) && Object.isFrozen(config.tokens)).toBe(true);
  });

  it("names every wrong variable at once with the way out, and never repeats a password", () => {
    const env = {
      PORT: "lots",
      LOG_LEVEL: "loud",
      NODE_ENV: "prod",
      DATABASE_URL: "mysql://root:hunter2@db/x",
      PLAN_STEPS: "0",
      HOST: "a b",
    };
    expect(Object.keys(problemsOf(env)).sort()).toEqual(Object.keys(env).sort());
    expect(problemsOf(env)["PORT"]).toBe("must be a whole number from 0 to 65535. Set PORT=4000 or leave it out.");
    expect(() => readConfig(env)).toThrow(/PORT must be a whole number[\s\S]*|LOG_LEVEL must be one of/);
    expect(() => readConfig(env)).not.toThrow(/hunter2/);
  });

  it("refuses a port beyond 65535 and half numbers", () => {
    for (const PORT of ["65536", "-1", "4000.5", "1e3", "0x10"])
      expect(Object.keys(problemsOf({ PORT }))).toEqual(["PORT"]);
  });

  it("says which tokens sign in: access tokens, or an outside issuer's ID tokens, whose client is their audience", () => {
    const outside = { OIDC_ISSUER: "https://login.example.org" };
    expect(readConfig({ ...outside, OIDC_TOKENS: "id", OIDC_AUDIENCE: "app" }).tokens).toMatchObject({
      accepts: "id",
      audience: "app",
      clients: null,
    });
    expect(Object.keys(problemsOf({ ...outside, OIDC_TOKENS: "both" }))).toEqual(["OIDC_TOKENS"]);
    expect(Object.keys(problemsOf({ OIDC_TOKENS: "id" }))).toEqual(["OIDC_ISSUER"]);
    expect(Object.keys(problemsOf({ ...outside, OIDC_TOKENS: "id", OIDC_CLIENTS: "app" }))).toEqual(["OIDC_CLIENTS"]);
    for (const OIDC_CLIENTS of [",", "app,", "app,,another"])
      expect(Object.keys(problemsOf({ ...outside, OIDC_CLIENTS }))).toEqual(["OIDC_CLIENTS"]);
  });

  it("refuses production without an outside issuer, or with one that is not https", () => {
    expect(problemsOf({ NODE_ENV: "production" })["OIDC_ISSUER"]).toContain("required in production");
    expect(Object.keys(problemsOf({ NODE_ENV: "production", OIDC_ISSUER: "http://login.example.org" }))).toEqual([
      "OIDC_ISSUER",
    ]);
    expect(Object.keys(problemsOf({ OIDC_JWKS_URL: "https://login.example.org/keys" }))).toEqual(["OIDC_ISSUER"]);
  });
});
