/** Text and a face embedded in a document -> what shows it on a page: glyphs by their codes, moved where they are kerned. */

import type { PdfFont, PdfReference } from 'pdfkit';
import { advanceOf, type ShapedGlyph, type ShapedWord, wordShaper, wordsApart } from './fonts.ts';

interface ShownWord {
  /** Of a string in an array for `TJ`, without its ends; it may close the string and open another. */
  readonly codes: string;
  readonly widthEm: number;
}

export class PdfFace {
  private readonly font: PdfFont;
  private readonly shape: (word: string) => ShapedWord;
  /** By their numbers in the font. */
  private readonly glyphs = new Map<number, string>();
  private readonly words = new Map<string, ShownWord>();

  /** `bytes` are those of the font that the document was given. */
  constructor(font: PdfFont, bytes: Uint8Array) {
    this.font = font;
    this.shape = wordShaper(bytes);
  }

  /** Its name among the resources of a page. */
  get name(): string {
    return this.font.id;
  }

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
    const shaped = this.shape(text);
    const { scale } = this.font;
    let codes = '';
    let raised = false;
    for (const glyph of shaped) {
      const { advanceWidth, xAdvance, xOffset, yOffset } = glyph;
      const code = this.codeOf(glyph);
      const back = thousandths((advanceWidth - xAdvance) * scale);
      if (xOffset === 0 && yOffset === 0) codes += back === 0 ? code : `${code}> ${back} <`;
      else {
        const aside = thousandths(xOffset * scale);
        const rise = thousandths((yOffset * scale * size) / 1000);
        const shown = rise === 0 ? code : `>] TJ ${rise} Ts [<${code}>] TJ 0 Ts [<`;
        codes += `> ${-aside} <${shown}> ${aside + back} <`;
        raised ||= rise !== 0;
      }
    }
    const word = { codes, widthEm: (advanceOf(shaped) * scale) / 1000 };
    if (!raised) this.words.set(text, word);
    return word;
  }

  /** In four hexadecimal digits. The document takes along what a glyph looks like, how wide it is and what it stands for. */
  private codeOf({ id, advanceWidth, codePoints }: ShapedGlyph): string {
    const known = this.glyphs.get(id);
    if (known !== undefined) return known;
    const number = this.font.subset.includeGlyph(id);
    this.font.widths[number] ??= advanceWidth * this.font.scale;
    this.font.unicode[number] ??= codePoints;
    const code = number.toString(16).padStart(4, '0');
    this.glyphs.set(id, code);
    return code;
  }
}

/** Of a thousandth of an em there is no need to say more. */
function thousandths(number: number): number {
  return Math.round(number * 100) / 100;
}
