/** Text and a face embedded in a document -> what shows it on a page: glyphs by their codes, moved where they are kerned. */

import type { PdfFont, PdfReference } from 'pdfkit';
import { wordsApart } from './text-width.ts';

interface ShownWord {
  /** Of a string in an array for `TJ`, without its ends; it may close the string and open another. */
  readonly codes: string;
  readonly widthEm: number;
}

export class PdfFace {
  private readonly font: PdfFont;
  /** A booklet repeats the same few hundred. */
  private readonly words = new Map<string, ShownWord>();

  constructor(font: PdfFont) {
    this.font = font;
  }

  /** Its name among the resources of a page. */
  get name(): string {
    return this.font.id;
  }

  /** The object itself. */
  get reference(): PdfReference {
    return this.font.ref();
  }

  /** An array for `TJ`, without its first `[<` and its last `>]`. A glyph may be raised by a share of the type's `size`. */
  codes(text: string, size: number): string {
    let codes = '';
    for (const word of wordsApart(text)) codes += this.word(word, size).codes;
    return codes;
  }

  widthEm(text: string): number {
    let width = 0;
    for (const word of wordsApart(text)) width += this.word(word, 1).widthEm;
    return width;
  }

  private word(text: string, size: number): ShownWord {
    const known = this.words.get(text);
    if (known !== undefined) return known;
    const [glyphs, positions] = this.font.encode(text);
    let codes = '';
    let width = 0;
    let raised = false;
    for (const [index, { xAdvance, advanceWidth, xOffset, yOffset }] of positions.entries()) {
      const back = thousandths(advanceWidth - xAdvance);
      const glyph = glyphs[index] ?? '';
      width += xAdvance;
      if (xOffset === 0 && yOffset === 0) codes += back === 0 ? glyph : `${glyph}> ${back} <`;
      else {
        const rise = thousandths((yOffset / 1000) * size);
        raised ||= rise !== 0;
        const shown = rise === 0 ? glyph : `>] TJ ${rise} Ts [<${glyph}>] TJ 0 Ts [<`;
        codes += `> ${thousandths(-xOffset)} <${shown}> ${thousandths(xOffset + back)} <`;
      }
    }
    const word = { codes, widthEm: width / 1000 };
    if (!raised) this.words.set(text, word);
    return word;
  }
}

/** Of a thousandth of an em there is no need to say more. */
function thousandths(number: number): number {
  return Math.round(number * 100) / 100;
}
