/** A pattern's instructions in; every special stitch that the trade itself fixes for them, and what its blocks are made of, out. */

import type { FullName } from '../notation/lexicon.ts';
import type { BlockShape } from '../notation/read-blocks.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { type Described, impliedBlocks } from './implied-blocks.ts';
import { type ImpliedSpecial, impliedSpecials } from './implied-specials.ts';

export interface AllImplied {
  readonly specials: readonly ImpliedSpecial[];
  readonly blocks: BlockShape | null;
  /** What the pattern calls its blocks where it has another word for them: `tile`. */
  readonly fullNames: readonly FullName[];
}

export function allImplied(
  texts: readonly string[],
  terms: Terms,
  described: readonly Described[],
): AllImplied {
  const names = described.map(({ name }) => name);
  const blocks = impliedBlocks(texts, terms, described);
  return {
    specials: [...impliedSpecials(texts, terms, names), ...(blocks?.specials ?? [])],
    blocks: blocks?.shape ?? null,
    fullNames: (blocks?.specials ?? []).map(({ name, fullName }) => ({ full: fullName, name })),
  };
}
