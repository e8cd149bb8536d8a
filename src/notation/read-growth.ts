/** What is said of how rows grow: `each rnd adds 8 sts`, `you'll have one more block every row`, `1 st less each row`. */

import type { Cursor } from './cursor.ts';
import { nameHere, peek, spanSince, takeAny, takeOneOf, textSince, wordAt } from './cursor.ts';
import type { Num } from './num.ts';
import { isNumber, readNumber } from './read-number.ts';
import type { NoteStep } from './tree.ts';
import { WordSet } from './word-set.ts';

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
  return read.of === null ? { ...note, span } : { ...note, addsOf: read.of, span };
}

interface Growth {
  readonly adds: Num;
  /** The special stitch that is counted; null for any stitches. */
  readonly of: string | null;
}

/** `each rnd adds 8 sts`, `each round increases by 8 sts`, `every rnd has 8 more sts`. */
function readOfEach(cursor: Cursor): Growth | null {
  const each = takeAny(cursor, 'each', 'every') !== null && takeOneOf(cursor, ROWS) !== null;
  const verb = each ? takeOneOf(cursor, GROWS) : null;
  if (verb === null) return null;
  if (verb === 'increases' || verb === 'decreases') takeAny(cursor, 'by');
  const adds = readNumber(cursor);
  const before = takeOneOf(cursor, COMPARING);
  const of = takeGrown(cursor);
  // `one more block` as much as `one block more`.
  const compared = before ?? takeOneOf(cursor, COMPARING);
  if (adds === null || of === undefined || (verb === 'has' && compared === null)) return null;
  takeThanBefore(cursor);
  const fewer = compared !== null && compared !== 'more';
  // What grows by fewer, or loses more, says no one thing.
  if (fewer && verb !== 'has') return null;
  return takeBothSides(cursor, adds) ? { adds: LOSES.has(verb) || fewer ? negated(adds) : adds, of } : null;
}

/** `than the one before`, `than the last`: against which row, which goes without saying. */
function takeThanBefore(cursor: Cursor): void {
  if (wordAt(cursor) !== 'than') return;
  const start = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'the');
  takeAny(cursor, 'one', 'row', 'rnd', 'round');
  const last = takeAny(cursor, 'last', 'previous', 'before', 'below') !== null;
  takeOneOf(cursor, ROWS);
  if (!last) cursor.at = start;
}

/** `, 2 on each side of the center`: the half of it, said once more. False where it is another number. */
function takeBothSides(cursor: Cursor, adds: Num): boolean {
  const start = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  const half = isNumber(cursor) ? readNumber(cursor) : null;
  takeAny(cursor, 'more');
  takeAny(cursor, 'on', 'at', 'to');
  const each = half !== null && takeAny(cursor, 'each', 'either', 'per') !== null;
  if (!each || takeAny(cursor, 'side', 'end', 'edge', 'half') === null) {
    cursor.at = start;
    return true;
  }
  if (takeAny(cursor, 'of') !== null) {
    takeAny(cursor, 'the');
    takeOneOf(cursor, MIDDLES);
  }
  return half.values.every((value, i) => value === null || 2 * value === adds.values[i]);
}

const MIDDLES = new WordSet(['center', 'centre', 'middle', 'spine', 'marker', 'row', 'shawl']);
const LOSES = new Set(['loses', 'decreases']);

/** `you'll have one more block every row`, `one block less every row`. */
function readMoreEach(cursor: Cursor, from: number): Growth | null {
  cursor.at = from;
  takeAny(cursor, 'with', 'making');
  const told = takeYouHave(cursor);
  const verb = told ? wordAt(cursor, -1) : '';
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  if (n === null) return null;
  const before = takeOneOf(cursor, COMPARING);
  const of = takeGrown(cursor);
  const compared = before ?? takeOneOf(cursor, COMPARING) ?? VERBS.get(verb) ?? null;
  takeAny(cursor, 'in', 'on', 'after');
  const each = takeAny(cursor, 'each', 'every') !== null && takeOneOf(cursor, ROWS) !== null;
  const { kind } = peek(cursor);
  const ends = kind === 'stop' || kind === 'end' || (kind === 'comma' && UNTIL.holds(peek(cursor, 1)));
  if (of === undefined || compared === null || !each || !(ends || told)) return null;
  return { adds: compared === 'more' ? n : negated(n), of };
}

const UNTIL = new WordSet(['until', 'till', 'til', 'ending', 'finishing']);

/** A sentence of its own, `…, one block fewer every row`; null wherever else nothing of that can stand. */
export function readGrowthHere(cursor: Cursor): NoteStep | null {
  const { kind } = peek(cursor, -1);
  return kind === 'stop' || (kind === 'comma' && comparesHere(cursor, 0)) ? readGrowth(cursor) : null;
}

/** Whether `one block fewer`, `1 less st`, `with one block fewer` stands here, so many words on. */
export function comparesHere(cursor: Cursor, ahead: number): boolean {
  if (!isNumber(cursor, ahead) || peek(cursor, ahead + 1).kind !== 'word' || isNumber(cursor, ahead + 1))
    return false;
  return COMPARING.holds(peek(cursor, ahead + 1)) || COMPARING.holds(peek(cursor, ahead + 2));
}

function negated(n: Num): Num {
  return { ...n, values: n.values.map(negative) };
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
    if (takeAny(cursor, 'get', 'gain', 'add', 'lose') !== null) return true;
  }
  cursor.at = from;
  return false;
}

/** What verbs compare by themselves: `you lose one tile each row`. */
const VERBS: ReadonlyMap<string, string> = new Map([
  ['gain', 'more'],
  ['add', 'more'],
  ['lose', 'less'],
]);

/** Undefined where nothing stands that rows are counted in. */
function takeGrown(cursor: Cursor): Growth['of'] | undefined {
  if (takeAny(cursor, 'sts', 'st', 'stitches', 'stitch') !== null) return null;
  const found = nameHere(cursor);
  if (found?.named.kind === 'stitch') {
    cursor.at += found.length;
    return null;
  }
  if (found?.named.kind === 'special') {
    cursor.at += found.length;
    return found.named.name;
  }
  return takeAny(cursor, 'block', 'blocks', 'tile', 'tiles') === null ? undefined : 'block';
}

const ROWS = new WordSet(['rnd', 'round', 'row']);
const GROWS = new WordSet(['adds', 'increases', 'gains', 'has', 'loses', 'decreases']);
const COMPARING = new WordSet(['more', 'less', 'fewer']);
