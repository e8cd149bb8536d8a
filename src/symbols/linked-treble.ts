/** Linked treble crochet: a T tied twice to its neighbours. */

import { linkedStitch } from './linked.ts';

export const linkedTreble = linkedStitch(2, 2.8);
