/** The lines of a pasted text in; after which of them rows of the same piece still come, out. */

import { findHeading } from './headings.ts';
import { isInstruction, isProse } from './instruction-words.ts';
import { rowLabel } from './row-labels.ts';
import type { TextLine } from './tidy-lines.ts';

/** Reckoned from the last line to the first, so that a long text is gone over once. */
export function linesBeforeRows(lines: readonly TextLine[]): ReadonlySet<TextLine> {
  const before = new Set<TextLine>();
  let follow = false;
  for (const line of lines.toReversed()) {
    if (follow) before.add(line);
    const { text } = line.text;
    if (rowLabel(text) !== null) follow = true;
    else if (opensAnother(text)) follow = false;
    else if (isInstruction(text) && !isProse(text)) follow = true;
  }
  return before;
}

/** A heading ends the piece, unless it only heads a note on the way. */
function opensAnother(text: string): boolean {
  const heading = findHeading(text);
  return heading !== null && !/^(?:please )?note|^tip/i.test(heading.words);
}
