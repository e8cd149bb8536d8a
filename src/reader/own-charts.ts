/** A pattern made over -> its charts, drawn into the places kept for them. Loaded once the words stand in the page. */

import { once } from '../once.ts';
import type { OwnMade } from '../own/make-own.ts';
import { paintSvg } from '../paint/svg.ts';
import { partMultiples } from '../proof/part-multiple.ts';
import { type Drawn, sizeCharts } from '../size-charts.ts';
import { drawing, element } from './markup.ts';

/** A drawing longer than this would make a phone's browser stand still. */
const MOST_CHARACTERS = 2_500_000;
/** Drawn in the width of a phone, about 90 mm, a wider chart's stitches would be less than half their size on paper. */
const WIDE_MM = 180;

/** What the charts of an own size are drawn from; the booklet takes the same. */
export function drawnFrom({ pattern, index, plan, worked }: OwnMade): Drawn {
  return {
    pattern,
    sizeIndex: index,
    plan,
    worked,
    multiples: once(() => partMultiples(pattern, [{ index, plan, readings: worked.readings }], true)),
  };
}

/** `places` by part; those of parts without a chart are taken away. */
export function drawCharts(
  made: OwnMade,
  terms: 'US' | 'UK',
  leftHanded: boolean,
  places: ReadonlyMap<string, HTMLElement>,
): void {
  const charts = sizeCharts(drawnFrom(made), leftHanded)[terms];
  for (const [part, place] of places) {
    const chart = charts.find((one) => one.part === part);
    if (chart === undefined) {
      place.parentElement?.classList.remove('with-chart');
      place.remove();
      continue;
    }
    const svg = paintSvg(chart.scene, { idPrefix: place.id });
    if (svg.length > MOST_CHARACTERS) {
      place.replaceChildren(
        element(
          'p',
          { class: 'remark' },
          'This size is too large for a chart on a page. The booklet has it, over several sheets.',
        ),
      );
      continue;
    }
    const wide = chart.scene.widthMm > WIDE_MM;
    place.replaceChildren(
      element(
        'div',
        { class: wide ? 'drawing wide' : 'drawing', ...(wide ? { tabindex: '0' } : {}) },
        drawing(svg),
      ),
      element(
        'figcaption',
        {},
        `${chart.scene.title}. The same stitches stand in words in the written rows.`,
      ),
    );
  }
}
