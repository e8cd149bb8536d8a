/** What is said of how rows grow: `each rnd adds 8 sts`, `you'll have one more block every row`, `1 st less each row`. */

import type { Cursor } from './cursor.ts';
import { peek, spanSince, takeAny, takeOneOf, textSince } from './cursor.ts';
import type { Num } from './num.ts';
import { isNumber, readNumber } from './read-number.ts';
import type { NoteStep } from './tree.ts';

/** Null, with the cursor where it was, when it is something else. */
export function readGrowth(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  const read = readOfEach(cursor) ?? readMoreEach(cursor, from);
  if (read === null) {
    cursor.at = from;
    return null;
  }
  const note = { kind: 'note', text: textSince(cursor, from), adds: read.adds } as const;
  const span = spanSince(cursor, from);
  return read.of === 'block' ? { ...note, addsOf: 'block', span } : { ...note, span };
}

interface Growth {
  readonly adds: Num;
  readonly of: 'st' | 'block';
}

/** `each rnd adds 8 sts`, `each round increases by 8 sts`, `every rnd has 8 more sts`. */
function readOfEach(cursor: Cursor): Growth | null {
  const each = takeAny(cursor, 'each', 'every') !== null && takeOneOf(cursor, ROWS) !== null;
  const verb = each ? takeOneOf(cursor, GROWS) : null;
  if (verb === null) return null;
  if (verb === 'increases') takeAny(cursor, 'by');
  const adds = readNumber(cursor);
  const more = takeAny(cursor, 'more') !== null;
  const of = takeGrown(cursor);
  return adds === null || of === null || (verb === 'has' && !more) ? null : { adds, of };
}

/** `you'll have one more block every row`, `one block less every row`. */
function readMoreEach(cursor: Cursor, from: number): Growth | null {
  cursor.at = from;
  const told = takeYouHave(cursor);
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  if (n === null) return null;
  const before = takeOneOf(cursor, COMPARING);
  const of = takeGrown(cursor);
  const compared = before ?? takeOneOf(cursor, COMPARING);
  takeAny(cursor, 'in', 'on', 'after');
  const each = takeAny(cursor, 'each', 'every') !== null && takeOneOf(cursor, ROWS) !== null;
  const ends = peek(cursor).kind === 'stop' || peek(cursor).kind === 'end';
  if (of === null || compared === null || !each || !(ends || told)) return null;
  const adds = compared === 'more' ? n : { ...n, values: n.values.map(negative) };
  return { adds, of };
}

function negative(value: number | null): number | null {
  return value === null ? null : -value;
}

/** `you'll have`, `you will now have`, `there will be`, `there is`. */
function takeYouHave(cursor: Cursor): boolean {
  const from = cursor.at;
  const contracted = takeAny(cursor, "you'll", 'you’ll', 'you', 'there') !== null;
  if (contracted) {
    takeAny(cursor, 'will', 'should');
    takeAny(cursor, 'now', 'then');
    if (takeAny(cursor, 'have', 'be', 'is', 'are') !== null) return true;
  }
  cursor.at = from;
  return false;
}

function takeGrown(cursor: Cursor): Growth['of'] | null {
  if (takeAny(cursor, 'sts', 'st', 'stitches', 'stitch') !== null) return 'st';
  return takeAny(cursor, 'block', 'blocks') === null ? null : 'block';
}

const ROWS = new Set(['rnd', 'round', 'row']);
const GROWS = new Set(['adds', 'increases', 'gains', 'has']);
const COMPARING = new Set(['more', 'less', 'fewer']);
