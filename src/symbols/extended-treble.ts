/** Extended treble crochet: a T with two slashes on the chain it begins with. */

import { CHAIN_BASE } from './chain-base.ts';
import { tallStitch } from './tall-stitch.ts';

export const extendedTreble = tallStitch({ slashes: 2, heightU: 3.2, base: CHAIN_BASE });
