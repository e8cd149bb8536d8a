import { describe, expect, test } from 'vitest';
import {
  LEGIBLE_SCALE,
  NEIGHBOUR_MM,
  OVERLAP_MM,
  planChart,
  tileHeadingMm,
} from '../../src/booklet/chart-plan.ts';
import { pageGrid } from '../../src/booklet/page-grid.ts';
import { PAPERS } from '../../src/booklet/paper.ts';

const A4 = { paper: 'A4', form: 'flat' } as const;
const ROOM = { headingMm: 12, sheetHeadingMm: () => 14, keyMm: () => 0, keyBeside: () => null };
const PAPER_NAMES = Object.values(PAPERS).map(({ name }) => name);

describe('getting a chart on paper', () => {
  test('a small chart stands in the text at its own size', () => {
    expect(planChart({ widthMm: 120, heightMm: 100 }, A4, ROOM)).toEqual({
      kind: 'in text',
      scale: 1,
    });
  });

  test('a wide one is drawn smaller, to the width of the text', () => {
    const plan = planChart({ widthMm: 200, heightMm: 100 }, A4, ROOM);
    expect(plan).toEqual({ kind: 'in text', scale: pageGrid(A4, 'portrait').bodyWidthMm / 200 });
  });

  test('one too wide to read upright is turned on its side', () => {
    const plan = planChart({ widthMm: 400, heightMm: 200 }, A4, ROOM);
    expect(plan).toMatchObject({ kind: 'sheet', orientation: 'landscape' });
    expect('scale' in plan && plan.scale).toBeGreaterThanOrEqual(LEGIBLE_SCALE);
  });

  test('a tall one whose key has no room below it has it at its right', () => {
    const room = { ...ROOM, keyMm: () => 70, keyBeside: () => ({ widthMm: 80, heightMm: 60 }) };
    const plan = planChart({ widthMm: 120, heightMm: 400 }, A4, room);
    expect(plan).toMatchObject({ kind: 'sheet', orientation: 'portrait', keyBesideMm: 80 });
    expect('scale' in plan && plan.scale).toBeGreaterThanOrEqual(LEGIBLE_SCALE);
    expect('scale' in plan && plan.scale * 120 + 80).toBeLessThanOrEqual(
      pageGrid(A4, 'portrait').bodyWidthMm,
    );
  });

  test('one too large for a sheet is spread over as few sheets as keep it legible', () => {
    const plan = planChart({ widthMm: 560, heightMm: 660 }, A4, ROOM);
    expect(plan).toMatchObject({ kind: 'sheets', across: 2, down: 2 });
    expect('scale' in plan && plan.scale).toBeGreaterThanOrEqual(LEGIBLE_SCALE);
  });

  test.each(PAPER_NAMES)('the tiles of a sheet hold the whole chart and fit %s', (paper) => {
    const chart = { widthMm: 1400, heightMm: 900 };
    const plan = planChart(chart, { paper, form: 'flat' }, ROOM);
    if (plan.kind !== 'sheets') throw new Error('expected sheets');
    const grid = pageGrid({ paper, form: 'flat' }, plan.orientation);
    expect(plan.tileWidthMm * plan.across).toBeCloseTo(chart.widthMm * plan.scale, 6);
    expect(plan.tileHeightMm * plan.down).toBeCloseTo(chart.heightMm * plan.scale, 6);
    // With the strips that overlap and the numbers of the sheets beyond them.
    const joins = (sheets: number) => Math.min(sheets - 1, 2) * (OVERLAP_MM + NEIGHBOUR_MM);
    expect(plan.tileWidthMm + joins(plan.across)).toBeLessThanOrEqual(grid.bodyWidthMm + 1e-9);
    expect(plan.tileHeightMm + joins(plan.down) + tileHeadingMm(grid)).toBeLessThanOrEqual(
      grid.bodyHeightMm + 1e-9,
    );
  });

  test('an enormous chart is left out rather than drawn too small to read', () => {
    expect(
      planChart({ widthMm: 6000, heightMm: 9000 }, { paper: 'Letter', form: 'flat' }, ROOM),
    ).toMatchObject({
      kind: 'too large',
    });
  });
});
