/**
 * How many lines of instructions are read in a second, beside a bare pass over their words: what the reading costs is
 * the ratio between the two, whatever the machine.
 */

import { bench, describe } from 'vitest';
import { readInstructions } from '../../src/notation/read.ts';
import { tokenise } from '../../src/notation/tokens.ts';
import { plainText } from '../../src/source/mapped-text.ts';
import { GOOD_LINES } from '../notation/good-lines.ts';
import { contextOf } from '../notation/read-lines.ts';
import { readThemes } from '../notation/trade-lines.ts';

const LINES = 2000;
const text = Array.from({ length: LINES }, (_, i) => GOOD_LINES[i % GOOD_LINES.length] ?? '').join('\n');
const context = contextOf('US', { sizes: 3 });

describe(`${LINES} lines of instructions`, () => {
  bench('split into words and marks only', () => {
    tokenise(text);
  });

  bench('read into trees', () => {
    const { diagnostics } = readInstructions(plainText(text), context);
    if (diagnostics.length > 0) throw new Error(diagnostics[0]?.message);
  });
});

/** Every line that the trade would understand, each by itself, in its own terms and sizes. */
const tradeLines = readThemes()
  .flatMap(({ lines }) => lines)
  .filter((of) => !('fault' in of.expect))
  .map((of) => ({
    mapped: plainText(of.line),
    context: contextOf(of.terms, {
      sizes: of.sizes ?? 1,
      specials: Object.keys(of.special ?? {}),
      yarns: of.yarns ?? [],
    }),
  }));

describe(`${tradeLines.length} lines of the trade, one by one`, () => {
  const split = timed(() => {
    for (const { mapped } of tradeLines) tokenise(mapped.text);
  });
  const read = timed(() => {
    for (const { mapped, context: own } of tradeLines) readInstructions(mapped, own);
  });

  bench('split into words and marks only, line by line', split.pass);

  bench('read into trees, line by line', read.pass, {
    teardown: (_, mode) => {
      if (mode !== 'run') return;
      const [splitMs, readMs] = [split.medianMs(), read.medianMs()];
      const aSecond = (ms: number): string =>
        Math.round((tradeLines.length / ms) * 1000).toLocaleString('en');
      process.stdout.write(
        `${aSecond(readMs)} lines read in a second on one core; only split, ${aSecond(splitMs)}: reading takes ${(readMs / splitMs).toFixed(1)} times as long\n`,
      );
    },
  });
});

/** The work with its own watch; the median, so that a pause of the machine does not weigh. */
function timed(work: () => void): { readonly pass: () => void; readonly medianMs: () => number } {
  const taken: number[] = [];
  return {
    pass: () => {
      const start = performance.now();
      work();
      taken.push(performance.now() - start);
    },
    medianMs: () => taken.toSorted((a, b) => a - b)[Math.floor(taken.length / 2)] ?? Number.NaN,
  };
}
