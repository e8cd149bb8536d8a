/** What brackets and asterisks hold: groups into one place, repeats by number, repeats from an asterisk, asides. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Cursor } from './cursor.ts';
import {
  atBoundary,
  forgetSince,
  peek,
  skipToBoundary,
  spanAt,
  spanSince,
  takeAny,
  takeOneOf,
  wordAt,
} from './cursor.ts';
import { readAside } from './read-aside.ts';
import { readBracketedRows } from './read-bracketed-rows.ts';
import { readCounts } from './read-chain.ts';
import { namesChain, takeOfFoundation } from './read-foundation.ts';
import {
  readEndingLast,
  readOmitting,
  readThenToMark,
  readToMark,
  readWorkingOnly,
  takeEndingWith,
} from './read-last-pass.ts';
import { readPlace } from './read-place.ts';
import { readInAll, readStop, readTimes } from './read-stop.ts';
import { closesOnItself } from './read-unsaid.ts';
import { readWhat } from './read-what.ts';
import { reportUnread } from './report-unread.ts';
import type { GroupStep, Step, Stop } from './tree.ts';
import { WordSet } from './word-set.ts';

/** Brackets in brackets beyond this are refused; nobody could follow them. */
const DEEPEST = 12;

/** `( … ) in next st`, `[ … ] 3 times`, `(counts as dc)`, or an aside in words. */
export function readOpened(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  const open = peek(cursor);
  const aside = readAside(cursor);
  if (aside !== null) return aside;
  const rows = readBracketedRows(cursor);
  if (rows !== null) return [rows];
  if (cursor.depth >= DEEPEST) return tooDeep(cursor);
  cursor.at += 1;
  cursor.depth += 1;
  const before = cursor.faults.length;
  cursor.brackets += 1;
  const body = cursor.readSteps(cursor, 'bracket');
  cursor.brackets -= 1;
  cursor.depth -= 1;
  if (peek(cursor).kind !== 'close') {
    // "3 times" at the end of what was left open is no fault of its own.
    const inside = cursor.faults.splice(before).filter(({ code }) => code !== 'phrase/unread');
    for (const fault of inside) cursor.faults.push(fault);
    // What lies too deep hides where it was to be closed.
    if (inside.some(({ code }) => code === 'bracket/too-deep')) return null;
    return unclosed(cursor, from, open.text);
  }
  cursor.at += 1;
  const broken = cursor.faults.length > before;
  const placeFrom = cursor.at;
  const again = readRepeatWord(cursor);
  const stop = readTimes(cursor, placeFrom) ?? readEndStop(cursor) ?? readForEach(cursor);
  // `(sc 2, inc) repeat 5 times` may count what is written or not, like `rep from * 5 times`.
  if (stop?.kind === 'times' && again && !stop.more)
    return broken
      ? null
      : [{ kind: 'repeat', body: body.steps, lastPassEnds: null, stop, span: spanSince(cursor, from) }];
  if (stop !== null) {
    const bracket: Step = { kind: 'bracket', body: body.steps, stop, span: spanSince(cursor, from) };
    // `(3 tr, 2 ch) 3 times in ring`: all of it into one place.
    const into = wordAt(cursor) === 'in' || wordAt(cursor) === 'into' ? readPlace(cursor) : null;
    if (broken) return null;
    return into === null
      ? [bracket]
      : [{ kind: 'group', body: [bracket], place: into.place, span: spanSince(cursor, from) }];
  }
  const read = readPlace(cursor);
  if (read !== null) {
    const skipped =
      read.place.kind === 'from-hook' && peek(cursor).kind === 'open' ? readCounts(cursor) : null;
    const group = {
      kind: 'group',
      body: body.steps,
      place: read.place,
      span: spanSince(cursor, from),
    } as const;
    if (namesChain(read.place) && takeOfFoundation(cursor)) {
      const span = spanSince(cursor, from);
      return broken
        ? null
        : [
            { kind: 'along', edge: 'foundation', span },
            { ...group, span },
          ];
    }
    const more = readAndInto(cursor, group);
    if (broken) return null;
    return [skipped === null ? group : { ...group, skipped }, ...more];
  }
  if (broken) return null;
  if (closesOnItself(body.steps)) return body.steps;
  const span = spanSince(cursor, from);
  cursor.faults.push(diagnose('bracket/no-use', { file: cursor.context.file, span }, {}));
  // Whether it is worked once the rest of the line may tell.
  const once = { kind: 'times', n: { values: [1], span }, more: false, span } as const;
  return [{ kind: 'bracket', body: body.steps, stop: once, span }];
}

/** `(2 dc, ch 1, 2 dc) in same sp and in each ch-1 sp across`: the same into other places. */
function readAndInto(cursor: Cursor, group: GroupStep): readonly Step[] {
  const steps: Step[] = [];
  while (wordAt(cursor) === 'and' && (wordAt(cursor, 1) === 'in' || wordAt(cursor, 1) === 'into')) {
    const start = cursor.at;
    cursor.at += 1;
    const place = readPlace(cursor)?.place;
    if (place === undefined) {
      cursor.at = start;
      break;
    }
    steps.push({ ...group, place, span: spanSince(cursor, start + 1) });
  }
  return steps;
}

