/** What a border is worked in, told before the stitches themselves are. */

import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeWords, textSince, wordAt } from './cursor.ts';
import { takeAllSides } from './read-all-sides.ts';
import { readStitchName } from './read-yarn.ts';
import type { NoteStep } from './tree.ts';
import { WordSet } from './word-set.ts';

/** `in a spiral without joining`, `in continuous rounds`, `back and forth in rows` behind "work": the way of all that follows. */
function readWayOfWork(cursor: Cursor, from: number): NoteStep | null {
  const start = cursor.at;
  let way = false;
  while (peek(cursor).kind === 'word' && WAY_WORDS.holds(peek(cursor))) {
    way ||= WAYS.holds(peek(cursor));
    cursor.at += 1;
  }
  if (way && atBoundary(cursor))
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  cursor.at = start;
  return null;
}

const WAYS = new WordSet(['joining', 'spiral', 'spirals', 'rows', 'rounds', 'rnds']);
const WAY_WORDS = new WordSet([
  ...WAYS,
  ...'in a the continuous again without joining turning or and not closing back forth flat throughout as round around of on'.split(
    ' ',
  ),
]);

/** `the same number of dc on both fronts`: how the maker's own number is shared. */
function readSameNumber(cursor: Cursor, from: number): NoteStep | null {
  const start = cursor.at;
  if (takeWords(cursor, 'the', 'same', 'number', 'of') && readStitchOrAny(cursor)) {
    const both =
      takeAny(cursor, 'on', 'along', 'at', 'up') !== null &&
      takeAny(cursor, 'both', 'each', 'either') !== null;
    while (both && peek(cursor).kind === 'word') cursor.at += 1;
    if (both && atBoundary(cursor))
      return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  }
  cursor.at = start;
  return null;
}

function readStitchOrAny(cursor: Cursor): boolean {
  return readStitchName(cursor) !== null || takeAny(cursor, 'sts', 'stitches') !== null;
}

/** What is said behind "work" or "make" and works nothing by itself. */
export function readToldOfWork(cursor: Cursor, from: number): NoteStep | null {
  return readWayOfWork(cursor, from) ?? readSameNumber(cursor, from) ?? readAnother(cursor, from);
}

/** `a second round the same but without the loop` behind "make": another like it, told to the maker. */
function readAnother(cursor: Cursor, from: number): NoteStep | null {
  const start = cursor.at;
  takeAny(cursor, 'a', 'one', 'the');
  const other = takeAny(cursor, 'second', 'another', 'other') !== null;
  if (other) takeAny(cursor, 'one', 'piece', 'side', 'round');
  if (other && wordAt(cursor, -1) !== 'second' && wordAt(cursor, -1) !== 'another') {
    takeAny(cursor, 'in', 'exactly');
    takeAny(cursor, 'the');
    if (takeAny(cursor, 'same', 'likewise', 'alike') !== null) {
      while (peek(cursor).kind === 'word' && !STITCHED.holds(peek(cursor))) cursor.at += 1;
      if (atBoundary(cursor))
        return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
    }
  }
  cursor.at = start;
  return null;
}

const STITCHED = new WordSet(['in', 'into', 'each', 'next', 'turn', 'join', 'working', 'with']);

/** `From here on you go round and round without joining`: the same, told to the maker. */
export function readFromHereOn(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  cursor.at += 1;
  if (takeAny(cursor, 'here', 'now', 'this') !== null) {
    takeAny(cursor, 'point', 'row', 'round');
    takeAny(cursor, 'on', 'onwards');
    if (peek(cursor).kind === 'comma') cursor.at += 1;
    takeAny(cursor, 'you', 'we', "you'll", 'just');
    takeAny(cursor, 'will', 'just');
    takeAny(cursor, 'go', 'work', 'working', 'crochet');
    const way = readWayOfWork(cursor, from);
    if (way !== null) return way;
  }
  cursor.at = from;
  return null;
}

/** `, all the way across` behind what goes there in any case. */
export function readAllTheWay(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  if (takeWords(cursor, 'all', 'the', 'way')) {
    const on =
      takeAny(cursor, 'across', 'around', 'along', 'round') !== null || takeWords(cursor, 'to', 'the', 'end');
    if (on && atBoundary(cursor))
      return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  }
  cursor.at = from;
  return null;
}

/** `For the loop make 14 chain, …`: what the steps behind it are for. */
export function readForTheLoop(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'the', 'a');
  takeAny(cursor, 'hanging', 'button', 'little');
  if (takeAny(cursor, 'loop', 'hanger', 'tie', 'cord') !== null) {
    const span = spanSince(cursor, from);
    const text = textSince(cursor, from);
    if (peek(cursor).kind === 'comma' || peek(cursor).kind === 'colon') cursor.at += 1;
    const next = peek(cursor);
    if (next.kind === 'number' || LOOP_BEGINS.has(next.text)) return { kind: 'note', text, span };
  }
  cursor.at = from;
  return null;
}

const LOOP_BEGINS = new WordSet(['ch', 'chain', 'make', 'work', 'crochet']);

/** `work in dc all round, thus:` before the stitches themselves are told; behind "work", which begins at `from`. */
export function readAllRound(cursor: Cursor, from: number): NoteStep | null {
  const start = cursor.at;
  if (takeAny(cursor, 'in') !== null && readStitchName(cursor)?.kind === 'stitch') {
    takeAny(cursor, 'all');
    if (takeAny(cursor, 'round', 'around') !== null) {
      takeAllSides(cursor);
      if (peek(cursor).kind === 'comma') cursor.at += 1;
      const led = takeAny(cursor, 'thus') !== null || takeWords(cursor, 'as', 'follows');
      if (led && (peek(cursor).kind === 'colon' || peek(cursor).kind === 'comma')) {
        const said = { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) } as const;
        cursor.at += 1;
        return said;
      }
    }
  }
  cursor.at = start;
  return null;
}
