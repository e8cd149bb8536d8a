/** A pattern and one of its sizes in, the fabric worked stitch by stitch and every fault of the work out. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { RowAccount } from '../explain/row-account.ts';
import type { Pattern, Special } from '../pattern/pattern.ts';
import { emptyBuilder } from './builder.ts';
import { circularSpecials } from './circular-specials.ts';
import type { Fabric, FabricPart, FabricRow } from './fabric.ts';
import { finishFabric } from './finish-fabric.ts';
import { chainHabits, everyChainInNotes, saidOfStarts } from './notes-chains.ts';
import type { PartEnd } from './part-end.ts';
import { partShape } from './part-shape.ts';
import { noteTaken } from './shared-top.ts';
import { workPart } from './work-part.ts';
import { workSteps } from './work-steps.ts';
import { yarnIndex } from './work-yarn.ts';
import type { Worker } from './worker.ts';
import { newWorker } from './worker.ts';

/** How large a size is: what the file gives or the gauge tells. */
export interface SizePlan {
  /** Pattern repeats, for `a multiple of …`. */
  readonly repeats: number;
  /** Rows or rounds in all, for what goes on to height; null when nothing says. */
  readonly rows: number | null;
  /** Readings settled where the whole pattern was worked and stated counts told; for a part worked by itself. */
  readonly readings?: Readings;
}

/** How turning chains that a part alone does not explain were read. */
export interface Readings {
  /** Whether each unstated one was taken to count, by its offset in the file. */
  readonly settled: ReadonlyMap<number, boolean>;
  /** What those of a length are "throughout". */
  readonly throughout: Worker['throughout'];
}

export interface Worked {
  readonly fabric: Fabric;
  readonly diagnostics: readonly Diagnostic[];
  /** Every row was worked; otherwise the fabric ends before the first that could not be. */
  readonly whole: boolean;
  readonly readings: Readings;
  /** Something was read the way that comes out at this width, and may have to be read otherwise at another. */
  readonly wavered: boolean;
  /** How each row came to its number, also the one where a part breaks off. */
  readonly accounts: readonly RowAccount[];
  /** Stitches made and steps gone through, against endless work. */
  readonly effort: number;
}

export function workSize(pattern: Pattern, sizeIndex: number, plan: SizePlan): Worked {
  const size = pattern.sizes[sizeIndex]?.name ?? 'one size';
  const circular = circularSpecials(pattern.specials);
  if (circular.length > 0) return unworkable(pattern, size, circular);
  const worker = newWorker(pattern.specials, pattern.terms, sizeIndex, plan.repeats, workSteps);
  const first = pattern.yarns[0];
  if (first !== undefined) yarnIndex(worker, first.letter);
  for (const [chains, habit] of chainHabits(
    [...saidOfStarts(pattern.specials), ...(pattern.notes ?? [])],
    pattern.terms,
  ))
    worker.throughout.set(chains, habit);
  worker.everyChain = everyChainInNotes(pattern.notes ?? []);
  for (const [offset, counts] of plan.readings?.settled ?? []) worker.settled.set(offset, counts);
  for (const [chains, what] of plan.readings?.throughout ?? []) worker.throughout.set(chains, what);
  const rows: FabricRow[] = [];
  const parts: FabricPart[] = [];
  const diagnostics: Diagnostic[] = [];
  const accounts: RowAccount[] = [];
  const ends = new Map<string, PartEnd | null>();
  let whole = true;
  for (const [index, part] of pattern.parts.entries()) {
    const from = part.onto === null ? undefined : ends.get(part.onto);
    // A part that goes on from one that could not be worked cannot be either; saying so would be an echo.
    if (from === null) {
      ends.set(part.name, null);
      whole = false;
      parts.push({
        name: part.name,
        firstRow: rows.length,
        endRow: rows.length,
        shape: 'flat',
        start: null,
        corners: 0,
        onto: null,
      });
      continue;
    }
    const firstRow = rows.length;
    const { file } = pattern.source;
    const below = from === undefined ? undefined : worker.rowRanges[(parts[from.index]?.endRow ?? 0) - 1];
    const setting = { file, size, sizeIndex, rows: plan.rows, part: index, before: below?.number ?? 0 };
    worker.pieces = from === undefined ? 1 : (pattern.parts[from.index]?.make ?? 1);
    const end = workPart(worker, part, from ?? null, setting, { rows, diagnostics, accounts });
    if (!end.whole) whole = false;
    if (from !== undefined) noteTaken(from, worker, rows[firstRow]);
    // A part of nothing but notes leaves what it stands on as it was.
    if (rows.length === firstRow && end.whole) {
      if (from !== undefined) ends.set(part.name, from);
    } else
      ends.set(
        part.name,
        end.top === null || !end.whole
          ? null
          : {
              top: end.top,
              index,
              pieceFirst: worker.pieceFirst,
              foundation: worker.foundation,
              taken: new Set(),
            },
      );
    parts.push({
      name: part.name,
      firstRow,
      endRow: rows.length,
      ...partShape(worker.builder, rows.slice(firstRow)),
      // A row along an edge that is not worked here stands on nothing: it begins a piece.
      onto: rows[firstRow]?.onto === null ? null : (from?.index ?? null),
    });
  }
  const { builder, settled, throughout, wavered } = worker;
  return {
    fabric: finishFabric(builder, size, rows, parts),
    diagnostics,
    whole,
    readings: { settled, throughout },
    wavered,
    accounts,
    effort: worker.effort + builder.kind.length,
  };
}

/** With a special stitch that is described by itself nothing can be worked. */
function unworkable(pattern: Pattern, size: string, circular: readonly Special[]): Worked {
  const { file } = pattern.source;
  // Of several that lead round in one ring the first is enough.
  const diagnostics = circular
    .slice(0, 1)
    .map(({ name, span }) => diagnose('special/circular', { file, span }, { name }));
  return {
    fabric: finishFabric(emptyBuilder(), size, [], []),
    diagnostics,
    whole: false,
    readings: { settled: new Map(), throughout: new Map() },
    wavered: false,
    accounts: [],
    effort: 0,
  };
}
