/** Surface stitches, worked on rows that are done: nothing is worked into them later. */

import { type Cursor, peek, takeAny, takeOneOf, wordAt } from './cursor.ts';
import { isNumber } from './read-number.ts';
import type { Step, StitchName } from './tree.ts';
import { WordSet } from './word-set.ts';

/** `along top of Row 1`, `over Rnd 10` behind a surface stitch. */
export function isOverRow(cursor: Cursor, stitch: StitchName): boolean {
  if (stitch.kind !== 'stitch' || stitch.id !== 'surf-sl-st') return false;
  const at = wordAt(cursor, 1) === 'the' ? 2 : 1;
  if (wordAt(cursor) === 'along' && wordAt(cursor, at) === 'top') return true;
  return OVER.holds(peek(cursor)) && ROWS.holds(peek(cursor, 1)) && isNumber(cursor, 2);
}

/** The same behind a step that was read. */
export function isAlongTop(cursor: Cursor, [only]: readonly Step[]): boolean {
  return only?.kind === 'work' && isOverRow(cursor, only.stitch);
}

const OVER = new WordSet(['over', 'on', 'along', 'around', 'through']);
const ROWS = new WordSet(['row', 'rows', 'rnd', 'rnds', 'round', 'rounds']);

/** `, join to the first one`: a ring of surface stitches closes upon itself, not the round below it. */
export function takeJoinedToItself(cursor: Cursor): void {
  const start = cursor.at;
  if (peek(cursor).kind === 'comma') cursor.at += 1;
  takeAny(cursor, 'and');
  const joins = takeAny(cursor, 'join') !== null && takeAny(cursor, 'to') !== null;
  takeAny(cursor, 'the');
  const first = joins && takeAny(cursor, 'first') !== null;
  if (first && takeOneOf(cursor, ONE) !== null) return;
  cursor.at = start;
}

const ONE = new WordSet(['one', 'st', 'stitch', 'surface']);
