/** Drawings asked for by name in, uses of symbols out; each drawing is kept once, in mm, for the scene. */

import type { Ink, Shape, Transform } from '../scene/scene.ts';
import { enlarged } from '../scene/transforms.ts';
import { SYMBOL_SETS, type SymbolSet, type SymbolSetName } from '../symbols/symbols.ts';
import { U_MM } from './metrics.ts';

/** Lengths are drawn to a tenth of a unit and stretched the rest of the way, so that few drawings serve a whole chart. */
const LENGTH_STEP_U = 0.1;

export interface Between {
  readonly footX: number;
  readonly footY: number;
  readonly headX: number;
  readonly headY: number;
}

export class SymbolBook {
  /** Whose forms it draws. */
  readonly set: SymbolSet;

  constructor(name: SymbolSetName = 'CYC') {
    this.set = SYMBOL_SETS[name];
  }

  private readonly symbols: Record<string, readonly Shape[]> = {};

  all(): Readonly<Record<string, readonly Shape[]>> {
    return this.symbols;
  }

  /** A drawing of a set size, foot at a point, its up turned to (upX, upY); stitch units, y up. */
  use(name: string, make: () => readonly Shape[], at: UseAt): Extract<Shape, { kind: 'use' }> {
    this.symbols[name] ??= enlarged(make(), U_MM);
    const stretch = at.stretch ?? 1;
    // On paper y runs down.
    const ux = at.upX;
    const uy = -at.upY;
    const transform: Transform = [-uy, ux, -ux * stretch, -uy * stretch, at.x * U_MM, -at.y * U_MM];
    return { kind: 'use', symbol: name, transform, ink: at.ink, ...(at.data ? { data: at.data } : {}) };
  }

  /** A drawing that reaches from foot to head, whatever their distance. */
  stretched(
    name: string,
    make: (lengthU: number) => readonly Shape[],
    { footX, footY, headX, headY }: Between,
    ink: Ink,
    data?: Readonly<Record<string, string>>,
  ): Extract<Shape, { kind: 'use' }> {
    const length = Math.hypot(headX - footX, headY - footY);
    const steps = Math.max(1, Math.round(length / LENGTH_STEP_U));
    const drawnAt = steps * LENGTH_STEP_U;
    const at = {
      x: footX,
      y: footY,
      upX: length > 0 ? (headX - footX) / length : 0,
      upY: length > 0 ? (headY - footY) / length : 1,
      stretch: length > 0 ? length / drawnAt : 1,
      ink,
      ...(data ? { data } : {}),
    };
    return this.use(`${name}-${steps}`, () => make(drawnAt), at);
  }
}

export interface UseAt {
  readonly x: number;
  readonly y: number;
  readonly upX: number;
  readonly upY: number;
  readonly stretch?: number;
  readonly ink: Ink;
  readonly data?: Readonly<Record<string, string>>;
}
