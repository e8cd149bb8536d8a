/** Notes to the maker that a later row comes back to: where a marker was placed, and where it goes as the work grows. */

import { addFlag, type Builder, firstTarget, hasFlag } from './builder.ts';
import { FLAG, NONE } from './fabric.ts';
import type { Worker } from './worker.ts';

const LEAD = '(?:(?:place|put|hang) (?:a |the )?(?:stitch )?marker|pm|mark)(?: (?:in|into|on))?';
const IN_LAST = new RegExp(`^${LEAD}\\b.*\\b(?:just made|last st made|it|this st|that st)\\b`, 'i');
/** `mark the center st`, `place marker in 20th sc`, `mark the middle sc of the 3`. */
const IN_NAMED = new RegExp(
  String.raw`^${LEAD} (?:the )?(?:(cent(?:er|re)|middle)|(\d+)(?:st|nd|rd|th)) (?:one|sts?|stitch|[a-z]{2,4})(?:( of (?:the|these|those|last) (?:last )?(?:\d|three|five)\b)|\b)`,
  'i',
);

/** `place marker in st just made`: the marker sits in the last stitch made; `mark the center st`: in that of the row so far. */
export function noteMarker(worker: Worker, text: string): void {
  const named = IN_NAMED.exec(text);
  if (named === null && !IN_LAST.test(text)) return;
  const [, middle, nth, ofLast] = named ?? [];
  const made = madeIn(worker);
  const last = made.at(-1);
  if (named === null || last === undefined) {
    if (last !== undefined) addFlag(worker.builder, last, FLAG.marked);
    return;
  }
  const among = ofLast === undefined ? made : standingWith(worker, made, last);
  // Of an even number none is the middle.
  const at = middle !== undefined ? (among.length - 1) / 2 : Number(nth) - 1;
  const one = among[at];
  if (one !== undefined) addFlag(worker.builder, one, FLAG.marked);
}

/** Those of the row so far that count, in the order they were made. */
function madeIn({ builder, rowFirst }: Worker): number[] {
  const made: number[] = [];
  for (let i = rowFirst; i < builder.kind.length; i += 1)
    if ((builder.countsAs[i] ?? NONE) !== NONE) made.push(i);
  return made;
}

function standingWith({ builder }: Worker, made: readonly number[], last: number): number[] {
  return made.filter((i) => firstTarget(builder, i) === firstTarget(builder, last));
}

/**
 * A marker is moved up with the work: into the stitch made in the marked one, or the middle of as many as are odd
 * (common practice). Two made there leave it open which, and a marker placed on the row itself stays.
 */
export function carryMarks(worker: Worker): void {
  const { builder, rowFirst } = worker;
  if (!worker.sites?.some(({ marked }) => marked) && !worker.below?.sites.some(({ marked }) => marked))
    return;
  const made = madeIn(worker);
  const onMark = (i: number): boolean =>
    targetsOf(builder, i).some((target) => target < rowFirst && hasFlag(builder, target, FLAG.marked));
  if (made.some((i) => hasFlag(builder, i, FLAG.marked) && !onMark(i))) return;
  for (const i of made) {
    if (!onMark(i)) continue;
    const together = standingWith(worker, made, i);
    if (together.some((one) => hasFlag(builder, one, FLAG.marked))) continue;
    const middle = together[(together.length - 1) / 2];
    if (middle !== undefined) addFlag(builder, middle, FLAG.marked);
  }
}

function targetsOf({ into, intoStart }: Builder, index: number): readonly number[] {
  return into
    .slice(intoStart[index] ?? 0, intoStart[index + 1] ?? into.length)
    .filter((target) => target >= 0);
}
