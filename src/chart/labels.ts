/** Placed rows in, their numbers, arrows and start marks out. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Shape } from '../scene/scene.ts';
import { arrowShapes, startMark } from './arrow.ts';
import type { Layout } from './layout.ts';
import { LABEL_MM, U_MM } from './metrics.ts';
import type { PlacedRow } from './place-row.ts';
import type { RowPen } from './row-pens.ts';
import type { TrackPoint } from './track.ts';

export interface Labelling {
  readonly fabric: Fabric;
  readonly layout: Layout;
  readonly rows: readonly PlacedRow[];
  readonly pens: readonly RowPen[];
  /** Yarn letters are added where the pattern has several yarns. */
  readonly yarnLetters: boolean;
}

export interface Labels {
  readonly shapes: readonly Shape[];
  /** What of the marks was used, for the key. */
  readonly startMark: boolean;
  readonly rowArrows: boolean;
  readonly roundArrow: boolean;
}

/** Baseline below the middle of a figure, as a share of the type size. */
const HALF_FIGURE = 0.33;

export function labelRows(labelling: Labelling): Labels {
  const { fabric, rows } = labelling;
  const flat = rows.filter(({ row }) => fabric.rows[row]?.closing === 'flat');
  const round = rows.filter(({ row }) => fabric.rows[row]?.closing !== 'flat');
  const start = flatStart(labelling, flat);
  const shapes = [...flatLabels(labelling, flat), ...start, ...roundLabels(labelling, round)];
  const turned = new Set(round.map(({ way }) => way)).size > 1;
  const arrow = round.length > 0 && !turned ? roundArrow(round) : [];
  return {
    shapes: [...shapes, ...arrow],
    startMark: start.length > 0,
    rowArrows: flat.some(({ row }) => fabric.rows[row]?.number !== null),
    roundArrow: arrow.length > 0,
  };
}

function flatLabels(labelling: Labelling, flat: readonly PlacedRow[]): Shape[] {
  const numbered = flat.filter(({ row }) => labelling.fabric.rows[row]?.number !== null);
  const edges = numbered.map((placed) => placed.track.point(placed.startS, placed.level, (placed.low + placed.high) / 2));
  return numbered.flatMap((placed, k) => {
    const at = edges[k];
    if (at === undefined) return [];
    const outX = at.upY * placed.way;
    const outY = -at.upX * placed.way;
    // In line with the labels of the rows near it, clear of what sticks out furthest.
    const reach = Math.max(
      ...numbered.slice(Math.max(0, k - 2), k + 3).flatMap((near, n) => {
        const edge = edges[Math.max(0, k - 2) + n];
        return near.way === placed.way && edge ? [(edge.x - at.x) * outX + (edge.y - at.y) * outY] : [];
      }),
    );
    const ink = labelling.pens[placed.row]?.ink ?? 'ink';
    const from: [number, number] = [
      (at.x + outX * reach) * U_MM + outX * LABEL_MM.gap,
      -(at.y + outY * reach) * U_MM - outY * LABEL_MM.gap,
    ];
    const tail: [number, number] = [from[0] + outX * LABEL_MM.arrow, from[1] - outY * LABEL_MM.arrow];
    return [
      ...arrowShapes([tail, from], ink),
      {
        kind: 'text',
        x: tail[0] + outX * 1,
        y: tail[1] - outY * 1 + LABEL_MM.size * HALF_FIGURE,
        text: labelOf(labelling, placed.row),
        sizeMm: LABEL_MM.size,
        face: 'text-bold',
        align: Math.abs(outX) < 0.5 ? 'middle' : outX > 0 ? 'start' : 'end',
        ink,
      },
    ];
  });
}

function flatStart({ fabric, layout, pens }: Labelling, flat: readonly PlacedRow[]): Shape[] {
  const first = flat.find(({ row }) => fabric.rows[row]?.number === null && fabric.rows[row]?.onto === null);
  if (first === undefined) return [];
  const i = fabric.rows[first.row]?.first ?? 0;
  const x = layout.footX[i] ?? 0;
  const y = layout.footY[i] ?? 0;
  const ux = Math.sign((layout.headX[i] ?? 0) - x) || 1;
  return [startMark(x * U_MM - ux * 3.2, -y * U_MM, ux, 0, pens[first.row]?.ink ?? 'ink')];
}

function roundLabels(labelling: Labelling, round: readonly PlacedRow[]): Shape[] {
  return round.flatMap((placed): Shape[] => {
    const text = labelOf(labelling, placed.row);
    if (text === '') return [];
    const at = besideStart(placed);
    return [
      {
        kind: 'text',
        x: at.x * U_MM,
        y: -at.y * U_MM + LABEL_MM.size * HALF_FIGURE,
        text,
        sizeMm: LABEL_MM.size,
        face: 'text-bold',
        align: 'middle',
        ink: labelling.pens[placed.row]?.ink ?? 'ink',
      },
    ];
  });
}

/** Where a round's number stands: on the side of its start that it comes back from. */
function besideStart({ track, level, startS, way, low, high }: PlacedRow): TrackPoint {
  const aside = 0.98;
  const offset = low + (high - low) * 0.45;
  const at = track.point(startS, level, offset);
  return { ...at, x: at.x + at.upY * aside * way, y: at.y - at.upX * aside * way };
}

/** A row's number, and its yarn. */
function labelOf({ fabric, yarnLetters }: Labelling, row: number): string {
  const { number = null, first = 0, end = 0 } = fabric.rows[row] ?? {};
  if (number === null) return '';
  if (!yarnLetters) return String(number);
  const letters = [...new Set(fabric.yarn.subarray(first, end))].flatMap((yarn) => fabric.yarns[yarn] ?? []);
  return `${number} ${letters.join('')}`;
}

/** How long the arrow is that shows the way round, and how far outside the last round it runs. */
const ROUND_ARROW_U = { length: 3.4, out: 0.95 } as const;

function roundArrow(round: readonly PlacedRow[]): Shape[] {
  const last = round.at(-1);
  if (last === undefined) return [];
  const steps = 10;
  const offset = Math.max(last.level, last.high) + ROUND_ARROW_U.out;
  const points = Array.from({ length: steps + 1 }, (_, k): [number, number] => {
    const along = ((k / steps) * ROUND_ARROW_U.length - ROUND_ARROW_U.length * 0.3) * last.way;
    const at = last.track.point(last.startS + along, last.level, offset);
    return [at.x * U_MM, -at.y * U_MM];
  });
  return arrowShapes(points, 'ink');
}
