/** Extended half double crochet: a T on the chain it begins with. */

import { CHAIN_BASE } from './chain-base.ts';
import { tallStitch } from './tall-stitch.ts';

export const extendedHalfDouble = tallStitch({ slashes: 0, heightU: 1.75, base: CHAIN_BASE });
