/** Words of a pasted text in, the measures they hold out as a pattern file writes them: `10 cm`, `180 m`, `100 g`. */

import { parseMeasure } from '../units.ts';

const AMOUNT =
  '\\d{1,5}(?:,\\d{3})*(?:[.,]\\d+)?(?:\\s*[-\\s]?\\s*(?:\\d\\s*/\\s*\\d{1,2}|[¼½¾⅛⅜⅝⅞⅓⅔]))?|[¼½¾⅛⅜⅝⅞⅓⅔]';
const UNITS = {
  mm: 'mm|millimet(?:re|er)s?',
  cm: 'cms?|centimet(?:re|er)s?',
  m: 'm|mtrs?|met(?:re|er)s?',
  in: 'ins?|inch(?:es)?|["″”]',
  yd: 'yds?|yards?',
  g: 'g|gr|gms?|grams?|grammes?',
  oz: 'ozs?|ounces?',
} as const;

export type UnitName = keyof typeof UNITS;

export interface Found {
  /** `10 cm`. */
  readonly measure: string;
  readonly start: number;
  readonly end: number;
}

/** The first measure in one of the units, tried in their order. */
export function findMeasure(text: string, units: readonly UnitName[]): Found | null {
  for (const unit of units) {
    const found = patternOf(unit).exec(text);
    const amount = found?.[1];
    if (found === null || amount === undefined) continue;
    const measure = `${amount.replace(/\s+/g, ' ').trim()} ${unit}`;
    if (parseMeasure(measure) !== null)
      return { measure, start: found.index, end: found.index + found[0].length };
  }
  return null;
}

const PATTERNS = new Map<UnitName, RegExp>();
for (const unit of ['mm', 'cm', 'm', 'in', 'yd', 'g', 'oz'] as const) {
  const after = unit === 'in' ? '(?![a-z])' : '(?![a-z/])';
  PATTERNS.set(
    unit,
    new RegExp(
      `(?<![\\d.,/])(${AMOUNT})\\s*-?\\s*(?:${UNITS[unit]})\\.?${unit === 'in' ? after : '(?![a-z])'}`,
      'i',
    ),
  );
}

function patternOf(unit: UnitName): RegExp {
  return PATTERNS.get(unit) ?? /(?!)/;
}

/** `30 x 40 cm`, `12" wide x 16" long`, `20 cm square`; null where no two sides are told. */
export function sidesIn(text: string): { width: string; height: string } | null {
  for (const unit of ['cm', 'in', 'mm'] as const) {
    const names = UNITS[unit];
    const pair = new RegExp(
      `(${AMOUNT})\\s*(?:${names})?\\.?\\s*(?:wide|w|in width)?\\s*(?:x|×|by)\\s*(${AMOUNT})\\s*(?:${names})(?![a-z])`,
      'i',
    ).exec(text);
    if (pair?.[1] !== undefined && pair[2] !== undefined)
      return { width: `${tidy(pair[1])} ${unit}`, height: `${tidy(pair[2])} ${unit}` };
    const square = new RegExp(
      `(${AMOUNT})\\s*(?:${names})\\.?\\s*(?:\\([^)]*\\)\\s*)?(?:square|sq\\b|on each side|each side)`,
      'i',
    ).exec(text);
    if (square?.[1] !== undefined)
      return { width: `${tidy(square[1])} ${unit}`, height: `${tidy(square[1])} ${unit}` };
  }
  return null;
}

function tidy(amount: string): string {
  return amount.replace(/\s+/g, ' ').trim();
}
