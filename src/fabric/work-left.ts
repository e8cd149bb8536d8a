/** Stitches that a row stopped short of, as an edge of their own: `1 dc in each of 11 unworked tr` between the sides of a bonnet. */

import type { Site } from './site.ts';
import { sitesOfRow } from './site.ts';
import { skippedUnder } from './work-below.ts';
import type { Worker } from './worker.ts';

/** Stands at the first of them; false, with nothing changed, where no row of the piece left any at its end. */
export function standOnLeft(worker: Worker): boolean {
  for (let row = worker.rowRanges.length - 2; row >= worker.pieceFirst; row -= 1) {
    const left = leftAtEnd(worker, row);
    if (left.length === 0) continue;
    worker.sites = left;
    worker.next = 0;
    worker.last = -1;
    worker.lastWasSpace = false;
    if (worker.edges !== null) worker.edges.spread = false;
    return true;
  }
  return false;
}

/** In the direction of the row in hand. Stitches skipped on the way, as under shells, are no end that was left. */
function leftAtEnd(worker: Worker, row: number): Site[] {
  const range = worker.rowRanges[row];
  const { builder } = worker;
  if (range === undefined || range.first >= range.end) return [];
  const free = new Set(skippedUnder(worker, row).map(({ node }) => node));
  const spaces = builder.spaces.length;
  const stitches = sitesOfRow(builder, range.first, range.end).filter(({ kind }) => kind === 'stitch');
  builder.spaces.length = spaces;
  if (free.size === 0 || free.size === stitches.length) return [];
  let from = stitches.length;
  while (free.has(stitches[from - 1]?.node ?? -1)) from -= 1;
  const left = stitches.slice(from);
  return range.direction === worker.direction ? left : left.reverse();
}
