/** The lines of a pasted text in, each put where it belongs in a pattern out: one walk from the first line to the last. */

import type { MappedText } from '../source/mapped-text.ts';
import { findHeading, type Heading, type Section } from './headings.ts';
import { isInstruction, isProse, namesWork } from './instruction-words.ts';
import { insertedText, joinTexts, sliceText, trimText } from './mapped-pieces.ts';
import { emailSubject, isEmailHeading, isPageNumber, tableUnit } from './page-lines.ts';
import { partHeading } from './part-headings.ts';
import { namedTerms, onlyStatesTerms } from './read-terms.ts';
import { type RowLabel, rowLabel } from './row-labels.ts';
import type { Bucket, Item, PartDraft, SortedLines, WorkLine } from './sorted-lines.ts';
import type { TextLine } from './tidy-lines.ts';
import { designerIn, isTitle, titleAndDesigner } from './title-lines.ts';

type State = Exclude<Section, 'instructions'> | 'front' | 'part';

interface Walk {
  readonly lines: readonly TextLine[];
  readonly buckets: Record<Bucket, Item[]>;
  readonly parts: PartDraft[];
  readonly headings: Item[];
  readonly leftOut: { span: Item['span']; what: string; text: string }[];
  state: State;
  heading: Heading | null;
  /** The unit of the table the rows stand in: `Rnd`, '' where its head names none, null outside a table. */
  table: string | null;
  /** A heading of a piece whose rows have not come yet. */
  pending: PartDraft | null;
  /** No line of the text has a row's label: instructions are known by their words alone. */
  readonly unlabelled: boolean;
}

export function sortLines(lines: readonly TextLine[]): SortedLines {
  const walk: Walk = {
    lines,
    buckets: emptyBuckets(),
    parts: [],
    headings: [],
    leftOut: [],
    state: 'front',
    heading: null,
    table: null,
    pending: null,
    unlabelled: !lines.some(({ text }) => rowLabel(text.text) !== null),
  };
  for (const index of lines.keys()) sortLine(walk, index);
  return walk;
}

function sortLine(walk: Walk, index: number): void {
  const line = walk.lines[index];
  if (line === undefined) return;
  const { text } = line.text;
  if (line.isRule) return leaveOut(walk, line, 'a rule');
  if (isPageNumber(text) && (line.gap || /page/i.test(text))) return leaveOut(walk, line, 'a page number');
  if (walk.state !== 'part' && isEmailHeading(text)) return sortEmailHeading(walk, line);
  const unit = tableUnit(line.cells.map((cell) => cell.text));
  if (unit !== null && line.cells.length > 1) {
    walk.table = unit;
    return leaveOut(walk, line, 'the head of a table');
  }
  const row = asTableRow(walk, line);
  const label = rowLabel(row.text);
  const inList = walk.state === 'notes' || walk.state === 'finishing';
  if (
    label !== null &&
    !(label.bare && (walk.state === 'front' || inList) && walk.parts.length === 0 && !bareRows(walk, index))
  )
    return addRow(walk, line, row, label);
  if (walk.state === 'front' && walk.buckets.title.length === 0 && isEmailSafe(walk, line)) {
    if (sortTitle(walk, line)) return;
  }
  const heading = findHeading(text);
  if (heading !== null && isHeadingHere(walk, index, heading)) return openSection(walk, line, heading);
  const part = partHeading(walk.lines, index, isListState(walk.state));
  if (part !== null) return openPart(walk, line, part.name, part.make);
  if (sortAnywhere(walk, line)) return;
  if (startsWork(walk, index)) return addWork(walk, line, 'instruction', null);
  sortByState(walk, index);
}

/** Numbered lines are rows when several stand together and all instruct. */
function bareRows(walk: Walk, index: number): boolean {
  const near = [index - 1, index + 1].map((i) => walk.lines[i]);
  return near.some((line) => line !== undefined && rowLabel(line.text.text)?.bare === true);
}

