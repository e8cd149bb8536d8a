/** A file's text and its faults -> its lines, each with what is told of it and which of its words are meant. */

import type { Diagnostic, Severity } from '../diagnostics/diagnostic.ts';
import { type LineMap, lineMap, lineText, placeOf } from '../source/line-map.ts';
import type { Span } from '../source/span.ts';

export interface ToldLine {
  readonly number: number;
  readonly text: string;
  /** Stretches of the line, in order, none over another. */
  readonly marks: readonly LineMark[];
  readonly faults: readonly Diagnostic[];
  /** Other places of faults told on another line. */
  readonly pointers: readonly Pointer[];
}

export interface LineMark {
  readonly span: Span;
  readonly severity: Severity;
}

/** What stands here belongs to a fault told on another line. */
export interface Pointer {
  readonly text: string;
  readonly severity: Severity;
  readonly toLine: number;
}

/** Of a word that is wrong all over the file not every place is pointed at. */
const MOST_POINTERS = 12;

interface Gathered {
  readonly marks: LineMark[];
  readonly faults: Diagnostic[];
  readonly pointers: Pointer[];
}

export function toldLines(text: string, faults: readonly Diagnostic[]): readonly ToldLine[] {
  const map = lineMap(text);
  const byLine = new Map<number, Gathered>();
  const at = (offset: number): { line: number; gathered: Gathered } => {
    const line = Math.min(placeOf(map, offset).line, shownLines(map));
    const gathered = byLine.get(line) ?? { marks: [], faults: [], pointers: [] };
    byLine.set(line, gathered);
    return { line, gathered };
  };
  for (const fault of faults) {
    const { severity } = fault;
    const { line, gathered } = at(fault.span.start);
    gathered.faults.push(fault);
    gathered.marks.push({ span: withinLine(fault.span, line, map), severity });
    for (const label of fault.labels.slice(0, MOST_POINTERS)) {
      const place = at(label.span.start);
      place.gathered.marks.push({ span: withinLine(label.span, place.line, map), severity });
      if (place.line !== line && label.text !== '')
        place.gathered.pointers.push({ text: label.text, severity, toLine: line });
    }
  }
  return Array.from({ length: shownLines(map) }, (_, i) => {
    const { marks = [], faults: told = [], pointers = [] } = byLine.get(i + 1) ?? {};
    return {
      number: i + 1,
      text: lineText(map, i + 1),
      marks: apart(marks),
      faults: told,
      pointers: eachOnce(pointers),
    };
  });
}

/** What the end of the last line is followed by is no line. */
function shownLines({ starts, text }: LineMap): number {
  return text.endsWith('\n') && starts.length > 1 ? starts.length - 1 : starts.length;
}

/** A span that runs over several lines is marked to the end of its first. */
function withinLine(span: Span, line: number, map: LineMap): Span {
  const start = map.starts[line - 1] ?? 0;
  const length = lineText(map, line).length;
  const from = Math.min(Math.max(0, span.start - start), length);
  return { start: from, end: Math.max(from, Math.min(span.end - start, length)) };
}

/** Where two lie over one another the first has its way. */
function apart(marks: readonly LineMark[]): readonly LineMark[] {
  const inOrder = [...marks].sort((a, b) => a.span.start - b.span.start || b.span.end - a.span.end);
  const kept: LineMark[] = [];
  let end = 0;
  for (const mark of inOrder) {
    const start = Math.max(mark.span.start, end);
    if (start >= mark.span.end) continue;
    kept.push({ ...mark, span: { start, end: mark.span.end } });
    end = mark.span.end;
  }
  return kept;
}

function eachOnce(pointers: readonly Pointer[]): readonly Pointer[] {
  return [...new Map(pointers.map((pointer) => [JSON.stringify(pointer), pointer])).values()];
}
