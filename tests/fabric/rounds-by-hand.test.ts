import { describe, expect, test } from 'vitest';
import { FLAG, targets } from '../../src/fabric/fabric.ts';
import { fabricOf, feetOf, rowOf, tallyOf } from './work-text.ts';

describe('rings', () => {
  test('stitches in a magic ring all go into it', () => {
    const fabric = fabricOf('Rnd 1: 6 sc in magic ring. (6 sc)');
    expect(feetOf(fabric, 'Rnd 1')).toEqual(Array.from({ length: 6 }, () => 'sc<Rnd 1.mr'));
    expect(fabric.parts[0]).toMatchObject({ shape: 'round', start: 'magic ring' });
  });

  test('stitches in a chain ring go around all its chains', () => {
    const fabric = fabricOf(
      'Ch 4, join with sl st in first ch to form ring.\nRnd 1: Ch 1, 6 sc in ring, join with sl st in first sc. (6 sc)',
    );
    const row = rowOf(fabric, 'Rnd 1');
    // After the ch 1.
    expect([...targets(fabric, row.first + 1)]).toEqual([0, 1, 2, 3]);
    expect(fabric.parts[0]).toMatchObject({ shape: 'round', start: 'chain ring' });
    expect(row).toMatchObject({ stitches: 6, closing: 'joined' });
  });

  test('"6 sc in 2nd ch from hook" does the same job', () => {
    const fabric = fabricOf(
      'Rnd 1: Ch 2, 6 sc in 2nd ch from hook. (6 sc)\nRnd 2: 2 sc in each st around. (12 sc)',
    );
    expect(feetOf(fabric, 'Rnd 1')).toEqual(Array.from({ length: 6 }, () => 'sc<Foundation.ch1'));
    expect(fabric.parts[0]).toMatchObject({ shape: 'round', start: 'chain' });
  });
});

describe('how rounds follow one another', () => {
  test('a spiral goes on over its own first stitch', () => {
    const fabric = fabricOf(
      'Rnd 1: 3 sc in magic ring, do not join. (3 sc)\nRnd 2: 2 sc in each st around. (6 sc)\nRnd 3: Sc in each st around. (6 sc)',
    );
    expect(feetOf(fabric, 'Rnd 2')).toEqual([
      'sc<Rnd 1.1',
      'sc<Rnd 1.1',
      'sc<Rnd 1.2',
      'sc<Rnd 1.2',
      'sc<Rnd 1.3',
      'sc<Rnd 1.3',
    ]);
    expect(fabric.rows.map(({ closing }) => closing)).toEqual(['spiral', 'spiral', 'spiral']);
    expect(fabric.rows.map(({ side }) => side)).toEqual(['RS', 'RS', 'RS']);
  });

  test('a joined round starts in the joined stitch, and the join is not counted', () => {
    const fabric = fabricOf(
      'Rnd 1: 3 sc in magic ring, join with sl st in first sc.\nRnd 2: Ch 1, 2 sc in each st around, join.\nRnd 3: Ch 3 (counts as dc), dc in each st around, join with sl st in top of beg ch-3.',
    );
    expect(feetOf(fabric, 'Rnd 2')[0]).toBe('sc<Rnd 1.1');
    expect(feetOf(fabric, 'Rnd 3')).toEqual([
      'dc<',
      'dc<Rnd 2.2',
      'dc<Rnd 2.3',
      'dc<Rnd 2.4',
      'dc<Rnd 2.5',
      'dc<Rnd 2.6',
    ]);
    expect(fabric.rows.map(({ stitches, closing }) => [stitches, closing])).toEqual([
      [3, 'joined'],
      [6, 'joined'],
      [6, 'joined'],
    ]);
  });

  test('a turned round comes back from the joined stitch, on the other side', () => {
    const fabric = fabricOf(
      'Rnd 1: 4 sc in magic ring, join with sl st in first sc, turn.\nRnd 2: Ch 1, sc in each st around, join with sl st in first sc.',
    );
    expect(feetOf(fabric, 'Rnd 2')).toEqual(['sc<Rnd 1.1', 'sc<Rnd 1.4', 'sc<Rnd 1.3', 'sc<Rnd 1.2']);
    expect(fabric.rows.map(({ side, direction }) => [side, direction])).toEqual([
      ['RS', 'left'],
      ['WS', 'right'],
    ]);
  });

  test('slip stitches that move the yarn along are not counted, and the round starts where they end', () => {
    const fabric = fabricOf(
      'Rnd 1: *2 sc in magic ring, ch 2; rep from * 2 more times, join with sl st in first sc. (6 sc, 3 ch-2 sps)\nRnd 2: Sl st in next sc and in next ch-2 sp, ch 1, 2 sc in same sp, *sc in next 2 sc, 2 sc in next ch-2 sp; rep from * once more, sc in next 2 sc, join with sl st in first sc. (12 sc)',
    );
    const { first } = rowOf(fabric, 'Rnd 2');
    const round1 = rowOf(fabric, 'Rnd 1').first;
    // The ring, then two sc and two chains: the yarn stands at the first sc and goes over the second.
    expect([...targets(fabric, first)]).toEqual([round1 + 2]);
    expect([...targets(fabric, first + 1)]).toEqual([round1 + 3, round1 + 4]);
    expect((fabric.flags[first] ?? 0) & FLAG.travel).not.toBe(0);
    // Two in the first space; its first chain is the round's third stitch. The last two go over the start of round 1.
    expect(feetOf(fabric, 'Rnd 2').filter((foot) => !foot.includes('+'))).toEqual([
      'sc<Rnd 1.3',
      'sc<Rnd 1.4',
      'sc<Rnd 1.5',
      'sc<Rnd 1.6',
      'sc<Rnd 1.1',
      'sc<Rnd 1.2',
    ]);
    expect(feetOf(fabric, 'Rnd 2').slice(0, 2)).toEqual(['sc<Rnd 1.ch1+Rnd 1.ch2', 'sc<Rnd 1.ch1+Rnd 1.ch2']);
  });

  test('new yarn joined in a space starts the round there', () => {
    const fabric = fabricOf({
      work: 'Rnd 1: With A, *2 sc in magic ring, ch 2; rep from * 2 more times, join with sl st in first sc.\nFasten off A.\nRnd 2: Join B with sl st in any ch-2 sp, ch 1, 2 sc in same sp, *sc in next 2 sc, 2 sc in next ch-2 sp; rep from * once more, sc in next 2 sc, join with sl st in first sc. (12 sc)',
      yarns: 'AB',
    });
    expect(feetOf(fabric, 'Rnd 2')[2]).toBe('sc<Rnd 1.3');
    const row = rowOf(fabric, 'Rnd 2');
    expect([...fabric.yarn.slice(row.first, row.end)].every((yarn) => fabric.yarns[yarn] === 'B')).toBe(true);
    expect([...fabric.yarn.slice(0, row.first)].every((yarn) => fabric.yarns[yarn] === 'A')).toBe(true);
  });
});

