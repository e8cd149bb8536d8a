import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { DEMO_NAMES } from '../demo/demo-patterns.ts';
import { removeFolder, rowfold, scratchFolder, writePattern } from './run-rowfold.ts';

const folder = scratchFolder();
afterAll(() => removeFolder(folder));
const ROOT = fileURLToPath(new URL('../..', import.meta.url));

const SHELLS = `title: Shell Piece
terms: US
yarn:
  A: {colour: reed, weight: 4, fibre: wool}
special:
  shell: 5 dc in same st
parts:
  - name: Piece
    work: |
      Ch 26.
      Row 1 (RS): Sc in 2nd ch from hook, *sk next 2 ch, shell in next ch, sk next 2 ch, sc in next ch; rep from * across, turn.
      Row 2: Ch 3 (counts as dc), 2 dc in first sc, *sk next 2 dc, sc in next dc, sk next 2 dc, shell in next sc; rep from * to last 6 sts, sk next 2 dc, sc in next dc, sk next 2 dc, 3 dc in last sc, turn.
      Row 3: Ch 1, sc in first dc, *sk next 2 dc, shell in next sc, sk next 2 dc, sc in next dc; rep from * across, turn.
      Rows 4-9: Rep Rows 2 and 3.
      Row 10: Ch 1, sc in each st to last 3 sts, leaving last 3 sts unworked.
`;
/** A row further up makes a stitch too few for the repeat on it. */
const BROKEN = SHELLS.replace('Ch 26.', 'Ch 27.').replace(
  'rep from * across, turn.',
  'rep from * 3 more times, sc in last ch, turn.',
);
writePattern(folder, 'shells', SHELLS);
writePattern(folder, 'broken', BROKEN);

const explain = (name: string) => rowfold(['check', `patterns/${name}`, '--explain'], folder);

describe('check --explain', () => {
  test('lays out what each row takes, leaves and makes, and the sum it comes to', async () => {
    const { code, out } = await explain('shells');
    expect(code).toBe(0);
    await expect(out).toMatchFileSnapshot('explained/shells.txt');
  });

  test('lays out a row that cannot be worked as far as it goes, and ends there', async () => {
    const { code, out } = await explain('broken');
    expect(code).toBe(1);
    await expect(out).toMatchFileSnapshot('explained/broken.txt');
  });

  test('gives other programs the documented shape beside the faults', async () => {
    const { out } = await rowfold(['check', 'patterns/shells', '--explain', '--json'], folder);
    const { ok, faults, explained } = JSON.parse(out);
    expect([ok, faults]).toEqual([true, []]);
    expect(Object.keys(explained[0])).toEqual(['file', 'title', 'sizes', 'otherSizes']);
    expect(explained[0].otherSizes).toEqual({
      multiples: [
        { part: 'Piece', size: null, of: 6, plus: 2, from: 8, stitches: { of: 6, plus: 1 }, proved: true },
      ],
      growths: [],
    });
    const { rows } = explained[0].sizes[0];
    expect(rows.map(({ label }: { label: string }) => label)).toEqual([
      'Foundation',
      ...Array.from({ length: 10 }, (_, i) => `Row ${i + 1}`),
    ]);
    expect(rows[2]).toEqual({
      part: 'Piece',
      label: 'Row 2',
      line: 12,
      takes: { stitches: 9, spaces: 0, chains: 0, otherSide: 0, rings: 0, rowEnds: 0, gaps: 0, rowsBelow: 0 },
      skips: { stitches: 16, spaces: 0, chains: 0 },
      leaves: { stitches: 0, spaces: 0, chains: 0 },
      makes: { stitches: 25, spaces: 0, chains: 0 },
      how: {
        stitches:
          'ch 3 is 1, 2 in the first sc, (1 + 5) x 3 = 18, 1 in the next dc, 3 in the last sc: 25 sts',
        spaces: null,
        uses: 'the repeat uses 6, 3 times = 18; the ends use 1 + 6: 25',
        sides: null,
      },
      stated: null,
      broken: false,
    });
    expect(rows[10]).toMatchObject({
      takes: { stitches: 22 },
      leaves: { stitches: 3 },
      makes: { stitches: 22 },
    });
  });

  test('counts what count counts', async () => {
    const explained = JSON.parse(
      (await rowfold(['check', 'patterns/shells', '--explain', '--json'], folder)).out,
    );
    const counted = JSON.parse((await rowfold(['count', 'patterns/shells', '--json'], folder)).out);
    const { rows } = explained.explained[0].sizes[0];
    expect(counted.sizes[0].rows.length).toBe(10);
    for (const { label, takes, skips, leaves, stitches, spaces } of counted.sizes[0].rows) {
      const row = rows.find((each: { label: string }) => each.label === label);
      expect({ takes, skips, leaves, stitches, spaces }).toEqual({
        takes: row.takes,
        skips: row.skips,
        leaves: row.leaves,
        stitches: row.makes.stitches,
        spaces: row.makes.spaces,
      });
    }
  });

  test('is taught by check --help', async () => {
    const { out } = await rowfold(['check', '--help'], folder);
    expect(out).toContain('--explain');
    expect(out).toContain('(1 + 5) x 5 = 30');
  });
});

test.each([60, 80, 120])('no line of an explained demo pattern is longer than %i', async (width) => {
  process.env.COLUMNS = String(width);
  const { out } = await rowfold(['check', path.join(ROOT, 'patterns'), '--explain'], folder);
  delete process.env.COLUMNS;
  expect(out.match(/^Size /gm)?.length).toBeGreaterThanOrEqual(DEMO_NAMES.length);
  expect(out.split('\n').filter((line) => line.length > width)).toEqual([]);
});
