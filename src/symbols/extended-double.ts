/** Extended double crochet: a T with one slash on the chain it begins with. */

import { CHAIN_BASE } from './chain-base.ts';
import { tallStitch } from './tall-stitch.ts';

export const extendedDouble = tallStitch({ slashes: 1, heightU: 2.4, base: CHAIN_BASE });
