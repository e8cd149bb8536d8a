/** The row at hand in its chart: it stands out from the others, and so does the row it is worked into. */

import { drawing } from './markup.ts';

let marked: readonly Element[] = [];

/** `chart` null clears all marks. A chart shown from its file is drawn into the page first, so that its rows are there. */
export async function markChart(chart: string | null, row: number, onto: number | null): Promise<void> {
  const figure = chart === null ? null : (document.getElementById(chart) ?? figureWith(row));
  const svg = figure === null ? null : await drawnIn(figure);
  for (const one of marked) one.classList.remove('follows-row', 'now', 'under');
  const now = svg?.querySelector(`[data-row="${row}"]`) ?? null;
  if (svg === null || now === null) return;
  const under = onto === null ? null : svg.querySelector(`[data-row="${onto}"]`);
  svg.classList.add('follows-row');
  now.classList.add('now');
  under?.classList.add('under');
  marked = [svg, now, ...(under === null ? [] : [under])];
}

/** A part drawn around another stands in the other's chart. */
function figureWith(row: number): Element | null {
  return document.querySelector(`.chart [data-row="${row}"]`)?.closest('.chart') ?? null;
}

async function drawnIn(figure: Element): Promise<SVGElement | null> {
  const svg = figure.querySelector<SVGElement>('svg');
  if (svg !== null) return svg;
  const picture = figure.querySelector('img');
  if (picture === null) return null;
  try {
    const answer = await fetch(picture.src);
    if (!answer.ok) return null;
    const drawn = drawing(await answer.text());
    // Another call may have been quicker.
    if (picture.isConnected) picture.replaceWith(drawn);
    return figure.querySelector<SVGElement>('svg');
  } catch {
    // From a folder on the disk, or without a network: the picture stays as it is.
    return null;
  }
}
