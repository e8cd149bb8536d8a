/** A pasted text's own list of abbreviations in, what it lists in vain and what it leaves out of those its rows use out. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { fileSpan, type MappedText } from '../source/mapped-text.ts';
import type { Span } from '../source/span.ts';
import { ABBREVIATIONS, abbreviationTerms, findAbbreviation } from '../stitches/abbreviations.ts';
import type { StitchFamily, Terms } from '../stitches/stitch-row.ts';
import { STITCHES, termsOf } from '../stitches/table.ts';
import { stitchNamed } from './derive-work.ts';
import type { StitchEntry } from './stitch-entries.ts';
import { textFault } from './text-faults.ts';

export interface ListAsked {
  readonly file: string;
  readonly terms: Terms;
  readonly entries: readonly StitchEntry[];
  /** Names of special stitches, which are looked for by another rule. */
  readonly specials: readonly string[];
  readonly rows: string;
  /** The same line by line, with their places. */
  readonly rowLines: readonly MappedText[];
  /** The text without its list of abbreviations. */
  readonly elsewhere: string;
  /** Every line of the list was understood. */
  readonly whole: boolean;
}

/** Fewer are a remark rather than a list. */
const FEWEST = 3;

/** Of stitches these; a decrease or post stitch is told by what it is a form of. */
const PLAIN: ReadonlySet<StitchFamily> = new Set(['chain', 'slip', 'basic', 'extended']);

/** Other than stitches these, by their ids: what patterns write short and readers may not know. */
const SHORT: ReadonlySet<string> = new Set([
  ...['alt', 'beg', 'blo', 'cont', 'flo', 'foll', 'lp', 'patt', 'prev', 'rem'],
  ...['rep', 'rnd', 'rs', 'sk', 'sp', 'st', 'tch', 'tog', 'ws', 'yo'],
]);

/** Of both these: what every maker knows from the first pattern on. A list without them is short, and stops nobody. */
const EVERYDAY: ReadonlySet<string> = new Set([
  ...['ch', 'sl-st'],
  ...['beg', 'rem', 'rep', 'rnd', 'rs', 'sp', 'st', 'ws'],
]);

/** No short forms, though the trade lists them among those. */
const IN_FULL: ReadonlySet<string> = new Set(['miss']);

export function listFaults(asked: ListAsked): Diagnostic[] {
  const { entries, file } = asked;
  const [first] = entries;
  if (first === undefined || entries.length < FEWEST) return [];
  const unused = unusedEntries(asked);
  const missing = asked.whole ? unlisted(asked) : [];
  return [
    ...unused.map(({ name, span }) => textFault('text/abbreviation-unused', file, span, { abbr: name })),
    ...(missing.length === 0
      ? []
      : [
          textFault(
            'text/abbreviation-unlisted',
            file,
            firstUse(
              missing.map(({ abbr }) => abbr),
              asked.rowLines,
            ) ?? first.span,
            {
              abbrs: missing.map(({ abbr }) => abbr),
              everyday: missing.every(({ id }) => EVERYDAY.has(id)),
            },
          ),
        ]),
  ];
}

interface Missing {
  readonly id: string;
  readonly abbr: string;
}

/** Only what the trade has: words of the designer's own are special stitches or notes. */
function unusedEntries({ entries, terms, specials, elsewhere }: ListAsked): StitchEntry[] {
  return entries.filter(({ name, fullName, words }) => {
    const known = stitchNamed(name, terms) !== null || findAbbreviation(name, terms) !== null;
    if (!known || specials.includes(name)) return false;
    const meaning = words.text
      .replace(/\((?:s|es)\)|\/(?:s|es)\b|[.;,]+$/gi, '')
      .replace(/(?<=tch|sh)es$|(?<=[a-rt-z])s$/i, '');
    const singular = name.replace(/(?<=[a-z]{2})s$/i, '');
    return ![name, singular, fullName, ...(/^[a-z -]{2,30}$/i.test(meaning) ? [meaning] : [])].some(
      (word) => word !== null && occurs(word, elsewhere),
    );
  });
}

function unlisted({ entries, terms, specials, rows }: ListAsked): Missing[] {
  const names = entries.flatMap(({ name, fullName }) => (fullName === null ? [name] : [name, fullName]));
  // "sl st - slip stitch" says what "st" is as well.
  const slip = stitchNamed('sl st', terms)?.id;
  const inside = names.some((name) => stitchNamed(name, terms)?.id === slip && /\bst\b/i.test(name))
    ? ['st']
    : [];
  const ids = new Set(
    [...names, ...inside].flatMap((name) => [
      stitchNamed(name, terms)?.id,
      findAbbreviation(name, terms)?.id,
    ]),
  );
  const stitches = STITCHES.filter(({ family, id }) => PLAIN.has(family) && !ids.has(id)).map((row) => ({
    id: row.id,
    abbr: termsOf(row, terms).abbr,
  }));
  // A list of stitches alone leaves the other words out on purpose.
  const general = names.some((name) => SHORT.has(findAbbreviation(name, terms)?.id ?? ''))
    ? ABBREVIATIONS.filter(({ id }) => SHORT.has(id) && !ids.has(id))
        .map((row) => ({ id: row.id, ...abbreviationTerms(row, terms) }))
        // UK "miss" is written in full.
        .filter(({ abbr, meaning }) => abbr !== meaning && !IN_FULL.has(abbr))
    : [];
  // The "st" of a slip stitch is no word of its own, nor is the "tog" of a decrease.
  const others = withoutLongNames(rows.replace(/\bsl[ -]sts?\b|\dtog\b/gi, ' '), [...names, ...specials]);
  return [
    ...stitches.filter(({ abbr }) => occurs(abbr, rows)),
    ...general.filter(({ abbr }) => occurs(abbr, others)),
  ].filter(({ abbr }) => !specials.includes(abbr));
}

/** The "beg" of a listed `beg cl` is told with it. */
function withoutLongNames(rows: string, names: readonly string[]): string {
  let left = rows;
  for (const name of names) {
    const use = / /.test(name.trim()) ? useOf(name) : null;
    if (use !== null) left = left.replace(new RegExp(use.source, 'gi'), ' ');
  }
  return left;
}

/** Where the first of the words stands in the rows. */
function firstUse(words: readonly string[], lines: readonly MappedText[]): Span | null {
  for (const line of lines) {
    const places = words.flatMap((word) => {
      const found = useOf(word)?.exec(line.text);
      return found == null ? [] : [{ at: found.index, end: found.index + found[0].length }];
    });
    const [place] = places.sort((a, b) => a.at - b.at);
    if (place !== undefined) return fileSpan(line, place.at, place.end);
  }
  return null;
}

/** As a word of its own, also in the plural and with figures about it: `3dc`, `dc2tog`, `FPdc`, `ch-3 sp`. */
function occurs(word: string, text: string): boolean {
  return useOf(word)?.test(text) ?? true;
}

function useOf(word: string): RegExp | null {
  const bare = word.replace(/[-.]+$/, '');
  if (!/[a-z]/i.test(bare)) return null;
  // `d.c.` of an old leaflet is its `dc`.
  const escaped = /^[a-z]{2,3}$/i.test(bare)
    ? [...bare].join('\\.?')
    : bare.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/[\s-]+/g, '(?:-?\\d*[\\s-]+)');
  const post = /^[BF]P$/i.test(bare) ? '' : '(?:e?s)?(?![a-z])';
  return new RegExp(`(?<![a-z]|\\b1)${escaped}${post}`, 'i');
}
