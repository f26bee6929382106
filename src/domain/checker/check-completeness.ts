import type { Fault } from "./fault.js";
import { place } from "./week-read.js";
import type { ItemRead, WeekRead } from "./week-read.js";

function checkKeys(week: WeekRead): Fault[] {
  const { brief, draft, foods, bases, dishes, children, sessions } = week;
  const faults: Fault[] = [];
  const eaten = new Set(draft.boxes.flatMap((box) => box.items.map((item) => item.dish)));
  const cooked = new Set(draft.batches.map((batch) => batch.base));
  const eatenBases = new Set<string>();
  for (const key of eaten) {
    const dish = dishes.get(key);
    if (!dish) {
      faults.push({ kind: "DISH_UNKNOWN", dish: key });
      continue;
    }
    for (const use of dish.bases) eatenBases.add(use.base);
    for (const { food } of dish.ingredients)
      if (!foods.has(food)) faults.push({ kind: "FOOD_UNKNOWN", dish: key, food });
  }
  for (const use of draft.readyUses) cooked.add(use.base);
  for (const key of new Set([...eatenBases, ...cooked])) {
    const base = bases.get(key);
    if (!base) faults.push({ kind: "BASE_UNKNOWN", base: key });
    else
      for (const { food } of base.ingredients)
        if (!foods.has(food)) faults.push({ kind: "FOOD_UNKNOWN", base: key, food });
  }
  for (const line of draft.shopping) if (!foods.has(line.food)) faults.push({ kind: "FOOD_UNKNOWN", food: line.food });
  for (const box of draft.boxes)
    if (!children.has(box.childId)) faults.push({ kind: "CHILD_UNKNOWN", childId: box.childId, date: box.date });
  for (const key of new Set([...draft.batches, ...draft.tasks].map((row) => row.session))) {
    if (!sessions.has(key)) faults.push({ kind: "SESSION_UNKNOWN", session: key });
  }
  for (const child of brief.children) {
    for (const day of child.days) {
      for (const index of day.ruleSets) {
        if (!brief.ruleSets[index])
          faults.push({ kind: "RULE_SET_UNKNOWN", childId: child.id, date: day.date, found: index });
      }
    }
  }
  return faults;
}

function checkBoxes(week: WeekRead): Fault[] {
  const { brief, draft, children } = week;
  const faults: Fault[] = [];
  for (const child of brief.children) {
    for (const day of child.days) {
      const at = { childId: child.id, date: day.date };
      const boxes = draft.boxes.filter((box) => box.childId === child.id && box.date === day.date);
      if (boxes.length === 0) faults.push({ kind: "BOX_MISSING", ...at });
      if (boxes.length > 1) faults.push({ kind: "BOX_TWICE", ...at });
      const items = boxes.flatMap((box) => box.items);
      for (const { key: breakKey, slots } of day.breaks) {
        slots.forEach((slot, position) => {
          const filled = items.filter(
            (item) => item.breakKey === breakKey && item.position === position && item.slot === slot,
          ).length;
          if (boxes.length > 0 && filled === 0) faults.push({ kind: "PLACE_EMPTY", ...at, breakKey, slot, position });
          if (filled > 1) faults.push({ kind: "PLACE_FILLED_TWICE", ...at, breakKey, slot, position });
        });
      }
      for (const { breakKey, slot, position, dish } of items) {
        const atBreak = day.breaks.find((row) => row.key === breakKey);
        if (!atBreak) faults.push({ kind: "BREAK_UNKNOWN", ...at, breakKey, dish });
        else if (atBreak.slots[position] !== slot)
          faults.push({ kind: "PLACE_UNKNOWN", ...at, breakKey, slot, position, dish });
      }
      for (const box of boxes) if (box.leaveAt !== day.leaveAt) faults.push({ kind: "LEAVE_TIME_WRONG", ...at });
    }
  }
  for (const { childId, date } of draft.boxes) {
    if (children.has(childId) && !children.get(childId)?.days.some((day) => day.date === date))
      faults.push({ kind: "BOX_WITHOUT_DAY", childId, date });
  }
  return faults;
}

