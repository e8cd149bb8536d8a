/** Rows and rounds that should be alike: where one that is not is told, and where it is meant. */

import { describe, expect, test } from 'vitest';
import { codesOf } from '../fabric/work-text.ts';

const ROW_1 = 'Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.';
const RND_1 = 'Rnd 1: 6 sc in magic ring, join with sl st in first sc.';

/** Whether a code is told of these rows. */
function tells(code: string, ...lines: readonly string[]): boolean {
  return codesOf(lines.join('\n')).includes(code);
}

describe('a row that does not say to turn', () => {
  test.each([
    [
      'is told among rows that do',
      true,
      ['Row 2: Ch 1, sc in each st across.', 'Row 3: Ch 1, sc in each st across.'],
    ],
    ['may be the last', false, ['Row 2: Ch 1, sc in each st across.']],
    [
      'may be told not to',
      false,
      ['Row 2: Ch 1, sc in each st across, do not turn.', 'Row 3: Ch 1, sc in each st across.'],
    ],
    [
      'may be cut off',
      false,
      [
        'Row 2: Ch 1, sc in each st across. Fasten off.',
        'Row 3: Join A with sl st in first st, ch 1, sc in each st across.',
      ],
    ],
    [
      'may be followed by new yarn',
      false,
      [
        'Row 2: Ch 1, sc in each st across.',
        'Row 3: Join A with sl st in first st, ch 1, sc in each st across.',
      ],
    ],
    [
      'may leave the turn to the next',
      false,
      ['Row 2: Ch 1, sc in each st across.', 'Row 3: Turn, ch 1, sc in each st across.'],
    ],
    [
      'may stand beside one of the same side',
      false,
      ['Row 2 (RS): Ch 1, sc in each st across.', 'Row 3 (RS): Ch 1, sc in each st across.'],
    ],
  ])('%s', (_, told, lines) => {
    expect(tells('row/no-turn', ROW_1, ...lines)).toBe(told);
  });

  test('is said by the rows that a line repeats', () => {
    const row2 = 'Row 2: Ch 1, sc in each st across, turn.';
    const repeats = (times: string): string => `Rows 3-6: [Rep Row 2] ${times}.`;
    const last = 'Row 7: Ch 1, sc in each st across. Fasten off.';
    expect(tells('row/no-turn', ROW_1, row2, repeats('4 times'), last)).toBe(false);
    const plain = 'Rows 3-6: [Ch 1, sc in next 2 sts] 4 times.';
    expect(tells('row/no-turn', ROW_1, row2, plain, last)).toBe(true);
  });

  test('is no slip where no row says it', () => {
    const plain = 'Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across.';
    expect(
      tells('row/no-turn', plain, 'Row 2: Ch 1, sc in each st across.', 'Row 3: Ch 1, sc in each st across.'),
    ).toBe(false);
  });

  test('is told once, with the others beside it', () => {
    const codes = codesOf(
      [ROW_1, ...[2, 3, 4, 5].map((n) => `Row ${n}: Ch 1, sc in each st across.`)].join('\n'),
    );
    expect(codes.filter((code) => code === 'row/no-turn')).toHaveLength(1);
  });

  test('counts among rounds only where most of them turn', () => {
    const round = (n: number, turn: string): string =>
      `Rnd ${n}: Ch 1, sc in each st around, join with sl st in first sc${turn}.`;
    expect(
      tells('row/no-turn', RND_1, round(2, ', turn'), round(3, ', turn'), round(4, ''), round(5, ', turn')),
    ).toBe(true);
    expect(tells('row/no-turn', RND_1, round(2, ''), round(3, ', turn'), round(4, ''), round(5, ''))).toBe(
      false,
    );
  });

  test('is no slip where just half of the rounds turn', () => {
    const round = (n: number, turn: string): string =>
      `Rnd ${n}: Ch 1, sc in each st around, join with sl st in first sc${turn}.`;
    expect(tells('row/no-turn', RND_1, round(2, ', turn'), round(3, ', turn'), round(4, ''))).toBe(false);
  });
});

