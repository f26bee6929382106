/** What a client may send, beyond the types of the schema: ranges and texts. Messages name the way out. */
import { z } from "zod";
import {
  allergenCode,
  allergenGroupCode,
  dietCode,
  equipmentKind,
  localDate,
  localTime,
  slotCode,
  slug,
  weekdayCode,
} from "./codes.js";

/** What no database column and no screen can hold: control characters, halves of a surrogate pair. */
export const plainText = /^[^\p{Cc}\p{Cs}]*$/u;
const KEY_FIX =
  "Send 8 to 100 characters without control characters, new for every attempt, the same when repeating one.";
export const name = z
  .string()
  .trim()
  .regex(plainText, "Give a name without control characters.")
  .min(1, "Give a name of 1 to 80 characters.")
  .max(80, "Give a name of 1 to 80 characters.");
const allergenName = z.union([allergenCode, allergenGroupCode], {
  error: `Use one of ${[...allergenCode.options, ...allergenGroupCode.options].join(", ")}.`,
});
export const wholeNumber = (from: number, to: number) =>
  z
    .int(`Send a whole number from ${from} to ${to}.`)
    .min(from, `Send a whole number from ${from} to ${to}.`)
    .max(to, `Send a whole number from ${from} to ${to}.`);
export const number = (from: number, to: number) =>
  z.number().min(from, `Send a number from ${from} to ${to}.`).max(to, `Send a number from ${from} to ${to}.`);

/** Each entry says one thing about one subject: a second one would contradict the first. */
export const onlyOnce =
  <T>(subjectOf: (entry: T) => string) =>
  (context: z.core.ParsePayload<readonly T[]>) => {
    const seen = new Set<string>();
    for (const [at, entry] of context.value.entries()) {
      const subject = subjectOf(entry);
      if (seen.has(subject))
        context.issues.push({
          code: "custom",
          input: entry,
          path: [at],
          message: `Send ${subject} once.`,
        });
      seen.add(subject);
    }
  };

export const createHouseholdInput = z.object({
  name,
  timeZone: z.string().refine(isTimeZone, "Send an IANA time zone such as Europe/London."),
  currency: z.string().regex(/^[A-Z]{3}$/, "Send an ISO 4217 code such as GBP."),
});

export const allergyInput = z
  .object({
    allergen: allergenName.nullish(),
    foodKind: slug.nullish(),
    avoid: z.enum(["TRACES", "INGREDIENTS"]),
    /** The kind is meant although no food of the catalogue is of it. */
    kindUnknown: z.boolean().default(false),
  })
  .refine((entry) => (entry.allergen == null) !== (entry.foodKind == null), "Give either allergen or foodKind.");

export const createChildInput = z.object({
  name,
  dateOfBirth: localDate,
  sex: z.enum(["FEMALE", "MALE"], "Send FEMALE or MALE, or leave it out.").nullish(),
  weightKg: number(5, 200).nullish(),
  heightCm: number(50, 220).nullish(),
  activity: z.enum(
    ["INACTIVE", "LOW_ACTIVE", "ACTIVE", "VERY_ACTIVE"],
    "Send INACTIVE, LOW_ACTIVE, ACTIVE or VERY_ACTIVE.",
  ),
  diets: z.array(z.enum(dietCode.options, `Use ${dietCode.options.join(", ")}.`)),
  dislikes: z.array(slug).max(100),
  allergies: z
    .array(allergyInput)
    .max(50)
    .check(onlyOnce((entry) => entry.allergen ?? entry.foodKind ?? "nothing")),
  minutesToEat: wholeNumber(5, 90),
  appetite: number(0.5, 2),
  compartments: z
    .array(z.object({ ml: wholeNumber(50, 2000), leakProof: z.boolean() }))
    .min(1, "A box has at least one compartment.")
    .max(8, "A box has at most 8 compartments."),
  coldSources: wholeNumber(0, 6),
  leaveAt: localTime,
});

/** The figures of the catalogue's foods are per 100 g; a glass of milk of 200 ml weighs 206 g. */
export const provisionEntries = z
  .array(
    z.object({
      food: slug,
      grams: wholeNumber(1, 1000),
      weekday: z.enum(weekdayCode.options, "Send a weekday such as MONDAY, or leave it out.").nullish(),
      breakKey: slug.nullish(),
    }),
  )
  .max(50, "Send at most 50 entries.")
  .check(onlyOnce((entry) => `${entry.food} ${entry.weekday ?? "every day"} ${entry.breakKey ?? "at any break"}`));

export const energyMethod = z.enum(["NASEM_2023", "IOM_2005"], "Send NASEM_2023 or IOM_2005.");

/** Days a household expects to be hot. */
export const hotDayEntries = z.array(localDate).max(60, "Send at most 60 days.");

export const stockEntries = z
  .array(z.object({ food: slug, grams: wholeNumber(0, 100_000) }))
  .max(300, "Send at most 300 entries.")
  .check(onlyOnce((entry) => entry.food));
