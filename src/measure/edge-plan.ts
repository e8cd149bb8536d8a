/** Sides of a piece and what is asked of their edging in, how many stitches go along each and into each place out. */

import { isSymmetrical, spread, spreadAround } from '../fabric/spread.ts';
import { howItLies, type Lie } from './edge-lie.ts';
import type { EdgeSide } from './edge-sides.ts';

/** `a multiple of 4 plus 1`, for an edging that has a repeat of its own. */
export interface EdgeMultiple {
  readonly of: number;
  readonly plus: number;
}

export interface EdgeAsked {
  /** Along each side of row ends, or of a round; null for as many as lie flat. */
  readonly put: number | null;
  /** Along top and bottom; null for one in each place. */
  readonly across: number | null;
  /** Stitches in each corner; none where 0, and then the sides go from end to end. */
  readonly inCorner: number;
  readonly multiple: EdgeMultiple | null;
}

export interface EdgedSide {
  readonly of: EdgeSide;
  /** Places that the corners leave to the side. */
  readonly places: number;
  readonly stitches: number;
  readonly flat: number | null;
  readonly lies: Lie;
  /** How many go into each place. */
  readonly spread: readonly number[];
  readonly symmetrical: boolean;
}

export type EdgePlan =
  | { readonly kind: 'planned'; readonly sides: readonly EdgedSide[] }
  /** A number that is asked for, or all there are, against the multiple; with the nearest that are one. */
  | { readonly kind: 'no multiple'; readonly stitches: number; readonly nearest: readonly number[] }
  /** No stitch can go where the corners leave nothing. */
  | { readonly kind: 'too short'; readonly side: EdgeSide };

/** A chain that differs by more from the last row is no side across from it: a shawl's first chains. Our own choice. */
const ALIKE = 0.1;

export function planEdge(sides: readonly EdgeSide[], asked: EdgeAsked): EdgePlan {
  const planned: EdgedSide[] = [];
  // What lies across from each other gets the same: the bottom as many as the top, though a chain may have more or fewer.
  let across = asked.across;
  for (const side of sides) {
    const places = placesLeft(side, asked.inCorner);
    if (places < 1) return { kind: 'too short', side };
    const share = places / side.places;
    const flat = side.flat === null ? null : side.flat * share;
    const liesAcross = side.side === 'top' || side.side === 'bottom';
    const alike = across === null || asked.across !== null || Math.abs(across - places) <= ALIKE * places;
    const wanted = liesAcross ? (alike ? across : null) : asked.put;
    const stitches = wanted ?? nearestFitting(liesAcross ? places : (flat ?? places), places, asked.multiple);
    if (liesAcross) across = stitches;
    if (!fits(stitches, asked.multiple))
      return { kind: 'no multiple', stitches, nearest: fittingAround(stitches, asked.multiple) };
    const counts = side.side === 'around' ? spreadAround(stitches, places) : spread(stitches, places);
    planned.push({
      of: side,
      places,
      stitches,
      flat,
      lies: flat === null ? 'flat' : howItLies(stitches, flat, places),
      spread: counts,
      symmetrical: isSymmetrical(counts),
    });
  }
  return { kind: 'planned', sides: planned };
}

/** A corner takes the stitch at each end of the top and of the chain; on row ends, and beside a corner space, none. */
function placesLeft({ side, places }: EdgeSide, inCorner: number): number {
  return inCorner > 0 && (side === 'top' || side === 'bottom') ? places - 2 : places;
}

/**
 * The number nearest to what lies flat that is a multiple of the edging's, and of two about as near the one that can be
 * spread alike from both ends.
 */
export function nearestFitting(flat: number, places: number, multiple: EdgeMultiple | null): number {
  const can = (n: number): boolean => places % 2 === 1 || n % 2 === 0;
  const { of = 1 } = multiple ?? {};
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let n = Math.max(1, Math.floor(flat) - 2 * of); n <= Math.ceil(flat) + 2 * of; n += 1) {
    if (!fits(n, multiple)) continue;
    const off = Math.abs(n - flat) + (can(n) ? 0 : of);
    if (off >= least) continue;
    best = n;
    least = off;
  }
  return best;
}

function fits(n: number, multiple: EdgeMultiple | null): boolean {
  if (multiple === null) return true;
  return n >= multiple.plus && (n - multiple.plus) % multiple.of === 0;
}

function fittingAround(n: number, multiple: EdgeMultiple | null): number[] {
  if (multiple === null) return [n];
  const below = Math.floor((n - multiple.plus) / multiple.of) * multiple.of + multiple.plus;
  return [below, below + multiple.of].filter((one) => one > 0);
}
