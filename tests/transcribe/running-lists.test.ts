/** Terms, abbreviations and a stitch of her own in one paragraph; counts of several rows in one sentence; V-stitches worked into, before and behind. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { faultsOf, workedText } from './worked-text.ts';

const SHAWL = readFileSync(join(import.meta.dirname, '../pages/fourth/wattlebird-shawl.txt'), 'utf8');

function changed(from: string, to: string): string {
  expect(SHAWL).toContain(from);
  return SHAWL.replace(from, to);
}

describe('a list that runs on in a paragraph', () => {
  const read = (text: string) => transcribe({ file: 'shawl.txt', text });

  test('gives its terms, its stitch and what is said behind', () => {
    const { terms, specials, pieces } = read(SHAWL);
    expect(terms.value).toBe('UK');
    expect(specials.map(({ name, work }) => [name, work?.text])).toEqual([
      ['V', '(1 tr, 1 ch, 1 tr) in same st'],
    ]);
    expect(pieces.filter(({ kind }) => kind === 'abbreviation')).toHaveLength(6);
  });

  test('nothing is lost of one without a stitch, or without terms', () => {
    const plain = (list: string) =>
      read(`Cloth\n\n${list}\n\nMake 11 ch.\nRow 1: 1 dc in 2nd ch from hook, 1 dc in each ch to end.`);
    const told = plain(
      'You need to know: ch chain, ss slip stitch, dc double crochet, st stitch. Work loosely.',
    );
    expect(told.pieces.filter(({ kind }) => kind === 'abbreviation')).toHaveLength(4);
    expect(JSON.stringify([told.notes, told.about])).toContain('Work loosely');
    const few = plain('Note: ch chain, dc double crochet.');
    expect(few.pieces.filter(({ kind }) => kind === 'abbreviation').length).toBeLessThan(3);
  });
});

test('the shawl comes out to its frill', () => {
  expect(faultsOf(SHAWL)).toEqual([]);
  expect(workedText(SHAWL).rows[0]?.at(-1)).toBe('Row 31: 709');
});

describe('may also be written', () => {
  test.each([
    ['in the gap between the last V and the 3 ch', 'in the space between last V and turning ch'],
    ['in the gap before the first V', 'in the gap before first V'],
    ['5 tr in the last V', '5 tr in the 1ch sp of the last V'],
    ['5 tr in the last V', '5 tr in last V'],
    [', that is 59 each side of the middle', ' (59 each side)'],
    ["by Row 20 it's 78 V and at the end", 'after Row 20 you will have 78 V and at the end'],
    ['By the end of Row 10 ', 'After Row 10 '],
    [
      '(when you get to the middle, the 2ch sp is your gap, so the dc goes in there)',
      '(when you get to the middle the gap is the 2ch sp)',
    ],
  ])('"%s" as "%s"', (from, to) => expect(faultsOf(changed(from, to))).toEqual([]));
});

describe('told where', () => {
  test.each([
    ['the 10th row has fewer', "you'll have 38 V", "you'll have 37 V", 'Row 10 makes 38 V, but 37'],
    ['the 20th row has more', "it's 78 V", "it's 80 V", 'Row 20 makes 78 V, but 80'],
    [
      'the last row has fewer',
      'count 118 V, that is 59',
      'count 116 V, that is 58',
      'Row 30 makes 118 V, but 116',
    ],
    ['a half is not the half', 'that is 59 each', 'that is 58 each', 'could not be read'],
    [
      'a V is left out',
      'Vst in next V, (Vst, 2 ch, Vst) in the 2ch sp, Vst in next V',
      '(Vst, 2 ch, Vst) in the 2ch sp, Vst in next V',
      'Row 2',
    ],
    [
      'it is told what to do in the middle',
      'so the dc goes in there',
      'work 3 dc there',
      'could not be read',
    ],
    ['a shell is too small', '*5 tr in the 1ch sp', '*4 tr in the 1ch sp', 'Row 31'],
  ])('%s', (_, from, to, message) => expect(faultsOf(changed(from, to)).join('\n')).toContain(message));
});
