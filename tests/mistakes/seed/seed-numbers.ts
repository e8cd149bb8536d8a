/** Numbers that are one off: in what is to be done, in skips, in repeats and their ends, in rows and multiples. */

import type { Edit, Kind } from './edit.ts';
import { found, type Stretch } from './stretch.ts';

export function seedNumbers(stretch: Stretch): Edit[] {
  const edits: Edit[] = [];
  for (const { at, match, before, after } of found(stretch, /\d+/g)) {
    const n = Number(match[0]);
    const ordinal = /^(?:st|nd|rd|th)\b/.exec(after)?.[0] ?? '';
    for (const other of [n + 1, n - 1]) {
      if (other < 0) continue;
      const kind = kindOf(before, after, ordinal, other > n);
      const end = at + match[0].length + ordinal.length;
      edits.push({ kind, start: at, end, put: ordinal === '' ? String(other) : ordinalOf(other) });
    }
  }
  edits.push(...seedCountWords(stretch), ...seedStops(stretch));
  return edits;
}

/** Sizes in brackets belong to the number before them. */
const SIZES = String.raw`(?:[\d-]+\s*\((?:[\d-]+,\s*)*)?`;
const SKIPS = new RegExp(String.raw`\b(?:sk|skip|miss)\s+(?:first\s+|(?:each of\s+)?next\s+)?${SIZES}$`, 'i');
const STOPS = new RegExp(String.raw`\bto (?:within )?(?:the )?last\s+${SIZES}$`, 'i');
const MULTIPLES = /\bmultiple of\s+(?:\d+\s+plus\s+)?$/i;
const ROWS = /\b(?:rows?|rnds?|rounds?|R)\s*(?:\d+(?:st|nd|rd|th)?(?:,\s*|\s*-\s*R?|\s+and\s+|\s+to\s+))*$/i;

function kindOf(before: string, after: string, ordinal: string, up: boolean): Kind {
  if (MULTIPLES.test(before)) return 'another multiple';
  if (ROWS.test(before) || /^(?:st|nd|rd|th)? (?:row|round|rnd)\b/.test(after)) return 'another row repeated';
  if (/^(?:[\s\d,]*\))?\s*(?:more\s+)?times\b/.test(after) || /\bx\s*$/.test(before))
    return 'a repeat goes once more or less';
  if (SKIPS.test(before)) return 'another number skipped';
  if (STOPS.test(before)) return 'a repeat stops elsewhere';
  if (ordinal !== '') return 'an ordinal one off';
  return up ? 'a number one too many' : 'a number one too few';
}

const COUNT_WORDS: Readonly<Record<string, readonly string[]>> = {
  once: ['twice'],
  twice: ['once', '3 times'],
  'three times': ['twice', 'four times'],
  'four times': ['three times', 'five times'],
};

function seedCountWords(stretch: Stretch): Edit[] {
  return found(stretch, /\b(?:once|twice|three times|four times)\b/gi).flatMap(({ at, match }) =>
    (COUNT_WORDS[match[0].toLowerCase()] ?? []).map((put) => ({
      kind: 'a repeat goes once more or less' as const,
      start: at,
      end: at + match[0].length,
      put,
    })),
  );
}

/** "to last st" a stitch sooner; "rep from * across" with its end forgotten. */
function seedStops(stretch: Stretch): Edit[] {
  const kind = 'a repeat stops elsewhere' as const;
  return [
    ...found(stretch, /\bto last (?=(?:st|sc|dc|tr|ch|hdc|htr)\b)/g).map(({ at, match }) => ({
      kind,
      start: at + match[0].length,
      end: at + match[0].length,
      put: '2 ',
    })),
    ...found(stretch, /(?<=\b(?:rep|repeat) from \*) (?:across|around|to end)\b/g).map(({ at, match }) => ({
      kind,
      start: at,
      end: at + match[0].length,
      put: '',
    })),
  ];
}

function ordinalOf(n: number): string {
  const teen = n % 100 >= 11 && n % 100 <= 13;
  return `${n}${teen ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th')}`;
}
