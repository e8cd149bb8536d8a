/** A ring of chains in the middle of a piece in, how many they are out, printed inside it where there is room. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Ink, Shape } from '../scene/scene.ts';
import { AIR_U, LabelRoom } from './label-room.ts';
import { footOf, headOf, type Layout, type Point } from './layout.ts';
import { HALF_FIGURE, LABEL_MM, U_MM } from './metrics.ts';
import type { Ring } from './place-centre.ts';

/** How far from the middle the number may move, away from the dot that joins the ring. */
const MOVES_U = [0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3];

/** Null where the ring is too small for a figure that can be read. */
export function ringCount(
  fabric: Fabric,
  layout: Layout,
  { first, end }: Ring,
  inks: readonly Ink[],
): Extract<Shape, { kind: 'text' }> | null {
  const row = fabric.row[first] ?? 0;
  const text = String(end - first);
  const room = new LabelRoom(fabric, layout, [row]);
  const at = placesIn(layout, { first, end }).find(
    (place) => room.around(place, text.length, LABEL_MM.ringCount) >= AIR_U,
  );
  if (at === undefined) return null;
  return {
    kind: 'text',
    x: at.x * U_MM,
    y: -at.y * U_MM + LABEL_MM.ringCount * HALF_FIGURE,
    text,
    sizeMm: LABEL_MM.ringCount,
    // Numbers of rounds are bold.
    face: 'text',
    align: 'middle',
    ink: inks[row] ?? 'ink',
  };
}

/** The middle of the ring, and further and further from where its ends meet. */
function placesIn(layout: Layout, { first, end }: Ring): Point[] {
  const from = footOf(layout, first);
  const to = headOf(layout, end - 1);
  const join = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const away = Math.hypot(join.x, join.y) || 1;
  return MOVES_U.map((move) => ({ x: (-join.x / away) * move, y: (-join.y / away) * move }));
}
