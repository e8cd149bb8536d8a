/** What a maker asks for on the command line in, a size of her own out, or the sentence that says what cannot be. */

import { compileOwnSize, ownPattern } from '../compile-own.ts';
import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import { openEnd } from '../fabric/open-end.ts';
import { NOTHING_ASKED, type OwnSize } from '../pattern/own-size.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { firstMultiple } from '../pattern/pattern-repeat.ts';
import { ballsOf, countOf, gaugeOf, lengthOf, Wrong } from './own-values.ts';
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
];

export type Asked =
  | { readonly kind: 'none' }
  | { readonly kind: 'asked'; readonly own: OwnSize }
  | { readonly kind: 'wrong'; readonly message: string };

/** `from` is the place of the size it is made from. */
export function readAsked(
  values: ReadonlyMap<string, string>,
  compiled: CompiledPattern,
  from: number,
): Asked {
  const given = OWN_FLAGS.filter(({ name }) => values.has(name));
  const { pattern } = compiled;
  if (given.length === 0 || pattern === null) return { kind: 'none' };
  try {
    const own: OwnSize = {
      from,
      widthMm: lengthOf(values, 'width'),
      heightMm: lengthOf(values, 'height'),
      repeats: countOf(values, 'repeats'),
      rows: countOf(values, 'rows'),
      gauge: gaugeOf(values.get('gauge'), () => repeatOf(compiled, pattern, from)),
      balls: ballsOf(
        values.get('ball'),
        pattern.yarns.map(({ letter }) => letter),
      ),
    };
    if ((own.widthMm ?? own.heightMm) !== null && (own.gauge ?? pattern.gauge) === null)
      throw new Wrong(
        `${compiled.slug} gives no gauge; add yours, such as --gauge "18 sts and 20 rows over 10 cm".`,
      );
    return { kind: 'asked', own };
  } catch (fault) {
    if (fault instanceof Wrong) return { kind: 'wrong', message: fault.message };
    throw fault;
  }
}

/** The stitches of a pattern repeat, said or proved. */
function repeatOf(compiled: CompiledPattern, pattern: Pattern, from: number): number | null {
  const asked: OwnSize = { ...NOTHING_ASKED, from, repeats: 1 };
  return firstMultiple(ownPattern(compiled, pattern, asked))?.of ?? null;
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
  const asked = readAsked(values, compiled, from);
  if (asked.kind !== 'asked') return asked;
  const wrong = cannotBe(asked.own, compiled);
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

/** What of it the pattern's own rules do not leave open: a sentence, or null where all can be had. */
export function cannotBe(own: OwnSize, compiled: CompiledPattern): string | null {
  const { pattern: written, slug } = compiled;
  if (written === null) return null;
  const pattern = ownPattern(compiled, written, own);
  const sizes = written.sizes.map(({ name }) => name).join(', ');
  if ((own.widthMm ?? own.repeats) !== null && firstMultiple(pattern) === null)
    return `${slug} has no pattern repeat, so no width can be asked for; its sizes are ${sizes}.`;
  const open = pattern.parts.some((part) => openEnd(part.instructions.lines, own.from) !== null);
  if ((own.heightMm ?? own.rows) !== null && !open)
    return `All rows of ${slug} are numbered, so no height can be asked for; its sizes are ${sizes}.`;
  return null;
}
