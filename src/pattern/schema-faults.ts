/** What the schema finds wrong with a file's values in, diagnostics at their places out. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { nearest } from '../diagnostics/nearest.ts';
import type { Span } from '../source/span.ts';
import { entryOf, keySpanAt, type YamlNode, type YamlPath, yamlAt } from '../source/yaml-tree.ts';
import { mFromMm, printCm, printG, printM, printMm } from '../units.ts';
import { type Issue, leavesOf, misspeltPaths, nearKey, pathOf } from './issues.ts';
import { type JsonSchema, knownKeys, schemaAt } from './json-schema.ts';
import { aboutWords, formOf, foundWords, keyWords, placeWords, shown, wantedWords } from './place-words.ts';
import { isBlank } from './plain-value.ts';
import type { MeasureFault } from './written-measures.ts';

interface Context {
  readonly file: string;
  readonly root: YamlNode;
  /** Of files other than patterns: what they may hold, and what their places are called. */
  readonly schema?: JsonSchema;
  readonly placeWords?: (root: YamlNode | null, path: YamlPath) => string;
}

const ROW_LABEL = /^(?:rows?|rnds?|rounds?|foundation)\b/i;

/** One diagnostic for each thing wrong: a key misspelt is not also reported as missing. */
export function schemaFaults(issues: readonly Issue[], context: Context): readonly Diagnostic[] {
  const leaves = issues.flatMap((issue) => leavesOf(issue));
  const strayRows = leaves.some(
    (issue) => issue.code === 'unrecognized_keys' && issue.keys.some((key) => ROW_LABEL.test(key)),
  );
  const misspelt = misspeltPaths(leaves, context.schema);
  return leaves.flatMap((issue) => {
    const path = pathOf(issue.path);
    const isMissing = missing(issue, context.root);
    if (isMissing && (misspelt.has(path.join('.')) || (strayRows && path.at(-1) === 'work'))) return [];
    return isMissing ? [missingFault(path, context)] : faultsOf(issue, path, context);
  });
}

function faultsOf(issue: Issue, path: YamlPath, context: Context): readonly Diagnostic[] {
  const { file, root, schema } = context;
  const node = yamlAt(root, path);
  const where = { file, span: node?.span ?? holderSpan(root, path) };
  const key = keyWords(path);
  const given = node?.kind === 'text' ? shown(node.text.text) : '';
  switch (issue.code) {
    case 'unrecognized_keys':
      return unknownKeys(path, issue.keys, context);
    case 'invalid_key':
      return [
        diagnose('file/yarn-letter', { file, span: keySpanAt(root, path) ?? where.span }, { given: key }),
      ];
    case 'invalid_value': {
      if (node?.kind !== 'text') break;
      const choices = issue.values.map(String);
      return [diagnose('file/not-one-of', where, { key, given, choices, nearest: nearest(given, choices) })];
    }
    case 'invalid_format': {
      if (path.at(-1) === 'balls') break;
      if (path[0] === 'film') return [filmFault(path, given, where, schema)];
      if (path.at(-1) === 'hex') return [diagnose('file/colour-code', where, { given })];
      if (path.at(-1) === 'colour') return [diagnose('file/yarn-letter', where, { given })];
      if (path.at(-1) === 'video')
        return [diagnose('along/address', where, { given, form: formOf(path, schema) })];
      return [diagnose('file/date', where, { given })];
    }
    case 'too_small':
    case 'too_big': {
      const least = issue.code === 'too_small' ? String(issue.minimum) : null;
      const most = issue.code === 'too_big' ? String(issue.maximum) : null;
      return [
        diagnose('file/out-of-range', where, { key, given, least, most, about: aboutWords(path, schema) }),
      ];
    }
    case 'custom':
      return measureFaults(issue.params, path, given, where, schema);
  }
  const facts = {
    key,
    wanted: wantedWords(schemaAt(path, schema)),
    found: foundWords(node),
    about: aboutWords(path, schema),
    form: formOf(path, schema),
  };
  return [diagnose('file/wrong-kind', where, facts)];
}

