/** The chains that one repeat of a piece stands over in, a bracket under them with its count out. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Shape } from '../scene/scene.ts';
import type { Layout } from './layout.ts';
import { LABEL_MM, U_MM } from './metrics.ts';

/** Where a part repeats: chains of its foundation, counted from where the first row begins. */
export interface Repeat {
  readonly part: string;
  readonly from: number;
  readonly chains: number;
  /** How often it is worked. */
  readonly times: number;
}

const DOWN_MM = 2.4;
const TICK_MM = 1.4;
const LINE_MM = 0.3;
/** Beyond the middle of the outermost chains. */
const HALF_U = 0.42;

/** `bottomMm` is the lowest of what is drawn; empty where the chains are not laid in a straight line. */
export function repeatBracket(
  fabric: Fabric,
  layout: Layout,
  foundation: number,
  repeat: Repeat,
  bottomMm: number,
): Shape[] {
  const { first = 0, end = 0 } = fabric.rows[foundation] ?? {};
  const nearest = end - 1 - repeat.from;
  const furthest = nearest - repeat.chains + 1;
  if (furthest < first || repeat.times < 2) return [];
  const ys = [nearest, furthest].map((i) => layout.footY[i] ?? 0);
  if (Math.abs((ys[0] ?? 0) - (ys[1] ?? 0)) > 0.01) return [];
  const xs = [nearest, furthest].map((i) => layout.anchorX[i] ?? 0);
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
      text: `${repeat.chains} ch, ${repeat.times} times`,
      sizeMm: LABEL_MM.size,
      face: 'text',
      align: 'middle',
      ink: 'ink',
    },
  ];
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
