/** One size of a compiled pattern, or all of them, and the edition wanted in, the bytes of its booklet out, set in the fonts on the disk. */

import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import type { FontBytes } from '../paint/text-width.ts';
import { type BookletChoice, type BookletSizes, printBooklet, printTesterSheets } from '../print-booklet.ts';
import { readFontFiles } from './font-files.ts';
import { recallWords } from './kept-words.ts';
import { paperPhotographs } from './make-pictures.ts';

export function testerSheets(
  compiled: CompiledPattern,
  sizes: readonly CompiledSize[],
  choice: Pick<BookletChoice, 'dialect' | 'paper' | 'lowInk'>,
): Promise<Uint8Array> {
  return printTesterSheets(compiled, sizes, choice, fontsToPrint());
}

export async function bookletFile(
  compiled: CompiledPattern,
  sizes: BookletSizes,
  choice: BookletChoice,
): Promise<Uint8Array> {
  const { pattern, photographs } = compiled;
  const pictured = pattern !== null && !(choice.lowInk || choice.holds === 'words');
  const printed = pictured ? await paperPhotographs(photographs, pattern) : [];
  return printBooklet(compiled, sizes, { ...choice, photographs: printed }, fontsToPrint());
}

function fontsToPrint(): FontBytes {
  const fonts = readFontFiles();
  recallWords(fonts);
  return fonts;
}
