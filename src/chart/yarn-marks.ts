/** A placed piece in, triangles out that point at where yarn is joined anew and where it is cut. */

import { type Fabric, FLAG } from '../fabric/fabric.ts';
import { boundsOf } from '../scene/bounds.ts';
import type { Ink, PathPart, Shape } from '../scene/scene.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { hasFlag } from './elements.ts';
import { LabelRoom } from './label-room.ts';
import type { Layout, Point } from './layout.ts';
import { U_MM } from './metrics.ts';
import type { SymbolBook } from './symbol-book.ts';

export interface YarnMark {
  readonly does: 'join' | 'cut';
  readonly stitch: number;
}

/** In the order of the work; the yarn that a piece begins with needs no mark. */
export function yarnMarks(fabric: Fabric, rows: readonly number[]): YarnMark[] {
  const marks: YarnMark[] = [];
  const inHand = new Set<number>();
  let begun = false;
  for (const row of rows) {
    const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
    for (let i = first; i < end; i += 1) {
      const yarn = fabric.yarn[i] ?? 0;
      if (begun && (!inHand.has(yarn) || hasFlag(fabric, i, FLAG.joinsYarn)))
        marks.push({ does: 'join', stitch: i });
      begun = true;
      inHand.add(yarn);
      if (!hasFlag(fabric, i, FLAG.cut)) continue;
      marks.push({ does: 'cut', stitch: i });
      inHand.delete(yarn);
    }
  }
  return marks;
}

interface Marking {
  readonly fabric: Fabric;
  readonly table: readonly StitchRow[];
  readonly layout: Layout;
  readonly rows: readonly number[];
  /** By row. */
  readonly inks: readonly Ink[];
  /** What else stands beside the stitches. */
  readonly beside: readonly Shape[];
  readonly book: SymbolBook;
}

/** Each where the nearest room is, its tip towards the stitch. */
export function drawYarnMarks(marking: Marking, marks: readonly YarnMark[]): Shape[] {
  const drawn: Shape[] = [];
  for (const mark of marks) {
    const row = marking.fabric.row[mark.stitch] ?? 0;
    const spot = spotOf(marking, mark);
    const room = roomAbout(marking, row, drawn);
    const way = wayWithRoom(room, spot, wayOut(marking, mark.stitch));
    drawn.push(triangle(mark.does, spot, way, marking.inks[row] ?? 'ink'));
  }
  return drawn;
}

/** Where a stitch begins, or where it ends; the middle of a slip stitch. */
function spotOf({ fabric, table, layout }: Marking, { does, stitch }: YarnMark): Point {
  const [footX, footY] = [layout.footX[stitch] ?? 0, layout.footY[stitch] ?? 0];
  const [headX, headY] = [layout.headX[stitch] ?? 0, layout.headY[stitch] ?? 0];
  if (table[fabric.kind[stitch] ?? 0]?.family === 'slip')
    return { x: (footX + headX) / 2, y: (footY + headY) / 2 };
  return does === 'join' ? { x: footX, y: footY } : { x: headX, y: headY };
}

function wayOut({ layout }: Marking, stitch: number): number {
  return Math.atan2(layout.upY[stitch] ?? 1, layout.upX[stitch] ?? 0);
}

function roomAbout(marking: Marking, row: number, drawn: readonly Shape[]): LabelRoom {
  const near = marking.rows.filter((other) => Math.abs(other - row) < 3);
  const room = new LabelRoom(marking.fabric, marking.layout, near);
  for (const shape of [...marking.beside, ...drawn]) {
    const bounds = boundsOf([shape], marking.book.all());
    if (bounds !== null) room.takeBox(bounds);
  }
  return room;
}

/** From its tip to its back, and across its back. */
const TRIANGLE_U = { long: 0.5, wide: 0.56 } as const;
/** White that it wants round it, the arms of crosses included. */
const CLEAR_U = 0.15;
const WAYS = 16;
const DISTANCES_U = [0.26, 0.36, 0.5, 0.7, 0.95, 1.25, 1.6];
/** What a unit of white too little weighs, and half a turn from outwards, against a unit further from the spot. */
const WEIGHTS = { white: 7, turn: 0.3 } as const;

interface Way {
  readonly angle: number;
  /** From the spot to the tip. */
  readonly distanceU: number;
}

/** As near the spot as may be and outwards of it, where nothing else is. */
function wayWithRoom(room: LabelRoom, spot: Point, out: number): Way {
  let best: Way = { angle: out, distanceU: DISTANCES_U[0] ?? 0 };
  let least = Number.POSITIVE_INFINITY;
  for (const distanceU of DISTANCES_U)
    for (let k = 0; k < WAYS; k += 1) {
      const turn = Math.min(k, WAYS - k) / (WAYS / 2);
      const way = { angle: out + (k * 2 * Math.PI) / WAYS, distanceU };
      const lacking = Math.max(0, CLEAR_U - room.aroundAll(outline(spot, way)));
      const cost = distanceU + WEIGHTS.white * lacking + WEIGHTS.turn * turn;
      if (cost < least) [best, least] = [way, cost];
    }
  return best;
}

/** Its corners, and points between them. */
function outline(spot: Point, way: Way): Point[] {
  const [tip, left, right] = cornersOf(spot, way);
  const between = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
  return [tip, left, right, between(tip, left), between(tip, right), between(left, right)];
}

function cornersOf(spot: Point, way: Way): [tip: Point, left: Point, right: Point] {
  const back = pointAlong(spot, way, TRIANGLE_U.long);
  const half = TRIANGLE_U.wide / 2;
  const [x, y] = [-Math.sin(way.angle) * half, Math.cos(way.angle) * half];
  return [pointAlong(spot, way, 0), { x: back.x + x, y: back.y + y }, { x: back.x - x, y: back.y - y }];
}

function pointAlong({ x, y }: Point, { angle, distanceU }: Way, furtherU: number): Point {
  const away = distanceU + furtherU;
  return { x: x + Math.cos(angle) * away, y: y + Math.sin(angle) * away };
}

function triangle(does: YarnMark['does'], spot: Point, way: Way, ink: Ink): Shape {
  const [tip, left, right] = cornersOf(spot, way).map(({ x, y }): [number, number] => [x * U_MM, -y * U_MM]);
  const parts: PathPart[] =
    tip && left && right ? [['M', ...tip], ['L', ...left], ['L', ...right], ['Z']] : [];
  return { kind: 'path', parts, stroke: { ink, widthMm: 0.3 }, fill: does === 'cut' ? ink : 'none' };
}

/** Its tip to the left, in the middle of where it stands. */
export function yarnMarkSample(does: YarnMark['does']): Shape {
  return triangle(does, { x: -TRIANGLE_U.long / 2, y: 0 }, { angle: 0, distanceU: 0 }, 'ink');
}
