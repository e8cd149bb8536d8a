/** Our tables held against figures composed here, apart from them: the source of each stands beside it. */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import abbreviations from '../../shared/abbreviations.json' with { type: 'json' };
import hooks from '../../shared/hooks.json' with { type: 'json' };
import measures from '../../shared/measures.json' with { type: 'json' };
import { HOOKS, hookSize } from '../../src/measure/hooks.ts';
import { inRange, YARN_WEIGHTS, yarnWeight } from '../../src/measure/yarn-weights.ts';
import { stitchById } from '../../src/stitches/table.ts';

describe('Craft Yarn Council, Standard Yarn Weight System', () => {
  // As reprinted in a US crochet magazine, October 2018: number, name, stitches in 4 in, hook in mm.
  test.each([
    [0, 'Lace', 32, 42, 1.5, 2.25],
    [1, 'Super Fine', 21, 32, 2.25, 3.5],
    [2, 'Fine', 16, 20, 3.5, 4.5],
    [3, 'Light', 12, 17, 4.5, 5.5],
    [4, 'Medium', 11, 14, 5.5, 6.5],
    [5, 'Bulky', 8, 11, 6.5, 9],
    [6, 'Super Bulky', 6, 9, 9, 16],
    [7, 'Jumbo', null, 5, 16, null],
  ])(
    'weight %i is %s, %s to %s stitches in 4 in with a hook of %s to %s mm',
    (number, name, min, max, hookMin, hookMax) => {
      expect(yarnWeight(number)).toMatchObject({
        name,
        gaugePer10Cm: { min, max },
        hookMm: { min: hookMin, max: hookMax },
      });
    },
  );

  // The Council gives lace in double crochet and every other weight in single crochet.
  test('lace is measured in double crochet and all others in single crochet', () => {
    expect(YARN_WEIGHTS.map((weight) => weight.gaugeStitch)).toEqual([
      'dc',
      'sc',
      'sc',
      'sc',
      'sc',
      'sc',
      'sc',
      'sc',
    ]);
  });

  // Wraps per inch, read in two reprints of the Council's list.
  test('wraps per inch fall from lace to jumbo as the Council lists them', () => {
    const wraps = YARN_WEIGHTS.map(({ wrapsPerInch }) => [wrapsPerInch.min, wrapsPerInch.max]);
    expect(wraps).toEqual([
      [30, null],
      [14, 30],
      [12, 18],
      [11, 15],
      [9, 12],
      [6, 9],
      [5, 6],
      [1, 4],
    ]);
  });

  // Two UK yarn sellers' tables (one of 2024); the Australasian names from a conversion chart.
  test('the UK and Australasian names stand beside the Council’s', () => {
    expect(YARN_WEIGHTS.map((weight) => weight.ukName)).toEqual([
      '2 ply',
      '4 ply',
      'sport',
      'DK',
      'aran',
      'chunky',
      'super chunky',
      'jumbo',
    ]);
    expect(YARN_WEIGHTS.map((weight) => weight.auNzName)).toEqual([
      '2 ply',
      '4 ply',
      '5 ply',
      '8 ply',
      '10 ply',
      '12 ply',
      '14 ply',
      null,
    ]);
  });

  test('each weight’s hooks begin where the finer weight’s end', () => {
    for (const number of [1, 2, 3, 4, 5, 6, 7]) {
      expect(yarnWeight(number)?.hookMm.min).toBe(yarnWeight(number - 1)?.hookMm.max);
    }
  });

  test('there is no weight 8, and ranges hold their ends', () => {
    expect(yarnWeight(8)).toBeNull();
    expect([10.9, 11, 14, 14.1].map((gauge) => inRange(gauge, { min: 11, max: 14 }))).toEqual([
      false,
      true,
      true,
      false,
    ]);
    expect([25, 15].map((mm) => inRange(mm, { min: 16, max: null }))).toEqual([true, false]);
    expect([5, 6].map((gauge) => inRange(gauge, { min: null, max: 5 }))).toEqual([true, false]);
  });
});

