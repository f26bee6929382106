/**
 * `npm run audit:packages`: known advisories, high and critical, against the packages the server runs with. Exit 1 when there are
 * any. Where nobody can be asked (no network, a registry without that service) it says that nothing was audited, and exits 0: an
 * offline run is no fault of the code, and no audit either.
 */
import { spawnSync } from "node:child_process";
import { realpathSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { z } from "zod";

/** Milliseconds for the whole audit. */
const PATIENCE = 60_000;

/** npm's audit report, version 2, as far as it is read. */
const report = z.object({
  auditReportVersion: z.literal(2),
  vulnerabilities: z.record(
    z.string(),
    z.object({
      severity: z.string(),
      via: z.array(z.union([z.string(), z.object({ title: z.string(), url: z.string().nullish() })])),
    }),
  ),
  metadata: z.object({ dependencies: z.object({ prod: z.number() }) }),
});
const refusal = z.object({
  statusCode: z.number().nullish(),
  error: z.object({ code: z.string().nullish() }).nullish(),
});

export type AuditOutcome =
  | { readonly kind: "CLEAN"; readonly packages: number }
  | { readonly kind: "FOUND"; readonly advisories: readonly string[] }
  | { readonly kind: "NOT_DONE"; readonly why: string };

const GRAVE = ["high", "critical"];

/** @param text what `npm audit --json` wrote; empty when it was stopped */
export function readAudit(text: string): AuditOutcome {
  const parsed = jsonOf(text);
  const read = report.safeParse(parsed);
  if (!read.success) {
    const { statusCode, error } = refusal.safeParse(parsed).data ?? {};
    const code = error?.code;
    const why =
      statusCode != null
        ? `the registry answered ${statusCode}`
        : code != null
          ? `npm gave up with ${code}`
          : "no report came back";
    return { kind: "NOT_DONE", why };
  }
  const grave = Object.entries(read.data.vulnerabilities).filter(([, { severity }]) => GRAVE.includes(severity));
  if (grave.length === 0) return { kind: "CLEAN", packages: read.data.metadata.dependencies.prod };
  return {
    kind: "FOUND",
    advisories: grave.map(([name, { severity, via }]) => {
      const reasons = via.map((reason) =>
        typeof reason === "string" ? `through ${reason}` : `${reason.title} ${reason.url ?? ""}`,
      );
      return `${name} (${severity}): ${reasons.join("; ").trim()}`;
    }),
  };
}

export function sayAudit(outcome: AuditOutcome): string {
  switch (outcome.kind) {
    case "CLEAN":
      return `Audit: no high or critical advisory is known for ${outcome.packages} packages.`;
    case "FOUND":
      return ["Audit: advisories, high or critical:", ...outcome.advisories.map((line) => `  ${line}`)].join("\n");
    case "NOT_DONE":
      return `Audit: NOT DONE, ${outcome.why}. Nothing is known about advisories; run npm run audit:packages where a registry answers.`;
  }
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

if (process.argv[1] !== undefined && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const run = spawnSync("npm", ["audit", "--omit=dev", "--audit-level=high", "--json"], {
    encoding: "utf8",
    timeout: PATIENCE,
  });
  const outcome = readAudit(run.stdout ?? "");
  console.log(sayAudit(outcome));
  if (outcome.kind === "FOUND") process.exitCode = 1;
}
