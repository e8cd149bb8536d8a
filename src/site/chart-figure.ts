/** A part's chart -> the figure on its page: drawn in the page itself, or shown from its file where it is large. */

import type { PartChart } from '../chart/part-chart.ts';
import { paintSvg } from '../paint/svg.ts';
import { pxFromMm } from '../units.ts';
import type { ChartFigure } from './page-data.ts';

/** Longer drawings are loaded from their own file, so that a page stays under 60 kB compressed. */
const INLINE_LIMIT_CHARACTERS = 400_000;
/** Drawn in the width of a phone, about 90 mm, a wider chart's stitches would be less than half their size on paper. */
const WIDE_MM = 180;

export function chartFigure(
  chart: PartChart,
  id: string,
  { href, leftHandedHref }: { readonly href: string; readonly leftHandedHref: string },
): ChartFigure {
  const svg = paintSvg(chart.scene, { idPrefix: id });
  return {
    id,
    svg: svg.length <= INLINE_LIMIT_CHARACTERS ? svg : null,
    href,
    leftHandedHref,
    title: chart.scene.title,
    alternative: chart.scene.alternative,
    width: String(Math.round(pxFromMm(chart.scene.widthMm))),
    wide: chart.scene.widthMm > WIDE_MM,
    height: String(Math.round(pxFromMm(chart.scene.heightMm))),
  };
}
