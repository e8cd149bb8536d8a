/** What every step of placing one piece of a fabric needs to know. */

import type { Fabric } from '../fabric/fabric.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import type { Layout } from './layout.ts';

/** Leftmost and rightmost place in a row. */
export interface Reach {
  readonly left: number;
  readonly right: number;
}

export interface ChartContext {
  readonly fabric: Fabric;
  /** Rows of the stitch table by the fabric's own numbering. */
  readonly rows: readonly StitchRow[];
  readonly layout: Layout;
  /** First chains of the spaces at corners. */
  readonly cornerChains: ReadonlySet<number>;
  /** The one chain in the middle of a round piece that begins in a chain; -1 for other beginnings. */
  readonly centreChain: number;
  /** Side of the piece that lies under its foundation: see `roundTrack`. */
  readonly underside: number;
  /** Distance from the middle at which stitches into the ring begin. */
  readonly ringOffset: number;
  /** Stitches that stand in a corner though the fabric does not say so. */
  readonly cornerStitches: ReadonlySet<number>;
  /** Stitches of the piece that a later one is worked in front of, into the gap before them. */
  readonly gapsEntered: ReadonlySet<number>;
  /** How far each flat row reaches; filled as rows are placed. */
  readonly reach: Map<number, Reach>;
}

export function widest(reaches: readonly Reach[]): Reach {
  return {
    left: Math.min(...reaches.map(({ left }) => left)),
    right: Math.max(...reaches.map(({ right }) => right)),
  };
}
