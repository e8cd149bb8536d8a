/** Patterns that are right give a technical editor nothing to say. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { checkPattern } from '../../src/compile.ts';
import { publicationFaults } from '../../src/diagnostics/catalogue/publication.ts';

const root = resolve(import.meta.dirname, '../..');
const files = ['patterns', 'tests/patterns'].flatMap((folder) =>
  readdirSync(`${root}/${folder}`)
    .map((name) => `${folder}/${name}/pattern.yaml`)
    .filter((file) => existsSync(`${root}/${file}`)),
);

test('there are patterns of many kinds to try', () => expect(files.length).toBeGreaterThan(30));

test.each(files)('%s', (file) => {
  const text = readFileSync(`${root}/${file}`, 'utf8');
  const ofPublication = Object.keys(publicationFaults);
  const said = checkPattern({ file, text }, 'pattern').filter(({ code }) => ofPublication.includes(code));
  expect(said.map(({ code, message }) => `${code}: ${message}`)).toEqual([]);
});
