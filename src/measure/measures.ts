/** What one worked size measures and takes. */

export interface YarnUse {
  /** `A`. */
  readonly letter: string;
  /** Length worked, tails and allowance included, in metres; an estimate. */
  readonly lengthM: number;
  /** Balls to buy: as the designer lists them, else whole ones worked out; null when neither can be told. */
  readonly balls: number | null;
  readonly massG: number | null;
}

export interface Measures {
  /** Finished size; null without a gauge, or for a shape whose width cannot be told from it. */
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  /** Once round a hat, a tube or a basket; null for what lies flat. */
  readonly aroundMm: number | null;
  readonly yarn: readonly YarnUse[];
  /** Stitches to work, joins and chains left out. */
  readonly stitches: number;
}

/** The metres that are told to a maker, everywhere the same: whole ones, rounded up, for a length that falls short is no use. */
export function takenM({ lengthM }: YarnUse): number {
  return Math.ceil(lengthM);
}
