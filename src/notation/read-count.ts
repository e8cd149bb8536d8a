/** Stated counts at the end of a row: `(37 sts)`, `(24 dc, 4 ch-2 sps)`, `[24]`, `— 24 sts`, `(37 (49, 61) sts)`. */

import type { Cursor } from './cursor.ts';
import { peek, spanSince, takeAny, takeOneOf, textSince, wordAt } from './cursor.ts';
import type { StatedCount, StatedEntry } from './line.ts';
import { readCountedChain } from './read-chain.ts';
import { isNumberOrSkip, readNumber } from './read-number.ts';
import { readWhat } from './read-what.ts';

/**
 * Reads a stated count if one stands here and nothing but the end of the row follows, or what ends one (`(20 sc), turn`);
 * else null, cursor unmoved.
 * Once something is worked (`worked`) a number in a sentence of its own is one too: `… across. 24 sts`.
 */
export function readStatedCount(cursor: Cursor, worked: boolean, joined = false): StatedCount | null {
  const from = cursor.at;
  const opened = peek(cursor).kind === 'open';
  const told = !opened && takeTold(cursor);
  const colon = !told && worked && peek(cursor).kind === 'colon';
  const marked = opened || colon || peek(cursor).kind === 'dash' || peek(cursor).text === '=';
  const led = told || marked;
  const before = peek(cursor, -1).kind;
  // After the join of a round nothing is worked, so a number there counts.
  const closes = before === 'stop' || (joined && (before === 'semicolon' || before === 'comma'));
  if (!led && !(worked && closes)) return null;
  if (marked && !told) cursor.at += 1;
  // `turn -- 24 sc`.
  if (marked && peek(cursor).kind === 'dash' && peek(cursor, -1).kind === 'dash' && peek(cursor).glued)
    cursor.at += 1;
  const inner = cursor.at;
  const entries = readEntries(cursor);
  if (entries === null) return back(cursor, from);
  // `Ch 21, (25, 29)`: several bare numbers are sizes gone astray, no count.
  if (entries.length > 1 && entries.every(({ what }) => what === null)) return back(cursor, from);
  const text = textSince(cursor, inner);
  if (opened) {
    skipCounting(cursor);
    if (peek(cursor).kind !== 'close') return back(cursor, from);
    cursor.at += 1;
  }
  const span = spanSince(cursor, from);
  const end = cursor.at;
  while (peek(cursor).kind === 'stop' || peek(cursor).kind === 'newline') cursor.at += 1;
  if (peek(cursor).kind !== 'end') {
    if (!led || !(worked && endsRow(cursor))) return back(cursor, from);
    cursor.at = end;
  }
  return { entries, text, span };
}

/** `Total: 20 sts`, `You should now have 20 sts`: the words before the number. */
function takeTold(cursor: Cursor): boolean {
  const from = cursor.at;
  if (takeAny(cursor, 'total', 'totals') !== null) {
    takeAny(cursor, 'of');
    if (['colon', 'dash'].includes(peek(cursor).kind) || peek(cursor).text === '=') cursor.at += 1;
    if (isNumberOrSkip(cursor)) return true;
  }
  cursor.at = from;
  if (takeAny(cursor, 'you', 'there') !== null) {
    takeAny(cursor, 'should', 'will');
    takeAny(cursor, 'now', 'then');
    if (takeAny(cursor, 'have', 'be', 'are') !== null && isNumberOrSkip(cursor)) return true;
  }
  cursor.at = from;
  return false;
}

/** `(20 tr, including 3-ch)`, `(20 dc, counting ch-3 as 1 dc)`: what is among them is said, not counted again. */
function skipCounting(cursor: Cursor): void {
  const from = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  if (takeAny(cursor, 'including', 'counting', 'incl') === null) {
    cursor.at = from;
    return;
  }
  cursor.counting = readCountedChain(cursor);
  while (!['close', 'open', 'end'].includes(peek(cursor).kind)) cursor.at += 1;
}

/** After a count only what ends a row may follow: `(20 sc), turn`, `— 20 sc. Turn.` */
function endsRow(cursor: Cursor): boolean {
  const ahead = ['comma', 'semicolon'].includes(peek(cursor).kind) ? 1 : 0;
  const word = wordAt(cursor, ahead);
  if (word === 'do') return wordAt(cursor, ahead + 1) === 'not';
  if (word === 'fasten') return wordAt(cursor, ahead + 1) === 'off';
  return word === 'turn' || word === 'join';
}

/** What may be said of what is counted. */
const SAID_OF_A_COUNT = new Set(['made', 'total', 'rem', 'remain', 'remaining', 'worked']);

function readEntries(cursor: Cursor): StatedEntry[] | null {
  const entries: StatedEntry[] = [];
  for (;;) {
    if (!isNumberOrSkip(cursor)) return null;
    const from = cursor.at;
    const n = readNumber(cursor);
    if (n === null) return null;
    const what = readWhat(cursor);
    takeOneOf(cursor, SAID_OF_A_COUNT);
    const side = readPerSide(cursor);
    const span = spanSince(cursor, from);
    entries.push(side ? { n, what, perSide: true, span } : { n, what, span });
    const { kind } = peek(cursor);
    const more =
      kind === 'comma' || kind === 'semicolon' || kind === 'colon' || takeAny(cursor, 'and') !== null;
    if (!more) return entries;
    // `20 tr, including 3-ch`, `20 sc, turn`: the comma ends the count.
    if (kind !== 'word' && !isNumberOrSkip(cursor, wordAt(cursor, 1) === 'and' ? 2 : 1)) return entries;
    if (kind === 'comma' || kind === 'semicolon' || kind === 'colon') cursor.at += 1;
    takeAny(cursor, 'and');
  }
}

/** `each side`, `on each side`, `along each side`. */
function readPerSide(cursor: Cursor): boolean {
  const from = cursor.at;
  takeAny(cursor, 'on', 'along', 'per');
  takeAny(cursor, 'each');
  if (takeAny(cursor, 'side', 'edge') !== null) return true;
  cursor.at = from;
  return false;
}

function back(cursor: Cursor, at: number): null {
  cursor.at = at;
  return null;
}
