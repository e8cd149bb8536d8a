/**
 * Lines of a piece worked from corner to corner in; where the chain of the first block stands by itself above Row 1, the
 * same with that chain in its row out, as the rows after it have theirs: `Row 1: Ch 6, dc in 4th ch from hook …`.
 */

import { fileOffset } from '../source/mapped-text.ts';
import { joinSpans } from '../source/span.ts';
import { insertedText, joinTexts, sliceText } from './mapped-pieces.ts';
import { rowLabel } from './row-labels.ts';
import type { TextLine } from './tidy-lines.ts';

const CHAIN = /^(?:(?:with|using|in)\s+[^,.;:]{1,24},\s+)?(?:ch\s*(\d+)|(\d+)\s*ch)\.?$/i;
/** A block after its chain, whatever joins its two halves. */
const BLOCK =
  /^(?:turn[,.;]\s*)?(?:1\s*)?([a-z]+) in (?:the )?(\d+)(?:th|rd) ch from (?:the |your )?hook(?:[,.]\s*| and )(?:1\s*)?(?:\1 )?in (?:each of )?(?:the )?next (\d+) ch/i;
const BEGINS = /^(?:ch\s*(\d+)|(\d+)\s*ch)[,.]\s*/i;

export function withFirstBlocks(lines: readonly TextLine[]): readonly TextLine[] {
  const begun = new Set(
    lines.map(({ text }) => blockOf(afterLabel(text.text))).filter((one) => one !== null),
  );
  if (begun.size === 0) return lines;
  const out: TextLine[] = [];
  for (const line of lines) {
    const before = out.at(-1);
    const chains = before === undefined ? undefined : CHAIN.exec(before.text.text);
    const label = rowLabel(line.text.text);
    const rest = label === null ? '' : line.text.text.slice(label.end);
    const block = chains == null ? null : blockOf(`ch ${chains[1] ?? chains[2]}, ${rest}`);
    if (before === undefined || label?.number !== 1 || block === null || !begun.has(block)) {
      out.push(line);
      continue;
    }
    const chain = sliceText(before.text, 0, before.text.text.replace(/\.$/, '').length);
    const comma = insertedText(', ', fileOffset(line.text, label.end));
    const text = joinTexts(
      [sliceText(line.text, 0, label.end), chain, comma, sliceText(line.text, label.end)],
      '',
    );
    out[out.length - 1] = {
      ...line,
      text,
      cells: [text],
      span: joinSpans(before.span, line.span),
      gap: before.gap,
    };
  }
  return out;
}

function afterLabel(text: string): string {
  const label = rowLabel(text);
  return label === null ? '' : text.slice(label.end);
}

/** `6 dc 4 2`: its chain, its stitch, where that goes first and how many follow; null for a row that begins otherwise. */
function blockOf(row: string): string | null {
  const chain = BEGINS.exec(row);
  const [, stitch, nth, more] = chain === null ? [] : (BLOCK.exec(row.slice(chain[0].length)) ?? []);
  if (chain === null || stitch === undefined) return null;
  const chains = Number(chain[1] ?? chain[2]);
  return chains === Number(nth) + Number(more) ? `${chains} ${stitch.toLowerCase()} ${nth} ${more}` : null;
}
