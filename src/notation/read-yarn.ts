/** Colour changes, joins and endings: `with B`, `change to B in last yo`, `join B with sl st in any ch-2 sp`, `fasten off A`. */

import type { Cursor } from './cursor.ts';
import {
  atBoundary,
  nameHere,
  peek,
  skipToBoundary,
  spanSince,
  takeAny,
  takeOneOf,
  takeWords,
  textSince,
  wordAt,
} from './cursor.ts';
import type { Found } from './lexicon.ts';
import { findName } from './lexicon.ts';
import { takeByTurns } from './read-colour-order.ts';
import type { OpeningFrom } from './read-foundation.ts';
import { FOUNDATION_WORDS, readOpeningFrom, takeOfFoundation } from './read-foundation.ts';
import { readFacingSide } from './read-note.ts';
import { leadsToPlace, readPlace } from './read-place.ts';
import { isYarnHere, readYarnLetter } from './read-yarn-name.ts';
import type { JoinStep, Place, Step, StitchName, YarnStep } from './tree.ts';

/** `with B`, `using B`; null for "with sl st" and the like. */
export function readWithYarn(cursor: Cursor): Step | null {
  const from = cursor.at;
  takeAny(cursor, 'with', 'using');
  const facing = readFacingSide(cursor);
  if (facing !== null)
    return { kind: 'note', text: `with ${facing} facing`, facing, span: spanSince(cursor, from) };
  const yarn = readYarnLetter(cursor);
  if (yarn === null && takeNewYarn(cursor)) return yarnStep('change', null, null, null, cursor, from);
  if (yarn === null) {
    cursor.at = from;
    return null;
  }
  if (wordAt(cursor) === 'yo' || wordAt(cursor) === 'yrh') {
    // `with B yo and draw through`: a change of colour in the last yarn over.
    skipToBoundary(cursor);
    return yarnStep('change', yarn, null, null, cursor, from);
  }
  const step = yarnStep('with', yarn, null, null, cursor, from);
  takeWhereHeld(cursor);
  return step;
}

/** `at the back`, `held at the back of the work`: where a yarn lies that stitches are drawn from. */
function takeWhereHeld(cursor: Cursor): void {
  const start = cursor.at;
  takeAny(cursor, 'held');
  if (takeAny(cursor, 'at', 'in') !== null) {
    takeAny(cursor, 'the');
    if (takeAny(cursor, 'back', 'wrong') !== null) {
      takeAny(cursor, 'side');
      takeAny(cursor, 'of');
      takeAny(cursor, 'the');
      takeAny(cursor, 'work');
      if (atBoundary(cursor)) return;
    }
  }
  cursor.at = start;
}

/** `3 sc in MC`, `sc 3 MC`, `sc in next 3 sts with MC`: the yarn stands behind what is worked in it. */
export function readYarnBehind(cursor: Cursor): Step | null {
  if (peek(cursor).kind !== 'word') return null;
  const from = cursor.at;
  takeAny(cursor, 'with', 'using', 'in');
  const before = cursor.faults.length;
  const yarn = isYarnHere(cursor) ? readYarnLetter(cursor) : null;
  if (yarn !== null && (atBoundary(cursor) || leadsToPlace(cursor)))
    return yarnStep('with', yarn, null, null, cursor, from);
  cursor.faults.length = before;
  cursor.at = from;
  return null;
}

/** `(B)`, `(with MC)`, `(moss green)`: a yarn and nothing else; null with the cursor where it was. */
export function readYarnInBrackets(cursor: Cursor): YarnStep | null {
  const from = cursor.at;
  if (peek(cursor).kind !== 'open') return null;
  const faults = cursor.faults.length;
  cursor.at += 1;
  takeAny(cursor, 'with', 'in', 'using');
  const yarn = readYarnLetter(cursor);
  // `Row 3 (M):` may be for a size; any other letter that no yarn of the list has is told.
  const isSize = yarn !== null && cursor.context.sizeNames?.includes(yarn) === true;
  const listed = cursor.faults.length === faults;
  if (yarn !== null && peek(cursor).kind === 'close' && (listed || !isSize)) {
    cursor.at += 1;
    return yarnStep('with', yarn, null, null, cursor, from);
  }
  cursor.faults.length = faults;
  cursor.at = from;
  return null;
}

/** `B 3 sc, A 5 sc`: the yarn stands before what is worked in it. Only one that is listed: other letters name stitches. */
export function readYarnAhead(cursor: Cursor): Step | null {
  const next = peek(cursor, 1);
  if (peek(cursor).kind !== 'word' || next.glued || (next.kind !== 'number' && next.kind !== 'word'))
    return null;
  const letter = yarnHere(cursor);
  if (letter === null) return null;
  const at = next.kind === 'number' ? 2 : 1;
  if (findName(cursor.lexicon, cursor.tokens, cursor.at + at) === null) return null;
  const from = cursor.at;
  cursor.at += 1;
  return yarnStep('with', letter, null, null, cursor, from);
}