function isListState(state: State): boolean {
  return (
    state === 'materials' ||
    state === 'abbreviations' ||
    state === 'specials' ||
    state === 'sizes' ||
    state === 'gauge'
  );
}

function isEmailSafe(walk: Walk, line: TextLine): boolean {
  return walk.heading === null && !statesSomething(line.text.text);
}

function statesSomething(text: string): boolean {
  return findHeading(text) !== null || onlyStatesTerms(text) || designerIn(text) !== null;
}

function sortTitle(walk: Walk, line: TextLine): boolean {
  if (!isTitle(line)) return false;
  const both = titleAndDesigner(line.text.text);
  const item = itemOf(line, line.text);
  if (both === null) walk.buckets.title.push(item);
  else {
    walk.buckets.title.push({ ...item, text: sliceText(line.text, 0, both.title.length) });
    walk.buckets.designer.push({ ...item, text: sliceText(line.text, both.at) });
  }
  return true;
}

function sortEmailHeading(walk: Walk, line: TextLine): void {
  const subject = emailSubject(line.text.text);
  const at = subject === null ? -1 : line.text.text.lastIndexOf(subject);
  if (subject !== null && at !== -1 && walk.buckets.title.length === 0)
    return void walk.buckets.title.push(itemOf(line, sliceText(line.text, at)));
  leaveOut(walk, line, 'the head of an email');
}

/** A heading's word may also be a piece of the work or a line of a list. */
function isHeadingHere(walk: Walk, index: number, heading: Heading): boolean {
  const line = walk.lines[index];
  if (line === undefined) return false;
  const isSentence = /^[a-z]/.test(line.text.text) && heading.restAt === null && line.mark === null;
  if (isSentence) return false;
  if (walk.state === 'abbreviations' && heading.restAt !== null)
    return heading.section !== 'notes' || /note/i.test(heading.words);
  return true;
}

function openSection(walk: Walk, line: TextLine, heading: Heading): void {
  const { section, restAt } = heading;
  const rest = restAt === null ? null : trimText(sliceText(line.text, restAt));
  const isNoteOnly =
    section === 'notes' && rest !== null && /^(?:please )?note|^n\.?b|^tip/i.test(heading.words);
  if (isNoteOnly && walk.state === 'part' && rowsFollow(walk, line)) return addWork(walk, line, 'note', null);
  if (
    section === 'title' ||
    section === 'designer' ||
    section === 'version' ||
    section === 'date' ||
    section === 'licence'
  ) {
    if (rest !== null) return void walk.buckets[section].push(itemOf(line, rest, heading));
  }
  if (section === 'instructions') {
    walk.state = 'part';
    walk.heading = null;
    if (rest === null || rest.text === '') return void walk.headings.push(itemOf(line, line.text));
    if (walk.buckets.title.length === 0 && !isInstruction(rest.text))
      return void walk.buckets.title.push(itemOf(line, rest, heading));
    return addWork(walk, line, isInstruction(rest.text) ? 'instruction' : 'note', null, rest);
  }
  walk.state = section;
  walk.heading = heading;
  walk.table = null;
  const item = itemOf(line, rest ?? line.text, heading);
  if (rest === null || rest.text === '') walk.headings.push(item);
  else walk.buckets[section].push(item);
  // `Skill level: easy` and the like are done with on their line.
  if (
    (section === 'skill' || section === 'terms' || section === 'title' || section === 'designer') &&
    rest !== null &&
    rest.text !== ''
  ) {
    walk.state = walk.parts.length === 0 ? 'front' : 'part';
  }
}

function openPart(walk: Walk, line: TextLine, name: string, make: number): void {
  walk.state = 'part';
  walk.heading = null;
  walk.table = null;
  if (walk.pending !== null) keepPending(walk);
  walk.pending = { heading: itemOf(line, line.text), name, make, lines: [] };
}

