/** Dialects -> what readers call them, and which one a pattern was written in. */

import type { Pattern } from '../pattern/pattern.ts';
import type { DialectKey } from '../wording/words.ts';

/** In the order the links stand. */
export const DIALECT_KEYS: readonly DialectKey[] = ['us', 'uk', 'us-full', 'uk-full'];

export const DIALECT_NAMES: Readonly<Record<DialectKey, string>> = {
  us: 'US terms',
  uk: 'UK terms',
  'us-full': 'US in full words',
  'uk-full': 'UK in full words',
};

export function ownDialect(pattern: Pattern): DialectKey {
  return pattern.terms === 'UK' ? 'uk' : 'us';
}
