/** A block of written instructions in, its syntax tree and every fault of its words out. Never throws. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { MappedText } from '../source/mapped-text.ts';
import type { Counts } from './chain-counts.ts';
import type { Context, Cursor, Shared } from './cursor.ts';
import {
  cursorOn,
  onTokens,
  peek,
  skipToBoundary,
  spanSince,
  startOf,
  textSince,
  wholeContext,
} from './cursor.ts';
import { lastOf } from './last-of.ts';
import { findName, lexiconOf } from './lexicon.ts';
import type { Instructions, Label, Line } from './line.ts';
import type { Num } from './num.ts';
import { withSpread } from './read-each-row.ts';
import { hookedStitch } from './read-hooked.ts';
import { type LabelRead, readLabel } from './read-label.ts';
import { readScope } from './read-scope.ts';
import { readSteps } from './read-steps.ts';
import { workedOnce } from './read-unsaid.ts';
import { looksLikeInstruction, reportUnread } from './report-unread.ts';
import { leaveOutEchoes } from './reported-words.ts';
import { lineSource, nextLine } from './split-lines.ts';
import { splitRepeats } from './split-repeats.ts';
import { closed } from './token.ts';
import { tokenise } from './tokens.ts';
import type { Step } from './tree.ts';
import { WordSet } from './word-set.ts';

export type { Context } from './cursor.ts';

/** Reads a part's instructions: rows, rounds and the sentences between them. */
export function readInstructions(
  mapped: MappedText,
  given: Context,
): { instructions: Instructions; diagnostics: Diagnostic[] } {
  const text = sharedBy(mapped, given, null);
  const { context, faults } = text;
  const lines: Line[] = [];
  let scope: readonly number[] | null = null;
  let reached = 0;
  const source = lineSource(text);
  for (let tokens = nextLine(source); tokens !== null; tokens = nextLine(source)) {
    const cursor = cursorOn(text, tokens, reached);
    const heading = readScope(cursor);
    const alone = heading !== null && peek(cursor).kind === 'end';
    if (alone) {
      scope = heading.sizes;
      continue;
    }
    cursor.scope = heading === null ? scope : heading.sizes;
    const read = readLine(cursor);
    if (read === null) continue;
    reached = reachedBy(read.label, reached);
    const sizes = heading === null ? scope : heading.sizes;
    const whole = sizes === null ? read : { ...read, sizes };
    const parts = cursor.repeatsRows ? splitRepeats(whole, context.file, faults) : NOT_SPLIT;
    const sized = parts[0] ?? whole;
    const before = lastOf(lines);
    // A count on a line of its own belongs to the row above it.
    if (
      sized.readable &&
      sized.label === null &&
      sized.steps.length === 0 &&
      sized.stated !== null &&
      before !== undefined &&
      before.stated === null
    )
      lines[lines.length - 1] = { ...before, stated: sized.stated };
    else if (before !== undefined && onlyJoins(sized) && isOneRow(before))
      // `Join with ss to first dc to work in rounds.` closes the row above it.
      lines[lines.length - 1] = { ...before, steps: [...before.steps, ...sized.steps] };
    else lines.push(sized);
    if (parts.length > 1) lines.push(...parts.slice(1));
  }
  return { instructions: { lines }, diagnostics: faults };
}

const NOT_SPLIT: readonly Line[] = [];

/** Nothing but a join to the first stitch, outside of any row. */
function onlyJoins({ label, stated, steps, readable }: Line): boolean {
  if (label !== null || stated !== null || !readable) return false;
  const joins = steps.filter(({ kind }) => kind === 'join');
  const [only] = joins;
  const closes = only?.kind === 'join' && !only.ring && only.place?.kind === 'first';
  return closes && joins.length === 1 && steps.every(({ kind }) => kind === 'join' || kind === 'note');
}

/** A row by itself that is neither joined nor turned. */
function isOneRow({ label, steps, readable }: Line): boolean {
  const one = label?.kind === 'numbered' && label.to === null && label.others === undefined;
  const ends = steps.some(({ kind }) => kind === 'join' || kind === 'turn' || kind === 'repeat rows');
  return one && readable && !ends;
}

/** At the beginning of a text, whose rows are known to be of a `unit` or not. */
function sharedBy(mapped: MappedText, given: Context, unit: Shared['part']['unit']): Shared {
  const context = wholeContext(given);
  return {
    mapped,
    context,
    lexicon: lexiconOf(context.terms, context.specials, context.fullNames),
    faults: [],
    offered: new Map(),
    part: { unit },
    patt: { rows: null, row: 0 },
    readSteps,
  };
}

