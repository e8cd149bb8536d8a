/** One step of the tree in, its words out, without a capital or a full stop: `sc in next 3 sts`, `ch 3 (counts as dc)`. */

import type { Edge } from '../notation/edge.ts';
import type {
  BracketStep,
  ChainStep,
  EvenlyStep,
  JoinStep,
  RepeatStep,
  Shaping,
  Step,
  WorkStep,
  YarnStep,
} from '../notation/tree.ts';
import { stitchById } from '../stitches/table.ts';
import { joinSteps } from './join-steps.ts';
import { ownWords } from './own-words.ts';
import type { Noun } from './phrases.ts';
import { printCounts, printSkipped } from './print-count.ts';
import { printName, printWhat } from './print-name.ts';
import { isMany, printNumber, soleValue } from './print-number.ts';
import { printAmount, printLoop, printPlace } from './print-place.ts';
import { printRepeatRows } from './print-rows.ts';
import { printSpread } from './print-spread.ts';
import { printSquare } from './print-square.ts';
import { printStop } from './print-stop.ts';
import type { Voice } from './voice.ts';

/** Marks of a repeat that stands in no, one or two others. */
const MARKS = ['*', '†', '‡'];

/** `depth` counts the asterisked repeats that the step stands in. */
export function printStep(step: Step, voice: Voice, depth = 0): string {
  switch (step.kind) {
    case 'work':
      if (step.shaping !== undefined)
        return `${printWork(step, voice)}, ${printShaping(step.shaping, voice)}`;
      return [step.corners, step.corners?.also].reduce(
        (words, corners) =>
          corners === undefined
            ? words
            : `${words}, ${printStep({ kind: 'corners', ...corners, span: step.span }, voice, depth)}`,
        printWork(step, voice),
      );
    case 'chain':
      return printChain(step, voice);
    case 'skip':
      if (step.restOf !== undefined)
        return `${voice.phrases.skip} last ${printAmount(step.n, step.what, voice)} of the ${step.restOf}`;
      return `${voice.phrases.skip} ${step.pick} ${printAmount(step.n, step.what, voice)}`;
    case 'group':
      return `(${bodyOf(step.body, voice, depth)}) ${printPlace(step.place, 'both', 'in', voice)}`;
    case 'repeat':
      return printRepeat(step, voice, depth);
    case 'bracket':
      return printBracket(step, voice, depth);
    case 'join':
      return printJoin(step, voice);
    case 'turn':
      return step.what;
    case 'yarn':
      return printYarn(step, voice);
    case 'fasten off':
      return step.yarn === null ? 'fasten off' : `fasten off ${step.yarn}`;
    case 'along':
      return step.loops === true
        ? `working in free loops of ${printWhat({ kind: 'ch' }, false, voice)}`
        : `working ${edgeLead(step.edge)}${edgeWords(step, voice)}`;
    case 'corners':
      return `working (${bodyOf(step.body, voice, depth)}) in each ${printWhat(step.what, false, voice)}`;
    case 'loops':
      return step.loop === 'both' ? 'working in both loops' : `working in ${printLoop(step.loop, voice)}`;
    case 'ring':
      return 'make a magic ring';
    case 'shape':
      return printShaping(step, voice);
    case 'square':
      return printSquare(step, voice);
    case 'leave':
      return `leave ${step.n === undefined ? (voice.form === 'full' ? 'remaining' : 'rem') : `last ${printNumber(step.n, voice.numbers)}`} ${voice.phrases.st.many} unworked`;
    case 'evenly':
      return printEvenly(step, voice, depth);
    case 'repeat rows':
      return printRepeatRows(step, voice);
    case 'note':
      return ownWords(step.text, voice);
  }
}

/** `inc 6 sts evenly`, `dec 1 st at each end`. */
function printShaping({ does, n, where }: Shaping, voice: Voice): string {
  const word = voice.form === 'full' ? (does === 'inc' ? 'increase' : 'decrease') : does;
  return `${word} ${printAmount(n, { kind: 'st' }, voice)} ${where === 'evenly' ? 'evenly' : 'at each end'}`;
}

function printWork(step: WorkStep, voice: Voice): string {
  const many = step.times !== null && isMany(step.times, voice.numbers);
  const name = printName(step.stitch, many, voice);
  const counted = step.times === null ? name : `${printNumber(step.times, voice.numbers)} ${name}`;
  if (step.place === null)
    return step.loop === 'both' ? counted : `${counted} in ${printLoop(step.loop, voice)}`;
  // Two together go over two at a time, so "in each st" would be another thing: `sc2tog around`.
  const drawn = step.stitch.kind === 'stitch' && stitchById(step.stitch.id).uses > 1;
  const ends = step.place.kind === 'each' && step.place.stop.kind !== 'before';
  if (drawn && ends && step.place.kind === 'each' && step.place.what.kind === 'st' && step.loop === 'both')
    return `${counted} ${printStop(step.place.stop, voice)}`;
  const worked = `${counted} ${printPlace(step.place, step.loop, leadOf(step), voice)}`;
  if (step.skipped === null) return worked;
  const nth = step.place.kind === 'from-hook' ? soleValue(step.place.nth, voice.numbers) : null;
  return `${worked} ${printSkipped(step.skipped, nth === null ? null : nth - 1, voice)}`;
}