describe('a round that does not join', () => {
  const rise = 'Ch 1, sc in each st around';
  test.each([
    [
      'is told behind one that does',
      true,
      [`Rnd 2: ${rise}.`, `Rnd 3: ${rise}, join with sl st in first sc.`],
    ],
    ['is told as the last', true, [`Rnd 2: ${rise}. Fasten off.`]],
    ['may say so', false, [`Rnd 2: ${rise}, do not join.`]],
    ['may be a spiral by name', false, [`Rnd 2: ${rise}. (worked in a spiral)`]],
  ])('%s', (_, told, lines) => {
    expect(tells('row/no-join', RND_1, ...lines)).toBe(told);
  });

  test('is told as the first where the second rises with a chain, though slip stitches lead to it', () => {
    const first = 'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, ch 2, [3 dc in ring, ch 2] 3 times.';
    const second =
      'Rnd 2: Sl st in next 2 dc and in next ch-2 sp, ch 3 (counts as dc), 2 dc in same sp, [3 dc in next ch-2 sp] 3 times, join with sl st in top of beg ch-3.';
    expect(tells('row/no-join', first, second)).toBe(true);
  });

  test('is no slip in a spiral that ends with a join', () => {
    const spiral = [
      'Rnd 1: 6 sc in magic ring.',
      'Rnd 2: 2 sc in each st around.',
      'Rnd 3: Sc in each st around, sl st in first sc to join.',
    ];
    expect(tells('row/no-join', ...spiral)).toBe(false);
  });
});

describe('the corners of a round', () => {
  const start = (sides: number): string =>
    `Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, ch 2, [3 dc in ring, ch 2] ${sides - 1} times, join with sl st in top of beg ch-3.`;
  const corner = '(2 dc, ch 2, 2 dc) in next ch-2 sp';
  const round2 = (sides: number, side: string, last: string): string =>
    `Rnd 2: Ch 3 (counts as dc), dc in next 2 dc, ${corner}, *${side}, ${corner}; rep from * ${sides - 2} more times${last}, join with sl st in top of beg ch-3.`;

  test('may be half as many as the spaces of the first', () => {
    const half =
      'Rnd 2: Ch 3 (counts as dc), dc in next 2 dc, (2 dc, ch 2, 2 dc) in next ch-2 sp, *dc in next 3 dc, 2 dc in next ch-2 sp, dc in next 3 dc, (2 dc, ch 2, 2 dc) in next ch-2 sp; rep from * 2 more times, dc in next 3 dc, 2 dc in next ch-2 sp, join with sl st in top of beg ch-3.';
    expect(tells('corner/count', start(8), half)).toBe(false);
  });

  test('are told where one is lost, in a first round too', () => {
    const lost = round2(3, 'dc in next 3 dc', ', dc in next 3 dc, 4 dc in next ch-2 sp');
    expect(tells('corner/count', start(4), lost)).toBe(true);
  });

  test('of a pentagon have no sides across from each other', () => {
    const uneven =
      'Rnd 2: Ch 3 (counts as dc), dc in next 2 dc, (2 dc, ch 2, 2 dc) in next ch-2 sp, 2 dc in each of next 3 dc, (2 dc, ch 2, 2 dc) in next ch-2 sp, *dc in next 3 dc, (2 dc, ch 2, 2 dc) in next ch-2 sp; rep from * 2 more times, join with sl st in top of beg ch-3.';
    expect(tells('corner/sides', start(5), uneven)).toBe(false);
    expect(tells('corner/sides', start(4), uneven.replace('2 more times', 'once more'))).toBe(true);
  });
});

describe('what each round is said to add', () => {
  test('is held against the round before it in its own part', () => {
    const first = codesOf({ work: ROW_1, border: 'Rnd 1: Ch 1, sc in each st around, each rnd adds 8 sts.' });
    expect(first).not.toContain('row/adds');
  });

  test.each([
    ['You will have 2 more sts every row.', false],
    ["You'll have 3 more sts every row.", true],
    ['Two more stitches in each row.', false],
    ['2 sts less every row.', true],
  ])('also after the row: %s', (said, told) => {
    const row2 = `Row 2: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st, turn. ${said}`;
    expect(codesOf([ROW_1, row2, 'Rows 3-5: Rep Row 2.'].join('\n'))).toEqual(told ? ['row/adds'] : []);
  });
});

