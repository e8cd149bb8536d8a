import { describe, expect, test } from 'vitest';
import { fabricOf, feetOf, rowOf, tallyOf } from './work-text.ts';

/** So many sc in Row 1, then the rows given. */
function onSc(n: number, rows: string): string {
  return `Ch ${n + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across. (${n} sc)\n${rows}`;
}

describe('rows worked to and fro', () => {
  test('row 1 goes from the last chain back to the first, and each row comes back over the last', () => {
    const fabric = fabricOf(
      onSc(3, 'Row 2: Ch 1, sc in each st across.\nRow 3: Ch 1, sc in each st across.'),
    );
    expect(feetOf(fabric, 'Row 1')).toEqual(['sc<Foundation.ch3', 'sc<Foundation.ch2', 'sc<Foundation.ch1']);
    expect(feetOf(fabric, 'Row 2')).toEqual(['sc<Row 1.3', 'sc<Row 1.2', 'sc<Row 1.1']);
    expect(feetOf(fabric, 'Row 3')).toEqual(['sc<Row 2.3', 'sc<Row 2.2', 'sc<Row 2.1']);
    expect(fabric.rows.map(({ side }) => side)).toEqual([null, 'RS', 'WS', 'RS']);
    expect(fabric.rows.slice(1).map(({ direction }) => direction)).toEqual(['left', 'right', 'left']);
  });

  test('a row that is not turned begins again where the last began', () => {
    const fabric = fabricOf(
      onSc(3, 'Row 2: Ch 1, sc in each st across, do not turn.\nRow 3 (WS): Ch 1, sc in each st across.'),
    );
    expect(feetOf(fabric, 'Row 2')).toEqual(['sc<Row 1.3', 'sc<Row 1.2', 'sc<Row 1.1']);
    expect(feetOf(fabric, 'Row 3')).toEqual(['sc<Row 2.1', 'sc<Row 2.2', 'sc<Row 2.3']);
  });

  test('"Row 1 (WS)" sets the side, and rows alternate from it', () => {
    const fabric = fabricOf(
      'Ch 4.\nRow 1 (WS): Sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 1, sc in each st across.',
    );
    expect(fabric.rows.map(({ side }) => side)).toEqual([null, 'WS', 'RS']);
  });

  test('rows repeated by a sentence of their own turn like any others', () => {
    const fabric = fabricOf(
      onSc(
        4,
        'Row 2: Ch 1, sc in each st across.\nRow 3: Ch 1, hdc in each st across.\nRep Rows 2 and 3 twice.',
      ),
    );
    expect(fabric.rows.map(({ label }) => label)).toEqual([
      'Foundation',
      'Row 1',
      'Row 2',
      'Row 3',
      'Row 4',
      'Row 5',
      'Row 6',
      'Row 7',
    ]);
    expect(fabric.rows.map(({ side }) => side)).toEqual([null, 'RS', 'WS', 'RS', 'WS', 'RS', 'WS', 'RS']);
    expect(['Row 4', 'Row 5', 'Row 6', 'Row 7'].map((row) => tallyOf(fabric, row))).toEqual([
      '4 sc',
      '4 hdc',
      '4 sc',
      '4 hdc',
    ]);
  });
});

