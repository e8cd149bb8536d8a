/** Values of flags as typed in, measures, counts, gauges and balls out; a `Wrong` thrown where they cannot be. */

import type { OwnBall, OwnGauge } from '../pattern/own-size.ts';
import { mFromMm, parseMeasure, printCm, printIn, sidesOf } from '../units.ts';

/** What is wrong with a value, in a sentence for whoever typed it. */
export class Wrong extends Error {}

/** No work is larger, and none that is made with a hook smaller. */
const LENGTH_MM = { least: 5, most: 20_000 } as const;

export function lengthOf(values: ReadonlyMap<string, string>, name: string): number | null {
  const written = values.get(name);
  if (written === undefined) return null;
  const measure = parseMeasure(written);
  if (measure?.kind !== 'length')
    throw new Wrong(`--${name} wants a length with its unit, such as "30 cm" or "12 in", not "${written}".`);
  const { least, most } = LENGTH_MM;
  if (measure.mm < least || measure.mm > most)
    throw new Wrong(
      `--${name} ${written}: between ${printCm(least)} (${printIn(least)}) and ${printCm(most)}.`,
    );
  return measure.mm;
}

export function countOf(values: ReadonlyMap<string, string>, name: string): number | null {
  const written = values.get(name);
  if (written === undefined) return null;
  const n = Number(written);
  if (!Number.isInteger(n) || n < 1 || n > 20_000)
    throw new Wrong(`--${name} wants a whole number from 1 up, not "${written}".`);
  return n;
}

const COUNT = String.raw`(\d+(?:[.,]\d+)?)`;
const GAUGE = new RegExp(
  String.raw`^${COUNT}\s*(sts?|stitches|(?:pattern\s+)?rep(?:eat)?s?)?(?:\s*(?:x|×|,|and|by)?\s*${COUNT}\s*(?:rows?|rnds?|rounds?)?)?\s*(?:over|to|in|per|=|/)\s*(.+)$`,
  'i',
);
/** A hair's breadth of a stitch, and a hand's. */
const STITCH_MM = { least: 0.5, most: 200 } as const;

/** `inRepeat` tells how many stitches a pattern repeat is, for a gauge that counts those; null where it is not known. */
export function gaugeOf(
  written: string | undefined,
  inRepeat: () => number | null = () => null,
): OwnGauge | null {
  if (written === undefined) return null;
  const [, counted, thing = '', rows, over = ''] = GAUGE.exec(written.trim()) ?? [];
  const [across, up = across] = sidesOf(over).map((side) => parseMeasure(side));
  const repeats = /rep/i.test(thing) && counted !== undefined ? numberOf(counted) : undefined;
  const each = repeats === undefined ? 1 : inRepeat();
  if (each === null)
    throw new Wrong(
      `--gauge "${written}" counts repeats, and here nothing says how many stitches one is: count stitches.`,
    );
  if (counted === undefined || across?.kind !== 'length' || up?.kind !== 'length')
    throw new Wrong(
      `--gauge wants stitches, rows and a measure, such as "18 sts and 20 rows over 10 cm", not "${written}".`,
    );
  const gauge = {
    stitches: numberOf(counted) * each,
    ...(repeats === undefined ? {} : { repeats }),
    rows: rows === undefined ? null : numberOf(rows),
    overMm: across.mm,
    upMm: up.mm,
  };
  const sides = [gauge.overMm / gauge.stitches, ...(gauge.rows === null ? [] : [gauge.upMm / gauge.rows])];
  if (!sides.every((mm) => mm >= STITCH_MM.least && mm <= STITCH_MM.most))
    throw new Wrong(
      `--gauge "${written}" makes a stitch of ${sides.map((mm) => `${Math.round(mm * 10) / 10} mm`).join(' by ')}: count again over a hand's breadth.`,
    );
  return gauge;
}

export function ballsOf(
  written: string | undefined,
  letters: readonly string[],
): ReadonlyMap<string, OwnBall> {
  if (written === undefined) return new Map();
  const parts = written.split(/\s*(?:,|and|\/|&)\s*/i).map((part) => parseMeasure(part));
  const length = parts.find((part) => part?.kind === 'length');
  const mass = parts.find((part) => part?.kind === 'mass');
  if (length?.kind !== 'length' || length.mm < 1000 || parts.some((part) => part === null))
    throw new Wrong(
      `--ball wants the length on the band, and its weight if you like: "200 m and 100 g", not "${written}".`,
    );
  const ball = { lengthM: mFromMm(length.mm), massG: mass?.kind === 'mass' ? mass.g : null };
  return new Map(letters.map((letter) => [letter, ball]));
}

function numberOf(written: string): number {
  return Number(written.replace(',', '.'));
}
