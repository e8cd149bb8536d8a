/** The words of a sentence that lead to a count: `You should now have`, `Still`, `After Row 24 you will have`. */

import type { Cursor } from './cursor.ts';
import { nameHere, peek, spanSince, takeAny, takeOneOf, takeWords, wordAt } from './cursor.ts';
import type { StatedEntry } from './line.ts';
import { isNumber, isNumberOrSkip, readNumber } from './read-number.ts';
import { WORK } from './read-remark.ts';
import { readWhat } from './read-what.ts';
import { WordSet } from './word-set.ts';

/** What a count in a sentence begins with. */
export const TELLERS = new WordSet(
  [
    ...['total', 'totals', 'you', 'there', 'this', 'that', 'it', 'after', 'at', 'by', 'still', 'so', 'and'],
    ...['row', 'rnd', 'round', 'r', 'which', 'when', 'once'],
  ].concat(
    ["you'll", "you've", "that's", "there's", "it's"].flatMap((word) => [word, word.replace("'", '’')]),
  ),
);

const SUBJECTS = new WordSet(['which', 'you', 'there', 'this', 'that', 'it', "you'll", 'you’ll']);
/** Words that are subject and verb in one. */
const HAVE_ALREADY = new WordSet([
  "you've",
  'you’ve',
  "that's",
  'that’s',
  "there's",
  'there’s',
  "it's",
  'it’s',
]);
const HAVING = new WordSet(['have', 'be', 'are', 'is', 'gives', 'makes', 'leaves', 'end', 'finish', 'count']);
const WILL = new WordSet(['should', 'will', 'now', 'then', 'still']);
const BEHIND_VERB = new WordSet(['you', 'with', 'now', 'still', 'a', 'got']);
export const ROW_WORDS = new WordSet([
  ...['row', 'rows', 'rnd', 'rnds', 'round', 'rounds', 'ring', 'circle', 'hook'],
]);

/** `Total: 20 sts`, `You should now have 20 sts`, `Still 20 sts`: the words before the number. */
export function takeTold(cursor: Cursor): boolean {
  // A dash, a number: nearly always it is told with no words.
  if (peek(cursor).kind !== 'word') return false;
  const from = cursor.at;
  if (takeAny(cursor, 'total', 'totals') !== null) {
    takeAny(cursor, 'of');
    if (['colon', 'dash'].includes(peek(cursor).kind) || peek(cursor).text === '=') cursor.at += 1;
    if (isNumberOrSkip(cursor)) return true;
  }
  cursor.at = from;
  takeAny(cursor, 'so', 'and');
  if (takeAny(cursor, 'still', 'now') !== null && isNumberOrSkip(cursor)) return true;
  if (takeOneOf(cursor, HAVE_ALREADY) !== null) {
    takeAny(cursor, 'now', 'got', 'still');
    if (isNumberOrSkip(cursor)) return true;
  }
  if (takeOneOf(cursor, SUBJECTS) !== null) {
    takeOneOf(cursor, WILL);
    takeAny(cursor, 'now', 'then', 'still');
    const verb = takeOneOf(cursor, HAVING);
    takeOneOf(cursor, BEHIND_VERB);
    takeAny(cursor, 'total');
    takeAny(cursor, 'of');
    if (verb !== null && isNumberOrSkip(cursor)) return true;
  }
  cursor.at = from;
  return false;
}

/** `(47 on each side)`, `, that is 47 each side of the middle` behind the only thing counted: its half, said once more. False where it is another number. */
export function takeHalved(cursor: Cursor, entries: readonly StatedEntry[]): boolean {
  const [only, more] = entries;
  const opened = peek(cursor).kind === 'open';
  const spoken = peek(cursor).kind === 'comma' && HALVING.holds(peek(cursor, 1));
  if (!(opened || spoken) || only === undefined || more !== undefined) return true;
  const start = cursor.at;
  cursor.at += 1;
  if (spoken) cursor.at += 1;
  takeAny(cursor, 'is');
  const half = isNumber(cursor) ? readNumber(cursor) : null;
  readWhat(cursor);
  takeAny(cursor, 'on', 'at');
  const each = takeAny(cursor, 'each', 'either', 'per') !== null && takeAny(cursor, 'side', 'half') !== null;
  if (each && takeAny(cursor, 'of') !== null) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'middle', 'center', 'centre', 'spine');
  }
  if (half === null || !each || (opened && peek(cursor).kind !== 'close')) {
    cursor.at = start;
    return true;
  }
  if (opened) cursor.at += 1;
  return half.values.every((value, i) => value === null || 2 * value === only.n.values[i]);
}

/** `[5 rounds]` behind `(30)`: how many rows the line has; null, the cursor where it was, where that is not told. */
export function takeRowsBeside(cursor: Cursor): StatedEntry | null {
  if (peek(cursor).kind !== 'open' || !isNumber(cursor, 1)) return null;
  const start = cursor.at;
  cursor.at += 1;
  const from = cursor.at;
  const n = readNumber(cursor);
  const rows = ROWS_COUNTED.holds(peek(cursor)) && peek(cursor, 1).kind === 'close';
  if (n === null || !rows) {
    cursor.at = start;
    return null;
  }
  cursor.at += 1;
  const span = spanSince(cursor, from);
  cursor.at += 1;
  return { n, what: { kind: 'rows' }, span };
}

