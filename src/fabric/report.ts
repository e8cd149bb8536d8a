/** Why a row could not go on, worded as a fault at its place. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { RowAccount } from '../explain/row-account.ts';
import { wordUsed } from '../explain/word-used.ts';
import { abbreviation } from '../notation/describe-what.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { MOST_IN_PLACE, MOST_STITCHES } from './builder.ts';
import type { Trouble } from './trouble.ts';

export interface RowPlace {
  readonly file: string;
  readonly size: string;
  /** `Row 3`. */
  readonly row: string;
  /** Stitches of the row below, null when not known. */
  readonly below: number | null;
  readonly terms: Terms;
}

/** Null for trouble that only echoes an earlier fault. */
export function reportTrouble(trouble: Trouble, place: RowPlace, account: RowAccount): Diagnostic | null {
  const { file, row, terms } = place;
  const at = { file, span: trouble.span, sizes: [place.size] };
  switch (trouble.kind) {
    case 'used up':
      return diagnose('row/used-up', at, {
        row,
        wanted: trouble.wanted,
        below: place.below,
        used: wordUsed(account),
      });
    case 'too few': {
      const { n, left, what, goesOn } = trouble;
      return diagnose('row/too-few', at, { row, n, left, what, goesOn, used: wordUsed(account) });
    }
    case 'not there':
      if (trouble.join === true)
        return diagnose('join/not-there', at, { row, wanted: trouble.wanted, found: trouble.found });
      return diagnose('place/not-there', at, {
        row,
        wanted: trouble.wanted,
        found: trouble.found,
        nth: trouble.nth,
      });
    case 'uneven':
      return diagnose('repeat/uneven', at, { ...trouble, row });
    case 'endless':
      return diagnose('repeat/endless', at, { row });
    case 'two senses':
      return diagnose('repeat/two-senses', at, { row, times: trouble.times, fits: trouble.fits });
    case 'passed over':
      return diagnose('row/passed-over', at, { row, count: trouble.count, wanted: trouble.wanted });
    case 'after join':
      return diagnose('row/after-join', at, { row });
    case 'no foundation':
      return diagnose('row/nothing-below', at, { row });
    case 'no chain':
      return diagnose('place/no-chain', at, {
        row,
        wanted: trouble.wanted,
        chains: trouble.chains ?? 0,
      });
    case 'which stitch':
      return diagnose('place/which-stitch', at, { row, special: trouble.special });
    case 'no edge':
      return diagnose('place/no-edge', at, { row, edge: trouble.edge });
    case 'legs':
      return diagnose('stitch/legs', at, {
        stitch: abbreviation(trouble.stitch, terms),
        legs: trouble.legs,
        given: trouble.given,
      });
    case 'too many':
      return diagnose('size/too-large', at, { row, limit: MOST_STITCHES });
    case 'crowded':
      return diagnose('size/too-large', at, { row, limit: MOST_IN_PLACE, inPlace: trouble.n });
    case 'unknown':
      return null;
  }
}