describe('squares', () => {
  // Round n of a granny square has 4 corners of 6 dc and 4(n - 2) clusters of 3 between them.
  const granny = `Ch 4, join with sl st in first ch to form ring.
Rnd 1: Ch 3 (counts as dc here and throughout), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times, join with sl st in top of beg ch-3. (12 dc, 4 ch-2 sps)
Rnd 2: Sl st in next 2 dc and in next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * 2 more times, join with sl st in top of beg ch-3. (24 dc, 4 ch-2 sps, 4 ch-1 sps)
Rnd 3: Sl st in next 2 dc and in next ch-2 sp, ch 3, (2 dc, ch 2, 3 dc) in same sp, ch 1, *[3 dc in next ch-1 sp, ch 1] to next corner, (3 dc, ch 2, 3 dc) in next corner ch-2 sp, ch 1; rep from * 2 more times, [3 dc in next ch-1 sp, ch 1] around, join with sl st in top of beg ch-3. (36 dc, 4 ch-2 sps, 8 ch-1 sps)
Rnds 4-6: Rep Rnd 3. (72 dc, 4 ch-2 sps, 20 ch-1 sps)`;
  test('a granny square gains three clusters a side for every round', () => {
    const fabric = fabricOf(granny);
    for (const n of [2, 3, 4, 5, 6]) {
      const row = rowOf(fabric, `Rnd ${n}`);
      expect(row.stitches).toBe(12 * n);
      expect(row.bySpace).toEqual({ 1: 4 * (n - 1), 2: 4 });
    }
    expect(fabric.parts[0]).toMatchObject({ shape: 'round', start: 'chain ring', corners: 4 });
  });

  test('a square of clusters, begun with a beginning cluster that counts as one', () => {
    const fabric = fabricOf({
      work: `Ch 5, join with sl st in first ch to form ring.
Rnd 1: Beg cl in ring, ch 2, *cl in ring, ch 2; rep from * 6 more times, join with sl st in first cl. (8 cl, 8 ch-2 sps)
Rnd 2: Sl st in next ch-2 sp, (beg cl, ch 3, cl) in same sp, ch 2, cl in next ch-2 sp, ch 2, *(cl, ch 3, cl) in next ch-2 sp, ch 2, cl in next ch-2 sp, ch 2; rep from * 2 more times, join with sl st in first cl. (12 cl, 4 ch-3 sps, 8 ch-2 sps)`,
      special: ['beg cl: ch 2, dc2tog in same sp', 'cl: dc3tog in same sp'],
    });
    expect(rowOf(fabric, 'Rnd 1')).toMatchObject({
      stitches: 8,
      groups: { cl: 8 },
      byStitch: { dc2tog: 1, dc3tog: 7 },
    });
    expect(tallyOf(fabric, 'Rnd 2')).toBe('1 dc2tog, 11 dc3tog, 12 cl, 8 ch-2 sp, 4 ch-3 sp');
  });

  test('three sc in each corner add two a side, and the corner is the middle one', () => {
    const fabric =
      fabricOf(`Rnd 1: *Sc in magic ring, 3 sc in magic ring; rep from * 3 more times, join with sl st in first sc. (16 sc)
Rnd 2: Ch 1, sc in next 2 sts, [3 sc in next st, sc in next 3 sts] 3 times, 3 sc in next st, sc in next st, join with sl st in first sc. (24 sc)
Rnd 3: Ch 1, sc in each st around, join with sl st in first sc. (24 sc)`);
    expect(feetOf(fabric, 'Rnd 2').slice(2, 5)).toEqual(['sc<Rnd 1.3', 'sc<Rnd 1.3', 'sc<Rnd 1.3']);
  });
});
