import { readdirSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { starterPattern } from '../../src/commands/starter-pattern.ts';
import { type Builder, startBuilder } from '../../src/serve/build-apart.ts';
import { removeFolder, scratchFolder, writePattern } from '../commands/run-rowfold.ts';

const GOOD = starterPattern('Reed Square', { terms: 'US', shape: 'flat', sizes: ['one'] });

let folder: string;
let builder: Builder;
beforeEach(() => {
  folder = scratchFolder();
  writePattern(folder, 'reed', GOOD);
  builder = startBuilder(path.join(folder, '_site'));
});
afterEach(async () => {
  await builder.end();
  removeFolder(folder);
});

const order = () => ({
  patterns: path.join(folder, 'patterns'),
  alongs: path.join(folder, 'alongs'),
  out: path.join(folder, '_site'),
});

test('a site is built apart, told of as it goes on, and built again by a new process where the old one was ended', async () => {
  const said: string[] = [];
  const first = await builder.build(order(), (words) => void said.push(words));
  expect(first).toMatchObject({ kind: 'built', counts: { patterns: 1 } });
  expect(said).toContain('Reed Square: charts and booklets (1 of 1)');
  await builder.end();
  const again = await builder.build(order(), () => undefined);
  expect(again.kind).toBe('built');
  expect(readdirSync(folder).sort()).toEqual(['_site', 'patterns']);
}, 300_000);

test('one that is ended in the middle leaves nothing behind, and the site as it was', async () => {
  await new Promise<void>((resolve) => {
    void builder.build(order(), (words) => {
      if (words.includes('charts and booklets')) resolve();
    });
  });
  expect(readdirSync(folder).some((name) => name.startsWith('_site.new-'))).toBe(true);
  await builder.end();
  expect(readdirSync(folder)).toEqual(['patterns']);
}, 300_000);
