import type { Fault } from "./fault.js";
import { place } from "./week-read.js";
import type { WeekRead } from "./week-read.js";

const inFlask = -1;

/** What is in each compartment fits, wet food cannot leak nor lie beside dry food, and the flask holds only what is to stay warm. */
export function checkCompartments(week: WeekRead): Fault[] {
  const faults: Fault[] = [];
  for (const read of week.items) {
    const { compartment, holding } = read.item;
    if ((compartment === inFlask) !== (holding.case === "FLASK"))
      faults.push({ kind: "FLASK_MISUSED", ...place(read) });
    if (compartment === inFlask) continue;
    const row = read.child.box.compartments[compartment];
    if (!row) faults.push({ kind: "COMPARTMENT_UNKNOWN", ...place(read), found: compartment });
    else if (read.dish.spill === "WET" && !row.leakProof) faults.push({ kind: "WET_NOT_LEAKPROOF", ...place(read) });
  }
  for (const box of week.draft.boxes) {
    week.children.get(box.childId)?.box.compartments.forEach(({ ml }, index) => {
      const inside = week.items.filter((read) => read.box === box && read.item.compartment === index);
      const found = inside.reduce((sum, { dish, scale }) => sum + dish.volumeMl * scale, 0);
      const spills = inside.map(({ dish }) => dish.spill);
      if (spills.includes("WET") && spills.includes("DRY"))
        faults.push({ kind: "WET_WITH_DRY", childId: box.childId, date: box.date, position: index });
      // Volumes are summed, not packed; half a millilitre covers rounding of scaled portions.
      if (!(found <= ml + 0.5))
        faults.push({
          kind: "COMPARTMENT_TOO_FULL",
          childId: box.childId,
          date: box.date,
          position: index,
          found,
          limit: ml,
        });
    });
  }
  return faults;
}
