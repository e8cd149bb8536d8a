/** What a reader has chosen in the planner <-> one line of text, for the address of the page and for her browser to keep. */

import { type Arrangement, arrange, type Tile } from '../arrange.ts';
import type { BlanketFigures } from '../figures.ts';
import { leastAcross } from '../lies.ts';
import { defaultMake } from '../plan-blanket.ts';

export interface PlannerState {
  readonly across: number;
  readonly down: number;
  readonly make: Readonly<Record<string, number>>;
  /** No two alike side by side. */
  readonly apart: boolean;
  /** Colours of her own, by letter. */
  readonly colours: Readonly<Record<string, string>>;
  /** The squares in the order they lie, row by row; null where they lie as they are laid out. */
  readonly order: readonly string[] | null;
}

/** More places than these are no blanket. */
export const MOST_PLACES = 60;
export const MOST_SQUARES = 999;

export function firstState(figures: BlanketFigures): PlannerState {
  return {
    across: figures.across,
    down: figures.down,
    make: defaultMake(figures),
    apart: true,
    colours: {},
    order: null,
  };
}

/** `6x7;apart;sluice-gate=7,cordgrass=7;A=d9cfbd;0102` */
export function stateText(
  { across, down, make, apart, colours, order }: PlannerState,
  figures: BlanketFigures,
): string {
  const ids = figures.squares.map(({ id }) => id);
  const counts = ids.filter((id) => (make[id] ?? 0) > 0).map((id) => `${id}=${make[id]}`);
  const own = Object.entries(colours).map(([letter, hex]) => `${letter}=${hex.slice(1)}`);
  const lay = order === null ? '' : order.map((id) => ids.indexOf(id).toString(36).padStart(2, '0')).join('');
  return [`${across}x${down}`, apart ? 'apart' : 'rows', counts.join(','), own.join(','), lay].join(';');
}

/** What cannot be read is as it is at first: an address may have been cut short on its way. */
export function readState(text: string, figures: BlanketFigures): PlannerState | null {
  const [grid = '', way = '', counts = '', own = '', lay = ''] = text.split(';');
  const sides = /^(\d{1,2})x(\d{1,2})$/.exec(grid);
  if (sides === null) return null;
  const ids = figures.squares.map(({ id }) => id);
  const make = Object.fromEntries(
    counts.split(',').flatMap((entry) => {
      const found = /^([\w-]+)=(\d{1,3})$/.exec(entry);
      return found?.[1] !== undefined && ids.includes(found[1]) ? [[found[1], Number(found[2])]] : [];
    }),
  );
  const letters = figures.yarns.map(({ letter }) => letter);
  const colours = Object.fromEntries(
    own.split(',').flatMap((entry) => {
      const found = /^(\w{1,3})=([0-9a-f]{6})$/.exec(entry);
      return found?.[1] !== undefined && letters.includes(found[1]) ? [[found[1], `#${found[2]}`]] : [];
    }),
  );
  const order = (lay.match(/../g) ?? []).map((code) => ids[Number.parseInt(code, 36)] ?? '');
  return {
    across: within(Number(sides[1]), leastAcross(figures.lie), MOST_PLACES),
    down: within(Number(sides[2]), 1, MOST_PLACES),
    make,
    apart: way === 'apart',
    colours,
    order: order.length === 0 || order.includes('') ? null : order,
  };
}

export function within(n: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, Number.isFinite(n) ? Math.round(n) : least));
}

/** Where the squares lie: as she moved them, while that still fits what she makes; else laid out anew. */
export function laidOut(state: PlannerState, figures: BlanketFigures): Arrangement {
  const anew = arrange(figures, state);
  const { order } = state;
  if (order === null || order.length !== anew.tiles.length) return anew;
  const tally = (ids: readonly string[]): string => [...ids].sort().join();
  if (tally(order) !== tally(anew.tiles.map(({ id }) => id))) return anew;
  const covers = new Map(figures.squares.map((square) => [square.id, square.covers]));
  const moved = anew.tiles.map((tile, i): Tile => ({ ...tile, id: order[i] ?? tile.id }));
  // A wide square stays where there is room for one.
  return moved.every(({ id, covers: wide }) => covers.get(id) === wide) ? { ...anew, tiles: moved } : anew;
}
