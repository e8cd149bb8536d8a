/** Treble crochet: a T with two slashes, for its two yarn overs. */

import { tallStitch } from './tall-stitch.ts';

export const treble = tallStitch({ slashes: 2, heightU: 2.8 });
