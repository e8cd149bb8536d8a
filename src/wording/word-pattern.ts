/** A pattern and the fabric of one size in, or of all sizes, the instructions as they are printed in a dialect out. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Part, Pattern, Size } from '../pattern/pattern.ts';
import type { LineWork } from './chain-numbers.ts';
import { rowsByLine } from './line-rows.ts';
import { usedAbbreviations } from './used-abbreviations.ts';
import { type Numbers, type Voice, voiceOf } from './voice.ts';
import { wordLine } from './word-line.ts';
import { wordSpecials } from './word-specials.ts';
import { DIALECTS, type DialectKey, type WordedLine, type WordedPart, type WordedPattern } from './words.ts';

/** `size` is the place in `pattern.sizes`; with `'all'` numbers that differ are printed `35 (44, 53)`. */
export function wordPattern(
  pattern: Pattern,
  fabric: Fabric | readonly Fabric[],
  dialect: DialectKey,
  size: Numbers,
): WordedPattern {
  const voice = voiceOf(DIALECTS[dialect], size, pattern.specials, pattern.terms);
  const printed = fabricsOf(pattern, fabric, size);
  const parts = pattern.parts.map((part) => wordPart(part, printed, voice, pattern.sizes));
  const specials = wordSpecials(pattern, voice);
  return { dialect, parts, abbreviations: usedAbbreviations(parts, specials, voice), specials };
}

interface SizeFabric {
  readonly fabric: Fabric;
  readonly size: number;
}

/** The fabrics to print from, in the order of the sizes; none for all sizes at once unless every size has one. */
function fabricsOf(
  pattern: Pattern,
  fabric: Fabric | readonly Fabric[],
  size: Numbers,
): readonly SizeFabric[] {
  if ('rows' in fabric && size !== 'all') return [{ fabric, size }];
  const given = 'rows' in fabric ? [fabric] : fabric;
  const found = pattern.sizes.flatMap(({ name }, index) => {
    const own = given.find((each) => each.size === name);
    return own === undefined ? [] : [{ fabric: own, size: index }];
  });
  if (size !== 'all') return found.filter((each) => each.size === size);
  return found.length === pattern.sizes.length ? found : [];
}

function wordPart(
  part: Part,
  printed: readonly SizeFabric[],
  voice: Voice,
  sizes: readonly Size[],
): WordedPart {
  const made = printed.map((each) => ({ ...each, byLine: rowsByLine(each.fabric, part.name) }));
  const lines = part.instructions.lines.flatMap((line, index) => {
    const works = made.map(
      ({ fabric, size, byLine }): LineWork => ({ fabric, size, rows: byLine.get(index) ?? [] }),
    );
    const worded = wordLine(line, works, voice, sizes.length);
    if (worded === null) return [];
    return voice.numbers === 'all' && line.sizes !== undefined ? forSizes(worded, line.sizes, sizes) : worded;
  });
  return { name: part.name, make: part.make === 1 ? null : `Make ${part.make}.`, lines };
}

/** A row that only some sizes work says which: `Rnd 5 (M and L only)`. */
function forSizes(line: WordedLine, sizes: readonly number[], all: readonly Size[]): WordedLine {
  const names = sizes.flatMap((size) => all[size]?.name ?? []);
  const listed = names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
  if (line.label === null) return { ...line, text: `${listed} only: ${line.text}` };
  return { ...line, label: `${line.label} (${listed} only)` };
}
