/** A stitch in, the place it is worked into out: one point for all that share a stitch, points apart for a space. */

import { type Fabric, FLAG, INTO, NONE, targets } from '../fabric/fabric.ts';
import { type ChartContext, widest } from './context.ts';
import { anchorOf, type Layout, type Point } from './layout.ts';

export interface Footing {
  /** Middle of all it is worked into: what its place in the row is reckoned from. */
  readonly middle: Point;
  /** Where its foot is drawn. */
  readonly foot: Point;
  /** What stitches in the same place share; -1 for decreases over several. */
  readonly place: number;
  /** Side of the piece it lies along, where that is said; see `roundTrack`. */
  readonly side: number | null;
  /** Into the ring in the middle: its foot lies on the way to its head. */
  readonly inRing: boolean;
  /** Under an arch of chains. */
  readonly inSpace: boolean;
}

/** Sides of a flat piece, anticlockwise from the top. */
export const SIDE = { top: 0, left: 1, bottom: 2, right: 3 } as const;

/** How much of an arch the feet within it take up: this much a stitch, and this much at most. */
const FEET_APART = 0.13;
const FEET_WIDEST = 0.8;
/** How many feet further chains at the start of a row are from the next; and how near the end of the arch at most. */
const POST_ASIDE = 1.5;
const OUTERMOST = 0.49;

/** Footings of the stitches of one row, in order; null for what is worked into nothing. */
export function footings(context: ChartContext, stitches: readonly number[]): (Footing | null)[] {
  const { fabric } = context;
  const sharing = new Map<number, Sharing>();
  for (const i of stitches) {
    const key = placeKey(fabric, i);
    const before = sharing.get(key);
    sharing.set(key, {
      count: (before?.count ?? 0) + 1,
      led: before?.led ?? ledBy(fabric, i),
    });
  }
  const seen = new Map<number, number>();
  return stitches.map((i) => {
    const key = placeKey(fabric, i);
    const rank = seen.get(key) ?? 0;
    seen.set(key, rank + 1);
    return footing(context, i, rank, sharing.get(key) ?? ALONE);
  });
}

/** How many are worked in the same place, and what the first of them is: a stitch made of chains, or chains that are none. */
interface Sharing {
  readonly count: number;
  readonly led: 'stitch' | 'chains' | null;
}

const ALONE: Sharing = { count: 1, led: null };

/** One number for each stitch, space or row end worked into. */
function placeKey(fabric: Fabric, i: number): number {
  const first = targets(fabric, i)[0];
  return first === undefined ? -1 : first * 8 + (fabric.where[i] ?? 0);
}

function footing(context: ChartContext, i: number, rank: number, sharing: Sharing): Footing | null {
  const { fabric, layout } = context;
  const into = targets(fabric, i);
  const target = into[0];
  const where = fabric.where[i];
  const magicRing = target === undefined && where === INTO.ring;
  const inFirstChain = target !== undefined && target === context.centreChain;
  if (magicRing || inFirstChain || where === INTO.ring) {
    return {
      middle: { x: 0, y: 0 },
      foot: { x: 0, y: 0 },
      place: 0,
      side: null,
      inRing: true,
      inSpace: false,
    };
  }
  // What goes into a stitch of its own row stands beside that.
  if (target === undefined || where === INTO.stem) return null;
  const middle = meanAnchor(layout, into);
  const place = placeKey(fabric, i);
  const plain = { middle, foot: middle, place, side: null, inRing: false, inSpace: false };
  switch (where) {
    case INTO.space:
      return { ...plain, foot: footInArch(context, i, into, rank, sharing), inSpace: true };
    case INTO.rowEnd:
      return { ...plain, ...rowEndFooting(context, target, rank, sharing.count) };
    case INTO.between:
      return { ...plain, ...betweenFooting(context, target) };
    case INTO.underside: {
      const foot = under(layout, target);
      return { ...plain, middle: foot, foot, side: context.underside };
    }
    default:
      return into.length > 1 ? { ...plain, place: -1 } : plain;
  }
}

function meanAnchor(layout: Layout, into: Uint32Array): Point {
  let x = 0;
  let y = 0;
  for (const target of into) {
    x += layout.anchorX[target] ?? 0;
    y += layout.anchorY[target] ?? 0;
  }
  return { x: x / into.length, y: y / into.length };
}

