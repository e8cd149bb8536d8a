/** A sentence of the pattern's own in one dialect's terms in, the same in the other's out: `3-dc cl` is UK `3-tr cl`. */

import type { Terms } from './stitch-row.ts';
import { STITCHES, termsOf } from './table.ts';

/** Words other than stitches that differ: common practice. */
const OTHER_WORDS: readonly { readonly US: string; readonly UK: string }[] = [
  { US: 'skipped', UK: 'missed' },
  { US: 'skip', UK: 'miss' },
  { US: 'sk', UK: 'miss' },
  { US: 'yarn over', UK: 'yarn round hook' },
  { US: 'yo', UK: 'yrh' },
  { US: 'gauge', UK: 'tension' },
  { US: 'center', UK: 'centre' },
  { US: 'color', UK: 'colour' },
  { US: 'work even', UK: 'work straight' },
];

interface Exchange {
  readonly words: RegExp;
  readonly to: ReadonlyMap<string, string>;
}

const EXCHANGES: Readonly<Record<Terms, Exchange>> = { US: exchangeInto('US'), UK: exchangeInto('UK') };

/** All words are exchanged in one pass, so that `sc` made `dc` is not made `tr` in turn. */
export function inTerms(text: string, from: Terms, to: Terms): string {
  if (from === to) return text;
  const { words, to: exchanged } = EXCHANGES[to];
  return text.replace(words, (found) => {
    const other = exchanged.get(found.toLowerCase()) ?? found;
    return /^[A-Z][a-z]/.test(found) ? capital(other) : other;
  });
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function exchangeInto(to: Terms): Exchange {
  const from = to === 'US' ? 'UK' : 'US';
  const exchanged = new Map<string, string>();
  const add = (word: string, other: string): void => {
    if (!exchanged.has(word.toLowerCase())) exchanged.set(word.toLowerCase(), other);
  };
  for (const row of STITCHES) {
    const [own, other] = [termsOf(row, from), termsOf(row, to)];
    add(own.abbr, other.abbr);
    add(own.name, other.name);
    // Names are often said without their last word: `treble` for `treble crochet`.
    const short = own.name.replace(/ crochet$/, '');
    if (short !== own.name && /treble/.test(short)) add(short, other.name);
    // `FPtr` is the UK form of a stitch printed `RtrF`, and another stitch in US terms: it must not stand as it is.
    if (row.enters !== undefined) for (const spelling of own.alsoRead) add(spelling, other.abbr);
  }
  for (const pair of OTHER_WORDS) add(pair[from], pair[to]);
  const longestFirst = [...exchanged.keys()].sort((a, b) => b.length - a.length);
  // A digit before or a plural s after may be glued: `3dc`, `double crochets`.
  return { words: new RegExp(`(?<![a-z])(?:${longestFirst.join('|')})(?=s?(?![a-z]))`, 'gi'), to: exchanged };
}
