/** A code in, whether it is a warning or a note, which a pattern may silence, out. */

import type { Code } from './catalogue.ts';

/** Every code that is no error: a test holds this list against the words of the catalogue. */
export const SOFTER_CODES = [
  'allow/unneeded',
  'along/balls',
  'along/hour-skipped',
  'along/other-corners',
  'change/later',
  'chain/height',
  'chain/left-out',
  'chain/too-tall',
  'chain/twice',
  'chain/two-ways',
  'count/halves',
  'count/not-checked',
  'corner/count',
  'corner/sides',
  'multiple/note',
  'row/cut-repeat',
  'row/faces',
  'row/hangs-on',
  'row/never-turns',
  'row/no-join',
  'row/no-ring',
  'row/no-turn',
  'row/open-length',
  'row/twice',
  'chain/unstated',
  'file/lost-letters',
  'film/order',
  'film/past-end',
  'gauge/missing',
  'gauge/repeat',
  'gauge/repeat-unknown',
  'gauge/unlikely',
  'hook/letter',
  'hook/unlikely',
  'photograph/small',
  'size/falling',
  'size/numbers-fall',
  'size/otherwise',
  'special/unused',
  'terms/mixed',
  'edging/ratio',
  'yarn/too-little',
  'yarn/unused',
] as const satisfies readonly Code[];

/** What a pattern's `allow:` may name: not what is said of that list itself, nor of alongs. */
export const SILENCEABLE: readonly string[] = SOFTER_CODES.filter(
  (code) => !code.startsWith('allow/') && !code.startsWith('along/'),
);
