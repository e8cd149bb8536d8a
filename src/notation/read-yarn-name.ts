/** The yarn that words name: its letter, `B`, `CC1`, `yarn B`, or the name of its colour, `cream`. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Cursor, YarnName } from './cursor.ts';
import { peek, spanSince, startOf, takeAny, writtenAt } from './cursor.ts';

/** A yarn's letter, alone or after "color"/"yarn"; reports one that is not listed. Null when none stands here. */
export function readYarnLetter(cursor: Cursor): string | null {
  const from = cursor.at;
  const coloured = takeColourName(cursor);
  if (coloured !== null) return coloured;
  const named = takeAny(cursor, 'color', 'colour', 'yarn', 'col') !== null;
  const token = peek(cursor);
  if (token.kind === 'word') {
    const number = peek(cursor, 1);
    const numbered = number.kind === 'number' && number.glued;
    const letter = (numbered ? letterAt(cursor, 2, named) : null) ?? letterAt(cursor, 1, named);
    if (letter !== null) return letter;
  }
  cursor.at = from;
  return null;
}

/** The letter of a yarn that is listed, by its letter or the name of its colour; null where none stands here. */
export function takeListedYarn(cursor: Cursor): string | null {
  const coloured = takeColourName(cursor);
  if (coloured !== null) return coloured;
  const written = writtenAt(cursor, cursor.at);
  if (!cursor.context.yarns.includes(written)) return null;
  cursor.at += 1;
  return written;
}

/** A capital letter, or the name of a colour, stands here. */
export function isYarnHere(cursor: Cursor): boolean {
  const token = peek(cursor);
  if (token.kind !== 'word') return false;
  const first = cursor.mapped.text.charCodeAt(startOf(cursor, cursor.at));
  if (first >= CAPITAL_A && first <= CAPITAL_Z) return true;
  return cursor.context.yarnNames?.some(({ words }) => words[0] === token.text) ?? false;
}

const CAPITAL_A = 65;
const CAPITAL_Z = 90;

/** The letter that so many tokens make, `CC1` of two, where they can be one. */
function letterAt(cursor: Cursor, length: number, named: boolean): string | null {
  const { context, at } = cursor;
  const written = writtenAt(cursor, at, at + length - 1);
  const listed = context.yarns.find((letter) => letter.toLowerCase() === written.toLowerCase());
  const isListed = listed !== undefined && (written === written.toUpperCase() || named);
  if (!isListed && !LOOKS_LIKE_YARN.test(written)) return null;
  cursor.at += length;
  if (isListed) return listed;
  const span = spanSince(cursor, at);
  cursor.faults.push(
    diagnose('yarn/unlisted', { file: context.file, span }, { letter: written, listed: context.yarns }),
  );
  return written;
}

const LOOKS_LIKE_YARN = /^(?:[A-Z]|MC|CC\d*|C[A-H])$/;

/** `cream`, `slate grey`, `main colour`: the longest of the names that stands here. */
function takeColourName(cursor: Cursor): string | null {
  const { yarnNames } = cursor.context;
  if (yarnNames === undefined || yarnNames.length === 0) return null;
  // `with the main colour`.
  const the = peek(cursor).text === 'the' ? 1 : 0;
  let found: YarnName | null = null;
  for (const name of yarnNames)
    if (name.words.length > (found?.words.length ?? 0) && standsHere(cursor, name.words, the)) found = name;
  if (found === null) return null;
  cursor.at += the + found.words.length;
  return found.letter;
}

function standsHere(cursor: Cursor, words: readonly string[], ahead: number): boolean {
  for (let i = 0; i < words.length; i += 1) if (peek(cursor, ahead + i).text !== words[i]) return false;
  return true;
}
