/** Triple treble crochet: a T with four slashes, for its four yarn overs. */

import { tallStitch } from './tall-stitch.ts';

export const tripleTreble = tallStitch({ slashes: 4, heightU: 4.4 });
