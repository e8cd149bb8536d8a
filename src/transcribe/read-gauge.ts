/** The lines under a pasted text's gauge or tension in, stitches and rows over a measure out. */

import { joinSpans } from '../source/span.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { findStitch, stitchNames, termsOf } from '../stitches/table.ts';
import { parseMeasure } from '../units.ts';
import { findMeasure } from './read-measures.ts';
import type { Item } from './sorted-lines.ts';
import type { TranscribedGauge } from './transcript.ts';

const COUNT = '(\\d{1,3}(?:[.,]\\d+)?|\\d{1,3}\\s*½)';

/** `9 groups of 3tr = 20 cm` counts groups. */
const NOT_OF_GROUP = '(?<!\\b(?:groups?|grps?|clusters?|shells?|fans?|sets?|pairs?) of )(?<!\\d)';

export interface GaugeRead {
  readonly gauge: TranscribedGauge | null;
  /** Lines that tell something else: `Gauge is not critical.` */
  readonly rest: readonly Item[];
}

/** As the list of what was recognised tells it. */
export function gaugeWords({ stitches, repeats, rows, over, before }: TranscribedGauge): string {
  const across = repeats === null ? `${stitches} stitches` : `${repeats} pattern repeats`;
  const first =
    before === null ? '' : `; before blocking ${before.stitches} stitches and ${before.rows} rows`;
  return `${across} and ${rows} rows over ${over}${first}`;
}

export function readGauge(items: readonly Item[], terms: Terms): GaugeRead {
  const told = items.filter((item) => gaugeIn([item], terms) !== null);
  // What it was before blocking is told beside what it is, in a line of its own or in the same.
  const single = told.find((item) => !isBefore(item.text.text)) ?? told[0];
  if (single !== undefined) {
    const gauge = gaugeIn([single], terms);
    const other = told.find((item) => item !== single && isBefore(item.text.text));
    const first = other === undefined ? null : gaugeIn([other], terms);
    const before = gauge === null || first === null ? null : overSame(first, gauge.over);
    const used = before === null ? [single] : [single, other];
    return {
      gauge: gauge === null || before === null ? gauge : { ...gauge, before },
      rest: items.filter((item) => !used.includes(item)),
    };
  }
  const both = items.slice(0, 2);
  const gauge = both.length === 2 ? gaugeIn(both, terms) : null;
  return gauge === null ? { gauge: null, rest: items } : { gauge, rest: items.slice(2) };
}

function gaugeIn(items: readonly Item[], terms: Terms): TranscribedGauge | null {
  const [first, last] = [items[0], items.at(-1)];
  if (first === undefined || last === undefined) return null;
  const words = items.map(({ text }) => text.text).join(' ');
  const span = joinSpans(first.span, last.span);
  const clauses = words.split(CLAUSE);
  const ofBefore = clauses.filter(isBefore);
  const others = clauses.filter((clause) => !isBefore(clause)).join('; ');
  const said = ofBefore.length === 0 ? null : gaugeOf(others, terms);
  if (said === null) {
    const only = gaugeOf(words, terms);
    return only === null ? null : { ...only, before: null, words, span };
  }
  const before = gaugeOf(ofBefore.join(' '), terms, said.over);
  // Counted, and not to be made out: what is told of it is not left out in silence.
  if (before === null && ofBefore.some((clause) => /\d/.test(clause))) return null;
  const afterBlocking = said.afterBlocking || before !== null;
  return {
    ...said,
    afterBlocking,
    before: before === null ? null : overSame(before, said.over),
    words,
    span,
  };
}

/** Where what was counted before blocking is parted from what is counted after it. */
const CLAUSE = /\s*[;()]\s*|\.\s+|,\s*(?=(?:before|after|and\s+(?:before|after))\b)/i;

function isBefore(words: string): boolean {
  return /\b(?:before|prior to)\s+(?:it is\s+|you\s+)?(?:wet[- ])?block(?:ing|ed)?\b|\bunblocked\b/i.test(
    words,
  );
}

type Counted = Omit<TranscribedGauge, 'before' | 'words' | 'span'>;

