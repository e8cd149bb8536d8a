/** A placed stitch in, the shape it is drawn as out: every stitch one shape that carries its number. */

import { type Fabric, LOOP, targets } from '../fabric/fabric.ts';
import type { Ink, PathPart, Shape } from '../scene/scene.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { drawLens } from '../symbols/gathered.ts';
import { LOOP_MARKS } from '../symbols/loop-marks.ts';
import { FOOT_GAP_U, type Pen, penStroke } from '../symbols/stitch-symbol.ts';
import { SYMBOLS } from '../symbols/symbols.ts';
import { topBar } from '../symbols/tall-stitch.ts';
import { isCluster, isLong } from './columns.ts';
import type { Layout } from './layout.ts';
import { U_MM } from './metrics.ts';
import type { Between, SymbolBook } from './symbol-book.ts';

export interface Drawing {
  readonly fabric: Fabric;
  readonly rows: readonly StitchRow[];
  readonly layout: Layout;
  readonly book: SymbolBook;
}

export interface StitchPen {
  readonly pen: Pen;
  readonly ink: Ink;
}

export function drawStitch(drawing: Drawing, i: number, { pen, ink }: StitchPen): Shape {
  const { fabric, rows, book } = drawing;
  const row = rows[fabric.kind[i] ?? 0];
  if (row === undefined) throw new Error(`Stitch ${i} has no row in the stitch table.`);
  const symbol = SYMBOLS[row.symbol];
  const at = between(drawing, i);
  const data = { stitch: String(i) };
  const loop = loopMark(drawing, i);
  if (row.uses > 1 && !isCluster(fabric, rows, i)) return drawDecrease(drawing, i, row, { pen, ink });
  if (isLong(fabric, i)) return drawLongStitch(drawing, i, row, { pen, ink });
  const name = row.uses > 1 ? `${row.symbol}-${row.uses}-${pen}` : `${row.symbol}-${pen}`;
  const make =
    row.uses > 1 ? (u: number) => drawLens(symbol, row.uses, u, pen) : (u: number) => symbol.draw(u, pen);
  if (loop === null) return book.stretched(name, make, at, ink, data);
  const mark = book.use(`${loop}-loop-${pen}`, () => LOOP_MARKS[loop](pen), {
    x: at.footX,
    y: at.footY,
    upX: drawing.layout.upX[i] ?? 0,
    upY: drawing.layout.upY[i] ?? 1,
    ink,
  });
  return { kind: 'group', transform: null, data, shapes: [book.stretched(name, make, at, ink), mark] };
}

/** The loop as seen from the right side: what is worked in the front loop of a wrong-side row is the back one. */
export function loopMark({ fabric }: { readonly fabric: Fabric }, i: number): 'front' | 'back' | null {
  const loop = fabric.loop[i];
  if (loop === undefined || loop === LOOP.both) return null;
  const wrongSide = fabric.rows[fabric.row[i] ?? 0]?.side === 'WS';
  return (loop === LOOP.front) === wrongSide ? 'back' : 'front';
}

function between({ layout }: Drawing, i: number): Between {
  return {
    footX: layout.footX[i] ?? 0,
    footY: layout.footY[i] ?? 0,
    headX: layout.headX[i] ?? 0,
    headY: layout.headY[i] ?? 0,
  };
}

/** Legs apart at the foot, met at the head under one bar. */
function drawDecrease(drawing: Drawing, i: number, row: StitchRow, { pen, ink }: StitchPen): Shape {
  const { fabric, layout, book } = drawing;
  const symbol = SYMBOLS[row.symbol];
  const { headX, headY } = between(drawing, i);
  const legs = Array.from(targets(fabric, i), (target) => {
    const leg = { footX: layout.anchorX[target] ?? 0, footY: layout.anchorY[target] ?? 0, headX, headY };
    return book.stretched(`${row.symbol}-leg-${pen}`, (u) => symbol.leg(u, null, pen), leg, ink);
  });
  if (!symbol.barred) return { kind: 'group', transform: null, data: { stitch: String(i) }, shapes: legs };
  const bar = book.use(`bar-${pen}`, () => [topBar(0, pen)], {
    x: headX,
    y: headY,
    upX: layout.upX[i] ?? 0,
    upY: layout.upY[i] ?? 1,
    ink,
  });
  return { kind: 'group', transform: null, data: { stitch: String(i) }, shapes: [...legs, bar] };
}

/** How far beside the column the stem of a long stitch runs down. */
const LONG_ASIDE_U = 0.48;

/** The stitch itself at the height of its row, its stem carried down beside what was worked between. */
function drawLongStitch(drawing: Drawing, i: number, row: StitchRow, { pen, ink }: StitchPen): Shape {
  const { layout, book } = drawing;
  const symbol = SYMBOLS[row.symbol];
  const { footX, footY, headX, headY } = between(drawing, i);
  const upX = layout.upX[i] ?? 0;
  const upY = layout.upY[i] ?? 1;
  const standX = headX - upX * symbol.heightU;
  const standY = headY - upY * symbol.heightU;
  const stand = { footX: standX, footY: standY, headX, headY };
  const down = Math.hypot(standX - footX, standY - footY);
  // The stem runs down in one bow, clear of what was worked between; a cubic goes three quarters of the way to its controls.
  const out = LONG_ASIDE_U / 0.75;
  const turn = down * 0.22;
  const parts: PathPart[] = [
    ['M', ...onPaper(standX + upX * FOOT_GAP_U, standY + upY * FOOT_GAP_U)],
    [
      'C',
      ...onPaper(standX + upY * out - upX * turn, standY - upX * out - upY * turn),
      ...onPaper(footX + upY * out + upX * turn, footY - upX * out + upY * turn),
      ...onPaper(footX + upX * 0.08, footY + upY * 0.08),
    ],
  ];
  const stroke = { ...penStroke(pen), ink, widthMm: penStroke(pen).widthMm * U_MM };
  return {
    kind: 'group',
    transform: null,
    data: { stitch: String(i) },
    shapes: [
      { kind: 'path', parts, stroke, fill: 'none' },
      book.stretched(`${row.symbol}-${pen}`, (u) => symbol.draw(u, pen), stand, ink),
    ],
  };
}

function onPaper(x: number, y: number): [number, number] {
  return [x * U_MM, -y * U_MM];
}
