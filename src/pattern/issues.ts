/** The schema's findings in; the ones that matter, and the keys that were meant where one is misspelt, out. */

import type { z } from 'zod';
import { nearest } from '../diagnostics/nearest.ts';
import type { YamlPath } from '../source/yaml-tree.ts';
import { type JsonSchema, knownKeys, schemaAt } from './json-schema.ts';

export type Issue = z.core.$ZodIssue;

/** The faults within a choice of kinds are those of the kind that was meant. */
export function leavesOf(issue: Issue): readonly Issue[] {
  if (issue.code !== 'invalid_union') return [issue];
  const meant =
    issue.errors.find((branch) => branch.some((inner) => inner.path.length > 0)) ??
    issue.errors.find((branch) => branch.some((inner) => inner.code !== 'invalid_type'));
  if (meant === undefined) return [issue];
  return meant.flatMap((inner) => leavesOf({ ...inner, path: [...issue.path, ...inner.path] }));
}

/** The library's paths may hold symbols; a file's never do. */
export function pathOf(path: readonly PropertyKey[]): YamlPath {
  return path.map((step) => (typeof step === 'number' ? step : String(step)));
}

/** Other words the trade and its neighbours have for a key. */
const ALSO_CALLED: Readonly<Record<string, string>> = {
  tension: 'gauge',
  instructions: 'work',
  pattern: 'work',
  pieces: 'parts',
  materials: 'yarn',
  yarns: 'yarn',
  author: 'designer',
  description: 'about',
  difficulty: 'skill',
  level: 'skill',
  copyright: 'licence',
  assembly: 'finishing',
  stitch: 'stitches',
  sts: 'stitches',
  yardage: 'length',
  grams: 'mass',
  content: 'fibre',
  video: 'film',
  films: 'film',
  url: 'address',
  link: 'address',
  duration: 'length',
  chapters: 'topics',
};

/** The key most likely meant by one that is not known. */
export function nearKey(key: string, known: readonly string[]): string | null {
  const word = key.toLowerCase();
  const called = Object.hasOwn(ALSO_CALLED, word) ? ALSO_CALLED[word] : undefined;
  return called !== undefined && known.includes(called) ? called : nearest(key, known);
}

/** The paths that keys not known were most likely meant to be. */
export function misspeltPaths(leaves: readonly Issue[], file?: JsonSchema): ReadonlySet<string> {
  return new Set(
    leaves.flatMap((issue) => {
      if (issue.code !== 'unrecognized_keys') return [];
      const holder = pathOf(issue.path);
      const known = knownKeys(schemaAt(holder, file) ?? {});
      const meant = issue.keys.map((key) => nearKey(key, known)).filter((key) => key !== null);
      return meant.map((key) => [...holder, key].join('.'));
    }),
  );
}

/** Keys of the file whose contents can't be relied on, so that nothing is said to be missing from them. */
export function doubtedKeys(leaves: readonly Issue[]): ReadonlySet<string> {
  const misread = leaves.filter((issue) => issue.code === 'invalid_key' || issue.path.length === 1);
  return new Set([...misspeltPaths(leaves), ...misread.map((issue) => String(issue.path[0]))]);
}
