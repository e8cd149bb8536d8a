/** A pattern, what one size takes and the reader's units in, the list of what to have at hand out, as finished lines. */

import type { Gauge, Pattern, Yarn } from '../pattern/pattern.ts';
import { inTerms } from '../stitches/in-terms.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { printCm, printG, printIn, printM, printMm, printYd } from '../units.ts';
import { hookSize } from './hooks.ts';
import { type Measures, takenM, type YarnUse } from './measures.ts';
import { ballsWords } from './put-up.ts';
import { yarnWeight } from './yarn-weights.ts';

/** Which units stand first; the other ones follow in brackets. */
export type Units = 'metric' | 'imperial';

export interface YarnMaterial {
  /** `A`. */
  readonly letter: string;
  /** `reed, medium (4), wool, 180 m (197 yd) and 100 g a ball`. */
  readonly text: string;
  /** `2 balls, about 210 m (230 yd)`; null where no size is asked about, or nothing is known. */
  readonly amount: string | null;
}

export interface MaterialsList {
  /** `5 mm (US H-8, old UK 6) hook`. */
  readonly hook: string | null;
  readonly yarns: readonly YarnMaterial[];
  readonly notions: readonly string[];
  /** What the amounts go by; null where there are none. */
  readonly yarnNote: string | null;
  /** `16 sts and 9 rows = 10 cm (4 in) in shell pattern, after blocking`. */
  readonly gauge: string | null;
}

/** `measures` is null for a list that holds for all sizes, without amounts. */
export function materialsList(
  pattern: Pattern,
  measures: Measures | null,
  terms: Terms,
  units: Units,
): MaterialsList {
  return {
    hook: pattern.hookMm === null ? null : hookWords(pattern.hookMm),
    yarns: pattern.yarns.map((yarn) => {
      const use = measures?.yarn.find(({ letter }) => letter === yarn.letter);
      return {
        letter: yarn.letter,
        text: yarnWords(yarn, terms, units),
        amount: use === undefined ? null : amountWords(use, units),
      };
    }),
    notions: pattern.notions,
    yarnNote: measures === null ? null : yarnNote(measures.yarn),
    gauge:
      pattern.gauge === null
        ? null
        : gaugeWords(pattern.gauge, (of) => inTerms(of, pattern.terms, terms), units),
  };
}

/** The list as lines: yarns, hook, notions, gauge (UK tension). */
export function materialLines({ hook, yarns, notions, gauge }: MaterialsList, terms: Terms): string[] {
  return [
    ...yarns.map(
      ({ letter, text, amount }) => `Yarn ${letter}: ${text}${amount === null ? '' : `: ${amount}`}`,
    ),
    ...(hook === null ? [] : [hook]),
    ...notions,
    ...(gauge === null ? [] : [`${terms === 'US' ? 'Gauge' : 'Tension'}: ${gauge}`]),
  ];
}

/** Millimetres first: the letters and numbers of hooks differ from chart to chart. */
export function hookWords(mm: number): string {
  const size = hookSize(mm);
  const others = [
    ...(size?.us == null ? [] : [`US ${size.us}`]),
    ...(size?.ukOld == null ? [] : [`old UK ${size.ukOld}`]),
  ];
  return others.length === 0 ? `${printMm(mm)} hook` : `${printMm(mm)} (${others.join(', ')}) hook`;
}

function yarnWords(yarn: Yarn, terms: Terms, units: Units): string {
  const weight = yarnWeight(yarn.weight);
  const name = weight === null ? 'weight' : terms === 'US' ? weight.name.toLowerCase() : weight.ukName;
  return [yarn.colour, `${name} (${yarn.weight})`, yarn.fibre, ballWords(yarn, units)]
    .filter((words) => words !== '')
    .join(', ');
}

function ballWords({ ballLengthM, ballMassG }: Yarn, units: Units): string {
  const length = ballLengthM === null ? null : yarnLength(ballLengthM, units);
  const mass = ballMassG === null ? null : printG(ballMassG);
  const both = [length, mass].filter((words) => words !== null);
  return both.length === 0 ? '' : `${both.join(' and ')} a ball`;
}