const isWhole = (ratio: number): boolean => Math.abs(ratio - Math.round(ratio)) < 1e-6;

function checkPortion(read: ItemRead): Fault[] {
  const { item, dish, parts } = read;
  const at = place(read);
  const faults: Fault[] = [];
  if (!dish.slots.includes(item.slot)) faults.push({ kind: "SLOT_NOT_FILLED_BY_DISH", ...at });
  if (!(item.grams > 0 && Number.isFinite(item.grams)))
    return [...faults, { kind: "GRAMS_WRONG", ...at, found: item.grams }];
  const { portion } = dish;
  if (portion.kind === "CONTINUOUS") {
    if (item.pieces !== null) faults.push({ kind: "PIECES_WRONG", ...at, found: item.pieces });
  } else {
    const pieces = item.pieces ?? 0;
    // Steps are counted from nothing or from the reference portion; grams may be rounded to the nearest whole gram.
    const onStep = isWhole(pieces / portion.stepPieces) || isWhole((pieces - portion.pieces) / portion.stepPieces);
    if (!(pieces > 0 && onStep && Math.abs(item.grams - pieces * portion.gramsPerPiece) <= 0.5)) {
      faults.push({ kind: "PIECES_WRONG", ...at, found: item.grams, limit: pieces * portion.gramsPerPiece });
    }
  }
  const sum = (nutrient: "ENERC_KCAL" | "CHOCDF"): number =>
    parts.reduce((total, { food, grams }) => total + ((food.nutrients[nutrient] ?? 0) * grams) / 100, 0);
  // A unit for rounding, a hundredth for sums taken in another order or scale.
  const near = (printed: number, exact: number): boolean => Math.abs(printed - exact) <= 1 + exact / 100;
  const energy = sum("ENERC_KCAL");
  if (!near(item.energyKcal, energy))
    faults.push({ kind: "ENERGY_WRONG", ...at, found: item.energyKcal, limit: energy });
  if (item.carbohydrateGrams !== null) {
    // A carbohydrate figure is used for dosing: a sum with a missing addend must be printed as unknown.
    const known = parts.every(({ food }) => food.nutrients.CHOCDF !== undefined);
    if (!known || !near(item.carbohydrateGrams, sum("CHOCDF"))) {
      faults.push({
        kind: "CARBOHYDRATE_WRONG",
        ...at,
        found: item.carbohydrateGrams,
        ...(known ? { limit: sum("CHOCDF") } : {}),
      });
    }
  }
  if (dish.cutlery !== "NONE" && !read.box.cutlery.includes(dish.cutlery))
    faults.push({ kind: "CUTLERY_MISSING", ...at });
  return faults;
}

function checkPins(week: WeekRead): Fault[] {
  const { brief, draft, children } = week;
  return brief.pins.flatMap((pin): Fault[] => {
    const { childId, date, breakKey, slot, position, dish } = pin;
    const day = children.get(childId)?.days.find((row) => row.date === date);
    // A pin on a day or break that fell away (absent child, early finish) has nothing to hold.
    if (!day?.breaks.some((row) => row.key === breakKey && row.slots[position] === slot)) return [];
    const items = draft.boxes.filter((box) => box.childId === childId && box.date === date).flatMap((box) => box.items);
    const holds = items.some(
      (item) => item.breakKey === breakKey && item.slot === slot && item.position === position && item.dish === dish,
    );
    return holds ? [] : [{ kind: "PIN_MOVED", childId, date, breakKey, slot, position, dish }];
  });
}

/** Every packed day has one box, every place of it one dish that belongs there in a portion that adds up; pins are kept. */
export function checkCompleteness(week: WeekRead): Fault[] {
  return [...checkKeys(week), ...checkBoxes(week), ...week.items.flatMap(checkPortion), ...checkPins(week)];
}
