/** How the last pass of a repeat differs: `ending last rep at **`, `omitting last ch 2`, `then from * to ** once`. */

import type { Cursor } from './cursor.ts';
import { atBoundary, forgetSince, nameHere, peek, spanSince, takeAny, wordAt } from './cursor.ts';
import { lastOf } from './last-of.ts';
import { isNumber } from './read-number.ts';
import type { Step, Stop } from './tree.ts';

/** `, ending last rep with`: the steps that follow are read as any others. */
export function takeEndingWith(cursor: Cursor): 'last rep' | 'row' | null {
  const from = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  if (takeAny(cursor, 'ending', 'end', 'finishing') !== null) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'last', 'final');
    const rep = takeAny(cursor, 'rep', 'repeat') !== null;
    if (takeAny(cursor, 'with') !== null && !atBoundary(cursor)) return rep ? 'last rep' : 'row';
  }
  cursor.at = from;
  return null;
}

/**
 * `, omitting last ch 2 [on last rep]`: how many steps of the body the last pass works; null when nothing is omitted.
 * Something that is not the body's last step is left for the fault on words that could not be read.
 */
export function readOmitting(cursor: Cursor, body: readonly Step[]): number | null {
  const from = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  const last = lastOf(body);
  if (takeAny(cursor, 'omitting', 'omit') !== null && last !== undefined) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'last', 'final');
    const faults = cursor.faults.length;
    // `2 ch` as much as `ch 2`.
    const what = isNumber(cursor) ? wordAt(cursor, 1) : wordAt(cursor);
    const isChain = what === 'ch' || what === 'chain';
    const matches = last.kind === 'chain' ? isChain : !isChain;
    while (!atBoundary(cursor)) cursor.at += 1;
    forgetSince(cursor, faults);
    if (matches) return body.length - 1;
  }
  cursor.at = from;
  return null;
}

/**
 * `rep from * twice more, then from * to ** once`: one more pass, which ends at the mark; how often that is in all, or
 * null where it does not stand here.
 */
export function readThenToMark(cursor: Cursor, star: string, stop: Stop): Stop | null {
  const from = cursor.at;
  const { kind } = peek(cursor);
  if (kind === 'comma' || kind === 'semicolon') cursor.at += 1;
  takeAny(cursor, 'and');
  takeAny(cursor, 'then');
  takeAny(cursor, 'rep', 'repeat', 'work');
  const led = takeAny(cursor, 'from') !== null && peek(cursor).text === star;
  if (led) cursor.at += 1;
  if (led && readToMark(cursor, '**') && stop.kind === 'times' && stop.more) {
    const once = takeAny(cursor, 'once') !== null;
    takeAny(cursor, 'more');
    if (once || atBoundary(cursor)) {
      const values = stop.n.values.map((value) => (value === null ? null : value + 1));
      return { ...stop, n: { ...stop.n, values }, span: spanSince(cursor, from) };
    }
  }
  cursor.at = from;
  return null;
}

/** `, working only 2 tr in the last ch`: the last pass ends before its last step, and fewer of that stitch stand instead. */
export function readWorkingOnly(cursor: Cursor, body: readonly Step[]): number | null {
  const from = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  takeAny(cursor, 'but');
  const working = takeAny(cursor, 'working', 'making', 'work', 'make') !== null;
  if (working && takeAny(cursor, 'only', 'just') !== null && isNumber(cursor)) {
    const at = cursor.at;
    cursor.at += 1;
    const named = nameHere(cursor)?.named;
    cursor.at = at;
    const last = lastOf(body);
    const stitch = last?.kind === 'work' ? last.stitch : null;
    // Of another stitch it would not be said which step of the pass it takes the place of.
    if (named?.kind === 'stitch' && stitch?.kind === 'stitch' && named.id === stitch.id)
      return body.length - 1;
  }
  cursor.at = from;
  return null;
}

/** `, ending last rep at **`. */
export function readEndingLast(cursor: Cursor): boolean {
  const from = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  if (takeAny(cursor, 'ending', 'end', 'finishing') !== null) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'last', 'final');
    takeAny(cursor, 'rep', 'repeat');
    if (takeAny(cursor, 'at') !== null && peek(cursor).text === '**') {
      cursor.at += 1;
      return true;
    }
  }
  cursor.at = from;
  return false;
}

/** `to **`. */
export function readToMark(cursor: Cursor, mark: string): boolean {
  if (wordAt(cursor) !== 'to' || peek(cursor, 1).text !== mark) return false;
  cursor.at += 2;
  return true;
}
