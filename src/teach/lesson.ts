/** What a script, its pauses and its chapters are made from: a pattern, one of its sizes worked, and whose terms are spoken. */

import type { RowAccount } from '../explain/row-account.ts';
import type { Fabric } from '../fabric/fabric.ts';
import type { Line } from '../notation/line.ts';
import type { Step } from '../notation/tree.ts';
import type { Part, Pattern } from '../pattern/pattern.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { rowsByLine } from '../wording/line-rows.ts';
import { type Voice, voiceOf } from '../wording/voice.ts';
import { type LineToWord, lineToWord } from '../wording/word-line.ts';
import type { Telling } from './say-steps.ts';

export interface Lesson {
  readonly pattern: Pattern;
  /** Place of the size in the pattern's list. */
  readonly index: number;
  readonly fabric: Fabric;
  readonly accounts: readonly RowAccount[];
  /** Of every size, this one among them. */
  readonly fabrics: readonly Fabric[];
  readonly terms: Terms;
}

/** A line of the instructions as this size works it. */
export interface LessonLine {
  readonly part: Part;
  readonly line: Line;
  /** Its place in the part. */
  readonly index: number;
  /** Its rows in the fabric; none for a sentence outside rows. */
  readonly rows: readonly number[];
  readonly words: LineToWord;
}

export function voiceFor({ pattern, index, terms }: Lesson): Voice {
  return voiceOf({ terms, form: 'full' }, index, pattern.specials, pattern.terms);
}

/** Every line that the size works, in order. */
export function lessonLines(lesson: Lesson): LessonLine[] {
  const { pattern, fabric, index: size } = lesson;
  const voice = voiceFor(lesson);
  return pattern.parts.flatMap((part) => {
    const byLine = rowsByLine(fabric, part.name);
    return part.instructions.lines.flatMap((line, index) => {
      const rows = byLine.get(index) ?? [];
      const words = lineToWord(line, [{ fabric, size, rows }], voice, pattern.sizes.length);
      return words === null ? [] : [{ part, line, index, rows, words }];
    });
  });
}

export function tellingOf(
  { pattern, index, fabric, accounts }: Lesson,
  { rows, words }: LessonLine,
): Telling {
  const firsts = new Set(rows.map((row) => fabric.rows[row]?.first));
  const steps = accounts.filter(({ first }) => firsts.has(first)).flatMap((account) => account.steps);
  return {
    voice: words.voice,
    size: index,
    passesOf: (step: Step) => {
      const passes = steps
        .filter((one) => one.step.span.start === step.span.start && one.runs.length > 0)
        .map(({ runs }) => runs.reduce((sum, { times }) => sum + times, 0));
      return passes.every((n) => n === passes[0]) ? (passes[0] ?? null) : null;
    },
    here: pattern.sizes.length > 1 ? 'in this size, ' : '',
    yarnName: (letter) => yarnName(pattern, letter),
  };
}

/** `yarn B, slate,` with the comma that follows it within a sentence; as it is written where the list has no such letter. */
export function yarnName({ yarns }: Pattern, letter: string): string {
  const yarn = yarns.find((one) => one.letter === letter);
  return yarn === undefined ? letter : `yarn ${yarn.letter}, ${yarn.colour},`;
}

/** The yarn that a row is begun and ended with, by letter. */
export function yarnsOfRow({ fabric }: Lesson, row: number): { first: string | null; last: string | null } {
  const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
  const letter = (i: number): string | null =>
    first === end ? null : (fabric.yarns[fabric.yarn[i] ?? 0] ?? null);
  return { first: letter(first), last: letter(end - 1) };
}
