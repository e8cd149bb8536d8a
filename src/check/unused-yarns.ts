/** A yarn that is listed but never used would be bought for nothing. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Publication } from './publication.ts';
import { usedNames, WHICHEVER } from './used-names.ts';

/** A single yarn need not be named in the rows: everything is worked in it. */
export function unusedYarns({ pattern, sizes }: Publication): Diagnostic[] {
  const { yarns, sure } = usedNames(pattern);
  if (!sure || yarns.has(WHICHEVER) || pattern.yarns.length < 2) return [];
  // A main colour is what is worked in until another is named; a letter has to be.
  const [first] = pattern.yarns;
  const main =
    first !== undefined &&
    (MAIN.has(first.letter) || !isLettered(first.letter, pattern)) &&
    sizes.some(({ fabric }) => fabric.yarn.includes(0));
  const finishing = (pattern.finishing ?? []).join(' ');
  const stripes = pattern.notes.filter((note) => ROWS.test(note));
  return pattern.yarns
    .filter(
      ({ letter }, i) =>
        !yarns.has(letter) &&
        !sewnWith(letter, finishing) &&
        // `Square (6 in A, 5 in B)`.
        !pattern.parts.some(({ name }) => sewnWith(letter, name)) &&
        !stripes.some((rows) => isStriped(letter, rows)) &&
        !(i === 0 && (yarns.size === 0 || main)),
    )
    .map(({ letter }) => {
      const span = pattern.places.get(`yarn.${letter}`) ?? { start: 0, end: 0 };
      return diagnose('yarn/unused', { file: pattern.source.file, span }, { letter });
    });
}

/** `One ball in rose, oddments of green`: a letter that only this house gives a yarn is none that rows would name. */
function isLettered(letter: string, { places, source }: Publication['pattern']): boolean {
  const { start, end } = places.get(`yarn.${letter}`) ?? { start: 0, end: 0 };
  return new RegExp(`\\b${letter}\\b`).test(source.text.slice(start, end));
}

const MAIN = new Set(['MC', 'M']);

const ROWS = /^(?:rows?|rnds?|rounds?)\b/i;

/** `Rows 16-30: Color B` in a list of stripes. */
function isStriped(letter: string, rows: string): boolean {
  return new RegExp(`[:\\s]${letter}\\b[^:]*$`).test(rows);
}

/** `Sew the shoulder seams with CC`: it is not bought for nothing. */
function sewnWith(letter: string, finishing: string): boolean {
  return new RegExp(`\\b(?:with|in|using|yarn|colou?r)\\s+${letter}\\b`).test(finishing);
}
