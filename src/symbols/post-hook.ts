/** The hooks that the foot of a post stitch ends in, round the stem of the stitch below: one for each face, mirrored. */

import type { PathPart, Shape } from '../scene/scene.ts';
import { drawn, type Pen } from './stitch-symbol.ts';

/** Where the hook takes over from the stem above the head of the stitch below, and how far it reaches under it. */
export const HOOK_FROM_U = 0.16;
export const HOOK_DEPTH_U = 0.46;
const ASIDE_U = 0.19;
/** Its open end stays well clear of the bar above, or it would look shut on both sides. */
const TIP_U = 0.3;

/** At the head of the stitch below, along its stem. Published keys disagree on the side; ours opens right for the front. */
export const POST_HOOKS = {
  front: (pen: Pen): Shape[] => hook(1, pen),
  back: (pen: Pen): Shape[] => hook(-1, pen),
} as const;

function hook(side: 1 | -1, pen: Pen): Shape[] {
  const aside = ASIDE_U * side;
  // The bottom of a cubic whose controls lie at d is three quarters of the way down to them.
  const bottom = HOOK_DEPTH_U / 0.75;
  const parts: PathPart[] = [
    ['M', 0, -HOOK_FROM_U],
    ['C', 0, -HOOK_FROM_U / 4, -aside, -HOOK_FROM_U / 4, -aside, 0.14],
    ['C', -aside, bottom, aside * 1.3, bottom, aside * 1.5, TIP_U],
  ];
  return [drawn(parts, pen)];
}
