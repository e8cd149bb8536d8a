/** One size of a compiled pattern and the edition wanted in, the bytes of its booklet out, set in the fonts on the disk. */

import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import { type BookletChoice, printBooklet } from '../print-booklet.ts';
import { readFontFiles } from './font-files.ts';

export function bookletFile(
  compiled: CompiledPattern,
  size: CompiledSize,
  choice: BookletChoice,
): Promise<Uint8Array> {
  return printBooklet(compiled, size, choice, readFontFiles());
}
