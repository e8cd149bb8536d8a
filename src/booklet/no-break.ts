/** Instruction text in, the same with no-break spaces where a maker would stumble: `ch 3`, `2 dc`, `Row 4`. */

const NO_BREAK = '\u00a0';

export function keepNumbersTogether(text: string): string {
  return (
    text
      // "ch 3", "sk 2", "miss 2", "Row 4", "Rnds 5": the number belongs to the word before it.
      .replace(/\b(chs?|chains?|sk|skip|miss|rows?|rnds?|rounds?|size|hook) (?=\d)/gi, `$1${NO_BREAK}`)
      // "2 dc", "6 times", "1.5 cm": and the word after a number belongs to the number.
      .replace(
        /(^|[\s([*†])(\d+(?:[.,]\d+)?[¼½¾]?) (?=[A-Za-z(×])/g,
        (_all, before: string, number: string) => `${before}${number}${NO_BREAK}`,
      )
      // "10 ½ in" is one measure.
      .replace(/(\d) (?=[¼½¾])/g, `$1${NO_BREAK}`)
      .replace(/([¼½¾]) (?=in\b)/g, `$1${NO_BREAK}`)
      // "ch-2 sp": the space and its length.
      .replace(/\b(ch-\d+|chain-\d+) (?=(?:sps?|spaces?|loops?|lps?)\b)/gi, `$1${NO_BREAK}`)
      // "from *", "×": a sign alone at the start or end of a line gets lost.
      .replace(/\b(from|at|to) (?=[*†‡])/gi, `$1${NO_BREAK}`)
      .replace(/ (?=[×–] )/g, NO_BREAK)
  );
}
