/** A file's values and what is wrong with them in; the values without the faulty ones, where the work does not hang on them, out. */

import type { YamlPath } from '../source/yaml-tree.ts';
import { type Issue, leavesOf, misspeltPaths, pathOf } from './issues.ts';

/** What is only shown: without it every row is still worked as meant. Anything else is not guessed at. */
const ONLY_SHOWN = [
  /^(?:title|about|designer|skill|hook|notions|notes|finishing|for|symbols|licence|version|date|changes|film|allow)\b/,
  /^yarn\.[^.]+\.(?:colour|hex|weight|fibre|balls?)\b/,
  /^(?:parts|sizes)\.\d+\.name$/,
];

/** Null when a fault is of a kind that would make every later stage work something other than was meant. */
export function mendFile(plain: unknown, issues: readonly Issue[], slug: string): unknown {
  const mended: unknown = structuredClone(plain);
  const leaves = issues.flatMap(leavesOf);
  if ([...misspeltPaths(leaves)].some((path) => !isOnlyShown(path))) return null;
  for (const issue of leaves) {
    const path = pathOf(issue.path);
    if (issue.code === 'unrecognized_keys') {
      for (const key of issue.keys) put(mended, [...path, key], undefined);
    } else if (path[0] === 'special' && path[2] === 'work') {
      // Rows that use it are left unworked; the others are worked as they are meant.
      put(mended, path.slice(0, 2), undefined);
    } else if (isOnlyShown(path.join('.'))) {
      const at = wholeOf(path);
      put(mended, at, standIn(at, slug));
    } else {
      return null;
    }
  }
  return mended;
}

function isOnlyShown(path: string): boolean {
  return ONLY_SHOWN.some((shown) => shown.test(path));
}

/** One faulty entry of a list of notes takes the list with it; one part of a ball, the ball. */
function wholeOf(path: YamlPath): YamlPath {
  if (path[0] === 'yarn') return path.slice(0, 3);
  return path[0] === 'parts' || path[0] === 'sizes' ? path : path.slice(0, 1);
}

/** What stands in for a value that must be there. */
function standIn(path: YamlPath, slug: string): string | number | undefined {
  const [first, second] = path;
  const last = path.at(-1);
  if (first === 'title') return slug === '' ? 'Untitled' : slug;
  if (last === 'colour') return `yarn ${second}`;
  if (last === 'weight') return 4;
  if (last === 'fibre') return 'any fibre';
  if (last !== 'name') return undefined;
  return `${first === 'parts' ? 'Part' : 'Size'} ${Number(second) + 1}`;
}

function put(holder: unknown, path: YamlPath, value: string | number | undefined): void {
  const [step, ...rest] = path;
  if (typeof holder !== 'object' || holder === null || step === undefined) return;
  if (rest.length > 0) put(Reflect.get(holder, step), rest, value);
  else if (value === undefined) Reflect.deleteProperty(holder, step);
  else Reflect.set(holder, step, value);
}
