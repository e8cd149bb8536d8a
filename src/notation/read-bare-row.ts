/** A row named by its number alone, in a list whose rows are numbered and no more. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, wordAt } from './cursor.ts';
import { readNumber } from './read-number.ts';
import { unitOfPart } from './row-unit.ts';
import type { RepeatRowsStep } from './tree.ts';

/** `same as 3` where rows are numbered and no more: one of those before. */
export function readBareRow(cursor: Cursor, from: number): RepeatRowsStep | null {
  const { kind, value } = peek(cursor);
  if (kind !== 'number' || wordAt(cursor, -1) !== 'as' || value > cursor.reached) return null;
  const start = cursor.at;
  const n = readNumber(cursor);
  const ends = atBoundary(cursor) || peek(cursor).text === '=';
  if (n !== null && ends)
    return {
      kind: 'repeat rows',
      unit: unitOfPart(cursor),
      rows: [n],
      until: { kind: 'label' },
      span: spanSince(cursor, from),
    };
  cursor.at = start;
  return null;
}
