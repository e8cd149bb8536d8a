/** A pasted text of instructions in; everything recognised in it, and all that was not, each with its place, out. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { fileSpan } from '../source/mapped-text.ts';
import type { Source } from '../source/span.ts';
import { saysBracketsAreLarger, sizesInRows } from './assumed-sizes.ts';
import { withColourTables } from './colour-tables.ts';
import { withColons } from './comma-labels.ts';
import { withDottedLists } from './dotted-lists.ts';
import { withSquares } from './filet-squares.ts';
import { withFirstBlocks } from './first-blocks.ts';
import { notesAgainstRows } from './notes-against-rows.ts';
import { splitParagraphs } from './paragraphs.ts';
import { capitalised } from './part-headings.ts';
import { readDate, readSkill, readStatedTerms } from './read-front.ts';
import { gaugeWords, readGauge } from './read-gauge.ts';
import { readHook } from './read-hook.ts';
import { readMaterials, yarnPieces } from './read-materials.ts';
import { readParts } from './read-parts.ts';
import { readSizes } from './read-sizes.ts';
import { readStitches } from './read-stitches.ts';
import { readTerms, type TermsRead } from './read-terms.ts';
import { withRowsOfSizes } from './rows-of-sizes.ts';
import { withRunningLists } from './running-lists.ts';
import { sortLines } from './sort-lines.ts';
import type { Item, SortedLines } from './sorted-lines.ts';
import { withoutSpacing } from './spaced-letters.ts';
import { withoutStops } from './stopped-abbreviations.ts';
import { stripeSums } from './stripe-sums.ts';
import { withTableRows } from './table-rows.ts';
import { textFault } from './text-faults.ts';
import { tidyLines, withoutOrnament } from './tidy-lines.ts';
import type { Given, Piece, TranscribedNote, TranscribedSize, Transcript } from './transcript.ts';
import { unwrap } from './unwrap.ts';
import { usedYarns } from './used-yarns.ts';
import { withLettersOfRows } from './yarn-letters.ts';

export function transcribe(source: Source): Transcript {
  const { file } = source;
  const lines = withTableRows(
    withColourTables(
      unwrap(withRowsOfSizes(withDottedLists(tidyLines(source.text).map(withoutSpacing)))).map(withoutStops),
    ),
  );
  const sorted = sortLines(
    withSquares(withFirstBlocks(withRunningLists(splitParagraphs(lines).map(withColons)))),
  );
  const { buckets } = sorted;
  const pieces: Piece[] = [];
  const notes: TranscribedNote[] = [];
  const questions: Diagnostic[] = [];
  const keep = (item: Item): void => {
    notes.push(noteOf(item, false));
    pieces.push({ kind: 'kept', span: item.span, means: item.text.text });
  };
  const note = (item: Item): void => {
    notes.push(noteOf(item, true));
    pieces.push({ kind: 'note', span: item.span, means: item.text.text });
  };

  const title = only(buckets.title, 'title', pieces, keep, (text) =>
    capitalised(withoutOrnament(text).replace(/\.$/, '')),
  );
  const designer = only(buckets.designer, 'designer', pieces, keep);
  const version = only(buckets.version, 'version', pieces, keep);
  const date = dateOf(buckets.date, pieces, keep);
  const licence = joined(buckets.licence, 'licence', pieces);
  const about = joined(buckets.about, 'about', pieces);

  const { terms, against } = termsOf(sorted);
  for (const item of buckets.terms) {
    if (readStatedTerms([item]) === null) keep(item);
    else pieces.push({ kind: 'terms', span: item.span, means: `${terms.value}, as stated` });
  }
  if (against !== null) {
    const span = fileSpan(against.text, against.start, against.end);
    questions.push(
      textFault('text/terms-mixed', file, span, {
        word: against.text.text.slice(against.start, against.end),
        terms: terms.value,
      }),
    );
  }

  const skill = readSkill(buckets.skill);
  for (const item of buckets.skill) {
    if (item !== skill?.item) keep(item);
    else pieces.push({ kind: 'skill', span: item.span, means: skill.skill.value });
  }

  const materials = readMaterials(buckets.materials, file);
  pieces.push(...materials.pieces);
  questions.push(...materials.questions);
  const { gauge, rest: besideGauge } = readGauge(buckets.gauge, terms.value);
  if (gauge !== null)
    pieces.push({
      kind: 'gauge',
      span: gauge.span,
      means: gaugeWords(gauge),
    });
  for (const item of besideGauge) note(item);
  const gaugeHook = gauge === null ? null : readHookIn(gauge.words);

  const { sizes: named, rest: besideSizes } = readSizes(buckets.sizes);
  const namedItems = buckets.sizes.filter((item) => !besideSizes.includes(item));
  for (const item of namedItems)
    pieces.push({ kind: 'sizes', span: item.span, means: named.map(({ name }) => name).join(', ') });
  for (const item of besideSizes) note(item);

  const {
    parts,
    pieces: rowPieces,
    ofHeadings,
  } = readParts(sorted.parts, title?.value ?? '', materials.yarns);
  for (const piece of rowPieces) pieces.push(piece);
  const rowLines = parts.flatMap(({ lines }) => lines);
  const rows = rowLines.map(({ text }) => text);
  const firstRows = parts[0]?.span ?? { start: 0, end: 0 };
  const told = [...buckets.notes, ...buckets.kept, ...buckets.about, ...buckets.abbreviations];
  const inBrackets = saysBracketsAreLarger(told.map(({ text }) => text.text));
  const sizes =
    named.length > 0
      ? named
      : inBrackets
        ? ['smaller size', 'larger size'].map((name) => ({
            name,
            width: null,
            height: null,
            span: firstRows,
          }))
        : assumedSizes(rows, firstRows);
  if (named.length === 0 && sizes.length > 0 && !inBrackets)
    questions.push(
      textFault('text/sizes-unnamed', file, sizes[0]?.span ?? { start: 0, end: 0 }, { sizes: sizes.length }),
    );

  const stitches = readStitches({
    file,
    terms: terms.value,
    sizes: sizes.length,
    abbreviations: buckets.abbreviations,
    specials: buckets.specials,
    rows: rows.join('\n'),
    rowLines,
    elsewhere: withoutItems(source.text, buckets.abbreviations),
  });
  pieces.push(...stitches.pieces);
  notes.push(...stitches.notes);
  questions.push(...stitches.questions);
  const specials = stitches.specials;

  const asked = {
    terms: terms.value,
    sizes: Math.max(1, sizes.length),
    specials: specials.map(({ name }) => name),
  };
  const unlisted = usedYarns(
    file,
    source.text,
    parts,
    materials.yarns.map(({ letter }) => letter),
    asked,
  );
  // A list that gives letters gives all of them: another one in the rows is a fault of theirs.
  const listed =
    materials.lettered || ofHeadings.size > 0
      ? materials.yarns
      : withLettersOfRows(
          materials.yarns,
          unlisted.map(({ value }) => value),
        );
  const others = materials.lettered
    ? []
    : unlisted.filter(({ value }) => !listed.some(({ letter }) => letter === value));
  for (const piece of yarnPieces(materials.yarnItems, listed)) pieces.push(piece);
  const yarns = [
    // Numbers for another number of sizes than there are would be given to the wrong ones.
    ...listed.map((yarn) => ({ ...yarn, balls: fitting(yarn.balls, sizes.length) })),
    ...others.map(({ value, span }) => ({
      letter: value,
      colour: null,
      weight: null,
      fibre: null,
      ballLength: null,
      ballMass: null,
      balls: null,
      described: false,
      span,
    })),
  ];

  const said = [...buckets.notes, ...buckets.kept, ...buckets.about].map(({ text }) => text);
  for (const question of notesAgainstRows(file, said, rowLines)) questions.push(question);
  questions.push(...stripeSums(file, said, parts[0]?.lines ?? []));

  if (parts.length === 0) questions.push(textFault('text/no-rows', file, firstLine(source.text), {}));
  if (terms.told === 'not told')
    questions.push(
      textFault('text/terms-untold', file, parts[0]?.span ?? firstLine(source.text), {
        assumed: terms.value,
      }),
    );

  for (const { span, rowsFollow } of sorted.assembly)
    questions.push(textFault(rowsFollow ? 'text/not-worked' : 'text/assembly', file, span, {}));
  for (const item of buckets.notes) note(item);
  for (const item of buckets.kept) keep(item);
  for (const item of buckets.finishing)
    pieces.push({ kind: 'finishing', span: item.span, means: item.text.text });
  for (const item of sorted.headings)
    pieces.push({ kind: 'heading', span: item.span, means: item.text.text });
  for (const { span, what, text } of sorted.leftOut)
    pieces.push({ kind: 'left out', span, means: `${what}: ${text}` });

  return {
    source,
    title,
    designer,
    about,
    terms,
    skill: skill?.skill ?? null,
    gauge,
    hook:
      materials.hook ??
      (gauge === null || gaugeHook === null ? null : { value: gaugeHook, span: gauge.span }),
    yarns,
    supplyLines: materials.supplyLines,
    notions: materials.notions,
    sizes,
    specials,
    notes: inOrder(notes),
    parts,
    finishing: buckets.finishing.map((item) => ({ value: item.text.text, span: item.span })),
    licence,
    version,
    date,
    pieces: inOrder(pieces),
    questions: inOrder(questions),
  };
}

/** The statement, or what the words of the work tell. */
function termsOf(sorted: SortedLines): TermsRead {
  const { buckets, parts } = sorted;
  const stated = readStatedTerms([
    ...buckets.terms,
    ...buckets.notes,
    ...buckets.about,
    ...buckets.title,
    ...buckets.abbreviations,
    ...buckets.kept,
    ...sorted.headings,
    ...buckets.specials,
    // `Difficulty: easy (US terms)`.
    ...buckets.skill,
    ...buckets.gauge,
    ...buckets.materials,
  ]);
  const work = [
    ...parts.flatMap(({ lines }) => lines.filter(({ kind }) => kind !== 'note').map(({ text }) => text)),
    ...[...buckets.specials, ...buckets.abbreviations].map(({ text }) => text),
    ...buckets.gauge.map(({ text }) => text),
  ];
  const tension = [
    ...sorted.headings.map(({ text }) => text),
    ...buckets.gauge.map(({ line }) => line.text),
  ].find(({ text }) => /^tension\b/i.test(text));
  return readTerms(stated, work, tension ?? null);
}

