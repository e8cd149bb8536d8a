/** A size worked in, the moments at which whoever follows a film has to stop it out, each with its reason. */

import { specialsIn } from '../check/used-names.ts';
import { type Fabric, FLAG, stitchId, targets } from '../fabric/fabric.ts';
import type { Step } from '../notation/tree.ts';
import { rangeOf } from '../wording/line-rows.ts';
import { printRange } from '../wording/print-label.ts';
import { printStitch } from '../wording/print-name.ts';
import { wordCount } from '../wording/word-line.ts';
import { type Lesson, type LessonLine, lessonLines, voiceFor, yarnName, yarnsOfRow } from './lesson.ts';
import { labelOf } from './script.ts';

/** A row of so many stitches takes longer than a viewer will watch. Our own choice. */
export const LONG_ROW = 60;

export type PauseKind =
  | 'new stitch'
  | 'long row'
  | 'rows alike'
  | 'count'
  | 'colour'
  | 'marker'
  | 'turn'
  | 'join'
  | 'last repeat'
  | 'sizes part';

export interface Pause {
  readonly kind: PauseKind;
  readonly part: string;
  /** `Row 2`; null for a sentence outside rows. */
  readonly label: string | null;
  /** Its line in the part's instructions, and the rows it covers. */
  readonly line: number;
  readonly rows: readonly number[];
  /** A sentence: `A first shell: show it slowly, or twice.` */
  readonly why: string;
}

/** What has been met before the line in hand. */
interface Met {
  readonly stitches: Set<string>;
  readonly specials: Set<string>;
  /** By part, whether the last row turned, and what it was closed into. */
  turns: boolean | null;
  spiral: boolean;
  joinedInto: string | null;
  count: string | null;
  yarn: string | null;
}

type Found = readonly [PauseKind, string];
type Finder = (lesson: Lesson, line: LessonLine, met: Met) => readonly Found[];

export function pausesOf(lesson: Lesson): Pause[] {
  const met: Met = {
    stitches: new Set(),
    specials: new Set(),
    turns: null,
    spiral: false,
    joinedInto: null,
    count: null,
    yarn: null,
  };
  let part: string | null = null;
  return lessonLines(lesson).flatMap((line) => {
    if (line.part.name !== part)
      Object.assign(met, { turns: null, spiral: false, joinedInto: null, count: null });
    part = line.part.name;
    return FINDERS.flatMap((find) => find(lesson, line, met)).map(([kind, why]) => ({
      kind,
      part: line.part.name,
      label: labelOf(line),
      line: line.index,
      rows: line.rows,
      why,
    }));
  });
}

/** In the order in which they come up in a row. */
const FINDERS: readonly Finder[] = [
  sizesPart,
  colourChanges,
  newStitches,
  longRows,
  rowsAlike,
  lastRepeats,
  markers,
  joins,
  turns,
  counts,
];

/** Where another size works more or fewer rows of the line, or none; and where others work rows before it that this leaves out. */
function sizesPart({ fabrics, fabric }: Lesson, { part, index, rows }: LessonLine): Found[] {
  const others = fabrics.filter((other) => other !== fabric);
  const unit = unitOf(fabric, rows);
  const found: Found[] = [];
  const left = others.map((other) => leftOutBefore(fabric, other, part.name, index));
  if (rows.length > 0 && left.some((n) => n > 0)) {
    const said = others.flatMap(({ size }, i) =>
      left[i] ? [`${unitsWords(left[i], unit)} in “${size}”`] : [],
    );
    found.push(['sizes part', `Other sizes have rows before this: ${said.join(', ')}.`]);
  }
  const numbers = others.map((other) => rowsOfLine(other, part.name, index));
  if (rows.length > 0 && numbers.some((n) => n !== rows.length)) {
    const said = others.map(({ size }, i) => `${numbers[i] === 0 ? 'none' : numbers[i]} in “${size}”`);
    const own = `${unitsWords(rows.length, unit)} in this size`;
    found.push(['sizes part', `The sizes part here: ${[own, ...said].join(', ')}.`]);
  }
  return found;
}

