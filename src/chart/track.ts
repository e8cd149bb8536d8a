/**
 * The line a row runs along: straight for rows, round a centre or a piece for rounds. A place on it is a length `s`
 * along the line at a level, and an offset outwards; in, a point of the plane; out, its place, and back. All in
 * stitch units, y up, s growing to the left or anticlockwise.
 */

export interface TrackPoint {
  readonly x: number;
  readonly y: number;
  /** Outwards. */
  readonly upX: number;
  readonly upY: number;
}

export interface TrackPlace {
  readonly s: number;
  readonly offset: number;
}

export interface Track {
  /** Length once round at a level; infinite for rows. */
  readonly around: (level: number) => number;
  /** The point at `offset` of the place that is `s` along at `level`. */
  readonly point: (s: number, level: number, offset: number) => TrackPoint;
  /** Where a point lies, with s measured at `level`; `side` holds it to one side of a piece with sides. */
  readonly locate: (x: number, y: number, level: number, side?: number) => TrackPlace;
  /** Round one point. */
  readonly circle: boolean;
  /** Sides of a piece with true corners: 0 for others. Side k ends at corner k. */
  readonly corners: number;
  /** Where corner `k` is along the line. */
  readonly cornerAt: (k: number, level: number) => number;
  /** -1 where it is turned over for left-handed makers: then s grows to the right, or clockwise. */
  readonly handed: 1 | -1;
  /** Whether a place lies on one of the bends between straight sides. */
  readonly inBend: (s: number, level: number) => boolean;
}

export const NEVER_BENT = (): boolean => false;

/** Rows lying flat, right to left. */
export const ROW_TRACK: Track = {
  around: () => Number.POSITIVE_INFINITY,
  point: (s, _level, offset) => ({ x: -s, y: offset, upX: 0, upY: 1 }),
  locate: (x, y) => ({ s: -x, offset: y }),
  circle: false,
  corners: 0,
  cornerAt: () => 0,
  inBend: NEVER_BENT,
  handed: 1,
};

/** Round a regular polygon with `corners` true corners about the origin; `first` is the way the first side faces. */
export function polygonTrack(corners: number, first: number): Track {
  const turn = (2 * Math.PI) / corners;
  const half = (level: number): number => level * Math.tan(Math.PI / corners);
  const facing = (side: number): { upX: number; upY: number } => ({
    upX: Math.cos(first + side * turn),
    upY: Math.sin(first + side * turn),
  });
  return {
    circle: false,
    corners,
    around: (level) => 2 * corners * half(level),
    cornerAt: (k, level) => (k + 1) * 2 * half(level),
    inBend: NEVER_BENT,
    handed: 1,
    point: (s, level, offset) => {
      const side = Math.floor(s / (2 * half(level)));
      const along = s - (2 * side + 1) * half(level);
      const { upX, upY } = facing(side);
      return { x: upX * offset - upY * along, y: upY * offset + upX * along, upX, upY };
    },
    locate: (x, y, level, side) => {
      const on = side ?? mod(Math.floor((Math.atan2(y, x) - first) / turn + 0.5), corners);
      const { upX, upY } = facing(on);
      const along = Math.max(-half(level), Math.min(half(level), -upY * x + upX * y));
      return { s: (2 * on + 1) * half(level) + along, offset: upX * x + upY * y };
    },
  };
}

/** Nearer than this to where a bend meets a side, a place belongs to the side. */
const AT_END_U = 0.05;

interface Side {
  readonly kind: 'side';
  readonly x: number;
  readonly y: number;
  readonly alongX: number;
  readonly alongY: number;
  readonly length: number;
}

interface Bend {
  readonly kind: 'bend';
  readonly x: number;
  readonly y: number;
  readonly from: number;
  readonly sweep: number;
}

/**
 * Round a convex piece at an even distance, corners rounded: one point for a circle, two for an oval, four for a
 * rectangle, anticlockwise. `from` is the angle where a circle starts.
 */
