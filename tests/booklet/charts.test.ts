import { describe, expect, test } from 'vitest';
import { layOutBooklet } from '../../src/booklet/booklet-pages.ts';
import { OVERLAP_MM } from '../../src/booklet/chart-plan.ts';
import { SAFE_MARGIN_MM } from '../../src/booklet/page-grid.ts';
import { PAPERS } from '../../src/booklet/paper.ts';
import { walkShapes } from '../../src/booklet/walk-shapes.ts';
import { boundsOf } from '../../src/scene/bounds.ts';
import type { Scene, Shape } from '../../src/scene/scene.ts';
import { joined } from '../../src/scene/transforms.ts';
import { fixedWidth } from './fixed-width.ts';
import { bareBooklet, chartScene } from './sample-input.ts';

function pagesWith(...scenes: readonly Scene[]): readonly Scene[] {
  const charts = scenes.map((scene, index) => ({ part: `Part ${index + 1}`, scene, folded: [] }));
  return layOutBooklet({ ...bareBooklet(), charts }, 'A4', fixedWidth).pages;
}

/** Where the symbols of a page stand on it, and what they are drawn by. */
function symbolsOn(page: Scene) {
  return walkShapes(page.shapes).flatMap(({ shape, transform }) =>
    shape.kind === 'use'
      ? [{ at: joined(transform, shape.transform), shapes: page.symbols[shape.symbol], name: shape.symbol }]
      : [],
  );
}

describe('charts in a booklet', () => {
  test('every symbol of a chart is drawn, at one scale', () => {
    const chart = chartScene(30, 20, 4);
    const drawn = pagesWith(chart).flatMap(symbolsOn);
    expect(drawn).toHaveLength(walkShapes(chart.shapes).filter(({ shape }) => shape.kind === 'use').length);
    expect(new Set(drawn.map(({ at }) => at[0])).size).toBe(1);
    for (const { shapes, name } of drawn) expect(shapes, name).toBeDefined();
  });

  test('a chart drawn small keeps its key at full size and its row numbers readable', () => {
    const chart = chartScene(70, 20, 4);
    const key = chart.shapes.slice(-4);
    const rows = chart.shapes.slice(0, -4);
    const marked: Scene = {
      ...chart,
      shapes: [
        ...rows,
        { kind: 'group', transform: null, data: { labels: 'key' }, shapes: key.map(inGroup) },
      ],
    };
    const page = pagesWith(marked).find((candidate) => symbolsOn(candidate).length > 0);
    const texts = walkShapes(page?.shapes ?? []).flatMap(({ shape, transform }) =>
      shape.kind === 'text' ? [{ text: shape.text, sizeMm: shape.sizeMm * transform[0] }] : [],
    );
    expect(symbolsOn(page ?? chart)[0]?.at[0]).toBeLessThan(0.8);
    expect(texts.find(({ text }) => text.startsWith('single crochet'))?.sizeMm).toBeCloseTo(3.2, 6);
    const numbers = texts.filter(({ text }) => /^\d+$/.test(text));
    expect(numbers).toHaveLength(20);
    // 8 pt of 1/72 in.
    for (const { sizeMm } of numbers) expect(sizeMm).toBeGreaterThanOrEqual((8 / 72) * 25.4 - 1e-9);
  });

  test('two charts on one page keep symbols of the same name apart', () => {
    const one = chartScene(5, 4, 4);
    const other = { ...chartScene(5, 4, 4), symbols: { single: [], double: [] } };
    const page = pagesWith(one, other).find((candidate) => symbolsOn(candidate).length > 0);
    const shapes = page ? symbolsOn(page).map((symbol) => symbol.shapes) : [];
    expect(shapes.filter((found) => found === one.symbols.single).length).toBeGreaterThan(0);
    expect(shapes.filter((found) => found === other.symbols.single).length).toBeGreaterThan(0);
  });

  test('spread over sheets, every symbol shows whole inside the frame of one of them', () => {
    const chart = chartScene(130, 160, 4);
    const sheets = pagesWith(chart).filter((page) => symbolsOn(page).length > 0);
    expect(sheets.length).toBeGreaterThan(1);
    const total = walkShapes(chart.shapes).filter(({ shape }) => shape.kind === 'use').length;
    const shown = sheets.map((page) => {
      const frame = markedFrame(page);
      return symbolsOn(page).filter(
        ({ at }) => at[4] >= frame.left && at[4] < frame.right && at[5] >= frame.top && at[5] < frame.bottom,
      ).length;
    });
    expect(shown.reduce((sum, count) => sum + count, 0)).toBe(total);
  });

  test('a line that runs through the whole chart is drawn on every sheet it crosses', () => {
    const chart = chartScene(130, 160, 4);
    const line = {
      kind: 'path' as const,
      parts: [['M', 0, chart.heightMm / 4] as const, ['L', chart.widthMm, chart.heightMm / 4] as const],
      stroke: { ink: 'faint' as const, widthMm: 0.1234 },
      fill: 'none' as const,
    };
    const sheets = pagesWith({ ...chart, shapes: [...chart.shapes, line] }).filter(
      (page) => symbolsOn(page).length > 0,
    );
    const crossed = sheets.map((page) =>
      walkShapes(page.shapes).some(({ shape }) => shape.kind === 'path' && shape.stroke?.widthMm === 0.1234),
    );
    expect(crossed).toEqual([true, true, false, false]);
  });
});

