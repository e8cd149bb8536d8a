/** `Take 4 strands for each tassel, fold them and knot them in the first st`: a fringe, which is knotted and not worked. */

import type { Cursor } from './cursor.ts';
import { peek, spanSince, textSince } from './cursor.ts';
import type { NoteStep } from './tree.ts';
import { WordSet } from './word-set.ts';

const STRANDS = new WordSet(['strand', 'strands', 'lengths', 'pieces', 'threads']);
const KNOTTED = new WordSet(['tassel', 'tassels', 'fringe', 'knot', 'knots']);

/** The sentence whole; null, the cursor where it was, where no strands are knotted in it. */
export function readFringe(cursor: Cursor): NoteStep | null {
  const from = cursor.at;
  let strands = false;
  let knotted = false;
  for (let { kind } = peek(cursor); kind !== 'stop' && kind !== 'end'; { kind } = peek(cursor)) {
    strands ||= STRANDS.holds(peek(cursor));
    knotted ||= KNOTTED.holds(peek(cursor));
    cursor.at += 1;
  }
  if (strands && knotted)
    return { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) };
  cursor.at = from;
  return null;
}
