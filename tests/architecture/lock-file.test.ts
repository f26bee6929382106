import { readFileSync } from "node:fs";

// OWASP Top 10 2021, A08 "Software and Data Integrity Failures"; Subresource Integrity for the form of the hashes.
type Locked = { readonly integrity?: string; readonly resolved?: string; readonly link?: boolean };
const locks = [
  "package-lock.json",
  "tests/bench/peers/package-lock.json",
  "tests/bench/peers/postgraphile/package-lock.json",
];

it.each(locks)("every package of %s is held to its hash, wherever it is fetched from", (file) => {
  const { packages } = JSON.parse(readFileSync(file, "utf8")) as { packages: Record<string, Locked> };
  const fetched = Object.entries(packages).filter(([path, { link }]) => path !== "" && link !== true);
  expect(fetched.length).toBeGreaterThan(10);
  expect(
    fetched.filter(([, { integrity }]) => !/^sha512-[A-Za-z0-9+/]{86}==$/.test(integrity ?? "")).map(([path]) => path),
  ).toEqual([]);
  // Neither an address that is no registry's, nor the one of whoever wrote the lock.
  expect(fetched.filter(([, { resolved }]) => resolved !== undefined).map(([path]) => path)).toEqual([]);
});

it("the lock stays free of hosts when it is written anew, and versions are exact", () => {
  expect(readFileSync(".npmrc", "utf8").split("\n")).toContain("omit-lockfile-registry-resolved=true");
  const { dependencies, devDependencies } = JSON.parse(readFileSync("package.json", "utf8")) as Record<
    string,
    Record<string, string>
  >;
  const loose = Object.entries({ ...dependencies, ...devDependencies }).filter(
    ([, version]) => !/^\d+\.\d+\.\d+(-[\w.-]+)?$/.test(version),
  );
  expect(loose).toEqual([]);
});
