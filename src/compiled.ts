/** Everything known of one pattern once all stages have run: what the site, the booklets and the commands take. */

import type { PartSchematic } from './chart/schematic.ts';
import type { Diagnostic } from './diagnostics/diagnostic.ts';
import type { RowAccount } from './explain/row-account.ts';
import type { Fabric } from './fabric/fabric.ts';
import type { Measures, ScaleOf } from './measure/measures.ts';
import type { Pattern, Size } from './pattern/pattern.ts';
import type { SeenPhotograph } from './pattern/photograph.ts';
import type { PartMultiple } from './proof/part-multiple.ts';
import type { RoundGrowth } from './proof/round-growth.ts';
import type { ChartsByTerms } from './size-charts.ts';
import type { DialectKey, WordedPattern } from './wording/words.ts';

export interface CompiledSize {
  readonly size: Size;
  /** The size's name as it stands in addresses and file names. */
  readonly slug: string;
  readonly fabric: Fabric;
  /** How each row came to its number. */
  readonly accounts: readonly RowAccount[];
  readonly measures: Measures;
  readonly words: Readonly<Record<DialectKey, WordedPattern>>;
  /** Outlines with their measures, of pieces made in straight rows. */
  readonly schematics: readonly PartSchematic[];
  readonly charts: ChartsByTerms;
  /** The same turned over. */
  readonly leftHandedCharts: ChartsByTerms;
}

export interface CompiledPattern {
  readonly slug: string;
  /** Null when the file could not be read as a pattern at all. */
  readonly pattern: Pattern | null;
  readonly sizes: readonly CompiledSize[];
  /** Instructions for all sizes at once, numbers in the trade's `35 (44, 53)` form. */
  readonly allSizes: Readonly<Record<DialectKey, WordedPattern>> | null;
  /** Over which foundations each flat part comes out, for every width; found when first asked for. */
  readonly multiples: readonly PartMultiple[];
  /** By how many stitches each repeated round grows, for as many rounds as anyone works; found when first asked for. */
  readonly growths: readonly RoundGrowth[];
  /** How the yarn of its sizes stands to the trade's figures: for a size of a maker's own. */
  readonly scaleOf: ScaleOf;
  /** Those that were found and can be shown, the cover's first. */
  readonly photographs: readonly SeenPhotograph[];
  readonly diagnostics: readonly Diagnostic[];
}
