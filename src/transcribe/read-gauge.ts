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

export function readGauge(items: readonly Item[], terms: Terms): GaugeRead {
  const single = items.find((item) => gaugeIn([item], terms) !== null);
  if (single !== undefined)
    return { gauge: gaugeIn([single], terms), rest: items.filter((item) => item !== single) };
  const both = items.slice(0, 2);
  const gauge = both.length === 2 ? gaugeIn(both, terms) : null;
  return gauge === null ? { gauge: null, rest: items } : { gauge, rest: items.slice(2) };
}

function gaugeIn(items: readonly Item[], terms: Terms): TranscribedGauge | null {
  const [first, last] = [items[0], items.at(-1)];
  if (first === undefined || last === undefined) return null;
  const words = items.map(({ text }) => text.text).join(' ');
  const counted = new RegExp(`${NOT_OF_GROUP}${COUNT}\\s*(${stitchWords(terms)})\\b`, 'i').exec(words);
  const rows = new RegExp(`${COUNT}\\s*(?:rows?|rnds?|rounds?)\\b`, 'i').exec(words);
  if (counted?.[1] === undefined || rows?.[1] === undefined) return null;
  const over = measureBehind(words, counted) ?? findMeasure(words, ['cm', 'in']);
  if (over === null) return null;
  // `Rnds 1-3 = 8 cm` counts no stitches; `4 shells and 8 rows` counts none that the gauge takes.
  return {
    stitches: numberOf(counted[1]),
    rows: rowsOver(numberOf(rows[1]), measureBehind(words, rows)?.measure ?? over.measure, over.measure),
    over: over.measure,
    of: measuredIn(words, counted[2] ?? '', terms),
    afterBlocking: /\b(?:after|when|once)\s+block(?:ing|ed)\b|,\s*blocked\b/i.test(words),
    words,
    span: joinSpans(first.span, last.span),
  };
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
