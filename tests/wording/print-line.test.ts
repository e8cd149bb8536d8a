import { describe, expect, test } from 'vitest';
import type { Line } from '../../src/notation/line.ts';
import type { Context } from '../../src/notation/read.ts';
import { readInstructions } from '../../src/notation/read.ts';
import { plainText } from '../../src/source/mapped-text.ts';
import type { Terms } from '../../src/stitches/stitch-row.ts';
import { printLine, printSteps } from '../../src/wording/print-line.ts';

// Lines in the house's own forms: each is printed back letter for letter.
const LINES = [
  'Foundation: With A, ch a multiple of 6 plus 2.',
  'Row 1 (RS): Sc in 2nd ch from hook, *sk next 2 ch, shell in next ch, sk next 2 ch, sc in next ch; rep from * across, turn.',
  'Row 2: Ch 3 (counts as dc), 2 dc in first sc, *sk next 2 dc, sc in next dc; rep from * to last 6 sts, 3 dc in last sc, turn. (37 (49, 61) sts)',
  'Row 3 (WS): Ch 1 (does not count as a st), sc in first dc, 2 shells in next sc, sc in each st across.',
  'Rows 4 on: Rep Rows 2 and 3 to height, ending with a Row 3.',
  'Row 5: Dc in 4th ch from hook (skipped 3 ch count as dc), dc in each ch to last 2 ch, turn. (24 dc)',
  'Rnd 1: 6 sc in magic ring. (6 sc)',
  'Rnd 2: Ch 5 (counts as dc and ch 2), (2 dc, ch 2, 2 dc) in next corner ch-2 sp, [3 dc in next sp, ch 1] 3 times, join with sl st in 3rd ch of beg ch-5, do not turn. (24 dc, 4 ch-2 sps)',
  'Rnd 3: Ch 3 (counts as dc here and throughout), dc in same st as joining, *dc in next 3 sts, ch 2, sk next 2 sts**, tr in next st; rep from * around, ending last rep at **, join with sl st in top of beg ch-3.',
  'Rnds 5–8: Rep Rnds 2–4.',
  'Rep Rows 2 and 3 12 more times.',
  'Rnd 9: *Sc in next 2 sts, †ch 1, sk next st, dc in next st; rep from † twice more, sc in next 2 sts; rep from * around. (16 sc, 12 dc, 12 ch-1 sps)',
  'Row 10: Sc2tog over next 2 sts, sc in BLO of next 3 sts, hdc in FLO of each st to next corner, sc in next st 2 rows below, dc in skipped st 1 row below, turn.',
  'Row 11: With B, dc in center dc of next shell, sc in 3rd dc of next shell, dc in top of tch, dc in top of turning ch-3, change to A in last yo, drop B, carry A.',
  'Rnd 12: Join B with sl st in any ch-2 sp, ch 3, 3 sc in next corner, sc in each of next 4 sts, sk first 2 sts, 35 (44, 53) sc in first 2 sts.',
  'Edging: Ch 1, working along row ends, work 21 sc evenly along row ends, working along opposite side of foundation ch, sc in next ch, place marker in first st, do not join. Fasten off A.',
  'Ch 4, join with sl st in first ch to form ring.',
  'Next rnd: [Sc in next 4 sts, sc2tog] around, *sc in next st, ch 1; rep from * 5 more times, 2 sc in last st (corner made). Fasten off.',
];

describe('what is printed in abbreviated terms', () => {
  test('is what the designer wrote, where she wrote in the forms of the house', () => {
    const lines = read(LINES.join('\n'), 'US');
    expect(lines.map((line) => printLine(line, 'US', 'all'))).toEqual(LINES);
  });

  test('says the same in UK terms: read as UK terms it is the same instruction', () => {
    const lines = read(LINES.join('\n'), 'US');
    const uk = lines.map((line) => printLine(line, 'UK', 'all'));
    expect(uk.filter((line) => /\bsc\b|\bsk\b|\byo\b|center|ch-\d/.test(line))).toEqual([]);
    expect(read(uk.join('\n'), 'UK').map(withoutSpans)).toEqual(lines.map(withoutSpans));
  });

  test('one size is printed with its own number', () => {
    const [line] = read(
      'Row 1: Sc in next 35 (44, 53) sts, *ch 1; rep from * 2 (3, 4) more times. (37 (49, 61) sts)',
      'US',
    );
    expect(line && printLine(line, 'US', 1)).toBe(
      'Row 1: Sc in next 44 sts, *ch 1; rep from * 3 more times. (49 sts)',
    );
  });

  test('one is one stitch, and more are stitches, also for all sizes at once', () => {
    const [line] = read(
      'Row 1: Sc in next 1 (2, 3) sts, sk next 1 (1, 1) st, sc in each st to last 1 (1, 1) st.',
      'US',
    );
    expect(line && printSteps(line.steps, 'US')).toBe(
      'Sc in next 1 (2, 3) sts, sk next 1 st, sc in each st to last st.',
    );
  });
});

function read(text: string, terms: Terms): readonly Line[] {
  const context: Context = { file: 'test', terms, sizes: 3, specials: ['shell'], yarns: ['A', 'B'] };
  const { instructions, diagnostics } = readInstructions(plainText(text), context);
  expect(diagnostics).toEqual([]);
  return instructions.lines;
}

/** A stated count keeps the designer's own letters beside what they mean. */
function withoutSpans(line: Line): unknown {
  return JSON.parse(
    JSON.stringify(line, (key, value) => (key === 'span' || key === 'text' ? undefined : value)),
  );
}
