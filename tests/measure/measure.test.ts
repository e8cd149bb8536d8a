import { describe, expect, test } from 'vitest';
import { type Fabric, FLAG, INTO } from '../../src/fabric/fabric.ts';
import { measure } from '../../src/measure/measure.ts';
import type { Gauge, Pattern, Yarn } from '../../src/pattern/pattern.ts';
import { readPattern } from '../wording/read-pattern.ts';
import { shellFabric } from '../wording/shell-square.ts';
import { buildFabric, chainRow, plainRows, rounds, times, type Worked } from './build-fabric.ts';

const FLAT = [{ name: 'Square' }];
const ROUND = [{ name: 'Square', shape: 'round' as const, start: 'magic ring' as const }];

describe('the size of a piece worked in rows', () => {
  test('a shell square follows its gauge: 37 stitches at 16 and 27 rows at 9 over 10 cm', () => {
    // 37 x 100 / 16 = 231.25 mm; 27 x 100 / 9 = 300 mm.
    const { widthMm, heightMm } = sized(shellFabric('small', 6, 27), {
      stitches: 16,
      rows: 9,
      of: 'shell pattern',
    });
    expect(widthMm).toBeCloseTo(231.25, 5);
    expect(heightMm).toBeCloseTo(300, 5);
  });

  test('rows of another stitch than the gauge was measured in stand to it as their heights do', () => {
    // 10 rows of sc and 4 of dc at 16 sc rows over 10 cm: 10 x 6.25 + 4 x 2 x 6.25 = 112.5 mm.
    const fabric = buildFabric([...plainRows('sc', 20, 10), ...plainRows('dc', 20, 4, 11)], FLAT);
    expect(sized(fabric, { stitches: 16, rows: 16, of: 'sc' }).heightMm).toBeCloseTo(112.5, 5);
    // Measured over the pattern itself, 14 rows at 8 over 10 cm are 175 mm however high each is.
    expect(sized(fabric, { stitches: 16, rows: 8, of: null }).heightMm).toBeCloseTo(175, 5);
  });

  test('an edging all round adds its height on all four sides', () => {
    // 20 sc at 5 mm = 100 mm and 20 rows at 5 mm = 100 mm; two rounds of sc add 2 x 5 on each side.
    const edge = rounds('sc', [80, 88]).map((row) => ({ ...row, closing: 'joined' as const, edging: true }));
    const { widthMm, heightMm } = sized(buildFabric([...plainRows('sc', 20, 20), ...edge], FLAT), {
      stitches: 20,
      rows: 20,
      of: 'sc',
    });
    expect(widthMm).toBeCloseTo(120, 5);
    expect(heightMm).toBeCloseTo(120, 5);
  });

  test('an edging along one side widens that side alone', () => {
    const edge = times(20, (i) => ({ id: 'sc', into: [i * 20], where: INTO.rowEnd }));
    const fabric = buildFabric([...plainRows('sc', 20, 20), { unit: null, edging: true, work: edge }], FLAT);
    const { widthMm, heightMm } = sized(fabric, { stitches: 20, rows: 20, of: 'sc' });
    expect(widthMm).toBeCloseTo(105, 5);
    expect(heightMm).toBeCloseTo(100, 5);
  });

  test('a mesh is as wide as its stitches and chains', () => {
    // (dc, ch 1) 9 times and a dc over 19 stitches: 19 wide, at 20 over 10 cm 95 mm.
    const mesh = times(10, (i) => i).flatMap((i): Worked[] => {
      const dc = { id: 'dc', into: [i * 2] };
      return i === 9 ? [dc] : [dc, { id: 'ch' }];
    });
    const only = buildFabric([chainRow(19), { work: mesh }], FLAT);
    expect(sized(only, { stitches: 20, rows: 10, of: null }).widthMm).toBeCloseTo(95, 5);
  });

  test('an arch of 5 chains over 3 stitches is 3 wide, and so is the arch worked into it', () => {
    const base: Worked[] = times(17, { id: 'sc' });
    const arches = times(5, (i) => i).flatMap((i): Worked[] => {
      const sc = { id: 'sc', into: [i * 4] };
      return i === 4 ? [sc] : [sc, ...times(5, { id: 'ch' })];
    });
    // The first row's chains are stitches 18 to 22, 24 to 28 and so on.
    const second = times(4, (i) => i).flatMap((i): Worked[] => {
      const sc = { id: 'sc', into: [18, 19, 20, 21, 22].map((chain) => chain + i * 6), where: INTO.space };
      return i === 3 ? [sc] : [sc, ...times(5, { id: 'ch' })];
    });
    const fabric = buildFabric([{ work: base }, { work: arches }, { work: second }], FLAT);
    // 17 stitches at 5 mm: arches make the first row no wider, and the second, one arch short, is 4 + 3 x 3 = 13.
    expect(sized(fabric, { stitches: 20, rows: 10, of: null }).widthMm).toBeCloseTo(85, 5);
  });
});

