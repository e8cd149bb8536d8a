/** Rows of the stitch table for ways to begin in the middle. */

import type { StitchRow } from './stitch-row.ts';

const ALSO_READ = ['magic circle', 'magic loop', 'adjustable ring', 'adjustable loop', 'm r'];

export const START = [
  {
    id: 'mr',
    family: 'start',
    us: { abbr: 'MR', name: 'magic ring', alsoRead: ALSO_READ },
    uk: { abbr: 'MR', name: 'magic ring', alsoRead: ALSO_READ },
    yarnOvers: 0,
    heightChains: 0,
    heightInSc: 0,
    // About the length of one single crochet goes round the finger; the tail is reckoned with the other tails.
    yarnInSc: 1,
    uses: 0,
    makes: 0,
    counted: false,
    turningChain: null,
    legOf: 'mr',
    symbol: 'magic-ring',
    how: 'Lay the yarn in a loop, work the first round into the loop, then pull the tail to close it.',
    source: 'memory',
  },
] as const satisfies readonly StitchRow[];
