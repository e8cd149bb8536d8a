/** A yarn weight's number, 0 to 7, in; its names and what is usually worked with it out. */

import table from '../../shared/yarn-weights.json' with { type: 'json' };

/** Null at an end means open: "5 and fewer", "16 mm and larger". */
export interface Range {
  readonly min: number | null;
  readonly max: number | null;
}

export interface YarnWeight {
  /** Craft Yarn Council number. */
  readonly number: number;
  /** Craft Yarn Council name: `Medium`. */
  readonly name: string;
  /** What it is called in US shops: `worsted`. */
  readonly types: readonly string[];
  /** What it is called in the United Kingdom: `aran`. */
  readonly ukName: string;
  /** What it is called in Australia and New Zealand: `10 ply`. */
  readonly auNzName: string | null;
  /** Stitches over 10 cm (4 in). */
  readonly gaugePer10Cm: Range;
  /** The stitch the gauge is counted in, an id of the stitch table: `dc` for lace, `sc` for all others. */
  readonly gaugeStitch: string;
  readonly hookMm: Range;
  readonly wrapsPerInch: Range;
  /** Length of 100 g, in metres. */
  readonly mPer100g: Range;
}

export const YARN_WEIGHTS: readonly YarnWeight[] = table.weights.map((row) => ({
  number: row.number,
  name: row.name,
  types: row.types,
  ukName: row.uk.name,
  auNzName: row.auNz.name,
  gaugePer10Cm: { min: row.gauge.min, max: row.gauge.max },
  gaugeStitch: row.gauge.of,
  hookMm: row.hookMm,
  wrapsPerInch: row.wrapsPerInch,
  mPer100g: row.metresPer100gElsewhere,
}));

/** The weight of this number, or null for a number outside 0 to 7. */
export function yarnWeight(number: number): YarnWeight | null {
  return YARN_WEIGHTS.find((weight) => weight.number === number) ?? null;
}

/** Whether a value lies in a range, its ends included. */
export function inRange(value: number, range: Range): boolean {
  return (range.min === null || value >= range.min) && (range.max === null || value <= range.max);
}
