/** Forms that designers of today use: measures with fractions for each size, `until 20 sts remain`, `(30) [5 rounds]`, kinds of rows in brackets, spaces between groups without chains. */

import { describe, expect, test } from 'vitest';
import { faultsOf, workedText } from './worked-text.ts';

const faults = (text: string) => faultsOf(text, 'row/open-length');
const us = (...rows: readonly string[]) => ['Sample', 'US terms.', '', 'PIECE', ...rows].join('\n');

describe('rows that go on until so many remain', () => {
  const cap = (until: string) =>
    us(
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. (18 sc)',
      `Rep Row 2 ${until}.`,
    );

  test.each([
    'until 8 sts remain',
    'until there are 8 sc left',
    'till 8 sc remain',
    'until only 8 sts remain',
  ])('%s', (until) => {
    expect(faults(cap(until))).toEqual([]);
    expect(workedText(cap(until)).rows[0]?.at(-1)).toBe('Row 7: 8');
    expect(faults(cap(until.replace('8', '7'))).join()).toContain('makes');
    expect(faults(cap(until.replace('8', '22'))).join()).toContain('makes');
  });

  test('in each size as many as it takes', () => {
    const text = us(
      'Sizes: S (M, L)',
      'Ch 21 (25, 29).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 20 (24, 28) sc.',
      'Row 2: Ch 1, sc2tog, sc in each st to last 2 sts, sc2tog, turn. 18 (22, 26) sc.',
      'Rep Row 2 until 6 (6, 8) sts remain.',
    );
    expect(faults(text)).toEqual([]);
    expect(workedText(text).rows.map((rows) => rows.at(-1))).toEqual(['Row 8: 6', 'Row 10: 6', 'Row 11: 8']);
    expect(faults(text.replace('6 (6, 8) sts', '6 (7, 8) sts')).join()).toContain('makes');
  });
});

describe('a measure for each size', () => {
  const piece = (measure: string) =>
    us(
      'Sizes: S (M, L)',
      'Gauge: 16 sc and 20 rows = 4 in',
      'Ch 21 (25, 29).',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. 20 (24, 28) sc.',
      'Row 2: Ch 1, sc in each st across, turn.',
      `Rep Row 2 until piece measures ${measure}.`,
    );

  test.each([
    '17 (17 1/2, 18 1/2) in',
    '5 1/2 (6, 6 1/2) in from the beginning',
    '17 1/2 (18, 18 1/2)"',
    '6.5 (7, 7.5) in',
  ])('%s', (measure) => {
    const told = workedText(piece(measure));
    expect(told.codes.filter((code) => code.startsWith('phrase/') || code.startsWith('bracket/'))).toEqual(
      [],
    );
  });

  test('one too few is told', () => {
    const told = workedText(piece('5 1/2 (6 1/2) in')).codes;
    expect(told.some((code) => code.startsWith('phrase/') || code.startsWith('bracket/'))).toBe(true);
  });
});

describe('a toy in a spiral', () => {
  const ball = (...rows: readonly string[]) =>
    faults(us('inc = 2 sc in same st', 'R1: 6 sc in MR (6)', 'R2: inc x6 (12)', ...rows));

  test('its rounds are counted beside its stitches', () => {
    expect(ball('R3-5: sc around (12) [3 rounds]', 'R6: sc around (12)')).toEqual([]);
    expect(ball('R3-5: sc around (13) [3 rounds]', 'R6: sc around (13)')).not.toEqual([]);
  });

  test.each([
    'sc in remaining sts',
    'sc in the remaining stitches',
    'sc in rem sts',
    'sc in each remaining st',
  ])('%s', (rest) => {
    expect(ball(`R3: inc x2, ${rest} (14)`)).toEqual([]);
    expect(ball(`R3: inc x2, ${rest} (13)`).join()).toContain('R3 makes 14');
  });

  test.each(['in last', 'in the last one', 'in the last st'])('two %s', (last) => {
    expect(ball(`R3: sc 11, 2 sc ${last} (13)`)).toEqual([]);
    expect(ball(`R3: sc 11, 2 sc ${last} (12)`).join()).toContain('R3 makes 13');
    expect(ball(`R3: sc 10, 2 sc ${last} (12)`)).not.toEqual([]);
  });

  test('the kind of a round stands in brackets', () => {
    expect(ball('R3 (inc round): (sc, inc) x6 (18)')).toEqual([]);
    expect(ball('R3 (inc round): (sc, inc) x6 (19)').join()).toContain('R3 makes 18');
    expect(ball('R3 (inc in next st): (sc, inc) x6 (18)')).not.toEqual([]);
  });

  test('eyes in millimetres are no hook', () => {
    const text = (also: string) =>
      `Mouse\nTerms: US\nYarn: worsted\nHook: 3.5 mm\nAlso: ${also}\n\nBODY\nR1: 6 sc in MR (6)\nR2: 2 sc in each st (12)`;
    expect(workedText(text('8 mm safety eyes, stuffing')).codes).not.toContain('text/hook');
    expect(workedText(text('8 mm hook for the tail')).codes).toContain('text/hook');
  });
});

