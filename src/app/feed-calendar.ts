/**
 * A feed as iCalendar text (RFC 5545, with NAME and REFRESH-INTERVAL of RFC 7986).
 *
 * Times are instants in UTC (3.3.5, form 2), not local times with a VTIMEZONE. A feed is read again and again, so a zone whose
 * rules change moves its events with the next reading; what an instant means does not hang on how a client understands our
 * VTIMEZONE, nor what it makes of a time that a clock change skips or repeats.
 */
import ICAL from "ical.js";
import type { FeedEvent } from "../domain/calendar/feed-events.js";

/** How long before it begins a task is announced. */
const REMIND_SECONDS = -10 * 60;
const REFRESH_SECONDS = 30 * 60;

// 3.1: at most 75 octets a line. The library does not count the space that begins a continued line.
ICAL.foldLength = 74;

const utc = (instant: number) => ICAL.Time.fromJSDate(new Date(instant), true);

export function writeFeed(events: readonly FeedEvent[]): string {
  const calendar = new ICAL.Component("vcalendar");
  calendar.addPropertyWithValue("version", "2.0");
  calendar.addPropertyWithValue("prodid", "-//Noonpail//Tasks//EN");
  calendar.addPropertyWithValue("name", "Lunch box tasks");
  const refresh = new ICAL.Property("refresh-interval");
  refresh.resetType("duration");
  refresh.setValue(ICAL.Duration.fromSeconds(REFRESH_SECONDS));
  calendar.addProperty(refresh);
  for (const event of events) calendar.addSubcomponent(componentOf(event));
  return `${calendar.toString()}\r\n`;
}

function componentOf({ mark, entry }: FeedEvent): ICAL.Component {
  const component = new ICAL.Component("vevent");
  const add = (name: string, value: string | number | ICAL.Time) => component.addPropertyWithValue(name, value);
  add("uid", mark.uid);
  // 3.8.7.2: without METHOD the stamp is that of the last change, so the same content is the same text.
  add("dtstamp", utc(mark.changedAt));
  add("last-modified", utc(mark.changedAt));
  add("sequence", mark.sequence);
  add("status", entry === null ? "CANCELLED" : "CONFIRMED");
  add("class", "PRIVATE");
  add("dtstart", utc(mark.startsAt));
  add("dtend", utc(mark.endsAt));
  add("summary", entry?.summary ?? "No longer yours to do");
  if (entry === null) return component;
  add("description", entry.description);
  if (entry.reminds) {
    const alarm = new ICAL.Component("valarm");
    alarm.addPropertyWithValue("action", "DISPLAY");
    alarm.addPropertyWithValue("trigger", ICAL.Duration.fromSeconds(REMIND_SECONDS));
    alarm.addPropertyWithValue("description", entry.summary);
    component.addSubcomponent(alarm);
  }
  return component;
}
