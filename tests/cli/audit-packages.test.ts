import { readAudit, sayAudit } from "../../src/cli/audit-packages.js";

// The shape of a report: npm's documentation of `npm audit --json`, report version 2 (from memory); the refusal is one that a
// registry without the service gave.
const report = (vulnerabilities: Record<string, unknown>) =>
  JSON.stringify({
    auditReportVersion: 2,
    vulnerabilities,
    metadata: { vulnerabilities: { high: 0 }, dependencies: { prod: 412, dev: 900, total: 1312 } },
  });
const advisory = (severity: string) => ({
  name: "left",
  severity,
  isDirect: true,
  via: [
    { source: 1, name: "left", title: "Reads too far", url: "https://example.org/advisory/1", severity, range: "<2" },
  ],
  effects: [],
  range: "<2",
});

it("says how many packages were looked at when nothing grave is known", () => {
  for (const found of [{}, { left: advisory("moderate") }])
    expect(sayAudit(readAudit(report(found)))).toBe("Audit: no high or critical advisory is known for 412 packages.");
});

it("names every package with a high or critical advisory and why", () => {
  const outcome = readAudit(
    report({ left: advisory("high"), right: { severity: "critical", via: ["left"] }, fine: advisory("low") }),
  );
  expect(outcome).toEqual({
    kind: "FOUND",
    advisories: ["left (high): Reads too far https://example.org/advisory/1", "right (critical): through left"],
  });
});

it.each([
  [
    "a registry without audits",
    '{"message": "405 Method Not Allowed", "statusCode": 405}',
    "the registry answered 405",
  ],
  ["no network", '{"error": {"code": "ENOTFOUND", "summary": "x"}}', "npm gave up with ENOTFOUND"],
  ["an audit that took too long", "", "no report came back"],
  ["a page instead of a report", "<html>", "no report came back"],
  ["a report of another version", '{"auditReportVersion": 3, "vulnerabilities": {}}', "no report came back"],
])("never takes %s for an audit", (_, text, why) => {
  const outcome = readAudit(text);
  expect(outcome).toEqual({ kind: "NOT_DONE", why });
  expect(sayAudit(outcome)).toMatch(/^Audit: NOT DONE, .* Nothing is known about advisories/);
});
