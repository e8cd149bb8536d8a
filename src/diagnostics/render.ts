/** Diagnostics and the texts of their files in, what a terminal shows or another program reads out. */

import { type LineMap, lineMap, lineText, placeOf } from '../source/line-map.ts';
import type { Span } from '../source/span.ts';
import type { Diagnostic, Severity } from './diagnostic.ts';
import { inFileOrder } from './order.ts';
import { type Mark, snippet } from './snippet.ts';

/** The whole text of each file by its name. */
export type Texts = ReadonlyMap<string, string>;

export interface RenderOptions {
  readonly colour: boolean;
}

/** Nobody reads further; programs are given all of them. */
const MOST_TOLD = 1_000;

const PLAIN: RenderOptions = { colour: false };

/** All of them in file order, with a line of totals below. */
export function renderDiagnostics(diagnostics: readonly Diagnostic[], texts: Texts, options = PLAIN): string {
  const maps = lineMapsOf(texts);
  const all = inFileOrder(diagnostics);
  const each = all.slice(0, MOST_TOLD).map((diagnostic) => renderWith(diagnostic, maps, options));
  const more = all.length - each.length;
  const rest = more > 0 ? [`… and ${more} more faults, told when these are put right.\n`] : [];
  return [...each, ...rest, `${tally(all)}\n`].join('\n');
}

/** One fault: its place, what is so, the lines it is about, why it matters and what to try. */
export function renderDiagnostic(diagnostic: Diagnostic, texts: Texts, options = PLAIN): string {
  return renderWith(diagnostic, lineMapsOf(texts), options);
}

/** `2 errors, 1 warning and 3 notes in 1 file.` */
export function tally(diagnostics: readonly Diagnostic[]): string {
  if (diagnostics.length === 0) return 'No faults.';
  const counts = WEIGHTS.flatMap((weight) => {
    const n = diagnostics.filter(({ severity }) => severity === weight).length;
    return n === 0 ? [] : [plural(n, weight)];
  });
  const last = counts.at(-1) ?? '';
  const listed = counts.length < 2 ? last : `${counts.slice(0, -1).join(', ')} and ${last}`;
  return `${listed} in ${plural(new Set(diagnostics.map(({ file }) => file)).size, 'file')}.`;
}

/** The heaviest first. */
const WEIGHTS: readonly Severity[] = ['error', 'warning', 'note'];

/** One fault as other programs read it; the shape is kept stable. */
export interface JsonFault {
  readonly code: string;
  readonly severity: Severity;
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
  readonly message: string;
  readonly why: string;
  readonly try: string;
  readonly size: string | null;
}

export interface JsonReport {
  /** Whether the patterns are free of errors; warnings and notes may stand. */
  readonly ok: boolean;
  readonly faults: readonly JsonFault[];
}

export function toJson(diagnostics: readonly Diagnostic[], texts: Texts): JsonReport {
  const maps = lineMapsOf(texts);
  const ok = diagnostics.every(({ severity }) => severity !== 'error');
  return { ok, faults: inFileOrder(diagnostics).map((diagnostic) => jsonFault(diagnostic, maps)) };
}

function jsonFault(
  { code, severity, file, span, message, why, try: attempt, sizes }: Diagnostic,
  maps: LineMaps,
): JsonFault {
  const map = maps.get(file) ?? lineMap('');
  const { line, column } = placeOf(map, span.start);
  const end = placeOf(map, span.end);
  const size = sizes.length === 0 ? null : sizes.join(', ');
  return {
    code,
    severity,
    file,
    line,
    column,
    endLine: end.line,
    endColumn: end.column,
    message,
    why,
    try: attempt,
    size,
  };
}

type LineMaps = ReadonlyMap<string, LineMap>;

function lineMapsOf(texts: Texts): LineMaps {
  return new Map([...texts].map(([file, text]) => [file, lineMap(text)]));
}

function renderWith(diagnostic: Diagnostic, maps: LineMaps, options: RenderOptions): string {
  const { file, span, severity, code, message, why, sizes } = diagnostic;
  const map = maps.get(file);
  const { line, column } = placeOf(map ?? lineMap(''), span.start);
  const size = sizes.length === 0 ? '' : `  (${sizes.length === 1 ? 'size' : 'sizes'} ${sizes.join(', ')})`;
  const paint = painter(options, severity);
  const lines = [
    `${file}:${line}:${column}  ${paint.severity(severity)}  ${code}${size}`,
    paint.strong(message),
    ...(map === undefined ? [] : excerpt(diagnostic, map, paint)),
    `${paint.quiet('why')}  ${why}`,
    `${paint.quiet('try')}  ${diagnostic.try}`,
  ];
  return `${lines.join('\n')}\n`;
}

/** Of a word that is wrong all over the file not every place is shown. */
const MOST_LABELS = 12;

interface MarkedLine {
  readonly line: number;
  readonly marks: Mark[];
}

/** The lines of the fault and its labels, in file order, each with what is underlined in it. */
function excerpt({ span, labels }: Diagnostic, map: LineMap, paint: Painter): readonly string[] {
  const byLine = new Map<number, MarkedLine>();
  const all = [
    { span, text: '', stroke: '^' as const },
    ...labels.slice(0, MOST_LABELS).map((label) => ({ ...label, stroke: '~' as const })),
  ];
  for (const { span: place, text, stroke } of all) {
    const { line } = placeOf(map, place.start);
    const marked = byLine.get(line) ?? { line, marks: [] };
    marked.marks.push({ ...withinLine(place, line, map), stroke, text });
    byLine.set(line, marked);
  }
  const inOrder = [...byLine.values()].sort((a, b) => a.line - b.line);
  const gutter = String(inOrder.at(-1)?.line ?? 1).length;
  const more = labels.length - MOST_LABELS;
  const lines = inOrder.flatMap(({ line, marks }) => {
    const { line: shown, underlines } = snippet(lineText(map, line), marks);
    const numbered = `${paint.quiet(`${String(line).padStart(gutter)} |`)} ${shown}`.trimEnd();
    const blank = paint.quiet(`${' '.repeat(gutter)} |`);
    return [numbered, ...underlines.map((underline) => `${blank} ${paint.mark(underline)}`)];
  });
  return more <= 0 ? lines : [...lines, paint.quiet(`… and ${more} more`)];
}

/** A span that runs over several lines is underlined to the end of its first. */
function withinLine(span: Span, line: number, map: LineMap): Span {
  const start = map.starts[line - 1] ?? 0;
  const length = lineText(map, line).length;
  const from = Math.min(span.start - start, length);
  return { start: from, end: Math.max(from + 1, Math.min(span.end - start, length)) };
}

interface Painter {
  readonly severity: (text: string) => string;
  readonly strong: (text: string) => string;
  readonly quiet: (text: string) => string;
  readonly mark: (text: string) => string;
}

/** ECMA-48 graphic renditions: 1 bold, 2 faint, 31 red, 33 yellow, 36 cyan. */
const HUES: Readonly<Record<Severity, number>> = { error: 31, warning: 33, note: 36 };

function painter({ colour }: RenderOptions, severity: Severity): Painter {
  const inRendition = (rendition: number) => (text: string) =>
    colour ? `\x1b[${rendition}m${text}\x1b[0m` : text;
  const hue = inRendition(HUES[severity]);
  return { severity: hue, strong: inRendition(1), quiet: inRendition(2), mark: hue };
}

function plural(n: number, word: string): string {
  return `${n} ${word}${n === 1 ? '' : 's'}`;
}
