/** Joins: of a round, of a yarn, at a place or an edge: `join B with sl st in any ch-2 sp`, `join yarn at the bottom of one long side`. */

import type { Cursor } from './cursor.ts';
import {
  atBoundary,
  peek,
  spanSince,
  takeAny,
  takeOneOf,
  takeWords,
  textSince,
  wordAt,
  writtenAt,
} from './cursor.ts';
import { takePointOfEdge } from './read-elsewhere.ts';
import type { OpeningFrom } from './read-foundation.ts';
import {
  FOUNDATION_WORDS,
  readEndOfSide,
  readFirstOfFoundation,
  readOpeningFrom,
  takeOfFoundation,
} from './read-foundation.ts';
import { leadsToPlace, readPlace, readPlaceWords } from './read-place.ts';
import { readWhat } from './read-what.ts';
import { readStitchName, takeNewYarn, takeRing, yarnStep } from './read-yarn.ts';
import { readYarnLetter } from './read-yarn-name.ts';
import type { JoinStep, Place, Step, StitchName } from './tree.ts';
import { WordSet } from './word-set.ts';

/** `join [B] [with sl st] [in first sc] [to form ring]`; `in first ch of foundation ch` goes along that edge. */
export function readJoin(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  const join = readJoinStep(cursor);
  if (join === null) return null;
  if (!atBoundary(cursor)) takeAsBefore(cursor);
  const { opening, place } = join;
  if (opening !== null)
    return [{ kind: 'along', edge: 'opening', from: opening, span: spanSince(cursor, from) }, join.step];
  const first = place?.kind === 'first' && place.what.kind === 'ch';
  if (!first || !(join.ofFoundation || takeOfFoundation(cursor))) return [join.step];
  return [{ kind: 'along', edge: 'foundation', span: spanSince(cursor, from) }, join.step];
}

/** `the same way`, `as before` behind a join: where the others joined. */
function takeAsBefore(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'as') !== null) {
    if (takeAny(cursor, 'before', 'usual', 'always', 'previously') !== null && atBoundary(cursor)) return;
  } else {
    takeAny(cursor, 'in');
    takeAny(cursor, 'the');
    if (
      takeAny(cursor, 'same') !== null &&
      takeAny(cursor, 'way', 'manner', 'place') !== null &&
      atBoundary(cursor)
    )
      return;
  }
  cursor.at = start;
}

/** `to work in rounds`, `to begin working in the round` behind a join: what for; the cursor stays where anything else is said. */
function takeForRounds(cursor: Cursor): void {
  const start = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'begin', 'start', 'continue', 'now');
  const works = takeAny(cursor, 'work', 'working') !== null && takeAny(cursor, 'in') !== null;
  takeAny(cursor, 'the');
  const round = works && takeAny(cursor, 'round', 'rounds', 'rnds') !== null;
  if (!round || !atBoundary(cursor)) cursor.at = start;
}

interface JoinRead {
  readonly step: Step;
  readonly place: Place | null;
  /** `first of the 37 base chains`: the edge is said with it. */
  readonly ofFoundation: boolean;
  /** Where round an opening it stands, if there. */
  readonly opening: OpeningFrom | null;
}

function readJoinStep(cursor: Cursor): JoinRead | null {
  const from = cursor.at;
  takeAny(cursor, 'join', 'joining', 'rejoin', 'attach');
  const yarn = readYarnLetter(cursor) ?? onlyYarn(cursor);
  // Where no yarn is listed there is one, and joining it in the first st moves nothing.
  const known = cursor.context.yarns.length === 0 || namesYarnBefore(cursor);
  const plain = yarn === null && known && takeTheYarn(cursor);
  const anew = yarn === null && !plain && takeNewYarn(cursor);
  let stitch: StitchName | null = null;
  // `join them into a ring`.
  if (yarn === null && !plain && !anew) takeAny(cursor, 'them', 'it', 'these');
  if (takeAny(cursor, 'with', 'by') !== null) {
    takeAny(cursor, 'a');
    stitch = readStitchName(cursor);
    if (stitch === null) {
      cursor.at = from;
      return null;
    }
  }
  let ring = takeRing(cursor);
  let place: Place | null = null;
  let opening: OpeningFrom | null = null;
  const at = cursor.at;
  const named = yarn === null && !plain && !anew ? null : takeAtSeam(cursor);
  const slips = stitch === null || (stitch.kind === 'stitch' && stitch.id === 'sl-st');
  // A stitch that stands there is one of the row: where it goes has to be known.
  const seam = slips ? named : null;
  if (!slips) cursor.at = at;
  const stem = takeAroundStem(cursor);
  const base =
    !ring && !stem && wordAt(cursor, 1) === 'the' && leadsToPlace(cursor)
      ? readFirstOfFoundation(cursor)
      : null;
  const ofFoundation = base !== null;
  if (base !== null) place = base;
  else if (!ring && (stem || leadsToPlace(cursor))) {
    place = stem
      ? readPlaceWords(cursor, cursor.at)
      : (readEndOfSide(cursor) ?? readPlace(cursor)?.place ?? null);
    if (place === null) {
      cursor.at = from;
      return null;
    }
    ring = takeRing(cursor);
    opening = readOpeningFrom(cursor, place);
    // `in first of 2 ch at thumb opening`: of the chains that go over it.
    if (opening?.which === 'chains')
      place = { kind: 'first', n: null, what: { kind: 'ch' }, span: place.span };
  }
  if (place !== null && wordAt(cursor) === 'to') takeForRounds(cursor);
  // `join B to first st with ss`.
  if (stitch === null && place !== null && wordAt(cursor) === 'with') {
    const with_ = cursor.at;
    cursor.at += 1;
    takeAny(cursor, 'a');
    stitch = readStitchName(cursor);
    if (stitch === null) cursor.at = with_;
  }
  // `join into a ring with ss in first ch`: where a ring is closed is known.
  if ((ring || place?.kind === 'ring') && leadsToPlace(cursor)) {
    const behind = cursor.at;
    const closes = readPlace(cursor)?.place ?? null;
    if (closes?.kind !== 'first' || closes.what.kind !== 'ch') cursor.at = behind;
  }
  if (plain && place === null && seam === null) {
    cursor.at = from;
    return null;
  }
  // `join yarn with sc in first skipped st`: the stitch is one of the round.
  const stands = stitch !== null && !(stitch.kind === 'stitch' && stitch.id === 'sl-st');
  // `in first skipped st, ch 1, sc in same st`: the hand stands there.
  const skipped = opening?.which === 'skipped';
  if (plain && (stands || skipped || (place?.kind !== 'first' && opening === null)))
    return {
      step: { ...yarnStep('join', null, stitch, place, cursor, from), only: true },
      place,
      ofFoundation,
      opening,
    };
  if (plain)
    return {
      step: { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) },
      place,
      ofFoundation,
      opening,
    };
  if (yarn !== null || anew) {
    const step = yarnStep('join', yarn, stitch, place, cursor, from);
    return { step: seam === null ? step : { ...step, when: seam }, place, ofFoundation, opening };
  }
  const span = spanSince(cursor, from);
  const join: JoinStep = {
    kind: 'join',
    stitch: stitch ?? { kind: 'stitch', id: 'sl-st', span },
    place,
    ring,
    span,
  };
  return { step: join, place, ofFoundation, opening };
}

