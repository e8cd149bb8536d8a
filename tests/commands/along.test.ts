/** The commands that know of crochet-alongs, run as their users run them: build by the hour, a late week, due, blanket. */

import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { GOOD, removeFolder, rowfold, scratchFolder, writePattern } from './run-rowfold.ts';

const folder = scratchFolder();
afterAll(() => removeFolder(folder));

const examples = path.join(import.meta.dirname, '../along/squares');
const good = readFileSync(path.join(import.meta.dirname, '../diagnostics/along/date/good.yaml'), 'utf8');
const FIRST = '2026-10-31T09:00-03:00';
const SECOND = '2026-11-07T09:00-04:00';

function writeAlong(text: string): void {
  mkdirSync(path.join(folder, 'alongs/chalk'), { recursive: true });
  writeFileSync(path.join(folder, 'alongs/chalk/along.yaml'), text);
}

function writeSquare(name: string, text: string): void {
  mkdirSync(path.join(folder, 'alongs/chalk', name), { recursive: true });
  writeFileSync(path.join(folder, 'alongs/chalk', name, 'pattern.yaml'), text);
}

const square = (name: string) => readFileSync(path.join(examples, `${name}.yaml`), 'utf8');

function filesOf(out: string): string[] {
  return readdirSync(path.join(folder, out), { recursive: true, encoding: 'utf8' });
}

beforeAll(() => {
  writePattern(folder, 'grey-square', GOOD);
  writeFileSync(path.join(folder, 'patterns/site.yaml'), 'booklets: []\n');
  writeAlong(good);
  writeSquare('plain', square('plain'));
  writeSquare('another', square('another'));
});

describe('build', () => {
  test('publishes what is due and nothing of what is not', async () => {
    const { code, out } = await rowfold(['build', '--as-of', FIRST, '--out', 'first'], folder);
    expect(out).toMatch(/^1 pattern and 1 crochet-along in 3 sizes/);
    expect(code).toBe(0);
    const files = filesOf('first');
    expect(files).toContain('chalk/plain/one-size/index.html');
    expect(files).toContain('along.schema.json');
    expect(files.filter((file) => /another|week-2/.test(file))).toEqual([]);
  });

  test('a pattern that a week to come calls for is kept back wherever it lies', async () => {
    writePattern(folder, 'another', square('another'));
    writeAlong(good.replace('pattern: another', 'pattern: ../../patterns/another'));
    expect((await rowfold(['build', '--as-of', FIRST, '--out', 'first'], folder)).code).toBe(0);
    expect(filesOf('first').filter((file) => file.includes('another'))).toEqual([]);
    expect(readFileSync(path.join(folder, 'first/index.html'), 'utf8')).not.toContain('Another');
    expect((await rowfold(['build', '--as-of', SECOND, '--out', 'first'], folder)).code).toBe(0);
    expect(filesOf('first')).toContain('another/index.html');
    removeFolder(path.join(folder, 'patterns/another'));
    writeAlong(good);
  });

  test('a preview has everything, and says of each page that it is one', async () => {
    const { code } = await rowfold(['build', '--preview', '--out', 'preview'], folder);
    expect(code).toBe(0);
    const pages = filesOf('preview').filter((file) => file.endsWith('.html'));
    expect(pages).toContain('chalk/another/one-size/index.html');
    expect(pages).toContain('404.html');
    const unmarked = pages.filter(
      (file) =>
        !readFileSync(path.join(folder, 'preview', file), 'utf8').includes('PREVIEW – not published yet'),
    );
    expect(unmarked).toEqual([]);
    expect(readFileSync(path.join(folder, 'preview/chalk/releases.ics'), 'utf8')).toContain('PREVIEW');
    const drawings = filesOf('preview').filter((file) => /chart.*\.svg$/.test(file));
    expect(drawings.length).toBeGreaterThan(0);
    for (const file of drawings)
      expect(readFileSync(path.join(folder, 'preview', file), 'utf8'), file).toContain(
        'PREVIEW – not published yet</text>',
      );
  });

  test('a faulty pattern of a week to come is told, and the week that is due is published', async () => {
    writeSquare('another', square('wrong-count'));
    const { code, err } = await rowfold(['build', '--as-of', FIRST, '--out', 'late'], folder);
    expect(err).toMatch(/along\/pattern-faulty[\s\S]*week 2: Wrong Count has an error/);
    expect(code).toBe(0);
    expect(existsSync(path.join(folder, 'late/chalk/week-1/index.html'))).toBe(true);
  });

  test('once it is due the build fails loudly, and the rest is published without it', async () => {
    const { code, err } = await rowfold(['build', '--as-of', SECOND, '--out', 'late'], folder);
    expect(code).toBe(1);
    expect(err).toMatch(/week 2: Wrong Count has an error/);
    expect(err).toMatch(/A week that is due is held back/);
    const files = filesOf('late');
    expect(files).toContain('chalk/week-1/index.html');
    expect(files).toContain('grey-square/index.html');
    expect(files.filter((file) => /another|week-2/.test(file))).toEqual([]);
    expect(readFileSync(path.join(folder, 'late/chalk/index.html'), 'utf8')).toContain(
      'it is being put right',
    );
    writeSquare('another', square('another'));
  });

  test('an along that cannot be read keeps everything from being published', async () => {
    writeAlong(good.replace('America/Halifax', 'America/Nowhere'));
    const { code, err } = await rowfold(['build', '--as-of', FIRST, '--out', 'none'], folder);
    expect(err).toMatch(/along\/zone/);
    expect(code).toBe(1);
    expect(existsSync(path.join(folder, 'none'))).toBe(false);
    writeAlong(good);
  });

  test.each([
    [['--as-of', 'tomorrow'], /"tomorrow" is not a time/],
    [['--as-of', '2026-02-30'], /"2026-02-30" is not a time/],
    [['--as-of', FIRST, '--preview'], /leave out --as-of/],
  ])('%j is not understood', async (words, says) => {
    const { code, err } = await rowfold(['build', ...words], folder);
    expect(err).toMatch(says);
    expect(code).toBe(2);
  });
});

