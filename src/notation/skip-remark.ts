/** What a row is called in brackets behind its label: `Next round (handles) –`, `Row 3 (inc row):`. */

import type { Cursor } from './cursor.ts';
import { peek } from './cursor.ts';
import { findName } from './lexicon.ts';
import { WordSet } from './word-set.ts';

const ROWS = new WordSet(['row', 'rnd', 'round', 'rows', 'rnds', 'rounds']);

/** Passes plain words between a label and its mark; with a stitch among them only where they end in "row": it may be work else. */
export function skipRemark(cursor: Cursor): void {
  const from = cursor.at;
  if (peek(cursor).kind !== 'open') return;
  let named = false;
  for (cursor.at += 1; peek(cursor).kind === 'word'; cursor.at += 1)
    named ||= findName(cursor.lexicon, cursor.tokens, cursor.at) !== null;
  const plain = !named || ROWS.holds(peek(cursor, -1));
  const after = peek(cursor, 1).kind;
  const marked = after === 'colon' || after === 'dash';
  if (plain && marked && peek(cursor).kind === 'close' && cursor.at > from + 1) cursor.at += 1;
  else cursor.at = from;
}
