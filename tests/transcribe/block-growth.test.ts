/** What is said of how a piece worked from corner to corner grows is held against its blocks. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const piece = (grows: string, shrinks: string): string => `Small Corner Square

US terms

Row 1: ch 6, dc in 4th ch from hook, dc in next 2 ch, turn. (1 block)
Row 2: ch 6, dc in 4th ch from hook, dc in next 2 ch. sl st in the ch-3 space of the block from the row before, ch 3, 3 dc in the same space. turn. (2 blocks)
Row 3: ch 6, dc in 4th ch from hook, dc in next 2 ch. *sl st in next ch-3 space, ch 3, 3 dc in same space, rep from * across. turn. (3 blocks)
Rows 4 - 6: rep row 3. ${grows} (6 blocks at the end of row 6)
Row 7: sl st in first 3 dc, sl st in ch-3 space, ch 3, 3 dc in same space. *sl st in next ch-3 space, ch 3, 3 dc in same space, rep from * to the last block, sl st in ch-3 space of last block. turn. (5 blocks)
Rows 8 - 11: rep row 7. ${shrinks} (1 block at the end of row 11)`;

const GROWS = "You'll have one more block every row.";
const SHRINKS = 'One block less every row.';

function errorsOf(grows: string, shrinks: string): readonly string[] {
  const { codes, messages } = workedText(piece(grows, shrinks));
  return messages.filter((_, i) => codes[i] === 'row/adds' || codes[i] === 'phrase/unread');
}

describe('blocks a row', () => {
  test('that are as said are no fault', () => {
    expect(errorsOf(GROWS, SHRINKS)).toEqual([]);
  });

  test('that are fewer or more than said are told', () => {
    expect(errorsOf("You'll have two more blocks every row.", SHRINKS)).toEqual([
      'Row 4 is said to add 2 blocks, but it has 4 on 3, which is 1 more',
    ]);
    expect(errorsOf(GROWS, '2 blocks less every row.')).toEqual([
      'Row 8 is said to lose 2 blocks, but it has 4 on 5, which is 1 fewer',
    ]);
  });

  test('a count of something else is not taken for it', () => {
    expect(errorsOf("You'll have one more blob every row.", SHRINKS)).toHaveLength(1);
  });
});
