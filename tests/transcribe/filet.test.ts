/** Filet as patterns write it: what a space and a block are, told in many ways, and rows told in squares. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const RUNNER = `Little Runner

US terms
Yarn: white, 2 x 50g balls (300m)
Hook: 1.5 mm

Abbreviations: ch - chain; dc - double crochet; sp - space; bl - block; st - stitch; sk - skip; rep - repeat

Space (sp): ch 2, sk next 2 sts, dc in next dc.
Block (bl): dc in each of next 2 sts (or 2 dc in ch-2 sp), dc in next dc.

Every row begins with ch 5, which counts as the first dc and the ch 2 of the first sp.

RUNNER
Ch 26.
Row 1: Dc in 8th ch from hook (1 sp), *ch 2, sk 2 ch, dc in next ch; rep from * across, turn. (7 sps)
Row 2: 7 sp, turn.
Row 3: 3 sp, 1 bl, 3 sp, turn.
Row 4: 2 sp, 3 bl, 2 sp, turn. (4 sps, 3 bl)
Row 5: Ch 5, sk first dc, dc in next dc, 2 sp, 1 bl, 3 sp, turn.
Row 6: As Row 2.
Fasten off.
`;

const changed = (from: string, to: string) => {
  expect(RUNNER).toContain(from);
  return workedText(RUNNER.replace(from, to));
};

test('squares go over spaces and over blocks, and share their posts', () => {
  const { codes, rows } = workedText(RUNNER);
  expect(codes).toEqual([]);
  expect(rows[0]?.slice(1)).toEqual([
    'Row 1: 8',
    'Row 2: 8',
    'Row 3: 10',
    'Row 4: 14',
    'Row 5: 10',
    'Row 6: 8',
  ]);
});

const SPACE = 'Space (sp): ch 2, sk next 2 sts, dc in next dc.';
const BLOCK = 'Block (bl): dc in each of next 2 sts (or 2 dc in ch-2 sp), dc in next dc.';

describe('told as', () => {
  test.each([
    [BLOCK, 'Bl: dc in next 3 dc.'],
    [BLOCK, 'Bl: 3 dc over bl or 2 dc in ch-2 sp, dc in next dc.'],
    [BLOCK, 'Block (bl) = 2 dc in next ch-2 sp (or dc in next 2 dc), dc in next dc.'],
    [BLOCK, 'Bl over sp: 2 dc in sp, dc in next dc.\nBl over bl: dc in next 3 dc.'],
    [SPACE, 'Sp: ch 2, skip 2 ch or 2 dc, dc in next dc.'],
    [SPACE, 'Sp over sp: ch 2, dc in next dc.\nSp over bl: ch 2, sk 2 dc, dc in next dc.'],
    [
      `${SPACE}\n${BLOCK}`,
      'A space is ch 2, skip 2 sts, dc in next dc. A block is 3 dc: dc in each of next 2 dc (or 2 dc in the space), dc in next dc. Two blocks side by side are 6 dc.',
    ],
    ['3 sp, 1 bl, 3 sp', '3 sps, 1 bl, 3 sps'],
    ['2 sp, 3 bl, 2 sp', '2 spaces, 3 blocks, 2 spaces'],
    [
      'ch 5, which counts as the first dc and the ch 2 of the first sp',
      'a sp, thus: ch 5 (this is the dc and ch 2), sk first dc, dc in next dc',
    ],
    // Over a block as well, as the count it states for Row 2 tells.
    [
      'Row 2: 7 sp, turn.',
      'Row 2: Ch 5, sk first dc, dc in next dc, *ch 2, dc in next dc; rep from * across, turn. (7 sps)',
    ],
  ])('%s: %s', (from, to) => expect(changed(from, to).codes).toEqual([]));
});

describe('told where', () => {
  test.each([
    ['a row has a square too few', '3 sp, 1 bl, 3 sp', '3 sp, 1 bl, 2 sp', 'row/unworked'],
    ['a row has a square too many', '3 sp, 1 bl, 3 sp', '3 sp, 1 bl, 4 sp', 'row/used-up'],
    ['a count is wrong', '(4 sps, 3 bl)', '(4 sps, 2 bl)', 'count/mismatch'],
    ['spaces are counted wrong', '(4 sps, 3 bl)', '(5 sps, 3 bl)', 'count/mismatch'],
    ['a square is no square', 'sk next 2 sts, dc in next dc', 'sk next 3 sts, dc in next dc', 'row/used-up'],
    ['a block is wider than a space', '(or 2 dc in ch-2 sp)', '(or 3 dc in ch-3 sp)', 'text/special-unread'],
    [
      'a row begins with a block and nothing is said of its chain',
      'Row 3: 3 sp, 1 bl, 3 sp',
      'Row 3: 1 bl, 6 sp',
      'chain/unstated',
    ],
  ])('%s', (_, from, to, code) => expect(changed(from, to).codes).toContain(code));
});

test('a row with a square too few is told once, whatever is worked on it', () => {
  expect(changed('3 sp, 1 bl, 3 sp', '3 sp, 1 bl, 2 sp').codes).toEqual(['row/unworked']);
  expect(changed('3 sp, 1 bl, 3 sp', '3 sp, 2 bl, 3 sp').codes).toEqual(['row/used-up']);
});

test('rows in a table of two columns are rows, and a list set with dots is a list', () => {
  const table = RUNNER.replace(
    /Abbreviations:.*/,
    'ch ... chain      dc ... double crochet\nsp ... space      bl ... block      st ... stitch\nsk ... skip      rep ... repeat',
  )
    .replace('Row 1:', 'Row | Work\n--- | ---\nRow 1:')
    .replace(/^Row (\d):/gm, '$1 |');
  expect(workedText(table).codes).toEqual([]);
  expect(workedText(table).rows).toEqual(workedText(RUNNER).rows);
});

