/** A slug in, the pattern's own part of it out: `salt-marsh/reed-square` -> `reed-square`. */

export function ownName(slug: string): string {
  return slug.slice(slug.lastIndexOf('/') + 1);
}
