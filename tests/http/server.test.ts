import { request } from "node:http";
import { gunzipSync } from "node:zlib";
import { afterAll, describe, expect, it } from "@jest/globals";
import { createLog } from "../../src/log.js";
import { get, post, SECRET, startServer, stopServers } from "./harness.js";

afterAll(stopServers);
const OUTSIDE = { NODE_ENV: "production", OIDC_ISSUER: "https://login.example.org", DOCUMENTS: "any" };
const nested = (levels: number) => `${"{ nest ".repeat(levels - 1)}{ leaf }${" }".repeat(levels - 1)}`;

describe("what one request may ask for", () => {
  it("is a body of at most 256 KB, counted and not taken on trust", async () => {
    const server = await startServer();
    const withBody = (bytes: number) => {
      const frame = JSON.stringify({ query: "{ greeting }", variables: { pad: "" } });
      return frame.replace('"pad":""', `"pad":"${"x".repeat(bytes - frame.length)}"`);
    };
    expect((await post(server, withBody(256 * 1024))).status).toBe(200);
    const large = await post(server, withBody(256 * 1024 + 1));
    expect(large.status).toBe(413);
    expect(large.body.errors?.[0]?.message).toContain("256 KB");
    const unannounced = await new Promise<number>((resolve, reject) => {
      const headers = { "content-type": "application/json", "transfer-encoding": "chunked" };
      const sent = request(`${server.url}/graphql`, { method: "POST", headers }, (answer) => {
        answer.resume();
        resolve(answer.statusCode ?? 0);
      });
      sent.on("error", reject);
      for (let n = 0; n < 5; n++) sent.write("x".repeat(64 * 1024));
      sent.end();
    });
    expect(unannounced).toBe(413);
    expect(server.opened).toHaveLength(1);
  });

  it("is 12 levels of fields, and fragments hide none", async () => {
    const server = await startServer();
    expect((await post(server, { query: nested(12) })).status).toBe(200);
    const inFragments =
      "{ nest { ...A } } fragment A on Nest { nest { nest { nest { ...B } } } } " +
      "fragment B on Nest { nest { nest { nest { nest { nest { nest { nest { nest { leaf } } } } } } } } }";
    for (const query of [nested(13), inFragments]) {
      const { status, body } = await post(server, { query });
      expect([status, body.errors?.[0]?.extensions["code"]]).toEqual([400, "QUERY_LIMIT"]);
      expect(body.errors?.[0]?.message).toContain("depth limit of 12 exceeded, found 13");
    }
  });

  it("is 30 aliases, 20 directives, a bounded cost and 2000 tokens", async () => {
    const server = await startServer();
    const list = (count: number, each: (n: number) => string) =>
      Array.from({ length: count }, (_, n) => each(n)).join(" ");
    expect((await post(server, { query: `{ ${list(30, (n) => `a${n}: greeting`)} }` })).status).toBe(200);
    const codes: unknown[] = [];
    for (const query of [
      `{ ${list(31, (n) => `a${n}: greeting`)} }`,
      `{ ${list(21, () => "greeting @include(if: true)")} }`,
      "{ many(first: 50000) { leaf } }",
      `{ ${list(2000, () => "greeting")} }`,
    ]) {
      const { status, body } = await post(server, { query });
      codes.push([status, body.errors?.[0]?.extensions["code"]]);
    }
    expect(codes).toEqual([
      [400, "QUERY_LIMIT"],
      [400, "QUERY_LIMIT"],
      [400, "QUERY_LIMIT"],
      [400, "GRAPHQL_PARSE_FAILED"],
    ]);
  });

  it("hides the schema in production, in introspection and in spelling advice", async () => {
    const open = await startServer();
    const closed = await startServer({ env: OUTSIDE });
    const introspect = { query: "{ __schema { types { name } } }" };
    expect((await post(open, introspect)).status).toBe(200);
    expect((await post(closed, introspect)).status).toBe(400);
    const misspelt = { query: "{ greting }" };
    expect((await post(open, misspelt)).body.errors?.[0]?.message).toContain("Did you mean");
    const silent = await post(closed, misspelt);
    expect(silent.body.errors?.[0]?.message).toBe('Cannot query field "greting" on type "Query".');
  });
});

