import { describe, expect, test } from 'vitest';
import type { Piece } from './work-text.ts';
import { faultsOf } from './work-text.ts';

/** What is said of the last row's count, other faults left aside. */
function said(work: string, piece: Omit<Piece, 'work'> = {}): readonly string[] {
  return faultsOf({ ...piece, work }).filter((fault) => fault.startsWith('count/'));
}

function wrong(row: string, makes: string, stated: string): string[] {
  return [`count/mismatch: ${row} makes ${makes}, but ${stated} stated`];
}

const RING = 'Ch 4, join with sl st in first ch to form ring.\n';
const FIRST =
  'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, [3 dc in ring, ch 2] 3 times, join with sl st in top of ch-3.';
const SECOND = `${FIRST}\nRnd 2: Sl st in next 2 dc and in ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * around, join with sl st in top of ch-3.`;

describe('stitches in one place are counted by their groups', () => {
  test.each([
    [`${FIRST} (4 groups of 3 dc)`, []],
    [`${FIRST} (4 3-dc groups)`, []],
    [`${FIRST} (4 3-dc groups, 4 ch-2 sps)`, []],
    [`${FIRST} (12 dc; 4 groups)`, []],
    [`${FIRST} (4 clusters of 3 dc)`, []],
    [`${FIRST} (5 groups of 3 dc)`, wrong('Rnd 1', '4 groups of 3 dc', '5 is')],
    [`${FIRST} (4 groups of 4 dc)`, wrong('Rnd 1', '0 groups of 4 dc', '4 is')],
    [`${FIRST} (4 groups of 3 tr)`, wrong('Rnd 1', '0 groups of 3 tr', '4 is')],
    // The round begins in a space, and a corner has two groups.
    [`${SECOND} (8 3-dc groups, 4 ch-2 corner sps, 4 ch-1 sps)`, []],
    [`${SECOND} (4 3-dc groups)`, wrong('Rnd 2', '8 groups of 3 dc', '4 is')],
  ])('%s', (rounds, faults) => {
    expect(said(RING + rounds)).toEqual(faults);
  });

  test('a stitch of three legs is a cluster of three', () => {
    const work = `${RING}Rnd 1: Ch 2 (does not count as a st), [3-dc cl in ring, ch 2] 6 times, join with sl st in first st.`;
    expect(said(`${work} (6 clusters of 3 dc)`)).toEqual([]);
    expect(said(`${work} (5 clusters of 3 dc)`)).toEqual(wrong('Rnd 1', '6 clusters of 3 dc', '5 is'));
  });
});

describe('stitches of several legs are counted by the one word for them', () => {
  const round = (stitch: string) =>
    `${RING}Rnd 1: Ch 2 (does not count as a st), [${stitch} in ring, ch 2] 6 times, join with sl st in first st.`;
  test.each([
    ['3-dc cl', '6 cl', []],
    ['3-dc cl', '6 clusters, 6 ch-2 sps', []],
    ['3-dc cl', '5 cl', wrong('Rnd 1', '6 clusters', '5 is')],
    ['5-dc popcorn', '6 popcorns', []],
    ['5-dc popcorn', '6 pc', []],
    ['5-dc popcorn', '7 pc', wrong('Rnd 1', '6 popcorns', '7 is')],
    ['3-dc cl', '6 popcorns', wrong('Rnd 1', '0 popcorns', '6 is')],
    ['dc3tog', '6 bobbles', []],
    ['dc3tog', '7 bobbles', wrong('Rnd 1', '6 bobbles', '7 is')],
    ['4-dc bobble', '5 bobbles', wrong('Rnd 1', '6 bobbles', '5 is')],
    ['3-hdc puff', '6 puff sts', []],
    ['3-hdc puff', '1 puff', wrong('Rnd 1', '6 puffs', '1 is')],
    ['2 dc', '6 puffs', wrong('Rnd 1', '0 puffs', '6 is')],
  ])('%s: %s', (stitch, stated, faults) => {
    expect(said(`${round(stitch)} (${stated})`)).toEqual(faults);
  });

  test('with the first of them written out', () => {
    const begun = (n: number) =>
      `${RING}Rnd 1: Ch 2, dc2tog in ring, ch 2, [3-dc cl in ring, ch 2] 5 times, join with sl st in first st. (${n} cl)`;
    expect(said(begun(6))).toEqual([]);
    expect(said(begun(5))).toEqual([]);
    expect(said(begun(7))).toEqual(wrong('Rnd 1', '5 clusters', '7 is'));
  });
});

