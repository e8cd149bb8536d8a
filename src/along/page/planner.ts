/** On the page of the planner: the reader's choices -> her blanket, drawn and reckoned; kept in her browser and in the address. */

import { swapTiles, type Tile } from '../arrange.ts';
import type { BlanketFigures } from '../figures.ts';
import { LIES, leastAcross } from '../lies.ts';
import { planBlanket } from '../plan-blanket.ts';
import { drawBlanket } from './blanket-drawing.ts';
import {
  firstState,
  laidOut,
  MOST_PLACES,
  MOST_SQUARES,
  type PlannerState,
  readState,
  stateText,
  within,
} from './planner-state.ts';
import { stepped } from './planner-steps.ts';
import { makeView, type PlannerView, showPlan } from './planner-view.ts';

/** What `site/along-pages.ts` puts into the page. */
interface Given {
  readonly slug: string;
  readonly figures: BlanketFigures;
  /** Addresses of the squares' pictures. */
  readonly pictures: Readonly<Record<string, string | null>>;
}

declare global {
  interface Window {
    /** Set by the script before this one: the pictures themselves, colours left open. */
    readonly alongSquares?: Readonly<Record<string, string>>;
  }
}

const place = document.getElementById('planner');
if (place !== null) start(place, JSON.parse(place.dataset.figures ?? '{}') as Given);

function start(place: HTMLElement, { slug, figures, pictures }: Given): void {
  const keptAs = `rowfold-blanket-${slug}`;
  const view = makeView(place, figures, pictures);
  const drawings = window.alongSquares ?? {};
  let state: PlannerState =
    readState(decodeURIComponent(location.hash.slice(1)), figures) ??
    readState(kept(keptAs) ?? '', figures) ??
    firstState(figures);
  let tiles: readonly Tile[] = [];
  let current = 0;
  let picked: number | null = null;

  fill(view, state, figures);
  show();

  function change(next: Partial<PlannerState>, keepsOrder = false): void {
    state = { ...state, ...next, ...(keepsOrder ? {} : { order: null }) };
    picked = null;
    show();
    const text = stateText(state, figures);
    keep(keptAs, text);
    history.replaceState(null, '', `#${text}`);
  }

  function show(): void {
    const arranged = laidOut(state, figures);
    tiles = arranged.tiles;
    current = Math.min(current, Math.max(0, tiles.length - 1));
    showPlan(view, figures, planBlanket(figures, state), state.make, arranged.over);
    draw();
  }

  function draw(): void {
    const { across, down, colours } = state;
    const hadFocus = view.drawing.contains(document.activeElement);
    drawBlanket(view.drawing, figures, drawings, { across, down, tiles, colours, picked, current });
    if (hadFocus) tileElement(current)?.focus();
  }

  function tileElement(i: number): SVGElement | null {
    return view.drawing.querySelector<SVGElement>(`[data-tile="${i}"]`);
  }

  /** Picks a square up, puts it back, or puts it in the place of another. */
  function press(i: number): void {
    current = i;
    if (picked === null) {
      picked = i;
      view.said.textContent = `${named(i)} picked up. Choose the ${LIES[figures.lie].piece} whose place it takes.`;
      draw();
      return;
    }
    const from = picked;
    picked = null;
    if (from === i) {
      view.said.textContent = `${named(i)} put back.`;
      draw();
      return;
    }
    if (tiles[from]?.covers !== tiles[i]?.covers) {
      view.said.textContent = 'A square changes places only with one as wide as itself.';
      draw();
      return;
    }
    view.said.textContent = `${named(from)} and ${named(i)} have changed places.`;
    change({ order: swapTiles(tiles, from, i).map(({ id }) => id) }, true);
  }

  function named(i: number): string {
    const tile = tiles[i];
    const title = figures.squares.find(({ id }) => id === tile?.id)?.title ?? '';
    return `${title} in row ${(tile?.y ?? 0) + 1}, place ${(tile?.x ?? 0) + 1}`;
  }

  view.drawing.addEventListener('keydown', (event) => {
    const to = stepped(figures.lie, tiles, current, event.key);
    if (to !== null) {
      event.preventDefault();
      current = to;
      draw();
      tileElement(current)?.focus();
    } else if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      press(current);
      tileElement(current)?.focus();
    } else if (event.key === 'Escape' && picked !== null) {
      press(picked);
    }
  });
  // One way for a press and for a drag: a square let go over another takes its place.
  view.drawing.addEventListener('pointerdown', (event) => {
    const i = tileOf(event.target);
    if (i === null) return;
    event.preventDefault();
    press(i);
    tileElement(i)?.focus();
  });
  view.drawing.addEventListener('pointerup', (event) => {
    const under = tileOf(document.elementFromPoint(event.clientX, event.clientY));
    if (picked !== null && under !== null && under !== picked) press(under);
  });

  for (const [id, field] of view.counts)
    field.addEventListener('input', () =>
      change({ make: { ...state.make, [id]: within(Number(field.value), 0, MOST_SQUARES) } }),
    );
  view.across.addEventListener('input', () =>
    change({ across: within(Number(view.across.value), leastAcross(figures.lie), MOST_PLACES) }),
  );
  view.down.addEventListener('input', () =>
    change({ down: within(Number(view.down.value), 1, MOST_PLACES) }),
  );
  view.apart.addEventListener('change', () => change({ apart: view.apart.checked }));
  for (const [letter, field] of view.colours)
    field.addEventListener('input', () =>
      change({ colours: { ...state.colours, [letter]: field.value } }, true),
    );
  view.anew.addEventListener('click', () => change({ order: null }));
  view.print.addEventListener('click', () => print());
  view.reset.addEventListener('click', () => {
    change(firstState(figures));
    fill(view, state, figures);
  });
}

function tileOf(target: EventTarget | null): number | null {
  const tile = target instanceof Element ? target.closest('[data-tile]') : null;
  return tile === null ? null : Number(tile.getAttribute('data-tile'));
}

function fill(view: PlannerView, state: PlannerState, figures: BlanketFigures): void {
  view.across.value = String(state.across);
  view.down.value = String(state.down);
  view.apart.checked = state.apart;
  for (const [id, field] of view.counts) field.value = String(state.make[id] ?? 0);
  for (const { letter, hex } of figures.yarns) {
    const field = view.colours.get(letter);
    if (field !== undefined) field.value = state.colours[letter] ?? hex ?? '#888888';
  }
}

/** A browser may keep nothing for a page opened from the disk, or be told to keep nothing at all. */
function kept(name: string): string | null {
  try {
    return localStorage.getItem(name);
  } catch {
    return null;
  }
}

function keep(name: string, text: string): void {
  try {
    localStorage.setItem(name, text);
  } catch {
    // The address still has it.
  }
}
