/** A round of one size alone in the crown, and the rounds of both behind it, told as a range for each. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const BEANIE = `Small Beanie

US terms
Sizes: Child (Adult)

Notes
The ch 2 at the start of each round does not count as a stitch. The first stitch of each round goes in the same stitch as the join.

Crown
Make a magic ring.
Rnd 1: Ch 2, 10 hdc in ring, join with sl st in first hdc. (10 hdc)
Rnd 2: Ch 2, 2 hdc in each st around, join with sl st in first hdc. (20 hdc)
Adult size only
Rnd 3: Ch 2, *2 hdc in next st, hdc in next st; rep from * around, join with sl st in first hdc. (30 hdc)

Sides (both sizes)
Rnds 3-5 (4-7): Ch 2, hdc in each st around, join with sl st in first hdc. (20 (30) hdc)

Brim
Rnd 6 (8): Ch 2, *FPdc around next st, BPdc around next st; rep from * around, join with sl st in first FPdc. (20 (30) sts)
Rnds 7-8 (9-10): Rep Rnd 6 (8), working each post stitch around the matching post stitch below. (20 (30) sts)
Fasten off.
`;

const codesOf = (from: string, to: string) => workedText(BEANIE.replace(from, to)).codes;

test('each size has its own rounds', () => {
  const { codes, rows } = workedText(BEANIE);
  expect(codes).toEqual([]);
  expect(rows.map((size) => size.length)).toEqual([9, 11]);
  expect(rows.map((size) => size.at(-1))).toEqual(['Rnd 8: 20', 'Rnd 10: 30']);
});

describe('read', () => {
  test.each([
    ['Adult size only', 'Adult only'],
    ['Adult size only', 'Size Adult only'],
    ['Sides (both sizes)', 'Sides (all sizes)'],
    [
      'each post stitch around the matching post stitch below',
      'every raised st over same raised st of previous rnd',
    ],
  ])('%s: %s', (from, to) => expect(codesOf(from, to)).toEqual([]));
});

describe('told where', () => {
  test.each([
    ['it is the other size', 'Adult size only', 'Child size only', 'count/mismatch'],
    ['a size has another count', '(20 (30) hdc)', '(20 (32) hdc)', 'count/mismatch'],
    ['a size begins with another round', 'Rnds 3-5 (4-7)', 'Rnds 4-5 (4-7)', 'row/out-of-order'],
    ['the stitch lies further down', 'post stitch below', 'post stitch 3 rows below', 'phrase/unread'],
    ['it is not the stitch below', 'the matching post stitch below', 'the next post', 'phrase/unread'],
  ])('%s', (_, from, to, code) => expect(codesOf(from, to)).toContain(code));
});