describe('the size of a piece worked in rounds', () => {
  const gauge = { stitches: 20, rows: 20, of: 'sc' };

  test('a flat circle is twice the height of its rounds across', () => {
    // 10 rounds at 5 mm.
    const { widthMm, heightMm } = sized(buildFabric(rounds('sc', growing(10, 6)), ROUND), gauge);
    expect([widthMm, heightMm]).toEqual([100, 100]);
  });

  test('a square of rounds is measured side to side, a triangle along its side and up to its point', () => {
    const square = buildFabric(rounds('sc', growing(10, 8)), [{ ...ROUND[0], corners: 4 }]);
    expect(sized(square, gauge)).toMatchObject({ widthMm: 100, heightMm: 100 });
    // Inner circle of radius 50: side 2 x 1.732 x 50 = 173.2, height 150.
    const triangle = sized(buildFabric(rounds('sc', growing(10, 9)), [{ ...ROUND[0], corners: 3 }]), gauge);
    expect(triangle.widthMm).toBeCloseTo(173.2, 1);
    expect(triangle.heightMm).toBeCloseTo(150, 5);
  });

  test('a hexagon lying on one side is wider, corner to corner, than high', () => {
    const hexagon = sized(buildFabric(rounds('sc', growing(10, 6)), [{ ...ROUND[0], corners: 6 }]), gauge);
    // Inner circle of radius 50: corner to corner 2 x 50 x 2 / 1.732 = 115.47.
    expect(hexagon.widthMm).toBeCloseTo(115.47, 2);
    expect(hexagon.heightMm).toBeCloseTo(100, 5);
  });

  test('an oval is longer by the chain it goes round', () => {
    // 6 chains, so 5 stitches from the middle of the first to the middle of the last: 25 mm longer.
    const first = times(
      14,
      (i): Worked => ({ id: 'sc', into: [i < 7 ? Math.min(i, 5) : Math.max(12 - i, 0)] }),
    );
    const fabric = buildFabric(
      [
        chainRow(7),
        { unit: 'round', closing: 'joined', work: first },
        { unit: 'round', closing: 'joined', work: times(20, { id: 'sc' }) },
      ],
      [{ name: 'Square', shape: 'round', start: 'chain' }],
    );
    expect(sized(fabric, gauge)).toMatchObject({ widthMm: 45, heightMm: 20 });
  });

  test('rounds without increases are the wall of a basket', () => {
    // 60 stitches at 5 mm = 300 mm round, 300 / pi = 95.5 mm across; the wall of 8 rounds is 40 mm high.
    const basket = sized(
      buildFabric(rounds('sc', [...growing(10, 6), ...times(8, { id: 'sc' }).map(() => 60)]), ROUND),
      gauge,
    );
    expect(basket.widthMm).toBeCloseTo(300 / Math.PI, 5);
    expect(basket.heightMm).toBeCloseTo(40, 5);
    expect(basket.aroundMm).toBeCloseTo(300, 5);
  });

  test('a tube begun in each chain of a ring is all wall', () => {
    // Each round on the one before, the first on the chain.
    const around = (round: number): Worked[] => times(60, (i) => ({ id: 'sc', into: [60 * round + i] }));
    const work = [0, 1, 2, 3].map(around);
    const tube = buildFabric(
      [
        chainRow(60),
        ...work.map((stitches) => ({ unit: 'round' as const, closing: 'joined' as const, work: stitches })),
      ],
      [{ name: 'Square', shape: 'round', start: 'chain ring' }],
    );
    expect(sized(tube, gauge).heightMm).toBeCloseTo(20, 5);
  });

  test('no height is given for a ball, which its gauge does not tell', () => {
    const ball = buildFabric(rounds('sc', [6, 12, 18, 24, 24, 24, 24, 18, 12, 6]), ROUND);
    expect(sized(ball, gauge).heightMm).toBeNull();
    expect(sized(ball, gauge).widthMm).toBeCloseTo(120 / Math.PI, 5);
  });
});

