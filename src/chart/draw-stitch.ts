/** A placed stitch in, the shape it is drawn as out: every stitch one shape that carries its number. */

import { targets } from '../fabric/fabric.ts';
import type { PathPart, Shape } from '../scene/scene.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { crossedStem } from '../symbols/crossed-stem.ts';
import { HOOK_FROM_U } from '../symbols/post-hook.ts';
import { FOOT_GAP_U, penStroke } from '../symbols/stitch-symbol.ts';
import { topBar } from '../symbols/tall-stitch.ts';
import { isLong } from './columns.ts';
import type { Drawing, StitchPen } from './drawing.ts';
import { footMarks, postFace } from './foot-marks.ts';
import { U_MM } from './metrics.ts';
import { legsInOnePlace, ownChainU, type StitchForm, stitchForm } from './stitch-form.ts';
import type { Between, SymbolBook } from './symbol-book.ts';

export function drawStitch(drawing: Drawing, i: number, pen: StitchPen): Shape {
  const { fabric, rows } = drawing;
  const row = rows[fabric.kind[i] ?? 0];
  if (row === undefined) throw new Error(`Stitch ${i} has no row in the stitch table.`);
  const shapes = [...bodyOf(drawing, i, row, pen), ...footMarks(drawing, i, pen)];
  const data = { stitch: String(i) };
  const [only, ...more] = shapes;
  if (only?.kind === 'use' && more.length === 0) return { ...only, data };
  return { kind: 'group', transform: null, data, shapes };
}

function bodyOf(drawing: Drawing, i: number, row: StitchRow, { pen, ink }: StitchPen): Shape[] {
  const { fabric, rows, layout, book } = drawing;
  const legs = legsInOnePlace(fabric, rows, i);
  if (row.uses > 1 && legs === 0) return decrease(drawing, i, row, { pen, ink });
  const form = stitchForm(row, legs, book.set.symbols);
  if (isLong(fabric, i)) return longStitch(drawing, i, form, { pen, ink });
  const at = between(drawing, i);
  const lift = ownChainU(row);
  const lifted = {
    ...at,
    footX: at.footX + (layout.upX[i] ?? 0) * lift,
    footY: at.footY + (layout.upY[i] ?? 1) * lift,
  };
  const crossed = drawing.crossed?.get(i);
  if (crossed !== undefined) return [crossedStitch(book, form, crossed, lifted, { pen, ink })];
  return [book.stretched(`${form.name}-${pen}`, (u) => form.draw(u, pen), lifted, ink)];
}

/** Shares of a length are drawn to a fortieth, so that few drawings serve a whole chart. */
const SHARE_STEPS = 40;

/** With its stem broken at these shares of its length, and its slashes clear of where stems cross. */
export function crossedStitch(
  book: SymbolBook,
  form: Pick<StitchForm, 'name' | 'draw'>,
  shares: readonly number[],
  at: Between,
  { pen, ink }: StitchPen,
): Shape {
  const steps = shares.map((share) => Math.round(share * SHARE_STEPS));
  const draw = (u: number): Shape[] =>
    crossedStem(
      form.draw(u, pen),
      u,
      steps.map((step) => (step / SHARE_STEPS) * u),
    );
  return book.stretched(`${form.name}-${pen}-crossed-${steps.join('-')}`, draw, at, ink);
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
function decrease(drawing: Drawing, i: number, row: StitchRow, { pen, ink }: StitchPen): Shape[] {
  const { fabric, layout, book } = drawing;
  const symbol = book.set.symbols[row.symbol];
  const { headX, headY } = between(drawing, i);
  const legs = Array.from(targets(fabric, i), (target) => {
    const leg = { footX: layout.anchorX[target] ?? 0, footY: layout.anchorY[target] ?? 0, headX, headY };
    return book.stretched(`${row.symbol}-leg-${pen}`, (u) => symbol.leg(u, null, pen), leg, ink);
  });
  if (!symbol.barred) return legs;
  const bar = book.use(`bar-${pen}`, () => [topBar(0, pen)], {
    x: headX,
    y: headY,
    upX: layout.upX[i] ?? 0,
    upY: layout.upY[i] ?? 1,
    ink,
  });
  return [...legs, bar];
}

/** How far beside the column the stem of a long stitch runs down. */
const LONG_ASIDE_U = 0.48;

/** The stitch itself at the height of its row, its stem carried down beside what was worked between. */
function longStitch(drawing: Drawing, i: number, form: StitchForm, { pen, ink }: StitchPen): Shape[] {
  const { layout, book } = drawing;
  const { footX, footY, headX, headY } = between(drawing, i);
  const upX = layout.upX[i] ?? 0;
  const upY = layout.upY[i] ?? 1;
  const standX = headX - upX * form.heightU;
  const standY = headY - upY * form.heightU;
  const stand = { footX: standX, footY: standY, headX, headY };
  const down = Math.hypot(standX - footX, standY - footY);
  // The stem runs down in one bow, clear of what was worked between; a cubic goes three quarters of the way to its controls.
  const out = LONG_ASIDE_U / 0.75;
  const turn = down * 0.22;
  const air = postFace(drawing, i) === null ? 0.08 : HOOK_FROM_U;
  const parts: PathPart[] = [
    ['M', ...onPaper(standX + upX * FOOT_GAP_U, standY + upY * FOOT_GAP_U)],
    [
      'C',
      ...onPaper(standX + upY * out - upX * turn, standY - upX * out - upY * turn),
      ...onPaper(footX + upY * out + upX * turn, footY - upX * out + upY * turn),
      ...onPaper(footX + upX * air, footY + upY * air),
    ],
  ];
  const stroke = { ...penStroke(pen), ink, widthMm: penStroke(pen).widthMm * U_MM };
  return [
    { kind: 'path', parts, stroke, fill: 'none' },
    book.stretched(`${form.name}-${pen}`, (u) => form.draw(u, pen), stand, ink),
  ];
}

function onPaper(x: number, y: number): [number, number] {
  return [x * U_MM, -y * U_MM];
}
