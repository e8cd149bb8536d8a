/** A line that names a hook in, its size in millimetres out: `5 mm (H-8)`, `size H/8 (5.00mm)`, `US H-8`. */

import { HOOKS, hookSize } from '../measure/hooks.ts';

export interface HookRead {
  /** `5 mm`. */
  readonly hook: string;
  /** The letter printed with it belongs to another size: its millimetres. */
  readonly letterIs: string | null;
}

export function readHook(text: string): HookRead | null {
  const mm = /(\d{1,2}(?:[.,]\d{1,3})?)\s*-?\s*mm\b/i.exec(text)?.[1];
  const lettered = letterIn(text);
  if (mm === undefined) return lettered === null ? null : { hook: `${lettered} mm`, letterIs: null };
  const size = Number(mm.replace(',', '.'));
  const agrees = lettered === null || Math.abs(lettered - size) < 0.26 || hookSize(size) === null;
  return { hook: `${size} mm`, letterIs: agrees ? null : `${lettered} mm` };
}

/** `H-8`, `H/8`, `H8`, `size H`: the width of the hook that bears it. */
function letterIn(text: string): number | null {
  const found = /\b([B-Q])\s*[-/–]?\s*(\d{1,2}(?:\s*½|\s+1\/2|\.5)?)?(?![\w.])/.exec(
    text.replace(/\b\d+(?:[.,]\d+)?\s*mm\b/gi, ' '),
  );
  if (found?.[1] === undefined) return null;
  const [, letter, number] = found;
  const whole = number === undefined ? null : `${letter}-${number.replace(/\s*½|\s+1\/2|\.5/, ' 1/2')}`;
  const hook = HOOKS.find(
    ({ us }) => us !== null && (whole === null ? us.startsWith(`${letter}-`) : us === whole),
  );
  return hook?.mm ?? null;
}
