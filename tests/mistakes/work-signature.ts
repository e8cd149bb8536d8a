/**
 * What is worked in every size, as one text, so that two compilations can be compared: of every stitch its kind, what
 * it counts as, its yarn, its loop, how and into what it goes, its flags and the special stitch it belongs to; of every
 * row its label, side, direction, how it closes and the count it states. Where it stands in the file is left out.
 */

import type { CompiledPattern } from '../../src/compiled.ts';
import { type Fabric, FLAG, NONE, targets } from '../../src/fabric/fabric.ts';

export function workSignature({ sizes, pattern }: CompiledPattern): string {
  const parts = pattern?.parts.map(({ name, make, onto }) => `${name} ${make} ${onto}`).join('|');
  return [parts, ...sizes.map(({ fabric }) => fabricSignature(fabric, true))].join('\n');
}

/** The same without the chains that only turn or rise, so that what stands on what is compared. */
export function stitchSignature({ sizes }: CompiledPattern): string {
  return sizes.map(({ fabric }) => standing(fabric)).join('\n');
}

function standing(fabric: Fabric): string {
  const { count, stitches, flags, countsAs } = fabric;
  const turns = (i: number): boolean => ((flags[i] ?? 0) & FLAG.turningChain) !== 0;
  const kept: number[] = [];
  for (let i = 0; i < count; i += 1) if (!turns(i) || countsAs[i] !== NONE) kept.push(i);
  const renumbered = new Map(kept.map((old, now) => [old, now]));
  const made = kept.map((i) => {
    const into = turns(i) ? '' : [...targets(fabric, i)].map((to) => renumbered.get(to) ?? 'turn').join('+');
    const kind = turns(i) ? 'ch' : stitches[fabric.kind[i] ?? 0];
    return `${kind} ${stitches[countsAs[i] ?? NONE] ?? ''} ${fabric.yarn[i]} ${fabric.loop[i]} ${fabric.row[i]} ${into}`;
  });
  const rows = fabric.rows.map(({ label, closing }) => `${label} ${closing}`);
  return [fabric.size, ...rows, ...made].join('\n');
}

/** What is worked, whatever its rows are called and whatever count they state. */
export function workOnlySignature({ sizes }: CompiledPattern): string {
  return sizes.map(({ fabric }) => fabricSignature(fabric, false)).join('\n');
}

function fabricSignature(fabric: Fabric, said: boolean): string {
  const { count, stitches, yarns, groups, rows, parts } = fabric;
  const id = (index: number | undefined): string => stitches[index ?? -1] ?? '';
  const made: string[] = [];
  for (let i = 0; i < count; i += 1) {
    const group = groups[fabric.group[i] ?? -1]?.special ?? '';
    const into = fabric.into.subarray(fabric.intoStart[i], fabric.intoStart[i + 1]).join('+');
    const yarn = yarns[fabric.yarn[i] ?? -1] ?? '';
    made.push(
      `${id(fabric.kind[i])} ${id(fabric.countsAs[i])} ${yarn} ${fabric.where[i]} ${fabric.loop[i]} ${fabric.flags[i]} ${group} ${into}`,
    );
  }
  const laid = rows.map(
    ({ label, part, side, direction, first, end, closing, edging, onto, stated }) =>
      `${said ? `${label} ${stated}` : ''} ${part} ${side} ${direction} ${first} ${end} ${closing} ${edging} ${onto}`,
  );
  const shaped = parts.map(
    ({ shape, start, corners, firstRow, endRow }) => `${shape} ${start} ${corners} ${firstRow} ${endRow}`,
  );
  return [fabric.size, ...made, ...laid, ...shaped].join('\n');
}
