/** Sizes go from the smallest to the largest: none may be smaller one way than the one before and larger no way. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { printCm } from '../units.ts';
import { type Publication, placeOf, type WorkedSize } from './publication.ts';

/** Below this two measures are the same: less than is printed. */
const SAME_MM = 2.5;

export function fallingSizes({ pattern, sizes }: Publication): Diagnostic[] {
  return sizes.slice(1).flatMap((later, i) => {
    const earlier = sizes[i];
    if (earlier === undefined) return [];
    const width = sideOf('width', earlier, later, pattern);
    const height = sideOf('height', earlier, later, pattern);
    const falls = [width, height].find((side) => side !== null && side.is < side.was - SAME_MM);
    const rises = [width, height].some((side) => side !== null && side.is > side.was + SAME_MM);
    if (falls == null || rises) return [];
    const where = {
      file: pattern.source.file,
      span: placeOf(pattern, `sizes.${later.index}`, 'sizes', 'parts.0'),
    };
    const facts = {
      size: pattern.sizes[later.index]?.name ?? '',
      before: pattern.sizes[earlier.index]?.name ?? '',
      side: falls.side,
      is: printCm(falls.is),
      was: printCm(falls.was),
    };
    return [diagnose('size/falling', where, facts)];
  });
}

interface Side {
  readonly side: 'width' | 'height';
  readonly is: number;
  readonly was: number;
}

/** As stated where both sizes state it, else as measured. */
function sideOf(
  side: 'width' | 'height',
  earlier: WorkedSize,
  later: WorkedSize,
  { sizes }: Publication['pattern'],
): Side | null {
  const key = side === 'width' ? 'widthMm' : 'heightMm';
  const stated = [sizes[earlier.index]?.[key] ?? null, sizes[later.index]?.[key] ?? null];
  const [was, is] = stated.includes(null) ? [earlier.measures[key], later.measures[key]] : stated;
  return was == null || is == null ? null : { side, is, was };
}
