/** What was tried in, a table of each kind of mistake and its shares out. */

import { LOTS, type Lot } from './collections.ts';
import type { Run } from './run-mistakes.ts';
import { KINDS } from './seed/edit.ts';
import type { Tried } from './try-edit.ts';

export interface Tally {
  readonly seeded: number;
  readonly equivalent: number;
  readonly caught: number;
  readonly turningChain: number;
  readonly rightInItself: number;
  readonly silent: number;
}

export function tally(tried: readonly Tried[]): Tally {
  const count = (verdict: Tried['verdict']): number => tried.filter((one) => one.verdict === verdict).length;
  return {
    seeded: tried.length,
    equivalent: count('equivalent'),
    caught: count('caught'),
    turningChain: count('turning chain'),
    rightInItself: count('right in itself'),
    silent: count('silent'),
  };
}

/** Of the mistakes that change the work or contradict it, the share that is reported. */
export function shareOfChanges({ caught, silent, turningChain, rightInItself }: Tally): number {
  return caught / (caught + silent + turningChain + rightInItself);
}

/** Of the mistakes that make the publication contradict itself, the share that is reported. */
export function shareOfErrors({ caught, silent }: Tally): number {
  return caught / (caught + silent);
}

export function report({ tried, places }: Run): string {
  const all = LOTS.reduce((sum, lot) => sum + places[lot], 0);
  const silent = tried.filter(({ verdict }) => verdict === 'silent');
  return [
    '# Mistakes made on purpose, and what became of them',
    '',
    `${tried.length} of the ${all} places where a mistake can be made, one mistake at a time. Made by`,
    `\`node --import tsx tests/mistakes/report.ts${tried.length < all ? ' --everyday' : ''}\`.`,
    '',
    '- **equivalent**: nothing is reported, and the work is the same in every size.',
    '- **right in itself**: nothing is reported, the work is another, and every count the pattern states still holds:',
    '  another design, which no checker can tell from the one that was meant.',
    '- **turning chain**: the same, where only the chain that turns or rises is longer, shorter or gone.',
    '- **silent**: nothing is reported, and what the pattern says of itself is no longer so.',
    '- **of errors**: caught, of caught and silent. **Of changes**: caught, of all that are not equivalent.',
    '',
    ...LOTS.flatMap((lot) => table(tried, lot, places[lot])),
    '## Silent, one by one',
    '',
    ...(silent.length === 0 ? ['None.'] : silent.map(line)),
    '',
  ].join('\n');
}

function table(tried: readonly Tried[], lot: Lot, places: number): string[] {
  const ofLot = tried.filter(({ original }) => original.lot === lot);
  const patterns = new Set(ofLot.map(({ original }) => original.name)).size;
  const rows = KINDS.map((kind) => row(kind, tally(ofLot.filter(({ edit }) => edit.kind === kind))));
  const counted = tally(ofLot.filter(({ edit }) => edit.counted));
  const uncounted = tally(ofLot.filter(({ edit }) => !edit.counted));
  return [
    `## ${lot === 'held-out' ? 'Patterns held out' : 'Demos and fixtures'} (${patterns} patterns, ${ofLot.length} of ${places} places)`,
    '',
    '| mistake | seeded | equivalent | caught | turning chain | right in itself | silent | of errors | of changes |',
    '| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |',
    ...rows,
    row('in lines that state a count', counted),
    row('in lines that state none', uncounted),
    row('**all**', tally(ofLot)),
    '',
  ];
}

function row(name: string, all: Tally): string {
  const cells = [all.seeded, all.equivalent, all.caught, all.turningChain, all.rightInItself, all.silent];
  return `| ${name} | ${cells.join(' | ')} | ${percent(shareOfErrors(all))} | ${percent(shareOfChanges(all))} |`;
}

function percent(share: number): string {
  return Number.isNaN(share) ? '–' : `${(share * 100).toFixed(1)} %`;
}

/** The pattern, the line, what was put for what, and what should have been said. */
export function line({ original, edit, because, verdict }: Tried): string {
  const { text, name } = original;
  const from = text.slice(Math.max(0, edit.start - 25), edit.start).replace(/[\s\S]*\n\s*/, '');
  const to = (text.slice(edit.end, edit.end + 20).split('\n')[0] ?? '').trimEnd();
  const at = text.slice(0, edit.start).split('\n').length;
  const change = `…${from}[${text.slice(edit.start, edit.end)} → ${edit.put}]${to}…`;
  return `- ${name}:${at} ${edit.kind}: \`${change}\`${because === null ? '' : ` ${because}`}${verdict === 'silent' ? '' : ` (${verdict})`}`;
}
