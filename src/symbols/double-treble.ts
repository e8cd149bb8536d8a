/** Double treble crochet: a T with three slashes, for its three yarn overs. */

import { tallStitch } from './tall-stitch.ts';

export const doubleTreble = tallStitch({ slashes: 3, heightU: 3.6 });
