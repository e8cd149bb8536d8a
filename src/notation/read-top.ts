/** The last row as an edge to go along: `working across Row 29`, `along the top edge`, `across sts of last row`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, takeAny, takeOneOf } from './cursor.ts';
import { unitAt } from './row-unit.ts';
import { WordSet } from './word-set.ts';

export interface Top {
  /** The number it is called by, where it is called by one. */
  readonly row?: number;
}

/** Reads behind `working`, with or without `across`; null with the cursor where it was. */
export function readTop(cursor: Cursor): Top | null {
  const start = cursor.at;
  takeOneOf(cursor, WAYS);
  takeAny(cursor, 'the');
  const at = cursor.at;
  if (takeOneOf(cursor, PLACES) !== null && takeAny(cursor, 'of', 'along', 'on') !== null)
    takeAny(cursor, 'the');
  else cursor.at = at;
  const named = readNamed(cursor);
  if (named !== null && atBoundary(cursor)) return named;
  cursor.at = start;
  return null;
}

function readNamed(cursor: Cursor): Top | null {
  if (takeAny(cursor, 'top', 'upper') !== null) {
    takeAny(cursor, 'edge', 'side');
    return {};
  }
  const last = takeAny(cursor, 'last', 'final') !== null;
  if (unitAt(cursor) === null) return null;
  cursor.at += 1;
  if (last) return {};
  const { kind, value } = peek(cursor);
  if (kind !== 'number') return null;
  cursor.at += 1;
  return { row: value };
}

const WAYS = new WordSet(['along', 'across', 'on', 'in', 'into', 'over']);
const PLACES = new WordSet(['sts', 'stitches', 'top', 'tops', 'edge']);