describe('a repeat that only says how it ends', () => {
  const row = (end: string, count = 8) =>
    faults(
      us(
        'Ch 16.',
        'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (15 sc)',
        `Row 2: Ch 3 (counts as dc), *ch 1, sk next sc, dc in next sc; rep from *${end}, turn. (${count} dc, 7 ch-1 sps)`,
      ),
    );

  test.each([' ending last rep with dc in last sc', ', ending last rep with dc in last sc'])('%s', (end) => {
    expect(row(end)).toEqual([]);
    expect(row(end, 9).join()).toContain('Row 2 makes 8 dc');
  });

  test('with nothing said it stays open', () => {
    expect(row('')).not.toEqual([]);
  });
});

describe('spaces between groups without chains', () => {
  const square = (last: string) =>
    faults(
      `Square\n\nUK terms\n\nMake 5 ch and join with a ss to form a ring.
Round 1: 1 ch, 12 dc in ring, join with ss in first dc. 12 dc.
Round 2: 3 ch (counts as 1 tr), 2 tr in same dc, miss 2 dc, *3 tr in next dc, miss 2 dc; rep from * to end, join with ss in top of 3-ch. 12 tr. Fasten off.
Round 3: Join yarn in sp between any two 3-tr groups, 3 ch (counts as 1 tr), (2 tr, 2 ch, 3 tr) in same sp, *(3 tr, 2 ch, 3 tr) in ${last}; rep from * twice more, join with ss in top of 3-ch. 24 tr`,
    );

  test.each(['next sp', 'next sp between groups', 'next space'])('%s', (sp) => {
    expect(square(sp)).toEqual([]);
    expect(square(`${sp}, 1 tr in ${sp}`)).not.toEqual([]);
  });

  test('of chains that are not there is still told', () => {
    expect(square('next 2-ch sp')).not.toEqual([]);
    expect(square('next corner sp')).not.toEqual([]);
  });

  test('clusters by their number beside one that begins the round', () => {
    const round = (count: number) =>
      faults(
        `Motif\n\nUK terms\nbeg cl = 2 ch, tr2tog in the same place\n\nMake 5 ch and join with a ss to form a ring.
Round 1: 1 ch, 6 dc in ring, join with ss in first dc. 6 dc.
Round 2: Beg cl in first dc, *2 ch, tr3tog in next dc; rep from * to end, 2 ch, join with ss in top of beg cl. ${count} clusters, 6 2-ch sps.`,
      ).filter((one) => one.includes('cluster'));
    expect(round(6)).toEqual([]);
    expect(round(7)).not.toEqual([]);
  });
});

describe('along a side, and for as long as it takes', () => {
  const strip = (turn: string, along: string) =>
    faults(
      us(
        'Ch 9.',
        'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sc)',
        `Rows 2-20: Ch 1, sc in each st across, turn. (8 sc)`,
        `Do not fasten off. ${turn}`,
        `Row 1: Ch 1, ${along}, turn. (20 sc)`,
      ),
    );

  test.each([
    ['Turn to work along the side of the cuff.', 'sc in each row end across'],
    ['Turn to work along the long edge.', 'sc in each row end along the straight side'],
  ])('%s %s', (turn, along) => {
    expect(strip(turn, along)).toEqual([]);
    expect(strip(turn, along.replace('sc in', '2 sc in')).join()).toContain('makes 40');
  });

  test('a turn that asks for more is told', () => {
    expect(strip('Turn to work 3 sc along the cuff.', 'sc in each row end across')).not.toEqual([]);
  });

  test.each(['for the length you need', 'for the length you would like', 'to the length your shelf needs'])(
    'rows repeated %s',
    (long) => {
      const rows = (said: string) =>
        faults(
          us(
            'Ch 11.',
            'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)',
            'Row 2: Ch 1, sc in each st across, turn.',
            `Rep Row 2 ${said}.`,
          ),
        );
      expect(rows(long)).toEqual([]);
      expect(rows('for the length of 3 sc')).not.toEqual([]);
    },
  );

  test('the other side of a chain is kept on along', () => {
    const oval = (on: string, n = 14) =>
      faults(
        us(
          'Ch 7.',
          `R1: sc in 2nd ch from hook, sc in next 4 ch, 3 sc in last ch, ${on}, sc in next 4 ch, 2 sc in last ch. (${n})`,
        ),
      );
    for (const on of [
      'then keep going down the other side of the ch',
      'keep working along the other side of the chain',
    ]) {
      expect(oval(on)).toEqual([]);
      expect(oval(on, 15).join()).toContain('makes 14');
    }
  });
});

