import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { phrasesOf } from '../../src/wording/phrases.ts';
import { printSpread, shortest } from '../../src/wording/print-spread.ts';
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
    // 21 / 15 = 7 / 5, so the floors 1.4, 2.8, 4.2, 5.6 and 7 give 1, 1, 2, 1, 2 and come again.
    expect(words(evenly(21, 15))).toBe(
      '*1 sc in each of next 2 row ends, 2 sc in next row end, 1 sc in next row end, 2 sc in next row end; rep from * twice more',
    );
  });

  test('inside a repeat the mark is another', () => {
    const voice = plainVoice('US', 'all');
    expect(printSpread(repeat([2, 1], 3), SC, phrasesOf(US).rowEnd, '†', voice)).toBe(
      '†2 sc in next row end, 1 sc in next row end; rep from † twice more',
    );
  });

  test('followed word by word it puts just as many stitches in each place as were asked for', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 1, maxLength: 60 }), (spread) => {
        const { before, cycle, passes, after } = shortest(spread);
        const followed = [...before, ...repeat(cycle, passes), ...after].flatMap((run) =>
          repeat([run.each], run.places),
        );
        expect(followed).toEqual(spread);
      }),
    );
  });
});

/** Common practice: floor((i + 1) n / e) - floor(i n / e) stitches in the i-th of e places. */
function evenly(stitches: number, places: number): number[] {
  return Array.from(
    { length: places },
    (_, i) => Math.floor(((i + 1) * stitches) / places) - Math.floor((i * stitches) / places),
  );
}

function words(spread: readonly number[]): string {
  return printSpread(spread, SC, phrasesOf(US).rowEnd, '*', plainVoice('US', 'all'));
}

function repeat<T>(cycle: readonly T[], times: number): T[] {
  return Array.from({ length: times }, () => cycle).flat();
}