export function roundTrack(points: readonly (readonly [number, number])[], from = 0): Track {
  const pieces = points.length === 1 ? circlePieces(points[0] ?? [0, 0], from) : sidesAndBends(points);
  const lengthOf = (piece: Side | Bend, level: number): number =>
    piece.kind === 'side' ? piece.length : piece.sweep * Math.max(0, level);
  const startOf = (index: number, level: number): number => {
    let s = 0;
    for (let k = 0; k < index; k += 1) s += lengthOf(pieces[k] ?? NO_SIDE, level);
    return s;
  };
  const around = (level: number): number => startOf(pieces.length, level);
  const pieceOn = (s: number, level: number): { piece: Side | Bend; along: number } => {
    let along = mod(s, around(level));
    let piece = pieces[0] ?? NO_SIDE;
    for (const next of pieces) {
      piece = next;
      if (along <= lengthOf(next, level)) break;
      along -= lengthOf(next, level);
    }
    return { piece, along };
  };
  return {
    circle: points.length === 1,
    corners: 0,
    around,
    // Corner k is the bend that ends side k.
    cornerAt: (k, level) => startOf(2 * k + 1, level) + lengthOf(pieces[2 * k + 1] ?? NO_SIDE, level) / 2,
    handed: 1,
    inBend: (s, level) => {
      const { piece, along } = pieceOn(s, level);
      return piece.kind === 'bend' && along > AT_END_U && along < lengthOf(piece, level) - AT_END_U;
    },
    point: (s, level, offset) => {
      const { piece, along } = pieceOn(s, level);
      return pieceAt(piece, along, level, offset);
    },
    locate: (x, y, level, side) => {
      if (side !== undefined)
        return {
          s: startOf(2 * side, level) + alongSide(pieces[2 * side], x, y),
          offset: outOf(pieces[2 * side], x, y),
        };
      let best: TrackPlace | null = null;
      for (const [index, piece] of pieces.entries()) {
        if (piece.kind === 'bend') {
          const turned = mod(Math.atan2(y - piece.y, x - piece.x) - piece.from, 2 * Math.PI);
          if (turned > piece.sweep) continue;
          return {
            s: startOf(index, level) + turned * Math.max(0, level),
            offset: Math.hypot(x - piece.x, y - piece.y),
          };
        }
        const offset = outOf(piece, x, y);
        if (best === null || offset > best.offset)
          best = { s: startOf(index, level) + alongSide(piece, x, y), offset };
      }
      return best ?? { s: 0, offset: 0 };
    },
  };
}

const NO_SIDE: Side = { kind: 'side', x: 0, y: 0, alongX: -1, alongY: 0, length: 0 };

function circlePieces([x, y]: readonly [number, number], from: number): Bend[] {
  return [{ kind: 'bend', x, y, from, sweep: 2 * Math.PI }];
}

function sidesAndBends(points: readonly (readonly [number, number])[]): (Side | Bend)[] {
  const sides: Side[] = points.map(([x, y], k) => {
    const [toX, toY] = points[(k + 1) % points.length] ?? [x, y];
    const length = Math.hypot(toX - x, toY - y) || 1e-9;
    return { kind: 'side', x, y, alongX: (toX - x) / length, alongY: (toY - y) / length, length };
  });
  return sides.flatMap((side, k) => {
    const next = sides[(k + 1) % sides.length] ?? side;
    const from = Math.atan2(-side.alongX, side.alongY);
    const to = Math.atan2(-next.alongX, next.alongY);
    return [side, { kind: 'bend' as const, x: next.x, y: next.y, from, sweep: mod(to - from, 2 * Math.PI) }];
  });
}

function pieceAt(piece: Side | Bend, along: number, level: number, offset: number): TrackPoint {
  if (piece.kind === 'side') {
    const upX = piece.alongY;
    const upY = -piece.alongX;
    return {
      x: piece.x + piece.alongX * along + upX * offset,
      y: piece.y + piece.alongY * along + upY * offset,
      upX,
      upY,
    };
  }
  const angle = piece.from + (level > 0 ? along / level : 0);
  const upX = Math.cos(angle);
  const upY = Math.sin(angle);
  return { x: piece.x + upX * offset, y: piece.y + upY * offset, upX, upY };
}

function alongSide(piece: Side | Bend | undefined, x: number, y: number): number {
  if (piece?.kind !== 'side') return 0;
  return Math.max(0, Math.min(piece.length, (x - piece.x) * piece.alongX + (y - piece.y) * piece.alongY));
}

function outOf(piece: Side | Bend | undefined, x: number, y: number): number {
  if (piece?.kind !== 'side') return 0;
  return (x - piece.x) * piece.alongY - (y - piece.y) * piece.alongX;
}

export function mod(value: number, by: number): number {
  return ((value % by) + by) % by;
}

/** Rounds about a centre have their numbers among their stitches; those of an edging or an oval stand outside. */
export function numberedWithin({ circle, corners }: Track): boolean {
  return circle || corners > 0;
}

/** A line with two ends, for rows and for rounds that are laid out. */
export function runsStraight(track: Track): boolean {
  return track.around(0) === Number.POSITIVE_INFINITY;
}
