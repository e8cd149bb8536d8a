/** Worded parts and their charts -> parts as the layouts set them, each line with an address of its own. */

import type { WatchOf } from '../film/watch-links.ts';
import { markerFor } from '../wording/mark-words.ts';
import type { WordedPattern } from '../wording/words.ts';
import { fragment, uniqueFragments } from './addresses.ts';
import type { ChartFigure, PartText, PictureSet } from './page-data.ts';
import { rowLine } from './row-line.ts';

/** What stands beside the words. */
interface Beside {
  readonly watchOf?: WatchOf;
  readonly photographsOf?: (part: string) => readonly PictureSet[];
}

export function partTexts(
  words: WordedPattern,
  chartOf: (part: string, id: string) => ChartFigure | null,
  { watchOf = () => [], photographsOf = () => [] }: Beside = {},
): PartText[] {
  const unique = uniqueFragments();
  const marker = markerFor(words);
  return words.parts.map((part) => {
    const id = unique(`part-${fragment(part.name)}`);
    return {
      id,
      name: part.name,
      make: part.make,
      lines: part.lines.map((line) => ({
        ...rowLine(line, unique(`${id}-${fragment(line.label ?? 'words')}`), marker),
        watch: watchOf(part.name, line.rows),
      })),
      photographs: photographsOf(part.name),
      chart: chartOf(part.name, unique(`${id}-chart`)),
    };
  });
}
