/** A flower whose rounds of loops lie behind its petals, as old leaflets tell it. */

import { expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const rose = (third: string) =>
  [
    'Rose',
    'UK terms',
    '',
    'Make 6 ch and join into a ring with a ss.',
    '1st round: 6 ch (for 1 tr and 3 ch), *1 tr into the ring, 3 ch; repeat from * 4 times more, ss into 3rd of the 6 ch. There are 6 spaces.',
    '2nd round: Into each space work 1 dc, 1 htr, 3 tr, 1 htr, 1 dc. Ss into first dc. (6 petals)',
    `3rd round: ${third}`,
    '4th round: Into each loop work 1 dc, 1 htr, 5 tr, 1 htr, 1 dc. Ss into first dc. (54 sts)',
  ].join('\n');
const LOOPS =
  '*5 ch, 1 dc round the stem of the next tr of the 1st round, from the back; repeat from * to end of round. (6 loops)';

test.each([
  'Bend the petals forward and work behind them.',
  'Again behind the petals.',
  'Keep this round behind the petals.',
])('%s', (words) => {
  const { rows, codes } = workedText(rose(`${words} ${LOOPS}`));
  expect(rows).toEqual([['Foundation: 0', 'Round 1: 6', 'Round 2: 42', 'Round 3: 6', 'Round 4: 54']]);
  expect(codes).toEqual([]);
  expect(workedText(rose(`${words} ${LOOPS.replace('6 loops', '7 loops')}`)).codes).toContain(
    'count/mismatch',
  );
});

test('words that may hide work are no word about how it is held', () => {
  for (const words of [
    'Bend the petals forward, 3 into each.',
    'Bend the petals forward and dc in each st behind.',
    'Keep 2 petals behind.',
    'Bend the petals.',
  ])
    expect(workedText(rose(`${words} ${LOOPS}`)).codes).toEqual(
      expect.arrayContaining([expect.stringMatching(/^(?:phrase|word|special)\//)]),
    );
});

test('"from the back" is said of a stem, and of a round that there is', () => {
  expect(workedText(rose(LOOPS.replace('round the stem of', 'in'))).codes).toContain('phrase/unread');
  expect(workedText(rose(LOOPS.replace('1st round', '9th round'))).codes).toContain('row/used-up');
});
