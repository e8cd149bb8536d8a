/** The pattern files of the demo site and of the tests in, the instructions of their parts out, ready to be read. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { z } from 'zod';
import type { Context } from '../../src/notation/read.ts';
import { allImplied } from '../../src/pattern/all-implied.ts';
import type { MappedText } from '../../src/source/mapped-text.ts';
import { plainText } from '../../src/source/mapped-text.ts';
import type { Terms } from '../../src/stitches/stitch-row.ts';

export interface PartText {
  readonly mapped: MappedText;
  readonly context: Context;
}

const patternFile = z.object({
  terms: z.enum(['US', 'UK']),
  sizes: z.array(z.object({ name: z.string() })).default([]),
  special: z.record(z.string(), z.unknown()).default({}),
  yarn: z.record(z.string(), z.unknown()).default({}),
  parts: z.array(z.object({ work: z.string() })),
});

const FOLDERS = ['../../patterns', '../patterns'];

export function readPatternParts(): readonly PartText[] {
  return FOLDERS.map((folder) => join(import.meta.dirname, folder))
    .flatMap((folder) =>
      readdirSync(folder, { withFileTypes: true })
        .filter((entry) => entry.isDirectory())
        .map(({ name }) => join(folder, name, 'pattern.yaml')),
    )
    .flatMap(partsOf);
}

function partsOf(file: string): readonly PartText[] {
  const { terms, sizes, special, yarn, parts } = patternFile.parse(parse(readFileSync(file, 'utf8')));
  const context: Context = {
    file,
    terms,
    sizes: Math.max(1, sizes.length),
    sizeNames: sizes.map(({ name }) => name),
    ...specialsOf(
      parts.map(({ work }) => work),
      terms,
      Object.keys(special),
    ),
    yarns: Object.keys(yarn),
  };
  return parts.map(({ work }) => ({ mapped: plainText(work), context }));
}

/** Those described, and those that the trade fixes where nothing is said of them. */
export function specialsOf(
  texts: readonly string[],
  terms: Terms,
  described: readonly string[],
): Pick<Context, 'specials' | 'blocks'> {
  const { specials, blocks } = allImplied(
    texts,
    terms,
    described.map((name) => ({ name, work: '' })),
  );
  return { specials: [...described, ...specials.map(({ name }) => name)], blocks };
}
