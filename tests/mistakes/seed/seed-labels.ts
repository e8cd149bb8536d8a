/** Rows numbered wrong, ranges that end a row sooner or later, and counts stated one off. */

import type { Edit } from './edit.ts';
import type { Stretch } from './stretch.ts';

export function seedLabels({ label, stated }: Stretch, text: string): Edit[] {
  const edits: Edit[] = [];
  for (const { at, n } of numbersIn(label, text)) {
    for (const put of [n - 1, n + 1, n + 4])
      edits.push({ kind: 'a row numbered wrong', start: at, end: at + String(n).length, put: String(put) });
  }
  for (const { at, n } of numbersIn(stated, text)) {
    for (const put of [n - 1, n + 1])
      edits.push({ kind: 'a stated count one off', start: at, end: at + String(n).length, put: String(put) });
  }
  return edits;
}

/** Numbers of their own: not the 2 of ch-2, not the 3 of 3rd. */
function numbersIn(span: Stretch['label'], text: string): { at: number; n: number }[] {
  if (span === null) return [];
  return [
    ...text.slice(span.start, span.end).matchAll(/(?<![-\w]|ch )\d+(?!-ch|\d)/g),
    // The end of a range stands behind a dash.
    ...text.slice(span.start, span.end).matchAll(/(?<=\d\)?-R?)\d+/g),
  ].map((match) => ({ at: span.start + match.index, n: Number(match[0]) }));
}
