/** The JSON Schema of an along's file says of files what the program says of them. */

import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { alongJsonSchema } from '../../src/along/schema.ts';

const ajv = new Ajv({ strict: false, allErrors: true });
const fits = ajv.compile(alongJsonSchema);
const sample = (): Record<string, unknown> =>
  parse(readFileSync('alongs/salt-marsh-blanket/along.yaml', 'utf8'));

test('the sample along fits it', () => {
  fits(sample());
  expect(fits.errors ?? []).toEqual([]);
});

test.each([
  ['a key that there is none of', { tittle: 'Salt Marsh' }],
  ['a title that is a list', { title: ['Salt', 'Marsh'] }],
  ['weeks that are a word', { weeks: 'six' }],
  ['terms that nobody has', { terms: 'FR' }],
  ['a grid without a number down', { blanket: { across: 6 } }],
])('%s does not', (_, wrong) => {
  expect(fits({ ...sample(), ...wrong })).toBe(false);
});
