/** Stated counts at the end of a row: `(37 sts)`, `(24 dc, 4 ch-2 sps)`, `[24]`, `— 24 sts`, `(37 (49, 61) sts)`. */

import type { Cursor } from './cursor.ts';
import { peek, spanSince, takeAny, textSince } from './cursor.ts';
import { isNumber, readNumber } from './read-number.ts';
import { readWhat } from './read-what.ts';
import type { StatedCount, StatedEntry } from './tree.ts';

/**
 * Reads a stated count if one stands here and nothing but the end of the row follows; else null, cursor unmoved.
 * Once something is worked (`worked`) a number in a sentence of its own is one too: `… across. 24 sts`.
 */
export function readStatedCount(cursor: Cursor, worked: boolean, joined = false): StatedCount | null {
  const from = cursor.at;
  const opened = peek(cursor).kind === 'open';
  const led = opened || peek(cursor).kind === 'dash' || peek(cursor).text === '=';
  const before = peek(cursor, -1).kind;
  // After the join of a round nothing is worked, so a number there counts.
  const closes = before === 'stop' || (joined && (before === 'semicolon' || before === 'comma'));
  if (!led && !(worked && closes)) return null;
  if (led) cursor.at += 1;
  const inner = cursor.at;
  const entries = readEntries(cursor);
  if (entries === null) return back(cursor, from);
  const text = textSince(cursor, inner);
  if (opened) {
    if (peek(cursor).kind !== 'close') return back(cursor, from);
    cursor.at += 1;
  }
  const span = spanSince(cursor, from);
  const end = cursor.at;
  while (peek(cursor).kind === 'stop' || peek(cursor).kind === 'newline') cursor.at += 1;
  if (peek(cursor).kind !== 'end') return back(cursor, from);
  cursor.at = Math.max(end, cursor.at);
  return { entries, text, span };
}

function readEntries(cursor: Cursor): StatedEntry[] | null {
  const entries: StatedEntry[] = [];
  for (;;) {
    if (!isNumber(cursor)) return null;
    const from = cursor.at;
    const n = readNumber(cursor);
    if (n === null) return null;
    const what = readWhat(cursor);
    takeAny(cursor, 'made', 'total', 'rem', 'remain');
    const side = readPerSide(cursor);
    const span = spanSince(cursor, from);
    entries.push(side ? { n, what, perSide: true, span } : { n, what, span });
    const { kind } = peek(cursor);
    const more =
      kind === 'comma' || kind === 'semicolon' || kind === 'colon' || takeAny(cursor, 'and') !== null;
    if (!more) return entries;
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
