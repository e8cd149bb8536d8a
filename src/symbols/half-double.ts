/** Half double crochet: a T without a slash. */

import { tallStitch } from './tall-stitch.ts';

export const halfDouble = tallStitch({ slashes: 0, heightU: 1.4 });
