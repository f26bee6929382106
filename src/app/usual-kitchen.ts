/** Where a new household starts before it says otherwise. Our own estimates of a small home kitchen, all of them changeable. */
export const usualEquipment = [
  { kind: "HOB_BURNER", units: 2 },
  { kind: "OVEN", units: 1 },
  { kind: "TOASTER", units: 1 },
  { kind: "MICROWAVE", units: 1 },
  { kind: "BLENDER", units: 1 },
  { kind: "MUFFIN_TRAY", units: 1 },
  // A small steamer takes one layer of four moulds, ten minutes (common practice).
  { kind: "STEAMER", units: 1 },
  { kind: "CAKE_MOULD_SET", units: 1 },
] as const;

const schoolMornings = ["MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY", "FRIDAY"] as const;
const eveningsBefore = ["SUNDAY", "MONDAY", "TUESDAY", "WEDNESDAY", "THURSDAY"] as const;

export const usualPrepTimes = [
  {
    kind: "WEEKEND",
    weekday: "SUNDAY",
    startsAt: "15:00",
    handsOnMinutes: 75,
    // Dry chickpeas soaked in hot water and boiled take 155 min from the first hand to the last.
    elapsedMinutes: 180,
    carers: 1,
    effort: 4,
  },
  ...eveningsBefore.map((weekday) => ({
    kind: "EVENING",
    weekday,
    startsAt: "19:30",
    handsOnMinutes: 25,
    elapsedMinutes: 75,
    carers: 1,
    effort: 6,
  })),
  ...schoolMornings.map((weekday) => ({
    kind: "MORNING",
    weekday,
    startsAt: "06:45",
    handsOnMinutes: 30,
    elapsedMinutes: 60,
    carers: 1,
    effort: 10,
  })),
];
