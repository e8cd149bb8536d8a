/** Magazines squeeze a piece into one paragraph: its heading, its rows and the sentences between them. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const HEAD = 'Small Panel\nUK terms\n\nYarn: A: red wool, 4 balls\n\n';

const PANEL =
  'BACK Make 9 ch. 1st row: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 8 dc. 2nd row: 1 ch, 1 dc in each st to end, turn. Rep the last row 3 times more. Next row: 1 ch, dc2tog, 1 dc in each st to last 2 sts, dc2tog, turn. 6 dc. Fasten off.';

const changed = (text: string, changes: Readonly<Record<string, string>>): string =>
  HEAD + Object.entries(changes).reduce((all, [from, to]) => all.replace(from, to), text);

describe('a piece in one paragraph', () => {
  test.each([
    [{}],
    [{ BACK: 'BACK.' }],
    [{ BACK: 'BACK:' }],
    [{ BACK: 'THE BACK.—' }],
    [{ '1st row:': 'Row 1:', '2nd row:': 'Row 2:' }],
    [{ '1st row:': 'Row 1.', '2nd row:': 'Row 2.' }],
    [{ '1st row: 1 dc': 'Row 1, 1 dc', '2nd row: 1 ch': 'Row 2, 1 ch' }],
    [{ 'Rep the last row': 'Repeat the last row' }],
  ])('has the rows it would have line by line: %o', (changes) => {
    const text = changed(PANEL, changes);
    const { codes, rows } = workedText(text);
    expect(codes).toEqual([]);
    expect(rows[0]?.map((row) => row.replace(/^.*: /, ''))).toEqual(['0', '8', '8', '8', '8', '8', '6']);
    expect(transcribe({ file: 'panel.txt', text }).parts.map(({ name }) => name.toLowerCase())).toEqual([
      'back',
    ]);
  });

  test.each([
    [{ '8 dc. 2nd': '9 dc. 2nd' }, 'count/mismatch'],
    [{ '6 dc. Fasten': '7 dc. Fasten' }, 'count/mismatch'],
    [{ '2nd row:': '3rd row:' }, 'row/out-of-order'],
    [{ 'Make 9 ch': 'Make 8 ch' }, 'count/mismatch'],
  ])('is held against its counts: %o', (changes, code) => {
    expect(workedText(changed(PANEL, changes)).codes).toContain(code);
  });
});

test('words in capitals before a sentence are no piece where no work stands behind them', () => {
  const text = `${HEAD}BACK IN MY YOUTH We all had one of these, and every one of us wore it until it fell apart.\n\nCh 9.\nRow 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end. (8 dc)\n`;
  expect(transcribe({ file: 'panel.txt', text }).parts).toHaveLength(1);
});
