import { useDatabase } from "../support/database.js";

// The algorithm: generic cell rate algorithm, ITU-T Recommendation I.371, annex A, in its virtual scheduling form; the
// expected figures are of the leaky bucket it is equivalent to, reckoned by hand.
const database = useDatabase();
const take = (bucket: string, tokens: number, perMinute: number) => database.db.takeRate(bucket, tokens, perMinute);
/** Lets time pass for a bucket: all that is kept of it is a moment. */
const pass = (bucket: string, seconds: number) =>
  database.owner`update rate_window set full_at = full_at - make_interval(secs => ${seconds}) where bucket = ${bucket}`;

test("a bucket gives a minute's tokens at once, then says when there is the next", async () => {
  expect(await take("a", 60, 60)).toEqual({ granted: 60, retryAfterMs: 0 });
  const { granted, retryAfterMs } = await take("a", 1, 60);
  expect(granted).toBe(0);
  expect(retryAfterMs).toBeGreaterThan(0);
  expect(retryAfterMs).toBeLessThanOrEqual(1_000);
});

test("tokens come back evenly, and never more than the bucket holds", async () => {
  await take("b", 6, 6);
  await pass("b", 9.9);
  expect((await take("b", 1, 6)).granted).toBe(0);
  await pass("b", 0.2);
  expect((await take("b", 6, 6)).granted).toBe(1);
  await pass("b", 30);
  expect((await take("b", 6, 6)).granted).toBe(3);
  await pass("b", 3_600);
  expect((await take("b", 100, 6)).granted).toBe(6);
});

test("who waits as long as told is let in, who waits less is not, and asking in vain costs nothing", async () => {
  await take("c", 2, 2);
  for (let n = 0; n < 5; n++) expect((await take("c", 1, 2)).granted).toBe(0);
  const { retryAfterMs } = await take("c", 1, 2);
  expect(retryAfterMs).toBeGreaterThan(29_000);
  await pass("c", (retryAfterMs - 2_000) / 1_000);
  expect((await take("c", 1, 2)).granted).toBe(0);
  await pass("c", 2.1);
  expect((await take("c", 1, 2)).granted).toBe(1);
});

test("takers at once never get more together than there is", async () => {
  const answers = await Promise.all(Array.from({ length: 50 }, () => take("d", 3, 30)));
  const granted = answers.reduce((sum, answer) => sum + answer.granted, 0);
  expect(granted).toBeGreaterThanOrEqual(30);
  // One more for each two seconds the statements took.
  expect(granted).toBeLessThan(45);
});

test("buckets that are full again go as new ones come", async () => {
  await database.owner`insert into rate_window (bucket, full_at) select 'old' || n, now() - interval '2 minutes' from generate_series(1, 10) n`;
  for (let n = 0; n < 5; n++) await take(`new${n}`, 1, 60);
  const [row] = await database.owner<
    { old: number }[]
  >`select count(*)::int as old from rate_window where bucket like 'old%'`;
  expect(row!.old).toBe(0);
});

test("the server's role can neither read nor change the rows, and sizes that make no sense are refused", async () => {
  const person = await database.newPerson("Somebody");
  await expect(database.db.readAs(person, (tx) => tx`select * from rate_window`)).rejects.toMatchObject({
    code: "42501",
  });
  await expect(database.db.asPerson(person, (tx) => tx.$executeRawUnsafe("delete from rate_window"))).rejects.toThrow();
  for (const [tokens, perMinute] of [
    [0, 10],
    [1, 0],
    [-1, 10],
  ] as const)
    await expect(take("e", tokens, perMinute)).rejects.toMatchObject({ code: "22023" });
});

test("the rows are left out of the write-ahead log", async () => {
  const [row] = await database.owner<
    { kind: string }[]
  >`select relpersistence as kind from pg_class where relname = 'rate_window'`;
  expect(row!.kind).toBe("u");
});
