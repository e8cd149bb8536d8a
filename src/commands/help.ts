/** The verbs -> the text of `--help`, for the whole program and for one verb. */

import type { Verb } from './verb.ts';

const CALL = 'npm run -s rowfold --';

export function programHelp(verbs: readonly Verb[]): string {
  const width = Math.max(...verbs.map(({ name }) => name.length));
  return [
    'Rowfold turns written crochet patterns into checked pages, stitch charts and printable booklets.',
    '',
    `  ${CALL} VERB …`,
    '',
    ...verbs.map(({ name, about }) => `  ${name.padEnd(width)}  ${about}`),
    '',
    'A first pattern, from nothing to a page:',
    '',
    `  ${CALL} new my-square`,
    `  ${CALL} check patterns/my-square`,
    `  ${CALL} serve`,
    '',
    `Each verb explains itself: ${CALL} check --help`,
    'It ends with 0 when all is well, 1 when a pattern has faults, 2 when the words of the command are not understood.',
  ].join('\n');
}

export function verbHelp(verb: Verb): string {
  const flags = [...verb.flags, { name: 'help', value: null, about: 'this text' }].map(
    ({ name, value, about }) => [`--${name}${value === null ? '' : ` ${value}`}`, about] as const,
  );
  const width = Math.max(...flags.map(([flag]) => flag.length));
  return [
    `${CALL} ${verb.name} ${verb.takes}`.trim(),
    '',
    verb.teaches,
    '',
    ...flags.map(([flag, about]) => `  ${flag.padEnd(width)}  ${about}`),
  ].join('\n');
}