function withoutItems(text: string, items: readonly Item[]): string {
  let left = '';
  let from = 0;
  for (const { span } of [...items].sort((a, b) => a.span.start - b.span.start)) {
    left += `${text.slice(from, Math.max(from, span.start))}\n`;
    from = Math.max(from, span.end);
  }
  return left + text.slice(from);
}

function fitting(balls: readonly number[] | null, sizes: number): readonly number[] | null {
  return balls !== null && (balls.length === 1 || balls.length === sizes) ? balls : null;
}

function readHookIn(words: string): string | null {
  return /\bhook\b/i.test(words) ? (readHook(words)?.hook ?? null) : null;
}

function assumedSizes(rows: readonly string[], span: Given<string>['span']): TranscribedSize[] {
  const sizes = sizesInRows(rows);
  if (sizes < 2) return [];
  return Array.from({ length: sizes }, (_, i) => ({
    name: `size ${i + 1}`,
    width: null,
    height: null,
    span,
  }));
}

/** The first of a bucket is the one there is; others are kept. */
function only(
  items: readonly Item[],
  kind: 'title' | 'designer' | 'version',
  pieces: Piece[],
  keep: (item: Item) => void,
  tidy: (text: string) => string = (text) => text,
): Given<string> | null {
  const [first, ...others] = items;
  for (const item of others) keep(item);
  if (first === undefined) return null;
  const value = tidy(first.text.text);
  pieces.push({ kind, span: first.span, means: value });
  return { value, span: fileSpan(first.text, 0, first.text.text.length) };
}

