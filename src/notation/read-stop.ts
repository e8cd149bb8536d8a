/** Where a repeat or "each" ends: `across`, `around`, `5 more times`, `to last 6 sts`, `to next corner sp`. */

import { readMiddleOfCorner } from './corner-words.ts';
import type { Cursor } from './cursor.ts';
import { atBoundary, peek, spanSince, takeAny, takeOneOf, takeWords, wordAt } from './cursor.ts';
import type { Num } from './num.ts';
import { takeAllSides, takeAlongSide } from './read-all-sides.ts';
import { isNumber, isNumberOrSkip, readNumber } from './read-number.ts';
import { ANY_STITCH, readWhat } from './read-what.ts';
import type { Stop, What } from './tree.ts';
import { WordSet } from './word-set.ts';

/** What goes all the way, behind `across` or `around`. */
const WHOLE_WORDS = new WordSet(['row', 'round', 'rnd', 'ring', 'edge']);

/** Reads a stop, or null with the cursor where it was. */
export function readStop(cursor: Cursor): Stop | null {
  if (atBoundary(cursor)) return null;
  const from = cursor.at;
  skipFiller(cursor);
  if (wordAt(cursor) === 'along') takeAlongSide(cursor);
  const word = takeAny(cursor, 'across', 'around', 'round', 'along');
  if (word === 'along' && !atBoundary(cursor)) cursor.at = from;
  else if (word !== null) {
    if (atBoundary(cursor)) return toEnd(cursor, from, word);
    const further = readTo(cursor, from);
    if (further !== null) return further;
    // "across row", "around ring" say no more than the word.
    const said = takeOneOf(cursor, WHOLE_WORDS) !== null;
    if (
      !said &&
      !takeWords(cursor, 'the', 'row') &&
      !takeWords(cursor, 'the', 'round') &&
      !takeAllSides(cursor)
    )
      takeEdge(cursor);
    return toEnd(cursor, from, word);
  }
  return readTo(cursor, from) ?? readTimes(cursor, from);
}

function toEnd(cursor: Cursor, from: number, word: string): Stop {
  return {
    kind: 'end',
    word: word === 'across' || word === 'along' ? 'across' : 'around',
    span: spanSince(cursor, from),
  };
}

/** What is worked sideways before a piece goes on from its row ends. */
export const SIDEWAYS_PIECES = new WordSet([
  ...['brim', 'band', 'ribbing', 'rib', 'cuff', 'waistband', 'strip', 'piece', 'tube'],
]);

/** `the edge`, `the cuff`, `the top of the cuff`: where the row below lies. Other edges are not taken for it. */
function takeEdge(cursor: Cursor): void {
  if (takeWords(cursor, 'the', 'edge')) return;
  const from = cursor.at;
  if (takeAny(cursor, 'the') !== null && takeOneOf(cursor, SIDEWAYS_PIECES) !== null && atBoundary(cursor))
    return;
  cursor.at = from;
  const top = takeWords(cursor, 'the', 'top', 'of', 'the') || takeWords(cursor, 'the', 'top', 'of');
  if (top && peek(cursor).kind === 'word') {
    cursor.at += 1;
    if (atBoundary(cursor)) return;
  }
  cursor.at = from;
}

/** `all round`, `all around`, `all the way across`. */
function skipFiller(cursor: Cursor): void {
  if (wordAt(cursor) !== 'all') return;
  const way = wordAt(cursor, 1) === 'the' && wordAt(cursor, 2) === 'way' ? 3 : 1;
  if (END_WORDS.holds(peek(cursor, way))) cursor.at += way;
}

const END_WORDS = new WordSet(['across', 'around', 'round', 'to']);

/**
 * `for a total of 4 times`, `4 times in all`, `across 4 times in total`: so many in all, the pass as written among them;
 * `across 4 times`, which is no more than how often.
 */
