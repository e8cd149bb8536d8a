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

/** `30 x 40 cm`, `12" wide x 16" long`, `20 inches wide and 60 inches long`, `20 cm square`; null where no two sides are told. */
export function sidesIn(text: string): { width: string; height: string } | null {
  let first: { width: string; height: string; at: number } | null = null;
  // Of two units the one that the page puts first is the one it was measured in.
  for (const [unit, forms] of SIDES) {
    for (const form of forms) {
      const found = form.exec(text);
      const { width, height = width } = found?.groups ?? {};
      if (found === null || width === undefined || height === undefined) continue;
      if (first === null || found.index < first.at)
        first = { width: `${tidy(width)} ${unit}`, height: `${tidy(height)} ${unit}`, at: found.index };
    }
  }
  return first === null ? null : { width: first.width, height: first.height };
}

const WIDE = '(?:wide|in width|across|width)';
const LONG = '(?:long|tall|high|deep|in length|in height|length|height)';
/** The same in other units, in brackets or behind a stroke. */
const AGAIN = `(?:\\s*[([][^()[\\]]*[)\\]]|\\s*/\\s*(?:${AMOUNT})\\s*(?:cm|mm|in(?:ch(?:es)?)?|["″”]))?`;
const AND = '(?:\\s*(?:,|;|x|×|by|and|&))*\\s*';

const SIDES = (['cm', 'in', 'mm'] as const).map((unit) => {
  const names = `(?:${UNITS[unit]})(?![a-z])\\.?`;
  const [width, height] = [`(?<width>${AMOUNT})`, `(?<height>${AMOUNT})`];
  const form = (words: string): RegExp => new RegExp(`(?<![\\d.,/])${words}`, 'i');
  return [
    unit,
    [
      form(`${width}\\s*(?:${names})?\\s*(?:wide|w|in width)?\\s*(?:x|×|by)\\s*${height}\\s*${names}`),
      form(
        `${width}\\s*-?\\s*${names}${AGAIN}\\s*${WIDE}${AND}${height}\\s*-?\\s*${names}${AGAIN}\\s*${LONG}\\b`,
      ),
      form(
        `${height}\\s*-?\\s*${names}${AGAIN}\\s*${LONG}${AND}${width}\\s*-?\\s*${names}${AGAIN}\\s*${WIDE}\\b`,
      ),
      form(`${width}\\s*${names}\\s*(?:\\([^)]*\\)\\s*)?(?:square|sq\\b|on each side|each side)`),
    ],
  ] as const;
});

function tidy(amount: string): string {
  return amount.replace(/\s+/g, ' ').trim();
}
