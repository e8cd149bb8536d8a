/** Flowed pages in, finished page scenes out, with running heads, page numbers, rules and an outline. */

import type { Scene, Shape } from '../scene/scene.ts';
import { mmFromPt } from '../units.ts';
import { breakLines, type MeasureText, type Run } from './break-lines.ts';
import { ruleShape } from './draw-lines.ts';
import type { FlowedPage, PlacedStrip } from './flow.ts';
import { type PageGrid, pageGrid, QUIET, RULE } from './page-grid.ts';
import type { PageFormat } from './paper.ts';
import { textShape } from './set-text.ts';
import { type Bookmark, moved, type Sheet } from './strip.ts';
import { walkShapes } from './walk-shapes.ts';

export interface OutlineEntry extends Bookmark {
  /** Index of its page. */
  readonly page: number;
}

/** What stands at the head and foot of every page but the cover. */
export interface RunningHead {
  readonly title: string;
  readonly right: string;
  readonly footLeft: string;
}

export interface Assembled {
  readonly pages: readonly Scene[];
  readonly outline: readonly OutlineEntry[];
  /** Sheets of the whole paper that belong to a booklet folded from it, and are not folded. */
  readonly loose: readonly Scene[];
}

export interface Flowed {
  readonly pages: readonly FlowedPage[];
  readonly loose: readonly Sheet[];
}

/** Where a booklet's pages stand in a book of several. */
export interface WithinBook {
  readonly pagesBefore: number;
  readonly pagesInAll: number;
}

export function assemblePages(
  flowed: Flowed,
  head: RunningHead,
  format: PageFormat,
  measure: MeasureText,
  within: WithinBook | null = null,
): Assembled {
  const outline: OutlineEntry[] = [];
  const count = flowed.pages.length;
  const { pagesBefore, pagesInAll } = within ?? { pagesBefore: 0, pagesInAll: count };
  const pages = flowed.pages.map((page, index): Scene => {
    const marks =
      page.kind === 'sheet' ? [page.sheet.bookmark] : page.strips.map(({ strip }) => strip.bookmark);
    for (const mark of marks) if (mark) outline.push({ ...mark, page: index });
    return assembledPage(
      page,
      { index, number: `${pagesBefore + index + 1} of ${pagesInAll}`, title: 'page' },
      head,
      format,
      measure,
    );
  });
  const loose = flowed.loose.map((sheet, index): Scene => {
    const number = `Loose sheet ${index + 1} of ${flowed.loose.length}`;
    return assembledPage(
      { kind: 'sheet', sheet },
      { index: count, number, title: '' },
      head,
      format,
      measure,
    );
  });
  return { pages, outline, loose };
}

interface PageNumber {
  readonly index: number;
  /** `3 of 8`. */
  readonly number: string;
  /** What stands before it in the title of the page. */
  readonly title: string;
}

function assembledPage(
  page: FlowedPage,
  { index, number, title }: PageNumber,
  head: RunningHead,
  format: PageFormat,
  measure: MeasureText,
): Scene {
  const grid =
    page.kind === 'sheet'
      ? pageGrid(page.sheet.format, page.sheet.orientation)
      : pageGrid(format, 'portrait');
  const running = runningHead(head, number, grid, measure);
  const isCover = index === 0 && page.kind === 'sheet';
  const under = page.kind === 'sheet' ? page.sheet.underPage : [];
  const body = page.kind === 'sheet' ? page.sheet.shapes : stripShapes(page.strips, grid);
  const shapes = [
    ...under,
    // The first page opens with the title, so it has no running head; a cover has no page number either.
    ...(index === 0 ? [] : running.head),
    moved(body, grid.leftMm, grid.topMm),
    ...(isCover ? [] : running.foot),
  ];
  const symbols =
    page.kind === 'sheet'
      ? page.sheet.symbols
      : Object.assign({}, ...page.strips.map(({ strip }) => strip.symbols ?? {}));
  return {
    widthMm: grid.widthMm,
    heightMm: grid.heightMm,
    title: [head.title, [title, number].filter((word) => word !== '').join(' ')].join(', '),
    // Told only where a page is drawn by itself.
    get alternative() {
      return spokenText(body);
    },
    symbols,
    shapes,
  };
}

function stripShapes(strips: readonly PlacedStrip[], grid: PageGrid): Shape[] {
  return strips.flatMap(({ strip, yMm }) => {
    const rule =
      strip.ruleAbove && yMm > 0
        ? [ruleShape(0, yMm - strip.spaceBeforeMm / 2, grid.bodyWidthMm, RULE.hairMm, QUIET)]
        : [];
    return [...rule, moved(strip.shapes, 0, yMm)];
  });
}

function runningHead(
  head: RunningHead,
  number: string,
  grid: PageGrid,
  measure: MeasureText,
): { head: Shape[]; foot: Shape[] } {
  const right = grid.leftMm + grid.bodyWidthMm;
  const small = mmFromPt(grid.type.small.fontPt);
  const rightText = shorten(
    { text: head.right, face: 'text', ink: QUIET },
    grid.bodyWidthMm * 0.45,
    grid,
    measure,
  );
  const taken = measure(rightText.text, rightText.face, small) + grid.gap.count;
  const title = shorten(
    { text: head.title, face: 'text-italic', ink: QUIET },
    grid.bodyWidthMm - taken,
    grid,
    measure,
  );
  const footLeft = shorten(
    { text: head.footLeft, face: 'text', ink: QUIET },
    grid.bodyWidthMm * 0.75,
    grid,
    measure,
  );
  const page: Run = { text: number, face: 'text', ink: QUIET };
  return {
    head: [
      textShape(title, grid.type.small, grid.leftMm, grid.headBaselineMm),
      ...(rightText.text ? [textShape(rightText, grid.type.small, right, grid.headBaselineMm, 'end')] : []),
      ruleShape(grid.leftMm, grid.headRuleMm, grid.bodyWidthMm, RULE.hairMm, QUIET),
    ],
    foot: [
      ...(footLeft.text ? [textShape(footLeft, grid.type.small, grid.leftMm, grid.footBaselineMm)] : []),
      textShape(page, grid.type.small, right, grid.footBaselineMm, 'end'),
    ],
  };
}

/** The first line of a text that may be too long for one, with an ellipsis where it was. */
function shorten(run: Run, widthMm: number, grid: PageGrid, measure: MeasureText): Run {
  const sizeMm = mmFromPt(grid.type.small.fontPt);
  const ellipsisMm = measure(' …', run.face, sizeMm);
  if (measure(run.text, run.face, sizeMm) <= widthMm) return run;
  const [first] = breakLines([run], sizeMm, widthMm - ellipsisMm, measure);
  return { ...run, text: `${first?.pieces.map(({ text }) => text).join('') ?? ''} …` };
}

function spokenText(shapes: readonly Shape[]): string {
  return walkShapes(shapes)
    .flatMap(({ shape }) => (shape.kind === 'text' ? [shape.text] : []))
    .join(' ')
    .replace(/\s+/g, ' ');
}
