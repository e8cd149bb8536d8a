/** What notes say of turning and joining against what the rows do. */

import { expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const pot = (note: string, rnd2: string) =>
  `Spiral Pot\nUS terms\n\nNotes: ${note}\n\nRnd 1: 6 sc in magic ring. (6)\nRnd 2: ${rnd2} (12)\nRnd 3: Sc in each st around. (12)\n`;
const told = (note: string, rnd2: string) =>
  workedText(pot(note, rnd2)).messages.filter((message) => message.startsWith('a note says'));

const PLAIN = '2 sc in each st around.';
const JOINED = '2 sc in each st around, join with sl st in first sc.';

test.each([
  ['Work in a spiral; do not join.', JOINED, ['a note says not to join, but this row does']],
  [
    'Do not join and do not turn.',
    `${JOINED} Turn.`,
    ['a note says not to join, but this row does', 'a note says not to turn, but this row does'],
  ],
  ['Work in a spiral; do not join.', PLAIN, []],
  ['Do not join rounds unless told to.', JOINED, []],
  ['Join each round.', JOINED, []],
  ['Do not turn at the end of rounds.', JOINED, []],
])('%s %s', (note, row, messages) => expect(told(note, row)).toEqual(messages));

test('rows of a strap may turn where only rounds are not turned', () => {
  const text = `${pot('Do not turn at the end of rounds.', PLAIN)}\nStrap\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (10)\nRow 2: Ch 1, sc in each st across. (10)\n`;
  expect(workedText(text).messages.filter((message) => message.startsWith('a note'))).toEqual([]);
});
