/** A special stitch's name without the word that it begins a round: `beg cl` -> `cl`. */
export function plainName(name: string): string {
  return name.replace(/^(?:beg|beginning)\s+/i, '');
}
