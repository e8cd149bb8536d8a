/** What a pattern's own rules do not leave open: which rule, and the nearest that keeps it. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import { remakeableFrom } from '../../src/compile-own.ts';
import { cannotBe } from '../../src/own/cannot-be.ts';
import { leastWords, nearTables } from '../../src/own/near-words.ts';
import { nearOwn, type Remakeable } from '../../src/own/own-pattern.ts';
import { NOTHING_ASKED } from '../../src/pattern/own-size.ts';

function demo(name: string): Remakeable {
  const text = readFileSync(join(import.meta.dirname, '../../patterns', name, 'pattern.yaml'), 'utf8');
  const remakeable = remakeableFrom(compilePattern({ file: name, text }, name), 0);
  if (remakeable === null) throw new Error('no pattern');
  return remakeable;
}

describe('rows that a pattern cannot end with', () => {
  const sandbar = demo('sandbar-square');
  const tides = demo('two-tides-square');

  test.each([
    [sandbar, 28, 'Sandbar Square ends with a Row 3, which 28 rows do not; the nearest are 27 and 29.'],
    [sandbar, 2, 'Sandbar Square takes more rows than 2; the nearest is 5.'],
    [sandbar, 29, null],
    [tides, 31, 'Two Tides Square ends with a Row 6, which 31 rows do not; the nearest are 30 and 34.'],
    [tides, 34, null],
  ])('%#: %i rows', (remakeable, rows, said) => {
    expect(cannotBe({ ...NOTHING_ASKED, rows }, remakeable)).toBe(said);
  });
});

describe('a size smaller than the pattern’s least', () => {
  test.each([
    [
      'sandbar-square',
      { widthMm: 20 },
      'No width less than 7 cm (2 ¾ in) comes out: that is 1 repeat across.',
    ],
    ['sandbar-square', { heightMm: 10 }, 'No height less than 8 cm (3 ¼ in) comes out: that is 5 rows.'],
    ['lantern-square', { widthMm: 30 }, 'No width less than 8 cm (3 ¼ in) comes out: that is 4 rounds.'],
    ['sandbar-square', { widthMm: 300 }, null],
    ['lantern-square', { widthMm: 300 }, null],
  ])('%s, %j', (name, asked, said) => {
    const [table] = nearTables(nearOwn(demo(name), { ...NOTHING_ASKED, ...asked }));
    expect(table === undefined ? undefined : leastWords(table)).toBe(said);
  });
});
