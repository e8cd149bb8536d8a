/** In a browser there is a document already: what stands in for `paint/svg-document.ts` in a page's script. */

import { SVG, type Svg } from '@svgdotjs/svg.js';

export function emptyDrawing(): Svg {
  return SVG();
}
