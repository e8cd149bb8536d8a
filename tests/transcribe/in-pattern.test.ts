/** Going on in a pattern whose rows are named, to a measure, and rows told as those of another piece by their ordinals. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const scarf = (forms: string, goes: string, gauge = '') =>
  workedText(
    `Scarf\nUK terms\n${gauge}\n\nSCARF\nMake 21ch.\n1st row: 1dc into 2nd ch from hook, 1dc into each ch to end, turn. 20dc.\n2nd row: 1ch, 1dc into each dc to end, turn.\n3rd row: 1ch, 1dc into each dc to end, turn. 20dc.\n${forms}\n${goes}\nFasten off.\n`,
  );

const GAUGE = 'Tension: 16 dc and 18 rows = 10 cm';

describe('rows that form the pattern are gone on with', () => {
  test.each([
    ['Rows 2 and 3 form the patt.', 'Continue in patt until work measures 10cm.'],
    ['Rows 2 and 3 form the pattern.', 'Cont in patt until work measures 10 cm.'],
    ['The 2nd and 3rd rows form the patt.', 'Cont in patt until work measures 10 cm.'],
    ['These 2 rows form the patt.', 'Continue in pattern until work measures 10cm.'],
    ['Rows 2 and 3 form the patt.', 'Continue in patt until work measures 10cm, ending after a 2nd row.'],
  ])('%s %s', (forms, goes) => {
    expect(scarf(forms, goes, GAUGE)).toMatchObject({
      codes: [],
      rows: [expect.arrayContaining(['Row 18: 20'])],
    });
  });

  test('once through where no gauge tells how many there are', () => {
    const { codes, rows } = scarf(
      'Rows 2 and 3 form the patt.',
      'Continue in patt until work measures 160cm, ending after a 3rd row.',
    );
    expect(codes).toEqual(['row/open-length']);
    expect(rows[0]?.at(-1)).toBe('Row 5: 20');
  });

  test.each([
    ['nothing forms it', '', 'phrase/unread'],
    ['rows form it that are not the last', 'Rows 1 and 2 form the patt.', 'phrase/unread'],
    ['rows form it that do not follow each other', 'Rows 1 and 3 form the patt.', 'phrase/unread'],
  ])('not where %s', (_, forms, code) => {
    expect(scarf(forms, 'Continue in patt until work measures 10cm.', GAUGE).codes).toContain(code);
  });

  test('to the row it says, or that is told', () => {
    expect(
      scarf(
        'Rows 2 and 3 form the patt.',
        'Continue in patt until work measures 10cm, ending after a 4th row.',
        GAUGE,
      ).codes,
    ).toContain('row/ending');
  });
});

describe('rows of another piece', () => {
  const edged = (rows: string) =>
    workedText(
      `Scarf\nUK terms\nYarn: DK wool\n\nSCARF\nMake 21ch.\n1st row: 1dc into 2nd ch from hook, 1dc into each ch to end, turn. 20dc.\n2nd row: 1ch, 1dc into each dc to end, turn. 20dc.\nDo not fasten off.\n\nEDGING\n1st row: 1ch, 1dc into each st to end, turn. 20dc.\n2nd row: 1ch, 2dc into each dc to end, turn. 40dc.\nFasten off.\n\nSECOND EDGING\nWith RS facing, rejoin yarn with a slip stitch to first ch of the foundation edge.\n${rows}\nFasten off.\n`,
    );
  const FIRST = '1st row: 1ch, 1dc into the base of each of the 20 foundation ch, turn. 20dc.';

  test.each(['2nd row: As 2nd row of Edging.', '2nd row: Work as for 2nd row of the edging. (40 dc)'])(
    '%s',
    (second) => {
      const { codes, rows } = edged(`${FIRST}\n${second}`);
      expect(codes).toEqual([]);
      expect(rows[0]?.at(-1)).toBe('Row 2: 40');
    },
  );

  test.each([
    ['a row that is not there', '2nd row: As 3rd row of Edging.'],
    ['a piece that is not there', '2nd row: As 2nd row of Collar.'],
    ['another count', '2nd row: As 2nd row of the edging. (41 dc)'],
  ])('told: %s', (_, second) => expect(edged(`${FIRST}\n${second}`).codes).not.toEqual([]));

  test('told: more chains than the foundation has', () => {
    expect(edged(FIRST.replace('the 20', 'the 21')).codes).not.toEqual([]);
  });
});
