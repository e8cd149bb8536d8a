/** A booklet to be folded in, the side out that tells how to print, fold and staple it, with a drawing of each sheet's pages. */

import type { Scene, Shape } from '../../scene/scene.ts';
import { mmFromPt } from '../../units.ts';
import type { MeasureText, Run } from '../break-lines.ts';
import { boxShape, ruleShape } from '../draw-lines.ts';
import { type FoldedSheet, foldedSheets, MOST_STAPLED, type SheetSide } from '../folding.ts';
import { ACCENT, pageGrid, QUIET, RULE } from '../page-grid.ts';
import type { PaperName } from '../paper.ts';
import { plain } from '../section.ts';
import { type Setting, setText, textShape } from '../set-text.ts';
import { moved } from '../strip.ts';

export interface FoldingFacts {
  readonly title: string;
  /** Without the blank ones. */
  readonly pages: number;
  readonly loose: number;
  readonly paper: PaperName;
}

const GUTTER_MM = 12;
const SHEETS_DRAWN = 6;

export function foldingNotes(facts: FoldingFacts, measure: MeasureText): Scene {
  const grid = pageGrid({ paper: facts.paper, form: 'flat' }, 'landscape');
  const setting: Setting = { measure, grid };
  const sheets = foldedSheets(facts.pages);
  const columnMm = (grid.bodyWidthMm - GUTTER_MM) / 2;
  const words = stack(
    [
      { text: facts.title, type: 'body', bold: false, gapMm: 0 },
      { text: 'How to print, fold and staple this booklet', type: 'section', bold: true, gapMm: 1 },
      ...steps(facts, sheets.length).map((text) => ({
        text,
        type: 'body' as const,
        bold: false,
        gapMm: 2.2,
      })),
    ],
    columnMm,
    setting,
  );
  const drawing = sheetsDrawing(sheets, columnMm, setting);
  return {
    widthMm: grid.widthMm,
    heightMm: grid.heightMm,
    title: `${facts.title}, how to print and fold it`,
    alternative: steps(facts, sheets.length).join(' '),
    symbols: {},
    shapes: [
      moved(words, grid.leftMm, grid.topMm - 6),
      moved(drawing, grid.leftMm + columnMm + GUTTER_MM, grid.topMm),
    ],
  };
}

function steps({ pages, loose, paper }: FoldingFacts, sheets: number): string[] {
  const name = paper === 'A4' ? 'A4' : 'US Letter';
  const many =
    sheets > MOST_STAPLED
      ? [
          `${sheets} sheets are more than a stapler at home takes, ${MOST_STAPLED} at most: sew them through the fold, or ` +
            'print the booklet page by page instead.',
        ]
      : [];
  const looseStep =
    loose === 0
      ? []
      : [
          `The last ${loose === 1 ? 'sheet is' : `${loose} sheets are`} not folded: ${loose === 1 ? 'a chart' : 'charts'} too large for half a page. Lay ${loose === 1 ? 'it' : 'them'} into the booklet.`,
        ];
  const list = [
    `Print all pages of this file on ${name} paper, on both sides, turned over on the short edge, at actual size (100 %, not "fit to page"). This sheet comes out first: lay it aside.`,
    'If your printer prints on one side only, print the odd pages, put the printed stack back into the tray and print the even pages. Which way round the stack goes in differs from printer to printer: try it with two pages first. The tops of both sides must lie at the same edge.',
    `The booklet has ${pages} pages on ${sheets} folded ${sheets === 1 ? 'sheet' : 'sheets'}. Lay the sheets one on another as they are drawn here: the first, with the cover, at the bottom and face down, the last on top.`,
    'Fold the whole stack down the middle and crease it well. The cover is outside, and the pages count up as you turn them.',
    'Open it and staple twice through the fold from outside, a quarter of the height from the top and from the foot. Without a stapler that reaches, sew three holes with yarn.',
    ...many,
    ...looseStep,
    'A screen reader reads the sides of these sheets in the wrong order. The booklet that is not folded has the same text, tagged and in order.',
  ];
  return list.map((text, index) => `${index + 1}.  ${text}`);
}