describe('a chain at the start of a row', () => {
  const row2 = (start: string) => [ROW_1, `Row 2: ${start} in each st across, turn.`];
  test.each([
    ['chain/twice', 'Ch 1, ch 1, sc', true],
    ['chain/twice', 'Ch 3 (counts as dc), ch 3, dc', false],
    ['chain/twice', 'Ch 1, ch 2, sc', false],
    ['chain/height', 'Ch 5 (counts as dc), dc', true],
    ['chain/height', 'Ch 4 (counts as dc), dc', true],
    ['chain/height', 'Ch 3 (counts as dc), dc', false],
    ['chain/height', 'Ch 2 (counts as dc), dc', false],
    ['chain/height', 'Ch 1 (counts as dc), dc', true],
    ['chain/none', 'Ch 0, sc', true],
    ['chain/none', 'Ch 1, sc', false],
  ])('%s: %s', (code, start, told) => {
    expect(tells(code, ...row2(start))).toBe(told);
  });

  test('of a stitch and a space is as high as both', () => {
    const lines = [
      ROW_1,
      'Row 2: Ch 5 (counts as dc and ch 2), sk next 2 sts, dc in next st, ch 2, sk next 2 sts, dc in next st, ch 2, sk next 2 sts, dc in last st, turn.',
    ];
    expect(tells('chain/height', ...lines)).toBe(false);
  });

  const sc = (n: number, start: string) => `Row ${n}: ${start}sc in each st across, turn.`;
  test.each([
    ['once among rows that have it', true, ['Ch 1, ', '', 'Ch 1, ']],
    ['twice, which is a habit', false, ['Ch 1, ', '', '', 'Ch 1, ']],
    ['where only one other has it', false, ['Ch 1, ', '']],
    [
      'beside it only rows that begin with another stitch',
      false,
      ['Ch 3 (counts as dc), dc in next st, ', 'Ch 3 (counts as dc), dc in next st, ', ''],
    ],
  ])('is missed %s', (_, told, starts) => {
    expect(tells('chain/left-out', ROW_1, ...starts.map((start, i) => sc(i + 2, start)))).toBe(told);
  });

  test('is not missed where the row before ends with it', () => {
    const rows = [
      sc(2, 'Ch 1, '),
      'Row 3: Ch 1, sc in each st across, ch 1, turn.',
      'Row 4: Sc in each st across, turn.',
      sc(5, 'Ch 1, '),
    ];
    expect(tells('chain/left-out', ROW_1, ...rows)).toBe(false);
  });
});

describe('repeated rows', () => {
  const ribs = [
    ROW_1,
    'Row 2: Ch 1, sc in BLO of each st across, turn.',
    'Row 3: Ch 1, sc in each st across, turn.',
  ];
  test.each([
    ['Rows 4-9: Rep Rows 2 and 3.', []],
    ['Rows 4-10: Rep Rows 2 and 3.', ['row/cut-repeat']],
    ['Rows 4-10: Rep Rows 2 and 3, ending with a Row 2.', []],
    ['Rows 4-10: Rep Row 3.', []],
    ['Rows 4-9: Rep Rows 2 and 3 three times.', []],
    ['Rows 4-9: Rep Rows 2 and 3 four times.', ['row/times-differ']],
    ['Rows 4-9: Rep Row 3 5 times.', ['row/times-differ']],
  ])('%s', (line, codes) => {
    expect(codesOf([...ribs, line].join('\n'))).toEqual(codes);
  });
});

describe('a first round along a chain', () => {
  const round = 'Rnd 1: Ch 1, sc in each ch around, join with sl st in first sc.';
  test.each([
    ['is told where it is not joined into a ring', true, ['Ch 24.', round]],
    ['goes round a ring', false, ['Ch 24, join with sl st in first ch to form ring.', round]],
    [
      'goes along both sides',
      false,
      [
        'Ch 11.',
        'Rnd 1: Sc in 2nd ch from hook and in next 8 ch, 3 sc in last ch, working along opposite side of foundation ch, sc in next 8 ch, 2 sc in last ch, join with sl st in first sc.',
      ],
    ],
    [
      'goes into one chain',
      false,
      [
        'Ch 4.',
        'Rnd 1: 11 dc in 4th ch from hook (skipped 3 ch count as dc), join with sl st in top of beg ch.',
      ],
    ],
  ])('%s', (_, told, lines) => {
    expect(tells('row/no-ring', ...lines)).toBe(told);
  });
});
