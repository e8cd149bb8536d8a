/** A fabric in, its charts out: one scene for each piece, what is worked onto its edges included. */

import type { Fabric } from '../fabric/fabric.ts';
import { around, boundsOf } from '../scene/bounds.ts';
import type { Scene, Shape } from '../scene/scene.ts';
import type { StitchRow, Terms } from '../stitches/stitch-row.ts';
import type { SymbolSetName } from '../symbols/symbols.ts';
import { alternativeText } from './alternative.ts';
import { crossedStems } from './crossings.ts';
import { drawStitch } from './draw-stitch.ts';
import type { Drawing } from './drawing.ts';
import { stitchRows } from './elements.ts';
import { type Fold, rowFoldMark, windowWords } from './fold.ts';
import { chartKey } from './key.ts';
import { labelRows } from './labels.ts';
import { emptyLayout, type Layout } from './layout.ts';
import { KEY_MM, MARGIN_MM } from './metrics.ts';
import { mirrored } from './mirror.ts';
import type { PartChart } from './part-chart.ts';
import { type PlacedPiece, placePiece } from './place-part.ts';
import { type Repeat, repeatBracket } from './repeat-bracket.ts';
import { penOf, type RowPen, rowPens, type YarnInk, yarnInkOf } from './row-pens.ts';
import { SymbolBook } from './symbol-book.ts';
import { drawYarnMarks, yarnMarks } from './yarn-marks.ts';

export interface ChartOptions {
  readonly terms: Terms;
  /** Of the pattern: each chart is titled by it and its parts. */
  readonly title: string;
  /** Whose forms of the symbols; the Craft Yarn Council's where none is said. */
  readonly symbols?: SymbolSetName;
  /** Drawn for left-handed makers: turned over, letters and symbols as they are. */
  readonly leftHanded?: boolean;
  /** What of each part repeats, marked under it. */
  readonly repeats?: readonly Repeat[];
  /** Drawn with a window of what repeats. */
  readonly fold?: Fold;
  /** Whether the key is drawn below. */
  readonly key: boolean;
  /** Colours of yarns by letter; a yarn too pale for paper keeps the chart's own inks. */
  readonly yarnInk?: Readonly<Record<string, string>>;
}

export function chartParts(fabric: Fabric, options: ChartOptions): Omit<PartChart, 'folded'>[] {
  const rows = stitchRows(fabric);
  // One yarn's colour would say nothing that the two inks do not.
  const severalYarns = fabric.yarns.length > 1;
  const yarnInks = fabric.yarns.map((letter) => (severalYarns ? yarnInkOf(options.yarnInk?.[letter]) : null));
  const layout = emptyLayout(fabric.count);
  const pens = rowPens(fabric);
  return pieces(fabric).map((parts) => {
    const rightHanded = placePiece(fabric, rows, layout, parts);
    const placed = options.leftHanded
      ? mirrored(fabric, layout, rowsOfParts(fabric, parts), rightHanded)
      : rightHanded;
    const names = parts.map((part) => fabric.parts[part]?.name ?? '');
    return {
      part: names[0] ?? '',
      scene: chartScene({ fabric, rows, layout, pens, yarnInks, parts, placed, names }, options),
    };
  });
}

export function rowsOfParts(fabric: Fabric, parts: readonly number[]): number[] {
  return parts.flatMap((part) => {
    const { firstRow, endRow } = fabric.parts[part] ?? { firstRow: 0, endRow: 0 };
    return Array.from({ length: endRow - firstRow }, (_, k) => firstRow + k);
  });
}

/** Each part that starts afresh, with those that go on from its edges. */
export function pieces(fabric: Fabric): number[][] {
  const found: number[][] = [];
  const pieceOf = new Map<number, number[]>();
  fabric.parts.forEach((part, index) => {
    const piece = part.onto === null ? undefined : pieceOf.get(part.onto);
    if (piece === undefined) found.push([index]);
    else piece.push(index);
    pieceOf.set(index, piece ?? found.at(-1) ?? [index]);
  });
  return found;
}

interface PieceChart {
  readonly fabric: Fabric;
  readonly rows: readonly StitchRow[];
  readonly layout: Layout;
  readonly pens: readonly RowPen[];
  /** By the fabric's own numbering of yarns; null for those drawn in the chart's two inks. */
  readonly yarnInks: readonly (YarnInk | null)[];
  readonly parts: readonly number[];
  readonly placed: PlacedPiece;
  readonly names: readonly string[];
}