describe("an error nobody foresaw", () => {
  it("is hidden from the caller, who gets an id that finds it in the log", async () => {
    const server = await startServer();
    const { body, headers } = await post(server, { query: "query Lunch { broken }" });
    const requestId = headers.get("x-request-id");
    expect(body.errors).toEqual([
      {
        message: `Something went wrong on our side. Quote request ${requestId}.`,
        locations: [{ line: 1, column: 15 }],
        path: ["broken"],
        extensions: { code: "INTERNAL", requestId },
      },
    ]);
    const logged = server.lines.find((line) => line["msg"] === "unexpected error");
    expect(logged).toMatchObject({ level: "error", requestId, operationName: "Lunch", err: { type: "Error" } });
    expect((logged?.["err"] as { stack: string }).stack).toContain("harness");
    expect(JSON.stringify(server.lines)).not.toContain(SECRET);
  });

  it("is passed to whoever closes the operation's context, and a good operation closes without", async () => {
    const server = await startServer();
    await post(server, { query: "{ broken }" });
    await post(server, { query: "{ greeting }" });
    await post(server, { query: "{ whoami }" });
    expect(server.closed).toEqual([new Error(SECRET), undefined, undefined]);
  });

  it("in closing takes the answer back: what was not kept was not done", async () => {
    const server = await startServer({ close: () => Promise.reject(new Error(`commit failed: ${SECRET}`)) });
    const { status, body } = await post(server, { query: "mutation { count }" });
    expect([status, body.data, body.errors?.[0]?.extensions["code"]]).toEqual([500, undefined, "INTERNAL"]);
    expect(JSON.stringify(body)).not.toContain(SECRET);
  });
});

describe("the log", () => {
  it("has one line per request and never what was asked about", async () => {
    const server = await startServer();
    const authorization = await server.token();
    const variables = { t: "Wren likes plums" };
    await post(
      server,
      { query: "query Ask($t: String!) { echo(text: $t) }", variables },
      { authorization, "x-request-id": "walk-0001" },
    );
    await get(server, { query: 'query Look { echo(text: "Wren") }' });
    await fetch(`${server.url}/children/Wren`);
    const lines = server.lines.filter((line) => line["msg"] === "request");
    expect(lines).toMatchObject([
      {
        method: "POST",
        path: "/graphql",
        status: 200,
        operationName: "Ask",
        requestId: "walk-0001",
        ms: expect.any(Number),
      },
      { method: "GET", path: "/graphql", status: 200, operationName: "Look" },
      { method: "GET", path: "unknown", status: 404, operationName: null },
    ]);
    const everything = JSON.stringify(server.lines);
    expect(everything).not.toContain("Wren");
    expect(everything).not.toContain(authorization.slice(7));
  });

  it("hides credentials wherever they are put, and what database errors carry", () => {
    const lines: string[] = [];
    const log = createLog("info", { write: (line: string) => void lines.push(line) });
    const error = Object.assign(new Error("duplicate key"), {
      code: "23505",
      detail: "Key (name)=(Wren)",
      parameters: ["Wren"],
    });
    log.info({ authorization: "Bearer s3cret", req: { headers: { authorization: "Bearer s3cret" } }, err: error }, "x");
    expect(lines.join("")).toContain("23505");
    expect(lines.join("")).not.toMatch(/s3cret|Wren/);
  });

  it("echoes a plain request id and replaces any other", async () => {
    const server = await startServer();
    const echoed = async (id: string) =>
      (await post(server, { query: "{ greeting }" }, { "x-request-id": id })).headers.get("x-request-id");
    expect(await echoed("walk-0001")).toBe("walk-0001");
    for (const id of ["short", "x".repeat(65), 'a"b,c=d e;f']) expect(await echoed(id)).toMatch(/^[0-9a-f-]{36}$/);
  });
});

describe("health", () => {
  it("is live whatever the database does, and ready only with it", async () => {
    let up = true;
    const server = await startServer({
      isReady: () =>
        Promise.resolve({
          ready: up,
          checks: { migrations: { ok: true }, database: up ? { ok: true } : { ok: false, problem: "No connection." } },
        }),
    });
    expect((await fetch(`${server.url}/health/ready`)).status).toBe(200);
    up = false;
    const answer = await fetch(`${server.url}/health/ready`);
    expect(answer.status).toBe(503);
    expect(await answer.json()).toMatchObject({
      failing: ["database"],
      checks: { database: { problem: "No connection." } },
    });
    expect((await fetch(`${server.url}/health/live`)).status).toBe(200);
    expect((await fetch(`${server.url}/health/live`, { method: "HEAD" })).status).toBe(200);
    expect((await fetch(`${server.url}/health/live`, { method: "POST" })).status).toBe(405);
  });

  it("counts a check that throws or hangs as failed", async () => {
    const throws = await startServer({ isReady: () => Promise.reject(new Error(SECRET)) });
    const hangs = await startServer({ isReady: () => new Promise(() => undefined) });
    for (const server of [throws, hangs]) {
      const answer = await fetch(`${server.url}/health/ready`);
      expect(answer.status).toBe(503);
      const text = await answer.text();
      expect(JSON.parse(text)).toMatchObject({ failing: ["readiness"] });
      expect(text).not.toContain(SECRET);
    }
  });
});

