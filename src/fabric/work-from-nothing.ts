/** Stitches that need nothing below: foundation stitches, which make their own chain, and love knots. */

import type { WorkStep } from '../notation/tree.ts';
import { stitchById } from '../stitches/table.ts';
import { addFlag } from './builder.ts';
import { FLAG, NONE } from './fabric.ts';
import { makeStitch } from './make-stitch.ts';
import type { Worker } from './worker.ts';

/** Null for a stitch that goes into something. */
export function workFromNothing(worker: Worker, step: WorkStep, times: number): boolean | null {
  if (step.stitch.kind !== 'stitch' || step.place !== null) return null;
  const { id } = step.stitch;
  const row = stitchById(id);
  if (row.uses !== 0 || row.family === 'chain' || row.family === 'start') return null;
  const first = worker.builder.kind.length;
  const startsPiece = row.enters === 'own chain';
  if (startsPiece) standUpStart(worker);
  for (let n = 0; n < times; n += 1) if (!makeStitch(worker, id, [], 0, step.span)) return false;
  if (!startsPiece) return true;
  worker.sites ??= [];
  worker.foundation = { first: worker.foundation?.first ?? first, end: worker.builder.kind.length };
  return true;
}

/** `Ch 2, 12 fsc`: the chain before the first of them stands up at its side and is no foundation. */
function standUpStart(worker: Worker): void {
  const { sites, builder } = worker;
  if (
    worker.rowBegun ||
    sites === null ||
    !sites.every(({ kind, space }) => kind === 'chain' && space === NONE)
  )
    return;
  for (const { node } of sites) addFlag(builder, node, FLAG.turningChain);
  worker.sites = [];
  worker.foundation = null;
}
