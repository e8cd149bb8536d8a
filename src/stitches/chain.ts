/** Rows of the stitch table for the chain and the slip stitch. */

import type { StitchRow } from './stitch-row.ts';

export const CHAIN = [
  {
    id: 'ch',
    family: 'chain',
    us: { abbr: 'ch', name: 'chain', alsoRead: ['chain stitch', 'chain st', 'ch st'] },
    uk: { abbr: 'ch', name: 'chain', alsoRead: ['chain stitch', 'chain st', 'ch st'] },
    yarnOvers: 0,
    // Lying along the row a chain is about a quarter as thick as a single crochet is tall (memory).
    heightChains: 0.25,
    heightInSc: 0.25,
    // A measured strip: 5.1 in of yarn an inch of chain against 10.6 for single crochet.
    yarnInSc: 0.48,
    uses: 0,
    makes: 1,
    counted: false,
    turningChain: null,
    lies: true,
    legOf: 'ch',
    symbol: 'chain',
    how: 'Wrap the yarn round the hook and draw it through the loop on the hook.',
    source: "published: US reference book, chart of terms, one maker's measured strips; height from memory",
  },
  {
    id: 'sl-st',
    family: 'slip',
    us: {
      abbr: 'sl st',
      name: 'slip stitch',
      alsoRead: ['slst', 'sl-st', 'ss', 's s', 'slip st', 'slip-stitch'],
    },
    uk: {
      abbr: 'ss',
      name: 'slip stitch',
      alsoRead: ['sl st', 'slst', 'sl-st', 's s', 'slip st', 'slip-stitch'],
    },
    yarnOvers: 0,
    heightChains: 0,
    heightInSc: 0,
    yarnInSc: 0.48,
    uses: 1,
    makes: 1,
    counted: false,
    turningChain: { chains: 0, counts: 'no' },
    legOf: 'sl-st',
    symbol: 'slip-stitch',
    how: 'Insert the hook, wrap the yarn and draw it through the work and the loop on the hook in one go.',
    source: 'published: US reference book, chart of terms, UK craft-book publisher; yarn from memory',
  },
] as const satisfies readonly StitchRow[];
