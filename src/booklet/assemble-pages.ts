/** Flowed pages in, finished page scenes out, with running heads, page numbers, rules and an outline. */

import type { Scene, Shape } from '../scene/scene.ts';
import { mmFromPt } from '../units.ts';
import { breakLines, type MeasureText, type Run } from './break-lines.ts';
import { ruleShape } from './draw-lines.ts';
import type { FlowedPage, PlacedStrip } from './flow.ts';
import { GAP, type PageGrid, pageGrid, QUIET, RULE, TYPE } from './page-grid.ts';
import type { PaperName } from './paper.ts';
import { textShape } from './set-text.ts';
import { type Bookmark, moved } from './strip.ts';
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
}

export function assemblePages(
  flowed: readonly FlowedPage[],
  head: RunningHead,
  paper: PaperName,
  measure: MeasureText,
): Assembled {
  const outline: OutlineEntry[] = [];
  const pages = flowed.map((page, index): Scene => {
    const grid = pageGrid(paper, page.kind === 'sheet' ? page.sheet.orientation : 'portrait');
    const marks =
      page.kind === 'sheet' ? [page.sheet.bookmark] : page.strips.map(({ strip }) => strip.bookmark);
    for (const mark of marks) if (mark) outline.push({ ...mark, page: index });
    const running = runningHead(head, index + 1, flowed.length, grid, measure);
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
      title: `${head.title}, page ${index + 1} of ${flowed.length}`,
      alternative: spokenText(body),
      symbols,
      shapes,
    };
  });
  return { pages, outline };
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
  number: number,
  count: number,
  grid: PageGrid,
  measure: MeasureText,
): { head: Shape[]; foot: Shape[] } {
  const right = grid.leftMm + grid.bodyWidthMm;
  const small = mmFromPt(TYPE.small.fontPt);
  const rightText = shorten({ text: head.right, face: 'text', ink: QUIET }, grid.bodyWidthMm * 0.45, measure);
  const taken = measure(rightText.text, rightText.face, small) + GAP.count;
  const title = shorten(
    { text: head.title, face: 'text-italic', ink: QUIET },
    grid.bodyWidthMm - taken,
    measure,
  );
  const footLeft = shorten(
    { text: head.footLeft, face: 'text', ink: QUIET },
    grid.bodyWidthMm * 0.75,
    measure,
  );
  const page: Run = { text: `${number} of ${count}`, face: 'text', ink: QUIET };
  return {
    head: [
      textShape(title, TYPE.small, grid.leftMm, grid.headBaselineMm),
      ...(rightText.text ? [textShape(rightText, TYPE.small, right, grid.headBaselineMm, 'end')] : []),
      ruleShape(grid.leftMm, grid.headRuleMm, grid.bodyWidthMm, RULE.hairMm, QUIET),
    ],
    foot: [
      ...(footLeft.text ? [textShape(footLeft, TYPE.small, grid.leftMm, grid.footBaselineMm)] : []),
      textShape(page, TYPE.small, right, grid.footBaselineMm, 'end'),
    ],
  };
}

/** The first line of a text that may be too long for one, with an ellipsis where it was. */
function shorten(run: Run, widthMm: number, measure: MeasureText): Run {
  const sizeMm = mmFromPt(TYPE.small.fontPt);
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
