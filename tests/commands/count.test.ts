import { once } from 'node:events';
import { afterAll, describe, expect, test } from 'vitest';
import { GOOD, removeFolder, rowfold, scratchFolder, startRowfold, writePattern } from './run-rowfold.ts';

const folder = scratchFolder();
writePattern(folder, 'good', GOOD);
afterAll(() => removeFolder(folder));

interface Row {
  readonly label: string;
  readonly line: number;
  readonly stitches: number;
}

describe('count --json', () => {
  test('has the documented shape, and a row for each row of a range', async () => {
    const { code, out, err } = await rowfold(['count', 'patterns/good', '--json'], folder);
    expect([code, err]).toEqual([0, '']);
    const counted = JSON.parse(out);
    expect(Object.keys(counted)).toEqual(['title', 'sizes']);
    expect(counted.title).toBe('Grey Square');
    expect(counted.sizes.map(({ name }: { name: string }) => name)).toEqual(['small', 'medium', 'large']);
    const [small, medium] = counted.sizes;
    expect(Object.keys(small)).toEqual(['name', 'rows', 'width', 'height', 'yarn']);
    const rows: Row[] = small.rows;
    const row = rows.find(({ label }) => label === 'Row 2');
    const line = GOOD.split('\n').findIndex((text) => text.includes('Rows 2-18')) + 1;
    expect(row).toEqual({
      part: 'Square',
      label: 'Row 2',
      line,
      stitches: 16,
      spaces: 0,
      takes: {
        stitches: 16,
        spaces: 0,
        chains: 0,
        otherSide: 0,
        rings: 0,
        rowEnds: 0,
        gaps: 0,
        rowsBelow: 0,
      },
      skips: { stitches: 0, spaces: 0, chains: 0 },
      leaves: { stitches: 0, spaces: 0, chains: 0 },
      byStitch: { sc: 16 },
      groups: {},
      stated: null,
    });
    // A range states its count once, for the row it ends with.
    expect(rows.find(({ label }) => label === 'Row 18')).toMatchObject({ line, stated: '16 sts' });
    // Rows 1 and 2 to 18 of the small, 1 and 2 to 27 of the medium size, besides the foundation.
    const numbered = (of: Row[]) => of.filter(({ label }) => label.startsWith('Row '));
    expect(numbered(rows)).toHaveLength(18);
    expect(numbered(medium.rows)).toHaveLength(27);
    expect(numbered(medium.rows).every(({ stitches }) => stitches === 24)).toBe(true);
    // 16 stitches at 16 to 10 cm, 18 rows at 18 to 10 cm.
    expect(small.width.mm).toBeCloseTo(100, 0);
    expect(small.height.mm).toBeCloseTo(100, 0);
    expect(small.yarn).toEqual([{ name: 'A', m: expect.any(Number) }]);
  });

  test('--size gives that size alone, whatever its capitals', async () => {
    const { code, out } = await rowfold(['count', 'patterns/good', '--size', 'LARGE', '--json'], folder);
    expect(code).toBe(0);
    expect(JSON.parse(out).sizes.map(({ name }: { name: string }) => name)).toEqual(['large']);
  });
});

test('a size that is not there is wrong use, and the nearest is offered', async () => {
  const { code, err } = await rowfold(['count', 'patterns/good', '--size', 'larg'], folder);
  expect(err).toMatch(/no size larg.*it has small, medium, large\. Did you mean large\?/);
  expect(code).toBe(2);
});

test('people get a table with its columns aligned', async () => {
  const { out } = await rowfold(['count', 'patterns/good', '--size', 'small'], folder);
  const lines = out.split('\n');
  const head = lines.find((line) => line.startsWith('Row'));
  const rows = lines.filter((line) => line.startsWith('Row ') && line !== head);
  const ends = (head?.indexOf('Stitches') ?? -100) + 'Stitches'.length;
  expect(rows).toHaveLength(18);
  for (const row of rows) expect(row.slice(0, ends)).toMatch(/ 16$/);
});

test('a pattern that cannot be read is told on standard error, and the answer is still JSON', async () => {
  const { code, out, err } = await rowfold(['count', 'patterns/none', '--json'], folder);
  expect(JSON.parse(out)).toEqual({ title: null, sizes: [] });
  expect(err).toContain('path/missing');
  expect(code).toBe(1);
});

test('whoever reads the answer may stop early', async () => {
  const child = startRowfold(['count', 'patterns/good', '--json'], folder);
  let err = '';
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    err += text;
  });
  child.stdout?.destroy();
  const [code] = await once(child, 'close');
  expect(err).toBe('');
  expect(code).toBe(0);
});
