import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { GOOD, removeFolder, rowfold, scratchFolder, WRONG, writePattern } from './run-rowfold.ts';

const folder = scratchFolder();
const wrongFile = writePattern(folder, 'wrong', WRONG);
const goodFile = writePattern(folder, 'good', GOOD);
writePattern(folder, 'latin', Buffer.from('title: Caf\xe9\n', 'latin1'));
mkdirSync(path.join(folder, 'empty'));
afterAll(() => removeFolder(folder));

const KEYS = [
  'code',
  'severity',
  'file',
  'line',
  'column',
  'endLine',
  'endColumn',
  'message',
  'why',
  'try',
  'size',
].sort();

interface Fault {
  readonly code: string;
  readonly severity: string;
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly size: string | null;
}

async function faultsOf(...paths: string[]): Promise<{ code: number | null; ok: boolean; faults: Fault[] }> {
  const { code, out } = await rowfold(['check', ...paths, '--json'], folder);
  return { code, ...JSON.parse(out) };
}

describe('a pattern whose counts agree', () => {
  test.each([['patterns/good'], [goodFile], ['./patterns/good/']])('%s is well', async (typed) => {
    const { code, out } = await rowfold(['check', typed], folder);
    expect(out).toMatch(/No faults\. 1 pattern checked\./);
    expect(code).toBe(0);
    expect(await faultsOf(typed)).toEqual({ code: 0, ok: true, faults: [] });
  });
});

describe('a row that states a stitch too many', () => {
  test('is told with the place of the count, why it matters and what to try', async () => {
    const { code, out } = await rowfold(['check', 'patterns/wrong'], folder);
    const line = WRONG.split('\n').findIndex((text) => text.includes('(17 (24, 32) sts)')) + 1;
    expect(out).toContain(`${wrongFile}:${line}:`);
    expect(out).toMatch(/^why {2}/m);
    expect(out).toMatch(/^try {2}/m);
    expect(code).toBe(1);
  });

  test('is given to other programs in the documented shape, for the size it touches', async () => {
    const { code, ok, faults } = await faultsOf('patterns/wrong');
    expect([code, ok]).toEqual([1, false]);
    expect(faults).toHaveLength(1);
    const [fault] = faults;
    expect(Object.keys(fault ?? {}).sort()).toEqual(KEYS);
    expect(fault).toMatchObject({
      code: 'count/mismatch',
      severity: 'error',
      file: wrongFile,
      size: 'small',
    });
  });
});

describe('a file that cannot be read as a pattern', () => {
  test.each([
    ['patterns/none', 'patterns/none', 'path/missing'],
    ['empty', 'empty/pattern.yaml', 'path/no-pattern'],
    ['patterns/latin', 'patterns/latin/pattern.yaml', 'path/not-text'],
  ])('%s is a fault of its own, and the other patterns are still checked', async (typed, file, wanted) => {
    const { code, faults } = await faultsOf(typed, 'patterns/wrong');
    expect(faults.map((fault) => fault.code).sort()).toEqual([wanted, 'count/mismatch'].sort());
    expect(faults.find((fault) => fault.code === wanted)).toMatchObject({ file, line: 1, column: 1 });
    expect(code).toBe(1);
  });
});

describe('without a path', () => {
  let checked: { code: number | null; faults: Fault[] };
  beforeAll(async () => {
    checked = await faultsOf();
  });

  test('every pattern under patterns/ is checked', () => {
    expect(checked.faults.map(({ file }) => file).sort()).toEqual(['patterns/latin/pattern.yaml', wrongFile]);
    expect(checked.code).toBe(1);
  });

  test('a folder there without a pattern is remarked on but does no harm', async () => {
    const other = scratchFolder();
    writePattern(other, 'good', GOOD);
    mkdirSync(path.join(other, 'patterns/photographs'));
    const { code, out } = await rowfold(['check'], other);
    expect(out).toContain('patterns/photographs/pattern.yaml:1:1  warning');
    expect(code).toBe(0);
    removeFolder(other);
  });
});

test('a path given twice is checked once', async () => {
  const { faults } = await faultsOf('patterns/wrong', `./${wrongFile}`);
  expect(faults).toHaveLength(1);
});
