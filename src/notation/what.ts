/** What sort of place words mean: a stitch, a chain, a space, a corner. */

/** What sort of place is meant. */
export type What =
  | { readonly kind: 'st' }
  /** `alone` for `single tr`: one that belongs to no special stitch. */
  | { readonly kind: 'stitch'; readonly id: string; readonly alone?: true }
  | { readonly kind: 'special'; readonly name: string }
  /** `of` in `each of 2 ch`: a chain of a space of that many. */
  | { readonly kind: 'ch'; readonly of?: number }
  /** A chain space; `chains` null is "sp" of any length. `corner` is a space at a corner. */
  | {
      readonly kind: 'space';
      readonly chains: number | null;
      readonly corner: boolean;
      /** `side sp`: one that is at no corner. */
      readonly side?: true;
      /** Of a special stitch: `ch-2 sp of next shell`. */
      readonly of?: string;
    }
  /** Whichever comes next: `each dc and ch-1 sp`. */
  | { readonly kind: 'any-of'; readonly of: readonly What[] }
  /** Several stitches in one place, special or not: `between groups`. */
  | { readonly kind: 'group'; readonly size?: number }
  | { readonly kind: 'marked' }
  /** "corner" alone: the middle stitch or the space of the next corner; `of` in `center sc of each corner`. */
  | { readonly kind: 'corner'; readonly of?: string }
  | { readonly kind: 'row-end' };

/** A row that a place names by its number. */
export interface OfRow {
  readonly unit: 'row' | 'round';
  readonly number: number;
}
