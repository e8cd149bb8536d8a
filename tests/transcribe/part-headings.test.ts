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
  ['Petals (teal)', 'Petals (teal)'],
])('words that are no yarn stay with the name: %s', (heading, name) => {
  const { parts } = transcribe({ file: 'flower.txt', text: flower(heading) });
  expect(parts[1]?.name).toBe(name);
  expect(parts[1]?.lines[0]?.text).toMatch(/^Rnd 1/);
});
