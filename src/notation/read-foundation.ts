/** The foundation chain named behind a place: `first ch of foundation ch`, `each ch along base chain`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, takeWords, wordAt } from './cursor.ts';
import type { AlongStep, Place } from './tree.ts';
import { WordSet } from './word-set.ts';

export const FOUNDATION_WORDS = new WordSet(['foundation', 'base', 'beginning', 'starting', 'fdn']);

/** `of foundation ch`, `of Row 1 foundation`, `on the other side of the foundation chain` behind "first ch", "each ch" or "first st". */
export function takeOfFoundation(cursor: Cursor): boolean {
  const start = cursor.at;
  const way = takeAny(cursor, 'of', 'along', 'on', 'at');
  if (way !== null) {
    takeAny(cursor, 'the');
    if (takeFarSide(cursor)) return true;
  }
  if (way === 'of' || way === 'along') {
    const first = takeAny(cursor, 'row') !== null;
    if (first && peek(cursor).value === 1) cursor.at += 1;
    const named = takeOneOf(cursor, FOUNDATION_WORDS);
    if (named !== null && takeAny(cursor, 'ch', 'chain', 'edge') !== null) return true;
    // `first ch of foundation`.
    if (named === 'foundation' && atBoundary(cursor)) return true;
  }
  cursor.at = start;
  return false;
}

/** `to the first of the 37 base chains at the other end`: where the far side begins; null for any other place, the cursor where it was. */
export function readFirstOfFoundation(cursor: Cursor): Place | null {
  const from = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'the');
  if (takeAny(cursor, 'first') !== null && takeAny(cursor, 'of') !== null) {
    takeAny(cursor, 'the');
    if (peek(cursor).kind === 'number') cursor.at += 1;
    if (takeOneOf(cursor, FOUNDATION_WORDS) !== null && takeOneOf(cursor, CHAINS) !== null) {
      const at = cursor.at;
      takeAny(cursor, 'at', 'from', 'on');
      takeAny(cursor, 'the');
      if (!(takeAny(cursor, 'other', 'opposite', 'lower') !== null && takeAny(cursor, 'end', 'side', 'edge')))
        cursor.at = at;
      return { kind: 'first', n: null, what: { kind: 'ch' }, span: spanSince(cursor, from) };
    }
  }
  cursor.at = from;
  return null;
}

const CHAINS = new WordSet(['ch', 'chs', 'chain', 'chains']);

/** `first ch`, `each ch`, `next 32 sts`, which may be of the foundation. */
export function namesChain(place: Place | null): boolean {
  if (place?.kind !== 'first' && place?.kind !== 'each' && place?.kind !== 'next') return false;
  return place.what.kind === 'ch' || place.what.kind === 'st';
}

const OF_WHAT = new WordSet(['thumb', 'arm', 'armhole', 'leg', 'neck', 'ear', 'heel', 'this']);

/** `opening`, `thumb opening`, `armhole`: a hole that chains went over; the cursor stays where none stands. */
export function takeOpening(cursor: Cursor): boolean {
  const start = cursor.at;
  takeOneOf(cursor, OF_WHAT);
  if (takeAny(cursor, 'opening', 'hole') !== null) return true;
  cursor.at = start;
  return false;
}

/** `at the bottom of one long side (the row ends)`: the first of the row ends along it. Null for any other place. */
export function readEndOfSide(cursor: Cursor): Place | null {
  const from = cursor.at;
  if (takeAny(cursor, 'at') !== null) {
    takeAny(cursor, 'the');
    const end = takeAny(cursor, 'bottom', 'lower', 'top', 'beginning') !== null;
    if (end) takeAny(cursor, 'end');
    const of = end && takeAny(cursor, 'of') !== null;
    takeAny(cursor, 'one', 'the', 'a', 'first');
    takeAny(cursor, 'long', 'left', 'right', 'side');
    if (of && (takeAny(cursor, 'side', 'edge') !== null || wordAt(cursor, -1) === 'side')) {
      takeRowEndsSaid(cursor);
      return { kind: 'first', n: null, what: { kind: 'row-end' }, span: spanSince(cursor, from) };
    }
  }
  cursor.at = from;
  return null;
}

/** `to the top`, `up to the corner` behind each row end: as far as the side goes. */
export function takeToEndOfSide(cursor: Cursor): void {
  const start = cursor.at;
  takeAny(cursor, 'up', 'down');
  const to = takeAny(cursor, 'to') !== null;
  takeAny(cursor, 'the');
  takeAny(cursor, 'other', 'far');
  if (!to || takeAny(cursor, 'top', 'bottom', 'corner') === null || !atBoundary(cursor)) cursor.at = start;
}

/** `(the row ends)`: what the side is made of. */
function takeRowEndsSaid(cursor: Cursor): void {
  const start = cursor.at;
  if (peek(cursor).kind !== 'open') return;
  cursor.at += 1;
  takeAny(cursor, 'the', 'in', 'along');
  if (takeWords(cursor, 'row', 'ends') && peek(cursor).kind === 'close') cursor.at += 1;
  else cursor.at = start;
}

export type OpeningFrom = NonNullable<AlongStep['from']>;

/**
 * `at thumb opening` behind the first of the chains over it or of the stitches skipped for it, where yarn is joined; the
 * stitches alone are enough. Null where the place is none of an opening, with the cursor where it was.
 */
export function readOpeningFrom(cursor: Cursor, place: Place): OpeningFrom | null {
  if (place.kind === 'passed' && place.nth === 1) {
    takeAtOpening(cursor);
    return { which: 'skipped', n: place.of ?? null };
  }
  const chains = place.kind === 'of-chain' && place.nth !== null && place.nth > 1 ? null : place;
  if ((chains?.kind !== 'of-chain' && chains?.kind !== 'first') || !takeAtOpening(cursor)) return null;
  if (chains.kind === 'first' || chains.chains === null) return { which: 'chains', n: null };
  return { which: 'chains', n: { values: [chains.chains], span: place.span } };
}

/** `at thumb opening`, `of the opening` behind a place. */
function takeAtOpening(cursor: Cursor): boolean {
  const start = cursor.at;
  if (takeAny(cursor, 'at', 'of', 'in') !== null) {
    takeAny(cursor, 'the');
    if (takeOpening(cursor)) return true;
  }
  cursor.at = start;
  return false;
}

/** `opposite side of foundation ch`, `other side of ch`; the cursor stays where neither stands. */
export function takeFarSide(cursor: Cursor): boolean {
  const start = cursor.at;
  if (takeAny(cursor, 'opposite', 'other') !== null) {
    takeAny(cursor, 'side', 'edge');
    takeAny(cursor, 'of');
    takeAny(cursor, 'the');
    takeOneOf(cursor, FOUNDATION_WORDS);
    if (takeAny(cursor, 'ch', 'chain', 'edge') !== null) return true;
  }
  cursor.at = start;
  return false;
}
