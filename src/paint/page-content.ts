/** What is painted on a page, in order -> its content stream (ISO 32000-1, 8 and 9): flat, every state said where it changes. */

import { roundMm } from '../scene/rounding.ts';
import type { Ink, Transform } from '../scene/scene.ts';
import { applied } from '../scene/transforms.ts';
import type { PdfFace } from './pdf-face.ts';
import { inkOperator } from './pdf-operators.ts';

export class PageContent {
  private readonly heightPt: number;
  private readonly operators: string[] = [];
  /** Drawn in the same place, and not yet written. */
  private waiting: string[] = [];
  private place: Transform | null = null;
  private inks = '';
  private font = '';
  private ink = '';

  constructor(heightPt: number) {
    this.heightPt = heightPt;
  }

  /**
   * Operators in mm, `place` from there to points below and right of the page's upper left corner. `inks` are those that the
   * operators draw in where they name none themselves.
   */
  draw(place: Transform, operators: string, inks = ''): void {
    if (place !== this.place) this.flush();
    this.place = place;
    if (inks !== '' && inks !== this.inks) {
      this.inks = inks;
      this.waiting.push(inks);
    }
    this.waiting.push(operators);
  }

  /** A line of text with its left end at a baseline's x and y in mm. */
  write(place: Transform, face: PdfFace, text: string, x: number, y: number, sizeMm: number, ink: Ink): void {
    this.flush();
    const [a, b, c, d] = place;
    const upright = b === 0 && c === 0 && a === d;
    const size = exact(upright ? sizeMm * a : sizeMm);
    const font = `/${face.name} ${size} Tf`;
    const colour = inkOperator(ink, 'rg', { inSymbol: false });
    if (colour !== this.ink) this.operators.push(colour);
    this.ink = colour;
    this.operators.push('BT');
    if (font !== this.font) this.operators.push(font);
    this.font = font;
    const [left, down] = applied(place, x, y);
    const at = `${roundMm(left)} ${roundMm(this.heightPt - down)}`;
    this.operators.push(
      // Letters stand upright where a page's y goes down.
      upright ? `${at} Td` : `${[a, -b, -c, d].map(exact).join(' ')} ${at} Tm`,
      `[<${face.codes(text, size)}>] TJ`,
      'ET',
    );
  }

  /** Operators that no place concerns: marks of what belongs to what, and what the library writes itself. */
  add(operators: string): void {
    this.flush();
    this.operators.push(operators);
  }

  /** All of it; nothing is added after. */
  joined(): string {
    this.flush();
    return this.operators.join('\n');
  }

  private flush(): void {
    if (this.waiting.length === 0 || this.place === null) return;
    const [a, b, c, d, e, f] = this.place;
    const matrix = [a, -b, c, -d, e, this.heightPt - f].map(exact);
    this.operators.push('q', `${matrix.join(' ')} cm`, this.waiting.join('\n'), 'Q');
    this.waiting = [];
    this.inks = '';
  }
}

/** Points to the inch are no round number of millimetres, and what is multiplied by them is up to a page long. */
function exact(number: number): number {
  return Math.round(number * 1e5) / 1e5;
}
