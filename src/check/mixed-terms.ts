/**
 * Words that only the other terms use, in rows and in sentences.
 *
 * In rows a stitch of the other terms is no stitch at all and told when they are read, so only other words are looked
 * for there. A sentence that speaks of the other terms by name is explaining them.
 */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { FOREIGN_ROW_WORDS, FOREIGN_WORDS, type ForeignWords, ownWord } from '../stitches/words-apart.ts';
import { proseOf, type Sentences } from './prose.ts';
import type { Publication } from './publication.ts';

const NAMES: Readonly<Record<Terms, RegExp>> = {
  US: /\bU\.?S\.?A?\b|\bAmerican?\b/,
  UK: /\bU\.?K\b|\bBritish\b|\bBritain\b/,
};

export function mixedTerms({ pattern }: Publication): Diagnostic[] {
  const { terms, source } = pattern;
  const other: Terms = terms === 'US' ? 'UK' : 'US';
  const own = new Set(pattern.specials.flatMap(({ name, fullName }) => [name, fullName.toLowerCase()]));
  const rows = pattern.parts.flatMap(({ instructions }) =>
    instructions.lines
      .filter(({ readable }) => readable)
      .map(({ span }) => ({ text: source.text.slice(span.start, span.end), span })),
  );
  const look = (texts: readonly Sentences[], foreign: ForeignWords): Diagnostic[] =>
    texts.flatMap(({ text, span }) =>
      [...text.matchAll(foreign.find)]
        .filter(([word]) => !own.has(word.toLowerCase()))
        .map((found) => {
          const start = span.start + found.index;
          const [word] = found;
          const at = { start, end: start + word.length };
          const facts = { word: word.toLowerCase(), terms, other, own: ownWord(word, foreign) };
          return diagnose('terms/mixed', { file: source.file, span: at }, facts);
        }),
    );
  return [
    ...look(rows, FOREIGN_ROW_WORDS[terms]),
    ...look(
      proseOf(pattern).filter(({ text }) => !NAMES[other].test(text)),
      FOREIGN_WORDS[terms],
    ),
  ];
}