/** The letter of a yarn that stands here as it is written in the list. */
function yarnHere(cursor: Cursor): string | null {
  const { start, end } = peek(cursor);
  const { text } = cursor.mapped;
  for (const letter of cursor.context.yarns)
    if (letter.length === end - start && text.startsWith(letter, start)) return letter;
  return null;
}

/** `change to B in last yo [of last st]`, `drop A`, `carry A up side`, `pick up A`. */
export function readChange(cursor: Cursor): Step | null {
  const from = cursor.at;
  const word = takeAny(cursor, 'change', 'changing', 'switch') ?? takeAny(cursor, 'drop', 'carry', 'pick');
  takeAny(cursor, 'to', 'up');
  const yarn = readYarnLetter(cursor);
  const anew = yarn === null && word !== 'drop' && (takeNewYarn(cursor) || takeByTurns(cursor));
  if (word === null || (yarn === null && !anew)) {
    cursor.at = from;
    return null;
  }
  // "in last yo of last st", "loosely up the side": how it is always done, so it is not kept apart.
  const said = cursor.at;
  skipToBoundary(cursor);
  const action = CHANGES.get(word) ?? 'change';
  const step = yarnStep(action, yarn, null, null, cursor, from);
  const when = cursor.at > said ? textSince(cursor, said) : '';
  // A row named is worth keeping: in a range only that one changes.
  return action === 'change' && /\d/.test(when) ? { ...step, when } : step;
}

const CHANGES: ReadonlyMap<string, YarnStep['action']> = new Map([
  ['drop', 'drop'],
  ['carry', 'carry'],
  ['pick', 'pick up'],
]);

/** `join [B] [with sl st] [in first sc] [to form ring]`; `in first ch of foundation ch` goes along that edge. */
export function readJoin(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  const join = readJoinStep(cursor);
  if (join === null) return null;
  const place = 'place' in join.step ? join.step.place : null;
  const opening = join.opening;
  if (opening !== null)
    return [{ kind: 'along', edge: 'opening', from: opening, span: spanSince(cursor, from) }, join.step];
  if (place?.kind !== 'first' || place.what.kind !== 'ch' || !takeOfFoundation(cursor)) return [join.step];
  return [{ kind: 'along', edge: 'foundation', span: spanSince(cursor, from) }, join.step];
}

interface JoinRead {
  readonly step: Step;
  /** Where round an opening it stands, if there. */
  readonly opening: OpeningFrom | null;
}

function readJoinStep(cursor: Cursor): JoinRead | null {
  const from = cursor.at;
  takeAny(cursor, 'join', 'joining', 'rejoin', 'attach');
  const yarn = readYarnLetter(cursor) ?? onlyYarn(cursor);
  // Where no yarn is listed there is one, and joining it in the first st moves nothing.
  const plain = yarn === null && cursor.context.yarns.length === 0 && takeAny(cursor, 'yarn') !== null;
  const anew = yarn === null && !plain && takeNewYarn(cursor);
  let stitch: StitchName | null = null;
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
  const seam = yarn === null ? null : takeAtSeam(cursor);
  if (!ring && leadsToPlace(cursor)) {
    place = readPlace(cursor)?.place ?? null;
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
  // `join B to first st with ss`.
  if (stitch === null && place !== null && wordAt(cursor) === 'with') {
    const with_ = cursor.at;
    cursor.at += 1;
    takeAny(cursor, 'a');
    stitch = readStitchName(cursor);
    if (stitch === null) cursor.at = with_;
  }
  if (plain && place === null) {
    cursor.at = from;
    return null;
  }
  if (plain && place?.kind !== 'first' && opening === null)
    return { step: { ...yarnStep('join', null, stitch, place, cursor, from), only: true }, opening };
  if (plain)
    return {
      step: { kind: 'note', text: textSince(cursor, from), span: spanSince(cursor, from) },
      opening,
    };
  if (yarn !== null || anew) {
    const step = yarnStep('join', yarn, stitch, place, cursor, from);
    return { step: seam === null ? step : { ...step, when: seam }, opening };
  }
  const span = spanSince(cursor, from);
  const join: JoinStep = {
    kind: 'join',
    stitch: stitch ?? { kind: 'stitch', id: 'sl-st', span },
    place,
    ring,
    span,
  };
  return { step: join, opening };
}

/** `at the seam`, `at a side seam`, `at a lower corner`: where the hand begins; the rows go on from there in the order they come. */
function takeAtSeam(cursor: Cursor): string | null {
  const from = cursor.at;
  if (takeAny(cursor, 'at') === null) return null;
  takeAny(cursor, 'the', 'a', 'one', 'any');
  takeAny(cursor, 'side', 'back', 'shoulder');
  takeAny(cursor, 'lower', 'upper', 'bottom', 'top');
  const named = takeAny(cursor, 'seam', 'corner') !== null || takeEndOfFoundation(cursor);
  if (named && atBoundaryOrAnd(cursor)) return textSince(cursor, from);
  cursor.at = from;
  return null;
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

/** `new color`, `next yarn`, `a different color`, `any colour`: another, whichever it is. */
function takeNewYarn(cursor: Cursor): boolean {
  const from = cursor.at;
  takeAny(cursor, 'a', 'the');
  const other = takeOneOf(cursor, NEW_WORDS) !== null;
  if (other && takeAny(cursor, 'color', 'colour', 'yarn', 'shade') !== null) return true;
  cursor.at = from;
  return false;
}

const NEW_WORDS = new Set(['new', 'next', 'different', 'another', 'any', 'chosen']);

/** `join yarn`: the one there is. With several it has to be said which. */
function onlyYarn(cursor: Cursor): string | null {
  const [only, second] = cursor.context.yarns;
  if (only === undefined || second !== undefined) return null;
  return takeAny(cursor, 'yarn') === null ? null : only;
}

/** `fasten off`, `fasten off A`, `fasten off, leaving a long tail`. */
export function readFastenOff(cursor: Cursor): readonly Step[] | null {
  const from = cursor.at;
  if (
    takeAny(cursor, 'fo') === null &&
    !takeWords(cursor, 'fasten', 'off') &&
    !takeWords(cursor, 'break', 'off') &&
    !takeWords(cursor, 'break', 'yarn')
  )
    return null;
  takeAny(cursor, 'yarn');
  if (takeAny(cursor, 'both', 'all') !== null) takeAny(cursor, 'colors', 'colours', 'yarns');
  const first = { kind: 'fasten off', yarn: readYarnLetter(cursor), span: spanSince(cursor, from) } as const;
  takeAtEnd(cursor);
  takeTail(cursor);
  const steps: Step[] = [first];
  // `fasten off A and B`.
  while (first.yarn !== null && (wordAt(cursor) === 'and' || peek(cursor).text === '&')) {
    const at = cursor.at;
    cursor.at += 1;
    const yarn = readYarnLetter(cursor);
    if (yarn === null) {
      cursor.at = at;
      break;
    }
    steps.push({ kind: 'fasten off', yarn, span: spanSince(cursor, at + 1) });
  }
  return steps;
}

/** `at end of last row`, which is where it is said. */
function takeAtEnd(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'at') !== null) {
    takeAny(cursor, 'the');
    const end = takeAny(cursor, 'end') !== null && takeAny(cursor, 'of') !== null;
    takeAny(cursor, 'the', 'this');
    takeAny(cursor, 'last', 'final');
    if (end && takeAny(cursor, 'row', 'rnd', 'round') !== null && atBoundary(cursor)) return;
  }
  cursor.at = start;
}

