/** Where the squares lie and in what colours -> the blanket drawn, each square something that can be picked up with keys or pointer. */

import { shaded } from '../../chart/row-pens.ts';
import type { Tile } from '../arrange.ts';
import { drawnMiddle, drawnSize, hexagonPoints, PICTURE_OF_HEXAGON, TURN } from '../drawn-places.ts';
import type { BlanketFigures } from '../figures.ts';
import { LIES } from '../lies.ts';

const SVG = 'http://www.w3.org/2000/svg';
/** Units of a place. */
const PLACE = 100;
/** A picture is 80 wide and has paper round it, which is left out. */
const PICTURE = 80;
const PAPER = 6;

export interface Drawn {
  readonly across: number;
  readonly down: number;
  readonly tiles: readonly Tile[];
  readonly colours: Readonly<Record<string, string>>;
  readonly picked: number | null;
  /** Which square takes the keys. */
  readonly current: number;
}

export function drawBlanket(
  svg: SVGSVGElement,
  figures: BlanketFigures,
  pictures: Readonly<Record<string, string>>,
  drawn: Drawn,
): void {
  const { across, down, tiles, picked, current } = drawn;
  const { lie } = figures;
  const isHexagon = LIES[lie].offset;
  const [wide, high] = drawnSize(lie, across, down).map((n) => Math.round(n * PLACE));
  svg.setAttribute('viewBox', `0 0 ${wide} ${high}`);
  svg.replaceChildren(
    isHexagon ? hexagonClip() : ground(across, down),
    ...(isHexagon ? hexagonSymbols(figures, pictures, drawn) : symbols(figures, pictures, drawn)),
  );
  const numbers = new Map(figures.squares.map(({ id }, i) => [id, i + 1]));
  const titles = new Map(figures.squares.map(({ id, title }) => [id, title]));
  for (const [i, tile] of tiles.entries()) {
    const held = i === picked;
    const group = element('g', {
      role: 'button',
      tabindex: i === current ? '0' : '-1',
      'data-tile': String(i),
      'aria-pressed': String(held),
      'aria-label': `${titles.get(tile.id) ?? tile.id}, number ${numbers.get(tile.id) ?? 0}, row ${tile.y + 1}, place ${tile.x + 1}`,
      transform: `translate(${cornerOf(figures, tile)})`,
      class: held ? 'tile held' : 'tile',
    });
    group.append(...(isHexagon ? hexagon : square)(numbers.get(tile.id) ?? 0, tile));
    svg.append(group);
  }
}

/** Of a square its upper left corner, of a hexagon its middle: what its shapes are drawn from. */
function cornerOf({ lie }: BlanketFigures, tile: Tile): string {
  if (!LIES[lie].offset) return `${tile.x * PLACE} ${tile.y * PLACE}`;
  return drawnMiddle(lie, tile)
    .map((n) => Math.round(n * PLACE * 100) / 100)
    .join(' ');
}

function square(number: number, { covers }: Tile): SVGElement[] {
  const [w, h] = [covers * PLACE, PLACE];
  return [
    element('use', { href: `#square-${number}`, width: String(w), height: String(h) }),
    element('rect', { class: 'rim', x: '2', y: '2', width: String(w - 4), height: String(h - 4) }),
    ...code(number, 20, 20),
  ];
}

function hexagon(number: number): SVGElement[] {
  return [
    element('use', { href: `#square-${number}` }),
    element('polygon', { class: 'rim', points: hexagonPoints(PLACE - 4) }),
    ...code(number, 0, -34),
  ];
}

function code(number: number, x: number, y: number): SVGElement[] {
  return [
    element('circle', { class: 'code-ground', cx: String(x), cy: String(y), r: '16' }),
    text(String(number), { class: 'code', x: String(x), y: String(y + 7), 'text-anchor': 'middle' }),
  ];
}

/** What lies beyond the edges of a hexagon's picture is paper. */
function hexagonClip(): SVGElement {
  const clip = element('clipPath', { id: 'hexagon-place' });
  clip.append(element('polygon', { points: hexagonPoints(PLACE) }));
  return clip;
}

/** As `symbols`, each turned to stand on a corner, with its middle where it is used. */
function hexagonSymbols(
  figures: BlanketFigures,
  pictures: Readonly<Record<string, string>>,
  { tiles, colours }: Drawn,
): SVGElement[] {
  const used = new Set(tiles.map(({ id }) => id));
  const scale = (PICTURE_OF_HEXAGON * PLACE) / PICTURE;
  const defs = element('defs', {});
  for (const [i, { id }] of figures.squares.entries()) {
    if (!used.has(id)) continue;
    const clipped = element('g', { id: `square-${i + 1}`, 'clip-path': 'url(#hexagon-place)' });
    const turned = element('g', {
      transform: `rotate(${TURN}) scale(${scale}) translate(${-PICTURE / 2} ${-PICTURE / 2})`,
      fill: 'none',
      'stroke-linecap': 'round',
      'stroke-linejoin': 'round',
    });
    turned.innerHTML = coloured(pictures[id] ?? '', figures, colours);
    clipped.append(turned);
    defs.append(clipped);
  }
  return [defs];
}

function ground(across: number, down: number): SVGElement {
  return element('rect', {
    class: 'ground',
    width: String(across * PLACE),
    height: String(down * PLACE),
  });
}

/** Each square once, in her colours; every place of it uses the one drawing. */
function symbols(
  figures: BlanketFigures,
  pictures: Readonly<Record<string, string>>,
  { tiles, colours }: Drawn,
): SVGElement[] {
  const used = new Set(tiles.map(({ id }) => id));
  return figures.squares.flatMap(({ id, covers }, i) => {
    if (!used.has(id)) return [];
    const symbol = element('symbol', {
      id: `square-${i + 1}`,
      viewBox: `${PAPER} ${PAPER} ${PICTURE - 2 * PAPER} ${PICTURE - 2 * PAPER}`,
      preserveAspectRatio: covers > 1 ? 'xMidYMid slice' : 'none',
      fill: 'none',
      'stroke-linecap': 'round',
      'stroke-linejoin': 'round',
    });
    symbol.innerHTML = coloured(pictures[id] ?? '', figures, colours);
    return [symbol];
  });
}

/** `{D}` and its shades -> the colour she has chosen, or the along's own. */
function coloured(picture: string, { yarns }: BlanketFigures, own: Readonly<Record<string, string>>): string {
  return yarns.reduce((drawn, { letter, hex }) => {
    const ink = inkOf(own[letter] ?? hex);
    return drawn
      .replaceAll(`{${letter}}`, ink)
      .replaceAll(`{${letter}-}`, shaded(ink, 0, 0.45))
      .replaceAll(`{${letter}+}`, shaded(ink, 255, 0.28));
  }, picture);
}

function inkOf(hex: string | null): `#${string}` {
  return hex !== null && /^#[0-9a-f]{6}$/i.test(hex) ? `#${hex.slice(1)}` : '#888888';
}

function element(name: string, attributes: Readonly<Record<string, string>>): SVGElement {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  return made;
}

function text(words: string, attributes: Readonly<Record<string, string>>): SVGElement {
  const made = element('text', attributes);
  made.textContent = words;
  return made;
}
