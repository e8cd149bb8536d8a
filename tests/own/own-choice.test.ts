import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import { remakeableFrom } from '../../src/compile-own.ts';
import { readChoice, tidyQuery } from '../../src/own/own-choice.ts';
import { readAsked } from '../../src/own/read-asked.ts';

const name = 'sandbar-square';
const text = readFileSync(join(import.meta.dirname, '../../patterns', name, 'pattern.yaml'), 'utf8');
const compiled = compilePattern({ file: name, text }, name);
const { pattern, sizes } = compiled;
const remakeable = remakeableFrom(compiled, 0);
if (pattern === null || remakeable === null) throw new Error('no pattern');
const from = { pattern, sizeSlugs: sizes.map(({ slug }) => slug) };
const choice = (query: string) => readChoice(new URLSearchParams(query), from);
const asked = (query: string) => readAsked(choice(query).asked, remakeable, 0, (field) => field);

test('an empty address asks for nothing, in the terms of the pattern', () => {
  expect(choice('')).toMatchObject({ from: 0, dialect: 'us', leftHanded: false, units: 'metric' });
  expect(asked('')).toEqual({ kind: 'none' });
});

test('bare numbers are in the units that she reads in', () => {
  expect(asked('width=30')).toMatchObject({ own: { widthMm: 300 } });
  expect(asked('width=12&units=imperial')).toMatchObject({ own: { widthMm: 12 * 25.4 } });
  expect(asked('width=12+1/2&units=imperial')).toMatchObject({ own: { widthMm: 12.5 * 25.4 } });
  // One that names its unit keeps it.
  expect(asked('width=30+cm&units=imperial')).toMatchObject({ own: { widthMm: 300 } });
  expect(asked('ball-length=100&ball-weight=50')).toMatchObject({ kind: 'asked' });
  const yards = asked('ball-length=100&units=imperial');
  expect(yards.kind === 'asked' && yards.own.balls.get('A')?.lengthM).toBeCloseTo(91.44, 6);
});

test('a gauge without its measure is over that of the pattern', () => {
  expect(asked('gauge-sts=14')).toMatchObject({ own: { gauge: { stitches: 14, rows: null, overMm: 100 } } });
  expect(asked('gauge-sts=14&gauge-rows=8&gauge-over=4+in')).toMatchObject({
    own: { gauge: { stitches: 14, rows: 8, overMm: 101.6 } },
  });
});

test('rows without stitches are no gauge, and it says what one is', () => {
  expect(asked('gauge-rows=8')).toMatchObject({ kind: 'wrong', field: 'gauge' });
});

test('what the address names and the pattern does not have is as if it were not said', () => {
  expect(choice('size=enormous&terms=martian&hand=third&units=ells')).toMatchObject({
    from: 0,
    dialect: 'us',
    leftHanded: false,
    units: 'metric',
  });
});

test.each([
  ['hook=5', 5],
  ['hook=4.5+mm', 4.5],
  ['hook=4,5', 4.5],
  ['hook=H-8', 5],
  ['hook=h-8', 5],
])('%s is a hook of %d mm', (query, hookMm) => {
  expect(asked(query)).toMatchObject({ own: { hookMm } });
});

test.each(['hook=0', 'hook=900', 'hook=green', 'hook=-3'])('%s is no hook', (query) => {
  expect(asked(query)).toMatchObject({ kind: 'wrong', field: 'hook' });
});

test('the address keeps no fields that were left empty', () => {
  expect(tidyQuery(new URLSearchParams('width=&height=+&terms=uk')).toString()).toBe('terms=uk');
});
