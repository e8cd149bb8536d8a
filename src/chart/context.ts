/** What every step of placing one piece of a fabric needs to know. */

import type { Fabric } from '../fabric/fabric.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import type { Layout } from './layout.ts';

export interface ChartContext {
  readonly fabric: Fabric;
  /** Rows of the stitch table by the fabric's own numbering. */
  readonly rows: readonly StitchRow[];
  readonly layout: Layout;
  /** First chains of the spaces at corners. */
  readonly cornerChains: ReadonlySet<number>;
  /** The one chain in the middle of a round piece that begins in a chain; -1 for other beginnings. */
  readonly centreChain: number;
  /** Distance from the middle at which stitches into the ring begin. */
  readonly ringOffset: number;
  /** Middle of each flat row in x, for telling its ends apart; filled as rows are placed. */
  readonly rowMiddleX: Map<number, number>;
}
