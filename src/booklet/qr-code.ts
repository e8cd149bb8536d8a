/** An address in, its QR code as one path out (ISO/IEC 18004), with the white round it that a camera needs. */

import encodeQR from 'qr';
import type { PathPart, Shape } from '../scene/scene.ts';

export interface QrCode {
  readonly shape: Shape;
  /** The white round it included. */
  readonly sideMm: number;
}

/** A square of the code on paper: held a hand's breadth away, a telephone sees half of it still. */
const SQUARE_MM = 0.7;
/** White squares on each side, as the standard asks. */
const QUIET_SQUARES = 4;
/** Of a code larger than this nobody would make the address. */
const MOST_SQUARES = 57;

/** Null for an address too long to print as a code. */
export function qrCode(address: string): QrCode | null {
  let rows: boolean[][];
  try {
    rows = encodeQR(address, 'raw', { ecc: 'medium', border: QUIET_SQUARES, encoding: 'byte' });
  } catch {
    return null; // longer than any code holds
  }
  if (rows.length > MOST_SQUARES + 2 * QUIET_SQUARES) return null;
  const parts = rows.flatMap((row, y) => runsOf(row).flatMap(([from, to]) => bar(from, to, y)));
  return {
    shape: { kind: 'path', parts, stroke: null, fill: 'ink' },
    sideMm: rows.length * SQUARE_MM,
  };
}

/** Dark squares beside each other, from one to before another. */
function runsOf(row: readonly boolean[]): [from: number, to: number][] {
  const runs: [number, number][] = [];
  row.forEach((dark, x) => {
    const last = runs.at(-1);
    if (!dark) return;
    if (last !== undefined && last[1] === x) last[1] = x + 1;
    else runs.push([x, x + 1]);
  });
  return runs;
}

function bar(from: number, to: number, y: number): PathPart[] {
  const [left, right, top, bottom] = [from, to, y, y + 1].map((squares) => squares * SQUARE_MM);
  if (left === undefined || right === undefined || top === undefined || bottom === undefined) return [];
  return [['M', left, top], ['L', right, top], ['L', right, bottom], ['L', left, bottom], ['Z']];
}
