/** A pattern and the measures of its sizes -> the short facts, table cells and closing lines of its pages. */

import type { Units } from '../measure/materials.ts';
import { type Measures, takenM } from '../measure/measures.ts';
import type { Change, Pattern, Skill } from '../pattern/pattern.ts';
import { printM } from '../units.ts';
import { printFinishedSize } from '../wording/finished-size.ts';
import type { Fact } from './page-data.ts';

/** Craft Yarn Council project levels, with their number of four. */
export const SKILL_NAMES: Readonly<Record<Skill, string>> = {
  basic: 'Basic (1 of 4)',
  easy: 'Easy (2 of 4)',
  intermediate: 'Intermediate (3 of 4)',
  complex: 'Complex (4 of 4)',
};

export function wholeNumber(n: number): string {
  return new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 }).format(n);
}

export function balls(n: number): string {
  return n === 1 ? '1 ball' : `${wholeNumber(n)} balls`;
}

/** What one size takes of a yarn, short enough for a table: `120 m, 1 ball`. */
export function yarnCell(measures: Measures, letter: string): string {
  const use = measures.yarn.find((yarn) => yarn.letter === letter);
  if (use === undefined) return 'none';
  const taken = printM(takenM(use));
  return use.balls === null ? taken : `${taken}, ${balls(use.balls)}`;
}

export function sizeFacts(
  pattern: Pattern,
  { measures }: { readonly measures: Measures },
  units: Units = 'metric',
): Fact[] {
  const finished = printFinishedSize(measures, units);
  return [
    ...(finished === null ? [] : [{ name: 'Finished size', value: finished }]),
    ...skillFact(pattern),
    { name: 'Stitches to work', value: wholeNumber(measures.stitches) },
    ...designerFact(pattern),
  ];
}

export function patternFacts(pattern: Pattern): Fact[] {
  const names = pattern.sizes.map((size) => size.name);
  return [
    { name: names.length === 1 ? 'Size' : 'Sizes', value: names.join(', ') },
    ...skillFact(pattern),
    { name: 'Written in', value: `${pattern.terms} terms` },
    ...designerFact(pattern),
  ];
}

/** Licence, version and date, for the foot of the page. */
export function colophonLines(pattern: Pattern): string[] {
  const version = [
    pattern.version === null ? null : `Version ${pattern.version}`,
    pattern.date === null ? null : longDate(pattern.date),
  ].filter((word) => word !== null);
  return [
    ...(version.length === 0 ? [] : [`${version.join(', ')}.`]),
    ...photographersLine(pattern),
    ...(pattern.licence === null ? [] : [`Licence: ${pattern.licence}`]),
  ];
}

function photographersLine({ photographs }: Pattern): string[] {
  const names = [...new Set(photographs.flatMap(({ by }) => by ?? []))];
  return names.length === 0 ? [] : [`Photographs: ${names.join(', ')}.`];
}

/** What changed, each with its day, the newest first. */
export function changeLines(changes: readonly Change[]): string[] {
  return changes.map(
    ({ date, version, what }) =>
      `${longDate(date)}${version === null ? '' : ` (version ${version})`}: ${what}`,
  );
}

function skillFact(pattern: Pattern): Fact[] {
  return pattern.skill === null ? [] : [{ name: 'Skill level', value: SKILL_NAMES[pattern.skill] }];
}

function designerFact(pattern: Pattern): Fact[] {
  return pattern.designer === null ? [] : [{ name: 'Design', value: pattern.designer }];
}

/** `2026-11-24` -> `24 November 2026`; a date that is none is shown as it stands. */
function longDate(iso: string): string {
  const date = new Date(`${iso}T00:00:00Z`);
  if (Number.isNaN(date.getTime())) return iso;
  return new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' }).format(date);
}
