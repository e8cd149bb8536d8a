/** A line of pasted text and what follows it in; whether it heads a piece of the work, with name and number, out. */

import { SMALL_WORDS } from '../notation/number-words.ts';
import { isInstruction, opensStrip, opensWork } from './instruction-words.ts';
import { tableUnit } from './page-lines.ts';
import { statedTerms } from './read-terms.ts';
import { rowLabel } from './row-labels.ts';
import { type TextLine, withoutOrnament } from './tidy-lines.ts';

/** What pieces are called. */
const PIECES =
  /\b(?:squares?|body|heads?|arms?|legs?|ears?|tail|sleeves?|front|back|yoke|brim|crown|cuffs?|hands?|thumbs?|borders?|edgings?|trim|base|sides?|handles?|straps?|panels?|motifs?|hexagons?|triangles?|circles?|flowers?|leaf|leaves|petals?|cent(?:re|er)|bottom|top|lid|wings?|nose|muzzle|hat|scarf|cowl|shawl|blanket|afghan|coasters?|mat|band|collar|pockets?|ribbing|bag|pouch|toe|heel|foot|gusset|main|ball|basket|mittens?|piece|neck|button band|loop|cord|stem|rim|bows?|flags?|pennants?|fins?|flippers?|strings?|belt|ties?)\b/i;

/** `First shoulder`, `Left front`: in small letters, but plain enough on a line of its own. */
const ONE_OF_TWO =
  /^(?:first|second|other|left|right|back|front)(?:\s+(?:left|right|back|front|neck))?\s+(?:shoulders?|fronts?|back|sleeves?|straps?|sides?|half|necks?|edge)$/i;

/** `Half hexagon`, `Large snowflake`: the same of other motifs. */
const OTHER_MOTIF =
  /^(?:half|quarter|full|whole|large|small|mini|tiny|corner|second|third|filler)[ -](?:squares?|hexagons?|triangles?|motifs?|flowers?|lea(?:f|ves)|circles?|stars?|snowflakes?|granny|diamonds?)$/i;

/** `border`, `the ears`, `top edging`: in small letters, as some type all of it. */
const SMALL_PIECE = new RegExp(`^(?:the )?(?:[a-z-]+ ){0,2}${PIECES.source}(?: [a-z]+)?$`);

/** A first row comes next, or what it stands on: the line before it heads them. */
function beginsAnew(lines: readonly TextLine[], from: number): boolean {
  const next = lines.slice(from).find((line) => !line.isRule);
  if (next === undefined) return false;
  return rowLabel(next.text.text)?.number === 1 || opensWork(next.text.text);
}

/** `Centre`, `Left Sleeve`. */
export function namesPiece(text: string): boolean {
  return PIECES.test(text);
}

export interface Beside {
  /** `brown`, `colour B`. */
  readonly words: string;
  /** The name with them, where they are no yarn: `Body (worked flat)`. */
  readonly name: string;
}

export interface PartHeading {
  readonly name: string;
  readonly make: number;
  /** What stands in brackets or behind a comma besides: most often its yarn. */
  readonly beside: Beside | null;
}

/** From `one`, as far as anyone makes of a part in words. */
const NUMBERS: readonly string[] = SMALL_WORDS.slice(1, 13);

/** Null for a line that is no heading. `strict` where other short lines are to be expected, as among materials. */
export function partHeading(
  lines: readonly TextLine[],
  index: number,
  strict: boolean,
  ofStitches = false,
): PartHeading | null {
  const line = lines[index];
  if (line === undefined || line.cells.length > 1) return null;
  const written = withoutOrnament(line.text.text);
  const colon = /:$/.test(written);
  const { text, make, beside } = besideName(written.replace(/\s*[:–—-]+$/, ''));
  if (statedTerms(text) !== null || !isShort(text) || /[.;,!?]$/.test(text) || rowLabel(written) !== null)
    return null;
  if (/^(?:turn|fasten off|join|do not turn|repeat|break yarn)\b/i.test(text) && !colon) return null;
  const capitals = text === text.toUpperCase() && /\p{L}{2}/u.test(text);
  const inName = madeIn(text);
  const made = { ...inName, make: Math.max(make, inName.make), beside };
  const named =
    (PIECES.test(text) && isTitled(text)) || (line.gap && (ONE_OF_TWO.test(text) || OTHER_MOTIF.test(text)));
  const small = SMALL_PIECE.test(text) && beginsAnew(lines, index + 1);
  const marked = capitals || colon || made.make > 1 || line.mark === 'heading';
  if (!marked && /\d/.test(text)) return null;
  // Among materials a short line is one of them, unless its rows follow at once.
  const apart = line.gap && (!strict || lines[index + 1]?.gap === false);
  if (!marked && !named && !small && !(isTitled(text) && apart)) return null;
  return leadsToWork(lines, index + 1, ofStitches) && made.name !== '' ? made : null;
}