describe("the explorer", () => {
  it("is one page that loads nothing from any other host, under a policy that lets it", async () => {
    const server = await startServer();
    const front = await fetch(`${server.url}/`, { redirect: "manual" });
    expect([front.status, front.headers.get("location")]).toEqual([302, "/explorer"]);
    const zipped = await new Promise<{ body: Buffer; encoding: string; policy: string; etag: string }>(
      (resolve, reject) => {
        request(`${server.url}/explorer`, { headers: { "accept-encoding": "gzip" } }, (answer) => {
          const chunks: Buffer[] = [];
          answer.on("data", (chunk: Buffer) => chunks.push(chunk));
          answer.on("end", () =>
            resolve({
              body: Buffer.concat(chunks),
              encoding: String(answer.headers["content-encoding"]),
              policy: String(answer.headers["content-security-policy"]),
              etag: String(answer.headers.etag),
            }),
          );
        })
          .on("error", reject)
          .end();
      },
    );
    expect(zipped.encoding).toBe("gzip");
    const page = gunzipSync(zipped.body).toString("utf8");
    expect(page).toContain("Noonpail explorer");
    expect(page).toContain("Sign in above, then run this.");
    expect(page).toContain('<option value="demo|ann">Ann, packs on school days</option>');

    const markup = page.replace(/<script>[\s\S]*?<\/script>|<style>[\s\S]*?<\/style>/g, "");
    expect(markup).not.toMatch(/(src|href|action)="(?!data:)/);
    expect(page).not.toMatch(/<(script|link|img|iframe)[^>]{0,200}\b(src|href)=["']?https?:/i);
    expect(page).not.toMatch(/@import|url\(["']?https?:|importScripts\(["']https?:/);
    expect(page).not.toMatch(/\b(fetch|import)\(["'`]https?:/);
    const directives = new Map(zipped.policy.split("; ").map((part) => [part.split(" ")[0], part.split(" ").slice(1)]));
    expect(directives.get("default-src")).toEqual(["'none'"]);
    expect(directives.get("connect-src")).toEqual(["'self'"]);
    expect(directives.get("script-src")).toHaveLength(2);
    expect(zipped.policy).not.toMatch(/https?:|\*|unsafe-eval|script-src[^;]*unsafe-inline/);

    const again = await fetch(`${server.url}/explorer`, { headers: { "if-none-match": zipped.etag } });
    expect(again.status).toBe(304);
  });

  it("cannot be broken out of by its first document", async () => {
    const { renderExplorer } = await import("../../src/http/explorer.js");
    const page = await renderExplorer({ defaultQuery: "# </script><script>alert(1)</script> $& $1", people: [] });
    const html = gunzipSync(page.compressed).toString("utf8");
    expect(html).not.toContain("<script>alert(1)");
    expect(html).toContain("$& $1");
    expect(html).not.toContain('id="sign-in"><label');
  });

  it("can be served in production when asked for", async () => {
    const server = await startServer({ env: { ...OUTSIDE, EXPLORER: "on" } });
    const answer = await fetch(`${server.url}/explorer`, { method: "HEAD" });
    expect(answer.status).toBe(200);
  });
});

describe("shutdown", () => {
  it("finishes what is under way, takes nothing new, and can be asked twice", async () => {
    const server = await startServer();
    const underWay = post(server, { query: "{ slow(ms: 400) }" });
    await until(() => server.opened.length === 1);
    const stopped = Promise.all([server.server.stop(), server.server.stop()]);
    await expect(post(server, { query: "{ greeting }" })).rejects.toThrow();
    const answer = await underWay;
    expect(answer.body).toEqual({ data: { slow: "done" } });
    expect(answer.headers.get("connection")).toBe("close");
    await stopped;
    expect(server.closed).toEqual([undefined]);
    expect(server.lines.at(-1)).toMatchObject({ msg: "server stopped" });
  });

  it("says so when the port is taken", async () => {
    const first = await startServer();
    const port = new URL(first.url).port;
    await expect(startServer({ env: { PORT: port } })).rejects.toThrow(`Port ${port} on 127.0.0.1 is taken`);
  });
});

async function until(holds: () => boolean): Promise<void> {
  for (let tries = 0; !holds(); tries++) {
    if (tries > 400) throw new Error("waited 4 s in vain");
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}
