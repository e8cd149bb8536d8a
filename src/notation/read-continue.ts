/** What `continue` goes on with: rounds that grow, a pattern up to a measure, the sides of a border; else words to the maker. */

import type { Cursor } from './cursor.ts';
import { wordAt } from './cursor.ts';
import { readOnRound } from './read-all-sides.ts';
import { readGrowing } from './read-growing.ts';
import { readMakerNote } from './read-note.ts';
import { readInPattern } from './read-pattern.ts';
import type { Step } from './tree.ts';

/** `cont in patt until work measures 30 cm`, `continue thus round all four sides`; to continue in any other way is a word to the maker. */
export function readContinue(cursor: Cursor): Step | readonly Step[] | null {
  const grows = readGrowing(cursor) ?? readOnRound(cursor);
  if (grows !== null) return grows;
  if (wordAt(cursor, 1) === 'in' && wordAt(cursor, 2).startsWith('patt')) return readInPattern(cursor);
  return readMakerNote(cursor);
}
