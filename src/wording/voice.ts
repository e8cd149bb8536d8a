/** Who the words are for: whose terms, abbreviated or in full, one size's numbers or all sizes' at once. */

import type { EvenlyStep } from '../notation/tree.ts';
import type { Special } from '../pattern/pattern.ts';
import { inTerms } from '../stitches/in-terms.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { type Phrases, phrasesOf } from './phrases.ts';
import type { Dialect } from './words.ts';

/** The size whose numbers are printed, by its place in the list, or every size's: `35 (44, 53)`. */
export type Numbers = number | 'all';

export interface Voice extends Dialect {
  readonly phrases: Phrases;
  readonly numbers: Numbers;
  /** Names of the special stitches as this dialect prints them, by the pattern's own name. */
  readonly specials: ReadonlyMap<string, string>;
  /** Those of them that are abbreviations, which take no s: `4 cl`. */
  readonly shortSpecials: ReadonlySet<string>;
  /** The terms the pattern's own sentences are written in. */
  readonly from: Terms;
  /** The label has the numbers of the rows to repeat, so the step need not say how far. */
  readonly rowsInLabel: boolean;
  /** Stitches that go into each place of `work 21 sc evenly`, where they have been worked out. */
  readonly spreads: ReadonlyMap<EvenlyStep, readonly number[]>;
}

/** A voice for one pattern; `from` is the terms the pattern's own names of special stitches are written in. */
export function voiceOf(
  dialect: Dialect,
  numbers: Numbers,
  specials: readonly Special[],
  from: Terms,
): Voice {
  const named = specials.map((special): readonly [string, string] => {
    const { name, fullName } = special;
    return [name, inTerms(dialect.form === 'full' ? fullName : name, from, dialect.terms)];
  });
  return {
    ...dialect,
    phrases: phrasesOf(dialect),
    numbers,
    specials: new Map(named),
    shortSpecials: new Set(dialect.form === 'full' ? [] : specials.filter(isShort).map(({ name }) => name)),
    from,
    rowsInLabel: false,
    spreads: new Map(),
  };
}

/** Terms alone, with the numbers as the tree has them: what the notation's reader reads back. */
export function plainVoice(terms: Terms, numbers: Numbers): Voice {
  return voiceOf({ terms, form: 'abbreviated' }, numbers, [], terms);
}

/** `cl` for cluster; `V-st` ends in a word that takes its s. */
function isShort({ name, fullName }: Special): boolean {
  return name !== fullName && !/st$/i.test(name) && name.length < fullName.length;
}
