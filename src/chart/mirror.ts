/** A placed piece in, the same for a left-handed maker out: what went right to left goes left to right. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Layout } from './layout.ts';
import type { PlacedPiece } from './place-part.ts';
import type { PlacedRow } from './place-row.ts';
import type { Track } from './track.ts';

/** Turns the stitches of these rows over in the layout itself. */
export function mirrored(
  fabric: Fabric,
  layout: Layout,
  rowIndices: readonly number[],
  piece: PlacedPiece,
): PlacedPiece {
  for (const row of rowIndices) {
    const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
    for (const xs of [layout.footX, layout.headX, layout.anchorX, layout.upX])
      for (let i = first; i < end; i += 1) xs[i] = -(xs[i] ?? 0);
  }
  const tracks = new Map<Track, Track>();
  const mirroredTrack = (track: Track): Track => {
    const known = tracks.get(track) ?? turnedOver(track);
    tracks.set(track, known);
    return known;
  };
  return {
    ...piece,
    rows: piece.rows.map(
      (row): PlacedRow => ({
        ...row,
        track: mirroredTrack(row.track),
        reach: { left: -row.reach.right, right: -row.reach.left },
      }),
    ),
    wall:
      piece.wall === null
        ? null
        : {
            ...piece.wall,
            track: mirroredTrack(piece.wall.track),
            left: -piece.wall.right,
            right: -piece.wall.left,
          },
  };
}

function turnedOver(track: Track): Track {
  return {
    ...track,
    handed: track.handed === 1 ? -1 : 1,
    point: (s, level, offset) => {
      const { x, y, upX, upY } = track.point(s, level, offset);
      return { x: -x, y, upX: -upX, upY };
    },
    locate: (x, y, level, side) => track.locate(-x, y, level, side),
  };
}
