import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { buildSite } from '../../src/site/build-site.ts';
import { GOOD, removeFolder, scratchFolder, WRONG, writePattern } from '../commands/run-rowfold.ts';

const folder = scratchFolder();
afterAll(() => removeFolder(folder));
const out = path.join(folder, '_site');
const madeBefore = new Map<string, string>();
const build = () =>
  buildSite({
    patterns: path.join(folder, 'patterns'),
    alongs: path.join(folder, 'alongs'),
    asOf: () => 0,
    out,
    progress: () => undefined,
    madeBefore,
  });

/** Booklets of both patterns, told from one that was made anew by what was written over them. */
const bookletOf = (name: string) => path.join(out, name, 'small', `${name}-small-a4.pdf`);
const MARK = 'kept from before';
const markAll = () => {
  for (const name of ['reed', 'sedge']) writeFileSync(bookletOf(name), MARK);
};
const isKept = (name: string) => readFileSync(bookletOf(name), 'latin1') === MARK;

test('a build after another makes anew what changed, and only that', async () => {
  writePattern(folder, 'reed', GOOD);
  writePattern(folder, 'sedge', GOOD);
  expect((await build()).kind).toBe('built');
  const first = readFileSync(bookletOf('sedge'));

  markAll();
  writePattern(folder, 'reed', GOOD.replace('Grey Square', 'Reed Square'));
  expect((await build()).kind).toBe('built');
  expect([isKept('reed'), isKept('sedge')]).toEqual([false, true]);
  expect(readFileSync(path.join(out, 'reed/index.html'), 'utf8')).toContain('Reed Square');

  // What a build with faults would have made is not there.
  writePattern(folder, 'sedge', WRONG);
  expect((await build()).kind).toBe('faults');
  writePattern(folder, 'sedge', GOOD.replace('oat', 'rye'));
  await build();
  expect(isKept('sedge')).toBe(false);

  // The settings of the site are in every booklet.
  markAll();
  writeFileSync(path.join(folder, 'patterns/site.yaml'), 'address: https://patterns.example/\n');
  expect((await build()).kind).toBe('built');
  expect([isKept('reed'), isKept('sedge')]).toEqual([false, false]);
  rmSync(path.join(folder, 'patterns/site.yaml'));

  // One that somebody took away is made again.
  await build();
  rmSync(bookletOf('sedge'));
  writePattern(folder, 'sedge', GOOD);
  await build();
  expect(readFileSync(bookletOf('sedge'))).toEqual(first);
  rmSync(bookletOf('sedge'));
  await build();
  expect(existsSync(bookletOf('sedge'))).toBe(true);
});