/** `otherwise` is the measure that holds where the words name none. */
function gaugeOf(words: string, terms: Terms, otherwise: string | null = null): Counted | null {
  const counted = new RegExp(`${NOT_OF_GROUP}${COUNT}\\s*(${stitchWords(terms)})\\b`, 'i').exec(words);
  const repeats = counted === null ? REPEATS.exec(words) : null;
  const across = counted ?? repeats;
  const rows = new RegExp(`${COUNT}\\s*(?:rows?|rnds?|rounds?)\\b`, 'i').exec(words);
  if (across?.[1] === undefined || rows?.[1] === undefined) return null;
  const over = (measureBehind(words, across) ?? findMeasure(words, ['cm', 'in']))?.measure ?? otherwise;
  if (over === null) return null;
  // `Rnds 1-3 = 8 cm` counts no stitches; `4 shells and 8 rows` counts none that the gauge takes.
  return {
    stitches: counted?.[1] === undefined ? null : numberOf(counted[1]),
    repeats: repeats?.[1] === undefined ? null : numberOf(repeats[1]),
    rows: rowsOver(numberOf(rows[1]), measureBehind(words, rows)?.measure ?? over, over),
    over,
    of: measuredIn(words, counted?.[2] ?? '', terms),
    afterBlocking: /\b(?:after|when|once)\s+block(?:ing|ed)\b|,\s*blocked\b/i.test(words),
  };
}

/** `2 pattern repeats`, `1½ reps`; not `repeat Row 2`, nor repeats of rows. */
const REPEATS = new RegExp(
  `(?<!\\d)${COUNT}\\s*(?:full\\s+|whole\\s+)?(?:patt(?:ern)?\\s+)?(?:rep(?:eat)?s?)\\b(?!\\s+(?:of\\s+)?rows?)`,
  'i',
);

/** Counted over another measure it is told as over this one. Repeats tell no stitches. */
function overSame(
  { stitches, rows, over }: Counted,
  wanted: string,
): { readonly stitches: number; readonly rows: number } | null {
  return stitches === null
    ? null
    : { stitches: rowsOver(stitches, over, wanted), rows: rowsOver(rows, over, wanted) };
}

function measureBehind(words: string, found: RegExpExecArray): ReturnType<typeof findMeasure> {
  return findMeasure(words.slice(found.index + found[0].length), ['cm', 'in']);
}

/** `12 sts = 3.25" and 8 rows = 4"`: as many rows as there are to what the stitches are counted over. */
function rowsOver(rows: number, measured: string, wanted: string): number {
  const [from, to] = [parseMeasure(measured), parseMeasure(wanted)];
  if (from?.kind !== 'length' || to?.kind !== 'length' || from.mm === to.mm || from.mm <= 0) return rows;
  return Math.round((rows * to.mm * 100) / from.mm) / 100;
}

function stitchWords(terms: Terms): string {
  const names = stitchNames(terms)
    .filter(({ row }) => row.family === 'basic' || row.family === 'extended')
    .map(({ words }) => words.replace(/ /g, '\\s+'))
    .sort((a, b) => b.length - a.length);
  return `sts?|stitches|${names.join('|')}`;
}

/** What the swatch was worked in: the stitch counted, or what the words say; `16 dc in basketweave pattern` is no plain dc. */
function measuredIn(words: string, counted: string, terms: Terms): string | null {
  const stitch = findStitch(counted, terms);
  if (stitch !== null && !/\b(?:in|over) (?:[a-z’'-]+ ){0,4}patt(?:ern)?\b/i.test(words))
    return termsOf(stitch, terms).name;
  const said =
    /\b(?:in|over|of|worked in|working in)\s+((?:[a-z][a-z’'-]*\s*){1,5}?)(?=\s*(?:[,.;()]|using|with|on|after|unless|to|$))/gi;
  for (const found of words.matchAll(said)) {
    const what = found[1]?.trim() ?? '';
    const named = findStitch(what, terms);
    if (named !== null) return termsOf(named, terms).name;
    if (/\b(?:patt(?:ern)?|stitch|st|rib|mesh)$/i.test(what)) return what.replace(/\bpatt$/i, 'pattern');
  }
  return null;
}

function numberOf(written: string): number {
  const half = /½/.test(written) ? 0.5 : 0;
  return Number(written.replace(/\s*½/, '').replace(',', '.')) + half;
}
