/** A pattern made over -> its booklet as PDF. Loaded, with the fonts, when a reader asks for one. */

import { compiledSize } from '../compile-size.ts';
import type { CompiledPattern } from '../compiled.ts';
import type { ScaleOf } from '../measure/measures.ts';
import type { OwnMade } from '../own/make-own.ts';
import type { OwnChoice } from '../own/own-choice.ts';
import type { FontBytes } from '../paint/text-width.ts';
import { OWN_SLUG } from '../pattern/own-size.ts';
import { type BookletChoice, printBooklet } from '../print-booklet.ts';
import { FONT_FACES, fontFileName } from '../site/font-names.ts';
import type { WantedEdition } from './keep-sheet.ts';
import { drawnFrom } from './own-charts.ts';

export interface BookletWanted {
  readonly made: OwnMade;
  readonly scaleOf: ScaleOf;
  readonly choice: OwnChoice;
  readonly paper: BookletChoice['paper'];
  readonly edition: WantedEdition;
  /** Of the page with all that she filled in: printed at the end, to come back to. */
  readonly address: string;
  /** Where the site keeps its fonts, with a slash at the end. */
  readonly fontFolder: string;
}

export async function ownBooklet(wanted: BookletWanted): Promise<Uint8Array> {
  const { made, scaleOf, choice, paper, edition, address, fontFolder } = wanted;
  const { pattern, index, plan, worked } = made;
  const { multiples } = drawnFrom(made);
  const size = compiledSize(pattern, index, OWN_SLUG, plan, worked, multiples, () => scaleOf);
  const compiled: CompiledPattern = {
    slug: pattern.slug,
    pattern,
    sizes: [size],
    allSizes: null,
    multiples: [],
    growths: [],
    scaleOf,
    photographs: [],
    diagnostics: [],
  };
  const { dialect, leftHanded } = choice;
  return printBooklet(
    compiled,
    size,
    { dialect, leftHanded, paper, address, foldingNotes: true, ...edition },
    await fonts(fontFolder),
  );
}

let fetched: Promise<FontBytes> | null = null;

/** Kept once fetched; asked for anew where that failed. */
function fonts(folder: string): Promise<FontBytes> {
  fetched ??= fetchFonts(folder).catch((fault: unknown) => {
    fetched = null;
    throw fault;
  });
  return fetched;
}

async function fetchFonts(folder: string): Promise<FontBytes> {
  const entries = await Promise.all(
    FONT_FACES.map(async (face) => {
      const response = await fetch(`${folder}${fontFileName(face)}`);
      if (!response.ok) throw new Error(`The font ${face} is not there.`);
      return [face, new Uint8Array(await response.arrayBuffer())] as const;
    }),
  );
  return Object.fromEntries(entries) as Record<(typeof FONT_FACES)[number], Uint8Array>;
}
