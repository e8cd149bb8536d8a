/** The last stitch of a round that goes where it began; reverse stitches by their short name, into the row ends of a tube. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const star = (last: string, skipped = 2): readonly string[] =>
  workedText(
    [
      'Star',
      'US terms',
      'Hook: 5 mm',
      '',
      'STAR',
      'Rnd 1: Make a magic ring, ch 1, 12 sc in ring, sl st in first sc to join. (12 sc)',
      `Rnd 2: *Ch 4, sl st in 2nd ch from hook, sc in next ch, hdc in next ch, sk next ${skipped} sc, sl st in next sc; rep from * 3 more times. ${last}`,
      'Fasten off.',
    ].join('\n'),
  ).codes;

describe('the last stitch goes where the round began', () => {
  test.each([
    'The last sl st is worked where the round began.',
    'The last sl st goes where you began.',
    'The last sl st is made where this rnd started.',
  ])('%s', (last) => {
    expect(star(last)).toEqual([]);
    expect(star(last, 1)).toEqual(['place/not-there']);
    expect(star(last, 3)).toEqual(['row/used-up']);
    expect(star(last.replace('sl st', 'sc'))).toEqual(['place/not-there']);
  });
});

describe('a tube closed and edged', () => {
  const tube = (edge: string): readonly string[] =>
    workedText(
      `Cuff\nUS terms\nHook: 5 mm\n\nCUFF\nCh 6.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (5 sc)\nRows 2-12: Ch 1, sc in BLO of each st across, turn. (5 sc)\nFold in half and sl st the first and last rows together to make a tube.\n\nEdging\n${edge}\n`,
    ).codes;
  const WHOLE =
    'Rnd 1: Ch 1, work 1 sc in the end of each row around the tube, join with sl st in first sc. (12 sc)\nRnd 2: Ch 1, rsc in each sc around, join with sl st in first rsc. (12 rsc)';
  test('in the end of each row around it, and back in reverse', () => {
    // That it is folded is told, for nothing is worked by it.
    expect(tube(WHOLE)).toEqual(['text/assembly']);
    expect(tube(WHOLE.replace('(12 sc)', '(13 sc)'))).toContain('count/mismatch');
    expect(tube(WHOLE.replace('12 rsc', '11 rsc'))).toContain('count/mismatch');
  });
});
