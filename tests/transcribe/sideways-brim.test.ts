/** A brim worked sideways, seamed, and picked up along its rows; and what is said on the way of names, chains and yarns. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const hat = (changes: Readonly<Record<string, string>> = {}): string => {
  const text = `Rushes Hat

STITCHES USED (US)
chain (ch), slip stitch (sl st), single crochet (sc), half double crochet (hdc), half double crochet 2 together (hdc2tog)

GAUGE
16 hdc x 11 rounds = 4 inches

--- BRIM ---

Ch 8.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (7 sc)
Rows 2-12: Ch 1, sc in each st across, turn. (7 sc)
Ch 1, sl st through the foundation chain and the last row together all the way across. Do not cut yarn.

--- BODY ---

Ch 1 or ch 2 at the start of a round never counts as a stitch here.

Rnd 1: Ch 1, sc in the end of each row of the brim, sl st in first sc to join. (12 sc)
Rnd 2: Ch 2, hdc in each st around, sl st in first hdc to join. (12 hdc)
Rnd 3: Ch 2, *hdc2tog, hdc in next 2 sts; rep from * around, sl st in first st to join. (9 sts)
Fasten off.
`;
  return Object.entries(changes).reduce((changed, [from, to]) => changed.replace(from, to), text);
};

describe('a brim worked sideways', () => {
  test('is seamed without a row, and the body goes on from its row ends', () => {
    expect(workedText(hat())).toMatchObject({
      codes: [],
      rows: [
        [
          'Foundation: 0',
          'Row 1: 7',
          ...Array.from({ length: 11 }, () => expect.stringMatching(/^Row.* 7$/)),
          'Rnd 1: 12',
          'Rnd 2: 12',
          'Rnd 3: 9',
        ],
      ],
    });
  });

  test.each([
    'Turn the seam to the inside.',
    'Turn the brim so that the seam is on the inside.',
    'Turn so the seam lies at the back.',
    'Turn the band right side out.',
  ])('is still on the hook: %s', (turned) => {
    const turn = { 'Do not cut yarn.': `Do not cut yarn. ${turned}` };
    expect(workedText(hat(turn)).codes).toEqual([]);
    expect(workedText(hat({ ...turn, '(12 sc)': '(13 sc)' })).codes).toContain('count/mismatch');
  });

  test('is not, where more is said to be worked', () => {
    const more = { 'Do not cut yarn.': 'Do not cut yarn. Turn the seam to the inside, 3 sc in next st.' };
    expect(workedText(hat(more)).codes).not.toEqual([]);
  });

  test('is called by its heading without the strokes about it', () =>
    expect(transcribe({ file: 'hat.txt', text: hat() }).parts.map(({ name }) => name)).toEqual([
      'Brim',
      'Body',
    ]));

  test.each([
    ['another count of row ends', '(12 sc)', '(13 sc)', 'count/mismatch'],
    ['rows that no one edge has', 'the last row', 'the last rwo', 'phrase/unread'],
    ['one edge alone', 'the last row', 'the foundation chain', 'phrase/unread'],
    ['chains that are not said of', ' or ch 2', '', 'chain/unstated'],
  ])('does not take %s', (_, from, to, code) =>
    expect(workedText(hat({ [from]: to })).codes).toContain(code),
  );
});

describe('a rib turned on its side, with the rows above it counted anew', () => {
  const cuff = (turned: string, count: string): readonly string[] =>
    workedText(
      `Cuff\nUS terms\n\nCh 6.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (5 sc)\nRows 2-12: Ch 1, sc in BLO of each st across, turn. (5 sc)\n${turned}\nRow 1: Ch 1, hdc in each row end across, turn. (${count})\nRow 2: Ch 1, hdc in each st across, turn. (12 hdc)\n`,
    ).codes;

  test.each(['Turn the ribbing sideways.', 'Turn the rib on its side.', 'Turn work 90 degrees.'])(
    '%s',
    (turned) => {
      expect(cuff(turned, '12 hdc')).toEqual([]);
      expect(cuff(turned, '13 hdc')).toContain('count/mismatch');
    },
  );

  test('is not, where it is turned with a stitch worked', () =>
    expect(cuff('Turn the ribbing sideways, pf in next st.', '12 hdc')).not.toEqual([]));
});

describe('a first chain', () => {
  const mat = (said: string, row: string): readonly string[] =>
    workedText(
      `Mat\nUS terms\n\nGauge: 14 hdc = 10 cm\n\nNotes\nThe ch 2 at the start of a row ${said} as a stitch.\n\nCh 12.\nRow 1: Hdc in 3rd ch from hook (skipped ch do not count as a st) and in each ch across, turn. (10 hdc)\nRow 2: ${row}\n`,
    ).codes;

  test.each(["doesn't count", 'doesn’t count', 'does not count', 'never counts'])('that %s', (said) => {
    expect(mat(said, 'Ch 2, hdc in each st across, turn. (10 hdc)')).toEqual([]);
    expect(mat(said, 'Ch 2, sk first st, hdc in last 9 sts, turn. (10 hdc)')).toContain('count/mismatch');
  });

  test('that counts', () =>
    expect(mat('counts', 'Ch 2, sk first st, hdc in last 9 sts, turn. (10 hdc)')).toEqual([]));
});

describe('yarns', () => {
  test('are lettered behind what they are for', () => {
    const text = `Mat\nUS terms\n\nYarn\nMain colour A: 5 balls\nBorder colour B: 1 ball\nHigh colour C: 1 ball\n\nWith A, ch 5.\nRow 1: Sc in 2nd ch from hook and in each ch across. (4 sc)\n`;
    const { yarns } = transcribe({ file: 'mat.txt', text });
    expect(yarns.map(({ letter, balls }) => [letter, balls])).toEqual([
      ['A', [5]],
      ['B', [1]],
    ]);
  });
});
