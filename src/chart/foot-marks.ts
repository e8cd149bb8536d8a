/** A placed stitch in, what is drawn at its foot besides its symbol out: loop arcs, post hooks, its own chain. */

import { type Fabric, INTO, LOOP, targets } from '../fabric/fabric.ts';
import type { Shape } from '../scene/scene.ts';
import { OWN_CHAIN_HEIGHT_U, OWN_CHAIN_LENGTH_U } from '../symbols/own-chain.ts';
import { POST_HOOKS } from '../symbols/post-hook.ts';
import { SYMBOLS } from '../symbols/symbols.ts';
import type { Drawing, StitchPen } from './drawing.ts';
import type { Point } from './layout.ts';
import { ownChainU } from './stitch-form.ts';
import type { SymbolBook } from './symbol-book.ts';

export function footMarks(drawing: Drawing, i: number, pen: StitchPen): Shape[] {
  return [...loopArc(drawing, i, pen), ...postHooks(drawing, i, pen), ...ownChain(drawing, i, pen)];
}

type Marked = Pick<Drawing, 'fabric' | 'rows'>;

/** The loop as seen from the right side: what is worked in the front loop of a wrong-side row is the back one. */
export function loopMark({ fabric }: { readonly fabric: Fabric }, i: number): 'front' | 'back' | null {
  const loop = fabric.loop[i];
  // The third loop lies behind the top: no mark is known for it.
  if (loop === undefined || loop === LOOP.both || loop === LOOP.third) return null;
  return fromRightSide(fabric, i, loop === LOOP.front ? 'front' : 'back');
}

/** The face of the post that is wrapped, as seen from the right side; null for what goes round none. */
export function postFace({ fabric, rows }: Marked, i: number): 'front' | 'back' | null {
  if (fabric.where[i] !== INTO.post) return null;
  const { enters } = rows[fabric.kind[i] ?? 0] ?? {};
  return fromRightSide(fabric, i, enters === 'back post' ? 'back' : 'front');
}

function fromRightSide(fabric: Fabric, i: number, face: 'front' | 'back'): 'front' | 'back' {
  const wrongSide = fabric.rows[fabric.row[i] ?? 0]?.side === 'WS';
  return (face === 'front') === wrongSide ? 'back' : 'front';
}

function loopArc(drawing: Drawing, i: number, { pen, ink }: StitchPen): Shape[] {
  const { layout, book } = drawing;
  const loop = loopMark(drawing, i);
  // Legs of a decrease have feet of their own.
  if (loop === null || targets(drawing.fabric, i).length > 1) return [];
  const at = { x: layout.footX[i] ?? 0, y: layout.footY[i] ?? 0 };
  const up = { upX: layout.upX[i] ?? 0, upY: layout.upY[i] ?? 1 };
  return [book.use(`${loop}-loop-${pen}`, () => book.set.loopMarks[loop](pen), { ...at, ...up, ink })];
}

/** One for each leg, at the head of what it goes round and turned as that stands. */
function postHooks(drawing: Drawing, i: number, { pen, ink }: StitchPen): Shape[] {
  const { fabric, layout, book } = drawing;
  const face = postFace(drawing, i);
  if (face === null) return [];
  return [...new Set(targets(fabric, i))].map((target) => {
    const x = layout.anchorX[target] ?? 0;
    const y = layout.anchorY[target] ?? 0;
    const alongX = x - (layout.footX[target] ?? 0);
    const alongY = y - (layout.footY[target] ?? 0);
    const length = Math.hypot(alongX, alongY);
    const up = length > 0 ? { upX: alongX / length, upY: alongY / length } : { upX: 0, upY: 1 };
    return book.use(`${face}-post-${pen}`, () => POST_HOOKS[face](pen), { x, y, ...up, ink });
  });
}

function ownChain({ fabric, rows, layout, book }: Drawing, i: number, pen: StitchPen): Shape[] {
  const row = rows[fabric.kind[i] ?? 0];
  if (ownChainU(row) === 0) return [];
  const foot = { x: layout.footX[i] ?? 0, y: layout.footY[i] ?? 0 };
  return [ownChainAt(book, foot, { x: layout.upX[i] ?? 0, y: layout.upY[i] ?? 1 }, pen)];
}

/** Lying across the way the stitch stands, its lower side at the foot. */
export function ownChainAt(book: SymbolBook, foot: Point, up: Point, { pen, ink }: StitchPen): Shape {
  const x = foot.x + (up.x * OWN_CHAIN_HEIGHT_U) / 2;
  const y = foot.y + (up.y * OWN_CHAIN_HEIGHT_U) / 2;
  const half = OWN_CHAIN_LENGTH_U / 2;
  const lying = {
    footX: x + up.y * half,
    footY: y - up.x * half,
    headX: x - up.y * half,
    headY: y + up.x * half,
  };
  return book.stretched(`chain-${pen}`, (u) => SYMBOLS.chain.draw(u, pen), lying, ink);
}
