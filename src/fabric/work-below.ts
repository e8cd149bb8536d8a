/** Long and spike stitches: which stitch "next st 2 rows below" or "skipped st 2 rows below" goes into. */

import { describeWhat } from '../notation/describe-what.ts';
import type { Place } from '../notation/tree.ts';
import { firstTarget } from './builder.ts';
import { NONE } from './fabric.ts';
import { findNext, isA, passPlace } from './find-site.ts';
import type { Site } from './site.ts';
import { plainSite, sitesOfRow } from './site.ts';
import type { Worker } from './worker.ts';
import { stuck } from './worker.ts';

/**
 * Rows are counted from the row in hand: the row it is worked on is 1 below, the one under that 2 below. A long
 * stitch into `next st` covers the next stitch of the row below; one into a skipped stitch covers nothing.
 * "1 row below" goes where the stitch below was itself worked, which is the same hole as 2 rows below.
 */
export function siteBelow(worker: Worker, place: Extract<Place, { kind: 'below' }>): Site | null {
  return place.pick === 'next' ? underNext(worker, place) : nextSkipped(worker, place);
}

function underNext(worker: Worker, place: Extract<Place, { kind: 'below' }>): Site | null {
  const index = findNext(worker, { kind: 'st' }, place.span);
  const covered = worker.sites?.[index];
  if (covered === undefined) return null;
  if (place.uncovered !== true) passPlace(worker, index);
  let node = covered.node;
  for (let down = 1; down < Math.max(2, place.rows); down += 1) {
    const below = firstTarget(worker.builder, node);
    if (below < 0) {
      stuck(worker, {
        kind: 'used up',
        wanted: `${describeWhat(place.what, worker.terms)} ${place.rows} rows below`,
        span: place.span,
      });
      return null;
    }
    node = below;
  }
  const site = plainSite(
    'stitch',
    node,
    worker.builder.stitchIds[worker.builder.countsAs[node] ?? NONE] ?? 'ch',
  );
  if (place.what.kind !== 'st' && !isA(site, place.what)) {
    const wanted = `${describeWhat(place.what, worker.terms)} ${place.rows} rows below`;
    stuck(worker, { kind: 'not there', wanted, found: site.id, nth: index + 1, span: place.span });
    return null;
  }
  return site;
}

/** The next stitch of that row, in the direction of work, that the row above it left unworked. */
function nextSkipped(worker: Worker, place: Extract<Place, { kind: 'below' }>): Site | null {
  const rowIndex = worker.row - Math.max(2, place.rows);
  const skipped = skippedOf(worker, rowIndex);
  const site = skipped[worker.skippedUsed + 1];
  const wanted = `skipped ${describeWhat(place.what, worker.terms)} ${place.rows} rows below`;
  if (site === undefined) {
    stuck(worker, { kind: 'used up', wanted, span: place.span });
    return null;
  }
  if (!isA(site, place.what)) {
    stuck(worker, {
      kind: 'not there',
      wanted,
      found: site.id,
      nth: worker.skippedUsed + 2,
      span: place.span,
    });
    return null;
  }
  worker.skippedUsed += 1;
  return site;
}

/** The stitches of an earlier row that nothing has been worked into, in the direction of the row in hand. */
export function skippedUnder(worker: Worker, rowIndex: number): readonly Site[] {
  return skippedOf(worker, rowIndex);
}

/** The unworked stitches of a row, in the direction of the row in hand; found once a row. */
function skippedOf(worker: Worker, rowIndex: number): readonly Site[] {
  const known = worker.skipped;
  if (known !== null && known.byRow === worker.row && known.ofRow === rowIndex) return known.sites;
  const range = worker.rowRanges[rowIndex];
  if (range === undefined) return [];
  const { builder } = worker;
  const worked = new Set<number>();
  const end = builder.intoStart[worker.rowFirst] ?? builder.into.length;
  for (let i = builder.intoStart[range.end] ?? end; i < end; i += 1) worked.add(builder.into[i] ?? NONE);
  const spaces = builder.spaces.length;
  const sites = sitesOfRow(builder, range.first, range.end).filter(
    (site) => site.kind === 'stitch' && !worked.has(site.node),
  );
  builder.spaces.length = spaces;
  if (worker.direction !== range.direction) sites.reverse();
  worker.skipped = { byRow: worker.row, ofRow: rowIndex, sites };
  return sites;
}
