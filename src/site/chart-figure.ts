/** A part's chart -> the figure on its page: drawn in the page itself, or shown from its file where it is large. */

import type { PartChart } from '../compiled.ts';
import { paintSvg } from '../paint/svg.ts';
import type { ChartFigure } from './page-data.ts';

/** Longer drawings are loaded from their own file, so that the words of a page are there at once. */
const INLINE_LIMIT_CHARACTERS = 200_000;
/** CSS pixels in a millimetre (CSS Values and Units 4: 96 to the inch). */
const PX_PER_MM = 96 / 25.4;

export function chartFigure(chart: PartChart, id: string, href: string): ChartFigure {
  const svg = paintSvg(chart.scene, { idPrefix: id });
  return {
    id,
    svg: svg.length <= INLINE_LIMIT_CHARACTERS ? svg : null,
    href,
    title: chart.scene.title,
    alternative: chart.scene.alternative,
    width: String(Math.round(chart.scene.widthMm * PX_PER_MM)),
    height: String(Math.round(chart.scene.heightMm * PX_PER_MM)),
  };
}
