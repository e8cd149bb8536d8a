/**
 * The rows of a flat piece in, the blocks they are made of out, where each row is nothing but blocks: upright chains and
 * a few stitches beside them, worked into the chains of a block below. A piece from corner to corner is made so.
 */

import { type Fabric, INTO, targets } from '../fabric/fabric.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';

export interface Block {
  readonly row: number;
  /** Chains that lie under the stitches of a block that begins a row; none for others. */
  readonly base: readonly number[];
  readonly chains: readonly number[];
  readonly stitches: readonly number[];
  /** The slip stitch that hooks it to the block below; -1 for none. */
  readonly hook: number;
  /** Cell of the square it lies in: so many to the left and up from the corner the piece begins in. */
  readonly left: number;
  readonly up: number;
}

export interface Blocks {
  readonly blocks: readonly Block[];
  /** Slip stitches between blocks. */
  readonly travel: readonly number[];
}

const FEWEST_ROWS = 3;

/** Null where a row is made of anything else. */
export function findBlocks(
  fabric: Fabric,
  table: readonly StitchRow[],
  rows: readonly number[],
): Blocks | null {
  if (rows.length < FEWEST_ROWS) return null;
  const blocks: Block[] = [];
  const travel: number[] = [];
  /** The block whose chains these are, by its first chain. */
  const byChain = new Map<number, Block>();
  let below: readonly Block[] = [];
  for (const row of rows) {
    const read = readRow(fabric, table, row);
    if (read === null) return null;
    const own: Block[] = [];
    for (const parts of read.blocks) {
      const cell = cellOf(fabric, row, parts, below, byChain);
      if (cell === null) return null;
      own.push({ row, ...parts, ...cell });
    }
    for (const block of own) byChain.set(block.chains[0] ?? -1, block);
    blocks.push(...own);
    travel.push(...read.travel);
    below = own;
  }
  return { blocks, travel };
}

type Parts = Pick<Block, 'base' | 'chains' | 'stitches' | 'hook'>;

function readRow(
  fabric: Fabric,
  table: readonly StitchRow[],
  row: number,
): { blocks: Parts[]; travel: number[] } | null {
  const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
  const family = (i: number): string | undefined => table[fabric.kind[i] ?? 0]?.family;
  const blocks: Parts[] = [];
  const travel: number[] = [];
  let i = first;
  while (i < end) {
    if (family(i) === 'slip') {
      travel.push(i);
      i += 1;
      continue;
    }
    const chainsFrom = i;
    while (i < end && family(i) === 'chain') i += 1;
    const stitchesFrom = i;
    while (i < end && family(i) !== 'chain' && family(i) !== 'slip') i += 1;
    const all = range(chainsFrom, stitchesFrom);
    const stitches = range(stitchesFrom, i);
    if (all.length < 2 || stitches.length < 2) return null;
    const into = new Set(stitches.flatMap((stitch) => [...targets(fabric, stitch)]));
    const base = all.filter((chain) => into.has(chain));
    const inSpace = stitches.every((stitch) => fabric.where[stitch] === INTO.space);
    const ontoBase = base.length === stitches.length && into.size === base.length;
    if (!ontoBase && !(inSpace && base.length === 0)) return null;
    const hook = travel.at(-1) === chainsFrom - 1 && base.length === 0 ? (travel.pop() ?? -1) : -1;
    blocks.push({ base, chains: all.filter((chain) => !into.has(chain)), stitches, hook });
  }
  return blocks.length === 0 ? null : { blocks, travel };
}

/**
 * Right-side rows go down to the left and their blocks are hooked to the left of those below, wrong-side rows go up to
 * the right and theirs stand on those below; a block that begins a row lies beyond the last one.
 */
function cellOf(
  fabric: Fabric,
  row: number,
  { base, stitches }: Parts,
  below: readonly Block[],
  byChain: ReadonlyMap<number, Block>,
): { left: number; up: number } | null {
  const toLeft = fabric.rows[row]?.direction === 'left';
  if (base.length > 0) {
    const last = below.at(-1);
    if (last === undefined) return { left: 0, up: 0 };
    return toLeft ? { left: last.left, up: last.up + 1 } : { left: last.left + 1, up: last.up };
  }
  const parent = byChain.get(targets(fabric, stitches[0] ?? 0)[0] ?? -1);
  if (parent === undefined) return null;
  return toLeft ? { left: parent.left + 1, up: parent.up } : { left: parent.left, up: parent.up + 1 };
}

function range(from: number, end: number): number[] {
  return Array.from({ length: end - from }, (_, k) => from + k);
}
