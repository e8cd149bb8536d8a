/** Photographs as the file names them and as they were found: what keeps one from being shown, and what a reader would miss. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { nearest } from '../diagnostics/nearest.ts';
import {
  leadsOut,
  type Photograph,
  type PhotographLook,
  type PhotographLooks,
} from '../pattern/photograph.ts';
import { type Publication, placeOf } from './publication.ts';

/** Across its longer side: 17 cm, the width of a page, at 150 dots to the inch. Our own choice. */
export const LEAST_PRINTED_PX = 1000;

export function photographs({ pattern, looks }: Publication): Diagnostic[] {
  return pattern.photographs.flatMap((photograph, index) => {
    const at = (key: string) => ({
      file: pattern.source.file,
      span: placeOf(pattern, `photographs.${index}.${key}`, `photographs.${index}`),
    });
    const { part } = photograph;
    const found = pictureFaults(photograph, looks, at('file'), at('shows'));
    const names = pattern.parts.map(({ name }) => name);
    if (part !== null && !names.includes(part))
      found.push(
        diagnose('photograph/part', at('part'), { given: part, nearest: nearest(part, names), names }),
      );
    return found;
  });
}

/** Of the picture itself and of what is said of it, wherever it is to stand. */
export function pictureFaults(
  photograph: Photograph,
  looks: PhotographLooks,
  atFile: At,
  atShows: At,
): Diagnostic[] {
  const { file, shows } = photograph;
  const ofFile = leadsOut(file)
    ? [diagnose('photograph/outside', atFile, { given: file })]
    : lookFaults(file, looks.get(file), atFile);
  return saysNothing(photograph)
    ? [...ofFile, diagnose('photograph/says-nothing', atShows, { shows })]
    : ofFile;
}

type At = Parameters<typeof diagnose>[1];

/** Nothing is said where nobody has looked. */
function lookFaults(given: string, look: PhotographLook | undefined, at: At): Diagnostic[] {
  switch (look?.kind) {
    case undefined:
      return [];
    case 'missing':
      return [diagnose('photograph/missing', at, { given, near: look.near })];
    case 'outside':
      return [diagnose('photograph/outside', at, { given })];
    case 'no picture':
      return [diagnose('photograph/kind', at, { given, is: look.given })];
    case 'broken':
      return [diagnose('photograph/broken', at, { given })];
    case 'too large':
      return [diagnose('photograph/too-large', at, { given, ...look })];
    case 'picture': {
      const { widthPx, heightPx } = look;
      if (Math.max(widthPx, heightPx) >= LEAST_PRINTED_PX) return [];
      return [diagnose('photograph/small', at, { given, widthPx, heightPx, least: LEAST_PRINTED_PX })];
    }
  }
}

/** `IMG_2041`, `photo 3`, or the file's own name: a reader who does not see it knows no more than before. */
function saysNothing({ file, shows }: Photograph): boolean {
  const letters = (words: string): string => words.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');
  const name = file.split(/[\\/]/).at(-1) ?? file;
  if ([name, name.replace(/\.[^.]*$/, '')].some((one) => letters(one) === letters(shows))) return true;
  return /^\W*(?:(?:img|dsc[nf]?|pxl|image|picture|photo|photograph|cover|untitled)[\W_\d]*)+$/i.test(shows);
}
