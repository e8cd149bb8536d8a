/** How a blanket is joined, as it is told: what to do first, every seam with its stitches, what comes after. */

export interface JoiningWords {
  /** What to do before the first seam. */
  readonly before: readonly string[];
  /** In the order they are worked. */
  readonly seams: readonly { readonly label: string; readonly text: string; readonly count: string }[];
  readonly after: readonly string[];
}
