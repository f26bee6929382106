/** The scripts of shared/examples, each run as a process of its own against a server, one after the other as the README says. */
import { spawn } from "node:child_process";
import { useServedApp } from "../support/served-app.js";

const served = useServedApp({ steps: 25_000 });
/** Milliseconds: each starts a process, and the server plans in the thread of the test. */
const PATIENCE = 240_000;

/** Standard output of a script that ended well. */
async function run(script: string): Promise<string> {
  const today = served.inProcess.app.now().toISOString().slice(0, 10);
  const child = spawn(process.execPath, ["--import", "tsx", `shared/examples/${script}.ts`, served.url, today]);
  let said = "";
  let complaints = "";
  child.stdout.on("data", (bytes: Buffer) => (said += bytes.toString()));
  child.stderr.on("data", (bytes: Buffer) => (complaints += bytes.toString()));
  const code = await new Promise((resolve) => child.on("close", resolve));
  expect({ code, complaints }).toEqual({ code: 0, complaints: "" });
  return said;
}

it(
  "family-app plans, swaps, settles, and hears of it",
  async () => {
    const said = await run("family-app");
    expect(said).toMatch(/^Millpond kitchen: \w+ on 2027-01-11: .+,/m);
    expect(said).toMatch(/^agreed: AGREED$/m);
    expect(said).toMatch(/^without apples: /m);
    expect(said).toMatch(/^a link invites to Millpond kitchen as HELPER, /m);
    expect(said).toMatch(/^taken back: WithdrawInvitationPayload$/m);
    expect(said).toMatch(/^heard meanwhile: .*PLAN \w+ by Ana/m);
  },
  PATIENCE,
);

it(
  "two-carers reach for one task, of which one gets it and the other hears, and pack a box",
  async () => {
    const said = await run("two-carers");
    const outcomes = [...said.matchAll(/^(?:Tom|Iris): (\w+)/gm)].map(([, outcome]) => outcome);
    expect(outcomes.sort()).toEqual(["TaskHeld", "TaskPayload"]);
    expect(said).toMatch(/^Iris sees that it is held by (?:Tom|Iris) /m);
    expect(said).toMatch(/^done in 12 minutes: TaskPayload$/m);
    expect(said).toMatch(/^ {2}(?:Tom|Iris) \w+: 12 min done, /m);
    expect(said).toMatch(/^ {2}morning-2027-01-12: .+ could be on$/m);
    expect(said).toMatch(/^\w+'s box: WeekPayload/m);
    expect(said).toMatch(/reads: The blue lid leaks; keep it upright. The box is WITH_CHILD, the flask OTHER_HOME.$/m);
    expect(said).toMatch(/^ {2}2027-01-11 (?:PACKED|PLANNED): /m);
    expect(said).toMatch(/has the address sees 1 of their tasks$/m);
    expect(said).toMatch(/^a night swapped, says Ana's home: ResidencePayload$/m);
    expect(said).toMatch(/^Leo's home declines: ResidencePayload;/m);
  },
  PATIENCE,
);

it(
  "administrator finds a slip, counts, loads, and stands in the list",
  async () => {
    const said = await run("administrator");
    expect(said).toContain("perhaps DRIED_FRUIT");
    expect(said).toMatch(/would break it$/m);
    expect(said).toMatch(/^quillbrook-primary-spring version 1 is loaded/m);
    expect(said).toMatch(/RULE_SET_LOADED by Ruth /);
  },
  PATIENCE,
);
