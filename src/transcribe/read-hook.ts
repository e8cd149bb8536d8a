/** A line that names a hook in, its size in millimetres out: `5 mm (H-8)`, `size H/8 (5.00mm)`, `US H-8`. */

import { bears, hookSize, hooksNamed } from '../measure/hooks.ts';
import { usHook } from '../pattern/hook.ts';

export interface HookRead {
  /** `5 mm`, and with its letter, `5 mm (I-9)`, where that is another hook's. */
  readonly hook: string;
}

export function readHook(text: string): HookRead | null {
  const mm = /(\d{1,2}(?:[.,]\d{1,3})?)\s*-?\s*mm\b/i.exec(text)?.[1];
  const us = letterIn(mm === undefined ? text : sentenceOfSize(text));
  if (mm === undefined) {
    const named = us === null ? [] : hooksNamed(us);
    // A letter alone is most often the hook that the Council lists with a number beside it.
    const hook = named.find((one) => one.us?.includes('-')) ?? named[0];
    return hook === undefined ? null : { hook: `${hook.mm} mm` };
  }
  const size = Number(mm.replace(',', '.'));
  const agrees = us === null || bears(size, us) || hookSize(size) === null;
  return { hook: agrees ? `${size} mm` : `${size} mm (${us})` };
}

/** `Cream (Color C). Crochet Hook, Size J (6 mm)`: letters of another sentence are those of yarns. */
function sentenceOfSize(text: string): string {
  const sentences = text.split(/(?<=[.;])\s+(?=\p{Lu}|\d)/u);
  return sentences.find((one) => /\d\s*-?\s*mm\b/i.test(one)) ?? text;
}

const US_NUMBER = /\bU\.?S\.?A?\.?\s*(?:size\s*)?#?\s*(\d{1,2}(?:\s*½|\s+1\/2|\.5)?)(?![\d.,]|\s*mm)/i;

/** `H-8`, `H/8`, `H8`, `size H`, `US 7`, as `H-8`, `H` and `7`. */
function letterIn(text: string): string | null {
  const found = /\b([B-Q])\s*[-/–]?\s*(\d{1,2}(?:\s*½|\s+1\/2|\.5)?)?(?![\w.])/.exec(
    text.replace(/\b\d+(?:[.,]\d+)?\s*mm\b/gi, ' '),
  );
  if (found !== null) return usHook(`${found[1] ?? ''}${found[2] ?? ''}`);
  // Numbers of steel hooks contradict each other from maker to maker.
  const number = /\bsteel\b/i.test(text) ? undefined : US_NUMBER.exec(text)?.[1];
  return number === undefined ? null : usHook(number);
}
