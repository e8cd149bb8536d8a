/**
 * Forms in which instructions are published, with the counts they must make: the examples of the trade's conventions,
 * each counted by hand there. A form that is not read has to be a fault; what must never be is a wrong count in silence.
 */

import { describe, expect, test } from 'vitest';
import type { Piece } from '../fabric/work-text.ts';
import { workPiece } from '../fabric/work-text.ts';

/** A flat piece with so many sc in Row 1, and the row in question as Row 2. */
function overRow(n: number, row: string, more: Partial<Piece> = {}): Piece {
  // Where the row says to turn, so does the one before it.
  const turn = /\bturn\b/.test(row) ? ', turn' : '';
  const head = `Ch ${n + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across${turn}. (${n} sc)`;
  return { work: `${head}\nRow 2: ${row}`, special: ['shell: 5 dc in same st'], yarns: 'AB', ...more };
}

/** A round of so many sc, and the round in question as Rnd 2. */
function overRound(n: number, row: string): Piece {
  return {
    work: `Rnd 1: ${n} sc in magic ring, join with sl st in first sc. (${n} sc)\nRnd 2: ${row}`,
    yarns: 'AB',
  };
}

const IDLE = ['yarn/unused', 'special/unused', 'chain/unstated'];

/** What the last row makes: `5 sc, 20 dc, 4 shell, 2 ch-1 sp`; or the codes of its faults. */
function outcome(piece: Piece): string {
  const { fabrics, diagnostics } = workPiece(piece);
  const faults = diagnostics.map(({ code }) => code).filter((code) => !IDLE.includes(code));
  if (faults.length > 0) return `fault: ${faults.join(', ')}`;
  const row = fabrics[0]?.rows.at(-1);
  if (row === undefined) return 'nothing';
  const spaces = Object.entries(row.bySpace).map(([chains, n]) => `${n} ch-${chains} sp`);
  return [
    ...Object.entries({ ...row.byStitch, ...row.groups }).map(([name, n]) => `${n} ${name}`),
    ...spaces,
  ].join(', ');
}

describe('repeats', () => {
  test.each([
    [
      overRow(
        21,
        'Ch 1, sc in first st, *ch 1, sk next st, sc in next st; rep from * across, turn. (11 sc, 10 ch-1 sps)',
      ),
      '11 sc, 10 ch-1 sp',
    ],
    [overRound(18, '*2 dc in next st, dc in next 2 sts; rep from * 5 more times, join. (24 dc)'), '24 dc'],
    [overRow(36, 'Ch 1, *sc in next 4 sts, sc2tog; rep from * around. (30 sts)'), '24 sc, 6 sc2tog'],
    [
      overRow(37, 'Ch 1, *dc in next st, ch 1, sk 1; rep from * to last 3 sts, dc in last 3 sts.'),
      '20 dc, 17 ch-1 sp',
    ],
    [overRow(24, 'Ch 1, (sc in next 3 sts, 2 sc in next st) 6 times. (30 sc)'), '30 sc'],
    [overRow(24, 'Ch 1, *sc in next 3 sts, 2 sc in next st; rep from * 5 more times. (30 sc)'), '30 sc'],
    [overRow(24, 'Ch 1, *sc in next 11 sts, 2 sc in next st; rep from * once. (26 sc)'), '26 sc'],
    [
      overRow(
        26,
        'Ch 1, *sc in next st, ch 1, sk next st; rep from * across to last 2 sts, dc in last 2 sts, turn.',
      ),
      '12 sc, 2 dc, 12 ch-1 sp',
    ],
    [overRound(48, 'Ch 1, *sc in next 7 sts, 2 sc in next st; rep from * around, join. (54 sc)'), '54 sc'],
    [
      overRow(25, 'Ch 1, *sc in next st, ch 1, sk next st; rep from * to within last st, sc in last st.'),
      '13 sc, 12 ch-1 sp',
    ],
    [
      overRow(
        25,
        'Ch 1, sc in first st, sk 2 sts, *shell in next st, sk 2 sts**, sc in next st, sk 2 sts; rep from * across, ending last rep at **, sc in last st, turn. (4 shells, 5 sc)',
      ),
      '5 sc, 20 dc, 4 shell',
    ],
    [
      overRow(
        32,
        'Ch 1, [sc in next st, (ch 3, sk 2 sts, sc in next st) twice, ch 1, sk 1 st] 4 times. (12 sc, 8 ch-3 sps, 4 ch-1 sps)',
      ),
      '12 sc, 4 ch-1 sp, 8 ch-3 sp',
    ],
    [overRow(15, 'Ch 1, [sc in next 2 sts, {hdc, dc, hdc} in next st] 5 times'), '10 sc, 10 hdc, 5 dc'],
    [
      overRow(
        40,
        'Ch 1, *sc in next 2 sts, †ch 1, sk 1 st, dc in next st; rep from † twice more, sc in next 2 sts; rep from * around. (16 sc, 12 dc, 12 ch-1 sps)',
      ),
      '16 sc, 12 dc, 12 ch-1 sp',
    ],
  ])('%#: %j', (piece, expected) => {
    expect(outcome(piece)).toBe(expected);
  });
});

