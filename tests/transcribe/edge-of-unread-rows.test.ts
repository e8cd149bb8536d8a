/** An edging along the ends of rows that could not all be worked. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const BAND = readFileSync(join(import.meta.dirname, '../pages/first/cabled-headband.txt'), 'utf8');
const READ = BAND.replace('C4B', 'C4F');

test('2 in each of 41 row ends are 82, and no other number', () => {
  expect(workedText(READ).rows[0]?.at(-1)).toBe('Edging: 82');
  expect(workedText(READ.replace('82 sc', '80 sc')).messages).toContain(
    'Edging makes 82 sc, but 80 is stated',
  );
});

test('where rows could not be read it is not known how many ends there are, and nothing is told of it', () => {
  expect(workedText(BAND).codes).toContain('word/unknown');
  expect(workedText(BAND).codes).not.toContain('count/mismatch');
});
