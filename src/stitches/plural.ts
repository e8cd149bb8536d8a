/** A stitch's name or abbreviation in, its form after a number from 2 up out: `slip stitches`, `24 double crochet`. */

/** Names that end in "crochet" or "together", or in the side a post is worked from, stay as they are, as the trade prints them. */
export function pluralName(name: string): string {
  if (/(?:crochet|together|front|back)$/.test(name)) return name;
  return /(?:s|x|z|ch|sh)$/.test(name) ? `${name}es` : `${name}s`;
}

/** Abbreviations stay as they are, but for those that end in "st" or a whole word: `3 sl sts`, `two 5-dc popcorns`. */
export function pluralAbbr(abbr: string): string {
  return /\b(?:st|popcorn|bobble|puff|bullion)$/.test(abbr) ? `${abbr}s` : abbr;
}
