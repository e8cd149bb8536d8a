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
  const perSecond: number[] = [];
  /** Only what was measured is told, and only once both have been. */
  const told = {
    teardown: (task: { readonly result?: unknown } | undefined, mode: string | undefined) => {
      if (mode !== 'run') return;
      perSecond.push(passesPerSecond(task) * tradeLines.length);
      const [split = 0, read = 0] = perSecond;
      if (perSecond.length === 2)
        process.stdout.write(
          `${thousands(read)} lines read in a second on one core, ${thousands(split)} only split: ${(split / read).toFixed(1)} times as long\n`,
        );
    },
  };

  bench(
    'split into words and marks only, line by line',
    () => {
      for (const { mapped } of tradeLines) tokenise(mapped.text);
    },
    told,
  );

  bench(
    'read into trees, line by line',
    () => {
      for (const { mapped, context: own } of tradeLines) readInstructions(mapped, own);
    },
    told,
  );
});

/** From the middle of the times taken, so that a pause of the machine does not weigh. */
function passesPerSecond(task: { readonly result?: unknown } | undefined): number {
  const result = task?.result;
  if (typeof result !== 'object' || result === null || !('latency' in result)) throw new Error('not timed');
  const { latency } = result;
  if (typeof latency !== 'object' || latency === null || !('p50' in latency)) throw new Error('not timed');
  if (typeof latency.p50 !== 'number') throw new Error('not timed');
  return 1000 / latency.p50;
}

function thousands(n: number): string {
  return `${Math.round(n / 1000)},000`;
}
