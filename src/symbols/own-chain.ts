/** The chain that a foundation stitch makes at its own foot: the chain's oval, lying under the stitch. */

import { CHAIN_THICKNESS_U } from './chain.ts';

/** As long as a stitch is wide, so that those of neighbours touch. */
export const OWN_CHAIN_LENGTH_U = 0.84;
/** How high it lifts the stitch. */
export const OWN_CHAIN_HEIGHT_U = CHAIN_THICKNESS_U;
