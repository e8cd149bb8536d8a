/** A booklet laid out in half pages in, everything a printer needs out: notes on folding, the sides of the sheets, loose sheets. */

import type { Scene } from '../scene/scene.ts';
import type { Assembled } from './assemble-pages.ts';
import { foldingNotes } from './blocks/folding-notes.ts';
import type { MeasureText } from './break-lines.ts';
import { blankSide, imposedSides } from './impose.ts';
import type { PaperName } from './paper.ts';

export interface FoldedSetting {
  readonly title: string;
  readonly paper: PaperName;
  /** With a first sheet that tells how to print and fold the others. */
  readonly notes: boolean;
  readonly measure: MeasureText;
}

/** Every sheet has its front and its back, blank where there is nothing on it, so that all print on both sides in one go. */
export function foldedBooklet(
  { pages, loose }: Assembled,
  { title, paper, notes, measure }: FoldedSetting,
): Scene[] {
  const first = notes
    ? [foldingNotes({ title, pages: pages.length, loose: loose.length, paper }, measure)]
    : [];
  return [
    ...first.flatMap(withBlankBack),
    ...imposedSides(pages, paper, title),
    ...loose.flatMap(withBlankBack),
  ];
}

function withBlankBack(side: Scene): Scene[] {
  return [side, blankSide(side.widthMm, side.heightMm, `${side.title}, back`)];
}
