/** Runs in a worker thread: proves how good a week is for sure, and goes over its own proof again as a stranger would. */
import { gunzipSync, gzipSync } from "node:zlib";
import { certify, checkCertificate, readCertificate, writeCertificate } from "../domain/planner/bound/certificate.js";
import type { Problem } from "../domain/planner/problem.js";
import { openHighs } from "./highs-solver.js";

export interface BoundTask {
  /** The problem as JSON, gzip. */
  readonly problem: Uint8Array;
  /** Thousandths of a point of the week found. */
  readonly objective: number;
  /** The proof grows for so long; to go over it again comes on top. */
  readonly milliseconds: number;
  /** Only as far as the linear program as a whole goes. */
  readonly isBrief: boolean;
}
export interface BoundAnswer {
  readonly bound: number;
  readonly nodes: number;
  readonly milliseconds: number;
  /** The certificate as JSON, gzip. */
  readonly certificate: Uint8Array;
}

export async function createRun(): Promise<(task: BoundTask) => BoundAnswer | null> {
  const openSolver = await openHighs();
  return (task) => {
    const began = performance.now();
    const spent = () => performance.now() - began;
    const text = gunzipSync(task.problem).toString("utf8");
    const certificate = certify(
      JSON.parse(text) as Problem,
      task.objective,
      openSolver,
      () => spent() / task.milliseconds,
      task.isBrief,
    );
    if (certificate === null) return null;
    const written = writeCertificate(certificate);
    const checked = checkCertificate(JSON.parse(text) as Problem, readCertificate(written));
    if (checked !== certificate.bound)
      throw new Error(`the certificate says ${certificate.bound} and proves ${checked ?? "nothing"}`);
    return {
      bound: checked,
      nodes: certificate.nodes,
      milliseconds: Math.round(spent()),
      certificate: gzipSync(written),
    };
  };
}
