/** Numbers in, the words a voice says for them out: `thirty-six`, `one hundred and twelve`, `second`. */

import { SMALL_WORDS, TENS_WORDS } from '../notation/number-words.ts';
import type { Terms } from '../stitches/stitch-row.ts';

/** Whole numbers below a million. Those who speak UK terms say "and" behind hundreds. */
export function numberWords(n: number, terms: Terms): string {
  if (n < SMALL_WORDS.length) return SMALL_WORDS[n] ?? String(n);
  if (n < 100) {
    const tens = TENS_WORDS[Math.floor(n / 10) - 2] ?? '';
    return n % 10 === 0 ? tens : `${tens}-${SMALL_WORDS[n % 10]}`;
  }
  const [size, word] = n < 1000 ? [100, 'hundred'] : [1000, 'thousand'];
  const rest = n % size;
  const head = `${numberWords(Math.floor(n / size), terms)} ${word}`;
  if (rest === 0) return head;
  return `${head}${terms === 'UK' && rest < 100 ? ' and' : ''} ${numberWords(rest, terms)}`;
}

const IRREGULAR: ReadonlyMap<string, string> = new Map([
  ['one', 'first'],
  ['two', 'second'],
  ['three', 'third'],
  ['five', 'fifth'],
  ['eight', 'eighth'],
  ['nine', 'ninth'],
  ['twelve', 'twelfth'],
]);

/** `second`, `twenty-first`. */
export function ordinalWords(n: number, terms: Terms): string {
  const words = numberWords(n, terms);
  const [before, last] = /^(.*[ -])?([a-z]+)$/.exec(words)?.slice(1) ?? [];
  const said = last ?? words;
  return `${before ?? ''}${IRREGULAR.get(said) ?? `${said.replace(/y$/, 'ie')}th`}`;
}
