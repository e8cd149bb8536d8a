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
import { type BorderInk, borderLines, edgeLines } from './border-words.ts';
import { cornersInOrder } from './hexagon-edges.ts';
import { LIES } from './lies.ts';
import { type BorderPlan, planBorder } from './plan-border.ts';
import { roundMm, stitchMm } from './rounds.ts';
import { zigzagEdgeLines, zigzagLines } from './zigzag-words.ts';

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
  /** Of two single crochet worked together, and of three. */
  readonly togetherM: readonly [two: number, three: number];
}

export interface WorkedBorder {
  /** The corner it begins in: `top right-hand corner`. */
  readonly begins: string;
  /** Worked over the blanket's own edge; its second part is the border. */
  readonly size: CompiledSize | null;
  readonly figures: BorderFigures;
  /** The first thing that keeps it from being worked; null where all is well. */
  readonly fault: Diagnostic | null;
}

/** The rounds as they are printed: they begin at the corner from which the top edge comes first. */
export function borderWords({ size, begins }: WorkedBorder, dialect: DialectKey): readonly WordedLine[] {
  const lines = size?.words[dialect].parts[1]?.lines ?? [];
  return lines.map((line) => ({
    ...line,
    text: line.text.replace('in any corner', `in ${begins}`),
  }));
}

export function workBorder(along: Bordered): WorkedBorder {
  const { lie, across, down } = along.blanket;
  if (LIES[lie].offset) {
    const made = zigzagOver(along);
    return { ...made, begins: 'topmost right-hand corner', figures: plainFigures(along) };
  }
  const made = borderOver(along, across, down);
  return {
    begins: 'top right-hand corner',
    size: made.size,
    fault: made.fault,
    figures: figuresOf(along, made),
  };
}

interface CompiledBorder {
  readonly size: CompiledSize | null;
  readonly fault: Diagnostic | null;
}

interface MadeBorder extends CompiledBorder {
  readonly plan: BorderPlan;
}

function borderOver(along: Bordered, across: number, down: number): MadeBorder {
  const { border, match } = along;
  const plan = planBorder(
    { stitches: match.stitches, rounds: border.rounds, edging: border.edging },
    across,
    down,
  );
  const ink = inkOf(along);
  const edge = edgeLines(plan, ink);
  return { plan, ...compiled(along, ink, edge, borderLines(plan, border.edging, ink)) };
}

/** Round the zigzag of joined hexagons. */
function zigzagOver(along: Bordered): CompiledBorder {
  const { lie, across, down } = along.blanket;
  const ink = inkOf(along);
  const edge = { corners: cornersInOrder(lie, across, down), stitches: along.match.stitches };
  return compiled(along, ink, zigzagEdgeLines(edge, ink), zigzagLines(edge, along.border.rounds, ink));
}

/** The edge is in a yarn that the blanket has none of. */
function inkOf({ yarns, terms, border }: Bordered): BorderInk {
  const letters = yarns.map(({ letter }) => letter);
  const edgeColour = ['Z', 'Y', 'X', 'ZZ'].find((letter) => !letters.includes(letter)) ?? 'ZZZ';
  return { terms, colour: border.colour, edgeColour };
}

function compiled(
  along: Bordered,
  ink: BorderInk,
  edge: readonly string[],
  border: readonly string[],
): CompiledBorder {
  const text = patternText(along, ink, [
    { name: 'Edge', onto: null, lines: edge },
    { name: 'Border', onto: 'Edge', lines: border },
  ]);
  const { diagnostics, sizes } = compileRead(readPattern({ file: 'border', text }, 'border'), 'border');
  const fault = diagnostics.find(({ severity }) => severity === 'error') ?? null;
  return { size: fault === null ? (sizes[0] ?? null) : null, fault };
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

/** Of rounds of single crochet and nothing else. */
function plainFigures(along: Bordered): BorderFigures {
  const ofM = (id: string): number => yarnOfM(along, stitchById(id).yarnInSc);
  return {
    heightMm: along.border.rounds * roundMm(along),
    stitchM: ofM('sc'),
    // One chain that it begins with, and the join.
    roundM: ofM('ch') + ofM('sl-st'),
    repeatM: 0,
    edgingM: 0,
    togetherM: [ofM('sc2tog'), ofM('sc3tog')],
  };
}

function figuresOf(along: Bordered, made: MadeBorder): BorderFigures {
  const { edging } = along.border;
  // Two chains more in each of the four corners.
  const plain = plainFigures(along);
  const squared = { ...plain, roundM: plain.roundM + 8 * yarnOfM(along, stitchById('ch').yarnInSc) };
  const { size, plan } = made;
  if (edging === null || size === null || plan.repeats === null) return squared;
  // The same over one square more across: what the edging then takes more is what its repeats take.
  const wider = borderOver(along, along.blanket.across + 1, along.blanket.down);
  const [one, other] = [lastRowM(along, size), wider.size === null ? 0 : lastRowM(along, wider.size)];
  const [had, has] = [plan.repeats, wider.plan.repeats ?? plan.repeats];
  const repeatM = (other - one) / (2 * (has[0] - had[0]));
  return {
    ...squared,
    heightMm: plain.heightMm + tallest(size) * roundMm(along),
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
