/** Labels at the start of a line: `Row 3 (RS):`, `Rnds 5-6 (8, 10):`, `R3.`, `3rd row:`, `Rows 4 on:`, `Next row:`, `Foundation:`. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Cursor } from './cursor.ts';
import { forgetSince, peek, spanSince, takeAny, textSince, wordAt } from './cursor.ts';
import { findName } from './lexicon.ts';
import type { Label, Unit } from './line.ts';
import type { Num } from './num.ts';
import { readLoop } from './read-loop.ts';
import { isNumber, isNumberOrSkip, readNumber, readOrdinals } from './read-number.ts';
import { readYarnInBrackets } from './read-yarn.ts';
import { asWritten, unitAt, unitOfPart } from './row-unit.ts';
import { skipRemark } from './skip-remark.ts';
import type { LoopsStep, YarnStep } from './tree.ts';
import { WordSet } from './word-set.ts';

export interface LabelRead {
  readonly label: Label;
  readonly side: 'RS' | 'WS' | null;
  /** `Rnd 4 (B):`, `Row 2 (moss green) –`, `Rnd 5 (BLO):`: with what or how the row is worked. */
  readonly leading: YarnStep | LoopsStep | null;
}

/** The most words a name before a colon may have. */
const LONGEST_NAME = 4;

/** Reads a label with its colon, or null with the cursor where it was. */
export function readLabel(cursor: Cursor): LabelRead | null {
  const from = cursor.at;
  const label =
    readNumbered(cursor) ??
    readOrdinalLabel(cursor) ??
    readBareNumber(cursor) ??
    readNext(cursor) ??
    readPattRow(cursor) ??
    readLast(cursor) ??
    readNamed(cursor);
  const next = label === null ? '' : wordAt(cursor);
  // `Rows 2 and 3 form the patt` is said of rows that are done.
  if (label === null || next === 'form' || next === 'forms') {
    cursor.at = from;
    return null;
  }
  const side = readSide(cursor);
  const leading = readYarnInBrackets(cursor) ?? readLoopInBrackets(cursor);
  if (side === null && leading === null && label.kind !== 'named') skipRemark(cursor);
  const { kind } = peek(cursor);
  // `Row 3 – Ch 1`, `R3. Ch 1` and `Rnd 3) Ch 1` are labels as much as `Row 3: Ch 1`.
  const closed =
    kind === 'colon' ||
    (label.kind !== 'named' && (kind === 'dash' || kind === 'stop' || kind === 'close')) ||
    (kind === 'dash' && isLast(cursor.tokens, from));
  if (closed) {
    cursor.at += 1;
    // `1st row.—1 tr …`.
    if (kind === 'stop' && peek(cursor).kind === 'dash') cursor.at += 1;
  } else if (label.kind === 'named') {
    cursor.at = from;
    return null;
  }
  return { label, side, leading };
}

/** `(BLO)`, `(in back loops only)`; null with the cursor where it was. */
function readLoopInBrackets(cursor: Cursor): LoopsStep | null {
  const from = cursor.at;
  if (peek(cursor).kind !== 'open') return null;
  cursor.at += 1;
  takeAny(cursor, 'in', 'working');
  takeAny(cursor, 'in', 'through');
  const loop = readLoop(cursor);
  if (loop !== null && peek(cursor).kind === 'close') {
    cursor.at += 1;
    return { kind: 'loops', loop, span: spanSince(cursor, from) };
  }
  cursor.at = from;
  return null;
}

/** True when a label stands here; the cursor and the faults stay as they were. */
export function isLabel(cursor: Cursor): boolean {
  return probe(cursor, isAny);
}

/** The same for a row's own label, not a name before a colon: `Into ring: …` under `Rnd 1:` goes on with it. */
export function isRowLabel(cursor: Cursor): boolean {
  return probe(cursor, isOfRow);
}