/** `AFGHAN: With A, chain 186.`, `Cord (A): ch 121, sl st in 2nd ch …`: a heading with what its piece begins with behind it. */
export function headingBefore(text: string, apart: boolean): { heading: PartHeading; restAt: number } | null {
  const found = /^(\p{Lu}[^:.;,]{1,40}?)\s*:\s+/u.exec(text);
  if (found?.[1] === undefined || !PIECES.test(found[1]) || !isTitled(besideName(found[1]).text)) return null;
  const restAt = found[0].length;
  const rest = text.slice(restAt);
  if (!opensWork(rest) && !(apart && opensStrip(rest))) return null;
  const { text: name, make, beside } = besideName(found[1]);
  const made = madeIn(name);
  return { heading: { name: made.name, make: Math.max(make, made.make), beside }, restAt };
}

/** `ch = chain`: a list of abbreviations is no work. */
const ENTRY = /^[^\s=]{1,14}(?: [^\s=]{1,10}){0,2}\s*=\s/;

/** `Work as given for Left Front, and turn the piece over.` */
const WORKED_AS =
  /(?:^|[.!]\s+)(?:work|make)\s+(?:exactly\s+)?(?:the\s+)?(?:same\s+)?as\s+(?:given\s+)?for\b/i;

function isShort(text: string): boolean {
  return text !== '' && text.length <= 60 && text.split(' ').length <= 8;
}

/** Its words begin with capitals, small words between them aside. */
export function isTitled(text: string): boolean {
  const words = text.split(/\s+/).filter((word) => /\p{L}/u.test(word));
  const small = /^(?:of|the|a|an|and|for|in|with|to|on|by|from|or|st|sts|sc|dc|hdc|tr|&)$/i;
  return (
    words.length > 0 &&
    words.every((word, i) => /^[^\p{L}]*\p{Lu}/u.test(word) || (i > 0 && small.test(word)))
  );
}

/** A row, or an instruction before one, comes next; a sentence or two may stand between. */
function leadsToWork(lines: readonly TextLine[], from: number, ofStitches: boolean): boolean {
  let sentences = 0;
  for (let i = from; i < Math.min(lines.length, from + 6); i += 1) {
    const line = lines[i];
    if (line === undefined || line.isRule) continue;
    const { text } = line.text;
    if (
      rowLabel(text) !== null ||
      WORKED_AS.test(text) ||
      (ofStitches ? opensWork(text) : (isInstruction(text) && !ENTRY.test(text)) || opensWork(text))
    )
      return true;
    // `Picot:` and under it its words: among special stitches no row is far.
    if (ofStitches && isInstruction(text)) return false;
    const cells = line.cells.map((cell) => cell.text);
    if (cells.length > 1 && (tableUnit(cells) !== null || isInstruction(cells[1] ?? ''))) return true;
    sentences += 1;
    if (sentences > 2 || line.mark === 'heading') return false;
  }
  return false;
}

