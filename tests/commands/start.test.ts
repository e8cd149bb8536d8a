/** What a designer starts is what stands in the files: made once, made anew when a file changes, and run as it stands where nothing can be kept. */

import { execFileSync } from 'node:child_process';
import { chmodSync, cpSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { removeFolder, scratchFolder } from './run-rowfold.ts';

const PROJECT = fileURLToPath(new URL('../../', import.meta.url));
const folder = path.join(scratchFolder(), 'rowfold');
const kept = path.join(folder, '.cache/rowfold');

beforeAll(() => {
  mkdirSync(folder);
  for (const name of [
    'src',
    'shared',
    'eleventy.config.ts',
    'package.json',
    'package-lock.json',
    'bundle.mjs',
    'rowfold.mjs',
    'layouts',
  ])
    cpSync(path.join(PROJECT, name), path.join(folder, name), { recursive: true });
  symlinkSync(path.join(PROJECT, 'node_modules'), path.join(folder, 'node_modules'));
});
afterAll(() => {
  chmodSync(folder, 0o755);
  removeFolder(path.dirname(folder));
});

const version = (): string =>
  execFileSync(process.execPath, [path.join(folder, 'rowfold.mjs'), '--version'], {
    encoding: 'utf8',
  }).trim();

test('what was made is kept until a file changes, and then only the new is', () => {
  const said = version();
  expect(said).toMatch(/\d+\.\d+\.\d+/);
  const [first = '', ...others] = readdirSync(kept);
  expect(others).toEqual([]);
  expect(version()).toBe(said);
  expect(readdirSync(kept)).toEqual([first]);
  const help = path.join(folder, 'src/commands/run-command.ts');
  writeFileSync(help, `${readFileSync(help, 'utf8')}// changed\n`);
  expect(version()).toBe(said);
  const [second, ...more] = readdirSync(kept);
  expect(second).not.toBe(first);
  expect(more).toEqual([]);
});

test('where nothing can be kept it runs all the same', () => {
  writeFileSync(path.join(folder, 'src/extra.ts'), 'export {};\n');
  // A file stands where the folder would be made; a folder that is closed is open to whoever may do everything.
  removeFolder(path.join(folder, '.cache'));
  writeFileSync(path.join(folder, '.cache'), '');
  expect(version()).toMatch(/\d+\.\d+\.\d+/);
});
