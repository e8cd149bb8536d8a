/** The shapes of a YAML file once read: values with the place of each, and what could not be read. */

import type { MappedText } from './mapped-text.ts';
import type { Span } from './span.ts';

export type YamlNode = YamlText | YamlList | YamlMap;

/** Anything that is neither a list nor a map; `text` is as written, `value` what YAML takes it for. */
export interface YamlText {
  readonly kind: 'text';
  readonly text: MappedText;
  readonly value: string | number | boolean | null;
  readonly style: 'plain' | 'quoted' | 'literal' | 'folded';
  readonly span: Span;
}

export interface YamlList {
  readonly kind: 'list';
  readonly items: readonly YamlNode[];
  readonly span: Span;
}

export interface YamlEntry {
  readonly key: string;
  readonly keySpan: Span;
  readonly value: YamlNode;
}

export interface YamlMap {
  readonly kind: 'map';
  readonly entries: readonly YamlEntry[];
  readonly span: Span;
}

export type YamlPath = readonly (string | number)[];

/** What is wrong with the file as YAML; `broken` when the rest of the file can't be trusted to read as meant. */
export type YamlMistake = { readonly span: Span; readonly broken: boolean } & YamlMistakeFacts;

export type YamlMistakeFacts =
  | { readonly kind: 'tab' }
  | { readonly kind: 'indent' }
  /** A second `: ` in a line of plain text. */
  | { readonly kind: 'colon' }
  | { readonly kind: 'no colon'; readonly line: string }
  | { readonly kind: 'not closed'; readonly character: string }
  | { readonly kind: 'not opened'; readonly character: string }
  | { readonly kind: 'same key'; readonly key: string; readonly first: Span }
  /** Text that begins with a character YAML keeps for itself. */
  | { readonly kind: 'starts with'; readonly character: string }
  /** A `#` where a value was to be, so that YAML takes it for a remark. */
  | { readonly kind: 'hash'; readonly text: string }
  /** Text that was to follow a `|` but is not set in. */
  | { readonly kind: 'outside'; readonly text: string }
  | { readonly kind: 'escape'; readonly text: string }
  | { readonly kind: 'two documents' }
  | { readonly kind: 'too much' }
  | { readonly kind: 'unreadable'; readonly text: string };

export interface YamlFile {
  /** Null for a file with nothing in it. */
  readonly root: YamlNode | null;
  /** In file order. */
  readonly mistakes: readonly YamlMistake[];
}

/** `sizes.0.width`. */
export function pathName(path: YamlPath): string {
  return path.join('.');
}

/** The value at a path, or null. */
export function yamlAt(root: YamlNode | null, path: YamlPath): YamlNode | null {
  let node: YamlNode | null = root;
  for (const step of path) {
    if (node?.kind === 'map') node = entryOf(node, String(step))?.value ?? null;
    else if (node?.kind === 'list') node = node.items[Number(step)] ?? null;
    else return null;
  }
  return node;
}

export function entryOf(map: YamlMap, key: string): YamlEntry | null {
  return map.entries.find((entry) => entry.key === key) ?? null;
}

/** The key that leads to a path, or null for the file itself and for items of a list. */
export function keySpanAt(root: YamlNode | null, path: YamlPath): Span | null {
  if (path.length === 0) return null;
  const holder = yamlAt(root, path.slice(0, -1));
  return holder?.kind === 'map' ? (entryOf(holder, String(path.at(-1)))?.keySpan ?? null) : null;
}

/** The span of every value by its path. */
export function valueSpans(root: YamlNode | null): ReadonlyMap<string, Span> {
  const spans = new Map<string, Span>();
  const visit = (node: YamlNode, path: YamlPath): void => {
    if (path.length > 0) spans.set(pathName(path), node.span);
    if (node.kind === 'map') for (const entry of node.entries) visit(entry.value, [...path, entry.key]);
    if (node.kind === 'list') for (const [index, item] of node.items.entries()) visit(item, [...path, index]);
  };
  if (root !== null) visit(root, []);
  return spans;
}
