/** A chart of one piece as the site, the booklet and the commands take it. */

import type { Scene } from '../scene/scene.ts';

export interface PartChart {
  /** The part's name; of a piece made of several, the first's, which the others are worked onto. */
  readonly part: string;
  /** Its key is drawn in it, in the terms asked for. */
  readonly scene: Scene;
  /** The same with a window of what repeats, for paper that the whole does not fit: the least left out first. */
  readonly folded: readonly FoldedChart[];
}

export interface FoldedChart {
  readonly scene: Scene;
  /** What is not drawn stitch for stitch. */
  readonly words: string;
}