/** Rows another size works between this line and the last one that this size works too. */
function leftOutBefore(fabric: Fabric, other: Fabric, part: string, line: number): number {
  let rows = 0;
  for (let before = line - 1; before >= 0 && rowsOfLine(fabric, part, before) === 0; before -= 1)
    rows += rowsOfLine(other, part, before);
  return rows;
}

function unitsWords(n: number, unit: 'row' | 'round'): string {
  return `${n} ${unit}${n === 1 ? '' : 's'}`;
}

function rowsOfLine(fabric: Fabric, part: string, line: number): number {
  return fabric.rows.filter((row) => row.line === line && fabric.parts[row.part]?.name === part).length;
}

/** Where the words say it, in the last stitch of the row before; otherwise where the yarn of the stitches is another. */
function colourChanges(lesson: Lesson, { rows, words }: LessonLine, met: Met): Found[] {
  const changes: string[] = [];
  const take = (yarn: string | null): void => {
    if (yarn === null || yarn === met.yarn) return;
    if (met.yarn !== null) changes.push(yarn);
    met.yarn = yarn;
  };
  for (const row of rows) {
    const { first, last } = yarnsOfRow(lesson, row);
    take(first);
    take(last);
  }
  for (const step of words.steps) if (step.kind === 'yarn' && step.action === 'change') take(step.yarn);
  const [to] = changes;
  if (to === undefined) return [];
  const name = yarnName(lesson.pattern, to).replace(/,$/, '');
  const often = changes.length > 1 ? ` ${changes.length} times in these rows, first` : '';
  return [['colour', `The yarn changes${often} to ${name}.`]];
}

/** Special stitches by name; of the table every stitch but chains, the first time it is worked. */
function newStitches(lesson: Lesson, { rows, words }: LessonLine, met: Met): Found[] {
  const { fabric } = lesson;
  const voice = voiceFor(lesson);
  const found: Found[] = [];
  for (const name of specialsIn(words.steps)) {
    if (met.specials.has(name)) continue;
    met.specials.add(name);
    found.push([
      'new stitch',
      `The first ${voice.specials.get(name) ?? name}, a stitch of this pattern's own.`,
    ]);
  }
  const inSpecials = new Set(
    lesson.pattern.specials
      .filter(({ name }) => met.specials.has(name))
      .flatMap(({ steps }) => stitchesIn(steps)),
  );
  for (const row of rows) {
    const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
    for (let i = first; i < end; i += 1) {
      const id = stitchId(fabric, i);
      if (id === 'ch' || met.stitches.has(id)) continue;
      met.stitches.add(id);
      if (!inSpecials.has(id)) found.push(['new stitch', `The first ${printStitch(id, false, voice)}.`]);
    }
  }
  return found;
}

function stitchesIn(steps: readonly Step[]): string[] {
  return steps.flatMap((step) => {
    if (step.kind === 'work' && step.stitch.kind === 'stitch') return [step.stitch.id];
    return 'body' in step ? stitchesIn(step.body) : [];
  });
}

function longRows({ fabric }: Lesson, { rows }: LessonLine): Found[] {
  const most = Math.max(0, ...rows.map((row) => workedIn(fabric, row)));
  if (most < LONG_ROW) return [];
  return [['long row', `A long ${unitOf(fabric, rows)}: ${most} stitches to work.`]];
}

/** Without chains and what only closes a round. */
function workedIn(fabric: Fabric, row: number): number {
  const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
  let worked = 0;
  for (let i = first; i < end; i += 1)
    if (stitchId(fabric, i) !== 'ch' && ((fabric.flags[i] ?? 0) & (FLAG.join | FLAG.travel)) === 0)
      worked += 1;
  return worked;
}

function rowsAlike(lesson: Lesson, { rows, words }: LessonLine): Found[] {
  const { fabric } = lesson;
  const range = rangeOf(fabric, rows);
  if (rows.length < 2 || range === null) return [];
  const which = printRange(range.unit, [range], null, words.voice).toLowerCase().replace('–', ' to ');
  return [['rows alike', `Time to work ${which}, ${rows.length} of them.`]];
}

