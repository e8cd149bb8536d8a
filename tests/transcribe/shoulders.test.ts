/** Pieces that part at a neck: what goes on from what, and a front that begins as the back does. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const vest = (changes: Readonly<Record<string, string>> = {}): string => {
  const text = `Small Vest
US terms

Yarn: A: red wool, 4 balls

BACK
Ch 31.
Row 1: Hdc in 2nd ch from hook and in each ch across, turn. (30 hdc)
Row 2: Ch 1, hdc in each st across, turn.
Shape Armholes
Row 3: Ch 1, hdc2tog, hdc in each st to last 2 sts, hdc2tog, turn. (28 hdc)
Repeat last row 2 more times. (24 hdc)
Next row: Ch 1, hdc in each st across, turn.
Repeat last row 3 more times.

Right Shoulder

Next row: Ch 1, hdc in first 8 sts, turn, leaving remaining sts unworked. (8 hdc)
Next row: Ch 1, hdc in each st across. Fasten off.

Left Shoulder

Skip next 8 sts for back neck and join yarn with sl st in next st.
Next row: Ch 1, hdc in same st, hdc in each of last 7 sts, turn. (8 hdc)
Next row: Ch 1, hdc in each st across. Fasten off.

FRONT
Work as for Back until all armhole decreases are complete.
Next row: Ch 1, hdc2tog, hdc in each st to last 2 sts, hdc2tog, turn. (22 hdc)
Work even in hdc for 3 rows. (22 hdc)
Fasten off.`;
  return Object.entries(changes).reduce((changed, [from, to]) => changed.replace(from, to), text);
};

function rowsOf(changes: Readonly<Record<string, string>> = {}): {
  readonly errors: readonly string[];
  readonly rows: readonly string[];
} {
  const { codes, messages, rows } = workedText(vest(changes));
  return {
    errors: messages.filter((_, i) => /^(?:count|row|phrase)\//.test(codes[i] ?? '')),
    rows: rows[0] ?? [],
  };
}

describe('two shoulders', () => {
  test('stand side by side on the back', () => {
    const { parts } = transcribe({ file: 'vest.txt', text: vest() });
    expect(parts.map(({ name, onto }) => [name, onto])).toEqual([
      ['Back', null],
      ['Right Shoulder', 'Back'],
      ['Left Shoulder', 'Back'],
      ['Front', null],
    ]);
    expect(rowsOf().errors).toEqual([]);
  });

  test('have to use up the back between them', () => {
    expect(rowsOf({ 'Skip next 8': 'Skip next 7' }).errors).toEqual([
      'Next row leaves 1 of the 16 stitches below unworked',
    ]);
    expect(rowsOf({ 'Skip next 8': 'Skip next 9' }).errors).not.toEqual([]);
  });
});

describe('a front that is worked as the back', () => {
  test('has the rows of the back up to what is named', () => {
    expect(rowsOf().rows.slice(-10)).toEqual([
      'Foundation: 0',
      'Row 1: 30',
      'Row 2: 30',
      'Row 3: 28',
      'Row 4: 26',
      'Row 5: 24',
      'Next row: 22',
      'Row 7: 22',
      'Row 8: 22',
      'Row 9: 22',
    ]);
    expect(rowsOf({ 'until all armhole decreases are complete': 'to Row 2' }).rows.slice(-6, -4)).toEqual([
      'Row 1: 30',
      'Row 2: 30',
    ]);
  });

  test('has its counts held against those rows', () => {
    expect(rowsOf({ '(22 hdc)': '(21 hdc)' }).errors).toHaveLength(1);
    expect(rowsOf({ 'until all armhole decreases are complete': 'to Row 2' }).errors).not.toEqual([]);
  });

  test('says so where it is not plain which rows are meant', () => {
    const { errors } = rowsOf({ 'all armhole decreases are complete': 'it is long enough' });
    expect(errors.join('\n')).toMatch(/could not be read/);
  });
});

describe('shoulders numbered on their own', () => {
  const neck = (changes: Readonly<Record<string, string>> = {}) => {
    const text = `Small Vest
US terms

FRONT
Ch 31.
Row 1: Hdc in 2nd ch from hook and in each ch across, turn. (30 hdc)
Row 2: Ch 1, hdc in each st across, turn.
Work even in hdc for 4 rows.

First shoulder

Row 1: Ch 1, hdc in first 8 sts, leave remaining sts unworked, turn. (8 hdc)
Rows 2-5: Ch 1, hdc in each st across, turn. Fasten off, leaving a tail for sewing.

Second shoulder

Skip the center 14 sts for the neck and join yarn with a sl st in the next st.
Row 1: Ch 1, hdc in same st and in each st to end, turn. (8 hdc)
Rows 2-5: Ch 1, hdc in each st across, turn. Fasten off.`;
    return Object.entries(changes).reduce((changed, [from, to]) => changed.replace(from, to), text);
  };

  test.each([
    [{}],
    [{ 'First shoulder': 'Left front', 'Second shoulder': 'Right front' }],
    [{ 'First shoulder': 'FIRST SHOULDER', 'Second shoulder': 'SECOND SHOULDER' }],
    [{ 'Skip the center 14': 'Skip next 14' }],
    [{ 'Skip the center 14': 'Miss centre 14' }],
  ])('are pieces of the front: %o', (changes) => {
    const { codes, rows } = workedText(neck(changes));
    expect(codes).toEqual([]);
    expect(rows[0]?.slice(-10)).toEqual([1, 2].flatMap(() => [1, 2, 3, 4, 5].map((row) => `Row ${row}: 8`)));
    const { parts } = transcribe({ file: 'vest.txt', text: neck(changes) });
    expect(parts.map(({ onto }) => onto)).toEqual([null, 'Front', 'Front']);
  });

  test.each([
    [{ 'center 14': 'center 13' }, 'count/mismatch'],
    [{ 'center 14': 'center 15' }, 'count/mismatch'],
    [{ 'hdc in first 8 sts': 'hdc in first 9 sts' }, 'count/mismatch'],
    [
      {
        'Row 2: Ch 1, hdc in each st across, turn.\nWork': 'Row 3: Ch 1, hdc in each st across, turn.\nWork',
      },
      'row/out-of-order',
    ],
  ])('are held against it: %o', (changes, code) => {
    expect(workedText(neck(changes)).codes).toContain(code);
  });
});