describe('petals are counted by their brackets', () => {
  const petals =
    'Rnd 1: 6 sc in magic ring, join with sl st in first sc. (6 sc)\nRnd 2: *(sl st, ch 2, 3 dc, ch 2, sl st) in next st; rep from * around.';
  test('as many as there are', () => {
    expect(said(`${petals} (6 petals)`)).toEqual([]);
    expect(said(`${petals} (5 petals)`)).toEqual(wrong('Rnd 2', '6 petals', '5 is'));
  });

  test('and said to be unchecked where a row shows none', () => {
    const plain =
      'Rnd 1: 6 sc in magic ring, join with sl st in first sc. (6 sc)\nRnd 2: Ch 1, 2 sc in each st around, join with sl st in first sc.';
    expect(said(`${plain} (6 petals)`)).toEqual(['count/not-checked: the count of "petals" is not checked']);
  });
});

describe('increases and decreases', () => {
  const circle = 'Rnd 1: 6 sc in magic ring. (6 sts)\n';
  test.each([
    ['Rnd 2: 2 sc in each st around. (12 sts; 6 increases)', []],
    ['Rnd 2: 2 sc in each st around. (12 sts; 5 increases)', wrong('Rnd 2', '6 increases', '5 is')],
    ['Rnd 2: [Sc in next st, 3 sc in next st] 3 times. (12 sts, 3 increases)', []],
    ['Rnd 2: [Sc in next st, 3 sc in next st] 3 times. (12 sts, 6 increases)', []],
    ['Rnd 2: [Sc2tog over next 2 sts] 3 times. (3 sts, 3 decreases)', []],
    ['Rnd 2: [Sc2tog over next 2 sts] 3 times. (3 sts, 2 decreases)', wrong('Rnd 2', '3 decreases', '2 is')],
  ])('%s', (round, faults) => {
    expect(said(circle + round)).toEqual(faults);
  });
});

describe('a net is counted by its squares', () => {
  const net = 'Ch 20.\nRow 1: Dc in 8th ch from hook, [ch 2, sk 2 ch, dc in next ch] 4 times, turn.';
  const filled = `${net}\nRow 2: Ch 5 (counts as dc and ch 2), sk 2 ch, dc in next dc, [2 dc in next ch-2 sp, dc in next dc] 3 times, ch 2, sk 2 ch, dc in next ch, turn.`;
  const solidEdges = `${net}\nRow 2: Ch 3 (counts as dc), 2 dc in next sp, dc in next dc, [ch 2, sk 2 ch, dc in next dc] 3 times, 2 dc in next sp, dc in 3rd ch of ch-5, turn.`;
  test.each([
    [`${net} (5 open mesh)`, []],
    [`${net} (5 squares)`, []],
    [`${net} (6 open squares)`, wrong('Row 1', '5 open squares', '6 is')],
    [`${filled} (2 open squares, 3 solid)`, []],
    [
      `${filled} (3 open squares, 2 solid)`,
      wrong('Row 2', '2 open squares and 3 solid squares', '3 and 2 are'),
    ],
    [`${solidEdges} (3 spaces, 2 blocks)`, []],
    [`${solidEdges} (3 spaces, 3 blocks)`, wrong('Row 2', '2 blocks', '3 is')],
  ])('%s', (rows, faults) => {
    expect(said(rows)).toEqual(faults);
  });

  test('blocks of a row without a space', () => {
    const solid = `${net}\nRow 2: Ch 3 (counts as dc), [2 dc in next sp, dc in next st] 5 times, turn.`;
    expect(said(`${solid} (5 solid squares)`)).toEqual([]);
    expect(said(`${solid} (6 solid squares)`)).toEqual(wrong('Row 2', '5 solid squares', '6 is'));
  });
});

describe('from corner to corner a block is a few stitches between chains', () => {
  const special = ['block: "ch 6, dc in 4th ch from hook, dc in next 2 ch"'];
  const rows =
    'Row 1: Block, turn. (1 block)\nRow 2: Block, (sl st, ch 3, 3 dc) in next ch-3 sp, turn. (2 blocks)\nRow 3: Block, [(sl st, ch 3, 3 dc) in next ch-3 sp] twice, turn.';
  test('whether they are named or written out', () => {
    expect(said(`${rows} (3 blocks)`, { special })).toEqual([]);
    expect(said(`${rows} (4 blocks)`, { special })).not.toEqual([]);
  });
});

describe('picots that are written out', () => {
  const row = (picot: string) =>
    `Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\nRow 2: Ch 1, *sc in next 4 sts, ${picot}; rep from * across, turn.`;
  test.each([
    ['ch 3, sl st in 3rd ch from hook', '20 sc, 5 picots', []],
    ['ch 3, sl st in 3rd ch from hook', '20 sc, 6 picots', wrong('Row 2', '5 picots', '6 is')],
    ['ch 3, sl st in top of last sc made', '20 sc, 5 picots', []],
    ['ch 3', '20 sc, 3 picots', wrong('Row 2', '0 picots', '3 is')],
  ])('%s (%s)', (picot, count, faults) => {
    expect(said(`${row(picot)} (${count})`)).toEqual(faults);
  });
});

