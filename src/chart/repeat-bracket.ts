/** The chains that one repeat of a piece stands over in, a bracket under them with its count out. */

import { type Fabric, NONE } from '../fabric/fabric.ts';
import type { Shape } from '../scene/scene.ts';
import type { Layout } from './layout.ts';
import { LABEL_MM, U_MM } from './metrics.ts';

/** Where a part repeats: stitches or chains that a row is worked into, counted from where it begins. */
export interface Repeat {
  readonly part: string;
  /** The row, or the foundation, that is worked into; and the first stitch of the row that repeats. */
  readonly row: number;
  readonly worked: number;
  /** Of the row that repeats; null for the first row, whose repeat is told in chains. */
  readonly label: string | null;
  readonly from: number;
  readonly places: number;
  /** How often it is worked. */
  readonly times: number;
  /** Said instead of the chains and how often. */
  readonly words?: string;
}

const DOWN_MM = 2.4;
const TICK_MM = 1.4;
const LINE_MM = 0.3;
/** Beyond the middle of the outermost chains. */
const HALF_U = 0.42;
/** Tops that differ by more are no straight line. */
const UNEVEN_U = 0.3;

/** `bottomMm` is the lowest of what is drawn; empty where what is worked into does not lie in a straight line. */
export function repeatBracket(fabric: Fabric, layout: Layout, repeat: Repeat, bottomMm: number): Shape[] {
  const places = placesOf(fabric, repeat).slice(repeat.from, repeat.from + repeat.places);
  if (places.length < repeat.places || repeat.times < 2) return [];
  const ys = places.map((i) => layout.anchorY[i] ?? 0);
  if (Math.max(...ys) - Math.min(...ys) > UNEVEN_U) return [];
  const xs = places.map((i) => layout.anchorX[i] ?? 0);
  const left = (Math.min(...xs) - HALF_U) * U_MM;
  const right = (Math.max(...xs) + HALF_U) * U_MM;
  const y = bottomMm + DOWN_MM;
  return [
    {
      kind: 'path',
      parts: [
        ['M', left, y - TICK_MM],
        ['L', left, y],
        ['L', right, y],
        ['L', right, y - TICK_MM],
      ],
      stroke: { ink: 'ink', widthMm: LINE_MM },
      fill: 'none',
    },
    {
      kind: 'text',
      x: (left + right) / 2,
      y: y + LABEL_MM.size * 1.15,
      text: repeat.words ?? wordsOf(repeat),
      sizeMm: LABEL_MM.size,
      face: 'text',
      align: 'middle',
      ink: 'ink',
    },
  ];
}

/** In the order the row on them meets them. */
function placesOf(fabric: Fabric, { row, worked, label }: Repeat): number[] {
  const { first = 0, end = 0, direction } = fabric.rows[row] ?? {};
  const all = Array.from({ length: end - first }, (_, k) => first + k);
  // Chains are met from the last one made, whichever way the row then goes.
  if (label === null) return all.reverse();
  const counted = all.filter((i) => (fabric.countsAs[i] ?? NONE) !== NONE);
  return fabric.rows[fabric.row[worked] ?? 0]?.direction === direction ? counted : counted.reverse();
}

function wordsOf({ label, places, times }: Repeat): string {
  return label === null ? `${places} ch, ${times} times` : `${label}: ${places} sts, ${times} times`;
}

/** As it stands in the key. */
export function bracketSample(): Shape[] {
  return [
    {
      kind: 'path',
      parts: [
        ['M', -3, -TICK_MM / 2],
        ['L', -3, TICK_MM / 2],
        ['L', 3, TICK_MM / 2],
        ['L', 3, -TICK_MM / 2],
      ],
      stroke: { ink: 'ink', widthMm: LINE_MM },
      fill: 'none',
    },
  ];
}

/** The same beside rows. */
export function upBracketSample(): Shape[] {
  return [
    {
      kind: 'path',
      parts: [
        ['M', TICK_MM / 2, -2],
        ['L', -TICK_MM / 2, -2],
        ['L', -TICK_MM / 2, 2],
        ['L', TICK_MM / 2, 2],
      ],
      stroke: { ink: 'ink', widthMm: LINE_MM },
      fill: 'none',
    },
  ];
}
