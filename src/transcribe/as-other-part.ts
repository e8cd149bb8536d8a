/** `Work as for Back until all armhole decreases are complete` in, the lines of the other piece that it asks for out. */

import type { WorkLine } from './sorted-lines.ts';

/** A piece as it was sorted, under the name it has by now. */
export interface NamedLines {
  readonly name: string;
  readonly lines: readonly WorkLine[];
}

const AS_FOR =
  /^(?:(?:work|make|begin|start)\s+)?(?:(?:exactly\s+)?(?:the\s+)?same as|as(?:\s+given)?\s+for|as)\s+(?:the\s+)?(?!rows?\b|rnds?\b|rounds?\b|foll|above|before)([\p{L}][\p{L} ]*?)(?:,?\s+(?:until|(?:up\s+)?to(?:\s+and\s+including)?|through)\s+(.+?))?\s*[.:]?$/iu;

/** Null for a line that says nothing of another piece; its lines null where it is not plain which are meant. */
export function linesAsked(
  text: string,
  parts: readonly NamedLines[],
): { readonly lines: readonly WorkLine[] | null } | null {
  const [, words, until] = AS_FOR.exec(text) ?? [];
  const part = parts.findLast(({ name }) => name.toLowerCase() === words?.toLowerCase());
  if (part === undefined) return null;
  if (until === undefined) return { lines: part.lines };
  const end = endOf(part.lines, until);
  return { lines: end === null ? null : part.lines.slice(0, end) };
}

/** How many of the lines come before what is named. */
function endOf(lines: readonly WorkLine[], until: string): number | null {
  const row = /^(?:(?:the\s+)?end of\s+)?(?:row|rnd|round)\s+(\d+)$/i.exec(until)?.[1];
  if (row !== undefined) {
    const at = lines.findIndex((line) => line.number === Number(row) && !isRange(line));
    return at < 0 ? null : at + 1;
  }
  const shaping = SHAPED.exec(until);
  if (shaping === null) return null;
  const [, where, decreases] = shaping;
  const from = where === undefined ? 0 : lines.findIndex((line) => heads(line, where));
  const shapes = decreases === undefined ? INCREASING : DECREASING;
  const first = Math.max(0, from);
  const next = lines.findIndex((line, at) => at > first && line.kind === 'note');
  const section = lines.slice(first, next < 0 || from < 0 ? undefined : next);
  const last = section.findLastIndex(({ text }) => shapes.test(text.text));
  if (last < 0) return null;
  const again = section
    .slice(last + 1)
    .findIndex(({ text }) => !/^rep(?:eat)?\s+(?:the\s+)?last\b/i.test(text.text));
  return first + (again < 0 ? section.length : last + 1 + again);
}

/** `all armhole decreases are complete`, `increases have been worked`. */
const SHAPED =
  /^(?:all\s+)?(?:(?:the|of the)\s+)?(?:(\p{L}+)\s+)?(?:(decreases?)|increases?)\s+(?:is|are|have been|has been)\s+(?:all\s+)?(?:complete|completed|done|worked|finished|made)$/iu;
const DECREASING = /\d?tog\b|\bdec\b/i;
const INCREASING = /\binc\b|\b2 [a-z]{2,4} in\b/i;

/** `Shape Armholes` heads the armhole decreases. */
function heads({ kind, text }: WorkLine, where: string): boolean {
  return kind === 'note' && text.text.toLowerCase().includes(where.toLowerCase().replace(/s$/, ''));
}

function isRange({ text }: WorkLine): boolean {
  return /^\D*\d+\s*(?:[–-]|to|and)\s*\d/.test(text.text);
}
