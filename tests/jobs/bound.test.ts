/** The bound of a stored week, from the worker thread to the answer, and back again without any solver. */
import { createHash } from "node:crypto";
import { gunzipSync, gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, test } from "@jest/globals";
import type { App, Proof } from "../../src/app/app.js";
import { planWeek } from "../../src/app/plan-week.js";
import { checkCertificate, readCertificate } from "../../src/domain/planner/bound/certificate.js";
import type { Problem } from "../../src/domain/planner/problem.js";
import { localId } from "../../src/graphql/global-id.js";
import { startBoundPool, type BoundPool } from "../../src/jobs/bound-pool.js";
import { DAY, HOMES } from "../graphql/documents.js";
import { findBestExhaustively } from "../support/exhaustive-week.js";
import { newKey, useApp } from "../support/app.js";
import { drawProblem } from "../support/random-problem.js";

const parts = useApp();
const faults: unknown[] = [];
let prover: BoundPool;
/** A linear program of the demo takes a few at most on a machine that has nothing else to do. */
const SECONDS = 10;
beforeAll(() => {
  prover = startBoundPool({ seconds: SECONDS, onError: (error) => faults.push(error) });
});
afterAll(() => prover.stop());

const CERTIFICATE = `query Certificate($id: ID!) { household(id: $id) { week(date: "${DAY}") { plan { id certificate {
  objectivePoints boundPoints gapPercent provenOptimal nodes seconds createdAt } } } } }`;

describe("a week that was just planned", () => {
  const coordinator = "demo:ana";
  let householdId: string;
  const certificateFor = async (person: string) => {
    const { data } = await parts.run(person, CERTIFICATE, { id: householdId });
    return data?.household?.week?.plan.certificate;
  };

  test("has no certificate at first and one when its bound is proved", async () => {
    const { data, errors } = await parts.run(coordinator, HOMES, { day: DAY });
    expect(errors).toEqual([]);
    householdId = data.me.households[0].id;
    const app: App = { ...parts.app, prover };
    const person = await app.db.signIn(coordinator, "Ana");
    const planned = await planWeek(app, person, {
      idempotencyKey: newKey(),
      householdId: localId("Household", householdId),
      date: DAY,
      seenRevision: 0,
      replanAgreed: false,
    });
    expect(planned.ok).toBe(true);
    expect(await certificateFor(coordinator)).toBeNull();
    await prover.settled();
    expect(faults).toEqual([]);
    const certificate = await certificateFor(coordinator);
    expect(certificate.boundPoints).toBeGreaterThan(0);
    expect(certificate.boundPoints).toBeLessThanOrEqual(certificate.objectivePoints);
    const gap = (100 * (certificate.objectivePoints - certificate.boundPoints)) / certificate.objectivePoints;
    expect(certificate.gapPercent).toBeCloseTo(gap, 1);
    expect(certificate.provenOptimal).toBe(gap <= 0.01);
  });

  test("keeps what it takes to work the bound out again, for exactly the problem the plan names", async () => {
    const [row] = await parts.database.owner<
      { problem: Buffer; certificate: Buffer; boundPoints: number; hash: string }[]
    >`select k.problem, k.certificate, k.bound_points as "boundPoints", p.problem_hash as hash
      from plan_certificate k join week_plan p on p.id = k.week_plan_id`;
    const text = gunzipSync(row!.problem).toString("utf8");

    expect(createHash("sha256").update(text).digest("hex")).toBe(row!.hash);
    const certificate = readCertificate(gunzipSync(row!.certificate).toString("utf8"));
    expect(checkCertificate(JSON.parse(text) as Problem, certificate)).toBe(Math.round(row!.boundPoints * 1000));
    // For another problem the same certificate proves less, or nothing.
    const cheaper = JSON.parse(text, (key, value: unknown) => (key === "cost" ? 0 : value)) as Problem;
    expect(checkCertificate(cheaper, certificate)).toBeLessThan(Math.round(row!.boundPoints * 1000));
  });

  test("shows it to nobody outside the kitchen, the other home of a shared child included", async () => {
    expect(await certificateFor("demo:ana")).not.toBeNull();
    for (const person of ["demo:stranger", "demo:leo"]) expect(await certificateFor(person)).toBeUndefined();
  });
});

describe("the prover", () => {
  const small = drawProblem(2, {
    children: 1,
    days: 2,
    slots: 2,
    choices: 3,
    bases: 2,
    everything: true,
    tightness: 90,
  });
  const best = findBestExhaustively(small)!;
  const asked = { problem: gzipSync(JSON.stringify(small)), objective: best.objective };

  test("proves a bound that no week falls below, by trying every week", async () => {
    const proofs: Proof[] = [];
    prover.prove({ ...asked, about: "small" }, (proof) => Promise.resolve(void proofs.push(proof)));
    await prover.settled();
    expect(proofs).toHaveLength(1);
    expect(proofs[0]!.bound).toBeLessThanOrEqual(best.objective);
    expect(proofs[0]!.bound).toBeGreaterThan(0.5 * best.objective);
  });

  test("lets a later proof about the same week end the one before, without a word", async () => {
    const kept: number[] = [];
    for (const turn of [1, 2]) prover.prove({ ...asked, about: "same" }, () => Promise.resolve(void kept.push(turn)));
    await prover.settled();
    expect(kept).toEqual([2]);
    expect(faults).toEqual([]);
  });

  test("tells of a proof that breaks off, and goes on", async () => {
    prover.prove({ about: "broken", problem: gzipSync("{"), objective: 1 }, () => Promise.resolve());
    await prover.settled();
    expect(faults).toHaveLength(1);
    faults.length = 0;
    let done = false;
    prover.prove({ ...asked, about: "after" }, () => Promise.resolve(void (done = true)));
    await prover.settled();
    expect(done).toBe(true);
  });
});
