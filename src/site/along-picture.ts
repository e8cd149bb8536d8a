/** What is out of an along -> a picture of the blanket, as SVG, each place with the picture of its square. */

import { arrange, type Tile } from '../along/arrange.ts';
import { drawnMiddle, drawnSize, hexagonPoints, PICTURE_OF_HEXAGON, TURN } from '../along/drawn-places.ts';
import type { BlanketFigures } from '../along/figures.ts';
import { LIES, type Lying, rowPlaces } from '../along/lies.ts';
import { defaultMake } from '../along/plan-blanket.ts';
import { weeksOut } from '../along/release.ts';
import { ownName } from '../pattern/own-name.ts';
import type { PagePlace } from './addresses.ts';
import type { AlongSite } from './along-site.ts';
import { coverLink } from './cover-picture.ts';
import type { Markup } from './page-data.ts';

/** Units of a place; a square's own picture has paper round it, which is left out. */
const PLACE = 100;
const PAPER = 0.075;

export function blanketPicture({ released, figures }: AlongSite, place: PagePlace): Markup {
  const { across, down } = figures;
  const covers = new Map(
    weeksOut(released).flatMap(({ squares }) =>
      squares.map(({ compiled, pattern, size }) => [
        ownName(compiled.slug),
        coverLink(compiled, pattern, size, place),
      ]),
    ),
  );
  const { tiles } = arrange(figures, { across, down, make: defaultMake(figures), apart: true });
  return LIES[figures.lie].offset ? hexagons(figures, tiles, covers) : squares(figures, tiles, covers);
}

type Covers = ReadonlyMap<string, string | null>;

function squares({ across, down }: BlanketFigures, tiles: readonly Tile[], covers: Covers): Markup {
  const drawn = tiles.map(({ id, x, y, covers: wide }) => {
    const href = covers.get(id) ?? '';
    const [w, h] = [wide * PLACE, PLACE];
    const [edgeX, edgeY] = [w * PAPER, h * PAPER];
    return `<svg x="${x * PLACE}" y="${y * PLACE}" width="${w}" height="${h}"><image href="${href}" x="${-edgeX}" y="${-edgeY}" width="${w + 2 * edgeX}" height="${h + 2 * edgeY}" preserveAspectRatio="xMidYMid slice"/></svg>`;
  });
  const empty = `<rect width="${across * PLACE}" height="${down * PLACE}" fill="none" stroke="currentColor" stroke-width="2"/>`;
  return `<svg class="blanket" viewBox="0 0 ${across * PLACE} ${down * PLACE}" role="img" aria-label="The blanket, ${across} squares across and ${down} down">${empty}${drawn.join('')}</svg>`;
}

/** Every place has its outline; those whose hexagon is out, its picture, turned to stand on a corner. */
function hexagons({ lie, across, down }: BlanketFigures, tiles: readonly Tile[], covers: Covers): Markup {
  const [wide, high] = drawnSize(lie, across, down).map((n) => Math.round(n * PLACE));
  const at = (tile: Lying): string =>
    drawnMiddle(lie, tile)
      .map((n) => Math.round(n * PLACE * 100) / 100)
      .join(' ');
  const side = Math.round(PICTURE_OF_HEXAGON * PLACE * 10) / 10;
  const drawn = tiles.map(
    (tile) =>
      `<g transform="translate(${at(tile)})" clip-path="url(#hexagon-place)"><image href="${covers.get(tile.id) ?? ''}" x="${-side / 2}" y="${-side / 2}" width="${side}" height="${side}" transform="rotate(${TURN})"/></g>`,
  );
  const empty = Array.from({ length: down }, (_, y) =>
    Array.from(
      { length: rowPlaces(lie, across, y) },
      (_, x) => `<use href="#hexagon-outline" transform="translate(${at({ x, y, covers: 1 })})"/>`,
    ),
  ).flat();
  const defs = `<defs><clipPath id="hexagon-place"><polygon points="${hexagonPoints(PLACE)}"/></clipPath><polygon id="hexagon-outline" points="${hexagonPoints(PLACE - 2)}" fill="none" stroke="currentColor" stroke-width="2"/></defs>`;
  return `<svg class="blanket" viewBox="0 0 ${wide} ${high}" role="img" aria-label="The blanket, ${across} hexagons across in ${down} rows">${defs}${empty.join('')}${drawn.join('')}</svg>`;
}
