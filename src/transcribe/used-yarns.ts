/** Rows in, the letters of the yarns they name out. */

import { readInstructions } from '../notation/read.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { joinTexts } from './mapped-pieces.ts';
import type { Given, TranscribedPart } from './transcript.ts';

/** Letters that the rows use and the materials do not list, each where it is first named. */
export function usedYarns(
  file: string,
  text: string,
  parts: readonly TranscribedPart[],
  listed: readonly string[],
  asked: { readonly terms: Terms; readonly sizes: number; readonly specials: readonly string[] },
): Given<string>[] {
  const found = new Map<string, Given<string>>();
  for (const part of parts) {
    const { diagnostics } = readInstructions(joinTexts(part.lines, '\n'), { file, ...asked, yarns: listed });
    for (const { code, span } of diagnostics) {
      const letter = text.slice(span.start, span.end).trim().toUpperCase();
      if (code !== 'yarn/unlisted' || !/^[A-Z][A-Z0-9]{0,2}$/.test(letter) || found.has(letter)) continue;
      found.set(letter, { value: letter, span });
    }
  }
  return [...found.values()].sort((a, b) => (a.value < b.value ? -1 : 1));
}
