/** What a size measures in, its finished size in words out. */

import { printCm, printIn } from '../units.ts';

export interface FinishedSize {
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  /** Once round a hat, a tube or a basket; null for what lies flat. */
  readonly aroundMm: number | null;
}

/** `15 × 20 cm (6 × 8 in)`, `18 cm (7 in) across, 56.5 cm (22¼ in) around, 20 cm (8 in) high`; null where nothing is known. */
export function printFinishedSize(
  { widthMm, heightMm, aroundMm }: FinishedSize,
  first: 'metric' | 'imperial' = 'metric',
): string | null {
  const inBoth = (mm: number): string => inUnits(mm, first);
  if (aroundMm !== null)
    return [
      ...(widthMm === null ? [] : [`${inBoth(widthMm)} across`]),
      `${inBoth(aroundMm)} around`,
      ...(heightMm === null ? [] : [`${inBoth(heightMm)} high`]),
    ].join(', ');
  if (widthMm !== null && heightMm !== null) {
    const inUnit = (print: (mm: number) => string): string =>
      `${print(widthMm).replace(/ (?:cm|in)$/, '')} × ${print(heightMm)}`;
    return first === 'metric'
      ? `${inUnit(printCm)} (${inUnit(printIn)})`
      : `${inUnit(printIn)} (${inUnit(printCm)})`;
  }
  if (widthMm !== null) return `${inBoth(widthMm)} wide`;
  return heightMm === null ? null : `${inBoth(heightMm)} high`;
}

/** `15 cm (6 in)`, or `6 in (15 cm)`. */
export function inUnits(mm: number, first: 'metric' | 'imperial' = 'metric'): string {
  return first === 'metric' ? `${printCm(mm)} (${printIn(mm)})` : `${printIn(mm)} (${printCm(mm)})`;
}
