/** Every measure of a chart that is not part of a symbol, in stitch units (u) or mm. */

/** One stitch unit on paper: a magazine's chart at full size. */
export const U_MM = 4;

export const PITCH_U = {
  /** Foundation chains, middle to middle. */
  laid: 1,
  /** An upright chain beside the stitch next to it. */
  post: 0.74,
  /** Length of one chain in a space. */
  chain: 0.8,
  /** Chains of a ring in the centre. */
  ring: 0.7,
} as const;

/** A figure of a row's number, in stitch units. */
export const FIGURE_U = 0.44;

/** Baseline below the middle of a figure, as a share of the type size. */
export const HALF_FIGURE = 0.33;

/** Between the ends of a round whose number stands elsewhere: room for the joining dot. */
const SEAM_ALONE_U = 1;
/** And where chains that are no stitch begin an edging: the dot stands over them. */
export const SEAM_AT_CHAINS_U = 0.8;

/** Room left in a round between its last stitch and its first, where its number of so many figures stands. */
export function seamU(figures: number): number {
  return figures === 0 ? SEAM_ALONE_U : 0.86 + figures * FIGURE_U;
}

/** How far a stem may shrink or stretch to keep the top of its row level, and upright chains that are no stitch. */
export const STRETCH = { least: 0.9, most: 1.3, bare: 1.05 } as const;
/** A stitch's head is never further from the level of its row. */
export const OFF_LEVEL_U = 1.5;

/** How much of a fan's arc its heads follow: 1 for a true circle about the foot. */
export const FAN_ROUNDNESS = { plain: 0.62, aboutRing: 0.5 } as const;

export const LABEL_MM = {
  size: 3.1,
  gap: 2.2,
  arrow: 3.4,
  /** The number of a ring's chains, inside it. */
  ringCount: 2.7,
} as const;

export const KEY_MM = {
  symbol: 10,
  size: 3.3,
  line: 7,
  gap: 7,
  /** How much wider than its chart a key may be. */
  widerThanChart: 1.12,
} as const;

export const MARGIN_MM = 3;
