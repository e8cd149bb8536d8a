/** A seed and a number of edits in; the trade's lines, edited at random and compiled, and what went wrong out. */

import { compilePattern } from '../../src/compile.ts';
import type { TradeLine } from './trade-lines.ts';
import { patternFor, readThemes } from './trade-lines.ts';

export interface FuzzReport {
  readonly done: number;
  readonly troubles: readonly string[];
  /** The line that is tried next. */
  readonly at: string;
}

const lines = readThemes().flatMap(({ lines: ofTheme }) => ofTheme);
const words = [...new Set(lines.flatMap(({ line }) => line.split(/\s+/)))];
const characters = [
  ...new Set(lines.flatMap(({ line }) => [...line])),
  '½',
  '\u{1F9F6}',
  '\u00a0',
  '\t',
  '"',
  '\\',
];

const [seed = 1, edits = 0] = process.argv.slice(2).map(Number);
if (edits > 0) tell(await fuzz(seed, edits));

async function fuzz(from: number, count: number): Promise<FuzzReport> {
  const random = randomFrom(from);
  const troubles: string[] = [];
  for (let done = 0; done < count; done += 1) {
    const of = pick(lines, random);
    const line = edited(of.line, random);
    // Told before it is tried, so that a line without end is known.
    tell({ done, troubles, at: line });
    const trouble = attempt(of, line);
    if (trouble !== null) troubles.push(`${of.terms}, on ${JSON.stringify(of.on)}: ${line}\n  ${trouble}`);
    // Messages leave the process only between the lines.
    await new Promise((resolve) => setImmediate(resolve));
  }
  return { done: count, troubles, at: '' };
}

/** What is wrong with how a line was read, or null. */
function attempt(of: TradeLine, line: string): string | null {
  const { text } = patternFor(of, line);
  try {
    const { diagnostics, sizes } = compilePattern({ file: 'line.yaml', text }, 'line');
    for (const { code, message, why, try: hint, span } of diagnostics) {
      if (span.start < 0 || span.end > text.length || span.end < span.start)
        return `${code} is outside the file`;
      if (/undefined|NaN|\[object|Infinity/.test(`${message} ${why} ${hint}`))
        return `${code}: ${message} ${hint}`;
    }
    for (const { stitches, spaces } of sizes.flatMap(({ fabric }) => fabric.rows)) {
      if (!Number.isInteger(stitches) || !Number.isInteger(spaces)) return `makes ${stitches} and ${spaces}`;
    }
    return null;
  } catch (error) {
    return error instanceof Error
      ? (error.stack ?? error.message).split('\n').slice(0, 4).join('\n  ')
      : String(error);
  }
}

/** One to four words or characters left out, doubled, swapped or put in the place of others. */
function edited(line: string, random: () => number): string {
  const times = 1 + Math.floor(random() * 4);
  let text = line;
  for (let n = 0; n < times; n += 1) {
    text =
      random() < 0.5
        ? editOne(text.split(' '), words, random).join(' ')
        : editOne([...text], characters, random).join('');
  }
  return text;
}

function editOne(
  pieces: readonly string[],
  others: readonly string[],
  random: () => number,
): readonly string[] {
  const at = Math.floor(random() * pieces.length);
  const piece = pieces[at] ?? '';
  const before = pieces.slice(0, at);
  const after = pieces.slice(at + 1);
  switch (Math.floor(random() * 4)) {
    case 0:
      return [...before, ...after];
    case 1:
      return [...before, piece, piece, ...after];
    case 2:
      return after[0] === undefined ? pieces : [...before, after[0], piece, ...after.slice(1)];
    default:
      return [...before, pick(others, random), ...after];
  }
}

function pick<T>(items: readonly T[], random: () => number): T {
  const item = items[Math.floor(random() * items.length)];
  if (item === undefined) throw new Error('nothing to pick from');
  return item;
}

/** Numbers from 0 up to 1, the same for the same seed (mulberry32, public domain). */
function randomFrom(from: number): () => number {
  let state = from >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

function tell(report: FuzzReport): void {
  process.send?.(report);
}
