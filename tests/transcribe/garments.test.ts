/** Magazine garments: an edge worked along, a pattern row by its name, a neck that loses a stitch each row, the second side. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const TEXT = `Small Vest
UK terms

Yarn: A: red wool, 4 balls
Sizes: small (large)

BACK The welt is worked sideways. With 4.00 mm hook make 6 ch. 1st row: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 5 dc. 2nd row: 1 ch, 1 dc in each st to end, turn. Rep 2nd row until 30 (34) rows have been worked in all. Do not fasten off but turn the welt on its side and work along the long edge thus: 1 ch, 1 dc in each row end, turn. 30 (34) dc.
Patt row: 1 ch, 1 dc in each st to end, turn.
Repeat the patt row 3 times more (5 rows worked, 4 cm).
Next row: ss in each of first 4 sts, 1 ch, 1 dc in each st to last 4 sts, turn. 22 (26) dc. ** Work 2 rows straight. Fasten off. The centre 10 (12) sts form the back neck.

FRONT Work as back to **. Divide for the neck. Next row: 1 ch, 1 dc in each of next 11 (13) sts, turn. 11 (13) dc. Work on these sts only for the first side. Dec 1 st at neck edge on each of the next 4 (5) rows. 7 (8) dc. Work straight until armhole matches back. Fasten off. Second side: rejoin yarn to next free st at centre front, 1 ch, 1 dc in each st to end, turn. 11 (13) dc. Finish to match the first side.`;

const vest = (changes: Readonly<Record<string, string>> = {}): string =>
  Object.entries(changes).reduce((text, [from, to]) => text.replace(from, to), TEXT);

const faultsOf = (changes: Readonly<Record<string, string>>): readonly string[] => {
  const { codes, messages } = workedText(vest(changes));
  return messages.filter((_, i) => /^(?:count|row|phrase|word|special)\//.test(codes[i] ?? ''));
};

describe('a slipover in paragraphs', () => {
  test('is worked whole', () => {
    expect(faultsOf({})).toEqual([]);
    const { parts } = transcribe({ file: 'vest.txt', text: vest() });
    expect(parts.map(({ name, onto }) => [name.toLowerCase(), onto])).toEqual([
      ['back', null],
      ['front', null],
      ['first side', 'Front'],
      ['second side', 'Front'],
    ]);
    const sides = workedText(vest()).rows[1]?.slice(-14) ?? [];
    expect(sides.map((row) => Number(/\d+$/.exec(row)?.[0]))).toEqual([
      ...[13, 12, 11, 10, 9, 8, 8],
      ...[13, 12, 11, 10, 9, 8, 8],
    ]);
  });

  test.each([
    ['With 4.00 mm hook', 'Using a 4 mm hook,'],
    [
      'turn the welt on its side and work along the long edge thus:',
      'turn the work sideways and work along the edge as follows:',
    ],
    ['Dec 1 st at neck edge on each of the next', 'Dec 1 st at the neck edge on next'],
    ['until armhole matches back', 'until armhole is the same length as back'],
    ['until armhole matches back', 'until armhole measures 20 (22) cm'],
    ['until armhole matches back', 'until front measures the same as back'],
    ['Finish to match the first side', 'Complete to match first side, reversing shaping'],
    ['Work as back to **', 'Work as given for back to **'],
    ['The centre 10 (12) sts form the back neck', 'The 10 (12) sts between the markers are the back neck'],
    ['to next free st at centre front', 'in next unworked st at neck edge'],
  ])('may say %s another way', (from, to) => {
    expect(faultsOf({ [from]: to })).toEqual([]);
  });

  test.each([
    [{ 'turn. 30 (34) dc': 'turn. 31 (34) dc' }, /makes 30 dc, but 31/],
    [{ '22 (26) dc. **': '22 (28) dc. **' }, /makes 26 dc, but 28/],
    [{ 'to last 4 sts, turn. 22 (26)': 'to last 3 sts, turn. 22 (26)' }, /makes 23 dc, but 22/],
    [{ 'next 4 (5) rows': 'next 4 (6) rows' }, /but 8 is stated/],
    [{ 'Dec 1 st': 'Inc 1 st' }, /makes 15 dc, but 7/],
    [{ 'next 11 (13) sts, turn. 11 (13)': 'next 10 (13) sts, turn. 10 (13)' }, /makes 12 dc, but 11/],
    [{ 'to next free': 'to next third' }, /could not be read|not a stitch/],
    [{ 'Work as back to **': 'Work as back to ***' }, /could not be read/],
    [{ 'Patt row:': 'Next row:' }, /could not be read/],
  ])('is held against its numbers: %o', (changes, fault) => {
    expect(faultsOf(changes).join('\n')).toMatch(fault);
  });
});

describe('a front that is another turned over', () => {
  const pair = (words: string): string =>
    `${vest()}\n\nLEFT FRONT\nMake 9 ch.\nPatt row: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 8 dc.\nRepeat the patt row 0 times more.\n\nRIGHT FRONT\n${words}`;
  test.each([
    'The dc fabric is alike on both sides. Work as given for Left Front, and turn the piece over.',
    'Work as for Left Front, reversing all shapings.',
  ])('has its rows: %s', (words) => {
    const { parts } = transcribe({ file: 'vest.txt', text: pair(words) });
    expect(parts.at(-1)?.name.toLowerCase()).toBe('right front');
    expect(parts.at(-1)?.lines.map(({ text }) => text)).toContain('Make 9 ch.');
  });
});

test('sizes without names are called by what they fit', () => {
  const text = vest({ 'Sizes: small (large)': 'Sizes: To fit bust 81-86 (91:96) cm' });
  const { sizes } = transcribe({ file: 'vest.txt', text });
  expect(sizes.map(({ name }) => name)).toEqual(['81-86 cm', '91 cm', '96 cm']);
});

test('a pattern row is told by its name once others are between', () => {
  expect(
    faultsOf({
      'Repeat the patt row': 'Next row: 1 ch, 1 dc in each st to end, turn.\nRepeat the patt row',
    }).join('\n'),
  ).toMatch(/could not be read/);
});
