/** A pattern's instructions in, the special stitches that the trade itself fixes for it out: `inc` and `dec` in single crochet. */

import type { Terms } from '../stitches/stitch-row.ts';
import { stitchById, termsOf } from '../stitches/table.ts';

export interface ImpliedSpecial {
  readonly name: string;
  readonly fullName: string;
  /** In the pattern's own terms. */
  readonly work: string;
}

/** Words that show some other stitch is about, so that "inc" could mean that one. */
const TALLER: Readonly<Record<Terms, RegExp>> = {
  US: /\b(?:hdc|dc|tr|dtr|esc|edc|half[ -]double|double|treble)(?:\d*tog)?\b/i,
  UK: /\b(?:htr|tr|dtr|trtr|edc|half[ -]treble|treble)(?:\d*tog)?\b/i,
};

/**
 * In work that is all single crochet an increase is two in one and a decrease two together (common practice); beside
 * other stitches it has no one meaning and the pattern must describe it.
 */
export function impliedSpecials(
  texts: readonly string[],
  terms: Terms,
  described: readonly string[],
): ImpliedSpecial[] {
  if (texts.some((text) => TALLER[terms].test(text))) return [];
  const sc = termsOf(stitchById('sc'), terms).abbr;
  const known: readonly ImpliedSpecial[] = [
    { name: 'inc', fullName: 'increase', work: `2 ${sc} in same st` },
    { name: 'dec', fullName: 'decrease', work: termsOf(stitchById('sc2tog'), terms).abbr },
  ];
  return known.filter(({ name }) => {
    const used = new RegExp(`\\b${name}s?\\b`, 'i');
    return !described.includes(name) && texts.some((text) => used.test(text));
  });
}
