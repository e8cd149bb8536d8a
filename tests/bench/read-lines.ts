/**
 * How many lines of instructions are read in a second, beside a bare pass over their words: what the reading costs is
 * the ratio between the two, whatever the machine.
 */

import { readInstructions } from '../../src/notation/read.ts';
import { tokenise } from '../../src/notation/tokens.ts';
import { plainText } from '../../src/source/mapped-text.ts';
import { GOOD_LINES } from '../notation/good-lines.ts';
import { contextOf } from '../notation/read-lines.ts';
import { readThemes } from '../notation/trade-lines.ts';
import { type PartText, readPatternParts, specialsOf } from './pattern-parts.ts';
import { quartileMs, tell } from './watch.ts';

/** Lines with far more in them than most, as one text. */
const DENSE_LINES = 2000;
const dense: PartText = {
  mapped: plainText(
    Array.from({ length: DENSE_LINES }, (_, i) => GOOD_LINES[i % GOOD_LINES.length] ?? '').join('\n'),
  ),
  context: contextOf('US', { sizes: 3 }),
};

/** Every line that the trade would understand, each by itself, in its own terms and sizes; some mean nothing without a row above. */
const tradeLines: readonly PartText[] = readThemes()
  .flatMap(({ lines }) => lines)
  .filter((of) => !('fault' in of.expect))
  .map((of) => ({
    mapped: plainText(of.line),
    context: contextOf(of.terms, {
      sizes: of.sizes ?? 1,
      ...specialsOf([of.line], of.terms, Object.keys(of.special ?? {})),
      yarns: of.yarns ?? [],
    }),
  }))
  .filter(({ mapped, context }) => readInstructions(mapped, context).diagnostics.length === 0);
const FEWEST_TRADE_LINES = 600;

export function readLines(): void {
  if (tradeLines.length < FEWEST_TRADE_LINES)
    throw new Error(`only ${tradeLines.length} lines of the trade are read`);
  compare('every pattern of the demo site and the tests, part by part', readPatternParts());
  compare('lines of the trade, one by one', tradeLines);
  compare('long lines, all in one text', [dense]);
}

function compare(name: string, texts: readonly PartText[]): void {
  const read = texts.map(({ mapped, context }) => readInstructions(mapped, context));
  const faulty = read.flatMap(({ diagnostics }) => diagnostics);
  if (faulty[0] !== undefined) throw new Error(faulty[0].message);
  const lines = read.reduce((sum, { instructions }) => sum + instructions.lines.length, 0);
  const splitMs = quartileMs(() => {
    for (const { mapped } of texts) tokenise(mapped.text);
  });
  const readMs = quartileMs(() => {
    for (const { mapped, context } of texts) readInstructions(mapped, context);
  });
  const aSecond = (ms: number): string => Math.round((lines / ms) * 1000).toLocaleString('en');
  tell(`${lines} lines: ${name}`, [
    [`only split into words and marks, ${aSecond(splitMs)} lines in a second`, splitMs],
    [`read into trees, ${aSecond(readMs)} lines in a second`, readMs],
  ]);
}