function dateOf(items: readonly Item[], pieces: Piece[], keep: (item: Item) => void): Given<string> | null {
  for (const [i, item] of items.entries()) {
    const date = readDate(item.text.text);
    if (date === null || i > 0) keep(item);
    else pieces.push({ kind: 'date', span: item.span, means: date });
  }
  const [first] = items;
  const date = first === undefined ? null : readDate(first.text.text);
  return first === undefined || date === null ? null : { value: date, span: first.span };
}

function joined(items: readonly Item[], kind: 'licence' | 'about', pieces: Piece[]): Given<string> | null {
  const [first, last] = [items[0], items.at(-1)];
  if (first === undefined || last === undefined) return null;
  for (const item of items) pieces.push({ kind, span: item.span, means: item.text.text });
  return {
    value: items.map(({ text }) => text.text).join(' '),
    span: { start: first.span.start, end: last.span.end },
  };
}

/** A line under `Gauge` or `Finished size` says nothing without that word. */
function noteOf(item: Item, understood: boolean): TranscribedNote {
  const { text } = item.text;
  const heading = item.heading;
  // A paragraph of its own further down is of something else.
  const apart = item.text === item.line.text && item.line.gap;
  const isOfNotes =
    heading === null ||
    apart ||
    /note|tip|n\.?b|important|good to know|before you|abbrev|special|stitch|material|suppl|need/i.test(
      heading,
    );
  return { text: isOfNotes ? text : `${capitalised(heading)}: ${text}`, span: item.span, understood };
}

function firstLine(text: string): Given<string>['span'] {
  const start = Math.max(0, text.search(/\S/));
  const length = text.slice(start).search(/[\r\n]|$/);
  return { start, end: start + Math.max(1, length) };
}

function inOrder<T extends { readonly span: Given<string>['span'] }>(given: readonly T[]): T[] {
  return [...given].sort((a, b) => a.span.start - b.span.start || b.span.end - a.span.end);
}
