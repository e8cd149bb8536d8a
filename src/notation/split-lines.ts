/** A text of instructions in, the tokens of each of its lines out: a sentence may run on over the end of a printed line. */

import type { Cursor, Shared } from './cursor.ts';
import { cursorOn, startOf } from './cursor.ts';
import { isLabel, isNumberedLabel, isRowLabel } from './read-label.ts';
import type { Token, Tokens } from './token.ts';
import { closed, ended } from './token.ts';
import { isBlank, tokenise } from './tokens.ts';
import { WordSet } from './word-set.ts';

/** Where the lines of a text come from. A long text is taken apart stretch by stretch, so that only one is held at a time. */
export interface LineSource {
  readonly text: string;
  /** What labels are looked for with. */
  readonly looking: Shared;
  /** Where the next stretch begins. */
  from: number;
  /** The lines of the stretch in hand, and which of them is next. */
  lines: readonly Tokens[];
  next: number;
}

export function lineSource(text: Shared): LineSource {
  return { text: text.mapped.text, looking: lookingOnly(text), from: 0, lines: [], next: 0 };
}

/** The tokens of the next line; null behind the last. */
export function nextLine(source: LineSource): Tokens | null {
  while (source.next === source.lines.length) {
    if (source.from >= source.text.length) return null;
    const end = endOfStretch(source.text, source.from);
    const stretch = tokenise(source.text, source.from, end);
    source.lines = splitLines(stretch, cursorOn(source.looking, stretch, 0));
    source.next = 0;
    source.from = end + 1;
  }
  const line = source.lines[source.next] ?? null;
  source.next += 1;
  return line;
}

/** Looking for labels alone tells of no fault, offers no word and learns nothing. */
function lookingOnly({ mapped, context, lexicon, part, readSteps }: Shared): Shared {
  return {
    mapped,
    context,
    lexicon,
    faults: [],
    offered: NOTHING_OFFERED,
    part,
    patt: NO_PATTERN,
    readSteps,
  };
}

const NOTHING_OFFERED = new Map<string, string | null>();
const NO_PATTERN = { rows: null, row: 0 };

/** Where the first newline stands that ends a line whatever follows it. */
function endOfStretch(text: string, from: number): number {
  for (let at = text.indexOf('\n', from); at >= 0; at = text.indexOf('\n', at + 1)) {
    let last = at - 1;
    while (last >= from && isBlank(text.charCodeAt(last))) last -= 1;
    if (last < from || FINISHED.includes(text.charAt(last))) return at;
  }
  return text.length;
}

/** A line that ends with one of these is finished; see `isFinished`. */
const FINISHED = '.!)]}\n';

/**
 * The tokens of each line of a stretch. A label begins a line; so does a blank line, and a physical line after one that
 * was finished by a full stop or a count. Everything else goes on with the line before.
 */
function splitLines(stretch: Tokens, probe: Cursor): Tokens[] {
  const { tokens } = probe;
  const lines: Tokens[] = [];
  const last = tokens.length - 1;
  let first = 0;
  let broken = false;
  for (let i = 0; i < last; i += 1) {
    const kind = tokens[i]?.kind;
    if (kind === 'stop') {
      // `Ch 25. Row 1: Sc in …`: a labelled row after a full stop, on the same line of text.
      probe.at = i + 1;
      const behindCount = repeatsBehind(tokens, i + 1) && countEnds(tokens, first, i - 1);
      if (behindCount || isNumberedLabel(probe) || isNextRow(tokens, i + 1)) {
        lines.push(broken ? closed(stretch, first, i + 1) : ended(stretch, first, i + 1));
        first = i + 1;
        broken = false;
      }
      continue;
    }
    if (kind === 'close' && repeatsBehind(tokens, i + 1) && countEnds(tokens, first, i)) {
      lines.push(broken ? closed(stretch, first, i + 1) : ended(stretch, first, i + 1));
      first = i + 1;
      broken = false;
      continue;
    }
    if (kind !== 'newline') continue;
    const blank = tokens[i + 1]?.kind === 'newline';
    probe.at = i + 1;
    // A label on a line of its own: what stands under it is its row, however it begins.
    const led = tokens[i - 1]?.kind === 'colon';
    const begins = led
      ? isRowLabel(probe)
      : isFinished(tokens[i - 1]) || startsSentence(probe, i) || isBehindCount(probe, i) || isLabel(probe);
    if (blank || begins) {
      if (i > first) lines.push(broken ? closed(stretch, first, i) : ended(stretch, first, i));
      first = i + 1;
      broken = false;
    } else broken = true;
  }
  if (first === 0 && last > 0 && !broken) lines.push(stretch);
  else if (last > first) lines.push(broken ? closed(stretch, first, last) : ended(stretch, first, last));
  return lines;
}

