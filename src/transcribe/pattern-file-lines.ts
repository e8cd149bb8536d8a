/** A transcript in, the lines of its pattern file out, each with the stretch of the pasted text it came from. */

import { fileSpan } from '../source/mapped-text.ts';
import type { Span } from '../source/span.ts';
import { lineColumn } from '../source/span.ts';
import { titled } from './titled.ts';
import type { TranscribedPart, TranscribedSpecial, TranscribedYarn, Transcript } from './transcript.ts';
import { yamlWords } from './yaml-words.ts';

export interface FileLine {
  readonly text: string;
  /** Where its words stand in the pasted text; null for what the text does not say. */
  readonly from: Span | null;
  /** Index of the line that opens the block it belongs to, such as `work: |`; its own for most. */
  readonly block: number;
}

export function patternFileLines(transcript: Transcript, slug: string): FileLine[] {
  const lines: FileLine[] = [];
  const put = (text: string, from: Span | null = null): void =>
    void lines.push({ text, from, block: lines.length });
  const list = (key: string, entries: readonly { readonly value: string; readonly span: Span }[]): void => {
    if (entries.length === 0) return;
    put(`${key}:`);
    for (const { value, span } of entries) put(`  - ${yamlWords(value)}`, span);
  };
  const { title, about, designer, terms, skill, gauge, hook, licence, version, date } = transcript;

  put(`title: ${yamlWords(title?.value ?? titled(slug))}`, title?.span ?? null);
  if (about !== null) put(`about: ${yamlWords(about.value)}`, about.span);
  if (designer !== null) put(`designer: ${yamlWords(designer.value)}`, designer.span);
  const untold = terms.told === 'not told' ? '   # not told by the text' : '';
  put(`terms: ${terms.value}${untold}`, terms.span);
  if (skill !== null) put(`skill: ${skill.value}`, skill.span);
  if (gauge !== null) {
    putAsPasted(put, [{ value: gauge.words, span: gauge.span }], transcript);
    const of = gauge.of === null ? '' : `, of: ${yamlWords(gauge.of, true)}`;
    const after = gauge.afterBlocking ? ', after: blocking' : '';
    const { before } = gauge;
    const first = before === null ? '' : `, before: {stitches: ${before.stitches}, rows: ${before.rows}}`;
    const across = gauge.repeats === null ? `stitches: ${gauge.stitches}` : `repeats: ${gauge.repeats}`;
    put(`gauge: {${across}, rows: ${gauge.rows}, over: ${gauge.over}${of}${after}${first}}`, gauge.span);
  }
  putAsPasted(put, transcript.supplyLines, transcript);
  if (hook !== null) put(`hook: ${hook.value}`, hook.span);
  if (transcript.yarns.length > 0) put('yarn:');
  for (const yarn of transcript.yarns) put(yarnLine(yarn), yarn.span);
  list('notions', transcript.notions);
  if (transcript.sizes.length > 0) put('sizes:');
  for (const { name, width, height, span } of transcript.sizes) {
    const sides = `${width === null ? '' : `, width: ${width}`}${height === null ? '' : `, height: ${height}`}`;
    put(`  - {name: ${yamlWords(name, true)}${sides}}`, span);
  }
  if (transcript.specials.length > 0) put('special:');
  for (const special of transcript.specials) putSpecial(lines, special);
  putNotes(put, transcript);
  if (transcript.parts.length > 0) put('parts:');
  for (const part of transcript.parts) putPart(lines, put, part);
  list('finishing', transcript.finishing);
  if (licence !== null) put(`licence: ${yamlWords(licence.value)}`, licence.span);
  if (version !== null) put(`version: ${JSON.stringify(version.value)}`, version.span);
  if (date !== null) put(`date: ${date.value}`, date.span);
  return lines;
}

type Put = (text: string, from?: Span | null) => void;

/** What was read into figures stands above them as it was pasted, for the designer to compare. */
function putAsPasted(
  put: Put,
  given: readonly { readonly value: string; readonly span: Span }[],
  { source }: Transcript,
): void {
  for (const { value, span } of given)
    put(`# line ${lineColumn(source.text, span.start).line}: ${value}`, span);
}

function yarnLine({ letter, colour, weight, fibre, ballLength, ballMass, balls }: TranscribedYarn): string {
  const ball = [
    ballLength === null ? [] : [`length: ${ballLength}`],
    ballMass === null ? [] : [`mass: ${ballMass}`],
  ].flat();
  const said = [
    `colour: ${yamlWords(colour ?? `colour ${letter}`, true)}`,
    ...(weight === null ? [] : [`weight: ${weight}`]),
    ...(fibre === null ? [] : [`fibre: ${yamlWords(fibre, true)}`]),
    ...(ball.length === 0 ? [] : [`ball: {${ball.join(', ')}}`]),
    ...(balls === null ? [] : [`balls: ${balls.length === 1 ? balls[0] : `[${balls.join(', ')}]`}`]),
  ];
  return `  ${letter}: {${said.join(', ')}}`;
}

function putSpecial(lines: FileLine[], { name, fullName, work, how, span }: TranscribedSpecial): void {
  const key = yamlWords(name);
  const block = lines.length;
  const put = (text: string): void => void lines.push({ text, from: span, block });
  if (fullName === null && how === null && work !== null) {
    put(`  ${key}: ${yamlWords(work.text)}`);
    return;
  }
  put(`  ${key}:`);
  if (fullName !== null) put(`    name: ${yamlWords(fullName)}`);
  if (work !== null) put(`    work: ${yamlWords(work.text)}`);
  if (how !== null) put(`    how: ${yamlWords(how)}`);
}

function putNotes(put: Put, { notes, source }: Transcript): void {
  if (notes.length === 0) return;
  put('notes:');
  for (const { text, span } of notes.filter((note) => note.understood)) put(`  - ${yamlWords(text)}`, span);
  for (const { text, span } of notes.filter((note) => !note.understood)) {
    put(
      `  # line ${lineColumn(source.text, span.start).line} was not understood; it is kept word for word:`,
      span,
    );
    put(`  - ${yamlWords(text)}`, span);
  }
}

function putPart(
  lines: FileLine[],
  put: Put,
  { name, onto, make, lines: rows, span }: TranscribedPart,
): void {
  put(`  - name: ${yamlWords(name)}`, span);
  if (onto !== null) put(`    onto: ${yamlWords(onto)}`, span);
  if (make > 1) put(`    make: ${make}`, span);
  const block = lines.length;
  put('    work: |', span);
  for (const row of rows)
    lines.push({ text: `      ${row.text}`, from: fileSpan(row, 0, row.text.length), block });
}