/** `Petals (make 5, colour B)`, `LEAF, green (make 2)`: the name by itself, how many, and what else is said beside it. */
function besideName(written: string): { text: string; make: number; beside: Beside | null } {
  let text = written;
  let make = 1;
  const others: string[] = [];
  const bracketed = /^(.*?\S)\s*[([]([^()[\]]+)[)\]]$/.exec(text);
  if (bracketed?.[1] !== undefined && bracketed[2] !== undefined) {
    text = bracketed[1];
    const each = inEachColour(bracketed[2]);
    make = each?.make ?? make;
    for (const said of each === null ? bracketed[2].split(/\s*[,;]\s*/) : [each.said]) {
      const many = manyIn(said);
      if (many === null) others.push(said);
      else {
        make = many.make;
        if (many.rest !== '') others.push(many.rest);
      }
    }
  }
  const comma = /^(\p{L}[^,]*?),\s+(?:in\s+)?([\p{L} ]{1,24})$/u.exec(text);
  if (comma?.[1] !== undefined && comma[2] !== undefined && !/\bmake\b/i.test(comma[2])) {
    text = comma[1];
    others.unshift(comma[2]);
  }
  // After a comma and in brackets both: only one can be its yarn.
  if (others.length > 1 && comma !== null) return { text: written, make: 1, beside: null };
  const words = others.join(', ').trim();
  const whole = capitalised(text);
  const named = comma === null ? `${whole} (${words})` : `${whole}, ${words}`;
  return { text, make, beside: words === '' ? null : { words, name: named } };
}

/** `make 6 in A, 5 in B and 5 in C`: how many in all; null where they are not told colour by colour. */
function inEachColour(said: string): { make: number; said: string } | null {
  const [, list] = /^make\s+(.+)$/i.exec(said) ?? [];
  const counts = list
    ?.split(/\s*(?:[,;]|\band\b)\s*/)
    .map((one) => /^(\d{1,3}|[a-z]+)\s+(?:in|of)\s+\S/i.exec(one)?.[1]);
  if (list === undefined || counts === undefined || counts.length < 2) return null;
  const numbers = counts.map((count) => (count === undefined ? null : numberOf(count)));
  const make = numbers.reduce<number>((sum, n) => sum + (n ?? Number.NaN), 0);
  return Number.isNaN(make) ? null : { make, said: list };
}

/** `make 2`, `make two in brown`, `x 2`; null where nothing says how many. */
function manyIn(said: string): { make: number; rest: string } | null {
  const found = /^(?:make|x|×)\s*(\d{1,4}|[a-z]+)\b\s*(?:alike|the same|of each)?\s*/i.exec(said);
  const make = found === null ? null : numberOf(found[1] ?? '');
  return found === null || make === null ? null : { make, rest: said.slice(found[0].length) };
}

/** How many of it to make, 1 where nothing is said. */
export function makeIn(text: string): number {
  return madeIn(text).make;
}

/** `Sleeves (make 2)`, `Make 9 squares`, `SQUARE – make nine`. */
function madeIn(heading: string): { name: string; make: number } {
  // `--- BRIM ---`: the strokes only set it off.
  const text = heading.replace(/^[-–—=~\s]+(?=\p{L})|(?<=[\p{L})])\s+[-–—=~]+$/gu, '');
  const found =
    /\s*[([–—-]?\s*\bmake\s+(\d{1,4}|[a-z]+)\b(?:\s+(?:alike|the same|of each|in each colou?r))?\s*[)\]]?\s*/i.exec(
      text,
    );
  const make = found === null ? 1 : numberOf(found[1] ?? '');
  if (found === null || make === null || make < 1) return { name: capitalised(text), make: 1 };
  const rest = `${text.slice(0, found.index)} ${text.slice(found.index + found[0].length)}`
    .replace(/\s+/g, ' ')
    .trim();
  return { name: capitalised(rest.replace(/[\s:,–—-]+$/, '')), make };
}

function numberOf(words: string): number | null {
  if (/^\d+$/.test(words)) return Number(words);
  const at = NUMBERS.indexOf(words.toLowerCase());
  return at === -1 ? null : at + 1;
}

/** Capitals that only made a heading are taken back: `FIRST SQUARE` -> `First Square`. */
export function capitalised(text: string): string {
  if (text !== text.toUpperCase()) return text.charAt(0).toUpperCase() + text.slice(1);
  const small = /^(?:of|the|a|an|and|for|in|with|to|on|by|from|or)$/i;
  return text
    .split(' ')
    .map((word, i) => {
      if (/^[IVX]+$/.test(word) || /^[A-Z]$/.test(word)) return word;
      if (i > 0 && small.test(word)) return word.toLowerCase();
      return word
        .toLowerCase()
        .replace(
          /(^|[-('"“/])(\p{L})/gu,
          (_, before: string, letter: string) => before + letter.toUpperCase(),
        );
    })
    .join(' ');
}
