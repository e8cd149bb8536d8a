/** Patterns that are right give the checker nothing to say: no fault, no warning, no note. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { checkPattern } from '../../src/compile.ts';

const root = resolve(import.meta.dirname, '../..');
const files = ['patterns', 'tests/patterns', 'tests/mistakes/held-out'].flatMap((folder) =>
  readdirSync(`${root}/${folder}`)
    .map((name) => `${folder}/${name}/pattern.yaml`)
    .filter((file) => existsSync(`${root}/${file}`)),
);

test('there are patterns of many kinds to try', () => expect(files.length).toBeGreaterThan(45));

test.each(files)('%s', (file) => {
  const text = readFileSync(`${root}/${file}`, 'utf8');
  const said = checkPattern({ file, text }, 'pattern');
  expect(said.map(({ code, message }) => `${code}: ${message}`)).toEqual([]);
});
