/** Nothing in, an empty SVG drawing out: the only file that knows which document svg.js draws into. */

import { registerWindow, SVG, type Svg } from '@svgdotjs/svg.js';
import { createSVGWindow } from 'svgdom';

/** svg.js keeps its window for the whole process, so it is made once; every drawing gets a root of its own. */
let registered = false;

export function emptyDrawing(): Svg {
  if (!registered) {
    const window = createSVGWindow();
    registerWindow(window, window.document);
    registered = true;
  }
  return SVG();
}
