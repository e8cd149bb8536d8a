/** What is out of an along -> a picture of the blanket, as SVG, each place with the picture of its square. */

import { arrange } from '../along/arrange.ts';
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
  const drawn = tiles.map(({ id, x, y, covers: wide }) => {
    const href = covers.get(id) ?? '';
    const [w, h] = [wide * PLACE, PLACE];
    const [edgeX, edgeY] = [w * PAPER, h * PAPER];
    return `<svg x="${x * PLACE}" y="${y * PLACE}" width="${w}" height="${h}"><image href="${href}" x="${-edgeX}" y="${-edgeY}" width="${w + 2 * edgeX}" height="${h + 2 * edgeY}" preserveAspectRatio="xMidYMid slice"/></svg>`;
  });
  const empty = `<rect width="${across * PLACE}" height="${down * PLACE}" fill="none" stroke="currentColor" stroke-width="2"/>`;
  return `<svg class="blanket" viewBox="0 0 ${across * PLACE} ${down * PLACE}" role="img" aria-label="The blanket, ${across} squares across and ${down} down">${empty}${drawn.join('')}</svg>`;
}
