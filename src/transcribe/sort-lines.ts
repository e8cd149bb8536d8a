/** The lines of a pasted text in, each put where it belongs in a pattern out: one walk from the first line to the last. */

import type { MappedText } from '../source/mapped-text.ts';
import { findHeading, type Heading, type Section } from './headings.ts';
import { isInstruction, isProse, namesWork } from './instruction-words.ts';
import { sliceText, trimText } from './mapped-pieces.ts';
import { emailSubject, isEmailHeading, isPageNumber, tableUnit } from './page-lines.ts';
import { partHeading } from './part-headings.ts';
import { namedTerms, onlyStatesTerms } from './read-terms.ts';
import { asTableRow } from './table-rows.ts';
import { type RowLabel, rowLabel } from './row-labels.ts';
import type { Bucket, Item, PartDraft, SortedLines, WorkLine } from './sorted-lines.ts';
import type { TextLine } from './tidy-lines.ts';
import { designerIn, isTitle, titleAndDesigner } from './title-lines.ts';

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
    inEmailHead: false,
    quotedWork: lines.some(({ text, quoted }) => quoted > 0 && rowLabel(text.text) !== null),
    unlabelled: !lines.some(({ text }) => rowLabel(text.text) !== null),
  };
  for (const index of lines.keys()) sortLine(walk, index);
  return walk;
}

function sortLine(walk: Walk, index: number): void {
  const line = walk.lines[index];
  if (line === undefined) return;
  const { text } = line.text;
  if (line.isRule) {
    leaveOut(walk, line, 'a rule');
    return;
  }
  if (isPageNumber(text) && (line.gap || /page/i.test(text) || isFinished(walk.lines[index - 1]))) {
    leaveOut(walk, line, 'a page number');
    return;
  }
  if (walk.state !== 'part' && isEmailHeading(text, walk.inEmailHead)) {
    sortEmailHeading(walk, line);
    return;
  }
  const unit = tableUnit(line.cells.map((cell) => cell.text));
  if (unit !== null && line.cells.length > 1) {
    walk.table = unit;
    leaveOut(walk, line, 'the head of a table');
    return;
  }
  const row = asTableRow(line, walk.table);
  const label = rowLabel(row.text);
  const inList = walk.state === 'notes' || walk.state === 'finishing';
  if (
    label !== null &&
    !(label.bare && (walk.state === 'front' || inList) && walk.parts.length === 0 && !bareRows(walk, index))
  ) {
    addRow(walk, line, row, label);
    return;
  }
  if (walk.state === 'front' && walk.buckets.title.length === 0 && isEmailSafe(walk, line)) {
    if (sortTitle(walk, line)) return;
  }
  const heading = findHeading(text);
  if (heading !== null && isHeadingHere(walk, index, heading)) {
    openSection(walk, line, heading);
    return;
  }
  const part = partHeading(walk.lines, index, isListState(walk.state));
  if (part !== null) {
    openPart(walk, line, part.name, part.make);
    return;
  }
  if (sortAnywhere(walk, line)) return;
  if (startsWork(walk, index)) {
    addWork(walk, line, 'instruction', null);
    return;
  }
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
  if (isNoteOnly && walk.state === 'part' && rowsFollow(walk, line)) {
    addWork(walk, line, 'note', null);
    return;
  }
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
    addWork(walk, line, isInstruction(rest.text) ? 'instruction' : 'note', null, rest);
    return;
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
      sortInPart(walk, line);
      return;
    case 'terms': {
      const named = namedTerms(text) !== null;
      return void walk.buckets[named ? 'terms' : 'kept'].push(item);
    }
    default:
      return void walk.buckets[walk.state].push(item);
  }
}

