/** A toy as it is typed: a list of abbreviations without marks, rounds by their numbers alone, `FO`. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

interface Ball {
  readonly inc?: string;
  readonly dec?: string;
  readonly even?: string;
  readonly last?: string;
  readonly off?: string;
}

const ball = ({
  inc = '2 sc in the same stitch',
  dec = 'invisible decrease (front loops of next 2 sts together)',
  even = '3-5. sc in each st around (12)',
  last = '6. dec x6 (6)',
  off = 'FO',
}: Ball = {}) =>
  `Pip the Ball\n\nAbbreviations (US):\nMR magic ring\nsc single crochet\ninc ${inc}\ndec ${dec}\nFO fasten off\nst stitch\n\nBALL (navy)\n1. 6 sc in MR (6)\n2. inc x6 (12)\n${even}\n${last}\n${off}, close the hole with the tail.\n`;

const codesOf = (of: Ball): readonly string[] => workedText(ball(of)).codes;
const errorsOf = (of: Ball): readonly string[] =>
  codesOf(of).filter((code) =>
    /count|unread|undefined|unknown|unworked|number-order|abbreviation/.test(code),
  );

describe('a toy with rounds by number alone', () => {
  test('works every round of a range', () => {
    expect(errorsOf({})).toEqual([]);
    expect(workedText(ball()).rows[0]?.map((row) => row.replace(/.*: /, ''))).toEqual([
      '6',
      '12',
      '12',
      '12',
      '12',
      '6',
    ]);
  });

  test('is held to the count of the range', () => {
    expect(codesOf({ even: '3-5. sc in each st around (13)' })).toContain('count/mismatch');
  });

  test('and to its order', () => {
    expect(codesOf({ even: '5-3. sc in each st around (12)' })).toContain('row/number-order');
  });

  test('reads each line of its list by itself', () => {
    const { specials } = transcribe({ file: 'ball.txt', text: ball() });
    expect(specials.map(({ name, work }) => [name, work?.text])).toEqual([
      ['inc', '2 sc in same st'],
      ['dec', 'sc2tog'],
    ]);
  });

  test('keeps to what its list says', () => {
    expect(codesOf({ inc: '3 sc in the same stitch' })).toContain('count/mismatch');
    expect(errorsOf({ dec: 'invisible decrease (front loops of next 3 sts together)' })).not.toEqual([]);
  });

  test('ends with FO, and with nothing like it', () => {
    expect(codesOf({ off: 'FP' })).not.toEqual(codesOf({}));
  });
});

test('a list on one line may be parted by strokes', () => {
  const cloth = (list: string) =>
    `Tern Cloth\n\nAbbreviations (US terms)\n${list}\n\nCh 12.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (11 sc)\nRow 2: Ch 1, sc in each st across. (11 sc)\n`;
  const list = 'ch chain / sc single crochet / st stitch / rep repeat';
  expect(workedText(cloth(list)).codes).not.toContain('text/abbreviation');
  expect(workedText(cloth(list.replace('sc single', 'sc double'))).codes).toContain('text/abbreviation');
});
