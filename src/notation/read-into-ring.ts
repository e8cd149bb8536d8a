/**
 * `Into ring: 3 ch, 15 tr, ss in 3rd ch of 3 ch`, `In a magic ring, ch 1, 8 hdc, join`: what stands behind the mark goes
 * into the ring, up to what closes the round.
 */

import type { Cursor } from './cursor.ts';
import { forgetSince, onTokens, peek, spanSince, takeAny, takeOneOf, wordAt } from './cursor.ts';
import { CHAIN_WORDS } from './read-what.ts';
import { ended } from './token.ts';
import type { Place, Step } from './tree.ts';
import { WordSet } from './word-set.ts';

const RINGS = new WordSet(['ring', 'circle', 'loop']);

/** Reads from the word behind "in"; null, cursor and faults unmoved, where it is no ring with a colon, or a comma and a chain. */
export function readRingList(cursor: Cursor, from: number): readonly Step[] | null {
  const start = cursor.at;
  takeAny(cursor, 'a', 'an', 'the');
  const adjustable = takeAny(cursor, 'magic', 'adjustable') !== null;
  const short = !adjustable && takeAny(cursor, 'mr') !== null;
  const ring = short || takeOneOf(cursor, RINGS) !== null;
  const span = spanSince(cursor, from);
  const chained = peek(cursor).kind === 'comma' && (adjustable || short) && beginsWithChain(cursor);
  if (!ring || (peek(cursor).kind !== 'colon' && !chained)) return back(cursor, start);
  cursor.at += 1;
  takeAny(cursor, 'work', 'make');
  const end = endOfRing(cursor);
  const steps = readUpTo(cursor, end);
  if (steps === null) return back(cursor, start);
  const place: Place = { kind: 'ring', magic: false, span };
  const worked = steps.map((step) => intoRing(step, place));
  return adjustable || short ? [{ kind: 'ring', span }, ...worked] : worked;
}

/** `, ch 1`, `, work 3 ch`. */
function beginsWithChain(cursor: Cursor): boolean {
  const word = wordAt(cursor, 1);
  const at = word === 'work' || word === 'make' ? 2 : 1;
  return CHAIN_WORDS.holds(peek(cursor, at)) || CHAIN_WORDS.holds(peek(cursor, at + 1));
}

/** The steps up to a token, the cursor then on it; null, with nothing moved or told, where they cannot all be read. */
export function readUpTo(cursor: Cursor, end: number): readonly Step[] | null {
  const faults = cursor.faults.length;
  const inner = onTokens(cursor, ended({ list: cursor.tokens, starts: cursor.starts }, 0, end));
  const { steps } = cursor.readSteps(inner, 'line');
  if (cursor.faults.length > faults || steps.length === 0) {
    forgetSince(cursor, faults);
    return null;
  }
  cursor.at = end;
  return steps;
}

function intoRing(step: Step, place: Place): Step {
  if (step.kind === 'work') return step.place === null ? { ...step, place } : step;
  if (step.kind === 'repeat' || step.kind === 'bracket')
    return { ...step, body: step.body.map((inner) => intoRing(inner, place)) };
  return step;
}

/** At a full stop, a count in brackets, or a comma before what ends a round. */
function endOfRing({ at, tokens }: Cursor): number {
  let open = 0;
  for (let i = at; i < tokens.length; i += 1) {
    const kind = tokens[i]?.kind ?? 'end';
    const parts = kind === 'comma' || kind === 'semicolon';
    const counts = open === 0 && i > at && !BEFORE_BRACKETS.has(tokens[i - 1]?.kind ?? '');
    if (kind === 'open' && counts && tokens[i + 1]?.kind === 'number') return i;
    if (kind === 'open') open += 1;
    if (kind === 'close') open -= 1;
    if (open === 0 && (kind === 'stop' || (parts && ENDING.has(tokens[i + 1]?.text ?? '')))) return i;
  }
  return tokens.length - 1;
}

/** Brackets behind one of these hold work; behind a word a number in them is a count. */
const BEFORE_BRACKETS = new Set(['comma', 'semicolon', 'mark', 'colon']);

const ENDING = new Set(['join', 'sl', 'ss', 'slip', 'slst', 'turn', 'fasten', 'pull', 'do', 'close']);

function back(cursor: Cursor, at: number): null {
  cursor.at = at;
  return null;
}
