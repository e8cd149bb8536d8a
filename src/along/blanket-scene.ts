/** What is out of an along -> a picture of the blanket for paper, square by square as the plan lays them. Decoration only. */

import { coverPicture } from '../chart/cover-picture.ts';
import { ownName } from '../pattern/own-name.ts';
import type { Scene, Shape } from '../scene/scene.ts';
import { arrange } from './arrange.ts';
import type { BlanketFigures } from './figures.ts';
import { defaultMake } from './plan-blanket.ts';
import { type ReleasedAlong, weeksOut } from './release.ts';

/** Side of a square in the picture. */
const PLACE_MM = 20;

/** Null when nothing is out. */
export function blanketScene(released: ReleasedAlong, figures: BlanketFigures): Scene | null {
  const { across, down } = figures;
  const pictures = new Map(
    weeksOut(released).flatMap(({ squares }) =>
      squares.flatMap(({ compiled, pattern, size }) => {
        const scene = coverPicture(pattern, size.fabric);
        return scene === null ? [] : [[ownName(compiled.slug), scene] as const];
      }),
    ),
  );
  const { tiles } = arrange(figures, { across, down, make: defaultMake(figures), apart: true });
  const shapes = tiles.flatMap(({ id, x, y, covers }): Shape[] => {
    const picture = pictures.get(id);
    if (picture === undefined) return [];
    const [wide, high] = [(PLACE_MM * covers) / picture.widthMm, PLACE_MM / picture.heightMm];
    return [
      {
        kind: 'use',
        symbol: `square-${id}`,
        transform: [wide, 0, 0, high, x * PLACE_MM, y * PLACE_MM],
        ink: 'ink',
      },
    ];
  });
  if (shapes.length === 0) return null;
  return {
    widthMm: across * PLACE_MM,
    heightMm: down * PLACE_MM,
    title: 'The blanket',
    alternative: 'The blanket with the first choice of every week, as decoration.',
    symbols: Object.fromEntries([...pictures].map(([id, scene]) => [`square-${id}`, scene.shapes])),
    shapes,
  };
}
