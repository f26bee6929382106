import { feedRoute } from "../../src/http/feed.js";
import { startServer, stopServers } from "./harness.js";

afterEach(stopServers);

const SECRET_PART = "s3cret-".repeat(6) + "x";

it("an address is nowhere in the log, whether it opens a feed or not, nor when its feed breaks", async () => {
  const below = [
    feedRoute(async (secret) => {
      if (secret === SECRET_PART) return "BEGIN:VCALENDAR";
      if (secret.startsWith("broken")) throw new Error("out of order");
      return null;
    }),
  ];
  const server = await startServer({ below });
  const statuses = [];
  for (const path of [`${SECRET_PART}.ics`, `${"unknown".repeat(6)}x.ics`, `${"broken-".repeat(6)}x.ics`, "s3cret-odd"])
    statuses.push((await fetch(`${server.url}/feed/${path}?s3cret-query`)).status);
  expect(statuses).toEqual([200, 404, 500, 404]);
  const requests = server.lines.filter(({ msg }) => msg === "request");
  expect(requests.map(({ path, status }) => [path, status])).toEqual(statuses.map((status) => ["/feed", status]));
  for (const word of ["s3cret", "unknownunknown", "broken-"]) expect(JSON.stringify(server.lines)).not.toContain(word);
});
