/** Font bytes in, a ruler out that tells how wide a text comes out when painted. */

import type { Face } from '../scene/scene.ts';
import { advanceOf, openFont, wordShaper, wordsApart } from './fonts.ts';

export type FontBytes = Readonly<Record<Face, Uint8Array>>;

export interface TextRuler {
  /** In mm, as `paintPdf` will draw it: kerned within words. */
  measureText(text: string, face: Face, sizeMm: number): number;
}

/** Faces are opened when first asked for. */
export function textRuler(fonts: FontBytes): TextRuler {
  const rulers = new Map<Face, (text: string) => number>();
  return {
    measureText: (text, face, sizeMm) => {
      let ruler = rulers.get(face);
      if (ruler === undefined) {
        ruler = faceRuler(fonts[face]);
        rulers.set(face, ruler);
      }
      return ruler(text) * sizeMm;
    },
  };
}

/** Widths in ems. */
function faceRuler(bytes: Uint8Array): (text: string) => number {
  const { unitsPerEm } = openFont(bytes);
  const shape = wordShaper(bytes);
  // A booklet asks for the same few hundred words, each several times over.
  const widths = new Map<string, number>();
  const ofWord = (word: string): number => {
    let width = widths.get(word);
    if (width === undefined) {
      width = advanceOf(shape(word)) / unitsPerEm;
      widths.set(word, width);
    }
    return width;
  };
  return (text) => {
    const space = text.indexOf(' ');
    if (space < 0 || space === text.length - 1) return text === '' ? 0 : ofWord(text);
    let sum = 0;
    for (const word of wordsApart(text)) sum += ofWord(word);
    return sum;
  };
}
