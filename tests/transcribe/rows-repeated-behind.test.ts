/** Rows repeated by a sentence behind the last one written: which rows there are to repeat, and how many come of it. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const SC = 'Ch 1, sc in each st across, turn.';
const cloth = (...rows: readonly string[]) =>
  workedText(
    `Cloth\nUS terms\nHook: 5 mm\n\nCLOTH\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\n${rows.join('\n')}\nFasten off.\n`,
  );

describe('rows that are not written are none to repeat', () => {
  test.each([
    'Rep 2nd to 4th rows 5 times.',
    'Rep 2nd and 4th rows 5 times.',
    'Repeat Rows 2-4 5 times.',
    'Rows 4-12: Rep Rows 2-4.',
    'Row 4: Rep Row 4.',
  ])('%s', (rep) => {
    const { codes } = cloth(`Row 2: ${SC}`, `Row 3: ${SC}`, rep);
    expect(codes).toContain('row/no-such');
    expect(
      cloth(`Row 2: ${SC}`, `Row 3: ${SC}`, `Row 4: ${SC}`, rep.replace('Row 4:', 'Row 5:')).codes,
    ).toEqual(rep.startsWith('Rows') ? ['row/out-of-order'] : []);
  });
});

describe('a sentence behind a row says what comes after it', () => {
  const before = [`Row 2: ${SC}`, `Row 3: ${SC}`];
  test.each([
    'Rep Rows 2-4 5 times.',
    '(20 sc) Rep Rows 2-4 5 times.',
    '(20 sc). Then repeat Rows 2 to 4 5 times.',
    '20 sc. Rep last 3 rows 5 times more.',
    'Rep Rows 2-4 until 19 rows have been worked.',
  ])('%s', (rep) => {
    const { codes, rows } = cloth(...before, `Row 4: ${SC} ${rep}`);
    expect(codes).toEqual([]);
    expect(rows[0]?.at(-1)).toBe('Row 19: 20');
    expect(cloth(...before, `Row 4: ${SC} ${rep.replace('20 sc', '21 sc')}`).codes).toEqual(
      rep.includes('20 sc') ? ['count/mismatch'] : [],
    );
    expect(cloth(...before, `Row 4: ${SC} ${rep} (21 sc)`).codes).toContain('count/mismatch');
  });

  test('a colour or a chain before it is of the rows repeated', () => {
    expect(cloth(...before, 'Row 4: With B, rep Row 2.').rows[0]?.at(-1)).toBe('Row 4: 20');
  });
});
