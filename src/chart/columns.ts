/** The elements of a row in, the columns they make out: how tall, how wide, how far apart each must stand. */

import { type Fabric, FLAG, INTO, NONE, targets } from '../fabric/fabric.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { OWN_CHAIN_LENGTH_U } from '../symbols/own-chain.ts';
import { SYMBOLS } from '../symbols/symbols.ts';
import { hasFlag, type RowColumn, type RowElement } from './elements.ts';
import type { Footing } from './footing.ts';
import { PITCH_U } from './metrics.ts';
import { chainsLong, legsInOnePlace, ownChainU, stitchForm } from './stitch-form.ts';

export interface Column {
  readonly element: RowColumn;
  /** The stitch that later rows are worked into. */
  readonly stitch: number;
  readonly footing: Footing | null;
  readonly heightU: number;
  readonly widthU: number;
  /** Chains between this column and the next, or as many as what lies there is long. */
  readonly chainsAfter: number;
  /** Worked into a row under the one this row stands on. */
  readonly long: boolean;
  /** A later row is worked into the gap between this column and the one before it. */
  readonly gapEntered: boolean;
}

export function columnsOf(
  fabric: Fabric,
  rows: readonly StitchRow[],
  elements: readonly RowElement[],
  footingOf: (stitch: number) => Footing | null,
): Column[] {
  const columns: Column[] = [];
  const inRow = elements.filter((element): element is RowColumn => isColumn(element));
  const tallest = Math.max(
    0,
    ...inRow.map((element) => (element.kind === 'stitch' ? stitchHeight(fabric, rows, element.stitch) : 0)),
  );
  for (const element of elements) {
    if (element.kind === 'arch') {
      const before = columns.at(-1);
      if (before)
        columns[columns.length - 1] = {
          ...before,
          chainsAfter: before.chainsAfter + lengthInChains(fabric, rows, element),
        };
    }
    if (!isColumn(element)) continue;
    columns.push(columnOf(fabric, rows, element, footingOf, tallest));
  }
  return columns;
}

export function isColumn(element: RowElement): element is RowColumn {
  return element.kind === 'stitch' || element.kind === 'post' || element.kind === 'laid';
}

function lengthInChains(
  fabric: Fabric,
  rows: readonly StitchRow[],
  { first, end }: { readonly first: number; readonly end: number },
): number {
  let chains = 0;
  for (let i = first; i < end; i += 1) chains += chainsLong(rows[fabric.kind[i] ?? 0]);
  return chains;
}

/** Least distance between a column and the one after it. */
export function gapAfter(column: Column, next: Column): number {
  if (column.element.kind === 'laid' && next.element.kind === 'laid')
    return (column.widthU + next.widthU) / 2;
  if (next.element.kind === 'post' && next.element.onLaid) return 0;
  if (column.element.kind === 'laid' && next.widthU > 0.8) return (column.widthU + PITCH_U.laid) / 2;
  const side = (column.widthU + next.widthU) / 2;
  if (column.chainsAfter === 0)
    return next.gapEntered ? side * WIDER : apart(column, next) ? side * CLOSER : side;
  // Room for the bars at its two ends; an arch may bow to half again of what it spans.
  return Math.max(side, column.chainsAfter * PITCH_U.chain * 0.68 + 0.58);
}

/** Stitches in places of their own may stand closer than those of a fan, which spread. */
const CLOSER = 0.87;
/** And further apart where a later stitch stands between them. */
const WIDER = 1.15;

function apart(column: Column, next: Column): boolean {
  const place = column.footing?.place ?? -1;
  const bothPlain = column.element.kind === 'stitch' && next.element.kind === 'stitch';
  return bothPlain && (place < 0 || place !== next.footing?.place) && !column.footing?.inRing;
}

function columnOf(
  fabric: Fabric,
  rows: readonly StitchRow[],
  element: RowColumn,
  footingOf: (stitch: number) => Footing | null,
  tallest: number,
): Column {
  switch (element.kind) {
    case 'stitch': {
      const i = element.stitch;
      const row = rows[fabric.kind[i] ?? 0];
      const legs = legsInOnePlace(fabric, rows, i);
      const form = row === undefined ? null : stitchForm(row, legs);
      // Ovals and bulges fill their room: they may not stand closer, as stems may.
      const filled = ownChainU(row) > 0 ? OWN_CHAIN_LENGTH_U : legs > 0 ? (form?.widthU ?? 0) : 0;
      return {
        element,
        stitch: i,
        footing: footingOf(i),
        // An arm reaches as high as what it goes into.
        heightU: stitchHeight(fabric, rows, fabric.where[i] === INTO.stem ? (targets(fabric, i)[0] ?? i) : i),
        widthU: Math.max(filled / CLOSER, form?.widthU ?? 1),
        chainsAfter: 0,
        long: isLong(fabric, i),
        gapEntered: false,
      };
    }
    case 'post': {
      const top = element.end - 1;
      const row = element.counted === NONE ? undefined : rows[fabric.countsAs[element.counted] ?? 0];
      const chains = (element.end - element.first) * PITCH_U.chain;
      return {
        element,
        stitch: top,
        footing: footingOf(element.first),
        heightU: row === undefined ? Math.min(chains, tallest || chains) : SYMBOLS[row.symbol].heightU,
        widthU: row === undefined ? 2 * PITCH_U.post - 0.84 : 0.84,
        chainsAfter: 0,
        long: false,
        gapEntered: false,
      };
    }
    case 'laid':
      return {
        element,
        stitch: element.stitch,
        footing: null,
        heightU: 0,
        widthU: PITCH_U.laid * chainsLong(rows[fabric.kind[element.stitch] ?? 0]),
        chainsAfter: 0,
        long: false,
        gapEntered: false,
      };
  }
}

/** Of a row's stitches, the mean. */
export function rowHeight(
  fabric: Fabric,
  rows: readonly StitchRow[],
  elements: readonly RowElement[],
): number {
  const heights = elements.flatMap((element) =>
    element.kind === 'stitch' ? [stitchHeight(fabric, rows, element.stitch)] : [],
  );
  return heights.reduce((sum, height) => sum + height, 0) / Math.max(1, heights.length);
}

function stitchHeight(fabric: Fabric, rows: readonly StitchRow[], i: number): number {
  const row = rows[fabric.kind[i] ?? 0];
  if (row === undefined) return 0;
  return stitchForm(row, legsInOnePlace(fabric, rows, i)).heightU + ownChainU(row);
}

/** Worked into a row under the one that its own row stands on. */
export function isLong(fabric: Fabric, i: number): boolean {
  const target = targets(fabric, i)[0];
  const row = fabric.rows[fabric.row[i] ?? 0];
  const where = fabric.where[i];
  if (
    target === undefined ||
    row === undefined ||
    row.edging ||
    row.onto === null ||
    (where !== INTO.top && where !== INTO.post)
  )
    return false;
  // The chain that row 1 begins with may have been made with the foundation.
  if (hasFlag(fabric, target, FLAG.turningChain)) return false;
  const under = fabric.row[target] ?? 0;
  return under < row.onto && fabric.rows[under]?.part === row.part;
}