/** `with a 20" tail`, `with a long end for sewing`. */
function takeTail(cursor: Cursor): void {
  const start = cursor.at;
  if (takeAny(cursor, 'with') !== null && takeAny(cursor, 'a', 'an') !== null) {
    const words = cursor.at;
    skipToBoundary(cursor);
    for (let at = words; at < cursor.at; at += 1) {
      // A stitch is no tail, whatever it ends.
      if (findName(cursor.lexicon, cursor.tokens, at) !== null) break;
      if (TAILS.has(cursor.tokens[at]?.text ?? '')) return;
    }
  }
  cursor.at = start;
}

const TAILS = new Set(['tail', 'end']);

/** `to form ring`, `to make a ring`. */
export function takeRing(cursor: Cursor): boolean {
  const from = cursor.at;
  if (takeAny(cursor, 'to') !== null && takeAny(cursor, 'form', 'make') !== null) {
    takeAny(cursor, 'a', 'the');
    if (takeAny(cursor, 'ring', 'circle', 'loop') !== null) return true;
  }
  cursor.at = from;
  return false;
}

export function readStitchName(cursor: Cursor): StitchName | null {
  const found = nameHere(cursor);
  if (found === null) return readNumberedTogether(cursor);
  const from = cursor.at;
  cursor.at += found.length;
  return stitchName(cursor, from, found);
}

/** Written out rather than spread: there is no step read more often. */
function stitchName(cursor: Cursor, from: number, { named }: Found): StitchName {
  const span = spanSince(cursor, from);
  return named.kind === 'stitch'
    ? { kind: 'stitch', id: named.id, span }
    : { kind: 'special', name: named.name, span };
}

/** `2dctog` says the same as `dc2tog`. */
function readNumberedTogether(cursor: Cursor): StitchName | null {
  const word = peek(cursor, 1);
  if (peek(cursor).kind !== 'number' || word.kind !== 'word' || !word.glued || !word.text.endsWith('tog'))
    return null;
  const name = `${word.text.slice(0, -3)}${peek(cursor).text}tog`;
  const found = findName(cursor.lexicon, [{ ...word, text: name }], 0);
  if (found === null) return null;
  const from = cursor.at;
  cursor.at += 2;
  return stitchName(cursor, from, found);
}

function yarnStep(
  action: YarnStep['action'],
  yarn: string | null,
  stitch: StitchName | null,
  place: Place | null,
  cursor: Cursor,
  from: number,
): YarnStep {
  return { kind: 'yarn', action, yarn, stitch, place, span: spanSince(cursor, from) };
}
