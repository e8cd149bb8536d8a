/** Working along the sides of a piece: `work 21 sc evenly along row ends`, `working along opposite side of foundation ch`. */

import type { Cursor } from './cursor.ts';
import { spanSince, takeAny, takeWords, textSince } from './cursor.ts';
import { isNumber, readNumber } from './read-number.ts';
import { readPlace } from './read-place.ts';
import { readStitchName } from './read-yarn.ts';
import type { AlongStep, Edge, EvenlyStep, NoteStep } from './tree.ts';

/** `21 sc evenly along row ends` (the word "work" already read); null with the cursor where it was. */
export function readEvenly(cursor: Cursor, from: number): EvenlyStep | null {
  const start = cursor.at;
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  const stitch = n === null ? null : readStitchName(cursor);
  if (n !== null && stitch !== null && takeAny(cursor, 'evenly') !== null) {
    takeAny(cursor, 'spaced');
    const edge = readEdge(cursor);
    if (edge !== null) return { kind: 'evenly', stitch, n, edge, span: spanSince(cursor, from) };
  }
  cursor.at = start;
  return null;
}

/** `working along row ends`, `working along opposite side of foundation ch`. */
export function readWorking(cursor: Cursor): AlongStep | NoteStep | null {
  const from = cursor.at;
  cursor.at += 1;
  if (takeAny(cursor, 'last') !== null && readStitchName(cursor) !== null) {
    // `working last dc in top of tch` works nothing more: it says what the last place of "each st across" is.
    const place = readPlace(cursor);
    if (place?.place.kind === 'of-chain')
      return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  }
  cursor.at = from + 1;
  const edge = readEdge(cursor);
  if (edge === null) {
    cursor.at = from;
    return null;
  }
  return { kind: 'along', edge, span: spanSince(cursor, from) };
}

/** `along row ends`, `in row ends along side`, `along opposite side of foundation ch`. */
function readEdge(cursor: Cursor): Edge | null {
  const from = cursor.at;
  takeAny(cursor, 'along', 'in', 'across', 'down', 'up', 'over');
  takeAny(cursor, 'the', 'next');
  if (takeAny(cursor, 'row', 'rows') !== null && takeAny(cursor, 'ends', 'end') !== null) {
    if (takeAny(cursor, 'along', 'of', 'across') !== null) {
      takeAny(cursor, 'the', 'next', 'first', 'second', 'left', 'right', 'other');
      takeAny(cursor, 'side', 'edge');
    }
    return 'row ends';
  }
  if (takeWords(cursor, 'side', 'edge') || takeAny(cursor, 'side') !== null) return 'row ends';
  const opposite = takeAny(cursor, 'opposite', 'other') !== null;
  if (opposite) {
    takeAny(cursor, 'side', 'edge');
    takeAny(cursor, 'of');
    takeAny(cursor, 'the');
  }
  const foundation = takeAny(cursor, 'foundation', 'base', 'beginning', 'starting', 'fdn') !== null;
  if ((opposite || foundation) && takeAny(cursor, 'ch', 'chain', 'edge') !== null) return 'foundation';
  cursor.at = from;
  return null;
}
