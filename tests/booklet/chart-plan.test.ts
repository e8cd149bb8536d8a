import { describe, expect, test } from 'vitest';
import { LEGIBLE_SCALE, MOST_SHEETS, planChart } from '../../src/booklet/chart-plan.ts';
import { pageGrid } from '../../src/booklet/page-grid.ts';

describe('getting a chart on paper', () => {
  test('a small chart stands in the text at its own size', () => {
    expect(planChart({ widthMm: 120, heightMm: 100 }, 'A4', 12, () => 0)).toEqual({
      kind: 'in text',
      scale: 1,
    });
  });

  test('a wide one is drawn smaller, to the width of the text', () => {
    const plan = planChart({ widthMm: 200, heightMm: 100 }, 'A4', 12, () => 0);
    expect(plan).toEqual({ kind: 'in text', scale: pageGrid('A4', 'portrait').bodyWidthMm / 200 });
  });

  test('one too wide to read upright is turned on its side', () => {
    const plan = planChart({ widthMm: 400, heightMm: 200 }, 'A4', 12, () => 0);
    expect(plan).toMatchObject({ kind: 'sheet', orientation: 'landscape' });
    expect(plan.scale).toBeGreaterThanOrEqual(LEGIBLE_SCALE);
  });

  test('one too large for a sheet is spread over as few sheets as keep it legible', () => {
    const plan = planChart({ widthMm: 560, heightMm: 660 }, 'A4', 12, () => 0);
    expect(plan).toMatchObject({ kind: 'sheets', across: 2, down: 2 });
    expect(plan.scale).toBeGreaterThanOrEqual(LEGIBLE_SCALE);
  });

  test.each(['A4', 'Letter'] as const)('the tiles of a sheet hold the whole chart and fit %s', (paper) => {
    const chart = { widthMm: 1400, heightMm: 900 };
    const plan = planChart(chart, paper, 12, () => 0);
    if (plan.kind !== 'sheets') throw new Error('expected sheets');
    const grid = pageGrid(paper, plan.orientation);
    expect(plan.tileWidthMm * plan.across).toBeCloseTo(chart.widthMm * plan.scale, 6);
    expect(plan.tileHeightMm * plan.down).toBeCloseTo(chart.heightMm * plan.scale, 6);
    expect(plan.tileWidthMm).toBeLessThan(grid.bodyWidthMm);
    expect(plan.tileHeightMm).toBeLessThan(grid.bodyHeightMm);
  });

  test('an enormous chart is drawn smaller rather than over more sheets than anyone would tape', () => {
    const plan = planChart({ widthMm: 6000, heightMm: 9000 }, 'Letter', 12, () => 0);
    if (plan.kind !== 'sheets') throw new Error('expected sheets');
    expect(plan.across * plan.down).toBeLessThanOrEqual(MOST_SHEETS);
    expect(plan.scale).toBeLessThan(LEGIBLE_SCALE);
  });
});
