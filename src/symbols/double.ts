/** Double crochet: a T with one slash, for its one yarn over. */

import { tallStitch } from './tall-stitch.ts';

export const double = tallStitch({ slashes: 1, heightU: 2.0 });
