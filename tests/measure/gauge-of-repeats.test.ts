/** Gauges counted in pattern repeats: one is as many stitches as the instructions say, or as the gauge does. */

import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import type { CompiledPattern } from '../../src/compiled.ts';
import { materialsList } from '../../src/measure/materials.ts';

function panel(gauge: string, foundation = 'a multiple of 6 plus 2'): CompiledPattern {
  const sizes = foundation.startsWith('a') ? 'sizes:\n  - {name: small, repeats: 4}\n' : '';
  const text = `title: Eelgrass Panel
terms: US
gauge: {${gauge}}
yarn:
  A: {colour: reed, weight: 4, fibre: wool}
${sizes}parts:
  - name: Panel
    work: |
      Foundation: Ch ${foundation}.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn.
      Rows 2-12: Ch 1, sc in each st across, turn.
`;
  return compilePattern({ file: 'panel', text }, 'panel');
}

const codes = ({ diagnostics }: CompiledPattern): string[] => diagnostics.map(({ code }) => code);

describe('a gauge of pattern repeats', () => {
  test('measures both ways as its swatch does: 2 repeats to 15.2 cm and 12 rows to 14 cm', () => {
    const of = panel('repeats: 2, rows: 12, over: 15.2 x 14 cm');
    expect(codes(of)).toEqual([]);
    // 25 stitches where 12 are 152 mm, and 12 rows.
    expect(of.sizes[0]?.measures.widthMm).toBeCloseTo((25 * 152) / 12, 6);
    expect(of.sizes[0]?.measures.heightMm).toBeCloseTo(140, 6);
  });

  test('is the gauge of as many stitches', () => {
    const [ofRepeats, ofStitches] = ['repeats: 2.5', 'stitches: 15'].map((counted) =>
      panel(`${counted}, rows: 12, over: 10 cm`),
    );
    expect(ofRepeats?.sizes[0]?.measures).toEqual(ofStitches?.sizes[0]?.measures);
  });

  test('says itself how many stitches they are where the chain is a plain number', () => {
    const of = panel('repeats: 2, stitches: 12, rows: 12, over: 10 cm', '26');
    expect(codes(of)).toEqual([]);
    expect(of.sizes[0]?.measures.widthMm).toBeCloseTo((25 * 100) / 12, 6);
  });

  test('is printed with both', () => {
    const { pattern } = panel('repeats: 2, rows: 12, over: 10 cm, of: eelgrass pattern');
    if (pattern === null) throw new Error('no pattern');
    expect(materialsList(pattern, null, 'US', 'metric').gauge).toBe(
      '2 repeats (12 sts) and 12 rows = 10 cm (4 in) in eelgrass pattern',
    );
  });

  test('without either measures nothing, and says why', () => {
    const of = panel('repeats: 2, rows: 12, over: 10 cm', '26');
    expect(codes(of)).toEqual(['gauge/repeat-unknown']);
    expect(of.sizes[0]?.measures).toMatchObject({ widthMm: null, heightMm: null, yarn: [] });
  });

  test.each([
    ['rows: 12, over: 10 cm', 'file/missing'],
    ['repeats: 0, rows: 12, over: 10 cm', 'file/out-of-range'],
    ['repeats: -2, rows: 12, over: 10 cm', 'file/out-of-range'],
    ['repeats: 5000, rows: 12, over: 10 cm', 'file/out-of-range'],
    ['repeats: two, rows: 12, over: 10 cm', 'file/wrong-kind'],
    ['repeats: 2, rows: 12', 'file/missing'],
    ['repeats: 2, rows: 0, over: 10 cm', 'file/out-of-range'],
    ['repeats: 2, rows: 12, over: 0 cm', 'file/out-of-range'],
    ['repeats: 2, rows: 12, over: ten', 'file/measure'],
    ['stitches: 0, rows: 12, over: 10 cm', 'file/out-of-range'],
    ['stitches: -16, rows: 12, over: 10 cm', 'file/out-of-range'],
    ['stitches: 16, rows: 12, over: 90 m', 'file/out-of-range'],
    ['repeats: 2, stitches: 20, rows: 12, over: 10 cm', 'gauge/repeat'],
  ])('{%s} is told as %s', (gauge, code) => {
    expect(codes(panel(gauge))).toContain(code);
  });
});
