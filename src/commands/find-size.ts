/** A size's name as typed -> the size, or the sentence that says which there are. */

import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import { nearest } from '../diagnostics/nearest.ts';

export type FoundSize =
  | { readonly kind: 'found'; readonly size: CompiledSize }
  | { readonly kind: 'unknown'; readonly message: string };

export function findSize(compiled: CompiledPattern, wanted: string): FoundSize {
  const same = (name: string) => name.toLowerCase() === wanted.toLowerCase();
  const size =
    compiled.sizes.find((one) => one.size.name === wanted) ??
    compiled.sizes.find((one) => same(one.size.name) || same(one.slug));
  if (size !== undefined) return { kind: 'found', size };
  const names = compiled.sizes.map((one) => one.size.name);
  if (wanted === '')
    return {
      kind: 'unknown',
      message: `Say which size with --size: ${compiled.slug} has ${names.join(', ')}.`,
    };
  const near = nearest(wanted, names);
  const offer = near === null ? '' : ` Did you mean ${near}?`;
  return {
    kind: 'unknown',
    message: `There is no size ${wanted} in ${compiled.slug}; it has ${names.join(', ') || 'none'}.${offer}`,
  };
}
