/** A pasted text's own words in, how many rows `until scarf measures 149 cm` comes to by the rows of its gauge out. */

import { openEnd } from '../fabric/open-end.ts';
import type { Part } from '../pattern/pattern.ts';
import { parseMeasure } from '../units.ts';
import { findMeasure } from './read-measures.ts';
import type { Transcript } from './transcript.ts';

const UNTIL =
  /\buntil\b[^.;]*?\bmeasures?\b\s*(?:approx(?:imately|\.)?|about)?\s*(\d[\d.]*\s*[([][\d.,:\s]+[)\]][^;,]*|\d[^;,]*)/i;
const ROWS =
  /(\d{1,3}(?:\.\d+)?)\s*(?:rows?|rnds?|rounds?)\b[^.;]*?(?:=|\bto\b|\bover\b|\bmeasures?\b|\bin\b)/i;

/** The nearest number of rows at which the part may end; null where the text does not tell both measures. */
export function rowsTold(
  transcript: Transcript,
  parts: readonly Part[],
  texts: readonly string[],
  sizeIndex = 0,
): number | null {
  const perMm = rowsPerMm(transcript);
  if (perMm === null) return null;
  for (const [i, { instructions }] of parts.entries()) {
    const open = openEnd(instructions.lines, sizeIndex);
    const length = millimetresIn(ofSize(UNTIL.exec(texts[i] ?? '')?.[1] ?? '', sizeIndex));
    if (open === null || length === null) continue;
    const wanted = Math.max(open.from, Math.round(length * perMm));
    for (let away = 0; away <= 2 * open.cycle; away += 1) {
      const rows = [wanted - away, wanted + away].find((n) => n >= open.from && open.allows(n));
      if (rows !== undefined) return rows;
    }
  }
  return null;
}

/** `34 (35:36:37) cm`: the length of one size. */
function ofSize(words: string, sizeIndex: number): string {
  const [, first, others, unit] = /^(\d[\d.]*)\s*[([]([\d.,:\s]+)[)\]]\s*([a-z"]+)/i.exec(words) ?? [];
  if (first === undefined || others === undefined || unit === undefined) return words;
  const amount = [first, ...others.split(/[,:]/)][sizeIndex];
  return amount === undefined ? '' : `${amount.trim()} ${unit}`;
}

/** `8 rows to 10 cm`, in the gauge or in words about it that count no stitches. */
function rowsPerMm({ gauge, notes }: Transcript): number | null {
  const words = [...(gauge === null ? [] : [gauge.words]), ...notes.map(({ text }) => text)];
  for (const text of words) {
    const rows = ROWS.exec(text);
    const over = rows === null ? null : millimetresIn(text.slice(rows.index + rows[0].length));
    if (rows !== null && over !== null && over > 0) return Number(rows[1]) / over;
  }
  return null;
}

function millimetresIn(text: string): number | null {
  const found = findMeasure(text, ['cm', 'in', 'mm']);
  const measure = found === null ? null : parseMeasure(found.measure);
  return measure?.kind === 'length' ? measure.mm : null;
}
