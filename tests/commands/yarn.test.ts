/** `yarn` run: what each size takes, and how many balls of another put-up that is. */

import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { runCommand } from '../../src/commands/run-command.ts';

const ROOT = path.join(import.meta.dirname, '../..');
const SANDBAR = path.join(ROOT, 'patterns/sandbar-square');

async function rowfold(...words: readonly string[]) {
  const said: string[] = [];
  const told: string[] = [];
  const code = await runCommand(['yarn', ...words], {
    say: (line) => void said.push(line),
    tell: (line) => void told.push(line),
    colour: false,
    over: null,
    ask: null,
    width: 100,
  });
  return { code, out: said.join('\n'), err: told.join('\n') };
}

describe('yarn', () => {
  test('tells each size and colour, metres and yards, grams and ounces', async () => {
    const { code, out } = await rowfold(SANDBAR);
    expect(code).toBe(0);
    expect(out).toMatch(
      /^small\nYarn A: about \d+ m \(\d+ yd\), 1 ball of 180 m \(197 yd\) and 100 g \(3\.5 oz\)$/m,
    );
    expect(out.match(/^Yarn [AB]:/gm)).toHaveLength(6);
  });

  test('counts the maker’s own balls by length, colour by colour', async () => {
    const { out } = await rowfold(
      SANDBAR,
      '--size',
      'large',
      '--ball',
      'A: 50 m and 25 g; B: 90 m and 50 g',
      '--json',
    );
    const { yarn } = JSON.parse(out);
    expect(yarn.map(({ name }: { name: string }) => name)).toEqual(['A', 'B']);
    const [a, b] = yarn;
    expect(a.balls).toBe(Math.ceil(a.m / 50));
    expect(a.g).toBeCloseTo(a.m / 2, 6);
    expect(b.balls).toBe(1);
  });

  test('of a size of the maker’s own goes by its stitches', async () => {
    const own = JSON.parse((await rowfold(SANDBAR, '--repeats', '10', '--rows', '31', '--json')).out);
    const large = JSON.parse((await rowfold(SANDBAR, '--size', 'large', '--json')).out);
    expect(own.yarn[0].size).toBe('your own');
    // 61 x 31 stitches against 49 x 27: a little more than the ratio of both, for the edging is another colour.
    expect(own.yarn[0].m / large.yarn[0].m).toBeCloseTo((61 * 31) / (49 * 27), 1);
  });

  test('weighs one put-up against another, and warns of going by weight', async () => {
    const { code, out } = await rowfold(
      '--instead-of',
      '8 balls of 125 m and 50 g',
      '--ball',
      '200 yd and 3.5 oz',
    );
    expect(code).toBe(0);
    expect(out).toBe(`1000 m (1094 yd), 8 balls of 125 m (137 yd) and 50 g (1.8 oz)
  that is 6 balls of 183 m (200 yd) and 99 g (3.5 oz), 543 g (19.1 oz) worked
  By weight it would seem to be 5 balls: go by length.
  It is thicker than the yarn asked for (184 m in 100 g against 250 m in 100 g): work a swatch before you buy.`);
  });

  test.each([
    [[], /Name a pattern, or say both --instead-of/],
    [['--instead-of', '900 m'], /say both/],
    [['--instead-of', '0 m', '--ball', '200 m'], /--instead-of wants a length or so many balls/],
    [['--instead-of', '8 kg', '--ball', '200 m'], /--instead-of wants a length or so many balls/],
    [['--instead-of', '0 balls of 125 m', '--ball', '200 m'], /--instead-of wants a length or so many balls/],
    [['--instead-of', '900 m', '--ball', '100 g'], /--ball wants the length on the band/],
    [['--instead-of', '900 m', '--ball', '0 m'], /a ball has between 1 m and 20000 m/],
    [['--instead-of', '900 m', '--ball', '90 km'], /--ball wants the length on the band/],
    [['--instead-of', '900 m', '--ball', '90000 m'], /a ball has between/],
    [['--instead-of', '900 m', '--ball', '200 m and 0 g'], /a ball weighs between 1 g and 10000 g/],
    [[SANDBAR, '--ball', 'Q: 200 m'], /there is no yarn Q; the pattern has A, B/],
    [[SANDBAR, '--instead-of', '900 m'], /--instead-of is for an amount without a pattern/],
    [[SANDBAR, '--size', 'huge'], /There is no size huge/],
    [[SANDBAR, '--width', '0 cm'], /between/],
  ])('says what is wrong with %j', async (words, said) => {
    const { code, err } = await rowfold(...words);
    expect(err).toMatch(said);
    expect(code).toBe(2);
  });
});
