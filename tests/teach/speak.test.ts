/** Printed words -> spoken ones: numbers, signs, and the articles that print leaves out. */

import { expect, test } from 'vitest';
import { numberWords, ordinalWords } from '../../src/teach/number-words.ts';
import { speak } from '../../src/teach/speak.ts';

test.each([
  [0, 'zero', 'zero'],
  [19, 'nineteen', 'nineteen'],
  [40, 'forty', 'forty'],
  [36, 'thirty-six', 'thirty-six'],
  [100, 'one hundred', 'one hundred'],
  [112, 'one hundred twelve', 'one hundred and twelve'],
  [1001, 'one thousand one', 'one thousand and one'],
  [2340, 'two thousand three hundred forty', 'two thousand three hundred and forty'],
  [
    99999,
    'ninety-nine thousand nine hundred ninety-nine',
    'ninety-nine thousand nine hundred and ninety-nine',
  ],
])('%i is %s, and in the other terms %s', (n, us, uk) => {
  expect(numberWords(n, 'US')).toBe(us);
  expect(numberWords(n, 'UK')).toBe(uk);
});

test('places have ordinals', () => {
  expect([1, 2, 3, 5, 8, 9, 12, 20, 21, 30, 112].map((n) => ordinalWords(n, 'UK'))).toEqual([
    'first',
    'second',
    'third',
    'fifth',
    'eighth',
    'ninth',
    'twelfth',
    'twentieth',
    'twenty-first',
    'thirtieth',
    'one hundred and twelfth',
  ]);
});

test.each([
  ['skip next 2 chains', 'Skip the next two chains.'],
  [
    'join with slip stitch in top of beginning chain-3',
    'Join with a slip stitch in the top of the beginning chain-three.',
  ],
  ['Rows 4–5', 'Rows four and five.'],
  ['Rows 4–15', 'Rows four to fifteen.'],
  ['repeat Rows 2 and 3, ending with a Row 3', 'Repeat rows two and three, ending with a row three.'],
  [
    '(Yarn over, draw up a loop) 3 times, yarn over',
    'Do this three times: yarn over, draw up a loop. Then yarn over.',
  ],
  [
    '(2 double crochet, chain 2) in space indicated',
    'Two double crochet, chain two, all in the space indicated.',
  ],
  ['chain 3 (counts as double crochet), turn', 'Chain three, which counts as a double crochet, turn.'],
  ['use a 4.5 mm hook', 'Use a four point five millimetre hook.'],
  ['*single crochet; repeat from * across', 'Single crochet; repeat from where the repeat began across.'],
  [
    'in each double crochet and chain-1 space to last stitch',
    'In each double crochet and chain-one space to the last stitch.',
  ],
  ['in chain-2 space of last shell', 'In the chain-two space of the last shell.'],
  ['in each stitch to end', 'In each stitch to the end.'],
  ['in the first stitch', 'In the first stitch.'],
])('"%s" is said "%s"', (printed, said) => expect(speak(printed, 'US')).toBe(said));
