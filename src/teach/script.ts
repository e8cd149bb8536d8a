/** A pattern and one of its sizes worked in, what a designer says while she films herself making it out. */

import { specialsIn } from '../check/used-names.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { stitchById, termsOf } from '../stitches/table.ts';
import { ownWords } from '../wording/own-words.ts';
import { printLabel, printRange } from '../wording/print-label.ts';
import { type Voice, voiceOf } from '../wording/voice.ts';
import { wordCount } from '../wording/word-line.ts';
import {
  type Lesson,
  type LessonLine,
  lessonLines,
  tellingOf,
  voiceFor,
  yarnName,
  yarnsOfRow,
} from './lesson.ts';
import { saySteps } from './say-steps.ts';
import { article, speak } from './speak.ts';

/** A row, rows that are alike, or a sentence outside rows. Every sentence is ready to be read aloud. */
export interface ScriptBlock {
  readonly part: string;
  /** `Row 2 (wrong side)`, for the eye; null outside rows. */
  readonly heading: string | null;
  /** Its line in the part's instructions, and the rows it covers. */
  readonly line: number;
  readonly rows: readonly number[];
  /** Which row it is, its side and its yarn. */
  readonly before: readonly string[];
  /** How a special stitch is made that is met for the first time: one by one, each in several sentences. */
  readonly stitches: readonly string[];
  readonly work: readonly string[];
  /** The count. */
  readonly after: readonly string[];
}

export interface Script {
  readonly title: string;
  readonly size: string;
  readonly terms: Terms;
  readonly opening: readonly string[];
  readonly blocks: readonly ScriptBlock[];
  readonly closing: readonly string[];
}

export function scriptOf(lesson: Lesson): Script {
  const { pattern, index, terms } = lesson;
  const voice = voiceFor(lesson);
  const known = new Set<string>();
  const lines = lessonLines(lesson);
  const finishing = pattern.finishing.map((sentence) => speak(ownWords(sentence, voice), terms));
  return {
    title: pattern.title,
    size: pattern.sizes[index]?.name ?? '',
    terms,
    opening: openingOf(lesson, voice),
    blocks: lines.map((line, i) => blockOf(lesson, line, lines[i - 1] ?? null, known)),
    closing: finishing.length === 0 ? [] : ['To finish.', ...finishing],
  };
}

function openingOf({ pattern, index, fabric, terms }: Lesson, voice: Voice): string[] {
  const size = pattern.sizes.length > 1 ? `, in the size ${pattern.sizes[index]?.name ?? ''}` : '';
  const notes = pattern.notes.map((note) => speak(ownWords(note, voice), terms));
  return [
    speak(`This is ${pattern.title}${size}`, terms),
    `All stitches have their ${terms} names.`,
    ...otherNames(fabric.stitches, terms),
    ...(notes.length === 0 ? [] : ['Before we begin.', ...notes]),
  ];
}

/** `What I call single crochet is double crochet in UK terms.` */
function otherNames(ids: readonly string[], terms: Terms): string[] {
  const other = terms === 'US' ? 'UK' : 'US';
  return ids.flatMap((id) => {
    const row = stitchById(id);
    const [own, theirs] = [termsOf(row, terms).name, termsOf(row, other).name];
    const plain = row.uses === 1 && row.enters === undefined && own !== theirs;
    return plain ? [speak(`What I call ${own} is called ${theirs} in ${other} terms`, terms)] : [];
  });
}

function blockOf(
  lesson: Lesson,
  line: LessonLine,
  before: LessonLine | null,
  known: Set<string>,
): ScriptBlock {
  const { pattern, terms } = lesson;
  const telling = tellingOf(lesson, line);
  const { said: colour, steps } = colourOf(lesson, line, before);
  const label = labelOf(line);
  return {
    part: line.part.name,
    heading: label === null ? null : `${label}${sideWords(lesson, line, ' (right side)', ' (wrong side)')}`,
    line: line.index,
    rows: line.rows,
    before: [
      ...(line.part === before?.part ? [] : partOpening(pattern, line)),
      ...(label === null ? [] : [speak(label, terms)]),
      sideWords(lesson, line, 'The right side faces you.', 'The wrong side faces you.'),
      ...colour,
      ...(line.rows.length > 1 && !repeatsRows(line)
        ? [speak(`There are ${line.rows.length} of them, each made the same way`, terms)]
        : []),
    ].filter((sentence) => sentence !== ''),
    stitches: newSpecials(lesson, line, known),
    work: [
      ...saySteps(steps, telling),
      ...(line.rows.length > 1 && repeatsRows(line)
        ? [`that is ${line.rows.length} ${unitOf(line)}s to work`]
        : []),
    ].map((sentence) => speak(sentence, terms)),
    after: countOf(lesson, line),
  };
}

function partOpening(pattern: Pattern, { part }: LessonLine): string[] {
  if (pattern.parts.length === 1 && part.make === 1) return [];
  const make = part.make === 1 ? '' : ` You need ${part.make} of them.`;
  const onto = part.onto === null ? '' : ` It is worked onto the ${part.onto}.`;
  const [first] = pattern.parts;
  return [
    speak(`${part === first ? 'We begin with' : 'Now comes'} the ${part.name}.${onto}${make}`, pattern.terms),
  ];
}

