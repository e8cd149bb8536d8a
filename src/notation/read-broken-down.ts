/** `88 sc (3 in each corner, 19 along each side)`, `408 sc: 87 on each short side, 111 on each long side`: a count told once more, side by side. */

import type { Cursor } from './cursor.ts';
import { nameHere, peek, takeAny, takeOneOf, wordAt } from './cursor.ts';
import type { Num } from './num.ts';
import { isNumber, readNumber } from './read-number.ts';
import { WordSet } from './word-set.ts';

type Part = 'side' | 'corner' | 'short' | 'long';

const LEADS = new WordSet(['in', 'on', 'along', 'at', 'per', 'for', 'to']);
const WHERE: ReadonlyMap<string, Part> = new Map([
  ...(['side', 'sides', 'edge', 'edges'] as const).map((word) => [word, 'side'] as const),
  ...(['corner', 'corners'] as const).map((word) => [word, 'corner'] as const),
]);
const LENGTHS: ReadonlyMap<string, Part> = new Map([
  ...(['short', 'shorter'] as const).map((word) => [word, 'short'] as const),
  ...(['long', 'longer'] as const).map((word) => [word, 'long'] as const),
]);
/** Pieces have as many corners as sides; fewer than three are no piece. */
const SIDES = [4, 6, 3, 5, 8];

/** Moves over it where it comes to the whole; false, the cursor where it was, for anything else, and where it comes to another number. */
export function takeBrokenDown(cursor: Cursor, whole: Num): boolean {
  const { kind } = peek(cursor);
  if ((kind !== 'colon' && kind !== 'open') || !isNumber(cursor, 1)) return false;
  const start = cursor.at;
  cursor.at += 1;
  const parts: (readonly [Part, Num])[] = [];
  do {
    if (parts.length > 0) takeBetween(cursor);
    const part = readPart(cursor);
    if (part === null) break;
    parts.push(part);
  } while (peek(cursor).kind === 'comma' || peek(cursor).kind === 'semicolon' || wordAt(cursor) === 'and');
  // Sides alone are held against the piece itself.
  const corners = parts.some(([part]) => part === 'corner');
  const closed = kind === 'colon' ? endsCount(cursor) : peek(cursor).kind === 'close';
  if (
    closed &&
    corners &&
    parts.length > 1 &&
    whole.values.every((value, i) => value === null || comesTo(parts, value, i))
  ) {
    if (kind === 'open') cursor.at += 1;
    return true;
  }
  cursor.at = start;
  return false;
}

function endsCount(cursor: Cursor): boolean {
  const { kind } = peek(cursor);
  return kind === 'close' || kind === 'stop' || kind === 'end';
}

function takeBetween(cursor: Cursor): void {
  if (peek(cursor).kind === 'comma' || peek(cursor).kind === 'semicolon') cursor.at += 1;
  takeAny(cursor, 'and', 'plus', 'with');
}

/** `19 along each side`, `3 sc in each corner`, `87 per short side`. */
function readPart(cursor: Cursor): readonly [Part, Num] | null {
  const n = isNumber(cursor) ? readNumber(cursor) : null;
  const found = n === null ? null : nameHere(cursor);
  if (found !== null) cursor.at += found.length;
  else takeAny(cursor, 'st', 'sts', 'stitches');
  if (n === null || takeOneOf(cursor, LEADS) === null) return null;
  takeAny(cursor, 'each', 'every', 'the', 'all');
  takeAny(cursor, 'of');
  takeAny(cursor, 'the');
  takeAny(cursor, '4', 'four', 'other');
  const length = LENGTHS.get(wordAt(cursor)) ?? null;
  if (length !== null) cursor.at += 1;
  const where = WHERE.get(wordAt(cursor)) ?? null;
  if (where === null || (length !== null && where === 'corner')) return null;
  cursor.at += 1;
  return [length ?? where, n];
}

function comesTo(parts: readonly (readonly [Part, Num])[], whole: number, size: number): boolean {
  const lengths = parts.some(([part]) => part === 'short' || part === 'long');
  return (lengths ? [4] : SIDES).some((sides) => {
    let sum = 0;
    for (const [part, { values }] of parts) {
      const n = (values.length === 1 ? values[0] : values[size]) ?? 0;
      sum += n * (part === 'short' || part === 'long' ? 2 : sides);
    }
    return sum === whole;
  });
}