/** Feet in a space stand apart, within its arch of chains, in the order they are worked. */
function footInArch(
  context: ChartContext,
  i: number,
  into: Uint32Array,
  rank: number,
  { count, led }: Sharing,
): Point {
  const { fabric, layout } = context;
  // Chains that are no stitch stand before those that are, which have their feet as anywhere else.
  const sharing = led === 'chains' ? count - 1 : count;
  // The ovals of a stitch made of chains are wider than a stem and stand that much further off.
  const nth =
    led === 'chains' ? rank - 1 : led === null ? rank : rank === 0 ? -POST_ASIDE : rank + POST_ASIDE / 3;
  const spread =
    sharing === 1
      ? 0
      : Math.max(-OUTERMOST, Math.min(FEET_WIDEST, FEET_APART * sharing) * (nth / (sharing - 1) - 0.5));
  const first = into[0] ?? 0;
  const ownWay = fabric.rows[fabric.row[i] ?? 0]?.direction;
  const archWay = fabric.rows[fabric.row[first] ?? 0]?.direction;
  const along = 0.5 + (ownWay === archWay ? spread : -spread);
  const at = along * into.length;
  const k = Math.min(into.length - 1, Math.floor(at));
  const chain = into[k] ?? first;
  const t = at - k - 0.5;
  const anchor = anchorOf(layout, chain);
  return {
    x: anchor.x + ((layout.headX[chain] ?? 0) - (layout.footX[chain] ?? 0)) * t,
    y: anchor.y + ((layout.headY[chain] ?? 0) - (layout.footY[chain] ?? 0)) * t,
  };
}

/** How far under the heads on both sides of a gap a foot in it reaches. */
const BETWEEN_DOWN_U = 0.3;

/** In the gap between a stitch and the one worked before it. */
function betweenFooting({ fabric, layout }: ChartContext, target: number): { middle: Point; foot: Point } {
  const here = anchorOf(layout, target);
  const before = stitchBefore(fabric, target);
  const there = before < 0 ? here : anchorOf(layout, before);
  const middle = { x: (here.x + there.x) / 2, y: (here.y + there.y) / 2 };
  const down = {
    x: (layout.upX[target] ?? 0) * BETWEEN_DOWN_U,
    y: (layout.upY[target] ?? 1) * BETWEEN_DOWN_U,
  };
  return { middle, foot: { x: middle.x - down.x, y: middle.y - down.y } };
}

/** Before the first of a round comes its last; -1 where nothing does. */
function stitchBefore(fabric: Fabric, i: number): number {
  const { first = 0, end = 0, closing = 'flat' } = fabric.rows[fabric.row[i] ?? 0] ?? {};
  const counted = (k: number): boolean => (fabric.countsAs[k] ?? NONE) !== NONE;
  for (let k = i - 1; k >= first; k -= 1) if (counted(k)) return k;
  if (closing === 'flat') return -1;
  for (let k = end - 1; k > i; k -= 1) if (counted(k)) return k;
  return -1;
}

/** Beyond what stands outermost in the row, by this much. */
const ROW_END_OUT_U = 0.34;

function rowEndFooting(
  context: ChartContext,
  target: number,
  rank: number,
  sharing: number,
): { middle: Point; foot: Point; side: number } {
  const { fabric, layout } = context;
  const row = fabric.row[target] ?? 0;
  // Turning chains stand out at every other row: the edge runs along the outermost of its neighbours.
  const reach = widest([row - 1, row, row + 1].flatMap((near) => context.reach.get(near) ?? []));
  const x = ((layout.footX[target] ?? 0) + (layout.headX[target] ?? 0)) / 2;
  const isRight = x >= (reach.left + reach.right) / 2;
  // A turning chain is one edge from its first chain to its last.
  let first = target;
  let last = target;
  while (
    isUpright(fabric, first) &&
    isUpright(fabric, first - 1) &&
    fabric.row[first - 1] === fabric.row[target]
  )
    first -= 1;
  while (
    isUpright(fabric, last) &&
    isUpright(fabric, last + 1) &&
    fabric.row[last + 1] === fabric.row[target]
  )
    last += 1;
  const low = Math.min(layout.footY[first] ?? 0, layout.headY[last] ?? 0);
  const high = Math.max(layout.footY[first] ?? 0, layout.headY[last] ?? 0);
  // Going anticlockwise the right side is worked upwards and the left side downwards.
  const share = (rank + 0.5) / sharing;
  const y = isRight ? low + (high - low) * share : high - (high - low) * share;
  const foot = { x: isRight ? reach.right + ROW_END_OUT_U : reach.left - ROW_END_OUT_U, y };
  return { middle: foot, foot, side: isRight ? SIDE.right : SIDE.left };
}

function ledBy(fabric: Fabric, first: number): Sharing['led'] {
  if (!isUpright(fabric, first)) return null;
  for (let i = first; isUpright(fabric, i); i += 1) if (fabric.countsAs[i] !== NONE) return 'stitch';
  return 'chains';
}

function isUpright(fabric: Fabric, i: number): boolean {
  return i >= 0 && i < fabric.count && ((fabric.flags[i] ?? 0) & FLAG.turningChain) !== 0;
}

function under(layout: Layout, chain: number): Point {
  const x = ((layout.footX[chain] ?? 0) + (layout.headX[chain] ?? 0)) / 2;
  const y = ((layout.footY[chain] ?? 0) + (layout.headY[chain] ?? 0)) / 2;
  return { x: 2 * x - (layout.anchorX[chain] ?? 0), y: 2 * y - (layout.anchorY[chain] ?? 0) };
}
