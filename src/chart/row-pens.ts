/** The rows of a chart in, the pen and ink of each out: neighbours always differ. */

import { type Fabric, FLAG } from '../fabric/fabric.ts';
import type { Ink } from '../scene/scene.ts';
import type { Pen } from '../symbols/stitch-symbol.ts';
import { hasFlag } from './elements.ts';

export interface RowPen {
  readonly pen: Pen;
  readonly ink: Ink;
}

const FIRM: RowPen = { pen: 'firm', ink: 'ink' };
const LIGHT: RowPen = { pen: 'light', ink: 'second' };

export function rowPens(fabric: Fabric): readonly RowPen[] {
  const pens: RowPen[] = [];
  for (const row of fabric.rows) {
    const under = row.onto === null ? undefined : pens[row.onto];
    // Odd rows are firm, and so is the first of an edging on a light row.
    const firm = under === undefined ? row.number !== null && row.number % 2 === 1 : under === LIGHT;
    pens.push(firm ? FIRM : LIGHT);
  }
  return pens;
}

/** A turning chain made at the end of the foundation belongs to the row it begins. */
export function penOf(fabric: Fabric, pens: readonly RowPen[], i: number): RowPen {
  const row = fabric.row[i] ?? 0;
  const own = pens[row] ?? FIRM;
  const early =
    fabric.rows[row]?.number === null &&
    fabric.rows[row]?.onto === null &&
    hasFlag(fabric, i, FLAG.turningChain);
  return early ? (own === FIRM ? LIGHT : FIRM) : own;
}

/** A yarn's colour as the two pens draw it. */
export type YarnInk = Readonly<Record<'firm' | 'light', Ink>>;

/** Least contrast of a sign against the paper (WCAG 2.2, success criterion 1.4.11). */
const LEAST_CONTRAST = 3;
/** How far the two pens' shades of one yarn lie apart, so that rows can be told apart in grey too. */
const SHADE = 0.45;
/** A yarn darker than this has no room for a darker shade. */
const DARK = 9;

/** The inks of a yarn that stands out from white paper; null for a pale one and for no colour. */
export function yarnInkOf(hex: string | undefined): YarnInk | null {
  if (hex === undefined || !/^#[0-9a-f]{6}$/i.test(hex)) return null;
  const onPaper = contrast(hex, '#ffffff');
  if (onPaper < LEAST_CONTRAST) return null;
  const own: Ink = `#${hex.slice(1)}`;
  if (onPaper < DARK) return { firm: mixed(hex, 0), light: own };
  return { firm: own, light: mixed(hex, 255) };
}

/** So much of the way towards black or white; an ink that is no colour of its own stays as it is. */
export function shaded(ink: Ink, towards: 0 | 255, share: number): Ink {
  return ink.startsWith('#') ? mixed(ink, towards, share) : ink;
}

function mixed(hex: string, towards: 0 | 255, share = SHADE): Ink {
  const parts = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16);
    return Math.round(part + (towards - part) * share)
      .toString(16)
      .padStart(2, '0');
  });
  return `#${parts.join('')}`;
}

/** (L1 + 0.05) / (L2 + 0.05) of relative luminances, by WCAG 2.2. */
export function contrast(a: string, b: string): number {
  const one = luminance(a);
  const other = luminance(b);
  return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
}

function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