const PAPER_NAMES = Object.values(PAPERS).map(({ name }) => name);

describe.each(PAPER_NAMES)('a chart over several sheets of %s', (paper) => {
  const chart = chartScene(130, 160, 4);
  const pages = layOutBooklet(
    { ...bareBooklet(), charts: [{ part: 'Square', scene: chart, folded: [] }] },
    paper,
    fixedWidth,
  ).pages;
  const sheets = pages.filter((page) => symbolsOn(page).length > 0);

  test('each sheet has a map of all of them, with itself marked on it and no other', () => {
    const marked = sheets.map((page) => groupsWith(page, 'here').map(({ sheet }) => sheet));
    expect(marked).toEqual(sheets.map((_, index) => [String(index + 1)]));
    for (const page of sheets) {
      const numbers = groupsWith(page, 'sheet').map(({ sheet }) => sheet);
      expect(numbers).toEqual(sheets.map((_, index) => String(index + 1)));
    }
  });

  test('before them stands the same map with none of them marked', () => {
    const maps = pages.filter((page) => groupsWith(page, 'sheet').length > 0);
    expect(maps).toHaveLength(sheets.length + 1);
    expect(groupsWith(maps[0] ?? chart, 'here')).toEqual([]);
  });

  test('where two sheets join, each names the other', () => {
    const beside = sheets.map((page) =>
      groupsWith(page, 'neighbour').map(({ neighbour }) => Number(neighbour)),
    );
    const joins = beside.flatMap((others, index) => others.map((other) => [index + 1, other] as const));
    expect(joins.length).toBeGreaterThanOrEqual(2 * (sheets.length - 1));
    for (const [from, to] of joins) expect(beside[to - 1], `sheet ${to}`).toContain(from);
  });

  test('the stitches at a join are drawn on both sheets', () => {
    const drawn = sheets.flatMap((page) => {
      const frame = markedFrame(page);
      return symbolsOn(page).filter(
        ({ at }) =>
          at[4] > frame.left - OVERLAP_MM &&
          at[4] < frame.right + OVERLAP_MM &&
          at[5] > frame.top - OVERLAP_MM &&
          at[5] < frame.bottom + OVERLAP_MM,
      );
    });
    const total = walkShapes(chart.shapes).filter(({ shape }) => shape.kind === 'use').length;
    expect(drawn.length).toBeGreaterThan(total);
  });

  test('every mark of a sheet stands on the paper that a home printer reaches', () => {
    const edge = SAFE_MARGIN_MM - 2.5;
    for (const page of sheets) {
      const marks = page.shapes.filter((shape) => shape.kind === 'group' && shape.data?.neighbour);
      const box = boundsOf(marks);
      expect(box?.left).toBeGreaterThan(edge);
      expect(box?.top).toBeGreaterThan(edge);
      expect(box?.right).toBeLessThan(page.widthMm - edge);
      expect(box?.bottom).toBeLessThan(page.heightMm - edge);
    }
  });
});

test('a chart of more sheets than anyone would lay together is left out, and the booklet says why', () => {
  const huge = { ...chartScene(4, 4, 4), widthMm: 9000, heightMm: 9000 };
  const pages = pagesWith(huge);
  expect(pages.flatMap(symbolsOn)).toEqual([]);
  expect(pages.map(({ alternative }) => alternative).join(' ')).toMatch(/would take \d+ sheets/);
});

/** What groups of a page say of themselves, of those that say a thing at all. */
function groupsWith(page: Scene, name: string): Readonly<Record<string, string>>[] {
  const within = (shapes: readonly Shape[]): Readonly<Record<string, string>>[] =>
    shapes.flatMap((shape) =>
      shape.kind === 'group' ? [...(shape.data?.[name] ? [shape.data] : []), ...within(shape.shapes)] : [],
    );
  return within(page.shapes);
}

/** Key symbols stand in groups of their own, as charts draw them. */
function inGroup(shape: Shape): Shape {
  return shape.kind === 'use' ? { kind: 'group', transform: [1, 0, 0, 1, 0, 0], shapes: [shape] } : shape;
}

/** The rectangle between the corner marks: crosses of two lines, nothing else on a sheet is. */
function markedFrame(page: Scene) {
  const centres = page.shapes.flatMap((shape) => {
    if (shape.kind !== 'path' || shape.parts.length !== 4) return [];
    const [from, to] = [shape.parts[0], shape.parts[1]];
    return from?.[0] === 'M' && to?.[0] === 'L' ? [{ x: (from[1] + to[1]) / 2, y: from[2] }] : [];
  });
  expect(centres).toHaveLength(4);
  const xs = centres.map(({ x }) => x);
  const ys = centres.map(({ y }) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}
