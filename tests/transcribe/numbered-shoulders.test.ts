/** A vest whose two shoulders stand on one row and have rows of the same numbers, and whose fronts lose a stitch a row. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const VEST = readFileSync(join(import.meta.dirname, '../pages/seventh/linden-vest.txt'), 'utf8');

function told(from: string, to: string): readonly string[] {
  expect(VEST).toContain(from);
  return workedText(VEST.replace(from, to)).codes.filter((code) => !ALWAYS.has(code));
}

/** Told of the page as it stands. */
const ALWAYS = new Set(['yarn/too-little', 'text/abbreviation-unused']);

test('each shoulder is a piece worked onto the back', () => {
  const { parts } = transcribe({ file: 'vest.txt', text: VEST });
  expect(parts.map(({ name, onto }) => [name, onto])).toEqual([
    ['Back', null],
    ['First Shoulder', 'Back'],
    ['Second Shoulder', 'Back'],
    ['Left Front', null],
    ['Right Front', null],
  ]);
  expect(told('', '')).toEqual([]);
});

describe('told where', () => {
  test.each([
    [
      'too few are skipped for the neck',
      'skip the next 22 (24, 26, 28, 30)',
      'skip the next 21 (23, 25, 27, 29)',
    ],
    ['they are of another row', 'sts of Row 45 (45, 47, 47, 49) for', 'sts of Row 44 (44, 46, 46, 48) for'],
    [
      'a shoulder is wider than what is left',
      'hdc in first 12 (13, 14, 15, 16) sts, leave',
      'hdc in first 13 (14, 15, 16, 17) sts, leave',
    ],
    [
      'more are lost than is said',
      'decreasing 1 st at the neck edge every row',
      'decreasing 2 sts at the neck edge every row',
    ],
    [
      'they are said to grow',
      'decreasing 1 st at the neck edge every row',
      'increasing 1 st at the neck edge every row',
    ],
    [
      'it ends with another number',
      'ending with 12 (13, 14, 15, 16) sts',
      'ending with 11 (13, 14, 15, 16) sts',
    ],
    [
      'what is said is no row',
      'decreasing 1 st at the neck edge every row',
      'decreasing 1 st at the neck edge every inch',
    ],
  ])('%s', (_, from, to) => expect(told(from, to)).not.toEqual([]));
});

test('a repeat cut short is told where its rows are all as wide', () => {
  const cloth = (rows: string) =>
    workedText(
      `Cloth\nUS terms\n\nCLOTH\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\nRow 2: Ch 1, ${rows}, turn.\nRow 3: Ch 1, sc in each st across, turn.\nRows 4-10: Rep Rows 2 and 3. (${rows.includes('sc2tog') ? 15 : 20} sts)\n`,
    ).codes;
  expect(cloth('sc in BLO of each st across')).toEqual(['row/cut-repeat']);
  expect(cloth('sc2tog, sc in each st across')).toEqual([]);
});