/** `Next row: …`, `Next row 1 ch, …` in a line of several rows; `Next row is the right side` is none. */
function isNextRow(tokens: readonly Token[], at: number): boolean {
  if (tokens[at]?.text !== 'next' || !ROW_NAMES.has(tokens[at + 1]?.text ?? '')) return false;
  const behind = tokens[at + 2];
  return (
    behind !== undefined && (behind.kind === 'colon' || behind.kind === 'number' || behind.text === 'ch')
  );
}

const ROW_NAMES = new Set(['row', 'rnd', 'round']);

/** Whether `(20 sc)` or `20 sc` ends here behind a full stop. */
function countEnds(tokens: readonly Token[], first: number, last: number): boolean {
  let number = last - 1;
  if (tokens[last]?.kind === 'close') {
    while (number > first && tokens[number]?.kind !== 'open') number -= 1;
    return tokens[number + 1]?.kind === 'number' && tokens[number - 1]?.kind === 'stop';
  }
  return tokens[number]?.kind === 'number' && tokens[number - 1]?.kind === 'stop';
}

/** `Rep Rows 2-4`, `Repeat last 2 rows`: more rows behind the count of one. */
function repeatsBehind(tokens: readonly Token[], at: number): boolean {
  const then = tokens[at]?.text === 'then' ? at + 1 : at;
  const word = tokens[then]?.text;
  if (word !== 'rep' && word !== 'repeat') return false;
  const next = tokens[then + 1]?.text === 'the' ? tokens[then + 2] : tokens[then + 1];
  return next !== undefined && ROWS_REPEATED.has(next.text);
}

const ROWS_REPEATED = new WordSet([
  'row',
  'rows',
  'rnd',
  'rnds',
  'round',
  'rounds',
  'last',
  'these',
  'previous',
]);

/** Words that begin a sentence of their own, so that a line with no full stop before them is finished. */
const SENTENCE_STARTS = new WordSet([
  'fasten',
  'rep',
  'repeat',
  'work',
  'with',
  'join',
  'change',
  'weave',
  'draw',
  'thread',
  'gather',
  'do',
  'note',
  'stuff',
  'continue',
  'cut',
  'size',
  'sizes',
  'all',
  'both',
]);

/** A capital begins a sentence, unless what comes before it is not finished: a comma, an "and". */
function startsSentence(probe: Cursor, newline: number): boolean {
  const { tokens } = probe;
  const next = tokens[newline + 1];
  const before = tokens[newline - 1];
  if (next === undefined || next.kind !== 'word' || !SENTENCE_STARTS.has(next.text)) return false;
  if (before === undefined || before.kind === 'comma' || before.kind === 'semicolon' || before.text === 'and')
    return false;
  return isCapital(probe, newline + 1);
}

function isCapital(probe: Cursor, at: number): boolean {
  const first = probe.mapped.text.charAt(startOf(probe, at));
  return first !== first.toLowerCase();
}

/** `= 48 dc`, `= 36 dc and 2 loops of 6 ch` at the end of a line, and a capital on the next: the row is told. */
function isBehindCount(probe: Cursor, newline: number): boolean {
  const { tokens } = probe;
  const next = tokens[newline + 1];
  if (next === undefined || next.kind !== 'word') return false;
  if (!isCapital(probe, newline + 1)) return false;
  for (let at = newline - 1; at >= 0 && at > newline - LONGEST_COUNT; at -= 1) {
    const token = tokens[at];
    if (token === undefined || token.kind === 'newline' || token.kind === 'stop') return false;
    if (token.text === '=') return tokens[at + 1]?.kind === 'number';
  }
  return false;
}

const LONGEST_COUNT = 12;

function isFinished(token: Token | undefined): boolean {
  return token === undefined || token.kind === 'stop' || token.kind === 'close' || token.kind === 'newline';
}
