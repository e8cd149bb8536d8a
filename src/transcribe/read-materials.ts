/** The lines of a pasted text's materials in; yarns, hook and what else is needed out. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { joinTexts, sliceText } from './mapped-pieces.ts';
import { readHook } from './read-hook.ts';
import { coloursSaid, isYarnLine, readYarns } from './read-yarn.ts';
import type { Item } from './sorted-lines.ts';
import { textFault } from './text-faults.ts';
import type { Given, Piece, TranscribedYarn } from './transcript.ts';
import { isLettered } from './yarn-letters.ts';

export interface MaterialsRead {
  readonly yarns: readonly TranscribedYarn[];
  readonly yarnItems: readonly Item[];
  /** The list gives letters, so that a letter it leaves out is none of its yarns. */
  readonly lettered: boolean;
  readonly hook: Given<string> | null;
  readonly notions: readonly Given<string>[];
  readonly supplyLines: readonly Given<string>[];
  readonly pieces: readonly Piece[];
  readonly questions: readonly Diagnostic[];
}

/** `8 mm safety eyes`: millimetres of something else. */
const NO_HOOK =
  /^(?!.*\bhook\b).*\b(?:eyes?|buttons?|beads?|snaps?|poppers?|noses?|rings?|stones?|sequins?)\b/i;

export function readMaterials(items: readonly Item[], file: string): MaterialsRead {
  const supplyLines: Given<string>[] = [];
  const pieces: Piece[] = [];
  const questions: Diagnostic[] = [];
  const notions: Given<string>[] = [];
  let hook: Given<string> | null = null;
  const yarnItems: Item[] = [];
  for (const item of items) {
    const { hook: named, rest } = withoutHook(item);
    const read = named === null || NO_HOOK.test(named) ? null : readHook(named);
    if (read !== null) {
      if (hook !== null && read.hook !== hook.value)
        questions.push(textFault('text/hook', file, item.span, { read: hook.value, also: read.hook }));
      hook ??= { value: read.hook, span: item.span };
      pieces.push({ kind: 'hook', span: item.span, means: read.hook });
    }
    const others = read === null ? item : rest;
    const isYarn = others !== null && isYarnLine(others.text.text, item.field);
    if (read !== null || isYarn) supplyLines.push({ value: item.line.text.text, span: item.span });
    if (others === null) continue;
    if (isYarn) {
      yarnItems.push(others);
      continue;
    }
    for (const value of listed(others.text.text, item.field)) notions.push({ value, span: item.span });
    pieces.push({ kind: 'notion', span: item.span, means: others.text.text });
  }
  const yarns = readYarns(yarnItems);
  for (const item of items) {
    const said = coloursSaid(item.text.text);
    if (said !== null && yarns.length > 1 && yarns.length !== said)
      questions.push(textFault('text/colours', file, item.span, { said, listed: yarns.length }));
  }
  return {
    yarns,
    yarnItems,
    lettered: yarnItems.some(isLettered),
    hook,
    notions,
    supplyLines,
    pieces,
    questions,
  };
}

/** Commas outside of brackets, and a stop before a sentence about the hook: `… and C (cream). 4.5 mm hook.` */
const BETWEEN_SUPPLIES =
  /[,;]\s+(?![^()]*\))|\.\s+(?=(?:\p{Lu}|\d)(?:\d?[.,]\d|[^.,;])*\bhooks?\b)(?<!\bNo\.\s)/gu;

/** A line may name the hook and more: `5 mm hook, tapestry needle`. */
function withoutHook(item: Item): { hook: string | null; rest: Item | null } {
  const { text } = item.text;
  if (item.field !== 'hook' && !/\bhooks?\b/i.test(text)) return { hook: null, rest: item };
  const ends = [...text.matchAll(BETWEEN_SUPPLIES)];
  const pieces: [number, number][] = [];
  let start = 0;
  for (const end of ends) {
    pieces.push([start, end.index]);
    start = end.index + end[0].length;
  }
  pieces.push([start, text.length]);
  const ofHook = pieces.filter(([from, to]) => /\bhooks?\b|\d\s*mm\b|\bsize\b/i.test(text.slice(from, to)));
  const rest = pieces
    .filter((piece) => !ofHook.includes(piece))
    .map(([from, to]) => sliceText(item.text, from, to));
  if (ofHook.length === 0 || rest.length === 0) return { hook: text, rest: null };
  const left = joinTexts(rest, ', ');
  return {
    hook: ofHook.map(([from, to]) => text.slice(from, to)).join(', '),
    rest: { ...item, text: left, cells: [left], field: item.field === 'hook' ? null : item.field },
  };
}

function listed(text: string, field: Item['field']): string[] {
  const isList =
    field === 'notions' ||
    text.split(',').length > 2 ||
    /\b(?:needle|markers?|scissors|hook)\b.*,/i.test(text);
  if (!isList || /\([^)]*,[^)]*\)/.test(text)) return [withoutStop(text)];
  return text
    .split(/\s*[,;]\s+(?:and\s+)?/)
    .map(withoutStop)
    .filter((part) => part !== '');
}

function withoutStop(text: string): string {
  return text
    .replace(/^and\s+/i, '')
    .replace(/[.;,]+$/, '')
    .trim();
}

/** What was made of each line of yarn. */
export function yarnPieces(items: readonly Item[], yarns: readonly TranscribedYarn[]): Piece[] {
  return items.map((item) => ({ kind: 'yarn', span: item.span, means: saidOf(item, yarns) }));
}

function saidOf(item: Item, yarns: readonly TranscribedYarn[]): string {
  const own = yarns.filter(({ span }) => span.start === item.span.start);
  return own.length === 0 ? 'for the yarns below' : own.map(yarnWords).join('; ');
}

function yarnWords({ letter, colour, weight, fibre, ballLength, ballMass }: TranscribedYarn): string {
  const ball = [ballLength, ballMass].filter((measure) => measure !== null).join(' / ');
  const said = [
    colour,
    weight === null ? null : `weight ${weight}`,
    fibre,
    ball === '' ? null : `${ball} a ball`,
  ];
  return `${letter}: ${said.filter((words) => words !== null).join(', ') || 'nothing more is said of it'}`;
}