function isOfRow({ label }: LabelRead): boolean {
  return label.kind !== 'named';
}

/** True when a row's or round's number stands here with its colon. */
export function isNumberedLabel(cursor: Cursor): boolean {
  const { kind, text } = peek(cursor);
  // Asked behind each full stop: `Row`, `Rnd`, `R3`, `3rd row`, `3.`
  if (kind === 'word' ? !text.startsWith('r') : kind !== 'number' && kind !== 'ordinal') return false;
  return probe(cursor, isNumberedWithColon);
}

function isNumberedWithColon({ label }: LabelRead, cursor: Cursor): boolean {
  return label.kind === 'numbered' && peek(cursor, -1).kind === 'colon';
}

function isAny(): boolean {
  return true;
}

function probe(cursor: Cursor, holds: (read: LabelRead, cursor: Cursor) => boolean): boolean {
  const from = cursor.at;
  const faults = cursor.faults.length;
  const read = readLabel(cursor);
  const held = read !== null && holds(read, cursor);
  cursor.at = from;
  forgetSince(cursor, faults);
  return held;
}

/** `Row 3`, `Rnds 5-7`, `Rnds 5, 7 and 9`, `Rows 4 on`, `R3`. */
function readNumbered(cursor: Cursor): Label | null {
  const from = cursor.at;
  const unit = unitAt(cursor) ?? shortUnit(cursor);
  if (unit === null || !isNumberOrSkip(cursor, 1)) return null;
  const word = asWritten(cursor);
  cursor.at += 1;
  const first = readNumber(cursor);
  if (first === null) return null;
  if (takeAny(cursor, 'on', 'onwards', 'onward') !== null)
    return { kind: 'numbered', unit, word, from: first, to: 'on', span: spanSince(cursor, from) };
  const plural = cursor.tokens[from]?.text.endsWith('s') === true;
  const two = wordAt(cursor) === 'and' || peek(cursor).text === '&';
  if ((peek(cursor).kind === 'comma' || two) && peek(cursor, 1).kind === 'number' && plural) {
    const others: Num[] = [];
    while (peek(cursor, 1).kind === 'number' && isListJoint(cursor)) {
      cursor.at += 1;
      const other = readNumber(cursor);
      if (other !== null) others.push(other);
    }
    return withOthers(unit, word, first, others, spanSince(cursor, from));
  }
  const ranged = peek(cursor).kind === 'dash' || ['to', 'through', 'thru'].includes(wordAt(cursor));
  const named = unitAt(cursor, 1) !== null || wordAt(cursor, 1) === 'r';
  if (
    ranged &&
    !beginsStep(cursor) &&
    (peek(cursor, 1).kind === 'number' || (named && peek(cursor, 2).kind === 'number'))
  ) {
    cursor.at += named ? 2 : 1;
    const to = readNamedNumbers(cursor) ?? readNumber(cursor);
    const each = to === null ? null : readRanges(cursor, first, to);
    if (each !== null) return { kind: 'numbered', unit, word, ...each, span: spanSince(cursor, from) };
    takeAny(cursor, 'inclusive', 'incl');
    takeRowCount(cursor);
    const low = first.values[0] ?? 0;
    const high = to?.values[0] ?? low;
    if (high !== null && low !== null && high < low)
      cursor.faults.push(
        diagnose(
          'row/number-order',
          { file: cursor.context.file, span: spanSince(cursor, from) },
          { from: low, to: high },
        ),
      );
    return { kind: 'numbered', unit, word, from: first, to, span: spanSince(cursor, from) };
  }
  return { kind: 'numbered', unit, word, from: first, to: null, span: spanSince(cursor, from) };
}

/** `Rnd 5 – 1 ch, …`: the dash ends the label, and the number is the step's. */
function beginsStep(cursor: Cursor): boolean {
  const next = peek(cursor, 2);
  if (peek(cursor).kind !== 'dash' || peek(cursor, 1).kind !== 'number' || next.kind !== 'word') return false;
  return CHAINS.has(next.text) || findName(cursor.lexicon, cursor.tokens, cursor.at + 2) !== null;
}

