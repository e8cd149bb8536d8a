/** Pages in, the characters their faces cannot draw out, each with its place in the pattern file. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Face, Scene } from '../scene/scene.ts';
import type { Source } from '../source/span.ts';
import { walkShapes } from './walk-shapes.ts';

/** One fault a character, however often it stands in the booklet. */
export function missingCharacters(
  pages: readonly Scene[],
  missing: (text: string, face: Face) => readonly string[],
  source: Source,
): Diagnostic[] {
  const found = new Set<string>();
  for (const { shape } of pages.flatMap((page) => walkShapes(page.shapes))) {
    if (shape.kind === 'text') for (const character of missing(shape.text, shape.face)) found.add(character);
  }
  return [...found].map((character) => {
    const start = Math.max(0, source.text.indexOf(character));
    const span = { start, end: start + (source.text.includes(character) ? character.length : 0) };
    const codePoint = character.codePointAt(0) ?? 0;
    return diagnose('booklet/character', { file: source.file, span }, { character, codePoint });
  });
}
