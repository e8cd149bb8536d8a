/**
 * Steps of the tree in, sentences for a voice out. What print marks with asterisks and brackets is said instead: where a
 * repeat begins, what belongs to it, how far it goes.
 */

import type { Num } from '../notation/num.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type {
  BracketStep,
  EvenlyStep,
  GroupStep,
  RepeatStep,
  Step,
  Stop,
  WorkStep,
  YarnStep,
} from '../notation/tree.ts';
import { stitchById } from '../stitches/table.ts';
import { printCounts, printSkipped } from '../wording/print-count.ts';
import { printWhat } from '../wording/print-name.ts';
import { printPlace } from '../wording/print-place.ts';
import { printStep } from '../wording/print-step.ts';
import { printStop } from '../wording/print-stop.ts';
import type { Voice } from '../wording/voice.ts';
import { saySpread } from './say-spread.ts';
import { article } from './speak.ts';

export interface Telling {
  readonly voice: Voice;
  /** Place of the size in the pattern's list. */
  readonly size: number;
  /** How often a repeat is worked in all, as the fabric has it; null where its rows differ. */
  readonly passesOf: (step: Step) => number | null;
  /** `in this size, `, where there are others. */
  readonly here: string;
  /** `yarn B, slate,`. */
  readonly yarnName: (letter: string) => string;
}

/** Steps that one breath can hold. */
const MOST_CLAUSES = 4;

/** Sentences without capitals, stops and articles: `speak` gives them those. */
export function saySteps(steps: readonly Step[], telling: Telling, depth = 0): string[] {
  const told = new Told();
  for (const step of steps) sayStep(step, telling, depth, told);
  return told.end();
}

/** Sentences as they come, and the clauses of the one that is not done. */
class Told {
  private readonly sentences: string[] = [];
  private lead = '';
  private clauses: string[] = [];

  /** Opens a sentence: `with yarn A, chalk`. */
  begin(words: string): void {
    this.close();
    this.lead = `${words}, `;
  }

  clause(words: string): void {
    this.clauses.push(words);
  }

  /** What belongs to the clause before it. */
  add(words: string): void {
    const last = this.clauses.pop();
    if (last !== undefined) this.clauses.push(`${last}${words}`);
    else this.sentences.push(`${this.sentences.pop() ?? ''}${words}`);
  }

  sentence(...words: readonly string[]): void {
    // `With yarn A, work this six times`.
    const [first = '', ...more] = words;
    if (this.clauses.length > 0) this.close();
    this.sentences.push(`${this.lead}${first}`, ...more);
    this.lead = '';
  }

  close(): void {
    const breaths = Math.max(1, Math.ceil(this.clauses.length / MOST_CLAUSES));
    const most = Math.ceil(this.clauses.length / breaths);
    for (let from = 0; from < breaths; from += 1) {
      const words = inOrder(this.clauses.slice(from * most, (from + 1) * most));
      this.sentences.push(from === 0 ? this.lead + words : words);
    }
    this.lead = '';
    this.clauses = [];
  }

  end(): string[] {
    this.close();
    return this.sentences.filter((words) => words !== '');
  }
}

/** `a, b, then c`. */
function inOrder(clauses: readonly string[]): string {
  if (clauses.length < 2) return clauses.join('');
  return `${clauses.slice(0, -1).join(', ')}, then ${clauses.at(-1)}`;
}

