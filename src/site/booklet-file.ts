/** One size of a compiled pattern, or all of them, and the edition wanted in, the bytes of its booklet out, set in the fonts on the disk. */

import type { CompiledPattern } from '../compiled.ts';
import { type BookletChoice, type BookletSizes, printBooklet } from '../print-booklet.ts';
import { readFontFiles } from './font-files.ts';

export function bookletFile(
  compiled: CompiledPattern,
  sizes: BookletSizes,
  choice: BookletChoice,
): Promise<Uint8Array> {
  return printBooklet(compiled, sizes, choice, readFontFiles());
}
