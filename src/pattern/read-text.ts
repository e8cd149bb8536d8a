/** A pattern file's YAML in; the instructions of its parts and its special stitches, read by the notation, out. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Instructions } from '../notation/line.ts';
import { readInstructions, readPhrase } from '../notation/read.ts';
import type { Step } from '../notation/tree.ts';
import { plainText } from '../source/mapped-text.ts';
import { keySpanAt, type YamlNode, type YamlPath, yamlAt } from '../source/yaml-tree.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { allImplied } from './all-implied.ts';
import type { ImpliedSpecial } from './implied-specials.ts';
import { isBlank } from './plain-value.ts';
import { allUndescribed, withoutUndescribed } from './undescribed.ts';
import { yarnNames } from './yarn-names.ts';

export interface ReadTexts {
  /** By the part's place in the list; one without readable text is absent. */
  readonly parts: ReadonlyMap<number, Instructions>;
  readonly specials: ReadonlyMap<string, readonly Step[]>;
  /** Those of them that the file does not describe but the trade fixes. */
  readonly implied: readonly ImpliedSpecial[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Nothing is read when the file does not say in which terms it is written: dc is a different stitch in each. */
export function readTexts(file: string, root: YamlNode): ReadTexts {
  const terms = termsOf(root);
  if (terms === null) return { parts: new Map(), specials: new Map(), implied: [], diagnostics: [] };
  const described = keysOf(root, 'special');
  const {
    specials: implied,
    blocks,
    fullNames,
  } = allImplied(
    workTexts(root),
    terms,
    described.map((name) => ({ name, work: workOf(root, name) })),
  );
  const context = {
    file,
    terms,
    sizes: sizeCount(root),
    sizeNames: sizeNames(root),
    specials: [...described, ...implied.map(({ name }) => name)],
    fullNames: [
      ...described.flatMap((name) => {
        const full = textOf(root, ['special', name, 'name']);
        return full === null ? [] : [{ full, name }];
      }),
      ...fullNames,
    ],
    yarns: keysOf(root, 'yarn'),
    blocks,
    yarnNames: yarnNames(
      keysOf(root, 'yarn').map((letter) => ({ letter, colour: textOf(root, ['yarn', letter, 'colour']) })),
    ),
  };
  const parts = new Map<number, Instructions>();
  const specials = new Map<string, readonly Step[]>();
  const diagnostics: Diagnostic[] = [];
  for (const { name, work } of implied)
    specials.set(name, readPhrase(plainText(work), { ...context, blocks: null }).steps);
  for (const name of described) {
    const given = yamlAt(root, ['special', name]);
    const path: YamlPath = given?.kind === 'map' ? ['special', name, 'work'] : ['special', name];
    const text = textAt(file, root, path, diagnostics);
    if (text === null) continue;
    const read = readPhrase(text, { ...context, blocks: null });
    specials.set(name, read.steps);
    for (const diagnostic of read.diagnostics) diagnostics.push(diagnostic);
  }
  const undescribed = allUndescribed(
    context.specials.filter((name) => !specials.has(name)),
    specials,
  );
  for (let index = 0; index < itemCount(root, 'parts'); index++) {
    const text = textAt(file, root, ['parts', index, 'work'], diagnostics);
    if (text === null) continue;
    const read = readInstructions(text, context);
    parts.set(index, withoutUndescribed(read.instructions, undescribed));
    for (const diagnostic of read.diagnostics) diagnostics.push(diagnostic);
  }
  return { parts, specials, implied, diagnostics };
}

/** How the file describes a special stitch, either way it may be written. */
function workOf(root: YamlNode, name: string): string {
  return textOf(root, ['special', name]) ?? textOf(root, ['special', name, 'work']) ?? '';
}

/** The words of all parts, for what they tell together. */
function workTexts(root: YamlNode): string[] {
  return Array.from({ length: itemCount(root, 'parts') }, (_, index) => {
    const node = yamlAt(root, ['parts', index, 'work']);
    return node?.kind === 'text' ? node.text.text : '';
  });
}

function textAt(file: string, root: YamlNode, path: YamlPath, diagnostics: Diagnostic[]) {
  const node = yamlAt(root, path);
  if (node?.kind !== 'text' || isBlank(node)) return null;
  if (node.style !== 'folded') return node.text;
  diagnostics.push(diagnose('file/folded', { file, span: keySpanAt(root, path) ?? node.span }, {}));
  return null;
}

function termsOf(root: YamlNode): Terms | null {
  const node = yamlAt(root, ['terms']);
  const given = node?.kind === 'text' ? node.text.text.trim() : '';
  return given === 'US' || given === 'UK' ? given : null;
}

/** A pattern without sizes has one. */
function sizeCount(root: YamlNode): number {
  return Math.max(1, itemCount(root, 'sizes'));
}

function sizeNames(root: YamlNode): string[] {
  return Array.from({ length: itemCount(root, 'sizes') }, (_, index) => {
    const node = yamlAt(root, ['sizes', index, 'name']);
    return node?.kind === 'text' ? node.text.text.trim() : '';
  });
}

function textOf(root: YamlNode, path: YamlPath): string | null {
  const node = yamlAt(root, path);
  return node?.kind === 'text' ? node.text.text.trim() : null;
}

function itemCount(root: YamlNode, key: string): number {
  const node = yamlAt(root, [key]);
  return node?.kind === 'list' ? node.items.length : 0;
}

function keysOf(root: YamlNode, key: string): readonly string[] {
  const node = yamlAt(root, [key]);
  return node?.kind === 'map'
    ? node.entries.map((entry) => entry.key).filter((word) => word.trim() !== '')
    : [];
}