describe('said in fewer words', () => {
  const flat = (row: string) =>
    faults(us('Ch 21.', 'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)', row));

  test('the last so many', () => {
    expect(flat('Row 2: Ch 1, sc in next 6, [sc2tog] 4 times, sc in last 6, turn. (16 sc)')).toEqual([]);
    expect(flat('Row 2: Ch 1, sc in next 6, [sc2tog] 4 times, sc in last 5, turn. (15 sc)')).not.toEqual([]);
    expect(flat('Row 2: Ch 1, sc in next 6, [sc2tog] 4 times, sc in last 6, turn. (17 sc)').join()).toContain(
      'Row 2 makes 12 sc, but 17',
    );
  });

  test('a chain joined behind a word of care, comma or none', () => {
    const ring = (words: string, n = 20) =>
      faults(
        us(
          `Ch 20, ${words} join with sl st in first ch to form a ring.`,
          `Rnd 1: Ch 1, sc in each ch around, join. (${n} sc)`,
        ),
      );
    for (const words of [
      'being careful not to twist',
      'being careful not to twist,',
      'taking care not to twist it',
    ])
      expect(ring(words)).toEqual([]);
    expect(ring('being careful not to twist', 21).join()).toContain('Rnd 1 makes 20');
  });

  const square = (border: string, n: number) =>
    faults(
      us(
        'Cluster = 3 dc in the same space',
        'Ch 4, sl st to first ch to form ring.',
        'Rnd 1: Ch 3 (counts as first dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2* three times, sl st to top of ch 3. (4 clusters, 4 ch-2 sps)',
        'Rnd 2: Ch 1, 3 sc in each ch-2 sp and sc in each dc around, join with sl st in first sc. (24 sc)',
        `Rnd 3: Ch 1, sc in each sc around, ${border}, join with sl st in first sc. (${n} sc)`,
      ),
    );

  test('clusters written out, and what goes into the middle of each corner', () => {
    for (const border of [
      'putting 3 sc in the middle sc of each corner',
      'placing 3 sc in center sc of each corner',
    ])
      expect(square(border, 32)).toEqual([]);
    expect(square('putting 3 sc in the middle sc of each corner', 33).join()).toContain('Rnd 3 makes 32');
    expect(
      faults(
        us(
          'Cluster = 3 dc in the same space',
          'Ch 4, sl st to first ch to form ring.',
          'Rnd 1: Ch 3 (counts as first dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2* three times, sl st to top of ch 3. (5 clusters)',
        ),
      ).join(),
    ).toContain('Rnd 1 makes 4 clusters, but 5');
  });

  test('yarn joined in any of the stitches that were skipped', () => {
    const thumb = (join: string, n = 4) =>
      faults(
        us(
          'HAND',
          'R1: 6 sc in MR (6)',
          'R2: 2 sc in each st around (12)',
          'R3: sc in next 4 sts, ch 4, skip next 4 sts, sc in next 4 sts (8 sc, 1 ch-4 sp)',
          'R4: sc in each st and in each ch around (12)',
          'Fasten off.',
          'THUMB',
          join,
          `R1: sc in each of the 4 skipped sts, sc in each of next 4 ch. (${n + 4})`,
        ),
      );
    expect(thumb('Join yarn in any of the skipped sts of R2.')).toEqual([]);
    expect(thumb('Join yarn in any of the 4 skipped sts of R2.')).toEqual([]);
    expect(thumb('Join yarn in any of the skipped sts of R2.', 5).join()).toContain('makes 8');
    expect(thumb('Join yarn in any of the skipped sts of R1.')).not.toEqual([]);
    expect(thumb('Join yarn in any of the frobbled sts of R2.')).not.toEqual([]);
  });
});

describe('said in passing', () => {
  const edged = (picot: string, n = 12) =>
    faults(
      us(
        'Ch 13.',
        'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (12 sc)',
        `Row 2: Ch 1, *sc in next 2 sts, ${picot}, sc in next st; rep from * across. (${n} sc)`,
      ),
    );

  test('a picot closed in the first of its chains', () => {
    for (const picot of ['ch 3, sl st in first ch (picot made)', 'ch 3, sl st in first ch']) {
      expect(edged(picot)).toEqual([]);
      expect(edged(picot, 13).join()).toContain('Row 2 makes 12');
    }
    expect(edged('ch 3, sl st in first dc')).not.toEqual([]);
  });

  test('a tail left at the beginning', () => {
    const begun = (tail: string, n = 10) =>
      faults(us(`${tail}, ch 11.`, `Row 1: Sc in 2nd ch from hook and in each ch across. (${n} sc)`));
    for (const tail of ['Starting with a long tail', 'Beginning with a long tail for sewing']) {
      expect(begun(tail)).toEqual([]);
      expect(begun(tail, 11).join()).toContain('Row 1 makes 10');
    }
    expect(begun('Starting with a long frobble')).not.toEqual([]);
  });

  test('rows joined to go on in rounds', () => {
    const skirt = (join: string, n = 20) =>
      faults(
        us(
          'Ch 11.',
          'Row 1: Sc in 2nd ch from hook and in each ch across. (10 sc)',
          join,
          `Rnd 1: Ch 1, 2 sc in each st around, join with sl st in first sc. (${n} sc)`,
        ),
      );
    for (const join of [
      'Join with sl st to first sc to work in rounds.',
      'Join with sl st in first sc to begin working in the round.',
    ]) {
      expect(skirt(join)).toEqual([]);
      expect(skirt(join, 21).join()).toContain('Rnd 1 makes 20');
    }
    expect(skirt('Join with sl st to first sc to work 3 sc.')).not.toEqual([]);
  });
});
