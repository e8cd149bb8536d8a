/**
 * A paragraph that runs a list of abbreviations, `UK terms: ch chain, ss slip stitch, dc double crochet, V (or Vst) = 1 tr, 1 ch,
 * 1 tr all in one place. The 3 ch …`, in; its terms, its list, the stitches it tells and its sentences out, each as a line.
 */

import { fileSpan, type MappedText } from '../source/mapped-text.ts';
import { sliceText, trimText } from './mapped-pieces.ts';
import { explainsItself } from './stitch-entries.ts';
import type { TextLine } from './tidy-lines.ts';

const LEAD = /^([^:.,]{2,40}):\s+(?=\p{L})/u;
const FEWEST = 4;
/** `V (or Vst) = 1 tr, 1 ch, 1 tr all into the same place.` */
const TOLD = /^(\p{L}[\p{L}\d -]{0,16}?(?:\s*\([\p{L}\d -]{1,20}\))?)\s*=\s*(?=[\d(])([^.]+)\.?\s*/u;

export function withRunningLists(lines: readonly TextLine[]): readonly TextLine[] {
  return lines.flatMap((line) => (line.cells.length > 1 ? [line] : (partsOf(line) ?? [line])));
}

/** Null for a line that is no such paragraph, or is nothing but its list. */
function partsOf(line: TextLine): TextLine[] | null {
  const { text } = line.text;
  const lead = LEAD.exec(text)?.[0].length ?? 0;
  const end = listEnd(text, lead);
  if (end === null || (lead === 0 && end === text.length)) return null;
  const told = TOLD.exec(text.slice(end));
  const behind = end + (told?.[0].length ?? 0);
  if (told === null && end < text.length && !/^\p{Lu}/u.test(text.slice(end))) return null;
  const list = sliceText(line.text, lead, end);
  const parts: (TextLine | null)[] = [
    partOf(line, sliceText(line.text, 0, Math.max(0, lead - 1)), /[:\s]+$/),
    partOf(line, list, /[\s,.;]+$/),
    told === null ? null : { ...lineOf(line, sliceText(line.text, end, behind)), tellsStitch: true },
    partOf(line, sliceText(line.text, behind), /\s+$/),
  ];
  return parts.filter((part) => part !== null);
}

/** Where the list that begins at `from` ends: behind its last word and its full stop or comma; null where there are too few. */
function listEnd(text: string, from: number): number | null {
  let at = from;
  let found = 0;
  for (;;) {
    const rest = text.slice(at);
    const piece = /^[^,;.=()]+/.exec(rest)?.[0];
    if (piece === undefined || !explainsItself(piece.trim())) break;
    found += 1;
    at += piece.length;
    const joint = /^[,;.]\s*/.exec(text.slice(at))?.[0] ?? '';
    at += joint.length;
    if (!/^[,;]/.test(joint)) break;
  }
  return found < FEWEST ? null : at;
}

function partOf(line: TextLine, text: MappedText, endings: RegExp): TextLine | null {
  const length = text.text.replace(endings, '').length;
  return length === 0 ? null : lineOf(line, sliceText(text, 0, length));
}

function lineOf(line: TextLine, words: MappedText): TextLine {
  const text = trimText(words);
  return { ...line, text, cells: [text], span: fileSpan(text, 0, text.text.length) };
}