describe('due', () => {
  test.each([
    ['2026-10-31T08:59:59', '2026-10-31T12:00:00Z'],
    ['2026-10-31T09:00', '2026-11-07T13:00:00Z'],
    ['2026-11-07T12:59:59Z', '2026-11-07T13:00:00Z'],
  ])('at %s the next is at %s', async (time, next) => {
    const { code, out } = await rowfold(['due', '--as-of', time], folder);
    expect(out.split('  ')[0]).toBe(next);
    expect(code).toBe(0);
  });

  test('for other programs it is JSON', async () => {
    const { out } = await rowfold(['due', 'alongs/chalk', '--as-of', FIRST, '--json'], folder);
    expect(JSON.parse(out)).toEqual([{ along: 'chalk', week: 2, at: '2026-11-07T13:00:00Z' }]);
  });

  test('when all are out nothing is printed', async () => {
    const { code, out, err } = await rowfold(['due', '--as-of', SECOND], folder);
    expect([code, out]).toEqual([0, '']);
    expect(err).toMatch(/Every week of every along is out/);
  });
});

describe('blanket', () => {
  test('plans what is out, and ends with 1 while places are empty', async () => {
    const { code, out, err } = await rowfold(['blanket', 'alongs/chalk', '--as-of', FIRST], folder);
    expect(out).toMatch(
      /^2 across and 4 down: 4 of 8 places filled, 4 squares\n\s+4 {2}Plain Square \(week 1\)/,
    );
    expect(out).not.toMatch(/Another/);
    expect(err).toMatch(/4 places are empty/);
    expect(code).toBe(1);
  });

  test('takes squares and sides of her own', async () => {
    const words = [
      'blanket',
      'alongs/chalk',
      '--preview',
      '--across',
      '3',
      '--make',
      'plain 5, another 7',
      '--json',
    ];
    const { code, out } = await rowfold(words, folder);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      across: 3,
      down: 4,
      places: 12,
      filled: 12,
      seamStitches: [27, 36],
    });
    const wrong = await rowfold(['blanket', 'alongs/chalk', '--preview', '--make', 'plian 5'], folder);
    expect([wrong.code, wrong.err]).toEqual([2, expect.stringMatching(/Did you mean plain\?/)]);
  });
});
