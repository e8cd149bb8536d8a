/** `--as-of TIME` and `--preview` as typed -> when what is due is asked for. */

import { parseInstant } from '../along/clock-words.ts';
import { instantOf } from '../along/zoned-time.ts';
import type { AsOf } from '../site/along-site.ts';
import type { Arguments, Flag } from './verb.ts';

export const AS_OF_FLAGS: readonly Flag[] = [
  { name: 'as-of', value: 'TIME', about: 'what is due by then (now), as in 2026-11-07T09:00-04:00' },
  { name: 'preview', value: null, about: 'every week of every along, marked as preview' },
];

export type AskedAsOf =
  /** Null for a preview. */
  | { readonly kind: 'asked'; readonly asOf: AsOf | null }
  | { readonly kind: 'wrong'; readonly message: string };

export function readAsOf({ flags, values }: Pick<Arguments, 'flags' | 'values'>): AskedAsOf {
  const written = values.get('as-of');
  if (flags.has('preview'))
    return written === undefined
      ? { kind: 'asked', asOf: null }
      : wrong('--preview shows everything, whatever the time: leave out --as-of.');
  if (written === undefined) return { kind: 'asked', asOf: () => Date.now() };
  // Without an offset it is by the clock of each along; whether it is a time at all does not hang on that.
  if (parseInstant(written, () => 0) === null)
    return wrong(
      `"${written}" is not a time. Write it like 2026-11-07T09:00-04:00, 2026-11-07T13:00Z, or 2026-11-07T09:00 by the clock of the along.`,
    );
  return { kind: 'asked', asOf: (zone) => parseInstant(written, (local) => instantOf(local, zone).ms) ?? 0 };
}

function wrong(message: string): AskedAsOf {
  return { kind: 'wrong', message };
}