describe('rows that repeat rows', () => {
  const rows = 'Ch 1, sc in each st across.\nRow 3: Ch 1, hdc in each st across.\n';
  test.each([
    ['Rows 4-26: Rep Row 2.', 26, 'sc'],
    ['Rows 4-27: Rep Rows 2 and 3.', 27, 'hdc'],
    ['Rep Rows 2 and 3 12 more times.', 27, 'hdc'],
    ['Row 4: As Row 2.', 4, 'sc'],
    ['Row 4: Rep Row 3.', 4, 'hdc'],
    ['Row 4: Work as for Row 2.', 4, 'sc'],
  ])('%s', (row, last, stitch) => {
    const { fabrics, diagnostics } = workPiece({ work: overRow(5, rows + row).work });
    expect(diagnostics).toEqual([]);
    expect(fabrics[0]?.rows.at(-1)).toMatchObject({ number: last, byStitch: { [stitch]: 5 } });
  });
});

describe('turning and starting chains', () => {
  test.each([
    [{ work: 'Ch 25. Row 1: Sc in 2nd ch from hook and in each ch across, turn. (24 sc)' }, '24 sc'],
    [
      {
        work: 'Ch 26. Row 1: Dc in 4th ch from hook (skipped 3 ch count as dc), dc in each ch across, turn. (24 dc)',
      },
      '24 dc',
    ],
    [
      {
        work: 'Ch 25. Row 1: Hdc in 3rd ch from hook (skipped ch 2 count as hdc), hdc in each ch across. (24 hdc)',
      },
      '24 hdc',
    ],
    [{ work: 'Ch 26. Row 1: Hdc in 3rd ch from hook, hdc in each ch across. (24 hdc)' }, '24 hdc'],
    [overRow(24, 'Ch 3 (counts as dc), sk first st, dc in next st and in each st across. (24 dc)'), '24 dc'],
    [overRow(24, 'Ch 1 (does not count as a st), sc in first st and in each st across. (24 sc)'), '24 sc'],
    [overRow(24, 'Ch 2 (does not count) throughout, hdc in each st across. (24 hdc)'), '24 hdc'],
    [
      overRow(
        7,
        'Ch 5 (counts as dc and ch 2), sk next 2 sts, dc in next st, ch 2, sk next 2 sts, dc in next st.\nRow 3: Ch 5 (counts as dc and ch 2), dc in next dc, ch 2, dc in 3rd ch of ch-5. (3 dc, 2 ch-2 sps)',
      ),
      '3 dc, 2 ch-2 sp',
    ],
    [
      overRow(
        7,
        'Ch 3 (counts as dc), ch 2, sk next 2 sts, dc in next st, ch 2, sk next 2 sts, dc in next st. (3 dc, 2 ch-2 sps)',
      ),
      '3 dc, 2 ch-2 sp',
    ],
    [
      overRow(
        24,
        'Ch 3 (counts as dc), sk first st, dc in next st and in each st across.\nRow 3: Ch 3 (counts as dc), sk first st, dc in next st and in each st across, working last dc in top of tch. (24 dc)',
      ),
      '24 dc',
    ],
  ])('%#: %j', (piece, expected) => {
    expect(outcome(piece)).toBe(expected);
  });
});

describe('rounds', () => {
  const ring = 'Ch 4, join with sl st in first ch to form ring.\n';
  const square = `${ring}Rnd 1: Ch 1, *2 sc in ring, ch 2; rep from * 3 more times, join with sl st in first sc. (8 sc, 4 ch-2 sps)\nFasten off.\n`;
  test.each([
    [
      {
        work: `${ring}Rnd 1: 6 sc in ring, join with sl st in first sc. (6 sc)\nRnd 2: Ch 1, 2 sc in each st around, join with sl st in first sc. (12 sc)`,
      },
      '12 sc',
    ],
    [{ work: 'Rnd 1: 6 sc in magic ring, pull closed. (6 sc)' }, '6 sc'],
    [{ work: 'Rnd 1: Ch 2, 6 sc in 2nd ch from hook. (6 sc)' }, '6 sc'],
    [
      {
        work: 'Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st around. Do not join; place marker in first st and move it up each rnd. (12 sc)',
      },
      '12 sc',
    ],
    [
      {
        work: `${square}Rnd 2: Join B with sl st in any ch-2 sp, ch 3 (counts as dc), dc in same sp, *dc in next 2 sc, 2 dc in next sp; rep from * around, dc in next 2 sc, join in top of ch-3. (16 dc)`,
        yarns: 'AB',
      },
      '16 dc',
    ],
    [
      {
        work: `${square}Rnd 2: Join B with sc in first st, sc in next st, *3 sc in next corner sp, sc in next 2 sts; rep from * 2 more times, 3 sc in next corner sp, join in first sc. (20 sc)`,
        yarns: 'AB',
      },
      '20 sc',
    ],
    [
      {
        work: `${square}Rnd 2: Ch 1, sc in next 2 sts, *(sc, ch 2, sc) in next corner sp, sc in next 2 sts; rep from * 2 more times, (sc, ch 2, sc) in next corner sp, join in first sc. (16 sc, 4 ch-2 sps)`,
      },
      '16 sc, 4 ch-2 sp',
    ],
    [
      {
        work: 'Ch 7. Rnd 1: Sc in 2nd ch from hook, sc in next 4 ch, 3 sc in last ch; working along opposite side of ch, sc in next 4 ch, 2 sc in last ch. (14 sc)',
      },
      '14 sc',
    ],
  ])('%#: %j', (piece, expected) => {
    expect(outcome(piece)).toBe(expected);
  });
});

