/** A placed flat piece or foundation in, the line that an edging or an oval runs along round it out. */

import { type Fabric, FLAG, INTO, targets } from '../fabric/fabric.ts';
import { CHAIN_THICKNESS_U } from '../symbols/chain.ts';
import type { Column } from './columns.ts';
import { type ChartContext, type Reach, widest } from './context.ts';
import { hasFlag } from './elements.ts';
import { firstFacing } from './piece-corners.ts';
import type { PlacedRow } from './place-row.ts';
import { ROW_TRACK, roundTrack, type Track } from './track.ts';

/** Beyond the middle of the outermost stitches. */
const EDGE_OUT_U = 0.5;

/** Round a flat piece: its four edges as straight lines. */
export function edgeTrack(placed: readonly PlacedRow[]): Track {
  const last = placed.at(-1);
  if (last === undefined) return ROW_TRACK;
  const reaches = placed.map(({ reach }) => reach);
  const bottom = outwards(widest(reaches.slice(0, 3)));
  const top = outwards(widest(reaches.slice(-2)));
  const low = -CHAIN_THICKNESS_U / 2;
  return roundTrack([
    [top.right, last.level],
    [top.left, last.level],
    [bottom.left, low],
    [bottom.right, low],
  ]);
}

/** Along one side of a flat piece, for rows worked into the ends of its rows and turned. */
export function sideTrack(placed: readonly PlacedRow[], isRight: boolean): Track {
  const { left, right } = outwards(widest(placed.map(({ reach }) => reach)));
  const way = isRight ? 1 : -1;
  const edge = isRight ? right : left;
  return {
    ...ROW_TRACK,
    point: (s, _level, offset) => ({ x: edge + way * offset, y: way * s, upX: way, upY: 0 }),
    locate: (x, y) => ({ s: way * y, offset: way * (x - edge) }),
  };
}

function outwards({ left, right }: Reach): Reach {
  return { left: left - EDGE_OUT_U, right: right + EDGE_OUT_U };
}

/** Round both sides of a chain laid from `first` on. */
export function ovalTrack({ fabric, layout, rows }: ChartContext, first: number): Track {
  let left = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  for (let i = first; i < fabric.count && layout.placed[i]; i += 1) {
    if (rows[fabric.kind[i] ?? 0]?.family !== 'chain' || hasFlag(fabric, i, FLAG.turningChain)) continue;
    const x = layout.anchorX[i] ?? 0;
    left = Math.min(left, x);
    right = Math.max(right, x);
  }
  return roundTrack([
    [right, 0],
    [left, 0],
  ]);
}

/** Along the shape of a piece with corners, for a round of it that turns none. */
export function roundedTrack(corners: number, level: number): Track {
  const turn = (2 * Math.PI) / corners;
  // Mostly straight sides, the last fifth of the way out taken up by the bends.
  const out = (level * 0.8) / Math.cos(turn / 2);
  const first = firstFacing(corners) - turn / 2;
  return roundTrack(
    Array.from(
      { length: corners },
      (_, k) => [out * Math.cos(first + k * turn), out * Math.sin(first + k * turn)] as const,
    ),
  );
}

/** How many ends or corners a piece has, and from how many stitches in one place how near to one go round it. */
export const BENDS = {
  edging: { bends: 4, several: 2, nearU: 2.2 },
  oval: { bends: 2, several: 3, nearU: 0.6 },
} as const;

/** The corner of a flat piece, or the end of an oval, that each stitch is worked round; null for those along its sides. */
export function bendsOf(
  fabric: Fabric,
  columns: readonly Column[],
  track: Track,
  { bends, several, nearU }: (typeof BENDS)[keyof typeof BENDS],
): (column: Column) => number | null {
  const shared = sharing(columns);
  return (column) => {
    const { footing, element } = column;
    if (element.kind !== 'stitch' || footing === null || !ontoFlat(fabric, column.stitch)) return null;
    let best = 0;
    let nearest = Number.POSITIVE_INFINITY;
    for (let k = 0; k < bends; k += 1) {
      const corner = track.point(track.cornerAt(k, 1), 1, 0);
      const away = Math.hypot(corner.x - footing.middle.x, corner.y - footing.middle.y);
      if (away < nearest) {
        nearest = away;
        best = k;
      }
    }
    // Several into the end of a row near a corner lie along their side.
    const inRowEnd = fabric.where[column.stitch] === INTO.rowEnd;
    const isGroup = !inRowEnd && (shared.get(footing.place) ?? 0) >= several && nearest < nearU;
    return isGroup || hasFlag(fabric, column.stitch, FLAG.corner) ? best : null;
  };
}

function ontoFlat(fabric: Fabric, stitch: number): boolean {
  return targets(fabric, stitch).every((target) => fabric.rows[fabric.row[target] ?? 0]?.closing === 'flat');
}

function sharing(columns: readonly Column[]): ReadonlyMap<number, number> {
  const counts = new Map<number, number>();
  for (const { footing } of columns)
    if (footing !== null) counts.set(footing.place, (counts.get(footing.place) ?? 0) + 1);
  return counts;
}
