/** Charts of large pieces drawn with a window of what repeats: what they leave out, say, and refuse to leave out. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { U_MM } from '../../src/chart/metrics.ts';
import type { PartChart } from '../../src/chart/part-chart.ts';
import { compilePattern } from '../../src/compile.ts';
import type { CompiledSize } from '../../src/compiled.ts';
import type { Scene, Shape } from '../../src/scene/scene.ts';
import { textsOf } from './work-text.ts';

const ROOT = join(import.meta.dirname, '../..');
const THROW = readFileSync(join(ROOT, 'tests/booklet/large/shell-throw/pattern.yaml'), 'utf8');

function sizeOf(text: string, name: string): CompiledSize {
  const { sizes, diagnostics } = compilePattern({ file: 'x.yaml', text }, 'x');
  expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  const size = sizes.find((each) => each.size.name === name);
  if (size === undefined) throw new Error(`no size ${name}`);
  return size;
}

function firstChart({ charts }: CompiledSize): PartChart {
  const [chart] = charts.US;
  if (chart === undefined) throw new Error('no chart');
  return chart;
}

/** A pattern of one part with these rows. */
function withRows(rows: readonly string[]): string {
  const work = rows.map((row) => `      ${row}\n`).join('');
  return `title: T\nterms: US\nyarn:\n  A: {colour: red, weight: 4, fibre: wool}\nsizes:\n  - {name: one}\nparts:\n  - name: P\n    work: |\n${work}`;
}

/** Symbols drawn in each row. */
function drawnByRow(scene: Scene): Map<string, number> {
  const found = new Map<string, number>();
  const walk = (shapes: readonly Shape[], row: string | null): void => {
    for (const shape of shapes) {
      if (shape.kind === 'group') walk(shape.shapes, shape.data?.row ?? row);
      else if (shape.kind === 'use' && row !== null) found.set(row, (found.get(row) ?? 0) + 1);
    }
  };
  walk(scene.shapes, null);
  return found;
}

describe('a throw of 33 shells, three of which are drawn', () => {
  const size = sizeOf(THROW, 'throw');
  const chart = firstChart(size);
  const [across, up, both] = chart.folded;

  test('each row is drawn without the thirty shells that are left out', () => {
    const [whole, few] = [chart.scene, across?.scene ?? chart.scene].map(drawnByRow);
    expect(few?.size).toBe(whole?.size);
    // A shell and the single crochet beside it are 6 symbols; in the foundation they stand over 6 chains.
    for (const [row, symbols] of whole ?? []) expect(symbols - (few?.get(row) ?? 0), row).toBe(30 * 6);
  });

  test('says under its bracket how often to work what it shows, and in the key what the bracket means', () => {
    const texts = textsOf(across?.scene ?? chart.scene);
    expect(texts).toContain('work these 3 repeats 11 times');
    expect(texts).toContain('drawn once: work what stands over it as often as it says');
    expect(textsOf(chart.scene)).not.toContain('work these 3 repeats 11 times');
  });

  test('rows that repeat two others are drawn once, with the row up to which they are worked', () => {
    expect(drawnByRow(up?.scene ?? chart.scene).size).toBe(6);
    expect(textsOf(up?.scene ?? chart.scene)).toContain('up to row 61');
    expect(both?.words).toBe(
      'Not every stitch is drawn. Over the bracket, work these 3 repeats 11 times. Rows 4 and 5 are worked in turn, up to row 61.',
    );
  });

  test('told in words it is the whole, and what is not drawn', () => {
    for (const { scene, words } of chart.folded)
      expect(scene.alternative).toBe(`${chart.scene.alternative} ${words}`);
    expect(chart.scene.alternative).toMatch(/33 shell|199 stitches/);
  });

  test('for left-handed makers it is folded alike', () => {
    const [left] = size.leftHandedCharts.US;
    expect(left?.folded.map(({ words }) => words)).toEqual(chart.folded.map(({ words }) => words));
    expect(left?.folded[0]?.scene.shapes).not.toEqual(across?.scene.shapes);
  });
});

