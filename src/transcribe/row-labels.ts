/** A line of pasted text in, where its label ends out: `Row 1 (RS):`, `RND 3 –`, `R4.`, `2nd row:`, `1)`, `Next row`. */

import { isInstruction } from './instruction-words.ts';

const UNIT = '(?:rows?|rnds?|rounds?|rds?|rws?)';
const NUMBER = '(?:\\d+(?:\\s*\\(\\s*[\\d–-]+(?:\\s*[,:/]\\s*[\\d–-]+)*\\s*\\))?|[–-]\\s*\\(\\d+[^)]*\\))';
const LIST = `${NUMBER}(?:\\s*(?:[–—,&/-]|to|and|through)\\s*${NUMBER})*(?:\\s+on(?:wards?)?)?`;
const SIDE =
  '(?:\\s*[([](?:rs|ws|right side|wrong side|rs facing|ws facing|(?:with\\s+)?(?:(?:yarn|colou?r)\\s+[a-z]\\d?|mc|cc\\d?|[a-z]))[)\\]])?';

const NUMBERED = new RegExp(`^${UNIT}\\.?\\s*${LIST}${SIDE}(?:\\s+all sizes)?`, 'i');
const SHORT = new RegExp(`^R\\.?\\s?${LIST}${SIDE}`, 'i');
const ORDINAL = new RegExp(
  `^(?:the\\s+)?(?:\\d+(?:st|nd|rd|th)(?:\\s*(?:[–—,&-]|to|and)\\s*\\d+(?:st|nd|rd|th))*|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|next|last|final)\\s+(?:\\d+(?:\\s*\\([\\d\\s,:/–-]+\\))?\\s+)?${UNIT}${SIDE}`,
  'i',
);
const FOUNDATION =
  /^(?:foundation|base|set-?\s?up|beginning|starting)(?:\s+(?:row|rnd|round|chain|ch|ring))?(?:\s*[([](?:rs|ws)[)\]])?\s*(?=[:–—-])(?!-\s*\d)/i;
const BARE = /^\d{1,3}(?:\s*[–-]\s*\d{1,3})?\s*[.):](?=\s*\D)/;

/** `same as 3` behind a number alone: the row of that number. */
const AS_NUMBER = /^(?:same )?as (?:(?:row|rnd|round)s? ?)?\d{1,3}\b/i;

const NAMED = /^\s*\([a-z][a-z' -]{1,24}\)\s*/i;

export interface RowLabel {
  /** Index just past the label and its mark. */
  readonly end: number;
  /** `1.`: a number alone, which only instructions behind it make a label. */
  readonly bare: boolean;
  /** Brackets with words behind it, and no mark: `ROUND 2 (Raspberry)`. */
  readonly named: boolean;
  /** The first row's number where it has one in figures. */
  readonly number: number | null;
}

/** Null for a line that is no row; `Rnds 1-3 = 8 cm` tells a gauge, `Row 1 is the right side` a fact. */
export function rowLabel(text: string): RowLabel | null {
  for (const [pattern, bare] of [
    [NUMBERED, false],
    [ORDINAL, false],
    [SHORT, false],
    [FOUNDATION, false],
    [BARE, true],
  ] as const) {
    const found = pattern.exec(text)?.[0];
    if (found === undefined) continue;
    // `10th round (eyelets):` has words of its own before the mark.
    const mark =
      /^\s*(?:\([A-Za-z ,-]{2,40}\)\s*(?=[:–—-]))?(?:[:.)]|[–—-](?=\s|[A-Z*(\d]))\s*/.exec(
        text.slice(found.length),
      )?.[0] ?? '';
    // `ROUND 2 (Raspberry)` with its row behind or under it.
    const named = bare || mark !== '' ? '' : (NAMED.exec(text.slice(found.length))?.[0] ?? '');
    const end = found.length + Math.max(mark.length, named.length);
    const rest = text.slice(end).trim();
    const number = Number(/\d+/.exec(found)?.[0] ?? Number.NaN);
    const label = { end, bare, named: named !== '', number: Number.isNaN(number) ? null : number };
    if (bare) return isInstruction(rest.replace(/^\W+/, '')) || AS_NUMBER.test(rest) ? label : null;
    if (mark !== '' || rest === '' || isInstruction(rest)) return label;
  }
  return null;
}