/** A decrease goes over its stitches, a post stitch around one, anything else in them. */
function leadOf(step: WorkStep): 'in' | 'over' | 'around' {
  const row = step.stitch.kind === 'stitch' ? stitchById(step.stitch.id) : null;
  if (row?.enters === 'front post' || row?.enters === 'back post') return 'around';
  const legs = row?.uses ?? 1;
  return legs > 1 && step.place?.kind === 'next' && step.place.n !== null ? 'over' : 'in';
}

function printChain(step: ChainStep, voice: Voice): string {
  const number =
    'of' in step.n ? `a multiple of ${step.n.of} plus ${step.n.plus}` : printNumber(step.n, voice.numbers);
  const chain = `${voice.phrases.ch.one} ${number}`;
  return step.counts === null ? chain : `${chain} ${printCounts(step.counts, voice)}`;
}

function printRepeat(step: RepeatStep, voice: Voice, depth: number): string {
  const mark = MARKS[depth] ?? '*';
  const { lastPassEnds: ends } = step;
  const whole = ends === null ? step.body : step.body.slice(0, ends);
  const rest = ends === null ? [] : step.body.slice(ends);
  const first = bodyOf(whole, voice, depth + 1);
  const body =
    ends === null
      ? first
      : [`${first}**`, bodyOf(rest, voice, depth + 1)].filter((words) => words !== '').join(', ');
  const again = `${voice.phrases.repeat} from ${mark} ${printStop(step.stop, voice)}`;
  const ending =
    ends !== null
      ? `, ending last ${voice.phrases.repeat} at **`
      : step.endsWith === undefined
        ? ''
        : step.endsWith === 'row'
          ? ', ending with'
          : `, ending last ${voice.phrases.repeat} with`;
  return `${mark}${body}; ${again}${ending}`;
}

function printBracket(step: BracketStep, voice: Voice, depth: number): string {
  return `[${bodyOf(step.body, voice, depth)}] ${printStop(step.stop, voice)}`;
}

function printJoin(step: JoinStep, voice: Voice): string {
  const place = step.place === null ? '' : ` ${printPlace(step.place, 'both', 'in', voice)}`;
  return `join with ${printName(step.stitch, false, voice)}${place}${step.ring ? ' to form ring' : ''}`;
}

function printYarn(step: YarnStep, voice: Voice): string {
  const another = voice.terms === 'UK' ? 'new colour' : 'new color';
  const yarn = step.yarn ?? (step.only === true ? 'yarn' : another);
  switch (step.action) {
    case 'with':
      return `with ${yarn}`;
    case 'change':
      return `change to ${yarn} ${step.when ?? `in last ${voice.phrases.yarnOver}`}`;
    case 'drop':
    case 'carry':
    case 'pick up':
      return `${step.action} ${yarn}`;
    case 'join': {
      const stitch = step.stitch === null ? '' : ` with ${printName(step.stitch, false, voice)}`;
      const place = step.place === null ? '' : ` ${printPlace(step.place, 'both', 'in', voice)}`;
      const seam = step.when === undefined ? '' : ` ${step.when}`;
      return `join ${yarn}${stitch}${place}${seam}`;
    }
  }
}

function printEvenly(step: EvenlyStep, voice: Voice, depth: number): string {
  const name = printName(step.stitch, isMany(step.n, voice.numbers), voice);
  if (step.side?.again === true) return ownWords(step.side.said, voice);
  if (step.side?.of !== undefined)
    return `${printName(step.stitch, false, voice)} in next ${printAmount(step.n, step.side.of, voice)} ${ownWords(step.side.said, voice)}`;
  // `sc evenly along the side (81 along a short side, …)`: the numbers stand in its words.
  if (step.side?.lengths !== undefined)
    return `${printName(step.stitch, false, voice)} ${ownWords(step.side.said, voice)}`;
  if (step.side !== undefined)
    return `${printNumber(step.n, voice.numbers)} ${name} ${ownWords(step.side.said, voice)}`;
  const total = `work ${printNumber(step.n, voice.numbers)} ${name} evenly ${edgeLead(step.edge)}${edgeWords(step, voice)}`;
  const spread = voice.spreads.get(step);
  if (spread === undefined) return total;
  return `${total}: ${printSpread(spread, step.stitch, placeOf(step.edge, voice), MARKS[depth] ?? '*', voice)}`;
}

function placeOf(edge: Edge, { phrases }: Voice): Noun {
  if (edge === 'row ends') return phrases.rowEnd;
  return edge === 'foundation' ? phrases.ch : phrases.st;
}

function edgeLead(edge: Edge): string {
  if (edge === 'all round') return '';
  return edge === 'unused loops' ? 'in ' : 'along ';
}

function edgeWords({ edge, ...step }: { readonly edge: Edge; readonly row?: number }, voice: Voice): string {
  switch (edge) {
    case 'row ends':
      return voice.phrases.rowEnd.many;
    case 'foundation':
      return `opposite side of foundation ${printWhat({ kind: 'ch' }, false, voice)}`;
    case 'all round':
      return 'around';
    case 'opening':
      return 'opening';
    // Its own words are printed.
    case 'elsewhere':
      return '';
    case 'last row':
      return step.row === undefined
        ? `last ${voice.phrases.row.one.toLowerCase()}`
        : `${voice.phrases.row.one} ${step.row}`;
    case 'unused loops':
      return `unused loops${step.row === undefined ? '' : ` of ${voice.phrases.row.one} ${step.row}`}`;
  }
}

function bodyOf(steps: readonly Step[], voice: Voice, depth: number): string {
  return joinSteps(
    steps.map((step) => ({ step, words: printStep(step, voice, depth) })),
    voice,
    'inside',
  );
}