describe('yarn', () => {
  // One maker's measured figures, worsted yarn and a 5 mm hook: 31.4 in a square inch of single crochet, 31.6 of dc.
  // Her strips took 10.6 and 20.4 in an inch of row, so that she had 31.4 / 10.6 = 2.96 and 31.6 / 20.4 = 1.55 rows an inch.
  test.each([
    ['sc', 2.96, 31.4],
    ['dc', 1.55, 31.6],
  ])(
    'a square of %s, with the rows her strips imply, takes what a maker measured within 2 percent',
    (id, rowsPerInch, measured) => {
      const gauge = { stitches: 12, rows: rowsPerInch * 4, overMm: 101.6, of: id };
      expect(perSquareInch(id, gauge)).toBeGreaterThan(measured * 0.98);
      expect(perSquareInch(id, gauge)).toBeLessThan(measured * 1.02);
    },
  );

  test('at a published worsted gauge of 13 sc and 14 rows to 4 in it errs on the safe side, by less than a quarter', () => {
    const found = perSquareInch('sc', { stitches: 13, rows: 14, overMm: 101.6, of: 'sc' });
    expect(found).toBeGreaterThan(31);
    expect(found).toBeLessThan(32 * 1.25);
  });

  test('tails and a tenth are added, and whole balls counted', () => {
    // 20 x 20 sc at 5 mm take 400 x 10.6 x 5 mm = 21.2 m, with two tails of 15 cm 21.5 m, and a tenth 23.65 m.
    const fabric = buildFabric(plainRows('sc', 20, 20), FLAT);
    const yarn = [{ ballLengthM: 20, ballMassG: 50 }];
    const [use] = sized(fabric, { stitches: 20, rows: 20, of: 'sc' }, yarn).yarn;
    expect(use?.lengthM).toBeCloseTo(23.65, 5);
    expect(use?.balls).toBe(2);
    expect(use?.massG).toBeCloseTo(59.125, 5);
  });

  test('a colour carried up two rows has two tails, one that is joined anew has four', () => {
    const stripes = (every: number): Fabric =>
      buildFabric(
        plainRows('sc', 20, 12).map((row, i) => ({
          ...row,
          work: times(20, { id: 'sc', yarn: Math.floor(i / every) % 2 === 0 ? 'A' : 'B' }),
        })),
        FLAT,
      );
    const tails = (every: number): number => {
      const of = stripes(every);
      const [use] = sized(of, { stitches: 20, rows: 20, of: 'sc' }).yarn;
      // Six rows of A: 120 x 53 mm = 6.36 m; what is over is tails.
      return ((use?.lengthM ?? 0) / 1.1 - 6.36) / 0.15;
    };
    expect(tails(2)).toBeCloseTo(2, 5);
    expect(tails(3)).toBeCloseTo(4, 5);
  });

  test('two of a piece take twice the yarn and twice the stitches', () => {
    const pattern = readPattern({ work: 'Row 1: 6 sc.', make: 2 });
    const fabric = buildFabric(plainRows('sc', 20, 20), FLAT);
    const one = measure(
      { ...withGauge({ stitches: 20, rows: 20 }), parts: readPattern({ work: 'Row 1: 6 sc.' }).parts },
      fabric,
    );
    const two = measure({ ...withGauge({ stitches: 20, rows: 20 }), parts: pattern.parts }, fabric);
    expect(two.stitches).toBe(800);
    expect(two.yarn[0]?.lengthM).toBeCloseTo((one.yarn[0]?.lengthM ?? 0) * 2, 5);
  });
});

test('without a gauge there are stitches to count, but no size and no yarn', () => {
  const joined: Worked = { id: 'sl-st', flags: FLAG.join };
  const fabric = buildFabric([chainRow(21), { work: [...times(20, { id: 'sc' }), joined] }], FLAT);
  expect(measure({ ...withGauge({ stitches: 1, rows: 1 }), gauge: null }, fabric)).toEqual({
    widthMm: null,
    heightMm: null,
    aroundMm: null,
    yarn: [],
    stitches: 20,
  });
});

function sized(
  fabric: Fabric,
  gauge: Partial<Gauge>,
  yarns: readonly Partial<Yarn>[] = [],
): ReturnType<typeof measure> {
  return measure(withGauge(gauge, yarns), fabric);
}

function withGauge(gauge: Partial<Gauge>, yarns: readonly Partial<Yarn>[] = []): Pattern {
  const pattern = readPattern({ work: 'Row 1: 6 sc.' });
  return {
    ...pattern,
    gauge: {
      stitches: 20,
      rows: 20,
      overMm: 100,
      upMm: gauge.overMm ?? 100,
      before: null,
      tookM: null,
      of: null,
      after: null,
      ...gauge,
    },
    yarns: pattern.yarns.map((yarn, i) => ({ ...yarn, ...yarns[i] })),
  };
}

/** Rounds of a flat piece: `add` stitches first, `add` more in each. */
function growing(count: number, add: number): number[] {
  return Array.from({ length: count }, (_, i) => (i + 1) * add);
}

/** Inches of yarn, tails and allowance taken off, for a square inch of a large plain piece. */
function perSquareInch(id: string, gauge: Partial<Gauge>): number {
  const { widthMm, heightMm, yarn } = sized(buildFabric(plainRows(id, 100, 100), FLAT), gauge);
  const lengthMm = ((yarn[0]?.lengthM ?? 0) / 1.1) * 1000 - 300;
  return (lengthMm * 25.4) / ((widthMm ?? 0) * (heightMm ?? 0));
}