describe('hook sizes', () => {
  // The Council's list of letters and numbers, from memory; UK numbers from a UK chart of sizes, read.
  test.each([
    [2.25, 'B-1', '13'],
    [3.25, 'D-3', '10'],
    [3.5, 'E-4', '9'],
    [3.75, 'F-5', null],
    [4, 'G-6', '8'],
    [4.5, '7', '7'],
    [5, 'H-8', '6'],
    [5.5, 'I-9', '5'],
    [6, 'J-10', '4'],
    [6.5, 'K-10 1/2', '3'],
    [7, null, '2'],
    [8, 'L-11', '0'],
    [9, 'M/N-13', '00'],
    [10, 'N/P-15', '000'],
    [11.5, 'P-16', null],
    [15, 'P/Q', null],
    [16, 'Q', null],
    [19, 'S', null],
  ])('%s mm is US %s and was UK %s', (mm, us, ukOld) => {
    expect(hookSize(mm)).toEqual({ mm, us, ukOld });
  });

  test('above S no letter is printed, for the lists disagree', () => {
    expect([25, 30].map((mm) => hookSize(mm)?.us)).toEqual([null, null]);
  });

  test('a width that no list has is no size', () => {
    expect([4.6, 0, 100, Number.NaN].map(hookSize)).toEqual([null, null, null, null]);
  });

  test('hooks run from fine to thick, each width once', () => {
    const widths = HOOKS.map((hook) => hook.mm);
    expect(widths).toEqual([...new Set(widths)].sort((a, b) => a - b));
  });

  test('the same steel hook bears different numbers in different lists, so steel is given in millimetres alone', () => {
    const numbers = hooks.steel.filter((hook) => hook.mm === 1.5).map((hook) => hook.us);
    expect(new Set(numbers).size).toBeGreaterThan(2);
    expect(hookSize(1.5)).toBeNull();
  });

  // The yarn table gives hooks in both measures: 3.5 mm or E-4, and so on (same reprint).
  test('the yarn table’s US hooks are the hooks of its millimetres', () => {
    const pairs = [
      [2.25, 'B-1'],
      [3.5, 'E-4'],
      [4.5, '7'],
      [5.5, 'I-9'],
      [6.5, 'K-10 1/2'],
      [9, 'M/N-13'],
      [16, 'Q'],
    ] as const;
    for (const [mm, us] of pairs) expect(hookSize(mm)?.us).toBe(us);
    expect(YARN_WEIGHTS.slice(1).map((weight) => weight.hookMm.min)).toEqual(pairs.map(([mm]) => mm));
  });
});

describe('US and UK terms', () => {
  // A multilingual chart of terms and a UK craft-book publisher's lists (2015, 2023); marked * from memory.
  test.each([
    ['ch', 'chain', 'ch', 'chain', 'ch'],
    ['sl-st', 'slip stitch', 'sl st', 'slip stitch', 'ss'],
    ['sc', 'single crochet', 'sc', 'double crochet', 'dc'],
    ['hdc', 'half double crochet', 'hdc', 'half treble crochet', 'htr'],
    ['dc', 'double crochet', 'dc', 'treble crochet', 'tr'],
    ['tr', 'treble crochet', 'tr', 'double treble crochet', 'dtr'],
    ['dtr', 'double treble crochet', 'dtr', 'triple treble crochet', 'trtr'],
    ['trtr', 'triple treble crochet', 'trtr', 'quadruple treble crochet', 'qtr'], // *
    ['esc', 'extended single crochet', 'esc', 'extended double crochet', 'edc'],
    ['ehdc', 'extended half double crochet', 'ehdc', 'extended half treble crochet', 'ehtr'], // *
    ['edc', 'extended double crochet', 'edc', 'extended treble crochet', 'etr'],
    ['etr', 'extended treble crochet', 'etr', 'extended double treble crochet', 'edtr'], // *
    ['sc2tog', 'single crochet 2 together', 'sc2tog', 'double crochet 2 together', 'dc2tog'],
    ['hdc2tog', 'half double crochet 2 together', 'hdc2tog', 'half treble crochet 2 together', 'htr2tog'],
    ['dc3tog', 'double crochet 3 together', 'dc3tog', 'treble crochet 3 together', 'tr3tog'],
  ])('%s is %s (%s) in US terms and %s (%s) in UK terms', (id, usName, usAbbr, ukName, ukAbbr) => {
    const { us, uk } = stitchById(id);
    expect([us.name, us.abbr, uk.name, uk.abbr]).toEqual([usName, usAbbr, ukName, ukAbbr]);
  });

  test('the list of abbreviations says the same as the table of stitches', () => {
    const stitches = abbreviations.abbreviations.filter((row) => row.kind === 'stitch');
    for (const id of ['ch', 'sl-st', 'sc', 'hdc', 'dc', 'tr', 'dtr', 'trtr', 'sc2tog', 'dc3tog', 'mr']) {
      const row = stitches.find((each) => each.id === id);
      expect([row?.us.abbr, row?.uk.abbr], id).toEqual([stitchById(id).us.abbr, stitchById(id).uk.abbr]);
    }
  });
});

