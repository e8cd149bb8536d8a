/** The slip stitch: a solid oval, flattened, across the way the stitch stands. */

import type { Shape } from '../scene/scene.ts';
import type { StitchSymbol } from './stitch-symbol.ts';

const WIDTH_U = 0.4;
const THICKNESS_U = 0.24;
const QUARTER = 0.5523;

const draw = (lengthU: number): Shape[] => {
  const rx = WIDTH_U / 2;
  const ry = THICKNESS_U / 2;
  const y = -lengthU / 2;
  return [
    {
      kind: 'path',
      parts: [
        ['M', -rx, y],
        ['C', -rx, y - ry * QUARTER, -rx * QUARTER, y - ry, 0, y - ry],
        ['C', rx * QUARTER, y - ry, rx, y - ry * QUARTER, rx, y],
        ['C', rx, y + ry * QUARTER, rx * QUARTER, y + ry, 0, y + ry],
        ['C', -rx * QUARTER, y + ry, -rx, y + ry * QUARTER, -rx, y],
        ['Z'],
      ],
      stroke: null,
      fill: 'ink',
    },
  ];
};

export const slipStitch: StitchSymbol = {
  heightU: 0.36,
  widthU: 0.7,
  draw: (lengthU) => draw(lengthU),
  leg: (lengthU) => draw(lengthU),
  barred: false,
};