describe('half shells at both ends', () => {
  const special = ['shell: 5 dc in same st'];
  const shells =
    'Ch 26.\nRow 1: Sc in 2nd ch from hook, *sk 2 ch, shell in next ch, sk 2 ch, sc in next ch; rep from * across, turn.';
  const halves = `${shells}\nRow 2: Ch 3 (counts as dc), 2 dc in first st, *sk 2 sts, sc in next st, sk 2 sts, shell in next st; rep from * to last 6 sts, sk 2 sts, sc in next st, sk 2 sts, 3 dc in last st, turn.`;
  test.each([
    ['are not counted', `${halves} (4 sc, 3 shells)`, []],
    [
      'or make one together, which is told',
      `${halves} (4 sc, 4 shells)`,
      ['count/halves: 4 shells are 3 shells and half of one at either end'],
    ],
    ['or are named', `${halves} (4 sc, 3 shells, 2 half shells)`, []],
    ['but are not two whole ones', `${halves} (4 sc, 5 shells)`, wrong('Row 2', '3 shells', '5 is')],
    ['nor more than two', `${halves} (3 shells, 3 half shells)`, wrong('Row 2', '2 half shells', '3 is')],
    ['where there are none, none makes one', `${shells} (5 shells)`, wrong('Row 1', '4 shells', '5 is')],
  ])('%s', (_what, rows, faults) => {
    expect(said(rows, { special })).toEqual(faults);
  });
});

describe('a number for each size', () => {
  const sizes = ['name: S', 'name: M', 'name: L'];
  const row = 'Ch 21 (25, 29).\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.';
  test.each([
    ['(20/24/28 sc)', []],
    ['(20, 24, 28)', []],
    ['(20, 24, 28 sts)', []],
    ['- 20/24/28 sts', []],
    ['(20/24/27 sc)', wrong('Row 1', '28 sc', '27 is')],
    ['(20, 25, 28)', wrong('Row 1', '24 sts', '25 is')],
    ['(-, 24, 28)', []],
    ['(-, 24, 27)', wrong('Row 1', '28 sts', '27 is')],
  ])('%s', (count, faults) => {
    expect(said(`${row} ${count}`, { sizes })).toEqual(faults);
  });

  test('two numbers before a stitch are not one for each of two sizes', () => {
    const work = 'Ch 21 (25).\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.';
    expect(said(`${work} (20, 24 sts)`, { sizes: sizes.slice(1) })).toEqual([]);
    expect(said(`${work} (20, 24 sc)`, { sizes: sizes.slice(1) })).not.toEqual([]);
  });
});

describe('counts in words', () => {
  const row = 'Ch 25.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.';
  test.each([
    'You should have 24 stitches.',
    'You should have 24 stitches at the end of this row.',
    'There should now be 24 stitches on your row.',
    'There are 24 sts in all.',
    'This gives you 24 sts.',
    'You will have a total of 24 sts.',
    '24 stitches in total.',
    '(twenty-four sts)',
    'Twenty-four sts.',
  ])('%s', (count) => {
    expect(said(`${row} ${count}`)).toEqual([]);
    const less = count.replace('24', '23').replace('four', 'three');
    expect(said(`${row} ${less}`)).toEqual(wrong('Row 1', '24 sts', '23 is'));
  });
});

describe('chain spaces in the count', () => {
  const row =
    'Ch 22.\nRow 1: Sc in 2nd ch from hook, *ch 1, sk 1 ch, sc in next ch; rep from * across, turn.';
  test.each([
    '21 sts',
    '11 sts',
    '11 sc + 10 ch-1 sps',
    '11 sc & 10 ch-1 sps',
    '11 sc, 10 ch-1 sps, 21 sts',
    '11 sc and 10 ch-1 sps; 21 sts in all',
    '21 sts: 11 sc, 10 ch-1 sps',
    '21 sts - 11 sc, 10 ch-1 sps',
    '11 sc plus 10 chs',
  ])('%s', (count) => {
    expect(said(`${row} (${count})`)).toEqual([]);
    const more = count.replace(/\d+ /, (n) => `${Number(n) + 1} `);
    expect(said(`${row} (${more})`)).not.toEqual([]);
  });
});

