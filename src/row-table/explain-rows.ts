/** A compiled size -> each of its rows with what it takes, leaves and makes, and how it comes to that. */

import type { CompiledSize } from '../compiled.ts';
import type { RowAccount } from '../explain/row-account.ts';
import { wordSpaces, wordStitches } from '../explain/word-made.ts';
import { wordUsed } from '../explain/word-used.ts';
import { type RowPlaces, rowPlaces } from '../fabric/row-places.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { sidesByRow } from './word-sides.ts';

export interface ExplainedRow extends RowPlaces {
  readonly account: RowAccount;
  readonly part: string;
  readonly label: string;
  readonly makes: { readonly stitches: number; readonly spaces: number; readonly chains: number };
  readonly how: {
    readonly stitches: string | null;
    readonly spaces: string | null;
    readonly uses: string | null;
    /** How many lie between two corners. */
    readonly sides: string | null;
  };
}

export function explainRows({ fabric, accounts }: CompiledSize, terms: Terms): readonly ExplainedRow[] {
  const places = rowPlaces(fabric, accounts);
  const sides = sidesByRow(fabric);
  return accounts.flatMap((account, i) => {
    const place = places[i];
    if (place === undefined) return [];
    return [
      {
        ...place,
        account,
        part: fabric.parts[account.part]?.name ?? '',
        label: account.label,
        makes: { ...account.made, chains: account.foundation ? chainsOf(account) : 0 },
        how: {
          stitches: wordStitches(account, terms),
          spaces: wordSpaces(account),
          uses: wordUsed(account),
          sides: sides.get(account.first) ?? null,
        },
      },
    ];
  });
}

/** All chains it made, of a foundation. */
export function chainsOf({ steps }: RowAccount): number {
  return steps.reduce((sum, { chains }) => sum + chains, 0);
}
