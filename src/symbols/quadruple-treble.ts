/** Quadruple treble crochet: a T with five slashes, for its five yarn overs. */

import { tallStitch } from './tall-stitch.ts';

export const quadrupleTreble = tallStitch({ slashes: 5, heightU: 5.2 });
