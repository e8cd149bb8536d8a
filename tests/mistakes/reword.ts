/** A pattern with one rewording made wherever it applies, and what the checker then makes of it. */

import { compileText, type Original } from './collections.ts';
import type { Rewording } from './rewordings.ts';
import { stretchOf } from './seed/stretch.ts';
import { workOnlySignature } from './work-signature.ts';

/** The text with every place reworded, or null where there is none. */
export function reword({ text, lines, pattern }: Original, rewording: Rewording): string | null {
  if (rewording.terms !== undefined && rewording.terms !== pattern.terms) return null;
  let whole = text;
  // From the last line up, so that the places of the others stay true.
  for (const line of [...lines].sort((a, b) => b.span.start - a.span.start)) {
    const { start, end } = rewording.wholeLine === true ? line.span : stretchOf(line, text).body;
    const put = rewording.put;
    const words = text.slice(start, end);
    const other =
      typeof put === 'string' ? words.replace(rewording.find, put) : words.replace(rewording.find, put);
    whole = whole.slice(0, start) + other + whole.slice(end);
  }
  return whole === text ? null : whole;
}

/** What is wrong with a rewording of a pattern, or null: it is to say the same without a word of complaint. */
export function rewordingFault(original: Original, text: string, told?: string): string | null {
  const after = compileText(text);
  const known = new Set(original.compiled.diagnostics.map(({ code }) => code));
  const fresh = after.diagnostics.find(({ code }) => !known.has(code) && code !== told);
  if (fresh !== undefined) {
    const line = text.slice(0, fresh.span.start).split('\n').length;
    return `${fresh.code} in line ${line}: ${fresh.message} | ${text.split('\n')[line - 1]?.trim()}`;
  }
  return workOnlySignature(after) === workOnlySignature(original.compiled) ? null : 'other work';
}
