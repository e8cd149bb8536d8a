/** What a word, or a run of words, is the name of. */

export type Named =
  | { readonly kind: 'stitch'; readonly id: string }
  | { readonly kind: 'special'; readonly name: string };

export interface Found {
  readonly named: Named;
  /** How many tokens the name takes. */
  readonly length: number;
}
