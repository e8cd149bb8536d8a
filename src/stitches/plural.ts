/** A stitch's name or abbreviation in, its form after a number from 2 up out: `slip stitches`, `24 double crochet`. */

/** Names that end in "crochet" or "together" stay as they are, as the trade prints them. */
export function pluralName(name: string): string {
  if (/(?:crochet|together)$/.test(name)) return name;
  return /(?:s|x|z|ch|sh)$/.test(name) ? `${name}es` : `${name}s`;
}

/** Abbreviations stay as they are, but for those that end in "st": `3 sl sts`. */
export function pluralAbbr(abbr: string): string {
  return /\bst$/.test(abbr) ? `${abbr}s` : abbr;
}
