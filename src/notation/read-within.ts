/** `(32 sc, 5 in gusset)`: how many of those counted lie in a part that only its maker can tell. */

import type { Cursor } from './cursor.ts';
import { peek, takeAny, textSince } from './cursor.ts';
import { lastOf } from './last-of.ts';
import type { StatedEntry, Thing } from './line.ts';
import type { Num } from './num.ts';
import { ROW_WORDS } from './read-told-count.ts';
import { WordSet } from './word-set.ts';

/** `in gusset`, `in each sleeve` behind a number: a part of what has been counted; null with the cursor where it was. */
export function readWithin(cursor: Cursor): Thing | null {
  const from = cursor.at;
  if (takeAny(cursor, 'in', 'on', 'for') === null) return null;
  takeAny(cursor, 'the', 'each');
  const { kind } = peek(cursor);
  const ends = peek(cursor, 1).kind;
  if (
    kind === 'word' &&
    !ROW_WORDS.holds(peek(cursor)) &&
    !CORNERS.holds(peek(cursor)) &&
    (ends === 'close' || ends === 'comma')
  ) {
    cursor.at += 1;
    return { kind: 'named', word: textSince(cursor, from) };
  }
  cursor.at = from;
  return null;
}

/** `the missed 3 ch being the first of them`, `the ch 3 counts as one`: what is among them is said; the cursor stays where none stands. */
export function takeChainsBeing(cursor: Cursor): boolean {
  const from = cursor.at;
  takeAny(cursor, 'the', 'with');
  takeAny(cursor, 'the');
  takeAny(cursor, 'missed', 'skipped', 'first', 'turning');
  if (peek(cursor).kind === 'number') cursor.at += 1;
  const chain = takeAny(cursor, 'ch', 'chs', 'chain', 'chains') !== null;
  if (peek(cursor).kind === 'dash') cursor.at += 1;
  if (peek(cursor).kind === 'number') cursor.at += 1;
  if (chain && takeAny(cursor, 'being', 'counts', 'count', 'counted') !== null) return true;
  cursor.at = from;
  return false;
}

/** `14 loops and a half loop at each end`: each of them is a space of the row; false for anything else. */
export function joinHalves(entries: StatedEntry[], what: StatedEntry['what'], n: Num): boolean {
  const last = lastOf(entries);
  if (what?.kind !== 'named' || !what.word.startsWith('half ') || last?.what?.kind !== 'space') return false;
  const values = last.n.values.map((value, i) => {
    const halves = n.values.length === 1 ? n.values[0] : n.values[i];
    return value === null ? null : value + (halves ?? 0);
  });
  entries[entries.length - 1] = { ...last, n: { ...last.n, values } };
  return true;
}

/** What a count can be held against. */
const CORNERS = new WordSet(['corner', 'side', 'edge', 'total', 'all']);