export function readInAll(cursor: Cursor): Stop | null {
  const from = cursor.at;
  const across = isNumber(cursor, 1) && takeAny(cursor, 'across', 'around', 'round') !== null;
  const led = takeWords(cursor, 'for', 'a', 'total', 'of') || takeWords(cursor, 'a', 'total', 'of');
  const times = readTimes(cursor, from);
  const tailed = takeWords(cursor, 'in', 'all') || takeWords(cursor, 'in', 'total');
  if (times?.kind === 'times' && !times.more && (led || tailed)) {
    const values = times.n.values.map((value) => (value === null ? null : value - 1));
    if (values.every((value) => value === null || value >= 0))
      return { ...times, n: { ...times.n, values }, more: true, span: spanSince(cursor, from) };
  }
  if (across && times !== null) return times;
  cursor.at = from;
  return null;
}

/** `3 times`, `twice`, `5 more times`, `once more`, `x 6`. */
export function readTimes(cursor: Cursor, from: number): Stop | null {
  const start = cursor.at;
  // `work 2nd row again`.
  const once = takeAny(cursor, 'once', 'twice', 'again');
  if (once === 'again' && !atBoundary(cursor)) cursor.at = start;
  else if (once !== null) {
    const value = once === 'twice' ? 2 : 1;
    const more = once === 'again' || takeAny(cursor, 'more') !== null;
    const n: Num = { values: [value], span: spanSince(cursor, start) };
    return { kind: 'times', n, more, span: spanSince(cursor, from) };
  }
  const cross = wordAt(cursor) === 'x' || peek(cursor).text === '×';
  if (cross && isNumber(cursor, 1)) {
    cursor.at += 1;
    const n = readNumber(cursor);
    if (n !== null) return { kind: 'times', n, more: false, span: spanSince(cursor, from) };
  }
  // `another 8 times` is `8 more times`.
  const another = wordAt(cursor) === 'another' && isNumber(cursor, 1);
  if (another) cursor.at += 1;
  if (another || isNumberOrSkip(cursor)) {
    const n = readNumber(cursor);
    const moreFirst = takeAny(cursor, 'more') !== null || another;
    // `6x` says the same as `6 times`.
    const crossed = wordAt(cursor) === 'x' || peek(cursor).text === '×';
    if (n !== null && crossed) {
      cursor.at += 1;
      return { kind: 'times', n, more: false, span: spanSince(cursor, from) };
    }
    if (n !== null && takeAny(cursor, 'times', 'time') !== null) {
      const more = takeAny(cursor, 'more') !== null || moreFirst;
      return { kind: 'times', n, more, span: spanSince(cursor, from) };
    }
  }
  cursor.at = start;
  return null;
}

/** `to end`, `to last 6 sts`, `to within last st`, `to next corner sp`. */
function readTo(cursor: Cursor, from: number): Stop | null {
  const start = cursor.at;
  if (takeAny(cursor, 'to', 'until') === null) return null;
  takeAny(cursor, 'the');
  if (takeAny(cursor, 'end') !== null) {
    takeOfRow(cursor);
    return { kind: 'end', word: 'to end', span: spanSince(cursor, from) };
  }
  if (takeUntilAllDone(cursor)) return { kind: 'end', word: 'around', span: spanSince(cursor, from) };
  const middle = readMiddleOfCorner(cursor);
  if (middle !== null) return { kind: 'before', what: middle, span: spanSince(cursor, from) };
  takeAny(cursor, 'within');
  takeAny(cursor, 'the');
  const less = readLess(cursor);
  if (less !== null) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'next');
    const beyond = readWhat(cursor);
    if (beyond !== null) return { kind: 'before', what: beyond, less, span: spanSince(cursor, from) };
  }
  if (takeAny(cursor, 'last') !== null) {
    const at = cursor.at;
    // UK `2-ch sp` begins with a number that is no count.
    const n = peek(cursor, 1).kind === 'dash' ? null : readNumber(cursor);
    const what = readWhat(cursor) ?? readSpread(cursor) ?? ANY_STITCH;
    return {
      kind: 'leaving',
      n: n ?? { values: [1], span: spanSince(cursor, at) },
      what,
      span: spanSince(cursor, from),
    };
  }
  const remain = readRemain(cursor, from);
  if (remain !== null) return remain;
  // "rep from * to tch": the turning chain is the last stitch there is.
  if (takeAny(cursor, 'tch') !== null || takeWords(cursor, 'turning', 'ch') || takeTch(cursor))
    return {
      kind: 'leaving',
      n: { values: [1], span: spanSince(cursor, start) },
      what: ANY_STITCH,
      span: spanSince(cursor, from),
    };
  takeAny(cursor, 'next');
  const centre = readCentre(cursor);
  if (centre !== null) return { kind: 'before', what: centre, centre: true, span: spanSince(cursor, from) };
  const what = readWhat(cursor);
  if (what !== null) return { kind: 'before', what, span: spanSince(cursor, from) };
  cursor.at = start;
  return null;
}