/** What brackets hold when what is done with it was said before them; null, cursor unmoved, where more follows. */
export function readOnlyBody(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  const faults = cursor.faults.length;
  if (cursor.depth >= DEEPEST) return null;
  cursor.at += 1;
  cursor.depth += 1;
  cursor.brackets += 1;
  const { steps } = cursor.readSteps(cursor, 'bracket');
  cursor.brackets -= 1;
  cursor.depth -= 1;
  if (peek(cursor).kind === 'close' && steps.length > 0 && cursor.faults.length === faults) {
    cursor.at += 1;
    if (atBoundary(cursor) || peek(cursor).kind === 'open') return steps;
  }
  forgetSince(cursor, faults);
  cursor.at = from;
  return null;
}

/** `rep`, `repeated` behind a bracket, before how often or how far: `(sc 2, inc) repeat around`. */
function readRepeatWord(cursor: Cursor): boolean {
  const from = cursor.at;
  if (peek(cursor).kind === 'comma' || peek(cursor).kind === 'semicolon') cursor.at += 1;
  if (takeAny(cursor, 'rep', 'repeat', 'repeated') !== null) {
    const at = cursor.at;
    const said = endWordAt(cursor) || readTimes(cursor, at) !== null;
    cursor.at = at;
    if (said) return true;
  }
  cursor.at = from;
  return false;
}

/** `(…) for each V-st across`; behind `*(…) for each V-st*` it is said how far, so that a pass is one of them. */
function readForEach(cursor: Cursor): Stop | null {
  const from = cursor.at;
  if (
    takeAny(cursor, 'for') !== null &&
    takeAny(cursor, 'each', 'every') !== null &&
    readWhat(cursor) !== null
  ) {
    const span = spanSince(cursor, from);
    if (peek(cursor).kind === 'mark') return { kind: 'times', n: { values: [1], span }, more: false, span };
    const stop = readEndStop(cursor);
    if (stop !== null || atBoundary(cursor)) return stop ?? { kind: 'end', word: 'across', span };
  }
  cursor.at = from;
  return null;
}

/** `*…*, do that 4 times`, `*…* repeat that to the last sc`, `*…* keep going from * to * to the end`. */
function takeThatAgain(cursor: Cursor): boolean {
  const from = cursor.at;
  const parted = peek(cursor).kind === 'comma';
  if (parted) cursor.at += 1;
  // `*…*, 4 times`.
  if (parted && peek(cursor).kind === 'number' && TIMES.holds(peek(cursor, 1))) return true;
  const word = takeOneOf(cursor, AGAIN);
  if (word === 'keep') {
    takeAny(cursor, 'going', 'repeating', 'doing');
    if (takeAny(cursor, 'this', 'that') !== null) return true;
    if (takeAny(cursor, 'from') !== null && takeMark(cursor) && readToMark(cursor, '*')) return true;
  } else if (word !== null && takeAny(cursor, 'that', 'this') !== null) return true;
  cursor.at = from;
  return false;
}

const TIMES = new WordSet(['times', 'x']);
const AGAIN = new WordSet(['do', 'repeat', 'rep', 'work', 'keep']);

/** `around`, `across`, `to last 2 sts`, `to next corner sp` after a bracket. */
function readEndStop(cursor: Cursor): Stop | null {
  const word = wordAt(cursor);
  return endWordAt(cursor) || word === 'to' ? readStop(cursor) : null;
}

function endWordAt(cursor: Cursor): boolean {
  return wordAt(cursor) === 'around' || wordAt(cursor) === 'across';
}

/** Passes what a bracket or asterisk too deep down holds, up to where it is closed. */
function tooDeep(cursor: Cursor): null {
  const first = peek(cursor);
  const facts = { open: first.text, limit: DEEPEST };
  cursor.faults.push(
    diagnose('bracket/too-deep', { file: cursor.context.file, span: spanAt(cursor, cursor.at) }, facts),
  );
  let open = 0;
  for (let token = first; token.kind !== 'end'; token = peek(cursor)) {
    if (token.kind === 'close' && open === 0) return null;
    if (token.kind === 'open') open += 1;
    if (token.kind === 'close') open -= 1;
    cursor.at += 1;
    if (token.kind === 'close' && open === 0) break;
  }
  skipToBoundary(cursor);
  return null;
}

function unclosed(cursor: Cursor, from: number, open: string): null {
  cursor.faults.push(
    diagnose('bracket/unclosed', { file: cursor.context.file, span: spanAt(cursor, from) }, { open }),
  );
  return null;
}

