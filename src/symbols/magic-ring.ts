/** The magic ring: a loop of yarn that winds once round and a little over, drawn round the origin. */

import type { PathPart, Shape } from '../scene/scene.ts';
import { drawn, type Pen, type StitchSymbol } from './stitch-symbol.ts';

export const MAGIC_RING_RADIUS_U = 0.42;
const INNER_RADIUS_U = 0.24;
/** Turns of the spiral: a full one and a bit, so the overlap shows. */
const TURNS = 1.45;
const STEPS_A_TURN = 12;

const spiral = (pen: Pen): Shape[] => {
  const steps = Math.round(TURNS * STEPS_A_TURN);
  const stepAngle = (2 * Math.PI) / STEPS_A_TURN;
  const point = (k: number): [number, number] => {
    const r = INNER_RADIUS_U + ((MAGIC_RING_RADIUS_U - INNER_RADIUS_U) * k) / steps;
    return [r * Math.cos(k * stepAngle), -r * Math.sin(k * stepAngle)];
  };
  const along = (k: number): [number, number] => {
    const [x, y] = point(k);
    // A cubic over a small angle: controls a third of the arc along the tangent.
    return [y * (stepAngle / 3), -x * (stepAngle / 3)];
  };
  const parts: PathPart[] = [['M', ...point(0)]];
  for (let k = 0; k < steps; k += 1) {
    const [x0, y0] = point(k);
    const [x1, y1] = point(k + 1);
    const [dx0, dy0] = along(k);
    const [dx1, dy1] = along(k + 1);
    parts.push(['C', x0 + dx0, y0 + dy0, x1 - dx1, y1 - dy1, x1, y1]);
  }
  return [drawn(parts, pen)];
};

export const magicRing: StitchSymbol = {
  heightU: 0,
  widthU: 2 * MAGIC_RING_RADIUS_U,
  draw: (_lengthU, pen) => spiral(pen),
  leg: (_lengthU, _bulgeU, pen) => spiral(pen),
  barred: false,
};
