/** Words in the place of others: stitches, yarns, places, loops; corners that make only one stitch. */

import type { Pattern } from '../../../src/pattern/pattern.ts';
import type { Edit, Kind } from './edit.ts';
import { found, type Stretch } from './stretch.ts';

const STITCHES: Readonly<Record<'US' | 'UK', Readonly<Record<string, string>>>> = {
  US: { sc: 'dc', dc: 'sc', hdc: 'dc', tr: 'dc' },
  UK: { dc: 'tr', tr: 'dc', htr: 'tr' },
};
const PLACES: Readonly<Record<string, string>> = { next: 'same', first: 'last', last: 'first', same: 'next' };
const LOOPS: Readonly<Record<string, string>> = {
  BLO: 'FLO',
  FLO: 'BLO',
  back: 'front',
  front: 'back',
  FPdc: 'BPdc',
  BPdc: 'FPdc',
  FPtr: 'BPtr',
  BPtr: 'FPtr',
  RtrF: 'RtrB',
  RtrB: 'RtrF',
};

export function seedWords(stretch: Stretch, pattern: Pattern): Edit[] {
  return [
    ...swaps(stretch, 'another stitch', /(?<!-)\b(?:sc|dc|hdc|htr|tr)\b/gi, STITCHES[pattern.terms]),
    ...swaps(stretch, 'another place', /\b(?:next|first|last|same)\b(?! rep)/gi, PLACES),
    ...swaps(
      stretch,
      'another loop or post',
      /\b(?:BLO|FLO|[FB]P(?:dc|tr)|Rtr[FB]|(?:back|front)(?= loops?\b))/g,
      LOOPS,
    ),
    ...seedYarns(stretch, pattern),
    ...seedCorners(stretch),
  ];
}

/** A word in the place of each match; a capital stays one. */
function swaps(
  stretch: Stretch,
  kind: Kind,
  words: RegExp,
  others: Readonly<Record<string, string>>,
): Edit[] {
  return found(stretch, words).flatMap(({ at, match: [word] }) => {
    const known = others[word] ?? others[word.toLowerCase()];
    if (known === undefined) return [];
    const put =
      word === word.toLowerCase() || word in others
        ? known
        : known.slice(0, 1).toUpperCase() + known.slice(1);
    return [{ kind, start: at, end: at + word.length, put }];
  });
}

function seedYarns(stretch: Stretch, { yarns }: Pattern): Edit[] {
  const letters = yarns.map(({ letter }) => letter);
  return found(stretch, /\b(?:[A-H]|MC|CC)\b/g).flatMap(({ at, match: [letter] }) => {
    if (!letters.includes(letter)) return [];
    const other = letters.find((one) => one !== letter);
    const unknown = ['Q', 'Z'].find((one) => !letters.includes(one)) ?? 'Q';
    const place = { start: at, end: at + letter.length };
    return [
      ...(other === undefined ? [] : [{ kind: 'another of the yarns' as const, ...place, put: other }]),
      { kind: 'a yarn that is not there' as const, ...place, put: unknown },
    ];
  });
}

/** The chain left out of a corner's bracket; one stitch for the three of a corner. */
function seedCorners(stretch: Stretch): Edit[] {
  const kind = 'a corner lost' as const;
  return [
    ...found(stretch, /(?<=\([^()*[\]]*), (?:ch \d+|\d+ ch)(?=, [^()*[\]]*\) in\b)/g).map(
      ({ at, match }) => ({
        kind,
        start: at,
        end: at + match[0].length,
        put: '',
      }),
    ),
    ...found(
      stretch,
      /\b3 (?=(?:sc|dc|tr|hdc|htr) in (?:each |next |same |first |last |corner |any |2nd |ch-)(?!.{0,4}ring))/g,
    ).map(({ at, match }) => ({ kind, start: at, end: at + match[0].length, put: '' })),
  ];
}
