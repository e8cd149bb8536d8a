/**
 * What a maker has chosen on the page, as it stands in the page's address: `?width=30+cm&terms=uk`. The names are those of
 * the form's fields, so that the form sends the same address where no script runs.
 */

import type { Units } from '../measure/materials.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { cmFromMm, inFromMm, printCm, printIn } from '../units.ts';
import { DIALECTS, type DialectKey } from '../wording/words.ts';
import type { AskedField, AskedWords } from './read-asked.ts';

export interface OwnChoice {
  /** Place of the size it is made from. */
  readonly from: number;
  readonly dialect: DialectKey;
  readonly leftHanded: boolean;
  /** Which of both stand first, and what a bare number is in. */
  readonly units: Units;
  readonly asked: AskedWords;
}

/** Fields of the form that say what is asked; a gauge and a ball are written in several. */
export const FIELDS_OF: Readonly<Record<AskedField, readonly string[]>> = {
  width: ['width'],
  height: ['height'],
  repeats: ['repeats'],
  rows: ['rows'],
  gauge: ['gauge-sts', 'gauge-rows', 'gauge-over'],
  ball: ['ball-length', 'ball-weight'],
  hook: ['hook'],
};

export interface ChoosableFrom {
  readonly pattern: Pattern;
  readonly sizeSlugs: readonly string[];
}

/** An address that names no size, terms or units of this pattern is read as if it had not. */
export function readChoice(query: URLSearchParams, { pattern, sizeSlugs }: ChoosableFrom): OwnChoice {
  const given = (field: string): string | undefined => query.get(field)?.trim() || undefined;
  const units: Units = given('units') === 'imperial' ? 'imperial' : 'metric';
  const inUnit = (field: string, metric: string, imperial: string): string | undefined => {
    const written = given(field);
    return written !== undefined && BARE.test(written)
      ? `${written} ${units === 'metric' ? metric : imperial}`
      : written;
  };
  const asked: AskedWords = {
    width: inUnit('width', 'cm', 'in'),
    height: inUnit('height', 'cm', 'in'),
    repeats: given('repeats'),
    rows: given('rows'),
    gauge: gaugeWritten(given('gauge-sts'), given('gauge-rows'), inUnit('gauge-over', 'cm', 'in'), pattern),
    ball: joined(inUnit('ball-length', 'm', 'yd'), inUnit('ball-weight', 'g', 'oz')),
    hook: given('hook'),
  };
  const dialect = given('terms') ?? '';
  return {
    from: Math.max(0, sizeSlugs.indexOf(given('size') ?? '')),
    dialect: isDialect(dialect) ? dialect : pattern.terms === 'UK' ? 'uk' : 'us',
    leftHanded: given('hand') === 'left',
    units,
    asked,
  };
}

/** The address without the fields that were left empty. */
export function tidyQuery(query: URLSearchParams): URLSearchParams {
  return new URLSearchParams([...query].filter(([, value]) => value.trim() !== ''));
}

const BARE = /^[\d.,\s/¼½¾⅛⅜⅝⅞⅓⅔]+$/;

/** What she leaves out of her gauge is as the pattern's swatch was: the measure, not the count. */
function gaugeWritten(
  stitches: string | undefined,
  rows: string | undefined,
  over: string | undefined,
  { gauge }: Pattern,
): string | undefined {
  if (stitches === undefined && rows === undefined) return undefined;
  const measure = over ?? patternMeasure(gauge);
  // `2 repeats` says itself what it counts.
  const counted = /[a-z]/i.test(stitches ?? '') ? stitches : `${stitches ?? ''} sts`;
  return `${counted}${rows === undefined ? '' : ` and ${rows} rows`} over ${measure}`;
}

/** The measure the pattern's stitches are counted over, as it is written in the form; 10 cm where it tells none. */
export function patternMeasure(gauge: Pattern['gauge']): string {
  if (gauge === null) return '10 cm';
  const { overMm, upMm } = gauge;
  const inches = Number.isInteger(inFromMm(overMm)) && !Number.isInteger(cmFromMm(overMm));
  const print = inches ? printIn : printCm;
  return overMm === upMm ? print(overMm) : `${print(overMm)} x ${print(upMm)}`;
}

function joined(length: string | undefined, mass: string | undefined): string | undefined {
  if (length === undefined && mass === undefined) return undefined;
  return [length, mass].filter((words) => words !== undefined).join(' and ');
}

function isDialect(word: string): word is DialectKey {
  return Object.hasOwn(DIALECTS, word);
}
