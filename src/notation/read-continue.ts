/** What `continue` goes on with: rounds that grow, a pattern up to a measure, the sides of a border; else words to the maker. */

import type { Cursor } from './cursor.ts';
import { peek, takeAny, wordAt } from './cursor.ts';
import { readOnRound } from './read-all-sides.ts';
import { readFarEdge } from './read-edge.ts';
import { readGrowing } from './read-growing.ts';
import { readMakerNote } from './read-note.ts';
import { readInPattern } from './read-pattern.ts';
import { readRepeatRows } from './read-rows.ts';
import type { Step } from './tree.ts';
import { WordSet } from './word-set.ts';

const SIDEWAYS = new WordSet(['down', 'along', 'up', 'on']);

/** `keep going with row 2 till you've got 80 rows`; null with the cursor where it was. */
export function readKeepOn(cursor: Cursor): Step | null {
  const from = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'on');
  takeAny(cursor, 'going', 'repeating', 'working', 'doing');
  const along = SIDEWAYS.holds(peek(cursor)) ? readFarEdge(cursor) : null;
  if (along !== null) return along;
  takeAny(cursor, 'with', 'on', 'in');
  takeAny(cursor, 'the');
  const rows = readRepeatRows(cursor, from);
  if (rows !== null && rows.until.kind !== 'label') return rows;
  cursor.at = from;
  return null;
}

/** `do rows 2 and 3 another 9 times`, `do row 4 again`; null with the cursor where it was. */
export function readDoRows(cursor: Cursor): Step | null {
  const from = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'the');
  const rows = readRepeatRows(cursor, from);
  if (rows !== null && (rows.last === undefined || (rows.until.kind === 'times' && rows.until.more)))
    return rows;
  cursor.at = from;
  return null;
}

/** `cont in patt until work measures 30 cm`, `continue thus round all four sides`; to continue in any other way is a word to the maker. */
export function readContinue(cursor: Cursor): Step | readonly Step[] | null {
  const grows = readGrowing(cursor) ?? readOnRound(cursor);
  if (grows !== null) return grows;
  if (wordAt(cursor, 1) === 'in' && wordAt(cursor, 2).startsWith('patt')) return readInPattern(cursor);
  return readMakerNote(cursor);
}
