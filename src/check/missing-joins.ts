/** Among joined rounds, one that neither joins nor says that it goes on without. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Fabric, FabricRow } from '../fabric/fabric.ts';
import { FLAG, stitchId, targets } from '../fabric/fabric.ts';
import type { Line } from '../notation/line.ts';
import type { Publication } from './publication.ts';

export function missingJoins({ pattern, sizes }: Publication): Diagnostic[] {
  const said = pattern.notes.some(saysSpiral);
  const told = new Set<Line>();
  if (said) return [];
  for (const { fabric } of sizes) {
    const { rows } = fabric;
    for (const [i, row] of rows.entries()) {
      const line = pattern.parts[row.part]?.instructions.lines[row.line];
      if (line !== undefined && lacksJoin(fabric, row, rows[i - 1], rows[i + 1]) && !goesOn(line))
        told.add(line);
    }
  }
  return [...told].map((line) => {
    const { span } = line;
    const label = line.label === null || line.label.kind === 'named' ? null : line.label;
    const row =
      label === null
        ? 'a round'
        : label.kind === 'next'
          ? 'Next round'
          : `${label.word} ${label.from.values[0]}`;
    return diagnose('row/no-join', { file: pattern.source.file, span: label?.span ?? span }, { row });
  });
}

/** It follows a joined round, or one that is joined and begins with a turning chain follows it. */
function lacksJoin(
  fabric: Fabric,
  row: FabricRow,
  before: FabricRow | undefined,
  after: FabricRow | undefined,
): boolean {
  if (row.closing !== 'spiral' || row.side === null || endsFastened(fabric, row)) return false;
  if (hangsBehind(fabric, row, before) || onlySlips(fabric, row)) return false;
  const isJoined = (other: FabricRow | undefined): other is FabricRow =>
    other?.closing === 'joined' && other.part === row.part && other.side !== null && other.unit === 'round';
  // A spiral too may end with a join, but none of its rounds begins with a chain.
  return isJoined(before) || (isJoined(after) && rises(fabric, after));
}

/** Its last stitch is a slip stitch into the round below, as the last petal's is: it holds the end down. */
function endsFastened(fabric: Fabric, { first, end }: FabricRow): boolean {
  if (end <= first || stitchId(fabric, end - 1) !== 'sl-st') return false;
  // A picot's goes into the round itself.
  return [...targets(fabric, end - 1)].some((node) => node < first);
}

/** Loops that hang on an earlier round, behind the one before: the first chain went out from its join, and a stitch closes the last. */
function hangsBehind(fabric: Fabric, { first, end }: FabricRow, before: FabricRow | undefined): boolean {
  if (before === undefined || stitchId(fabric, first) !== 'ch' || stitchId(fabric, end - 1) === 'ch')
    return false;
  for (let i = first; i < end; i += 1)
    if (stitchId(fabric, i) !== 'ch' && [...targets(fabric, i)].some((node) => node >= before.first))
      return false;
  return true;
}

/** Slip stitches and their picots have no height that a join would have to level. */
function onlySlips(fabric: Fabric, { first, end }: FabricRow): boolean {
  for (let i = first; i < end; i += 1) {
    const id = stitchId(fabric, i);
    if (id !== 'sl-st' && id !== 'ch') return false;
  }
  return end > first;
}

/** Among the first few stitches, behind slip stitches to where it starts, is a turning chain. */
function rises({ flags }: Fabric, { first, end }: FabricRow): boolean {
  for (let i = first; i < Math.min(first + FEW, end); i += 1)
    if (((flags[i] ?? 0) & FLAG.turningChain) !== 0) return true;
  return false;
}

const FEW = 4;

function goesOn({ steps }: Line): boolean {
  return steps.some(
    (step) =>
      (step.kind === 'turn' && step.what === 'do not join') ||
      (step.kind === 'note' && (saysSpiral(step.text) || /\bjoin/i.test(step.text))),
  );
}

function saysSpiral(words: string): boolean {
  return /\b(?:spiral|continuous|do not join|without joining)\b/i.test(words);
}
