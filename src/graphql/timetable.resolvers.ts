/** The timetable by session, by carer and by appliance. */
import { listSessions } from "../domain/kitchen/list-sessions.js";
import type { Resolvers } from "./generated.js";
import { tenths } from "./week.resolvers.js";

export const timetableOfPlan: Pick<NonNullable<Resolvers["WeekPlan"]>, "sessions"> = {
  sessions: ({ row: { tasks, sessions }, householdId }) =>
    listSessions(
      tasks.filter(({ kept }) => !kept),
      sessions,
    ).map((row) => ({ row, among: tasks, householdId })),
};

export const latestOfTask: Pick<NonNullable<Resolvers["Task"]>, "latestStartsAt"> = {
  latestStartsAt: ({ row }) => row.latestStartsAt,
};

export const timetableTypes: Pick<
  Resolvers,
  "PrepSession" | "SessionTiming" | "CarerTasks" | "ApplianceUses" | "ApplianceUse"
> = {
  PrepSession: {
    key: ({ row }) => row.key,
    startsAt: ({ row }) => row.startsAt,
    endsAt: ({ row }) => row.endsAt,
    handsOnMinutes: ({ row }) => tenths(row.handsOnMinutes),
    timing: ({ row }) => row.timing,
    tasks: ({ row: { tasks }, ...plan }) => tasks.map((row) => ({ row, ...plan })),
    carers: ({ row: { carers }, ...plan }) => carers.map((row) => ({ row, ...plan })),
    appliances: ({ row: { appliances }, ...plan }) => appliances.map((row) => ({ row, ...plan })),
  },
  SessionTiming: {
    provenShortest: ({ lastsMinutes, leastMinutes }) => leastMinutes >= lastsMinutes,
  },
  CarerTasks: {
    carer: ({ row }) => row.carer + 1,
    handsOnMinutes: ({ row }) => tenths(row.tasks.reduce((sum, task) => sum + task.handsOnMinutes, 0)),
    tasks: ({ row: { tasks }, ...plan }) => tasks.map((row) => ({ row, ...plan })),
  },
  ApplianceUses: {
    kind: ({ row }) => row.kind,
    unit: ({ row }) => row.unit + 1,
    uses: ({ row: { uses }, ...plan }) => uses.map((row) => ({ row, ...plan })),
  },
  ApplianceUse: {
    task: ({ row: { task }, ...plan }) => ({ row: task, ...plan }),
    from: ({ row }) => row.from,
    until: ({ row }) => row.until,
  },
};
