/** A line of the tree and what it made in the fabrics in, the line as it is printed out. */

import type { Line } from '../notation/line.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { Step } from '../notation/tree.ts';
import { type LineWork, withChainNumbers } from './chain-numbers.ts';
import { countWords } from './count-words.ts';
import { evenSpreads } from './even-spread.ts';
import { type RowRange, rangeOf } from './line-rows.ts';
import { printStated } from './print-count.ts';
import { printLabel, printRange } from './print-label.ts';
import { wordSteps } from './print-line.ts';
import { settleSteps } from './settle-steps.ts';
import type { Voice } from './voice.ts';
import type { WordedLine } from './words.ts';

/** What of a line is worded. */
export interface LineToWord {
  /** One size's own, where it is one size's. */
  readonly steps: readonly Step[];
  /** The numbers of its rows where only the fabric tells them: one pair a size. */
  readonly ranges: readonly [RowRange, ...RowRange[]] | null;
  /** The voice, with what is worked out for these steps. */
  readonly voice: Voice;
}

/** Null when the size does not work the line. `works` has an entry for each size printed; `sizes` counts all there are. */
export function wordLine(
  line: Line,
  works: readonly LineWork[],
  voice: Voice,
  sizes: number,
): WordedLine | null {
  const worded = lineToWord(line, works, voice, sizes);
  if (worded === null) return null;
  const { steps, ranges } = worded;
  const label =
    ranges === null ? printLabel(line, voice) : printRange(ranges[0].unit, ranges, line.side, voice);
  const text = wordSteps(steps, worded.voice);
  const rows = voice.numbers === 'all' ? [] : (works[0]?.rows ?? []);
  return { label, text, count: wordCount(line, works, voice), rows };
}

/** The count of a line as stated, or as its rows make it. */
export function wordCount(line: Line, works: readonly LineWork[], voice: Voice): string | null {
  return line.stated === null ? countWords(works, voice) : statedWords(line, works, voice);
}

/** Null when the size does not work the line. */
export function lineToWord(
  line: Line,
  works: readonly LineWork[],
  voice: Voice,
  sizes: number,
): LineToWord | null {
  const { numbers } = voice;
  if (numbers !== 'all' && skipsLine(line, numbers)) return null;
  const numbered = withChainNumbers(line.steps, works, sizes);
  const steps = numbers === 'all' ? numbered : settleSteps(numbered, numbers);
  if (steps.length === 0 && line.steps.length > 0) return null;

  const open = repeatsOpenly(line, steps);
  const [work] = works;
  if (open && numbers !== 'all' && work !== undefined && work.rows.length === 0) return null;
  const ranges = open && !works.some(isLeftOpen) ? rangesOf(works) : null;

  const spreads =
    numbers === 'all' || work === undefined ? new Map() : evenSpreads(steps, work.fabric, work.rows, numbers);
  return { steps, ranges, voice: { ...voice, spreads, rowsInLabel: ranges !== null } };
}

/** The count as stated; where the rows of a range differ it is the last one's, and says so. */
function statedWords(line: Line, works: readonly LineWork[], voice: Voice): string | null {
  if (line.stated === null) return null;
  const words = printStated(line.stated, voice);
  const grows = works.some(
    ({ fabric, rows }) => new Set(rows.map((row) => fabric.rows[row]?.stitches)).size > 1,
  );
  const unit = line.label !== null && line.label.kind !== 'named' ? line.label.unit : null;
  if (!grows || unit === null) return words;
  const noun = unit === 'row' ? voice.phrases.row.one : voice.phrases.round.one;
  return `${words} in last ${noun.toLowerCase()}`;
}

/** A row that a dash in its label, or a dash in all its numbers, leaves out of a size. */
function skipsLine({ label, sizes }: Line, size: number): boolean {
  if (sizes !== undefined && !sizes.includes(size)) return true;
  return label?.kind === 'numbered' && numberForSize(label.from, size) === null;
}

/** Whether only the fabric tells which rows a line covers: `Rows 4 on`, or `Rep Rows 2 and 3` without a label. */
function repeatsOpenly(line: Line, steps: readonly Step[]): boolean {
  if (line.label === null) return steps.some((step) => step.kind === 'repeat rows');
  return line.label.kind === 'numbered' && line.label.to === 'on';
}

/** How many rows there are was not said, so no numbers are printed for them. */
function isLeftOpen({ fabric, rows }: LineWork): boolean {
  return rows.some((row) => fabric.rows[row]?.open === true);
}

function rangesOf(works: readonly LineWork[]): [RowRange, ...RowRange[]] | null {
  const [first, ...rest] = works.map(({ fabric, rows }) => rangeOf(fabric, rows));
  if (first === undefined || first === null) return null;
  const others = rest.filter((range) => range !== null);
  return others.length === rest.length ? [first, ...others] : null;
}