/** `Row 2`, `Rounds 8–14`. */
export function labelOf({ line, words }: LessonLine): string | null {
  const { ranges, voice } = words;
  if (ranges !== null) return printRange(ranges[0].unit, ranges, null, voice);
  return printLabel({ ...line, side: null }, voice);
}

/** Where the part says a side at all, the side of each single row that is worked flat. */
function sideWords(
  { fabric }: Lesson,
  { part, line, rows }: LessonLine,
  right: string,
  wrong: string,
): string {
  const [row, more] = rows;
  const flat = row !== undefined && more === undefined && fabric.rows[row]?.closing === 'flat';
  const says = part.instructions.lines.some(({ side }) => side !== null);
  const side = line.side ?? (flat && says ? (fabric.rows[row]?.side ?? null) : null);
  return side === null ? '' : side === 'RS' ? right : wrong;
}

/** A change of yarn is said before the row, and not once more in it. */
function colourOf(
  lesson: Lesson,
  { rows, words, part }: LessonLine,
  before: LessonLine | null,
): { readonly said: readonly string[]; readonly steps: LessonLine['words']['steps'] } {
  const { pattern, terms } = lesson;
  const { steps } = words;
  const [row] = rows;
  const last = before?.part === part ? before.rows.at(-1) : undefined;
  if (row === undefined || last === undefined) return { said: [], steps };
  const yarn = yarnsOfRow(lesson, row).first;
  // Stripes that a row repeats were told where they stand first.
  if (rows.some((other) => yarnsOfRow(lesson, other).first !== yarn)) return { said: [], steps };
  const [first] = steps;
  const told = steps.some((step) => step.kind === 'yarn' && step.action !== 'change');
  const withIt = first?.kind === 'yarn' && first.action === 'with' && first.yarn === yarn;
  if (yarn === null || yarn === yarnsOfRow(lesson, last).first || (told && !withIt))
    return { said: [], steps };
  return {
    said: [speak(`From here we work with ${yarnName(pattern, yarn)}`, terms)],
    steps: withIt ? steps.slice(1) : steps,
  };
}

/** How the special stitches are made that no row before this has had. */
function newSpecials({ pattern, terms, index }: Lesson, line: LessonLine, known: Set<string>): string[] {
  const used = specialsIn(line.words.steps);
  return pattern.specials
    .filter(({ name }) => used.has(name) && !known.has(name))
    .map((special) => {
      known.add(special.name);
      const voice = voiceOf({ terms, form: 'full' }, index, pattern.specials, pattern.terms);
      const name = voice.specials.get(special.name) ?? special.fullName;
      const telling = {
        voice,
        size: index,
        passesOf: () => null,
        here: '',
        yarnName: (letter: string) => letter,
      };
      const how =
        special.how === null
          ? saySteps(special.steps, telling).map((sentence) => speak(sentence, terms))
          : [speak(ownWords(special.how, voice), terms)];
      const news = speak(`Here is a new stitch, ${article(name)} ${name}. This is how it is made`, terms);
      return [news, ...how].join(' ');
    });
}

/** What the rows have, as stated or as they were worked: never reckoned from the words. */
function countOf(lesson: Lesson, line: LessonLine): string[] {
  const { fabric, index, terms } = lesson;
  const { rows, words } = line;
  const stated = wordCount(line.line, [{ fabric, size: index, rows }], words.voice);
  if (stated === null) return [];
  // A bare number is one of stitches.
  const count = stated.replace(/^(\d+)(?=$| in last)/, `$1 ${words.voice.phrases.st.many}`);
  const inLast = / in last (?:row|round)$/.exec(count);
  const said = listed((inLast === null ? count : count.slice(0, inLast.index)).split(', '));
  if (inLast !== null)
    return [...eachCount(lesson, line), speak(`The last ${unitOf(line)} has ${said}`, terms)];
  if (rows.length < 2) return [speak(`That gives you ${said}`, terms)];
  const rising = /^\d+, /.test(count);
  return [speak(`${rising ? `The ${unitOf(line)}s have` : `Each ${unitOf(line)} has`} ${said}`, terms)];
}

/** Rows whose counts differ are counted one by one up to this many. Our own choice: more could not be followed by ear. */
const MOST_COUNTED = 12;

/** Stitches alone, as the fabric has them. */
function eachCount({ fabric, terms }: Lesson, line: LessonLine): string[] {
  const counts = line.rows.map((row) => fabric.rows[row]?.stitches ?? 0);
  if (counts.length > MOST_COUNTED) return [];
  const unit = unitOf(line);
  return [speak(`Stitches alone, ${unit} by ${unit}, come to ${listed(counts.map(String))}`, terms)];
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

function repeatsRows({ words }: LessonLine): boolean {
  return words.steps.some(({ kind }) => kind === 'repeat rows');
}

function unitOf({ line, words }: LessonLine): 'row' | 'round' {
  if (words.ranges !== null) return words.ranges[0].unit;
  return line.label !== null && line.label.kind !== 'named' ? line.label.unit : 'row';
}
