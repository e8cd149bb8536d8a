/** What a maker writes of a length, a count, a gauge, a ball or a hook in, figures out; a `Wrong` thrown where it is none. */

import { hooksNamed } from '../measure/hooks.ts';
import { BOUNDS } from '../pattern/bounds.ts';
import type { OwnBall, OwnGauge } from '../pattern/own-size.ts';
import { mFromMm, parseMeasure, printCm, printG, printIn, printM, printMm, sidesOf } from '../units.ts';

/** What is wrong with it, in a sentence for whoever wrote it; the field is called `name` where she did. */
export class Wrong extends Error {}

export function lengthOf(written: string | undefined, name: string): number | null {
  if (written === undefined) return null;
  const measure = parseMeasure(written);
  if (measure?.kind !== 'length')
    throw new Wrong(`${name} wants a length with its unit, such as "30 cm" or "12 in", not "${written}".`);
  const [least, most] = BOUNDS.finishedMm;
  if (measure.mm < least || measure.mm > most)
    throw new Wrong(
      `${name} ${written}: between ${printCm(least)} (${printIn(least)}) and ${printCm(most)}.`,
    );
  return measure.mm;
}

export function countOf(written: string | undefined, name: string): number | null {
  if (written === undefined) return null;
  const n = Number(written);
  if (!Number.isInteger(n) || n < 1 || n > 20_000)
    throw new Wrong(`${name} wants a whole number from 1 up, not "${written}".`);
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
  name: string,
  inRepeat: () => number | null = () => null,
): OwnGauge | null {
  if (written === undefined) return null;
  const [, counted, thing = '', rows, over = ''] = GAUGE.exec(written.trim()) ?? [];
  const [across, up = across] = sidesOf(over).map((side) => parseMeasure(side));
  const repeats = /rep/i.test(thing) && counted !== undefined ? numberOf(counted) : undefined;
  const each = repeats === undefined ? 1 : inRepeat();
  if (each === null)
    throw new Wrong(
      `${name} "${written}" counts repeats, and here nothing says how many stitches one is: count stitches.`,
    );
  if (counted === undefined || across?.kind !== 'length' || up?.kind !== 'length')
    throw new Wrong(
      `${name} wants stitches, rows and a measure, such as "18 sts and 20 rows over 10 cm", not "${written}".`,
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
      `${name} "${written}" makes a stitch of ${sides.map((mm) => printMm(mm)).join(' by ')}: count again over a hand's breadth.`,
    );
  return gauge;
}

/** `200 m and 100 g` for every colour, or `A: 200 m and 100 g; B: 90 m` colour by colour. */
export function ballsOf(
  written: string | undefined,
  name: string,
  letters: readonly string[],
): ReadonlyMap<string, OwnBall> {
  if (written === undefined) return new Map();
  if (!written.includes(':')) {
    const ball = ballOf(written, name);
    return new Map(letters.map((letter) => [letter, ball]));
  }
  return new Map(
    written.split(/\s*;\s*/).map((one) => {
      const [, letter = '', band = ''] = /^(\S+?)\s*:\s*(.+)$/.exec(one.trim()) ?? [];
      if (!letters.includes(letter))
        throw new Wrong(
          `${name} "${one}": there is no yarn ${letter || one}; the pattern has ${letters.join(', ')}.`,
        );
      return [letter, ballOf(band, name)];
    }),
  );
}

/** `200 m`, `137 yd and 1.75 oz`. */
export function ballOf(written: string, name: string): OwnBall {
  const parts = written.split(/\s*(?:,(?!\d)|\band\b|\/|&)\s*/i).map((part) => parseMeasure(part));
  const length = parts.find((part) => part?.kind === 'length');
  const mass = parts.find((part) => part?.kind === 'mass');
  if (length?.kind !== 'length' || parts.length > 2 || parts.some((part) => part === null))
    throw new Wrong(
      `${name} wants the length on the band, and its weight if you like: "200 m and 100 g", not "${written}".`,
    );
  const [leastMm, mostMm] = BOUNDS.ballLengthMm;
  const [leastG, mostG] = BOUNDS.ballMassG;
  if (length.mm < leastMm || length.mm > mostMm)
    throw new Wrong(
      `${name} "${written}": a ball has between ${printM(mFromMm(leastMm))} and ${printM(mFromMm(mostMm))}.`,
    );
  if (mass?.kind === 'mass' && (mass.g < leastG || mass.g > mostG))
    throw new Wrong(`${name} "${written}": a ball weighs between ${printG(leastG)} and ${printG(mostG)}.`);
  return { lengthM: mFromMm(length.mm), massG: mass?.kind === 'mass' ? mass.g : null };
}

export interface Amount {
  readonly lengthM: number;
  /** Null where a length alone is asked for. */
  readonly balls: number | null;
  readonly putUp: OwnBall | null;
}

/** `900 m`, `8 balls of 125 m and 50 g`, `8 x 125 m`. */
export function amountOf(written: string, name: string): Amount {
  const [, n, band = ''] =
    /^(\d{1,4})\s*(?:balls?|skeins?|hanks?|x|×)(?:\s+of)?\s+(.+)$/i.exec(written.trim()) ?? [];
  if (n !== undefined && Number(n) > 0) {
    const putUp = ballOf(band, name);
    return { lengthM: Number(n) * putUp.lengthM, balls: Number(n), putUp };
  }
  const measure = parseMeasure(written);
  const [least, most] = BOUNDS.usedLengthMm;
  if (measure?.kind !== 'length' || measure.mm < least || measure.mm > most)
    throw new Wrong(
      `${name} wants a length or so many balls, "900 m" or "8 balls of 125 m and 50 g", not "${written}".`,
    );
  return { lengthM: mFromMm(measure.mm), balls: null, putUp: null };
}

function numberOf(written: string): number {
  return Number(written.replace(',', '.'));
}

/** `4.5 mm`, `4.5`, or a US letter and number where it names one hook only. */
export function hookOf(written: string | undefined, name: string): number | null {
  if (written === undefined) return null;
  const measure = parseMeasure(/^[\d.,]+$/.test(written) ? `${written} mm` : written);
  if (measure?.kind === 'length') {
    const [least, most] = BOUNDS.hookMm;
    if (measure.mm >= least && measure.mm <= most) return measure.mm;
    throw new Wrong(`${name} ${written}: hooks are ${printMm(least)} to ${printMm(most)}.`);
  }
  const named = /^[a-z\d]/i.test(written) ? hooksNamed(written.toUpperCase()) : [];
  const [only, other] = named;
  if (only !== undefined && other === undefined) return only.mm;
  if (only === undefined)
    throw new Wrong(`${name} wants millimetres or a US size, such as "5 mm" or "H-8", not "${written}".`);
  const both = named.map(({ mm }) => printMm(mm)).join(' or ');
  throw new Wrong(`${name} "${written}" may be ${both}: give the millimetres.`);
}