export const leftoverEntries = z
  .array(z.object({ base: slug, grams: wholeNumber(1, 20_000), cookedOn: localDate }))
  .max(50, "Send at most 50 leftovers.");
export const prepTimeEntries = z
  .array(
    z
      .object({
        kind: z.string(),
        weekday: z.string().nullish(),
        date: localDate.nullish(),
        startsAt: localTime,
        handsOnMinutes: wholeNumber(0, 600),
        elapsedMinutes: wholeNumber(0, 720),
        carers: wholeNumber(1, 6),
        effort: wholeNumber(0, 1000).nullish(),
      })
      .refine((entry) => (entry.weekday == null) !== (entry.date == null), "Give either weekday or date.")
      .refine(
        (entry) => entry.handsOnMinutes <= entry.elapsedMinutes * entry.carers,
        "Hands-on minutes cannot exceed the elapsed minutes of all carers.",
      ),
  )
  .min(1, "Send at least one prep time.")
  .max(60, "Send at most 60 prep times.")
  .check(onlyOnce((entry) => `${entry.kind} of ${entry.weekday ?? entry.date ?? "no day"}`));
export const equipmentEntries = z
  .array(
    z.object({
      kind: z.enum(equipmentKind.options, `Use one of ${equipmentKind.options.join(", ")}.`),
      units: wholeNumber(0, 12),
    }),
  )
  .min(1, "Send at least one kind of equipment.")
  .max(30, "Send at most 30 kinds.")
  .check(onlyOnce((entry) => entry.kind));
const allergens = z.array(z.enum(allergenCode.options, `Use ${allergenCode.options.join(", ")}.`)).max(40);
export const labelInput = z.object({
  food: slug,
  contains: allergens,
  mayContain: allergens,
  kinds: z
    .array(z.object({ kind: slug, says: z.enum(["CLEAR", "MAY_CONTAIN", "CONTAINS"]) }))
    .max(40)
    .check(onlyOnce((entry) => entry.kind)),
  readOn: localDate,
});

export const keepsOutInput = z
  .array(allergenName)
  .max(40, "Send at most 40 allergens.")
  .check(onlyOnce((entry) => entry));
export const schoolDayInput = z
  .object({
    date: localDate,
    kind: z.enum(["HOLIDAY", "EARLY_FINISH", "TRIP"], "Send HOLIDAY, EARLY_FINISH or TRIP."),
    title: name,
    endsAt: localTime.nullish(),
  })
  .refine(
    (entry) => (entry.kind === "EARLY_FINISH") === (entry.endsAt != null),
    "Give endsAt for an early finish, and for nothing else.",
  );

/** Hours an invitation stays open: an hour to 30 days. */
export const expiresInHours = wholeNumber(1, 720);
/** Marks that turn the direction of text would show a name as another. */
export const displayName = name.regex(/^\P{Bidi_Control}*$/u, "Give a name without marks that turn its direction.");

/** Taken as it stands: another spelling is another jurisdiction. */
export const jurisdictionName = z
  .string()
  .regex(plainText, "Send a jurisdiction without control characters.")
  .min(1, "Send a jurisdiction of 1 to 80 characters.")
  .max(80, "Send a jurisdiction of 1 to 80 characters.");
export const schoolInput = z.object({
  name,
  timeZone: z.string(),
  jurisdiction: jurisdictionName,
});
export const termInput = z
  .object({ name, firstDay: localDate, lastDay: localDate, replaces: localDate.nullish() })
  .refine((term) => term.lastDay >= term.firstDay, { path: ["lastDay"], error: "Send firstDay or a later day." });
const slots = z.enum(slotCode.options, `Use ${slotCode.options.join(", ")}.`);
export const breakEntries = z
  .array(
    z.object({
      key: slug,
      name,
      startsAt: localTime,
      minutes: wholeNumber(5, 120),
      slots: z
        .array(slots)
        .min(1, "Say what may be eaten: at least one slot.")
        .check(onlyOnce((slot) => slot)),
      energyShare: number(0, 1).nullish(),
    }),
  )
  .min(1, "A class has at least one break.")
  .max(8, "A class has at most 8 breaks.")
  .check(onlyOnce((entry) => entry.key));
export const schoolClassInput = z.object({ name, breaks: breakEntries });
export const schoolClassChange = z.object({ name: name.nullish(), breaks: breakEntries.nullish() });
export const subject = z
  .string()
  .min(1, "Send the subject of the person's token.")
  .max(255, "Send a subject of at most 255 characters.")
  .regex(plainText, "Send a subject without control characters.");

export const absenceReason = z
  .string()
  .max(200, "Send at most 200 characters.")
  .regex(plainText, "Send text without control characters.");