describe('turning chains', () => {
  test('one that counts stands on the first stitch, and the row begins in the second', () => {
    const fabric = fabricOf(
      'Ch 6.\nRow 1: Dc in 4th ch from hook (skipped 3 ch count as dc) and in each ch across. (4 dc)\nRow 2: Ch 3 (counts as dc), dc in next st and in each st across. (4 dc)',
    );
    expect(feetOf(fabric, 'Row 1')).toEqual(['dc<Foundation.ch3', 'dc<Foundation.ch2', 'dc<Foundation.ch1']);
    // The last dc goes into the skipped chains, which stand as the first dc of row 1.
    expect(feetOf(fabric, 'Row 2')).toEqual(['dc<', 'dc<Row 1.2', 'dc<Row 1.1', 'dc<Foundation.1']);
    expect(rowOf(fabric, 'Row 1').stitches).toBe(4);
  });

  test.each([
    [
      'skipping the stitch it stands on',
      'Ch 3 (counts as dc), sk first st, dc in next st and in each st across.',
    ],
    ['saying where the last goes', 'Ch 3 (counts as dc), dc in next 2 sts, dc in top of tch.'],
    ['as a remark', 'Ch 3 (counts as dc), dc in each st across, working last dc in top of tch.'],
  ])('it is the same row %s', (_how, row) => {
    const text = (last: string) =>
      `Ch 6.\nRow 1: Dc in 4th ch from hook (skipped 3 ch count as dc) and in each ch across.\nRow 2: ${last}`;
    expect(feetOf(fabricOf(text(row)), 'Row 2')).toEqual([
      'dc<',
      'dc<Row 1.2',
      'dc<Row 1.1',
      'dc<Foundation.1',
    ]);
  });

  test('one that does not count leaves the first stitch to be worked', () => {
    const fabric = fabricOf(
      'Ch 5.\nRow 1: Dc in 3rd ch from hook (skipped 2 ch do not count as a st) and in each ch across. (3 dc)\nRow 2: Ch 2 (does not count as a st), dc in each st across. (3 dc)',
    );
    expect(feetOf(fabric, 'Row 2')).toEqual(['dc<Row 1.3', 'dc<Row 1.2', 'dc<Row 1.1']);
  });

  test('what is said "throughout" holds for every chain of that length', () => {
    const fabric = fabricOf(
      onSc(
        4,
        'Row 2: Ch 3 (counts as dc here and throughout), dc in each st across.\nRow 3: Ch 3, dc in each st across. (4 dc)',
      ),
    );
    expect(tallyOf(fabric, 'Row 3')).toBe('4 dc');
  });

  test('a long one counts as a stitch and a space', () => {
    const fabric = fabricOf(
      onSc(
        7,
        'Row 2: Ch 5 (counts as dc and ch 2), sk next 2 sts, dc in next st, ch 2, sk next 2 sts, dc in last st. (3 dc, 2 ch-2 sps)\nRow 3: Ch 1, sc in next dc, 2 sc in next ch-2 sp, sc in next dc, 2 sc in next sp, sc in 3rd ch of ch-5. (7 sc)',
      ),
    );
    expect(feetOf(fabric, 'Row 2')).toEqual(['dc<', 'dc<Row 1.4', 'dc<Row 1.1']);
    expect(tallyOf(fabric, 'Row 3')).toBe('7 sc');
  });

  test('one printed at the end of a row before "turn" begins the next', () => {
    const fabric = fabricOf(
      'Ch 4.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, sc in each st across, ch 1, turn.\nRow 3: Sc in each st across.',
    );
    expect(tallyOf(fabric, 'Row 2')).toBe('3 sc');
    expect(feetOf(fabric, 'Row 3')).toEqual(['sc<Row 2.3', 'sc<Row 2.2', 'sc<Row 2.1']);
  });
});

describe('stitches of every height are made of their own kind', () => {
  test.each(['sl st', 'sc', 'hdc', 'dc', 'tr', 'dtr', 'esc', 'ehdc', 'edc'])('%s', (stitch) => {
    const fabric = fabricOf(onSc(5, `Row 2: Ch 1 (does not count as a st), ${stitch} in each st across.`));
    expect(rowOf(fabric, 'Row 2').byStitch).toEqual({ [stitch.replace(' ', '-')]: 5 });
  });
});

describe('shaping', () => {
  test('a decrease draws two places into one stitch', () => {
    const fabric = fabricOf(
      onSc(6, 'Row 2: Ch 1, sc2tog, sc in next 2 sts, sc2tog over next 2 sts. (4 sts)'),
    );
    expect(feetOf(fabric, 'Row 2')).toEqual([
      'sc2tog<Row 1.6+Row 1.5',
      'sc<Row 1.4',
      'sc<Row 1.3',
      'sc2tog<Row 1.2+Row 1.1',
    ]);
  });

  test('a decrease over six stitches is three of them, and "around" takes two at a time', () => {
    const fabric = fabricOf(
      onSc(
        12,
        'Row 2: Ch 1, sc2tog over next 6 sts, sc3tog over next 6 sts. (5 sts)\nRow 3: Ch 1, sc in next st, sc2tog across. (3 sts)',
      ),
    );
    expect(tallyOf(fabric, 'Row 2')).toBe('3 sc2tog, 2 sc3tog');
    expect(tallyOf(fabric, 'Row 3')).toBe('1 sc, 2 sc2tog');
  });

  test('"dec" and "inc" that the pattern describes are counted by their names as well', () => {
    const special = ['inc: 2 sc in next st', 'dec: sc2tog'];
    const fabric = fabricOf({
      work: onSc(
        6,
        'Row 2: Ch 1, inc in next st, sc in next 2 sts, inc, sc in next 2 sts. (8 sc)\nRow 3: Ch 1, dec over next 4 sts, sc in next 2 sts, dec. (5 sts)',
      ),
      special,
    });
    expect(tallyOf(fabric, 'Row 2')).toBe('8 sc, 2 inc');
    expect(tallyOf(fabric, 'Row 3')).toBe('3 sc2tog, 2 sc, 3 dec');
    expect(feetOf(fabric, 'Row 3')[1]).toBe('sc2tog<Row 2.6+Row 2.5');
  });
});

