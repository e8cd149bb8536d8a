/** Yarns told in sentences by their colours, and rows that name them so. */

import { expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const square = (yarn: string, one = 'rose', two = 'green') =>
  [
    'Plover Square',
    'UK terms',
    '',
    yarn,
    '',
    `With ${one}, make 4 ch and join with ss into a ring.`,
    '1st round: 3 ch (counts as 1 tr), 11 tr into ring, ss to top of 3 ch. Fasten off. (12 tr)',
    `2nd round: Join ${two} with a ss in any tr. 1 ch, 1 dc into each tr, ss to first dc. Fasten off. (12 dc)`,
  ].join('\n');
const coloursOf = (text: string) =>
  transcribe({ file: 'square.txt', text }).yarns.map(({ colour }) => colour);

test.each([
  'Yarn: aran weight, approx 18 g Rose / 12 g Green for all four squares',
  'Yarn: DK cotton, 18 g rose and 12 g green',
  'For a lapel. One ball of No. 10 mercerised cotton in rose, oddments of green, a 1.50 steel hook and a pin.',
  'Materials\nDK yarn, 20 g of rose, 10 g of green',
])('%s', (yarn) => {
  expect(coloursOf(square(yarn)).map((colour) => colour?.toLowerCase())).toEqual(['rose', 'green']);
  expect(workedText(square(yarn)).codes).toEqual([]);
  expect(workedText(square(yarn, 'rose', 'olive')).codes).toContain('phrase/unread');
  expect(workedText(square(yarn).replace('(12 dc)', '(13 dc)')).codes).toContain('count/mismatch');
});

test('a colour stands before its letter in brackets, or behind the letter after a dash', () => {
  expect(
    coloursOf(square('Yarn: worsted acrylic in rose (A), slate grey (B) and leaf (C).', 'A', 'B')),
  ).toEqual(['rose', 'slate grey', 'leaf']);
  const dashed = square('Yarn: DK cotton, small amounts of 2 colours - A rose, B green.', 'A', 'B');
  expect(coloursOf(dashed)).toEqual(['rose', 'green']);
  expect(workedText(dashed).codes).toEqual([]);
  expect(workedText(dashed.replace('Join B', 'Join C')).codes).toContain('yarn/unlisted');
});

test('any colour will do where the work says so', () => {
  const any = square(
    'Materials\nDK cotton in assorted colours\n50 g DK white for the edging',
    'any colour',
    'white',
  );
  expect(workedText(any.replace('With any', 'Using any')).codes).toEqual([]);
  expect(workedText(any).codes).toEqual([]);
  expect(workedText(any.replace('With any colour', 'With any sp')).codes).toContain('phrase/unread');
});

test('two colours stand behind the weight and fibre of the yarn, and no other words there', () => {
  expect(coloursOf(square('Materials\nWorsted weight cotton, gold and brown', 'gold', 'brown'))).toEqual([
    'gold',
    'brown',
  ]);
  expect(
    workedText(square('Materials\nWorsted weight cotton, gold and brown', 'gold', 'brown')).codes,
  ).toEqual([]);
  expect(
    workedText(square('Materials\nWorsted weight cotton, gold and brown', 'gold', 'blue')).codes,
  ).toContain('phrase/unread');
  expect(coloursOf(square('Materials\nWorsted weight cotton, soft and washable'))).toHaveLength(1);
});
