/** Petals made in loops that the text describes nowhere else, and the middle of each worked into. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const DOILY = `Petal Mat

US terms
Yarn: white cotton
Hook: 1.5 mm

Ch 6. Join with sl st to form ring.
Rnd 1: Ch 1, 12 sc in ring, sl st in first sc (12 sc).
Rnd 2: Ch 1, sc in same place as sl st, *ch 5, skip 2 sc, sc in next sc. Repeat from * around, ending with ch 5, skip 2 sc, sl st in first sc (4 loops).
Rnd 3: Sl st in next loop, and in each loop around make sc, half dc, 5 dc, half dc and sc. Join with sl st to first sc (4 petals).
Rnd 4: Sl st in next half dc and in next 3 dc, sc in same place as last sl st, *ch 7, sc in center dc of next petal. Repeat from * around, ending with ch 7, sl st in first sc (4 loops).
Rnd 5: Sl st in next loop, 8 sc in same loop, 8 sc in each loop around. Join (32 sc). Break off.
`;

const changed = (from: string, to: string) => {
  expect(DOILY).toContain(from);
  return workedText(DOILY.replace(from, to));
};

test('are passed whole, the rest of the first at the end of the round', () => {
  const { codes, rows } = workedText(DOILY);
  expect(codes).toEqual([]);
  expect(rows[0]?.slice(-3)).toEqual(['Rnd 3: 36', 'Rnd 4: 4', 'Rnd 5: 32']);
});

describe('may also', () => {
  test.each([
    ['center dc of next petal', '3rd dc of next petal'],
    ['center dc of next petal', 'middle dc of the next scallop'],
  ])('%s be written %s', (from, to) => expect(changed(from, to).codes).toEqual([]));
});

describe('told where', () => {
  test.each([
    ['a petal has no middle', 'half dc, 5 dc, half dc', 'half dc, 4 dc, half dc', 'place/which-stitch'],
    ['it has no such stitch', 'center dc of next petal', 'center tr of next petal', 'row/used-up'],
    ['it has fewer of them', 'center dc of next petal', '6th dc of next petal', 'place/which-stitch'],
    ['there are not so many petals', '(4 loops).\nRnd 5', '(5 loops).\nRnd 5', 'count/mismatch'],
    ['there are not so many of them made', '(4 petals)', '(5 petals)', 'count/mismatch'],
  ])('%s', (_, from, to, code) => expect(changed(from, to).codes).toContain(code));
});
