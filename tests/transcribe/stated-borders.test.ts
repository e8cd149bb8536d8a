/** A border round pieces sewn together, told by its sides and corners: it is worked by its own numbers. */

import { expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const cushion = (first: string, second = 'Rnd 2 – 1 ch, 1 dc into each dc, ss into first dc. – 72 dc') =>
  workedText(
    [
      'Cushion',
      'UK terms used.',
      'Aran wool: A mustard, B teal',
      '',
      'The Square (make 18)',
      'With A make 4 ch and join into a ring with a ss.',
      'Rnd 1 – 3 ch (counts as 1 tr), 2 tr into ring, 2 ch, *3 tr into ring, 2 ch; rep from * twice more, ss into top of 3 ch. Fasten off. – 12 tr, 4 corner sps',
      '',
      'Border',
      'Hold front and back wrong sides together and work through both layers.',
      `Rnd 1 – ${first}`,
      second,
      'Fasten off.',
    ].join('\n'),
  ).codes;

test.each([
  'Join B with a ss into any edge, 1 ch, *work 15 dc evenly along the side, 3 dc into the corner; rep from * 3 more times, ss into first dc. – 72 dc',
  'Join B with a ss into any corner, 1 ch, *3 dc into the corner, 15 dc evenly along the side to next corner; rep from * 3 more times, ss into first dc. – 72 dc',
  'Join B with a ss into any corner, 1 ch, *work 15 dc evenly along side, 3 dc in corner; rep from * 3 times more, ss into first dc. – 72 dc',
])('%s', (round) => {
  expect(cushion(round)).toEqual([]);
  expect(cushion(round.replace('– 72', '– 76'))).toContain('count/mismatch');
  expect(cushion(round.replace('15 dc', '14 dc'))).toContain('count/mismatch');
  expect(cushion(round, 'Rnd 2 – 1 ch, 1 dc into each tr, ss into first dc. – 72 dc')).not.toEqual([]);
});

test('sides of no stated number are no such border', () => {
  const round =
    'Join B with a ss into any edge, 1 ch, *work dc evenly along the side, 3 dc into the corner; rep from * 3 more times, ss into first dc. – 72 dc';
  expect(cushion(round)).not.toEqual([]);
  expect(cushion(round.replace('work dc', 'work 15 dc').replace('3 more times', 'to end'))).not.toEqual([]);
});
