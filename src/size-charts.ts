/** One size worked -> its charts in either terms, for the right or the left hand; drawn when first asked for. */

import { chartParts } from './chart/chart-parts.ts';
import type { PartChart } from './chart/part-chart.ts';
import { foldings, type WholePart, withFoldings } from './fold-part.ts';
import { once } from './once.ts';
import { partRepeats } from './part-repeats.ts';
import type { PartMultiple } from './proof/part-multiple.ts';

export type ChartsByTerms = Readonly<Record<'US' | 'UK', readonly PartChart[]>>;

/** What charts are drawn from; the multiples are found when the first chart is. */
export type Drawn = Omit<WholePart, 'multiples'> & { readonly multiples: () => readonly PartMultiple[] };

export function sizeCharts(of: Drawn, leftHanded: boolean): ChartsByTerms {
  const us = once(() => draw(of, 'US', leftHanded));
  const uk = once(() => draw(of, 'UK', leftHanded));
  return {
    get US() {
      return us();
    },
    get UK() {
      return uk();
    },
  };
}

function draw(of: Drawn, terms: 'US' | 'UK', leftHanded: boolean): readonly PartChart[] {
  const { pattern, sizeIndex, plan, worked } = of;
  const { fabric, accounts } = worked;
  const multiples = of.multiples();
  const yarnInk = Object.fromEntries(
    pattern.yarns.flatMap(({ letter, hex }) => (hex === null ? [] : [[letter, hex]])),
  );
  const options = {
    terms,
    title: pattern.title,
    key: true,
    yarnInk,
    leftHanded,
    symbols: pattern.symbols,
    repeats: partRepeats(fabric, accounts, multiples, fabric.size),
  };
  const whole: WholePart = { pattern, sizeIndex, plan, worked, multiples };
  return withFoldings(chartParts(fabric, options), options, (part) => foldings(whole, part));
}
