/** One slip of the pen is told once, not again at each place that hangs on it; what another row leaves is told. */

import { expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const round = (last: string) =>
  workedText(
    [
      'Coaster',
      'UK terms.',
      'Abbreviations: ch = chain, ss = slip stitch, tr = treble',
      '',
      'COASTER',
      'Round 1: Into a magic ring: 3ch (counts as 1 tr), 15tr, ss in top of 3ch. [16 tr]',
      `Round 2: Beg pc in same st as ss, 3ch, miss 1 tr, *pc in next tr, 3ch, miss 1 tr; rep from * 6 more times, ${last}`,
    ].join('\n'),
  );

test('a stitch that nothing describes is told where it stands, not where it is counted and closed on', () => {
  const { codes } = round('ss in top of beg pc. [8 pc, 8 x 3ch sp]');
  expect(codes).toEqual(['special/undefined', 'special/undefined']);
  // Something else that cannot be read is told beside it.
  expect(round('ss in the loop at the far wall. [8 pc, 8 x 3ch sp]').codes.length).toBeGreaterThan(2);
});

const scarf = (chain: number, edging: string) =>
  workedText(
    [
      'Scarf',
      'US terms.',
      'Special stitch: Shell: 5 dc in same st.',
      '',
      'SCARF',
      `Ch ${chain}.`,
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (37 sc)',
      'Row 2: Ch 1, sc in each sc across, turn. (37 sc)',
      `Foundation edging: With RS facing and working along opposite side of foundation ch, join yarn in first ch, ch 1, sc in same ch, *sk next 2 ch, shell in next ch, sk next 2 ch, ${edging}; rep from * across. Fasten off.`,
    ].join('\n'),
  ).codes;

test('a wrong foundation is told at the first row, not at an edging along it', () => {
  expect(scarf(38, 'sc in next ch')).toEqual([]);
  expect(scarf(40, 'sc in next ch').filter((code) => code !== 'row/hangs-on')).toEqual(['count/mismatch']);
  expect(scarf(38, 'sc in next 2 ch')).toContain('repeat/uneven');
});

const leaf = (third: string) =>
  workedText(
    [
      'Leaf',
      'UK terms.',
      'Note: 1 ch at the start of a row does not count as a stitch.',
      '',
      'LEAF',
      'Make 11 ch.',
      '1st row – 1 dc into 2nd ch from hook, 1 dc into each ch to end, turn. (10 dc)',
      '2nd row – 1 ch, 1 dc into each of next 4 dc, 3 dc into next dc (the tip), 1 dc into each of next 3 dc, turn, leaving the rest. (10 dc)',
      third,
      '4th row – As 3rd row. Fasten off.',
    ].join('\n'),
  ).codes;

test('a row in the same words as one that leaves the rest leaves some too', () => {
  const third =
    '3rd row – 1 ch, 1 dc into each of next 4 dc, 3 dc into next dc, 1 dc into each of next 3 dc, turn. (10 dc)';
  expect(leaf(third)).toEqual([]);
  expect(leaf(third.replace('next 3 dc', 'next 2 dc').replace('(10', '(9'))).toContain('row/unworked');
  expect(leaf(third.replace('(10', '(11'))).toContain('count/mismatch');
});
