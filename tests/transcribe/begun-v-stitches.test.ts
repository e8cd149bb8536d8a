/** A shawl whose rows begin with a V-st that is written out, `ch 4, dc in first st`, and is worked into as one. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const SHAWL = readFileSync(join(import.meta.dirname, '../pages/seventh/heather-vee-shawl.txt'), 'utf8');

function told(from: string, to: string): readonly string[] {
  expect(SHAWL).toContain(from);
  return workedText(SHAWL.replace(from, to)).codes;
}

test('two V-sts are gained by one row and four by the next', () => {
  const { codes, rows } = workedText(SHAWL);
  expect(codes).toEqual([]);
  expect(rows[0]?.slice(1, 6)).toEqual(['Row 1: 4', 'Row 2: 12', 'Row 3: 16', 'Row 4: 24', 'Row 5: 28']);
  expect(rows[0]?.at(-1)).toBe('Row 40: 468');
});

describe('told where', () => {
  test.each([
    ['the count is another', '(12 V-sts, 1 ch-2 sp)', '(13 V-sts, 1 ch-2 sp)', 'count/mismatch'],
    [
      'one is left out before the center',
      'V-st in next 2 V-sts, (V-st',
      'V-st in next V-st, (V-st',
      'place/passed-over',
    ],
    ['one is asked for too many', 'V-st in next 3 V-sts, turn', 'V-st in next 4 V-sts, turn', ''],
    ['the last is left out', 'V-st in each V-st to end, V-st in 3rd ch', 'V-st in 3rd ch', ''],
    [
      'what begins the row is no V-st',
      'Row 3: Sl st in first ch-1 sp, ch 4, dc',
      'Row 3: Sl st in first ch-1 sp, ch 4, tr',
      '',
    ],
    [
      'the edging has a shell too few',
      'center ch-2 sp, [3 dc in next V-st, sc in sp before next V-st] 57',
      'center ch-2 sp, [3 dc in next V-st, sc in sp before next V-st] 56',
      '',
    ],
  ])('%s', (_, from, to, code) => {
    const codes = told(from, to);
    expect(codes).not.toEqual([]);
    if (code === 'count/mismatch') expect(codes).toContain(code);
  });
});
