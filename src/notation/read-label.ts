/** Labels at the start of a line: `Row 3 (RS):`, `Rnds 5-6 (8, 10):`, `Rows 4 on:`, `Next row:`, `Foundation:`. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Cursor } from './cursor.ts';
import { peek, spanSince, takeAny, textSince, wordAt } from './cursor.ts';
import { isNumberOrSkip, readNumber } from './read-number.ts';
import { unitAt } from './read-rows.ts';
import type { Label } from './tree.ts';

export interface LabelRead {
  readonly label: Label;
  readonly side: 'RS' | 'WS' | null;
}

/** The most words a name before a colon may have. */
const LONGEST_NAME = 4;

/** Reads a label with its colon, or null with the cursor where it was. */
export function readLabel(cursor: Cursor): LabelRead | null {
  const from = cursor.at;
  const label = readNumbered(cursor) ?? readNext(cursor) ?? readNamed(cursor);
  if (label === null) {
    cursor.at = from;
    return null;
  }
  const side = readSide(cursor);
  // `Row 3 – Ch 1` is a label as much as `Row 3: Ch 1`.
  const dashed = label.kind === 'numbered' && peek(cursor).kind === 'dash';
  if (peek(cursor).kind === 'colon' || dashed) cursor.at += 1;
  else if (label.kind === 'named') {
    cursor.at = from;
    return null;
  }
  return { label, side };
}

/** True when a label stands here; the cursor and the faults stay as they were. */
export function isLabel(cursor: Cursor): boolean {
  const from = cursor.at;
  const faults = cursor.faults.length;
  const read = readLabel(cursor);
  cursor.at = from;
  cursor.faults.length = faults;
  return read !== null;
}

/** True when a row's or round's number stands here with its colon. */
export function isNumberedLabel(cursor: Cursor): boolean {
  if (unitAt(cursor) === null) return false;
  const from = cursor.at;
  const faults = cursor.faults.length;
  const read = readLabel(cursor);
  const colon = peek(cursor, -1).kind === 'colon';
  cursor.at = from;
  cursor.faults.length = faults;
  return read?.label.kind === 'numbered' && colon;
}

function readNumbered(cursor: Cursor): Label | null {
  const from = cursor.at;
  const unit = unitAt(cursor);
  if (unit === null || !isNumberOrSkip(cursor, 1)) return null;
  const word = asWritten(cursor);
  cursor.at += 1;
  const first = readNumber(cursor);
  if (first === null) return null;
  if (takeAny(cursor, 'on', 'onwards', 'onward') !== null) {
    return { kind: 'numbered', unit, word, from: first, to: 'on', span: spanSince(cursor, from) };
  }
  const ranged =
    peek(cursor).kind === 'dash' || ['to', 'and', '&'].includes(wordAt(cursor)) || peek(cursor).text === '&';
  if (ranged && peek(cursor, 1).kind === 'number') {
    cursor.at += 1;
    const to = readNumber(cursor);
    const span = spanSince(cursor, from);
    const low = first.values[0] ?? 0;
    const high = to?.values[0] ?? low;
    if (high !== null && low !== null && high < low)
      cursor.faults.push(
        diagnose('row/number-order', { file: cursor.context.file, span }, { from: low, to: high }),
      );
    return { kind: 'numbered', unit, word, from: first, to, span };
  }
  return { kind: 'numbered', unit, word, from: first, to: null, span: spanSince(cursor, from) };
}

function readNext(cursor: Cursor): Label | null {
  const from = cursor.at;
  if (wordAt(cursor) !== 'next') return null;
  const unit = unitAt(cursor, 1);
  if (unit === null) return null;
  const word = capital(cursor.mapped.text.slice(peek(cursor, 1).start, peek(cursor, 1).end));
  cursor.at += 2;
  return { kind: 'next', unit, word, span: spanSince(cursor, from) };
}

/** A word or a few before a colon: `Foundation`, `Base chain`, `Edging`. */
function readNamed(cursor: Cursor): Label | null {
  const from = cursor.at;
  let words = 0;
  while (peek(cursor).kind === 'word' && words < LONGEST_NAME) {
    cursor.at += 1;
    words += 1;
  }
  const { kind } = peek(cursor);
  if (words === 0 || (kind !== 'colon' && kind !== 'open')) return null;
  return { kind: 'named', name: textSince(cursor, from), span: spanSince(cursor, from) };
}

/** `(RS)`, `(wrong side)`, `(RS facing)`. */
function readSide(cursor: Cursor): 'RS' | 'WS' | null {
  const from = cursor.at;
  if (peek(cursor).kind === 'open') {
    cursor.at += 1;
    const word = takeAny(cursor, 'rs', 'ws', 'right', 'wrong');
    takeAny(cursor, 'side');
    takeAny(cursor, 'facing');
    if (word !== null && peek(cursor).kind === 'close') {
      cursor.at += 1;
      return word.startsWith('r') ? 'RS' : 'WS';
    }
  }
  cursor.at = from;
  return null;
}

/** `Rnds` is `Rnd` for one of them; `ROW` stays as it is. */
function asWritten(cursor: Cursor): string {
  const token = peek(cursor);
  return capital(cursor.mapped.text.slice(token.start, token.end)).replace(/s$/i, '');
}

function capital(word: string): string {
  return word.slice(0, 1).toUpperCase() + word.slice(1);
}
