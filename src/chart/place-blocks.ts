/** The blocks of a piece worked from corner to corner in, each in its square out. */

import { CHAIN_THICKNESS_U } from '../symbols/chain.ts';
import type { ChartContext } from './context.ts';
import type { Block, Blocks } from './find-blocks.ts';
import { place } from './layout.ts';
import { placeDots } from './place-loops.ts';
import type { PlacedRow } from './place-row.ts';
import { ROW_TRACK, roundTrack, type Track } from './track.ts';

/** The side of a block: its chains, and so many stitches beside them. */
const STITCH_U = 0.84;
const CHAINS_U = 0.38;
/** Air before the next block. */
const AIR_U = 0.2;

export interface PlacedBlocks {
  readonly rows: readonly PlacedRow[];
  /** Round the piece. */
  readonly edge: Track;
}

export function placeBlocks(context: ChartContext, { blocks, travel }: Blocks): PlacedBlocks {
  const most = Math.max(...blocks.map(({ stitches }) => stitches.length));
  const side = CHAINS_U + most * STITCH_U + AIR_U;
  for (const block of blocks) placeBlock(context, block, side);
  placeDots(
    context,
    travel.map((stitch) => ({ kind: 'dot', stitch })),
    1,
    ROW_TRACK,
  );
  const byRow = new Map<number, Block[]>();
  for (const block of blocks) byRow.set(block.row, [...(byRow.get(block.row) ?? []), block]);
  const width = (Math.max(...blocks.map(({ left }) => left)) + 1) * side;
  const height = (Math.max(...blocks.map(({ up }) => up)) + 1) * side;
  return {
    rows: [...byRow].map(([row, own]) => placedRow(context, row, own, side)),
    edge: roundTrack([
      [0, height],
      [-width, height],
      [-width, 0],
      [0, 0],
    ]),
  };
}

interface Sides {
  /** The corner where the block begins: the end of its chains that it is hooked by. */
  readonly x: number;
  readonly y: number;
  /** The way its stitches stand. */
  readonly upX: number;
  readonly upY: number;
  /** The way it is worked. */
  readonly onX: number;
  readonly onY: number;
}

function sidesOf({ fabric }: ChartContext, { row, left, up }: Block, side: number): Sides {
  return fabric.rows[row]?.direction === 'left'
    ? { x: -left * side, y: (up + 1) * side, upX: -1, upY: 0, onX: 0, onY: -1 }
    : { x: -(left + 1) * side, y: up * side, upX: 0, upY: 1, onX: 1, onY: 0 };
}

function placeBlock(context: ChartContext, block: Block, side: number): void {
  const { layout } = context;
  const { x, y, upX, upY, onX, onY } = sidesOf(context, block, side);
  const at = (on: number, up: number): { x: number; y: number } => ({
    x: x + onX * on + upX * up,
    y: y + onY * on + upY * up,
  });
  // Half a chain in, so that its outer side is the edge of the block.
  const post = CHAIN_THICKNESS_U / 2;
  const long = side - AIR_U;
  block.chains.forEach((chain, k) => {
    const share = (n: number): number => 0.08 + ((long - 0.08) * n) / block.chains.length;
    const foot = at(post, share(k));
    const head = at(post, share(k + 1));
    const anchor = at(0, share(k + 0.5));
    place(layout, chain, {
      footX: foot.x,
      footY: foot.y,
      headX: head.x,
      headY: head.y,
      anchorX: anchor.x,
      anchorY: anchor.y,
      upX: -onX,
      upY: -onY,
    });
  });
  const pitch = (side - CHAINS_U - AIR_U) / block.stitches.length;
  const middle = (k: number): number => CHAINS_U + 0.08 + (k + 0.5) * pitch;
  block.base.forEach((chain, k) => {
    // The first chain lies furthest from where the stitches begin.
    const on = middle(block.base.length - 1 - k);
    const foot = at(on + pitch / 2, post);
    const head = at(on - pitch / 2, post);
    const anchor = at(on, 2 * post);
    place(layout, chain, {
      footX: foot.x,
      footY: foot.y,
      headX: head.x,
      headY: head.y,
      anchorX: anchor.x,
      anchorY: anchor.y,
      upX,
      upY,
    });
  });
  const foot0 = block.base.length > 0 ? 2 * post : 0;
  block.stitches.forEach((stitch, k) => {
    const foot = at(middle(k), foot0);
    const head = at(middle(k), long);
    place(layout, stitch, {
      footX: foot.x,
      footY: foot.y,
      headX: head.x,
      headY: head.y,
      upX,
      upY,
    });
  });
  if (block.hook < 0) return;
  const foot = at(post, -0.3);
  const head = at(post, 0.06);
  place(layout, block.hook, { footX: foot.x, footY: foot.y, headX: head.x, headY: head.y, upX, upY });
}

/** The number of a row stands beside the block it begins with, outside the piece. */
function placedRow(context: ChartContext, row: number, own: readonly Block[], side: number): PlacedRow {
  const way = context.fabric.rows[row]?.direction === 'right' ? -1 : 1;
  const first = own[0] ?? { left: 0, up: 0, base: [] };
  const grows = first.base.length > 0;
  const x = -(first.left + 0.5) * side;
  const y = (first.up + 0.5) * side;
  // Growing rows begin at the right or at the foot of the piece, the others at its top or its left.
  const sideways = grows === (way === 1);
  const lefts = own.map(({ left }) => left);
  return {
    row,
    level: 0,
    way,
    columns: own.length,
    track: sideways ? pointTrack(x, y, 0, 1) : pointTrack(x, y + (way === 1 ? 0.5 : -0.5) * side, -1, 0),
    startS: 0,
    chains: null,
    startHalfU: side / 2,
    endS: 0,
    archOverSeam: false,
    reach: { left: -(Math.max(...lefts) + 1) * side, right: -Math.min(...lefts) * side },
    low: 0,
    high: 0,
  };
}

function pointTrack(x: number, y: number, upX: number, upY: number): Track {
  return {
    ...ROW_TRACK,
    point: () => ({ x, y, upX, upY }),
  };
}
