/** Words after a verb -> its paths and flags, or what is wrong with them, with the nearest flag offered. */

import { parseArgs } from 'node:util';
import { nearest } from '../diagnostics/nearest.ts';
import type { Arguments, Verb } from './verb.ts';

export type ReadArguments =
  | { readonly kind: 'given'; readonly given: Arguments }
  | { readonly kind: 'help' }
  | { readonly kind: 'wrong'; readonly message: string };

export function readArguments(verb: Verb, words: readonly string[]): ReadArguments {
  const known = new Map(verb.flags.map((flag) => [flag.name, flag]));
  const options = Object.fromEntries(
    verb.flags.map(({ name, value }) => [name, { type: value === null ? 'boolean' : 'string' } as const]),
  );
  const { tokens } = parseArgs({
    args: [...words],
    options: { ...options, help: { type: 'boolean', short: 'h' } },
    allowPositionals: true,
    strict: false,
    tokens: true,
  });
  const paths: string[] = [];
  const flags = new Set<string>();
  const values = new Map<string, string>();
  for (const token of tokens) {
    if (token.kind === 'option' && token.name === 'help') return { kind: 'help' };
  }
  for (const token of tokens) {
    if (token.kind === 'positional') paths.push(token.value);
    if (token.kind !== 'option') continue;
    const flag = known.get(token.name);
    if (flag === undefined) return wrong(unknownFlag(verb, token.rawName));
    if (flag.value === null) {
      if (token.value !== undefined) return wrong(`--${flag.name} takes no value.`);
      flags.add(flag.name);
      continue;
    }
    const missing = token.value === undefined || (!token.inlineValue && token.value.startsWith('-'));
    if (missing || token.value === '')
      return wrong(`--${flag.name} needs a value: --${flag.name} ${flag.value}`);
    values.set(flag.name, token.value);
  }
  if (paths.length < verb.least) return wrong(`${verb.name} needs ${verb.takes.split(' ')[0]}.`);
  if (paths.length > verb.most) {
    return wrong(`${verb.name} takes no more than ${verb.most} of these: ${paths.join(' ')}`);
  }
  if (paths.includes('')) return wrong('A path or name may not be empty.');
  return { kind: 'given', given: { paths, flags, values } };
}

function unknownFlag(verb: Verb, written: string): string {
  const names = ['help', ...verb.flags.map(({ name }) => name)];
  const near = nearest(written.replace(/^-+/, ''), names);
  const offer = near === null ? '' : ` Did you mean --${near}?`;
  return `${verb.name} has no flag ${written}.${offer}`;
}

function wrong(message: string): ReadArguments {
  return { kind: 'wrong', message };
}