/** `all four sides are done`, `all sides have been worked` behind "until": to where the round began. */
function takeUntilAllDone(cursor: Cursor): boolean {
  const start = cursor.at;
  if (takeAny(cursor, 'all', 'both') !== null) {
    takeAny(cursor, 'of');
    takeAny(cursor, 'the');
    if (isNumber(cursor)) readNumber(cursor);
    if (takeAny(cursor, 'sides', 'edges') !== null && takeAny(cursor, 'are', 'have') !== null) {
      takeAny(cursor, 'been');
      if (takeOneOf(cursor, DONE) !== null && atBoundary(cursor)) return true;
    }
  }
  cursor.at = start;
  return false;
}

const DONE = new WordSet(['done', 'worked', 'complete', 'completed', 'finished', 'edged', 'covered']);

/** `of row`, `of the round` behind "to end"; the cursor stays where neither stands. */
function takeOfRow(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'of') === null) return;
  takeAny(cursor, 'the', 'this');
  if (takeAny(cursor, 'row', 'rnd', 'round') === null) cursor.at = start;
}

/** `to center` of a shawl: the space it grows from. */
function readCentre(cursor: Cursor): What | null {
  const start = cursor.at;
  if (takeAny(cursor, 'center', 'centre', 'middle') !== null && atBoundary(cursor))
    return { kind: 'space', chains: null, corner: true };
  cursor.at = start;
  return null;
}

/** `last shell` of a pattern that describes none: stitches that spread from one place. */
function readSpread(cursor: Cursor): What | null {
  return takeAny(cursor, 'shell', 'shells', 'fan', 'fans') === null ? null : { kind: 'group' };
}

/** `t-ch`. */
export function takeTch(cursor: Cursor): boolean {
  if (wordAt(cursor) !== 't' || peek(cursor, 1).kind !== 'dash' || wordAt(cursor, 2) !== 'ch') return false;
  cursor.at += 3;
  return true;
}

/** `3 sts remain`, `2 stitches left` after "until". */
function readRemain(cursor: Cursor, from: number): Stop | null {
  const start = cursor.at;
  takeThereAre(cursor);
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  const what = n === null ? null : readWhat(cursor);
  const said = takeAny(cursor, 'remain', 'remains', 'are', 'is') !== null || wordAt(cursor) === 'left';
  if (n !== null && what !== null && said) {
    takeAny(cursor, 'left');
    return { kind: 'leaving', n, what, span: spanSince(cursor, from) };
  }
  cursor.at = start;
  return null;
}

/** `there are`, `theres`, `you have` before what is left. */
function takeThereAre(cursor: Cursor): void {
  const from = cursor.at;
  const short = takeAny(cursor, 'theres', "there's", 'there’s') !== null;
  const verb = !short && takeAny(cursor, 'there', 'you') !== null;
  if (short || (verb && takeAny(cursor, 'are', 'is', 'have') !== null)) {
    takeAny(cursor, 'only', 'just');
    return;
  }
  cursor.at = from;
}

/** `1 st before`, `last dc before`, `2 sts before`: how many are left before the place; null when none stands here. */
function readLess(cursor: Cursor): Num | null {
  const start = cursor.at;
  const last = takeAny(cursor, 'last') !== null;
  const at = cursor.at;
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  const what = readWhat(cursor);
  if (what !== null && (last || n !== null) && takeAny(cursor, 'before') !== null)
    return n ?? { values: [1], span: spanSince(cursor, at) };
  cursor.at = start;
  return null;
}
