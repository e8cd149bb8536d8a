/** A line of yarn in, the colours it names by how much of each is needed out: `100 yds each of rust and teal and 220 yds of cream`. */

const AMOUNT = String.raw`\d+(?:\s*-\s*\d+)?\s*(?:g|gr|grams?|oz|m|metres?|meters?|yds?|yards?)`;
const COLOUR = String.raw`\p{L}[\p{L}’'-]*(?:\s(?!and\b|or\b|for\b)\p{L}[\p{L}’'-]*)?`;
const LIST = String.raw`${COLOUR}(?:(?:\s*,\s*(?:and\s+)?|\s+and\s+|\s*&\s*)${COLOUR})*`;

/** `100 yds each of Marigold, Teal and Rust`, up to the next amount or the end of what is said. */
const OF_AMOUNT = new RegExp(
  String.raw`\b${AMOUNT}\s+(?:each\s+)?(?:of|in)\s+(?<list>${LIST})(?=\s*(?:[,;.)]|$|\s(?:and|&)\s+(?:about\s+)?\d))`,
  'giu',
);
/** `in Pink, about 18 m, and Leaf Green, about 7 m`. */
const BEFORE_AMOUNT = new RegExp(
  String.raw`(?:\bin|\band|,|^)\s+(?<list>${COLOUR})\s*(?:,|[–—:(-])\s*(?:about\s+|approx(?:imately)?\.?\s+)?${AMOUNT}\b`,
  'giu',
);

/** As they are named; none where fewer than two are. */
export function coloursByAmount(text: string): string[] {
  for (const form of [OF_AMOUNT, BEFORE_AMOUNT]) {
    const names = [...text.matchAll(form)].flatMap(({ groups }) =>
      (groups?.list ?? '').split(/\s*(?:,|&|\band\b)\s*/).filter((name) => name !== ''),
    );
    if (names.length > 1) return names.map((name) => name.trim());
  }
  return [];
}
