/** `working each post stitch around the matching post stitch below`: what a row that is repeated does of itself. */

import type { Cursor } from './cursor.ts';
import { atBoundary, spanSince, takeAny, takeOneOf, textSince } from './cursor.ts';
import { readStitchName } from './read-yarn.ts';
import type { NoteStep } from './tree.ts';
import { WordSet } from './word-set.ts';

const AROUND = new WordSet(['around', 'round', 'in', 'into', 'over', 'on']);
const ALIKE = new WordSet(['matching', 'same', 'corresponding']);

/** Behind "working", at "each"; null with the cursor where it was, for anything else. */
export function readMatching(cursor: Cursor, from: number): NoteStep | null {
  const start = cursor.at;
  const each = takeAny(cursor, 'each', 'every') !== null && takeStitch(cursor);
  const around = each && takeOneOf(cursor, AROUND) !== null;
  takeAny(cursor, 'the', 'its');
  if (around && takeOneOf(cursor, ALIKE) !== null && takeStitch(cursor)) {
    if (takeAny(cursor, 'below') === null && takeAny(cursor, 'of', 'in', 'from', 'on') !== null) {
      takeAny(cursor, 'the');
      takeAny(cursor, 'previous', 'prev', 'last');
      takeAny(cursor, 'row', 'rnd', 'round');
      takeAny(cursor, 'below', 'before');
    }
    if (atBoundary(cursor))
      return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  }
  cursor.at = start;
  return null;
}

/** `post stitch`, `raised st`, `st`, `FPdc`. */
function takeStitch(cursor: Cursor): boolean {
  takeAny(cursor, 'post', 'raised', 'relief', 'rib');
  return takeAny(cursor, 'st', 'stitch', 'sts', 'stitches') !== null || readStitchName(cursor) !== null;
}
