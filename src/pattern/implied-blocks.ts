/** Instructions worked from corner to corner in; the block and the beginning block they are made of, as special stitches, out. */

import { ordinal } from '../notation/ordinal.ts';
import type { BlockShape } from '../notation/read-blocks.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { findStitch, stitchById, termsOf } from '../stitches/table.ts';
import type { ImpliedSpecial } from './implied-specials.ts';

const BEGINS =
  /\b(?:ch (\d+)|(\d+) ch)[.,] *(?:turn[.,;] *)?(?:1 )?([a-z]+) in (\d+)(?:th|rd) ch from (?:the |your )?hook(?: \([^()]*\))?(?:[.,] *| and )(?:1 )?(?:\3 )?in (?:each of )?(?:the )?next (\d+) ch/i;
const GOES_ON =
  /\b(?:ch (\d+)|(\d+) ch), (\d+) ([a-z]+)(?: in (?:the )?same (?:(?:ch-\d+|\d+-ch) )?sp|\) in (?:the )?(?:next |same )?(?:(?:ch-\d+|\d+-ch) )?sp)/i;

const BEGINNING = /^beg(?:inning)? (?:block|tile)$/i;
const NAMED = /\b(block|tile)s?\b/i;

/** A special stitch as the pattern itself describes it; empty where it gives a name only. */
export interface Described {
  readonly name: string;
  readonly work: string;
}

export interface ImpliedBlocks {
  readonly specials: readonly ImpliedSpecial[];
  readonly shape: BlockShape;
}

/**
 * A block is begun with a chain of its own, and the next is worked into the space of the one below (common practice).
 * A pattern may describe the beginning block alone: what the rows do in each space is then the other. Null where the
 * text counts no blocks, describes its own, or the numbers of the two do not belong together.
 */
export function impliedBlocks(
  texts: readonly string[],
  terms: Terms,
  described: readonly Described[],
): ImpliedBlocks | null {
  const own = described.filter(({ name }) => NAMED.test(name));
  const beginning = own.length === 1 ? own.find(({ name }) => BEGINNING.test(name)) : undefined;
  if (own.length > 0 && beginning === undefined) return null;
  const text = texts.find(
    (one) => (beginning !== undefined || BEGINS.test(one)) && GOES_ON.test(one) && NAMED.test(one),
  );
  const begins = BEGINS.exec(beginning?.work ?? text ?? '');
  const goesOn = GOES_ON.exec(text ?? '');
  if (begins === null || goesOn === null) return null;
  const stitch = findStitch((begins[3] ?? '').toLowerCase(), terms);
  const [chains, nth, more] = [Number(begins[1] ?? begins[2]), Number(begins[4]), Number(begins[5])];
  const rise = Number(goesOn[1] ?? goesOn[2]);
  const alike = begins[3]?.toLowerCase() === goesOn[4]?.toLowerCase();
  if (
    stitch === null ||
    !alike ||
    chains !== nth + more ||
    rise !== nth - 1 ||
    Number(goesOn[3]) !== more + 1
  )
    return null;
  // What the pattern calls it; of the two words the trade has `block` is the one charts go by.
  const word = (NAMED.exec(text ?? '')?.[1] ?? 'block').toLowerCase();
  const { abbr } = termsOf(stitch, terms);
  const slip = termsOf(stitchById('sl-st'), terms).abbr;
  const first: ImpliedSpecial = {
    name: 'beg block',
    fullName: `beginning ${word}`,
    work: `ch ${chains}, ${abbr} in ${ordinal(nth)} ch from hook, ${abbr} in next ${more} ch`,
  };
  const next = {
    name: 'block',
    fullName: word,
    work: `(${slip}, ch ${rise}, ${more + 1} ${abbr}) in same sp`,
  };
  return {
    specials: beginning === undefined ? [first, next] : [next],
    shape: { stitch: stitch.id, begins: beginning?.name ?? first.name, chains, nth, more, rise },
  };
}
