/** A row's elements in, where along it each of its stitches and chains lies out, before anything is drawn. */

import { type Fabric, targets } from '../fabric/fabric.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import type { RowElement } from './elements.ts';
import { PITCH_U } from './metrics.ts';
import { chainsLong } from './stitch-form.ts';

/** What takes room in a row: a stitch, or a chain of a space. */
export interface Lying {
  readonly stitch: number;
  readonly chain: boolean;
  readonly from: number;
  readonly to: number;
}

export interface RowWidths {
  /** In order of their places, growing to the left. */
  readonly lying: readonly Lying[];
  readonly at: ReadonlyMap<number, Lying>;
  readonly widthU: number;
}

/** `way` is 1 where the row is worked to the left. */
export function rowWidths(
  fabric: Fabric,
  rows: readonly StitchRow[],
  elements: readonly RowElement[],
  way: 1 | -1,
): RowWidths {
  const inOrder: { stitch: number; chain: boolean; width: number }[] = [];
  for (const element of elements) {
    if (element.kind === 'stitch' || element.kind === 'laid')
      inOrder.push({ stitch: element.stitch, chain: false, width: 1 });
    else if (element.kind === 'post' && element.counted >= 0)
      inOrder.push({ stitch: element.counted, chain: false, width: 1 });
    else if (element.kind === 'arch')
      for (let i = element.first; i < element.end; i += 1)
        inOrder.push({
          stitch: i,
          chain: true,
          width: PITCH_U.chain * chainsLong(rows[fabric.kind[i] ?? 0]),
        });
  }
  if (way < 0) inOrder.reverse();
  let from = 0;
  const lying = inOrder.map(({ stitch, chain, width }): Lying => {
    const to = from + width;
    const own = { stitch, chain, from, to };
    from = to;
    return own;
  });
  return { lying, at: new Map(lying.map((own) => [own.stitch, own])), widthU: from };
}

/** What of a row a stitch of the next one is worked into; null where it is none of that row. */
export function placeIn(
  fabric: Fabric,
  under: RowWidths,
  stitch: number,
): { from: number; to: number } | null {
  let from = Number.POSITIVE_INFINITY;
  let to = Number.NEGATIVE_INFINITY;
  for (const target of targets(fabric, stitch)) {
    const own = under.at.get(target);
    if (own === undefined) return null;
    from = Math.min(from, own.from);
    to = Math.max(to, own.to);
  }
  return to < from ? null : { from, to };
}

/** Less than this is no change of width. */
const SAME_U = 0.6;

/** Rows as wide as the one below, or as one of those two away: their edges run straight up. */
export function straightRows(fabric: Fabric, widths: ReadonlyMap<number, RowWidths>): ReadonlySet<number> {
  const straight = new Set<number>();
  for (const [row, { widthU }] of widths) {
    const under = fabric.rows[row]?.onto ?? null;
    const second = under === null ? null : (fabric.rows[under]?.onto ?? null);
    if (under !== null && isAs(widths.get(under), widthU)) straight.add(row);
    if (second === null || !isAs(widths.get(second), widthU)) continue;
    straight.add(row);
    straight.add(second);
  }
  return straight;
}

function isAs(other: RowWidths | undefined, widthU: number): boolean {
  return other !== undefined && Math.abs(other.widthU - widthU) < SAME_U;
}
