/** Two ends, a length to lie between them and the way it bows in; points along the arch out. */

import type { Point } from './layout.ts';

export interface Arch {
  readonly fromX: number;
  readonly fromY: number;
  readonly toX: number;
  readonly toY: number;
  /** The way it bows, of length 1. */
  readonly upX: number;
  readonly upY: number;
  /** Length of what lies along it; a longer one bows further. */
  readonly length: number;
  readonly leastBow: number;
}

export interface ArchPoint {
  readonly x: number;
  readonly y: number;
  readonly upX: number;
  readonly upY: number;
}

/** Beyond this half angle an arch would close on itself. */
const WIDEST_HALF_ANGLE = 2.2;

/** The point at `t` from 0 to 1 along the arch. */
export function archPoints(arch: Arch): (t: number) => ArchPoint {
  const dx = arch.toX - arch.fromX;
  const dy = arch.toY - arch.fromY;
  const chord = Math.hypot(dx, dy) || 1e-6;
  const alongX = dx / chord;
  const alongY = dy / chord;
  // Square to the chord, on the side it bows to.
  const turn = -alongY * arch.upX + alongX * arch.upY >= 0 ? 1 : -1;
  const outX = -alongY * turn;
  const outY = alongX * turn;
  const bow = Math.max(arch.leastBow, bowOf(chord, arch.length));
  if (bow < 1e-3) {
    return (t) => ({ x: arch.fromX + dx * t, y: arch.fromY + dy * t, upX: outX, upY: outY });
  }
  const radius = (chord * chord) / 4 / (2 * bow) + bow / 2;
  const half = Math.atan2(chord / 2, radius - bow);
  const middleX = (arch.fromX + arch.toX) / 2 + outX * (bow - radius);
  const middleY = (arch.fromY + arch.toY) / 2 + outY * (bow - radius);
  return (t) => {
    const angle = (2 * t - 1) * half;
    const upX = outX * Math.cos(angle) + alongX * Math.sin(angle);
    const upY = outY * Math.cos(angle) + alongY * Math.sin(angle);
    return { x: middleX + upX * radius, y: middleY + upY * radius, upX, upY };
  };
}

/** An arch passes over a stitch this far from its top. */
const CLEAR_U = 0.4;
/** It is tried with so much more bow each time, as a share of its chord, and at most so often. */
const MORE_BOW = 0.03;
const TRIES = 8;

/** The arch with as much more bow as it takes to pass clear over the tops of what it leads over. */
export function archOver(arch: Arch, tops: readonly Point[]): (t: number) => ArchPoint {
  const dx = arch.toX - arch.fromX;
  const dy = arch.toY - arch.fromY;
  const chord = Math.hypot(dx, dy) || 1e-6;
  const turn = dx * arch.upY - dy * arch.upX >= 0 ? 1 : -1;
  // What lies well under the line between its ends is never in its way.
  const high = tops.filter(({ x, y }) => {
    const out = ((x - arch.fromX) * -dy + (y - arch.fromY) * dx) * turn;
    return out > -CLEAR_U * chord;
  });
  let at = archPoints(arch);
  const first = Math.max(arch.leastBow, bowOf(chord, arch.length));
  for (let k = 1; k <= TRIES && high.length > 0 && !isClear(at, arch, high); k += 1)
    at = archPoints({ ...arch, leastBow: first + chord * MORE_BOW * k });
  return at;
}

function isClear(at: (t: number) => ArchPoint, { length }: Arch, tops: readonly Point[]): boolean {
  const steps = Math.max(8, Math.round(length * 4));
  return tops.every((top) => {
    for (let k = 0; k <= steps; k += 1) {
      const { x, y } = at(k / steps);
      if (Math.hypot(x - top.x, y - top.y) < CLEAR_U) return false;
    }
    return true;
  });
}

/** Rise of an arc of a length over a chord: half the angle a solves length / chord = a / sin a. */
function bowOf(chord: number, length: number): number {
  if (length <= chord) return 0;
  const ratio = length / chord;
  let low = 0;
  let high = WIDEST_HALF_ANGLE;
  for (let k = 0; k < 24; k += 1) {
    const a = (low + high) / 2;
    if (a / Math.sin(a) < ratio) low = a;
    else high = a;
  }
  return (chord / 2) * Math.tan(low / 2);
}
