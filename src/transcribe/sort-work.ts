/** Rows, instructions and words on the way, put into the pieces of work they belong to. */

import { tellsChoice } from '../notation/told-choice.ts';
import { fileOffset, fileSpan, type MappedText } from '../source/mapped-text.ts';
import { joinSpans } from '../source/span.ts';
import { asksToMatch } from './as-other-part.ts';
import { isAssembly, isHolding, isSlippedSeam, sentencesOf } from './assembly-lines.ts';
import {
  foundationAt,
  isColourHabit,
  isForMaker,
  isInstruction,
  isNamedInstruction,
  isProse,
  namesWork,
  opensWork,
} from './instruction-words.ts';
import { insertedText, joinTexts, sliceText, trimText } from './mapped-pieces.ts';
import { tableUnit } from './page-lines.ts';
import type { PartHeading } from './part-headings.ts';
import { type RowLabel, rowLabel } from './row-labels.ts';
import type { WorkLine } from './sorted-lines.ts';
import { isSurfaceWork } from './surface-lines.ts';
import type { TextLine } from './tidy-lines.ts';
import { isListState, itemOf, put, type Walk } from './walk.ts';

export function openPart(walk: Walk, line: TextLine, { name, make, beside }: PartHeading): void {
  walk.state = 'part';
  walk.heading = null;
  walk.table = null;
  const within = walk.pending?.name ?? null;
  if (walk.pending !== null) keepPending(walk);
  const draft = { heading: itemOf(line, line.text), name, make, beside, lines: [] };
  walk.pending = within === null ? draft : { ...draft, within };
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
  if (line === undefined || walk.state === 'part') return false;
  const { text } = line.text;
  const opens = opensWork(text);
  if (!opens && !isInstruction(text)) return false;
  if (/\bcounts?\b|\bthroughout\b/i.test(text) && !/\bin\b/i.test(text)) return false;
  if (!opens && /^[^.]{1,30}(?::|=|\s[–—-]\s)/.test(text) && isListState(walk.state)) return false;
  if (walk.state === 'finishing') return false;
  if (walk.unlabelled && !opens) return walk.state === 'front' && !isProse(text) && /[\d,*(]/.test(text);
  if (!line.gap && walk.state !== 'front' && !opens) return false;
  if (!opens && isProse(text)) return false;
  if (tellsChoice(text)) return false;
  const next = walk.lines.slice(index + 1, index + 4).find((line) => !line.isRule && !isTableHead(line));
  if (next === undefined) return false;
  const label = rowLabel(next.text.text);
  // Right under a list or a note only a first row shows that the work begins.
  if (opens && !line.gap && label?.number !== undefined && (label.number ?? 1) > 1) return false;
  return label !== null || isInstruction(next.text.text);
}

function isTableHead({ cells }: TextLine): boolean {
  return cells.length > 1 && tableUnit(cells.map(({ text }) => text)) !== null;
}

const FINISHING =
  /^(?:weave|sew|block|pin|press|steam|wash|soak|rinse|darn|dampen|hide|sew up|stitch up|whip ?stitch|stuff)\b/i;

/** A line of several sentences is taken apart where one of them is not work. */
export function sortInPart(walk: Walk, line: TextLine): void {
  const later = { rows: walk.beforeRows.has(line), ownRows: walk.beforeOwnRows.has(line) };
  if (isSurfaceWork(line.text.text)) {
    // Under a heading of its own it makes no piece that others could go on from.
    if (walk.pending === null) addWork(walk, line, 'note', null);
    else put(walk, 'kept', itemOf(line, line.text));
    return;
  }
  const stretches = stretchesOf(line.text.text);
  if (stretches.length < 2) {
    sortSentence(walk, line, later);
    return;
  }
  for (const [start, end] of stretches) {
    const text = trimText(sliceText(line.text, start, end));
    sortSentence(walk, { ...line, text, cells: [text], span: fileSpan(text, 0, text.text.length) }, later);
  }
}

/** Sentences of work one after another stay together; what the maker does or joins stands by itself. */
function stretchesOf(text: string): [number, number][] {
  const stretches: [number, number][] = [];
  let workBefore = false;
  for (const [start, end] of sentencesOf(text)) {
    const sentence = text.slice(start, end).trim();
    // `You now have 24 sc.` is the count of the row before it.
    const work: boolean = !isAside(sentence) || (workBefore && TELLS_COUNT.test(sentence));
    const last = stretches.at(-1);
    if (last !== undefined && work && workBefore) last[1] = end;
    else stretches.push([start, end]);
    workBefore = work;
  }
  return stretches;
}

/** `With RS facing, join yarn in the top right corner.`: the row behind it begins there. */
const JOINS_YARN =
  /^(?:with (?:rs|ws|right side|wrong side)(?: of (?:the )?[a-z]+)? facing,?\s*)?(?:re)?(?:join|attach) (?:the )?(?:yarn|wool|cotton|thread)\b[^.]*\b(?:in|to|at)\b/i;

const TELLS_COUNT = /^(?:you|there)\s+(?:(?:should|will|now|then)\s+)*(?:have|be|are)\s+(?:now\s+)?\d/i;

/** What the maker does, is told, or joins: nothing to count. */
function isAside(text: string): boolean {
  return (
    FINISHING.test(text) ||
    isAssembly(text) ||
    isColourHabit(text) ||
    tellsChoice(text) ||
    (isForMaker(text) && !isInstruction(text)) ||
    (!namesWork(text) && !JOINS_YARN.test(text)) ||
    (isProse(text) && !/[,;*]/.test(text))
  );
}

function sortSentence(
  walk: Walk,
  line: TextLine,
  ahead: { readonly rows: boolean; readonly ownRows: boolean },
): void {
  const { text } = line.text;
  const begun = walk.pending === null && walk.parts.length > 0;
  if (begun && isAssembly(text)) {
    tellAssembly(walk, line.span, ahead.ownRows && !isSlippedSeam(text));
    if (ahead.rows) addWork(walk, line, 'note', null);
    else put(walk, 'finishing', itemOf(line, line.text));
    return;
  }
  if (begun && FINISHING.test(text) && !ahead.rows) {
    put(walk, 'finishing', itemOf(line, line.text));
    return;
  }
  if (begun && asksToMatch(text)) {
    addWork(walk, line, 'note', null);
    return;
  }
  // The rounds that follow say where they go.
  if (!begun && ahead.rows && isHolding(text)) {
    addWork(walk, line, 'note', null);
    return;
  }
  const works = isInstruction(text) && !isColourHabit(text) && !tellsChoice(text);
  if (works && (!isProse(text) || /[,;*]|^(?:fasten off|break|cut)\b/i.test(text))) {
    addWork(walk, line, 'instruction', null);
    return;
  }
  if (isNamedInstruction(text) && !isProse(text)) {
    addWork(walk, line, 'instruction', null, namedWithColon(line.text));
    return;
  }
  if (!ahead.rows) {
    put(walk, begun && isForMaker(text) ? 'finishing' : 'kept', itemOf(line, line.text));
    return;
  }
  if (namesWork(text) && /\d|[,;*]/.test(text) && !isProse(text) && !isForMaker(text)) {
    addWork(walk, line, 'instruction', null);
    return;
  }
  addWork(walk, line, 'note', null);
}

/** Sentences of one joining that follow each other are told once. */
function tellAssembly(walk: Walk, span: TextLine['span'], rowsFollow: boolean): void {
  const last = walk.assembly.at(-1);
  if (last !== undefined && last.rowsFollow === rowsFollow && span.start - last.span.end <= 2)
    walk.assembly[walk.assembly.length - 1] = { span: joinSpans(last.span, span), rowsFollow };
  else walk.assembly.push({ span, rowsFollow });
}

/** A line may hold several rows, one after another. */
export function addRow(walk: Walk, line: TextLine, text: MappedText, label: RowLabel): void {
  let rest = text;
  let labelled = label;
  for (;;) {
    const next = nextRow(rest.text);
    if (next === null) break;
    addWork(walk, line, 'row', labelled.number, trimText(sliceText(rest, 0, next.at)));
    rest = sliceText(rest, next.at);
    labelled = next.label;
  }
  addWork(walk, line, 'row', labelled.number, withColon(rest, labelled));
}

/** `edge - chain 1, …`: a name before a dash is one as before a colon. */
function namedWithColon(text: MappedText): MappedText {
  const [dashed, name] = /^([\p{L} ]+?)\s[–—-]\s+/u.exec(text.text) ?? [];
  if (dashed === undefined || name === undefined) return text;
  const colon = insertedText(': ', fileOffset(text, name.length));
  return joinTexts([sliceText(text, 0, name.length), colon, sliceText(text, dashed.length)], '');
}

/** `ROUND 2 (Raspberry) Ch 3, …`: brackets that belong to the label are closed off from the row by its mark. */
function withColon(text: MappedText, { end, named }: RowLabel): MappedText {
  if (!named) return text;
  const label = text.text.slice(0, end).trimEnd();
  const colon = insertedText(': ', fileOffset(text, label.length - 1));
  return joinTexts([sliceText(text, 0, label.length), colon, sliceText(text, end)], '');
}

/** `… turn. [20 sts] Row 2: Ch 1, …`: where the next row begins on the same line. */
function nextRow(text: string): { at: number; label: RowLabel } | null {
  for (const found of text.matchAll(/[.)\]]\s+(?=(?:rows?|rnds?|rounds?)\s*\d)/gi)) {
    const at = found.index + found[0].length;
    const label = rowLabel(text.slice(at));
    if (label !== null && /[:.–—-]\s*$/.test(text.slice(at, at + label.end))) return { at, label };
  }
  return null;
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
    part = { heading: null, name, make: 1, beside: null, lines: [] };
    walk.parts.push(part);
  }
  walk.state = 'part';
  walk.heading = null;
  const at = kind === 'instruction' ? foundationAt(text.text) : 0;
  if (at === 0) part.lines.push({ text, kind, number, span: line.span });
  else {
    const work = sliceText(text, at);
    part.lines.push({ text: work, kind, number, span: fileSpan(work, 0, work.text.length) });
  }
}
