/**
 * Stitches along an edge and how many lie flat there in, whether they ruffle it or pull it in out.
 *
 * The trade works 1 single crochet to a row of single crochet, 2 to one of double, 3 to one of treble, though heights and
 * widths come to 0.93, 1.86 and 2.6, and some work 1 to a row of half double where 1.3 would lie flat (rules of thumb): what
 * lies between is usual, and only what lies well beyond it is told.
 */

export type Lie = 'flat' | 'ruffles' | 'pulls in';

const LEAST = 0.7;
const MOST = 1.4;
/** Along fewer places a stitch more or less shows in the ratio and not in the work. */
const FEWEST_PLACES = 8;

/** `flat` is how many stitches of the gauge's width are as long as the edge. */
export function howItLies(stitches: number, flat: number, places: number): Lie {
  if (places < FEWEST_PLACES || flat <= 0) return 'flat';
  const ratio = stitches / flat;
  if (ratio < LEAST) return 'pulls in';
  return ratio > MOST ? 'ruffles' : 'flat';
}