const CHAINS = new WordSet(['ch', 'chs', 'chain', 'chains']);

/** `99 (R119, R149)` behind `R4 – R`: a last row for each size; null when the others are not named so. */
function readNamedNumbers(cursor: Cursor): Num | null {
  const from = cursor.at;
  if (peek(cursor).kind !== 'number' || peek(cursor, 1).kind !== 'open') return null;
  const values = [peek(cursor).value];
  cursor.at += 1;
  do {
    const named = wordAt(cursor, 1) === 'r' || unitAt(cursor, 1) !== null;
    if (!named || peek(cursor, 2).kind !== 'number') break;
    values.push(peek(cursor, 2).value);
    cursor.at += 3;
  } while (peek(cursor).kind === 'comma' || peek(cursor).kind === 'colon');
  if (peek(cursor).kind === 'close' && values.length === cursor.context.sizes) {
    cursor.at += 1;
    return { values, span: spanSince(cursor, from) };
  }
  cursor.at = from;
  return null;
}

/** `Rows 15-17 (15-17, 17-20)`: a range for each size; null when none stands behind the first. */
function readRanges(cursor: Cursor, first: Num, last: Num): { from: Num; to: Num } | null {
  const at = cursor.at;
  const from = [...first.values];
  const to = [...last.values];
  const more = (): boolean => peek(cursor).kind === 'comma' || peek(cursor).kind === 'colon';
  if (peek(cursor).kind !== 'open') return null;
  do {
    if (peek(cursor, 1).kind !== 'number' || peek(cursor, 2).kind !== 'dash') break;
    if (peek(cursor, 3).kind !== 'number') break;
    from.push(peek(cursor, 1).value);
    to.push(peek(cursor, 3).value);
    cursor.at += 4;
  } while (more());
  if (peek(cursor).kind !== 'close' || from.length !== cursor.context.sizes) {
    cursor.at = at;
    return null;
  }
  cursor.at += 1;
  return { from: { values: from, span: first.span }, to: { values: to, span: last.span } };
}

/** `(3 rnds)` behind a range says how many that is. */
function takeRowCount(cursor: Cursor): void {
  const counted = peek(cursor).kind === 'open' && peek(cursor, 1).kind === 'number';
  if (counted && unitAt(cursor, 2) !== null && peek(cursor, 3).kind === 'close') cursor.at += 4;
}

function isListJoint(cursor: Cursor): boolean {
  return peek(cursor).kind === 'comma' || wordAt(cursor) === 'and' || peek(cursor).text === '&';
}

/** Two neighbours are a range; anything else is a list. */
function withOthers(unit: Unit, word: string, from: Num, others: readonly Num[], span: Label['span']): Label {
  const [only, more] = others;
  const first = from.values[0];
  if (only !== undefined && more === undefined && first !== null && only.values[0] === (first ?? 0) + 1)
    return { kind: 'numbered', unit, word, from, to: only, span };
  return { kind: 'numbered', unit, word, from, to: null, others, span };
}

/** `R3`: a row or a round, whichever the part is worked in. */
function shortUnit(cursor: Cursor): Unit | null {
  const word = wordAt(cursor);
  if (word !== 'r' && word !== 'rd' && word !== 'rw') return null;
  if (!isNumber(cursor, 1)) return null;
  return word === 'rd' ? 'round' : word === 'rw' ? 'row' : unitOfPart(cursor);
}

