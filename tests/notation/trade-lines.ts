/** The YAML files of trade-lines/ in, their entries and the pattern file each entry makes out. */

import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parse } from 'yaml';
import { z } from 'zod';

/** What lies below the line; each text is in words that the reader's own tests hold. */
const below = z.union([
  /** A row of that many sc (UK dc), turned. */
  z.strictObject({ stitches: z.int() }),
  /** A first round of that many sc, joined. */
  z.strictObject({ round: z.int() }),
  /** A first round of that many sc, not joined. */
  z.strictObject({ spiral: z.int() }),
  /** A foundation chain. */
  z.strictObject({ chain: z.int() }),
  /** A ring of 4 chains. */
  z.strictObject({ ring: z.literal(true) }),
  z.strictObject({ nothing: z.literal(true) }),
  z.strictObject({ rows: z.string() }),
  /** Rows of an earlier part, onto which the line is worked as another. */
  z.strictObject({ edge: z.string() }),
]);

/** A number, or one for each size. */
const perSize = z.union([z.int(), z.array(z.int())]);

const worked = z.strictObject({
  stitches: perSize.optional(),
  spaces: perSize.optional(),
  /** The stitches named, not all there are. */
  byStitch: z.record(z.string(), z.int()).optional(),
  groups: z.record(z.string(), z.int()).optional(),
  /** Rows and rounds there are once the line is worked. */
  rows: perSize.optional(),
  /** The line works no row of its own. */
  adds: z.literal('nothing').optional(),
});

const refused = z.strictObject({
  /** The code, or any of several that would be right. */
  fault: z.union([z.string(), z.array(z.string())]),
  /** The words it is about. */
  at: z.string(),
  /** The word it offers instead. */
  near: z.string().optional(),
});

const entry = z.strictObject({
  line: z.string(),
  terms: z.enum(['US', 'UK']),
  on: below,
  special: z.record(z.string(), z.string()).optional(),
  yarns: z.array(z.string()).optional(),
  sizes: z.int().optional(),
  expect: z.union([refused, worked]),
  because: z.string().optional(),
  source: z.string().regex(/^(?:conventions section \d+|common practice|memory)$/),
});

export type TradeLine = z.infer<typeof entry>;
export type Worked = z.infer<typeof worked>;
export type Refused = z.infer<typeof refused>;

export interface Theme {
  readonly name: string;
  readonly lines: readonly TradeLine[];
}

const FOLDER = join(import.meta.dirname, 'trade-lines');

export function readThemes(): readonly Theme[] {
  return readdirSync(FOLDER)
    .filter((file) => file.endsWith('.yaml'))
    .toSorted()
    .map((file) => ({
      name: basename(file, '.yaml').replaceAll('-', ' '),
      lines: z.array(entry).parse(parse(readFileSync(join(FOLDER, file), 'utf8'))),
    }));
}

export interface Built {
  readonly text: string;
  /** Where the instructions begin. */
  readonly below: number;
  /** Where the line stands in them. */
  readonly start: number;
  readonly end: number;
}

/** The pattern file for an entry; another line may take the place of its own. */
export function patternFor(of: TradeLine, line = of.line): Built {
  const head = [
    'title: Trade line',
    `terms: ${of.terms}`,
    ...listed('yarn', of.yarns ?? [], (letter) => `  ${letter}: {colour: reed, weight: 4, fibre: wool}`),
    ...listed('sizes', sizeNames(of.sizes ?? 1), (name) => `  - {name: ${name}}`),
    ...listed(
      'special',
      Object.entries(of.special ?? {}),
      ([name, work]) => `  ${JSON.stringify(name)}: ${JSON.stringify(work)}`,
    ),
    'parts:',
  ];
  const onto = 'edge' in of.on;
  const before = [
    ...head,
    '  - name: Piece',
    '    work: |',
    ...indented(textBelow(of)),
    ...(onto ? ['  - name: Edging', '    onto: Piece', '    work: |'] : []),
    '',
  ].join('\n');
  const own = indented(line).join('\n');
  return {
    text: `${before}${own}\n`,
    below: head.join('\n').length,
    start: before.length,
    end: before.length + own.length,
  };
}

function textBelow({ on, terms }: TradeLine): string {
  const [sc, slSt] = terms === 'US' ? ['sc', 'sl st'] : ['dc', 'ss'];
  if ('stitches' in on)
    return `Foundation: Ch ${on.stitches + 1}.\nRow 1: ${sc} in 2nd ch from hook and in each ch across, turn.`;
  if ('round' in on) return `Rnd 1: ${on.round} ${sc} in magic ring, join with ${slSt} in first ${sc}.`;
  if ('spiral' in on) return `Rnd 1: ${on.spiral} ${sc} in magic ring, do not join.`;
  if ('chain' in on) return `Foundation: Ch ${on.chain}.`;
  if ('ring' in on) return `Foundation: Ch 4, join with ${slSt} in first ch to form ring.`;
  if ('rows' in on) return on.rows;
  return 'edge' in on ? on.edge : '';
}

function sizeNames(sizes: number): readonly string[] {
  return Array.from({ length: sizes }, (_, i) => `size ${i + 1}`);
}

function listed<T>(key: string, items: readonly T[], line: (item: T) => string): readonly string[] {
  return items.length === 0 ? [] : [`${key}:`, ...items.map(line)];
}

function indented(text: string): readonly string[] {
  return text === '' ? [] : text.split('\n').map((line) => `      ${line}`);
}
