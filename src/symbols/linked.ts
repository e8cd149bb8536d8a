/** How many links in, a T out whose slashes lie level and reach to its neighbours: the linked stitches. */

import type { PathPart, Shape } from '../scene/scene.ts';
import { drawn, FOOT_GAP_U, line, type Pen, type StitchSymbol } from './stitch-symbol.ts';
import { topBar } from './tall-stitch.ts';

/** As wide as its place in the row, so that the links of neighbours meet. */
const LINK_U = 0.78;
const LINKS_APART_U = 0.5;

export function linkedStitch(links: number, heightU: number): StitchSymbol {
  const stem = (lengthU: number, pen: Pen): Shape => {
    const middle = (FOOT_GAP_U + lengthU) / 2;
    const apart = Math.min(LINKS_APART_U, (lengthU - FOOT_GAP_U) / (links + 1));
    const across = Array.from({ length: links }, (_, k): PathPart[] => {
      const y = -(middle + (k - (links - 1) / 2) * apart);
      return line(-LINK_U / 2, y, LINK_U / 2, y);
    });
    return drawn([...line(0, -FOOT_GAP_U, 0, -lengthU), ...across.flat()], pen);
  };
  return {
    heightU,
    widthU: 0.84,
    barred: true,
    draw: (lengthU, pen) => [stem(lengthU, pen), topBar(lengthU, pen)],
    leg: (lengthU, _bulgeU, pen) => [stem(lengthU, pen)],
  };
}
