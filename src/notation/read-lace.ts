/** How old books speak of a lace on its way: past the scallop, along the straight side, with so many put into each row. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, textSince } from './cursor.ts';
import { readWorkStep } from './read-work.ts';
import type { Step } from './tree.ts';
import { WordSet } from './word-set.ts';

const BESIDE = new WordSet(['beside', 'before', 'next', 'nearest']);
const SHAPES = new WordSet(['scallop', 'fan', 'loop', 'loops', 'point', 'scallops']);

/** `which is the one close beside the scallop`: the row ends there and leaves it. Null where it tells anything else. */
export function readWhichIs(cursor: Cursor): Step | null {
  const from = cursor.at;
  cursor.at += 1;
  const is = takeAny(cursor, 'is', 'stands', 'lies', 'being') !== null;
  let beside = false;
  let shape = false;
  while (!atBoundary(cursor)) {
    beside ||= BESIDE.holds(peek(cursor));
    shape = SHAPES.holds(peek(cursor));
    cursor.at += 1;
  }
  if (is && beside && shape) return { kind: 'leave', span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

const SIDES = new WordSet(['side', 'edge', 'heading', 'selvedge']);

/** `pass along the straight side`: which edge is gone along is told with the stitches. */
export function readPassAlong(cursor: Cursor): Step | null {
  const from = cursor.at;
  cursor.at += 1;
  const along = takeAny(cursor, 'along', 'down', 'across') !== null;
  takeAny(cursor, 'the', 'this');
  takeAny(cursor, 'straight', 'long', 'other', 'upper');
  if (along && takeOneOf(cursor, SIDES) !== null && atBoundary(cursor))
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

/** `putting 3 dc into the edge of every row to the end`: work, however it is led to. */
export function readPutting(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  cursor.at += 1;
  const worked = peek(cursor).kind === 'number' ? readWorkStep(cursor) : null;
  const [step, more] = worked ?? [];
  const place = step?.kind === 'work' && more === undefined ? step.place : null;
  // Anywhere else it may tell of a stitch that was worked already.
  if (place?.kind === 'each' && place.what.kind === 'row-end') return worked;
  cursor.at = from;
  return null;
}