/** `*…; rep from * across`, `*…**, …; rep from * around, ending last rep at **`. */
export function readStar(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  const star = peek(cursor).text;
  if (cursor.depth >= DEEPEST) return tooDeep(cursor);
  cursor.at += 1;
  cursor.depth += 1;
  const before = cursor.faults.length;
  const body = cursor.readSteps(cursor, star);
  cursor.depth -= 1;
  if (body.closedByMark) {
    cursor.marked = body.steps;
    const at = cursor.at;
    const again = takeThatAgain(cursor);
    const times = readTimes(cursor, cursor.at) ?? (again ? readStop(cursor) : readEndStop(cursor));
    if (times === null) cursor.at = at;
    if (cursor.faults.length > before) return null;
    if (times === null) return body.steps;
    return [{ kind: 'bracket', body: body.steps, stop: times, span: spanSince(cursor, from) }];
  }
  const rep = takeAny(cursor, 'rep', 'repeat', 'work');
  if (rep === null) {
    if (cursor.faults.length === before)
      cursor.faults.push(
        diagnose('repeat/no-end', { file: cursor.context.file, span: spanAt(cursor, from) }, {}),
      );
    return null;
  }
  cursor.at += 2;
  const toMark = body.markAt !== null && readToMark(cursor, '**');
  const stop = readInAll(cursor) ?? readStop(cursor) ?? endsUnsaid(cursor, from);
  if (stop === null) {
    const said = cursor.at;
    skipToBoundary(cursor);
    if (cursor.faults.length > before) return null;
    // "rep from * to * once" says how far, in a way that is not read.
    if (cursor.at > said)
      reportUnread(cursor, said - 3, 'how often or how far, such as "across" or "5 more times",');
    else
      cursor.faults.push(
        diagnose('repeat/no-stop', { file: cursor.context.file, span: spanSince(cursor, from) }, {}),
      );
    return null;
  }
  const span = spanSince(cursor, from);
  if (toMark) {
    if (cursor.faults.length > before) return null;
    // All of it once as it is met, then as often as said only what stands before `**`.
    return [
      ...body.steps,
      { kind: 'bracket', body: body.steps.slice(0, body.markAt ?? 0), stop: asWritten(stop), span },
    ];
  }
  const omitted = readOmitting(cursor, body.steps) ?? readWorkingOnly(cursor, body.steps);
  const once = omitted === null && body.markAt !== null ? readThenToMark(cursor, star, stop) : null;
  const endsAtMark = once !== null || (omitted === null && readEndingLast(cursor));
  const endsWith = omitted === null && !endsAtMark && stop.kind === 'end' ? takeEndingWith(cursor) : null;
  if (cursor.faults.length > before) return null;
  if (omitted === null && endsAtMark !== (body.markAt !== null)) {
    const expected = endsAtMark
      ? 'a ** in the repeat, where the last pass ends,'
      : '"ending last rep at **" after the repeat';
    reportUnread(cursor, from, expected);
    return null;
  }
  const lastPassEnds = omitted ?? body.markAt;
  const repeat: Step = {
    kind: 'repeat',
    body: body.steps,
    lastPassEnds,
    stop: once ?? stop,
    span: spanSince(cursor, from),
  };
  return [endsWith === null ? repeat : { ...repeat, endsWith }];
}

/** `rep from *, ending last rep with …`: to the end, though the word is not said; null where the last pass is not told. */
function endsUnsaid(cursor: Cursor, from: number): Stop | null {
  const at = peek(cursor).kind === 'comma' ? 1 : 0;
  const ends = ENDS_LAST.holds(peek(cursor, at)) && wordAt(cursor, at + 1) === 'last';
  if (!ends || !wordAt(cursor, at + 2).startsWith('rep')) return null;
  return { kind: 'end', word: 'across', span: spanSince(cursor, from) };
}

const ENDS_LAST = new WordSet(['ending', 'end', 'finishing']);

/** `rep from * to * once`, `rep between *s 3 times` (the word "rep" already read); null when neither stands here. */
export function readBetweenMarks(cursor: Cursor, from: number): readonly Step[] | null {
  const start = cursor.at;
  const { marked } = cursor;
  if (marked === null) return null;
  const named =
    (takeAny(cursor, 'from') !== null && takeMark(cursor) && (readToMark(cursor, '*') || true)) ||
    (takeAny(cursor, 'between', 'bet', 'btw') !== null &&
      (takeMark(cursor) || takeAny(cursor, 'asterisks') !== null));
  if (named && wordAt(cursor) === 's' && peek(cursor).glued) cursor.at += 1;
  if (named && takeAny(cursor, 'and') !== null) takeMark(cursor);
  const stop = named ? readStop(cursor) : null;
  if (stop === null) {
    cursor.at = start;
    return null;
  }
  return [{ kind: 'bracket', body: marked, stop: asWritten(stop), span: spanSince(cursor, from) }];
}

/** What is repeated has been worked once already: "once more" and "once" are then one more pass. */
function asWritten(stop: Stop): Stop {
  return stop.kind === 'times' ? { ...stop, more: false } : stop;
}

function takeMark(cursor: Cursor): boolean {
  if (peek(cursor).kind !== 'mark') return false;
  cursor.at += 1;
  return true;
}
