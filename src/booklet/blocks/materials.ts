/** Yarns, hook and notions in, the materials section out. */

import { hookSize } from '../../measure/hooks.ts';
import { yarnNote } from '../../measure/materials.ts';
import { printMm } from '../../units.ts';
import type { BookletInput } from '../booklet-input.ts';
import type { Run } from '../break-lines.ts';
import { paragraphs, plain } from '../section.ts';
import type { Setting } from '../set-text.ts';
import { type Strip, withSpaceBefore } from '../strip.ts';
import { yarnTables } from './yarn-table.ts';

export function materials(input: BookletInput, setting: Setting): Strip[] {
  const { pattern } = input;
  const yarns = yarnTables(input, setting);
  const estimated = yarns.length > 0 && input.sizes.some((size) => size.yarn.length > 0);
  const [only, more] = input.sizes;
  const note = only === undefined || more !== undefined ? null : yarnNote(only.yarn);
  const lines = [
    ...(estimated ? [plain(note ?? 'Lengths of yarn are estimates; keep a little in hand.')] : []),
    ...(pattern.hookMm === null ? [] : [labelled('Hook', printHook(pattern.hookMm))]),
    ...(pattern.notions.length > 0 ? [labelled('You also need', pattern.notions.join('; '))] : []),
  ];
  return [
    ...yarns,
    ...withSpaceBefore(paragraphs(lines, setting), yarns.length > 0 ? setting.grid.gap.afterHeading : 0),
  ];
}

function labelled(label: string, text: string): Run[] {
  return [{ text: `${label}: `, face: 'text-bold' }, ...plain(text)];
}

/** `5 mm (US H-8, old UK 6)`. */
export function printHook(mm: number): string {
  const size = hookSize(mm);
  const names = [size?.us ? `US ${size.us}` : null, size?.ukOld ? `old UK ${size.ukOld}` : null];
  const known = names.filter((name) => name !== null);
  return known.length > 0 ? `${printMm(mm)} (${known.join(', ')})` : printMm(mm);
}
