/** The drawing of a chart symbol in, what it is made of in words out. */

import type { Shape } from '../../src/scene/scene.ts';

/** A line without a break: straight from end to end, or through curves; legs as they are before they lean. */
interface Pull {
  points: (readonly [number, number])[];
  /** How high the first control of its first curve lies. */
  pullY: number | null;
  readonly solid: boolean;
}

export function madeOf(shapes: readonly Shape[]): string {
  const pulls = pullsOf(shapes);
  const top = Math.min(...pulls.flatMap(({ points }) => points.map(([, y]) => y)));
  const named = pulls.map((pull) => nameOf(pull, pulls, top));
  return ORDER.flatMap(([one, many]) => {
    const count = named.filter((name) => name === one).length;
    return count === 0 ? [] : [count === 1 ? one.replace(/^slash$/, '1 slash') : many(count, named)];
  }).join(', ');
}

type Name =
  | 'stem'
  | 'bowed stem'
  | 'stroke across it'
  | 'long stroke aslant'
  | 'bar on top'
  | 'bar'
  | 'slash'
  | 'short arc'
  | 'open oval'
  | 'solid oval'
  | 'wave'
  | 'loop'
  | 'spiral'
  | 'hump'
  | 'cup'
  | 'hook open to the right'
  | 'hook open to the left';

const plural =
  (words: string) =>
  (count: number): string =>
    `${count} ${words}`;

const ORDER: readonly (readonly [Name, (count: number, all: readonly Name[]) => string])[] = [
  ['stem', plural('stems')],
  ['bowed stem', plural('bowed stems')],
  ['stroke across it', (count, all) => `${count} strokes across${all.includes('bowed stem') ? '' : ' it'}`],
  ['long stroke aslant', plural('long strokes aslant')],
  ['bar on top', plural('bars on top')],
  ['bar', plural('bars')],
  ['slash', plural('slashes')],
  ['short arc', plural('short arcs')],
  ['open oval', plural('open ovals')],
  ['solid oval', plural('solid ovals')],
  ['wave', plural('waves')],
  ['loop', plural('loops')],
  ['spiral', plural('spirals')],
  ['hump', plural('humps')],
  ['cup', plural('cups')],
  ['hook open to the right', plural('hooks')],
  ['hook open to the left', plural('hooks')],
];

const SLASH_AT_MOST_U = 0.55;
const NEAR = 1e-6;

function nameOf({ points, pullY, solid }: Pull, all: readonly Pull[], top: number): Name {
  const [x0, y0] = points[0] ?? [0, 0];
  const [x1, y1] = points.at(-1) ?? [0, 0];
  const wide = Math.max(...points.map(([x]) => x)) - Math.min(...points.map(([x]) => x));
  const high = Math.max(...points.map(([, y]) => y)) - Math.min(...points.map(([, y]) => y));
  if (solid) return 'solid oval';
  if (pullY === null) {
    if (Math.abs(y0 - y1) < NEAR) {
      if (all.length === 1) return 'bar';
      return Math.abs(y0 - top) < NEAR ? 'bar on top' : 'stroke across it';
    }
    if (Math.abs(x0 - x1) < NEAR) return 'stem';
    return Math.hypot(wide, high) <= SLASH_AT_MOST_U ? 'slash' : 'long stroke aslant';
  }
  if (points.length > 12) return 'spiral';
  if (Math.hypot(x1 - x0, y1 - y0) < NEAR) return points.length > 3 ? 'open oval' : 'loop';
  if (Math.abs(y0 - y1) < NEAR) {
    if (points.length > 2) return 'wave';
    if (all.length > 1) return 'short arc';
    return pullY < y0 ? 'hump' : 'cup';
  }
  if (points.length === 2) return 'bowed stem';
  return x1 > 0 ? 'hook open to the right' : 'hook open to the left';
}

function pullsOf(shapes: readonly Shape[]): Pull[] {
  return shapes.flatMap((shape): Pull[] => {
    if (shape.kind === 'group') return pullsOf(shape.shapes);
    if (shape.kind !== 'path') throw new Error(`a ${shape.kind} in a symbol`);
    const pulls: Pull[] = [];
    for (const part of shape.parts) {
      const last = pulls.at(-1);
      if (part[0] === 'M')
        pulls.push({ points: [[part[1], part[2]]], pullY: null, solid: shape.fill !== 'none' });
      else if (part[0] === 'L') last?.points.push([part[1], part[2]]);
      else if (part[0] === 'C') {
        if (last) last.pullY ??= part[2];
        last?.points.push([part[5], part[6]]);
      }
    }
    return pulls;
  });
}
