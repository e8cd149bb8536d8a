/** A mitten worked round from a sideways cuff: its row ends told two ways, chains over the thumb that begin a round, rounds that go on counting. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const MITTEN = `Quay Mitten

US terms
Gauge: 16 sc and 18 rnds = 4"

Cuff
Ch 7.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (6 sc)
Rows 2-20: Ch 1, sc blo in each st across, turn. (6 sc)
Fold the cuff and sl st the last row to the starting chain. Do not fasten off.

Hand
Rnd 1: Ch 1, work 20 sc evenly around the cuff, one in each row end. (20 sc)
Rnd 2: Sc in each st around. (20 sc)
Rnd 3: Ch 4, sk next 5 sts, sc in next 15 sts. (15 sc, 4 ch)
Rnd 4: Sc in next 4 ch, sc in each sc around. (19 sc)
Rnds 5-9: Sc in each st around. (19 sc)

Top
Rnd 10: [Sc2tog] 9 times, sc in next st. (10 sc)
Fasten off.

Thumb
Rnd 1: Join yarn in first skipped st, ch 1, sc in same st, sc in next 4 skipped sts, sc in underside of next 4 ch. (9 sc)
Rnd 2: Sc in each st around. (9 sc)
Fasten off.
`;

const mitten = (changes: Readonly<Record<string, string>> = {}) =>
  workedText(Object.entries(changes).reduce((text, [from, to]) => text.replace(from, to), MITTEN));
const wrong = (codes: readonly string[]) => codes.filter((code) => !code.startsWith('text/'));

const SPREAD = 'work 20 sc evenly around the cuff, one in each row end';
const FIRST = 'in first skipped st, ch 1, sc in same st, sc in next 4 skipped sts';

test('comes out as it states', () => {
  const { codes, rows } = mitten();
  expect(wrong(codes)).toEqual([]);
  expect(rows[0]?.slice(-12)).toEqual([
    ...['Rnd 1: 20', 'Rnd 2: 20', 'Rnd 3: 15', 'Rnd 4: 19'],
    ...[5, 6, 7, 8, 9].map((n) => `Rnd ${n}: 19`),
    ...['Rnd 10: 10', 'Rnd 1: 9', 'Rnd 2: 9'],
  ]);
});

describe('so many in each row end', () => {
  test.each([
    'work 20 sc evenly around the edge, 1 sc in each row end',
    'work 20 sc evenly along the row ends, working 1 in each row',
    '20 sc evenly around the cuff (one in each row end)',
    'work 20 sc evenly around the ribbing, 1 sc into the end of each row',
  ])('%s', (said) => {
    expect(wrong(mitten({ [SPREAD]: said }).codes)).toEqual([]);
    expect(mitten({ [SPREAD]: said.replace('20 sc', '24 sc') }).codes).toContain('count/mismatch');
  });

  test('two in each is another number', () => {
    expect(mitten({ 'one in each row end': 'two in each row end' }).codes).not.toEqual(mitten().codes);
    expect(mitten({ 'one in each row end': '2 in each row end' }).codes).toContain('count/mismatch');
  });
});

describe('chains that begin a round and go over what is skipped', () => {
  test('are counted and worked into', () => {
    expect(mitten({ '(15 sc, 4 ch)': '(15 sc, 5 ch)' }).codes).toContain('count/mismatch');
    expect(mitten({ 'Sc in next 4 ch': 'Sc in next 5 ch' }).codes).not.toEqual(mitten().codes);
  });

  test('one chain is enough in a spiral', () => {
    const one = {
      'Ch 4, sk next 5 sts, sc in next 15 sts. (15 sc, 4 ch)':
        'Ch 1, sk next 2 sts (thumb), sc in next 18 sts. (18 sc, 1 ch)',
      'Sc in next 4 ch,': 'Sc in ch,',
      'next 4 skipped sts, sc in underside of next 4 ch. (9 sc)':
        'next skipped st, sc in underside of ch. (3 sc)',
      'Rnd 2: Sc in each st around. (9 sc)': 'Rnd 2: Sc in each st around. (3 sc)',
    };
    expect(wrong(mitten(one).codes)).toEqual([]);
    expect(mitten({ ...one, '(18 sc, 1 ch)': '(18 sc, 2 ch)' }).codes).toContain('count/mismatch');
  });

  test('where the round below was joined, too long a chain is no turning chain', () => {
    const joined = {
      '(20 sc)\nRnd 2: Sc in each st around. (20 sc)':
        '(20 sc)\nRnd 2: Ch 1, sc in each st around, join with sl st in first sc. (20 sc)',
    };
    const { codes, rows } = mitten({
      ...joined,
      'each row end. (20 sc)': 'each row end, join with sl st in first sc. (20 sc)',
    });
    // The round that goes over it is not joined itself, and that is all there is to say.
    expect(wrong(codes)).toEqual(['row/no-join']);
    expect(rows[0]?.at(-9)).toBe('Rnd 4: 19');
  });

  test('a turning chain before one stitch skipped stays one', () => {
    const { codes } = mitten({
      'Ch 4, sk next 5 sts, sc in next 15 sts. (15 sc, 4 ch)': 'Sc in each st around. (20 sc)',
    });
    expect(codes).toContain('place/not-there');
  });
});

describe('yarn joined in the first of those skipped', () => {
  test.each([
    'in first skipped st at thumb opening, ch 1, sc in same st, sc in next 4 skipped sts',
    'in first skipped gusset st, ch 1, sc in same st, sc in next 4 gusset sts',
    'in first skipped thumb st, sc in next 5 skipped sts',
    'in first skipped st of Rnd 2, ch 1, sc in same st, sc in next 4 sts',
  ])('%s', (said) => {
    expect(wrong(mitten({ [FIRST]: said }).codes)).toEqual([]);
    expect(mitten({ [FIRST]: said, '(9 sc)\nRnd 2': '(10 sc)\nRnd 2' }).codes).toContain('count/mismatch');
    const fewer = said.replace('next 4', 'next 3').replace('next 5', 'next 4');
    expect(wrong(mitten({ [FIRST]: fewer }).codes)).not.toEqual([]);
  });
});

test('rounds that go on under a heading are numbered on from those of their own piece', () => {
  expect(mitten({ 'Rnd 10:': 'Rnd 11:' }).codes).toContain('row/out-of-order');
});

describe('sizes named with what they measure', () => {
  const SIZED = MITTEN.replace('Rows 2-20:', 'Rows 2-20 (24):')
    .replace('work 20 sc', 'work 20 (24) sc')
    .replace('next 15 sts. (15 sc', 'next 15 (19) sts. (15 (19) sc')
    .replace('[Sc2tog] 9 times, sc in next st. (10 sc)', '[Sc2tog] 9 (11) times, sc in next st. (10 (12) sc)')
    .replace(/\((20|19) sc\)/g, (_, n) => `(${n} (${Number(n) + 4}) sc)`);

  test.each([
    'Hand circumference: S (M) 7 (8)"',
    'Foot length: Child (Adult) 18 (22) cm',
    'Finished width – S (M)',
  ])('%s', (line) => {
    const { codes, rows } = workedText(SIZED.replace('US terms', `US terms\n${line}`));
    expect(codes).not.toContain('text/sizes-unnamed');
    expect(wrong(codes)).toEqual([]);
    expect(rows).toHaveLength(2);
  });

  test('what names none stays unnamed', () => {
    const { codes } = workedText(SIZED.replace('US terms', 'US terms\nHand circumference: 7 (8)"'));
    expect(wrong(codes)).not.toEqual([]);
  });
});