/** Reads a description of stitches with no rows in it, such as `5 dc in same st`. */
export function readPhrase(
  mapped: MappedText,
  given: Context,
): { steps: readonly Step[]; diagnostics: Diagnostic[] } {
  const text = sharedBy(mapped, given, 'row');
  const { context, faults } = text;
  const tokens = tokenise(mapped.text);
  const cursor = cursorOn(text, tokens, 0);
  const hooked = hookedStitch(mapped.text, context.terms);
  if (hooked !== null) return { steps: [ofHand(cursor, hooked)], diagnostics: faults };
  const told = COUNTING.exec(mapped.text);
  if (told === null) return { steps: readSteps(cursor, 'line').steps, diagnostics: faults };
  const behind = tokens.starts.findIndex((start) => start >= told.index);
  const { steps } = readSteps(onTokens(cursor, closed(tokens, 0, behind)), 'line');
  if (!countsSo(steps, told[0])) {
    cursor.at = behind + 1;
    const from = cursor.at;
    skipToBoundary(cursor);
    reportUnread(cursor, from, null);
  }
  return { steps, diagnostics: faults };
}

/** `Not counted.`, `Counts as 1 st.` at the end of a description. */
const COUNTING =
  /[.;]\s*(?:(?:does |do )?not count(?:ed)?(?: as an? st(?:itch)?)?|counts as (?:1|one|an?) st(?:itch)?)\.?\s*$/i;

/** Whether the steps come to what is said of them, which is all that such a sentence is read for. */
function countsSo(steps: readonly Step[], said: string): boolean {
  const idle = (step: Step): boolean =>
    step.kind === 'chain' ||
    step.kind === 'note' ||
    (step.kind === 'work' && step.stitch.kind === 'stitch' && step.stitch.id === 'sl-st');
  if (/not/i.test(said)) return steps.every(idle);
  const made = steps.filter((step) => !idle(step));
  const [only] = made;
  return made.length === 1 && only?.kind === 'work' && (only.times === null || only.times.values[0] === 1);
}

/** A stitch told hook by hook, worked where it is used. */
function ofHand(cursor: Cursor, id: string): Step {
  cursor.at = cursor.tokens.length - 1;
  const span = spanSince(cursor, 0);
  const place = { kind: 'same', what: { kind: 'st' }, asJoin: false, span } as const;
  return {
    kind: 'work',
    stitch: { kind: 'stitch', id, span },
    times: null,
    place,
    loop: 'both',
    skipped: null,
    span,
  };
}

/** The highest row that is numbered once a line with this label is read. */
function reachedBy(label: Label | null, before: number): number {
  if (label === null || label.kind === 'named') return before;
  if (label.kind === 'next') return before + highest(label.n ?? null, 1);
  if (label.to === 'on') return EVERY_ROW;
  return Math.max(before, highest(label.from, 0), highest(label.to, 0));
}

/** Higher than any row. A whole number: the engine makes every cursor anew when one holds any other. */
const EVERY_ROW = 1e9;

function highest(n: Num | null, otherwise: number): number {
  if (n === null) return otherwise;
  let most = 0;
  for (const value of n.values) if (value !== null && value > most) most = value;
  return most;
}

function readLine(cursor: Cursor): Line | null {
  const before = cursor.faults.length;
  const heading = readHeading(cursor);
  if (heading !== null) return heading;
  const read = readLabel(cursor);
  const noteFrom = cursor.at;
  if (read?.label.kind === 'named' && /^notes?$/i.test(read.label.name)) {
    cursor.at = cursor.tokens.length - 1;
    const span = spanSince(cursor, 0);
    const text = cursor.mapped.text.slice(startOf(cursor, noteFrom), startOf(cursor, cursor.at)).trim();
    return noteLine(text, span);
  }
  cursor.openEnded = read?.label.kind === 'numbered' && read.label.to === 'on';
  const { steps: all, stated: counted } = readSteps(cursor, 'line');
  const spread = cursor.spreadOver !== null && all.filter(makes).length === 1 ? cursor.spreadOver : null;
  const stated = spread === null ? counted : withSpread(counted, spread);
  const written = cursor.faults.length > before ? workedOnce(cursor, before, all, stated !== null) : all;
  if (cursor.repeatsRows) holdRows(cursor, read?.label ?? null, written);
  const steps = ledBy(read?.leading ?? null, countingChains(written, cursor.counting));
  const span = spanSince(cursor, 0);
  if (steps.length === 0 && cursor.faults.length === before) {
    if (read === null) return null;
    const label = cursor.mapped.text.slice(startOf(cursor, 0), startOf(cursor, Math.max(0, noteFrom - 1)));
    cursor.faults.push(
      diagnose(
        'row/empty',
        { file: cursor.context.file, span: read.label.span },
        { label: label.replace(/[\s:]+$/, '') },
      ),
    );
  }
  const readable = cursor.faults.length === before;
  if (!readable) leaveOutEchoes(cursor, before);
  const side = read?.side ?? facingSide(steps);
  const line = { label: read?.label ?? null, side, steps, stated, readable, span };
  return !readable && read === null && steps.length === 0 && isProse(cursor)
    ? { ...line, prose: true }
    : line;
}