const disruptedDays = { date: localDate, until: localDate.nullish() };
const daysOfChild = z.object({ ...disruptedDays, reason: absenceReason.nullish() }).nullish();
export const disruptionInput = z.object({
  childAbsent: daysOfChild,
  schoolClosed: daysOfChild,
  earlyFinish: z.object({ ...disruptedDays, endsAt: localTime }).nullish(),
  tripDay: z.object(disruptedDays).nullish(),
  foodMissing: z.object({ ...disruptedDays, foodKind: slug }).nullish(),
  applianceBroken: z
    .object({
      ...disruptedDays,
      appliance: z.enum(equipmentKind.options, `Use one of ${equipmentKind.options.join(", ")}.`),
      units: wholeNumber(1, 12),
    })
    .nullish(),
  shortMorning: z.object({ date: localDate, minutes: wholeNumber(0, 600) }).nullish(),
});
const homeSide = z.enum(["THIS_HOME", "OTHER_HOME"]);
const CYCLE_FIX = "Send the home of each day of the cycle, 1 to 56 days.";
export const residencePatternInput = z
  .object({
    kind: z.enum(["SAME_HOME", "ALTERNATE_WEEKS", "TWO_TWO_THREE", "TWO_TWO_FIVE_FIVE", "OWN_CYCLE"]),
    starts: localDate,
    firstHome: homeSide,
    cycle: z.array(homeSide).min(1, CYCLE_FIX).max(56, CYCLE_FIX).nullish(),
  })
  .check(({ value: { kind, cycle }, issues }) => {
    if ((kind === "OWN_CYCLE") !== (cycle != null))
      issues.push({
        code: "custom",
        path: ["cycle"],
        input: cycle,
        message: kind === "OWN_CYCLE" ? CYCLE_FIX : "Leave it out, or send the kind OWN_CYCLE.",
      });
  });
export const residenceDates = z
  .array(localDate)
  .min(1, "Send 1 to 62 days.")
  .max(62, "Send 1 to 62 days.")
  .check(onlyOnce((date) => date));
const handoverWords = z
  .array(
    z
      .string()
      .trim()
      .regex(plainText, "Send words without control characters.")
      .min(1, "Send 1 to 80 characters.")
      .max(80, "Send 1 to 80 characters."),
  )
  .max(20, "Send at most 20.");
export const handoverInput = z.object({
  repeat: handoverWords,
  avoid: handoverWords,
  note: z
    .string()
    .trim()
    .max(500, "Send at most 500 characters.")
    .regex(/^[^\p{Cs}\0]*$/u, "Send text without control characters."),
});

/** Hands-on minutes a task took. */
export const taskMinutes = number(0, 600)
  .refine(
    (minutes) => Math.abs(minutes * 10 - Math.round(minutes * 10)) < 1e-9,
    "Send minutes with at most one decimal.",
  )
  .nullish();

/** "morning-2027-01-11": kind of session and its day. */
export const sessionKey = z
  .string()
  .regex(
    /^(weekend|evening|morning)-\d{4}-\d{2}-\d{2}$/,
    "Send weekend-, evening- or morning- and the date, as in morning-2027-01-11.",
  );
/** Who is on for sessions; nobody where the list of persons is empty. */
export const dutyEntries = z
  .array(
    z.object({
      session: sessionKey,
      personIds: z
        .array(z.string().nullable())
        .max(6, "Send at most 6 carers a session.")
        .check(onlyOnce((id) => id ?? "a carer that is none")),
    }),
  )
  .min(1, "Send at least one session.")
  .max(100, "Send at most 100 sessions.")
  .check(onlyOnce((entry) => entry.session));
export const availabilityEntries = z
  .array(
    z.object({
      weekday: z.enum(weekdayCode.options, "Send a weekday such as MONDAY."),
      kind: z.enum(["WEEKEND", "EVENING", "MORNING"], "Send WEEKEND, EVENING or MORNING."),
      minutes: wholeNumber(0, 600),
    }),
  )
  .max(21, "Send at most 21 entries.")
  .check(onlyOnce((entry) => `${entry.kind} of ${entry.weekday}`));

/** New for every attempt, the same when repeating one. */
export const idempotencyKey = z.string().min(8, KEY_FIX).max(100, KEY_FIX).regex(plainText, KEY_FIX);

/** Whether the runtime's time-zone data knows the name. */
function isTimeZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat("en", { timeZone: name });
    return true;
  } catch {
    return false;
  }
}

/** A clinician's note on which a rule rests for a child. */
export const exemptionInput = z.object({
  from: localDate,
  until: localDate,
  clinician: z
    .string()
    .trim()
    .regex(plainText, "Give the clinician's name without control characters.")
    .min(2, "Say who wrote the note, in 2 to 120 characters.")
    .max(120, "Say who wrote the note, in 2 to 120 characters."),
  note: z
    .string()
    .trim()
    .min(5, "Say what the note says, in 5 to 1000 characters.")
    .max(1000, "Say what the note says, in 5 to 1000 characters."),
});
