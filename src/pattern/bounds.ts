/** Within what each written measure has to lie, in the units it is held in: what lies outside is a slip of the pen. */

/**
 * Bounds that no real work oversteps, wide on purpose: they catch a slipped decimal point or a wrong unit.
 * Common practice; hooks are sold from 0.4 mm (lace) to 40 mm (hand-made giant hooks).
 */
export const BOUNDS = {
  hookMm: [0.4, 40],
  gaugeCount: [0.5, 400],
  gaugeOverMm: [10, 1000],
  usedLengthMm: [100, 200_000_000],
  usedMassG: [0.1, 100_000],
  finishedMm: [5, 20_000],
  ballLengthMm: [1_000, 20_000_000],
  ballMassG: [1, 10_000],
  balls: [0, 5_000],
  repeats: [1, 5_000],
  rows: [1, 20_000],
  make: [1, 5_000],
} as const satisfies Record<string, readonly [number, number]>;
