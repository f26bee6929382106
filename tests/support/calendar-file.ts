/** iCalendar files (RFC 5545) as a school would write them. */

/** Property lines of one event; UID and DTSTAMP are added where they are missing. */
export const event = (...lines: readonly string[]): string => {
  const uid = lines.some((line) => line.startsWith("UID")) ? [] : [`UID:${lines.join("|").replace(/[^\w:-]/g, "-")}`];
  return ["BEGIN:VEVENT", ...uid, "DTSTAMP:20260801T080000Z", ...lines, "END:VEVENT"].join("\r\n");
};

export const calendar = (...components: readonly string[]): string =>
  ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Noonpail tests//EN", ...components, "END:VCALENDAR", ""].join("\r\n");

interface Change {
  readonly name: "STANDARD" | "DAYLIGHT";
  readonly from: string;
  readonly rule: string;
  readonly offsets: readonly [string, string];
}
const zone = (tzid: string, changes: readonly Change[]) =>
  [
    "BEGIN:VTIMEZONE",
    `TZID:${tzid}`,
    ...changes.flatMap(({ name, from, rule, offsets }) => [
      `BEGIN:${name}`,
      `DTSTART:${from}`,
      `RRULE:${rule}`,
      `TZOFFSETFROM:${offsets[0]}`,
      `TZOFFSETTO:${offsets[1]}`,
      `END:${name}`,
    ]),
    "END:VTIMEZONE",
  ].join("\r\n");

/** RFC 5545, section 3.6.5: the rules of New York until 2006 and from 2007 on. */
export const newYork = zone("America/New_York", [
  {
    name: "STANDARD",
    from: "19671029T020000",
    rule: "FREQ=YEARLY;BYDAY=-1SU;BYMONTH=10;UNTIL=20061029T060000Z",
    offsets: ["-0400", "-0500"],
  },
  {
    name: "DAYLIGHT",
    from: "19870405T020000",
    rule: "FREQ=YEARLY;BYDAY=1SU;BYMONTH=4;UNTIL=20060402T070000Z",
    offsets: ["-0500", "-0400"],
  },
  { name: "DAYLIGHT", from: "20070311T020000", rule: "FREQ=YEARLY;BYMONTH=3;BYDAY=2SU", offsets: ["-0500", "-0400"] },
  { name: "STANDARD", from: "20071104T020000", rule: "FREQ=YEARLY;BYMONTH=11;BYDAY=1SU", offsets: ["-0400", "-0500"] },
]);
/** IANA time zone database: from the last Sunday of March to that of October, at 01:00 UTC. */
export const london = zone("Europe/London", [
  { name: "DAYLIGHT", from: "19960331T010000", rule: "FREQ=YEARLY;BYMONTH=3;BYDAY=-1SU", offsets: ["+0000", "+0100"] },
  { name: "STANDARD", from: "19961027T020000", rule: "FREQ=YEARLY;BYMONTH=10;BYDAY=-1SU", offsets: ["+0100", "+0000"] },
]);
/** IANA time zone database: summer time over the turn of the year, from the first Sunday of October to that of April. */
export const sydney = zone("Australia/Sydney", [
  { name: "DAYLIGHT", from: "20081005T020000", rule: "FREQ=YEARLY;BYMONTH=10;BYDAY=1SU", offsets: ["+1000", "+1100"] },
  { name: "STANDARD", from: "20080406T030000", rule: "FREQ=YEARLY;BYMONTH=4;BYDAY=1SU", offsets: ["+1100", "+1000"] },
]);
