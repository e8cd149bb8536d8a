/** `size` run as its users run it, and the whole pattern in a size of one's own. */

import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { rowfold } from './run-rowfold.ts';

const ROOT = path.join(import.meta.dirname, '../..');
let folder = '';

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'sizes-'));
  cpSync(path.join(ROOT, 'patterns'), path.join(folder, 'patterns'), { recursive: true });
  cpSync(path.join(ROOT, 'tests/patterns/moss-stitch'), path.join(folder, 'moss'), { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const GAUGE = '16 sts and 14 rows over 10 cm';

describe('size', () => {
  test('lists what is near, the nearest marked, and what it takes', async () => {
    const { code, out } = await rowfold(['size', 'moss', '--width', '30 cm', '--gauge', GAUGE], folder);
    expect(code).toBe(0);
    // Repeats of 2 stitches at 6.25 mm: 47 stitches of moss are 29.4 cm, 49 are 30.6 cm.
    expect(out).toMatch(/^nearest {2}23 +29\.5 cm \(11 ½ in\) +6 mm less$/m);
    expect(out).toMatch(/^ +24 +30\.5 cm \(12 in\) +6 mm more$/m);
    expect(out).toMatch(/^Yarn A: about \d+ m \(\d+ yd\)/m);
  });

  test('gives the same as figures for other programs', async () => {
    const { out } = await rowfold(['size', 'moss', '--width', '30 cm', '--gauge', GAUGE, '--json'], folder);
    const { repeats, rows, rounds, made } = JSON.parse(out);
    expect([rows, rounds]).toEqual([null, null]);
    expect(repeats.filter(({ nearest }: { nearest: boolean }) => nearest)).toEqual([
      { count: 23, mm: 293.75, offMm: -6.25, nearest: true },
    ]);
    expect(made.width).toEqual({ mm: 293.75 });
    expect(made.reckoned).toBe(false);
  });

  test('marks heights that go by what is usual', async () => {
    const { out } = await rowfold(
      ['size', 'moss', '--width', '30 cm', '--gauge', '16 sts over 10 cm'],
      folder,
    );
    expect(out).toMatch(/^No rows were counted: they are taken to be as high as is usual/m);
  });

  test('of rounds says after how many the piece is so wide', async () => {
    const { code, out } = await rowfold(['size', 'patterns/quarry-hexagon', '--width', '12 cm'], folder);
    expect(code).toBe(0);
    // At the gauge of its file three rounds and the border are 10 cm across, four and the border 13 cm.
    expect(out).toMatch(/^ +4 +10 cm /m);
    expect(out).toMatch(/^nearest {2}5 +13 cm /m);
  });

  test.each([
    [['--width', '0 cm'], /between 0\.5 cm/],
    [['--width', 'wide'], /wants a length with its unit/],
    [['--gauge', '0 sts and 3 rows over 10 cm'], /count again over a hand's breadth/],
    [['--gauge', 'tight'], /wants stitches, rows and a measure/],
    [['--gauge', '-16 sts and 14 rows over 10 cm'], /--gauge needs a value/],
    [['--gauge=-16 sts and 14 rows over 10 cm'], /wants stitches, rows and a measure/],
    [['--gauge', '16 sts and 0 rows over 10 cm'], /count again over a hand's breadth/],
    [['--gauge', '16 sts and 14 rows over 0 cm'], /count again over a hand's breadth/],
    [['--gauge', '4000 sts and 14 rows over 10 cm'], /count again over a hand's breadth/],
    [['--width', '90 m'], /between 0\.5 cm/],
    [['--repeats', '0'], /whole number/],
    [['--hook', '0'], /hooks are/],
    [['--hook', 'G'], /4 mm or 4\.25 mm: give the millimetres|wants millimetres/],
    [['--ball', '100 g'], /wants the length on the band/],
    [['--repeats', '1.5'], /whole number/],
    [[], /Say what is wanted/],
  ])('says what is wrong with %j', async (flags, said) => {
    const { code, err } = await rowfold(['size', 'moss', ...flags], folder);
    expect(code).toBe(2);
    expect(err).toMatch(said);
  });

  test.each([
    [['--rows', '28'], /ends with a Row 3, which 28 rows do not; the nearest are 27 and 29/],
    [['--repeats', '10000'], /more than can be worked/],
  ])('says what cannot be worked of %j', async (flags, said) => {
    const { code, out, err } = await rowfold(['size', 'patterns/sandbar-square', ...flags], folder);
    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(said);
  });

  test('says which rule leaves no choice, and what there is', async () => {
    const { code, err } = await rowfold(['size', 'patterns/pebble-basket', '--width', '30 cm'], folder);
    expect(code).toBe(1);
    expect(err).toMatch(/no width can be asked for; its sizes are small, large/);
  });
});

describe('the whole pattern in a size of its maker’s own', () => {
  test('is counted row by row', async () => {
    const { code, out } = await rowfold(
      ['count', 'moss', '--repeats', '23', '--gauge', GAUGE, '--json'],
      folder,
    );
    expect(code).toBe(0);
    const { sizes } = JSON.parse(out);
    expect(sizes).toHaveLength(1);
    expect(sizes[0].name).toBe('your own');
    expect(sizes[0].width.mm).toBe(293.8);
    // 47 stitches across, half of them spaces of one chain.
    const row = sizes[0].rows[5];
    expect(row.stitches + row.spaces).toBe(47);
  });

  test('is set as a booklet', async () => {
    const words = ['booklet', 'moss', '--size', 'small', '--repeats', '23', '--out', 'own.pdf'];
    const { code, out } = await rowfold(words, folder);
    expect([code, out.trim()]).toEqual([0, 'own.pdf']);
  });
});
