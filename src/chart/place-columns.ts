/** A column and where it stands in; its stitch, its upright chains or its laid chain placed out. */

import { INTO, targets } from '../fabric/fabric.ts';
import { CHAIN_THICKNESS_U } from '../symbols/chain.ts';
import { FOOT_GAP_U } from '../symbols/stitch-symbol.ts';
import type { Column } from './columns.ts';
import type { ChartContext } from './context.ts';
import { footOf, headOf, type Layout, type Point, place } from './layout.ts';
import { enteredShare } from './stitch-form.ts';
import type { Track, TrackPoint } from './track.ts';

export interface ColumnPlace {
  readonly track: Track;
  readonly level: number;
  readonly way: 1 | -1;
  readonly s: number;
  readonly foot: number;
  readonly head: number;
}

export function placeColumn(context: ChartContext, column: Column, at: ColumnPlace): void {
  const { element, footing } = column;
  switch (element.kind) {
    case 'stitch':
      placeStitch(context, element.stitch, footing, at);
      return;
    case 'post':
      placePost(context, element.first, element.end, footing, at);
      return;
    case 'laid':
      placeLaid(context, element.stitch, column.widthU, at);
      return;
  }
}

function placeStitch(
  context: ChartContext,
  stitch: number,
  footing: Column['footing'],
  at: ColumnPlace,
): void {
  const head = at.track.point(at.s, at.level, at.head);
  const own = at.track.point(at.s, at.level, at.foot);
  let foot: Point = own;
  if (context.fabric.where[stitch] === INTO.stem) foot = onStem(context, stitch, head);
  else if (footing?.inRing) foot = towardsMiddle(head, context.ringOffset);
  else if (footing !== null) foot = footing.foot;
  place(context.layout, stitch, {
    footX: foot.x,
    footY: foot.y,
    headX: head.x,
    headY: head.y,
    upX: head.upX,
    upY: head.upY,
  });
}

/** Half way up the stitch it goes into; so far back that it is drawn from there on, without air under its foot. */
function onStem({ fabric, layout }: ChartContext, stitch: number, head: Point): Point {
  const into = targets(fabric, stitch)[0] ?? stitch;
  const foot = footOf(layout, into);
  const top = headOf(layout, into);
  const middle = { x: (foot.x + top.x) / 2, y: (foot.y + top.y) / 2 };
  const long = Math.hypot(head.x - middle.x, head.y - middle.y) || 1;
  const back = FOOT_GAP_U / long;
  return { x: middle.x - (head.x - middle.x) * back, y: middle.y - (head.y - middle.y) * back };
}

function towardsMiddle(head: Point, offset: number): Point {
  const away = Math.hypot(head.x, head.y) || 1;
  return { x: (head.x / away) * offset, y: (head.y / away) * offset };
}

function placePost(
  context: ChartContext,
  first: number,
  end: number,
  footing: Column['footing'],
  at: ColumnPlace,
): void {
  const { layout } = context;
  const head = at.track.point(at.s, at.level, at.head);
  const own = at.track.point(at.s, at.level, at.foot);
  const isRing = footing?.inRing ?? false;
  // In a space it stands among the feet of the stitches after it; elsewhere upright.
  const foot = isRing
    ? towardsMiddle(head, context.ringOffset)
    : (footing?.inSpace ?? false)
      ? (footing?.foot ?? own)
      : own;
  standChains(layout, { first, end }, foot, head);
}

/** Chains end to end from a foot to a head. */
export function standChains(
  layout: Layout,
  { first, end }: { readonly first: number; readonly end: number },
  foot: Point,
  head: TrackPoint,
): void {
  const chains = end - first;
  // Air under the first chain, as under the foot of a stitch.
  const from = 0.06;
  for (let k = 0; k < chains; k += 1) {
    const t0 = from + ((1 - from) * k) / chains;
    const t1 = from + ((1 - from) * (k + 1)) / chains;
    place(layout, first + k, {
      footX: foot.x + (head.x - foot.x) * t0,
      footY: foot.y + (head.y - foot.y) * t0,
      headX: foot.x + (head.x - foot.x) * t1,
      headY: foot.y + (head.y - foot.y) * t1,
      upX: head.upX,
      upY: head.upY,
    });
  }
}

function placeLaid(
  { fabric, rows, layout }: ChartContext,
  stitch: number,
  lengthU: number,
  at: ColumnPlace,
): void {
  const half = (lengthU / 2) * at.way;
  const from = at.track.point(at.s - half, at.level, at.foot);
  const to = at.track.point(at.s + half, at.level, at.foot);
  const enteredAt = enteredShare(rows[fabric.kind[stitch] ?? 0]);
  const entered = at.s + 2 * half * (enteredAt - 0.5);
  const middle = at.track.point(entered, at.level, at.foot + CHAIN_THICKNESS_U / 2);
  place(layout, stitch, {
    footX: from.x,
    footY: from.y,
    headX: to.x,
    headY: to.y,
    anchorX: middle.x,
    anchorY: middle.y,
    upX: middle.upX,
    upY: middle.upY,
  });
}