function amountWords(use: YarnUse, units: Units): string {
  const { balls, massG } = use;
  const length = `about ${yarnLength(takenM(use), units)}`;
  const mass = massG === null ? '' : `, ${printG(Math.ceil(massG))}`;
  return balls === null ? `${length}${mass}` : `${ballsWords(balls)}, ${length}${mass}`;
}

/** What the lengths go by, in a sentence: a maker who knows how sure they are buys accordingly. */
export function yarnNote(yarn: readonly YarnUse[]): string | null {
  const used = yarn.find(({ basis }) => basis === 'used');
  const joining = joiningWords(yarn);
  if (used !== undefined) {
    const from = used.scaledFrom === null ? 'this size' : `size ${used.scaledFrom}, stitch by stitch`;
    return `Lengths go by what the designer used for ${from}, with a tenth more.${joining}`;
  }
  if (yarn.some(({ basis }) => basis === 'swatch'))
    return `Lengths go by what the designer’s swatch took, with tails and a tenth more.${joining}`;
  const ranges = yarn.flatMap(({ rangeM }) => rangeM ?? []);
  if (ranges.length === 0) return null;
  const sum = (of: (range: (typeof ranges)[number]) => number): number =>
    ranges.reduce((all, range) => all + of(range), 0);
  const [least, most] = [sum(({ least: one }) => one), sum(({ most: one }) => one)];
  const all = ranges.length > 1 ? 'all together ' : '';
  return `Lengths are reckoned from the stitches by the trade’s figures, with tails and a tenth more. Hands differ: ${all}it may be ${printM(least)} to ${printM(most)} (${printYd(least)} to ${printYd(most)}).${joining}`;
}

/** What joining the pieces takes, which is reckoned from what the finishing says. */
function joiningWords(yarn: readonly YarnUse[]): string {
  const joins = yarn.find(({ joiningM = 0 }) => joiningM > 0);
  if (joins?.joiningM === undefined) return '';
  const m = Math.ceil(joins.joiningM);
  return ` Of yarn ${joins.letter} about ${printM(m)} (${printYd(m)}) are for joining the pieces.`;
}

/** `16 sts and 9 rows = 10 cm (4 in)`; of a swatch measured both ways, `20 sts = 15 cm (6 in) and 12 rows = 14 cm (5 ½ in)`. */
export function gaugeWords(gauge: Gauge, said: (of: string) => string, units: Units): string {
  const stitches = acrossWords(gauge);
  const rows = gauge.rows === null ? null : rowsWords(gauge.rows);
  const over = both(gauge.overMm, units);
  const counted =
    rows === null || gauge.upMm === gauge.overMm
      ? `${rows === null ? stitches : `${stitches} and ${rows}`} = ${over}`
      : `${stitches} = ${over} and ${rows} = ${both(gauge.upMm, units)}`;
  const of = gauge.of === null ? '' : ` in ${said(gauge.of)}`;
  const after = gauge.after === null ? '' : `, after ${gauge.after}`;
  const { before } = gauge;
  const first = before === null ? '' : `; before it, ${before.stitches} sts and ${rowsWords(before.rows)}`;
  return `${counted}${of}${after}${first}`;
}

/** `16 sts`; of repeats that were counted `2 repeats (12 sts)`. */
function acrossWords({ stitches, repeats }: Gauge): string {
  const counted = stitches === 1 ? '1 st' : `${stitches} sts`;
  return repeats === undefined ? counted : `${repeats} ${repeats === 1 ? 'repeat' : 'repeats'} (${counted})`;
}

function rowsWords(rows: number): string {
  return rows === 1 ? '1 row' : `${rows} rows`;
}

function both(mm: number, units: Units): string {
  const [cm, inches] = [printCm(mm), printIn(mm)];
  return units === 'metric' ? `${cm} (${inches})` : `${inches} (${cm})`;
}

function yarnLength(m: number, units: Units): string {
  return units === 'metric' ? `${printM(m)} (${printYd(m)})` : `${printYd(m)} (${printM(m)})`;
}
