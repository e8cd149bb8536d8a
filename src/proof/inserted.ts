/**
 * Three lists in, each meant to be the one before with something put in: whether one and the same thing goes in again,
 * right behind where it went in first. Then the same step leads on and on: P S, P Z S, P Z Z S, P Z Z Z S …
 */

import type { RowWord } from './row-word.ts';

/** Whether the second and third are the first with one block put in once and twice. An empty block is one too. */
export function insertsAgain(
  first: readonly number[],
  second: readonly number[],
  third: readonly number[],
): boolean {
  const block = second.length - first.length;
  if (block < 0 || third.length - second.length !== block) return false;
  let at = 0;
  while (at < first.length && first[at] === second[at]) at += 1;
  for (let i = at; i < first.length; i += 1)
    if (first[i] !== second[i + block] || first[i] !== third[i + 2 * block]) return false;
  for (let i = 0; i < at + block; i += 1) if (second[i] !== third[i]) return false;
  for (let i = at; i < at + block; i += 1) if (second[i] !== third[i + block]) return false;
  return true;
}

/** The same of three rows, side by side where they have corners: each side has a block of its own. */
export function rowGrowsEvenly(first: RowWord, second: RowWord, third: RowWord): boolean {
  if (insertsAgain(first.stitches, second.stitches, third.stitches)) return true;
  const [a, b, c] = [sides(first), sides(second), sides(third)];
  if (a.length < 2 || a.length !== b.length || b.length !== c.length) return false;
  return a.every((side, i) => insertsAgain(side, b[i] ?? [], c[i] ?? []));
}

/** A row cut before each corner. */
function sides({ stitches, corners }: RowWord): readonly (readonly number[])[] {
  return [0, ...corners].map((from, i) => stitches.slice(from, corners[i] ?? stitches.length));
}
