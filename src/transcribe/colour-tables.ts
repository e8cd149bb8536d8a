/**
 * Tables of colours, `5 | 5 A | 2 B | 5 A` under `every line is worked 4 times around, sc in every st, 48 sc every round`, in;
 * the rounds they stand for, `Rnd 5: (A 5 sc, B 2 sc, A 5 sc) x 4 = 48 sc`, out.
 */

import { fileOffset, type MappedText } from '../source/mapped-text.ts';
import { insertedText, joinTexts, sliceText } from './mapped-pieces.ts';
import { tableUnit } from './page-lines.ts';
import type { TextLine } from './tidy-lines.ts';

/** What is said above the table of all its rows. */
interface Told {
  readonly unit: string;
  readonly stitch: string;
  /** How often what a line tells is worked. */
  readonly times: number;
  /** What each row comes to; nothing where that is not said. */
  readonly count: string | null;
}

const CELL = /^(?:(\d{1,3})\s*x?\s*([A-Z]{1,2})|([A-Z]{1,2})\s*x?\s*(\d{1,3}))$/;
const STITCH = /\b(sc|hdc|dc|htr|tr)\s+(?:in|into)\s+(?:every|each)\s+(?:st|stitch)\b/i;
const TIMES = /\b(?:worked|work|repeated|repeat|rep)\b[^.;,]*?\b(\d{1,2}|twice)(?:\s*(?:times|x)\b)?/i;
const COUNT =
  /\b(\d{1,4})\s*(?:sc|hdc|dc|htr|tr|sts?|stitches)\s+(?:in\s+)?(?:every|each|a|per)\s+(?:round|rnd|row)\b/i;
/** Lines above the head of a table that may still speak of it. */
const ABOVE = 3;

export function withColourTables(lines: readonly TextLine[]): readonly TextLine[] {
  let told: Told | null = null;
  return lines.map((line, index) => {
    if (line.isRule) return line;
    const unit = line.cells.length > 1 ? tableUnit(line.cells.map(({ text }) => text)) : null;
    if (unit !== null || line.cells.length < 2) {
      told = unit === null ? null : toldAbove(lines.slice(Math.max(0, index - ABOVE), index), unit);
      return line;
    }
    const text: MappedText | null = told === null ? null : asRound(line, told);
    return text === null ? line : { ...line, text, cells: [text] };
  });
}

/** Null where no stitch is told: colours alone say nothing of what is worked. */
function toldAbove(above: readonly TextLine[], unit: string): Told | null {
  const words = above.map(({ text }) => text.text).join('. ');
  const stitch = STITCH.exec(words)?.[1]?.toLowerCase();
  if (stitch === undefined) return null;
  const often = TIMES.exec(words)?.[1]?.toLowerCase();
  const times = often === undefined ? 1 : often === 'twice' ? 2 : Number(often);
  const word = /^r/i.test(unit) ? unit : 'row';
  return { unit: word, stitch, times, count: COUNT.exec(words)?.[1] ?? null };
}

function asRound({ cells }: TextLine, { unit, stitch, times, count }: Told): MappedText | null {
  const [label, ...runs] = cells;
  if (label === undefined || !/^\d{1,3}[.:)]?$/.test(label.text) || runs.length === 0) return null;
  const parts = runs.map((run) => asRun(run, stitch));
  const known = parts.filter((part) => part !== null);
  if (known.length < parts.length) return null;
  const at = fileOffset(label, 0);
  const last = runs[runs.length - 1] ?? label;
  const end = fileOffset(last, Math.max(0, last.text.length - 1));
  const opens = insertedText(`${times > 1 ? ': (' : ': '}`, at);
  const closes = `${times > 1 ? `) x ${times}` : ''}${count === null ? '' : ` = ${count} ${stitch}`}`;
  const number = sliceText(label, 0, label.text.replace(/[.:)]$/, '').length);
  const work = joinTexts(known, ', ');
  return joinTexts([insertedText(`${unit} `, at), number, opens, work, insertedText(closes, end)], '');
}

/** `5 A` as `A 5 sc`. */
function asRun(run: MappedText, stitch: string): MappedText | null {
  const found = CELL.exec(run.text);
  const n = found?.[1] ?? found?.[4];
  const colour = found?.[2] ?? found?.[3];
  if (n === undefined || colour === undefined) return null;
  return insertedText(`${colour} ${n} ${stitch}`, fileOffset(run, 0));
}
