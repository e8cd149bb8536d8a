/** A fabric in, which rows edge the piece and which of its sides they lie on out. */

import { type Fabric, type FabricRow, INTO, NONE } from '../fabric/fabric.ts';

/** How many of the two sides, and of top and bottom, a row is worked along. */
export interface Sides {
  readonly sides: number;
  readonly ends: number;
}

const ALL_ROUND: Sides = { sides: 2, ends: 2 };

/** One for each of `fabric.rows`; null for a row that is no edging. Rows on an edging lie where it does. */
export function edgingSides(fabric: Fabric): (Sides | null)[] {
  const found: (Sides | null)[] = [];
  for (const [index, row] of fabric.rows.entries()) {
    const below = row.onto === null ? null : (found[row.onto] ?? null);
    if (below !== null) found.push(row.closing === 'flat' ? below : ALL_ROUND);
    else
      found.push(
        row.edging || goesRoundFlat(fabric, row) || edgesSide(fabric, row, index)
          ? sidesOf(fabric, row)
          : null,
      );
  }
  return found;
}

/** A round worked on a piece of rows. */
function goesRoundFlat(fabric: Fabric, row: FabricRow): boolean {
  const below = row.onto === null ? undefined : fabric.rows[row.onto];
  const base = below === undefined ? undefined : fabric.parts[below.part];
  return (
    base?.shape === 'flat' && below?.closing === 'flat' && below.unit === 'row' && row.closing !== 'flat'
  );
}

/**
 * A row along the ends of rows, where few rows stand on it for how wide the piece is; otherwise the piece goes on from
 * there, as from a rib worked sideways. A quarter of the stitches across is our own choice.
 */
function edgesSide(fabric: Fabric, row: FabricRow, index: number): boolean {
  const below = row.onto === null ? undefined : fabric.rows[row.onto];
  if (below?.closing !== 'flat' || row.closing !== 'flat') return false;
  let ends = 0;
  for (let i = row.first; i < row.end; i += 1) {
    // A chain before the first stitch stands wherever the yarn was joined.
    if (fabric.countsAs[i] === NONE) continue;
    if (fabric.where[i] === INTO.rowEnd) ends += 1;
    else if (fabric.where[i] !== INTO.nothing) return false;
  }
  const standing = fabric.rows.slice(index).filter(({ part }) => part === row.part).length;
  return ends > 0 && standing * 4 <= below.stitches;
}

/** All round for a round; for a row, each stretch of row ends is a side, the top and the foundation an end each. */
function sidesOf(fabric: Fabric, row: FabricRow): Sides {
  if (row.closing !== 'flat') return ALL_ROUND;
  let sides = 0;
  let top = 0;
  let underside = 0;
  let alongSide = false;
  for (let i = row.first; i < row.end; i += 1) {
    const where = fabric.where[i];
    if (where === INTO.nothing || fabric.countsAs[i] === NONE) continue;
    const rowEnd = where === INTO.rowEnd;
    if (rowEnd && !alongSide) sides += 1;
    alongSide = rowEnd;
    if (where === INTO.underside) underside = 1;
    else if (!rowEnd) top = 1;
  }
  return { sides, ends: top + underside };
}
