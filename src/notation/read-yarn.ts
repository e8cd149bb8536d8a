/** Colour changes, joins and endings: `with B`, `change to B in last yo`, `join B with sl st in any ch-2 sp`, `fasten off A`. */

import type { Cursor } from './cursor.ts';
import {
  atBoundary,
  forgetSince,
  nameHere,
  peek,
  skipToBoundary,
  spanSince,
  startOf,
  takeAny,
  takeOneOf,
  takeWords,
  textSince,
  wordAt,
} from './cursor.ts';
import type { Found } from './lexicon.ts';
import { findName } from './lexicon.ts';
import { takeByTurns } from './read-colour-order.ts';
import { readFacingSide } from './read-note.ts';
import { leadsToPlace } from './read-place.ts';
import { isYarnHere, readYarnLetter, takeListedYarn } from './read-yarn-name.ts';
import { called } from './token.ts';
import type { Place, Step, StitchName, YarnStep } from './tree.ts';
import { WordSet } from './word-set.ts';

/** `with B`, `using B`, `with RS facing and B`; null for "with sl st" and the like. */
export function readWithYarn(cursor: Cursor): Step | readonly Step[] | null {
  const from = cursor.at;
  takeAny(cursor, 'with', 'using');
  const facing = readFacingSide(cursor);
  if (facing !== null) {
    const note = {
      kind: 'note',
      text: `with ${facing} facing`,
      facing,
      span: spanSince(cursor, from),
    } as const;
    const also = wordAt(cursor) === 'and' ? readYarnToo(cursor) : null;
    return also === null ? note : [note, also];
  }
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

/** `and B`, `and using B` behind the side that faces; null with the cursor where it was. */
function readYarnToo(cursor: Cursor): Step | null {
  const from = cursor.at;
  cursor.at += 1;
  takeAny(cursor, 'with', 'using', 'in');
  const yarn = isYarnHere(cursor) ? readYarnLetter(cursor) : null;
  if (yarn !== null && atBoundary(cursor)) return yarnStep('with', yarn, null, null, cursor, from);
  cursor.at = from;
  return null;
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
  forgetSince(cursor, before);
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
  forgetSince(cursor, faults);
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

/** `main colour, ch 33`: the yarn by itself, and behind the comma what is worked in it. Null for any other word. */
export function readYarnAlone(cursor: Cursor): Step | null {
  const from = cursor.at;
  takeAny(cursor, 'color', 'colour', 'yarn', 'col');
  const yarn = takeListedYarn(cursor);
  if (yarn !== null && peek(cursor).kind === 'comma') return yarnStep('with', yarn, null, null, cursor, from);
  cursor.at = from;
  return null;
}

/** The letter of a yarn that stands here as it is written in the list. */
function yarnHere(cursor: Cursor): string | null {
  const { length } = peek(cursor);
  const start = startOf(cursor, cursor.at);
  const { text } = cursor.mapped;
  for (const letter of cursor.context.yarns)
    if (letter.length === length && text.startsWith(letter, start)) return letter;
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

/** `new color`, `next yarn`, `a different color`, `any colour`: another, whichever it is. */
export function takeNewYarn(cursor: Cursor): boolean {
  const from = cursor.at;
  takeAny(cursor, 'a', 'the', 'your');
  const other = takeOneOf(cursor, NEW_WORDS) !== null;
  if (other && takeAny(cursor, 'color', 'colour', 'yarn', 'shade') !== null) return true;
  cursor.at = from;
  return false;
}

const NEW_WORDS = new WordSet([
  'new',
  'next',
  'different',
  'another',
  'any',
  'chosen',
  'first',
  'starting',
  'favourite',
  'favorite',
]);

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
  const found = findName(cursor.lexicon, [called(word, name)], 0);
  if (found === null) return null;
  const from = cursor.at;
  cursor.at += 2;
  return stitchName(cursor, from, found);
}

export function yarnStep(
  action: YarnStep['action'],
  yarn: string | null,
  stitch: StitchName | null,
  place: Place | null,
  cursor: Cursor,
  from: number,
): YarnStep {
  return { kind: 'yarn', action, yarn, stitch, place, span: spanSince(cursor, from) };
}
