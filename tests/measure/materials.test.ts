import { describe, expect, test } from 'vitest';
import { hookWords, materialLines, materialsList } from '../../src/measure/materials.ts';
import type { Measures } from '../../src/measure/measures.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { readPattern } from '../wording/read-pattern.ts';

const bare = readPattern({ work: 'Row 1: 6 sc.' });
const pattern: Pattern = {
  ...bare,
  hookMm: 5,
  gauge: {
    stitches: 16,
    rows: 9,
    overMm: 100,
    upMm: 100,
    before: null,
    tookM: null,
    of: 'rows of dc',
    after: 'blocking',
  },
  notions: ['Stitch marker'],
  yarns: bare.yarns.map((yarn) =>
    yarn.letter === 'A' ? { ...yarn, ballLengthM: 180, ballMassG: 100 } : yarn,
  ),
};
const measures: Measures = {
  widthMm: 150,
  heightMm: 150,
  aroundMm: null,
  stitches: 999,
  yarn: [
    {
      letter: 'A',
      lengthM: 209.2,
      balls: 2,
      massG: 116.2,
      basis: 'figures' as const,
      scaledFrom: null,
      rangeM: null,
    },
    {
      letter: 'B',
      lengthM: 20,
      balls: null,
      massG: null,
      basis: 'figures' as const,
      scaledFrom: null,
      rangeM: null,
    },
  ],
};

describe('the list of materials', () => {
  test('has everything to buy for one size, metric first', () => {
    expect(materialLines(materialsList(pattern, measures, 'US', 'metric'), 'US')).toEqual([
      'Yarn A: reed, medium (4), wool, 180 m (197 yd) and 100 g a ball: 2 balls, about 210 m (230 yd), 117 g',
      'Yarn B: foam, medium (4), wool: about 20 m (22 yd)',
      '5 mm (US H-8, old UK 6) hook',
      'Stitch marker',
      'Gauge: 16 sts and 9 rows = 10 cm (4 in) in rows of dc, after blocking',
    ]);
  });

  test('speaks of tension, aran and treble in UK terms, and puts inches first where asked', () => {
    const lines = materialLines(materialsList(pattern, measures, 'UK', 'imperial'), 'UK');
    expect(lines[1]).toBe('Yarn B: foam, aran (4), wool: about 22 yd (20 m)');
    expect(lines.at(-1)).toBe('Tension: 16 sts and 9 rows = 4 in (10 cm) in rows of tr, after blocking');
  });

  test('has no amounts where it holds for all sizes, and nothing the pattern does not give', () => {
    const list = materialsList({ ...bare, yarns: [] }, null, 'US', 'metric');
    expect(list).toEqual({ hook: null, yarns: [], notions: [], yarnNote: null, gauge: null });
    expect(materialsList(pattern, null, 'US', 'metric').yarns.map(({ amount }) => amount)).toEqual([
      null,
      null,
    ]);
  });

  test('a hook that no list has is given in millimetres alone', () => {
    expect(hookWords(5.1)).toBe('5.1 mm hook');
    expect(hookWords(4.5)).toBe('4.5 mm (US 7, old UK 7) hook');
  });
});
