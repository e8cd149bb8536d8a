/** The lines of a pasted text in; after which of them rows of the same piece still come, out. */

import { findHeading } from './headings.ts';
import { isInstruction, isProse } from './instruction-words.ts';
import { partHeading } from './part-headings.ts';
import { rowLabel } from './row-labels.ts';
import type { TextLine } from './tidy-lines.ts';

export interface RowsAhead {
  /** Lines after which rows still come before another section does. */
  readonly anywhere: ReadonlySet<TextLine>;
  /** Of those the ones whose own piece goes on with numbered rows. */
  readonly ofPiece: ReadonlySet<TextLine>;
}

/** Reckoned from the last line to the first, so that a long text is gone over once. */
export function linesBeforeRows(lines: readonly TextLine[]): RowsAhead {
  const anywhere = new Set<TextLine>();
  const ofPiece = new Set<TextLine>();
  let follow = false;
  let own = false;
  for (let index = lines.length - 1; index >= 0; index -= 1) {
    const line = lines[index];
    if (line === undefined) continue;
    if (follow) anywhere.add(line);
    if (own) ofPiece.add(line);
    const { text } = line.text;
    if (rowLabel(text) !== null) [follow, own] = [true, true];
    else if (opensAnother(text)) [follow, own] = [false, false];
    else if (isInstruction(text) && !isProse(text)) follow = true;
    else if (own && partHeading(lines, index, false) !== null) own = false;
  }
  return { anywhere, ofPiece };
}

/** A heading ends the piece, unless it only heads a note on the way. */
function opensAnother(text: string): boolean {
  const heading = findHeading(text);
  return heading !== null && !/^(?:please )?note|^tip/i.test(heading.words);
}