/** `With A, join yarn in …`: it has been said which. */
function namesYarnBefore(cursor: Cursor): boolean {
  if (wordAt(cursor) !== 'yarn') return false;
  for (let at = 0; at < cursor.at; at += 1)
    if (cursor.context.yarns.includes(writtenAt(cursor, at))) return true;
  return false;
}

/** `around the stem of`, `round post of` before a stitch the yarn is joined to. */
function takeAroundStem(cursor: Cursor): boolean {
  const start = cursor.at;
  if (takeAny(cursor, 'around', 'round') !== null) {
    takeAny(cursor, 'the');
    if (takeAny(cursor, 'stem', 'post') !== null && takeAny(cursor, 'of') !== null) return true;
  }
  cursor.at = start;
  return false;
}

/** `at the seam`, `at a side seam`, `at a lower corner`: where the hand begins; the rows go on from there in the order they come. */
function takeAtSeam(cursor: Cursor): string | null {
  const from = cursor.at;
  if (takePointOfEdge(cursor) || takeStitchOfPiece(cursor)) return textSince(cursor, from);
  if (takeAny(cursor, 'at') === null) return null;
  takeAny(cursor, 'the', 'a', 'one', 'any');
  takeAny(cursor, 'side', 'back', 'shoulder');
  takeAny(cursor, 'lower', 'upper', 'bottom', 'top');
  takeAny(cursor, 'right', 'left', 'right-hand', 'left-hand');
  const named = takeAny(cursor, 'seam', 'corner') !== null || takeEndOfFoundation(cursor);
  if (named && atBoundaryOrAnd(cursor)) return textSince(cursor, from);
  cursor.at = from;
  return null;
}

/** `in first sc of any square along the top edge`: of a piece among those put together. */
function takeStitchOfPiece(cursor: Cursor): boolean {
  const start = cursor.at;
  if (takeAny(cursor, 'in', 'to', 'into') !== null) {
    takeAny(cursor, 'the');
    takeAny(cursor, 'first', 'any', 'last');
    if (readWhat(cursor) !== null && wordAt(cursor) === 'of' && takePointOfEdge(cursor)) return true;
  }
  cursor.at = start;
  return false;
}

/** `other end of the foundation ch`: where the second side begins. */
function takeEndOfFoundation(cursor: Cursor): boolean {
  takeAny(cursor, 'other', 'opposite', 'far');
  if (!takeWords(cursor, 'end', 'of')) return false;
  takeAny(cursor, 'the');
  return takeOneOf(cursor, FOUNDATION_WORDS) !== null && takeAny(cursor, 'ch', 'chain', 'edge') !== null;
}

function atBoundaryOrAnd(cursor: Cursor): boolean {
  return atBoundary(cursor) || wordAt(cursor) === 'and';
}

/** `yarn`, `the yarn`. */
function takeTheYarn(cursor: Cursor): boolean {
  if (wordAt(cursor) === 'the' && YARNS.holds(peek(cursor, 1))) cursor.at += 1;
  return takeAny(cursor, 'yarn', 'wool', 'cotton', 'thread') !== null;
}

const YARNS = new WordSet(['yarn', 'wool', 'cotton', 'thread']);

/** `join yarn`: the one there is. With several it has to be said which. */
function onlyYarn(cursor: Cursor): string | null {
  const [only, second] = cursor.context.yarns;
  if (only === undefined || second !== undefined) return null;
  return takeTheYarn(cursor) ? only : null;
}
