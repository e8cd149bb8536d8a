/** A file's text in, its YAML as values with the place of each out; mistakes are gathered, never thrown. */

import {
  type Alias,
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Node,
  parseDocument,
  Scalar,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';
import type { MappedText } from './mapped-text.ts';
import type { Span } from './span.ts';
import { mistakesOf } from './yaml-mistakes.ts';
import { doubleQuotedText, foldedText, literalText, plainScalarText, singleQuotedText } from './yaml-text.ts';
import type { YamlEntry, YamlFile, YamlMistake, YamlNode, YamlText } from './yaml-tree.ts';

/** Aliases may make a short file stand for an endless one, or for one that holds itself; no pattern has this many values, or this depth. */
const MOST_VALUES = 10_000;
const DEEPEST = 60;

/** A folder of patterns is read file by file: one larger than this is no pattern. */
const LONGEST_TEXT = 500_000;

/** How much a file may hold. */
export const MOST = { characters: LONGEST_TEXT, values: MOST_VALUES, depth: DEEPEST } as const;

export function readYaml(text: string): YamlFile {
  if (text.length > LONGEST_TEXT) return { root: null, mistakes: [tooMuch({ start: 0, end: 1 })] };
  const document = parse(text);
  if (document === null) return { root: null, mistakes: [tooMuch({ start: 0, end: 1 })] };
  const walk: Walk = { text, count: 0, mistakes: [], anchors: new Map() };
  const root = document.contents === null ? null : treeOf(document.contents, walk, 0);
  const isBlank = root?.kind === 'text' && root.text.text === '' && root.style === 'plain';
  return { root: isBlank ? null : root, mistakes: mistakesOf(document, text, walk.mistakes) };
}

/** Null when the file is nested so deep that it can't be read at all. */
function parse(text: string): Document.Parsed | null {
  try {
    return parseDocument(text, {
      keepSourceTokens: true,
      prettyErrors: false,
      // Any level but silent, or a second document in the file goes unnoticed.
      logLevel: 'error',
      // Looked for in the walk, which knows both places; the library's search takes ten seconds for 40,000 keys.
      uniqueKeys: false,
    });
  } catch {
    // The library runs out of stack on thousands of open brackets; it has no other reason to throw.
    return null;
  }
}

interface Walk {
  readonly text: string;
  count: number;
  readonly mistakes: YamlMistake[];
  /** What `&name` was last put on, so far. */
  readonly anchors: Map<string, Node>;
}

function tooMuch(span: Span): YamlMistake {
  return { kind: 'too much', span, broken: true };
}

function treeOf(node: unknown, walk: Walk, depth: number): YamlNode {
  walk.count++;
  if (isAlias(node)) return aliasTree(node, walk, depth);
  if ((isScalar(node) || isMap(node) || isSeq(node)) && node.anchor !== undefined)
    walk.anchors.set(node.anchor, node);
  if (isScalar(node)) return scalarTree(node, walk);
  if (!isMap(node) && !isSeq(node)) return emptyText({ start: 0, end: 0 });
  const span = spanOf(node, walk.text);
  if (depth > DEEPEST || walk.count > MOST_VALUES) {
    if (!walk.mistakes.some((mistake) => mistake.kind === 'too much')) walk.mistakes.push(tooMuch(span));
    return emptyText(span);
  }
  noteUnclosed(node, walk);
  const tree: YamlNode = isSeq(node)
    ? { kind: 'list', items: node.items.map((item) => treeOf(item, walk, depth + 1)), span }
    : { kind: 'map', entries: entriesOf(node, walk, depth), span };
  return tree;
}

function noteUnclosed(node: YAMLMap | YAMLSeq, walk: Walk): void {
  const token = node.srcToken;
  if (token?.type !== 'flow-collection') return;
  const { offset, source } = token.start;
  const closed = token.end.some((end) => end.type === 'flow-map-end' || end.type === 'flow-seq-end');
  if (!closed)
    walk.mistakes.push({
      kind: 'not closed',
      character: source,
      span: { start: offset, end: offset + 1 },
      broken: true,
    });
}

/** Of two keys of one name the first is kept. */
function entriesOf(map: YAMLMap, walk: Walk, depth: number): readonly YamlEntry[] {
  const byKey = new Map<string, YamlEntry>();
  for (const entry of map.items.flatMap((pair) => entryTree(pair, walk, depth))) {
    const first = byKey.get(entry.key);
    if (first === undefined) byKey.set(entry.key, entry);
    else
      walk.mistakes.push({
        kind: 'same key',
        key: entry.key,
        first: first.keySpan,
        span: entry.keySpan,
        broken: false,
      });
  }
  return [...byKey.values()];
}

function entryTree(
  pair: { readonly key: unknown; readonly value: unknown },
  walk: Walk,
  depth: number,
): readonly YamlEntry[] {
  const key = treeOf(pair.key, walk, depth + 1);
  if (key.kind !== 'text') {
    const text = walk.text.slice(key.span.start, key.span.end);
    walk.mistakes.push({ kind: 'unreadable', text, span: key.span, broken: false });
    return [];
  }
  // A key with nothing after it has its value just behind the key.
  const value =
    pair.value === null
      ? emptyText({ start: key.span.end, end: key.span.end })
      : treeOf(pair.value, walk, depth + 1);
  if (value.kind === 'text' && value.text.text === '') noteHash(key.span.end, walk);
  return [{ key: key.text.text, keySpan: key.span, value }];
}

/** `hex: #7a8b4f` leaves the key without a value: the rest is a remark. A remark proper has a blank after its `#`. */
function noteHash(keyEnd: number, walk: Walk): void {
  const found = /^["']?\s*:[ \t]+(#\S+)/.exec(walk.text.slice(keyEnd, keyEnd + 80));
  if (found?.[1] === undefined) return;
  const start = keyEnd + found[0].length - found[1].length;
  walk.mistakes.push({
    kind: 'hash',
    text: found[1],
    span: { start, end: start + found[1].length },
    broken: false,
  });
}

function aliasTree(alias: Alias, walk: Walk, depth: number): YamlNode {
  const span = spanOf(alias, walk.text);
  const target = walk.anchors.get(alias.source);
  if (target === undefined) {
    walk.mistakes.push({ kind: 'starts with', character: '*', span, broken: true });
    return emptyText(span);
  }
  return treeOf(target, walk, depth + 1);
}

function scalarTree(scalar: Scalar, walk: Walk): YamlText {
  const { value } = scalar;
  const text = scalarText(scalar, walk.text);
  if (scalar.type === Scalar.BLOCK_LITERAL && text.text === '') noteOutside(scalar, walk);
  const quote = unclosedQuote(scalar);
  if (quote !== null) {
    const start = scalar.srcToken?.offset ?? 0;
    walk.mistakes.push({
      kind: 'not closed',
      character: quote,
      span: { start, end: start + 1 },
      broken: true,
    });
  }
  const known =
    typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' ? value : null;
  return {
    kind: 'text',
    text,
    value: known,
    style: styleOf(scalar),
    span: textSpan(scalar, text, walk.text),
  };
}

/** Nothing is set in after `|`, and the next line is no key of one word: it is the text that was to be set in. */
function noteOutside(scalar: Scalar, walk: Walk): void {
  const end = scalar.range?.[2] ?? walk.text.length;
  const [line = ''] = walk.text.slice(end, end + 200).split('\n');
  if (line.trim() === '' || /^\s*(?:- +)*[\w-]+\s*:(?:\s|$)/.test(line) || /^(?:---|\.\.\.)/.test(line))
    return;
  const start = end + line.search(/\S/);
  const text = line.trim();
  walk.mistakes.push({ kind: 'outside', text, span: { start, end: start + text.length }, broken: true });
}

function styleOf(scalar: Scalar): YamlText['style'] {
  if (scalar.type === Scalar.BLOCK_LITERAL) return 'literal';
  if (scalar.type === Scalar.BLOCK_FOLDED) return 'folded';
  return scalar.type === Scalar.QUOTE_DOUBLE || scalar.type === Scalar.QUOTE_SINGLE ? 'quoted' : 'plain';
}

function scalarText(scalar: Scalar, file: string): MappedText {
  const token = scalar.srcToken;
  const start = scalar.range?.[0] ?? 0;
  if (token === undefined) return { text: '', runs: [{ at: 0, offset: start }] };
  if (token.type === 'block-scalar') {
    const value = String(scalar.value);
    const offset = token.props.reduce(
      (at, prop) => at + ('source' in prop ? prop.source.length : 0),
      token.props[0]?.offset ?? start,
    );
    return scalar.type === Scalar.BLOCK_LITERAL
      ? literalText(value, token.source, offset)
      : foldedText(value, token.source, offset);
  }
  if (token.type === 'double-quoted-scalar' || token.type === 'single-quoted-scalar') {
    const within = token.source.slice(1, unclosedQuote(scalar) === null ? -1 : undefined);
    const read = token.type === 'double-quoted-scalar' ? doubleQuotedText : singleQuotedText;
    return read(within, token.offset + 1);
  }
  return plainScalarText(file.slice(start, scalar.range?.[1] ?? start), start);
}

/** The quote that opens a text and never comes again, or null. */
function unclosedQuote(scalar: Scalar): string | null {
  const token = scalar.srcToken;
  if (token?.type !== 'double-quoted-scalar' && token?.type !== 'single-quoted-scalar') return null;
  const quote = token.source.charAt(0);
  const closed = token.source.length > 1 && token.source.endsWith(quote);
  const backslashes =
    /\\*$/.exec(token.source.slice(Math.max(0, token.source.length - 64), -1))?.[0].length ?? 0;
  const escaped = quote === '"' && backslashes % 2 === 1;
  return closed && !escaped ? null : quote;
}

/** From the first letter to the last: a block's `|`, indentation and closing line ends are not part of it. */
function textSpan(scalar: Scalar, text: MappedText, file: string): Span {
  const whole = spanOf(scalar, file);
  if (scalar.type !== Scalar.BLOCK_LITERAL && scalar.type !== Scalar.BLOCK_FOLDED) return whole;
  const first = text.text.search(/\S/);
  if (first === -1) return { start: whole.start, end: whole.start + 1 };
  const firstOffset = text.runs.findLast((run) => run.at <= first) ?? { at: 0, offset: whole.start };
  const end = whole.start + file.slice(whole.start, whole.end).trimEnd().length;
  return { start: firstOffset.offset + first - firstOffset.at, end };
}

function spanOf(node: Node, file: string): Span {
  const [start, end] = node.range ?? [0, 0];
  const written = file.slice(start, end);
  // A map in blocks runs on over the blank lines below it.
  return { start, end: start + (isMap(node) || isSeq(node) ? written.trimEnd().length : written.length) };
}

function emptyText(span: Span): YamlText {
  return {
    kind: 'text',
    text: { text: '', runs: [{ at: 0, offset: span.start }] },
    value: null,
    style: 'plain',
    span,
  };
}
