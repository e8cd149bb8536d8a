/** What one worked size measures and takes. */

/** What a length of yarn goes by: the designer's own use, her swatch, or the figures of the trade. */
export type YarnBasis = 'used' | 'swatch' | 'figures';

export interface YarnScale {
  /** What the figures are multiplied by. */
  readonly factor: number;
  readonly basis: YarnBasis;
  /** The size that was weighed or measured, where it is another one. */
  readonly from: string | null;
}

export type ScaleOf = (letter: string, size: string) => YarnScale;

export interface YarnUse {
  /** `A`. */
  readonly letter: string;
  /** Length worked, tails and allowance included, in metres; an estimate. */
  readonly lengthM: number;
  /** What of it joins the pieces, where they are joined in it. */
  readonly joiningM?: number;
  readonly basis: YarnBasis;
  /** The size the designer's use is known of, where another is worked out from it. */
  readonly scaledFrom: string | null;
  /** What makers' hands may come to, where only the trade's figures are known; null otherwise. */
  readonly rangeM: { readonly least: number; readonly most: number } | null;
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