describe('figures that follow from a formula', () => {
  // Stitches and rows over 10 cm, remembered; everything below is worked out from them here.
  const shape: Readonly<Record<string, number>> = { sc: 15 / 14, hdc: 10 / 13, dc: 7 / 13, tr: 5 / 13 };
  const heightOverWidth = (stitch: string): number => 1 / (shape[stitch] ?? Number.NaN);

  test('a stitch is as many times higher than wide as there are more stitches than rows', () => {
    expect(measures.stitchShapes.rows.map((row) => row.stitch)).toEqual(Object.keys(shape));
    for (const row of measures.stitchShapes.rows) {
      expect(row.heightOverWidth).toBeCloseTo(heightOverWidth(row.stitch), 2);
      expect(inRange(row.heightOverWidth, { min: row.met[0] ?? null, max: row.met[1] ?? null })).toBe(true);
    }
  });

  test('the heights of the stitch table rise as the stitches’ shapes do, within a tenth', () => {
    for (const id of Object.keys(shape)) {
      const ratio = heightOverWidth(id) / heightOverWidth('sc');
      expect(Math.abs(stitchById(id).heightInSc / ratio - 1), id).toBeLessThan(0.1);
    }
  });

  // A round is one stitch height further out, so 2 pi heights longer. Usual starts: teaching pages, tr common practice.
  test.each([
    ['sc', 5.9, 6],
    ['hdc', 8.2, 8],
    ['dc', 11.7, 12],
    ['tr', 16.3, 16],
  ])('a flat circle of %s grows by %f a round, in practice %i', (stitch, computed, usual) => {
    expect(2 * Math.PI * heightOverWidth(stitch)).toBeCloseTo(computed, 1);
    expect(measures.flatCircle.rows.find((row) => row.stitch === stitch)).toMatchObject({ computed, usual });
    expect(Math.abs(usual - computed)).toBeLessThan(0.5);
  });

  // The perimeter of a regular n-gon grows by 2 n tan(pi / n) for every step outwards.
  test.each([
    ['triangle', 3, 6 * Math.sqrt(3)],
    ['square', 4, 8],
    ['hexagon', 6, 4 * Math.sqrt(3)],
    ['octagon', 8, 16 * (Math.SQRT2 - 1)],
  ])('a flat %s with its %i corners grows by the factor of its shape', (shapeName, corners, exact) => {
    const row = measures.flatPolygon.rows.find((each) => each.shape === shapeName);
    expect(2 * corners * Math.tan(Math.PI / corners)).toBeCloseTo(exact, 9);
    expect(row?.corners).toBe(corners);
    expect(row?.factor).toBeCloseTo(exact, 2);
    expect(Math.abs((row?.sc ?? Number.NaN) - exact * heightOverWidth('sc'))).toBeLessThanOrEqual(0.05);
    expect(Math.abs((row?.dc ?? Number.NaN) - exact * heightOverWidth('dc'))).toBeLessThanOrEqual(0.05);
    for (const usual of [row?.usualSc, row?.usualDc])
      if (typeof usual === 'number') expect(usual % corners).toBe(0);
  });

  // N stitches, the first in the kth chain: k - 1 chains are skipped, and are one of the N where they count.
  test.each([
    ['sc', 2, false, 'N + 1'],
    ['hdc', 3, true, 'N + 1'],
    ['hdc', 3, false, 'N + 2'],
    ['dc', 4, true, 'N + 2'],
    ['dc', 3, false, 'N + 2'],
    ['tr', 5, true, 'N + 3'],
  ])(
    'a row of %s begun in chain %i from the hook (skipped chains count: %s) needs a chain of %s',
    (stitch, firstInto, skippedCount, chain) => {
      const wanted = 24;
      const worked = skippedCount ? wanted - 1 : wanted;
      const chains = worked + firstInto - 1;
      expect(`N + ${chains - wanted}`).toBe(chain);
      const row = measures.startingChain.rows.find(
        (each) => each.stitch === stitch && each.skippedCount === skippedCount,
      );
      expect(row).toMatchObject({ firstInto, beyond: chains - wanted });
    },
  );

  test('where the skipped chains count they are the stitch’s turning chain', () => {
    for (const row of measures.startingChain.rows.filter((each) => each.skippedCount)) {
      expect(row.firstInto - 1, row.stitch).toBe(stitchById(row.stitch).turningChain?.chains);
    }
  });

  // One maker's strips, 5 in each, worsted yarn and a 5 mm hook: inches of yarn, chain 25.5, sc 53, hdc 78.5, dc 102.
  test.each([
    ['ch', 25.5],
    ['sc', 53],
    ['hdc', 78.5],
    ['dc', 102],
  ])('%s takes yarn in proportion to the measured %f in', (id, inches) => {
    expect(stitchById(id).yarnInSc).toBeCloseTo(inches / 53, 2);
  });

  // The same maker's squares of 25 sq in took 785.5, 802 and 790 in: yarn goes with area, so with height.
  test('taller stitches take yarn in proportion to their height, as double crochet does', () => {
    expect(Math.max(785.5, 802, 790) / Math.min(785.5, 802, 790)).toBeLessThan(1.03);
    const dc = stitchById('dc');
    for (const id of ['tr', 'dtr', 'trtr', 'quadtr', 'edc', 'etr']) {
      const { yarnInSc, heightInSc } = stitchById(id);
      expect(yarnInSc / heightInSc, id).toBeCloseTo(dc.yarnInSc / dc.heightInSc, 2);
    }
  });
});

describe('the shared data', () => {
  const files = ['stitches', 'abbreviations', 'yarn-weights', 'hooks', 'cautions', 'measures'];

  test.each(files)('%s says of every row how it is known, and holds no web address', (name) => {
    const text = readFileSync(new URL(`../../shared/${name}.json`, import.meta.url), 'utf8');
    expect(text).not.toMatch(/https?:|www\.|\.(?:com|org|net)\b/i);
    const rows = text.split('\n').filter((line) => /^ {4,}\{.*\},?$/.test(line));
    expect(rows.length).toBeGreaterThan(5);
    expect(rows.filter((line) => !/"known": "(?:published|memory|computed|second hand)"/.test(line))).toEqual(
      [],
    );
  });
});
