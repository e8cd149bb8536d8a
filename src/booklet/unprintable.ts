/** A pattern in, the characters its booklet could not print out, each once, where it first stands in the file. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Span } from '../source/span.ts';
import { isPrintable } from './printable-characters.ts';

export function unprintableCharacters(pattern: Pattern): Diagnostic[] {
  const { file, text } = pattern.source;
  const found = new Map<string, Span>();
  for (const place of valuePlaces(pattern)) {
    let start = place.start;
    for (const character of text.slice(place.start, place.end)) {
      // Letters lost in saving have a fault of their own.
      if (!isPrintable(character) && character !== '\uFFFD' && !found.has(character)) {
        found.set(character, { start, end: start + character.length });
      }
      start += character.length;
    }
  }
  return [...found].map(([character, span]) =>
    diagnose('booklet/character', { file, span }, { character, codePoint: character.codePointAt(0) ?? 0 }),
  );
}

/** What files are called is printed nowhere. */
const FILE_NAME = /^photographs\.\d+\.file$/;

/** Places of plain values only: a list's or a mapping's would take in the comments between them. */
function valuePlaces({ places }: Pattern): Span[] {
  const parents = new Set<string>();
  for (const path of places.keys()) {
    for (let dot = path.lastIndexOf('.'); dot > 0; dot = path.lastIndexOf('.', dot - 1))
      parents.add(path.slice(0, dot));
  }
  return [...places]
    .filter(([path]) => !parents.has(path) && !FILE_NAME.test(path))
    .map(([, span]) => span)
    .sort((a, b) => a.start - b.start);
}
