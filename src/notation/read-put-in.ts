/** What is put into the work before it is closed: `inserting the cushion before the last side is closed`, `slip the pillow form inside`. */

import type { Cursor } from './cursor.ts';
import { nameHere, spanSince, takeAny, takeOneOf, textSince, wordAt } from './cursor.ts';
import { readManner } from './read-note.ts';
import type { Step } from './tree.ts';
import { WordSet } from './word-set.ts';

/** Null, with the cursor where it was, where no filling is named, or where a number or a stitch may hide work. */
export function readPutIn(cursor: Cursor): Step | null {
  const from = cursor.at;
  // `slip st in next st`.
  if (nameHere(cursor) !== null) return null;
  cursor.at += 1;
  takeAny(cursor, 'in');
  takeAny(cursor, 'the', 'your', 'a', 'some');
  const sort = takeOneOf(cursor, SORTS) !== null;
  const named = takeOneOf(cursor, FILLINGS) !== null || sort;
  if (named && takesRest(cursor))
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}

/** The words up to the next boundary, where they name no stitch and no number. */
function takesRest(cursor: Cursor): boolean {
  return wordAt(cursor) === '' || readManner(cursor) !== null;
}

/** What says which filling, and may stand for it alone: `cushion pad`, `the cushion`. */
const SORTS = new WordSet(['pillow', 'cushion', 'foam', 'polyester', 'feather', 'fabric']);
const FILLINGS = new WordSet(
  `form pad insert inner stuffing fiberfill fibrefill filling fill lining lavender sachet pouch card cardboard rattle
   squeaker bell weight beans pellets magnet`.split(/\s+/),
);
