/** Rows of the stitch table for linked stitches: a loop from the side bar of the stitch before stands in for each wrap. */

import { type PlainId, plainRow, shortName } from './plain-row.ts';
import type { StitchRow, StitchTerms, SymbolId } from './stitch-row.ts';

interface Linked {
  readonly id: PlainId;
  readonly symbol: SymbolId;
  /** What takes the place of the wraps. */
  readonly bars: string;
}

const STITCHES: readonly Linked[] = [
  { id: 'dc', symbol: 'linked-double', bars: 'Draw a loop up through the side bar of the stitch before' },
  {
    id: 'tr',
    symbol: 'linked-treble',
    bars: 'Draw a loop up through each of the two side bars of the stitch before',
  },
];

export const LINKED: readonly StitchRow[] = STITCHES.map(({ id, symbol, bars }): StitchRow => {
  const plain = plainRow(id);
  return {
    ...plain,
    id: `linked-${id}`,
    family: 'linked',
    us: linkedTerms(plain.us),
    uk: linkedTerms(plain.uk),
    // The loops from the bars take what the wraps would.
    yarnOvers: 0,
    symbol,
    how: plain.how.replace(/^Wrap the yarn (?:once|twice)/, bars),
    source: 'memory',
  };
});

/** `ltr` is the US linked treble and the UK linked treble: two stitches, one height apart. */
function linkedTerms({ abbr, name }: StitchTerms): StitchTerms {
  return {
    abbr: `l${abbr}`,
    name: `linked ${name}`,
    alsoRead: [`linked ${abbr}`, `linked-${abbr}`, `linked ${shortName(name)}`],
  };
}
