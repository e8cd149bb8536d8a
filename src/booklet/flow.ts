/** Strips and sheets in reading order in; out come pages, each with what stands on it and how far down. */

import { PAGES_A_SHEET } from './folding.ts';
import type { Flowing, Sheet, Strip } from './strip.ts';

export interface PlacedStrip {
  readonly strip: Strip;
  /** From the top of the text area. */
  readonly yMm: number;
}

export type FlowedPage =
  | { readonly kind: 'strips'; readonly strips: readonly PlacedStrip[] }
  | { readonly kind: 'sheet'; readonly sheet: Sheet };

/** Sums of many heights may miss by a rounding. */
const SLACK_MM = 0.01;

/** How far spaces may shrink to save a page, tried in turn, and how little on the last page calls for it. */
const TIGHTER = [0.85, 0.7, 0.55] as const;
const NEARLY_EMPTY = 0.2;

/** The same; but when the last page would be nearly empty and a little less space saves it, with less space. */
export function flowWithoutStub(items: readonly Flowing[], bodyHeightMm: number): FlowedPage[] {
  const pages = flow(items, bodyHeightMm);
  if (pages.length < 2 || !nearlyEmpty(pages.at(-1), bodyHeightMm)) return pages;
  return flowTighter(items, bodyHeightMm, pages.length) ?? pages;
}

/** The same for sheets of four pages: where one page less, and a little less space, saves a sheet, with less space. */
export function flowToSheets(items: readonly Flowing[], bodyHeightMm: number): FlowedPage[] {
  const pages = flowWithoutStub(items, bodyHeightMm);
  if (pages.length <= PAGES_A_SHEET || pages.length % PAGES_A_SHEET !== 1) return pages;
  return flowTighter(items, bodyHeightMm, pages.length) ?? pages;
}

/** With as little less space as makes fewer pages; null where none does. */
function flowTighter(items: readonly Flowing[], bodyHeightMm: number, pages: number): FlowedPage[] | null {
  for (const share of TIGHTER) {
    const tried = flow(
      items.map((item) => tightened(item, share)),
      bodyHeightMm,
    );
    if (tried.length < pages) return tried;
  }
  return null;
}

function nearlyEmpty(page: FlowedPage | undefined, bodyHeightMm: number): boolean {
  if (page?.kind !== 'strips') return false;
  const last = page.strips.at(-1);
  return (last ? last.yMm + last.strip.heightMm : 0) < bodyHeightMm * NEARLY_EMPTY;
}

function tightened(item: Flowing, share: number): Flowing {
  return item.kind === 'strip' ? { ...item, spaceBeforeMm: item.spaceBeforeMm * share } : item;
}

export function flow(items: readonly Flowing[], bodyHeightMm: number): FlowedPage[] {
  const pages: FlowedPage[] = [];
  let placed: PlacedStrip[] = [];
  let yMm = 0;

  const turnPage = (): void => {
    if (placed.length > 0) pages.push({ kind: 'strips', strips: placed });
    placed = [];
    yMm = 0;
  };
  const place = (strip: Strip): void => {
    if (placed.length === 0 && strip.headAgain) {
      placed.push({ strip: strip.headAgain, yMm });
      yMm += strip.headAgain.heightMm;
    }
    if (placed.length > 0) yMm += strip.spaceBeforeMm;
    placed.push({ strip, yMm });
    yMm += strip.heightMm;
  };
  const fits = (strips: readonly Strip[]): boolean =>
    yMm + stackHeight(strips, placed.length === 0) <= bodyHeightMm + SLACK_MM;

  for (const chain of chains(items)) {
    if (chain.kind === 'sheet') {
      turnPage();
      pages.push({ kind: 'sheet', sheet: chain });
      continue;
    }
    if (!fits(chain.strips)) turnPage();
    if (fits(chain.strips)) for (const strip of chain.strips) place(strip);
    else {
      // Taller than a page: it must be cut somewhere, so it fills this page and goes on.
      for (const strip of chain.strips) {
        if (!fits([strip])) turnPage();
        place(strip);
      }
    }
  }
  turnPage();
  return pages;
}

type Chain = Sheet | { readonly kind: 'strips'; readonly strips: readonly Strip[] };

/** Strips that must stay together, gathered; sheets as they are. */
function chains(items: readonly Flowing[]): Chain[] {
  const found: Chain[] = [];
  let open: Strip[] = [];
  for (const item of items) {
    if (item.kind === 'sheet') {
      if (open.length) found.push({ kind: 'strips', strips: open });
      open = [];
      found.push(item);
      continue;
    }
    open.push(item);
    if (!item.keepWithNext) {
      found.push({ kind: 'strips', strips: open });
      open = [];
    }
  }
  if (open.length) found.push({ kind: 'strips', strips: open });
  return found;
}

function stackHeight(strips: readonly Strip[], atHead: boolean): number {
  return strips.reduce((sum, strip, index) => {
    const above = index === 0 && atHead ? (strip.headAgain?.heightMm ?? 0) : strip.spaceBeforeMm;
    return sum + above + strip.heightMm;
  }, 0);
}
