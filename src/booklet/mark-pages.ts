/** Finished pages and a word or two in, the same pages with that across their heads out: what is printed too early says so. */

import type { Scene, Shape } from '../scene/scene.ts';

const SIZE_MM = 4.2;
/** From the top edge to the baseline: above the running head, inside what printers reach. */
const BASELINE_MM = 10;

export function markPages(pages: readonly Scene[], words: string): Scene[] {
  return pages.map((page): Scene => {
    const mark: Shape = {
      kind: 'text',
      x: page.widthMm / 2,
      y: BASELINE_MM,
      text: words,
      sizeMm: SIZE_MM,
      face: 'text-bold',
      align: 'middle',
      ink: 'second',
    };
    return { ...page, alternative: `${words} ${page.alternative}`, shapes: [...page.shapes, mark] };
  });
}