describe('stitches that spread out of one place are shells, though the pattern describes none', () => {
  const shells =
    'Ch 38.\nRow 1: Sc in 2nd ch from hook, *sk 2 ch, 5 dc in next ch, sk 2 ch, sc in next ch; rep from * across, turn.';
  const halves = `${shells}\nRow 2: Ch 3 (counts as dc), 2 dc in first sc, *sk 2 dc, sc in next dc, sk 2 dc, 5 dc in next sc; rep from * to last 6 sts, sk 2 dc, sc in next dc, sk 2 dc, 3 dc in last sc, turn.`;
  const groups =
    'Ch 33.\nRow 1: (Sc, ch 1, dc) in 3rd ch from hook (skipped 2 ch count as sc), *sk next 2 ch, (sc, ch 1, dc) in next ch; rep from * to last 3 ch, sk next 2 ch, sc in last ch, turn.';
  test.each([
    [`${shells} (6 shells, 7 sc)`, []],
    [`${shells} (7 shells, 7 sc)`, wrong('Row 1', '6 shells', '7 is')],
    [`${halves} (5 shells, 2 half-shells, 6 sc)`, []],
    [`${halves} (6 shells, 6 sc)`, ['count/halves: 6 shells are 5 shells and half of one at either end']],
    [`${halves} (7 shells, 6 sc)`, wrong('Row 2', '5 shells', '7 is')],
    [`${groups} (10 groups, 2 sc)`, []],
    [`${groups} (9 groups, 2 sc)`, wrong('Row 1', '10 groups', '9 is')],
    [`${groups} (10 groups, 3 sc)`, wrong('Row 1', '2 sc', '3 is')],
  ])('%s', (rows, faults) => {
    expect(said(rows)).toEqual(faults);
  });
});

describe('counts of rows', () => {
  const rows =
    'Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)\nRow 2: Ch 1, sc in each st across, turn. (10 sc)\n';
  test.each([
    ['Rep Row 2 8 more times. (10 rows)', []],
    ['Rep Row 2 8 more times. 10 rows in all.', []],
    ['Rows 3-10: Rep Row 2. (8 rows)', []],
    ['Rep Row 2 8 more times. (12 rows)', wrong('Row 10', '10 rows', '12 is')],
    ['Rows 3-10: Rep Row 2. (10 sc at end of Row 10)', []],
    ['Rows 3-10: Rep Row 2. (11 sc at end of Row 10)', wrong('Row 10', '10 sc', '11 is')],
  ])('%s', (more, faults) => {
    expect(said(rows + more)).toEqual(faults);
  });
});

describe('what a count says besides', () => {
  const round = 'Rnd 1: 60 sc in magic ring, join with sl st in first sc. (60 sc.)\n';
  const openings =
    'Rnd 2: Ch 1, sc in first 10 sts, ch 45, sk next 10 sts, sc in next 20 sts, ch 45, sk next 10 sts, sc in last 10 sts, join with sl st in first sc.';
  test.each([
    [`${openings} (40 sc, 2 ch-45 handles)`, []],
    [`${openings} (40 sc, 2 ch-40 handles)`, wrong('Rnd 2', '0 ch-40 sps', '2 is')],
    ['Rnd 2: Ch 1, sc in each st around, join with sl st in first sc. You have 60 stitches. Fasten off.', []],
    [
      'Rnd 2: Ch 1, sc in each st around, join with sl st in first sc. You have 61 stitches. Fasten off.',
      wrong('Rnd 2', '60 sts', '61 is'),
    ],
    [
      'Rnd 2: Ch 1, sc in each st around, join with sl st in first sc. 61 sts. Fasten off.',
      wrong('Rnd 2', '60 sts', '61 is'),
    ],
  ])('%s', (line, faults) => {
    expect(said(round + line)).toEqual(faults);
  });

  test('a short sentence that names a stitch is an instruction', () => {
    expect(faultsOf('Rnd 1: 6 sc in magic ring.\nRnd 2: Ch 1. 6 sc. Turn.')).toEqual([]);
  });
});

describe('what no stitch tells', () => {
  const row = 'Ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.';
  test.each([
    ['(20 sc, 1 handle)', ['count/not-checked: the count of "handle" is not checked']],
    [
      '(21 sc, 1 handle)',
      ['count/not-checked: the count of "handle" is not checked', ...wrong('Row 1', '20 sc', '21 is')],
    ],
  ])('%s', (count, faults) => {
    expect([...said(`${row} ${count}`)].sort()).toEqual([...faults].sort());
  });

  test.each(['(20 sc, 1 stich)', '(20 sc, 1 htrr)', '(20 sc, 1 trebble)', '(1 handle)', '(20 sc, 3 more)'])(
    '%s is a word that is not known, or no count',
    (count) => {
      expect(faultsOf(`${row} ${count}`).join()).toMatch(/word\/|phrase\/|special\//);
    },
  );
});