describe('a first square of its own', () => {
  const begun = RUNNER.replace(/Every row begins.*\n/, '')
    .replace('Block (bl)', 'Beg sp: ch 5 (counts as dc and ch 2), sk next 2 sts, dc in next dc.\nBlock (bl)')
    .replace('7 sp, turn', 'Beg sp, 6 sp, turn')
    .replace('3 sp, 1 bl, 3 sp', 'beg sp, 2 sps, 1 bl, 3 sps')
    .replace('2 sp, 3 bl, 2 sp, turn. (4 sps', 'Beg sp, 1 sp, 3 bl, 2 sp, turn. (4 sps');

  test.each([
    ['beg sp, 2 sps', 'beg sp, 2 sps'],
    ['sk next 2 sts, dc', 'sk next 2 sts (two dc or one ch-2), dc'],
    ['(counts as dc and ch 2)', 'which counts as 1 dc and ch 2'],
    ['beg sp, 2 sps, 1 bl, 3 sps, turn', 'beg bl, 6 sps, turn'],
  ])('%s: %s', (from, to) => {
    const block = 'Beg bl: ch 3 (counts as dc), dc in next 3 sts.\nBlock (bl)';
    const text = begun.replaceAll(from, to).replace('Block (bl)', to.includes('bl') ? block : 'Block (bl)');
    expect(workedText(text).codes).toEqual([]);
  });

  test('begins a row, and nothing else', () => {
    expect(workedText(begun.replace('2 sps, 1 bl', '1 sp, beg sp, 1 bl')).codes).toContain('row/used-up');
    expect(workedText(begun.replace('beg sp, 2 sps', '2 sps')).codes).toContain('row/unworked');
    expect(workedText(begun.replace('ch 5 (counts', 'ch 6 (counts')).codes).not.toEqual([]);
  });
});

describe('a border goes round the squares at the edges, the row ends and the first row from below', () => {
  // 7 squares across and 6 rows: 4 at the corners and 18 between them.
  const bordered = (border: string) =>
    workedText(
      RUNNER.replace(
        'dc - double',
        'sc - single crochet; sl st - slip stitch; rnd - round; dc - double',
      ).replace('Fasten off.', `\nEDGING\n${border}\nFasten off.`),
    );

  test.each([
    'Turn, ch 1, and work in sc all round, thus: 7 sc into each corner sp, 3 sc into every other sp round the four sides, sl st to first sc. 82 sc.',
    'Rnd 1: 7 sc into the corner sp, 3 sc into each sp along the side to the next corner; continue thus round all four sides, sl st into first sc. (82 sc)',
    'Rnd 1: Ch 1, 3 sc in each sp across the ends and along both sides, 7 sc in each of the 4 corner sps, join with sl st in first sc. (82 sc)',
    'Rnd 1: Ch 1, *7 sc in next corner sp, 3 sc in each sp to next corner; rep from * around, join with sl st in first sc. (82 sc)',
  ])('%s', (border) => {
    expect(bordered(border).codes).toEqual([]);
    expect(bordered(border.replace('82', '83')).codes).toContain('count/mismatch');
    expect(bordered(border.replace('7 sc', '6 sc')).codes).toContain('count/mismatch');
  });
});
