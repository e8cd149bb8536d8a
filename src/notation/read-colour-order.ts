/** Colours that change as is told elsewhere: `following Color Sequence`, `changing color every 2 rows`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, wordAt } from './cursor.ts';
import { readNumber } from './read-number.ts';
import { readYarnLetter } from './read-yarn-name.ts';
import type { Step } from './tree.ts';
import { WordSet } from './word-set.ts';

const SEQUENCES = new WordSet(['sequence', 'pattern', 'order', 'scheme']);
const ROWS = new WordSet(['row', 'rows', 'rnd', 'rnds', 'round', 'rounds']);
const COLOURS = new WordSet(['color', 'colour', 'colors', 'colours', 'yarn', 'yarns']);
const OF_COLOURS = new WordSet(['color', 'colour', 'stripe', 'striping']);

/** `following Color Sequence`, `keeping to the stripe pattern`: which yarn comes when is told elsewhere, so it may be any. */
export function readColourOrder(cursor: Cursor): Step | null {
  const from = cursor.at;
  cursor.at += 1;
  if (takeStripes(cursor) || takeInTurn(cursor) || takeSequence(cursor))
    return {
      kind: 'yarn',
      action: 'change',
      yarn: null,
      stitch: null,
      place: null,
      span: spanSince(cursor, from),
    };
  cursor.at = from;
  return null;
}

/** `the stripes of 2 rows A, 2 rows B and 2 rows C as set`, `to stripes as established` behind "keeping". */
function takeStripes(cursor: Cursor): boolean {
  const start = cursor.at;
  takeAny(cursor, 'the', 'to', 'in', 'with');
  takeAny(cursor, 'the', 'same');
  const named = takeAny(cursor, 'stripe', 'stripes', 'striping') !== null;
  takeOneOf(cursor, SEQUENCES);
  const of = named && takeAny(cursor, 'of') !== null;
  if (named && (!of || takeEachStripe(cursor))) {
    if (takeAny(cursor, 'as') !== null) takeAny(cursor, 'set', 'established', 'before', 'given');
    takeAny(cursor, 'correct', 'throughout');
    takeEachSaid(cursor);
    if (atBoundary(cursor)) return true;
  }
  cursor.at = start;
  return false;
}

/** `(2 rows each of B, C and A)`: the stripes told once more; the cursor stays where other words stand in the brackets. */
function takeEachSaid(cursor: Cursor): void {
  if (peek(cursor).kind !== 'open') return;
  const start = cursor.at;
  cursor.at += 1;
  let told =
    readNumber(cursor) !== null && takeOneOf(cursor, ROWS) !== null && takeAny(cursor, 'each') !== null;
  takeAny(cursor, 'of', 'in');
  while (told && peek(cursor).kind !== 'close') {
    told = takeYarn(cursor);
    if (peek(cursor).kind === 'comma') cursor.at += 1;
    takeAny(cursor, 'and');
  }
  cursor.at = told ? cursor.at + 1 : start;
}

/** `2 rows A, 2 rows B and 2 rows C in turn, ending with 2 rows C`, `1 row in A and 1 row in B` behind "working". */
function takeInTurn(cursor: Cursor): boolean {
  if (peek(cursor).kind !== 'number' || !ROWS.holds(peek(cursor, 1))) return false;
  const start = cursor.at;
  if (takeEachStripe(cursor)) {
    if (takeAny(cursor, 'in', 'by') !== null) takeAny(cursor, 'turn', 'turns', 'rotation', 'order');
    else takeAny(cursor, 'alternately', 'throughout');
    takeLastStripe(cursor);
    if (atBoundary(cursor)) return true;
  }
  cursor.at = start;
  return false;
}

/** `, ending with 2 rows C`, `and ending with A`: what the last stripe is. */
function takeLastStripe(cursor: Cursor): void {
  const start = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  takeAny(cursor, 'and');
  const ends = takeAny(cursor, 'ending', 'finishing') !== null && takeAny(cursor, 'with', 'in') !== null;
  const rows = peek(cursor).kind === 'number';
  const ended = ends && (rows ? takeEachStripe(cursor) : takeYarn(cursor));
  if (!ended) cursor.at = start;
}

/** A yarn that is listed. */
function takeYarn(cursor: Cursor): boolean {
  const letter = readYarnLetter(cursor);
  return letter !== null && cursor.context.yarns.includes(letter);
}

/** `2 rows A, 2 rows in B and 1 row C`: each so many rows of a yarn that is listed. */
function takeEachStripe(cursor: Cursor): boolean {
  for (;;) {
    const rows = readNumber(cursor) !== null && takeOneOf(cursor, ROWS) !== null;
    takeAny(cursor, 'in', 'of');
    if (!rows || !takeYarn(cursor)) return false;
    const joined = peek(cursor).kind === 'comma' ? 1 : 0;
    const ahead = wordAt(cursor, joined) === 'and' ? joined + 1 : joined;
    if (ahead === 0 || peek(cursor, ahead).kind !== 'number' || !ROWS.holds(peek(cursor, ahead + 1)))
      return true;
    cursor.at += ahead;
  }
}

/** `color every 2 rows in color sequence`, `colours each round as set` behind "changing"; the cursor stays where that is not so. */
export function takeByTurns(cursor: Cursor): boolean {
  const start = cursor.at;
  if (takeOneOf(cursor, COLOURS) !== null) {
    const often = takeHowOften(cursor);
    const order = takeAny(cursor, 'in', 'following', 'per', 'as');
    const told =
      order !== null &&
      (takeSequence(cursor) || takeAny(cursor, 'established', 'set', 'desired', 'before') !== null);
    if ((often || told) && (order === null || told) && atBoundary(cursor)) return true;
  }
  cursor.at = start;
  return false;
}

/** `every row`, `every 2 rows`, `each round`, `every other row`, `every second row`. */
function takeHowOften(cursor: Cursor): boolean {
  if (takeAny(cursor, 'every', 'each') === null) return false;
  const { kind } = peek(cursor);
  if (kind === 'number' || kind === 'ordinal') cursor.at += 1;
  else takeAny(cursor, 'other', 'second', 'third', 'fourth');
  return takeOneOf(cursor, ROWS) !== null;
}

function takeSequence(cursor: Cursor): boolean {
  takeAny(cursor, 'the', 'to', 'in', 'with');
  takeAny(cursor, 'the');
  return takeOneOf(cursor, OF_COLOURS) !== null && takeOneOf(cursor, SEQUENCES) !== null;
}