/** `3rd row`, `4th to 9th rnds`, `15th (20th) row`. */
function readOrdinalLabel(cursor: Cursor): Label | null {
  const from = cursor.at;
  const first = readOrdinals(cursor);
  if (first === null) return null;
  const joined = wordAt(cursor) === 'to' || wordAt(cursor) === 'and' || peek(cursor).kind === 'dash';
  if (joined && peek(cursor, 1).kind === 'ordinal') cursor.at += 1;
  const to = joined ? readOrdinals(cursor) : null;
  if (unitAt(cursor) === null) {
    cursor.at = from;
    return null;
  }
  const unit = unitAt(cursor) ?? 'row';
  const word = asWritten(cursor);
  cursor.at += 1;
  return { kind: 'numbered', unit, word, from: first, to, span: spanSince(cursor, from) };
}

/** `3.`, `3)` or `7-12.` at the start of a line, before an instruction. */
function readBareNumber(cursor: Cursor): Label | null {
  const from = cursor.at;
  const token = peek(cursor);
  const last = peek(cursor, 1).kind === 'dash' && peek(cursor, 2).kind === 'number' ? peek(cursor, 2) : null;
  const more = last === null ? 0 : 2;
  const mark = peek(cursor, 1 + more);
  const after = peek(cursor, 2 + more);
  if (token.kind !== 'number' || !mark.glued || after.glued) return null;
  const closes =
    mark.kind === 'stop' || (mark.kind === 'close' && mark.text === ')') || mark.kind === 'colon';
  if (!closes || after.kind === 'end' || after.kind === 'newline') return null;
  // The stop is left for the label's own end.
  cursor.at += (mark.kind === 'close' ? 2 : 1) + more;
  const span = spanSince(cursor, from);
  const word = unitOfPart(cursor) === 'round' ? 'Rnd' : 'Row';
  const to = last === null ? null : { values: [last.value], span };
  if (last !== null && last.value < token.value)
    cursor.faults.push(
      diagnose(
        'row/number-order',
        { file: cursor.context.file, span },
        { from: token.value, to: last.value },
      ),
    );
  return {
    kind: 'numbered',
    unit: unitOfPart(cursor),
    word,
    from: { values: [token.value], span },
    to,
    span,
  };
}

/** `Next row`, `Next 4 rnds`. */
function readNext(cursor: Cursor): Label | null {
  const from = cursor.at;
  if (wordAt(cursor) !== 'next') return null;
  cursor.at += 1;
  const n = readNumber(cursor);
  const unit = unitAt(cursor);
  if (unit === null) {
    cursor.at = from;
    return null;
  }
  const word = asWritten(cursor);
  cursor.at += 1;
  const span = spanSince(cursor, from);
  return n === null ? { kind: 'next', unit, word, span } : { kind: 'next', unit, word, n, span };
}

/** `Patt row:`, the row that the pattern is made of: its number is the next one. */
function readPattRow(cursor: Cursor): Label | null {
  const from = cursor.at;
  const named = takeAny(cursor, 'patt', 'pattern') !== null;
  const unit = named && peek(cursor, 1).kind === 'colon' ? unitAt(cursor) : null;
  if (unit === null) {
    cursor.at = from;
    return null;
  }
  const word = asWritten(cursor);
  cursor.at += 1;
  cursor.patt.rows = 1;
  cursor.patt.row = cursor.reached + 1;
  return { kind: 'next', unit, word, span: spanSince(cursor, from) };
}

/** `Last round –`, `Final row –`: a name that a dash may end as well as a colon. */
function readLast(cursor: Cursor): Label | null {
  const from = cursor.at;
  if (!isLast(cursor.tokens, from)) return null;
  cursor.at += 2;
  return { kind: 'named', name: textSince(cursor, from), span: spanSince(cursor, from) };
}

function isLast(tokens: Cursor['tokens'], from: number): boolean {
  const [first, unit, mark] = [tokens[from], tokens[from + 1], tokens[from + 2]];
  return LAST.has(first?.text ?? '') && UNITS.has(unit?.text ?? '') && mark?.kind === 'dash';
}

const LAST = new Set(['last', 'final']);
const UNITS = new Set(['row', 'rnd', 'round']);

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
