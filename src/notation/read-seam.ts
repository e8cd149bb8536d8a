/** Edges worked together: `sl st through both layers across`, `sl st through foundation chain and last row together`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, spanSince, takeAny, takeOneOf, takeWords, textSince, wordAt } from './cursor.ts';
import { FOUNDATION_WORDS } from './read-foundation.ts';
import { SIDEWAYS_PIECES } from './read-stop.ts';
import type { NoteStep } from './tree.ts';
import { WordSet } from './word-set.ts';

/**
 * Behind the stitch's name, at "through": what is closed so makes no row that is worked into. Null, with the cursor
 * where it was, where anything else is said.
 */
export function readSeam(cursor: Cursor, from: number): NoteStep | null {
  const start = cursor.at;
  takeAny(cursor, 'through');
  const both = takeAny(cursor, 'both') !== null;
  const edges = both
    ? takeAny(cursor, 'layers', 'thicknesses', 'edges', 'sides') !== null
    : takeTwoEdges(cursor);
  takeAny(cursor, 'together');
  takeWords(cursor, 'all', 'the', 'way');
  const end = takeAny(cursor, 'across', 'along') !== null;
  if (end) takeWords(cursor, 'the', 'edge');
  if (edges && atBoundary(cursor))
    return { kind: 'note', text: textSince(cursor, from), seam: true, span: spanSince(cursor, from) };
  cursor.at = start;
  return null;
}

/** `the foundation chain and the last row`, one way round or the other; they have to be two. */
function takeTwoEdges(cursor: Cursor): boolean {
  const first = takeEdge(cursor);
  const second = first !== null && takeAny(cursor, 'and') !== null ? takeEdge(cursor) : null;
  return second !== null && second !== first;
}

function takeEdge(cursor: Cursor): 'foundation' | 'last row' | null {
  takeAny(cursor, 'the');
  if (takeOneOf(cursor, FOUNDATION_WORDS) !== null)
    return takeAny(cursor, 'ch', 'chain', 'edge') === null ? null : 'foundation';
  if (takeAny(cursor, 'last', 'final') !== null && wordAt(cursor) === 'row') {
    cursor.at += 1;
    return 'last row';
  }
  return null;
}

/**
 * `right side out`, `brim inside out`, `seam to the inside`, `so that the seam is at the back` behind "turn": what is
 * made is turned like a sock, and no row is begun.
 */
export function takeSideOut(cursor: Cursor): boolean {
  const start = cursor.at;
  takeOneOf(cursor, SIDEWAYS_PIECES);
  takeAny(cursor, 'so');
  takeAny(cursor, 'that');
  takeAny(cursor, 'the');
  const seam = takeAny(cursor, 'seam', 'seams') !== null;
  takeAny(cursor, 'is', 'are', 'lies', 'will');
  takeAny(cursor, 'be', 'lie');
  takeAny(cursor, 'to', 'on', 'at');
  takeAny(cursor, 'the');
  const side = takeOneOf(cursor, SIDES);
  if (side !== null && SIDES_OF.has(side)) takeAny(cursor, 'side');
  const out = takeAny(cursor, 'out') !== null;
  if (side !== null && seam !== out && (out || atBoundary(cursor))) return true;
  cursor.at = start;
  return false;
}

const SIDES_OF = new Set(['right', 'wrong']);
const SIDES = new WordSet([...SIDES_OF, 'rs', 'ws', 'inside', 'outside', 'back', 'front']);