const ROWS_COUNTED = new WordSet(['rows', 'rnds', 'rounds', 'row', 'rnd', 'round']);
const HALVING = new WordSet(['that', "that's", 'that’s', 'which', 'or']);

/** `, by Row 20 it's`, `and at the end of Row 30 you have` behind the count of another row: whether one more is told; the cursor then stands before it. */
export function takeFurtherRow(cursor: Cursor): boolean {
  const start = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  takeAny(cursor, 'and');
  const at = cursor.at;
  const further = at > start && takeAfterRow(cursor) !== null;
  cursor.at = further ? at : start;
  return further;
}

/** `, not very impressive yet` behind a count that was told: talk, to the end of the sentence; left where it may be work. */
export function takeTalk(cursor: Cursor): void {
  if (peek(cursor).kind !== 'comma') return;
  const start = cursor.at;
  cursor.at += 1;
  for (let { kind } = peek(cursor); kind !== 'stop' && kind !== 'end'; { kind } = peek(cursor)) {
    const talk = kind === 'word' || kind === 'comma' || kind === 'dash';
    if (!talk || WORK.test(wordAt(cursor)) || nameHere(cursor) !== null) {
      cursor.at = start;
      return;
    }
    cursor.at += 1;
  }
}

/** `when you stop`, `once you have finished` before "after Row 12" or "Row 12"; the cursor stays where no such words stand. */
function takeWhenDone(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'when', 'once') !== null) {
    takeAny(cursor, 'you', "you've", 'you’ve', 'we');
    takeAny(cursor, 'have', 'are', 'get');
    if (takeOneOf(cursor, DONE) !== null) {
      takeAny(cursor, 'working', 'with', 'to');
      if (ROW_WORDS.holds(peek(cursor)) || LEADS_TO_ROW.holds(peek(cursor))) return;
    }
  }
  cursor.at = start;
}

const DONE = new WordSet([
  'stop',
  'finish',
  'finished',
  'done',
  'worked',
  'reach',
  'reached',
  'complete',
  'completed',
  'to',
]);
export const LEADS_TO_ROW = new WordSet(['after', 'at', 'by', 'with']);

/**
 * `After Row 24`, `At the end of Row 24` before "you have", and `so you end Row 12 with` itself: which row; null with the
 * cursor where it was. `whole` where no more words lead to the number.
 */
export function takeAfterRow(cursor: Cursor): { readonly row: number; readonly whole: boolean } | null {
  if (peek(cursor).kind !== 'word') return null;
  const from = cursor.at;
  takeAny(cursor, 'so', 'and');
  if (takeAny(cursor, 'you', "you'll", 'you’ll') !== null && takeAny(cursor, 'end', 'finish') !== null) {
    const row = takeRow(cursor);
    if (row > 0 && takeAny(cursor, 'with') !== null && isNumberOrSkip(cursor)) return { row, whole: true };
  }
  cursor.at = from;
  // `Row 18 has 5 sc`.
  const told = takeRow(cursor);
  if (told > 0) {
    takeAny(cursor, 'should', 'will', 'now', 'then');
    const has = takeOneOf(cursor, HAS) !== null;
    takeAny(cursor, 'with', 'on', 'up');
    takeAny(cursor, 'with');
    if (has && isNumberOrSkip(cursor)) return { row: told, whole: true };
  }
  cursor.at = from;
  if (WHEN.holds(peek(cursor, SO.holds(peek(cursor)) ? 1 : 0))) {
    takeAny(cursor, 'so', 'and');
    takeWhenDone(cursor);
  }
  const when = cursor.at > from;
  if (takeAny(cursor, 'after', 'at', 'by') === null && !when) {
    cursor.at = from;
    return null;
  }
  takeAny(cursor, 'the');
  if (takeAny(cursor, 'end') !== null) takeAny(cursor, 'of');
  takeAny(cursor, 'working', 'completing');
  const row = takeRow(cursor);
  if (row === 0) {
    cursor.at = from;
    return null;
  }
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  return { row, whole: false };
}

const WHEN = new WordSet(['when', 'once']);
const SO = new WordSet(['so', 'and']);
const HAS = new WordSet(['has', 'have', 'ends', 'finishes', 'makes', 'gives', 'leaves']);

/** `Row 24`, `R24`; 0 where no row stands here. */
function takeRow(cursor: Cursor): number {
  if (wordAt(cursor) === 'r' && peek(cursor, 1).kind === 'number' && peek(cursor, 1).glued) {
    cursor.at += 2;
    return peek(cursor, -1).value;
  }
  if (!ROW_WORDS.holds(peek(cursor)) || peek(cursor, 1).kind !== 'number') return 0;
  cursor.at += 2;
  return peek(cursor, -1).value;
}

/** `ending with`, `ending with a total of`, `until`, `until there is only` before what the last of the rows makes. */
export function takeEnding(cursor: Cursor): boolean {
  if (takeAny(cursor, 'ending', 'finishing', 'end') !== null) {
    if (takeAny(cursor, 'with') === null) return false;
    takeWords(cursor, 'a', 'total', 'of');
    return true;
  }
  if (takeAny(cursor, 'until', 'till', 'til') === null) return false;
  if (takeOneOf(cursor, HAVE_ALREADY) === null && takeAny(cursor, 'there', 'you', 'only') !== null)
    takeAny(cursor, 'is', 'are', 'have');
  takeAny(cursor, 'only', 'just');
  return true;
}
