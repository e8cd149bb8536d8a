/** Single lines of a pasted text in, the level, the terms, the date and the licence they tell out. */

import type { Skill } from '../pattern/pattern.ts';
import { fileSpan } from '../source/mapped-text.ts';
import { namedTerms, statedTerms } from './read-terms.ts';
import type { Item } from './sorted-lines.ts';
import type { Given, TranscribedTerms } from './transcript.ts';

/** The Council's project levels, and the older levels and shop words that stand for them: common practice. */
const LEVELS: readonly (readonly [RegExp, Skill])[] = [
  [
    /\b(?:adventurous|advanced|confident)[- ]beginner\b|\bimprover\b|\bbeginner\s*(?:plus|\+|\/\s*easy)/i,
    'easy',
  ],
  [/\bbeginner\b|\bbasic\b|\babsolute beginner\b/i, 'basic'],
  [/\bintermediate\b|\bmoderate\b/i, 'intermediate'],
  [/\beasy\b/i, 'easy'],
  [/\bcomplex\b|\badvanced\b|\bexperienced\b|\bexpert\b/i, 'complex'],
];

export function readSkill(items: readonly Item[]): { skill: Given<Skill>; item: Item } | null {
  for (const item of items) {
    const skill = LEVELS.find(([words]) => words.test(item.text.text))?.[1];
    if (skill !== undefined) return { skill: { value: skill, span: item.span }, item };
  }
  return null;
}

/** Under any other heading a country is only where something is from. */
const OF_TERMS = /\b(?:terms?|terminology|language|abbreviations?|names)\b/i;

export function readStatedTerms(items: readonly Item[]): TranscribedTerms | null {
  for (const item of items) {
    const stated = statedTerms(item.text.text);
    if (stated !== null) {
      const span = fileSpan(item.text, stated.start, stated.end);
      return {
        value: stated.value,
        told: 'stated',
        by: item.text.text.slice(stated.start, stated.end),
        span,
      };
    }
    const named = OF_TERMS.test(item.heading ?? '') ? namedTerms(item.text.text) : null;
    if (named !== null) return { value: named, told: 'stated', by: item.text.text, span: item.span };
  }
  return null;
}

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** `2026-11-24`, `24 November 2026`, `November 24, 2026`; null for days in figures alone, which read two ways. */
export function readDate(text: string): string | null {
  const iso = /\b(\d{4})-(\d{2})-(\d{2})\b/.exec(text);
  if (iso !== null) return dateOf(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const dayFirst = /\b(\d{1,2})(?:st|nd|rd|th)?\s+([a-z]{3,9})\.?,?\s+(\d{4})\b/i.exec(text);
  const monthFirst = /\b([a-z]{3,9})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})\b/i.exec(text);
  const [day, month, year] =
    dayFirst !== null
      ? [dayFirst[1], dayFirst[2], dayFirst[3]]
      : [monthFirst?.[2], monthFirst?.[1], monthFirst?.[3]];
  const number = MONTHS.indexOf((month ?? '').toLowerCase().slice(0, 3)) + 1;
  return number === 0 ? null : dateOf(Number(year), number, Number(day));
}

function dateOf(year: number, month: number, day: number): string | null {
  const days = [
    31,
    year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28,
    31,
    30,
    31,
    30,
    31,
    31,
    30,
    31,
    30,
    31,
  ][month - 1];
  if (days === undefined || day < 1 || day > days || year < 1000) return null;
  return `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}
