/** Lists that stand above the rows without a heading, and rounds that go on under the next heading. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const read = (text: string) => transcribe({ file: 'tub.txt', text });

describe('a list of abbreviations with no heading', () => {
  const tub = (list: string, rows = ROWS) =>
    `Little Tub\nUK terms\nHook: 4 mm\nTension 18 dc and 20 rows to 10 cm\n\n${list}\n\n${rows}\n`;
  const ROWS =
    'TUB\n12 ch.\nRow 1: dc in 2nd ch from hook, dc in each ch to end, turn. 11 dc\nRow 2: 1ch, dc2tog, dc in each st to end. 10 dc';

  test.each([
    'ch chain, ss slip stitch, dc double crochet, htr half treble, dc2tog double crochet two together, st stitch, rnd round',
    'ch chain // ss slip stitch // dc double crochet // htr half treble // inc 2 dc in one st // st stitch',
    'Ch—chain, ss—slip stitch, dc—double crochet, htr—half treble, rnd—round, st—stitch.',
  ])('%s', (list) => {
    expect(workedText(tub(list)).codes.filter((code) => code !== 'text/abbreviation-unlisted')).toEqual(
      expect.not.arrayContaining(['word/unknown', 'phrase/unread']),
    );
    expect(read(tub(list)).parts.map(({ name }) => name)).toEqual(['Tub']);
    expect(workedText(tub(list, ROWS.replace('10 dc', '9 dc'))).codes).toContain('count/mismatch');
  });

  test('a row of short steps is none', () => {
    const text = tub('Hold the yarn loosely.', ROWS.replace('Row 2: 1ch, ', 'Row 2: 1ch, dc next st, '));
    expect(read(text).parts.map(({ lines }) => lines.length)).toEqual([3]);
  });
});

describe('sizes', () => {
  const rows = 'Rnd 1: 6 (8, 10) sc in a magic ring. 6 (8, 10) sts';
  test.each(['Small (Medium, Large)', 'Sizes 0-3 mths (3-6 mths, 6-12 mths)'])('%s', (sizes) => {
    const { codes, rows: worked } = workedText(`Bobbin Tub\n${sizes}\n\nUS terms\n\n${rows}\n`);
    expect(codes).toEqual([]);
    expect(worked).toEqual([['Rnd 1: 6'], ['Rnd 1: 8'], ['Rnd 1: 10']]);
  });
});

describe('rounds numbered anew under the next heading', () => {
  const text = `Bobbin Tub
US terms
Worked in a spiral.

BASE
Round 1 – 6 sc in a magic ring. 6 sts
Round 2 – 2 sc in each st around. 12 sts

WALL
Round 1 – Working in back loops only, sc in each st around. 12 sts
Next round (handles) – *sc in next 2 sts, ch 2, sk next 2 sts, sc in next 2 sts; rep from * once more. You now have 8 sc and 2 handle loops.
Next round – *sc in next 2 sts, 2 sc in handle loop, sc in next 2 sts; rep from * once more. 12 sts
Last round – sl st in each st around. Fasten off.
`;

  test('go on from those above', () => {
    expect(read(text).parts.map(({ name, onto }) => [name, onto])).toEqual([
      ['Base', null],
      ['Wall', 'Base'],
    ]);
    expect(workedText(text).codes.filter((code) => code !== 'gauge/missing')).toEqual([]);
  });

  test.each([
    ['2 handle loops', '3 handle loops', 'count/mismatch'],
    ['You now have 8 sc', 'You now have 9 sc', 'count/mismatch'],
    ['2 sc in handle loop', '3 sc in handle loop', 'count/mismatch'],
    ['around. 12 sts\nNext', 'around. 13 sts\nNext', 'count/mismatch'],
    ['2 sc in each st around. 12 sts', '2 sc in each st around. 12 sts\nFasten off.', 'row/nothing-below'],
  ])('%s, %s', (right, wrong, code) => {
    expect(workedText(text.replace(right, wrong)).codes).toContain(code);
  });
});

describe('a pattern out of a book, its rounds named by their colours in brackets', () => {
  const motif = (book: string, first = 'Clover, Marigold or Plum', count = '24 dc') =>
    `CLOVER HEXAGON

${book} US stitch names.

You will need DK wool in three colors and a 4 mm hook.

Abbreviations: ch (chain), dc (double crochet), sl st (slip stitch), sp (space), rep (repeat). Throughout, ch 3 at the start of a round counts as a dc, and ch 5 at the start of a round counts as a dc and ch 2.

THE HEXAGON (make 5)

Round 1 (${first}): Ch 5 and join with sl st to form a ring. Ch 3, dc in ring, ch 2, *2 dc in ring, ch 2; rep from * 4 more times, join with sl st to top of ch 3. Fasten off. You have 12 dc and 6 ch-2 sps.

Round 2 (Linen): Join with sl st in any ch-2 sp, ch 5, dc in same sp, dc in next 2 dc, *(dc, ch 2, dc) in next ch-2 sp, dc in next 2 dc; rep from * 4 more times, join with sl st to 3rd ch of ch 5. Fasten off. You have ${count}, 4 on each side, and 6 ch-2 sps.
`;

  test.each(['From "A Shelf of Squares", Olive Hartley-Moss.', 'From “Six Sides”, by Olive Hartley-Moss.'])(
    '%s',
    (book) => {
      const { codes, rows } = workedText(motif(book));
      expect(codes.filter((code) => !/^(?:text|yarn|gauge)\//.test(code))).toEqual([]);
      expect(rows[0]?.at(-1)).toMatch(/^Round 2/);
      expect(workedText(motif(book, 'Plum', '25 dc')).codes).toContain('count/mismatch');
    },
  );
});

test('a last round named by its colour is worked', () => {
  const text = `Small Square\nUS terms\n\nCh 5, join with sl st to form a ring.\nRnd 1: Ch 1, 8 sc in ring, join with sl st in first sc. (8 sc)\nRnd 2 (Linen): Ch 1, 2 sc in each sc around, join with sl st in first sc. (17 sc)\n`;
  expect(workedText(text).codes).toContain('count/mismatch');
});
