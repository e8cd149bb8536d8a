/** Pasted rows that are for some of the sizes, and work that could not be made out: neither is lost in silence. */

import { expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const HEAD = `Harbour Hat
US terms
Sizes: Child (Adult)

Rnd 1: 8 hdc in magic ring, join with sl st in first hdc. (8)
Rnd 2: Ch 1, 2 hdc in each st around, join with sl st in first hdc. (16)
`;
const MORE = 'Ch 1, [hdc in next st, 2 hdc in next st] 8 times, join with sl st in first hdc. (24)';
const EVEN = 'Ch 1, hdc in each st around, join with sl st in first hdc. 16 (24)';

const EACH = [
  ['Rnd 1: 8', 'Rnd 2: 16', 'Rnd 3: 16'],
  ['Rnd 1: 8', 'Rnd 2: 16', 'Rnd 3: 24', 'Rnd 4: 24'],
];

test('a size named on a line of its own has the rows under it to itself, until all sizes are named', () => {
  const text = `${HEAD}Adult only:\nRnd 3: ${MORE}\nBoth sizes:\nRnd 3 (4): ${EVEN}\n`;
  expect(workedText(text)).toMatchObject({ codes: [], rows: EACH });
});

test('a size named before a row has that row to itself', () => {
  const text = `${HEAD}Adult only: Rnd 3: ${MORE}\nRnd 3 (4): ${EVEN}\n`;
  expect(workedText(text)).toMatchObject({ codes: [], rows: EACH });
});

test('"All sizes" goes on with the piece in hand', () => {
  const text = `${HEAD}All sizes:\nNext 3 (4) rnds: Ch 1, hdc in each st around, join with sl st in first hdc. (16)\n`;
  const { codes, rows } = workedText(text);
  expect(codes).toEqual([]);
  expect(rows.map((of) => of.length)).toEqual([5, 6]);
});

test.each([
  'Adult size only - Rnd 3: 3 hdc in each st around. (17)',
  'Both sizes - work even in hdc for 5 (7) rnds.',
])('%s: what reads like work and could not be made out is an error', (line) => {
  expect(workedText(`${HEAD}${line}\n`).codes).toContain('text/not-worked');
});

test('a remark among the rows is none', () => {
  expect(workedText(`${HEAD}I like this one best of all my hats.\n`).codes).not.toContain('text/not-worked');
});

test.each([
  ['US', 'sc', 'invisible decrease'],
  ['US', 'sc', 'single crochet decrease'],
  ['UK', 'dc', 'invisible decrease'],
])('%s: a decrease that is told by its looks alone is two %s together', (terms, sc, told) => {
  const text = `Tern Egg\n${terms} terms\n\nAbbreviations\n${sc} = ${terms === 'US' ? 'single' : 'double'} crochet\ninc = 2 ${sc} in the same st\ndec = ${told}\n\nRnd 1: 6 ${sc} in a magic ring. (6)\nRnd 2: inc x 6. (12)\nRnd 3: dec x 6. (6)\n`;
  const { codes, rows } = workedText(text);
  expect(codes.filter((code) => code !== 'text/abbreviation-unused')).toEqual([]);
  expect(rows).toEqual([['Rnd 1: 6', 'Rnd 2: 12', 'Rnd 3: 6']]);
});

test.each([
  [
    '20 inches wide and 60 inches long',
    'the height is stated as 60 in, but by the gauge it comes out at 10 in',
  ],
  [
    '50 cm (20 in) wide and 150 cm (60 in) long',
    'the height is stated as 150 cm, but by the gauge it comes out at 25.5 cm',
  ],
])('%s: a size is answered in the unit it is written in', (size, message) => {
  const text = `Cot Blanket\nUS terms\nFinished size: ${size}\nGauge: 14 sc and 16 rows = 4 in\n\nCh 71.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (70)\nRows 2-40: Ch 1, sc in each st across, turn. (70)\n`;
  expect(workedText(text).messages).toEqual([message]);
});

test('figures in brackets that are said to be for the larger size make two sizes', () => {
  const text =
    'Clover Strap\nUK terms\n\nFigures in brackets are for the larger size.\n\n12 (14) ch.\n1st row: 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 11 (13) dc.\n2nd row: 1 ch, 1 dc in each dc to end. 11 (13) dc.\n';
  const { codes, rows } = workedText(text);
  expect(codes).toEqual([]);
  expect(rows.map((of) => of.at(-1)?.replace(/^.*: /, ''))).toEqual(['11', '13']);
  expect(workedText(text.replace(/13\) dc\.\n$/, '14) dc.\n')).codes).toEqual(['count/mismatch']);
  expect(workedText(text.replace('Figures', 'Signs')).codes).not.toEqual([]);
});