interface Words {
  readonly text: string;
  readonly type: 'body' | 'section';
  readonly bold: boolean;
  readonly gapMm: number;
}

function stack(paragraphs: readonly Words[], widthMm: number, setting: Setting): Shape[] {
  let yMm = 0;
  return paragraphs.flatMap(({ text, type, bold, gapMm }) => {
    const runs: Run[] = bold ? [{ text, face: 'title-bold', ink: ACCENT }] : plain(text);
    yMm += gapMm;
    return setText(runs, setting.grid.type[type], { xMm: 0, widthMm }, setting).map((line) => {
      const shape = moved(line.shapes, 0, yMm);
      yMm += line.heightMm;
      return shape;
    });
  });
}

/** Front and back of the outer sheets, side by side, with the numbers of their pages. */
function sheetsDrawing(sheets: readonly FoldedSheet[], widthMm: number, setting: Setting): Shape[] {
  const { grid } = setting;
  const drawn = sheets.length > SHEETS_DRAWN ? sheets.slice(0, SHEETS_DRAWN - 1) : sheets;
  const gapMm = 8;
  const sideMm = { width: (widthMm - gapMm - 16) / 2, height: 0 };
  const roomMm = grid.bodyHeightMm / Math.max(drawn.length, 3) - 9;
  sideMm.height = Math.min((sideMm.width * grid.heightMm) / grid.widthMm, roomMm);
  sideMm.width = (sideMm.height * grid.widthMm) / grid.heightMm;
  const pitchMm = sideMm.height + 9;
  const { small } = grid.type;
  const shapes = drawn.flatMap((sheet, index): Shape[] => {
    const yMm = index * pitchMm;
    const label = textShape(
      { text: `Sheet ${index + 1}`, face: 'text-bold' },
      small,
      0,
      yMm + sideMm.height / 2 + mmFromPt(small.fontPt) * 0.33,
    );
    return [
      label,
      ...(['front', 'back'] as const).flatMap((name, turned) => [
        moved(sideDrawing(sheet[name], sideMm, setting), 16 + turned * (sideMm.width + gapMm), yMm),
        textShape(
          { text: name, face: 'text', ink: QUIET },
          small,
          16 + turned * (sideMm.width + gapMm) + sideMm.width / 2,
          yMm + sideMm.height + 4,
          'middle',
        ),
      ]),
    ];
  });
  const more = sheets.length - drawn.length;
  const rest =
    more === 0
      ? []
      : [
          textShape(
            { text: `and ${more} more sheets in the same way`, face: 'text' },
            small,
            0,
            drawn.length * pitchMm + 3,
          ),
        ];
  return [...shapes, ...rest];
}

function sideDrawing(
  { left, right }: SheetSide,
  { width, height }: { readonly width: number; readonly height: number },
  { grid }: Setting,
): Shape[] {
  const baseline = height / 2 + mmFromPt(grid.type.part.fontPt) * 0.33;
  const number = (page: number | null, xMm: number): Shape =>
    textShape(
      page === null
        ? { text: 'blank', face: 'text', ink: QUIET }
        : { text: String(page), face: 'text-bold', ink: 'ink' },
      page === null ? grid.type.small : grid.type.part,
      xMm,
      baseline,
      'middle',
    );
  return [
    boxShape({ xMm: 0, yMm: 0, widthMm: width, heightMm: height }, { ink: ACCENT, widthMm: RULE.thinMm }),
    { ...dashed(width / 2, height) },
    number(left, width / 4),
    number(right, (3 * width) / 4),
  ];
}

function dashed(xMm: number, heightMm: number): Shape {
  const line = ruleShape(0, 0, heightMm, RULE.thinMm, QUIET);
  const stroke = { ink: QUIET, widthMm: RULE.thinMm, dashMm: [1.5, 1.2] } as const;
  return {
    kind: 'group',
    transform: [0, 1, -1, 0, xMm, 0],
    shapes: [line.kind === 'path' ? { ...line, stroke } : line],
  };
}
