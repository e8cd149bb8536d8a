/** Rows of the stitch table for foundation stitches: each makes its own chain at its foot, so that no chain is laid first. */

import { howEntered, type PlainId, plainRow, round2, shortName } from './plain-row.ts';
import type { StitchRow, StitchTerms } from './stitch-row.ts';

interface Own {
  readonly id: PlainId;
  /** The chain the row begins with, and the height of the row with its chain: common practice (memory). */
  readonly startChains: number;
  readonly counts: 'no' | 'varies';
  readonly heightInSc: number;
  readonly alsoUs: readonly string[];
}

const OWN: readonly Own[] = [
  { id: 'sc', startChains: 2, counts: 'no', heightInSc: 2, alsoUs: ['fdsc'] },
  { id: 'hdc', startChains: 2, counts: 'varies', heightInSc: 2.4, alsoUs: ['fdhdc'] },
  { id: 'dc', startChains: 3, counts: 'varies', heightInSc: 3, alsoUs: ['fddc'] },
  { id: 'tr', startChains: 4, counts: 'varies', heightInSc: 4, alsoUs: ['fdtr'] },
];

/** A chain takes this much of a single crochet's yarn, by one maker's measured strips. */
const CHAIN_IN_SC = 0.48;

export const FOUNDATION: readonly StitchRow[] = OWN.map(
  ({ id, startChains, counts, heightInSc, alsoUs }): StitchRow => {
    const plain = plainRow(id);
    return {
      ...plain,
      id: `f${id}`,
      family: 'foundation',
      us: foundationTerms(plain.us, alsoUs),
      uk: foundationTerms(plain.uk, []),
      heightChains: plain.heightChains + 1,
      heightInSc,
      yarnInSc: round2(plain.yarnInSc + CHAIN_IN_SC),
      uses: 0,
      turningChain: { chains: startChains, counts },
      enters: 'own chain',
      how: howEntered(plain, 'insert the hook in the chain at the foot of the stitch before').replace(
        'pull up a loop,',
        'pull up a loop, wrap the yarn and draw it through 1 loop for its own chain,',
      ),
      source: 'memory',
    };
  },
);

/** `fdc` is the US foundation double crochet and the UK foundation double crochet: two stitches, one height apart. */
function foundationTerms({ abbr, name }: StitchTerms, also: readonly string[]): StitchTerms {
  return {
    abbr: `f${abbr}`,
    name: `foundation ${name}`,
    alsoRead: [`foundation ${abbr}`, `foundation ${shortName(name)}`, `fdn ${abbr}`, `f-${abbr}`, ...also],
  };
}
