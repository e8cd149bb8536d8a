/** Lines that tell of yarn in, the letters that the rows call those yarns by out: `A`, `MC`, `CC1`. */

import type { Item } from './sorted-lines.ts';
import type { TranscribedYarn } from './transcript.ts';

const LETTERED =
  /^(?:(?:(?:[Mm]ain|[Bb]order|[Ee]dging|[Cc]ontrast(?:ing)?|[Ss]econd|[Tt]hird)\s+)?(?:[Yy]arn|[Cc]olou?r|[Cc]ol\.?|[Ss]hade|[Cc]ontrast)\s+)?([A-Z]|MC|CC\d?|C\d|M)\s*(?:[:=)]|[–—-](?=\s)|\s(?=\())\s*/;
/** `Color A, yellow: 40 yards`. */
const NAMED_BEHIND = /^(?:[Yy]arn|[Cc]olou?r|[Ss]hade)\s+([A-Z]|CC\d?)\s*,\s*(?=[\p{L} ]+[:,–—-])/u;
const LETTER_IN =
  /(?:^|[:;,(]\s*|\s[–—/-]\s+|\band\s+|\bof\s+|\b(?:ball|skein|hank)s?\s+)(?:(?:[Yy]arn|[Cc]olou?r)\s+)?([A-Z]|MC|CC\d?)\s*(?:[:=–—-]\s*|\s+)(?=\S)/g;
/** `cream (MC)`, `four contrasts (A, B, C and D)`. */
const BRACKETED = /\(((?:MC|CC\d?|[A-Z])(?:(?:,? and |, )(?:MC|CC\d?|[A-Z]))*)\)/g;
const BETWEEN = /,? and |, /;
const IN_BRACKETS = /\((MC|CC\d?|[A-Z])\)/;
/** `Main colour: cream`, `Contrast colour 2 – rust`: the letters are the trade's. */
const BY_ROLE = /^(?:(main)|contrast(?:ing)?)\s+(?:colou?r|yarn|shade)\s*(\d?)\s*(?:[:=]|[–—-](?=\s))\s*/i;

export interface Lettered {
  readonly letter: string;
  /** The words that tell of the yarn. */
  readonly words: string;
}

/** `Yarn A: reed`, `MC – cream`, `Cotton in cream (MC)`, `Main colour: cream`; null for a line with no letter. */
export function letteredYarn(text: string): Lettered | null {
  const first = LETTERED.exec(text) ?? NAMED_BEHIND.exec(text);
  if (first?.[1] !== undefined) return { letter: first[1], words: text.slice(first[0].length) };
  const bracketed = IN_BRACKETS.exec(text)?.[1];
  if (bracketed !== undefined) return { letter: bracketed, words: withoutRole(text) };
  const role = BY_ROLE.exec(text);
  if (role === null) return null;
  return { letter: role[1] === undefined ? `CC${role[2] ?? ''}` : 'MC', words: text.slice(role[0].length) };
}

/** `1 ball main color, a few yards of contrast`: what is said of each, up to its own words; null where not both are named. */
export function rolesIn(text: string): { readonly main: string; readonly contrast: string } | null {
  const found = /^(.*?\bmain (?:colou?r|yarn|shade))\b(.*?\bcontrast(?:ing)?\b)/is.exec(text);
  if (found?.[1] === undefined || found[2] === undefined || /\d\s*contrast/i.test(text)) return null;
  return { main: found[1], contrast: found[2] };
}

/** "Main colour" of `Main colour (MC): cream` is no colour. */
function withoutRole(text: string): string {
  return text.replace(/^(?:main|contrast(?:ing)?)\s+(?:colou?r|yarn|shade)\s*\d?\s*/i, '');
}

/** `A 3 balls, B 2 balls`: each letter with the words up to the next. */
export function lettersIn(text: string): (Lettered & { readonly start: number })[] {
  const brackets = [...text.matchAll(BRACKETED)];
  const bracketed = brackets.flatMap((match, i) => {
    const behind = text.slice(match.index + match[0].length, brackets[i + 1]?.index);
    const last = brackets[i - 1];
    const ahead = text.slice(last === undefined ? 0 : last.index + last[0].length, match.index);
    const words = colourAhead(ahead) ?? /^[^.,;]*/.exec(behind)?.[0].trim() ?? '';
    return (match[1] ?? '').split(BETWEEN).map((letter) => ({ letter, start: match.index, words }));
  });
  if (bracketed.length > 1) return bracketed;
  const found = [...text.matchAll(LETTER_IN)];
  const behind = behindAll(text);
  const lengthBehind = behind === '' ? 0 : text.length - text.lastIndexOf(behind);
  return found.map((match, i) => ({
    letter: match[1] ?? '',
    start: match.index,
    words:
      `${ballsBefore(text, match)} ${ownWords(text.slice(match.index + match[0].length, found[i + 1]?.index ?? text.length - lengthBehind))}`.trim(),
  }));
}

/** `brown (A), slate grey (B)`: the name right before the letter; null for "main colour" and the like. */
function colourAhead(text: string): string | null {
  const found =
    /(?:^|[,;:.]|\band\b|\b(?:in|of)\b|\bg\b)\s*(?!(?:and|in|of)\b)(\p{L}[\p{L}’'-]*(?: \p{L}[\p{L}’'-]*)?)\s*$/iu.exec(
      text,
    )?.[1];
  const role =
    /\b(?:main|contrasts?|contrasting|colou?rs?|shades?|yarns?|wool|cotton|balls?|skeins?|each|and)\b/i;
  return found === undefined || role.test(found) ? null : found;
}

