/** A pattern file's text in, its `Pattern` and every fault of the file and its wording out. Never throws. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Source } from '../source/span.ts';
import { readYaml } from '../source/yaml.ts';
import type { YamlNode } from '../source/yaml-tree.ts';
import { buildPattern } from './build-pattern.ts';
import { doubtedKeys, type Issue, leavesOf } from './issues.ts';
import { patternJsonSchema } from './json-schema.ts';
import { mendFile } from './mend-file.ts';
import { nameFaults } from './name-faults.ts';
import type { Pattern } from './pattern.ts';
import { plainValue } from './plain-value.ts';
import { readTexts } from './read-text.ts';
import { type PatternFile, patternSchema } from './schema.ts';
import { schemaFaults } from './schema-faults.ts';
import { yamlFault } from './yaml-faults.ts';

export interface ReadPattern {
  /** Null when the file can't be worked as it is meant; faults in what is only shown leave it readable. */
  readonly pattern: Pattern | null;
  readonly diagnostics: readonly Diagnostic[];
}

export function readPattern(source: Source, slug: string): ReadPattern {
  const { file, text } = source;
  const { root, mistakes } = readYaml(text);
  const faults = [...lostLetters(source), ...mistakes.map((mistake) => yamlFault(file, mistake))];
  if (mistakes.some((mistake) => mistake.broken)) return { pattern: null, diagnostics: faults };
  if (root === null || root.kind !== 'map') {
    const span = { start: 0, end: Math.max(1, text.search(/\r?\n|$/)) };
    return { pattern: null, diagnostics: [...faults, diagnose('file/empty', { file, span }, {})] };
  }
  const { values, issues } = readValues(root, slug);
  const texts = readTexts(file, root);
  const hashes = mistakes.filter((mistake) => mistake.kind === 'hash');
  const ofValues = schemaFaults(issues, { file, root }).filter(
    // A value lost to a remark has been reported as that.
    ({ code, span }) =>
      code !== 'file/missing' ||
      !hashes.some((hash) => hash.span.start - span.end < 4 && hash.span.start > span.start),
  );
  const names = nameFaults(file, root);
  const ofTexts = withoutDoubted(texts.diagnostics, issues);
  const diagnostics = [...faults, ...ofValues, ...names, ...ofTexts];
  const isSound =
    values !== null && names.length === 0 && !diagnostics.some(({ code }) => code === 'file/folded');
  return {
    pattern: isSound ? buildPattern(values, texts, root, source, slug) : null,
    diagnostics: diagnostics.toSorted((a, b) => a.span.start - b.span.start),
  };
}

function readValues(root: YamlNode, slug: string): { values: PatternFile | null; issues: readonly Issue[] } {
  const plain = plainValue(root, patternJsonSchema);
  const read = patternSchema.safeParse(plain);
  if (read.success) return { values: read.data, issues: [] };
  const mended = patternSchema.safeParse(mendFile(plain, read.error.issues, slug));
  return { values: mended.success ? mended.data : null, issues: read.error.issues };
}

/** What the wording misses from a part of the file that is itself at fault. */
const MISSED_FROM: Readonly<Record<string, readonly string[]>> = {
  yarn: ['yarn/unlisted'],
  sizes: ['size/list-length'],
  special: ['special/undefined', 'word/unknown'],
};

function withoutDoubted(faults: readonly Diagnostic[], issues: readonly Issue[]): readonly Diagnostic[] {
  const missed = [...doubtedKeys(issues.flatMap(leavesOf))].flatMap((key) =>
    Object.hasOwn(MISSED_FROM, key) ? (MISSED_FROM[key] ?? []) : [],
  );
  return faults.filter(({ code }) => !missed.includes(code));
}

/** U+FFFD stands where a file's bytes were no letter: it was saved in another encoding. */
function lostLetters({ file, text }: Source): readonly Diagnostic[] {
  const start = text.indexOf('\uFFFD');
  return start === -1 ? [] : [diagnose('file/lost-letters', { file, span: { start, end: start + 1 } }, {})];
}
