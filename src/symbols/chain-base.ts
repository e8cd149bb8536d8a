/** The small chain that the extended stitches stand on. */

import type { Shape } from '../scene/scene.ts';
import { ovalPath } from './oval.ts';
import { drawn, FOOT_GAP_U, type Pen } from './stitch-symbol.ts';

const OVAL_U = 0.36;
const THICKNESS_U = 0.26;

export const CHAIN_BASE = {
  heightU: FOOT_GAP_U + OVAL_U,
  shapes: (pen: Pen): Shape[] => [drawn(ovalPath(-FOOT_GAP_U, -FOOT_GAP_U - OVAL_U, THICKNESS_U), pen)],
};
