/** Rows repeated until the piece measures so much: the size says how many that is. */

import { expect, test } from 'vitest';
import { stepsOf } from './read-lines.ts';

test.each([
  'Rep Row 2 until piece measures 60".',
  'Rep Row 2 until work measures 6.5 inches.',
  'Rep Row 2 until the scarf measures approximately 150 cm.',
  'Rep Rows 2 and 3 until it measures 10 in, ending with a Row 3.',
  'Rep Row 2 to desired length.',
  'Rep Row 2 to the required height.',
])('%s', (line) => {
  const [repeat, more] = stepsOf(line);
  expect(repeat).toMatchObject({ kind: 'repeat rows', until: { kind: 'height' } });
  expect(more).toBeUndefined();
});

test('the row it ends with is read behind the measure', () => {
  const [repeat] = stepsOf('Rep Rows 2 and 3 until it measures 10 in, ending with a Row 3.');
  expect(repeat).toMatchObject({ until: { endingWith: 3 } });
});

test('several yarns are fastened off by name', () => {
  expect(stepsOf('Sc in each st across. Fasten off A and B.').slice(1)).toMatchObject([
    { kind: 'fasten off', yarn: 'A' },
    { kind: 'fasten off', yarn: 'B' },
  ]);
});
