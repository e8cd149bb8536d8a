/** Rows in, the letters of the yarns they name out. */

import { readInstructions } from '../notation/read.ts';
import { fileSpan } from '../source/mapped-text.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { joinTexts } from './mapped-pieces.ts';
import type { Given, TranscribedPart } from './transcript.ts';

/** `with the main colour`, `join the contrast`: the trade's letters of those the rows name by what they are for. */
function rolesUsed(parts: readonly TranscribedPart[], listed: readonly string[]): Given<string>[] {
  if (listed.some((letter) => ROLE_LETTERS.test(letter))) return [];
  const lines = parts.flatMap(({ lines: all }) => all);
  const found = ROLES.flatMap(([letter, named]) => {
    for (const line of lines) {
      const match = named.exec(line.text);
      if (match !== null)
        return [{ value: letter, span: fileSpan(line, match.index, match.index + match[0].length) }];
    }
    return [];
  });
  return found.some(({ value }) => value === 'MC') ? found : [];
}

const ROLE_LETTERS = /^(?:MC?|CC\d?)$/;
const ROLES: readonly (readonly [string, RegExp])[] = [
  ['MC', /\bmain (?:colou?r|yarn)\b/i],
  ['CC', /\bcontrast(?:ing)?(?: colou?r)?\b/i],
];

/** Letters that the rows use and the materials do not list, each where it is first named. */
export function usedYarns(
  file: string,
  text: string,
  parts: readonly TranscribedPart[],
  listed: readonly string[],
  asked: { readonly terms: Terms; readonly sizes: number; readonly specials: readonly string[] },
): Given<string>[] {
  const found = new Map(rolesUsed(parts, listed).map((role) => [role.value, role]));
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
