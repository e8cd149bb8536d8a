/** A sentence of the designer's own in, the same in the voice's terms out, with the trade's short forms spelt out in full words. */

import { inTerms } from '../stitches/in-terms.ts';
import { pluralAbbr, pluralName } from '../stitches/plural.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { STITCHES, termsOf } from '../stitches/table.ts';
import { phrasesOf } from './phrases.ts';
import type { Voice } from './voice.ts';

export function ownWords(text: string, voice: Voice): string {
  const said = inTerms(text, voice.from, voice.terms);
  if (voice.form === 'abbreviated') return said;
  const { words, full } = SPELT_OUT[voice.terms];
  return said.replace(words, (found) => {
    const long = full.get(found) ?? full.get(found.toLowerCase()) ?? found;
    return /^\p{Lu}\p{Ll}/u.test(found) ? long.charAt(0).toUpperCase() + long.slice(1) : long;
  });
}

interface SpeltOut {
  readonly words: RegExp;
  readonly full: ReadonlyMap<string, string>;
}

const SPELT_OUT: Readonly<Record<Terms, SpeltOut>> = { US: speltOut('US'), UK: speltOut('UK') };

function speltOut(terms: Terms): SpeltOut {
  const full = new Map<string, string>();
  const add = (short: string, long: string): void => {
    // "Bullion" is already a word of "bullion stitch".
    if (short !== long && !long.startsWith(`${short} `) && !full.has(short)) full.set(short, long);
  };
  for (const row of STITCHES) {
    const { abbr, name } = termsOf(row, terms);
    add(abbr, name);
    add(pluralAbbr(abbr), pluralName(name));
  }
  const [short, long] = [phrasesOf({ terms, form: 'abbreviated' }), phrasesOf({ terms, form: 'full' })];
  for (const noun of ['st', 'sp', 'round'] as const) {
    add(short[noun].one.toLowerCase(), long[noun].one.toLowerCase());
    add(short[noun].many.toLowerCase(), long[noun].many.toLowerCase());
  }
  for (const word of [
    'skip',
    'repeat',
    'beginning',
    'turningChain',
    'yarnOver',
    'backLoop',
    'frontLoop',
    'rightSide',
    'wrongSide',
  ] as const) {
    add(short[word], long[word]);
  }
  const longestFirst = [...full.keys()].sort((a, b) => b.length - a.length);
  return { words: new RegExp(`(?<![A-Za-z])(?:${longestFirst.join('|')})(?![A-Za-z])`, 'gi'), full };
}
