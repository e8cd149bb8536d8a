/** Where the squares lie and in what colours -> the blanket drawn, each square something that can be picked up with keys or pointer. */

import { shaded } from '../../chart/row-pens.ts';
import type { Tile } from '../arrange.ts';
import type { BlanketFigures } from '../figures.ts';

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
  svg.setAttribute('viewBox', `0 0 ${across * PLACE} ${down * PLACE}`);
  svg.replaceChildren(ground(across, down), ...symbols(figures, pictures, drawn));
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
      transform: `translate(${tile.x * PLACE} ${tile.y * PLACE})`,
      class: held ? 'tile held' : 'tile',
    });
    const [w, h] = [tile.covers * PLACE, PLACE];
    group.append(
      element('use', { href: `#square-${numbers.get(tile.id) ?? 0}`, width: String(w), height: String(h) }),
      element('rect', { class: 'rim', x: '2', y: '2', width: String(w - 4), height: String(h - 4) }),
      element('circle', { class: 'code-ground', cx: '20', cy: '20', r: '16' }),
      text(String(numbers.get(tile.id) ?? ''), { class: 'code', x: '20', y: '27', 'text-anchor': 'middle' }),
    );
    svg.append(group);
  }
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
