import type { EquipmentKind } from "../../shared/codes.js";
import type { EquipmentBrief, SessionBrief } from "../../src/domain/brief.js";
import type { Work } from "../../src/domain/kitchen/work.js";
import { createDice } from "./dice.js";

export interface Morning {
  readonly session: SessionBrief;
  readonly equipment: readonly EquipmentBrief[];
  readonly work: readonly Work[];
}

/**
 * A drawn morning: each of `dishes` is prepared by hand and three times out of four cooked, now and then in two goes and in moulds,
 * and cooled; three boxes take of the dishes what falls to them. Durations as of common practice: 0.5 to 7.5 minutes to prepare, 3 to
 * 17 to cook, 3 to 14 to cool. With `avoided`, a third of the dishes handle what a child avoids.
 */
export function drawMorning(seed: number, dishes: number, carers: number, avoided: boolean): Morning {
  const pick = createDice(seed);
  for (let warm = 0; warm < 5; warm += 1) pick(10);
  const session: SessionBrief = {
    key: "morning-2026-09-07",
    kind: "MORNING",
    date: "2026-09-07",
    startsAt: "05:00",
    handsOnMinutes: 600,
    elapsedMinutes: 600,
    carers,
    effort: 1,
  };
  const equipment: EquipmentBrief[] = [
    { kind: "HOB_BURNER", units: 1 + pick(2) },
    { kind: "OVEN", units: 1 },
    { kind: "STEAMER", units: 1 },
    { kind: "CAKE_MOULD_SET", units: 1 + pick(2) },
  ];
  const work: Work[] = [];
  const add = (key: string, kind: Work["kind"], hands: number, passive: number, more: Partial<Work>): string => {
    work.push({
      key,
      session: session.key,
      kind,
      base: null,
      dish: null,
      text: key,
      childIds: [],
      forDates: [session.date],
      handsOnMinutes: hands,
      passiveMinutes: passive,
      equipment: [],
      after: [],
      handles: [],
      mustEndBy: null,
      ...more,
    });
    return key;
  };
  const ready: string[] = [];
  for (let dish = 0; dish < dishes; dish += 1) {
    const handles = avoided && pick(3) === 0 ? ["MILK"] : [];
    const prepared = add(`prepare.${dish}`, "FINISH", 0.5 + 0.5 * pick(15), 0, { handles });
    if (pick(4) === 0) {
      ready.push(prepared);
      continue;
    }
    const stove = (["HOB_BURNER", "OVEN", "STEAMER", "HOB_BURNER"] as const)[pick(4)]!;
    const goes = pick(3) === 0 ? 2 : 1;
    for (let go = 1; go <= goes; go += 1) {
      const hands = 0.5 + 0.5 * pick(6);
      const passive = 3 + pick(15);
      const inMoulds = stove === "STEAMER" || pick(5) === 0;
      const cool = pick(3) > 0 ? 3 + pick(12) : 0;
      const hold = (kind: EquipmentKind, minutes: number) => ({ kind, units: 1, minutes });
      const cooked = add(`cook.${dish}.${go}`, "FINISH", hands, passive, {
        handles,
        after: [prepared],
        equipment: [
          hold(stove, hands + passive),
          ...(inMoulds ? [hold("CAKE_MOULD_SET", hands + passive + cool)] : []),
        ],
      });
      ready.push(cool > 0 ? add(`cool.${dish}.${go}`, "COOL", 0, cool, { after: [cooked] }) : cooked);
    }
  }
  for (let box = 0; box < 3; box += 1) {
    const after = ready.filter(() => pick(2) === 0);
    const touched = work.some(
      (task) => task.handles.length > 0 && after.some((key) => key === task.key || key === `cool${task.key.slice(4)}`),
    );
    add(`pack.${box}`, "PACK", 3.5, 0, { after, handles: touched ? ["MILK"] : [] });
  }
  return { session, equipment, work };
}