function sayStep(step: Step, telling: Telling, depth: number, told: Told): void {
  const { voice } = telling;
  switch (step.kind) {
    case 'work':
      sayWork(step, telling, told);
      break;
    case 'chain':
      told.clause(printStep({ ...step, counts: null }, voice));
      if (step.counts !== null) told.sentence(`that ${bare(printCounts(step.counts, voice))}`);
      break;
    case 'group':
      told.sentence(groupWords(step, telling));
      break;
    case 'corners':
      told.sentence(`in each ${printWhat(step.what, false, voice)}, ${workAll(step.body, telling)}`);
      break;
    case 'repeat':
      sayRepeat(step, telling, depth, told);
      break;
    case 'bracket':
      sayBracket(step, telling, depth, told);
      break;
    case 'evenly':
      sayEvenly(step, voice, told);
      break;
    case 'yarn':
      if (step.action === 'with') told.begin(yarnWords(step, telling));
      else if (step.action === 'join') told.sentence(yarnWords(step, telling));
      // It is done in the last stitch, not after it.
      else if (step.action === 'change')
        told.add(`, ${yarnWords(step, telling).replace(/^change/, 'changing')}`);
      else told.clause(yarnWords(step, telling));
      break;
    case 'fasten off':
      told.sentence(step.yarn === null ? 'fasten off' : `fasten off ${telling.yarnName(step.yarn)}`);
      break;
    case 'turn':
      told.sentence(step.what === 'turn' ? 'turn your work' : step.what);
      break;
    case 'along':
      told.begin(printStep(step, voice));
      break;
    case 'note':
      sayNote(printStep(step, voice), told);
      break;
    case 'join':
    case 'repeat rows':
    case 'leave':
    case 'ring':
      told.sentence(printStep(step, voice));
      break;
    case 'skip':
    case 'loops':
    case 'shape':
    case 'square':
      told.clause(printStep(step, voice));
      break;
  }
}

/** An aside belongs to what it follows, `(corner made)`, and where the hook passes to what comes next. */
function sayNote(words: string, told: Told): void {
  if (words.startsWith('(')) told.add(`, ${bare(words)}`);
  else if (/^working (?:in front|behind|around|over|between)\b/.test(words)) told.begin(words);
  else if (/^(?:working|making|ending|leaving)\b/.test(words)) told.add(`, ${words}`);
  else told.sentence(words);
}

function sayEvenly(step: EvenlyStep, voice: Voice, told: Told): void {
  const spread = voice.spreads.get(step);
  told.sentence(printStep(step, { ...voice, spreads: new Map() }));
  if (spread !== undefined) told.sentence(saySpread(spread, step, voice));
}

function sayWork(step: WorkStep, telling: Telling, told: Told): void {
  const { voice } = telling;
  told.clause(workWords(step, telling));
  for (const corners of [step.corners, step.corners?.also]) {
    if (corners === undefined) continue;
    const { body, what } = corners;
    told.add(`, but in each ${printWhat(what, false, voice)}, ${workAll(body, telling)}`);
    told.close();
  }
  if (step.skipped === null) return;
  const nth = step.place?.kind === 'from-hook' ? numberForSize(step.place.nth, telling.size) : null;
  told.close();
  told.sentence(`the ${bare(printSkipped(step.skipped, nth === null ? null : nth - 1, voice))}`);
}

/** `work 2 single crochet in next stitch`, `double crochet in each of next 3 stitches`. */
function workWords(step: WorkStep, { voice, size }: Telling): string {
  const plain: WorkStep = { ...spreadOut(step, size), skipped: null };
  const { corners: _, ...whole } = plain;
  const many = (whole.place?.kind === 'first' || whole.place?.kind === 'last') && !isOne(whole.place.n, size);
  const words = printStep(whole, voice).replace(
    many && !isDrawn(step) ? / in (?=first|last)/ : /$^/,
    ' in each of ',
  );
  if (whole.stitch.kind === 'special' && whole.times === null) return `work ${article(words)} ${words}`;
  return whole.times === null ? words : `work ${words}`;
}

/** One in each of several is said so, since "in the next three" could be heard as one over all of them. */
function spreadOut(step: WorkStep, size: number): WorkStep {
  const { place, times } = step;
  if (isDrawn(step)) return step;
  if (place === null && times !== null) {
    const each = numberForSize(times, size) !== 1;
    return {
      ...step,
      times: null,
      place: { kind: 'next', n: each ? times : null, what: { kind: 'st' }, each, span: step.span },
    };
  }
  if (place?.kind !== 'next' || isOne(place.n, size)) return step;
  return { ...step, place: { ...place, each: true } };
}

/** Worked over several stitches together, as a special stitch may be. */
function isDrawn({ stitch }: WorkStep): boolean {
  return stitch.kind === 'special' || stitchById(stitch.id).uses > 1;
}

function isOne(n: Num | null, size: number): boolean {
  return n === null || numberForSize(n, size) === 1;
}