function chartScene(piece: PieceChart, options: ChartOptions): Scene {
  const { fabric, rows, parts, placed, pens, names } = piece;
  const book = new SymbolBook(options.symbols);
  const rowIndices = rowsOfParts(fabric, parts);
  const crossed = book.set.breaksRear ? crossedStems(fabric, rows, piece.layout, rowIndices) : undefined;
  const shapes: Shape[] = rowIndices.map((row) => drawRow(piece, { book, crossed }, row));
  if (placed.bareRing) {
    shapes.push(
      book.use('magic-ring-firm-1', () => book.set.symbols['magic-ring'].draw(0, 'firm'), {
        x: 0,
        y: 0,
        upX: 0,
        upY: 1,
        ink: 'ink',
      }),
    );
  }
  // Beside stitches in their yarns' colours the numbers keep to one ink.
  const coloured = piece.yarnInks.some((inks) => inks !== null);
  const inks = coloured ? [] : pens.map(({ ink }) => ink);
  const labels = labelRows({
    fabric,
    layout: piece.layout,
    rows: placed.rows,
    inks,
    wall: placed.wall,
    ring: placed.ring,
    book,
  });
  shapes.push({ kind: 'group', transform: null, data: { labels: 'rows' }, shapes: labels.shapes });
  const marks = book.set.marksYarn ? yarnMarks(fabric, rowIndices) : [];
  const marking = {
    fabric,
    table: rows,
    layout: piece.layout,
    rows: rowIndices,
    inks,
    beside: labels.shapes,
    book,
  };
  if (marks.length > 0) shapes.push(marked('yarn', drawYarnMarks(marking, marks), null));
  if (labels.ringCount !== null) shapes.push(marked('ring', [labels.ringCount], null));

  const above = boundsOf(shapes, book.all());
  const bracket = bracketUnder(piece, options, above?.bottom ?? 0);
  const over = options.fold?.up ? rowFoldMark(fabric, placed.rows, options.fold.up, above?.left ?? 0) : [];
  shapes.push(
    marked('repeat', bracket, options.fold?.across ? 'across' : null),
    marked('repeat', over, 'up'),
  );
  const bounds = around(above, boundsOf([...bracket, ...over])) ?? { left: 0, top: 0, right: 0, bottom: 0 };
  const chartWidth = bounds.right - bounds.left;
  const drawn = rowIndices.map((row): [number, number] => [
    fabric.rows[row]?.first ?? 0,
    fabric.rows[row]?.end ?? 0,
  ]);
  const secondInk =
    piece.yarnInks.some((inks) => inks === null) && new Set(rowIndices.map((row) => pens[row]?.ink)).size > 1;
  const key = options.key
    ? chartKey(
        {
          fabric,
          rows,
          book,
          drawn,
          terms: options.terms,
          labels,
          bracket: bracket.length > 0,
          folded: { across: options.fold?.across != null, up: over.length > 0 },
          bareRing: placed.bareRing,
          broken: (crossed?.size ?? 0) > 0,
          yarnMarks: new Set(marks.map(({ does }) => does)),
          yarnInks: piece.yarnInks,
          secondInk,
        },
        chartWidth * KEY_MM.widerThanChart,
      )
    : null;
  const width = Math.max(chartWidth, key?.widthMm ?? 0);
  const chartHeight = bounds.bottom - bounds.top;
  const title = `${titled(options.title, names)}${options.leftHanded ? ', left-handed' : ''}`;
  return {
    widthMm: width + 2 * MARGIN_MM,
    heightMm: chartHeight + 2 * MARGIN_MM + (key === null ? 0 : KEY_MM.gap + key.heightMm),
    title: `Chart of ${title}`,
    alternative: alternativeText(fabric, rows, title, rowIndices, options.leftHanded),
    symbols: book.all(),
    shapes: [
      {
        kind: 'group',
        transform: [1, 0, 0, 1, MARGIN_MM + (width - chartWidth) / 2 - bounds.left, MARGIN_MM - bounds.top],
        shapes,
      },
      ...(key === null
        ? []
        : [
            {
              kind: 'group' as const,
              transform: [
                1,
                0,
                0,
                1,
                MARGIN_MM + (width - key.widthMm) / 2,
                MARGIN_MM + chartHeight + KEY_MM.gap,
              ] as const,
              data: { labels: 'key' },
              shapes: key.shapes,
            },
          ]),
    ],
  };
}

/** What stands beside the stitches; `fold` where it says that something is drawn once for many. */
function marked(labels: string, shapes: readonly Shape[], fold: string | null): Shape {
  const data = fold === null || shapes.length === 0 ? { labels } : { labels, fold };
  return { kind: 'group', transform: null, data, shapes };
}

function bracketUnder(
  { fabric, layout, parts }: PieceChart,
  { repeats, fold }: ChartOptions,
  bottomMm: number,
): Shape[] {
  const part = fabric.parts[parts[0] ?? 0];
  const repeat = fold?.across
    ? { ...fold.across, words: windowWords(fold.across) }
    : repeats?.find((each) => each.part === part?.name);
  if (part === undefined || repeat === undefined) return [];
  return repeatBracket(fabric, layout, repeat, bottomMm);
}

/** `Eelgrass Square: Square and Edging`; just the title where the pattern's one part needs no name. */
function titled(title: string, names: readonly string[]): string {
  const parts = names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
  if (title === '') return parts;
  return parts === '' || parts === title ? title : `${title}: ${parts}`;
}

function drawRow(
  { fabric, rows, layout, pens, yarnInks }: PieceChart,
  { book, crossed }: Pick<Drawing, 'book' | 'crossed'>,
  row: number,
): Shape {
  const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
  const drawing = { fabric, rows, layout, book, crossed };
  const shapes: Shape[] = [];
  for (let i = first; i < end; i += 1) {
    const { pen, ink } = penOf(fabric, pens, i);
    const yarn = yarnInks[fabric.yarn[i] ?? 0];
    shapes.push(drawStitch(drawing, i, { pen, ink: yarn?.[pen] ?? ink }));
  }
  return { kind: 'group', transform: null, data: { row: String(row) }, shapes };
}
