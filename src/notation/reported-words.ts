/** Words of a line that a fault was already told of: what hangs on them is no second fault. */

import type { Cursor } from './cursor.ts';
import { peek, spanAt } from './cursor.ts';

/** Whether the word `ahead` is one that was reported as unknown, or as a stitch that nothing describes, earlier in the line. */
export function wasReported(cursor: Cursor, ahead = 0): boolean {
  const { kind, text } = peek(cursor, ahead);
  if (kind !== 'word' || cursor.faults.length === 0 || cursor.tokens.length > LONGEST_LINE) return false;
  for (let at = 0; at < cursor.at; at += 1) {
    if (cursor.tokens[at]?.text !== text) continue;
    const { start } = spanAt(cursor, at);
    if (cursor.faults.some(({ code, span }) => UNKNOWN.has(code) && span.start === start)) return true;
  }
  return false;
}

/** No row is longer: what hangs on what is not looked for in such a line. */
const LONGEST_LINE = 1000;

const UNKNOWN: ReadonlySet<string> = new Set(['special/undefined', 'word/unknown']);

/** Leaves out what could not be read only because of such a word: `in top of beg pc` behind a pc that nothing describes. */
export function leaveOutEchoes(cursor: Cursor, before: number): void {
  const { faults, tokens } = cursor;
  if (faults.length - before < 2 || tokens.length > LONGEST_LINE) return;
  const starts = new Set<number>();
  for (const { code, span } of faults.slice(before)) if (code === 'special/undefined') starts.add(span.start);
  if (starts.size === 0) return;
  const undefinedAt = new Map<string, number>();
  for (const [at, { text }] of tokens.entries()) {
    const { start } = spanAt(cursor, at);
    if (starts.has(start) && !undefinedAt.has(text)) undefinedAt.set(text, start);
  }
  for (let i = faults.length - 1; i >= before; i -= 1) {
    const fault = faults[i];
    if (fault?.code !== 'phrase/unread') continue;
    const { start, end } = fault.span;
    const hangs = tokens.some(({ text }, i) => {
      const at = spanAt(cursor, i).start;
      const first = undefinedAt.get(text);
      return first !== undefined && first < start && at >= start && at < end;
    });
    if (hangs) faults.splice(i, 1);
  }
}
