/** Lines of materials that tell of yarn in; letter, colour, weight, fibre and ball of each yarn out. */

import { readBalls } from '../pattern/balls.ts';
import { coloursByAmount } from './colours-by-amount.ts';
import { findMeasure } from './read-measures.ts';
import type { Item } from './sorted-lines.ts';
import type { TranscribedYarn } from './transcript.ts';
import { behindAll, isLettered, letteredYarn, lettersIn, rolesIn, withLetters } from './yarn-letters.ts';

/** Names of weights with their Craft Yarn Council numbers, the longer first; shop names are common practice. */
const WEIGHTS: readonly (readonly [RegExp, number])[] = [
  [/\bsuper[- ]?(?:bulky|chunky)\b/i, 6],
  [/\bsuper[- ]?fine\b|\bfingering\b|\bsock\b|\b[34][- ]?ply\b/i, 1],
  [/\blight worsted\b|\bd\.?k\.?\b|\bdouble[- ]knit(?:ting)?\b|\b8[- ]?ply\b/i, 3],
  [/\bworsted\b|\baran\b|\bafghan\b|\b10[- ]?ply\b|\bmedium[- ]weight\b/i, 4],
  [/\bbulky\b|\bchunky\b|\b12[- ]?ply\b/i, 5],
  [/\bsport\b|\b5[- ]?ply\b/i, 2],
  [/\bjumbo\b/i, 7],
  [/\blace(?:weight)?\b|\b2[- ]?ply\b/i, 0],
  [/\blight[- ]weight\b/i, 3],
];
const NUMBERED_WEIGHT =
  /(?:\b(?:weight|category|cat\.?|cyc|size)\s*#?\s*|#)([0-7])\b|[([]\s*#?([0-7])\s*[)\]]|\b([0-7])\s*[-–/]?\s*(?:lace|super fine|fine|light|medium|bulky|super bulky|jumbo)\b/i;

const FIBRES =
  /\b(?:\d{1,3}\s*%\s*)?(?:(?:merino|lambs?|superwash|mercerised|mercerized|organic|recycled|baby|pure|new|virgin|egyptian)\s+)*(?:wool|cotton|acrylic|merino|alpaca|linen|flax|silk|bamboo|nylon|polyamide|polyester|mohair|cashmere|viscose|hemp|jute|raffia|angora|rayon|lyocell|elastane)\b(?:\s+blend\b)?/gi;

const YARN_WORDS =
  /\b(?:yarns?|balls?|skeins?|hanks?|cakes?|cones?|wool|cotton|acrylic|alpaca|merino|worsted|aran|d\.?k\.?|chunky|bulky|fingering|double knitting|\d+[- ]?ply)\b/i;
const OTHER_THINGS =
  /\b(?:needles?|markers?|scissors|pins?|tape|stuffing|fibrefill|fiberfill|filling|eyes?|buttons?|zip|zipper|lining|fabric|ribbon|elastic|hook)\b/i;

const SO_MANY_COLOURS =
  /\b([2-9]|two|three|four|five|six|seven|eight|nine)\s+(?:(?:different|contrasting|bright|main)\s+)?colou?rs\b/i;
const WORDS = ['two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** `3 colours`, `in four different colours`: how many a line says there are. */
export function coloursSaid(text: string): number | null {
  const said = SO_MANY_COLOURS.exec(text)?.[1];
  if (said === undefined) return null;
  const word = WORDS.indexOf(said.toLowerCase());
  return word === -1 ? Number(said) : word + 2;
}

/** A line of materials that is about yarn. */
export function isYarnLine(text: string, field: Item['field']): boolean {
  if (OTHER_THINGS.test(text) && !/\bballs?\b|\bskeins?\b|%/i.test(text)) return false;
  return (
    field === 'yarn' || coloursSaid(text) !== null || letteredYarn(text) !== null || YARN_WORDS.test(text)
  );
}

export function readYarns(items: readonly Item[]): TranscribedYarn[] {
  const yarns: TranscribedYarn[] = [];
  /** A line without a letter gives what the lettered lines after it do not say. */
  let shared: Details | null = null;
  let sharedItem: Item | null = null;
  for (const item of items) {
    const { text } = item.text;
    // `3 colours` alone tells of no yarn.
    if (text.replace(SO_MANY_COLOURS, '').replace(/\W/g, '') === '') continue;
    const several = lettersIn(text);
    const details = detailsIn(text);
    if (several.length > 1) {
      const head = detailsIn(`${text.slice(0, several[0]?.start ?? 0)} ${behindAll(text)}`);
      for (const { letter, words } of several)
        yarns.push(yarnOf(letter, filled(detailsIn(words), filled(head, shared)), item));
      continue;
    }
    const lettered = letteredYarn(text);
    if (lettered !== null) {
      yarns.push(yarnOf(lettered.letter, filled(detailsIn(lettered.words), shared), item));
      continue;
    }
    const roles = rolesIn(text);
    if (roles !== null) {
      const own = { ...details, colour: null, balls: null };
      yarns.push(yarnOf('MC', filled({ ...own, balls: ballsIn(roles.main) }, shared), item));
      yarns.push(yarnOf('CC', filled({ ...own, balls: ballsIn(roles.contrast) }, shared), item));
      [shared, sharedItem] = [null, null];
      continue;
    }
    const each = coloursIn(text);
    if (each.length > 1) {
      for (const { colour, balls } of each)
        yarns.push(yarnOf('', filled({ ...details, colour, balls }, shared), item));
      [shared, sharedItem] = [null, null];
      continue;
    }
    if (shared !== null && sharedItem !== null && !items.some((other) => isLettered(other)))
      yarns.push(yarnOf('', shared, sharedItem));
    shared = filled(
      details,
      shared !== null && details.weight === null && details.fibre === null ? shared : null,
    );
    sharedItem = item;
  }
  if (shared !== null && sharedItem !== null && !items.some(isLettered))
    yarns.push(yarnOf('', shared, sharedItem));
  return withLetters(yarns);
}

interface Details {
  readonly colour: string | null;
  readonly weight: number | null;
  readonly fibre: string | null;
  readonly ballLength: string | null;
  readonly ballMass: string | null;
  readonly balls: readonly number[] | null;
}

function detailsIn(text: string): Details {
  const fibres = text.match(FIBRES);
  const length = findMeasure(text, ['m', 'yd']);
  const mass = findMeasure(text, ['g', 'oz']);
  const perBall =
    length !== null && mass !== null
      ? Math.min(Math.abs(length.start - mass.end), Math.abs(mass.start - length.end)) <= 24
      : /\b(?:balls?|skeins?|hanks?|cakes?)\b/i.test(text) && length === null;
  return {
    colour: colourIn(text),
    weight: weightIn(text),
    fibre:
      fibres === null
        ? null
        : [...new Set(fibres.map((fibre) => fibre.replace(/\s+/g, ' ').toLowerCase()))].join(', '),
    ballLength: perBall ? (length?.measure ?? null) : null,
    ballMass: perBall ? (mass?.measure ?? null) : null,
    balls: ballsIn(text),
  };
}

const BALLS =
  /(?<![\d.,/-])(\d{1,3}(?:\s*[([]\s*\d{1,3}(?:\s*[,:]\s*\d{1,3})*\s*[)\]])?)\s*(?:x\s+(?:[\d.]+\s*(?:g|oz|m|yds?)\s+)?)?(?:balls?|skeins?|hanks?|cakes?)\b/i;

/** `2 balls`, `3(4:5) balls`, `1 (1, 2) x 50 g ball`. */
function ballsIn(text: string): readonly number[] | null {
  const written = BALLS.exec(text)?.[1];
  return written === undefined ? null : readBalls(written);
}

/** `in two colours: grey and blue`, `1 ball cream, 2 balls rust`: each with its own balls; none where one colour is told. */
function coloursIn(text: string): { colour: string; balls: readonly number[] | null }[] {
  const listed = /\bcolou?rs\s*(?::|[–—-]\s)\s*([\p{L}’' -]+(?:(?:,|;|\s*&|\s+and)\s+[\p{L}’' -]+)+)/u.exec(
    text,
  )?.[1];
  if (listed !== undefined)
    return listed
      .split(/\s*(?:,|;|&|\band\b)\s*/)
      .filter((colour) => colour !== '')
      .map((colour) => ({ colour: colour.trim(), balls: null }));
  const inList = LIST_OF_COLOURS.exec(text) ?? COLOURS_AFTER_FIBRE.exec(text);
  if (inList?.groups?.list !== undefined) {
    const balls = /(\d+)\s+(?:ball|skein|hank)s?\b/i.exec(text.slice(0, inList.index))?.[1];
    const names = inList.groups.list
      .split(/\s*(?:,|;|&|\band\b)\s*/)
      .map((one) => one.replace(/\([^)]*\)|^(?:a\s+)?(?:small amounts?|scraps?|bits?)\s+of\s+/gi, '').trim())
      .filter((one) => one !== '');
    if (names.every(isColour))
      return names.map((colour) => ({ colour, balls: balls === undefined ? null : readBalls(balls) }));
  }
  const counted = [...text.matchAll(COLOUR_OF_BALLS)];
  if (counted.length > 0)
    return counted.map((found) => ({ colour: (found[2] ?? '').trim(), balls: readBalls(found[1] ?? '') }));
  const byMass = coloursByMass(text);
  const names = byMass.length > 0 ? byMass : coloursByAmount(text);
  return names.every(isColour) ? names.map((colour) => ({ colour, balls: null })) : [];
}

