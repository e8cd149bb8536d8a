/** Rows, instructions and words on the way, put into the pieces of work they belong to. */

import type { MappedText } from '../source/mapped-text.ts';
import { findHeading } from './headings.ts';
import { isInstruction, isProse, namesWork } from './instruction-words.ts';
import { type RowLabel, rowLabel } from './row-labels.ts';
import type { WorkLine } from './sorted-lines.ts';
import type { TextLine } from './tidy-lines.ts';
import { isListState, itemOf, put, type Walk } from './walk.ts';

export function openPart(walk: Walk, line: TextLine, name: string, make: number): void {
  walk.state = 'part';
  walk.heading = null;
  walk.table = null;
  if (walk.pending !== null) keepPending(walk);
  walk.pending = { heading: itemOf(line, line.text), name, make, lines: [] };
}

/** A heading that no row follows is words like any other. */
export function keepPending(walk: Walk): void {
  const heading = walk.pending?.heading ?? null;
  if (heading !== null) put(walk, 'kept', heading);
  walk.pending = null;
}

/** Whether a line without a label begins the work, or goes on with it. */
export function startsWork(walk: Walk, index: number): boolean {
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

const FINISHING =
  /^(?:weave|sew|block|pin|press|steam|wash|darn|dampen|hide|sew up|stitch up|whip ?stitch|stuff)\b/i;

export function sortInPart(walk: Walk, line: TextLine): void {
  const { text } = line.text;
  const begun = walk.pending === null && walk.parts.length > 0;
  if (begun && FINISHING.test(text) && !rowsFollow(walk, line)) {
    put(walk, 'finishing', itemOf(line, line.text));
    return;
  }
  if (isInstruction(text) && (!isProse(text) || /[,;*]|^(?:fasten off|break|cut)\b/i.test(text))) {
    addWork(walk, line, 'instruction', null);
    return;
  }
  const later = rowsFollow(walk, line);
  if (!later) {
    put(walk, 'kept', itemOf(line, line.text));
    return;
  }
  if (namesWork(text) && /\d|[,;*]/.test(text) && !isProse(text)) {
    addWork(walk, line, 'instruction', null);
    return;
  }
  addWork(walk, line, 'note', null);
}

/** Rows of the same piece still come. */
export function rowsFollow(walk: Walk, line: TextLine): boolean {
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

export function addRow(walk: Walk, line: TextLine, text: MappedText, label: RowLabel): void {
  addWork(walk, line, 'row', label.number, text);
}

export function addWork(
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
