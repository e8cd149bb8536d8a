/** A paragraph of a pasted text in, whether all it tells is stitches drawn onto the surface of rows that are done: nothing is worked into them later. */

import { sentencesOf } from './assembly-lines.ts';
import { namesWork } from './instruction-words.ts';
import { rowLabel } from './row-labels.ts';

const SURFACE = /\bsurface[ -](?:sl(?:ip)?\b|ss\b|crochet\b|chain|st(?:itch|s?\b))/i;
/** `Begin at lower edge of front, in the gap …`, `Work another upright …`, `Cut yarn`: where it goes, and the same elsewhere. */
const BESIDE =
  /^(?:\p{Lu}[\p{L} ]{1,24}:\s*)?(?:(?:begin|start)\b(?=[^.]*\b(?:at|in|on|from)\b)(?![^.]*\b(?:ch|chain) \d)|work (?:another|the other|one more)\b|(?:cut|fasten|break|weave|take)\b|insert (?:the |your )?hook\b|the stitches\b)/iu;

export function isSurfaceWork(text: string): boolean {
  if (!SURFACE.test(text) || rowLabel(text) !== null) return false;
  return sentencesOf(text).every(([start, end]) => {
    const sentence = text.slice(start, end).trim();
    return SURFACE.test(sentence) || BESIDE.test(sentence) || !namesWork(sentence);
  });
}