/** `18 g Raspberry / 12 g Blush / 50 g Linen for all`, `in rose, oddments of green`: each weighed, or the rest of a ball. */
function coloursByMass(text: string): string[] {
  const led = /\bin\s+(\p{L}[\p{L}’'-]*(?: \p{L}[\p{L}’'-]*)?)(?=,)/iu.exec(text)?.[1];
  const rests = [...text.matchAll(REST_OF_COLOUR)].map((found) => found[1] ?? '');
  const names =
    led !== undefined && rests.length > 0
      ? [led, ...rests]
      : [...text.matchAll(COLOUR_OF_MASS)].map((found) => found[1] ?? '');
  return names.length > 1 && names.every(isColour) ? names : [];
}

const COLOUR_OF_MASS =
  /\b\d+\s*(?:g|grams?|oz)\s+(?:(?:of|in)\s+)?(\p{L}[\p{L}’'-]*(?: \p{L}[\p{L}’'-]*)?)(?=\s*(?:[,;./)]|$|\band\s+\d|\bfor\b))/giu;
const REST_OF_COLOUR =
  /\b(?:oddments?|scraps?|small amounts?|bits|a little|some)\s+(?:of\s+)?(\p{L}[\p{L}’'-]*)(?=\s*(?:[,;.)]|$|\band\b))/giu;

const ONE_COLOUR = String.raw`(?:(?:a\s+)?(?:small amounts?|scraps?|bits?)\s+of\s+)?\p{L}[\p{L}’'-]*(?:\s\p{L}[\p{L}’'-]*)?(?:\s*\([^()]*\))?`;
/** `each of aqua, coral and straw`, `in grey (60 g), pink (small amount)`, at the end of what is said. */
const LIST_OF_COLOURS = new RegExp(
  String.raw`\b(?:each of|each in|in)\s+(?<list>${ONE_COLOUR}(?:(?:\s*,\s*(?:and\s+)?|\s+and\s+|\s*&\s*)${ONE_COLOUR})+)\s*\.?$`,
  'iu',
);

const PLAIN = String.raw`(?:(?:light|dark|pale|deep|bright|off)\s+)?(?:white|cream|ecru|black|gr[ae]y|red|pink|orange|yellow|gold|green|teal|blue|navy|purple|brown|beige)`;
/** `Worsted weight cotton, gold and brown`: with no word before them the last has to be a colour that everyone knows. */
const COLOURS_AFTER_FIBRE = new RegExp(
  String.raw`\b(?:cotton|wool|acrylic|yarn|blend|weight|worsted|d\.?k\.?)\s*[,:]\s*(?<list>${ONE_COLOUR}(?:\s*,\s*${ONE_COLOUR})*\s*(?:,\s*and|and|&|,)\s+${PLAIN})\s*\.?$`,
  'iu',
);

function isColour(words: string): boolean {
  return (
    /^[\p{L}’'-]+(?: [\p{L}’'-]+){0,2}$/u.test(words) &&
    weightIn(words) === null &&
    !/\b(?:your|choice|an?y?|shades?|weight|colou?rs?|yarn|wool|cotton|acrylic|needle|hook|odds|ends|bits|scraps|each|total|main|contrast)\b/i.test(
      words,
    )
  );
}

const COLOUR_OF_BALLS =
  /(?<![\d.,/-])(\d{1,3})\s*(?:balls?|skeins?|hanks?|cakes?)\s+(?:(?:of|in|each)\s+)?(\p{L}[\p{L}’' -]{2,24}?)(?=\s*(?:[,;.)]|$|\band\s+\d))/giu;

function weightIn(text: string): number | null {
  const numbered = NUMBERED_WEIGHT.exec(text);
  const number = numbered?.[1] ?? numbered?.[2] ?? numbered?.[3];
  if (number !== undefined) return Number(number);
  return WEIGHTS.find(([words]) => words.test(text))?.[1] ?? null;
}

/** `in reed`, `shade: reed`, `reed, 2 balls`, `2 balls of reed`. */
function colourIn(text: string): string | null {
  const said =
    /\b(?:in|shade|colou?r(?:way)?)\s*:?\s+(?:(?:the )?(?:shade|colou?r)\s*:?\s+)?([\p{L}’' -]{2,30}?)(?=\s*(?:[,;.()/\d–—]|$|\bfor\b))/iu.exec(
      text,
    )?.[1];
  const plain = said ?? colourInBrackets(text) ?? colourAlone(text);
  const colour = plain?.trim() ?? '';
  return colour === '' ||
    /^(?:your|the|an?y?|each|total|one|two|three|colou?r|shade|weight|size|approx\w*)\b/i.test(colour)
    ? null
    : colour;
}

/** `(Mustard), 3 balls`: the name alone in brackets before all else. */
function colourInBrackets(text: string): string | null {
  const found = /^(?:\d+\s+(?:ball|skein|hank)s?\s+)?\((\p{L}[\p{L}’' -]{2,24})\)/iu.exec(text)?.[1];
  return found === undefined || weightIn(found) !== null ? null : found;
}

/** What is left of a lettered line once figures, balls and fibres are taken away; null when it is more than a name. */
function colourAlone(text: string): string | null {
  const left = text
    .replace(/\([^)]*\)/g, ' ')
    .replace(FIBRES, ' ')
    .replace(/\b\d+\s*(?:x|×)\s*/gi, ' ')
    .replace(
      /\b(?:approx(?:imately)?\.?|about)?\s*[\d.,/¼½¾]+\s*(?:g|gr|grams?|m|metres?|meters?|yds?|yards?|oz)\b\.?/gi,
      ' ',
    )
    .replace(
      /\b(?:\d+|one|two|three|four|five|six)?\s*(?:balls?|skeins?|hanks?|cakes?|yarns?)\b(?:\s+(?:of|in|each))?/gi,
      ' ',
    )
    .replace(/[–—:;,./\s-]+/g, ' ')
    .trim();
  const plain = PLAIN_COLOUR.exec(left)?.[1];
  if (plain !== undefined) return plain;
  const words = left.split(' ');
  if (left === '' || words.length > 3 || !/^[\p{L}’' ]+$/u.test(left)) return null;
  return WEIGHTS.some(([weight]) => weight.test(left)) || /\b(?:yarn|weight|of|or|used)\b/i.test(left)
    ? null
    : left;
}

/** `DK white for the edging`: a colour that everyone knows, behind the weight of the yarn. */
const PLAIN_COLOUR = new RegExp(
  String.raw`^(?:(?:d\.?k\.?|aran|worsted|chunky|bulky|sport|fingering|\d ply)\s+)(${PLAIN})(?:\s+for\b.*)?$`,
  'i',
);

function filled(own: Details, from: Details | null): Details {
  if (from === null) return own;
  return {
    colour: own.colour,
    weight: own.weight ?? from.weight,
    fibre: own.fibre ?? from.fibre,
    ballLength: own.ballLength ?? from.ballLength,
    ballMass: own.ballMass ?? from.ballMass,
    balls: own.balls,
  };
}

function yarnOf(letter: string, details: Details, item: Item): TranscribedYarn {
  return { letter, ...details, described: true, span: item.span };
}
