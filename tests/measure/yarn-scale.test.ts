/** Yarn worked out from what the designer knows of her own, and gauges counted in other ways than over a square. */

import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import type { CompiledPattern } from '../../src/compiled.ts';
import { materialsList } from '../../src/measure/materials.ts';

const GAUGE = 'stitches: 20, rows: 20, over: 10 cm, of: single crochet';

/** A cloth of 20 x 20 sc, and a large one twice as wide. */
function cloth({ gauge = GAUGE, yarn = '', sizes = true } = {}): CompiledPattern {
  const text = `title: Eelgrass Cloth
terms: US
gauge: {${gauge}}
yarn:
  A: {colour: reed, weight: 4, fibre: wool${yarn === '' ? '' : `, ${yarn}`}}
${sizes ? 'sizes:\n  - {name: small}\n  - {name: large}\n' : ''}parts:
  - name: Cloth
    work: |
      Ch ${sizes ? '21 (41)' : '21'}.
      Row 1: Sc in 2nd ch from hook and in each ch across, turn.
      Rows 2-20: Ch 1, sc in each st across, turn.
`;
  const compiled = compilePattern({ file: 'cloth', text }, 'cloth');
  expect(compiled.diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  return compiled;
}

function lengthsM(compiled: CompiledPattern): number[] {
  return compiled.sizes.map(({ measures }) => measures.yarn[0]?.lengthM ?? Number.NaN);
}

const ALLOWANCE = 1.1;

describe('what the designer used', () => {
  test('of a size stands for that size, with the allowance', () => {
    const [small] = lengthsM(cloth({ yarn: 'used: {small: 30 m}' }));
    expect(small).toBeCloseTo(30 * ALLOWANCE, 6);
  });

  test('of one size scales another by its stitches and tails, not by its area', () => {
    // By the figures small takes 400 sc x 53 mm, its chain and 30 cm of tails; large twice the stitches, the same tails.
    const [smallFigures = 0, largeFigures = 0] = lengthsM(cloth());
    const [, large] = lengthsM(cloth({ yarn: 'used: {small: 30 m}' }));
    expect(large).toBeCloseTo((30 * ALLOWANCE * largeFigures) / smallFigures, 6);
    expect(largeFigures / smallFigures).toBeLessThan(2);
    expect(largeFigures / smallFigures).toBeGreaterThan(1.95);
  });

  test('weighed is as long as the ball says', () => {
    const [small] = lengthsM(cloth({ yarn: 'ball: {length: 180 m, mass: 100 g}, used: {small: 20 g}' }));
    expect(small).toBeCloseTo(36 * ALLOWANCE, 6);
  });

  test('needs no size where there is only one', () => {
    expect(lengthsM(cloth({ yarn: 'used: 30 m', sizes: false }))[0]).toBeCloseTo(30 * ALLOWANCE, 6);
  });

  test('of two sizes stands for each of them', () => {
    const [small, large] = lengthsM(cloth({ yarn: 'used: {small: 30 m, large: 55 m}' }));
    expect(small).toBeCloseTo(30 * ALLOWANCE, 6);
    expect(large).toBeCloseTo(55 * ALLOWANCE, 6);
  });

  test('goes before a swatch, and a swatch before the figures', () => {
    const took = `${GAUGE}, took: 25 m`;
    const basis = (compiled: CompiledPattern): unknown => compiled.sizes[0]?.measures.yarn[0]?.basis;
    expect(basis(cloth({ gauge: took, yarn: 'used: {large: 60 m}' }))).toBe('used');
    expect(basis(cloth({ gauge: took }))).toBe('swatch');
    expect(basis(cloth())).toBe('figures');
  });

  test('and how sure the length is, is said with it', () => {
    const note = (compiled: CompiledPattern, at: number): string | null => {
      const { pattern, sizes } = compiled;
      if (pattern === null) throw new Error('no pattern');
      return materialsList(pattern, sizes[at]?.measures ?? null, 'US', 'metric').yarnNote;
    };
    expect(note(cloth({ yarn: 'used: {small: 30 m}' }), 0)).toBe(
      'Lengths go by what the designer used for this size, with a tenth more.',
    );
    expect(note(cloth({ yarn: 'used: {small: 30 m}' }), 1)).toBe(
      'Lengths go by what the designer used for size small, stitch by stitch, with a tenth more.',
    );
    // Small: 400 sc at 5 mm, 10.6 times as long, are 21.2 m; 40 chains at half of that 1 m; tails 30 cm; a tenth more is 24.8 m.
    expect(note(cloth(), 0)).toMatch(/^Lengths are reckoned .* Hands differ: it may be 20 m to 30 m \(/);
  });
});

describe('a swatch', () => {
  test('that took a length gives it to as many stitches', () => {
    // 20 x 20 sc took 25 m where the figures give 400 x 53 mm = 21.2 m.
    const [byFigures = 0] = lengthsM(cloth());
    const [bySwatch] = lengthsM(cloth({ gauge: `${GAUGE}, took: 25 m` }));
    expect(bySwatch).toBeCloseTo((byFigures * 25) / 21.2, 6);
  });

  test('of the pattern itself is held against as much of it, chains and all', () => {
    const of = 'stitches: 20, rows: 20, over: 10 cm, of: eelgrass pattern';
    const [small] = lengthsM(cloth({ gauge: `${of}, took: 25 m`, sizes: false }));
    // The cloth is one swatch: 25 m for what is in it, two tails of 15 cm as the swatch has them to scale, a tenth more.
    expect((small ?? 0) / ALLOWANCE).toBeGreaterThan(25);
    expect((small ?? 0) / ALLOWANCE).toBeLessThan(25.5);
  });

  test('measured across and up gives both their own scale', () => {
    // 20 sts to 15.2 cm and 12 rows to 14 cm.
    const [small] = cloth({ gauge: 'stitches: 20, rows: 12, over: 15.2 x 14 cm, of: single crochet' }).sizes;
    expect(small?.measures.widthMm).toBeCloseTo(152, 6);
    expect(small?.measures.heightMm).toBeCloseTo((20 * 140) / 12, 6);
  });

  test('without rows counted has rows as high as is usual', () => {
    // 13 sc x 14 rows to 4 in is a published gauge: 0.93 as high as wide.
    const [small] = cloth({ gauge: 'stitches: 13, over: 4 in, of: single crochet' }).sizes;
    const stitchMm = 101.6 / 13;
    expect(small?.measures.heightMm).toBeCloseTo(20 * 0.93 * stitchMm, 6);
    expect((20 * 101.6) / 14 / (small?.measures.heightMm ?? 1)).toBeCloseTo(1, 2);
  });

  test('before blocking is told, and changes no measure', () => {
    const plain = cloth();
    const told = cloth({ gauge: `${GAUGE}, after: blocking, before: {stitches: 21, rows: 22}` });
    expect(told.sizes[0]?.measures.widthMm).toBe(plain.sizes[0]?.measures.widthMm);
    if (told.pattern === null) throw new Error('no pattern');
    expect(materialsList(told.pattern, null, 'US', 'metric').gauge).toBe(
      '20 sts and 20 rows = 10 cm (4 in) in single crochet, after blocking; before it, 21 sts and 22 rows',
    );
  });
});
