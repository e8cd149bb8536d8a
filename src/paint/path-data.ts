/** The parts of a path in, the `d` of an SVG path out. */

import { roundMm } from '../scene/rounding.ts';
import type { PathPart } from '../scene/scene.ts';

export function pathData(parts: readonly PathPart[]): string {
  return parts.map(partData).join('');
}

function partData(part: PathPart): string {
  if (part[0] === 'Z') return 'Z';
  const [letter, ...numbers] = part;
  return letter + numbers.map((number) => String(roundMm(number))).join(' ');
}
