/** A round that a repeat closes again and again: told, and not worked for ever. */

import { expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';

function codes(row: string): string[] {
  const text = `title: T
terms: US
yarn:
  A: {colour: reed, weight: 4, fibre: wool}
parts:
  - name: Disc
    work: |
      Rnd 1: In a magic ring, ch 3 (counts as dc), 11 dc, join with sl st in top of beg ch-3. (12 dc)
      ${row}
`;
  return compilePattern({ file: 't', text }, 't')
    .diagnostics.filter(({ severity }) => severity === 'error')
    .map(({ code }) => code);
}

test('a join inside a repeat that goes on to the end has no end', () => {
  expect(
    codes('Rnd 2: Ch 1, dc in first st, *ch 1, sk next st, join in next st; rep from * around.'),
  ).toEqual(['repeat/endless']);
});

test('a join behind it closes the round once', () => {
  expect(
    codes(
      'Rnd 2: Ch 1, sc in same st, *ch 1, sk next st, sc in next st; rep from * to last st, ch 1, join with sl st in first sc.',
    ),
  ).toEqual([]);
});
