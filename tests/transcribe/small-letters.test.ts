/** Texts typed in small letters: headings, a yarn by itself before the chain, a ring that a word leads to. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const cloth = (heading: string, border = '18 sc') =>
  `cloth\nUS terms\n\nyarn: worsted cotton, 40 g of main colour, 10 g of contrast\nhook: 5 mm\n\nmain colour, ch 21\nrow 1: sc in 2nd ch from hook and in each ch across, turn (20 sc)\nrows 2-20: ch 1, sc in each st across, turn (20 sc)\nfasten off main colour\n\n${heading}\nround 1: join contrast in any corner, ch 1, *3 sc in corner, ${border} evenly along the edge to next corner; repeat from * 3 more times, sl st in first sc (84 sc)\nround 2: ch 1, sc in each sc around, sl st in first sc (84 sc)\nfasten off\n`;

describe('a heading in small letters before a first round', () => {
  test.each(['border, contrast', 'border', 'the edging', 'top and side edges'])('%s', (heading) => {
    expect(workedText(cloth(heading)).codes.filter((code) => code !== 'gauge/missing')).toEqual([]);
    expect(workedText(cloth(heading, '17 sc')).codes).toContain('count/mismatch');
  });

  test('is none where the rows go on counting', () => {
    const text =
      'hat\nUS terms\n\nrnd 1: 6 sc in magic ring (6)\nrnd 2: 2 sc in each st (12)\nthe brim\nrnd 3: sc in each st (12)\n';
    expect(transcribe({ file: 'hat.txt', text }).parts).toHaveLength(1);
  });
});

describe('a chain behind the yarn it is made in', () => {
  test.each([
    ['main colour, ch 21', true],
    ['main colour: ch 21', true],
    ['Main color, chain 21.', true],
    ['main colour, ch 22', false],
  ])('%s', (chain, good) => {
    const { codes } = workedText(cloth('border').replace('main colour, ch 21', chain));
    expect(codes.includes('count/mismatch')).toBe(!good);
    expect(codes).not.toContain('row/nothing-below');
  });
});

describe('a ring that a word leads to', () => {
  const coaster = (ring: string, n = 12) =>
    workedText(
      `Coaster\nUS terms\nHook: 4 mm\n\n${ring}\n\nRnd 1: Ch 3 (counts as dc), 11 dc in ring, join with sl st in top of ch-3. (${n} dc)\n`,
    ).codes;
  test.each([
    'Start: ch 4, join with sl st in the first ch to make a ring.',
    'Foundation: ch4, join with sl st in first ch to form a ring.',
    'Centre ring: ch 4, join with sl st to form a ring.',
  ])('%s', (ring) => {
    expect(coaster(ring)).toEqual([]);
    expect(coaster(ring, 13)).toContain('count/mismatch');
  });
});
