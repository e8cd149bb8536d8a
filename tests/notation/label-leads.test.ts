/** What stands in brackets behind a label holds for its row: a yarn, a loop. */

import { describe, expect, test } from 'vitest';
import { readInstructions } from '../../src/notation/read.ts';
import { plainText } from '../../src/source/mapped-text.ts';
import { contextOf } from './read-lines.ts';

const context = {
  ...contextOf('US', { sizes: 1, yarns: ['A', 'B'] }),
  yarnNames: [{ words: ['moss', 'green'], letter: 'B' }],
};

function read(line: string) {
  const { instructions, diagnostics } = readInstructions(plainText(line), context);
  return {
    steps: instructions.lines.flatMap(({ steps }) => steps),
    codes: diagnostics.map(({ code }) => code),
  };
}

describe('a yarn in brackets behind the label', () => {
  test.each([
    ['Rnd 4 (B): Ch 1, sc in each st around.', 'B'],
    ['Row 2 (with A): Ch 1, sc in each st across.', 'A'],
    ['Row 2 (moss green) – Ch 1, sc in each st across.', 'B'],
    ['Rnd 4 (B): Join with sl st in any ch-2 sp, sc in same sp.', 'B'],
  ])('%s', (line, yarn) => {
    expect(read(line).steps[0]).toMatchObject({ kind: 'yarn', yarn });
  });

  test('gives way to one that the row names itself', () => {
    const yarns = read('Row 3 (B): With A, sc in each st across.').steps.filter(
      ({ kind }) => kind === 'yarn',
    );
    expect(yarns).toMatchObject([{ yarn: 'A' }]);
  });

  test('is told where the list has none of that letter', () => {
    expect(read('Row 3 (C): Ch 1, sc in each st across.').codes).toEqual(['yarn/unlisted']);
  });
});

test.each(['Rnd 5 (BLO): Sc in each st around.', 'Rnd 5 (in back loops only): Sc in each st around.'])(
  'a loop in brackets behind the label holds for the round: %s',
  (line) => {
    expect(read(line).steps[0]).toMatchObject({ kind: 'loops', loop: 'back' });
  },
);

test('a remark there is no work', () => {
  expect(read('Rnd 5 (handles): Sc in each st around.').steps.map(({ kind }) => kind)).toEqual(['work']);
});