/** `Rounds 8 to 19. Same as Round 7, 12 more rounds`: the label has to name as many. */
function holdRows(cursor: Cursor, label: Label | null, steps: readonly Step[]): void {
  const said = steps.find((step) => step.kind === 'note' && step.rows !== undefined);
  if (said?.kind !== 'note' || said.rows === undefined) return;
  const numbered = label?.kind === 'numbered' ? label : null;
  const first = numbered?.from.values[0] ?? Number.NaN;
  const last = numbered?.to === 'on' ? Number.NaN : (numbered?.to?.values[0] ?? first);
  const rows = last - first + 1;
  if (said.rows.values[0] === rows) return;
  const facts = {
    words: said.text,
    expected: Number.isNaN(rows) ? 'a label with as many rows' : `${rows}, as many as the label names,`,
  };
  cursor.faults.push(diagnose('phrase/unread', { file: cursor.context.file, span: said.span }, facts));
}

/** Makes stitches, and does more than move the hook along. */
function makes(step: Step): boolean {
  if (step.kind === 'work') return step.stitch.kind !== 'stitch' || step.stitch.id !== 'sl-st';
  return 'body' in step || step.kind === 'evenly';
}

/** The row with what its label names before it; a yarn that is joined without a name is the one named there. */
function ledBy(leading: LabelRead['leading'], steps: readonly Step[]): readonly Step[] {
  if (leading === null || steps.length === 0) return steps;
  const at = leading.kind === 'yarn' ? steps.findIndex(({ kind }) => kind !== 'note') : -1;
  const first = steps[at];
  if (leading.kind !== 'yarn' || first?.kind !== 'yarn') return [leading, ...steps];
  if (first.yarn !== null) return steps;
  return [...steps.slice(0, at), { ...first, yarn: leading.yarn }, ...steps.slice(at + 1)];
}

/** What the count says of the row's first chain holds where nothing is said with the chain itself. */
function countingChains(steps: readonly Step[], counting: Counts | null): readonly Step[] {
  if (counting === null) return steps;
  const at = steps.findIndex(({ kind }) => kind === 'chain' || kind === 'work' || kind === 'group');
  const step = steps[at];
  const told =
    step?.kind === 'chain'
      ? { ...step, counts: step.counts ?? counting }
      : step?.kind === 'work' && step.place?.kind === 'from-hook'
        ? { ...step, skipped: step.skipped ?? counting }
        : step?.kind === 'group' && step.place.kind === 'from-hook'
          ? { ...step, skipped: step.skipped ?? counting }
          : null;
  return told === null ? steps : [...steps.slice(0, at), told, ...steps.slice(at + 1)];
}

/** The side said to face where the row begins: `With WS facing, join B in …`. */
function facingSide(steps: readonly Step[]): 'RS' | 'WS' | null {
  for (const step of steps) {
    if (step.kind === 'note' && step.facing !== undefined) return step.facing;
    if (step.kind !== 'note' && step.kind !== 'yarn') return null;
  }
  return null;
}

/** Words that no crochet instruction does without. */
const WORKING = new WordSet([
  'join',
  'fasten',
  'ch',
  'chain',
  'skip',
  'sk',
  'miss',
  'repeat',
  'rep',
  'turn',
  'st',
  'sts',
]);

/** No stitch, chain or join is named in the line. */
function isProse({ tokens, lexicon }: Cursor): boolean {
  return tokens.every(({ text }, at) => !WORKING.has(text) && findName(lexicon, tokens, at) === null);
}

/** A line of a few words that name no stitch and instruct nothing: `Shape cap`. It is kept as a note. */
function readHeading(cursor: Cursor): Line | null {
  const length = cursor.tokens.length - 1;
  if (cursor.at > 0 || length < 2 || length > LONGEST_HEADING) return null;
  const words = cursor.tokens.slice(0, -1);
  if (!words.every(({ kind }) => kind === 'word')) return null;
  if (words.some(({ text }, i) => looksLikeInstruction(cursor, text, i))) return null;
  cursor.at = cursor.tokens.length - 1;
  const span = spanSince(cursor, 0);
  const text = textSince(cursor, 0);
  return noteLine(text, span);
}

/** A line that is only told to the reader. */
function noteLine(text: string, span: Line['span']): Line {
  return {
    label: null,
    side: null,
    steps: [{ kind: 'note', text, span }],
    stated: null,
    readable: true,
    span,
  };
}

const LONGEST_HEADING = 5;
