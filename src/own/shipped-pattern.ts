/**
 * A compiled pattern -> what its page needs to make it over, as plain data that stands in the page, and back again.
 * Instructions go as they were read, so that a browser needs no reader, and with what only the whole collection of stages
 * can tell: over which foundations it comes out, and how its yarn stands to the trade's figures.
 */

import { planSize } from '../check/plan-size.ts';
import type { Fabric } from '../fabric/fabric.ts';
import { workSize } from '../fabric/work.ts';
import { type ShownFilm, shownFilms } from '../film/shown-films.ts';
import type { ScaleOf, YarnScale } from '../measure/measures.ts';
import { byFigures } from '../measure/yarn-scale.ts';
import { OWN_NAME } from '../pattern/own-size.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { PartMultiple } from '../proof/part-multiple.ts';
import type { Remakeable } from './own-pattern.ts';

/** Nothing in it but what JSON holds. */
export interface ShippedPattern {
  readonly pattern: Omit<Pattern, 'source' | 'places' | 'films' | 'photographs' | 'allowed'>;
  readonly films: readonly ShownFilm[];
  readonly sizeSlugs: readonly string[];
  readonly multiples: readonly Omit<PartMultiple, 'broken'>[];
  /** By yarn letter. */
  readonly scales: Readonly<Record<string, YarnScale>>;
}

/** What a compiled pattern gives. */
export interface Shippable {
  readonly pattern: Pattern;
  readonly sizes: readonly { readonly slug: string; readonly fabric: Fabric }[];
  readonly multiples: readonly PartMultiple[];
  readonly scaleOf: ScaleOf;
}

export function shipPattern({ pattern, sizes, multiples, scaleOf }: Shippable): ShippedPattern {
  const { source: _, places: __, films: ___, photographs: ____, allowed: _____, ...plain } = pattern;
  return {
    pattern: plain,
    films: shownFilms(
      pattern,
      sizes.map(({ fabric }) => fabric),
    ),
    sizeSlugs: sizes.map(({ slug }) => slug),
    multiples: multiples.map(({ part, size, claimed, found }) => ({ part, size, claimed, found })),
    scales: Object.fromEntries(pattern.yarns.map(({ letter }) => [letter, scaleOf(letter, OWN_NAME)])),
  };
}

export interface Unshipped {
  /** Ready to be made over from the size at this place. */
  readonly from: (index: number) => Remakeable;
  readonly scaleOf: ScaleOf;
}

export function unshipPattern(shipped: ShippedPattern): Unshipped {
  const pattern: Pattern = {
    ...shipped.pattern,
    source: { file: shipped.pattern.slug, text: '' },
    places: new Map(),
    films: [],
    allowed: [],
    photographs: [],
  };
  // A size is worked once, however often she asks.
  const made = new Map<number, Remakeable>();
  const multiples = shipped.multiples.map((one) => ({ ...one, broken: null }));
  return {
    from: (index) => {
      const known = made.get(index);
      if (known !== undefined) return known;
      const { plan } = planSize(pattern, index);
      const fabric = plan === null ? null : workSize(pattern, index, plan).fabric;
      const remakeable = { pattern, multiples, fabric };
      made.set(index, remakeable);
      return remakeable;
    },
    scaleOf: (letter, size) => shipped.scales[letter] ?? byFigures(letter, size),
  };
}
