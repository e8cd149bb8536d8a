/** The name of a file or folder in, a title for a text that names itself nowhere out: `my-square` -> `My Square`. */

export function titled(slug: string): string {
  const words = slug.split(/[-_\s]+/).filter((word) => word !== '');
  return words.map((word) => word.charAt(0).toUpperCase() + word.slice(1)).join(' ') || 'Untitled';
}
