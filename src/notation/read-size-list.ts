/** A number for each size without brackets of its own, as counts have it: `20/24/28`, `-, 16, 16`. */

import type { Cursor } from './cursor.ts';
import { peek, spanSince } from './cursor.ts';
import type { Num } from './num.ts';
import { WordSet } from './word-set.ts';

const STITCHES = new WordSet(['st', 'sts', 'stitch', 'stitches']);

/** Null, with the cursor where it was, where there is not one for each of several sizes. */
export function readSizeList(cursor: Cursor): Num | null {
  const { sizes } = cursor.context;
  if (sizes < 2) return null;
  const from = cursor.at;
  const values: (number | null)[] = [];
  const slashed = peek(cursor, 1).text === '/';
  for (;;) {
    const token = peek(cursor);
    if (token.kind !== 'number' && token.kind !== 'dash') break;
    values.push(token.kind === 'number' ? token.value : null);
    cursor.at += 1;
    const { kind, text } = peek(cursor);
    if (values.length === sizes || !(slashed ? text === '/' : kind === 'comma' || kind === 'colon')) break;
    cursor.at += 1;
  }
  const whole = values.length === sizes && values.some((value) => value !== null);
  if (whole && (slashed || isOneList(cursor, sizes)) && peek(cursor).text !== '/')
    return { values, span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

/** `12, 16 dc` may be 12 of which 16 are dc to a reader: two numbers are a list where only stitches follow. */
function isOneList(cursor: Cursor, sizes: number): boolean {
  const { kind } = peek(cursor);
  if (kind === 'close') return true;
  const bare = STITCHES.holds(peek(cursor));
  return (sizes > 2 || bare) && kind === 'word' && peek(cursor, 1).kind === 'close';
}
