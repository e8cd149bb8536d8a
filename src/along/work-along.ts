/** An along and its patterns, compiled, in; every week with its squares worked and held against one another out. */

import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { listed } from '../diagnostics/listed.ts';
import { nearest } from '../diagnostics/nearest.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Along, AlongChoice, AlongWeek } from './along.ts';
import type { Edges } from './edges.ts';
import { fitOf } from './fit.ts';
import { gridFaults } from './grid-faults.ts';
import { LIES } from './lies.ts';
import { type WorkedBorder, workBorder } from './work-border.ts';

/** One choice of one week that can be made and joined. */
export interface AlongSquare {
  readonly choice: AlongChoice;
  /** With no size but the one that is made. */
  readonly compiled: CompiledPattern;
  readonly pattern: Pattern;
  readonly size: CompiledSize;
  readonly edges: Edges;
}

export interface WorkedWeek {
  readonly week: AlongWeek;
  /** In the order of the file; one that is missing or at fault is not among them. */
  readonly squares: readonly AlongSquare[];
  /** What keeps the week back; warnings as well. */
  readonly faults: readonly Diagnostic[];
}

export interface WorkedAlong {
  readonly along: Along;
  readonly weeks: readonly WorkedWeek[];
  readonly border: WorkedBorder;
  /** Of the along as a whole. */
  readonly faults: readonly Diagnostic[];
}

/** `patterns` by the folder as the along names it; null where there is none. */
export function workAlong(along: Along, patterns: ReadonlyMap<string, CompiledPattern | null>): WorkedAlong {
  let cornerChains: number | null = null;
  const weeks = along.weeks.map((week): WorkedWeek => {
    const worked = week.choices.map((choice) =>
      workChoice(along, week, choice, patterns.get(choice.pattern) ?? null),
    );
    const squares = worked.flatMap(({ square }) => square ?? []);
    const faults = worked.flatMap((one) => one.faults);
    for (const { edges, pattern, choice } of squares) {
      const first = cornerChains ?? edges.cornerChains;
      cornerChains = first;
      if (edges.cornerChains === first) continue;
      faults.push(
        diagnose(
          'along/other-corners',
          { file: along.source.file, span: choice.span },
          {
            week: week.number,
            title: pattern.title,
            pieces: LIES[along.blanket.lie].pieces,
            meet: LIES[along.blanket.lie].meet,
            corner: cornerWords(edges.cornerChains),
            others: cornerWords(first),
          },
        ),
      );
    }
    return { week, squares, faults };
  });
  const border = workBorder(along);
  return { along, weeks, border, faults: [...gridFaults(along), ...borderFaults(along, border)] };
}

export function isSound({ faults }: Pick<WorkedWeek, 'faults'>): boolean {
  return faults.every(({ severity }) => severity !== 'error');
}

function borderFaults({ source, places }: Along, { fault }: WorkedBorder): Diagnostic[] {
  if (fault === null) return [];
  const span = places.get('border.edging') ?? places.get('border') ?? { start: 0, end: 1 };
  return [diagnose('along/border', { file: source.file, span }, { found: fault.message })];
}

function cornerWords(chains: number): string {
  return chains === 0 ? 'stitches' : `spaces of ${chains === 1 ? '1 chain' : `${chains} chains`}`;
}

interface WorkedChoice {
  readonly square: AlongSquare | null;
  readonly faults: readonly Diagnostic[];
}

function workChoice(
  along: Along,
  { number: week }: AlongWeek,
  choice: AlongChoice,
  compiled: CompiledPattern | null,
): WorkedChoice {
  const where = { file: along.source.file, span: choice.span };
  const fault = (diagnostic: Diagnostic): WorkedChoice => ({ square: null, faults: [diagnostic] });
  if (compiled === null)
    return fault(diagnose('along/pattern-missing', where, { week, pattern: choice.pattern }));
  const errors = compiled.diagnostics.filter(({ severity }) => severity === 'error');
  const [first] = errors;
  const { pattern } = compiled;
  const title = pattern?.title ?? choice.pattern;
  if (first !== undefined || pattern === null) {
    const facts = {
      week,
      title,
      count: Math.max(1, errors.length),
      first: first?.message ?? 'it cannot be read',
    };
    return fault(diagnose('along/pattern-faulty', where, facts));
  }
  const size = sizeOf(compiled, choice.size);
  if (size === null) {
    const known = compiled.sizes.map((one) => one.size.name);
    const near = choice.size === null ? null : nearest(choice.size, known);
    return fault(
      diagnose('along/size-missing', where, { week, title, given: choice.size, nearest: near, known }),
    );
  }
  const { edges, faults } = fitOf(along, week, choice, title, size);
  const strange = colourFaults(along, week, choice, title, size);
  return {
    square:
      edges === null || faults.length + strange.length > 0
        ? null
        : { choice, compiled: { ...compiled, sizes: [size] }, pattern, size, edges },
    faults: [...faults, ...strange],
  };
}

function sizeOf({ sizes }: CompiledPattern, wanted: string | null): CompiledSize | null {
  const [first, more] = sizes;
  if (wanted === null) return first !== undefined && more === undefined ? first : null;
  return sizes.find(({ size }) => size.name.toLowerCase() === wanted.trim().toLowerCase()) ?? null;
}

function colourFaults(
  along: Along,
  week: number,
  { span }: AlongChoice,
  title: string,
  { measures }: CompiledSize,
): Diagnostic[] {
  const known = along.yarns.map(({ letter }) => letter);
  const strange = measures.yarn.map(({ letter }) => letter).filter((letter) => !known.includes(letter));
  if (strange.length === 0) return [];
  const facts = { what: `week ${week}: ${title}`, given: listed(strange, 'and'), known };
  return [diagnose('along/colour', { file: along.source.file, span }, facts)];
}