/** `3 balls of` before the letter. */
function ballsBefore(text: string, match: RegExpMatchArray): string {
  const before = text.slice(0, (match.index ?? 0) + match[0].length);
  return /(\d+\s+(?:ball|skein|hank)s?)\s+(?:each\s+)?(?:of\s+)?\S+\s*$/i.exec(before)?.[1] ?? '';
}

/** Up to the bracket that was open before, or the balls of the next one. */
function ownWords(words: string): string {
  const closed = words.replace(/^([^(]*?)\).*$/s, '$1');
  return closed
    .replace(/(?:,|;|\band\b)?\s*\d+\s*(?:(?:ball|skein|hank)s?\s+(?:each\s*)?)?$/i, '')
    .replace(/;.*$|\s+\/\s*$/s, '');
}

/** `A: moss; B: bark. Worsted, 100% wool.`: what is said of all once each has been named. */
export function behindAll(text: string): string {
  return (
    /\.\s+([^.]*(?:%|ply|worsted|d\.?k\.?|aran|wool|cotton|acrylic|weight)[^.]*)\.?$/i.exec(text)?.[1] ?? ''
  );
}

export function isLettered({ text }: Item): boolean {
  return letteredYarn(text.text) !== null || lettersIn(text.text).length > 1;
}

/** Yarns without a letter take the first that is free; a letter given twice keeps its first yarn. */
export function withLetters(yarns: readonly TranscribedYarn[]): TranscribedYarn[] {
  const taken = new Set(yarns.map(({ letter }) => letter));
  const seen = new Set<string>();
  return yarns.flatMap((yarn) => {
    const free = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].find((one) => !taken.has(one));
    const letter = yarn.letter === '' ? (free ?? '') : yarn.letter;
    taken.add(letter);
    if (letter === '' || seen.has(letter)) return [];
    seen.add(letter);
    return [{ ...yarn, letter }];
  });
}

/** Yarns that no letter was given to, in the order of the list, take those that the rows use: `MC` before `CC`, `A` before `B`. */
export function withLettersOfRows(
  yarns: readonly TranscribedYarn[],
  used: readonly string[],
): TranscribedYarn[] {
  const letters = [...used].sort((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1));
  if (letters.length !== yarns.length || letters.some((letter) => rank(letter) > 1)) return [...yarns];
  return yarns.map((yarn, i) => ({ ...yarn, letter: letters[i] ?? yarn.letter }));
}

function rank(letter: string): number {
  return letter === 'MC' ? 0 : letter.startsWith('CC') ? 1 : 2;
}
