/** `rep Row 2`, `rep Rows 2 and 3 to height, ending with a Row 3`, `as Row 2`, and lists of row numbers. */

import type { Cursor } from './cursor.ts';
import {
  forgetSince,
  peek,
  spanAt,
  spanSince,
  takeAny,
  takeOneOf,
  takeWords,
  textSince,
  wordAt,
} from './cursor.ts';
import type { Num } from './num.ts';
import { readBareRow } from './read-bare-row.ts';
import { comparesHere } from './read-growth.ts';
import { takeEndingSide, takeMeasured } from './read-measured.ts';
import { isNumber, LARGEST_NUMBER, readNumber } from './read-number.ts';
import { readOpenLength } from './read-open-length.ts';
import { readTimes } from './read-stop.ts';
import { readStitchName } from './read-yarn.ts';
import { UNITS, unitAt, unitOfPart } from './row-unit.ts';
import type { NoteStep, RepeatRowsStep } from './tree.ts';
import { WordSet } from './word-set.ts';

/** Reads from the word `Row` after `rep`, `as`, `work as for`; null with the cursor where it was when it does not stand here. */
export function readRepeatRows(cursor: Cursor, from: number): RepeatRowsStep | null {
  const start = cursor.at;
  const lastRows = readLastRows(cursor, from);
  if (lastRows !== null) return lastRows;
  const byOrdinal = readOrdinalRows(cursor, from);
  if (byOrdinal !== null) return byOrdinal;
  if (wordAt(cursor) === 'from' && unitAt(cursor, 1) !== null) cursor.at += 1;
  const bare = readBareRow(cursor, from);
  if (bare !== null) return bare;
  const unit = unitAt(cursor) ?? (wordAt(cursor) === 'r' ? unitOfPart(cursor) : null);
  if (unit === null || !isNumber(cursor, 1)) {
    cursor.at = start;
    return null;
  }
  cursor.at += 1;
  const rows = readRowNumbers(cursor);
  if (rows.length === 0) {
    cursor.at = start;
    return null;
  }
  takeAny(cursor, 'consecutively');
  const until = readUntil(cursor);
  return { kind: 'repeat rows', unit, rows, until, span: spanSince(cursor, from) };
}

/** `patt` before "row", where the row labelled so is the last of those with a label. */
function takePattRow(cursor: Cursor): string | null {
  if (cursor.patt.row === 0 || cursor.patt.row !== cursor.reached) return null;
  return takeAny(cursor, 'patt', 'pattern');
}

/** `last row`, `last 2 rnds`, `these 2 rows`, `the last row`, `the patt row`. */
function readLastRows(cursor: Cursor, from: number): RepeatRowsStep | null {
  const start = cursor.at;
  takeAny(cursor, 'the');
  const named =
    takeAny(cursor, 'last', 'these', 'previous', 'prev') ?? takeAny(cursor, 'this') ?? takePattRow(cursor);
  const n = named === null || !isNumber(cursor) ? 1 : peek(cursor).value || 1;
  if (named !== null && isNumber(cursor)) cursor.at += 1;
  const unit = unitAt(cursor);
  if (named === null || unit === null) {
    cursor.at = start;
    return null;
  }
  cursor.at += 1;
  return {
    kind: 'repeat rows',
    unit,
    rows: [],
    last: n,
    until: readUntil(cursor),
    span: spanSince(cursor, from),
  };
}

/** `even for 5 rows`, `straight for 3 rnds`, `5 rows even` after "work": null when that is not what stands here. */
export function readWorkEven(cursor: Cursor, from: number): RepeatRowsStep | null {
  const start = cursor.at;
  const before = isNumber(cursor) ? readNumber(cursor) : null;
  const said = before === null ? null : unitAt(cursor);
  if (said !== null) cursor.at += 1;
  if (before !== null && said === null) {
    cursor.at = start;
    return null;
  }
  if (takeAny(cursor, 'even', 'straight') !== null) {
    const plain = takeAny(cursor, 'in') === null || takeAny(cursor, 'patt', 'pattern') !== null;
    const stitch = plain ? null : readStitchName(cursor);
    const named = stitch === null ? {} : { inStitch: stitch };
    takeAny(cursor, 'for');
    const n = before ?? readNumber(cursor);
    const unit = before === null ? unitAt(cursor) : said;
    if (n !== null && unit !== null) {
      if (before === null) cursor.at += 1;
      takeAny(cursor, 'more');
      const until = { kind: 'times', n, more: false } as const;
      return {
        kind: 'repeat rows',
        unit,
        rows: [],
        last: 1,
        even: true,
        ...named,
        until,
        span: spanSince(cursor, from),
      };
    }
    if (n === null)
      return {
        kind: 'repeat rows',
        unit: unitOfPart(cursor),
        rows: [],
        last: 1,
        even: true,
        ...named,
        until: evenUntil(cursor),
        span: spanSince(cursor, from),
      };
  }
  cursor.at = start;
  return null;
}

