/** Edges with as many stitches as lie flat: told and not worked, without a fault; beside them edges that are told by number. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const cloth = (border: string) =>
  workedText(
    `Cloth\nUS terms\nHook: 5 mm\n\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\nRows 2-20: Ch 1, sc in each st across, turn. (20 sc)\nFasten off.\n\nBorder\n${border}\n`,
  );

describe('a round of as many stitches as lie flat', () => {
  test.each([
    'Rnd 1: Join yarn in any corner, ch 1, sc evenly around, working 3 sc in each corner, join with sl st in first sc.',
    'Rnd 1: Join yarn in any corner, ch 1, sc evenly around the whole edge with 3 sc in each corner, join with sl st in first sc.',
    'Join yarn in any corner and work 1 round of sc evenly around, placing 3 sc in each corner.',
    'Rnd 1: Join yarn in any corner, ch 1, sc around the entire outer edge, placing 3 sc in each corner, join with sl st in first sc.',
    'Row 1: With RS facing, join yarn at lower right corner, ch 1, sc evenly up right side, 3 sc in corner, sc in each st across top, 3 sc in corner, sc evenly down left side, turn.',
  ])('%s', (border) => {
    const { codes, messages } = cloth(border);
    expect(codes.filter((code) => code !== 'count/not-checked')).toEqual([]);
    expect(messages.join()).toMatch(/how many stitches go ".*sc (?:evenly|around)/);
  });

  test('what is told of it holds for the rounds on it', () => {
    const rounds = (n: number) =>
      cloth(
        `Rnd 1: Join yarn in any corner, ch 1, sc evenly around, working 3 sc in each corner, join with sl st in first sc. (84 sc)\nRnd 2: Ch 1, sc in each sc around, join with sl st in first sc. (${n} sc)`,
      ).codes;
    expect(rounds(84)).toEqual(['count/not-checked']);
    expect(rounds(85)).toContain('count/mismatch');
  });

  test('hides no other words', () => {
    expect(
      cloth('Row 1: Join yarn in first st of Row 20, ch 1, sc evenly across, turn. (19 sc)').codes,
    ).toContain('phrase/unread');
    expect(cloth('Rnd 1: Join yarn in any corner, ch 1, sc evenly around the frobble.').codes).toContain(
      'phrase/unread',
    );
    expect(
      cloth('Rnd 1: Join yarn in any corner, ch 1, sc evenly around, frobble in each corner.').codes,
    ).toContain('word/unknown');
  });
});

describe('a border told side by side', () => {
  test.each([
    'Rnd 1: Join yarn in any corner, ch 1, 3 sc in corner, *18 sc evenly along side, 3 sc in corner, rep from * twice more, 18 sc along last side, join with sl st in first sc. (84 sc)',
    'Rnd 1: Join yarn in any corner, ch 1, 3 sc in corner, *18 sc evenly along side, 3 sc in corner, rep from * twice more, 18 sc along last side, join with sl st in first sc. (84 sc: 18 on each side, 3 in each corner)',
    'Rnd 1: Join yarn in any corner, ch 1, *3 sc in corner, 18 sc evenly along edge to next corner; rep from * 3 more times, join with sl st in first sc. 84 sc (18 along each side and 3 in every corner).',
  ])('%s', (border) => {
    expect(cloth(border).codes).toEqual([]);
    expect(cloth(border.replace('84', '86')).codes).not.toEqual([]);
    expect(cloth(border.replace('18 sc evenly', '17 sc evenly')).codes).toContain('count/mismatch');
  });
  test('told once more in other numbers is told', () => {
    const border =
      'Rnd 1: Join yarn in any corner, ch 1, *3 sc in corner, 18 sc evenly along edge to next corner; rep from * 3 more times, join with sl st in first sc. 84 sc (17 along each side and 3 in every corner).';
    expect(cloth(border).codes).toContain('phrase/unread');
  });
});
