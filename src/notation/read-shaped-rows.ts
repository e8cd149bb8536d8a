/** What is said of rows that are repeated: `decreasing 1 st at the neck edge every row`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, spanSince, takeAny, takeOneOf, textSince } from './cursor.ts';
import { isNumber, readNumber } from './read-number.ts';
import type { NoteStep } from './tree.ts';
import { WordSet } from './word-set.ts';

const UNITS = new WordSet(['row', 'rnd', 'round']);
const EDGES = new WordSet(['neck', 'armhole', 'front', 'inner', 'outer', 'side', 'left', 'right']);

/** How many stitches each of them gains or loses, which the rows themselves have to do; null for anything else. */
export function readShapedRows(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  const does = takeAny(cursor, 'decreasing', 'increasing', 'losing', 'gaining');
  const n = does !== null && isNumber(cursor) ? readNumber(cursor) : null;
  const sts = n !== null && takeAny(cursor, 'st', 'sts', 'stitch', 'stitches') !== null;
  takeAny(cursor, 'at', 'on', 'along');
  takeAny(cursor, 'the');
  takeOneOf(cursor, EDGES);
  takeAny(cursor, 'edge', 'end');
  takeAny(cursor, 'on', 'in');
  const each = takeAny(cursor, 'each', 'every') !== null && takeOneOf(cursor, UNITS) !== null;
  if (n === null || !sts || !each || !atBoundary(cursor)) {
    cursor.at = from;
    return null;
  }
  const falls = does === 'decreasing' || does === 'losing';
  const adds = falls ? { ...n, values: n.values.map((value) => (value === null ? null : -value)) } : n;
  return { kind: 'note', text: textSince(cursor, from), adds, span: spanSince(cursor, from) };
}
