/** An along's border in, worked stitch by stitch over the edge of the joined squares: its words, its height and the yarn of each of its pieces. */

import { compileRead } from '../compile-read.ts';
import type { CompiledSize } from '../compiled.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { ALLOWANCE, YARN_PER_SC_WIDTH } from '../measure/yarn-figures.ts';
import { readPattern } from '../pattern/read-pattern.ts';
import { stitchById } from '../stitches/table.ts';
import { mFromMm } from '../units.ts';
import type { DialectKey, WordedLine } from '../wording/words.ts';
import type { Along } from './along.ts';
import { borderLines, edgeLines } from './border-words.ts';
import { type BorderPlan, planBorder } from './plan-border.ts';
import { roundMm, stitchMm } from './rounds.ts';

type Bordered = Pick<
  Along,
  'terms' | 'gauge' | 'match' | 'blanket' | 'border' | 'specials' | 'title' | 'yarns'
>;

/** What a border takes and adds, for any number of squares across and down. */
export interface BorderFigures {
  /** Height of it, on each side of the blanket. */
  readonly heightMm: number;
  /** Yarn of a single crochet of a plain round, allowance included. */
  readonly stitchM: number;
  /** Of what else there is in a plain round, its corners and its join. */
  readonly roundM: number;
  readonly repeatM: number;
  /** Of the edging's corners and what stands beside them. */
  readonly edgingM: number;
}

export interface WorkedBorder {
  readonly plan: BorderPlan;
  /** Worked over the blanket's own edge; its second part is the border. */
  readonly size: CompiledSize | null;
  readonly figures: BorderFigures;
  /** The first thing that keeps it from being worked; null where all is well. */
  readonly fault: Diagnostic | null;
}

/** The rounds as they are printed: they begin at the corner from which the top edge is the first side. */
export function borderWords({ size }: WorkedBorder, dialect: DialectKey): readonly WordedLine[] {
  const lines = size?.words[dialect].parts[1]?.lines ?? [];
  return lines.map((line) => ({
    ...line,
    text: line.text.replace('in any corner', 'in top right-hand corner'),
  }));
}

export function workBorder(along: Bordered): WorkedBorder {
  const { across, down } = along.blanket;
  const made = borderOver(along, across, down);
  return { plan: made.plan, size: made.size, fault: made.fault, figures: figuresOf(along, made) };
}

interface MadeBorder {
  readonly plan: BorderPlan;
  readonly size: CompiledSize | null;
  readonly fault: Diagnostic | null;
}

function borderOver(along: Bordered, across: number, down: number): MadeBorder {
  const { border, match, terms } = along;
  const plan = planBorder(
    { stitches: match.stitches, rounds: border.rounds, edging: border.edging },
    across,
    down,
  );
  const letters = along.yarns.map(({ letter }) => letter);
  const edgeColour = ['Z', 'Y', 'X', 'ZZ'].find((letter) => !letters.includes(letter)) ?? 'ZZZ';
  const ink = { terms, colour: border.colour, edgeColour };
  const text = patternText(along, ink, [
    { name: 'Edge', onto: null, lines: edgeLines(plan, ink) },
    { name: 'Border', onto: 'Edge', lines: borderLines(plan, border.edging, ink) },
  ]);
  const compiled = compileRead(readPattern({ file: 'border', text }, 'border'), 'border');
  const fault = compiled.diagnostics.find(({ severity }) => severity === 'error') ?? null;
  return { plan, size: fault === null ? (compiled.sizes[0] ?? null) : null, fault };
}

/** JSON is YAML, so names and words may hold any letter. */
function patternText(
  { title, terms, gauge, specials }: Bordered,
  { colour, edgeColour }: { readonly colour: string; readonly edgeColour: string },
  parts: readonly {
    readonly name: string;
    readonly onto: string | null;
    readonly lines: readonly string[];
  }[],
): string {
  const yarn = { colour: 'yarn', weight: 4, fibre: 'yarn' };
  const head = {
    title,
    terms,
    gauge: {
      stitches: gauge.stitches,
      ...(gauge.rows === null ? {} : { rows: gauge.rows }),
      over: `${gauge.overMm} x ${gauge.upMm} mm`,
      ...(gauge.of === null ? {} : { of: gauge.of }),
    },
    yarn: { [colour]: yarn, [edgeColour]: yarn },
    ...(Object.keys(specials).length === 0 ? {} : { special: specials }),
  };
  const keys = Object.entries(head).map(([key, value]) => `${key}: ${JSON.stringify(value)}`);
  const works = parts.flatMap(({ name, onto, lines }) => [
    `  - name: ${name}`,
    ...(onto === null ? [] : [`    onto: ${onto}`]),
    '    work: |',
    ...lines.map((line) => `      ${line}`),
  ]);
  return [...keys, 'parts:', ...works, ''].join('\n');
}

function figuresOf(along: Bordered, made: MadeBorder): BorderFigures {
  const { rounds, edging } = along.border;
  const scM = yarnOfM(along, stitchById('sc').yarnInSc);
  const perChain = yarnOfM(along, stitchById('ch').yarnInSc);
  const plain = { stitchM: scM, roundM: perChain * 9 + yarnOfM(along, stitchById('sl-st').yarnInSc) };
  const plainMm = rounds * roundMm(along);
  const { size, plan } = made;
  if (edging === null || size === null || plan.repeats === null)
    return { ...plain, heightMm: plainMm, repeatM: 0, edgingM: 0 };
  // The same over one square more across: what the edging then takes more is what its repeats take.
  const wider = borderOver(along, along.blanket.across + 1, along.blanket.down);
  const [one, other] = [lastRowM(along, size), wider.size === null ? 0 : lastRowM(along, wider.size)];
  const [had, has] = [plan.repeats, wider.plan.repeats ?? plan.repeats];
  const repeatM = (other - one) / (2 * (has[0] - had[0]));
  return {
    ...plain,
    heightMm: plainMm + tallest(size) * roundMm(along),
    repeatM,
    edgingM: one - repeatM * 2 * (had[0] + had[1]),
  };
}

function lastRowM(along: Bordered, { fabric }: CompiledSize): number {
  const row = fabric.rows.at(-1);
  let inSc = 0;
  for (let i = row?.first ?? 0; i < (row?.end ?? 0); i += 1)
    inSc += stitchById(fabric.stitches[fabric.kind[i] ?? 0] ?? 'ch').yarnInSc;
  return yarnOfM(along, inSc);
}

function tallest({ fabric }: CompiledSize): number {
  const made = Object.keys(fabric.rows.at(-1)?.byStitch ?? {});
  return Math.max(0, ...made.map((id) => stitchById(id).heightInSc));
}

/** So many single crochet, with the allowance that all yarn is told with. */
export function yarnOfM(along: Pick<Along, 'gauge'>, inSc: number): number {
  return mFromMm(inSc * YARN_PER_SC_WIDTH * stitchMm({ gauge: along.gauge, terms: 'US' }) * ALLOWANCE);
}