describe('sizes, colours and endings', () => {
  test('numbers for four sizes in the US and in the UK way', () => {
    for (const list of ['Ch 61 (67, 73, 79).', 'Ch 61(67:73:79).']) {
      const { fabrics, diagnostics } = workPiece({
        work: `${list}\nRow 1: Sc in 2nd ch from hook and in each ch across. (60 (66, 72, 78) sts)`,
        sizes: ['name: S', 'name: M', 'name: L', 'name: XL'],
      });
      expect(diagnostics).toEqual([]);
      expect(fabrics.map(({ rows }) => rows.at(-1)?.stitches)).toEqual([60, 66, 72, 78]);
    }
  });

  test.each([
    'Ch 1, sc in each st across, change to B in last yo of last st.\nRow 3: With B, ch 1, sc in each st across.',
    'Ch 1, sc in each st across. Carry A loosely up the side.\nRow 3: With B, rep Row 2.',
    'Ch 1, sc in each st across.\nFasten off, leaving a 30 cm tail for sewing.\nWeave in ends.',
    'Ch 1, sc in each st across. Fasten off A.',
    'Ch 1, sc in each st across.\nTurn, WS now facing.',
  ])('%s', (rows) => {
    const { fabrics, diagnostics } = workPiece(overRow(8, rows));
    expect(diagnostics.filter(({ code }) => !IDLE.includes(code))).toEqual([]);
    expect(fabrics[0]?.rows.at(-1)?.byStitch).toEqual({ sc: 8 });
  });
});

describe('forms that may not be read are read right, or are faults', () => {
  test.each([
    // From * to the * again, and once more: 2 + 5 + 2 stitches over 7.
    [overRow(7, 'Ch 1, *sc in next st, ch 3, sc in same st*, sc in next 5 sts, rep from * to * once.'), 9],
    [overRow(24, 'Ch 1, sc in each st across.\nRep last row twice.'), 24],
    [overRow(24, 'Ch 1, sc in each st across.\nWork even for 5 rows. (24 sc)'), 24],
    [{ work: 'Row 1: Fsc 24, turn. (24 sc)' }, 24],
    [overRow(24, 'Ch 1, inc 6 sts evenly across.'), 30],
    [overRow(24, 'Ch 1, dec 1 st at each end of row.'), 22],
    [overRow(24, 'Ch 1, sc in each st across.\nRow 3: Ch 1, work 48 sc evenly along edge.'), 48],
    [
      overRow(
        24,
        'Ch 1, sc in each st across, work last st to 2 lps on hook, drop A, with B yo and draw through.',
      ),
      24,
    ],
    [
      overRow(25, 'Ch 1, *sc in next st, ch 1, sk next st; rep from * across, ending with sc in last st.'),
      13,
    ],
    [
      overRow(
        24,
        'Ch 1, sc in each st across.\nRep Rows 1-2 until piece measures 60 cm, ending with a WS row.',
      ),
      24,
    ],
    [overRow(24, 'Ch 1, picot in next st, sc in each st across.'), 24],
    [{ work: 'Ch 25. R1: Sc in 2nd ch from hook and in each ch across. (24 sc)' }, 24],
    [{ work: 'Ch 25.\n1st row: Sc in 2nd ch from hook and in each ch across. (24 sc)' }, 24],
    [
      {
        work: 'Ch 7. Rnd 1: Sc in 2nd ch from hook, sc in next 4 ch, 3 sc in last ch; working along opposite side of ch, sc in next 4 ch, 2 sc in last ch (holding first sc). (14 sc)',
      },
      14,
    ],
    [overRound(12, 'With B, make a standing dc in any st, dc in each st around, join.'), 12],
  ])('%#: %j', (piece, expected) => {
    const { fabrics, diagnostics } = workPiece(piece);
    const faults = diagnostics.filter(({ severity }) => severity === 'error');
    const made = fabrics[0]?.rows.at(-1)?.stitches;
    expect(faults.length > 0 || made === expected, `makes ${made}, should be ${expected}`).toBe(true);
  });
});
