/** A row that goes on to a measure is worked as many times as the rows of the gauge make it. */

import { expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const scarf = (tension: string, until: string, edging = '') =>
  workedText(`Shore Scarf

MATERIALS
4 x 50g balls of wool DK (approx 120m per ball) in Reed

TENSION
${tension}

UK terms

SCARF
Make 20ch.
1st row: 1dc in 2nd ch from hook, *miss 2ch, 5tr in next ch, miss 2ch, 1dc in next ch; rep from * to end, turn. 3 shells, 4dc.
2nd row: 3ch (counts as 1tr), 2tr in first dc, *miss 2tr, 1dc in next tr, miss 2tr, 5tr in next dc; rep from * to last shell, miss 2tr, 1dc in next tr, miss 2tr, 3tr in last dc, turn. 2 shells, 2 half-shells, 3dc.
3rd row: 1ch, 1dc in first tr, *miss 2tr, 5tr in next dc, miss 2tr, 1dc in next tr; rep from * to end, working last dc in top of 3ch, turn. 3 shells, 4dc.
Rep 2nd and 3rd rows until scarf measures ${until}.
Fasten off.
${edging}`);

test('to the row that the repeat ends with', () => {
  const { codes, rows } = scarf(
    '3 shells and 8 rows to 10cm over pattern',
    'approx 15cm, ending with a 3rd row',
  );
  expect(codes).toEqual([]);
  // 12 rows are 15 cm, and a 3rd row is an odd one.
  expect(rows[0]?.at(-1)).toBe('Row 11: 19');
});

test('not where no gauge tells how high a row is', () => {
  expect(scarf('3 shells to 10cm over pattern', '15cm').codes).toContain('row/open-length');
});

test.each([
  ['3 shells, 4dc', []],
  ['4 shells, 4dc', ['count/mismatch']],
])('an edging along the foundation chain is worked onto the piece: %s', (count, codes) => {
  const edging = `
EDGING
With RS facing, join yarn with ss in first ch of foundation chain.
Next row: 1ch, 1dc in same ch as ss, *miss 2ch, 7tr in next ch, miss 2ch, 1dc in next ch; rep from * to end. ${count}.
Fasten off.
`;
  expect(scarf('3 shells and 8 rows to 10cm', '15cm, ending with a 3rd row', edging).codes).toEqual(codes);
});
