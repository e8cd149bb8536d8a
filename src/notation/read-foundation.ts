/** The foundation chain named behind a place: `first ch of foundation ch`, `each ch along base chain`. */

import type { Cursor } from './cursor.ts';
import { takeAny, takeOneOf } from './cursor.ts';

export const FOUNDATION_WORDS: ReadonlySet<string> = new Set([
  'foundation',
  'base',
  'beginning',
  'starting',
  'fdn',
]);

/** `of foundation ch`, `along foundation ch` behind "first ch" or "each ch". */
export function takeOfFoundation(cursor: Cursor): boolean {
  const start = cursor.at;
  if (takeAny(cursor, 'of', 'along') !== null) {
    takeAny(cursor, 'the');
    if (takeOneOf(cursor, FOUNDATION_WORDS) !== null && takeAny(cursor, 'ch', 'chain') !== null) return true;
  }
  cursor.at = start;
  return false;
}
