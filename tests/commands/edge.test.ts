/** `edge` run as its users run it: what it writes is worked again as a pattern, and comes out. */

import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runCommand } from '../../src/commands/run-command.ts';

const ROOT = path.join(import.meta.dirname, '../..');
let folder = '';

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'edges-'));
  cpSync(path.join(ROOT, 'patterns'), path.join(folder, 'patterns'), { recursive: true });
  cpSync(path.join(ROOT, 'tests/patterns'), path.join(folder, 'more'), { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** In this process, which is quicker than one for each; other tests of commands run the program itself. */
async function rowfold([verb = '', ...words]: readonly string[], from: string) {
  const said: string[] = [];
  const told: string[] = [];
  const paths = words.map((word) => (/^(?:patterns|more)\//.test(word) ? path.join(from, word) : word));
  const code = await runCommand([verb, ...paths], {
    say: (line) => void said.push(`${line}\n`),
    tell: (line) => void told.push(`${line}\n`),
    colour: false,
    over: null,
    ask: null,
    width: 100,
  });
  return { code, out: said.join(''), err: told.join('') };
}

async function json(...words: readonly string[]) {
  const { code, out, err } = await rowfold(['edge', ...words, '--json'], folder);
  expect([code, err]).toEqual([0, '']);
  return JSON.parse(out);
}

describe('the edging of a piece of rows', () => {
  test('has the same on opposite sides, one rule for each size, and is told as a row', async () => {
    const { sizes, row } = await json('patterns/sandbar-square');
    expect(sizes.map(({ name }: { name: string }) => name)).toEqual(['small', 'medium', 'large']);
    for (const { sides, corners, allRound } of sizes) {
      const [side, top, bottom] = sides;
      expect([side.count, top.stitches]).toEqual([2, bottom.stitches]);
      expect(allRound).toBe(2 * side.stitches + top.stitches + bottom.stitches + 4 * corners.stitches);
      expect(side.spread.reduce((sum: number, n: number) => sum + n, 0)).toBe(side.stitches);
      // Rows of shells, half of each dc and sc: 13 rows are 14.4 cm, and 23 sc at 16 to 10 cm 14.4 cm.
      expect(Math.abs(side.stitches - side.flat)).toBeLessThanOrEqual(1);
    }
    expect(row).toMatch(/work 23 \(30, 48\) sc evenly along row ends.*\(104 \(130, 202\) sc\)$/);
  });

  test('goes into the pattern as it stands, and is worked without a fault', async () => {
    const { row } = await json('patterns/sandbar-square');
    const file = path.join(folder, 'patterns/sandbar-square/pattern.yaml');
    const text = readFileSync(file, 'utf8').replace(
      /^ {6}Rnd 1 \(RS\): [\s\S]*$/m,
      `      ${row}\n      Fasten off.\n`,
    );
    const edged = path.join(folder, 'patterns/sandbar-edged');
    cpSync(path.dirname(file), edged, { recursive: true });
    writeFileSync(path.join(edged, 'pattern.yaml'), text);
    expect(text).toContain('work 23 (30, 48) sc evenly');
    const { code, err } = await rowfold(['check', edged], folder);
    expect([code, err]).toEqual([0, '']);
    rmSync(edged, { recursive: true });
  });

  test('of a maker’s own size goes by that size', async () => {
    const { sizes } = await json('patterns/sandbar-square', '--repeats', '10', '--rows', '31');
    expect(sizes).toHaveLength(1);
    // 10 shells of 6 stitches and one at the edge, without the two of the corners.
    expect(sizes[0].sides.map(({ places }: { places: number }) => places)).toEqual([31, 59, 59]);
  });

  test('along a mesh goes into stitches and chains, and the chain across gets as many', async () => {
    const { sizes } = await json('more/filet-mesh');
    const [, top, bottom] = sizes[0].sides;
    expect(top).toMatchObject({ into: 'stitches and chains', places: 26, stitches: 26 });
    expect(bottom).toMatchObject({ into: 'chains', places: 24, stitches: 26 });
  });

  test('tells where sides slant, and then makes no one row of it', async () => {
    const { sizes, row } = await json('more/triangle-shawl');
    expect([sizes[0].slants, row]).toEqual([true, null]);
  });
});

describe('the edging of rounds', () => {
  test('goes from corner to corner, whether those are spaces or stitches', async () => {
    const hexagon = await json('patterns/quarry-hexagon', '--size', 'six rounds');
    expect(hexagon.sizes[0].sides).toMatchObject([{ side: 'each side', count: 6, places: 14 }]);
    const granny = await json('more/granny-square');
    // 72 round, 4 of them in the corners.
    expect(granny.sizes[0].sides).toMatchObject([{ side: 'each side', count: 4, places: 17 }]);
  });

  test('without corners goes round as one', async () => {
    const { sizes } = await json('more/hat-crown', '--size', 'M', '--put', '60');
    expect(sizes[0].sides).toMatchObject([{ side: 'around', places: 56, stitches: 60 }]);
    expect(sizes[0].allRound).toBe(60);
  });
});

describe('a side without a pattern', () => {
  test('takes any number, spread alike from both ends where that can be', async () => {
    const { out } = await rowfold(['edge', '--along', '52 row ends', '--put', '60'], folder);
    expect(out).toBe(
      'Each side, 52 row ends: 60 sc\n  *1 sc in each of next 3 row ends, 2 sc in next row end, 1 sc in each of next 5 row ends, 2 sc in next row end, 1 sc in each of next 3 row ends; rep from * 3 more times\n',
    );
    const odd = await rowfold(['edge', '--along', '20 row ends', '--put', '23'], folder);
    expect(odd.out).toContain('23 over 20 cannot be the same from both ends; 22 or 24 can.');
  });

  // Rules of thumb, section 4: 1 to a row of sc, 2 to a row of dc, 3 to a row of tr, of which 0.93, 1.86 and 2.6 lie flat.
  test.each([
    ['sc', 30, 28],
    ['hdc', 30, 39],
    ['dc', 30, 56],
    ['tr', 30, 78],
  ])('along rows of %s as many as lie flat: 30 row ends take about %d', async (of, ends, about) => {
    const { sizes } = await json('--along', `${ends} row ends`, '--of', of);
    expect(Math.abs(sizes[0].sides[0].stitches / about - 1)).toBeLessThanOrEqual(0.1);
    expect(sizes[0].reckoned).toBe(true);
  });

  test('goes by a gauge before what is usual', async () => {
    const { sizes } = await json('--along', '27 row ends', '--gauge', '16 sts and 9 rows over 10 cm');
    // 27 rows are 30 cm, which 48 stitches make.
    expect(sizes[0].sides[0]).toMatchObject({ stitches: 48, flat: 48, mm: 300 });
    expect(sizes[0].reckoned).toBe(false);
  });

  test('says what ruffles and what pulls in', async () => {
    const ruffles = await rowfold(['edge', '--along', '10 row ends', '--of', 'sc', '--put', '40'], folder);
    expect(ruffles.out).toContain('About 9 sc lie flat there: so many more make the edge ruffle.');
    const pulls = await rowfold(['edge', '--along', '30 sts', '--put', '14'], folder);
    expect(pulls.out).toContain('About 30 sc lie flat there: so many fewer pull the edge in.');
  });

  test('is worded in UK terms where those are asked for', async () => {
    const { out } = await rowfold(
      ['edge', '--along', '9 sts', '--put', '8', '--with', 'dc', '--terms', 'uk'],
      folder,
    );
    expect(out).toMatch(/^Each side, 9 sts: 8 dc\n.*dc2tog over next 2 sts/);
  });
});

describe('what cannot be', () => {
  test.each([
    [[], 2, /Name a pattern, or the places of a side/],
    [['--along', '30 row ends'], 2, /Say how many stitches, --put 40, or what the rows are worked in/],
    [['--along', '0 sts', '--put', '3'], 2, /--along wants places of one side/],
    [['--along', 'thirty', '--put', '3'], 2, /--along wants places of one side/],
    [['--along', '30 sts', '--put', '0'], 2, /--put wants a whole number from 1 up/],
    [['--along', '30 sts', '--put=-4'], 2, /--put wants a whole number from 1 up/],
    [['--along', '30 sts', '--put', '30000'], 2, /--put wants a whole number/],
    [
      ['--along', '30 row ends', '--gauge', '0 sts and 9 rows over 10 cm'],
      2,
      /count again over a hand's breadth/,
    ],
    [['--along', '30 sts', '--put', '31', '--multiple', '0'], 2, /--multiple wants a repeat/],
    [
      ['--along', '30 sts', '--put', '3', '--with', 'wobble'],
      2,
      /--with wants a stitch in US terms, such as sc/,
    ],
    [['--along', '30 sts', '--put', '3', '--terms', 'fr'], 2, /--terms takes us, uk/],
    [['patterns/sandbar-square', '--along', '3 sts'], 2, /--along is for a side without a pattern/],
    [['patterns/sandbar-square', '--corner', '-1'], 2, /--corner needs a value/],
    [['patterns/sandbar-square', '--corner', '2.5'], 2, /--corner wants a whole number up to 20/],
    [['patterns/sandbar-square', '--size', 'huge'], 2, /There is no size huge/],
    [['patterns/nowhere'], 1, /nowhere/],
    // Which rule cannot be met, and the nearest that can.
    [
      ['patterns/sandbar-square', '--size', 'small', '--put', '24', '--multiple', '4 plus 1'],
      1,
      /Size small: 24 is no multiple of 4 plus 1; the nearest are 21 and 25\./,
    ],
    [
      ['--along', '30 sts', '--put', '2', '--multiple', '6 plus 3'],
      1,
      /2 is no multiple of 6 plus 3; the nearest is 3\./,
    ],
  ])('%j ends with %d', async (words, code, said) => {
    const told = await rowfold(['edge', ...words], folder);
    expect(told.err + told.out).toMatch(said);
    expect(told.code).toBe(code);
  });

  test('an edging with a repeat of its own has numbers that it repeats over, on every side', async () => {
    const { sizes } = await json('patterns/sandbar-square', '--multiple', '4 plus 1');
    for (const { sides } of sizes) for (const { stitches } of sides) expect((stitches - 1) % 4).toBe(0);
  });
});
