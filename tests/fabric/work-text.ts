/** Instructions as a designer writes them in, the fabric of each size and the faults out. */

import { checkPublication } from '../../src/check/check-publication.ts';
import { mergeSizes } from '../../src/check/merge-sizes.ts';
import { planSize } from '../../src/check/plan-size.ts';
import type { WorkedSize } from '../../src/check/publication.ts';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import type { Fabric, FabricRow } from '../../src/fabric/fabric.ts';
import { targets } from '../../src/fabric/fabric.ts';
import { workSize } from '../../src/fabric/work.ts';
import { measure } from '../../src/measure/measure.ts';
import { NOBODY_LOOKED } from '../../src/pattern/photograph.ts';
import { readPattern } from '../../src/pattern/read-pattern.ts';

export interface Piece {
  readonly work: string;
  readonly terms?: 'US' | 'UK';
  readonly yarns?: string;
  /** Each as it stands in the file: `name: small, rows: 9`. */
  readonly sizes?: readonly string[];
  /** Each as it stands in the file: `shell: 5 dc in same st`. */
  readonly special?: readonly string[];
  /** A second part that goes on from the first. */
  readonly border?: string;
}

export interface WorkedPiece {
  readonly fabrics: readonly Fabric[];
  readonly diagnostics: readonly Diagnostic[];
}

export function patternText(piece: Piece): string {
  const { work, terms = 'US', yarns = 'A', sizes = [], special = [], border } = piece;
  const part = (name: string, text: string, onto: string): string =>
    `  - name: ${name}\n${onto}    work: |\n${indented(text)}\n`;
  return [
    'title: Test Piece\n',
    `terms: ${terms}\n`,
    'yarn:\n',
    ...[...yarns].map((letter) => `  ${letter}: {colour: reed, weight: 4, fibre: wool}\n`),
    sizes.length === 0 ? '' : `sizes:\n${sizes.map((size) => `  - {${size}}\n`).join('')}`,
    special.length === 0 ? '' : `special:\n${special.map((one) => `  ${one}\n`).join('')}`,
    'parts:\n',
    part('Piece', work, ''),
    border === undefined ? '' : part('Border', border, '    onto: Piece\n'),
  ].join('');
}

export function workPiece(piece: Piece): WorkedPiece {
  const { pattern, diagnostics } = readPattern({ file: 'test', text: patternText(piece) }, 'test');
  if (pattern === null) throw new Error(diagnostics.map(({ message }) => message).join('; '));
  const all: Diagnostic[] = [];
  const sizes: WorkedSize[] = [];
  for (let index = 0; index < pattern.sizes.length; index += 1) {
    const { plan, faults } = planSize(pattern, index);
    all.push(...faults);
    if (plan === null) continue;
    const worked = workSize(pattern, index, plan);
    all.push(...worked.diagnostics);
    sizes.push({ index, fabric: worked.fabric, measures: measure(pattern, worked.fabric) });
  }
  const ofWork = mergeSizes(all, pattern.sizes.length);
  const sound = [...diagnostics, ...ofWork].every(({ severity }) => severity !== 'error');
  const found = [
    ...diagnostics,
    ...ofWork,
    ...checkPublication({ pattern, sizes, looks: NOBODY_LOOKED, sound }),
  ];
  // These pieces are written without their turns, for short.
  return {
    fabrics: sizes.map(({ fabric }) => fabric),
    diagnostics: found.filter(({ code }) => code !== 'row/never-turns'),
  };
}

/** The fabric of a piece that has one size and no fault at all. */
export function fabricOf(piece: Piece | string): Fabric {
  const { fabrics, diagnostics } = workPiece(typeof piece === 'string' ? { work: piece } : piece);
  const faults = diagnostics.map(({ code, message }) => `${code}: ${message}`);
  if (faults.length > 0) throw new Error(faults.join('; '));
  const [fabric] = fabrics;
  if (fabric === undefined) throw new Error('not worked');
  return fabric;
}

/** The faults of a piece as `code: message`. */
export function faultsOf(piece: Piece | string): readonly string[] {
  const { diagnostics } = workPiece(typeof piece === 'string' ? { work: piece } : piece);
  return diagnostics.map(({ code, message }) => `${code}: ${message}`);
}

export function codesOf(piece: Piece | string): readonly string[] {
  return workPiece(typeof piece === 'string' ? { work: piece } : piece).diagnostics.map(({ code }) => code);
}

export function rowOf(fabric: Fabric, label: string): FabricRow {
  const row = fabric.rows.find((one) => one.label === label);
  if (row === undefined) throw new Error(`no ${label} in ${fabric.rows.map((one) => one.label).join(', ')}`);
  return row;
}

/** `7 sc, 30 dc, 5 shell, 4 ch-2 sp`: what a row makes, as a maker would count it. */
export function tallyOf(fabric: Fabric, label: string): string {
  const { byStitch, groups, bySpace } = rowOf(fabric, label);
  const spaces = Object.entries(bySpace).map(([chains, n]) => `${n} ch-${chains} sp`);
  return [...Object.entries(byStitch), ...Object.entries(groups)]
    .map(([name, n]) => `${n} ${name}`)
    .concat(spaces)
    .join(', ');
}

/** The counted stitches of a row, each as `id<position of what it goes into, among the counted of the row below>`. */
export function feetOf(fabric: Fabric, label: string): readonly string[] {
  const row = rowOf(fabric, label);
  const found: string[] = [];
  for (let i = row.first; i < row.end; i += 1) {
    const counted = fabric.countsAs[i] ?? -1;
    if (counted < 0) continue;
    const into = [...targets(fabric, i)].map((target) => placeName(fabric, target));
    found.push(`${fabric.stitches[counted]}<${into.join('+')}`);
  }
  return found;
}

/** `Row 1.3`: the third counted stitch of Row 1; `Foundation.ch4`: the fourth chain made. */
function placeName(fabric: Fabric, node: number): string {
  const row = fabric.rows[fabric.row[node] ?? 0];
  if (row === undefined) return '?';
  let counted = 0;
  let chains = 0;
  for (let i = row.first; i <= node; i += 1) {
    if ((fabric.countsAs[i] ?? -1) >= 0) counted += 1;
    if (fabric.stitches[fabric.kind[i] ?? 0] === 'ch') chains += 1;
  }
  const isCounted = (fabric.countsAs[node] ?? -1) >= 0;
  const name = fabric.stitches[fabric.kind[node] ?? 0];
  if (isCounted) return `${row.label}.${counted}`;
  return name === 'ch' ? `${row.label}.ch${chains}` : `${row.label}.${name}`;
}

function indented(text: string): string {
  return text
    .trim()
    .split('\n')
    .map((line) => `      ${line.trim()}`)
    .join('\n');
}
