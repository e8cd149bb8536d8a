/** Font bytes in, a ruler out that tells how wide a text comes out when painted. */

import type { Font } from 'fontkit';
import type { Face } from '../scene/scene.ts';
import { openFont } from './fonts.ts';

export type FontBytes = Readonly<Record<Face, Uint8Array>>;

export interface TextRuler {
  /** In mm, as `paintPdf` will draw it: kerned within words. */
  measureText(text: string, face: Face, sizeMm: number): number;
}

/** Faces are opened when first asked for; widths of words are kept, since a booklet repeats the same few hundred. */
export function textRuler(fonts: FontBytes): TextRuler {
  const opened = new Map<Face, FaceRuler>();
  const open = (face: Face): FaceRuler => {
    const known = opened.get(face);
    if (known) return known;
    const made = { font: openFont(fonts[face]), widths: new Map<string, number>() };
    opened.set(face, made);
    return made;
  };
  return {
    measureText: (text, face, sizeMm) => widthInEm(text, open(face)) * sizeMm,
  };
}

interface FaceRuler {
  readonly font: Font;
  /** In ems, by word. */
  readonly widths: Map<string, number>;
}

function widthInEm(text: string, { font, widths }: FaceRuler): number {
  let sum = 0;
  for (const word of wordsApart(text)) {
    let width = widths.get(word);
    if (width === undefined) {
      width = font.layout(word).advanceWidth / font.unitsPerEm;
      widths.set(word, width);
    }
    sum += width;
  }
  return sum;
}

/** Each word with the space after it: they are set one by one, and nothing is kerned across a space. */
export function wordsApart(text: string): string[] {
  const words: string[] = [];
  let from = 0;
  while (from < text.length) {
    const space = text.indexOf(' ', from);
    const end = space < 0 ? text.length : space + 1;
    words.push(text.slice(from, end));
    from = end;
  }
  return words;
}
