import { describe, expect, test } from 'vitest';
import { workSize } from '../../src/fabric/work.ts';
import { measure } from '../../src/measure/measure.ts';
import type { Gauge, Pattern } from '../../src/pattern/pattern.ts';
import { wordPattern } from '../../src/wording/word-pattern.ts';
import { readPattern } from './read-pattern.ts';
import { SHELL_SQUARE, shellFabric } from './shell-square.ts';

describe('from the designer’s words to the printed page', () => {
  test('a worked shell square is worded as one made up stitch by stitch is', () => {
    const { fabric, diagnostics } = workSize(SHELL_SQUARE, 0, { repeats: 6, rows: 27 });
    expect(diagnostics).toEqual([]);
    const byHand = shellFabric('small', 6, 27);
    for (const dialect of ['us', 'uk', 'us-full', 'uk-full'] as const) {
      expect(wordPattern(SHELL_SQUARE, fabric, dialect, 0)).toEqual(
        wordPattern(SHELL_SQUARE, byHand, dialect, 0),
      );
    }
    const gauge = { stitches: 16, rows: 9, of: 'shell pattern' };
    const worked = measure(gauged(SHELL_SQUARE, gauge), fabric);
    expect(worked).toMatchObject({ widthMm: 231.25 });
    expect(worked.heightMm).toBeCloseTo(300, 5);
    // 14 rows of 7 sc and 30 dc, 13 of 6 sc and 31 dc of which one is the turning chain: 518 + 468.
    expect(worked.stitches).toBe(986);
  });

  test('an edged square has its spread written out on both sides and its edging in its size', () => {
    const square = readPattern({
      work: `Foundation: With A, ch 21.
Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn.
Rows 2-15: Ch 1, sc in each st across, turn.
Edging: With B, ch 1, 3 sc in first st, sc in next 18 sts, 3 sc in last st, work 21 sc evenly along row ends, working along opposite side of foundation ch, 3 sc in first ch, sc in next 18 ch, 3 sc in last ch, work 21 sc evenly along row ends, join with sl st in first sc. Fasten off.`,
    });
    const { fabric, diagnostics } = workSize(square, 0, { repeats: 1, rows: null });
    expect(diagnostics).toEqual([]);
    const edging = wordPattern(square, fabric, 'us', 0).parts[0]?.lines[3];
    const spread =
      'work 21 sc evenly along row ends: *1 sc in next row end, 2 sc in next row end, 1 sc in next row end, 2 sc in next row end, 1 sc in next row end; rep from * twice more; ';
    expect(edging?.text.split(spread)).toHaveLength(3);
    // 2 x (3 + 18 + 3) and 2 x 21.
    expect(edging?.count).toBe('90 sts');
    // 20 sts at 5 mm and 2 x 5 mm of edging; 15 rows at 5 mm and 2 x 5 mm.
    const { widthMm, heightMm } = measure(gauged(square, { stitches: 20, rows: 20, of: 'sc' }), fabric);
    expect(widthMm).toBeCloseTo(110, 5);
    expect(heightMm).toBeCloseTo(85, 5);
  });

  test('a granny square is twice the height of its rounds across, and its spaces are counted by length', () => {
    const granny = readPattern({
      work: `Ch 4, join with sl st in first ch to form ring.
Rnd 1 (RS): Ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * twice more, join with sl st in top of beg ch-3.
Rnd 2: Sl st in next 2 dc, sl st in next ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp, *ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * twice more, ch 1, join with sl st in top of beg ch-3. Fasten off.`,
    });
    const { fabric, diagnostics } = workSize(granny, 0, { repeats: 1, rows: null });
    expect(diagnostics).toEqual([]);
    const counts = wordPattern(granny, fabric, 'uk', 0).parts[0]?.lines.map(({ count }) => count);
    expect(counts).toEqual([null, '12 tr, 4 2-ch sps', '24 tr, 4 1-ch sps, 4 2-ch sps']);
    // Two rounds of dc at 7 over 10 cm: 2 x 2 x 100 / 7 = 57.1 mm.
    expect(measure(gauged(granny, { stitches: 14, rows: 7, of: 'dc' }), fabric).widthMm).toBeCloseTo(
      57.14,
      2,
    );
  });

  test('a basket is as wide as its way round tells and as high as its wall', () => {
    const basket = readPattern({
      work: `Rnd 1: 6 sc in magic ring.
Rnd 2: 2 sc in each st around.
Rnd 3: [Sc in next st, 2 sc in next st] around.
Rnd 4: [Sc in next 2 sts, 2 sc in next st] around.
Rnd 5: Sc in BLO of each st around.
Rnds 6-12: Sc in each st around.`,
    });
    const { fabric, diagnostics } = workSize(basket, 0, { repeats: 1, rows: null });
    expect(diagnostics).toEqual([]);
    // 24 sc at 5 mm = 120 mm round; 8 rounds at 5 mm.
    const { widthMm, heightMm } = measure(gauged(basket, { stitches: 20, rows: 20, of: 'sc' }), fabric);
    expect(widthMm).toBeCloseTo(120 / Math.PI, 5);
    expect(heightMm).toBeCloseTo(40, 5);
  });
});

function gauged(pattern: Pattern, gauge: Pick<Gauge, 'stitches' | 'rows' | 'of'>): Pattern {
  return { ...pattern, gauge: { overMm: 100, upMm: 100, before: null, tookM: null, after: null, ...gauge } };
}
