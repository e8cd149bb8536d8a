import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  gFromOz,
  inFromMm,
  mFromYd,
  mmFromIn,
  mmFromPt,
  ozFromG,
  parseMeasure,
  printCm,
  printIn,
  printM,
  printOz,
  printSmallCm,
  printSmallIn,
  printYd,
  ptFromMm,
  ydFromM,
} from '../../src/units.ts';

describe('reading a measure', () => {
  test.each([
    ['15 cm', 150],
    ['15cm', 150],
    ['15,5 cm', 155],
    ['5 mm', 5],
    ['3.25 mm', 3.25],
    ['180 m', 180_000],
    ['1,000 m', 1_000_000],
    ['6 in', 152.4],
    ['6 1/2 in', 165.1],
    ['6-1/2 inches', 165.1],
    ['6½ in', 165.1],
    ['6 ½"', 165.1],
    ['½ in', 12.7],
    ['1/2 in', 12.7],
    ['13/4 in', 82.55],
    // The international yard is 0.9144 m exactly.
    ['200 yd', 182_880],
    ['200 Yards', 182_880],
  ])('"%s" is a length', (written, mm) => {
    const measure = parseMeasure(written);
    expect(measure?.kind === 'length' ? measure.mm : null).toBeCloseTo(mm, 9);
  });

  test.each([
    ['100 g', 100],
    ['50 grams', 50],
    // The avoirdupois ounce is 28.349523125 g exactly.
    ['3.5 oz', 99.2233309375],
  ])('"%s" is a weight', (written, g) => {
    const measure = parseMeasure(written);
    expect(measure?.kind === 'mass' ? measure.g : null).toBeCloseTo(g, 9);
  });

  test.each([
    '',
    '15',
    'cm',
    '15 furlongs',
    'six in',
    '6 1/0 in',
    '-5 mm',
    '15 cm (6 in)',
    '1.2.3 m',
    '1/2/3 in',
    '6 1/ in',
  ])('"%s" is no measure', (written) => expect(parseMeasure(written)).toBeNull());

  test('any text at all is read or refused, never an amount that is no number', () => {
    const written = fc.oneof(fc.string(), fc.stringMatching(/^[\d.,/ ½¼-]{0,12} ?(?:mm|cm|in|yd|g|oz)$/));
    fc.assert(
      fc.property(written, (text) => {
        const measure = parseMeasure(text);
        const amount = measure === null ? 0 : measure.kind === 'length' ? measure.mm : measure.g;
        expect(Number.isFinite(amount) && amount >= 0).toBe(true);
      }),
    );
  });
});

describe('printing a measure', () => {
  test.each([
    [150, '15 cm'],
    [152.4, '15 cm'],
    [153, '15.5 cm'],
    [157.6, '16 cm'],
  ])('%s mm is %s, to the half centimetre', (mm, printed) => expect(printCm(mm)).toBe(printed));

  test.each([
    [152.4, '6 in'],
    [150, '6 in'],
    [158.75, '6 ¼ in'],
    [165.1, '6 ½ in'],
    [171.45, '6 ¾ in'],
    // 5 7/8 in lies between two quarters and goes to the upper one.
    [149.225, '6 in'],
    [19.05, '¾ in'],
    [0, '0 in'],
  ])('%s mm is %s, to the quarter inch', (mm, printed) => expect(printIn(mm)).toBe(printed));

  test('what is smaller than sizes are printed to is told to the tenth', () => {
    expect([printSmallCm(6.25), printSmallIn(6.25)]).toEqual(['0.6 cm', '0.2 in']);
    expect([printSmallCm(68.46), printSmallIn(68.46)]).toEqual(['6.8 cm', '2.7 in']);
  });

  test('ball bands read as shops print them', () => {
    expect([printM(180), printYd(180), printOz(100), printOz(50)]).toEqual([
      '180 m',
      '197 yd',
      '3.5 oz',
      '1.8 oz',
    ]);
  });

  test('a printed inch figure is never more than an eighth off, and reads back as itself', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5000, noNaN: true }), (mm) => {
        const printed = printIn(mm);
        const back = parseMeasure(printed);
        const backMm = back?.kind === 'length' ? back.mm : Number.NaN;
        expect(Math.abs(inFromMm(backMm) - inFromMm(mm))).toBeLessThanOrEqual(0.125 + 1e-9);
        expect(printIn(backMm)).toBe(printed);
      }),
    );
  });
});

describe('against the definitions', () => {
  // NIST Handbook 44, Appendix C, and the international yard and pound agreement of 1959: exact, from memory.
  test.each([
    ['1 yd', 914.4],
    ['1 in', 25.4],
    ['36 in', 914.4],
    ['1 m', 1000],
    ['1 cm', 10],
    ['2500 yd', 2_286_000],
  ])('%s is %s mm', (written, mm) => {
    const measure = parseMeasure(written);
    expect(measure?.kind === 'length' ? measure.mm : null).toBeCloseTo(mm, 6);
  });

  test('16 oz are the pound of 453.59237 g', () => {
    expect(gFromOz(16)).toBeCloseTo(453.59237, 9);
  });
});

test('no other file of the source converts between units', () => {
  const root = join(import.meta.dirname, '../../src');
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.ts'),
  );
  expect(files.length).toBeGreaterThan(100);
  const figures =
    /\b(?:25\.4|2\.54|0?\.9144|914\.4|0?\.3937|39\.37|28\.3\d*|453\.\d+|0?\.0353|1\.0936|215\.9|279\.4|6\.35)\b/;
  const converting = files.filter(
    (file) =>
      file !== 'units.ts' &&
      figures.test(readFileSync(join(root, file), 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '')),
  );
  expect(converting).toEqual([]);
});

test('an inch is 25.4 mm and 72 points, and every conversion undoes its opposite', () => {
  expect(mmFromIn(1)).toBe(25.4);
  expect(ptFromMm(25.4)).toBe(72);
  expect(mmFromPt(72)).toBe(25.4);
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 1e6, noNaN: true }), (n) => {
      for (const [there, back] of [
        [mmFromIn, inFromMm],
        [mmFromPt, ptFromMm],
        [mFromYd, ydFromM],
        [gFromOz, ozFromG],
      ] as const) {
        expect(back(there(n)) / n).toBeCloseTo(1, 9);
      }
    }),
  );
});
