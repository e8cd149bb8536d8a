/** What is out of an along -> a picture of the blanket for paper, square by square as the plan lays them. Decoration only. */

import { coverPicture } from '../chart/cover-picture.ts';
import { ownName } from '../pattern/own-name.ts';
import type { Scene, Shape } from '../scene/scene.ts';
import { arrange, type Tile } from './arrange.ts';
import { drawnMiddle, drawnSize, HEXAGON, PICTURE_OF_HEXAGON, TURN } from './drawn-places.ts';
import type { BlanketFigures } from './figures.ts';
import { LIES, type Lie } from './lies.ts';
import { defaultMake } from './plan-blanket.ts';
import { type ReleasedAlong, weeksOut } from './release.ts';

/** Side of a square in the picture. */
const PLACE_MM = 20;

/** Null when nothing is out. */
export function blanketScene(released: ReleasedAlong, figures: BlanketFigures): Scene | null {
  const { lie, across, down } = figures;
  const pictures = new Map(
    weeksOut(released).flatMap(({ squares }) =>
      squares.flatMap(({ compiled, pattern, size }) => {
        const scene = coverPicture(pattern, size.fabric);
        return scene === null ? [] : [[ownName(compiled.slug), scene] as const];
      }),
    ),
  );
  const { tiles } = arrange(figures, { across, down, make: defaultMake(figures), apart: true });
  const drawnAs = LIES[lie].offset ? hexagonPlace : squarePlace;
  const shapes = tiles.flatMap((tile): Shape[] => {
    const picture = pictures.get(tile.id);
    return picture === undefined ? [] : [drawnAs(lie, tile, picture)];
  });
  if (shapes.length === 0) return null;
  const [wide, high] = drawnSize(lie, across, down);
  return {
    widthMm: wide * PLACE_MM,
    heightMm: high * PLACE_MM,
    title: 'The blanket',
    alternative: 'The blanket with the first choice of every week, as decoration.',
    symbols: Object.fromEntries(
      [...pictures].map(([id, scene]) => [
        `square-${id}`,
        LIES[lie].offset ? onHexagon(scene) : scene.shapes,
      ]),
    ),
    shapes,
  };
}

function squarePlace(_: Lie, { id, x, y, covers }: Tile, picture: Scene): Shape {
  const [wide, high] = [(PLACE_MM * covers) / picture.widthMm, PLACE_MM / picture.heightMm];
  return {
    kind: 'use',
    symbol: `square-${id}`,
    transform: [wide, 0, 0, high, x * PLACE_MM, y * PLACE_MM],
    ink: 'ink',
  };
}

/** Turned to stand on a corner, its middle in the middle of its place. */
function hexagonPlace(lie: Lie, tile: Tile, { widthMm }: Scene): Shape {
  const scale = (PICTURE_OF_HEXAGON * PLACE_MM) / widthMm;
  const [x, y] = drawnMiddle(lie, tile);
  const [cos, sin] = [Math.cos((TURN * Math.PI) / 180) * scale, Math.sin((TURN * Math.PI) / 180) * scale];
  const half = widthMm / 2;
  return {
    kind: 'use',
    symbol: `square-${tile.id}`,
    transform: [
      cos,
      sin,
      -sin,
      cos,
      x * PLACE_MM - half * cos + half * sin,
      y * PLACE_MM - half * sin - half * cos,
    ],
    ink: 'ink',
  };
}

/** The paper of a picture is a square, which would lie over the neighbours: a hexagon of it is put in its place. */
function onHexagon({ widthMm, shapes }: Scene): readonly Shape[] {
  const [paper, ...stitches] = shapes;
  if (paper?.kind !== 'path') return shapes;
  const reach = widthMm / PICTURE_OF_HEXAGON;
  // A sixth of a turn is the same again, so turning by a twelfth stands it on a side, as the picture lies.
  const corners = HEXAGON.map(([x, y]) => [widthMm / 2 + y * reach, widthMm / 2 + x * reach] as const);
  return [
    {
      ...paper,
      parts: [...corners.map(([x, y], i) => [i === 0 ? 'M' : 'L', x, y] as const), ['Z']],
    },
    ...stitches,
  ];
}
