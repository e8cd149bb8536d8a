/** A plain stitch's id in, its row out, and what stitches made from a plain one take from it. */

import { BASIC } from './basic.ts';
import type { StitchRow, StitchTerms } from './stitch-row.ts';

export type PlainId = (typeof BASIC)[number]['id'];

export function plainRow(id: PlainId): StitchRow {
  const row = BASIC.find((basic) => basic.id === id);
  if (row === undefined) throw new Error(`No plain stitch ${id} in the table.`);
  return row;
}

/** Names are often said without their last word: `front post double`, `raised treble front`. */
export function shortName(name: string): string {
  return name.replace(/ crochet$/, '');
}

/** The abbreviation and others that stand for it: `tr`, `trc`. What has no vowel is no word, but short for one. */
export function shortForms({ abbr, alsoRead }: StitchTerms): readonly string[] {
  return [abbr, ...alsoRead.filter((words) => /^[^aeiou ]+$/.test(words))];
}

/** How a plain stitch is made where the hook goes in as told. */
export function howEntered(row: StitchRow, entering: string): string {
  return capital(row.how.replace(/insert the hook/i, entering));
}

export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

export function small(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}

export function round2(value: number): number {
  return Math.round(value * 100) / 100;
}
