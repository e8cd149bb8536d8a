/**
 * How long charts of 10,000 and of 40,000 stitches take to be placed and painted, and how that grows: four times the
 * stitches should take about four times as long. The yardstick is working the same stitches.
 */

import { chartParts } from '../../src/chart/chart-parts.ts';
import { planSize } from '../../src/check/plan-size.ts';
import type { Fabric } from '../../src/fabric/fabric.ts';
import { workSize } from '../../src/fabric/work.ts';
import { paintSvg } from '../../src/paint/svg.ts';
import { readPattern } from '../../src/pattern/read-pattern.ts';
import { patternText } from '../fabric/work-text.ts';
import { quartileMs, tell } from './watch.ts';

function worked(stitches: number, rows: number): () => Fabric {
  const work = `Ch ${stitches + 2}.\nRow 1: Dc in 4th ch from hook (skipped 3 ch count as dc), dc in each ch across, turn.\nRow 2: Ch 3 (counts as dc), sk first dc, dc in each st across, turn.\nRows 3-${rows}: Rep Row 2.`;
  const { pattern } = readPattern({ file: 'bench', text: patternText({ work }) }, 'bench');
  if (pattern === null) throw new Error('no pattern');
  const { plan } = planSize(pattern, 0);
  if (plan === null) throw new Error('no size');
  return () => workSize(pattern, 0, plan).fabric;
}

export function drawCharts(): void {
  for (const [name, work] of [
    ['10,000 stitches', worked(97, 100)],
    ['40,000 stitches', worked(197, 200)],
  ] as const) {
    const fabric = work();
    tell(`${name} in a chart`, [
      ['worked: the yardstick', quartileMs(work)],
      ['placed and painted as SVG', quartileMs(() => draw(fabric))],
    ]);
  }
}

function draw(fabric: Fabric): void {
  const [chart] = chartParts(fabric, { terms: 'US', title: 'x', key: false });
  if (chart === undefined || paintSvg(chart.scene, { idPrefix: 'c', colours: 'plain' }).length < 100_000)
    throw new Error('no chart');
}
