/** Paths, strokes and inks in, the operators of a PDF content stream out (ISO 32000). */

import { roundFactor, roundMm } from '../scene/rounding.ts';
import type { Ink, PathPart, Shape, Stroke, Transform } from '../scene/scene.ts';
import { colourOf } from './inks.ts';

/** What the operators of a drawing share; inside a symbol `ink` is left to whoever uses it. */
export interface Operators {
  readonly inSymbol: boolean;
}

/** Control points of the cubic that lies closest to a quarter circle: 4/3 (root 2 - 1). */
const QUARTER = 0.5523;

export function pathOperators(shape: Extract<Shape, { kind: 'path' | 'circle' }>, within: Operators): string {
  const strokes = shape.stroke !== null && shape.stroke.ink !== 'none';
  const fills = shape.fill !== 'none';
  if (!strokes && !fills) return '';
  const parts = shape.kind === 'path' ? shape.parts : circleParts(shape.x, shape.y, shape.r);
  const set = [
    fills ? inkOperator(shape.fill, 'rg', within) : '',
    strokes && shape.stroke !== null ? strokeOperators(shape.stroke, within) : '',
  ];
  return ['q', ...set, ...parts.map(partOperator), strokes ? (fills ? 'B' : 'S') : 'f', 'Q']
    .filter(Boolean)
    .join('\n');
}

export function matrixOperator([a, b, c, d, e, f]: Transform): string {
  const numbers = [roundFactor(a), roundFactor(b), roundFactor(c), roundFactor(d), roundMm(e), roundMm(f)];
  return `${numbers.join(' ')} cm`;
}

/** `rg` for fills, `RG` for strokes. */
export function inkOperator(ink: Ink, operator: 'rg' | 'RG', { inSymbol }: Operators): string {
  if ((inSymbol && ink === 'ink') || ink === 'none') return '';
  let numbers = COLOURS.get(ink);
  if (numbers === undefined) {
    numbers = colourNumbers(colourOf(ink));
    COLOURS.set(ink, numbers);
  }
  return `${numbers} ${operator}`;
}

/** A booklet has a handful, and names them thousands of times. */
const COLOURS = new Map<Ink, string>();

function colourNumbers(hex: string): string {
  return [1, 3, 5]
    .map((at) => Math.round((Number.parseInt(hex.slice(at, at + 2), 16) / 255) * 1000) / 1000)
    .join(' ');
}

function strokeOperators(stroke: Stroke, within: Operators): string {
  const dash = stroke.dashMm ? `[${stroke.dashMm.map(roundMm).join(' ')}] 0 d` : '';
  return [inkOperator(stroke.ink, 'RG', within), `${roundMm(stroke.widthMm)} w 1 J 1 j`, dash]
    .filter(Boolean)
    .join('\n');
}

function partOperator(part: PathPart): string {
  switch (part[0]) {
    case 'M':
      return `${roundMm(part[1])} ${roundMm(part[2])} m`;
    case 'L':
      return `${roundMm(part[1])} ${roundMm(part[2])} l`;
    case 'C':
      return `${part
        .slice(1)
        .map((number) => roundMm(Number(number)))
        .join(' ')} c`;
    case 'Z':
      return 'h';
  }
}

function circleParts(x: number, y: number, r: number): PathPart[] {
  const k = r * QUARTER;
  return [
    ['M', x + r, y],
    ['C', x + r, y + k, x + k, y + r, x, y + r],
    ['C', x - k, y + r, x - r, y + k, x - r, y],
    ['C', x - r, y - k, x - k, y - r, x, y - r],
    ['C', x + k, y - r, x + r, y - k, x + r, y],
    ['Z'],
  ];
}
