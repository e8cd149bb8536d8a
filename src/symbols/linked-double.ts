/** Linked double crochet: a T tied once to its neighbours. */

import { linkedStitch } from './linked.ts';

export const linkedDouble = linkedStitch(1, 2.0);
