/** Many at once, and people who hang up at the wrong moment: nobody waits for ever, nothing falls over. */
import { connect } from "node:net";
import { WebSocket } from "ws";
import { newKey } from "../support/app.js";
import { useServedApp } from "../support/served-app.js";
import { DAY } from "./documents.js";

const served = useServedApp();

it("more operations than the database has readers, each of several changes, are all answered", async () => {
  const home = await served.household().child().planned(DAY).found();
  const week = (await home.week(DAY))!;
  const [one, two] = week.plan.tasks.slice(0, 2).map(({ id }) => id);
  const TWICE = `mutation Twice($a: TakeTaskInput!, $b: TakeTaskInput!) {
    a: takeTask(input: $a) { __typename ... on TaskPayload { task { id } } } b: takeTask(input: $b) { __typename ... on TaskPayload { task { id } } } }`;
  const input = (taskId: string) => ({ idempotencyKey: newKey(), taskId, seenRevision: 0 });
  const answers = await Promise.all(
    Array.from({ length: 15 }, () => served.post(home.coordinator, TWICE, { a: input(one!), b: input(two!) })),
  );
  expect(answers.flatMap(({ errors }) => errors)).toEqual([]);
});

it("a socket that resets while it is refused, or before it is let in, leaves the server as it was", async () => {
  const { hostname, port } = new URL(served.url);
  const knock = (path: string) =>
    new Promise<void>((resolve) => {
      const socket = connect(Number(port), hostname, () => {
        socket.write(
          `GET ${path} HTTP/1.1\r\nHost: x\r\nConnection: Upgrade\r\nUpgrade: websocket\r\nSec-WebSocket-Key: AAAAAAAAAAAAAAAAAAAAAA==\r\nSec-WebSocket-Version: 13\r\n\r\n`,
          () => socket.resetAndDestroy(),
        );
      });
      socket.on("error", () => undefined);
      socket.on("close", () => resolve());
    });
  for (let n = 0; n < 20; n += 1) await Promise.all([knock("/nowhere"), knock("/graphql")]);
  expect((await fetch(`${served.url}/health/live`)).status).toBe(200);
});

it("forty subscriptions begun in one breath find the room that is there", async () => {
  const home = await served.household().found();
  const socket = new WebSocket(`${served.url.replace("http", "ws")}/graphql`, "graphql-transport-ws");
  const refused: string[] = [];
  const open = new Promise<void>((resolve) =>
    socket.on("message", (data: Buffer) => {
      const message = JSON.parse(data.toString()) as { type: string; id?: string };
      if (message.type === "connection_ack") resolve();
      if (message.type === "error") refused.push(message.id!);
    }),
  );
  await new Promise((resolve) => socket.once("open", resolve));
  const authorization = `Bearer ${await served.tokenOf(home.coordinator)}`;
  socket.send(JSON.stringify({ type: "connection_init", payload: { authorization } }));
  await open;
  const query = "subscription S($id: ID!) { changes(householdId: $id) { cursor } }";
  for (let n = 0; n < 40; n += 1)
    socket.send(JSON.stringify({ id: `s${n}`, type: "subscribe", payload: { query, variables: { id: home.id } } }));
  // Twenty a socket, says src/http/limits.ts.
  for (let waited = 0; refused.length < 20 && waited < 5_000; waited += 20)
    await new Promise((resolve) => setTimeout(resolve, 20));
  await new Promise((resolve) => setTimeout(resolve, 100));
  expect(refused).toHaveLength(20);
  socket.close();
  await new Promise((resolve) => socket.once("close", resolve));
});
