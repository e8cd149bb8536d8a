import { describe, expect, test } from 'vitest';
import { breakLines, type Run } from '../../src/booklet/break-lines.ts';
import { keepNumbersTogether } from '../../src/booklet/no-break.ts';
import { fixedWidth } from './fixed-width.ts';

/** 20 characters to a line. */
function linesOf(text: string, characters = 20): string[] {
  const runs: Run[] = [{ text, face: 'text' }];
  return breakLines(runs, 2, characters, fixedWidth).map((line) =>
    line.pieces.map((piece) => piece.text).join(''),
  );
}

describe('breaking a row into lines', () => {
  test('a row is broken between words and loses nothing', () => {
    const row = 'Ch 1, sc in first st, sk next 2 dc, turn.';
    const lines = linesOf(row);
    expect(lines).toEqual(['Ch 1, sc in first', 'st, sk next 2 dc,', 'turn.']);
    expect(lines.join(' ')).toBe(row);
  });

  test('a word that just fills the line stays on it', () => {
    expect(linesOf('sc in each chain acr oss')).toEqual(['sc in each chain acr', 'oss']);
    expect(linesOf('sc in each chain acro ss')).toEqual(['sc in each chain', 'acro ss']);
  });

  test('"ch 3" and "2 dc" are not parted', () => {
    expect(keepNumbersTogether('ch 3, 2 dc in next ch-2 sp; rep from * 3 times')).toBe(
      'ch\u00a03, 2\u00a0dc in next ch-2\u00a0sp; rep from\u00a0* 3\u00a0times',
    );
    expect(linesOf(keepNumbersTogether('sc in last st, ch 3'), 18)).toEqual(['sc in last st,', 'ch 3']);
  });

  test('the numbers of forty sizes can still be broken', () => {
    const numbers = `37 (${Array.from({ length: 39 }, (_, index) => 43 + index * 6).join(', ')}) sts`;
    for (const line of linesOf(keepNumbersTogether(numbers), 60)) expect(line.length).toBeLessThanOrEqual(60);
  });

  test('a word longer than the line is cut with a hyphen, and no line is too long', () => {
    const lines = linesOf('Donaudampfschifffahrtsgesellschaft', 12);
    expect(lines.length).toBeGreaterThan(2);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(12);
    expect(lines.map((line) => line.replace(/-$/, '')).join('')).toBe('Donaudampfschifffahrtsgesellschaft');
  });

  test('an accent made of two characters is not cut from its letter', () => {
    for (const line of linesOf('e\u0301'.repeat(40), 11))
      expect(line.replace(/-$/, '')).toMatch(/^(e\u0301)+$/);
  });

  test('one short word is not left alone on the last line', () => {
    expect(
      linesOf('work one single crochet in each stitch of the row below until the very end of it ok', 80).at(
        -1,
      ),
    ).toBe('it ok');
  });

  test('a change of face is kept, with each piece where the one before ends', () => {
    const [line] = breakLines(
      [
        { text: 'Shell: ', face: 'text-bold' },
        { text: '5 dc', face: 'text' },
      ],
      2,
      60,
      fixedWidth,
    );
    expect(line?.pieces).toEqual([
      { text: 'Shell: ', face: 'text-bold', xMm: 0 },
      { text: '5 dc', face: 'text', xMm: 7 },
    ]);
  });
});