/** A repeat whose last time is not like the others. */
function lastRepeats({ fabric }: Lesson, { rows, words }: LessonLine): Found[] {
  const differs = words.steps.some(
    (step, i) =>
      step.kind === 'repeat' &&
      (step.lastPassEnds !== null ||
        step.endsWith !== undefined ||
        (step.stop.kind === 'leaving' && words.steps[i + 1] !== undefined)),
  );
  return differs ? [['last repeat', `The ${unitOf(fabric, rows)} ends differently from its repeat.`]] : [];
}

function markers({ fabric }: Lesson, { rows, words }: LessonLine, met: Met): Found[] {
  const said = words.steps.some((step) => step.kind === 'note' && /\bmark(?:er)?s?\b/i.test(step.text));
  if (said) return [['marker', 'A marker to place or move.']];
  if (!met.spiral && rows.some((row) => fabric.rows[row]?.closing === 'spiral')) {
    met.spiral = true;
    return [
      ['marker', 'A spiral begins: a marker goes into its first stitch and moves up with every round.'],
    ];
  }
  const marked = rows.some((row) => {
    const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
    for (let i = first; i < end; i += 1) if (((fabric.flags[i] ?? 0) & FLAG.marked) !== 0) return true;
    return false;
  });
  return marked ? [['marker', 'The marker moves up with the work.']] : [];
}

/** The first of a part, and one that goes into something other than the last did. */
function joins(lesson: Lesson, { rows }: LessonLine, met: Met): Found[] {
  for (const row of rows) {
    const join = joinOf(lesson.fabric, row);
    const into = join === null ? null : nameOf(lesson, targets(lesson.fabric, join)[0]);
    if (into === null || into === met.joinedInto) continue;
    const before = met.joinedInto;
    met.joinedInto = into;
    return [
      ['join', before === null ? `The first join, into ${into}.` : `The join goes into ${into} this time.`],
    ];
  }
  return [];
}

/** The slip stitch that closes a row, not one that only joins yarn. */
function joinOf(fabric: Fabric, row: number): number | null {
  const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
  for (let i = end - 1; i >= first; i -= 1) {
    const flags = fabric.flags[i] ?? 0;
    if ((flags & FLAG.join) !== 0 && (flags & FLAG.joinsYarn) === 0) return i;
  }
  return null;
}

/** What a stitch is to whoever looks at it: the special one that it belongs to, or itself. */
function nameOf(lesson: Lesson, stitch: number | undefined): string | null {
  if (stitch === undefined) return null;
  const { fabric } = lesson;
  const voice = voiceFor(lesson);
  const special = fabric.groups[fabric.group[stitch] ?? -1]?.special ?? null;
  if (special !== null) return `the first ${voice.specials.get(special) ?? special}`;
  const id = stitchId(fabric, stitch);
  return id === 'ch' ? 'the beginning chain' : `the first ${printStitch(id, false, voice)}`;
}

/** The first turn of a part, and where a row turns and the one before did not, or the other way round. */
function turns(_: Lesson, { rows, words }: LessonLine, met: Met): Found[] {
  if (rows.length === 0) return [];
  const turn = words.steps.findLast((step) => step.kind === 'turn');
  const does = turn?.kind === 'turn' && turn.what === 'turn';
  const before = met.turns;
  if (words.steps.some(({ kind }) => kind === 'repeat rows')) return [];
  met.turns = does;
  if (does && before !== true) return [['turn', 'The work is turned for the first time here.']];
  return before === true && turn?.kind === 'turn' && !does ? [['turn', 'The work is not turned here.']] : [];
}

/** Wherever the count is another than that of the row before. */
function counts({ fabric, index }: Lesson, { line, rows, words }: LessonLine, met: Met): Found[] {
  const count = wordCount(line, [{ fabric, size: index, rows }], words.voice);
  if (count === null || count === met.count) return [];
  met.count = count;
  return [['count', `Time to count: ${count}.`]];
}

function unitOf(fabric: Fabric, rows: readonly number[]): 'row' | 'round' {
  return fabric.rows[rows[0] ?? -1]?.unit ?? 'row';
}
