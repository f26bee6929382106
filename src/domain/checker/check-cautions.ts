import { namesAllergen } from "./check-rules.js";
import { chokingRisks, labelsNeeded } from "./check-safety.js";
import type { Fault } from "./fault.js";
import { place } from "./week-read.js";
import type { WeekRead } from "./week-read.js";

/** Everything a person has to be told travels with the plan: labels, cuts, cold, flask, reheating, rules that rest, leftovers no box eats, and the four general ones. */
export function checkCautions(week: WeekRead): Fault[] {
  const { cautions } = week.draft;
  const faults: Fault[] = [];
  for (const about of ["LABELS", "CHOKING", "HOLDING", "NUTRITION"] as const) {
    if (!cautions.some((row) => row.kind === "GENERAL" && row.about === about))
      faults.push({ kind: "CAUTION_MISSING", caution: `GENERAL_${about}` });
  }
  for (const read of week.items) {
    const at = place(read);
    const { childId, date, dish } = at;
    for (const food of labelsNeeded(week, read)) {
      if (!cautions.some((row) => row.kind === "READ_LABEL" && row.childId === childId && row.food === food))
        faults.push({ kind: "CAUTION_MISSING", caution: "READ_LABEL", ...at, food });
    }
    for (const { part, rule } of chokingRisks(week, read)) {
      const told = cautions.some(
        (row) =>
          row.kind === "CUT_FOR_AGE" &&
          row.childId === childId &&
          row.date === date &&
          row.dish === dish &&
          row.cut === rule.cut,
      );
      if (!told && !rule.never)
        faults.push({ kind: "CAUTION_MISSING", caution: "CUT_FOR_AGE", ...at, food: part.food.key });
    }
    const held = read.item.holding.case;
    if (held === "CHILLED" || held === "REHEATED_AT_SCHOOL") {
      const told = cautions.some(
        (row) =>
          row.kind === "KEEP_COLD" &&
          row.childId === childId &&
          row.date === date &&
          row.coldSources >= week.brief.holding.coldSources,
      );
      if (!told) faults.push({ kind: "CAUTION_MISSING", caution: "KEEP_COLD", ...at });
    }
    const warm = (
      {
        FLASK: "PREHEAT_FLASK",
        REHEATED_AT_SCHOOL: "REHEAT_THROUGH",
        CHILLED: null,
        AMBIENT: null,
        NOT_CONTROLLED: null,
      } as const
    )[held];
    if (
      warm !== null &&
      !cautions.some((row) => row.kind === warm && row.childId === childId && row.date === date && row.dish === dish)
    ) {
      faults.push({ kind: "CAUTION_MISSING", caution: warm, ...at });
    }
  }
  for (const { id: childId, days } of week.brief.children)
    for (const { date, exempt = [] } of days)
      for (const { ruleSet: at, rule } of exempt) {
        const document = week.brief.ruleSets[at];
        const found = document?.rules.find(({ id }) => id === rule);
        // One that names an allergen does not rest.
        if (!document || !found || namesAllergen(found)) continue;
        const ruleSet = document.key;
        const told = cautions.some(
          (row) =>
            row.kind === "RULE_RESTS" &&
            row.childId === childId &&
            row.ruleSet === ruleSet &&
            row.rule === rule &&
            row.dates.includes(date),
        );
        if (!told) faults.push({ kind: "CAUTION_MISSING", caution: "RULE_RESTS", childId, date, ruleSet, rule });
      }
  for (const ready of week.brief.ready) {
    const used = week.draft.readyUses
      .filter((use) => use.readyId === ready.id)
      .reduce((sum, use) => sum + use.grams, 0);
    const left = ready.grams - used;
    const told = cautions.some(
      (row) =>
        row.kind === "READY_UNUSED" &&
        row.readyId === ready.id &&
        row.lastDate === ready.lastDate &&
        Math.abs(row.grams - left) <= 1,
    );
    if (ready.from === "LEFTOVER" && left >= 1 && !told)
      faults.push({
        kind: "CAUTION_MISSING",
        caution: "READY_UNUSED",
        readyId: ready.id,
        base: ready.base,
        found: left,
      });
  }
  return faults;
}
