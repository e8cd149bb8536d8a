/** A compiled pattern and the settings of the site in, the booklets it offers out, each with its file and what it is called. */

import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { type BookletChoice, type BookletSizes, bookletHands } from '../print-booklet.ts';
import { DIALECTS, type DialectKey } from '../wording/words.ts';
import { ALL_SIZES, bookletFileName, wholeAddress } from './addresses.ts';
import { DIALECT_NAMES, ownDialect } from './dialect-names.ts';
import type { BookletOffer, SiteSettings } from './site-settings.ts';

export interface OfferedBooklet {
  readonly sizes: BookletSizes;
  readonly choice: BookletChoice;
  /** Folders under the site's top. */
  readonly folder: readonly string[];
  readonly file: string;
  readonly text: string;
}

/** In the order of the settings, sizes outermost; each once. */
export function offeredBooklets(
  compiled: CompiledPattern,
  pattern: Pattern,
  { booklets, address }: SiteSettings,
): OfferedBooklet[] {
  const all = compiled.allSizes === null || compiled.sizes.length < 2 ? [] : ['all' as const];
  const found = [...compiled.sizes, ...all].flatMap((sizes) =>
    booklets.flatMap((offer) =>
      choices(offer, sizes, pattern).map((choice) => offered(compiled, pattern, sizes, choice, address)),
    ),
  );
  return [...new Map(found.map((each) => [[...each.folder, each.file].join('/'), each])).values()];
}

function choices(offer: BookletOffer, sizes: BookletSizes, pattern: Pattern): BookletChoice[] {
  if (!listed(offer.sizes, 'each').includes(sizes === 'all' ? 'all' : 'each')) return [];
  const dialects = listed(offer.terms, 'own').map(
    (terms): DialectKey => (terms === 'own' ? ownDialect(pattern) : terms),
  );
  return listed(offer.paper, 'A4').flatMap((paper) =>
    listed(offer.form, 'flat').flatMap((form) =>
      listed(offer.holds, 'all').flatMap((holds) =>
        listed(offer.ink, 'usual').flatMap((ink) =>
          hands(offer, sizes).flatMap((leftHanded) =>
            dialects.map((dialect) => ({
              dialect,
              paper,
              form,
              holds,
              lowInk: ink === 'low',
              leftHanded,
              foldingNotes: form === 'folded',
            })),
          ),
        ),
      ),
    ),
  );
}

/** Without a chart a booklet is the same for both hands. */
function hands({ charts }: BookletOffer, sizes: BookletSizes): boolean[] {
  const drawn: readonly boolean[] = sizes === 'all' ? [false, true] : bookletHands(sizes);
  return listed(charts, 'right-handed')
    .map((hand) => hand === 'left-handed')
    .filter((leftHanded) => drawn.includes(leftHanded));
}

function listed<T extends string>(given: T | readonly T[] | undefined, usual: NoInfer<T>): readonly T[] {
  if (given === undefined) return [usual];
  return typeof given === 'string' ? [given] : given;
}

function offered(
  compiled: CompiledPattern,
  pattern: Pattern,
  sizes: BookletSizes,
  choice: BookletChoice,
  top: string | null,
): OfferedBooklet {
  const own = ownDialect(pattern);
  const size = sizeSlug(sizes);
  const folder = sizes === 'all' ? [compiled.slug] : [compiled.slug, sizes.slug];
  return {
    sizes,
    choice: { ...choice, address: wholeAddress(top, folder) },
    folder,
    file: bookletFileName(compiled.slug, {
      ...choice,
      size,
      dialect: choice.dialect === own ? null : choice.dialect,
    }),
    text: bookletText(sizes, choice),
  };
}

function sizeSlug(sizes: BookletSizes): string {
  return sizes === 'all' ? ALL_SIZES : sizes.slug;
}

function bookletText(sizes: BookletSizes, choice: BookletChoice): string {
  const { paper, dialect, form, holds, lowInk, leftHanded } = choice;
  const parts = [
    sizes === 'all' ? 'all sizes' : null,
    DIALECTS[dialect].form === 'full' ? DIALECT_NAMES[dialect] : `${DIALECTS[dialect].terms} terms`,
    form === 'folded' ? 'half pages to fold and staple' : null,
    form === 'large print' ? 'large print' : null,
    holds === 'words' ? 'words only' : null,
    holds === 'charts' ? 'charts only' : null,
    leftHanded ? 'charts for left-handed makers' : null,
    lowInk ? 'little ink' : null,
  ].filter((part) => part !== null);
  return `Booklet on ${paper === 'A4' ? 'A4 paper' : 'US Letter paper'}, ${parts.join(', ')} (PDF)`;
}

/** Those for a page of one size in one dialect: of that dialect, or where none is offered, of the pattern's own. */
export function bookletsForPage(
  offers: readonly OfferedBooklet[],
  size: CompiledSize | null,
  dialect: DialectKey,
  own: DialectKey,
): OfferedBooklet[] {
  const here = offers.filter(({ sizes }) => sizes === 'all' || sizes === size);
  const inDialect = here.filter(({ choice }) => choice.dialect === dialect);
  if (inDialect.length > 0) return inDialect;
  const inTerms = here.filter(({ choice }) => DIALECTS[choice.dialect].terms === DIALECTS[dialect].terms);
  return inTerms.length > 0 ? inTerms : here.filter(({ choice }) => choice.dialect === own);
}
