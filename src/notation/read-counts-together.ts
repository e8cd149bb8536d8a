/** `(this tr and the missed 3 ch together count as 1 st)`: a chain that stands for no stitch by itself. */

import type { Counts } from './chain-counts.ts';
import type { Cursor } from './cursor.ts';
import { nameHere, peek, spanSince, takeAny, textSince, wordAt } from './cursor.ts';
import type { NoteStep, Step } from './tree.ts';
import { WordSet } from './word-set.ts';

/** What the brackets may begin with, asked before anything is looked at. */
export const TOGETHER_LEADS = new WordSet([
  'this',
  'the',
  'these',
  'ch',
  'chain',
  'beg',
  'skipped',
  'missed',
  'first',
]);

/** The brackets with both in them; null, the cursor where it was, where one of the two is not named or they come to more. */
export function readCountsTogether(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  cursor.at += 1;
  let chain = false;
  let stitch = false;
  let joined = false;
  for (
    let { kind } = peek(cursor);
    kind === 'word' || kind === 'number' || kind === 'dash';
    { kind } = peek(cursor)
  ) {
    const word = wordAt(cursor);
    if (word === 'together' || word === 'count' || word === 'counts') break;
    joined ||= word === 'and';
    const found = kind === 'word' ? nameHere(cursor) : null;
    const isChain = word.startsWith('ch') && found?.named.kind !== 'special';
    chain ||= isChain;
    stitch ||= found !== null && !isChain;
    cursor.at += !isChain && found !== null ? found.length : 1;
  }
  takeAny(cursor, 'together');
  const counts = chain && stitch && joined && takeAny(cursor, 'count', 'counts', 'counted') !== null;
  const one = counts && takeAny(cursor, 'as') !== null && takeOne(cursor);
  const found = one ? nameHere(cursor) : null;
  if (found !== null && found.named.kind === 'stitch') cursor.at += found.length;
  const named = found !== null || (one && takeAny(cursor, 'st', 'stitch') !== null);
  if (named && peek(cursor).kind === 'close') {
    cursor.at += 1;
    const span = spanSince(cursor, from);
    return {
      kind: 'note',
      text: textSince(cursor, from),
      chainCounts: { as: null, plusChains: 0, throughout: false, span },
      span,
    };
  }
  cursor.at = from;
  return null;
}

function takeOne(cursor: Cursor): boolean {
  if (peek(cursor).kind === 'number' && peek(cursor).value !== 1) return false;
  if (takeAny(cursor, 'a', 'one', 'the', 'first') === null && peek(cursor).value === 1) cursor.at += 1;
  return true;
}

/** Gives what such a note says to the chain that the row has begun with, or to the chains skipped; false where it has neither. */
export function giveChainCounts(steps: Step[], counts: Counts): boolean {
  const worked = steps.findIndex(({ kind }) => kind === 'work');
  const step = steps[worked];
  if (step?.kind === 'work' && step.place?.kind === 'from-hook') {
    steps[worked] = { ...step, skipped: counts };
    return true;
  }
  const at = steps.findIndex(({ kind }) => kind === 'chain');
  const chain = steps[at];
  if (chain?.kind !== 'chain' || (worked !== -1 && worked < at)) return false;
  steps[at] = { ...chain, counts };
  return true;
}
