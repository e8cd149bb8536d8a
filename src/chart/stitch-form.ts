/** A row of the stitch table in, how it is drawn out: its symbol alone, or its legs gathered in one place. */

import { type Fabric, INTO, targets } from '../fabric/fabric.ts';
import type { Shape } from '../scene/scene.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { drawLens, lensWidthU } from '../symbols/gathered.ts';
import { OWN_CHAIN_HEIGHT_U } from '../symbols/own-chain.ts';
import { drawPopcorn, POPCORN_CAP_U, popcornWidthU } from '../symbols/popcorn.ts';
import type { Pen } from '../symbols/stitch-symbol.ts';
import { SYMBOLS } from '../symbols/symbols.ts';

export interface StitchForm {
  /** Of the drawing, without its pen. */
  readonly name: string;
  /** From what it stands on to its head. */
  readonly heightU: number;
  readonly widthU: number;
  readonly draw: (lengthU: number, pen: Pen) => readonly Shape[];
}

/** What the slashes of the outermost legs reach beyond them, both sides together. */
const SLASH_ENDS_U = 0.24;

/** `legs` of 2 and more are gathered in one place; for anything else the stitch is drawn by its symbol. */
export function stitchForm(row: StitchRow, legs: number, symbols = SYMBOLS): StitchForm {
  const symbol = symbols[row.symbol];
  const { heightU, widthU } = symbol;
  if (legs < 2) return { name: row.symbol, heightU, widthU, draw: symbol.draw };
  if (row.wholeLegs === true) {
    return {
      name: `${row.symbol}-${legs}-popcorn`,
      heightU: heightU + POPCORN_CAP_U,
      widthU: Math.max(widthU, popcornWidthU(legs) + SLASH_ENDS_U),
      draw: (lengthU, pen) => drawPopcorn(symbol, legs, lengthU, pen),
    };
  }
  return {
    name: `${row.symbol}-${legs}`,
    heightU,
    widthU: Math.max(widthU, lensWidthU(legs) + SLASH_ENDS_U),
    draw: (lengthU, pen) => drawLens(symbol, legs, lengthU, pen),
  };
}

/** Legs that a stitch has in one place: a cluster's, or a decrease's that all go into one; 0 for none. */
export function legsInOnePlace(fabric: Fabric, rows: readonly StitchRow[], i: number): number {
  const row = rows[fabric.kind[i] ?? 0];
  if (row === undefined) return 0;
  if (row.inOnePlace === true) return row.legs ?? 0;
  if (row.uses < 2) return 0;
  const several = fabric.where[i] === INTO.top || fabric.where[i] === INTO.post;
  return several && new Set(targets(fabric, i)).size > 1 ? 0 : row.uses;
}

/** What a stitch is lifted by the chain it makes at its own foot. */
export function ownChainU(row: StitchRow | undefined): number {
  return row?.enters === 'own chain' ? OWN_CHAIN_HEIGHT_U : 0;
}

/** How many chains long it is, for what lies along the way the yarn goes. */
export function chainsLong(row: StitchRow | undefined): number {
  return row === undefined ? 1 : SYMBOLS[row.symbol].heightU / SYMBOLS.chain.heightU;
}

/** Where along it a later stitch goes into what lies along the row. */
export function enteredShare(row: StitchRow | undefined): number {
  return (row === undefined ? undefined : SYMBOLS[row.symbol].enteredAt) ?? 0.5;
}