function groupWords({ body, place }: GroupStep, telling: Telling): string {
  return `${printPlace(place, 'both', 'in', telling.voice)}, ${workAll(body, telling)}`;
}

/** `work 2 single crochet, chain 2 and 2 single crochet`: all of it into one place. */
function workAll(body: readonly Step[], telling: Telling): string {
  const each = body.map((step) => {
    if (step.kind === 'work' && step.place === null) {
      const words = printStep(step, telling.voice);
      const one = step.times === null || numberForSize(step.times, telling.size) === 1;
      return one && step.times === null ? `${article(words)} ${words}` : words;
    }
    return saySteps([step], telling, 1).join(', ');
  });
  const listed = each.length < 2 ? each.join('') : `${each.slice(0, -1).join(', ')} and ${each.at(-1)}`;
  return `work ${listed}`;
}

function yarnWords(step: YarnStep, { voice, yarnName }: Telling): string {
  return printStep(step.yarn === null ? step : { ...step, yarn: yarnName(step.yarn) }, voice);
}

function sayRepeat(step: RepeatStep, telling: Telling, depth: number, told: Told): void {
  const { lastPassEnds: ends, body, stop, endsWith } = step;
  const inner = depth > 0 ? 'an inner repeat' : 'the repeat';
  const sentences = saySteps(body, telling, depth + 1);
  told.sentence(...after(`${inner} begins here`, sentences));
  const passes = telling.passesOf(step);
  const left = ends === null ? [] : saySteps(body.slice(ends), telling, depth + 1);
  if (passes === 1 && !(stop.kind === 'times' && stop.more)) {
    told.sentence(`${telling.here}it fits once, so there is nothing to repeat`);
    if (left.length > 0) told.sentence(...after('and that once, leave out its end', left));
  } else {
    const that =
      sentences.length > 1 ? `all of that, from where ${inner.replace('an ', 'the ')} began,` : 'that';
    const inAll = passes === null || stop.kind === 'times' ? '' : `, which makes ${passes} times in all`;
    told.sentence(`now repeat ${that} ${againWords(stop, telling)}${inAll}`);
    if (left.length > 0) told.sentence(...after('the last time, leave out the end', left));
  }
  if (endsWith === 'row') told.begin('end with this');
  if (endsWith === 'last rep') told.begin('the last repeat ends differently, with this');
}

function againWords(stop: Stop, { voice, size }: Telling): string {
  switch (stop.kind) {
    case 'times': {
      const n = numberForSize(stop.n, size) ?? 0;
      return stop.more ? printStop(stop, voice) : `until you have worked it ${timesWords(n)} in all`;
    }
    case 'end':
      return stop.word === 'to end' ? 'all the way to end' : `all the way ${stop.word}`;
    case 'leaving':
    case 'before':
      return `all the way ${printStop(stop, voice)}`;
  }
}

function sayBracket(step: BracketStep, telling: Telling, depth: number, told: Told): void {
  const { stop, body } = step;
  const sentences = saySteps(body, telling, depth + 1);
  const n = stop.kind === 'times' ? (numberForSize(stop.n, telling.size) ?? 0) : null;
  const how = n === null ? againWords(stop, telling) : timesWords(moreThan(stop, n));
  const passes = n === null ? telling.passesOf(step) : null;
  const whole = sentences.length > 1;
  told.sentence(...after(`do ${whole ? 'all of this' : 'this'} ${how}`, sentences));
  if (passes !== null) told.sentence(`${telling.here}that is ${timesWords(passes)}`);
  else if (whole) told.sentence('here ends what you repeat');
}

/** `do this twice: a, then b`; where that has a colon of its own, it is a sentence by itself. */
function after(words: string, [first = '', ...more]: readonly string[]): string[] {
  return first.includes(':') ? [words, first, ...more] : [`${words}: ${first}`, ...more];
}

function moreThan(stop: Stop, n: number): number {
  return stop.kind === 'times' && stop.more ? n + 1 : n;
}

export function timesWords(n: number): string {
  return n === 1 ? 'once' : n === 2 ? 'twice' : `${n} times`;
}

/** Without the brackets that it stands in on paper. */
function bare(words: string): string {
  return words.replace(/^\(|\)$/g, '');
}
