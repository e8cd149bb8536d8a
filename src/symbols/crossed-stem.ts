/** A symbol's drawing in, the same as it is drawn where stems cross out: the one behind broken, the slashes clear of it. */

import type { PathPart, Shape } from '../scene/scene.ts';

/** White on each side of where the other stem passes. */
const GAP_U = 0.25;
/** How far up the slashes move, as a share of what is above them. */
const RAISED = 0.4;
/** What of their length is left, lest those of the two stems meet. */
const SHORTENED = 0.7;

/** Heights above the foot at which others pass before the stem: none where it lies before them itself. */
export function crossedStem(shapes: readonly Shape[], lengthU: number, heightsU: readonly number[]): Shape[] {
  const low = heightsU.toSorted((a, b) => a - b);
  return shapes.map((shape) =>
    shape.kind === 'path' ? { ...shape, parts: crossedParts(shape.parts, lengthU, low) } : shape,
  );
}

function crossedParts(parts: readonly PathPart[], lengthU: number, heightsU: readonly number[]): PathPart[] {
  const raise = slashRise(parts, lengthU);
  const drawn: PathPart[] = [];
  for (let k = 0; k < parts.length; k += 1) {
    const [from, to] = [parts[k], parts[k + 1]];
    if (from === undefined) break;
    if (from[0] !== 'M' || to?.[0] !== 'L') {
      drawn.push(from);
      continue;
    }
    if (isStem(from, to)) drawn.push(...brokenLine(-from[2], -to[2], heightsU));
    else if (isSlash(from, to)) drawn.push(...raised(from, to, raise));
    else drawn.push(from, to);
    k += 1;
  }
  return drawn;
}

type Point = Extract<PathPart, readonly ['M' | 'L', number, number]>;

/** Straight up over the foot. */
function isStem(from: Point, to: Point): boolean {
  return from[1] === 0 && to[1] === 0;
}

/** Aslant and across the stem. */
function isSlash(from: Point, to: Point): boolean {
  return from[1] !== 0 && from[1] === -to[1] && from[2] !== to[2];
}

function raised(from: Point, to: Point, raise: number): PathPart[] {
  const middle = (from[2] + to[2]) / 2;
  const at = ([, x, y]: Point): [number, number] => [
    x * SHORTENED,
    middle + (y - middle) * SHORTENED - raise,
  ];
  return [
    ['M', ...at(from)],
    ['L', ...at(to)],
  ];
}

function slashRise(parts: readonly PathPart[], lengthU: number): number {
  let top = 0;
  parts.forEach((to, k) => {
    const from = parts[k - 1];
    if (from?.[0] === 'M' && to[0] === 'L' && isSlash(from, to)) top = Math.max(top, -from[2], -to[2]);
  });
  return top === 0 ? 0 : (lengthU - top) * RAISED;
}

function brokenLine(low: number, high: number, heightsU: readonly number[]): PathPart[] {
  const drawn: PathPart[] = [['M', 0, -low]];
  for (const height of heightsU)
    if (height > low && height < high)
      drawn.push(['L', 0, -Math.max(low, height - GAP_U)], ['M', 0, -Math.min(high, height + GAP_U)]);
  return [...drawn, ['L', 0, -high]];
}
