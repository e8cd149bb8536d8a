/** A path in a pattern file in, the words a maker would call that place by out. */

import { type YamlNode, type YamlPath, yamlAt } from '../source/yaml-tree.ts';
import { type JsonSchema, knownKeys, schemaAt } from './json-schema.ts';

/** `the pattern`, `yarn A`, `size "small"`, `the ball of yarn A`. */
export function placeWords(root: YamlNode | null, path: YamlPath): string {
  const [first, second, third] = path;
  if (first === undefined) return 'the pattern';
  if (first === 'yarn' && second !== undefined)
    return third === undefined ? `yarn ${second}` : `the ${third} of yarn ${second}`;
  if (first === 'special' && second !== undefined) return `the special stitch "${second}"`;
  if ((first === 'sizes' || first === 'parts') && typeof second === 'number') {
    const what = first === 'sizes' ? 'size' : 'part';
    const name = yamlAt(root, [first, second, 'name']);
    return name?.kind === 'text' && name.text.text !== ''
      ? `${what} "${name.text.text}"`
      : `${what} ${second + 1}`;
  }
  if (first === 'photographs' && typeof second === 'number') return `photograph ${second + 1}`;
  return `the ${first}`;
}

/** The key a value stands under, or what it is an entry of. */
export function keyWords(path: YamlPath): string {
  const last = path.at(-1);
  if (typeof last === 'number') return `an entry of ${path.at(-2) ?? 'the file'}`;
  return last === undefined ? 'the file' : last;
}

/** What a key says, for the reason of a fault; a sentence. */
export function aboutWords(path: YamlPath, file?: JsonSchema): string {
  return schemaAt(path, file)?.description ?? 'It is part of every such file.';
}

/** How the value at a path would stand in the file: `hook: 5 mm`. */
export function formOf(path: YamlPath, file?: JsonSchema): string {
  const schema = schemaAt(path, file);
  const last = path.at(-1);
  const before = typeof last === 'number' ? '- ' : `${last ?? ''}: `;
  const example = schema?.examples?.[0];
  if (example !== undefined) return `${before}${flow(example)}`.split('\n')[0] ?? before;
  const required = requiredKeys(schema).map((key) => `${key}:`);
  return required.length === 0 ? before.trim() : `${before.trim()} with ${required.join(' and ')} for each`;
}

/** What kinds of value a key takes. */
export function wantedWords(schema: JsonSchema | null): string {
  const kinds = (schema?.anyOf ?? (schema === null ? [] : [schema])).map((choice) => {
    if (choice.type === 'number') return 'a number';
    if (choice.type === 'integer') return 'a whole number';
    if (choice.type === 'array') return 'a list';
    if (choice.type !== 'object') return 'text';
    const keys = knownKeys(choice);
    return keys.length === 0 ? 'keys of its own' : `keys of its own (${keys.join(', ')})`;
  });
  return [...new Set(kinds)].join(' or ');
}

export function foundWords(node: YamlNode | null): string {
  if (node === null) return 'left out';
  if (node.kind === 'list') return 'a list';
  if (node.kind === 'map') return 'a set of keys';
  return `"${shown(node.text.text)}"`;
}

/** The start of a text, in one line. */
export function shown(text: string): string {
  const line = text.trim().replace(/\s+/g, ' ');
  return line.length > 40 ? `${line.slice(0, 39)}…` : line;
}

function requiredKeys(schema: JsonSchema | null): readonly string[] {
  return schema?.items?.required ?? schema?.required ?? [];
}

/** A value as YAML in one line. */
function flow(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(flow).join(', ')}]`;
  if (typeof value === 'object' && value !== null) {
    return `{${Object.entries(value)
      .map(([key, inner]) => `${key}: ${flow(inner)}`)
      .join(', ')}}`;
  }
  const text = String(value);
  return /^#/.test(text) ? `"${text}"` : text;
}
