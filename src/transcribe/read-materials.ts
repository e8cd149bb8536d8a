/** The lines of a pasted text's materials in; yarns, hook and what else is needed out. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { readHook } from './read-hook.ts';
import { isYarnLine, readYarns } from './read-yarn.ts';
import type { Item } from './sorted-lines.ts';
import { textFault } from './text-faults.ts';
import type { Given, Piece, TranscribedYarn } from './transcript.ts';

export interface MaterialsRead {
  readonly yarns: readonly TranscribedYarn[];
  readonly hook: Given<string> | null;
  readonly notions: readonly Given<string>[];
  readonly supplyLines: readonly Given<string>[];
  readonly pieces: readonly Piece[];
  readonly questions: readonly Diagnostic[];
}

export function readMaterials(items: readonly Item[], file: string): MaterialsRead {
  const supplyLines: Given<string>[] = [];
  const pieces: Piece[] = [];
  const questions: Diagnostic[] = [];
  const notions: Given<string>[] = [];
  let hook: Given<string> | null = null;
  const yarnItems: Item[] = [];
  for (const item of items) {
    const { text } = item.text;
    const read = isHookLine(text, item.field) ? readHook(text) : null;
    if (read !== null) {
      supplyLines.push({ value: wordsOf(item), span: item.span });
      const other: string | null = hook === null ? read.letterIs : read.hook;
      if (other !== null && other !== hook?.value)
        questions.push(
          textFault('text/hook', file, item.span, { read: hook?.value ?? read.hook, also: other }),
        );
      hook ??= { value: read.hook, span: item.span };
      pieces.push({ kind: 'hook', span: item.span, means: read.hook });
      // A line may name the hook and more: "5 mm hook, tapestry needle".
      for (const value of besidesHook(text)) notions.push({ value, span: item.span });
      if (!/\byarns?\b|%|\bballs?\b/i.test(text)) continue;
    }
    if (isYarnLine(text, item.field)) {
      yarnItems.push(item);
      if (read === null) supplyLines.push({ value: wordsOf(item), span: item.span });
      continue;
    }
    for (const value of listed(text, item.field)) notions.push({ value, span: item.span });
    pieces.push({ kind: 'notion', span: item.span, means: text });
  }
  const yarns = readYarns(yarnItems);
  for (const item of yarnItems) pieces.push({ kind: 'yarn', span: item.span, means: saidOf(item, yarns) });
  return { yarns, hook, notions, supplyLines, pieces, questions };
}

function isHookLine(text: string, field: Item['field']): boolean {
  return field === 'hook' || /\bhooks?\b/i.test(text);
}

function wordsOf(item: Item): string {
  return item.line.text.text;
}

function besidesHook(text: string): string[] {
  const parts = text.split(/\s*[,;]\s+|\s+and\s+(?:a\s+)?/i).filter((part) => part !== '');
  if (parts.length < 2 || /\([^)]*,[^)]*\)/.test(text)) return [];
  return parts
    .filter((part) => /\b(?:needles?|markers?|scissors|pins?|buttons?|stuffing|tape)\b/i.test(part))
    .map(withoutStop);
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
