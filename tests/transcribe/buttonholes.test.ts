/** Bands with buttonholes: spaced by the maker, or told stitch by stitch and filled by the row after, which is another worked again. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { faultsOf, workedText } from './worked-text.ts';

const band = (holes: string, filled: string, count = 20) =>
  faultsOf(
    [
      'Band',
      'US terms.',
      '',
      'BAND',
      'Ch 21.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
      'Row 2: Ch 1, sc in each sc across, turn. (20 sc)',
      `Row 3: ${holes}`,
      `Row 4: As Row 2, ${filled}. (${count} sc)`,
      'Row 5: Ch 1, sc in each sc across. (20 sc)',
    ].join('\n'),
  );

describe('told stitch by stitch', () => {
  const HOLES =
    'Ch 1, sc in next 3 sc, *ch 2, sk 2 sc, sc in next 4 sc; rep from * once more, ch 2, sk 2 sc, sc in last 3 sc, turn. (14 sc, 3 ch-2 sps)';
  test.each([
    'working 2 sc in each ch-2 sp',
    'with 2 sc in each ch-2 space',
    'working 2 sc into each ch-2 sp',
  ])('filled by a row as another, %s', (filled) => {
    expect(band(HOLES, filled)).toEqual([]);
    expect(band(HOLES, filled.replace('2 sc', '3 sc')).join()).toContain('Row 4 makes 23 sc, but 20');
    expect(band(HOLES, filled, 21).join()).toContain('Row 4 makes 20 sc, but 21');
  });

  test('a row that goes into each of nothing has nothing to fill', () => {
    const row = band(HOLES, 'working 2 sc in each ch-2 sp').length;
    expect(row).toBe(0);
    expect(
      faultsOf(
        'Band\nUS terms.\n\nBAND\nCh 11.\nRow 1: Sc in 2nd ch from hook and in next 9 ch, turn. (10 sc)\nRow 2: As Row 1, working 2 sc in each ch-2 sp. (10 sc)',
      ),
    ).not.toEqual([]);
  });
});

describe('spaced by the maker', () => {
  test.each([
    'Ch 1, sc in each sc across, making 3 buttonholes evenly along the edge; for each buttonhole work ch 2, skip 2 sc.',
    'As Row 2, making 3 buttonholes evenly; for each buttonhole ch 2 and skip next 2 sts.',
    'As Row 2, working 3 buttonholes evenly spaced (ch 2, sk 2 sc for each).',
    'As Row 2, making 3 buttonholes evenly. For each buttonhole, skip 2 sc, ch 2.',
  ])('%s', (holes) => {
    const told = band(holes, 'working 2 sc in each ch-2 sp');
    expect(told.filter((one) => one.includes('could not be read'))).toEqual([]);
    expect(told.join()).toContain('left to the maker');
  });

  test('what else is told there is not lost', () => {
    expect(band('As Row 2, making 3 sc in the first sc.', 'with 2 sc in each ch-2 sp')).not.toEqual([]);
    expect(
      band(
        'As Row 2, making 3 buttonholes evenly; for each buttonhole frobble.',
        'with 2 sc in each ch-2 sp',
      ).join(),
    ).toContain('frobble');
  });
});

test('nothing false is told of a cardigan with a band like that', () => {
  expect(
    workedText(readFileSync(join(import.meta.dirname, '../pages/eighth/puddle-cardigan.txt'), 'utf8')).codes,
  ).not.toContain('phrase/unread');
});
