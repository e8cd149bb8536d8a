/** How long rows are repeated. */

import type { Num } from './num.ts';

export type RowsUntil =
  | { readonly kind: 'label' }
  | { readonly kind: 'times'; readonly n: Num; readonly more: boolean }
  /** `until 24 rows have been worked`. */
  | { readonly kind: 'total'; readonly n: Num; readonly endingWith: number | null }
  /** `said` where it is left to the maker: `for the length required`, `until back matches front`. */
  | {
      readonly kind: 'height';
      readonly endingWith: number | null;
      readonly said?: string;
      /** `until work measures 30 cm`: told in figures that a gauge is needed for. */
      readonly measured?: true;
    };
