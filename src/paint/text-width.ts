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

/** PDFKit lays out each word with the space after it by itself, so nothing is kerned across a space. */
function widthInEm(text: string, { font, widths }: FaceRuler): number {
  let sum = 0;
  for (const word of text.match(/[^ \t]*[ \t]|[^ \t]+/g) ?? []) {
    let width = widths.get(word);
    if (width === undefined) {
      width = font.layout(word).advanceWidth / font.unitsPerEm;
      widths.set(word, width);
    }
    sum += width;
  }
  return sum;
}