describe('nothing is left out that is not as what is drawn', () => {
  const ROWS = [
    'With A, ch 122.',
    'Row 1: Sc in 2nd ch from hook, *ch 1, sk 1 ch, sc in next ch; rep from * across, turn.',
  ];

  test('rows that repeat in their stitches are drawn once', () => {
    const text = withRows([
      ...ROWS,
      'Row 2: Ch 1, sc in each st and ch-1 sp across, turn.',
      'Rows 3-20: Ch 1, sc in each st across, turn.',
    ]);
    expect(firstChart(sizeOf(text, 'one')).folded.map(({ words }) => words)).toContain(
      'Not every stitch is drawn. Rows 3 and 4 are worked in turn, up to row 20.',
    );
  });

  test('not where each row has a stitch more than the one before', () => {
    const text = withRows([
      'With A, ch 11.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn.',
      'Rows 2-20: Ch 1, 2 sc in first st, sc in each st across, turn.',
    ]);
    expect(firstChart(sizeOf(text, 'one')).folded).toEqual([]);
  });

  test('nor a repeat that rows farther up do not share', () => {
    const text = withRows([
      ...ROWS,
      'Row 2: Ch 1, sc in first st, 2 sc in next ch-1 sp, sc in each st and ch-1 sp across, turn.',
      'Row 3: Ch 1, sc in next 5 sts, *dc in next 3 sts, sc in next st; rep from * 5 more times, sc in each st across.',
    ]);
    const folded = firstChart(sizeOf(text, 'one')).folded;
    expect(folded.filter(({ words }) => words.includes('bracket'))).toEqual([]);
  });

  test('nor a piece with an edging worked onto it', () => {
    const text = THROW.replace(
      '      Fasten off.\n',
      '      Fasten off.\n  - name: Edging\n    onto: Throw\n    work: |\n      Rnd 1: Join A with sl st in first st, ch 1, sc in each st to last st, 3 sc in last st, work 60 sc evenly along row ends, sc in each ch along foundation, work 60 sc evenly along row ends; join with sl st in first sc.\n',
    );
    const { sizes } = compilePattern({ file: 'x.yaml', text }, 'x');
    const [chart] = sizes[1]?.charts.US ?? [];
    expect(chart?.part).toBe('Throw');
    expect(chart?.folded).toEqual([]);
  });
});

test('the bracket stands over the chains that the first repeat is worked into, also behind chains that were skipped', () => {
  const text = withRows([
    'With A, ch 22.',
    'Row 1: Dc in 4th ch from hook (3 skipped chs count as dc), *ch 1, sk 1 ch, dc in next ch; rep from * across.',
  ]);
  const size = sizeOf(text, 'one');
  const bracket = firstChart(size).scene;
  expect(textsOf(bracket)).toContain('2 ch, 9 times');
  // A chain is drawn from its left end; the bracket reaches to the right end of the fifth chain from the hook, the first that the repeat uses.
  expect(bracketRightOf(bracket)).toBeCloseTo(chainXOf(bracket, 4) + U_MM, 0);
});

/** The right end of the bracket, and the right side of a foundation chain counted from the hook, in the drawing's own mm. */
function bracketRightOf(scene: Scene): number {
  const group = groupsOf(scene.shapes).find(({ data }) => data?.labels === 'repeat');
  const [path] = group?.shapes ?? [];
  return path?.kind === 'path' ? Math.max(...path.parts.map(([, x = 0]) => Number(x))) : Number.NaN;
}

function chainXOf(scene: Scene, fromHook: number): number {
  const foundation = groupsOf(scene.shapes).find(({ data }) => data?.row === '0');
  const chains = (foundation?.shapes ?? []).flatMap((shape) =>
    shape.kind === 'use' ? [shape.transform[4]] : [],
  );
  return chains[chains.length - 1 - fromHook] ?? Number.NaN;
}

function groupsOf(shapes: readonly Shape[]): Extract<Shape, { kind: 'group' }>[] {
  return shapes.flatMap((shape) => (shape.kind === 'group' ? [shape, ...groupsOf(shape.shapes)] : []));
}
