/** The gauge of an along -> how wide a stitch of its joining and border is, and how high a round of single crochet. */

import { SC_HEIGHT_TO_WIDTH } from '../measure/heights-in-sc.ts';
import { stitchWidthMm } from '../measure/row-heights.ts';
import { findStitch } from '../stitches/table.ts';
import type { Along } from './along.ts';

type Gauged = Pick<Along, 'gauge' | 'terms'>;

export function stitchMm({ gauge }: Gauged): number {
  return stitchWidthMm(gauge);
}

/** A gauge in another stitch gives it by how that stands to single crochet; one in a pattern of its own is taken as it is. */
export function roundMm({ gauge, terms }: Gauged): number {
  if (gauge.rows === null) return SC_HEIGHT_TO_WIDTH * stitchWidthMm(gauge);
  const of = gauge.of === null ? null : findStitch(gauge.of, terms);
  return gauge.upMm / gauge.rows / (of?.heightInSc ?? 1);
}
