/** The picots and slip-stitch dots of a row in, placed on the stitches they belong to out. */

import { targets } from '../fabric/fabric.ts';
import type { ChartContext } from './context.ts';
import type { RowElement } from './elements.ts';
import { anchorOf, type Layout, type Point, place } from './layout.ts';
import { PITCH_U } from './metrics.ts';
import type { Track } from './track.ts';

/** A loop of chains on the head of the stitch before it, closed by a dot at its foot. */
export function placePicots(context: ChartContext, elements: readonly RowElement[]): void {
  const { layout, fabric } = context;
  for (const element of elements) {
    if (element.kind !== 'picot') continue;
    const chains = element.end - element.first;
    const closing = element.end;
    const held = Math.min(element.first, targets(fabric, closing)[0] ?? element.first);
    const stitch = held === element.first ? element.first - 1 : held;
    const foot = anchorOf(layout, stitch);
    const upX = layout.upX[stitch] ?? 0;
    const upY = layout.upY[stitch] ?? 1;
    const radius = Math.max(0.3, (chains * PITCH_U.ring) / (2 * Math.PI));
    const lift = 0.2;
    const centreX = foot.x + upX * (radius + lift);
    const centreY = foot.y + upY * (radius + lift);
    const at = (t: number): { x: number; y: number; upX: number; upY: number } => {
      // From the foot round to the foot again.
      const angle = Math.atan2(-upY, -upX) - (0.04 + 0.92 * t) * 2 * Math.PI;
      return {
        x: centreX + radius * Math.cos(angle),
        y: centreY + radius * Math.sin(angle),
        upX: Math.cos(angle),
        upY: Math.sin(angle),
      };
    };
    for (let k = 0; k < chains; k += 1) {
      const start = at(k / chains);
      const stop = at((k + 1) / chains);
      const middle = at((k + 0.5) / chains);
      place(layout, element.first + k, {
        footX: start.x,
        footY: start.y,
        headX: stop.x,
        headY: stop.y,
        anchorX: middle.x + middle.upX * 0.19,
        anchorY: middle.y + middle.upY * 0.19,
        upX: middle.upX,
        upY: middle.upY,
      });
    }
    placeDot(layout, closing, foot, { x: upX, y: upY }, 0);
  }
}

/** How far before the stitch it joins to a joining dot stands, and how far above the stitch it moves along. */
const JOIN_BACK_U = 0.4;

export function placeDots(
  context: ChartContext,
  elements: readonly RowElement[],
  way: 1 | -1,
  track: Track,
): void {
  const { fabric, layout } = context;
  for (const element of elements) {
    if (element.kind !== 'dot') continue;
    const into = targets(fabric, element.stitch);
    let x = 0;
    let y = 0;
    for (const target of into) {
      x += (layout.anchorX[target] ?? 0) / into.length;
      y += (layout.anchorY[target] ?? 0) / into.length;
    }
    const nearest = into[Math.floor(into.length / 2)] ?? 0;
    const up = { x: layout.upX[nearest] ?? 0, y: layout.upY[nearest] ?? 1 };
    const isJoin = fabric.row[nearest] === fabric.row[element.stitch];
    // On the side the round comes back from: clockwise of its start where work goes anticlockwise.
    const back = isJoin && track.around(1) !== Number.POSITIVE_INFINITY ? JOIN_BACK_U * way : 0;
    placeDot(layout, element.stitch, { x: x + up.y * back, y: y - up.x * back }, up, isJoin ? -0.18 : 0);
    // What is worked after it goes on from the stitch it joins to.
    layout.anchorX[element.stitch] = x;
    layout.anchorY[element.stitch] = y;
  }
}

function placeDot(layout: Layout, i: number, at: Point, up: Point, lift: number): void {
  const foot = { x: at.x + up.x * lift, y: at.y + up.y * lift };
  place(layout, i, {
    footX: foot.x,
    footY: foot.y,
    headX: foot.x + up.x * 0.36,
    headY: foot.y + up.y * 0.36,
    upX: up.x,
    upY: up.y,
    anchorX: at.x,
    anchorY: at.y,
  });
}