describe('shells, meshes and other spaces', () => {
  test('a shell is five in one place, and its stitches are worked by number or skipped', () => {
    const fabric = fabricOf({
      work: `Ch 14.
Row 1 (RS): Sc in 2nd ch from hook, *sk next 2 ch, shell in next ch, sk next 2 ch, sc in next ch; rep from * across, turn. (2 shells, 3 sc)
Row 2: Ch 3 (counts as dc), 2 dc in first sc, *sk next 2 dc, sc in next dc, sk next 2 dc, shell in next sc; rep from * to last 6 sts, sk next 2 dc, sc in next dc, sk next 2 dc, 3 dc in last sc, turn.
Row 3: Ch 1, sc in first dc, *sk next 2 dc, shell in next sc, sk next 2 dc, sc in next dc; rep from * across, turn. (2 shells, 3 sc)
Row 4: Ch 1, sc in first sc, *ch 2, sc in center dc of next shell, ch 2, sc in next sc; rep from * across. (5 sc, 4 ch-2 sps)`,
      special: ['shell: 5 dc in same st'],
    });
    expect(feetOf(fabric, 'Row 1')).toEqual([
      'sc<Foundation.ch13',
      ...Array.from({ length: 5 }, () => 'dc<Foundation.ch10'),
      'sc<Foundation.ch7',
      ...Array.from({ length: 5 }, () => 'dc<Foundation.ch4'),
      'sc<Foundation.ch1',
    ]);
    // Half a shell of ch 3 and 2 dc, sc in the middle of each shell, a shell between, 3 dc at the end.
    expect(feetOf(fabric, 'Row 2')).toEqual([
      'dc<',
      'dc<Row 1.13',
      'dc<Row 1.13',
      'sc<Row 1.10',
      ...Array.from({ length: 5 }, () => 'dc<Row 1.7'),
      'sc<Row 1.4',
      'dc<Row 1.1',
      'dc<Row 1.1',
      'dc<Row 1.1',
    ]);
    expect(tallyOf(fabric, 'Row 2')).toBe('11 dc, 2 sc, 1 shell');
    expect(feetOf(fabric, 'Row 3')[12]).toBe('sc<Row 2.1');
    expect(tallyOf(fabric, 'Row 4')).toBe('5 sc, 4 ch-2 sp');
  });

  test('moss stitch goes over a stitch with a chain and into the chain space next time', () => {
    const fabric = fabricOf(
      onSc(
        5,
        'Row 2: Ch 1, sc in first st, *ch 1, sk next st, sc in next st; rep from * across. (3 sc, 2 ch-1 sps)\nRow 3: Ch 1, sc in first st, *sc in next ch-1 sp, ch 1, sk next st; rep from * to last ch-1 sp, sc in next ch-1 sp, sc in last st. (4 sc, 1 ch-1 sp)',
      ),
    );
    expect(feetOf(fabric, 'Row 2')).toEqual(['sc<Row 1.5', 'sc<Row 1.3', 'sc<Row 1.1']);
    expect(feetOf(fabric, 'Row 3')).toEqual(['sc<Row 2.3', 'sc<Row 2.ch3', 'sc<Row 2.ch2', 'sc<Row 2.1']);
  });

  test('a house that counts the ch-1 of its mesh states 5 sts, and that is no mistake', () => {
    const fabric = fabricOf(
      onSc(5, 'Row 2: Ch 1, sc in first st, *ch 1, sk next st, sc in next st; rep from * across. (5 sts)'),
    );
    expect(rowOf(fabric, 'Row 2')).toMatchObject({ stitches: 3, spaces: 2 });
  });

  test('a picot stands on the stitch before it and is neither counted nor worked into', () => {
    const fabric = fabricOf({
      work: onSc(
        5,
        'Row 2: Ch 1, *sc in next 2 sts, picot; rep from * to last st, sc in last st. (5 sc, 2 picot)\nRow 3: Ch 1, sc in each st across. (5 sc)',
      ),
      special: ['picot: ch 3, sl st in 3rd ch from hook'],
    });
    expect(rowOf(fabric, 'Row 2')).toMatchObject({ stitches: 5, spaces: 0 });
    expect(feetOf(fabric, 'Row 3')).toEqual([
      'sc<Row 2.5',
      'sc<Row 2.4',
      'sc<Row 2.3',
      'sc<Row 2.2',
      'sc<Row 2.1',
    ]);
  });
});

describe('long stitches into rows below', () => {
  const four = onSc(
    5,
    `Row 2: Ch 1, sc in each st across.
Row 3: Ch 1, sc in next 2 sts, sc in next st 2 rows below, sc in next 2 sts. (5 sc)
Row 4: Ch 1, sc in next 2 sts, ch 1, sk next st, sc in next 2 sts. (4 sc, 1 ch-1 sp)
Row 5: Ch 1, sc in next 2 sts, ch 1, sk next sp, sc in next 2 sts. (4 sc, 1 ch-1 sp)
Row 6: Ch 1, sc in next 2 sts, dc in skipped st 3 rows below, sk next sp, sc in next 2 sts. (4 sc, 1 dc)`,
  );
  test('into "next st 2 rows below" covers the next stitch of the row between', () => {
    expect(feetOf(fabricOf(four), 'Row 3')).toEqual([
      'sc<Row 2.5',
      'sc<Row 2.4',
      'sc<Row 1.3',
      'sc<Row 2.2',
      'sc<Row 2.1',
    ]);
  });
  test('into a skipped stitch goes back for the one that was left, and covers nothing', () => {
    expect(feetOf(fabricOf(four), 'Row 6')).toEqual([
      'sc<Row 5.4',
      'sc<Row 5.3',
      'dc<Row 3.3',
      'sc<Row 5.2',
      'sc<Row 5.1',
    ]);
  });
});