/** Of a film only its address, what stands behind that, and times are of a form of their own. */
function filmFault(
  path: YamlPath,
  given: string,
  where: { readonly file: string; readonly span: Span },
  schema: JsonSchema | undefined,
): Diagnostic {
  const last = path.at(-1);
  const ofFilm = path.length <= 3 && path.at(-2) !== 'times' && path.at(-2) !== 'topics';
  if (ofFilm && last === 'address')
    return diagnose('film/address', where, { given, form: formOf(path, schema) });
  if (ofFilm && last === 'at') return diagnose('film/at', where, { given });
  return diagnose('film/time', where, { given, of: keyWords(path) });
}

function measureFaults(
  params: Record<string, unknown> | undefined,
  path: YamlPath,
  given: string,
  where: { readonly file: string; readonly span: Span },
  schema: JsonSchema | undefined,
): readonly Diagnostic[] {
  // Written by the schema's own measure check, and by nothing else.
  const fault = params as MeasureFault;
  if (fault.fault === 'measure')
    return [diagnose('file/measure', where, { given, wants: fault.wants, form: formOf(path, schema) })];
  const least = fault.least === null ? null : printBound(fault.wants, fault.least);
  const most = fault.most === null ? null : printBound(fault.wants, fault.most);
  return [
    diagnose('file/out-of-range', where, {
      key: keyWords(path),
      given,
      least,
      most,
      about: aboutWords(path, schema),
    }),
  ];
}

function printBound(wants: 'length' | 'mass', amount: number): string {
  if (wants === 'mass') return printG(amount);
  if (amount < 100) return printMm(amount);
  return amount < 1000 ? printCm(amount) : printM(mFromMm(amount));
}

function unknownKeys(
  path: YamlPath,
  keys: readonly string[],
  { file, root, schema, placeWords: called = placeWords }: Context,
): readonly Diagnostic[] {
  const rows = keys.filter((key) => ROW_LABEL.test(key));
  const known = knownKeys(schemaAt(path, schema) ?? {});
  const spanOf = (key: string): Span => keySpanAt(root, [...path, key]) ?? holderSpan(root, path);
  const faults = keys
    .filter((key) => !rows.includes(key))
    .map((key) => {
      const facts = { key: shown(key), holder: called(root, path), nearest: nearKey(key, known), known };
      return diagnose('file/unknown-key', { file, span: spanOf(key) }, facts);
    });
  const [label] = rows;
  if (label === undefined) return faults;
  return [
    ...faults,
    diagnose('file/row-outside', { file, span: spanOf(label) }, { label: shown(label), count: rows.length }),
  ];
}

/** Not there, or there with nothing in it. */
function missing(issue: Issue, root: YamlNode): boolean {
  if (issue.code === 'too_small' && (issue.origin === 'string' || issue.origin === 'array')) return true;
  if (issue.code !== 'invalid_type' && issue.code !== 'invalid_value' && issue.code !== 'invalid_union')
    return false;
  const node = yamlAt(root, pathOf(issue.path));
  return node === null || isBlank(node);
}

function missingFault(
  path: YamlPath,
  { file, root, schema, placeWords: called = placeWords }: Context,
): Diagnostic {
  const last = path.at(-1);
  const holder = path.slice(0, -1);
  const span = keySpanAt(root, path) ?? yamlAt(root, path)?.span ?? holderSpan(root, path);
  const facts = {
    key: typeof last === 'number' ? `text in entry ${last + 1}` : keyWords(path),
    holder: called(root, holder),
    about: aboutWords(path, schema),
    form: formOf(path, schema),
  };
  return diagnose('file/missing', { file, span: isEmpty(span) ? holderSpan(root, path) : span }, facts);
}

function isEmpty(span: Span): boolean {
  return span.end <= span.start;
}

/** The nearest thing above a path that stands in the file: its key, or the first key within it. */
function holderSpan(root: YamlNode, path: YamlPath): Span {
  for (let above = path.slice(0, -1); ; above = above.slice(0, -1)) {
    const key = keySpanAt(root, above);
    if (key !== null) return key;
    const node = yamlAt(root, above);
    if (node?.kind === 'map' && node.entries[0] !== undefined) {
      return (entryOf(node, 'name') ?? entryOf(node, 'title') ?? node.entries[0]).keySpan;
    }
    if (node !== null && !isEmpty(node.span)) return firstLetters(node.span);
    if (above.length === 0) return firstLetters(root.span);
  }
}

function firstLetters(span: Span): Span {
  return { start: span.start, end: Math.min(span.end, span.start + 1) };
}
