/** A sentence in, whether it crochets pieces together or onto one another in a way that cannot be worked here, out. */

import { namesWork } from './instruction-words.ts';

// A "side" is none: work goes along the other side of its own chain.
const PIECE = '(?:motif|square|hexagon|circle|flower|granny|piece|panel|strip)';
const TOGETHER: readonly RegExp[] = [
  /\bthrough (?:both|all|the two|two|all (?:four|three|4|3))(?: of the)?\s*(?:layers|thicknesses|pieces|sides|edges|loops of both)\b/i,
  /^(?:flatten|fold|pinch|lay|holding|hold|with (?:wrong|right|ws|rs) sides? together|place (?:the )?(?:two|both|pieces))\b/i,
  /\b(?:last|final) (?:row|round|rnd)\b.*\b(?:to|and|with)\b.*\b(?:foundation|first row|starting ch|beginning ch)/i,
  new RegExp(`^(?:make|work)\\b.*\\b(?:as|like)\\b.*\\b(?:first|second|previous|other)\\s+${PIECE}\\b`, 'i'),
  new RegExp(
    `\\b(?:of|on|to|from)\\s+(?:the\\s+)?(?:first|previous|adjacent|adjoining|neighbou?ring|other)\\s+${PIECE}\\b`,
    'i',
  ),
  /\bin(?:to)? (?:the )?corresponding\b/i,
  /^(?:re)?(?:join|attach)\b[^.\d]*\bother (?:end|edge|side)\b[^.\d]*\b(?:once more|again|to match|(?:in )?the same|likewise)\b[^.\d]*\.?$/i,
  /\bfor (?:a |the )?hang(?:ing|er) loop\b/i,
];

/** `Flatten and sc through both layers`, `Work as first motif to end of Rnd 1`; not `Sew the arms on`. */
export function isAssembly(text: string): boolean {
  return TOGETHER.some((form) => form.test(text)) && namesWork(text);
}

/** `Fold the last row in half and join with 11 ss through both thicknesses`: a seam, and nothing that is worked into. */
export function isSlippedSeam(text: string): boolean {
  const through =
    TOGETHER[0]?.test(text) === true || TOGETHER[2]?.test(text) === true || /\bthrough both\b/i.test(text);
  return through && text.search(SLIPPED) >= 0 && !namesWork(text.replace(SLIPPED, ' ').replace(EDGES, ' '));
}

const SLIPPED = /\b(?:\d+(?: ?\([\d, :]+\))?\s+)?(?:ss|sl[ -]?sts?|slip[ -]?stitch(?:es|ed|ing)?|slst)\b/gi;
const EDGES =
  /\b(?:do not|don['’]?t) (?:cut|break)(?: the)? yarn\b|\b(?:foundation|starting|beginning|base)? ?(?:ch|chain)\b|\b(?:sts?|stitch(?:es)?)\b|\bturn(?:ed)?\b|\bin half\b|\b(?:front|back)s?\b/gi;

/** `Place front and back with wrong sides together and work through both layers.`: how pieces are held, with nothing worked yet. */
export function isHolding(text: string): boolean {
  if (!/^(?:place|hold|holding|lay|put|pin)\b[^.]*\btogether\b/i.test(text) || /\d/.test(text)) return false;
  // Front and back are the names of pieces here, of no stitch.
  return !namesWork(text.replace(THROUGH_BOTH, '').replace(/\b(?:front|back)\b/gi, ''));
}

const THROUGH_BOTH =
  /\b(?:and |then )?(?:work(?:ing)?|crochet(?:ing)?) through (?:both|all|the two|two)(?: of the)? (?:layers|thicknesses|pieces|edges)\b(?: (?:together|throughout|at once|all (?:a)?round))?/i;

/** The words of the sentences of a line: where each begins and ends. */
export function sentencesOf(text: string): [number, number][] {
  const ends = [...text.matchAll(/[.!?][)\]"”]?\s+(?=["“(]?\p{Lu})/gu)].map(
    (found) => found.index + found[0].length,
  );
  const starts = [0, ...ends];
  return starts.map((start, i) => [start, starts[i + 1] ?? text.length]);
}
