/** Sizes in, the names they have in addresses and file names out: lower case, no spaces, no two alike. */

import { OWN_SLUG } from './own-size.ts';
import type { Size } from './pattern.ts';

export function sizeSlugs(sizes: readonly Size[]): string[] {
  const taken = new Set<string>([OWN_SLUG]);
  return sizes.map(({ name }, index) => {
    const plain = name
      .normalize('NFKD')
      .toLowerCase()
      .replace(/[\u0300-\u036f]/g, '')
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '');
    let slug = plain === '' ? `size-${index + 1}` : plain;
    while (taken.has(slug)) slug = `${slug}-${index + 1}`;
    taken.add(slug);
    return slug;
  });
}
