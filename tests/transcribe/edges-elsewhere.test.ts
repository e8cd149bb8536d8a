/** Edges of what is not worked here: a towel's hem, the neck and armholes of pieces sewn together, squares with seams between. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const onTowel = (join: string, row: string, second = '(97 dc)') =>
  workedText(
    [
      'Towel Edging',
      'UK terms.',
      '4 ply cotton, 50 g',
      '2.5 mm hook',
      '',
      'EDGING',
      `${join}.`,
      `1. 1ch, ${row}, turn. (97 dc)`,
      `2. 1ch, 1 dc in each dc to end. ${second}`,
    ].join('\n'),
  );

describe('on a thing that is no crochet', () => {
  test.each([
    [
      'With RS of the towel facing, join yarn with ss at the right-hand end of one short side',
      'work 97 dc evenly along the hem',
    ],
    [
      'With right side of the fabric facing, join yarn with ss to corner of hem',
      '97 dc evenly across the hem of the towel',
    ],
    ['Join yarn with a ss at one end of the pillowcase', 'work 97 dc along the edge of the pillowcase'],
    [
      'With RS facing, join yarn with ss in any corner of the handkerchief',
      'work 97 dc evenly spaced down one side of the handkerchief',
    ],
    ['Join yarn with ss to the right-hand corner of the tea-towel', 'work 97 dc evenly into the tea-towel'],
  ])('%s: %s', (join, row) => {
    const { codes, rows } = onTowel(join, row);
    expect(codes).toEqual(['count/not-checked']);
    expect(rows).toEqual([['Row 1: 97', 'Row 2: 97']]);
    expect(onTowel(join, row.replace('97', '98')).codes).toContain('count/mismatch');
    expect(onTowel(join, row, '(96 dc)').codes).toContain('count/mismatch');
  });

  test('where it is not said how many there are, that is told', () => {
    expect(onTowel('Join yarn with ss to the hem', 'work dc evenly along the hem').messages).toContain(
      'how many stitches go "dc evenly along the hem" is left to the maker',
    );
  });

  test('an edge of the work itself is no such thing', () => {
    expect(onTowel('Join yarn with ss to the hem', 'work 97 dc evenly along row ends').codes).toContain(
      'place/no-edge',
    );
  });
});

const vest = (round: string, count = 48, second = count) =>
  workedText(
    [
      'Vest',
      'US terms. Ch 1 and ch 2 do not count as a st.',
      'DK weight yarn, 200 g',
      '',
      'BACK',
      'Ch 42.',
      'Row 1: Hdc in 3rd ch from hook and in each ch across. (40 hdc)',
      'Row 2: Ch 2, turn, hdc in each st across. (40 hdc)',
      'Fasten off.',
      '',
      'ASSEMBLY',
      'Sew the shoulder and side seams.',
      '',
      'ARMHOLE EDGING',
      'With RS facing, join yarn with sl st at the underarm.',
      `Round 1: ${round}, join with sl st in first sc. (${count} sc)`,
      `Round 2: Ch 1, sc in each st around, join with sl st in first sc. (${second} sc)`,
      'Fasten off.',
    ].join('\n'),
  );

describe('on pieces put together', () => {
  test.each([
    ['Ch 1, work 48 sc evenly around the armhole', '48'],
    ['Ch 1, 48 sc evenly spaced around the armhole edge', '48'],
    ['Ch 1, sc in same st as joining, work 47 sc evenly around the armhole', '47'],
    [
      'Ch 1, work 24 sc up the front armhole, sc in shoulder seam, work 23 sc down the back armhole to the underarm',
      '24',
    ],
    [
      'Ch 1, sc in next 20 sts of the back neck, work 8 sc down the left front neck, sc in next 12 sts of the front neck, work 8 sc up the right front neck',
      '20',
    ],
    ['Ch 1, *sc in next 15 sts of the neck edge, sc in next seam; rep from * 2 more times', '15'],
  ])('%s', (round, n) => {
    const { codes, rows } = vest(round);
    expect(codes.filter((code) => code !== 'count/not-checked')).toEqual([]);
    expect(rows[0]?.slice(-2)).toEqual(['Round 1: 48', 'Round 2: 48']);
    expect(vest(round.replace(n, String(Number(n) + 1))).codes).toContain('count/mismatch');
    expect(vest(round, 48, 47).codes).toContain('count/mismatch');
  });

  test('a stitch that stands at a seam belongs to the round', () => {
    expect(vest('Join yarn with sc at the underarm, work 47 sc evenly around the armhole').codes).toContain(
      'phrase/unread',
    );
  });
});

const tote = (round: string, stated = 84) =>
  workedText(
    [
      'Tote',
      'US terms.',
      'MC: navy, worsted',
      '',
      'SQUARE (Make 12)',
      'With MC, ch 4, join with sl st in first ch to form a ring.',
      'Round 1: Ch 1, *3 sc in ring, ch 2; rep from * 3 more times, join with sl st in first sc. (12 sc, 4 ch-2 sps)',
      'Fasten off.',
      '',
      'JOINING',
      'Sew the squares together.',
      '',
      'TOP BAND',
      'With RS facing, join MC with sl st in first sc of any square along the top edge.',
      `Round 1: ${round}, join with sl st in first sc. (${stated} sc)`,
      'Rounds 2-3: Ch 1, sc in each st around, join with sl st in first sc. (84 sc)',
    ].join('\n'),
  );

test.each([
  'Ch 1, *sc in next 13 sc of square, sc in seam; rep from * 5 more times',
  'Ch 1, [sc in each of next 13 sts across square, sc in next seam] 6 times',
  'Ch 1, *sc in next 12 sc of the square, 2 sc in seam; rep from * around 5 more times'.replace(
    ' around',
    '',
  ),
])('%s', (round) => {
  const { codes, rows } = tote(round);
  expect(codes.filter((code) => code !== 'count/not-checked')).toEqual([]);
  expect(rows[0]?.slice(-3)).toEqual(['Round 1: 84', 'Round 2: 84', 'Round 3: 84']);
  expect(tote(round, 78).codes).toContain('count/mismatch');
  expect(tote(round.replace(/1[23]/, '11')).codes).toContain('count/mismatch');
  expect(tote(round.replace('seam', 'sel')).codes).not.toEqual(codes);
});

const blanket = (round: string, total = 104) =>
  workedText(
    [
      'Blanket',
      'UK terms. 1 ch does not count as a st.',
      'Aran yarn: A green, 100 g',
      '',
      'BLANKET',
      'With A, make 21 ch.',
      'Row 1: 1 dc in 2nd ch from hook and in each ch to end, turn. (20 dc)',
      'Rows 2-28: 1 ch, 1 dc in each dc to end, turn. (20 dc)',
      'Fasten off.',
      '',
      'BORDER',
      'With RS facing, join A with ss in top right corner.',
      `Round 1: 1 ch, ${round}, ss in first dc. (${total} dc)`,
    ].join('\n'),
  ).codes;

test.each([
  '*3 dc in corner, work 18 dc evenly along short edge, 3 dc in corner, work 28 dc evenly along long edge; rep from * once more',
  '*3 dc in corner, 18 dc evenly along shorter edge to next corner, 3 dc in corner, 28 dc evenly along the longer edge; rep from * once more',
])('%s', (round) => {
  expect(blanket(round)).toEqual([]);
  expect(blanket(round, 106)).toContain('count/mismatch');
  expect(blanket(round.replace('28', '29'))).toContain('count/mismatch');
});
