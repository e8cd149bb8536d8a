/** Moments to pause: each kind where it comes, and not where it does not. */

import { describe, expect, test } from 'vitest';
import { LONG_ROW, type PauseKind, pausesOf } from '../../src/teach/pauses.ts';
import { compiledFile, lessonFrom, lessonOf } from './lesson.ts';

const told = (work: string, kind: PauseKind, more = ''): string[] =>
  pausesOf(lessonFrom(work, more))
    .filter((pause) => pause.kind === kind)
    .map(({ label, why }) => `${label}: ${why}`);

const FOUNDATION = 'Ch 14.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\n';
const YARNS =
  'yarn:\n  A: {colour: chalk, weight: 4, fibre: wool}\n  B: {colour: slate, weight: 4, fibre: wool}\n';

test('a long row is one of as many stitches as are named, chains not counted', () => {
  const row = (sc: number): string =>
    `Ch ${sc + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in each st across.`;
  expect(told(row(LONG_ROW - 1), 'long row')).toEqual([]);
  expect(told(row(LONG_ROW), 'long row')).toEqual([
    `Row 1: A long row: ${LONG_ROW} stitches to work.`,
    `Row 2: A long row: ${LONG_ROW} stitches to work.`,
  ]);
  expect(
    told(
      `Ch ${LONG_ROW}.\nRow 1: Dc in 6th ch from hook, [ch 1, sk next ch, dc in next ch] across.`,
      'long row',
    ),
  ).toEqual([]);
});

test('a stitch is new once, and a special one by its own name', () => {
  const work = `${FOUNDATION}Row 2: Ch 1, sc in first st, [sk next 2 sts, shell in next st, sk next 2 sts, sc in next st] twice, turn.
    Row 3: Ch 3 (counts as dc), dc in each st across, turn.
    Row 4: Ch 2 (counts as hdc), hdc in each st across.`;
  expect(told(work, 'new stitch', 'special: {shell: 5 dc in same st}\n')).toEqual([
    'Row 1: The first single crochet.',
    "Row 2: The first shell, a stitch of this pattern's own.",
    'Row 4: The first half double crochet.',
  ]);
});

test('a count is told where it is another than before', () => {
  const work = `${FOUNDATION}Row 2: Ch 1, sc in each st across, turn.\nRow 3: Ch 1, 2 sc in first st, sc in each st across.`;
  expect(told(work, 'count')).toEqual([
    'Row 1: Time to count: 13 stitches.',
    'Row 3: Time to count: 14 stitches.',
  ]);
});

test('a colour changes where the words say it, in the row before', () => {
  const work = `With A, ch 14.\nRow 1: Sc in 2nd ch from hook and in each ch across, change to B in last yo, turn.
    Row 2: With B, ch 1, sc in each st across, turn.\nRow 3: With A, ch 1, sc in each st across.`;
  expect(told(work, 'colour', YARNS)).toEqual([
    'Row 1: The yarn changes to yarn B, slate.',
    'Row 3: The yarn changes to yarn A, chalk.',
  ]);
});

describe('turning and joining', () => {
  test('the first turn is told, and the row that does not turn', () => {
    const work = `${FOUNDATION}Row 2: Ch 1, sc in each st across, turn.\nRow 3: Ch 1, sc in each st across, do not turn.`;
    expect(told(work, 'turn')).toEqual([
      'Row 1: The work is turned for the first time here.',
      'Row 3: The work is not turned here.',
    ]);
  });

  test('the first join is told, and one that goes elsewhere', () => {
    const work = `Rnd 1: Ch 3 (counts as dc), 11 dc in magic ring, join with sl st in top of beg ch-3.
      Rnd 2: Ch 3 (counts as dc), dc in same st, 2 dc in each st around, join with sl st in top of beg ch-3.
      Rnd 3: Ch 1, sc in each st around, join with sl st in first sc.`;
    expect(told(work, 'join')).toEqual([
      'Round 1: The first join, into the beginning chain.',
      'Round 3: The join goes into the first single crochet this time.',
    ]);
  });
});

test('yarn joined with a slip stitch is no join of a round', () => {
  const work = `${FOUNDATION}Fasten off.\nRow 2: Join B with sl st in first st, ch 1, sc in same st, sc in each rem st across.`;
  expect(told(work, 'join', YARNS)).toEqual([]);
});

test('a repeat that ends differently is told, one that does not is not', () => {
  expect(
    told(
      `${FOUNDATION}Row 2: Ch 1, *sc in next st, ch 1, sk next st; rep from * to last st, sc in last st, turn.`,
      'last repeat',
    ),
  ).toEqual(['Row 2: The row ends differently from its repeat.']);
  expect(
    told(
      `${FOUNDATION}Row 2: Ch 1, sc in first st, *ch 1, sk next st, sc in next st; rep from * across, turn.`,
      'last repeat',
    ),
  ).toEqual([]);
});

test('rows alike are one moment', () => {
  expect(told(`${FOUNDATION}Rows 2-7: Ch 1, sc in each st across, turn.`, 'rows alike')).toEqual([
    'Rows 2–7: Time to work rows 2 to 7, 6 of them.',
  ]);
});

test('a marker is placed where the words say so, and where a spiral begins', () => {
  expect(told('Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st around.', 'marker')).toEqual([
    'Round 1: A spiral begins: a marker goes into its first stitch and moves up with every round.',
  ]);
  expect(
    told(
      `${FOUNDATION}Row 2: Ch 1, sc in next 6 sts, place marker in st just made, sc in each st across.`,
      'marker',
    ),
  ).toEqual(['Row 2: A marker to place or move.']);
});

test('where sizes part is told in each of them', () => {
  const basket = compiledFile('patterns/pebble-basket/pattern.yaml');
  const parts = [0, 1].map((size) =>
    pausesOf(lessonOf(basket, size))
      .filter(({ kind }) => kind === 'sizes part')
      .map(({ label, why }) => `${label}: ${why}`),
  );
  expect(parts).toEqual([
    [
      'Round 7: Other sizes have rows before this: 2 rounds in “large”.',
      'Rounds 8–14: The sizes part here: 7 rounds in this size, 9 in “large”.',
    ],
    [
      'Round 7: The sizes part here: 1 round in this size, none in “small”.',
      'Round 8: The sizes part here: 1 round in this size, none in “small”.',
      'Rounds 10–18: The sizes part here: 9 rounds in this size, 7 in “small”.',
    ],
  ]);
});
