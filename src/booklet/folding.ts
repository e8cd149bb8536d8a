/**
 * Numbers of pages in, where each is printed out, for sheets that are folded once, laid one in another and stapled in the
 * fold: two pages a side, to be printed on both sides and flipped on the short edge.
 */

/** Two pages beside each other, as numbers from 1; null is left blank. */
export interface SheetSide {
  readonly left: number | null;
  readonly right: number | null;
}

export interface FoldedSheet {
  readonly front: SheetSide;
  readonly back: SheetSide;
}

export interface PagePosition {
  /** From 1, the outermost. */
  readonly sheet: number;
  readonly side: 'front' | 'back';
  readonly half: 'left' | 'right';
}

export const PAGES_A_SHEET = 4;

/** Home staplers take no more sheets of 80 g than this; from memory. */
export const MOST_STAPLED = 15;

/** A sheet of 80 g paper is about a tenth of a millimetre thick; from memory. */
const SHEET_THICKNESS_MM = 0.1;

/** With blanks at the end, so that the sheets come out full. */
export function paddedPages(pages: number): number {
  return Math.ceil(pages / PAGES_A_SHEET) * PAGES_A_SHEET;
}

/** The outermost sheet first. The two pages of a side always add up to one more than all of them. */
export function foldedSheets(pages: number): FoldedSheet[] {
  const all = paddedPages(pages);
  const orBlank = (page: number): number | null => (page <= pages ? page : null);
  return Array.from({ length: all / PAGES_A_SHEET }, (_, index): FoldedSheet => {
    const first = 2 * index + 1;
    return {
      front: { left: orBlank(all + 1 - first), right: orBlank(first) },
      back: { left: orBlank(first + 1), right: orBlank(all - first) },
    };
  });
}

/** Where a page, numbered from 1, stands among so many. */
export function pagePosition(page: number, pages: number): PagePosition {
  const all = paddedPages(pages);
  const firstHalf = page <= all / 2;
  // The page that shares its side, counted from the nearer cover.
  const fromCover = firstHalf ? page : all + 1 - page;
  const front = fromCover % 2 === 1;
  return {
    sheet: Math.ceil(fromCover / 2),
    side: front ? 'front' : 'back',
    half: firstHalf === front ? 'right' : 'left',
  };
}

/**
 * How far the pages of a sheet are moved towards the fold: laid in others, it stands out from them at the open edge by
 * their thickness, and its margins would look wider than theirs once the edge is trimmed.
 */
export function creepMm(sheet: number): number {
  return (sheet - 1) * SHEET_THICKNESS_MM;
}
