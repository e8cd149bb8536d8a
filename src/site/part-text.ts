/** Worded parts and their charts -> parts as the layouts set them, each line with an address of its own. */

import type { WordedLine, WordedPart } from '../wording/words.ts';
import { fragment, uniqueFragments } from './addresses.ts';
import type { ChartFigure, PartText, WatchLine } from './page-data.ts';

export function partTexts(
  parts: readonly WordedPart[],
  chartOf: (part: string, id: string) => ChartFigure | null,
  watchOf: (part: string, line: WordedLine) => readonly WatchLine[] = () => [],
): PartText[] {
  const unique = uniqueFragments();
  return parts.map((part) => {
    const id = unique(`part-${fragment(part.name)}`);
    return {
      id,
      name: part.name,
      make: part.make,
      lines: part.lines.map((line) => ({
        id: unique(`${id}-${fragment(line.label ?? 'words')}`),
        label: line.label,
        text: line.text,
        count: line.count,
        watch: watchOf(part.name, line),
      })),
      chart: chartOf(part.name, unique(`${id}-chart`)),
    };
  });
}
