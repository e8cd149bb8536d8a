/** A text in, an index of where its lines begin out, so that many offsets can be turned into line and column quickly. */

import type { LineColumn } from './span.ts';

export interface LineMap {
  readonly text: string;
  /** Offset where each line begins; the first is 0. */
  readonly starts: readonly number[];
}

export function lineMap(text: string): LineMap {
  const starts = [0];
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return { text, starts };
}

/** Where an offset lies, counted from line 1, column 1; the same answer as `lineColumn`. */
export function placeOf(map: LineMap, offset: number): LineColumn {
  const inside = Math.max(0, Math.min(offset, map.text.length));
  let low = 0;
  let high = map.starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((map.starts[middle] ?? 0) <= inside) low = middle;
    else high = middle - 1;
  }
  return { line: low + 1, column: inside - (map.starts[low] ?? 0) + 1 };
}

/** A line without what ends it. */
export function lineText(map: LineMap, line: number): string {
  const start = map.starts[line - 1];
  if (start === undefined) return '';
  const next = map.starts[line];
  const whole = map.text.slice(start, next === undefined ? undefined : next - 1);
  return whole.endsWith('\r') ? whole.slice(0, -1) : whole;
}
