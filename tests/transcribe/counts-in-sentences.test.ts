/** Counts told in a sentence, and what is said to the maker between them. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const SC = 'Ch 1, sc in each st across, turn.';
const cloth = (...rows: readonly string[]) =>
  workedText(
    `Cloth\nUS terms\nHook: 5 mm\n\nCLOTH\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\n${rows.join('\n')}\n`,
  ).codes;

describe('a row is counted by what a sentence says', () => {
  test.each([
    'Still 20 sts.',
    'You still have 20 sc.',
    "That's 20 sc.",
    'So that makes 20 sts in all.',
    "You'll have 20 sc.",
    'You should count 20 sts.',
    '20 sc, 10 on each side of the center st.',
  ])('%s', (said) => {
    expect(cloth(`Row 2: ${SC} ${said}`)).toEqual([]);
    expect(cloth(`Row 2: ${SC} ${said.replace('20', '21')}`)).not.toEqual([]);
  });

  test('its half told again has to be its half', () => {
    expect(cloth(`Row 2: ${SC} (20 sc, 9 on each side of the center)`)).not.toEqual([]);
  });

  test('and of a row on the way', () => {
    const rows = (n: number) => `Rows 2-6: ${SC} So you end Row 4 with ${n} sts.`;
    expect(cloth(rows(20))).toEqual([]);
    expect(cloth(rows(19))).toEqual(['count/mismatch']);
  });
});

describe('a count behind an equals sign ends its row', () => {
  const tub = (end: string, last = '12') =>
    workedText(
      `Tub\nUS terms\nHook: 5 mm\n\nTUB\nWorked in a spiral.\nRnd 1 - 6 sc in magic ring = 6 sc\nRnd 2 - 2 sc in each st around = 12 sc\nRnd 3 - sc in each st around. This makes the base sit flat = ${last} sc\n${end}\n`,
    ).codes;

  test.each([
    'Sl st in next 2 sts, cut the yarn and pull through.',
    'Sl st in next 2 sts, break yarn and draw it through the last loop.',
    'Sl st in next 2 sts and finish off in the same way.',
    'Sl st in next st, end off.',
  ])('%s', (end) => {
    expect(tub(end)).toEqual([]);
    expect(tub(end, '13')).toEqual(['count/mismatch']);
    expect(tub(end.replace('Sl st', 'Sc'))).toEqual(['row/unworked']);
  });

  test('spaces with their length among what is counted', () => {
    const loops = (n: number) =>
      cloth(
        `Row 2: Ch 1, sc in next 7 sts, ch 6, sk next 6 sts, sc in next 7 sts = 14 sc and 1 loop of ${n} ch`,
      );
    expect(loops(6)).toEqual([]);
    expect(loops(5)).toEqual(['count/mismatch']);
  });
});

describe('how far a repeat goes', () => {
  const mesh = (far: string) =>
    cloth(
      'Row 2: Ch 1, sc in first st, *ch 1, skip next st, sc in next st; rep from * to last st, sc in last st, turn. (11 sc, 9 ch-1 sps)',
      `Row 3: Ch 1, sc in first 2 sc, *ch 1, skip next ch-1 sp, sc in next sc; rep from * ${far}, turn. 11 sc, plus 9 ch-1 sps`,
    );
  test.each([
    'across 9 times in all',
    'across 9 times',
    'until 1 ch-1 sp is left, ch 1, skip ch-1 sp, sc in last sc',
    'until there is only 1 sc left, ch 1, skip ch-1 sp, sc in last sc',
    'until 1 sc is left, ch 1, skip ch-1 sp, sc in last sc',
  ])('%s', (far) => {
    expect(mesh(far)).toEqual([]);
  });

  test.each([
    'across 8 times in all',
    'across 10 times',
    'until 2 ch-1 sps are left, ch 1, skip ch-1 sp, sc in last sc',
    'until 2 sc are left, ch 1, skip ch-1 sp, sc in last sc',
  ])('but not %s', (far) => expect(mesh(far)).not.toEqual([]));
});

describe('chains that are skipped first count as it is said', () => {
  const first = (row: string) =>
    workedText(`Cloth\nUS terms\nHook: 5 mm\n\nCLOTH\nCh 12.\nRow 1: ${row}\n`).codes;
  test.each([
    'Skip first 3 ch (counts as a dc), dc in 4th ch from hook and in each ch across. 10 dc',
    'Skip first 3 ch (counts as dc), (dc, ch 1, dc) in 4th ch from hook, dc in each ch across. 11 dc',
    'Beginning in 2nd ch from hook, *sl st in next ch, dc in next ch; repeat from * to last ch, dc in last ch. 6 dc',
    'Start in 2nd ch from hook: *dc in next ch, sl st in next ch; rep from * to last ch, dc in last ch. 6 dc',
    'Skip first 3 ch (does not count as a st), dc in 4th ch from hook and in each ch across. 9 dc',
  ])('%s', (row) => {
    expect(first(row)).toEqual([]);
    expect(first(row.replace(/\d+ dc$/, '12 dc'))).toEqual(['count/mismatch']);
  });

  test('more than one before a repeat leave open what they stand for', () => {
    const row = 'Beginning in 4th ch from hook, *dc in next ch; repeat from * across. 9 dc';
    expect(first(row)).toEqual(['phrase/unread']);
  });
});

describe('rows are repeated until so many are worked', () => {
  test.each(['you have worked 9 rows in all', 'there are 9 rows in all', '9 rows have been worked'])(
    'until %s',
    (until) => {
      expect(cloth(`Row 2: ${SC}`, `Repeat Row 2 until ${until}. (20 sc)`)).toEqual([]);
      expect(cloth(`Row 2: ${SC}`, `Repeat Row 2 until ${until}. (21 sc)`)).toEqual(['count/mismatch']);
    },
  );
});

describe('what is only said is a note', () => {
  test.each([
    'This stops the edge stretching.',
    'The chain 1 and single crochet make the first corner.',
    'Fasten off, no need to stuff.',
    'Take 4 strands for each tassel, fold them and knot them in the first st and in every 4th st after that.',
  ])('%s', (said) => expect(cloth(`Row 2: ${SC} ${said}`)).toEqual([]));

  test.each([
    'This is followed by 5 sc in each st.',
    'The chain 1 and single crochet make the first corner, 5 sc in next st.',
    'No need to sc in each st across.',
    'Take 4 strands and sc in each st across.',
  ])('but not %s', (said) => expect(cloth(`Row 2: ${SC} ${said}`)).not.toEqual([]));
});

describe('chains told in short', () => {
  const dc = (first: string, stated: number) =>
    workedText(
      `Cloth\nUS terms\nHook: 5 mm\n\nCLOTH\nCh 22.\nRow 1: Dc in 4th ch from hook (${first}) and in each ch across, turn. (${stated} dc)\n`,
    ).codes;
  test.each(['skipped 3 ch = first dc', 'skipped 3 ch = 1 dc', 'the 3 skipped ch count as a dc'])(
    '%s',
    (said) => {
      expect(dc(said, 20)).toEqual([]);
      expect(dc(said, 19)).toEqual(['count/mismatch']);
    },
  );

  test('what the chain of a row is for', () => {
    const net = (stated: string) =>
      cloth(
        `Row 2: 4 ch (for 1 dc and 1 ch), sk 1 sc, *dc in next sc, ch 1, sk 1 sc; rep from * to last sc, dc in last sc. (${stated})`,
      );
    expect(net('11 dc, 9 ch-1 sps')).not.toEqual([]);
    expect(
      cloth(
        'Row 2: Ch 4 (for 1 dc and 1 ch), sk next sc, dc in next sc, *ch 1, sk next sc, dc in next sc; rep from * to last sc, dc in last sc. (11 dc, 9 ch-1 sps)',
      ),
    ).not.toContain('phrase/unread');
  });
});

describe('slip stitches to where a round begins', () => {
  const star = (travel: string, stated = '24 sc, 6 ch-5 points') =>
    workedText(
      `Star\nUS terms\nHook: 2 mm\n\nSTAR\nCh 6, join with sl st in first ch to form ring.\nRnd 1: Ch 1, *(sc, dc, ch 3, dc, sc) in ring; rep from * 5 more times, join with sl st in first sc. (12 sc, 12 dc, 6 ch-3 sps)\nRnd 2: ${travel}, ch 1, *(2 sc, ch 5, 2 sc) in ch-3 sp; rep from * 5 more times, join with sl st in first sc. (${stated})\nRnd 3: Sl st in next sc and in ch-5 point, ch 1, *(2 sc, ch 3, 2 sc) in ch-5 point, ch 5; rep from * 5 more times, join with sl st in first sc. (24 sc, 6 ch-3 points, 6 ch-5 sps)\n`,
    ).codes;
  test('in a list of places', () => {
    expect(star('Sl st in next dc and in ch-3 sp')).toEqual([]);
    expect(star('Sl st in next dc, in next ch-3 sp')).toEqual([]);
  });

  test('points are spaces of their chains', () => {
    expect(star('Sl st in next dc and in ch-3 sp', '24 sc, 5 ch-5 points')).toContain('count/mismatch');
    expect(star('Sl st in next dc and in ch-3 sp', '24 sc, 3 ch-5 points, 3 ch-5 sps')).toEqual([]);
  });
});

test('a picot is closed in the stitch just made', () => {
  const edge = (n: number) =>
    cloth(
      `Row 2: Ch 1, *sc in next st, ch 3, sl st in sc just made, sc in next st; rep from * across. (20 sc, ${n} picots)`,
    );
  expect(edge(10)).toEqual([]);
  expect(edge(9)).toEqual(['count/mismatch']);
});

test('a stitch round the post of one of an earlier round is named by its short label', () => {
  const rose = (row: string) =>
    workedText(
      `Rose\nUS terms\nHook: 3 mm\n\nROSE\nCh 5, join with sl st in first ch to form a ring.\nR1. Ch 1, *sc in ring, ch 3; rep from * 4 more times, join with sl st in first sc. (5 sc, 5 ch-3 sps)\nR2. Ch 1, *(sc, hdc, 3 dc, hdc, sc) in next ch-3 sp; rep from * 4 more times, join with sl st in first sc. (5 petals)\nR3. Ch 1, *BPsc around next sc of ${row}, ch 5; rep from * 4 more times, join with sl st in first BPsc. (5 BPsc, 5 ch-5 sps)\n`,
    ).codes;
  expect(rose('R1')).toEqual([]);
  expect(rose('R2')).not.toEqual([]);
});
