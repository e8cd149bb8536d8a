/** A hook as a pattern writes it in, its millimetres and the US letter beside them out: `5 mm (H-8)`, `H/8 (5 mm)`. */

import { parseMeasure } from '../units.ts';

export interface WrittenHook {
  readonly mm: number;
  /** The measure as written, `5 mm`. */
  readonly measure: string;
  /** `H-8`, `K-10 1/2`, `7`; null where none is written. */
  readonly us: string | null;
}

const MEASURE = '\\d+(?:[.,]\\d+)?\\s*-?\\s*(?:mm|cm|in)\\.?';
const NUMBER = '\\d{1,2}(?:\\s*½|\\s+1/2|\\.5)?';
/** `H`, `H-8`, `H/8`, `H8`, `M/N-13`, `10 1/2`; a letter stands large. */
export const US_HOOK = `[B-Z](?:/[B-Z])?(?:\\s*[-/–]?\\s*${NUMBER})?|${NUMBER}`;
const AHEAD = '(?:[Ss]ize\\s+)?(?:US\\s*)?(?:[Ss]ize\\s+)?';

const FORMS = [
  new RegExp(`^(?<measure>${MEASURE})(?:\\s*[(\\[/,]?\\s*${AHEAD}(?<us>${US_HOOK})\\s*[)\\]]?)?$`),
  new RegExp(`^${AHEAD}(?<us>${US_HOOK})\\s*[(\\[/,]\\s*(?<measure>${MEASURE})\\s*[)\\]]?$`),
];

/** Null where it is no hook's measure. */
export function readHook(written: string): WrittenHook | null {
  for (const form of FORMS) {
    const { measure, us } = form.exec(written.trim())?.groups ?? {};
    const read = measure === undefined ? null : parseMeasure(measure.replace(/\s*-\s*/, ' '));
    if (measure !== undefined && read?.kind === 'length')
      return {
        mm: read.mm,
        measure: measure.replace(/\s*-\s*/, ' '),
        us: us === undefined ? null : usHook(us),
      };
  }
  const plain = parseMeasure(written);
  return plain?.kind === 'length' ? { mm: plain.mm, measure: written, us: null } : null;
}

/** One spelling for all: `H/8` and `H 8` are `H-8`, `K10½` is `K-10 1/2`. */
export function usHook(written: string): string {
  const [, letters = '', number = ''] = /^([B-Z](?:\/[B-Z])?)?\s*[-/–]?\s*(.*)$/.exec(written.trim()) ?? [];
  const whole = number.trim().replace(/\s*½|\s+1\/2|\.5/, ' 1/2');
  return letters === '' || whole === '' ? `${letters}${whole}` : `${letters}-${whole}`;
}
