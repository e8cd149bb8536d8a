/** A pattern's special stitches in, their names and how they are made out, in the voice's words. */

import type { Pattern, Special } from '../pattern/pattern.ts';
import { inTerms } from '../stitches/in-terms.ts';
import { sentence } from './join-steps.ts';
import { ownWords } from './own-words.ts';
import { wordSteps } from './print-line.ts';
import type { Voice } from './voice.ts';
import type { WordedSpecial } from './words.ts';

export function wordSpecials(pattern: Pattern, voice: Voice): WordedSpecial[] {
  return pattern.specials.map((special) => ({
    name: nameOf(special, voice),
    called: voice.specials.get(special.name) ?? special.name,
    how: special.how === null ? wordSteps(special.steps, voice) : sentence(ownWords(special.how, voice)),
  }));
}

/** `beginning cluster (beg cl)`; the name once where the file gives no other, or where the words are in full. */
function nameOf({ name, fullName }: Special, voice: Voice): string {
  const full = inTerms(fullName, voice.from, voice.terms);
  if (name === fullName || voice.form === 'full') return full;
  return `${full} (${inTerms(name, voice.from, voice.terms)})`;
}