/** A heading that no row follows is words like any other. */
function keepPending(walk: Walk): void {
  const heading = walk.pending?.heading ?? null;
  if (heading !== null) walk.buckets.kept.push(heading);
  walk.pending = null;
}

/** What is told wherever it stands: the terms, the designer, whose work it is. */
function sortAnywhere(walk: Walk, line: TextLine): boolean {
  const { text } = line.text;
  if (onlyStatesTerms(text) && !(walk.state === 'part' && isInstruction(text))) {
    walk.buckets.terms.push(itemOf(line, line.text));
    return true;
  }
  if (walk.state === 'front' && walk.buckets.designer.length === 0) {
    const designer = designerIn(text);
    if (designer !== null) {
      walk.buckets.designer.push(
        itemOf(
          line,
          sliceText(line.text, text.lastIndexOf(designer), text.lastIndexOf(designer) + designer.length),
        ),
      );
      return true;
    }
  }
  if (/^(?:©|\(c\)\s*\d{4})|^copyright\b|\ball rights reserved\b|^creative commons|^CC[ -]BY/i.test(text)) {
    walk.buckets.licence.push(itemOf(line, line.text));
    return true;
  }
  return false;
}

/** Whether a line without a label begins the work, or goes on with it. */
function startsWork(walk: Walk, index: number): boolean {
  const line = walk.lines[index];
  if (line === undefined || walk.state === 'part' || !isInstruction(line.text.text)) return false;
  const { text } = line.text;
  if (/\bcounts?\b|\bthroughout\b/i.test(text) && !/\bin\b/i.test(text)) return false;
  if (/^[^.]{1,30}(?::|=|\s[–—-]\s)/.test(text) && isListState(walk.state)) return false;
  if (walk.state === 'finishing') return false;
  if (walk.unlabelled) return walk.state === 'front' && !isProse(text) && /[\d,*(]/.test(text);
  if (!line.gap && walk.state !== 'front') return false;
  if (isProse(text)) return false;
  const next = walk.lines.slice(index + 1, index + 4).find(({ isRule }) => !isRule);
  return next !== undefined && (rowLabel(next.text.text) !== null || isInstruction(next.text.text));
}

function sortByState(walk: Walk, index: number): void {
  const line = walk.lines[index];
  if (line === undefined) return;
  const { text } = line.text;
  const item = itemOf(line, line.text, walk.heading);
  switch (walk.state) {
    case 'front':
      return void walk.buckets[
        isProse(text) && /[.!]$/.test(text) && walk.buckets.about.length < 2 && walk.buckets.title.length > 0
          ? 'about'
          : 'kept'
      ].push(item);
    case 'part':
      return sortInPart(walk, line);
    case 'terms': {
      const named = namedTerms(text) !== null;
      return void walk.buckets[named ? 'terms' : 'kept'].push(item);
    }
    default:
      return void walk.buckets[walk.state].push(item);
  }
}

const FINISHING =
  /^(?:weave|sew|block|pin|press|steam|wash|darn|dampen|hide|sew up|stitch up|whip ?stitch|stuff)\b/i;

function sortInPart(walk: Walk, line: TextLine): void {
  const { text } = line.text;
  const begun = walk.pending === null && walk.parts.length > 0;
  if (begun && FINISHING.test(text) && !rowsFollow(walk, line))
    return void walk.buckets.finishing.push(itemOf(line, line.text));
  if (isInstruction(text) && !(isProse(text) && !/[,;*]/.test(text)))
    return addWork(walk, line, 'instruction', null);
  const later = rowsFollow(walk, line);
  if (!later) return void walk.buckets.kept.push(itemOf(line, line.text));
  if (namesWork(text) && /\d|[,;*]/.test(text) && !isProse(text))
    return addWork(walk, line, 'instruction', null);
  addWork(walk, line, 'note', null);
}

/** Rows of the same piece still come. */
function rowsFollow(walk: Walk, line: TextLine): boolean {
  for (let i = walk.lines.indexOf(line) + 1; i < walk.lines.length; i += 1) {
    const next = walk.lines[i];
    if (next === undefined) break;
    const { text } = next.text;
    if (rowLabel(text) !== null) return true;
    const heading = findHeading(text);
    if (heading !== null && !/^(?:please )?note|^tip/i.test(heading.words)) return false;
    if (isInstruction(text) && !isProse(text)) return true;
  }
  return false;
}

function addRow(walk: Walk, line: TextLine, text: MappedText, label: RowLabel): void {
  addWork(walk, line, 'row', label.number, text);
}

function addWork(
  walk: Walk,
  line: TextLine,
  kind: WorkLine['kind'],
  number: number | null,
  text = line.text,
): void {
  const inPart = walk.state === 'part';
  const last = walk.parts.at(-1);
  let part = last;
  if (walk.pending !== null) {
    part = { ...walk.pending, lines: [] };
    walk.pending = null;
    walk.parts.push(part);
  } else if (part === undefined || (!inPart && number !== null && number <= 1 && part.lines.length > 0)) {
    const heading = walk.headings.at(-1);
    const name = last === undefined || heading === undefined ? null : (walk.heading?.words ?? null);
    part = { heading: null, name, make: 1, lines: [] };
    walk.parts.push(part);
  }
  walk.state = 'part';
  walk.heading = null;
  part.lines.push({ text, kind, number, span: line.span });
}

/** A table's row as the line it would be: its label, a colon, the instruction, its count in brackets. */
function asTableRow(walk: Walk, line: TextLine): MappedText {
  const [first, ...rest] = line.cells;
  const second = rest[0];
  if (first === undefined || second === undefined) return line.text;
  const at = first.runs[0]?.offset ?? 0;
  const unit = walk.table ?? '';
  const numbered = /^\d{1,3}(?:\s*[–-]\s*\d{1,3})?[.:)]?$/.test(first.text);
  const labelled = numbered || rowLabel(first.text)?.end === first.text.length;
  if (!labelled || (numbered && walk.table === null && !isInstruction(second.text))) return line.text;
  const bare = first.text.replace(/[.:)]+$/, '');
  const range = /[–-]/.test(bare);
  const word = numbered && unit !== '' ? `${unit}${range ? 's' : ''} ` : '';
  const label = joinTexts(
    [
      insertedText(word, at),
      sliceText(first, 0, bare.length),
      insertedText(numbered && unit === '' ? '.' : ':', at),
    ],
    '',
  );
  const count = rest.length > 1 ? rest.at(-1) : undefined;
  const isCount = count !== undefined && /^[([]?\d{1,4}(?:\s*[a-z]{1,8})?[)\]]?$/i.test(count.text);
  const middle = rest.slice(0, isCount ? -1 : undefined);
  const counted =
    isCount && !/^[([]/.test(count.text)
      ? [
          joinTexts(
            [
              insertedText('(', count.runs[0]?.offset ?? at),
              count,
              insertedText(')', count.runs[0]?.offset ?? at),
            ],
            '',
          ),
        ]
      : isCount
        ? [count]
        : [];
  return joinTexts([label, ...middle, ...counted], ' ');
}

function leaveOut(walk: Walk, line: TextLine, what: string): void {
  walk.leftOut.push({ span: line.span, what, text: line.text.text });
}

function itemOf(line: TextLine, text: MappedText, heading: Heading | null = null): Item {
  const cells = text === line.text ? line.cells : [text];
  return {
    text,
    cells,
    span: line.span,
    heading: heading?.words ?? null,
    field: heading?.field ?? null,
    line,
  };
}

function emptyBuckets(): Record<Bucket, Item[]> {
  return {
    title: [],
    designer: [],
    about: [],
    terms: [],
    skill: [],
    sizes: [],
    materials: [],
    gauge: [],
    abbreviations: [],
    specials: [],
    notes: [],
    finishing: [],
    licence: [],
    version: [],
    date: [],
    kept: [],
  };
}
