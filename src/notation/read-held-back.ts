/**
 * `holding back on hook the last lp of each dc, make dc in next 4 dc, thread over and draw through all lps on hook`: several
 * stitches gathered at their tops, as old books and UK patterns tell it.
 */

import { STITCHES } from '../stitches/table.ts';
import type { Cursor } from './cursor.ts';
import { forgetSince, peek, spanSince, takeAny, takeOneOf, wordAt } from './cursor.ts';
import { readWorkStep } from './read-work.ts';
import { readStitchName } from './read-yarn.ts';
import type { Step } from './tree.ts';
import { WordSet } from './word-set.ts';

const LOOPS = new WordSet(['lp', 'lps', 'loop', 'loops']);
const OVER = new WordSet([
  'yo',
  'yoh',
  'yrh',
  'thread',
  'yarn',
  'wrap',
  'o',
  'over',
  'round',
  'hook',
  'and',
  'then',
  'the',
  'once',
]);

/** One stitch of as many legs; null, the cursor where it was, where it is not told to the end what is drawn through what. */
export function readHeldBack(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  const faults = cursor.faults.length;
  const step = takeHolding(cursor) ? readGathered(cursor, from) : null;
  if (step !== null) return [step];
  cursor.at = from;
  forgetSince(cursor, faults);
  return null;
}

/** `holding back on hook the last lp of each dc,`, `leaving last loop of each on hook`. */
function takeHolding(cursor: Cursor): boolean {
  takeAny(cursor, 'holding', 'keeping', 'leaving', 'retaining');
  takeAny(cursor, 'back');
  takeOnHook(cursor);
  takeAny(cursor, 'the');
  if (takeAny(cursor, 'last') === null || takeOneOf(cursor, LOOPS) === null) return false;
  takeOnHook(cursor);
  if (takeAny(cursor, 'of') !== null) {
    takeAny(cursor, 'each', 'every', 'the', 'all');
    if (readStitchName(cursor) === null) takeAny(cursor, 'st', 'stitch', 'sts', 'stitches');
  }
  takeOnHook(cursor);
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  return true;
}

function takeOnHook(cursor: Cursor): void {
  if (takeAny(cursor, 'on') === null) return;
  takeAny(cursor, 'the', 'your');
  takeAny(cursor, 'hook');
}

function readGathered(cursor: Cursor, from: number): Step | null {
  takeAny(cursor, 'make', 'work');
  const [worked, more] = readWorkStep(cursor) ?? [];
  if (worked?.kind !== 'work' || more !== undefined || worked.stitch.kind !== 'stitch') return null;
  const legs = legsOf(worked);
  const id = `${worked.stitch.id}${legs}tog`;
  if (legs === null || !STITCHES.some((row) => row.id === id) || !takeDrawnThrough(cursor, legs)) return null;
  const span = spanSince(cursor, from);
  return { ...worked, stitch: { kind: 'stitch', id, span: worked.stitch.span }, times: null, span };
}

/** `dc in next 4 dc` has 4 of them, one in each; `3 dc in same sp` has 3 in one place. */
function legsOf({ times, place }: Extract<Step, { kind: 'work' }>): number | null {
  const one = times === null || times.values.every((n) => n === 1);
  if (one && place?.kind === 'next' && place.n !== null) return only(place.n.values);
  const single = place !== null && (place.kind === 'same' || (place.kind === 'next' && place.n === null));
  return !one && single ? only(times.values) : null;
}

function only(values: readonly (number | null)[]): number | null {
  return values.length === 1 ? (values[0] ?? null) : null;
}

/** `, thread over and draw through all lps on hook`: all of them, or as many as there are with the one on the hook. */
function takeDrawnThrough(cursor: Cursor, legs: number): boolean {
  if (peek(cursor).kind === 'comma' || peek(cursor).kind === 'semicolon') cursor.at += 1;
  while (takeOneOf(cursor, OVER) !== null);
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  while (takeOneOf(cursor, OVER) !== null);
  if (takeAny(cursor, 'draw', 'pull') === null) return false;
  takeAny(cursor, 'it', 'yarn', 'thread', 'loop');
  if (takeAny(cursor, 'through') === null) return false;
  takeAny(cursor, 'all', 'the', 'remaining');
  takeAny(cursor, 'the', 'of');
  const { kind, value } = peek(cursor);
  if (kind === 'number') {
    if (value !== legs + 1) return false;
    cursor.at += 1;
  }
  if (takeOneOf(cursor, LOOPS) === null) return false;
  takeAny(cursor, 'left', 'remaining');
  takeOnHook(cursor);
  return wordAt(cursor) !== 'of';
}