/** `until armhole measures 22 cm`, `until it matches the back`: of a part of the piece its whole height says nothing, and one row stands for them. */
function evenUntil(cursor: Cursor): RepeatRowsStep['until'] {
  const whole = WHOLE.holds(peek(cursor, wordAt(cursor, 1) === 'the' ? 2 : 1));
  const measured = wordAt(cursor) === 'until' && takeMeasured(cursor);
  if (!measured) return readTotal(cursor) ?? { kind: 'label' };
  const endingWith = readEndOf(cursor);
  return whole ? { kind: 'height', endingWith } : { kind: 'label' };
}

const WHOLE = new WordSet(['work', 'piece', 'it', 'panel', 'scarf', 'blanket', 'strip', 'square']);

/** `2`, `2 and 3`, `2-5`, `2, 3 and 4`, `14 (14, 16)` for each size. */
export function readRowNumbers(cursor: Cursor): Num[] {
  const rows: Num[] = [];
  for (;;) {
    const token = peek(cursor);
    if (token.kind !== 'number') return rows;
    const perSize = readRowOfSizes(cursor);
    if (perSize !== null) rows.push(perSize);
    if (perSize !== null) return rows;
    const span = spanAt(cursor, cursor.at);
    cursor.at += 1;
    // `Rep Row 5 — 29, 27 and 25 sc`: one row, and behind the stroke what it comes to.
    const one = rows.length === 0 && ONE_ROW.holds(peek(cursor, -2)) && !peek(cursor).glued;
    const joint = (peek(cursor).kind === 'dash' && !one) || wordAt(cursor) === 'to';
    const named = joint && (unitAt(cursor, 1) !== null || wordAt(cursor, 1) === 'r') ? 1 : 0;
    const range = joint ? peek(cursor, 1 + named) : null;
    // `Rep Rows 2 and 3 - 31 sts` ends in a count.
    if (range !== null && range.kind === 'number' && !isCount(cursor, 1 + named)) {
      cursor.at += 2 + named;
      const last = Math.min(range.value, token.value + LARGEST_NUMBER);
      for (let row = token.value; row <= last; row += 1) rows.push({ values: [row], span });
    } else rows.push({ values: [token.value], span });
    const joined = peek(cursor).kind === 'comma' || wordAt(cursor) === 'and' || peek(cursor).text === '&';
    if (!joined) return rows;
    // `R2 and R3`, `Row 2 and Row 3`.
    const unit = unitAt(cursor, 1) !== null || wordAt(cursor, 1) === 'r' ? 1 : 0;
    const next = peek(cursor, 1 + unit);
    if (next.kind !== 'number' || isTimes(cursor, 2 + unit) || comparesHere(cursor, 1 + unit)) return rows;
    cursor.at += 1 + unit;
  }
}

const ONE_ROW = new WordSet(['row', 'rnd', 'round']);

/**
 * `14 (14, 16)`: a row for each size; null when the brackets hold anything else. `Rep Row 2 (24)` with two sizes ends in
 * a count: what is repeated has been worked.
 */
function readRowOfSizes(cursor: Cursor): Num | null {
  const from = cursor.at;
  const faults = cursor.faults.length;
  const n = readNumber(cursor);
  const worked = n?.values.every((row) => row === null || row <= cursor.reached) === true;
  if (n !== null && n.values.length > 1 && worked && cursor.faults.length === faults) return n;
  forgetSince(cursor, faults);
  cursor.at = from;
  return null;
}

