/** A transcript in, the text of its pattern file out, its faults as remarks above the blocks they belong to. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { readPattern } from '../pattern/read-pattern.ts';
import { type LineMap, lineMap, placeOf } from '../source/line-map.ts';
import type { Source } from '../source/span.ts';
import { type FileLine, patternFileLines } from './pattern-file-lines.ts';
import type { Transcript } from './transcript.ts';

/** How the faults of the file are found: by its wording alone, unless the caller knows more. */
export type CheckFile = (source: Source) => readonly Diagnostic[];

export function patternFileText(
  transcript: Transcript,
  slug = 'pattern',
  check: CheckFile = (source) => readPattern(source, slug).diagnostics,
): string {
  const lines = patternFileLines(transcript, slug);
  const plain = textOf(lines.map(({ text }) => text));
  const pasted = lineMap(transcript.source.text);
  const file = lineMap(plain);
  const marks = [
    ...check({ file: 'pattern.yaml', text: plain }).map((fault) =>
      markOf(fault, placeOf(file, fault.span.start).line - 1, lines, pasted),
    ),
    ...askedOfText(transcript).map((question) => questionMark(question, lines, pasted)),
  ];
  return textOf(withMarks(lines, marks));
}

/** What the designer has to settle that no check of the file can tell. */
export function askedOfText(transcript: Transcript): readonly Diagnostic[] {
  return transcript.questions.filter(({ code }) => !TOLD_BY_FILE.has(code));
}

/** What the check of the file says too, in its own words; and of abbreviations, whose list is made from its rows. */
const TOLD_BY_FILE: ReadonlySet<string> = new Set([
  'text/special-unread',
  'text/no-rows',
  'text/abbreviation-unused',
  'text/abbreviation-unlisted',
]);

interface Mark {
  /** Index of the line it stands above. */
  readonly above: number;
  /** Index of the line it is about; null where it is about the block. */
  readonly about: number | null;
  readonly severity: string;
  readonly words: string;
}

function markOf(
  { severity, message }: Diagnostic,
  at: number,
  lines: readonly FileLine[],
  pasted: LineMap,
): Mark {
  const line = lines[at];
  const from =
    line === undefined || line.from === null
      ? ''
      : ` (line ${placeOf(pasted, line.from.start).line} as pasted)`;
  return {
    above: Math.min(line?.block ?? 0, Math.max(0, lines.length - 1)),
    about: at,
    severity,
    words: `${message}${from}`,
  };
}

/** What only the pasted text asks stands above the line its place went to. */
function questionMark(
  { code, span, severity, message }: Diagnostic,
  lines: readonly FileLine[],
  pasted: LineMap,
): Mark {
  const ofTerms = code.startsWith('text/terms');
  const ofSizes = code === 'text/sizes-unnamed';
  const found = lines.findIndex(({ text, from }) =>
    ofTerms
      ? text.startsWith('terms:')
      : ofSizes
        ? text === 'sizes:'
        : !text.trimStart().startsWith('#') &&
          from !== null &&
          from.start <= span.start &&
          span.start < from.end,
  );
  const line = lines[Math.max(0, found)];
  const told =
    code === 'text/terms-untold' || ofSizes ? '' : ` (line ${placeOf(pasted, span.start).line} as pasted)`;
  return { above: line?.block ?? 0, about: null, severity, words: `${message}${told}` };
}

/** Remarks go in above their blocks; the lines they name are those of the text with all remarks in it. */
function withMarks(lines: readonly FileLine[], marks: readonly Mark[]): string[] {
  const above = lines.map((_, i) => marks.filter((mark) => mark.above === i));
  const numbers: number[] = [];
  let number = 0;
  for (const [i] of lines.entries()) {
    number += (above[i]?.length ?? 0) + 1;
    numbers.push(number);
  }
  return lines.flatMap(({ text }, i) => {
    const indent = /^ */.exec(text)?.[0] ?? '';
    const remarks = (above[i] ?? []).map(({ about, severity, words }) => {
      const where = about === null ? '' : ` on line ${numbers[about] ?? number}`;
      return `${indent}# ${severity}${where}: ${words}`;
    });
    return [...remarks, text];
  });
}

function textOf(lines: readonly string[]): string {
  return `${lines.join('\n')}\n`;
}
