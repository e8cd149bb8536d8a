/** What a maker asks for on the command line in, a size of her own out, or the sentence that says what cannot be. */

import { compileOwnSize, remakeableFrom } from '../compile-own.ts';
import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import { cannotBe } from '../own/cannot-be.ts';
import { ASKED_FIELDS, type Asked, type AskedWords, readAsked } from '../own/read-asked.ts';
import type { Flag } from './verb.ts';

export const OWN_FLAGS: readonly Flag[] = [
  {
    name: 'width',
    value: 'MEASURE',
    about: 'as near to this width as the pattern repeats come: "30 cm", "12 in"',
  },
  { name: 'height', value: 'MEASURE', about: 'as near to this height as its rows come' },
  { name: 'repeats', value: 'N', about: 'this many pattern repeats across' },
  { name: 'rows', value: 'N', about: 'this many rows or rounds in all' },
  { name: 'gauge', value: 'GAUGE', about: 'at your gauge: "18 sts and 20 rows over 10 cm"' },
  { name: 'ball', value: 'BALL', about: 'from your yarn: "200 m" or "200 m and 100 g" a ball' },
  { name: 'hook', value: 'HOOK', about: 'with your hook: "4.5 mm" or "H-8"' },
];

/** `from` is the place of the size it is made from. */
export function askedByFlags(
  values: ReadonlyMap<string, string>,
  compiled: CompiledPattern,
  from: number,
): Asked {
  const remakeable = remakeableFrom(compiled, from);
  if (remakeable === null) return { kind: 'none' };
  const words: AskedWords = Object.fromEntries(ASKED_FIELDS.map((field) => [field, values.get(field)]));
  return readAsked(words, remakeable, from, (field) => `--${field}`);
}

export type OwnMade =
  | { readonly kind: 'none' }
  | { readonly kind: 'made'; readonly compiled: CompiledPattern; readonly size: CompiledSize }
  | { readonly kind: 'wrong'; readonly message: string };

/** The pattern in the size that is asked for, made from this size or from the first. */
export function ownSizeAsked(
  values: ReadonlyMap<string, string>,
  compiled: CompiledPattern,
  base: CompiledSize | null,
): OwnMade {
  const name = (base ?? compiled.sizes[0])?.size.name;
  const from = compiled.pattern?.sizes.findIndex((size) => size.name === name) ?? -1;
  if (from < 0) return { kind: 'none' };
  const asked = askedByFlags(values, compiled, from);
  if (asked.kind !== 'asked') return asked;
  const remakeable = remakeableFrom(compiled, from);
  const wrong = remakeable === null ? null : cannotBe(asked.own, remakeable);
  if (wrong !== null) return { kind: 'wrong', message: wrong };
  const made = compileOwnSize(compiled, asked.own);
  const [size] = made.sizes;
  const fault = made.diagnostics.find(({ severity }) => severity === 'error');
  if (size === undefined || fault !== undefined)
    return {
      kind: 'wrong',
      message: `That size cannot be worked: ${fault?.message ?? 'nothing comes of it'}.`,
    };
  return { kind: 'made', compiled: made, size };
}
