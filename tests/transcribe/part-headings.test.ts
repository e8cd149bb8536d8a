/** Headings of pieces: what they are called, how many to make, and the yarn said beside the name. */

import { describe, expect, test } from 'vitest';
import { compileText } from '../../src/compile.ts';
import { transcribe } from '../../src/transcribe/transcribe.ts';

const flower = (heading: string, more = '') =>
  `Meadow Flower\nUS terms\n\nYarn: A: yellow, B: pink\n\nCENTRE (yellow)\nRnd 1: 6 sc in magic ring, join with sl st in first sc. (6)\nFasten off.\n\n${heading}\nRnd 1: 6 sc in magic ring, join with sl st in first sc. (6)\nRnd 2: Ch 1, 2 sc in each st around, join with sl st in first sc. (12)\nFasten off.\n${more}`;

describe('a piece and its yarn', () => {
  test.each([
    ['Petals (make 5, colour B)', 'Petals', 5],
    ['PETALS (pink)', 'Petals', 1],
    ['Petal (make 5 in pink)', 'Petal', 5],
    ['Petals, pink (make 5):', 'Petals', 5],
    ['PETALS (B, x5)', 'Petals', 5],
  ])('%s', (heading, name, make) => {
    const text = flower(heading);
    const { parts } = transcribe({ file: 'flower.txt', text });
    expect(parts.map((part) => [part.name, part.make, part.lines[0]?.text])).toEqual([
      ['Centre', 1, 'With A.'],
      [name, make, 'With B.'],
    ]);
    const { diagnostics, sizes } = compileText({ file: 'flower.txt', text }, 'flower');
    expect(diagnostics.map(({ code }) => code)).toEqual([]);
    expect(sizes[0]?.fabric.rows.map(({ stitches }) => stitches)).toEqual([6, 6, 12]);
    const wrong = compileText({ file: 'flower.txt', text: text.replace('(12)', '(13)') }, 'flower');
    expect(wrong.diagnostics.map(({ code }) => code)).toEqual(['count/mismatch']);
  });

  test('that the rows name themselves is not said twice', () => {
    const text = flower('Petals (pink)').replaceAll('Rnd 1: 6 sc', 'Rnd 1: With B, 6 sc');
    const { parts } = transcribe({ file: 'flower.txt', text });
    expect(parts[1]?.lines[0]?.text).toBe(
      'Rnd 1: With B, 6 sc in magic ring, join with sl st in first sc. (6)',
    );
  });
});

test.each([
  ['BODY (worked in rounds)', 'Body (worked in rounds)'],
  ['BODY (worked in one piece, plain)', 'Body (worked in one piece, plain)'],
  ['Petals (teal)', 'Petals (teal)'],
])('words that are no yarn stay with the name: %s', (heading, name) => {
  const { parts } = transcribe({ file: 'flower.txt', text: flower(heading) });
  expect(parts[1]?.name).toBe(name);
  expect(parts[1]?.lines[0]?.text).toMatch(/^Rnd 1/);
});

test.each([
  [
    'Crown',
    'Rnds 3-4: Ch 1, hdc in each st around, join. (16)',
    'Body',
    'Rnds 5 (6)-7 (9): Ch 1, hdc in each st around, join. (16)',
  ],
  [
    'Sole',
    '3rd and 4th rnds: Ch 1, hdc in each st around, join. (16)',
    'Ankle',
    '5th rnd: Ch 1, hdc in each st around, join. (16)',
  ],
])('rows that go on counting are of the piece begun: %s', (first, rows, second, more) => {
  const text = `Hat\nUS terms\nSizes: S (M)\n\n${first}\nRnd 1: 8 hdc in magic ring, join. (8)\nRnd 2: Ch 1, 2 hdc in each st around, join. (16)\n${rows}\n\n${second}\n${more}\n`;
  const { parts } = transcribe({ file: 'hat.txt', text });
  expect(parts.map(({ name }) => name)).toEqual([first]);
});

test('a list of abbreviations under a sentence is no piece', () => {
  const text = `Cloth\n\nMaterials\nCotton\n\nI'm using US terms:\nch - chain\nsc - single crochet\n\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10)\n`;
  const { parts, terms } = transcribe({ file: 'cloth.txt', text });
  expect([parts.map(({ name }) => name), terms.told]).toEqual([['Piece'], 'stated']);
});
