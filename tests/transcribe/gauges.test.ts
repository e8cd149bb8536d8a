/** Gauges as pasted texts tell them: in pattern repeats, and before and after blocking. */

import { describe, expect, test } from 'vitest';
import { compileText } from '../../src/compile.ts';

function gaugeOf(told: string, foundation = '25') {
  const text = `Eelgrass Scarf

Worked in US terms.

Materials
200 m of worsted wool
5 mm hook

Gauge
${told}

Foundation: Ch ${foundation}.
Row 1: Sc in 2nd ch from hook and in each ch across, turn.
Row 2: Ch 1, sc in each st across, turn.
`;
  const { pattern, diagnostics } = compileText({ file: 'pasted.txt', text }, 'pasted');
  return {
    gauge: pattern?.gauge ?? null,
    notes: pattern?.notes ?? [],
    codes: diagnostics.map(({ code }) => code),
  };
}

describe('before and after blocking', () => {
  const both = { stitches: 16, rows: 9, overMm: 100, after: 'blocking', before: { stitches: 17, rows: 10 } };

  test.each([
    ['16 sts and 9 rows = 10 cm after blocking (17 sts and 10 rows before blocking)'],
    ['17 sts and 10 rows = 10 cm before blocking; 16 sts and 9 rows = 10 cm after blocking'],
    ['Before blocking, 17 sts and 10 rows = 10 cm, after blocking, 16 sts and 9 rows = 10 cm'],
    ['Before blocking: 17 sts and 10 rows = 10 cm\nAfter blocking: 16 sts and 9 rows = 10 cm'],
    ['16 sts and 9 rows = 10 cm, blocked\n17 sts and 10 rows = 10 cm, unblocked'],
    // Over half the measure.
    ['16 sts and 9 rows = 10 cm after blocking. Before blocking 8.5 sts and 5 rows = 5 cm.'],
  ])('%j is both', (told) => expect(gaugeOf(told).gauge).toMatchObject(both));

  test('what was counted before blocking alone is all that is known', () => {
    expect(gaugeOf('17 sts and 10 rows = 10 cm before blocking').gauge).toMatchObject({
      stitches: 17,
      rows: 10,
      before: null,
    });
  });

  test('what cannot be made out of it stays among the notes, and is never taken for the other', () => {
    const { gauge, notes } = gaugeOf(
      '16 sts and 9 rows = 10 cm after blocking; before blocking 17 somethings',
    );
    expect(gauge).toBeNull();
    expect(notes.join(' ')).toContain('17 somethings');
  });
});

describe('pattern repeats', () => {
  test.each([
    ['2 pattern repeats and 12 rows = 15 cm'],
    ['2 repeats and 12 rows to 15 cm'],
    ['2 patt reps x 12 rows = 15 cm'],
  ])('%j are as many stitches as the chain says', (told) => {
    const { gauge, codes } = gaugeOf(told, 'a multiple of 6 plus 2');
    expect(gauge).toMatchObject({ repeats: 2, stitches: 12, rows: 12, overMm: 150 });
    expect(codes).not.toContain('gauge/repeat-unknown');
  });

  test('of a chain that says no repeat measure nothing, and that is told', () => {
    const { gauge, codes } = gaugeOf('2 pattern repeats and 12 rows = 15 cm');
    expect(gauge).toBeNull();
    expect(codes).toContain('gauge/repeat-unknown');
  });

  test('repeats of rows are none across', () => {
    expect(gaugeOf('2 repeats of rows 1-6 and 12 rows = 15 cm', 'a multiple of 6 plus 2').gauge).toBeNull();
  });
});
