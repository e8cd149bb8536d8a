/** Blocks from corner to corner told in brackets, with the chain of the first above its row, and a border by the block. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const CLOTH = `Corner Cloth

Yarn: worsted (4)
Color A (charcoal): 40 yards
Color B (rust): 40 yards
Hook: 5 mm

Abbreviations (US)
ch = chain
dc = double crochet
rep = repeat
Rnd = round
sc = single crochet
sl st = slip stitch
sp(s) = space(s)

Increase Section

With A, ch 6.

Row 1 – Dc in 4th ch from hook and in each of next 2 ch. (1 block)

Row 2 – Ch 6, turn, dc in 4th ch from hook and in each of next 2 ch, (sl st, ch 3, 3 dc) in ch-3 sp of block in Row 1. (2 blocks)

Row 3 – Ch 6, turn, dc in 4th ch from hook and in each of next 2 ch, *(sl st, ch 3, 3 dc) in next ch-3 sp; rep from * across. (3 blocks)

Rows 4–6 – Rep Row 3, making one more block in each row. (6 blocks at the end of Row 6)

Decrease Section

Change to B.

Row 7 – Turn, sl st in each of first 3 dc and in first ch-3 sp, ch 3, 3 dc in same ch-3 sp, *(sl st, ch 3, 3 dc) in next ch-3 sp; rep from * to last ch-3 sp, sl st in last ch-3 sp. (5 blocks)

Rows 8–11 – Rep Row 7, making one block less in each row. (1 block at the end of Row 11)

Do not fasten off.

Border

Rnd 1 – Ch 1, *work 18 sc evenly along the side (3 sc in each block), ch 2; rep from * 3 more times, join with sl st in first sc. (72 sc, 4 ch-2 sps)

Fasten off.
`;

const changed = (from: string, to: string) => {
  expect(CLOTH).toContain(from);
  return workedText(CLOTH.replaceAll(from, to));
};

test('are worked to the last, where no repeat has room', () => {
  const { codes, rows } = workedText(CLOTH);
  expect(codes).toEqual([]);
  expect(rows[0]?.at(-1)).toBe('Rnd 1: 72');
});

describe('may also', () => {
  test.each([
    ['in ch-3 sp of block in Row 1', 'in ch-3 sp of the Row 1 block'],
    ['With A, ch 6.\n\nRow 1 – Dc', 'Row 1 – With A, ch 6, dc'],
    ['(3 sc in each block)', '(3 sc for each block)'],
    ['(3 sc in each block)', '(3 sts per block)'],
  ])('%s be written %s', (from, to) => expect(changed(from, to).codes).toEqual([]));
});

describe('told where', () => {
  test.each([
    ['a row has a block too few', '(5 blocks)', '(4 blocks)', 'count/mismatch'],
    [
      'a repeat ends with too many',
      '(6 blocks at the end of Row 6)',
      '(7 blocks at the end of Row 6)',
      'count/mismatch',
    ],
    [
      'the decreases end too soon',
      '(1 block at the end of Row 11)',
      '(2 blocks at the end of Row 11)',
      'count/mismatch',
    ],
    ['a side is too long for its blocks', 'work 18 sc', 'work 20 sc', 'place/no-edge'],
    ['so many to a block make another side', '3 sc in each block', '4 sc in each block', 'place/no-edge'],
    ['the border is counted wrong', '(72 sc,', '(70 sc,', 'count/mismatch'],
  ])('%s', (_, from, to, code) => expect(changed(from, to).codes).toContain(code));
});
