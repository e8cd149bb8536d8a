import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { starterPattern } from '../../src/commands/starter-pattern.ts';
import { buildSite } from '../../src/site/build-site.ts';
import { removeFolder, scratchFolder, writePattern } from '../commands/run-rowfold.ts';

const folder = scratchFolder();
afterAll(() => removeFolder(folder));
const out = path.join(folder, '_site');
const madeBefore = new Map<string, string>();
const build = async () => {
  const { kind } = await buildSite({
    patterns: path.join(folder, 'patterns'),
    alongs: path.join(folder, 'alongs'),
    asOf: () => 0,
    out,
    progress: () => undefined,
    madeBefore,
  });
  return kind;
};

const GOOD = starterPattern('Reed Square', { terms: 'US', shape: 'flat', sizes: ['one'] });
const WRONG = GOOD.replace('(16 sts)', '(17 sts)');

/** What was written over a booklet is gone where the booklet was made anew. */
const bookletOf = (name: string) => path.join(out, name, 'one', `${name}-one-a4.pdf`);
const MARK = 'kept from before';
const markAll = () => {
  for (const name of ['reed', 'sedge']) writeFileSync(bookletOf(name), MARK);
};
const kept = () => ['reed', 'sedge'].filter((name) => readFileSync(bookletOf(name), 'latin1') === MARK);

test('a build after another makes anew what changed, and only that', async () => {
  writePattern(folder, 'reed', GOOD);
  writePattern(folder, 'sedge', GOOD);
  expect(await build()).toBe('built');
  const first = readFileSync(bookletOf('sedge'));

  markAll();
  writePattern(folder, 'reed', GOOD.replace('Reed Square', 'Sedge Square'));
  expect(await build()).toBe('built');
  expect(kept()).toEqual(['sedge']);
  expect(readFileSync(path.join(out, 'reed/index.html'), 'utf8')).toContain('Sedge Square');

  // A build with faults changes nothing, neither the folder nor what is known of it. A file taken away is made again.
  markAll();
  writePattern(folder, 'reed', WRONG);
  expect(await build()).toBe('faults');
  rmSync(bookletOf('sedge'));
  writePattern(folder, 'reed', GOOD);
  expect(await build()).toBe('built');
  expect(kept()).toEqual([]);
  expect(readFileSync(bookletOf('sedge'))).toEqual(first);

  // The settings of the site are in every booklet.
  markAll();
  writeFileSync(path.join(folder, 'patterns/site.yaml'), 'address: https://patterns.example/\n');
  expect(await build()).toBe('built');
  expect(kept()).toEqual([]);
}, 300_000);
