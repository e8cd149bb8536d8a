/** A pattern, what one size takes and the reader's units in, the list of what to have at hand out, as finished lines. */

import type { Gauge, Pattern, Yarn } from '../pattern/pattern.ts';
import { inTerms } from '../stitches/in-terms.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { printCm, printG, printIn, printM, printMm, printYd } from '../units.ts';
import { hookSize } from './hooks.ts';
import { type Measures, takenM, type YarnUse } from './measures.ts';
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
  return balls === null ? `${length}${mass}` : `${balls} ${balls === 1 ? 'ball' : 'balls'}, ${length}${mass}`;
}

function gaugeWords(gauge: Gauge, said: (of: string) => string, units: Units): string {
  const [cm, inches] = [printCm(gauge.overMm), printIn(gauge.overMm)];
  const over = units === 'metric' ? `${cm} (${inches})` : `${inches} (${cm})`;
  const stitches = gauge.stitches === 1 ? '1 st' : `${gauge.stitches} sts`;
  const rows = gauge.rows === 1 ? '1 row' : `${gauge.rows} rows`;
  const of = gauge.of === null ? '' : ` in ${said(gauge.of)}`;
  return `${stitches} and ${rows} = ${over}${of}${gauge.after === null ? '' : `, after ${gauge.after}`}`;
}

function yarnLength(m: number, units: Units): string {
  return units === 'metric' ? `${printM(m)} (${printYd(m)})` : `${printYd(m)} (${printM(m)})`;
}
