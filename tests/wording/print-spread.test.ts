import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spread } from '../../src/fabric/spread.ts';
import { phrasesOf } from '../../src/wording/phrases.ts';
import { printSpread, shortest, TOGETHER } from '../../src/wording/print-spread.ts';
import { plainVoice } from '../../src/wording/voice.ts';

const US = { terms: 'US', form: 'abbreviated' } as const;
const SC = { kind: 'stitch', id: 'sc', span: { start: 0, end: 0 } } as const;

describe('a number of stitches spread over an edge', () => {
  test('a pattern that comes again is written once, with what is over after it', () => {
    expect(words([...repeat([1, 2], 10), 1])).toBe(
      '*1 sc in next row end, 2 sc in next row end; rep from * 9 more times, 1 sc in next row end',
    );
  });

  test('like row ends are taken together', () => {
    expect(words([1, 1, 1, 1])).toBe('1 sc in each of next 4 row ends');
    expect(words(repeat([1, 1, 2], 2))).toBe(
      '*1 sc in each of next 2 row ends, 2 sc in next row end; rep from * once more',
    );
    expect(words([1, 0, 0, 2])).toBe('1 sc in next row end, sk next 2 row ends, 2 sc in next row end');
  });

  test('21 over 15 row ends put a second stitch in two of every five', () => {
    // 21 / 15 = 7 / 5: with half a gap at each end 1, 2, 1, 2, 1, and that three times.
    expect(words(spread(21, 15))).toBe(
      '*1 sc in next row end, 2 sc in next row end, 1 sc in next row end, 2 sc in next row end, 1 sc in next row end; rep from * twice more',
    );
  });

  test('where more than one part comes again they stand in brackets, for a mark would not say which', () => {
    expect(words(spread(89, 60))).toBe(
      '[1 sc in next row end, 2 sc in next row end] 15 times, 1 sc in each of next 2 row ends, [2 sc in next row end, 1 sc in next row end] 14 times',
    );
  });

  test('a run is not cut in two to make a cycle that is no shorter', () => {
    expect(words(spread(23, 25))).toBe(
      '1 sc in each of next 6 row ends, sk next row end, 1 sc in each of next 11 row ends, sk next row end, 1 sc in each of next 6 row ends',
    );
  });

  test('two worked together go over two places', () => {
    expect(words([1, TOGETHER, 1, 1])).toBe(
      '1 sc in next row end, sc2tog over next 2 row ends, 1 sc in each of next 2 row ends',
    );
    expect(words([TOGETHER, TOGETHER, 1])).toBe('[sc2tog over next 2 row ends] twice, 1 sc in next row end');
  });

  test('inside a repeat the mark is another', () => {
    const voice = plainVoice('US', 'all');
    expect(printSpread(repeat([2, 1], 3), SC, phrasesOf(US).rowEnd, '†', voice)).toBe(
      '†2 sc in next row end, 1 sc in next row end; rep from † twice more',
    );
  });

  test('followed word by word it puts just as many stitches in each place as were asked for', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 1, maxLength: 60 }), (counts) => {
        const followed = shortest(counts).flatMap(({ runs, passes }) =>
          repeat(
            runs.flatMap((run) => repeat([run.each], run.places)),
            passes,
          ),
        );
        expect(followed).toEqual(counts);
      }),
    );
  });
});

function words(counts: readonly number[]): string {
  return printSpread(counts, SC, phrasesOf(US).rowEnd, '*', plainVoice('US', 'all'));
}

function repeat<T>(cycle: readonly T[], times: number): T[] {
  return Array.from({ length: times }, () => cycle).flat();
}
