/** Rows of the stitch table for stitches that begin a row or a new yarn with no turning chain: they count and are drawn as the plain stitch. */

import { type PlainId, plainRow, shortName, small } from './plain-row.ts';
import type { StitchRow, StitchTerms } from './stitch-row.ts';

const PLAIN: readonly PlainId[] = ['sc', 'hdc', 'dc', 'tr'];

// Rows of their own, and no other spelling of the plain stitch, so that the printed words still say "standing".
export const STANDING: readonly StitchRow[] = [...PLAIN.map(standingRow), chainlessRow()];

function standingRow(id: PlainId): StitchRow {
  const plain = plainRow(id);
  return {
    ...plain,
    id: `standing-${id}`,
    family: 'fancy',
    us: standingTerms(plain.us),
    uk: standingTerms(plain.uk),
    turningChain: null,
    how: `Begin with a slip knot of the yarn on the hook, then ${small(plain.how)}`,
    source:
      id === 'dc' ? 'published: independent teaching page, motif pattern; figures from memory' : 'memory',
  };
}

function standingTerms({ abbr, name }: StitchTerms): StitchTerms {
  return {
    abbr: `stdg ${abbr}`,
    name: `standing ${name}`,
    alsoRead: [`standing ${abbr}`, `standing ${shortName(name)}`, `std ${abbr}`, `stdg-${abbr}`],
  };
}

/** On the same yarn: no UK abbreviation is known, so the US one is put into UK terms. */
function chainlessRow(): StitchRow {
  const plain = plainRow('dc');
  const terms = (abbr: string, { abbr: own, name }: StitchTerms, also: readonly string[]): StitchTerms => ({
    abbr,
    name: `chainless starting ${name}`,
    alsoRead: [`chainless starting ${own}`, `chainless ${own}`, ...also],
  });
  return {
    ...plain,
    id: 'stacked-dc',
    family: 'fancy',
    us: terms('csdc', plain.us, ['stacked single crochet', 'stacked sc', 'ssc']),
    uk: terms('cstr', plain.uk, ['stacked double crochet', 'stacked dc']),
    turningChain: null,
    how: 'Pull up the loop on the hook, hold its foot, wrap it round the hook once, insert the hook, pull up a loop, then wrap the yarn and draw it through 2 loops, twice.',
    source: 'memory',
  };
}