/** `2nd row`, `2nd and 3rd rows`; null when neither stands here. */
function readOrdinalRows(cursor: Cursor, from: number): RepeatRowsStep | null {
  const start = cursor.at;
  const rows: Num[] = [];
  takeAny(cursor, 'from');
  takeAny(cursor, 'the');
  while (peek(cursor).kind === 'ordinal') {
    const token = peek(cursor);
    const span = spanAt(cursor, cursor.at);
    cursor.at += 1;
    const ranged = wordAt(cursor) === 'to' || peek(cursor).kind === 'dash';
    // `from the 2nd to the 5th row`.
    const to = wordAt(cursor, 1) === 'the' ? 2 : 1;
    const last = ranged && peek(cursor, to).kind === 'ordinal' ? peek(cursor, to).value : token.value;
    if (last > token.value) cursor.at += to + 1;
    const end = Math.min(last, token.value + LARGEST_NUMBER);
    for (let row = token.value; row <= end; row += 1) rows.push({ values: [row], span });
    const joined = wordAt(cursor) === 'and' || peek(cursor).kind === 'comma' || peek(cursor).text === '&';
    if (joined && peek(cursor, 1).kind === 'ordinal') cursor.at += 1;
  }
  const unit = unitAt(cursor);
  if (rows.length === 0 || unit === null) {
    cursor.at = start;
    return null;
  }
  cursor.at += 1;
  return { kind: 'repeat rows', unit, rows, until: readUntil(cursor), span: spanSince(cursor, from) };
}

/** A number that counts stitches: sizes or a kind of stitch come behind it. */
function isCount(cursor: Cursor, ahead: number): boolean {
  const next = peek(cursor, ahead + 1);
  if (next.kind === 'open') return true;
  if (isNumber(cursor, ahead + 1)) return false;
  return next.kind === 'word' && !AFTER_ROWS.has(next.text);
}

/** What follows the number of a row, and none of stitches. */
const AFTER_ROWS = new WordSet([
  ...['and', 'to', 'times', 'time', 'more', 'twice', 'once', 'until', 'ending', 'form', 'set', 'make'],
  'consecutively',
  'another',
  'for',
  'as',
]);

/** `2 and 3 twelve more times`: the number after the list belongs to "times". */
function isTimes(cursor: Cursor, ahead: number): boolean {
  const word = wordAt(cursor, ahead);
  return (
    word === 'times' ||
    word === 'time' ||
    (word === 'more' &&
      (wordAt(cursor, ahead + 1).startsWith('time') || UNITS.holds(peek(cursor, ahead + 1))))
  );
}

/** `until piece measures 15 cm` at the end of a row that goes on to a height; null where the row is no such one. */
export function readMeasured(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  if (!cursor.openEnded || !takeMeasured(cursor)) return null;
  return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
}

/** `12 more rounds`, `so 7 more rows` behind `same as Rnd 6`: how many the label has; null where none are told so. */
export function readMoreRows(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  takeAny(cursor, 'so');
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  if (n !== null && takeAny(cursor, 'more') !== null && takeOneOf(cursor, UNITS) !== null) {
    takeWords(cursor, 'in', 'all');
    return { kind: 'note', text: textSince(cursor, from), rows: n, span: spanSince(cursor, from) };
  }
  cursor.at = from;
  return null;
}

/** `then Row 2 once`, `then 2nd row once more` behind rows that are repeated; null when it does not say how often. */
export function readRowsOnceMore(cursor: Cursor): RepeatRowsStep | null {
  const from = cursor.at;
  const rows = readRepeatRows(cursor, from);
  if (rows !== null && rows.until.kind === 'times') return rows;
  cursor.at = from;
  return null;
}

export function readUntil(cursor: Cursor): RepeatRowsStep['until'] {
  const from = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  const said = readOpenLength(cursor);
  if (said !== null) return { kind: 'height', endingWith: readEndingWith(cursor), said };
  if (
    takeWords(cursor, 'to', 'height') ||
    takeWords(cursor, 'to', 'size') ||
    takeWords(cursor, 'to', 'length') ||
    takeWords(cursor, 'until', 'piece', 'reaches', 'height') ||
    takeWords(cursor, 'until', 'piece', 'is', 'tall', 'enough') ||
    takeWords(cursor, 'for', 'patt') ||
    takeWords(cursor, 'for', 'pattern')
  )
    return { kind: 'height', endingWith: readEndOf(cursor) };
  if (takeMeasured(cursor)) return { kind: 'height', endingWith: readEndOf(cursor), measured: true };
  const total = readTotal(cursor);
  if (total !== null) return total;
  const times = readTimes(cursor, cursor.at);
  if (times !== null && times.kind === 'times') return { kind: 'times', n: times.n, more: times.more };
  cursor.at = from;
  const endingWith = readEndingWith(cursor);
  if (endingWith !== null) return { kind: 'height', endingWith };
  return { kind: 'label' };
}

/** The row it ends with; null where only the side of it is said, or nothing. */
function readEndOf(cursor: Cursor): number | null {
  const endingWith = readEndingWith(cursor);
  if (endingWith === null) takeEndingSide(cursor);
  return endingWith;
}

/** `until 24 rows have been worked`, `until there are 24 rows`: how many rows there are by then. */
function readTotal(cursor: Cursor): RepeatRowsStep['until'] | null {
  const from = cursor.at;
  if (takeAny(cursor, 'until', 'till', 'til') !== null) {
    const counted =
      takeWords(cursor, 'there', 'are') || takeWords(cursor, 'you', 'have') || takeYouHaveGot(cursor);
    // `until you have worked 52 rows in all`.
    takeAny(cursor, 'worked', 'made', 'completed', 'done');
    const n = isNumber(cursor) ? readNumber(cursor) : null;
    const unit = n === null ? null : unitAt(cursor);
    if (unit !== null) cursor.at += 1;
    const before = takeInAll(cursor);
    takeAny(cursor, 'have', 'are');
    takeAny(cursor, 'been');
    const all = takeInAll(cursor) || before;
    const done = takeAny(cursor, 'worked', 'completed', 'made', 'done') !== null;
    if (n !== null && unit !== null && (counted || done || all)) {
      takeWords(cursor, 'in', 'all');
      takeFirstOfThem(cursor);
      return { kind: 'total', n, endingWith: readEndingWith(cursor) };
    }
  }
  cursor.at = from;
  return null;
}

/** `in all`, `in total`, `altogether`, before or behind "have been worked". */
function takeInAll(cursor: Cursor): boolean {
  if (takeWords(cursor, 'in', 'total') || takeWords(cursor, 'in', 'all')) return true;
  return takeAny(cursor, 'altogether') !== null;
}

/** `you've got`, `you have got`, `youve`. */
function takeYouHaveGot(cursor: Cursor): boolean {
  if (takeAny(cursor, "you've", 'you’ve', 'youve') === null) return false;
  takeAny(cursor, 'got', 'done', 'made');
  return true;
}

/** `, ending with a Row 3`, `, ending after a Row 3`. */
function readEndingWith(cursor: Cursor): number | null {
  const from = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  if (takeAny(cursor, 'ending', 'end', 'finishing') !== null) {
    takeAny(cursor, 'with', 'on', 'after');
    takeAny(cursor, 'a', 'the');
    if (peek(cursor).kind === 'ordinal' && unitAt(cursor, 1) !== null) {
      const { value } = peek(cursor);
      cursor.at += 2;
      return value;
    }
    if (unitAt(cursor) !== null && peek(cursor, 1).kind === 'number') {
      const { value } = peek(cursor, 1);
      cursor.at += 2;
      return value;
    }
  }
  cursor.at = from;
  return null;
}

/** `from the dividing row, that row included`, `, Row 1 included`, `, counting Row 1`: the rows of a piece, its first among them. */
function takeFirstOfThem(cursor: Cursor): void {
  const start = cursor.at;
  // Where more rows lie below, it is not known which of them divides.
  if (cursor.reached === 1 && takeAny(cursor, 'from') !== null) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'dividing', 'division', 'first', 'beginning');
    takeAny(cursor, 'row', 'rnd', 'round');
  }
  const named = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  const counting = takeAny(cursor, 'counting', 'including') !== null;
  takeAny(cursor, 'that', 'this', 'the');
  takeAny(cursor, 'first', 'dividing');
  const row = unitAt(cursor) !== null;
  if (row) cursor.at += 1;
  const other = row && peek(cursor).kind === 'number' && peek(cursor).value !== 1;
  if (row && peek(cursor).kind === 'number') cursor.at += 1;
  const included = takeAny(cursor, 'included', 'inclusive') !== null;
  if (!row || other || !(counting || included)) cursor.at = named;
  if (named > start && cursor.at === named) cursor.at = start;
}
